import pytest

from journal.errors import LexiconError
from journal.lexicon import kinds, terms
from journal.lexicon.inflections import singular
from journal.lexicon.kinds import load_kinds
from journal.lexicon.tables import load_rows

HEADER = "term,domain,first_year,source,from_memory,everyday_sense_risk,word_type,parts,hides\n"


def _rows(tmp_path, text):
    path = tmp_path / "words.csv"
    path.write_text(text, encoding="utf-8")
    return list(load_rows(path, ["word", "form"], ["word"]))


def test_a_table_that_is_not_there_is_named(tmp_path):
    with pytest.raises(LexiconError, match=r"words\.csv: the table can't be read"):
        list(load_rows(tmp_path / "words.csv", ["word"], ["word"]))


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("word\nhalf\n", "column 'form' is missing"),
        ("word,form\n,halves\n", "line 2: 'word' is empty"),
        ("word,form\nhalf,halves\nhalf,halfs\n", "line 3: 'half' stands twice"),
    ],
)
def test_a_table_at_fault_is_told_where(tmp_path, text, message):
    with pytest.raises(LexiconError, match=message):
        _rows(tmp_path, text)


def test_a_missing_cell_is_empty(tmp_path):
    assert _rows(tmp_path, "word,form\nhalf\n") == [{"word": "half", "form": ""}]


@pytest.mark.parametrize(
    ("text", "message"),
    [
        ("[words", "can't be read"),
        ("[other]", "can't be read"),
        ("[words]\nnumber = []", "the words of 'ordinal' are missing"),
    ],
)
def test_kinds_at_fault_are_told(tmp_path, monkeypatch, text, message):
    (tmp_path / "mathematics.toml").write_text(text, encoding="utf-8")
    monkeypatch.setattr(kinds, "LEXICON", tmp_path)
    with pytest.raises(LexiconError, match=message):
        load_kinds.__wrapped__()


@pytest.mark.parametrize(
    ("row", "message"),
    [
        ("half,fractions,seven,own,no,no,technical,noun,", "first_year is 'seven'; write R or 1"),
        ("half,fractions,2,own,no,no,rare,noun,", "unknown word_type 'rare'"),
    ],
)
def test_a_term_at_fault_is_told(tmp_path, monkeypatch, row, message):
    (tmp_path / "vocabulary.csv").write_text(HEADER + row + "\n", encoding="utf-8")
    monkeypatch.setattr(terms, "LEXICON", tmp_path)
    with pytest.raises(LexiconError, match=message):
        terms.load_terms.__wrapped__()


def test_a_form_of_an_unknown_kind_is_told(tmp_path, monkeypatch):
    (tmp_path / "vocabulary.csv").write_text(
        HEADER + "half,fractions,2,own,no,no,technical,noun,\n", encoding="utf-8"
    )
    (tmp_path / "forms.csv").write_text("word,form,kind\nhalf,halves,odd\n", encoding="utf-8")
    monkeypatch.setattr(terms, "LEXICON", tmp_path)
    with pytest.raises(LexiconError, match=r"forms\.csv, form 'halves': kind is 'odd'"):
        terms.load_terms.__wrapped__()


@pytest.mark.parametrize(
    ("word", "one"),
    [
        ("ponies", "pony"),
        ("boxes", "box"),
        ("arcs", "arc"),
        ("glass", "glass"),
        ("axis", "axis"),
        ("bus", "bus"),
    ],
)
def test_the_singular_of_a_regular_plural(word, one):
    assert singular(word) == one


def test_a_plans_term_that_is_a_spelling_of_its_own_is_shown_as_the_plan_has_it():
    own = terms.load_terms().with_targets(("centimeter",)).own
    assert {pattern.shown for patterns in own.values() for pattern in patterns} == {"centimeter"}


def test_an_index_that_is_asked_for_many_plans_starts_afresh():
    index = terms.load_terms()
    for at in range(300):
        assert index.with_targets((f"word {at}",)).own
    assert index.with_targets(("word 299",)) is index.with_targets(("word 299",))
