"""Levels stay where a careful judge would leave them (sentences: exemplars, and invented)."""

from __future__ import annotations

import re

import pytest
from judged import read_judged, suggest

EXEMPLARS = read_judged("exemplars", "A")


@pytest.mark.parametrize(("text", "level"), EXEMPLARS)
def test_lower_case_without_punctuation_keeps_the_level(text: str, level: int) -> None:
    bare = re.sub(r"[.,:;!](?!\d)", "", text.lower())
    assert suggest(bare, "A") == level


@pytest.mark.parametrize(("text", "level"), EXEMPLARS)
def test_writing_it_twice_keeps_the_level(text: str, level: int) -> None:
    assert suggest(f"{text} {text}" if text.endswith(".") else f"{text}. {text}", "A") == level


@pytest.mark.parametrize(("text", "level"), EXEMPLARS)
def test_another_spelling_of_because_keeps_the_level(text: str, level: int) -> None:
    assert suggest(text.replace("because", "cos"), "A") == level


@pytest.mark.parametrize(("text", "level"), EXEMPLARS)
def test_a_because_left_hanging_keeps_the_level(text: str, level: int) -> None:
    assert suggest(f"{text.rstrip('.')} because", "A") == level


def test_a_long_recount_stays_a_recount() -> None:
    text = (
        "First I drew a number line, then I jumped back 10 and then 3. Next I wrote 24 in my book "
        "and I coloured the boxes. After that we measured the table, and it was 120 cm long, and "
        "then we did some more take aways and I got 36 and 18 and 7."
    )
    assert suggest(text, "A") == 1


def test_a_terse_reason_with_its_link_is_justified() -> None:
    assert suggest("1/4 < 1/3 because more pieces so each piece is smaller", "A") == 3
