import csv

import pytest

from journal.lexicon.informal import load_informal
from journal.lexicon.terms import load_terms
from journal.resources import LEXICON

INDEX = load_terms()
ROWS = list(csv.DictReader((LEXICON / "vocabulary.csv").read_text("utf-8").splitlines()))


def test_every_row_of_the_vocabulary_loads_once():
    assert [term.headword for term in INDEX.terms] == [row["term"] for row in ROWS]
    assert len({term.headword for term in INDEX.terms}) == len(ROWS) >= 611


def test_every_informal_form_loads_once():
    rows = list(csv.DictReader((LEXICON / "informal.csv").read_text("utf-8").splitlines()))
    surfaces = [s for row in rows for s in row["informal"].split("|")]
    loaded = {form.words for forms in load_informal().values() for form in forms}
    assert len(loaded) == len(surfaces)
    assert {row["domain"] for row in rows} <= {term.domain for term in INDEX.terms}
    assert len(rows) >= 150


@pytest.mark.parametrize(
    ("form", "headword"),
    [
        ("halves", "half"),
        ("multiplying", "multiply"),
        ("vertexes", "vertex"),
        ("centimeters", "centimetre"),
        ("anticlockwise", "anti-clockwise"),
        ("taking away", "take away"),
    ],
)
def test_a_form_leads_to_its_headword(form, headword):
    assert INDEX.find_term(form).headword == headword


def test_a_plans_own_term_is_found_with_its_plural():
    own = INDEX.with_targets(("bar model",)).own["bar"]
    assert {pattern.words for pattern in own} == {("bar", "model"), ("bar", "models")}


def test_asking_for_the_same_targets_again_gives_the_same_index():
    assert INDEX.with_targets(("half",)) is INDEX.with_targets(("half",))


def test_every_sign_but_pi_shows_a_term_of_the_vocabulary():
    unknown = [s for s, symbol in INDEX.symbols.items() if not INDEX.find_term(symbol.shows[0])]
    assert unknown == ["π"]
