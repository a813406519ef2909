"""Lexical diversity of a list of tokens, and the length below which it says nothing.

A reflection is far too short for these: pool a pupil's unit first (see the notes of each function).
Every function returns None, never 0 or the length, where the measure is not defined.
"""

from __future__ import annotations

from collections import Counter
from collections.abc import Sequence
from math import comb, log, sqrt

MTLD_THRESHOLD = 0.72
HDD_DRAWS = 42


def type_token_ratio(tokens: Sequence[str]) -> float | None:
    """Return V / N, types over tokens; it falls with length, so never compare across lengths.

    Parameters
    ----------
    tokens : sequence of str
        The words, in order, as they are to be told apart.
    """
    return len(set(tokens)) / len(tokens) if tokens else None


def guiraud_index(tokens: Sequence[str]) -> float | None:
    """Return the root type-token ratio V / sqrt(N) (Guiraud 1954)."""
    return len(set(tokens)) / sqrt(len(tokens)) if tokens else None


def carroll_index(tokens: Sequence[str]) -> float | None:
    """Return the corrected type-token ratio V / sqrt(2 N) (Carroll 1964)."""
    return len(set(tokens)) / sqrt(2 * len(tokens)) if tokens else None


def herdan_index(tokens: Sequence[str]) -> float | None:
    """Return ln V / ln N (Herdan 1960); None below two tokens."""
    return log(len(set(tokens))) / log(len(tokens)) if len(tokens) > 1 else None


def maas_index(tokens: Sequence[str]) -> float | None:
    """Return (ln N - ln V) / (ln N) squared (Maas 1972), natural logarithms."""
    if len(tokens) < 2:
        return None
    return (log(len(tokens)) - log(len(set(tokens)))) / log(len(tokens)) ** 2


def moving_average_ttr(tokens: Sequence[str], window: int) -> float | None:
    """Return MATTR: the mean type-token ratio of every window of ``window`` tokens.

    Parameters
    ----------
    tokens : sequence of str
        The words, in order.
    window : int
        Tokens a window.

    Returns
    -------
    float or None
        None where there are fewer tokens than a window holds.

    References
    ----------
    Covington & McFall 2010, Journal of Quantitative Linguistics 17(2).
    """
    n = len(tokens)
    if window < 1 or n < window:
        return None
    counts = Counter(tokens[:window])
    total = len(counts)
    for at in range(window, n):
        counts[tokens[at]] += 1
        leaving = tokens[at - window]
        counts[leaving] -= 1
        if not counts[leaving]:
            del counts[leaving]
        total += len(counts)
    return total / window / (n - window + 1)


def hypergeometric_diversity(tokens: Sequence[str], draws: int = HDD_DRAWS) -> float | None:
    """Return HD-D: the chance of each type to be drawn, summed and divided by the draws.

    Parameters
    ----------
    tokens : sequence of str
        The words.
    draws : int
        Tokens drawn without putting back; 42 by convention.

    Returns
    -------
    float or None
        None where there are fewer tokens than draws.

    References
    ----------
    McCarthy & Jarvis 2007, Language Testing 24(4).
    """
    n = len(tokens)
    if n < draws:
        return None
    ways = comb(n, draws)
    return sum(1 - comb(n - k, draws) / ways for k in Counter(tokens).values()) / draws


def _factors(tokens: Sequence[str]) -> float:
    seen: set[str] = set()
    length = 0
    factors = 0.0
    ratio = 1.0
    for token in tokens:
        seen.add(token)
        length += 1
        ratio = len(seen) / length
        if ratio < MTLD_THRESHOLD:
            factors += 1
            seen.clear()
            length = 0
            ratio = 1.0
    return factors + (1 - ratio) / (1 - MTLD_THRESHOLD)


def textual_lexical_diversity(tokens: Sequence[str]) -> float | None:
    """Return MTLD: the mean length of stretches that keep a type-token ratio of .72.

    Parameters
    ----------
    tokens : sequence of str
        The words, in order; the published advice is 100 or more.

    Returns
    -------
    float or None
        Mean of forward and backward; None where no part of a factor is filled in a direction.

    Notes
    -----
    A factor closes when the ratio falls strictly below .72, the wording of the paper.

    References
    ----------
    McCarthy & Jarvis 2010, Behavior Research Methods 42(2); Koizumi 2012, Vocabulary Learning and
    Instruction 1(1), for the least length.
    """
    forward, backward = _factors(tokens), _factors(tokens[::-1])
    if not forward or not backward:
        return None
    return (len(tokens) / forward + len(tokens) / backward) / 2
