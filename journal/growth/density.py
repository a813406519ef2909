"""How many target terms stand in how many words, with exact limits."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Rate:
    """A count per 100 words with its exact limits.

    Parameters
    ----------
    count, words : int
        Term tokens (a term of several words counts once) and all words.
    per_hundred, low, high : float
        The rate and its limits, per 100 words.
    """

    count: int
    words: int
    per_hundred: float
    low: float
    high: float


def find_poisson_limits(count: int, confidence: float = 0.95) -> tuple[float, float]:
    """Return the exact limits of a Poisson mean.

    Parameters
    ----------
    count : int
        Events seen, 0 or more.
    confidence : float
        Between 0 and 1.

    Returns
    -------
    tuple of float
        Lower and upper limit of the expected count.

    Raises
    ------
    ValueError
        If the count is negative or the confidence no proportion.

    References
    ----------
    Garwood 1936, Biometrika 28: half the chi-squared quantiles with 2k and 2k + 2 degrees of
    freedom.
    """
    if count < 0 or not 0 < confidence < 1:
        raise ValueError("the count must be 0 or more and the confidence between 0 and 1")
    from scipy.stats import chi2

    tail = (1 - confidence) / 2
    low = float(chi2.ppf(tail, 2 * count)) / 2 if count else 0.0
    return low, float(chi2.ppf(1 - tail, 2 * count + 2)) / 2


def estimate_term_rate(count: int, words: int, confidence: float = 0.95) -> Rate | None:
    """Return term tokens per 100 words with exact limits; None where there are no words.

    Parameters
    ----------
    count : int
        Term tokens.
    words : int
        All words of the same entries.
    confidence : float
        Of the limits.
    """
    if words <= 0:
        return None
    low, high = find_poisson_limits(count, confidence)
    return Rate(count, words, 100 * count / words, 100 * low / words, 100 * high / words)
