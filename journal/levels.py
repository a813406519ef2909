"""The levels and rules in a teacher's words; the number comes second."""

from __future__ import annotations

from journal.records import Metacognition, NotScored, Reasoning

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

# What each question decided when it was the last one asked.
_DECIDED = {
    "A1": "no mathematics named yet",
    "A2": "mathematics told, no reason yet",
    "A3a": "a reason, not yet linked",
    "A3b": "a reason, the central idea to check",
    "A4a": "a linked reason, about the case at hand",
    "A4b": "a general claim",
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


def describe_rule(level: int | None, rule: str | None) -> str | None:
    """Return the deciding rule in words with its name, as "a reason, not yet linked: A3a".

    Parameters
    ----------
    level : int or None
        The level that the rule led to.
    rule : str or None
        A question of the rubric, or one of its rules for hard cases (R1 to R19).

    Returns
    -------
    str or None
        A rule for hard cases has no words here: the path's own words say what it decided.
    """
    if rule is None:
        return None
    if rule == "A4b":
        words = "a general claim, supported" if level == 4 else "a general claim, not yet supported"
    elif rule == "B3" and level == 3:
        words = "what changed, helped or comes next"
    else:
        words = _DECIDED.get(rule, "")
    return f"{words}: {rule}" if words else f"by rule {rule}"
