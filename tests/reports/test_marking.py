"""Where the pencil goes: overlapping evidence, quiet look-alikes, notes for the margin."""

from __future__ import annotations

from dataclasses import replace

from hypothesis import given
from hypothesis import strategies as st
from made_scores import TEXT, make_score, span

from journal.records import Excluded, Flag, Reason
from journal.reports.marking import (
    Mark,
    find_context,
    find_look_alikes,
    find_marks,
    find_notes,
    quote,
    split_runs,
)

SPANS = st.lists(
    st.tuples(
        st.integers(0, 40),
        st.integers(1, 40),
        st.sampled_from(["vocabulary", "reason", "contrast"]),
    ).map(lambda item: Mark(item[0], item[0] + item[1], item[2], "")),
    max_size=6,
)


@given(text=st.text(min_size=1, max_size=60), marks=SPANS)
def test_runs_keep_every_character_of_the_text(text: str, marks: list[Mark]) -> None:
    score = make_score(text=text, excluded=())
    runs = split_runs(score, marks)
    assert "".join(run.text for run in runs) == text


@given(marks=SPANS)
def test_each_run_lies_under_exactly_the_marks_that_cover_it(marks: list[Mark]) -> None:
    score = make_score(text="x" * 80)
    place = 0
    for run in split_runs(score, marks):
        covering = {mark.kind for mark in marks if mark.start <= place < mark.end}
        assert set(run.kinds) == covering
        place += len(run.text)


@given(marks=SPANS)
def test_the_small_word_of_a_mark_stands_once_where_it_ends(marks: list[Mark]) -> None:
    runs = split_runs(make_score(text="x" * 80), marks)
    ends = {(mark.end, mark.kind) for mark in marks}
    assert sum(len(run.closing) for run in runs) == len(ends)


def test_a_word_inside_a_longer_mark_is_nested_in_it() -> None:
    marks = [Mark(0, 20, "reason", ""), Mark(5, 9, "vocabulary", "")]
    runs = split_runs(make_score(text="x" * 20), marks)
    assert [run.kinds for run in runs] == [("reason",), ("reason", "vocabulary"), ("reason",)]


def test_only_what_counts_is_marked() -> None:
    marked = {TEXT[mark.start : mark.end] for mark in find_marks(make_score())}
    assert marked == {"half", "number", "bigger then", "becuse"}


def test_a_look_alike_is_listed_with_its_why() -> None:
    (note,) = find_look_alikes(make_score())
    assert note.words == "“is smaller”"
    assert note.why == "“is smaller” is another use"


def test_a_reason_without_a_marker_is_marked_itself() -> None:
    reason = replace(make_score().reasons[0], marker=None)
    marks = find_marks(make_score(markers=(), reasons=(reason,)))
    assert ("reason", span("the bottom number is smaller")) in [
        (mark.kind, (mark.start, mark.end)) for mark in marks
    ]


def test_the_margin_tells_what_a_reason_is_for() -> None:
    notes = {note.kind: note for note in find_notes(make_score())}
    assert notes["reason"].explains == "“a half is bigger then a third”"


def test_the_margin_has_what_a_calculation_comes_to() -> None:
    assert [n.words for n in find_notes(make_score()) if n.kind == "claim"] == ["= 56"]


def test_the_margin_has_the_formal_word_beside_the_informal_one() -> None:
    words = [note.words for note in find_notes(make_score()) if note.kind == "informal"]
    assert words == ["“bottom number”: denominator"]


def test_a_reason_not_about_the_mathematics_is_no_note_but_can_be_asked_for() -> None:
    fun = Reason(1, None, span("the bottom number is smaller"), "grounds", None,
                 "not_mathematical", "“fun”")  # fmt: skip
    score = make_score(reasons=(fun,))
    assert "reason" not in {note.kind for note in find_notes(score)}
    assert "not about the mathematics" in {note.kind for note in find_look_alikes(score)}


def test_an_idea_is_told_in_a_teachers_words() -> None:
    flag = Flag("idea_to_check", 0, 6, "a half", "halves-shrink", None, "“a half”")
    notes = find_notes(make_score(flags=(flag,)), {"halves-shrink": "Halves are taken to shrink."})
    assert "an idea to check: Halves are taken to shrink." in [note.words for note in notes]


def test_the_same_note_is_written_once() -> None:
    reason = make_score().reasons[0]
    notes = find_notes(make_score(reasons=(reason, reason)))
    assert [note.kind for note in notes].count("reason") == 1


def test_an_adults_words_are_given_not_marked() -> None:
    runs = split_runs(make_score(text="[why?] ok", excluded=(Excluded(0, 6, "adult_prompt"),)), ())
    assert [(run.text, run.given) for run in runs] == [("[why?]", True), (" ok", False)]


def test_a_quote_is_shortened_in_the_middle() -> None:
    assert quote("a " * 100, 20) == "“a a a a a … a a a a a”"


def test_words_are_shown_in_their_sentence() -> None:
    text = "We did it. i dont get it with the dots. Lunch."
    around = find_context(text, text.index("dont"), text.index(" with"))
    assert around.before + around.words + around.after == "i dont get it with the dots."
