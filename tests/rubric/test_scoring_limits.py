"""Rules R9 and R10: when an entry is not judged."""

from __future__ import annotations

from journal.records import Flag
from journal.rubric import check_too_short, check_worry


def test_r9_needs_five_words_or_a_symbol() -> None:
    assert check_too_short("i like it", 3)
    assert not check_too_short("7 x 8 = 56", 4)
    assert not check_too_short("i like maths very much", 5)


def test_r10_a_worry_stops_judging() -> None:
    worry = Flag("worry", 0, 4, "home", None, None, "a worry")
    assert check_worry([worry])
    assert not check_worry([])
