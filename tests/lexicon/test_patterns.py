"""The pattern language of plans and flags."""

from __future__ import annotations

import pytest

from journal.lexicon.patterns import PatternError, PatternIndex, compile_pattern
from journal.lexicon.word_keys import read_words


def matches(pattern: str, text: str) -> list[str]:
    words = read_words(text)
    return [text[slice(*words.span(a, b))] for a, b in compile_pattern(pattern).find(words)]


@pytest.mark.parametrize(
    ("pattern", "text", "found"),
    [
        ("multiply number", "I multiplied the numbers", "multiplied the numbers"),
        ("bigger denominator", "the Bigger the DENOMINATORS are", "Bigger the DENOMINATORS"),
        ("(bigger|larger) fraction", "a larger fraction", "larger fraction"),
        ("(bottom number|denominator) big", "the bottom number is big", "bottom number is big"),
        ("(the)? answer", "my answer", "answer"),
        ("denominator * bigger", "denominator makes it bigger", "denominator makes it bigger"),
        (
            "add ... bottom",
            "add the tops and then add the bottoms",
            "add the tops and then add the bottoms",
        ),
        ("bigger than", "8 is bigger then 4", "bigger then"),
        ("[number] bigger", "four is bigger", "four is bigger"),
        ("[fraction] than", "two thirds than", "two thirds than"),
        ("[fraction] than", "3/4 than", "3/4 than"),
        ("[decimal] than", "0.35 than", "0.35 than"),
        ("not get", "I don't get it", "don't get"),
        ("not get", "i dont get it", "dont get"),
        ("vertex", "the vertices", "vertices"),
    ],
)
def test_a_pattern_matches(pattern: str, text: str, found: str) -> None:
    assert matches(pattern, text) == [found]


@pytest.mark.parametrize(
    ("pattern", "text"),
    [
        ("bigger denominator", "a big denominator"),
        ("denominator * bigger", "the denominator does not make it bigger"),
        ("denominator * bigger", "a denominator with lots of parts in it is bigger"),
        ("add ... bottom", "I can add. The bottom is 4"),
        ("[decimal] than", "35 than"),
        ("am confused", "I was confused"),
        ("art", "the parts"),
    ],
)
def test_a_pattern_does_not_match(pattern: str, text: str) -> None:
    assert matches(pattern, text) == []


@pytest.mark.parametrize(
    ("pattern", "sentence"),
    [
        ("", "a pattern is empty"),
        ("(a|b", "opened and not closed"),
        ("a)", "never opened"),
        ("a | b", "never opened"),
        ("[sum] is", r"there are \[number\], \[fraction\] and \[decimal\]"),
        ("* ...", "no word to look for"),
        ("(a|)", "no word to look for"),
        ("a {2}", "means nothing here"),
        ("((((((a))))))", "nested too deeply"),
        ("? a", "where a word should be"),
    ],
)
def test_a_pattern_that_cannot_be_read_says_why(pattern: str, sentence: str) -> None:
    with pytest.raises(PatternError, match=sentence):
        compile_pattern(pattern)


def test_two_owners_may_share_a_pattern() -> None:
    index = PatternIndex([("a", ["big half"]), ("b", ["big half"])])
    assert [owner for owner, *_ in index.find(read_words("a big half"))] == ["a", "b"]


def test_a_pattern_full_of_gaps_is_quick_on_a_long_text() -> None:
    """Gaps are bounded: doubling the text must not square the work."""
    words = read_words("add " * 4000)
    assert compile_pattern("add ... add ... add ... bottom").find(words) == []
    assert matches("add ... add ... bottom", "add " * 300 + "bottom")
