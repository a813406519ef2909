"""The README's example is a real run, and its first commands are the ones that work."""

from __future__ import annotations

from pathlib import Path

import pytest

from journal import Scorer
from journal.records import Score
from journal.resources import shipped_folder

README = (Path(__file__).parent.parent / "README.md").read_text(encoding="utf-8")
PLAN = shipped_folder("demo_entries") / "plans" / "fractions_y4.yaml"
TEXT = "haff is bigger than kworter becoz it is only cut in 2"


@pytest.fixture(scope="module")
def score() -> Score:
    return Scorer().score(TEXT, plan=PLAN, lesson=3)


def test_the_example_is_in_the_readme() -> None:
    assert README.count(TEXT) == 2


def test_the_example_gets_the_level_and_rule_that_the_readme_shows(score: Score) -> None:
    shown = f"({score.reasoning.level}, {score.reasoning.rule!r})"
    assert f"score.reasoning.level, score.reasoning.rule  # {shown}" in README


def test_the_examples_spellings_are_read_as_the_readme_shows(score: Score) -> None:
    for item in score.spelling:
        assert item.read_as in README
        assert f"“{item.surface}”" in README
    assert len(score.spelling) == 3


def test_the_examples_markers_are_those_of_the_readme(score: Score) -> None:
    for marker in score.markers:
        assert f"{marker.function}" in README
        assert f"“{marker.surface}”" in README


def test_the_first_commands_are_the_two_that_set_everything_up() -> None:
    first = README.split("```")[1].splitlines()
    assert [line.split("#")[0].strip() for line in first[1:3]] == ["make demo", "make test"]
