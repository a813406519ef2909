"""Whether a comparison in the child's words holds. All comparisons are invented."""

from __future__ import annotations

import pytest

from journal.evidence.flags.comparison import compares_rightly
from journal.lexicon.word_keys import read_words


def holds(text: str) -> bool:
    words = read_words(text)
    return compares_rightly(words, 0, len(words))


@pytest.mark.parametrize(
    "text",
    [
        "3/4 is bigger than 1/4",
        "0.5 is less than 0.75",
        "a half is bigger than a third",
        "two thirds is more than a quarter",
        "seven is more than five",
        "-2 is bigger than -5",
        "minus 7 is smaller than minus 3",
    ],
)
def test_right_comparisons_hold(text: str) -> None:
    assert holds(text)


@pytest.mark.parametrize(
    "text",
    [
        "1/8 is bigger than 1/4",
        "0.35 is more than 0.4",
        "a third is bigger than a half",
        "-5 is bigger than -2",
        "3 is less than 3",
        "3/0 is bigger than 1/2",
        "the bigger number wins",
    ],
)
def test_wrong_comparisons_and_none_do_not(text: str) -> None:
    assert not holds(text)
