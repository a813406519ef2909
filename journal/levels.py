"""The levels and rules in a teacher's words; the number comes second."""

from __future__ import annotations

from journal.records import Metacognition, NotScored, Question, Reasoning

NOT_YET_CHECKED = "not yet checked against your school's judgements"
"""Stands beside every level until the school has compared levels with its own judgements."""

REASONING = (
    "no mathematics named",
    "a recount",
    "an explanation with a reason",
    "justified reasoning",
    "a supported generalisation",
)
METACOGNITION = (
    "nothing about own learning",
    "a comment on own learning",
    "a comment on named mathematics",
    "learning weighed or steered",
)
NOT_SCORED: dict[NotScored, str] = {
    "empty": "nothing written",
    "too_short": "too short to score",
    "not_english": "not in English",
    "unreadable": "could not be read",
    "worry": "to be read by an adult first",
}

QUESTIONS: dict[Question, str] = {
    "A1": "Is any mathematics named?",
    "A2": "Is there a reason about the mathematics?",
    "A3a": "Is the reason linked, checked, or met by a counter-example?",
    "A3b": "Is the central idea right?",
    "A4a": "Does it reach beyond the case at hand?",
    "A4b": "Is the general claim supported?",
    "B1": "Is there a comment on own knowing, difficulty, strategy or feeling?",
    "B2": "Is it about named mathematics or a named strategy?",
    "B3": "Does it say what changed, what helped, how it was checked or what comes next?",
}

# What each question decided when it was the last one asked.
_DECIDED = {
    "A1": "no mathematics named yet",
    "A2": "mathematics told, no reason yet",
    "A3a": "a reason, not yet linked",
    "A3b": "a reason, its central idea to check",
    "A4a": "a linked reason, about the case at hand",
    "A4b": "a general claim, not yet supported",
    "R1": "a joining word, no reason about the mathematics yet",
    "R5": "a reason, its central idea to check",
    "R17": "a reason, with an idea to check",
    "B1": "no comment on own learning",
    "B2": "a comment, not yet about named mathematics",
    "B3": "about named mathematics, not yet what changed or helped",
}


def describe_reasoning(reasoning: Reasoning) -> str | None:
    """Return the reasoning level in words, ``None`` where there is none."""
    return None if reasoning.level is None else REASONING[reasoning.level]


def describe_metacognition(metacognition: Metacognition) -> str | None:
    """Return the metacognition level in words, ``None`` where there is none."""
    return None if metacognition.level is None else METACOGNITION[metacognition.level]


def describe_decision(strand: str, level: int | None, rule: str | None) -> str | None:
    """Return what decided a level, as "a reason, not yet linked: A3a": words first, no number.

    Parameters
    ----------
    strand : {"reasoning", "metacognition"}
        Whose level it is.
    level : int or None
        The level that the rule led to; without one there is nothing to describe.
    rule : str or None
        A question of the rubric, or one of its rules for hard cases (R1 to R19). A rule for hard
        cases is told by the level's own words: the path says what it decided.

    Returns
    -------
    str or None
    """
    if level is None:
        return None
    name = (REASONING if strand == "reasoning" else METACOGNITION)[level]
    if rule is None:
        return name
    if rule == "A4b" and level == 4:
        return f"a general claim, supported: {rule}"
    if rule == "B3" and level == 3:
        return f"what changed, what helped or what comes next: {rule}"
    if rule in _DECIDED:
        return f"{_DECIDED[rule]}: {rule}"
    return f"{name}, by rule {rule}"
