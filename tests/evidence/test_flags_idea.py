"""Ideas to check: a false claim, a pattern, or both, asserted by the child."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from journal.evidence.flags.idea import find_ideas
from journal.language.parse import Parse
from journal.lexicon.flags import load_not_asserted
from journal.lexicon.watchlist import load_watchlist
from journal.lexicon.word_keys import read_words
from journal.records import Claim, Flag

IDEA = "bigger-denominator-bigger-fraction"


@pytest.fixture
def ideas_in(parse_of: Callable[[str], Parse]) -> Callable[..., list[Flag]]:
    def find(text: str, *claims: Claim) -> list[Flag]:
        parse = parse_of(text)
        words = read_words(parse.working)
        return find_ideas(parse, words, load_watchlist(), claims, load_not_asserted())

    return find


def claim(surface: str, verdict: str = "false", asserted: bool = True) -> Claim:
    return Claim(0, len(surface), surface, verdict, asserted, False, None)  # type: ignore[arg-type]


def test_a_false_claim_and_a_pattern_that_meet_are_one_flag(
    ideas_in: Callable[..., list[Flag]],
) -> None:
    """The wrong idea of the rubric's exemplar 2 d."""
    text = "1/8 is bigger than 1/4 because 8 is bigger than 4"
    (flag,) = ideas_in(text, claim("1/8 is bigger than 1/4"))
    assert (flag.idea, flag.claim, flag.surface) == (IDEA, 0, text)


def test_a_pattern_is_enough(ideas_in: Callable[..., list[Flag]]) -> None:
    (flag,) = ideas_in("the bigger the denominator the bigger the fraction")
    assert (flag.idea, flag.claim) == (IDEA, None)


def test_a_false_claim_is_enough(ideas_in: Callable[..., list[Flag]]) -> None:
    (flag,) = ideas_in("7 x 8 = 54 i think", claim("7 x 8 = 54"))
    assert (flag.idea, flag.claim, flag.surface) == (None, 0, "7 x 8 = 54")


@pytest.mark.parametrize(
    "made",
    [claim("7 x 8 = 54", asserted=False), claim("7 x 8 = 56", "true"), claim("7 x 8", "undecided")],
)
def test_a_claim_not_false_or_not_asserted_is_no_flag(
    ideas_in: Callable[..., list[Flag]], made: Claim
) -> None:
    assert ideas_in(made.surface + " she said", made) == []


def test_the_words_of_an_idea_about_a_true_claim_are_no_flag(
    ideas_in: Callable[..., list[Flag]],
) -> None:
    text = "0.75 is bigger than 0.5 because 75 is bigger than 5"
    assert ideas_in(text, claim("0.75 is bigger than 0.5", "true")) == []
    text = "doubling the sides doubles the area"
    assert ideas_in(text)
    assert ideas_in(text, claim(text, "true")) == []


@pytest.mark.parametrize(
    "text",
    [
        "I used to think the bigger the denominator the bigger the fraction",
        "Is the bigger denominator always the bigger fraction?",
        "Tom said the bigger the denominator the bigger the fraction but he is wrong",
        "it is not true that the bigger the denominator the bigger the fraction",
        "3/4 is bigger than 1/4 because 3 is bigger than 1",
    ],
)
def test_an_idea_that_is_not_the_childs_is_no_flag(
    ideas_in: Callable[..., list[Flag]], text: str
) -> None:
    assert ideas_in(text) == []
