"""Clauses of run-ons and of edited sentences (all sentences invented)."""

from __future__ import annotations

from collections.abc import Callable

import pytest

from journal.evidence.clauses import find_clauses
from journal.language.parse import Parse

ParseOf = Callable[[str], Parse]


def clauses_of(parse: Parse) -> list[str]:
    return [parse.surface(c.first, c.after).strip(" ,.") for c in find_clauses(parse)]


@pytest.mark.parametrize(
    ("text", "clauses"),
    [
        ("i know its even it ends in 8", ["i know its even", "it ends in 8"]),
        (
            "this is not a square the corners are not right angles",
            ["this is not a square", "the corners are not right angles"],
        ),
        ("the answer is 12 i did it in my head", ["the answer is 12", "i did it in my head"]),
        ("i think its odd its 7", ["i think its odd", "its 7"]),
    ],
)
def test_a_new_subject_with_its_verb_opens_a_clause(
    parse_of: ParseOf, text: str, clauses: list[str]
) -> None:
    assert clauses_of(parse_of(text)) == clauses


@pytest.mark.parametrize(
    "text",
    [
        "63 and 28 makes 91",
        "It is true that 8 is even",
        "180 - 130 = 50",
        "the number you multiply by is 4",
        "it was so hard for me",
    ],
)
def test_one_thought_stays_one_clause(parse_of: ParseOf, text: str) -> None:
    assert len(clauses_of(parse_of(text))) == 1


def test_joints_that_stand_together_are_kept_together(parse_of: ParseOf) -> None:
    parse = parse_of("It is 8, and because 4 + 4 is 8 I know.")
    assert find_clauses(parse)[1].joints == (",", "and", "because")


def test_its_at_the_end_is_no_verb(parse_of: ParseOf) -> None:
    parse = parse_of("the square has four of its")
    assert find_clauses(parse)[-1].predicate


@pytest.mark.parametrize(
    ("text", "clauses"),
    [
        ("it gets smaller because your cutting it", ["it gets smaller", "your cutting it"]),
        ("It's a hexagon it has six sides", ["It's a hexagon", "it has six sides"]),
        ("I know 6 and 4 makes 10 so it is 10", ["I know 6 and 4 makes 10", "it is 10"]),
        ("when you fold it the sides match", ["you fold it", "the sides match"]),
    ],
)
def test_children_join_and_break_clauses_in_their_own_way(
    parse_of: ParseOf, text: str, clauses: list[str]
) -> None:
    found = find_clauses(parse_of(text))
    assert clauses_of(parse_of(text)) == clauses
    assert found[-1].predicate
