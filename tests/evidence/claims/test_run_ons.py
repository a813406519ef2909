"""Two statements in one run-on, as children write them. Arithmetic, no source needed."""

from __future__ import annotations

import random

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
PLURALS = "twos threes fours fives sixes sevens eights nines tens".split()
JOINS = (" and ", " so ", " because ", " then ", " and then ", " but ", ", ", ". ", " ")
BEFORE = ("", "i know ", "first ", "we did ", "it is because ", "today i learned that ")
AFTER = ("", ".", " and it was fun", " so i was happy", " i checked it")
SHAPES = {"triangle": 3, "square": 4, "pentagon": 5, "hexagon": 6, "octagon": 8}
many = settings(max_examples=400, deadline=None, derandomize=True)


def in_words(n: int) -> str:
    if n < 20:
        return ONES[n]
    if n < 100:
        return TENS[n // 10 - 2] + (f" {ONES[n % 10]}" if n % 10 else "")
    rest = f" and {in_words(n % 100)}" if n % 100 else ""
    return f"{in_words(n // 100)} hundred{rest}"


def a_calculation(rng: random.Random, slip: int) -> str:
    write = rng.choice((str, str, in_words))
    equals = (
        rng.choice(("=", "is", "makes", "equals")) if write is str else rng.choice(("is", "makes"))
    )
    a, b = rng.randint(2, 60), rng.randint(2, 12)
    answer, sign = rng.choice(
        ((a + b, "add"), (a + b, "plus"), (a * b, "times"), (a * b, "lots of"))
        + (((a + b, "+"), (a * b, "x"), (a * b, "×")) if write is str else ())
    )
    return f"{write(a)} {sign} {write(b)} {equals} {write(answer + slip)}"


def a_taking_away(rng: random.Random, slip: int) -> str:
    write = rng.choice((str, in_words))
    b, left = rng.randint(2, 12), rng.randint(20, 60)
    sign = rng.choice(("take away", "minus"))
    return f"{write(left + b)} {sign} {write(b)} is {write(left + slip)}"


def a_sharing(rng: random.Random, slip: int) -> str:
    a, b = rng.randint(13, 40), rng.randint(2, 12)
    sign = rng.choice(("÷", "divided by", "shared between"))
    return f"{a * b} {sign} {b} is {a + slip}"


def a_table(rng: random.Random, slip: int) -> str:
    a, b = rng.randint(2, 12), rng.randint(2, 10)
    return f"{in_words(a)} {PLURALS[b - 2]} are {in_words(a * b + slip)}"


def a_part(rng: random.Random, slip: int) -> str:
    name, by = rng.choice((("half", 2), ("a quarter", 4), ("1/5", 5), ("one third", 3)))
    n = rng.randint(11, 40)
    return f"{name} of {n * by} is {n + slip}"


def a_comparison(rng: random.Random, slip: int) -> str:
    small, large = sorted(rng.sample(range(1, 10), 2))
    more = f"0.{large} is bigger than 0.{small}"
    return more if not slip else f"0.{large} is smaller than 0.{small}"


def a_property(rng: random.Random, slip: int) -> str:
    n = rng.randint(2, 50) * 2
    return rng.choice((f"{n} is {'odd' if slip else 'even'}", f"2 is a factor of {n + bool(slip)}"))


def a_shape(rng: random.Random, slip: int) -> str:
    shape = rng.choice(sorted(SHAPES))
    return f"a {shape} has {SHAPES[shape] + slip} sides"


def some_money(rng: random.Random, slip: int) -> str:
    a, b = rng.randint(10, 60), rng.randint(10, 30)
    return f"{a}p add {b}p is {a + b + slip}p"


def a_rounding(rng: random.Random, slip: int) -> str:
    n = rng.randint(11, 94)
    return f"{n} to the nearest 10 is {(n + 5) // 10 * 10 + 10 * bool(slip)}"


def some_fractions(rng: random.Random, slip: int) -> str:
    below = rng.randint(5, 9)
    a, b = rng.randint(1, 2), rng.randint(1, 2)
    return f"{a}/{below} + {b}/{below} = {a + b}/{below + slip}"


KINDS = (
    a_calculation,
    a_calculation,
    a_taking_away,
    a_sharing,
    a_table,
    a_part,
    a_comparison,
    a_property,
    a_shape,
    some_money,
    a_rounding,
    some_fractions,
)


@pytest.fixture(scope="module")
def parse_of():
    """Cut into words without a grammar: thousands of statements in a moment."""
    blank = spacy.blank("en")

    def parse(text):
        clean = normalise_characters(text)
        offsets = OffsetMap(text, find_spacing_edits(clean), clean)
        return read_parse(blank(offsets.working), offsets)

    return parse


def run_on(seed: int) -> tuple[str, list[tuple[int, int, bool]]]:
    """Return a text with two or three statements, and where each stands and whether it is right."""
    rng = random.Random(seed)
    text = rng.choice(BEFORE)
    stated = []
    for place in range(rng.choice((2, 2, 3))):
        text += rng.choice(JOINS) if place else ""
        slip = rng.choice((0, 0, rng.randint(1, 3)))
        statement = rng.choice(KINDS)(rng, slip)
        stated.append((len(text), len(text) + len(statement), not slip))
        text += statement
    return text + rng.choice(AFTER), stated


def verdicts_of(parse_of, seed):
    text, stated = run_on(seed)
    claims = find_claims(parse_of(text), Setting())
    return text, [
        (right, [c.verdict for c in claims if c.start < end and start < c.end])
        for start, end, right in stated
    ]


@many
@given(st.integers(0, 10**9))
def test_a_right_statement_is_never_called_wrong(parse_of, seed):
    text, found = verdicts_of(parse_of, seed)
    for right, verdicts in found:
        assert not right or "false" not in verdicts, text
