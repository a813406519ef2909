"""Where the pencil goes: evidence as marks on the child's words and notes in the margin."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from itertools import pairwise

from journal.records import Reason, Score, Span

WORDS_BESIDE = frozenset(
    {"condition", "comparison", "contrast", "generalisation", "evidence", "certainty"}
)
"""Kinds of mark that carry a small word beside them, so that no line pattern is a code."""

_ROLES = {
    "grounds": "a reason",
    "link": "why that settles it",
    "check": "a check",
    "counter_example": "a counter-example",
    "limit": "where it stops",
}
_UNCOUNTED = {
    "procedural": "tells how, not why",
    "circular": "says the same again",
    "not_mathematical": "not about the mathematics",
}
_LONGEST_QUOTE = 70
_SENTENCE_END = re.compile(r"(?<=[.!?])\s+|\n+")


@dataclass(frozen=True, slots=True)
class Mark:
    """A stretch to underline; ``kind`` is vocabulary, a marker's function, or learning."""

    start: int
    end: int
    kind: str
    why: str


@dataclass(frozen=True, slots=True)
class Note:
    """A note for the margin, about the words that end at ``end``.

    ``explains`` holds the words that a reason is for, where there are any.
    """

    start: int
    end: int
    kind: str
    words: str
    why: str = ""
    explains: str | None = None


@dataclass(frozen=True, slots=True)
class Run:
    """A stretch of text under the same marks from end to end.

    Parameters
    ----------
    text : str
        The child's own characters.
    kinds : tuple of str
        Kinds of the marks over it, the longest first: nested, they never cross.
    closing : tuple of str
        Kinds of the marks that end here, whose small word follows.
    notes : tuple of int
        Numbers, from 1, of the notes whose words end here.
    given : bool
        Whether the stretch is an adult's prompt or was put in by a tap.
    """

    text: str
    kinds: tuple[str, ...]
    closing: tuple[str, ...]
    notes: tuple[int, ...]
    given: bool


def find_marks(score: Score) -> tuple[Mark, ...]:
    """Return the stretches to underline, in the order of the text.

    Only what counts is marked: words in their mathematical sense, markers read as reasoning, and
    reasons that need no marker. Look-alikes are in `find_look_alikes`.
    """
    marks = [
        Mark(use.start, use.end, "vocabulary", use.why) for use in score.vocabulary if use.counted
    ]
    marks += [
        Mark(marker.start, marker.end, marker.function, marker.why)
        for marker in score.markers
        if marker.counted
    ]
    marks += [
        Mark(*reason.reason, "reason", reason.why)
        for reason in score.reasons
        if reason.marker is None and reason.ground == "mathematical"
    ]
    marks += [
        Mark(item.start, item.end, "learning", f"own learning: {item.kind}")
        for item in score.metacognition.evidence
    ]
    return tuple(sorted(marks, key=lambda mark: (mark.start, -mark.end, mark.kind)))


def find_notes(score: Score, ideas: Mapping[str, str] | None = None) -> tuple[Note, ...]:
    """Return the notes of the margin, in the order of the text.

    Parameters
    ----------
    score : Score
        A score without a worry.
    ideas : mapping, optional
        Watch-list id to its description in a teacher's words.
    """
    ideas = ideas or {}
    notes = [_note_reason(score, item) for item in score.reasons if item.ground == "mathematical"]
    for claim in score.claims:
        if claim.asserted and claim.verdict == "false":
            words = f"= {claim.computed}" if claim.computed else "look at this again"
            notes.append(Note(claim.start, claim.end, "claim", words))
    notes += [
        Note(use.start, use.end, "informal", f"{quote(use.surface)}: {use.formal}")
        for use in score.informal
    ]
    for flag in score.flags:
        said = {
            "help": "asks for help",
            "idea_to_check": "an idea to check",
            "conjecture_to_test": "a conjecture to test: does it always work?",
            "echo": "copied words, not counted",
            "word_bank": "copied list of words, not counted",
            "keyword_string": "listed words, no sentence",
        }.get(flag.kind)
        # A wrong calculation already has its "= 56".
        if said is None or (flag.kind == "idea_to_check" and flag.idea is None):
            continue
        if flag.idea is not None:
            said = f"{said}: {ideas.get(flag.idea, flag.idea.replace('_', ' '))}"
        notes.append(Note(flag.start, flag.end, flag.kind, said, flag.why))
    # The same note about the same words is written once.
    once = {(note.end, note.words, note.explains): note for note in reversed(notes)}
    return tuple(sorted(once.values(), key=lambda note: (note.end, note.start)))


def find_look_alikes(score: Score) -> tuple[Note, ...]:
    """Return the forms and reasons that were read and not counted, each with its why."""
    notes = [
        Note(marker.start, marker.end, marker.reading, quote(marker.surface), marker.why)
        for marker in score.markers
        if not marker.counted
    ]
    notes += [
        Note(use.start, use.end, use.sense, quote(use.surface), use.why)
        for use in score.vocabulary
        if not use.counted
    ]
    notes += [
        Note(
            *item.reason, _UNCOUNTED[item.ground], quote(score.text[slice(*item.reason)]), item.why
        )
        for item in score.reasons
        if item.ground != "mathematical"
    ]
    return tuple(sorted(notes, key=lambda note: note.start))


def split_runs(score: Score, marks: Iterable[Mark], notes: Iterable[Note] = ()) -> tuple[Run, ...]:
    """Split a text at every edge of a mark, so that overlapping marks can be drawn nested.

    Parameters
    ----------
    score : Score
        Whose text it is.
    marks, notes
        As `find_marks` and `find_notes` give them.

    Returns
    -------
    tuple of Run
        Their texts joined are the text, character for character.
    """
    text = score.text
    marks, notes = tuple(marks), tuple(notes)
    given = [(part.start, part.end) for part in score.excluded]
    edges = {0, len(text), *(note.end for note in notes)}
    for start, end in (*((mark.start, mark.end) for mark in marks), *given):
        edges.update((start, end))
    places = sorted(place for place in edges if 0 <= place <= len(text))
    runs = []
    for start, end in pairwise(places):
        over = [mark for mark in marks if mark.start <= start and end <= mark.end]
        over.sort(key=lambda mark: (mark.start - mark.end, mark.start, mark.kind))
        runs.append(
            Run(
                text=text[start:end],
                kinds=tuple(dict.fromkeys(mark.kind for mark in over)),
                closing=tuple(dict.fromkeys(mark.kind for mark in over if mark.end == end)),
                notes=tuple(i for i, note in enumerate(notes, start=1) if note.end == end),
                given=any(a <= start and end <= b for a, b in given),
            )
        )
    return tuple(runs)


def quote(words: str, longest: int = _LONGEST_QUOTE) -> str:
    """Return words in quotation marks, on one line, shortened in the middle where long."""
    words = " ".join(words.split())
    if len(words) > longest:
        half = longest // 2
        words = f"{words[:half].rstrip()} … {words[-half:].lstrip()}"
    return f"“{words}”"


@dataclass(frozen=True, slots=True)
class Context:
    """Words with what stands around them in their sentence, shortened at word ends."""

    before: str
    words: str
    after: str


def find_context(text: str, start: int, end: int, *, reach: int = 60) -> Context:
    """Return some words with their sentence around them, up to ``reach`` characters each way."""
    before = _SENTENCE_END.split(text[:start])[-1]
    after = _SENTENCE_END.split(text[end:])[0]
    if len(before) > reach:
        before = "… " + before[-reach:].partition(" ")[2]
    if len(after) > reach:
        after = after[:reach].rpartition(" ")[0] + " …"
    return Context(
        " ".join(before.split()) + " " * before.endswith(" "),
        " ".join(text[start:end].split()),
        " " * after.startswith(" ") + " ".join(after.split()),
    )


def _note_reason(score: Score, reason: Reason) -> Note:
    start, end = reason.reason
    about: Span | None = reason.claim
    if about is None and reason.supports is not None:
        about = score.reasons[reason.supports].reason
    words = "" if about is None else score.text[slice(*about)]
    explains = quote(words) if any(char.isalnum() for char in words) else None
    return Note(start, end, "reason", _ROLES[reason.role], reason.why, explains)
