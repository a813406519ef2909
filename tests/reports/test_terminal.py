"""Tables and explanations in the terminal."""

from __future__ import annotations

import io

from made_scores import NONE, make_score, make_worry
from rich.console import Console

from journal.records import Reasoning
from journal.reports.explanation import show_explanation
from journal.reports.terminal import show_pupils, show_words


def _console() -> tuple[Console, io.StringIO]:
    out = io.StringIO()
    return Console(file=out, width=120, highlight=False), out


def test_pupils_are_shown_in_the_alphabets_order_without_levels() -> None:
    console, out = _console()
    show_pupils([make_score("1", "Zoë"), make_score("2", "ava"), make_worry()], console)
    shown = out.getvalue()
    assert shown.index("ava") < shown.index("Zoë")
    assert "Wren" not in shown
    assert "level" not in shown


def test_words_are_shown_with_who_used_them() -> None:
    console, out = _console()
    show_words([make_score("1", "Zoë"), make_score("2", None), make_worry()], console)
    lines = {
        line.split("│")[1].strip(): line for line in out.getvalue().splitlines() if "│" in line
    }
    assert "entry 2, Zoë" in lines["half"]
    assert "nobody yet" in lines["third"]
    assert "bottom number" in lines["denominator"]


def test_an_entry_without_a_level_says_why() -> None:
    console, out = _console()
    nothing = Reasoning(None, None, "rules", None, ())
    show_explanation(
        make_score(scored=False, not_scored_because="too_short", reasoning=nothing,
                   metacognition=NONE), console,
    )  # fmt: skip
    assert "Not scored: too short to score." in out.getvalue()
    assert "Reasoning:" not in out.getvalue()


def test_an_entry_to_read_first_shows_its_words_and_nothing_else() -> None:
    console, out = _console()
    show_explanation(make_worry(), console)
    assert "It was not scored." in out.getvalue()
    assert "Evidence" not in out.getvalue()
