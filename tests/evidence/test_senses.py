from pathlib import Path

import pytest

from journal.evidence.setting import Setting
from journal.evidence.vocabulary import find_vocabulary
from journal.lexicon.terms import load_terms

LINES = (Path(__file__).parent / "data" / "child_senses.tsv").read_text("utf-8").splitlines()
# Invented sentences in children's voice.
SENTENCES = [line.split("\t") for line in LINES[2:]]


def _counted(parse, first, after, setting):
    uses = find_vocabulary(parse, load_terms(), setting)
    return any(use.counted and use.start <= first and use.end >= after for use in uses)


def _share_counted(parse_of, sense, *, as_target):
    rows = [(term, text) for term, wanted, text in SENTENCES if wanted == sense]
    counted = 0
    for term, text in rows:
        first, after = text.index("["), text.index("]") - 1
        setting = Setting(targets=(term,) if as_target else ())
        plain = text.replace("[", "").replace("]", "")
        counted += _counted(parse_of(plain), first, after, setting)
    return counted / len(rows)


def test_mathematical_uses_are_kept(parse_of):
    assert sum(sense == "mathematical" for _, sense, _ in SENTENCES) >= 220
    assert _share_counted(parse_of, "mathematical", as_target=False) >= 0.95


def test_mathematical_uses_of_targets_are_kept(parse_of):
    assert _share_counted(parse_of, "mathematical", as_target=True) >= 0.95


def test_everyday_uses_are_not_counted(parse_of):
    assert sum(sense == "everyday" for _, sense, _ in SENTENCES) >= 80
    assert _share_counted(parse_of, "everyday", as_target=False) <= 0.05


@pytest.mark.parametrize("text", ["even though it was hard", "it was even better", "not even 4"])
def test_even_stays_everyday_as_a_target(parse_of, text):
    (use,) = [
        use
        for use in find_vocabulary(parse_of(text), load_terms(), Setting(targets=("even",)))
        if use.term == "even"
    ]
    assert (use.sense, use.counted) == ("everyday", False)
    assert "even" in use.why
