"""Which words a misspelling may stand for: found by sound and by letters, weighed by likelihood."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import cached_property

import numpy as np

from journal.text.spelling.costs import letter_cost, sound_cost
from journal.text.spelling.likelihood import (
    MOST,
    Weights,
    read_none_features,
    read_word_features,
    share,
    weigh,
)
from journal.text.spelling.neighbours import LetterNeighbours
from journal.text.spelling.phonetic import skeleton_key, sound_key

_CONSONANTS = "bdFgklmnprstSCwYA"
_KEEP = 22
_RARE = 2.0
_UNSEEN = 2.5
# Past these costs no slip is worth weighing.
_MOST_LETTERS = 3.2
_MOST_SOUNDS = 3.0


@dataclass(frozen=True, slots=True)
class Candidate:
    """A word a misspelling may stand for.

    Parameters
    ----------
    word : str
        The word.
    probability : float
        Between 0 and 1; what all candidates lack to 1 is the chance that none is meant.
    """

    word: str
    probability: float


def _near_skeletons(skeleton: str) -> Iterator[str]:
    """Yield the skeleton and all that are one sound dropped, added, changed or swapped away."""
    yield skeleton
    size = len(skeleton)
    for i in range(size):
        head, tail = skeleton[:i], skeleton[i + 1 :]
        yield head + tail
        for sound in _CONSONANTS:
            yield head + sound + tail
        if tail:
            yield head + tail[0] + skeleton[i] + tail[1:]
    for i in range(size + 1):
        head, tail = skeleton[:i], skeleton[i:]
        for sound in _CONSONANTS:
            yield head + sound + tail


class CandidateIndex:
    """Words by their sounds and letters, with their likelihoods.

    Parameters
    ----------
    likelihood : mapping of str to float
        Each candidate word with its Zipf frequency (log10 of occurrences in a thousand million).
    by_skeleton : mapping of str to sequence of str
        Words by `skeleton_key`, commonest first.
    weights : Weights
        What each feature of a slip counts.
    likelier : mapping of str to float
        Words of mathematics and reasoning, with what is added to their likelihood.
    """

    def __init__(
        self,
        likelihood: Mapping[str, float],
        by_skeleton: Mapping[str, Sequence[str]],
        weights: Weights,
        likelier: Mapping[str, float],
    ) -> None:
        self._likelihood = likelihood
        self._by_skeleton = by_skeleton
        self._weights = weights
        self._likelier = likelier

    @cached_property
    def _neighbours(self) -> LetterNeighbours:
        # Made when the first misspelling turns up.
        words = [word for alike in self._by_skeleton.values() for word in alike if word.isalpha()]
        gains = np.minimum([self._likelihood.get(word, _UNSEEN) for word in words], MOST)
        gains += [self._likelier.get(word, 0.0) for word in words]
        return LetterNeighbours(words, gains)

    def find_candidates(
        self, spelling: str, likelier: Mapping[str, float], today: Collection[str]
    ) -> list[Candidate]:
        """Return the words a spelling may stand for, likeliest first.

        Parameters
        ----------
        spelling : str
            A lower-case word that is in no dictionary.
        likelier : mapping of str to float
            Words of mathematics and of today's lesson, with what is added to their likelihood.
        today : collection of str
            Words of today's lesson, always looked at.

        Returns
        -------
        list of Candidate
            Empty if no word is near.
        """
        found = self.find_features(spelling, likelier, today)
        scores = [weigh(features, self._weights.word) for _, features in found]
        none = weigh(read_none_features(spelling, self._likelihood), self._weights.none)
        ranked = [
            Candidate(word, probability)
            for (word, _), probability in zip(found, share([*scores, none])[:-1], strict=True)
        ]
        ranked.sort(key=lambda candidate: (-candidate.probability, candidate.word))
        return ranked

    def find_features(
        self, spelling: str, likelier: Mapping[str, float], today: Collection[str]
    ) -> list[tuple[str, dict[str, float]]]:
        """Return each candidate with what speaks for and against it."""
        pool = dict.fromkeys(self._gather(spelling, likelier, today))
        pool.update(dict.fromkeys(self._neighbours.find(spelling)))
        own = sound_key(spelling)
        found = []
        for word in pool:
            letters = letter_cost(spelling, word, _MOST_LETTERS)
            if letters > _MOST_LETTERS:
                continue
            sounds = sound_cost(own, sound_key(word), _MOST_SOUNDS)
            if sounds <= _MOST_SOUNDS:
                likelihood = self._weight(word, likelier)
                features = read_word_features(spelling, word, letters, sounds, likelihood)
                found.append((word, features))
        return found

    def _weight(self, word: str, likelier: Mapping[str, float]) -> float:
        return min(self._likelihood.get(word, _UNSEEN), MOST) + likelier.get(word, 0.0)

    def _gather(
        self, spelling: str, likelier: Mapping[str, float], today: Collection[str]
    ) -> Iterable[str]:
        skeleton = skeleton_key(spelling)
        likelihood = self._likelihood
        pool: dict[str, float] = {}
        letters = set(spelling)
        size = len(spelling)
        first = spelling[0]

        def roughly(word: str, bonus: float) -> float:
            shared = len(letters.intersection(word))
            unlike = len(letters) + len(set(word)) - 2 * shared
            rough = unlike + 0.7 * abs(len(word) - size) - 0.6 * self._weight(word, likelier)
            return rough - bonus - (0.8 if word[0] == first else 0.0)

        same = self._by_skeleton.get(skeleton, ())
        for word in same:
            pool[word] = roughly(word, 3.0)
        for near in set(_near_skeletons(skeleton)):
            for word in self._by_skeleton.get(near, ()):
                if word not in pool and -4 <= len(word) - size <= 5:
                    if likelihood.get(word, 3.0) < _RARE and word not in likelier:
                        continue
                    pool[word] = roughly(word, 0.0)
        for word in today:
            if abs(len(word) - size) <= 4:
                pool[word] = roughly(word, 0.0)
        return sorted(pool, key=pool.__getitem__)[:_KEEP]
