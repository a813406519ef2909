"""Every family of statements: its right ones, its wrong ones and what only looks like one."""

from __future__ import annotations

from pathlib import Path

import pytest

from journal.evidence.claims import find_claims
from journal.evidence.setting import Setting

FAMILIES = Path(__file__).with_name("families.txt")


def expectations():
    for line in FAMILIES.read_text(encoding="utf-8").splitlines():
        if line and not line.startswith("#"):
            verdicts, sentence = line.split("|", 1)
            yield sentence.strip(), verdicts.split()


@pytest.mark.parametrize(("sentence", "expected"), list(expectations()))
def test_a_statement_is_judged_as_its_family_is(parse_of, sentence, expected):
    claims = find_claims(parse_of(sentence), Setting())
    assert [c.verdict + ("" if c.asserted else "-") for c in claims] == expected
