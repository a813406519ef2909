"""The working text cut into numerals, words and signs, as arithmetic needs them."""

from __future__ import annotations

import re
from typing import Any, Literal, NamedTuple, TypeAlias

LexemeKind: TypeAlias = Literal["numeral", "word", "sign", "barrier"]

# A barrier is a number that is no quantity: a time of day, a date, a version.
_LEXEME = re.compile(
    r"""
    (?P<barrier>\d+:\d+(?::\d+)*|\d+/\d+/\d+|\d+-\d+-\d{4}|\d+\.\d+\.\d+(?:\.\d+)*)
  | (?P<numeral>\d{1,3}(?:,\d{3})+(?!\d)(?:\.\d+)?|\d{1,3}(?:[ ]000)+(?!\d)|\d+(?:\.\d+)?|\.\d+
      |[½¼¾⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞⅒])
  | (?P<word>[^\W\d_²³]+(?:'[^\W\d_²³]+)*)
  | (?P<sign>[^\s\w]|[²³]|_+)
    """,
    re.VERBOSE,
)


class Lexeme(NamedTuple):
    """A numeral, a word, a sign, or a number that is no quantity (2:30, 3/4/2024).

    ``text`` is lower case; ``start`` and ``end`` are indices into the working text, end exclusive.
    """

    kind: LexemeKind
    text: str
    start: int
    end: int


END = Lexeme("sign", "", -1, -1)
"""Stands before the first lexeme and after the last."""


_BEYOND = (END,) * 64


class Lexemes:
    """The lexemes of a text, with safe access on both sides.

    ``item(index)`` is a lexeme, ``text(index)`` its lower-case text; a little beyond either end
    stand END and the empty text. ``nouns`` holds the lower-case plural nouns that may be counted
    ("sweets"); ``read`` what was read at a lexeme before: numbers, then sides.
    """

    __slots__ = ("_items", "_size", "item", "nouns", "read", "text", "texts")

    def __init__(self, items: list[Lexeme], nouns: frozenset[str] = frozenset()) -> None:
        self._size = len(items)
        self.nouns = nouns
        self.read: tuple[dict[int, Any], dict[int, Any]] = ({}, {})
        # What stands at the end serves for what lies beyond either end, indices below 0 too.
        self._items = [*items, *_BEYOND]
        self.texts = [item.text for item in self._items]
        self.item = self._items.__getitem__
        self.text = self.texts.__getitem__

    def __len__(self) -> int:
        return self._size

    def glued(self, index: int) -> bool:
        """Say whether no space stands between a lexeme and the one before."""
        return 0 < index < self._size and self._items[index].start == self._items[index - 1].end

    def follows(self, index: int, *words: str) -> bool:
        """Say whether these words stand at ``index``, one after the other."""
        return (
            self.texts[index] == words[0] and tuple(self.texts[index : index + len(words)]) == words
        )


def read_lexemes(working: str, nouns: frozenset[str] = frozenset()) -> Lexemes:
    """Cut a text into lexemes.

    Parameters
    ----------
    working : str
        The corrected text.
    nouns : frozenset of str
        Plural nouns of the text that may be counted.

    Returns
    -------
    Lexemes
        White space is left out. "7x8" is three lexemes, "1,000" and "0.5" are one.
    """
    lowered = working.lower() if working.isascii() else _lower(working)
    # The plain tuple's constructor halves the time this takes.
    new = tuple.__new__
    items = [
        new(Lexeme, (found.lastgroup, found.group(), *found.span()))
        for found in _LEXEME.finditer(lowered)
    ]
    return Lexemes(items, nouns)


def _lower(text: str) -> str:
    """Lower-case a text without changing its length (a capital I with a dot would)."""
    lowered = text.lower()
    if len(lowered) == len(text):
        return lowered
    return "".join(c.lower() if len(c.lower()) == 1 else c for c in text)
