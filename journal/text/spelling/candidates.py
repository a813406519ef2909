"""Which words a misspelling may stand for: found by sound and by letters, weighed by likelihood."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass

from journal.text.spelling.costs import slip_cost
from journal.text.spelling.phonetic import skeleton_key

_CONSONANTS = "bdFgklmnprstSCwYA"
_LETTERS = "abcdefghijklmnopqrstuvwxyz"
WEIGHT = 0.22
"""How much cost one step of the Zipf scale gives back."""
MOST = 6.2
"""The Zipf frequency beyond which being commoner makes no word likelier."""
_KEEP = 40
_KEEP_WIDER = 15
_RARE = 2.0
_USUAL = 3.6
_STEEPER = 1.6
_LONG = 7
# How far behind the best a candidate is still weighed.
_BEHIND = 0.5
_FAR = 1.0


@dataclass(frozen=True, slots=True)
class Candidate:
    """A word a misspelling may stand for.

    Parameters
    ----------
    word : str
        The word.
    cost : float
        What the slip costs; see `slip_cost`.
    score : float
        The cost less what the word's likelihood gives back: lower is better.
    """

    word: str
    cost: float
    score: float


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


def near_spellings(spelling: str) -> Iterator[str]:
    """Yield all strings one letter dropped, added, changed or swapped away."""
    size = len(spelling)
    for i in range(size):
        head, tail = spelling[:i], spelling[i + 1 :]
        yield head + tail
        for letter in _LETTERS:
            yield head + letter + tail
        if tail:
            yield head + tail[0] + spelling[i] + tail[1:]
    for i in range(size + 1):
        head, tail = spelling[:i], spelling[i:]
        for letter in _LETTERS:
            yield head + letter + tail


class CandidateIndex:
    """Words by their skeletons, with their likelihoods.

    Parameters
    ----------
    likelihood : mapping of str to float
        Each candidate word with its Zipf frequency (log10 of occurrences in a thousand million).
    by_skeleton : mapping of str to sequence of str
        Words by `skeleton_key`, commonest first.
    """

    def __init__(
        self, likelihood: Mapping[str, float], by_skeleton: Mapping[str, Sequence[str]]
    ) -> None:
        self._likelihood = likelihood
        self._by_skeleton = by_skeleton

    def find_candidates(
        self,
        spelling: str,
        likelier: Mapping[str, float],
        today: Collection[str],
        limit: float,
    ) -> list[Candidate]:
        """Return the words a spelling may stand for, best first.

        Parameters
        ----------
        spelling : str
            A lower-case word that is in no dictionary.
        likelier : mapping of str to float
            Words of mathematics and of today's lesson, with what is added to their likelihood.
        today : collection of str
            Words of today's lesson, always looked at.
        limit : float
            The highest cost of a slip that is still of interest.

        Returns
        -------
        list of Candidate
            At most about thirty.
        """
        pool = self._gather(spelling, likelier, today)
        ranked = self._rank(spelling, pool, likelier, limit)
        if len(spelling) >= _LONG and (not ranked or ranked[0].cost > _FAR):
            wider = self._gather_wider(spelling, likelier, set(pool))
            ranked = sorted(
                ranked + self._rank(spelling, wider, likelier, limit),
                key=lambda candidate: (candidate.score, candidate.word),
            )
        return ranked

    def _rank(
        self, spelling: str, pool: Iterable[str], likelier: Mapping[str, float], limit: float
    ) -> list[Candidate]:
        ranked = []
        best = limit
        for word in pool:
            gain = WEIGHT * self._weight(word, likelier)
            within = min(limit, best + _BEHIND + gain)
            cost = slip_cost(spelling, word, within)
            if cost <= within:
                ranked.append(Candidate(word, cost, cost - gain))
                best = min(best, cost - gain)
        ranked.sort(key=lambda candidate: (candidate.score, candidate.word))
        return ranked

    def _may_be_meant(self, word: str) -> bool:
        return word in self._by_skeleton.get(skeleton_key(word), ())

    def _weight(self, word: str, likelier: Mapping[str, float]) -> float:
        weight = min(self._likelihood.get(word, 2.5), MOST) + likelier.get(word, 0.0)
        # Children rarely use rare words: below this the fall is steeper.
        return weight if weight >= _USUAL else _USUAL - _STEEPER * (_USUAL - weight)

    def _gather_wider(
        self, spelling: str, likelier: Mapping[str, float], seen: set[str]
    ) -> Iterable[str]:
        """Return words whose skeleton is two slips away: one sound dropped, then any other."""
        skeleton = skeleton_key(spelling)
        near: set[str] = set()
        for i in range(len(skeleton)):
            near.update(_near_skeletons(skeleton[:i] + skeleton[i + 1 :]))
        size, letters = len(spelling), set(spelling)
        pool: dict[str, float] = {}
        for key in near:
            for word in self._by_skeleton.get(key, ()):
                if abs(len(word) - size) <= 3 and word not in seen:
                    unlike = len(letters.symmetric_difference(word))
                    pool[word] = unlike - 0.6 * self._weight(word, likelier)
        return sorted(pool, key=pool.__getitem__)[:_KEEP_WIDER]

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
        if size > 2:
            for word in near_spellings(spelling):
                if word in likelihood and self._may_be_meant(word):
                    pool[word] = roughly(word, 1.5)
        for word in today:
            if abs(len(word) - size) <= 4:
                pool[word] = roughly(word, 0.0)
        return sorted(pool, key=pool.__getitem__)[:_KEEP]
