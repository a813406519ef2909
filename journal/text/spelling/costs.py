"""What a child's slip costs: a letter doubled costs little, a consonant out of nowhere much.

The distances are weighted edit distances with neighbours swapped (Damerau 1964, Communications of
the ACM 7(3) 171-176), one over letters and one over sounds; the weights are our own.
"""

from __future__ import annotations

from collections.abc import Sequence
from itertools import pairwise, permutations
from typing import NamedTuple

from journal.text.spelling.phonetic import sound_key

_VOWELS = "aeiouy"
_LONG_VOWELS = "12345678"
_FRONTED = "F"
_LETTERS = "abcdefghijklmnopqrstuvwxyz'" + _FRONTED
_SOUNDS = "aeiou12345678RSCJFYbdghjklmnprstw"

# Letters a child sees in a mirror or writes with one stroke more or less.
_MIRRORED = ("bd", "pq", "bp", "dq", "nu", "nm", "mw", "hn")
_SAME_SOUND = ("ck", "cs", "sz", "fv", "gj", "td", "kq", "pb", "gk", "wv", "cq", "xk")
_KEYBOARD = ("qwertyuiop", "asdfghjkl", "zxcvbnm")
_NEAR_SOUNDS: tuple[str, ...] = (
    "td",
    "pb",
    "kg",
    "sS",
    "SC",
    "CJ",
    "JS",
    "mn",
    "gJ",
    "kC",
    "sC",
    "Fs",
    "sJ",
    "Ft",
)
_NEAR_SOUNDS += ("Fd", "wF", "wR", "lw", "JY", "bd", "nu", "rw", "zs", "ks", "hw")
_NEAR_VOWELS: tuple[str, ...] = (
    "a1",
    "e2",
    "i3",
    "o4",
    "u5",
    "a7",
    "o7",
    "46",
    "56",
    "e1",
    "ei",
    "uo",
    "i2",
    "78",
)
_NEAR_VOWELS += ("45", "ae", "ui", "ao", "65", "67", "23")
_WEAK_VOWELS = ("a8", "e8", "i8", "o8", "u8", "ae", "ei", "ai", "uo", "au", "eu", "iu", "eo")

Table = dict[str, dict[str, float]]
Pairs = Sequence[tuple[Sequence[str], float]]


def _substitutions(alphabet: str, vowels: str, vowel: float, pairs: Pairs) -> Table:
    table: Table = {a: dict.fromkeys(alphabet, 1.0) for a in alphabet}
    for a, b in permutations(vowels, 2):
        table[a][b] = vowel
    for group, cost in pairs:
        for pair in group:
            a, b = pair[0], pair[1]
            if a in table and b in table:
                table[a][b] = table[b][a] = min(cost, table[a][b])
    for a in alphabet:
        table[a][a] = 0.0
    return table


_BESIDE = tuple(a + b for row in _KEYBOARD for a, b in pairwise(row))
_LETTER_PAIRS = ((("fF", "vF"), 0.35), (_MIRRORED, 0.5), (_SAME_SOUND, 0.6), (_BESIDE, 0.65))
_LETTER_TABLE = _substitutions(_LETTERS, _VOWELS, 0.85, _LETTER_PAIRS)
_SOUND_PAIRS = ((_NEAR_SOUNDS, 0.6), (_NEAR_VOWELS, 0.2), (_WEAK_VOWELS, 0.23))
_SOUND_TABLE = _substitutions(_SOUNDS, "aeiou12345678", 0.45, _SOUND_PAIRS)

_LETTER_MISSING = dict.fromkeys(_LETTERS, 0.65) | dict.fromkeys(_VOWELS, 0.5)
_LETTER_MISSING |= {"h": 0.45, "r": 0.45, "'": 0.05, "w": 0.55, "k": 0.55, "g": 0.55}
_LETTER_EXTRA = dict.fromkeys(_LETTERS, 1.1) | dict.fromkeys(_VOWELS, 0.8)
_LETTER_EXTRA |= {"h": 0.45, "'": 0.1, "w": 1.0}
_SOUND_MISSING = dict.fromkeys(_SOUNDS, 0.55) | dict.fromkeys("aeiou8", 0.4)
_SOUND_MISSING |= dict.fromkeys("1234567", 0.6)
_SOUND_MISSING |= {"R": 0.075, "h": 0.4, "w": 0.45, "Y": 0.35, "r": 0.3, "l": 0.35}
_SOUND_EXTRA = _SOUND_MISSING

_DOUBLED = 0.2
_SILENT_E = 0.35
_SWAPPED = 0.3
_SWAPPED_SOUNDS = 0.6
_FIRST_LETTER = 0.45
_WEAK_ENDING = 0.3
_WEAK_ENDINGS = ("er", "or", "ar", "re")
_BY_SOUND = 0.12
_LETTER_SHARE = 0.4
_SOUND_SHARE = 0.35


class _Weights(NamedTuple):
    """What each slip costs: one letter for another, one too many, one missing, two swapped."""

    table: Table
    extra: dict[str, float]
    missing: dict[str, float]
    swap: float


_LETTER_WEIGHTS = _Weights(_LETTER_TABLE, _LETTER_EXTRA, _LETTER_MISSING, _SWAPPED)
_SOUND_WEIGHTS = _Weights(_SOUND_TABLE, _SOUND_EXTRA, _SOUND_MISSING, _SWAPPED_SOUNDS)


# The comparisons are written out because min() takes twice the time in the innermost loop.
def _distance(a: str, b: str, weights: _Weights, limit: float) -> float:
    table, extra, missing, swap = weights
    row = [0.0]
    last = ""
    for y in b:
        row.append(row[-1] + (_DOUBLED if y == last else missing[y]))
        last = y
    before: list[float] = row
    b_end = len(b) - 1
    a_end = len(a) - 1
    for i, x in enumerate(a):
        drop = _DOUBLED if i and a[i - 1] == x else extra[x]
        if i == a_end and x == "e":
            drop = min(drop, _SILENT_E)
        costs = table[x]
        best = left = row[0] + drop
        new = [left]
        for j, y in enumerate(b):
            cost = row[j] + costs[y]
            up = row[j + 1] + drop
            if up < cost:  # noqa: PLR1730
                cost = up
            if j and b[j - 1] == y:
                left += _DOUBLED
            elif j == b_end and y == "e":
                left += _SILENT_E
            else:
                left += missing[y]
            if left < cost:  # noqa: PLR1730
                cost = left
            if i and j and x == b[j - 1] and a[i - 1] == y and x != y:
                turned = before[j - 1] + swap
                if turned < cost:  # noqa: PLR1730
                    cost = turned
            new.append(cost)
            left = cost
            if cost < best:  # noqa: PLR1730
                best = cost
        if best > limit:
            return limit + 1
        before, row = row, new
    return row[-1]


def letter_cost(spelling: str, word: str, limit: float = 9.0) -> float:
    """Return what it costs to misspell ``word`` as ``spelling``, letter by letter.

    Parameters
    ----------
    spelling, word : str
        Lower-case a to z and the apostrophe.
    limit : float
        Above it the exact cost is of no interest.

    Returns
    -------
    float
        0 for the same word, about 1 for a wrong consonant; more than ``limit`` if it is beyond it.
    """
    first = spelling[:1] != word[:1]
    if "th" in word and "th" not in spelling and ("f" in spelling or "v" in spelling):
        # "fink", "togever": th said as f or v is one slip, not two.
        word = word.replace("th", _FRONTED)
    weak = 0.0
    if spelling[-1:] == "a" and word[-2:] in _WEAK_ENDINGS:
        # "numba", "biga": the ending as it is heard.
        spelling, weak = spelling[:-1] + word[-2:], _WEAK_ENDING
    cost = weak + _distance(spelling, word, _LETTER_WEIGHTS, limit)
    # The first letter is the one a child gets right most surely.
    return cost + _FIRST_LETTER if first else cost


def sound_cost(sounds: str, word_sounds: str, limit: float = 9.0) -> float:
    """Return how far apart two sound keys are; see `letter_cost` for the scale."""
    return _distance(sounds, word_sounds, _SOUND_WEIGHTS, limit)


def slip_cost(spelling: str, word: str) -> float:
    """Return what the whole slip costs: by letters or by sound, whichever explains it better.

    Parameters
    ----------
    spelling, word : str
        Lower-case a to z and the apostrophe.

    Returns
    -------
    float
        Mostly the smaller of the two costs, with a share of the larger.
    """
    by_letter = letter_cost(spelling, word)
    by_sound = _BY_SOUND + sound_cost(sound_key(spelling), sound_key(word))
    if by_sound < by_letter:
        return (1 - _LETTER_SHARE) * by_sound + _LETTER_SHARE * by_letter
    return (1 - _SOUND_SHARE) * by_letter + _SOUND_SHARE * by_sound
