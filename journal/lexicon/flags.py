"""The phrases behind the flags, read from files that a school can edit."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

from journal.errors import LexiconError
from journal.lexicon.patterns import PatternError, PatternIndex
from journal.lexicon.word_keys import WordStream, key_of
from journal.resources import LEXICON

_GROUP = re.compile(r"\[(\w+)\]")


@dataclass(frozen=True, slots=True)
class Phrases:
    """Phrases with the phrases that make them mean something else.

    Parameters
    ----------
    wanted : PatternIndex of str
        What to look for; a pattern's owner is its group.
    unless : PatternIndex of str
        Where one of these lies over a phrase, the phrase is passed over.
    """

    wanted: PatternIndex[str]
    unless: PatternIndex[str]

    def find(self, words: WordStream) -> list[tuple[int, int, str]]:
        """Return first word, one past the last word, and group of every phrase that counts."""
        found = sorted((first, after, name) for name, _, first, after in self.wanted.find(words))
        if not found:
            return []
        other = [(first, after) for _, _, first, after in self.unless.find(words)]
        return [
            (first, after, name)
            for first, after, name in found
            if not any(a < after and first < b for a, b in other)
        ]


@dataclass(frozen=True, slots=True)
class Worries:
    """Words that an adult should see first, with the misspellings they hide behind."""

    phrases: Phrases
    slips: Mapping[str, str]
    words: frozenset[str]


@dataclass(frozen=True, slots=True)
class Help:
    """Calls for help: phrases, words that are one when they stand alone, and signs of success.

    ``requests`` ask for help in so many words, and nothing around them unsays it.
    """

    phrases: Phrases
    requests: PatternIndex[str]
    alone: frozenset[str]
    solved: PatternIndex[str]
    slips: Mapping[str, str]


@dataclass(frozen=True, slots=True)
class Conjectures:
    """Words of general claims, and the words that show they speak of mathematics.

    The group ``certain`` of the phrases names an open class beyond doubt; ``sure`` is never passed
    over. ``tried`` says that the child tests what a sentence asks.
    """

    phrases: Phrases
    sure: PatternIndex[str]
    tried: PatternIndex[str]
    mathematics: PatternIndex[str]


@dataclass(frozen=True, slots=True)
class NotAsserted:
    """Words that show a wrong idea is quoted, rejected, asked about or no longer held."""

    before: PatternIndex[str]
    after: PatternIndex[str]
    changed: PatternIndex[str]


@dataclass(frozen=True, slots=True)
class Keywords:
    """Reasoning words that can be strung together without sense, as keys.

    ``listed`` are the connectives and the adverbs; ``fillers`` say nothing beside them, ``bare``
    says nothing beside a list of terms, and
    ``natural`` are pairs that open a sentence.
    """

    connectives: frozenset[str]
    listed: frozenset[str]
    fillers: frozenset[str]
    natural: frozenset[tuple[str, ...]]
    bare: frozenset[str]


@dataclass(frozen=True, slots=True)
class HomeLanguages:
    """Common words of languages spoken at home, and the letters English has not.

    ``either`` are spellings that decide nothing; ``listed`` are the words of all languages.
    """

    words: Mapping[str, frozenset[str]]
    listed: frozenset[str]
    letters: frozenset[str]
    english: frozenset[str]
    either: frozenset[str]


@lru_cache(maxsize=8)
def load_worries(path: Path | None = None) -> Worries:
    """Return the worry list: the one that ships, or a school's own file.

    Raises
    ------
    LexiconError
        If the file can't be read; the message names it and what to change.
    """
    data = _read("worries.toml", path)
    with _naming(path or LEXICON / "worries.toml"):
        groups = _read_groups(data)
        wanted = {name: _with_groups(texts, groups) for name, texts in data["phrases"].items()}
        phrases = _phrases(wanted, _with_groups(data["unless"]["patterns"], groups))
        slips = _slips(data)
    words = {word for texts in wanted.values() for text in texts for word in _letters(text)}
    return Worries(phrases, slips, frozenset(word for word in words if len(word) > 4))


@lru_cache(maxsize=1)
def load_worry_lines() -> Mapping[str, bool]:
    """Return the invented lines that a worry list is measured on, and whether each is a worry."""
    text = (LEXICON / "worry_lines.txt").read_text(encoding="utf-8")
    return {row[2:]: row[0] == "+" for row in text.splitlines() if row[:1] in ("+", "-")}


@lru_cache(maxsize=8)
def load_help(path: Path | None = None) -> Help:
    """Return the phrases that call for help; errors as in `load_worries`."""
    data = _read("help.toml", path)
    with _naming(path or LEXICON / "help.toml"):
        groups = _read_groups(data)
        phrases = _phrases(
            {"help": _with_groups(data["phrases"], groups)}, _with_groups(data["unless"], groups)
        )
        return Help(
            phrases=phrases,
            requests=PatternIndex([("request", _with_groups(data["requests"], groups))]),
            alone=frozenset(data["alone"]),
            solved=PatternIndex([("solved", _with_groups(data["solved"], groups))]),
            slips=_slips(data),
        )


@lru_cache(maxsize=1)
def load_conjectures() -> Conjectures:
    """Return the words of general claims."""
    data = _read("conjectures.toml", None)
    with _naming(LEXICON / "conjectures.toml"):
        phrases = _phrases({"certain": data["certain"], "general": data["general"]}, data["unless"])
        return Conjectures(
            phrases=phrases,
            sure=PatternIndex([("certain", data["sure"])]),
            tried=PatternIndex([("tried", data["tried"])]),
            mathematics=PatternIndex([("mathematics", data["mathematics"])]),
        )


@lru_cache(maxsize=1)
def load_not_asserted() -> NotAsserted:
    """Return the words that show an idea is not the child's own."""
    data = _read("not_asserted.toml", None)
    with _naming(LEXICON / "not_asserted.toml"):
        return NotAsserted(
            PatternIndex([("before", data["before"])]),
            PatternIndex([("after", data["after"])]),
            PatternIndex([("changed", data["changed"])]),
        )


@lru_cache(maxsize=1)
def load_keywords() -> Keywords:
    """Return the words that make up keyword strings."""
    data = _read("keywords.toml", None)
    with _naming(LEXICON / "keywords.toml"):
        connectives = frozenset(map(key_of, data["connectives"].split()))
        return Keywords(
            connectives=connectives,
            listed=connectives | frozenset(map(key_of, data["adverbs"].split())),
            fillers=frozenset(map(key_of, data["fillers"].split())),
            natural=frozenset(tuple(map(key_of, pair.split())) for pair in data["natural"]),
            bare=frozenset(map(key_of, data["bare"].split())),
        )


@lru_cache(maxsize=1)
def load_home_languages() -> HomeLanguages:
    """Return the common words of home languages."""
    data = _read("home_languages.toml", None)
    with _naming(LEXICON / "home_languages.toml"):
        words = {name: frozenset(listed.split()) for name, listed in data["words"].items()}
        return HomeLanguages(
            words,
            frozenset().union(*words.values()),
            frozenset(data["letters"]),
            frozenset(data["english"].split()),
            frozenset(data["either"].split()),
        )


class _naming:  # noqa: N801 - reads as a phrase where it is used
    """Turn what goes wrong inside into a LexiconError that names the file."""

    def __init__(self, path: Path) -> None:
        self.path = path

    def __enter__(self) -> None:
        return None

    def __exit__(self, _kind: object, error: BaseException | None, _trace: object) -> None:
        if isinstance(error, PatternError):
            raise LexiconError(f"{self.path}: {error}") from error
        if isinstance(error, KeyError):
            raise LexiconError(f"{self.path}: the part {error} is missing; add it") from error
        if isinstance(error, (AttributeError, TypeError)):
            raise LexiconError(
                f"{self.path}: a list of phrases is not a list of texts in quotation marks; "
                "see the file that ships with this package"
            ) from error


def _read(name: str, path: Path | None) -> dict[str, Any]:
    path = path or LEXICON / name
    try:
        with path.open("rb") as file:
            return tomllib.load(file)
    except OSError as error:
        raise LexiconError(f"{path}: this can't be read ({error.strerror})") from error
    except (tomllib.TOMLDecodeError, UnicodeDecodeError) as error:
        raise LexiconError(
            f"{path}: {error}; each phrase needs quotation marks and a comma"
        ) from error


def _read_groups(data: Mapping[str, Any]) -> dict[str, str]:
    """Return the named groups of words of a file; a group may name those before it."""
    groups: dict[str, str] = {}
    for name, words in data.get("groups", {}).items():
        filled = _GROUP.sub(lambda match: groups.get(match.group(1), match.group()), words)
        groups[name] = " ".join(filled.split()).replace(" |", "|")
    return groups


def _with_groups(patterns: Iterable[str], groups: Mapping[str, str]) -> list[str]:
    """Return patterns with ``[name]`` of a group replaced by its words in brackets."""

    def fill(match: re.Match[str]) -> str:
        words = groups.get(match.group(1))
        return match.group() if words is None else f"({words})"

    return [_GROUP.sub(fill, pattern) for pattern in patterns]


def _phrases(groups: Mapping[str, Iterable[str]], unless: Iterable[str]) -> Phrases:
    return Phrases(
        PatternIndex([(name, list(patterns)) for name, patterns in groups.items()]),
        PatternIndex([("unless", list(unless))]),
    )


def _slips(data: Mapping[str, Any]) -> dict[str, str]:
    listed = data.get("slips", {})
    return {wrong: right for right, wrongs in listed.items() for wrong in wrongs.split()}


def _letters(pattern: str) -> list[str]:
    return "".join(c if c.isalpha() else " " for c in pattern).split()
