"""Unit plans: what they give a lesson, and every problem named with its place."""

from __future__ import annotations

from pathlib import Path

import pytest

from journal.errors import PlanError
from journal.lexicon.plan import load_plan, read_plan
from journal.resources import shipped_folder

PLANS = sorted((shipped_folder("demo_entries") / "plans").glob("*.yaml"))

SMALL = """\
id: halves
title: Halves
unit: halves
year: 2
domain: fractions
target_terms:
  - half
  - term: quarter
    informal: [half of a half]
  - whole
lessons:
  - id: first
    date: 2027-01-11
    focus: Halves
    prompt: How do you know it is a half?
    target_terms: [half, whole]
  - id: second
    focus: Quarters
    prompt: How do you know it is a quarter?
    target_terms: [quarter]
    watch_list:
      - fraction-parts-need-not-be-equal
  - id: third
    focus: Both
    prompt: Which is greater?
watch_list:
  - id: bigger-half
    description: One half is taken to be bigger.
    patterns: ["(bigger|big) half"]
"""


def problems_of(text: str) -> list[str]:
    with pytest.raises(PlanError) as caught:
        read_plan(text, "small.yaml")
    return list(caught.value.problems)


@pytest.mark.parametrize("path", PLANS, ids=lambda path: path.stem)
def test_each_invented_plan_has_ten_lessons_with_all_that_a_page_shows(path: Path) -> None:
    plan = load_plan(path)
    assert len(plan.lessons) == 10
    for lesson in plan.lessons:
        assert lesson.prompt.endswith((".", "?"))
        assert lesson.sentence_starters
        assert lesson.word_bank
        assert lesson.expected_function
        assert plan.ideas_for(lesson)
        assert set(plan.targets_for(lesson)) <= {term.term for term in plan.target_terms}


def test_four_invented_plans_are_shipped() -> None:
    assert [path.stem for path in PLANS] == [
        "decimals_percentages_y6",
        "fractions_y4",
        "multiplication_division_y4",
        "shape_y5",
    ]


@pytest.mark.parametrize("which", ["second", 2, "2", "Lesson 2", "l2"])
def test_a_lesson_is_found_by_id_or_number(which: str | int) -> None:
    assert read_plan(SMALL).lesson(which).focus == "Quarters"


def test_a_lesson_is_found_by_date() -> None:
    assert read_plan(SMALL).lesson("2027-01-11").id == "first"


def test_a_lesson_that_is_not_there_is_named_with_the_nearest() -> None:
    with pytest.raises(PlanError, match="no lesson 'secnod'; did you mean 'second'"):
        read_plan(SMALL).lesson("secnod")


def test_a_lesson_without_terms_has_the_units() -> None:
    plan = read_plan(SMALL)
    assert plan.targets_for(plan.lesson("third")) == ("half", "quarter", "whole")


def test_earlier_terms_are_those_of_earlier_lessons_that_are_not_todays() -> None:
    plan = read_plan(SMALL)
    assert plan.earlier_for(plan.lesson("first")) == ()
    assert plan.earlier_for(plan.lesson("second")) == ("half", "whole")


def test_a_lessons_term_keeps_the_informal_forms_of_the_unit() -> None:
    plan = read_plan(SMALL)
    assert plan.informal_for(plan.lesson("second")) == {"quarter": ("half of a half",)}


def test_ideas_are_the_lessons_then_the_plans() -> None:
    plan = read_plan(SMALL)
    ids = [idea.id for idea in plan.ideas_for(plan.lesson("second"))]
    assert ids == ["fraction-parts-need-not-be-equal", "bigger-half"]


def test_the_hash_is_of_the_content_and_not_of_the_layout() -> None:
    same = "# a comment\n" + SMALL.replace("year: 2", "year: Year 2")
    other = SMALL.replace("Which is greater?", "Which is smaller?")
    assert read_plan(same).sha256 == read_plan(SMALL).sha256
    assert read_plan(other).sha256 != read_plan(SMALL).sha256


@pytest.mark.parametrize("word", ["no", "yes", "1:2", "3/4", "0.50", "on", "1e3"])
def test_a_word_stays_the_word_it_is(word: str) -> None:
    plan = read_plan(SMALL.replace("target_terms: [quarter]", f"target_terms: [{word}]"))
    assert plan.targets_for(plan.lesson("second")) == (word,)


@pytest.mark.parametrize(
    ("right", "wrong", "sentence"),
    [
        (
            "prompt: Which",
            "promt: Which",
            "line 25: 'promt' is not a field of a lesson; did you mean 'prompt'?",
        ),
        (
            "year: 2",
            "year: 9",
            "line 4: 'year' can't be '9'; write 0 for Reception, or 1 to 6",
        ),
        (
            "domain: fractions",
            "domain: fractons",
            "line 5: 'domain' can't be 'fractons'; "
            "did you mean 'fractions, decimals & percentages'?",
        ),
        (
            "informal: [half",
            "infromal: [half",
            "line 9: 'infromal' is not a field of a target term; did you mean 'informal'?",
        ),
        (
            "id: third",
            "id: second",
            "line 23: two lessons have the id 'second', the other on line 17; give each its own",
        ),
        (
            "2027-01-11",
            "11 January",
            "line 13: the date '11 January' should be year-month-day, such as 2026-03-02",
        ),
        (
            "(bigger|big) half",
            "(bigger|big half",
            "line 29: in the pattern “(bigger|big half” a bracket is opened and not closed; "
            "add ')'",
        ),
        (
            "- fraction-parts-need-not-be-equal",
            "- fraction-parts-need-not-equal",
            "line 22: no watch-list has an idea 'fraction-parts-need-not-equal'; "
            "did you mean 'fraction-parts-need-not-be-equal'?",
        ),
        (
            "target_terms: [quarter]",
            "target_terms: quarter",
            "line 20: 'target_terms' of a lesson should be a list, one item a line, "
            "each after '- '",
        ),
        ("title: Halves\n", "", "line 1: a plan needs the field 'title'; add a line 'title: ...'"),
        (
            "title: Halves\n",
            "title: Halves\ntitle: Wholes\n",
            "line 3: 'title' is given twice; keep one of them",
        ),
        (
            "    focus: Both",
            "    focus: Both\n    expected_function: reson",
            "line 25: 'expected_function' can't be 'reson'; did you mean 'reason'?",
        ),
    ],
)
def test_a_problem_names_line_field_and_remedy(right: str, wrong: str, sentence: str) -> None:
    assert right in SMALL
    assert problems_of(SMALL.replace(right, wrong, 1)) == [f"small.yaml, {sentence}"]


def test_all_problems_are_reported_at_once_in_the_order_of_the_file() -> None:
    text = SMALL.replace("year: 2", "year: 9").replace("prompt: Which", "promt: Which")
    assert [problem.split(":")[0] for problem in problems_of(text)] == [
        "small.yaml, line 4",
        "small.yaml, line 25",
    ]


@pytest.mark.parametrize(
    ("text", "place"),
    [
        ("title: a: b", "line 1, column 9"),
        ("title: [a", "line 1, column 10"),
        ("title: a\n\tyear: 2", "line 2, column 1"),
        ("a: &x [1]\nb: *x", "line 2"),
        ("- a", "line 1"),
    ],
)
def test_text_that_is_no_plan_is_refused_with_its_place(text: str, place: str) -> None:
    (problem,) = problems_of(text)
    assert problem.startswith(f"small.yaml, {place}:")


def test_a_python_object_in_a_plan_is_plain_text() -> None:
    text = SMALL.replace("title: Halves", "title: !!python/object/apply:os.getcwd []")
    assert any("'title'" in problem for problem in problems_of(text))


def test_a_missing_file_is_one_sentence(tmp_path: Path) -> None:
    with pytest.raises(PlanError, match="there is no such file"):
        load_plan(tmp_path / "none.yaml")


def test_a_file_that_is_no_text_is_one_sentence(tmp_path: Path) -> None:
    path = tmp_path / "plan.yaml"
    path.write_bytes(b"\xff\xfe\x00\x01")
    with pytest.raises(PlanError, match="not plain text"):
        load_plan(path)


def test_the_plan_of_the_guide_is_right() -> None:
    guide = Path(__file__).parents[2] / "docs" / "plans.md"
    text = guide.read_text(encoding="utf-8").split("```yaml\n")[1].split("```")[0]
    plan = read_plan(text)
    assert [idea.id for idea in plan.ideas_for(plan.lessons[0])] == [
        "fraction-parts-need-not-be-equal",
        "bigger-half",
    ]
