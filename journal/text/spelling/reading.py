"""One unknown word: what it stands for, if anything is near enough."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from journal.records import SpellingKind
from journal.text.spelling.candidates import Candidate, CandidateIndex
from journal.text.spelling.costs import slip_cost, sound_cost
from journal.text.spelling.likelihood import MOST, is_inflected
from journal.text.spelling.phonetic import sound_key

LONGEST = 30
_SPLIT_COST = 0.9
_WEIGHT = 0.22
# Two words side by side are as likely as the product of their likelihoods, less chance.
_PAIR = 7.0
_SPLIT_ZIPF = 4.8
_SPLIT_SHORT = frozenset(("a", "an", "at", "be", "in", "is", "it", "my", "of", "on", "so", "to"))
# A guess between two words is worse than none. So is a guess at a name or a word that the list
# lacks, and children's names are shorter than most misspellings.
_LIKELY = 0.45
_NONE = 0.2
# By length: how costly a slip may be. In a short spelling every letter counts.
_LIMITS = {2: 0.4, 3: 0.65, 4: 1.0, 5: 1.15, 6: 1.35, 7: 1.55}
_LIMIT = 1.7
_HEARD = 0.5
_SURE = 0.5


@dataclass(frozen=True, slots=True)
class Reading:
    """What a spelling stands for.

    Parameters
    ----------
    read_as : str
        Lower-case word, or two words.
    kind : SpellingKind
        ``non_word`` or ``join``.
    cost : float
        What the slip costs; see `journal.text.spelling.costs.slip_cost`.
    by_sound : bool
        Whether the spelling sounds like the word.
    """

    read_as: str
    kind: SpellingKind
    cost: float
    by_sound: bool


def find_reading(
    spelling: str,
    index: CandidateIndex,
    zipf: Mapping[str, float],
    *,
    likelier: Mapping[str, float],
    today: Collection[str],
    contractions: Mapping[str, str],
) -> Reading | None:
    """Return what a spelling that is in no dictionary stands for.

    Parameters
    ----------
    spelling : str
        Lower-case letters, at most `LONGEST`.
    index : CandidateIndex
        Where candidates come from.
    zipf : mapping of str to float
        Every known word with its frequency.
    likelier : mapping of str to float
        Words of mathematics and of today's lesson, with what is added to their likelihood.
    today : collection of str
        Words of today's lesson, always looked at.
    contractions : mapping of str to str
        Contractions by their form without the apostrophe.

    Returns
    -------
    Reading or None
        None if nothing is near enough.
    """
    ranked = index.find_candidates(spelling, likelier, today)
    best = ranked[0] if ranked else None
    split = _split(spelling, zipf, likelier)
    if split is not None and (
        best is None or split[1] < _score(spelling, best.word, zipf, likelier)
    ):
        return Reading(split[0], "join", _SPLIT_COST, False)
    if best is None or not _is_clear(ranked):
        return None
    cost = slip_cost(spelling, best.word)
    if cost > _LIMITS.get(len(spelling), _LIMIT):
        return None
    if cost > _SURE and best.word not in likelier and is_inflected(spelling, zipf):
        return None
    heard = sound_cost(sound_key(spelling), sound_key(best.word)) <= _HEARD
    return Reading(contractions.get(best.word, best.word), "non_word", cost, heard)


def _is_clear(ranked: Sequence[Candidate]) -> bool:
    """Say whether the best word is likely enough, and no word at all is unlikely enough."""
    some = sum(candidate.probability for candidate in ranked)
    return ranked[0].probability >= _LIKELY and 1 - some <= _NONE


def _score(
    spelling: str, word: str, zipf: Mapping[str, float], likelier: Mapping[str, float]
) -> float:
    """Return the cost of a slip less what the word's likelihood gives back."""
    likelihood = min(zipf.get(word, 0.0), MOST) + likelier.get(word, 0.0)
    return slip_cost(spelling, word) - _WEIGHT * likelihood


def _split(
    spelling: str, zipf: Mapping[str, float], likelier: Mapping[str, float]
) -> tuple[str, float] | None:
    best: tuple[str, float] | None = None
    if len(spelling) < 4:
        return None
    for at in range(1, len(spelling)):
        first, second = spelling[:at], spelling[at:]
        if first not in zipf or second not in zipf:
            continue
        if (len(first) < 3 and first not in _SPLIT_SHORT) or (
            len(second) < 3 and second not in _SPLIT_SHORT
        ):
            continue
        weights = [zipf[part] + likelier.get(part, 0.0) for part in (first, second)]
        if min(weights) < _SPLIT_ZIPF:
            continue
        score = _SPLIT_COST - _WEIGHT * min(sum(weights) - _PAIR, MOST)
        if best is None or score < best[1]:
            best = (f"{first} {second}", score)
    return best
