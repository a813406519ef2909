"""An entry as a row of words, numbers and signs, with the way back to its tokens."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import lru_cache

from journal.language.parse import Parse, Token
from journal.lexicon.kinds import load_kinds
from journal.lexicon.senses import load_senses
from journal.lexicon.terms import PIECES

_SIGNS = frozenset("=+×÷%<>°√π")


@dataclass(slots=True)
class Pieces:
    """Words, numbers and signs of a parse.

    ``words`` are in lower case as corrected; ``tokens`` holds each piece's token; ``starts`` and
    ``ends`` are offsets into the original. ``strong`` marks pieces that are mathematics whatever
    stands beside them: numbers, and terms with no everyday sense; ``soft`` marks the words of
    shape, fraction, operation and comparison that children use about mathematics; ``elsewhere``
    says whether any word is of life outside the lesson.
    """

    parse: Parse
    words: list[str]
    tokens: list[Token]
    starts: list[int]
    ends: list[int]
    strong: list[bool] = field(default_factory=list)
    soft: list[bool] = field(default_factory=list)
    elsewhere: bool = False

    def __len__(self) -> int:
        return len(self.words)

    def mark(self) -> None:
        """Fill in ``strong`` by the numbers and signs, and ``soft``."""
        numbers, soft_words, elsewhere = (
            load_kinds()["number"],
            _soft_words(),
            load_senses().elsewhere,
        )
        self.strong = [
            word in numbers or (not word.isalpha() and (word[0].isnumeric() or word in _SIGNS))
            for word in self.words
        ]
        self.soft = [word in soft_words for word in self.words]
        self.elsewhere = not elsewhere.isdisjoint(self.words)

    def said(self, first: int, after: int) -> str:
        """Return the child's own words for pieces, for quoting."""
        return self.parse.text[self.starts[first] : max(self.ends[first:after])]

    def window(self, at: int, after: int, reach: int) -> tuple[int, int]:
        """Return first and one past the last piece within reach, inside the sentence."""
        sentence = self.tokens[at].sentence
        first, last = at, after
        while first > 0 and at - first < reach and self.tokens[first - 1].sentence == sentence:
            first -= 1
        while (
            last < len(self.words)
            and last - after < reach
            and self.tokens[last].sentence == sentence
        ):
            last += 1
        return first, last


def read_pieces(parse: Parse) -> Pieces:
    """Cut the tokens of a parse as terms are cut.

    Returns
    -------
    Pieces
        "2D" and "7x8" fall apart; a hyphen between words and the full stops of "a.m." are left
        out, a minus sign between numbers stays. ``strong`` and ``soft`` are empty until
        `Pieces.mark`.
    """
    tokens: list[Token] = []
    cut: list[tuple[int, str, int, int]] = []
    row = parse.tokens
    for token in row:
        word = token.lower
        if word.isalpha() or word.isdecimal() or (len(word) == 1 and word != "-"):
            tokens.append(token)
        elif word != "-" or not _joins_words(row, token):
            exact = token.end - token.start == len(word)
            for piece, first in _pieces_of(word):
                start = token.start + first if exact else token.start
                cut.append((len(tokens), piece, start, start + len(piece) if exact else token.end))
                tokens.append(token)
    words = [token.lower for token in tokens]
    starts = [token.start for token in tokens]
    ends = [token.end for token in tokens]
    for at, piece, start, end in cut:
        words[at], starts[at], ends[at] = piece, start, end
    return Pieces(parse, words, tokens, starts, ends)


@lru_cache(maxsize=2048)
def _pieces_of(word: str) -> tuple[tuple[str, int], ...]:
    return tuple(
        (found.group(), found.start())
        for found in PIECES.finditer(word)
        if found.group() not in "-."
        or found.group() == word
        or _is_minus(found.group(), word, found.start())
    )


@lru_cache(maxsize=1)
def _soft_words() -> frozenset[str]:
    kinds = load_kinds()
    return kinds["shape"] | kinds["fraction"] | kinds["operation"] | kinds["comparing"]


def _joins_words(tokens: Sequence[Token], token: Token) -> bool:
    at = token.index
    if not 0 < at < len(tokens) - 1:
        return False
    before, after = tokens[at - 1], tokens[at + 1]
    return (
        before.end == token.start
        and after.start == token.end
        and before.lower[-1].isalnum()
        and after.lower[0].isalpha()
    )


def _is_minus(piece: str, word: str, at: int) -> bool:
    return (
        piece == "-"
        and 0 < at < len(word) - 1
        and word[at - 1].isdigit()
        and word[at + 1].isdigit()
    )
