"""One flat row an entry, for spreadsheets."""

from __future__ import annotations

from typing import Any, get_args

from journal.levels import NOT_YET_CHECKED, describe_metacognition, describe_reasoning
from journal.records import Function, Score

_JOINT = "; "


COLUMNS: dict[str, type] = {
    "entry_id": str,
    "pupil": str,
    "date": str,
    "unit": str,
    "lesson": str,
    "year": int,
    "mode": str,
    "revision": int,
    "words": int,
    "scored": bool,
    "not_scored_because": str,
    "reasoning_level": int,
    "reasoning_name": str,
    "reasoning_rule": str,
    "metacognition_level": int,
    "metacognition_name": str,
    "metacognition_rule": str,
    "levels_are": str,
    "target_terms_used": str,
    "target_terms_in_a_reason": str,
    "other_terms_used": str,
    "informal_forms": str,
    **{f"markers_{function}": int for function in get_args(Function)},
    "grounded_reasons": str,
    "claims_to_check": str,
    "ideas_to_check": str,
    "flags": str,
}
"""The columns in their order, with the type of their values."""


def flatten_score(score: Score) -> dict[str, Any]:
    """Return the row of one entry: numbers, truth values and words, lists joined by "; ".

    Parameters
    ----------
    score : Score
        A score without a worry: such an entry is in no table.

    Returns
    -------
    dict
        Column name to value, in a fixed order, the same columns for every entry.
    """
    source, text = score.source, score.text
    counted = [use for use in score.vocabulary if use.counted]
    ideas = [flag for flag in score.flags if flag.kind == "idea_to_check"]
    row: dict[str, Any] = {
        "entry_id": score.entry_id,
        "pupil": source.pupil,
        "date": source.date,
        "unit": source.unit,
        "lesson": source.lesson,
        "year": source.year,
        "mode": source.mode,
        "revision": source.revision,
        "words": score.words,
        "scored": score.scored,
        "not_scored_because": score.not_scored_because,
        "reasoning_level": score.reasoning.level,
        "reasoning_name": describe_reasoning(score.reasoning),
        "reasoning_rule": score.reasoning.rule,
        "metacognition_level": score.metacognition.level,
        "metacognition_name": describe_metacognition(score.metacognition),
        "metacognition_rule": score.metacognition.rule,
        "levels_are": NOT_YET_CHECKED,
        "target_terms_used": _join(use.term for use in counted if use.kind == "target"),
        "target_terms_in_a_reason": _join(
            use.term for use in counted if use.kind == "target" and use.in_reason
        ),
        "other_terms_used": _join(use.term for use in counted if use.kind != "target"),
        "informal_forms": _join(f"{use.surface} ({use.formal})" for use in score.informal),
    }
    for function in get_args(Function):
        row[f"markers_{function}"] = sum(
            marker.counted and marker.function == function for marker in score.markers
        )
    row["grounded_reasons"] = _join(
        text[slice(*reason.reason)] for reason in score.reasons if reason.ground == "mathematical"
    )
    row["claims_to_check"] = _join(
        f"{claim.surface} (= {claim.computed})" if claim.computed else claim.surface
        for claim in score.claims
        if claim.asserted and claim.verdict == "false"
    )
    row["ideas_to_check"] = _join(flag.idea or flag.surface for flag in ideas)
    row["flags"] = _join(flag.kind for flag in score.flags if flag.kind != "worry")
    return row


def _join(words: Any) -> str:
    return _JOINT.join(dict.fromkeys(" ".join(word.split()) for word in words))
