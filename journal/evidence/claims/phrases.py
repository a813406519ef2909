"""Phrases found word for word at a place: the longest wins."""

from __future__ import annotations

import csv
from collections.abc import Iterable, Mapping
from functools import lru_cache

from journal.evidence.claims.lexing import Lexemes
from journal.resources import LEXICON


class Phrases:
    """Phrases with what each stands for.

    Parameters
    ----------
    meanings : iterable of (str, str)
        A phrase, its words parted by single spaces, and its meaning.
    """

    __slots__ = ("_by_first",)

    def __init__(self, meanings: Iterable[tuple[str, str]]) -> None:
        by_first: dict[str, list[tuple[tuple[str, ...], str]]] = {}
        for phrase, meaning in meanings:
            words = tuple(phrase.split(" "))
            by_first.setdefault(words[0], []).append((words, meaning))
        for options in by_first.values():
            options.sort(key=lambda option: -len(option[0]))
        self._by_first = by_first

    def __contains__(self, first: str) -> bool:
        return first in self._by_first

    def firsts(self) -> Iterable[str]:
        """Return the words with which a phrase begins."""
        return self._by_first.keys()

    def match(self, lexemes: Lexemes, at: int) -> tuple[str, int] | None:
        """Return the meaning of the longest phrase at a lexeme and one past its last lexeme."""
        for words, meaning in self._by_first.get(lexemes.text(at), ()):
            if len(words) == 1 or lexemes.follows(at, *words):
                return meaning, at + len(words)
        return None

    def match_all(self, lexemes: Lexemes, at: int) -> Iterable[tuple[str, int]]:
        """Yield every phrase at a lexeme, the longest first."""
        for words, meaning in self._by_first.get(lexemes.text(at), ()):
            if len(words) == 1 or lexemes.follows(at, *words):
                yield meaning, at + len(words)


@lru_cache(maxsize=1)
def load_operation_words() -> Mapping[str, Phrases]:
    """Return the words of operations by where they stand: between, before, pair, verb."""
    places: dict[str, list[tuple[str, str]]] = {}
    with (LEXICON / "operation_words.csv").open(encoding="utf-8", newline="") as file:
        for row in csv.DictReader(file):
            places.setdefault(row["place"], []).append((row["form"], row["operation"]))
    return {place: Phrases(meanings) for place, meanings in places.items()}
