"""Statements built with known truth, in symbols and in words. Arithmetic, no source needed."""

from __future__ import annotations

from fractions import Fraction

import pytest
import spacy
from hypothesis import given, settings
from hypothesis import strategies as st

from journal.evidence.claims import find_claims
from journal.evidence.setting import Setting
from journal.language.parse import read_parse
from journal.text.normalise import find_spacing_edits, normalise_characters
from journal.text.offsets import OffsetMap

ONES = (
    "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen "
    "fifteen sixteen seventeen eighteen nineteen"
).split()
TENS = "twenty thirty forty fifty sixty seventy eighty ninety".split()
OPERATIONS = {
    "add": ("+", "plus", "add", "and add"),
    "subtract": ("-", "minus", "take away", "subtract"),
    "multiply": ("x", "×", "*", "times", "multiplied by", "lots of"),
    "divide": ("÷", "/", "divided by", "shared between"),
}
EQUALS = ("=", "is", "equals", "makes", "is equal to", "and got", "gives you", "which is")
BEFORE = ("", "i know ", "because ", "i did ", "so i worked out that ", "First I knew ")
AFTER = ("", ".", " so i was happy", " and then we stopped", " because i checked", "!")
many = settings(max_examples=150, deadline=None, derandomize=True)


def in_words(n: int) -> str:
    if n < 20:
        return ONES[n]
    if n < 100:
        return TENS[n // 10 - 2] + (f" {ONES[n % 10]}" if n % 10 else "")
    rest = f" and {in_words(n % 100)}" if n % 100 else ""
    return f"{in_words(n // 100)} hundred{rest}"


@pytest.fixture(scope="module")
def parse_of():
    """Cut into words without a grammar: thousands of statements in a moment."""
    blank = spacy.blank("en")

    def parse(text):
        clean = normalise_characters(text)
        offsets = OffsetMap(text, find_spacing_edits(clean), clean)
        return read_parse(blank(offsets.working), offsets)

    return parse


def verdicts(parse_of, text):
    parse = parse_of(text)
    claims = find_claims(parse, Setting())
    for claim in claims:
        assert text[claim.start : claim.end] == claim.surface
    return [claim.verdict for claim in claims]


@st.composite
def sums(draw):
    """One operation with its right answer."""
    kind = draw(st.sampled_from(sorted(OPERATIONS)))
    a, b = draw(st.integers(2, 99)), draw(st.integers(2, 12))
    if kind == "divide":
        a, answer = a * b, a
    else:
        answer = {"add": a + b, "subtract": a - b, "multiply": a * b}[kind]
    sign = draw(st.sampled_from(OPERATIONS[kind]))
    spelt = draw(st.booleans()) and len(sign) > 1 and 0 <= answer < 1000
    write = in_words if spelt else str
    equals = draw(st.sampled_from(EQUALS))
    before, after = draw(st.sampled_from(BEFORE)), draw(st.sampled_from(AFTER))
    space = "" if draw(st.booleans()) and len(sign) == 1 else " "
    left = f"{write(a)}{space}{sign}{space}{write(b)}"
    return before, left, equals, answer, write, after


@many
@given(sums())
def test_a_right_calculation_is_confirmed(parse_of, case):
    before, left, equals, answer, write, after = case
    if answer < 0:
        return
    assert verdicts(parse_of, f"{before}{left} {equals} {write(answer)}{after}") == ["true"]


@many
@given(sums(), st.integers(1, 9))
def test_a_wrong_calculation_is_found(parse_of, case, slip):
    before, left, equals, answer, write, after = case
    wrong = abs(answer) + slip
    assert verdicts(parse_of, f"{before}{left} {equals} {write(wrong)}{after}") == ["false"]


@many
@given(st.integers(1, 11), st.integers(2, 12), st.integers(1, 11), st.integers(2, 12))
def test_fractions_are_compared_exactly(parse_of, a, b, c, d):
    left, right = Fraction(a, b), Fraction(c, d)
    if left > 1 or right > 1:
        return
    found = verdicts(parse_of, f"{a}/{b} is bigger than {c}/{d}")
    assert found == ["true" if left > right else "false"]


@many
@given(st.integers(1, 999), st.integers(1, 999))
def test_decimals_are_compared_exactly(parse_of, a, b):
    left, right = f"0.{a}", f"0.{b}"
    found = verdicts(parse_of, f"I think {left} is less than {right} because i looked")
    assert found == ["true" if Fraction(left) < Fraction(right) else "false"]


@many
@given(st.lists(st.integers(1, 50), min_size=3, max_size=6))
def test_a_long_sum_is_read_whole(parse_of, numbers):
    text = " + ".join(map(str, numbers))
    assert verdicts(parse_of, f"{text} = {sum(numbers)}") == ["true"]
    assert verdicts(parse_of, f"{text} = {sum(numbers[1:])}") == ["false"]


@many
@given(st.lists(st.integers(1, 20), min_size=3, max_size=6))
def test_a_running_total_is_right_at_each_step(parse_of, numbers):
    total, text = numbers[0], str(numbers[0])
    for number in numbers[1:]:
        total += number
        text += f" + {number} = {total}"
    assert set(verdicts(parse_of, text)) == {"true"}


@many
@given(st.integers(2, 200), st.integers(2, 12))
def test_remainders_are_worked_out(parse_of, amount, by):
    quotient, rest = divmod(amount, by)
    text = f"{amount} divided by {by} is {quotient} remainder "
    assert verdicts(parse_of, text + str(rest)) == ["true"]
    assert verdicts(parse_of, text + str(rest + 1)) == ["false"]


@many
@given(st.integers(2, 500))
def test_even_odd_and_prime_are_decided(parse_of, n):
    prime = n > 1 and all(n % d for d in range(2, n))
    assert verdicts(parse_of, f"{n} is even") == ["true" if n % 2 == 0 else "false"]
    assert verdicts(parse_of, f"{n} is not an odd number") == ["true" if n % 2 == 0 else "false"]
    assert verdicts(parse_of, f"{n} is a prime number") == ["true" if prime else "false"]


@many
@given(st.integers(2, 12), st.integers(2, 150))
def test_factors_and_multiples_are_decided(parse_of, a, b):
    expected = ["true" if b % a == 0 else "false"]
    assert verdicts(parse_of, f"{a} is a factor of {b}") == expected
    assert verdicts(parse_of, f"i know {b} is a multiple of {a}") == expected
    assert verdicts(parse_of, f"{b} is in the {a} times table") == expected
    assert verdicts(parse_of, f"{b} is divisible by {a}") == expected


@many
@given(st.integers(11, 9999), st.sampled_from((10, 100, 1000)))
def test_rounding_is_half_up(parse_of, n, size):
    right = (n + size // 2) // size * size
    text = f"{n} rounded to the nearest {size} is "
    assert verdicts(parse_of, f"{text}{right}") == ["true"]
    assert verdicts(parse_of, f"{text}{right + size}") == ["false"]


@many
@given(st.integers(101, 999), st.integers(0, 2))
def test_a_digit_is_worth_its_place(parse_of, n, place):
    digit = str(n)[::-1][place]
    if digit == "0" or str(n).count(digit) > 1:
        return
    worth = int(digit) * 10**place
    assert verdicts(parse_of, f"the {digit} in {n} is worth {worth}") == ["true"]
    assert verdicts(parse_of, f"the {digit} in {n} is worth {worth * 10}") == ["false"]


@many
@given(sums(), st.integers(0, 9))
def test_not_turns_the_verdict(parse_of, case, slip):
    _, left, _, answer, write, _ = case
    if answer < 0:
        return
    expected = ["true" if slip else "false"]
    assert verdicts(parse_of, f"{left} is not {write(answer + slip)}") == expected


@many
@given(sums(), st.sampled_from(("about", "nearly", "roughly", "close to")))
def test_an_estimate_is_never_called_wrong(parse_of, case, word):
    _, left, _, answer, _, _ = case
    found = verdicts(parse_of, f"{left} is {word} {abs(answer) + 1}")
    assert "false" not in found


@many
@given(
    st.sampled_from(("question", "page", "number", "year", "table", "step", "level")),
    st.integers(1, 30),
    st.integers(1, 100),
    st.sampled_from(("is", "was", "=", "equals")),
)
def test_a_number_that_names_something_claims_nothing(parse_of, label, n, answer, equals):
    assert verdicts(parse_of, f"{label} {n} {equals} {answer}") == []


@many
@given(st.integers(2, 20), st.integers(2, 9), st.integers(1, 99))
def test_a_letter_is_no_number(parse_of, a, b, c):
    assert "false" not in verdicts(parse_of, f"{a}n + {b} = {c}")
    assert "false" not in verdicts(parse_of, f"{a}x + {b} = {c}")
    assert "false" not in verdicts(parse_of, f"{a} + n + {b} = {c}")


@many
@given(st.text(alphabet="0123456789+-x×÷/=.,()%£ isand?", max_size=40))
def test_any_string_is_read_without_an_error(parse_of, text):
    verdicts(parse_of, text)
