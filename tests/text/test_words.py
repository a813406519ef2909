"""Words are runs of non-space that hold a letter or digit, as the score record defines them."""

from __future__ import annotations

import pytest

from journal.text.words import find_words


@pytest.mark.parametrize(
    ("text", "count"),
    [
        ("", 0),
        ("I added 3 + 4.", 4),
        ("3+4=7", 1),
        ("... ! 🙂", 0),
        ("it’s a half-turn", 3),
        ("½ of it", 3),
    ],
)
def test_words_are_runs_with_a_letter_or_digit(text: str, count: int) -> None:
    assert len(find_words(text)) == count


def test_words_of_an_excluded_stretch_do_not_count() -> None:
    text = "[why is it even?] it ends in 8"
    assert [text[a:b] for a, b in find_words(text, [(0, 17)])] == ["it", "ends", "in", "8"]


def test_a_run_that_touches_an_excluded_stretch_counts_by_the_part_outside() -> None:
    assert find_words("because8", [(0, 7)]) == [(7, 8)]
