"""Suggested levels against what was heard in lessons: evidence or reasoning, or not."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any

from journal.evaluation.figures import Figure, f1_score
from journal.scoring import Scorer

KEYWORDS = re.compile(r"\b(because|'?cause|cos|so|therefore|since|if)\b", re.IGNORECASE)
LONG = 10


def measure_talk(scorer: Scorer, rows: Sequence[Mapping[str, Any]]) -> list[Figure]:
    """Return F1 of level 2 or more for utterances labelled as evidence or reasoning.

    Parameters
    ----------
    scorer : Scorer
        Nothing in it was trained on these.
    rows : sequence of mapping
        With ``text`` and ``label_name``. Speech of whole lessons, labelled in context.
    """
    actual = [row["label_name"] == "providing_evidence_reasoning" for row in rows]
    scores = scorer.score_many({"text": row["text"], "worry_released": True} for row in rows)
    guess = [(score.reasoning.level or 0) >= 2 for score in scores]
    return [
        Figure(
            "level 2 or more, for evidence or reasoning in classroom talk",
            "F1",
            f1_score(guess, actual),
            len(actual),
            ">= 0.72",
            (
                ("keywords", f1_score([bool(KEYWORDS.search(r["text"])) for r in rows], actual)),
                ("ten words or more", f1_score([_is_long(r["text"]) for r in rows], actual)),
            ),
        )
    ]


def _is_long(text: str) -> bool:
    return len(text.split()) >= LONG
