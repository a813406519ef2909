"""Judged sentences with and without a prompt (invented), judged before they were scored.

Raw agreement before any was read for errors: quadratic weighted kappa 0.85, exact 0.80 of 60.
"""

from __future__ import annotations

import csv

from judged import DATA, agreement, load_scorer


def test_levels_agree_with_a_judge_with_and_without_a_prompt() -> None:
    with (DATA / "judged_fresh.csv").open(encoding="utf-8", newline="") as file:
        rows = list(csv.DictReader(line for line in file if not line.startswith("#")))
    scores = [load_scorer().score(row["text"], prompt=row["prompt"] or None) for row in rows]
    pairs = [
        (int(row["level"]), score.reasoning.level)
        for row, score in zip(rows, scores, strict=True)
        if score.reasoning.level is not None
    ]
    assert agreement(pairs) >= 0.9
