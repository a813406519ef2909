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
