"""Suggested levels against levels that people gave, beside what counting words would give."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any

from journal.evaluation.figures import Figure, quadratic_weighted_kappa
from journal.records import Score
from journal.scoring import Scorer

CONNECTIVES = re.compile(r"\b(because|becos|cos|so|therefore|since|if)\b", re.IGNORECASE)
_WORDS_A_LEVEL = 12


def measure_levels(scorer: Scorer, rows: Sequence[Mapping[str, Any]]) -> list[Figure]:
    """Return weighted kappa of both strands, and of two ways that read nothing.

    Parameters
    ----------
    scorer : Scorer
        As it ships.
    rows : sequence of mapping
        With ``text``, ``level_a`` (0 to 4) or ``level_b`` (0 to 3), and ``prompt`` or None.
        Entries without a level, from either side, are left out.
    """
    scores = list(
        scorer.score_many(
            {"text": row["text"], "prompt": row.get("prompt"), "worry_released": True}
            for row in rows
        )
    )
    reasoning = [
        (row["level_a"], score.reasoning.level, score)
        for row, score in zip(rows, scores, strict=True)
        if row.get("level_a") is not None and score.reasoning.level is not None
    ]
    metacognition = [
        (row["level_b"], score.metacognition.level, score)
        for row, score in zip(rows, scores, strict=True)
        if row.get("level_b") is not None and score.metacognition.level is not None
    ]
    return [
        *_figures("reasoning", reasoning, 5, ">= 0.90"),
        *_figures("metacognition", metacognition, 4, ">= 0.80"),
    ]


def _figures(
    what: str, pairs: Sequence[tuple[int, int, Score]], levels: int, target: str
) -> list[Figure]:
    if not pairs:
        return []
    judged = [level for level, _, _ in pairs]
    top = levels - 1

    def kappa(guess: Sequence[int]) -> float | None:
        return quadratic_weighted_kappa(judged, [min(top, level) for level in guess], levels)

    return [
        Figure(
            f"level of {what} against a person's",
            "weighted kappa",
            kappa([level for _, level, _ in pairs]),
            len(pairs),
            target,
            (
                ("words alone", kappa([score.words // _WORDS_A_LEVEL for _, _, score in pairs])),
                (
                    "connectives counted",
                    kappa([len(CONNECTIVES.findall(score.text)) for _, _, score in pairs]),
                ),
            ),
        ),
        *(
            Figure(
                f"words of entries at {what} level {level}, as a person judged / as suggested",
                f"mean, suggested {_mean_words(pairs, 1, level)}",
                _mean_words(pairs, 0, level),
                judged.count(level),
            )
            for level in range(levels)
        ),
    ]


def _mean_words(pairs: Sequence[tuple[int, int, Score]], which: int, level: int) -> float | None:
    words = [pair[2].words for pair in pairs if pair[which] == level]
    return round(sum(words) / len(words), 1) if words else None
