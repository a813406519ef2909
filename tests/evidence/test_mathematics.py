import pytest

from journal.evidence.informal import find_informal
from journal.evidence.mathematics import find_mathematics
from journal.evidence.setting import Setting
from journal.evidence.vocabulary import find_vocabulary
from journal.lexicon.informal import load_informal
from journal.lexicon.terms import load_terms


@pytest.fixture
def kinds(parse_of):
    def find(text):
        parse = parse_of(text)
        uses = find_vocabulary(parse, load_terms(), Setting())
        informal = find_informal(parse, load_informal(), Setting())
        found = find_mathematics(parse, uses, informal, []).kinds
        return {t.lower: kind for t, kind in zip(parse.tokens, found, strict=True) if kind}

    return find


@pytest.mark.parametrize(
    "text",
    [
        "today was really good and i liked it",
        "maths was hard because i was tired",
        "i did the first one and that one was hard",
        "we did page 5 and 3 questions",
        "we did sums in the lesson",
    ],
)
def test_talk_about_the_lesson_is_no_mathematics(kinds, text):
    assert kinds(text) == {}


def test_each_kind_is_told(kinds):
    found = kinds("i added 3 counters because 8 is bigger and the denominator is 4")
    assert found["added"] == "operation"
    assert found["3"] == "quantity"
    assert found["counters"] == "representation"
    assert found["bigger"] == "relation"
    assert found["denominator"] == "term"


def test_one_is_a_number_beside_a_fraction(kinds):
    assert kinds("one third is less")["one"] == "quantity"
