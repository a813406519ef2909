"""Patterns of words that a teacher can write, for ideas to check and for flags.

::

    the bigger the denominator        words, in this order, in any inflection
    (bigger|larger) denominator       one of several words or phrases
    (the)? answer                     may be left out
    denominator * bigger              up to 3 words between, none of them a negation
    denominator ... fraction          up to 8 words between, none of them a negation
    [number] [fraction] [decimal]     35 or four; 3/4 or two thirds; 0.35
    is, are                           also was and were; "am" is now, "was" was then

Little words (the, a, is, just ...) may stand between any two words of a pattern, "than" also
matches the common slip "then", and nothing matches across the end of a sentence.
"""

from __future__ import annotations

import re
from bisect import bisect_right
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Generic, NoReturn, TypeVar

from journal.errors import LexiconError
from journal.lexicon.word_keys import WordStream, key_of, keys_of

Owner = TypeVar("Owner")

_LITTLE = "the a an this that these it its is was are be just really very so i of there even also"
_GAP_STOPS = "\\.|not|never|no|nor|without|neither|nobody"
_NUMBER_WORDS = (
    "zero nought one two three four five six seven eight nine ten eleven twelve twenty thirty "
    "forty fifty hundred thousand"
)
_PARTS = (
    "half halves third quarter fourth fifth sixth seventh eighth ninth tenth twelfth hundredth "
    "thousandth"
)


def _any_key(words: str) -> str:
    return "|".join(sorted({re.escape(key_of(word)) for word in words.split()}))


_BETWEEN = f"(?:(?:{_any_key(_LITTLE)}) ){{0,2}}"
_FEW = f"(?:(?!(?:{_GAP_STOPS}) )[^ ]+ ){{0,3}}?"
_MANY = f"(?:(?!(?:{_GAP_STOPS}) )[^ ]+ ){{0,8}}?"
_SLOTS = {
    "number": f"(?:-?[0-9]+(?:\\.[0-9]+)?|{_any_key(_NUMBER_WORDS)}) ",
    "fraction": f"(?:[0-9]+/[0-9]+ |(?:(?:{_any_key(_NUMBER_WORDS)}|a) )?(?:{_any_key(_PARTS)}) )",
    "decimal": "[0-9]*\\.[0-9]+ ",
}
_PIECE = re.compile(
    r"(?P<gap>\.\.\.|…|\*)|(?P<slot>\[[^\[\]]*\])|(?P<mark>[()|?])"
    r"|(?P<word>[0-9]+/[0-9]+|[0-9]+(?:\.[0-9]+)?|[^\W\d_]+(?:['’-][^\W\d_]+)*|[+×÷=<>%-])|(?P<space>\s+)"
)
_DEEPEST = 4
_COMMONEST = "the a i is was it to of and you we in that not do have"
_COMMON = (
    "they my me he she no can get one two on so for if be because with all what how then when but "
    "or by at are this there them up out know think say make number answer more big bigger than "
    "add times line first like had did same 1 2 3 4 5 10 want will would could go use 0 = - x + "
    "works work table need find each equal digit fraction half ten ones tens part shape side "
    "always from as help us left take bit every square"
)
_WEIGHTS = {key_of(word): 40 for word in _COMMON.split()}
_WEIGHTS |= {key_of(word): 200 for word in _COMMONEST.split()}
"""How much oftener a word stands in an entry than the words of most patterns, roughly."""


class PatternError(LexiconError):
    """A pattern can't be read; the message quotes it and says what to change."""


@lru_cache(maxsize=4096)
def _compile(expression: str) -> re.Pattern[str]:
    return re.compile(expression)


@dataclass(frozen=True, slots=True)
class Pattern:
    """A pattern ready to be looked for.

    Parameters
    ----------
    source : str
        As the teacher wrote it.
    expression : str
        A regular expression over the joined keys of a `WordStream`; most patterns are never
        tried, so that it is compiled when first needed.
    needs : tuple of frozenset of str
        Every one must share a key with the text, else there is no match; rarest first.
    """

    source: str
    expression: str
    needs: tuple[frozenset[str], ...]

    def find(self, words: WordStream) -> list[tuple[int, int]]:
        """Return first and one-past-last word of every match, in order."""
        found = []
        for match in _compile(self.expression).finditer(words.joined):
            first = bisect_right(words.places, match.start()) - 1
            after = bisect_right(words.places, match.end() - 1)
            found.append((first, after))
        return found


class _Reader:
    """Reads one pattern from left to right."""

    def __init__(self, source: str) -> None:
        self.source = source
        self.pieces: list[tuple[str, str]] = []
        at = 0
        while at < len(source):
            match = _PIECE.match(source, at)
            if match is None or match.lastgroup is None:
                self.fail(f"the sign {source[at]!r} means nothing here; write words")
            if match.lastgroup != "space":
                self.pieces.append((match.lastgroup, match.group()))
            at = match.end()
        self.at = 0

    def fail(self, what: str) -> NoReturn:
        raise PatternError(f"in the pattern “{self.source}” {what}")

    def peek(self) -> tuple[str, str]:
        return self.pieces[self.at] if self.at < len(self.pieces) else ("end", "")

    def sequence(self, depth: int) -> tuple[str, list[frozenset[str]]]:
        """Read items up to a closing bracket, a bar or the end."""
        regex: list[str] = []
        needs: list[frozenset[str]] = []
        gap_before = True
        while True:
            kind, piece = self.peek()
            if kind == "end" or (kind == "mark" and piece in "|)"):
                break
            self.at += 1
            if kind == "gap":
                regex.append(_FEW if piece == "*" else _MANY)
                gap_before = True
                continue
            part, need = self.item(kind, piece, depth)
            optional = self.peek() == ("mark", "?")
            if optional:
                self.at += 1
                regex.append(f"(?:{'' if gap_before else _BETWEEN}{part})?")
            else:
                regex.append(part if gap_before else _BETWEEN + part)
                needs.extend(need)
                gap_before = False
        if not any(piece not in (_FEW, _MANY) for piece in regex):
            self.fail("there is no word to look for; write at least one")
        return "".join(regex), needs

    def item(self, kind: str, piece: str, depth: int) -> tuple[str, list[frozenset[str]]]:
        if kind == "slot":
            name = piece[1:-1].strip().lower()
            if name not in _SLOTS:
                self.fail(f"{piece} is not known; there are [number], [fraction] and [decimal]")
            return _SLOTS[name], []
        if piece == "(":
            if depth == _DEEPEST:
                self.fail("the brackets are nested too deeply")
            return self.group(depth + 1)
        if kind == "mark":
            self.fail(f"{piece!r} stands where a word should be")
        keys = keys_of(piece.lower().replace("’", "'"))
        # "am" is now and "was" was then, where it matters; "is" and "are" stand for both.
        both = piece.lower() in ("is", "are", "be")
        forms = ["(?:be|was)" if both else _FORMS.get(key, re.escape(key)) for key in keys]
        needs = [_BE if both else _NEEDS.get(key, frozenset({key})) for key in keys]
        return "".join(f"{form} " for form in forms), needs

    def group(self, depth: int) -> tuple[str, list[frozenset[str]]]:
        ways: list[str] = []
        rarest: list[frozenset[str]] = []
        while True:
            regex, needs = self.sequence(depth)
            ways.append(regex)
            rarest += [min(needs, key=_how_common)] if needs else []
            kind, piece = self.peek()
            if kind == "end":
                self.fail("a bracket is opened and not closed; add ')'")
            self.at += 1
            if piece == ")":
                break
        needs = [frozenset().union(*rarest)] if len(rarest) == len(ways) else []
        return f"(?:{'|'.join(ways)})", needs


def _how_common(need: frozenset[str]) -> int:
    return sum(_WEIGHTS.get(key, 1) for key in need)


_BE = frozenset({"be", "was"})
_THAN = frozenset({"than", "then"})
_FORMS = {"than": "th[ae]n", "then": "th[ae]n"}
_NEEDS = {"than": _THAN, "then": _THAN}


@lru_cache(maxsize=4096)
def compile_pattern(source: str) -> Pattern:
    """Make a pattern ready.

    Parameters
    ----------
    source : str
        A pattern in the language described at the top of this module.

    Returns
    -------
    Pattern

    Raises
    ------
    PatternError
        If the pattern can't be read; the message quotes it and says what to change.
    """
    reader = _Reader(source)
    if not reader.pieces:
        raise PatternError("a pattern is empty; write the words to look for")
    regex, needs = reader.sequence(0)
    if reader.at < len(reader.pieces):
        reader.fail("a bracket is closed that was never opened; add '(' or remove ')'")
    needs.sort(key=_how_common)
    return Pattern(source, f"(?<= ){regex}", tuple(needs))


class PatternIndex(Generic[Owner]):
    """Many patterns looked for at once.

    Parameters
    ----------
    owned : iterable of (owner, patterns)
        Whatever a match should be reported for, with its patterns.

    Raises
    ------
    PatternError
        If one of the patterns can't be read.
    """

    def __init__(self, owned: Iterable[tuple[Owner, Sequence[str]]]) -> None:
        self._pairs = [
            (owner, compile_pattern(source)) for owner, sources in owned for source in sources
        ]
        self._always: list[int] = []
        self._by_key: dict[str, list[int]] = {}
        for number, (_, pattern) in enumerate(self._pairs):
            if not pattern.needs:
                self._always.append(number)
                continue
            # A pattern is tried only where the rarest of the words it needs turn up.
            for key in pattern.needs[0]:
                self._by_key.setdefault(key, []).append(number)
        self._triggers = frozenset(self._by_key)

    def find(self, words: WordStream) -> Iterator[tuple[Owner, Pattern, int, int]]:
        """Yield owner, pattern, first and one-past-last word of every match."""
        numbers = set(self._always)
        for key in words.present & self._triggers:
            numbers.update(self._by_key[key])
        if not numbers:
            return
        present = words.present
        for number in sorted(numbers):
            owner, pattern = self._pairs[number]
            for need in pattern.needs:
                if need.isdisjoint(present):
                    break
            else:
                for first, after in pattern.find(words):
                    yield owner, pattern, first, after
