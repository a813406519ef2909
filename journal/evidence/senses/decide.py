"""Decide the sense of one use of a term by its neighbours, its part of speech and its company."""

from __future__ import annotations

from typing import NamedTuple

from journal.evidence.senses.patterns import Place, match_pattern
from journal.evidence.senses.pieces import Pieces
from journal.lexicon.senses import SenseEntry, SensePattern, load_senses
from journal.records import Sense, Span

REACH = 6
"""Words to either side, inside the sentence, in which mathematics counts as company."""


class SenseDecision(NamedTuple):
    """The sense of one use, and why in a teacher's words."""

    sense: Sense
    why: str


def decide_sense(
    pieces: Pieces, first: int, after: int, name: str, word_type: str, *, is_target: bool
) -> SenseDecision:
    """Decide in which sense the term in ``pieces[first:after]`` is used.

    Parameters
    ----------
    pieces : Pieces
        The entry, with ``strong`` filled in.
    first, after : int
        Pieces of the term, end exclusive.
    name : str
        The term in lower case, without a sense in brackets.
    word_type : str
        As in `journal.lexicon.terms.Term`.
    is_target : bool
        Whether it is a target of the lesson, which makes the mathematical sense likely.

    Returns
    -------
    SenseDecision
        Everyday uses first, then licensed mathematical ones, then part of speech, then company.
    """
    table = load_senses()
    surface = pieces.words[first] if after == first + 1 else " ".join(pieces.words[first:after])
    entry = table.entries.get(name) or table.entries.get(surface)
    if entry is None:
        if name in table.plain or word_type in ("general", "everyday"):
            return _plain_sense(pieces, first, after, is_target)
        return SenseDecision("mathematical", "a word of mathematics only")
    return _by_entry(entry, pieces, Place(first, after, surface), is_target=is_target)


def _by_entry(entry: SenseEntry, pieces: Pieces, place: Place, *, is_target: bool) -> SenseDecision:
    first, after, _ = place
    classes = load_senses().classes
    idiom = _first(entry.idioms, pieces, place)
    if idiom is not None:
        return SenseDecision("everyday", f'everyday use: "{pieces.said(*idiom)}"')
    decisive = _first(entry.decisive, pieces, place)
    if decisive is not None:
        return SenseDecision("mathematical", f'read with "{pieces.said(*decisive)}"')
    licensed: Span | None = None
    for pattern in entry.mathematical:
        reach = match_pattern(pattern, pieces, place, classes)
        if reach is None:
            continue
        licensed = licensed or reach
        if _is_firm(pieces, reach, place, entry):
            return SenseDecision("mathematical", f'read with "{pieces.said(*reach)}"')
    usual = _first(entry.everyday, pieces, place)
    if usual is not None:
        return SenseDecision("everyday", f'everyday use: "{pieces.said(*usual)}"')
    elsewhere = _elsewhere(pieces, first, after, entry.near)
    if elsewhere is not None:
        return elsewhere
    if licensed is not None and (is_target or _has_mathematics(pieces, place)):
        return SenseDecision("mathematical", f'read with "{pieces.said(*licensed)}"')
    pos = pieces.tokens[after - 1].pos
    if pos in entry.everyday_as:
        return SenseDecision("everyday", f'"{pieces.said(first, after)}" used as {_PART[pos]}')
    near = _nearby(pieces, first, after, entry.near)
    if near is not None:
        return SenseDecision("mathematical", f'near "{pieces.said(near, near + 1)}"')
    company = _company(pieces, first, after)
    if company is not None and (entry.company or pos in entry.mathematical_as or is_target):
        if is_target and entry.as_target == "everyday" and not entry.company:
            return SenseDecision("everyday", "nothing beside it makes it mathematics")
        return SenseDecision(
            "mathematical", f'beside mathematics: "{pieces.said(company, company + 1)}"'
        )
    if entry.otherwise == "mathematical":
        return SenseDecision("mathematical", "nothing beside it makes it an everyday word")
    if is_target:
        if entry.as_target == "mathematical":
            return SenseDecision("unsure", "a target term, and nothing speaks against it: counted")
        return SenseDecision("everyday", "nothing beside it makes it mathematics")
    if entry.otherwise == "unsure":
        return SenseDecision("unsure", "nothing beside it settles the sense")
    return SenseDecision("everyday", "nothing beside it makes it mathematics")


_PART = {
    "VERB": "a doing word",
    "AUX": "a doing word",
    "NOUN": "a thing",
    "PROPN": "a name",
    "ADJ": "a describing word",
    "ADV": "a describing word",
    "INTJ": "an exclamation",
    "ADP": "a linking word",
    "SCONJ": "a linking word",
    "CCONJ": "a linking word",
    "PRON": "a pronoun",
    "DET": "a pointing word",
    "PART": "a small word",
    "X": "another word",
    "NUM": "a number",
    "PUNCT": "a sign",
    "SYM": "a sign",
}


def _is_firm(pieces: Pieces, reach: Span, place: Place, entry: SenseEntry) -> bool:
    # The neighbours that license it speak of mathematics themselves.
    things = load_senses().classes["THING"]
    return any(
        pieces.strong[at]
        or pieces.soft[at]
        or pieces.words[at] in entry.near
        or pieces.words[at] in things
        for at in range(*reach)
        if not place.first <= at < place.after
    )


def _first(patterns: tuple[SensePattern, ...], pieces: Pieces, place: Place) -> Span | None:
    classes = load_senses().classes
    for pattern in patterns:
        reach = match_pattern(pattern, pieces, place, classes)
        if reach is not None:
            return reach
    return None


def _has_mathematics(pieces: Pieces, place: Place) -> bool:
    # Anywhere in the entry; terms with two senses count where they are not the word itself.
    for marks in (pieces.strong, pieces.soft):
        if any(marks[: place.first]) or any(marks[place.after :]):
            return True
    return False


def _elsewhere(
    pieces: Pieces, first: int, after: int, near: frozenset[str] = frozenset()
) -> SenseDecision | None:
    # Everyday company decides only where it stands nearer than any mathematics.
    if not pieces.elsewhere:
        return None
    words, start, end = load_senses().elsewhere, *pieces.window(first, after, REACH)
    for distance in range(1, REACH + 1):
        around = [at for at in (after - 1 + distance, first - distance) if start <= at < end]
        for at in around:
            if pieces.strong[at] or pieces.soft[at] or pieces.words[at] in near:
                return None
        for at in around:
            if pieces.words[at] in words:
                return SenseDecision("everyday", f'everyday use beside "{pieces.said(at, at + 1)}"')
    return None


def _plain_sense(pieces: Pieces, first: int, after: int, is_target: bool) -> SenseDecision:
    elsewhere = _elsewhere(pieces, first, after)
    if elsewhere is not None:
        return elsewhere
    company = _company(pieces, first, after, soft=True)
    if company is not None:
        said = pieces.said(company, company + 1)
        return SenseDecision("mathematical", f'beside mathematics: "{said}"')
    if is_target:
        return SenseDecision("unsure", "a target term, and nothing speaks against it: counted")
    return SenseDecision("everyday", "nothing beside it makes it mathematics")


def _company(pieces: Pieces, first: int, after: int, *, soft: bool = False) -> int | None:
    start, end = pieces.window(first, after, REACH)
    strong = pieces.strong
    for distance in range(1, max(end - after, first - start) + 1):
        for at in (after - 1 + distance, first - distance):
            if start <= at < end and (strong[at] or (soft and pieces.soft[at])):
                return at
    return None


def _nearby(pieces: Pieces, first: int, after: int, words: frozenset[str]) -> int | None:
    if not words:
        return None
    start, end = pieces.window(first, after, 2 * REACH)
    for at in range(start, end):
        if not first <= at < after and pieces.words[at] in words:
            return at
    return None
