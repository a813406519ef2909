"""What can't be scored, and why: rule R9 of the rubric. All lines are invented."""

from __future__ import annotations

import pytest

from journal.evidence.readable import check_readable
from journal.lexicon.words import load_speller

KNOWN = load_speller().words


@pytest.mark.parametrize("text", ["", "   ", "\n\t"])
def test_nothing_is_empty(text: str) -> None:
    assert check_readable(text, KNOWN) == "empty"


@pytest.mark.parametrize(
    "text",
    [
        "asdfgh jkl",
        "aaaaa",
        "qwerty qwerty",
        "xxxxxx",
        "hhhhh jjjjj kkkkk",
        "...",
        "?!",
        "dfgdfg sdfkjh",
    ],
)
def test_keys_pressed_at_random_are_unreadable(text: str) -> None:
    assert check_readable(text, KNOWN) == "unreadable"


@pytest.mark.parametrize(
    "text",
    ["je ne comprends pas", "nie rozumiem", "لا أفهم هذا الدرس", "no entiendo las fracciones"],
)
def test_another_language_is_not_english(text: str) -> None:
    assert check_readable(text, KNOWN) == "not_english"


@pytest.mark.parametrize("text", ["yes", "I'm lost", "it was fun", "I like maths lots"])
def test_fewer_than_five_words_without_signs_is_too_short(text: str) -> None:
    """R9: fewer than 5 words with no symbols."""
    assert check_readable(text, KNOWN) == "too_short"


@pytest.mark.parametrize(
    "text",
    [
        "3 + 4 = 7",
        "1/2 = 2/4",
        "½ is half",
        "I like maths a lot",
        "i lernd that a haf is bigr then a qarter",
        "it woz hrd but i dun it",
        "da bigest numba is 9",
        "I know that half es bigger porque two parts only and it is more",
        "x + 3 = 10 so x = 7",
    ],
)
def test_english_however_spelt_and_signs_can_be_scored(text: str) -> None:
    assert check_readable(text, KNOWN) is None
