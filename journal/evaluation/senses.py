"""Everyday uses of mathematical words, which must not be counted."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from typing import Any

from journal.evaluation.figures import Figure, ratio
from journal.scoring import Scorer


def measure_senses(scorer: Scorer, rows: Sequence[Mapping[str, Any]]) -> list[Figure]:
    """Return the share of everyday uses counted and of mathematical uses kept.

    Parameters
    ----------
    scorer : Scorer
        No plan and no target terms are given to it.
    rows : sequence of mapping
        With ``text``, ``start``, ``end`` and ``maths``.
    """
    scores = scorer.score_many({"text": row["text"], "worry_released": True} for row in rows)
    counted: dict[bool, list[bool]] = {True: [], False: []}
    for row, score in zip(rows, scores, strict=True):
        counted[bool(row["maths"])].append(
            any(
                use.counted and use.start < row["end"] and row["start"] < use.end
                for use in score.vocabulary
            )
        )
    everyday, maths = counted[False], counted[True]
    return [
        Figure(
            "everyday uses of mathematical words counted",
            "share",
            ratio(sum(everyday), len(everyday)),
            len(everyday),
            "<= 0.05",
            (("always", 1.0),),
        ),
        Figure(
            "mathematical uses counted (adult prose, loose labels)",
            "share",
            ratio(sum(maths), len(maths)),
            len(maths),
        ),
    ]
