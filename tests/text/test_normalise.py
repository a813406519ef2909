"""Plainer characters, offset for offset."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.text.normalise import find_spacing_edits, lower_shouting, normalise_characters
from journal.text.offsets import OffsetMap


@given(st.text())
def test_normalising_never_moves_an_offset(text: str) -> None:
    assert len(normalise_characters(text)) == len(text)


@pytest.mark.parametrize(
    ("given_text", "plain"),
    [
        ("it’s “7”", 'it\'s "7"'),
        ("a\u00a0b\tc", "a b c"),
        ("7 \u2212 3", "7 - 3"),
        ("3 ✕ 4", "3 × 4"),
        ("1⁄2", "1/2"),
        ("a\u200bb\x00c", "a b c"),
        ("one\rtwo\u2028three", "one\ntwo\nthree"),
        ("½ ÷ 🙂 é", "½ ÷ 🙂 é"),
    ],
)
def test_unusual_characters_are_read_as_plain_ones(given_text: str, plain: str) -> None:
    assert normalise_characters(given_text) == plain


def _spaced(text: str) -> str:
    return OffsetMap(text, find_spacing_edits(text)).working


@given(st.text(alphabet="ab. \n\t"))
def test_after_spacing_every_run_of_white_space_is_one_space(text: str) -> None:
    working = _spaced(text)
    assert "  " not in working
    assert "\n" not in working


def test_a_new_line_with_a_capital_ends_a_thought() -> None:
    assert _spaced("I added\nThen I stopped") == "I added . Then I stopped"


def test_a_line_wrapped_in_mid_sentence_is_joined() -> None:
    assert _spaced("I added the\nones first") == "I added the ones first"


def test_a_blank_line_ends_a_thought() -> None:
    assert _spaced("i added\n\nit was 7") == "i added . it was 7"


def test_a_line_that_ends_with_a_full_stop_needs_no_other() -> None:
    assert _spaced("I added.\nThen") == "I added. Then"


@given(st.text())
def test_lowering_never_moves_an_offset(text: str) -> None:
    assert len(lower_shouting(text)) == len(text)


@pytest.mark.parametrize(
    ("text", "read"),
    [
        ("IT IS EVEN BECAUSE IT ENDS IN 8", "it is even because it ends in 8"),
        ("It is even because it ends in 8", "It is even because it ends in 8"),
        ("ABC XYZ", "ABC XYZ"),
        ("İT IS EVEN BECAUSE IT ENDS IN 8", "İT IS EVEN BECAUSE IT ENDS IN 8"),
    ],
    ids=["capitals", "ordinary", "too short to tell", "longer in lower case"],
)
def test_an_entry_in_capitals_is_read_in_small_letters(text: str, read: str) -> None:
    assert lower_shouting(text) == read
