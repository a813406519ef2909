import csv

import pytest

from journal.evidence.setting import Setting
from journal.evidence.vocabulary import find_vocabulary
from journal.lexicon.terms import load_terms
from journal.resources import LEXICON

ROWS = list(csv.DictReader((LEXICON / "vocabulary.csv").read_text("utf-8").splitlines()))
# Mathematics programmes of study: key stages 1 and 2, DfE 2013.
STATUTORY = [row for row in ROWS if row["source"].startswith("NC2014 PoS")]


@pytest.fixture
def found(parse_of):
    def find(text, **setting):
        return find_vocabulary(parse_of(text), load_terms(), Setting(**setting))

    return find


@pytest.mark.parametrize("row", STATUTORY, ids=lambda row: row["term"])
def test_a_statutory_term_is_found_in_the_year_it_is_taught(found, row):
    """Terms of the statutory text, in an invented sentence, as the lesson's target."""
    name = row["term"].partition(" (")[0]
    year = 0 if row["first_year"] == "R" else int(row["first_year"])
    (use,) = [
        use
        for use in found(f"2 {name} 3", targets=(row["term"],), year=year)
        if use.kind == "target"
    ]
    assert (use.term, use.surface) == (row["term"], name)


@pytest.mark.parametrize("row", ROWS, ids=lambda row: row["term"])
def test_every_headword_is_found_in_its_plain_form(found, row):
    name = row["term"].partition(" (")[0]
    uses = found(f"2 {name} 3", targets=(row["term"],))
    assert row["term"] in [use.term for use in uses]


def test_a_longer_term_wins(found):
    (use,) = found("it has a right angle", year=4)
    assert (use.term, use.kind) == ("right angle", "earlier")


def test_a_target_inside_a_longer_term_is_a_use_of_the_target(found):
    assert [u.term for u in found("a unit fraction", targets=("fraction",))] == ["fraction"]
    assert [u.term for u in found("a right angle", targets=("right",))] == ["right angle"]


@pytest.mark.parametrize(
    ("text", "target", "form"),
    [
        ("the vertices are sharp", "vertex", "inflected"),
        ("i did multiplication", "multiply", "derived"),
        ("it is 5 centimeters", "centimetre", "variant"),
        ("it is 50% full", "percentage", "symbol"),
        ("4 + 4 = 8", "equals", "symbol"),
        ("the Denominator is 4", "denominator", "exact"),
    ],
)
def test_the_form_is_told(found, text, target, form):
    (use,) = [use for use in found(text, targets=(target,)) if use.kind == "target"]
    assert (use.form, use.counted) == (form, True)


def test_words_of_general_english_do_not_flood_the_record(found):
    assert found("first we sat down after lunch and it was a big day") == []


def test_a_term_copied_from_the_prompt_is_an_echo(found):
    prompt = "Explain what the denominator tells you"
    copied, own = found(
        "what the denominator tells you. my denominator was 4",
        prompt=prompt,
        targets=("denominator",),
    )
    assert (copied.echo, copied.counted) == (True, False)
    assert (own.echo, own.counted) == (False, True)
