"""Offsets lead back to what the child wrote."""

from __future__ import annotations

import pytest
from hypothesis import given
from hypothesis import strategies as st

from journal.text.offsets import Edit, OffsetMap


@st.composite
def texts_with_edits(draw: st.DrawFn) -> tuple[str, list[Edit]]:
    text = draw(st.text(max_size=60))
    cuts = sorted(draw(st.sets(st.integers(0, len(text)), max_size=8)))
    edits = [
        Edit(start, end, draw(st.text(min_size=1, max_size=5)))
        for start, end in zip(cuts[::2], cuts[1::2], strict=False)
    ]
    return text, edits


@given(texts_with_edits())
def test_without_its_edits_the_working_text_is_the_original(case: tuple[str, list[Edit]]) -> None:
    text, edits = case
    offsets = OffsetMap(text, edits)
    rebuilt = list(text)
    for edit in sorted(edits, reverse=True):
        rebuilt[edit.start : edit.end] = edit.replacement
    assert offsets.working == "".join(rebuilt)


@given(texts_with_edits(), st.data())
def test_every_span_maps_to_a_span_that_is_not_empty(
    case: tuple[str, list[Edit]], data: st.DataObject
) -> None:
    offsets = OffsetMap(*case)
    if not offsets.working:
        return
    start = data.draw(st.integers(0, len(offsets.working) - 1))
    end = data.draw(st.integers(start + 1, len(offsets.working)))
    original_start, original_end = offsets.to_original(start, end)
    assert 0 <= original_start < original_end <= len(case[0])


@given(texts_with_edits())
def test_characters_outside_edits_map_to_themselves(case: tuple[str, list[Edit]]) -> None:
    text, edits = case
    offsets = OffsetMap(text, edits)
    for at, character in enumerate(offsets.working):
        start, end = offsets.to_original(at, at + 1)
        if not any(edit.start <= start < edit.end for edit in edits):
            assert text[start:end] == character


def test_both_words_of_a_joined_word_map_to_all_of_it() -> None:
    offsets = OffsetMap("a wholenumber!", [Edit(2, 13, "whole number")])
    assert [offsets.to_original(2, 7), offsets.to_original(8, 14)] == [(2, 13), (2, 13)]


def test_many_spans_map_as_one_by_one() -> None:
    offsets = OffsetMap("becos it is", [Edit(0, 5, "because")])
    starts, ends = offsets.to_original_many([0, 8], [7, 10])
    assert (list(starts), list(ends)) == ([0, 6], [5, 8])


def test_plain_characters_are_read_in_place_of_the_original() -> None:
    assert OffsetMap("it’s", (), "it's").working == "it's"


@pytest.mark.parametrize(
    "edits",
    [
        [Edit(0, 3, "x"), Edit(2, 4, "y")],
        [Edit(2, 2, "x")],
        [Edit(3, 9, "x")],
        [Edit(0, 1, "")],
    ],
    ids=["overlapping", "empty", "outside", "removing"],
)
def test_edits_that_would_lose_text_are_refused(edits: list[Edit]) -> None:
    with pytest.raises(ValueError, match="edit"):
        OffsetMap("abcde", edits)


def test_a_plainer_text_of_another_length_is_refused() -> None:
    with pytest.raises(ValueError, match="length"):
        OffsetMap("abc", (), "ab")
