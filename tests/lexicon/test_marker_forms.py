"""The marker forms as data."""

from __future__ import annotations

from pathlib import Path
from typing import get_args

import pytest

from journal.errors import LexiconError
from journal.evidence.markers.find import QUESTIONS
from journal.lexicon.markers import load_marker_words, load_markers
from journal.records import Function


def test_every_function_has_forms() -> None:
    assert {form.function for form in load_markers().forms} == set(get_args(Function))


def test_every_form_names_a_question_that_exists() -> None:
    assert {form.read for form in load_markers().forms} <= set(QUESTIONS)


@pytest.mark.parametrize("spelling", ["cos", "coz", "cuz", "'cause", "becuase", "becuse"])
def test_childrens_spellings_are_read_as_because(spelling: str) -> None:
    assert load_markers().by_first_word[spelling][-1][1].form == "because"


def test_longest_way_of_writing_comes_first() -> None:
    sizes = [len(words) for words, _ in load_markers().by_first_word["so"]]
    assert sizes == sorted(sizes, reverse=True)


def test_word_sets_are_lower_case() -> None:
    assert all(word == word.lower() for words in load_marker_words().values() for word in words)


@pytest.mark.parametrize(
    ("content", "message"),
    [
        ("[[marker]]\nfunction = 'reason'\nread = 'so'\n", "has no form"),
        ("[[marker]]\nform = 'so'\nfunction = 'cause'\nread = 'so'\n", "'cause' is not one of"),
        ("[[marker]]\nform = 'so'\nfunction = 'reason'\n", "add 'read'"),
        (
            "[[marker]]\nform = 'so'\nfunction = 'result'\nread = 'so'\nwords = ['']\n",
            "empty way of writing",
        ),
        (
            "[[marker]]\nform = 'so'\nfunction = 'result'\nread = 'so'\n"
            "[[marker]]\nform = 'soo'\nfunction = 'result'\nread = 'so'\nwords = ['so']\n",
            "keep one of them",
        ),
        ("[[marker]\n", "not valid TOML"),
    ],
)
def test_a_broken_file_is_named_with_the_remedy(tmp_path: Path, content: str, message: str) -> None:
    file = tmp_path / "markers.toml"
    file.write_text(content, encoding="utf-8")
    with pytest.raises(LexiconError, match=message):
        load_markers(file)


def test_a_missing_file_is_named(tmp_path: Path) -> None:
    with pytest.raises(LexiconError, match=r"nowhere\.toml can't be read"):
        load_markers(tmp_path / "nowhere.toml")
