"""Match the patterns of words that tell two senses apart."""

from __future__ import annotations

from collections.abc import Mapping
from typing import NamedTuple, TypeAlias

from journal.evidence.senses.pieces import Pieces
from journal.lexicon.senses import Neighbour, SensePattern
from journal.records import Span

Classes: TypeAlias = Mapping[str, frozenset[str]]

_LONGEST_GAP = 3
_STOPS = frozenset(".!?;")


class Place(NamedTuple):
    """Where a term stands: its pieces, end exclusive, and its words as corrected."""

    first: int
    after: int
    surface: str


def match_pattern(
    pattern: SensePattern, pieces: Pieces, place: Place, classes: Classes
) -> Span | None:
    """Return the pieces a pattern covers about the word at ``place``, or None."""
    first, after, surface = place
    if pattern.only and surface not in pattern.only:
        return None
    end = after
    if pattern.after:
        reached = _walk(pattern.after, pieces, (after, 1), classes)
        if reached is None:
            return None
        end = reached
    start = first
    if pattern.before:
        reached = _walk(pattern.before, pieces, (first - 1, -1), classes)
        if reached is None:
            return None
        start = reached + 1
    return start, end


def _walk(
    items: tuple[Neighbour, ...], pieces: Pieces, start: tuple[int, int], classes: Classes
) -> int | None:
    at, step = start
    for item, neighbour in enumerate(items):
        if neighbour.gap:
            for _ in range(_LONGEST_GAP + 1):
                found = _walk(items[item + 1 :], pieces, (at, step), classes)
                if found is not None:
                    return found
                if not 0 <= at < len(pieces.words) or pieces.words[at] in _STOPS:
                    return None
                at += step
            return None
        if not 0 <= at < len(pieces.words):
            return at if "EDGE" in neighbour.classes and item == len(items) - 1 else None
        if not _stands(neighbour, pieces, at, classes):
            return None
        at += step
    return at


def _stands(neighbour: Neighbour, pieces: Pieces, at: int, classes: Classes) -> bool:
    word = pieces.words[at]
    if word in neighbour.words:
        return True
    for name in neighbour.classes:
        listed = classes.get(name)
        if listed is not None:
            if word in listed:
                return True
            if name == "NUM" and word[0].isnumeric():
                return True
        elif name == "MATH":
            if pieces.strong[at]:
                return True
        elif name == "EDGE":
            if word in ".!?;,":
                return True
        elif pieces.tokens[at].pos == name:
            return True
    return False
