"""One unknown word: what it stands for, if anything is near enough."""

from __future__ import annotations

from collections.abc import Collection, Mapping, Sequence
from dataclasses import dataclass

from journal.records import SpellingKind
from journal.text.spelling.candidates import MOST, WEIGHT, Candidate, CandidateIndex
from journal.text.spelling.costs import sound_cost
from journal.text.spelling.phonetic import sound_key

LONGEST = 30
_SPLIT_COST = 0.9
# Two words side by side are as likely as the product of their likelihoods, less chance.
_PAIR = 7.0
_SPLIT_ZIPF = 4.8
_SPLIT_SHORT = frozenset(("a", "an", "at", "be", "in", "is", "it", "my", "of", "on", "so", "to"))
# By length: how costly a slip may be, and how far the next best word must lie behind. In a short
# spelling every letter counts, and a guess between two words is worse than none.
_LIMITS = {2: 0.4, 3: 0.65, 4: 0.9, 5: 1.05, 6: 1.25, 7: 1.45}
_LIMIT = 1.6
_MARGINS = {2: 0.2, 3: 0.12, 4: 0.1, 5: 0.08, 6: 0.06}
_MARGIN = 0.04
_SAME_STEM = 5
_SURE = 0.5
_ENDINGS = ("s", "ed", "ing", "er", "ly", "ness", "ish", "able")


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


def limit_for(spelling: str) -> float:
    """Return the highest cost at which a spelling of this length is still read as a word."""
    return _LIMITS.get(len(spelling), _LIMIT)


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
    limit = limit_for(spelling)
    ranked = index.find_candidates(spelling, likelier, today, limit)
    best = ranked[0] if ranked else None
    split = _split(spelling, zipf, likelier)
    if split is not None and (best is None or split[1] < best.score):
        return Reading(split[0], "join", _SPLIT_COST, False)
    if best is None or not _is_clear(spelling, ranked):
        return None
    if best.cost > _SURE and best.word not in likelier and _is_inflected(spelling, zipf):
        return None
    heard = sound_cost(sound_key(spelling), sound_key(best.word)) <= 0.5
    return Reading(contractions.get(best.word, best.word), "non_word", best.cost, heard)


def _is_clear(spelling: str, ranked: Sequence[Candidate]) -> bool:
    """Say whether the best word is well ahead of the next, or another form of it."""
    if len(ranked) == 1:
        return True
    best, second = ranked[:2]
    if second.score - best.score >= _MARGINS.get(len(spelling), _MARGIN):
        return True
    return len(best.word) > _SAME_STEM and best.word[:_SAME_STEM] == second.word[:_SAME_STEM]


def _is_inflected(spelling: str, zipf: Mapping[str, float]) -> bool:
    """Say whether a spelling is a known word with an ending, though no dictionary has it."""
    for ending in _ENDINGS:
        if spelling.endswith(ending):
            stem = spelling[: -len(ending)]
            if len(stem) >= 4 and max(zipf.get(stem, 0.0), zipf.get(stem + "e", 0.0)) >= 3.0:
                return True
    return False


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
        score = _SPLIT_COST - WEIGHT * min(sum(weights) - _PAIR, MOST)
        if best is None or score < best[1]:
            best = (f"{first} {second}", score)
    return best
