"""The evidence that tells a word's mathematical sense from its everyday one, read from data."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from typing import Any

from journal.errors import LexiconError
from journal.resources import LEXICON

GAP = "…"
"""In a pattern: up to three words of any kind within the sentence."""


@dataclass(frozen=True, slots=True)
class Neighbour:
    """One place beside a word: one of ``words``, or of the named ``classes``."""

    words: frozenset[str]
    classes: tuple[str, ...] = ()
    gap: bool = False


@dataclass(frozen=True, slots=True)
class SensePattern:
    """Words that must stand before (nearest first) and after a word.

    ``only`` narrows the word itself to some of its forms; empty is any.
    """

    before: tuple[Neighbour, ...]
    after: tuple[Neighbour, ...]
    only: frozenset[str]


@dataclass(frozen=True, slots=True)
class SenseEntry:
    """What decides the sense of one word.

    ``everyday`` is asked first, then ``mathematical``, then the parts of speech, then the company
    it keeps (``near``: words of its sentence; mathematics of any kind where ``company`` is set);
    what is left is ``otherwise``, and where the word is a target ``as_target``.
    """

    everyday: tuple[SensePattern, ...]
    mathematical: tuple[SensePattern, ...]
    everyday_as: frozenset[str]
    mathematical_as: frozenset[str]
    near: frozenset[str]
    company: bool
    otherwise: str
    as_target: str


@dataclass(frozen=True, slots=True)
class SenseTable:
    """Entries by word, the named classes of words, and plain words treated alike."""

    entries: Mapping[str, SenseEntry]
    classes: Mapping[str, frozenset[str]]
    plain: frozenset[str]


@lru_cache(maxsize=1)
def load_senses() -> SenseTable:
    """Load the evidence for every word with two senses.

    Raises
    ------
    LexiconError
        If the file can't be read, or a pattern has no place for its word.
    """
    path = LEXICON / "senses.toml"
    try:
        data = tomllib.loads(path.read_text(encoding="utf-8"))
    except (OSError, tomllib.TOMLDecodeError) as error:
        raise LexiconError(f"{path.name}: can't be read ({error}); correct it") from error
    classes = {name: frozenset(words) for name, words in data["classes"].items()}
    entries = {word: _read_entry(word, entry) for word, entry in data["word"].items()}
    return SenseTable(entries, classes, frozenset(data["plain"]["words"]))


def _read_entry(word: str, entry: Mapping[str, Any]) -> SenseEntry:
    return SenseEntry(
        tuple(read_pattern(word, text) for text in entry.get("everyday", ())),
        tuple(read_pattern(word, text) for text in entry.get("mathematical", ())),
        frozenset(entry.get("everyday_as", ())),
        frozenset(entry.get("mathematical_as", ())),
        frozenset(entry.get("near", ())),
        bool(entry.get("company", False)),
        entry.get("otherwise", "everyday"),
        entry.get("as_target", "mathematical"),
    )


def read_pattern(word: str, text: str) -> SensePattern:
    """Read a pattern such as ``"is|are ~ NUM"``.

    ``~`` is the word (``~means|meant`` only those forms), ``|`` parts alternatives, capitals name
    a class of words or a part of speech, ``…`` is a gap.

    Raises
    ------
    LexiconError
        If ``~`` is missing.
    """
    items = text.split()
    places = [at for at, item in enumerate(items) if item.startswith("~")]
    if len(places) != 1:
        raise LexiconError(f"senses.toml, word {word!r}: pattern {text!r} needs one ~ for the word")
    at = places[0]
    only = frozenset(items[at][1:].split("|")) - {""}
    return SensePattern(
        tuple(_read_neighbour(item) for item in reversed(items[:at])),
        tuple(_read_neighbour(item) for item in items[at + 1 :]),
        only,
    )


def _read_neighbour(item: str) -> Neighbour:
    if item == GAP:
        return Neighbour(frozenset(), gap=True)
    choices = item.split("|")
    return Neighbour(
        frozenset(choice for choice in choices if not choice.isupper()),
        tuple(choice for choice in choices if choice.isupper()),
    )
