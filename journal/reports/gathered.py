"""Scores gathered by pupil, by word and by idea: alphabetical, never ordered by a level."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field

from journal.records import Flag, Score

UNNAMED = "no name given"


@dataclass(slots=True)
class PupilRow:
    """What one pupil's entries show together; it holds no level and no total of levels."""

    pupil: str
    entries: list[Score] = field(default_factory=list)
    words: set[str] = field(default_factory=set)
    words_in_reasons: set[str] = field(default_factory=set)
    functions: set[str] = field(default_factory=set)
    to_look_at: int = 0


@dataclass(slots=True)
class WordRow:
    """Who used a word, who used it in a reason, and the informal forms seen for it."""

    word: str
    target: bool = False
    used_by: set[str] = field(default_factory=set)
    in_reason_by: set[str] = field(default_factory=set)
    informal: dict[str, set[str]] = field(default_factory=dict)


@dataclass(frozen=True, slots=True)
class Found:
    """An entry with its flags of one kind: an idea to check, or a call for help."""

    score: Score
    flags: tuple[Flag, ...]


def writer_of(score: Score) -> str:
    """Return the pupil, or the entry where no pupil is named."""
    return score.source.pupil or f"entry {score.entry_id}"


def gather_pupils(scores: Iterable[Score]) -> list[PupilRow]:
    """Return a row a pupil, in the alphabet's order. Scores with a worry are left out."""
    rows: dict[str, PupilRow] = {}
    for score in scores:
        if score.has_worry:
            continue
        name = score.source.pupil or UNNAMED
        row = rows.setdefault(name, PupilRow(name))
        row.entries.append(score)
        for use in score.vocabulary:
            if use.counted and use.kind == "target":
                row.words.add(use.term)
                if use.in_reason:
                    row.words_in_reasons.add(use.term)
        row.functions.update(marker.function for marker in score.markers if marker.counted)
        row.to_look_at += sum(flag.kind in ("help", "idea_to_check") for flag in score.flags)
    return sorted(rows.values(), key=lambda row: (row.pupil == UNNAMED, _alphabet(row.pupil)))


def gather_words(scores: Iterable[Score]) -> list[WordRow]:
    """Return a row a word, words of the lessons first, each group in the alphabet's order."""
    rows: dict[str, WordRow] = {}
    for score in scores:
        if score.has_worry:
            continue
        for target in score.targets:
            rows.setdefault(target, WordRow(target)).target = True
        writer = writer_of(score)
        for use in score.vocabulary:
            if not use.counted:
                continue
            row = rows.setdefault(use.term, WordRow(use.term))
            row.used_by.add(writer)
            if use.in_reason:
                row.in_reason_by.add(writer)
        for form in score.informal:
            row = rows.setdefault(form.formal, WordRow(form.formal))
            row.informal.setdefault(" ".join(form.surface.casefold().split()), set()).add(writer)
    return sorted(rows.values(), key=lambda row: (not row.target, _alphabet(row.word)))


def gather_ideas(scores: Iterable[Score]) -> Mapping[str | None, list[Found]]:
    """Return the entries with each idea to check by watch-list id, the widest spread first.

    Calculations that do not come out stand under ``None``, last.
    """
    groups: dict[str | None, list[Found]] = {}
    for score in scores:
        if score.has_worry:
            continue
        flags = [flag for flag in score.flags if flag.kind == "idea_to_check"]
        for idea in dict.fromkeys(flag.idea for flag in flags):
            own = tuple(flag for flag in flags if flag.idea == idea)
            groups.setdefault(idea, []).append(Found(score, own))
    order = sorted(groups, key=lambda idea: (idea is None, -len(groups[idea]), idea or ""))
    return {idea: _by_writer(groups[idea]) for idea in order}


def gather_calls(scores: Iterable[Score]) -> list[Found]:
    """Return the entries that ask for help, in the alphabet's order of the pupils."""
    found = [
        Found(score, tuple(flag for flag in score.flags if flag.kind == "help"))
        for score in scores
        if not score.has_worry
    ]
    return _by_writer([item for item in found if item.flags])


def _by_writer(found: list[Found]) -> list[Found]:
    return sorted(found, key=lambda item: _alphabet(writer_of(item.score)))


def _alphabet(word: str) -> tuple[str, str]:
    return word.casefold(), word
