"""Judged comments on learning (invented), with and without a prompt: see the files' heads."""

from __future__ import annotations

import csv

import pytest
from judged import DATA, agreement, load_scorer


@pytest.mark.parametrize(("name", "least"), [("judged_learning", 0.9)])
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
