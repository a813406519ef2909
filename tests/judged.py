"""Judged sentences (invented) and the agreement of the suggested levels with them."""

from __future__ import annotations

import csv
from functools import lru_cache
from pathlib import Path

from journal.scoring import Scorer

DATA = Path(__file__).parent / "rubric" / "data"


@lru_cache(maxsize=1)
def load_scorer() -> Scorer:
    return Scorer()


def read_judged(name: str, strand: str) -> list[tuple[str, int]]:
    """Return text and judged level of each sentence of one strand."""
    with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as file:
        return [
            (row["text"], int(row["level"]))
            for row in csv.DictReader(file)
            if row["strand"] == strand
        ]


def suggest(text: str, strand: str) -> int | None:
    score = load_scorer().score(text)
    return score.reasoning.level if strand == "A" else score.metacognition.level


def agreement(pairs: list[tuple[int, int]]) -> float:
    """Return quadratic weighted kappa: 1 - observed over chance disagreement (Cohen 1968)."""
    observed = sum((a - b) ** 2 for a, b in pairs) / len(pairs)
    chance = sum((a - b) ** 2 for a, _ in pairs for _, b in pairs) / len(pairs) ** 2
    return 1 - observed / chance
