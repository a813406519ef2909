import pytest

from journal.evidence.informal import find_informal
from journal.evidence.mathematics import find_mathematics
from journal.evidence.setting import Setting
from journal.evidence.vocabulary import find_vocabulary
from journal.lexicon.informal import load_informal
from journal.lexicon.terms import load_terms
from journal.records import Claim


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


@pytest.mark.parametrize(
    ("text", "word", "kind"),
    [
        ("one cm is on the ruler", "one", "quantity"),
        ("i had one more than 4", "one", "quantity"),
        ("we added by one", "one", "quantity"),
        ("4 is one", "one", "quantity"),
        ("fun is one", "one", None),
        ("we did one", "one", None),
        ("one", "one", None),
        ("it was the one", "one", None),
        ("that is a good one", "one", None),
        ("it was 5 cm", "cm", "quantity"),
        ("it was cm", "cm", "quantity"),
        ("4 + 5", "+", "operation"),
        ("? + ? is hard", "+", "operation"),
        ("3 - fun", "-", None),
        ("we read - it was fun", "-", None),
        ("page three hundred", "hundred", "quantity"),
        ("question 4 was fun", "4", None),
        ("we had 3 hard questions", "3", None),
        ("3 of us played", "3", None),
        ("3 of 12 is red", "3", "quantity"),
        ("i saw 5", "5", "quantity"),
        ("+ 4 is easy", "+", "operation"),
        ("many parts are red", "many", None),
        ("i like your pattern", "pattern", None),
        ("cos it is fun", "cos", None),
        ("one kg", "one", "quantity"),
        ("one fourth", "one", "quantity"),
        ("one cube", "one", "quantity"),
        ("we made array pictures", "array", "representation"),
        ("we added ten", "added", "operation"),
    ],
)
def test_a_number_or_sign_is_a_quantity_by_what_stands_beside_it(kinds, text, word, kind):
    assert kinds(text).get(word) == kind


def test_the_letters_and_signs_of_a_claim_are_mathematics(parse_of):
    text = "so n = 4 but a = a"
    claim = Claim(3, 18, text[3:18], "undecided", True, False, None)
    found = find_mathematics(parse_of(text), [], [], [claim]).kinds
    assert found == [None, "quantity", "relation", "quantity", None, None, "relation", None]


def test_mathematics_can_be_asked_for_by_place_and_kind(parse_of):
    found = find_mathematics(parse_of("so 4 + 5 it was"), [], [], [])
    assert found.any_in(0, 4)
    assert not found.any_in(0, 6, "relation")
    assert found.first_in(0, 6, "operation") == 2
    assert found.first_in(4, 6) is None
    assert found.count_in(0, 6) == 3


def test_units_fractions_and_ones_are_heard_without_the_vocabulary(parse_of):
    found = find_mathematics(parse_of("5 cm and a fifth and one more"), [], [], []).kinds
    assert found[:2] == ["quantity", "quantity"]
    assert found[4] == found[6] == "quantity"


def test_a_sign_of_a_claim_between_letters_is_a_relation(parse_of):
    claim = Claim(3, 8, "m = k", "undecided", True, False, None)
    found = find_mathematics(parse_of("so m = k"), [], [], [claim]).kinds
    assert found == [None, "quantity", "relation", "quantity"]
