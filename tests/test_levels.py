"""Levels in a teacher's words: the words first, the rule beside them."""

from __future__ import annotations

from typing import get_args

import pytest

from journal.levels import METACOGNITION, QUESTIONS, REASONING, describe_decision
from journal.records import Question


@pytest.mark.parametrize(
    ("strand", "level", "rule", "words"),
    [
        ("reasoning", 2, "A3a", "a reason, not yet linked: A3a"),
        ("reasoning", 3, "A4b", "a general claim, not yet supported: A4b"),
        ("reasoning", 4, "A4b", "a general claim, supported: A4b"),
        ("reasoning", 2, "R13", "an explanation with a reason, by rule R13"),
        ("reasoning", 2, None, "an explanation with a reason"),
        ("metacognition", 2, "B3", "about named mathematics, not yet what changed or helped: B3"),
        ("metacognition", 3, "B3", "what changed, what helped or what comes next: B3"),
        ("metacognition", 1, "R19", "a comment on own learning, by rule R19"),
        ("reasoning", None, "A1", None),
    ],
)
def test_a_decision_is_words_then_its_rule(
    strand: str, level: int | None, rule: str | None, words: str | None
) -> None:
    assert describe_decision(strand, level, rule) == words


def test_every_question_has_its_words() -> None:
    assert set(QUESTIONS) == set(get_args(Question))


def test_there_is_a_name_for_every_level() -> None:
    assert (len(REASONING), len(METACOGNITION)) == (5, 4)
