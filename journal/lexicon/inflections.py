"""Regular English inflections, enough to find a term in its plain forms."""

from __future__ import annotations

import re
from collections.abc import Iterator

_SHORT = re.compile(r"[^aeiou]*[aeiou][^aeiouwxy]")
_SIBILANT = ("s", "x", "z", "ch", "sh")


def plural(word: str) -> str:
    """Return the regular plural of a noun, which is also a verb's third person."""
    if word.endswith(_SIBILANT):
        return word + "es"
    if _ends_in_consonant_y(word):
        return word[:-1] + "ies"
    return word + "s"


def singular(word: str) -> str:
    """Return the noun whose regular plural this may be; the word itself where it is none."""
    if word.endswith("ies") and len(word) > 4:
        return word[:-3] + "y"
    if word.endswith(("xes", "ches", "shes", "sses")):
        return word[:-2]
    if word.endswith("s") and not word.endswith(("ss", "us", "is")) and len(word) > 3:
        return word[:-1]
    return word


def verb_forms(word: str) -> Iterator[str]:
    """Yield third person, past and -ing form of a regular verb."""
    yield plural(word)
    if word.endswith("e"):
        yield word + "d"
        yield (word if word.endswith("ee") else word[:-1]) + "ing"
    elif _ends_in_consonant_y(word):
        yield word[:-1] + "ied"
        yield word + "ing"
    else:
        stem = _doubled(word)
        yield stem + "ed"
        yield stem + "ing"


def comparisons(word: str) -> Iterator[str]:
    """Yield comparative and superlative of a short adjective."""
    if word.endswith("e"):
        stem = word[:-1]
    elif _ends_in_consonant_y(word):
        stem = word[:-1] + "i"
    else:
        stem = _doubled(word)
    yield stem + "er"
    yield stem + "est"


def inflections(word: str, parts: tuple[str, ...]) -> Iterator[str]:
    """Yield the regular inflections of a word.

    Parameters
    ----------
    word : str
        In lower case, one word.
    parts : tuple of str
        Of ``noun``, ``verb``, ``adjective``, ``comparable`` (an adjective with -er and -est) and
        ``fixed`` (no inflections).
    """
    if "noun" in parts:
        yield plural(word)
    if "verb" in parts:
        yield from verb_forms(word)
    if "comparable" in parts:
        yield from comparisons(word)


def _ends_in_consonant_y(word: str) -> bool:
    return len(word) > 1 and word.endswith("y") and word[-2] not in "aeiou"


def _doubled(word: str) -> str:
    return word + word[-1] if _SHORT.fullmatch(word) else word
