"""Each kind of flag finds nine in ten of what it is for, and takes one friend in ten at most.

The lines are invented; every second one was held out while the rules were made.
"""

from __future__ import annotations

import pytest
from evidence.read_flag_lines import FOLDER, KINDS, rate, read_lines

from journal.records import FlagKind
from journal.scoring import Scorer

LATER = sorted(path.stem for path in FOLDER.glob("*.txt") if path.stem not in KINDS)


@pytest.fixture(scope="module")
def scorer() -> Scorer:
    return Scorer()


def test_every_kind_of_flag_has_forty_lines_and_forty_friends() -> None:
    assert set(KINDS) == set(FlagKind.__args__)
    for kind in KINDS:
        lines = list(read_lines(kind))
        assert sum(line.wanted for line in lines) >= 40
        assert sum(not line.wanted for line in lines) >= 40


@pytest.mark.parametrize("held_out", [False, True], ids=["tuned", "held out"])
@pytest.mark.parametrize("kind", KINDS)
def test_recall_is_nine_in_ten(scorer: Scorer, kind: str, held_out: bool) -> None:
    lines = [line for line in read_lines(kind) if line.wanted and line.held_out == held_out]
    assert rate(scorer, kind, lines) >= 0.9


@pytest.mark.parametrize("held_out", [False, True], ids=["tuned", "held out"])
@pytest.mark.parametrize("kind", KINDS)
def test_false_alarms_are_one_in_ten_at_most(scorer: Scorer, kind: str, held_out: bool) -> None:
    lines = [line for line in read_lines(kind) if not line.wanted and line.held_out == held_out]
    assert rate(scorer, kind, lines) <= 0.1


@pytest.mark.parametrize("name", LATER)
def test_later_sets_keep_the_same_rates(scorer: Scorer, name: str) -> None:
    kind = name.rsplit("_", 1)[0]
    lines = list(read_lines(name))
    assert rate(scorer, kind, [line for line in lines if line.wanted]) >= 0.9
    assert rate(scorer, kind, [line for line in lines if not line.wanted]) <= 0.1
