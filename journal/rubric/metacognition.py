"""Strand B, metacognition: the questions B1 to B3, with rule R19."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.evidence import Evidence
from journal.records import Metacognition, MetacognitionEvidence, Span, Step
from journal.rubric.learning import Comment, is_regulating, is_specific, read_comments

_KINDS = {
    "feeling": "a feeling about learning",
    "difficulty": "what was hard",
    "strategy": "a strategy",
    "check": "a check",
    "change": "a change of mind",
    "next": "what is next",
}


def check_metacognition(evidence: Evidence) -> Metacognition:
    """Suggest a level of metacognition, with the path of questions that led to it.

    Parameters
    ----------
    evidence : Evidence
        All that was found in the entry.

    Returns
    -------
    Metacognition
        ``level`` 0 to 3; ``rule`` the first question answered no, or ``"B3"`` for level 3.
    """
    comments = read_comments(evidence)
    path: list[Step] = []
    for level, ask in enumerate((ask_b1, ask_b2, ask_b3)):
        step = ask(comments)
        path.append(step)
        if not step.answer:
            return Metacognition(level, step.question, tuple(path), evidence.metacognition)
    return Metacognition(3, "B3", tuple(path), evidence.metacognition)


def ask_b1(comments: Sequence[Comment]) -> Step:
    """B1: does the pupil comment on own knowing, difficulty, strategy or feeling?"""  # noqa: D400
    if not comments:
        return Step("B1", False, False, (), "nothing about the pupil's own knowing or learning")
    first = comments[0].item
    return Step("B1", True, False, (_span(first),), f"{_KINDS[first.kind]}: “{first.surface}”")


def ask_b2(comments: Sequence[Comment]) -> Step:
    """B2: is it specific to a named piece of mathematics or a strategy?"""  # noqa: D400
    for comment in comments:
        if is_specific(comment):
            item = comment.item
            why = f"names what it is about: “{item.surface}”"
            return Step("B2", True, False, (_span(item),), why)
    first = comments[0].item
    why = f"“{first.surface}” names no piece of mathematics"
    return Step("B2", False, False, (_span(first),), why)


def ask_b3(comments: Sequence[Comment]) -> Step:
    """B3: what changed, why a strategy helped, how it was checked, or a specific next step?"""  # noqa: D400
    for comment in comments:
        if is_regulating(comment):
            item = comment.item
            return Step("B3", True, False, (_span(item),), f"{_KINDS[item.kind]}: “{item.surface}”")
    last = comments[-1].item
    why = (
        f"“{last.surface}”: not yet what changed, why it helped, how it was checked or what is next"
    )
    return Step("B3", False, True, (_span(last),), why)


def _span(item: MetacognitionEvidence) -> Span:
    return item.start, item.end
