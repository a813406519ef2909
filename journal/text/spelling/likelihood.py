"""How likely a spelling stands for each word, or for none: a logit over named features.

A conditional logit (McFadden 1974, in Frontiers in Econometrics 105-142): each candidate word has
one sum of weighted features, "no word of the list" has another, and the probabilities are in
proportion to the exponentials of the sums. The weights are trained; see ``models/spelling.md``.
"""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import exp

from journal.text.spelling.phonetic import skeleton_key

MOST = 6.2
"""The Zipf frequency beyond which being commoner makes no word likelier."""
_LIKELIEST = 7.0
_RARE = 3.6
_UNSEEN = 2.5
_ENDINGS = ("s", "ed", "ing", "er", "ly", "ness", "ish", "able", "ers", "ist", "ism")
_BEGINNINGS = (
    *("un", "re", "non", "anti", "pre", "sub", "over", "super", "multi", "micro", "inter"),
    *("co", "mis"),
)
_STEM_ZIPF = 3.0
_PART_ZIPF = 3.5
_UNHEARD = re.compile("[aeiouyw]")
_DOUBLED = re.compile(r"(.)\1+")


@dataclass(frozen=True, slots=True)
class Weights:
    """Trained weights by the name of the feature: for a candidate, and for no word at all."""

    word: Mapping[str, float]
    none: Mapping[str, float]


def one_slip(spelling: str, word: str) -> tuple[bool, bool]:
    """Say whether two spellings are one letter apart, and whether two letters are swapped."""
    longer = len(word) - len(spelling)
    if abs(longer) > 1 or spelling == word:
        return False, False
    at = 0
    while at < len(spelling) and at < len(word) and spelling[at] == word[at]:
        at += 1
    a, b = spelling[at:], word[at:]
    if longer > 0:
        return a == b[1:], False
    if longer < 0:
        return a[1:] == b, False
    swapped = a[:2] == b[1::-1] and a[2:] == b[2:] and len(a) > 1
    return swapped or a[1:] == b[1:], swapped


def read_word_features(
    spelling: str, word: str, letters: float, sounds: float, likelihood: float
) -> dict[str, float]:
    """Return what speaks for and against a candidate.

    Parameters
    ----------
    spelling, word : str
        Lower-case letters.
    letters, sounds : float
        `journal.text.spelling.costs.letter_cost` and `sound_cost`.
    likelihood : float
        Zipf frequency with what the lesson adds to it.

    Returns
    -------
    dict of str to float
        By the names that the weights have.
    """
    slip, swapped = one_slip(spelling, word)
    size, longer = len(spelling), len(word) - len(spelling)
    last, end = spelling[-1], word[-1]
    unended = (last == "d" and end != "d") + (word.endswith("ed") and last not in "dt")
    doing = spelling.endswith(("ing", "ign", "ng"))
    ending = word.endswith("ing")
    return {
        "letters": letters,
        "sounds": sounds,
        "nearer": min(letters, sounds),
        "letters_each": letters / size,
        "likelihood": min(likelihood, _LIKELIEST),
        "rare": max(0.0, _RARE - likelihood),
        "other_last_letter": float(last != end),
        "other_s": float((last == "s") != (end == "s")),
        "other_ed": float(unended),
        "t_for_ed": float(last == "t" and word.endswith("ed")),
        "other_ing": float(doing != ending and not (ending and spelling.endswith("in"))),
        "in_for_ing": float(ending and spelling.endswith("in")),
        "one_slip": float(slip),
        "swapped": float(swapped),
        "letters_missing": float(max(longer, 0)),
        "letters_extra": float(max(-longer, 0)),
        "same_letters": float(set(spelling) == set(word)),
        "same_skeleton": float(skeleton_key(spelling) == skeleton_key(word)),
        "same_consonants": float(_consonants(spelling) == _consonants(word)),
    }


@lru_cache(maxsize=16384)
def _consonants(word: str) -> str:
    return _DOUBLED.sub(r"\1", _UNHEARD.sub("", word))


def read_none_features(spelling: str, zipf: Mapping[str, float]) -> dict[str, float]:
    """Return what speaks for a spelling being a name or a word that the list lacks."""
    size = len(spelling)
    return {
        "always": 1.0,
        "three_letters": float(size <= 3),
        "four_letters": float(size == 4),
        "five_letters": float(size == 5),
        "long": float(size >= 9),
        "known_stem": float(is_inflected(spelling, zipf)),
        "two_known_words": float(
            any(
                min(zipf.get(spelling[:at], 0.0), zipf.get(spelling[at:], 0.0)) >= _PART_ZIPF
                for at in range(3, size - 2)
            )
        ),
        "known_beginning": float(
            any(
                spelling.startswith(start) and zipf.get(spelling[len(start) :], 0.0) > _UNSEEN
                for start in _BEGINNINGS
            )
        ),
    }


def is_inflected(spelling: str, zipf: Mapping[str, float]) -> bool:
    """Say whether a spelling is a known word with an ending, though no dictionary has it."""
    for ending in _ENDINGS:
        stem = spelling.removesuffix(ending)
        likely = max(zipf.get(stem, 0.0), zipf.get(stem + "e", 0.0)) >= _STEM_ZIPF
        if likely and len(stem) >= 4 and stem != spelling:
            return True
    return False


def weigh(features: Mapping[str, float], weights: Mapping[str, float]) -> float:
    """Return the sum of the features by their weights."""
    return sum(weights[name] * value for name, value in features.items() if value)


def share(scores: Sequence[float]) -> list[float]:
    """Return probabilities in proportion to the exponentials of the scores."""
    most = max(scores)
    powers = [exp(score - most) for score in scores]
    total = sum(powers)
    return [power / total for power in powers]
