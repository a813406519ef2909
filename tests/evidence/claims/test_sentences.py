"""What invented sentences claim: the verdict, and whether the child stands by it."""

from __future__ import annotations

from pathlib import Path

import pytest

from journal.evidence.claims import find_claims
from journal.evidence.setting import Setting
from journal.language.parse import read_parse
from journal.records import Excluded
from journal.text.offsets import OffsetMap

SENTENCES = Path(__file__).with_name("sentences.txt")


def expectations():
    cases = []
    for line in SENTENCES.read_text(encoding="utf-8").splitlines():
        if line.startswith("#") or not line:
            continue
        if line.startswith("    "):
            head, surface = line.strip().split(": ", 1)
            verdict, _, said = head.partition(" ")
            cases[-1][1].append((verdict, said == "said", surface))
        else:
            cases.append((line, []))
    return cases


@pytest.mark.parametrize(("sentence", "expected"), expectations())
def test_a_sentence_claims_what_it_says(parse_of, sentence, expected):
    claims = find_claims(parse_of(sentence), Setting())
    assert [(c.verdict, c.asserted, c.surface) for c in claims] == expected


def test_there_are_sentences_of_every_sort():
    found = {(verdict, said) for _, claims in expectations() for verdict, said, _ in claims}
    assert found >= {
        ("true", True),
        ("false", True),
        ("undecided", True),
        ("true", False),
        ("false", False),
    }
    assert sum(not claims for _, claims in expectations()) > 30


def test_an_excluded_stretch_claims_nothing(parse_of):
    setting = Setting(excluded=(Excluded(0, 12, "adult_prompt"),))
    claims = find_claims(parse_of("[3 + 4 = 8?] 3 + 4 = 7"), setting)
    assert [claim.surface for claim in claims] == ["3 + 4 = 7"]


def test_no_statement_reaches_over_a_break(pipeline):
    text = "I did 3 + 4 = 8"
    offsets = OffsetMap(text, (), text)
    assert find_claims(read_parse(pipeline(text), offsets, breaks=[10]), Setting()) == []
    assert len(find_claims(read_parse(pipeline(text), offsets), Setting())) == 1


def test_offsets_are_of_the_original(parse_of):
    text = "I  know\n\n that 7  ×  8 \n = 54 .\nAnd 3 + 4 = 7"
    claims = find_claims(parse_of(text), Setting())
    assert [text[c.start : c.end] for c in claims] == ["7  ×  8 \n = 54", "3 + 4 = 7"]


@pytest.mark.parametrize(
    ("sentence", "computed"),
    [
        ("7x8 = 54", "56"),
        ("1/2 + 1/4 = 2/6", "3/4"),
        ("3/4 = 0.34", "0.75"),
        ("0.7 = 7%", "70%"),
        ("1 m = 10 cm", "100 cm"),
        ("£1.20 + 30p = £1.60", "£1.50"),
        ("12 divided by 5 is 2 r 3", "2 remainder 2"),
        ("a hexagon has 5 sides", "6"),
        ("the 4 in 345 is worth 4", "40"),
        ("46 rounds to 40 to the nearest ten", "50"),
        ("1 and a half + 1/4 = 2", "1 3/4"),
        ("1/8 is bigger than 1/4", None),
        ("3 + ? = 10", None),
    ],
)
def test_the_right_value_is_given_as_plain_text(parse_of, sentence, computed):
    assert [c.computed for c in find_claims(parse_of(sentence), Setting())] == [computed]
