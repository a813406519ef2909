import csv
from pathlib import Path

import pytest

from journal.errors import LexiconError
from journal.evidence.informal import find_informal
from journal.evidence.setting import Setting
from journal.lexicon import informal
from journal.lexicon.informal import load_informal
from journal.resources import LEXICON

ROWS = list(csv.DictReader((LEXICON / "informal.csv").read_text("utf-8").splitlines()))
OWNERS = {surface: row for row in ROWS for surface in row["informal"].split("|")}
SAFE = [surface for surface, row in OWNERS.items() if row["safe"] == "yes"]
LINES = (Path(__file__).parent / "data" / "informal_contexts.tsv").read_text("utf-8").splitlines()
# Invented sentences.
CONTEXTS = [line.split("\t") for line in LINES[2:]]


@pytest.fixture
def found(parse_of):
    def find(text, **setting):
        return find_informal(parse_of(text), load_informal(), Setting(**setting))

    return find


def test_every_form_that_needs_company_has_sentences_with_and_without():
    wanted = {
        (row["informal"], told)
        for row in ROWS
        if row["safe"] == "no"
        for told in (("yes",) if row["context"] == "always" else ("yes", "no"))
    }
    assert wanted <= {(OWNERS[form]["informal"], told) for form, told, _ in CONTEXTS}


@pytest.mark.parametrize("row", CONTEXTS, ids=lambda row: f"{row[0]}-{row[1]}")
def test_company_tells_an_informal_form_from_plain_english(found, row):
    form, told, sentence = row
    formals = [use.formal for use in found(sentence)]
    assert (OWNERS[form]["formal"] in formals) == (told == "yes")


@pytest.mark.parametrize("surface", SAFE)
def test_a_form_that_speaks_for_itself_needs_no_company(found, surface):
    text = f"so {surface} and then lunch"
    uses = [use for use in found(text) if use.start == 3]
    assert [(use.surface, use.formal) for use in uses] == [(surface, OWNERS[surface]["formal"])]


@pytest.mark.parametrize("surface", [surface for surface in SAFE if " " in surface])
def test_a_form_broken_by_another_word_is_none(found, surface):
    first, _, rest = surface.partition(" ")
    uses = found(f"so {first} purple {rest} and then lunch")
    assert OWNERS[surface]["formal"] not in [use.formal for use in uses if use.start == 3]


def test_the_longest_form_is_told_once(found):
    (use,) = found("the number at the bottom is 4")
    assert (use.surface, use.formal) == ("number at the bottom", "denominator")


def test_the_plans_domain_helps_where_company_is_thin(found):
    (use,) = found("3 goes into it", domain="multiplication & division")
    assert (use.surface, use.formal) == ("goes into", "is a factor of")
    assert found("3 goes into it") == []


def test_a_form_neither_safe_nor_not_is_refused(tmp_path, monkeypatch):
    path = tmp_path / "informal.csv"
    path.write_text("informal,formal,domain,safe,context\nbits,parts,fractions,maybe,\n", "utf-8")
    monkeypatch.setattr(informal, "LEXICON", tmp_path)
    with pytest.raises(LexiconError, match=r"informal\.csv, 'bits': safe must be yes or no"):
        load_informal.__wrapped__()


def test_a_form_that_needs_a_number_behind_it_is_none_at_the_end(found):
    assert found("i saw what goes into") == []
