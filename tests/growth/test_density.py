"""Rates per 100 words with Garwood's exact limits."""

from __future__ import annotations

import pytest

from journal.growth.density import estimate_term_rate, find_poisson_limits


# Garwood 1936, Biometrika 28, table of 95 % limits.
@pytest.mark.parametrize(
    ("count", "low", "high"), [(0, 0.0, 3.689), (3, 0.6187, 8.7673), (5, 1.6235, 11.6683)]
)
def test_limits_are_garwoods(count: int, low: float, high: float) -> None:
    assert find_poisson_limits(count) == pytest.approx((low, high), abs=1e-3)


def test_three_terms_in_thirty_words_say_very_little() -> None:
    rate = estimate_term_rate(3, 30)
    assert rate is not None
    assert (rate.per_hundred, round(rate.low, 1), round(rate.high, 1)) == (10.0, 2.1, 29.2)


def test_no_words_give_no_rate() -> None:
    assert estimate_term_rate(0, 0) is None


@pytest.mark.parametrize(("count", "confidence"), [(-1, 0.95), (1, 0.0), (1, 1.5)])
def test_what_is_no_count_or_confidence_is_refused(count: int, confidence: float) -> None:
    with pytest.raises(ValueError, match="count"):
        find_poisson_limits(count, confidence)
