import pytest

from journal.evidence.informal import find_informal
from journal.evidence.setting import Setting
from journal.lexicon.informal import load_informal


@pytest.mark.parametrize(
    ("text", "surface", "formal"),
    [
        ("the bottom number is 4", "bottom number", "denominator"),
        ("i timesed it", "timesed", "multiplied"),
        ("you take away 5", "take away", "subtract"),
        ("i had to borrow from the tens", "borrow", "exchange"),
        ("a square has 4 corners", "corners", "vertices"),
    ],
)
def test_an_informal_form_stands_beside_its_formal_term(parse_of, text, surface, formal):
    (use,) = find_informal(parse_of(text), load_informal(), Setting())
    assert (use.surface, use.formal) == (surface, formal)


@pytest.mark.parametrize("text", ["can i borrow a pencil", "i sat in the corner", "flip the page"])
def test_plain_english_is_left_alone(parse_of, text):
    assert find_informal(parse_of(text), load_informal(), Setting()) == []
