"""Words that share most letters with a spelling: found over the whole list at once."""

from __future__ import annotations

from collections.abc import Sequence
from functools import cached_property

import numpy as np
from numpy.typing import ArrayLike, NDArray

_A = 97
_PRIME = 37
_LETTER_SHARE = 2
_LENGTH_SHARE = 2
_KEEP = 20
_LONGEST = 24

Marks = NDArray[np.uint64]


def _marks_of(words: Sequence[str]) -> tuple[Marks, Marks, NDArray[np.int64]]:
    """Return for each word a bit for each letter, one for each pair of letters, and its length.

    Pairs share 64 bits; the edges of a word pair with its first and last letter.
    """
    width = _LONGEST
    cells = np.array(words, dtype=f"S{width}").view(np.uint8).reshape(len(words), width)
    there = cells > 0
    codes = np.where(there, cells.astype(np.int64) - _A, 0) & 31
    one = np.uint64(1)
    bits = np.where(there, one << codes.astype(np.uint64), np.uint64(0))
    letters = np.bitwise_or.reduce(bits, axis=1)
    padded = np.zeros((len(words), width + 2), dtype=np.int64)
    padded[:, 1:-1] = np.where(there, codes + 1, 0)
    joined = (padded[:, :-1] + padded[:, 1:] > 0) & (np.maximum(padded[:, :-1], padded[:, 1:]) > 0)
    pairs = ((padded[:, :-1] * _PRIME + padded[:, 1:]) % 64).astype(np.uint64)
    pair_bits = np.where(joined, one << pairs, np.uint64(0))
    return letters, np.bitwise_or.reduce(pair_bits, axis=1), there.sum(axis=1)


class LetterNeighbours:
    """The words of a list by their letters and pairs of letters.

    Parameters
    ----------
    words : sequence of str
        Lower-case a to z.
    likelihood : array of float
        Of each word, on the Zipf scale.
    """

    def __init__(self, words: Sequence[str], likelihood: ArrayLike) -> None:
        self._words = words
        self._gain = np.asarray(likelihood, dtype=np.float32)

    @cached_property
    def _marks(self) -> tuple[Marks, Marks, NDArray[np.int64]]:
        return _marks_of(self._words)

    def find(self, spelling: str) -> list[str]:
        """Return the words that look most like the spelling; the commoner first where alike.

        Parameters
        ----------
        spelling : str
            Lower-case letters.

        Returns
        -------
        list of str
            At most 20.
        """
        letters, pairs, sizes = self._marks
        own_letters, own_pairs, own_size = _marks_of([spelling])
        unlike = np.bitwise_count(pairs ^ own_pairs).astype(np.float32)
        unlike += _LETTER_SHARE * np.bitwise_count(letters ^ own_letters)
        unlike += _LENGTH_SHARE * np.abs(sizes - own_size)
        unlike -= self._gain
        nearest = (
            np.argpartition(unlike, _KEEP)[:_KEEP] if len(unlike) > _KEEP else range(len(unlike))
        )
        return [self._words[i] for i in nearest]
