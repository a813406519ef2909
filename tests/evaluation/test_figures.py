"""The figures against published worked values and a reference library."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st
from sklearn.metrics import cohen_kappa_score
from sklearn.metrics import f1_score as reference_f1

from journal.evaluation.figures import f1_score, quadratic_weighted_kappa, ratio


def test_weighted_kappa_gives_the_value_of_the_r_metrics_documentation() -> None:
    # R package Metrics, ScoreQuadraticWeightedKappa: levels 1 to 5, prints 0.56.
    first, second = [1, 4, 5, 5, 2, 1], [2, 2, 4, 5, 3, 3]
    shifted = [[level - 1 for level in levels] for levels in (first, second)]
    assert quadratic_weighted_kappa(*shifted, levels=5) == pytest.approx(0.56)


def test_weighted_kappa_of_the_1969_table() -> None:
    # Fleiss, Cohen & Everitt 1969, table of 200 patients; quadratic weights give .5667.
    table = [[106, 10, 4], [22, 28, 10], [2, 12, 6]]
    pairs = [(i, j) for i in range(3) for j in range(3) for _ in range(table[i][j])]
    first, second = zip(*pairs, strict=True)
    assert quadratic_weighted_kappa(first, second, levels=3) == pytest.approx(0.5667, abs=1e-4)


def test_one_level_only_leaves_kappa_undefined() -> None:
    assert quadratic_weighted_kappa([2, 2], [2, 2], levels=5) is None


def test_no_entries_leave_kappa_undefined() -> None:
    assert quadratic_weighted_kappa([], [], levels=5) is None


@pytest.mark.parametrize(("first", "second"), [([1], [1, 2]), ([5], [1]), ([-1], [1])])
def test_what_is_no_pair_of_levels_is_refused(first: list[int], second: list[int]) -> None:
    with pytest.raises(ValueError, match="levels 0 to 4"):
        quadratic_weighted_kappa(first, second, levels=5)


LEVELS = st.lists(st.tuples(st.integers(0, 4), st.integers(0, 4)), min_size=2, max_size=40)


@given(LEVELS)
def test_weighted_kappa_agrees_with_scikit_learn(pairs: list[tuple[int, int]]) -> None:
    first, second = [a for a, _ in pairs], [b for _, b in pairs]
    ours = quadratic_weighted_kappa(first, second, levels=5)
    if ours is not None:
        theirs = cohen_kappa_score(first, second, labels=range(5), weights="quadratic")
        assert ours == pytest.approx(theirs)


@given(st.lists(st.tuples(st.booleans(), st.booleans()), min_size=1))
def test_f1_agrees_with_scikit_learn(pairs: list[tuple[bool, bool]]) -> None:
    guess, truth = [a for a, _ in pairs], [b for _, b in pairs]
    if any(guess) or any(truth):
        assert f1_score(guess, truth) == pytest.approx(reference_f1(truth, guess))
    else:
        assert f1_score(guess, truth) is None


def test_a_ratio_of_nothing_is_none() -> None:
    assert (ratio(1, 4), ratio(0, 0)) == (0.25, None)
