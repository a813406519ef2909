"""The figures themselves: precision, recall, F1 and weighted kappa, and the row that shows one."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Figure:
    """One measured figure.

    Parameters
    ----------
    what : str
        What is measured, in a few words.
    measure : str
        Such as "F1" or "share".
    value : float or None
        None where the data hold no case.
    size : int
        Cases it rests on.
    target : str
        What was aimed for, or "" where nothing was.
    baselines : tuple of (str, float)
        What simpler ways reach on the same cases.
    """

    what: str
    measure: str
    value: float | None
    size: int
    target: str = ""
    baselines: tuple[tuple[str, float | None], ...] = ()


def f1_score(predicted: Iterable[bool], actual: Iterable[bool]) -> float | None:
    """Return the harmonic mean of precision and recall, 2 TP / (2 TP + FP + FN).

    Returns
    -------
    float or None
        None where nothing was predicted and nothing was there to find.
    """
    hit = wrong = 0
    for guess, truth in zip(predicted, actual, strict=True):
        hit += guess and truth
        wrong += guess != truth
    return 2 * hit / (2 * hit + wrong) if hit or wrong else None


def ratio(part: int, whole: int) -> float | None:
    """Return ``part / whole``, or None where there is nothing to divide by."""
    return part / whole if whole else None


def quadratic_weighted_kappa(
    first: Sequence[int], second: Sequence[int], levels: int
) -> float | None:
    """Return 1 minus observed over expected squared distance.

    Parameters
    ----------
    first, second : sequence of int
        Levels from 0 to ``levels - 1``, paired.
    levels : int
        How many levels there are, used or not.

    Returns
    -------
    float or None
        None where both judges used one and the same level only.

    References
    ----------
    Cohen 1968, Psychological Bulletin 70(4).
    """
    n = len(first)
    if n != len(second) or any(not 0 <= x < levels for x in (*first, *second)):
        raise ValueError(f"two equally long lists of levels 0 to {levels - 1} are needed")
    observed = sum((a - b) ** 2 for a, b in zip(first, second, strict=True)) / n if n else 0
    expected = sum((a - b) ** 2 for a in first for b in second) / n**2 if n else 0
    return 1 - observed / expected if expected else None
