"""Each hard-case rule decides its own case and not its neighbour (minimal pairs, invented)."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest
from judged import load_scorer

from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.records import Flag, Question, Step
from journal.rubric import check_reasoning

PAIRS = [
    ("R1", "48 is an even number because it is fun", "48 is an even number because it ends in 8"),
    ("R1", "The answer is 24 because Miss said so", "The answer is 24 because 4 lots of 6 is 24"),
    (
        "R3",
        "To divide fractions you flip the second one and times.",
        "To divide fractions you flip the second one because dividing by a half is doubling.",
    ),
    ("R4", "Multiplying always makes numbers bigger.", "3 x 4 makes 12 and 3 x 5 makes 15."),
    (
        "R4",
        "If you add two odd numbers it is always even because 3 + 5 is 8.",
        "8 is even because it ends in 8.",
    ),
    (
        "R5",
        "12 is odd because it is made of pairs and nothing is left over when you share it.",
        "12 is even because it is made of pairs and nothing is left over when you share it.",
    ),
    ("R6", "7 x 8 = 56 and 6 x 8 = 48", "7 x 8 = 56 because 7 x 7 = 49 and one more 7 is 56"),
    (
        "R11",
        "because therefore fraction always prove denominator so since",
        "a third has a bigger denominator than a half because it has more parts",
    ),
    (
        "R13",
        "I did 120 divided by 5 and then times 3 and got 72",
        "48 is even because it ends in 8",
    ),
    (
        "R13",
        "3/5 of 120 is 72 because 1/5 of 120 is 24, so 3/5 is 72",
        "3/5 of 120 is 72 because 1/5 of 120 is 24 and three fifths is three of those parts",
    ),
    (
        "R14",
        "I held the ruler flat so that it did not slip and measured 12 cm.",
        "I lined up the digits so that the tens are under the tens.",
    ),
    (
        "R15",
        "3 out of 9 are red, which is 1/3",
        "3 out of 9 is 1/3 because 9 is three equal groups of 3 and one of the groups is red",
    ),
    (
        "R16",
        "I got 56 for 7 x 8 and I checked it.",
        "I got 56 for 7 x 8 and I checked it by doing 56 divided by 8 which is 7.",
    ),
    ("R18", "We did fractions in the lesson.", "We coloured three quarters of a bar."),
]


@pytest.mark.parametrize(("rule", "text", "other"), PAIRS)
def test_the_rule_that_decided_is_named(rule: str, text: str, other: str) -> None:
    assert load_scorer().score(text).reasoning.rule == rule
    assert load_scorer().score(other).reasoning.rule != rule


def test_r7_one_example_never_supports_a_generalisation() -> None:
    general = "Odd add odd is always even"
    case = f"{general} because in 3 + 5 the one left over of the 3 pairs with the one of the 5"
    structure = f"{general} because the one left over of each makes another pair with the other"
    assert load_scorer().score(case).reasoning.level == 3
    assert load_scorer().score(structure).reasoning.level == 4


def test_r17_an_idea_to_check_holds_the_level_only_in_the_claim_it_is_in() -> None:
    beside = "48 is even because it ends in 8 and even numbers end in 0, 2, 4, 6 or 8."
    apart = f"{beside} I think 1 is a prime number."
    assert load_scorer().score(beside).reasoning.level == 3
    assert load_scorer().score(apart).reasoning.level == 3


def step(text: str, question: Question, prompt: str | None = None) -> Step:
    path: tuple[Step, ...] = load_scorer().score(text, prompt=prompt).reasoning.path
    return next(step for step in path if step.question == question)


@pytest.mark.parametrize(
    ("question", "near", "far"),
    [
        ("A1", "We did fractions in the lesson.", "I really liked it and it was fun."),
        (
            "A2",
            "48 is an even number because it is an even number",
            "48 is an even number because it is fun",
        ),
        (
            "A3a",
            "4 is bigger because 4 has got lots more than 2 has got in the jar",
            "It is 24 because 6 x 4",
        ),
        (
            "A4a",
            "6 + 8 is even because 6 is pairs and any even number is pairs with nothing left over",
            "6 x 7 is 42 because 5 x 7 is 35 and one more group of 7 makes 42",
        ),
    ],
)
def test_near_marks_a_no_that_a_small_change_would_turn(
    question: Question, near: str, far: str
) -> None:
    assert (step(near, question).answer, step(near, question).near) == (False, True)
    assert (step(far, question).answer, step(far, question).near) == (False, False)


def test_r17_an_idea_to_check_in_a_claim_that_nobody_settled_holds_the_level_at_two(
    parse_of: Callable[[str], Parse],
) -> None:
    text = "A kite is no rhombus because its sides come in pairs and a rhombus needs all four equal"
    evidence = load_scorer().find_evidence(parse_of(text), Setting())
    idea = Flag("idea_to_check", 0, 20, text[:20], "kites", None, "an idea")
    elsewhere = Flag("idea_to_check", 90, 95, text[90:], "kites", None, "an idea")
    held = check_reasoning(replace(evidence, claims=(), flags=(idea,)))
    assert (held.level, held.rule) == (2, "R17")
    free = check_reasoning(replace(evidence, claims=(), flags=(elsewhere,)))
    assert free.level == 3


def test_a_claim_that_nobody_settled_leaves_the_level() -> None:
    text = "A kite is no rhombus because its sides come in pairs and a rhombus needs all four equal"
    assert step(text, "A3b").answer is None
    assert load_scorer().score(text).reasoning.level == 3


def test_a_judging_word_names_mathematics_only_in_answer_to_a_prompt() -> None:
    assert step("yes i think it is true", "A1", "True or false: 8 is even").near
    assert step("yes i think it is true", "A1").answer is False


def test_a_keyword_string_inside_is_no_sound_reason() -> None:
    assert load_scorer().score("because so therefore prove always since").reasoning.level == 0
