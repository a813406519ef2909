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
        "i guessed",
        "it was fun",
        "it was a bit harder than before and we did more",
        "my favourite part was the same as sam",
        "i had more fun in our group than last week",
        "we shared a book and i got the same one as leo",
        "the same people always answer and that is unfair",
        "how many questions did you do",
        "it is colder at night",
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


# Invented sentences.
@pytest.mark.parametrize(
    ("text", "wanted"),
    [
        ("-5 is colder than -2", {"-5", "colder", "-2"}),
        ("i thought area meant around the outside", {"area"}),
        ("No because they are not the same size pieces.", {"same", "size", "pieces"}),
        ("people share it fairly", {"share", "fairly"}),
        ("they both got the same amount", {"same", "amount"}),
        ("each person gets less", {"each", "less"}),
        ("it can roll because it is round", {"roll", "round"}),
        ("all the sides are the same", {"sides", "same"}),
        ("if you cut it again they get smaller", {"cut", "smaller"}),
        ("how many parts did you shade", {"many", "parts", "shade"}),
        ("you swap the numbers and it stays the same", {"numbers", "same"}),
        ("it goes in the tens column", {"goes", "tens", "column"}),
    ],
)
def test_plain_words_that_compare_or_part_are_mathematics_together(kinds, text, wanted):
    found = set(kinds(text))
    assert found <= wanted
    assert len(found) >= min(2, len(wanted))


def test_a_shape_word_told_twice_is_no_second_feature(kinds):
    assert kinds("it went round and round") == {}


def test_the_small_words_of_an_informal_form_are_left_out(kinds):
    assert "the" not in kinds("the number at the bottom")
