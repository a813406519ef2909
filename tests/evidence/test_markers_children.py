"""Readings of markers in invented sentences, whose errors were all used to correct the rules."""

from __future__ import annotations

import pytest
from found_markers import ParseOf, markers_of
from marked_lines import Line, read_lines

FIRST, LATER = "markers_children.txt", "markers_children_later.txt"


def count(parse_of: ParseOf, lines: list[Line]) -> tuple[int, int, int, int, int]:
    """Return counted and meant, counted only, meant only, others, others counted."""
    right = extra = missed = others = others_counted = 0
    for line in lines:
        markers = markers_of(parse_of(line.text))
        met = set()
        for (start, end), reading in line.readings.items():
            touching = [m for m in markers if m.start < end and start < m.end]
            exact = [m for m in touching if m.start == start] or touching
            counted = bool(exact) and exact[0].counted
            met.update(m.start for m in exact[:1])
            if reading == "reasoning":
                right += counted
                missed += not counted
            else:
                others += 1
                others_counted += counted
                extra += counted
        extra += sum(m.counted and m.start not in met for m in markers)
    return right, extra, missed, others, others_counted


@pytest.mark.parametrize("half", [0, 1], ids=["odd lines", "even lines"])
def test_counted_markers_are_the_ones_that_reason_about_mathematics(
    parse_of: ParseOf, half: int
) -> None:
    right, extra, missed, _, _ = count(parse_of, read_lines(FIRST)[half::2])
    f1 = 2 * right / (2 * right + extra + missed)
    assert f1 >= 0.93


@pytest.mark.parametrize("half", [0, 1], ids=["odd lines", "even lines"])
def test_at_most_one_in_twenty_other_uses_is_counted(parse_of: ParseOf, half: int) -> None:
    _, _, _, others, others_counted = count(parse_of, read_lines(FIRST)[half::2])
    assert others_counted <= 0.05 * others


def test_every_marked_form_is_reported(parse_of: ParseOf) -> None:
    unreported = [
        (line.text, line.text[start:end])
        for line in read_lines(FIRST)
        for start, end in line.readings
        if not any(m.start < end and start < m.end for m in markers_of(parse_of(line.text)))
    ]
    assert unreported == []


def test_a_second_set_of_sentences_is_read_alike(parse_of: ParseOf) -> None:
    lines = read_lines(LATER)
    right, extra, missed, others, others_counted = count(parse_of, lines)
    assert 2 * right / (2 * right + extra + missed) >= 0.93
    assert others_counted <= 0.05 * others
