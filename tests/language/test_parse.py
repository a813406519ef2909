"""A parse carries the child's own offsets."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from journal.language import parse as parse_room
from journal.language.parse import Parse, read_parse
from journal.language.pipeline import load_pipeline
from journal.text.normalise import find_spacing_edits, normalise_characters
from journal.text.offsets import Edit, OffsetMap

ParseOf = Callable[[str], Parse]

ODD_TEXT = st.text(
    alphabet=st.one_of(
        st.characters(codec="utf-8"),
        st.sampled_from("ab 1/2+=. \n\t\u00a0’“é🙂👩🏽‍🏫אب\u0301\u202e"),
    ),
    max_size=60,
)


@settings(deadline=None, max_examples=60, suppress_health_check=[HealthCheck.too_slow])
@given(ODD_TEXT)
def test_tokens_point_at_the_text_they_stand_for(text: str) -> None:
    clean = normalise_characters(text)
    offsets = OffsetMap(text, find_spacing_edits(clean), clean)
    parse = read_parse(load_pipeline()(offsets.working), offsets)
    for token in parse.tokens:
        assert 0 <= token.start < token.end <= len(text)
        if token.text in clean:
            assert len(token.text) <= token.end - token.start or token.text == "."
        assert 0 <= token.head < len(parse)


def test_a_corrected_word_points_at_the_childs_spelling() -> None:
    text = "its even becos it ends in 8"
    offsets = OffsetMap(text, [Edit(9, 14, "because")])
    parse = read_parse(load_pipeline()(offsets.working), offsets)
    because = next(token for token in parse.tokens if token.lower == "because")
    assert text[because.start : because.end] == "becos"


def test_white_space_is_no_token(parse_of: ParseOf) -> None:
    assert all(token.text.strip() for token in parse_of("  a \n\n half \t of 8 ").tokens)


def test_sentences_cover_all_tokens_in_order(parse_of: ParseOf) -> None:
    parse = parse_of("A square has 4 sides. It has 4 corners. All equal!")
    assert [first for first, _ in parse.sentences[1:]] == [end for _, end in parse.sentences[:-1]]
    assert len(parse.sentences) == 3
    assert parse.sentence(len(parse) - 1) == parse.sentences[-1]


def test_a_subtree_covers_all_that_hangs_below(parse_of: ParseOf) -> None:
    parse = parse_of("I knew 48 was even because it ends in 8.")
    ends = next(token for token in parse.tokens if token.lower == "ends")
    first, after = parse.subtree(ends.index)
    assert "it ends in 8" in parse.surface(first, after)


def test_children_and_heads_agree(parse_of: ParseOf) -> None:
    parse = parse_of("I knew 48 was even because it ends in 8.")
    for token in parse.tokens:
        for child in parse.children(token.index):
            assert parse.tokens[child].head == token.index


def test_ancestors_end_at_the_root(parse_of: ParseOf) -> None:
    parse = parse_of("It ends in 8.")
    eight = next(token for token in parse.tokens if token.lower == "8")
    assert parse.tokens[parse.ancestors(eight.index)[-1]].dep == "ROOT"


def test_a_child_is_found_by_its_part_in_the_sentence(parse_of: ParseOf) -> None:
    parse = parse_of("It ends in 8.")
    ends = next(token for token in parse.tokens if token.lower == "ends")
    subject = parse.child(ends.index, "nsubj")
    assert subject is not None
    assert parse.tokens[subject].lower == "it"
    assert parse.child(ends.index, "dobj") is None


def test_tokens_are_found_by_original_offsets(parse_of: ParseOf) -> None:
    parse = parse_of("the  denominator is 8")
    first, after = parse.tokens_in(5, 16)
    assert [token.lower for token in parse.tokens[first:after]] == ["denominator"]


@pytest.mark.parametrize(("breaks", "crosses"), [((), False), ((6,), True), ((20,), False)])
def test_a_stretch_across_an_adults_prompt_is_known(breaks: tuple[int, ...], crosses: bool) -> None:
    offsets = OffsetMap("it is even it ends in 8")
    parse = read_parse(load_pipeline()(offsets.working), offsets, breaks)
    assert parse.crosses_break(0, 5) is crosses


def test_an_empty_text_has_no_sentences(parse_of: ParseOf) -> None:
    assert parse_of("").sentences == []


def test_full_memos_of_names_are_emptied(
    parse_of: ParseOf, monkeypatch: pytest.MonkeyPatch
) -> None:
    before = [(token.text, token.lower, token.lemma) for token in parse_of("Ten is EVEN").tokens]
    monkeypatch.setattr(parse_room, "_MEMO", 0)
    again = [(token.text, token.lower, token.lemma) for token in parse_of("Ten is EVEN").tokens]
    fresh = [(token.text, token.lower) for token in parse_of("Nine is oDD, zqx").tokens]
    assert again == before
    assert fresh == [("Nine", "nine"), ("is", "is"), ("oDD", "odd"), (",", ","), ("zqx", "zqx")]
