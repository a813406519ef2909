"""An entry as a row of words, numbers and signs, with the way back to its tokens."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass, field
from functools import lru_cache

from journal.language.parse import Parse, Token
from journal.lexicon.kinds import load_kinds
from journal.lexicon.terms import PIECES


@dataclass(slots=True)
class Pieces:
    """Words, numbers and signs of a parse.

    ``words`` are in lower case as corrected; ``tokens`` holds each piece's token; ``starts`` and
    ``ends`` are offsets into the original. ``strong`` marks pieces that are mathematics whatever
    stands beside them: numbers, and terms with no everyday sense; ``soft`` marks the words of
    shape, fraction, operation and comparison that children use about mathematics.
    """

    parse: Parse
    words: list[str]
    tokens: list[Token]
    starts: list[int]
    ends: list[int]
    strong: list[bool] = field(default_factory=list)
    soft: list[bool] = field(default_factory=list)

    def __len__(self) -> int:
        return len(self.words)

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
        out, a minus sign between numbers stays.
    """
    words: list[str] = []
    tokens: list[Token] = []
    starts: list[int] = []
    ends: list[int] = []
    kinds = load_kinds()
    numbers = kinds["number"]
    strong: list[bool] = []
    soft_words = _soft_words()
    row = parse.tokens
    for token in row:
        word = token.lower
        if word.isalpha():
            words.append(word)
            tokens.append(token)
            starts.append(token.start)
            ends.append(token.end)
            strong.append(word in numbers)
            continue
        if word == "-" and _joins_words(row, token):
            continue
        exact = token.end - token.start == len(word)
        for found in PIECES.finditer(word):
            piece = found.group()
            if piece in "-." and piece != word and not _is_minus(piece, word, found.start()):
                continue
            words.append(piece)
            tokens.append(token)
            starts.append(token.start + found.start() if exact else token.start)
            ends.append(token.start + found.end() if exact else token.end)
            strong.append(piece[0].isnumeric() or piece in "=+×÷%<>°√π" or piece in numbers)
    soft = [word in soft_words for word in words]
    return Pieces(parse, words, tokens, starts, ends, strong, soft)


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
