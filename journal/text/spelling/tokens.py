"""The pieces of a text as the speller sees them: words, numbers, marks, and what is left alone."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Sequence
from dataclasses import dataclass

from journal.records import Span

_PIECE = re.compile(
    r"(?P<link>(?:https?://|www\.)\S+)"
    r"|(?P<word>[^\W\d_]+(?:['-][^\W\d_]+)*)"
    r"|(?P<number>\d[\d.,:/]*)"
    r"|(?P<gap>\n\s*)"
    r"|(?P<mark>[^\w\s]|_)"
)
_ENDS = frozenset(".!?;:")
NUMBER = "#"
STOP = "."


@dataclass(slots=True)
class Piece:
    """A word, number or mark with its place.

    Parameters
    ----------
    start, end : int
        Python string indices, end exclusive.
    surface : str
        As it stands in the plainer text.
    lower : str
        How rules see it: lower-case; ``#`` for a number, ``.`` for the end of a sentence.
    is_word : bool
        Whether it is a run of letters that may be corrected.
    opens : bool
        Whether it begins a sentence or a line.
    """

    start: int
    end: int
    surface: str
    lower: str
    is_word: bool
    opens: bool


def _clings(character: str) -> bool:
    """Say whether a letter run beside this character is a code, a unit or foreign."""
    if character.isspace():
        return False
    if character in "@_#\\~^&" or character.isalnum():
        return True
    return not character.isascii() and unicodedata.category(character)[0] == "M"


def find_pieces(clean: str, excluded: Sequence[Span] = ()) -> list[Piece]:
    """Return words, numbers and marks in order.

    Parameters
    ----------
    clean : str
        Text after `normalise_characters`.
    excluded : sequence of Span
        Stretches in which no word may be corrected; each stands as the end of a sentence.

    Returns
    -------
    list of Piece
        A line break is the end of a sentence when a blank line, a capital or a digit follows.
    """
    pieces: list[Piece] = []
    opens = True
    size = len(clean)
    stretches = sorted(excluded)
    for found in _PIECE.finditer(clean):
        start, end = found.span()
        surface = found.group()
        kind = found.lastgroup
        if stretches:
            while stretches and stretches[0][1] <= start:
                stretches.pop(0)
            if stretches and end > stretches[0][0]:
                pieces.append(Piece(start, end, surface, STOP, False, opens))
                opens = True
                continue
        if kind == "word":
            before = clean[start - 1] if start else " "
            after = clean[end] if end < size else " "
            # "th- the": a word broken off is no misspelling.
            alone = (
                surface.isascii()
                and (before == " " or not _clings(before))
                and (after == " " or not (after == "-" or _clings(after)))
            )
            pieces.append(Piece(start, end, surface, surface.lower(), alone, opens))
            opens = False
        elif kind == "number":
            pieces.append(Piece(start, end, surface, NUMBER, False, opens))
            opens = False
        elif kind == "gap":
            after = clean[end] if end < size else ""
            if surface.count("\n") > 1 or after.isupper() or after.isdigit():
                pieces.append(Piece(start, end, surface, STOP, False, opens))
            opens = True
        elif kind == "mark":
            stop = surface in _ENDS
            lower = STOP if stop else surface
            pieces.append(Piece(start, end, surface, lower, False, opens))
            opens = opens or stop or surface in "\"'([-•*"
        else:
            pieces.append(Piece(start, end, surface, surface, False, opens))
            opens = False
    return pieces
