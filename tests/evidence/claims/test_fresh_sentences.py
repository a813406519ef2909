"""Statements written before the rules were read: how many are found, and none wrongly."""

from __future__ import annotations

from pathlib import Path

import pytest

from journal.evidence.claims import find_claims
from journal.evidence.setting import Setting
from journal.language.parse import read_parse
from journal.text.normalise import find_spacing_edits, normalise_characters
from journal.text.offsets import OffsetMap

FRESH = Path(__file__).with_name("fresh_sentences.txt")
LEAST = 0.9


def statements():
    found = []
    for line in FRESH.read_text(encoding="utf-8").splitlines():
        if line.startswith("    "):
            head, surface = line.strip().split(": ", 1)
            found[-1][1].append((head.split()[0], surface))
        elif line and not line.startswith("#"):
            found.append((line, []))
    return found


@pytest.fixture(scope="module")
def judged(pipeline):
    pairs = []
    for sentence, stated in statements():
        clean = normalise_characters(sentence)
        offsets = OffsetMap(sentence, find_spacing_edits(clean), clean)
        claims = find_claims(read_parse(pipeline(offsets.working), offsets), Setting())
        for expected, surface in stated:
            start = sentence.index(surface)
            end = start + len(surface)
            got = {c.verdict for c in claims if c.start < end and start < c.end}
            pairs.append((expected, got, surface))
    return pairs


def test_no_right_statement_is_called_wrong(judged):
    assert not [s for expected, got, s in judged if expected == "true" and "false" in got]


@pytest.mark.parametrize("verdict", ["true", "false"])
def test_nine_in_ten_are_judged_as_a_person_does(judged, verdict):
    wanted = [got for expected, got, _ in judged if expected == verdict]
    assert len(wanted) > 45
    assert sum(verdict in got for got in wanted) / len(wanted) >= LEAST
