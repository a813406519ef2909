import csv
from pathlib import Path

import pytest

from journal import Scorer
from journal.evidence.setting import Setting
from journal.evidence.vocabulary import find_vocabulary
from journal.lexicon.terms import load_terms
from journal.resources import LEXICON

ROWS = list(csv.DictReader((LEXICON / "vocabulary.csv").read_text("utf-8").splitlines()))
# Mathematics programmes of study: key stages 1 and 2, DfE 2013.
FIRST_YEARS = {
    row["term"]: 0 if row["first_year"] == "R" else int(row["first_year"])
    for row in ROWS
    if row["source"].startswith("NC2014 PoS")
}
LINES = (Path(__file__).parent / "data" / "statutory_terms.tsv").read_text("utf-8").splitlines()
STATUTORY = [line.split("\t") for line in LINES[2:]]
SCORER = Scorer()


@pytest.fixture
def found(parse_of):
    def find(text, **setting):
        return find_vocabulary(parse_of(text), load_terms(), Setting(**setting))

    return find


def _marked(sentence):
    start, end = sentence.index("["), sentence.index("]") - 1
    return sentence.replace("[", "").replace("]", ""), start, end


def test_there_is_a_sentence_for_every_statutory_term():
    assert sorted(row[0] for row in STATUTORY) == sorted(FIRST_YEARS)


@pytest.mark.parametrize("row", STATUTORY, ids=lambda row: row[0])
@pytest.mark.parametrize(("later", "kind"), [(0, "curriculum"), (1, "earlier")])
def test_a_statutory_term_counts_as_of_its_year(found, row, later, kind):
    text, start, end = _marked(row[1])
    shown = row[2] if len(row) == 3 else row[0]
    year = FIRST_YEARS[shown] + later
    (use,) = [use for use in found(text, year=year) if (use.start, use.end) == (start, end)]
    assert (use.term, use.kind, use.sense, use.counted) == (shown, kind, "mathematical", True)


@pytest.mark.parametrize("row", STATUTORY, ids=lambda row: row[0])
def test_a_statutory_term_counts_as_the_lessons_target(found, row):
    text, start, end = _marked(row[1])
    (use,) = [
        use
        for use in found(text, targets=(row[0],))
        if use.kind == "target" and (use.start, use.end) == (start, end)
    ]
    assert (use.term, use.sense, use.counted) == (row[0], "mathematical", True)


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


@pytest.mark.parametrize(
    ("text", "target", "surface"),
    [
        ("the denomanator tells you how many parts", "denominator", "denomanator"),
        ("i fownd the perimiter of the rectangle", "perimeter", "perimiter"),
        ("it is a triangel with 3 sides", "triangle", "triangel"),
        ("12 is a multipul of 3", "multiple", "multipul"),
        ("i yoused a numberline to jump 5", "number line", "numberline"),
        ("1/2 is equivalant to 2/4", "equivalent", "equivalant"),
        ("the parrallel sides never meet", "parallel", "parrallel"),
        ("the hundreths column is after tenths", "hundredth", "hundreths"),
        ("i did subtracksion to find it", "subtraction", "subtracksion"),
        ("a cube has 8 vertisees", "vertices", "vertisees"),
    ],
)
def test_a_misspelt_term_counts_with_its_own_letters(text, target, surface):
    (use,) = [
        use for use in SCORER.score(text, target_terms=[target]).vocabulary if use.kind == "target"
    ]
    assert (use.term, use.surface, use.counted) == (target, surface, True)
    assert use.form == "misspelt"


def test_the_full_stop_of_an_abbreviation_belongs_to_it(found):
    (use,) = [use for use in found("school starts at 9 a.m.") if use.term == "a.m."]
    assert use.surface == "a.m."


@pytest.mark.parametrize(
    "text", ["3/4/2026 was the date", "we were on page 4 / and stopped", "well - it was fun"]
)
def test_a_sign_out_of_its_place_shows_no_term(found, text):
    assert [use for use in found(text) if use.form == "symbol"] == []


def test_two_terms_written_in_one_are_told(found):
    (use,) = found("i used a number-line", targets=("number line",))
    assert (use.term, use.surface, use.counted) == ("number line", "number-line", True)


def test_a_target_of_no_words_is_passed_over(found):
    assert found("we drew a picture", targets=("  ",)) == []


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


def test_a_sign_shows_the_listed_term_where_the_target_is_longer(found):
    assert [use.term for use in found("4 + 5", targets=("plus sign",))] == ["plus"]


def test_a_dash_that_opens_the_text_joins_nothing(found):
    (use,) = found("- half of it", targets=("half",))
    assert (use.start, use.surface) == (2, "half")


def test_pi_is_found_as_a_target_alone(found):
    assert found("we saw π") == []
    assert [use.term for use in found("we saw π", targets=("pi",))] == ["pi"]


def test_a_sign_shows_no_longer_term_that_begins_alike(found):
    assert found("it was 1/8 today")[0].term == "eighth"
