"""Number words, units of measure and facts of named shapes, from their data files."""

from __future__ import annotations

import csv
from collections.abc import Iterator, Mapping
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import Literal, TypeAlias, cast

from journal.errors import LexiconError
from journal.resources import LEXICON

NumberWordKind: TypeAlias = Literal["small", "ten", "scale", "part", "plural", "place", "whole"]
_KINDS = ("small", "ten", "scale", "part", "plural", "place", "whole")


@dataclass(frozen=True, slots=True)
class NumberWord:
    """A word for a number.

    Parameters
    ----------
    value : Fraction
        What it stands for; for a part ("thirds") one of them.
    kind : str
        ``small`` (0 to 19), ``ten`` (twenty..), ``scale`` (hundred..), ``part`` (half, thirds),
        ``plural`` (fives), ``place`` (tens, ones), ``whole``.
    """

    value: Fraction
    kind: NumberWordKind


@dataclass(frozen=True, slots=True)
class Unit:
    """A unit of measure: its name as written, its dimension and its size in the base unit."""

    name: str
    dimension: str
    size: Fraction


@lru_cache(maxsize=1)
def load_number_words() -> Mapping[str, NumberWord]:
    """Return the number words by their lower-case spelling."""
    found = {}
    for line, row in _rows("number_words.csv"):
        if row["kind"] not in _KINDS:
            raise LexiconError(
                f"number_words.csv, line {line}: kind {row['kind']!r} is none of "
                f"{', '.join(_KINDS)}; put one of them."
            )
        kind = cast(NumberWordKind, row["kind"])
        found[row["word"]] = NumberWord(_fraction("number_words.csv", line, row["value"]), kind)
    return found


@lru_cache(maxsize=1)
def load_units() -> Mapping[str, Unit]:
    """Return the units of measure by every spelling of their names."""
    return {
        row["name"]: Unit(row["name"], row["dimension"], _fraction("units.csv", line, row["size"]))
        for line, row in _rows("units.csv")
    }


@lru_cache(maxsize=1)
def load_shape_facts() -> Mapping[tuple[str, str], int]:
    """Return how many of a part a named shape has, by shape and part."""
    return {
        (row["thing"], row["part"]): int(_fraction("shape_facts.csv", line, row["count"]))
        for line, row in _rows("shape_facts.csv")
    }


@lru_cache(maxsize=1)
def load_claim_words() -> Mapping[str, frozenset[str]]:
    """Return the lists of small words that open, join and end statements about numbers."""
    return {row["list"]: frozenset(row["words"].split()) for _, row in _rows("claim_words.csv")}


def _rows(name: str) -> Iterator[tuple[int, dict[str, str]]]:
    with (LEXICON / name).open(encoding="utf-8", newline="") as file:
        yield from enumerate(csv.DictReader(file), start=2)


def _fraction(name: str, line: int, text: str) -> Fraction:
    try:
        return Fraction(text)
    except (ValueError, ZeroDivisionError):
        raise LexiconError(
            f"{name}, line {line}: {text!r} is not a number; write 12, 0.5 or 1/2."
        ) from None
