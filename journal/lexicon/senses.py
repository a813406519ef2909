"""The evidence that tells a word's mathematical sense from its everyday one, read from data."""

from __future__ import annotations

import tomllib
from collections import Counter
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from itertools import chain, product
from typing import Any

from journal.errors import LexiconError
from journal.lexicon.kinds import load_kinds
from journal.lexicon.terms import PIECES, load_terms
from journal.resources import LEXICON

_CLASS_OF_KIND = {
    "number": "NUM",
    "unit": "UNIT",
    "shape": "SHAPE",
    "fraction": "FRACTION",
    "operation": "OPERATION",
    "ordinal": "ORDINAL",
}

GAP = "…"
"""In a pattern: up to three words of any kind within the sentence."""

PARTS_OF_SPEECH = frozenset(
    ("ADJ", "ADP", "ADV", "AUX", "DET", "NOUN", "PART", "PRON", "PROPN", "VERB")
)
_OWN_CLASSES = frozenset(("MATH", "EDGE"))
# The parser cuts these from the word before them.
_CUT_OFF = ("n't", "'s", "'re", "'ve", "'ll", "'m", "'d")


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

    ``idioms`` are asked first ("even though"), then ``decisive`` patterns ("fold the net"), then
    ``mathematical`` patterns whose neighbours are mathematics themselves, then ``everyday``, then
    the other ``mathematical`` ones, then the parts of speech, then its company (``near``: words
    of its sentence; mathematics of any kind where ``company`` is set);
    what is left is ``otherwise``, and where the word is a target ``as_target``.
    """

    idioms: tuple[SensePattern, ...]
    decisive: tuple[SensePattern, ...]
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
    """Entries by word, the named classes of words, and plain words treated alike.

    ``elsewhere`` are words of life outside the lesson, company for everyday senses.
    """

    entries: Mapping[str, SenseEntry]
    classes: Mapping[str, frozenset[str]]
    plain: frozenset[str]
    elsewhere: frozenset[str]


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
    kinds = load_kinds()
    classes = {name: frozenset(words) for name, words in data["classes"].items()}
    classes.update(
        (_CLASS_OF_KIND[kind], words) for kind, words in kinds.items() if kind in _CLASS_OF_KIND
    )
    entries = {
        word: _read_entry(word, entry, frozenset(classes) | PARTS_OF_SPEECH | _OWN_CLASSES)
        for word, entry in data["word"].items()
    }
    return SenseTable(
        entries, classes, frozenset(data["plain"]["words"]), frozenset(data["elsewhere"]["words"])
    )


def _read_entry(word: str, entry: Mapping[str, Any], classes: frozenset[str]) -> SenseEntry:
    everyday = entry.get("everyday", ())
    mathematical = entry.get("mathematical", ())
    for text in (*everyday, *mathematical):
        _check_pattern(word, text, classes)
    return SenseEntry(
        _read_all(word, [text[1:] for text in everyday if text[0] == "!"]),
        _read_all(word, [text[1:] for text in mathematical if text[0] == "!"]),
        _read_all(word, [text for text in everyday if text[0] != "!"]),
        _read_all(word, [text for text in mathematical if text[0] != "!"]),
        frozenset(entry.get("everyday_as", ())),
        frozenset(entry.get("mathematical_as", ())),
        frozenset(entry.get("near", ())),
        bool(entry.get("company", False)),
        entry.get("otherwise", "everyday"),
        entry.get("as_target", "mathematical"),
    )


def _check_pattern(word: str, text: str, classes: frozenset[str]) -> None:
    # What could never stand in a text is a slip of the pen: a pattern nobody would miss.
    items = text.removeprefix("!").split()
    where = f"senses.toml, word {word!r}: pattern {text!r}"
    if GAP in (items[0], items[-1]):
        raise LexiconError(f"{where} begins or ends with {GAP}; say what must stand there")
    for item in items:
        if item.startswith("~"):
            stray = [form for form in item[1:].split("|") if not _is_form(form, word)]
            if stray and item != "~":
                raise LexiconError(f"{where} names {stray[0]!r}, which is no form of the word")
            continue
        alternatives = item.split("|")
        again, times = Counter(alternatives).most_common(1)[0]
        if times > 1:
            raise LexiconError(f"{where} names {again!r} twice; drop one")
        for part in chain.from_iterable(choice.split("_") for choice in alternatives):
            if part != GAP and not _can_stand(part, classes):
                raise LexiconError(f"{where} can never meet {part!r}; write it as texts are cut")


def _can_stand(part: str, classes: frozenset[str]) -> bool:
    if part.isupper() and part.isalpha():
        return part in classes
    if part != "n't" and part.endswith(_CUT_OFF):
        return False
    return part == part.lower() and bool(PIECES.fullmatch(part))


def _is_form(form: str, word: str) -> bool:
    if form == word:
        return True
    return any(
        form == " ".join(pattern.words) and pattern.term.name.lower() == word
        for pattern in load_terms().heads.get(form.partition(" ")[0], ())
    )


def _read_all(word: str, texts: Sequence[str]) -> tuple[SensePattern, ...]:
    return tuple(chain.from_iterable(read_patterns(word, text) for text in texts))


def read_patterns(word: str, text: str) -> Iterator[SensePattern]:
    """Read a pattern such as ``"is|are ~ NUM"``.

    ``~`` is the word (``~means|meant`` only those forms), ``|`` parts alternatives, ``_`` joins an
    alternative of several words, capitals name a class of words or a part of speech, ``…`` is a
    gap.

    Yields
    ------
    SensePattern
        One for the alternatives of single words, and one for each of several words.

    Raises
    ------
    LexiconError
        If ``~`` is missing or stands twice.
    """
    items = text.split()
    places = [at for at, item in enumerate(items) if item.startswith("~")]
    if len(places) != 1:
        raise LexiconError(f"senses.toml, word {word!r}: pattern {text!r} needs one ~ for the word")
    at = places[0]
    only = frozenset(items[at][1:].split("|")) - {""}
    for before in product(*map(_alternatives, items[:at])):
        for after in product(*map(_alternatives, items[at + 1 :])):
            yield SensePattern(tuple(chain(*before))[::-1], tuple(chain(*after)), only)


def _alternatives(item: str) -> list[tuple[Neighbour, ...]]:
    if item == GAP:
        return [(Neighbour(frozenset(), gap=True),)]
    choices = item.split("|")
    single = [choice for choice in choices if "_" not in choice]
    several = [choice.split("_") for choice in choices if "_" in choice]
    found = [tuple(map(_neighbour, [[word] for word in words])) for words in several]
    return [(_neighbour(single),), *found] if single else found


def _neighbour(choices: Sequence[str]) -> Neighbour:
    return Neighbour(
        frozenset(choice for choice in choices if not choice.isupper()),
        tuple(choice for choice in choices if choice.isupper()),
    )
