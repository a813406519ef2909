"""Real words written for others of the same sound: decided by the words beside them.

A rule names the word seen, the word it is read as, and patterns of the neighbours that license
the change. A pattern is a row of places: ``[]`` is the word itself; ``a|the`` one of several words;
``{number}`` a group of words; ``(very)`` may be missing; ``*`` any word; ``$`` the end of a
sentence and ``^`` its start. Without a pattern that fits, the word stays.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence, Set
from dataclasses import dataclass

_Place = tuple[int, frozenset[str] | None]
_EDGE = frozenset({"."})


@dataclass(frozen=True, slots=True)
class Pattern:
    """Places around a word: the distance from it, and the words that may stand there."""

    places: tuple[_Place, ...]

    def matches(self, words: Sequence[str], at: int) -> bool:
        """Say whether the neighbours of ``words[at]`` fit; beyond either end a sentence ends."""
        size = len(words)
        for distance, allowed in self.places:
            i = at + distance
            word = words[i] if 0 <= i < size else "."
            if allowed is None:
                if word == ".":
                    return False
            elif word not in allowed:
                return False
        return True


@dataclass(frozen=True, slots=True)
class Confusion:
    """One rule: the word seen, what it is read as, and when.

    Parameters
    ----------
    seen, read_as : str
        Lower-case words.
    patterns : tuple of Pattern
        One that fits is enough.
    unless : tuple of Pattern
        One that fits forbids the change.
    unless_before : frozenset of str
        Words that forbid it wherever they stand earlier in the sentence.
    unless_after : frozenset of str
        Words that forbid it wherever they stand later in the sentence.
    """

    seen: str
    read_as: str
    patterns: tuple[Pattern, ...]
    unless: tuple[Pattern, ...] = ()
    unless_before: frozenset[str] = frozenset()
    unless_after: frozenset[str] = frozenset()

    def licenses(self, words: Sequence[str], at: int) -> Pattern | None:
        """Return the pattern that licenses the change at ``words[at]``, if any does."""
        for pattern in self.patterns:
            if pattern.matches(words, at):
                break
        else:
            return None
        if any(other.matches(words, at) for other in self.unless):
            return None
        if self.unless_before and _stands(words, range(at - 1, -1, -1), self.unless_before):
            return None
        if self.unless_after and _stands(words, range(at + 1, len(words)), self.unless_after):
            return None
        return pattern


def _stands(words: Sequence[str], places: Iterable[int], wanted: frozenset[str]) -> bool:
    for i in places:
        if words[i] == ".":
            return False
        if words[i] in wanted:
            return True
    return False


class Confusions:
    """All rules, by the word they look at.

    Parameters
    ----------
    rules : iterable of Confusion
        In the order in which they are tried.
    """

    def __init__(self, rules: Iterable[Confusion]) -> None:
        by_word: dict[str, list[Confusion]] = {}
        for rule in rules:
            by_word.setdefault(rule.seen, []).append(rule)
        self._by_word = {word: tuple(found) for word, found in by_word.items()}

    @property
    def words(self) -> Set[str]:
        """The words that some rule looks at."""
        return self._by_word.keys()

    def __contains__(self, word: str) -> bool:
        return word in self._by_word

    def find_reading(self, words: Sequence[str], at: int) -> tuple[str, tuple[int, int]] | None:
        """Return what ``words[at]`` is read as, and which words decided.

        Parameters
        ----------
        words : sequence of str
            Lower-case words in order; ``#`` stands for a number, ``.`` for a sentence's end.
        at : int
            Index into ``words``.

        Returns
        -------
        tuple of str and (int, int), or None
            The word read, with the first and last index of the neighbours that decided.
        """
        for rule in self._by_word.get(words[at], ()):
            pattern = rule.licenses(words, at)
            if pattern is not None:
                near = [at + d for d, _ in pattern.places if 0 <= at + d < len(words)]
                return rule.read_as, (min([at, *near]), max([at, *near]))
        return None


def read_confusions(table: Mapping[str, object]) -> Confusions:
    """Make the rules from the tables of a TOML file.

    Parameters
    ----------
    table : mapping
        ``groups``: lists of words by name; ``rules``: tables with ``seen``, ``read_as`` and
        ``patterns``, and at will ``unless``, ``unless_before`` and ``unless_after``.

    Returns
    -------
    Confusions
        Ready to use.

    Raises
    ------
    ValueError
        If a pattern names an unknown group or has no place for the word itself.
    """
    groups: dict[str, frozenset[str]] = {}
    for name, words in dict(table.get("groups", {})).items():  # type: ignore[call-overload]
        groups[name] = frozenset(
            w for word in words.split() for w in (groups.get(word[1:-1], {word}))
        )
    rules = []
    for row in list(table.get("rules", [])):  # type: ignore[call-overload]
        for seen in row["seen"].split():
            rules.append(
                Confusion(
                    seen,
                    row["read_as"],
                    _read_patterns(row["patterns"], groups),
                    _read_patterns(row.get("unless", ()), groups),
                    _read_words(row.get("unless_before", ""), groups),
                    _read_words(row.get("unless_after", ""), groups),
                )
            )
    return Confusions(rules)


def _read_words(text: str, groups: Mapping[str, frozenset[str]]) -> frozenset[str]:
    found: set[str] = set()
    for word in text.split():
        found |= _read_place(word, groups, text) or set()
    return frozenset(found)


def _read_place(
    place: str, groups: Mapping[str, frozenset[str]], pattern: str
) -> frozenset[str] | None:
    if place == "*":
        return None
    allowed: set[str] = set()
    for part in place.split("|"):
        if part in ("^", "$"):
            allowed |= _EDGE
        elif part.startswith("{"):
            name = part.strip("{}")
            if name not in groups:
                raise ValueError(f"confusions.toml: {pattern!r} names no known group {name!r}.")
            allowed |= groups[name]
        else:
            allowed.add(part)
    return frozenset(allowed)


def _read_patterns(
    texts: Iterable[str], groups: Mapping[str, frozenset[str]]
) -> tuple[Pattern, ...]:
    patterns = []
    for text in texts:
        rows: list[list[str]] = [[]]
        for place in text.split():
            if place.startswith("("):
                rows = [*rows, *([*row, place.strip("()")] for row in rows)]
            else:
                rows = [[*row, place] for row in rows]
        for row in rows:
            if row.count("[]") != 1:
                raise ValueError(f"confusions.toml: {text!r} needs one [] for the word itself.")
            here = row.index("[]")
            patterns.append(
                Pattern(
                    tuple(
                        (i - here, _read_place(place, groups, text))
                        for i, place in enumerate(row)
                        if i != here
                    )
                )
            )
    return tuple(patterns)
