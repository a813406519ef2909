"""What a child's slip costs: a letter doubled costs little, a consonant out of nowhere much.

The distances are weighted edit distances with neighbours swapped (Damerau 1964, Communications of
the ACM 7(3) 171-176), one over letters and one over sounds; the weights are our own.
"""

from __future__ import annotations

from itertools import permutations

from journal.text.spelling.phonetic import sound_key

_VOWELS = "aeiouy"
_LETTERS = "abcdefghijklmnopqrstuvwxyz'"
_SOUNDS = "aeiouyRSCJFYbdfghjklmnpqrstvwxzNG'"

# Letters a child sees in a mirror or writes with one stroke more or less.
_MIRRORED = ("bd", "pq", "bp", "dq", "nu", "nm", "um", "mw", "hn")
_SAME_SOUND = ("ck", "cs", "sz", "fv", "gj", "td", "kq", "pb", "gk", "wv", "cq", "xk")
_KEYBOARD = ("qwertyuiop", "asdfghjkl", "zxcvbnm")
_NEAR_SOUNDS = ("td", "pb", "kg", "sS", "SC", "CJ", "JS", "mn", "gJ", "kC", "sC", "Fs", "sJ", "Ft")
_NEAR_SOUNDS += ("Fd", "wF", "wR", "lw", "JY", "bd", "pq", "nu", "rw")

Table = dict[str, dict[str, float]]


def _substitutions(alphabet: str, vowel: float, pairs: dict[tuple[str, ...], float]) -> Table:
    table: Table = {a: dict.fromkeys(alphabet, 1.0) for a in alphabet}
    for a, b in permutations(_VOWELS, 2):
        table[a][b] = vowel
    for group, cost in pairs.items():
        for a, b in group:
            if a in table and b in table:
                table[a][b] = min(cost, table[a][b])
                table[b][a] = min(cost, table[b][a])
    for a in alphabet:
        table[a][a] = 0.0
    return table


_BESIDE = tuple(a + b for row in _KEYBOARD for a, b in zip(row, row[1:], strict=False))
_LETTER_TABLE = _substitutions(_LETTERS, 0.45, {_MIRRORED: 0.55, _SAME_SOUND: 0.5, _BESIDE: 0.8})
_SOUND_TABLE = _substitutions(_SOUNDS, 0.25, {_NEAR_SOUNDS: 0.5, ("aR", "eR", "oR"): 0.15})

_LETTER_MISSING = dict.fromkeys(_LETTERS, 0.85) | dict.fromkeys(_VOWELS, 0.6)
_LETTER_MISSING |= {"h": 0.6, "r": 0.65, "'": 0.05, "w": 0.75, "k": 0.75, "g": 0.75, "u": 0.55}
_LETTER_EXTRA = dict.fromkeys(_LETTERS, 0.9) | dict.fromkeys(_VOWELS, 0.6)
_LETTER_EXTRA |= {"h": 0.6, "'": 0.1, "w": 0.8}
_SOUND_MISSING = dict.fromkeys(_SOUNDS, 1.0) | dict.fromkeys(_VOWELS, 0.4)
_SOUND_MISSING |= {"R": 0.1, "h": 0.4, "w": 0.45, "Y": 0.35, "r": 0.7, "l": 0.8}
_SOUND_EXTRA = _SOUND_MISSING

_DOUBLED = 0.25
_SILENT_E = 0.3


def _distance(
    a: str,
    b: str,
    table: Table,
    extra: dict[str, float],
    missing: dict[str, float],
    swap: float,
    limit: float,
) -> float:
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
            if up < cost:
                cost = up
            if j and b[j - 1] == y:
                left += _DOUBLED
            elif j == b_end and y == "e":
                left += _SILENT_E
            else:
                left += missing[y]
            if left < cost:
                cost = left
            if i and j and x == b[j - 1] and a[i - 1] == y and x != y:
                turned = before[j - 1] + swap
                if turned < cost:
                    cost = turned
            new.append(cost)
            left = cost
            if cost < best:
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
    cost = _distance(spelling, word, _LETTER_TABLE, _LETTER_EXTRA, _LETTER_MISSING, 0.5, limit)
    # The first letter is the one a child gets right most surely.
    return cost + 0.35 if spelling[:1] != word[:1] else cost


def sound_cost(sounds: str, word_sounds: str, limit: float = 9.0) -> float:
    """Return how far apart two sound keys are; see `letter_cost` for the scale."""
    return _distance(sounds, word_sounds, _SOUND_TABLE, _SOUND_EXTRA, _SOUND_MISSING, 0.6, limit)


def slip_cost(spelling: str, word: str, limit: float = 3.0) -> float:
    """Return what the whole slip costs: by letters or by sound, whichever explains it better.

    Parameters
    ----------
    spelling, word : str
        Lower-case a to z and the apostrophe.
    limit : float
        Above it the exact cost is of no interest.

    Returns
    -------
    float
        Mostly the smaller of the two costs, with a share of the larger.
    """
    by_letter = letter_cost(spelling, word, limit * 1.6)
    by_sound = sound_cost(sound_key(spelling), sound_key(word), limit * 1.6)
    small, large = sorted((by_letter, by_sound + 0.1))
    return 0.65 * small + 0.35 * large
