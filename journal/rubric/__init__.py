"""The rubric: decision questions asked in order of the evidence, one named function each."""

from __future__ import annotations

from journal.rubric.level import check_reasoning
from journal.rubric.metacognition import check_metacognition
from journal.rubric.scoring_limits import check_too_short, check_worry

RUBRIC_VERSION = "1"

__all__ = [
    "RUBRIC_VERSION",
    "check_metacognition",
    "check_reasoning",
    "check_too_short",
    "check_worry",
]
