"""The one composition: an entry in, its score record out."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from concurrent.futures import ProcessPoolExecutor
from dataclasses import dataclass, replace
from functools import partial
from pathlib import Path
from typing import Any

from journal import __version__
from journal.bulk import map_chunks, split_chunks
from journal.entries import make_entry
from journal.evidence.claims import find_claims
from journal.evidence.evidence import Evidence
from journal.evidence.flags import find_flags, find_worries
from journal.evidence.flags.language import find_other_language
from journal.evidence.informal import find_informal
from journal.evidence.markers import find_markers
from journal.evidence.mathematics import find_mathematics
from journal.evidence.metacognition import find_metacognition
from journal.evidence.readable import check_readable
from journal.evidence.reasons import find_reasons, mark_central
from journal.evidence.reasons.own_words import keep_own_words
from journal.evidence.setting import Setting
from journal.evidence.vocabulary import find_vocabulary
from journal.language.parse import Parse
from journal.language.pipeline import describe_model, load_pipeline, parse_texts
from journal.lesson import make_setting, read_plan
from journal.lexicon.fingerprint import hash_lexicon, name_models
from journal.lexicon.flags import Worries, load_worries
from journal.lexicon.informal import load_informal
from journal.lexicon.markers import load_markers
from journal.lexicon.plan import Plan
from journal.lexicon.terms import load_terms
from journal.lexicon.words import load_speller
from journal.records import (
    Entry,
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
from journal.text.exclusions import blank_out
from journal.text.normalise import (
    find_spacing_edits,
    lower_shouting,
    normalise_characters,
)
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
    worries: tuple[Flag, ...]
    spelling: tuple[Spelling, ...]
    offsets: OffsetMap

    @property
    def is_parsed(self) -> bool:
        # Flags are looked for in all text, but for a worry, which an adult reads first.
        return self.not_scored not in ("empty", "worry")

    @property
    def breaks(self) -> list[int]:
        return [part.start for part in self.setting.excluded if part.why == "adult_prompt"]


class Scorer:
    """Scores entries; load one and keep it.

    Parameters
    ----------
    plan : Plan, str or Path, optional
        The unit plan that serves where a call names none.
    worries : Worries, optional
        The school's own worry list; by default the one that ships.
    """

    def __init__(
        self, *, plan: Plan | str | Path | None = None, worries: Worries | None = None
    ) -> None:
        self._nlp = load_pipeline()
        self._speller = load_speller()
        self._terms = load_terms()
        self._informal = load_informal()
        self._markers = load_markers()
        self._worries = worries or load_worries()
        self._plan = read_plan(plan)
        self.version = ScorerVersion(
            version=__version__,
            language_model=describe_model(self._nlp),
            lexicon=hash_lexicon(),
            rubric=RUBRIC_VERSION,
            models=name_models(),
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
        return self._score_batch([entry], read_plan(plan) or self._plan)[0]

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
        read = read_plan(plan) or self._plan
        made = (
            entry if isinstance(entry, Entry) else make_entry(entry, entry_id=str(number))
            for number, entry in enumerate(entries, start=1)
        )
        if workers <= 1:
            for batch in split_chunks(made, BATCH):
                yield from self._score_batch(batch, read)
            return
        with ProcessPoolExecutor(workers, None, _start_worker, (self._worries,)) as executor:
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
        setting = make_setting(entry, plan)
        clean = lower_shouting(normalise_characters(text))
        excluded = [(part.start, part.end) for part in setting.excluded]
        prompts = [
            (part.start, part.end) for part in setting.excluded if part.why == "adult_prompt"
        ]
        clean = blank_out(clean, prompts) if prompts else clean
        words = len(find_words(clean, excluded))
        spelling = self._speller.find_corrections(
            clean, original=text, targets=setting.targets, excluded=excluded
        )
        not_scored = check_readable(clean, self._speller.words)
        edits = [Edit(item.start, item.end, item.read_as) for item in spelling]
        edits += [
            edit
            for edit in find_spacing_edits(clean)
            if not any(item.start < edit.end and edit.start < item.end for item in spelling)
        ]
        offsets = OffsetMap(text, edits, clean)
        worries = () if entry.worry_released else self._find_worries(offsets)
        return _Prepared(
            entry=entry,
            plan=plan,
            setting=setting,
            words=words,
            not_scored="worry" if worries else not_scored,
            worries=tuple(worries),
            spelling=tuple(spelling),
            offsets=offsets,
        )

    def _find_worries(self, offsets: OffsetMap) -> list[Flag]:
        return find_worries(offsets, self._worries, self._speller.words)

    def _assemble(self, item: _Prepared, parse: Parse) -> Score:
        evidence = self.find_evidence(parse, item.setting)
        if item.not_scored in ("not_english", "unreadable"):
            flags = [*evidence.flags, *find_other_language(parse, self._speller.words)]
            return replace(self._record(item), flags=tuple(flags))
        score = replace(
            self._record(item),
            spelling=item.spelling,
            vocabulary=evidence.vocabulary,
            informal=evidence.informal,
            markers=evidence.markers,
            reasons=evidence.reasons,
            claims=evidence.claims,
            metacognition=replace(NO_METACOGNITION, evidence=evidence.metacognition),
            flags=evidence.flags,
        )
        if item.not_scored == "too_short":
            return score
        return replace(
            score,
            reasoning=check_reasoning(evidence),
            metacognition=check_metacognition(evidence),
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
        reasons = keep_own_words(reasons, setting.excluded, parse.text)
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
            metacognition=tuple(find_metacognition(parse, markers, mathematics, setting, reasons)),
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
            spelling=(),
            vocabulary=(),
            informal=(),
            markers=(),
            reasons=(),
            claims=(),
            reasoning=NO_REASONING,
            metacognition=NO_METACOGNITION,
            flags=item.worries,
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


_scorer_of_process: Scorer | None = None


def _start_worker(worries: Worries) -> None:
    global _scorer_of_process  # noqa: PLW0603 - one scorer a process, loaded when it starts
    _scorer_of_process = Scorer(worries=worries)


def _score_chunk(plan: Plan | None, entries: list[Entry]) -> list[Score]:
    assert _scorer_of_process is not None  # the executor's initialiser has run
    return _scorer_of_process._score_batch(entries, plan)
