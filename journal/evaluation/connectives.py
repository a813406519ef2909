"""Markers against discourse connectives annotated in adult text."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any

from journal.evaluation.figures import Figure, f1_score
from journal.records import Marker
from journal.scoring import Scorer

CORE = frozenset(["because", "so", "since", "as", "if", "then", "when", "but", "although"])
CONNECTIVE = frozenset(["reasoning", "no_mathematics", "narrative", "echo"])
CAUSAL = frozenset(["reasoning", "no_mathematics", "echo"])
_PUNCTUATION = re.compile(r"[^\w\s'’%-]")

Row = Mapping[str, Any]


def as_a_child_types(text: str) -> str:
    """Return the text in lower case with its punctuation blanked, offset for offset."""
    return _PUNCTUATION.sub(" ", text.lower())


def find_at(scorer: Scorer, rows: Sequence[Row], *, childlike: bool) -> list[Marker | None]:
    """Return the marker found at each annotated occurrence, or None."""
    texts = [as_a_child_types(row["text"]) if childlike else row["text"] for row in rows]
    scores = scorer.score_many({"text": text, "worry_released": True} for text in texts)
    return [
        next(
            (mark for mark in score.markers if mark.start < row["end"] and row["start"] < mark.end),
            None,
        )
        for row, score in zip(rows, scores, strict=True)
    ]


def is_causal(row: Row) -> bool:
    """Say whether an occurrence is annotated as giving a cause or a result."""
    return bool(row["altlex"]) or any(
        sense.startswith("Contingency.Cause") for sense in row["senses"]
    )


def _f1(
    rows: Sequence[Row], found: Sequence[Marker | None], forms: frozenset[str]
) -> tuple[float | None, float | None, int]:
    chosen = [(row, mark) for row, mark in zip(rows, found, strict=True) if row["form"] in forms]
    actual = [row["is_connective"] or row["altlex"] for row, _ in chosen]
    guess = [mark is not None and mark.reading in CONNECTIVE for _, mark in chosen]
    return f1_score(guess, actual), f1_score([True] * len(actual), actual), len(actual)


def measure_connectives(scorer: Scorer, rows: Sequence[Row]) -> list[Figure]:
    """Return F1 for connective or not and causal or not, as written and as a child types."""
    rows = [{**row, "form": row["form"].lower()} for row in rows]
    figures = []
    for childlike in (False, True):
        how = "lower case, no punctuation" if childlike else "as written"
        found = find_at(scorer, rows, childlike=childlike)
        for what, forms, target in (
            ("nine core forms", CORE, ">= 0.94"),
            *((form, frozenset([form]), "") for form in sorted(CORE)),
        ):
            value, always, size = _f1(rows, found, forms)
            figures.append(
                Figure(
                    f"connective or not, {what}, {how}",
                    "F1",
                    value,
                    size,
                    target,
                    (("always", always),),
                )
            )
        figures.append(_causal(rows, found, how))
        figures.append(_not_initial_so(rows, found, how))
    return figures


def _causal(rows: Sequence[Row], found: Sequence[Marker | None], how: str) -> Figure:
    chosen = [
        (row, mark)
        for row, mark in zip(rows, found, strict=True)
        if row["form"] not in ("then", "for")
        and ((mark is not None and mark.function in ("reason", "result")) or is_causal(row))
    ]
    actual = [is_causal(row) for row, _ in chosen]
    guess = [
        mark is not None and mark.function in ("reason", "result") and mark.reading in CAUSAL
        for _, mark in chosen
    ]
    always = f1_score([True] * len(actual), actual)
    return Figure(
        f"causal or not, without then and for, {how}",
        "F1",
        f1_score(guess, actual),
        len(actual),
        ">= 0.85",
        (("always", always),),
    )


def _not_initial_so(rows: Sequence[Row], found: Sequence[Marker | None], how: str) -> Figure:
    chosen = [
        (row["is_connective"] or row["altlex"], mark)
        for row, mark in zip(rows, found, strict=True)
        if row["form"] == "so" and row["text"][: row["start"]].strip(" \"'“‘-")
    ]
    actual = [truth for truth, _ in chosen]
    guess = [mark is not None and mark.reading in CONNECTIVE for _, mark in chosen]
    return Figure(
        f"connective or not, so inside a sentence, {how}",
        "F1",
        f1_score(guess, actual),
        len(actual),
        ">= 0.93",
        (("always", f1_score([True] * len(actual), actual)),),
    )
