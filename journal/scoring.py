"""The one composition: an entry in, its score record out."""

from __future__ import annotations

import os
from collections.abc import Iterable, Iterator, Mapping, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass, replace
from functools import lru_cache, partial
from pathlib import Path
from typing import Any

from journal import __version__
from journal.bulk import map_chunks, split_chunks
from journal.entries import make_entry
from journal.evidence.claims import find_claims
from journal.evidence.evidence import Evidence
from journal.evidence.flags import find_flags, find_language_flags, find_worries
from journal.evidence.informal import find_informal
from journal.evidence.markers import find_markers
from journal.evidence.mathematics import find_mathematics
from journal.evidence.metacognition import find_metacognition
from journal.evidence.readable import check_readable
from journal.evidence.reasons import find_reasons, mark_central
from journal.evidence.setting import Setting
from journal.evidence.vocabulary import find_vocabulary
from journal.language.parse import Parse
from journal.language.pipeline import describe_model, load_pipeline, parse_texts
from journal.lexicon.fingerprint import hash_lexicon
from journal.lexicon.informal import load_informal
from journal.lexicon.markers import load_markers
from journal.lexicon.plan import Plan, load_plan
from journal.lexicon.terms import load_terms
from journal.lexicon.watchlist import load_watchlist
from journal.lexicon.words import load_speller
from journal.records import (
    Entry,
    Excluded,
    Flag,
    Metacognition,
    Mode,
    NotScored,
    PlanReference,
    Reason,
    Reasoning,
    Score,
    ScorerVersion,
    Source,
    Span,
    Spelling,
    VocabularyUse,
)
from journal.rubric import RUBRIC_VERSION, check_metacognition, check_reasoning
from journal.text.exclusions import blank_out, find_excluded
from journal.text.normalise import find_spacing_edits, normalise_characters
from journal.text.offsets import Edit, OffsetMap
from journal.text.words import find_words

BATCH = 64
"""Entries parsed at a time: larger batches cost memory and gain nothing."""

NO_REASONING = Reasoning(None, None, "rules", None, ())
NO_METACOGNITION = Metacognition(None, None, (), ())


@dataclass(frozen=True, slots=True)
class _Prepared:
    """An entry read as far as it can be without the parser."""

    entry: Entry
    plan: Plan | None
    setting: Setting
    words: int
    not_scored: NotScored | None
    flags: tuple[Flag, ...]
    spelling: tuple[Spelling, ...]
    offsets: OffsetMap

    @property
    def is_parsed(self) -> bool:
        return self.not_scored in (None, "too_short")

    @property
    def breaks(self) -> list[int]:
        return [part.start for part in self.setting.excluded if part.why == "adult_prompt"]


class Scorer:
    """Scores entries; load one and keep it.

    Parameters
    ----------
    plan : Plan, str or Path, optional
        The unit plan that serves where a call names none.
    """

    def __init__(self, *, plan: Plan | str | Path | None = None) -> None:
        self._nlp = load_pipeline()
        self._speller = load_speller()
        self._terms = load_terms()
        self._informal = load_informal()
        self._markers = load_markers()
        self._plan = _read_plan(plan)
        self.version = ScorerVersion(
            version=__version__,
            language_model=describe_model(self._nlp),
            lexicon=hash_lexicon(),
            rubric=RUBRIC_VERSION,
            models=(),
        )

    def score(
        self,
        text: str,
        *,
        prompt: str | None = None,
        target_terms: Sequence[str] | str | None = None,
        plan: Plan | str | Path | None = None,
        lesson: str | int | None = None,
        mode: Mode | None = None,
        year: int | str | None = None,
        word_bank: Sequence[str] | str = (),
        sentence_starters: Sequence[str] | str = (),
        inserted: Sequence[Span] = (),
        **source: Any,
    ) -> Score:
        """Score one entry.

        Parameters
        ----------
        text : str
            What the child wrote, unaltered.
        prompt : str, optional
            What the children were asked; overrides the plan's.
        target_terms : sequence of str or str, optional
            The lesson's words (text: separated by semicolons); override the plan's.
        plan : Plan, str or Path, optional
            A unit plan, or the path of one.
        lesson : str or int, optional
            Which lesson of the plan: its id, its number, or its date.
        mode : {"typed", "scribed", "dictated"}, optional
            In scribed and dictated entries square brackets hold an adult's prompts.
        year : int or str, optional
            School year, 0 for Reception to 6.
        word_bank, sentence_starters : sequence of str, optional
            What was shown beside the page.
        inserted : sequence of Span, optional
            Stretches put in by tapping a word or starter: Python string indices, end exclusive.
        **source
            Other fields of `Entry`, such as ``entry_id``, ``pupil``, ``date`` and ``unit``.

        Returns
        -------
        Score
            The score record; ``.to_dict()`` is ready for JSON.

        Raises
        ------
        JournalError
            If an argument can't be read; the sentence says which and what to do.
        """
        entry = make_entry(
            {
                "text": text,
                "prompt": prompt,
                "target_terms": target_terms,
                "lesson": lesson,
                "mode": mode,
                "year": year,
                "word_bank": word_bank,
                "sentence_starters": sentence_starters,
                "inserted": inserted,
                **source,
            }
        )
        return self._score_batch([entry], _read_plan(plan) or self._plan)[0]

    def score_many(
        self,
        entries: Iterable[Entry | Mapping[str, Any]],
        *,
        plan: Plan | str | Path | None = None,
        workers: int = 1,
    ) -> Iterator[Score]:
        """Score a stream of entries, in order.

        Parameters
        ----------
        entries : iterable of Entry or mapping
            Read as they are needed. A mapping has the fields of `Entry` as keys.
        plan : Plan, str or Path, optional
            The unit plan for all of them.
        workers : int
            Processes to work in; 1 works in this one.

        Yields
        ------
        Score
            One an entry, in the order of the entries.
        """
        read = _read_plan(plan) or self._plan
        made = (
            entry if isinstance(entry, Entry) else make_entry(entry, entry_id=str(number))
            for number, entry in enumerate(entries, start=1)
        )
        if workers <= 1:
            for batch in split_chunks(made, BATCH):
                yield from self._score_batch(batch, read)
            return
        # One thread of arithmetic a process, or they wait for each other.
        os.environ.setdefault("OPENBLAS_NUM_THREADS", "1")
        with ProcessPoolExecutor(max_workers=workers) as executor:
            yield from map_chunks(
                partial(_score_chunk, read), made, executor, size=BATCH, ahead=2 * workers
            )

    def _score_batch(self, entries: Sequence[Entry], plan: Plan | None) -> list[Score]:
        prepared = [self._prepare(entry, plan) for entry in entries]
        parses = parse_texts(
            self._nlp,
            ((item.offsets, item.breaks) for item in prepared if item.is_parsed),
            batch=BATCH,
        )
        return [
            self._assemble(item, next(parses)) if item.is_parsed else self._record(item)
            for item in prepared
        ]

    def _prepare(self, entry: Entry, plan: Plan | None) -> _Prepared:
        text = entry.text
        setting = _make_setting(entry, plan)
        clean = normalise_characters(text)
        prompts = [
            (part.start, part.end) for part in setting.excluded if part.why == "adult_prompt"
        ]
        if prompts:
            clean = blank_out(clean, prompts)
        words = len(find_words(clean, [(part.start, part.end) for part in setting.excluded]))
        spelling = self._speller.find_corrections(
            clean,
            original=text,
            targets=setting.targets,
            excluded=[(part.start, part.end) for part in setting.excluded],
        )
        flags: list[Flag] = [] if entry.worry_released else find_worries(text, clean, spelling)
        not_scored: NotScored | None = "worry" if flags else None
        if not_scored is None:
            not_scored = check_readable(clean, spelling)
            if not_scored == "not_english":
                flags = find_language_flags(text)
        if not_scored not in (None, "too_short"):
            spelling = []
        edits = [Edit(item.start, item.end, item.read_as) for item in spelling]
        taken = {(edit.start, edit.end) for edit in edits}
        edits += [
            edit
            for edit in find_spacing_edits(clean)
            if not any(start < edit.end and edit.start < end for start, end in taken)
        ]
        return _Prepared(
            entry=entry,
            plan=plan,
            setting=setting,
            words=words,
            not_scored=not_scored,
            flags=tuple(flags),
            spelling=tuple(spelling),
            offsets=OffsetMap(text, edits, clean),
        )

    def _assemble(self, item: _Prepared, parse: Parse) -> Score:
        evidence = self.find_evidence(parse, item.setting)
        if item.not_scored == "too_short":
            reasoning, metacognition = NO_REASONING, NO_METACOGNITION
        else:
            reasoning, metacognition = check_reasoning(evidence), check_metacognition(evidence)
        return replace(
            self._record(item),
            vocabulary=evidence.vocabulary,
            informal=evidence.informal,
            markers=evidence.markers,
            reasons=evidence.reasons,
            claims=evidence.claims,
            reasoning=reasoning,
            metacognition=replace(metacognition, evidence=evidence.metacognition),
            flags=evidence.flags,
        )

    def find_evidence(self, parse: Parse, setting: Setting) -> Evidence:
        """Run every finder over a parse, each standing on those before it.

        Parameters
        ----------
        parse : Parse
            The parsed entry.
        setting : Setting
            What was set for it.

        Returns
        -------
        Evidence
            What the rubric's questions are asked of.
        """
        terms = self._terms.with_targets(setting.targets)
        vocabulary = find_vocabulary(parse, terms, setting)
        informal = find_informal(parse, self._informal, setting)
        claims = find_claims(parse, setting)
        mathematics = find_mathematics(parse, vocabulary, informal, claims)
        markers = find_markers(parse, self._markers, mathematics, setting)
        reasons = find_reasons(parse, markers, claims, mathematics, setting)
        claims = mark_central(claims, reasons, parse, setting)
        vocabulary = _mark_in_reason(vocabulary, reasons)
        flags = find_flags(parse, vocabulary, markers, reasons, claims, mathematics, setting)
        return Evidence(
            parse=parse,
            setting=setting,
            mathematics=mathematics,
            vocabulary=tuple(vocabulary),
            informal=tuple(informal),
            markers=tuple(markers),
            claims=tuple(claims),
            reasons=tuple(reasons),
            metacognition=tuple(find_metacognition(parse, markers, mathematics, setting)),
            flags=tuple(flags),
        )

    def _record(self, item: _Prepared) -> Score:
        entry = item.entry
        return Score(
            entry_id=entry.entry_id,
            text=entry.text,
            words=item.words,
            source=Source(
                pupil=entry.pupil,
                date=entry.date,
                unit=entry.unit or (item.plan.unit if item.plan else None),
                lesson=entry.lesson,
                year=item.setting.year,
                prompt=item.setting.prompt,
                mode=entry.mode,
                revision=entry.revision,
                after_next_step=entry.after_next_step,
            ),
            plan=PlanReference(item.plan.id, item.plan.sha256) if item.plan else None,
            targets=item.setting.targets,
            scorer=self.version,
            scored=item.not_scored is None,
            not_scored_because=item.not_scored,
            excluded=item.setting.excluded,
            spelling=item.spelling,
            vocabulary=(),
            informal=(),
            markers=(),
            reasons=(),
            claims=(),
            reasoning=NO_REASONING,
            metacognition=NO_METACOGNITION,
            flags=item.flags,
        )


def _read_plan(plan: Plan | str | Path | None) -> Plan | None:
    return load_plan(plan) if isinstance(plan, (str, Path)) else plan


def _make_setting(entry: Entry, plan: Plan | None) -> Setting:
    excluded: list[Excluded] = find_excluded(entry.text, entry.mode, entry.inserted)
    lesson = plan.find_lesson(entry.lesson, entry.date) if plan else None
    targets = entry.target_terms
    if targets is None:
        targets = plan.targets_for(lesson) if plan else ()
    return Setting(
        targets=targets,
        earlier=plan.earlier_terms(lesson) if plan else (),
        year=entry.year if entry.year is not None else (plan.year if plan else None),
        domain=plan.domain if plan else None,
        prompt=entry.prompt or (lesson.prompt if lesson else None),
        mode=entry.mode,
        word_bank=entry.word_bank or (tuple(lesson.word_bank) if lesson else ()),
        sentence_starters=entry.sentence_starters
        or (tuple(lesson.sentence_starters) if lesson else ()),
        excluded=tuple(excluded),
        ideas=plan.ideas_for(lesson) if plan else load_watchlist(),
    )


def _mark_in_reason(
    vocabulary: list[VocabularyUse], reasons: Sequence[Reason]
) -> list[VocabularyUse]:
    """Mark the uses that stand inside a grounded reason."""
    spans = [item.reason for item in reasons if item.ground == "mathematical"]
    return [
        replace(use, in_reason=True)
        if any(start <= use.start and use.end <= end for start, end in spans)
        else use
        for use in vocabulary
    ]


@lru_cache(maxsize=1)
def _worker_scorer() -> Scorer:
    return Scorer()


def _score_chunk(plan: Plan | None, entries: list[Entry]) -> list[Score]:
    return _worker_scorer()._score_batch(entries, plan)
