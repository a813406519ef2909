"""Score records made by hand, for tests of what is done with them. All entries are invented."""

from __future__ import annotations

from dataclasses import replace
from typing import Any

from journal.records import (
    Claim,
    Flag,
    InformalUse,
    Marker,
    Metacognition,
    Reason,
    Reasoning,
    Score,
    ScorerVersion,
    Source,
    Spelling,
    Step,
    VocabularyUse,
)

TEXT = "a half is bigger then a third becuse the bottom number is smaller, 7x8 = 54"
NONE = Metacognition(None, None, (), ())


def span(surface: str, text: str = TEXT) -> tuple[int, int]:
    """Return where some words stand."""
    start = text.index(surface)
    return start, start + len(surface)


def make_score(entry_id: str = "17", pupil: str | None = "Ava", **changes: Any) -> Score:
    """Return a score with evidence of every kind, overlapping as it does in life."""
    score = Score(
        entry_id=entry_id,
        text=TEXT,
        words=14,
        source=Source(pupil=pupil, date="2026-03-04", unit="Fractions", lesson="1", year=4),
        plan=None,
        targets=("half", "third", "denominator"),
        scorer=ScorerVersion("0.1.0", "made", "made", "made"),
        scored=True,
        not_scored_because=None,
        excluded=(),
        spelling=(Spelling(*span("becuse"), "becuse", "because", "non_word", "“becuse”"),),
        vocabulary=(
            VocabularyUse(
                "half", *span("half"), "half", "target", "exact", "mathematical", False, True,
                False, "“half” is a word of the lesson",
            ),
            VocabularyUse(
                "number", *span("number"), "number", "curriculum", "exact", "mathematical", False,
                True, True, "“number”",
            ),
        ),
        informal=(InformalUse(*span("bottom number"), "bottom number", "denominator"),),
        markers=(
            Marker(
                *span("bigger then"), "bigger then", "bigger than", "comparison", "reasoning",
                True, "“bigger then” compares a half and a third",
            ),
            Marker(
                *span("becuse"), "becuse", "because", "reason", "reasoning", True,
                "“becuse” gives a reason about “the bottom number”",
            ),
            Marker(
                *span("is smaller"), "is smaller", "is", "certainty", "look_alike", False,
                "“is smaller” is another use",
            ),
        ),
        reasons=(
            Reason(
                1, span("a half is bigger then a third"), span("the bottom number is smaller"),
                "grounds", None, "mathematical", "“the bottom number is smaller” says why",
            ),
        ),
        claims=(Claim(*span("7x8 = 54"), "7x8 = 54", "false", True, False, "56"),),
        reasoning=Reasoning(
            2, 2, "rules", "A3a",
            (
                Step("A1", True, False, (span("half"),), "“half” is named"),
                Step("A2", True, False, (span("becuse"),), "“becuse” gives a reason"),
                Step("A3a", False, True, (), "no link says why this settles it"),
            ),
        ),
        metacognition=Metacognition(0, "B1", (Step("B1", False, False, (), "no words"),), ()),
        flags=(
            Flag(
                "idea_to_check", *span("7x8 = 54"), "7x8 = 54", None, 0, "“7x8 = 54”: it is 56",
            ),
        ),
    )  # fmt: skip
    return replace(score, **changes)


def make_worry(entry_id: str = "99", pupil: str = "Wren") -> Score:
    """Return the score of an entry that an adult has to read first."""
    text = "i dont feel safe"
    return make_score(
        entry_id, pupil, text=text, words=4, scored=False, not_scored_because="worry", spelling=(),
        vocabulary=(), informal=(), markers=(), reasons=(), claims=(),
        reasoning=Reasoning(None, None, "rules", None, ()), metacognition=NONE,
        flags=(Flag("worry", 0, 16, text, None, None, "“dont feel safe”"),),
    )  # fmt: skip
