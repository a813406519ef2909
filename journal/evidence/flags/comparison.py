"""Whether a comparison of two given numbers holds, so that a right one is no wrong idea."""

from __future__ import annotations

import re
from fractions import Fraction

from journal.lexicon.word_keys import WordStream, key_of

_NUMBERS = "one two three four five six seven eight nine ten eleven twelve"
_PARTS = "half third fourth fifth sixth seventh eighth ninth tenth"
_COUNT = {key_of(word): number for number, word in enumerate(_NUMBERS.split(), 1)} | {"a": 1}
_PART = {key_of(word): number for number, word in enumerate(_PARTS.split(), 2)}
_PART["quarter"] = 4
_PART |= {"hundredth": 100, "thousandth": 1000, "twelfth": 12}
_MINUS = re.compile(rf"(?<= )(?:-|minus|{key_of('negative')}) (?=[0-9])")
_VALUE = (
    r"(?:-?[0-9]+/[0-9]+|-?[0-9]*\.?[0-9]+"
    rf"|(?:(?:{'|'.join(_COUNT)}) )?(?:{'|'.join(_PART)})|(?:{'|'.join(_COUNT)}))"
)
_GREATER = "bigger larger greater more longer higher heavier closer"
_SMALLER = "smaller less lower shorter lighter fewer"
_MORE = tuple(map(key_of, _GREATER.split()))
_LESS = tuple(map(key_of, _SMALLER.split()))
_COMPARED = re.compile(
    rf"(?<= )({_VALUE}) (?:(?:be|was|must|will|has|hav|to|not|much|way) )*"
    rf"({'|'.join((*_MORE, *_LESS))}|>|<) (?:th[ae]n )?({_VALUE}) "
)


def compares_rightly(words: WordStream, first: int, after: int) -> bool:
    """Say whether the first comparison of two numbers in a stretch holds.

    Parameters
    ----------
    words : WordStream
        The corrected text.
    first, after : int
        The stretch, in words.

    Returns
    -------
    bool
        False where it doesn't hold, or where no two numbers are compared.
    """
    # A minus sign stands as a word of its own before its number.
    stretch = _MINUS.sub("-", f" {' '.join(words.keys[first:after])} ")
    match = _COMPARED.search(stretch)
    if match is None:
        return False
    try:
        a, b = _value(match.group(1)), _value(match.group(3))
    except ZeroDivisionError:
        return False
    return a > b if match.group(2) in (">", *_MORE) else a < b


def _value(text: str) -> Fraction:
    if text in _COUNT:
        return Fraction(_COUNT[text])
    if not text[-1].isalpha():
        return Fraction(text)
    *count, part = text.split()
    return Fraction(_COUNT.get(count[0], 1) if count else 1, _PART[part])
