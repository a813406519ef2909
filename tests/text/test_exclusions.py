"""What is not the child's own is left out, and only that."""

from __future__ import annotations

from hypothesis import given
from hypothesis import strategies as st

from journal.records import Excluded
from journal.text.exclusions import blank_out, find_adult_prompts, find_excluded

SCRIBED = "[What did you notice?] it goes up in 7s [Why?] because you add 7"


def test_brackets_of_a_scribed_entry_are_an_adults_prompts() -> None:
    found = find_adult_prompts(SCRIBED, "scribed")
    assert [SCRIBED[start:end] for start, end in found] == ["[What did you notice?]", "[Why?]"]


def test_brackets_of_a_typed_entry_are_the_childs_mathematics() -> None:
    assert find_adult_prompts("[3 + 4] x 2 = 14", "typed") == []


def test_brackets_are_the_childs_where_the_mode_is_unknown() -> None:
    assert find_adult_prompts("[3 + 4] x 2 = 14", None) == []


def test_a_bracket_that_is_never_closed_runs_to_the_end() -> None:
    assert find_adult_prompts("it is 7 [how do you", "dictated") == [(8, 19)]


def test_words_put_in_by_a_tap_are_left_out() -> None:
    assert find_excluded("I know because it is 8", "typed", [(0, 14)]) == [
        Excluded(0, 14, "inserted")
    ]


def test_a_tapped_word_inside_a_prompt_counts_as_the_prompt() -> None:
    assert find_excluded("[ten] ten", "scribed", [(1, 4)]) == [Excluded(0, 5, "adult_prompt")]


def test_tapped_stretches_are_cut_to_the_text() -> None:
    assert find_excluded("ten", "typed", [(-2, 99)]) == [Excluded(0, 3, "inserted")]


def test_of_two_overlapping_tapped_stretches_the_first_is_kept() -> None:
    assert find_excluded("ten ones", "typed", [(0, 5), (4, 8)]) == [Excluded(0, 5, "inserted")]


@given(st.text(alphabet="a [].", max_size=40))
def test_blanking_keeps_every_offset(text: str) -> None:
    spans = find_adult_prompts(text, "scribed")
    blanked = blank_out(text, spans)
    assert len(blanked) == len(text)
    assert all(not blanked[start:end].strip() for start, end in spans)
