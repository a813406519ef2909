"""Whatever the characters, corrections stand where they say and never overlap."""

from __future__ import annotations

from itertools import pairwise

from hypothesis import given, settings
from hypothesis import strategies as st

from journal.lexicon.words import load_speller
from journal.text.normalise import normalise_characters
from journal.text.offsets import Edit, OffsetMap

ODD = st.sampled_from(
    [
        "😀",
        "👩‍🏫",
        "e\u0301",
        "\u2019",
        "\u201c",
        "\t",
        "\n",
        "\u05e9\u05dc\u05d5\u05dd",
        "\u202e",
        "½",
    ]
)
MISSPELT = st.sampled_from(
    [
        "becuse",
        "who le",
        "wholenumber",
        "dont",
        "don\u2019t",
        "bigger then 5",
        "fracshun",
        "Wen",
        "3/4",
    ]
)
PLAIN = st.sampled_from(["the", "number", "is", "and", "whole", "we", ".", ",", "="])
TEXTS = st.lists(st.one_of(ODD, MISSPELT, PLAIN, st.text(max_size=6)), max_size=12).flatmap(
    lambda parts: st.sampled_from(["", " "]).map(lambda space: space.join(parts))
)


@settings(max_examples=300, deadline=None)
@given(TEXTS)
def test_every_correction_stands_where_it_says(text: str) -> None:
    found = load_speller().find_corrections(normalise_characters(text), original=text)
    assert all(text[one.start : one.end] == one.surface for one in found)


@settings(max_examples=300, deadline=None)
@given(TEXTS)
def test_corrections_are_in_order_and_never_overlap(text: str) -> None:
    found = load_speller().find_corrections(normalise_characters(text), original=text)
    assert all(a.end <= b.start for a, b in pairwise(found))


@settings(max_examples=300, deadline=None)
@given(TEXTS)
def test_text_outside_the_corrections_is_untouched(text: str) -> None:
    clean = normalise_characters(text)
    found = load_speller().find_corrections(clean, original=text)
    edits = [Edit(one.start, one.end, one.read_as) for one in found]
    working = OffsetMap(text, edits, clean).working
    at = shift = 0
    for one in found:
        assert working[at + shift : one.start + shift] == clean[at : one.start]
        shift += len(one.read_as) - (one.end - one.start)
        at = one.end
    assert working[at + shift :] == clean[at:]


def test_a_combining_mark_beside_a_word_leaves_it_alone() -> None:
    assert load_speller().find_corrections("the becuse\u0301 is") == []


def test_an_emoji_beside_a_word_moves_no_offset() -> None:
    text = "\U0001f600 becuse \U0001f600"
    (found,) = load_speller().find_corrections(text)
    assert (found.start, found.end) == (2, 8)
