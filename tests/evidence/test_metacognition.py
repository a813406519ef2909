"""Comments on own knowing and learning (all sentences invented)."""

from __future__ import annotations

import pytest
from judged import load_scorer


def kinds_of(text: str) -> set[str]:
    return {item.kind for item in load_scorer().score(text).metacognition.evidence}


@pytest.mark.parametrize(
    ("text", "kind"),
    [
        ("I feel confident with adding fractions.", "feeling"),
        ("I found adding fractions really tricky.", "difficulty"),
        ("i still mix up perimeter and area", "difficulty"),
        ("I used a number line to help me count back.", "strategy"),
        ("I checked it by adding 35 and 28.", "check"),
        ("At first I thought 0.35 was bigger than 0.4.", "change"),
        ("Next time I will line up the tens.", "next"),
    ],
)
def test_each_kind_is_found(text: str, kind: str) -> None:
    assert kind in kinds_of(text)


@pytest.mark.parametrize(
    "text",
    [
        "A cube has 12 edges and 8 vertices.",
        "I learned that a cube has 12 edges.",
        "Then I used a number line for adding.",
        "I used counters for the sum and then I got 12.",
        "I really enjoyed the lesson this morning.",
    ],
)
def test_facts_steps_and_liking_alone_are_no_comment(text: str) -> None:
    assert kinds_of(text) == set()


def test_surface_is_the_childs_own_words() -> None:
    text = 'I told Sam "I got stuck on the sevens"'
    for item in load_scorer().score(text).metacognition.evidence:
        assert text[item.start : item.end] == item.surface
        assert not item.surface.endswith('"')


def answer_to(prompt: str, text: str) -> list[tuple[str, str]]:
    score = load_scorer().score(text, prompt=prompt)
    return [(item.kind, item.surface) for item in score.metacognition.evidence]


@pytest.mark.parametrize(
    ("prompt", "text", "kind"),
    [
        ("What helped you today?", "i did the bar model", "strategy"),
        ("What is your next step?", "learning all of the seven times table", "next"),
        ("What did you find tricky?", "the last page with all the clocks on", "difficulty"),
        ("How confident do you feel?", "quite but only with the small ones", "feeling"),
    ],
)
def test_an_answer_to_a_prompt_about_learning_is_a_comment(
    prompt: str, text: str, kind: str
) -> None:
    assert kind in {found for found, _ in answer_to(prompt, text)}


@pytest.mark.parametrize(
    ("prompt", "text"),
    [
        ("What helped you today?", "Sam had 12 counters and Jo had 9."),
        ("What is the same about these shapes?", "the number of sides and the angles"),
        ("What did you find tricky?", "."),
    ],
)
def test_what_does_not_answer_such_a_prompt_is_no_comment(prompt: str, text: str) -> None:
    assert answer_to(prompt, text) == []


def test_a_comment_of_the_kind_asked_for_is_found_once() -> None:
    assert answer_to("What helped you today?", "Drawing the jumps helped me a lot.") == [
        ("strategy", "Drawing the jumps helped me a lot")
    ]


def test_a_calculation_that_runs_on_is_left_out_of_the_comment() -> None:
    found = load_scorer().score("9+1 8+2 7+3 6+4 i am getting quicker at it").metacognition
    assert [item.surface for item in found.evidence] == ["i am getting quicker at it"]


@pytest.mark.parametrize(
    "text",
    [
        "then we cut them out and stuck it in our books",
        "A line graph is better for temperature than a bar chart.",
        "Miss Patel helped us cut the paper.",
        "Omar forgot to add the 10 so his answer is wrong.",
        "I realised that all the answers were even.",
        "The hard card shape was a pentagon.",
        "I liked it because it was fun and easy",
        "you can use the inverse to check a subtraction",
    ],
)
def test_false_friends_are_no_comment(text: str) -> None:
    assert kinds_of(text) == set()


def test_a_check_written_out_is_a_comment_only_where_the_pupil_speaks_of_themselves() -> None:
    assert "check" not in kinds_of("Half of 18 is 9. Double 9 is 18 so it is right.")
    assert "check" in kinds_of("I think 63 - 28 is 35. I checked because 35 + 28 makes 63.")
