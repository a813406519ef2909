"""Judged comments on learning (invented), with and without a prompt: see the files' heads."""

from __future__ import annotations

import csv

import pytest
from judged import DATA, agreement, load_scorer


@pytest.mark.parametrize(
    ("name", "least"),
    [
        ("judged_learning", 0.9),
        ("judged_learning_second", 0.9),
        ("judged_learning_third", 0.85),
        ("judged_learning_fourth", 0.85),
    ],
)
def test_levels_of_learning_agree_with_a_judge(name: str, least: float) -> None:
    with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(line for line in file if not line.startswith("#")))
    scores = [load_scorer().score(row["text"], prompt=row["prompt"] or None) for row in rows]
    pairs = [
        (int(row["level"]), score.metacognition.level)
        for row, score in zip(rows, scores, strict=True)
        if score.metacognition.level is not None
    ]
    assert agreement(pairs) >= least


@pytest.mark.parametrize(
    ("text", "level"),
    [
        ("7 x 8 is 56 and 6 x 8 is 48. I always forget these.", 2),
        ("I always forget these when Sam is talking.", 1),
        ("I was lost at first. I could not do the puzzle.", 2),
        ("I am getting better at telling the time.", 2),
        ("I still need help with telling the time.", 2),
        ("I get it wrong when they have remainders.", 2),
        ("I got stuck so I put my hand up.", 1),
        ("I kept losing count of the cubes so I put them in tens.", 3),
        ("I was muddled about area because I forgot the squares inside.", 3),
        ("The number line helped because it helped me.", 2),
        ("The number line helped because I could see the jumps.", 3),
        ("Next time I will try harder with fractions.", 2),
        ("Next time I will find the common denominator first.", 3),
    ],
)
def test_a_comment_is_read_with_what_stands_near_it(text: str, level: int) -> None:
    """Minimal pairs for B2 and B3, invented."""
    assert load_scorer().score(text).metacognition.level == level
