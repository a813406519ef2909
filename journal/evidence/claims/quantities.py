"""Quantities: what may stand after a number, or before it as a root, and make one thing with it."""

from __future__ import annotations

from fractions import Fraction
from math import isqrt

from journal.evidence.claims.calculation import Side
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import joins_thoughts, read_number
from journal.evidence.claims.phrases import Phrases
from journal.lexicon.facts import Unit, load_number_words, load_units

_WORDS = load_number_words()
_UNITS = load_units()
# Letters that are units only right after a numeral.
_LETTER_UNITS = frozenset(("m", "g", "l", "p"))
_POWERS = Phrases(
    (
        ("squared", "square"),
        ("²", "square"),
        ("^ 2", "square"),
        ("cubed", "cube"),
        ("³", "cube"),
        ("^ 3", "cube"),
        ("to the power of 2", "square"),
        ("to the power of two", "square"),
        ("to the power 2", "square"),
        ("to the power of 3", "cube"),
        ("to the power of three", "cube"),
        ("to the power 3", "cube"),
        *((f"{by} itself", "square") for by in ("times", "multiplied by", "times by", "x", "×")),
        *((f"{by} itself", "double") for by in ("add", "plus", "added to", "+")),
        ("doubled", "double"),
        ("halved", "halve"),
    )
)
ROOTS = Phrases(
    (form, "root")
    for form in ("√", "square root of", "the square root of", "root of", "the square root")
)
_COINS = frozenset(("coin", "coins", "piece", "pieces", "note", "notes", "stamp", "stamps"))
_MAX_POWER = 10**6


def shares_equally(lexemes: Lexemes, at: int) -> bool:
    """Say whether "between" shares: "12 sweets between 4 is 3 each"."""
    number = read_number(lexemes, at)
    if number is None:
        return False
    for place in range(number.end, number.end + 7):
        if lexemes.text(place) in ("and", "", ".", ","):
            return False
        if lexemes.text(place) == "each":
            return True
    return False


def read_root(lexemes: Lexemes, at: int) -> Side | None:
    """Read "the square root of 49", exact where the number is a square."""
    found = ROOTS.match(lexemes, at)
    number = None if found is None else read_number(lexemes, found[1])
    if number is None or number.style != "whole" or not 0 <= number.value <= _MAX_POWER:
        return None
    root = isqrt(int(number.value))
    values = (Fraction(root),) if root**2 == number.value else ()
    return Side(at, number.end, values, operation=True, first=number.value)


def read_coins(lexemes: Lexemes, side: Side) -> Side | None:
    """Read "20p coins" after a count."""
    at = side.end
    if lexemes.item(at).kind != "numeral" or lexemes.text(at + 2) not in _COINS:
        return None
    unit = find_unit(lexemes, at + 1, glued=lexemes.glued(at + 1))
    value = read_number(lexemes, at)
    if unit is None or unit.dimension != "money" or value is None or value.end != at + 1:
        return None
    count = side.values[0]
    side.values, side.unit, side.end = (count * value.value * unit.size,), unit, at + 3
    side.operation, side.first, side.words = True, count, True
    return side


def read_out_of(lexemes: Lexemes, side: Side) -> Side | None:
    """Read "out of 4" after "3", as the fraction it is."""
    whole = read_number(lexemes, side.end + 2)
    if whole is None or whole.style != "whole" or not 0 <= side.values[0] <= whole.value:
        return None
    if not whole.value:
        return None
    side.values, side.style, side.end = (side.values[0] / whole.value,), "fraction", whole.end
    return side


def read_plural(lexemes: Lexemes, at: int) -> tuple[Fraction, int] | None:
    """Read "fives", "5s", "5's" as a size."""
    word = _WORDS.get(lexemes.text(at))
    if word is not None and word.kind == "plural":
        return word.value, at + 1
    if lexemes.item(at).kind == "numeral" and lexemes.item(at).text.isdigit():
        if lexemes.glued(at + 1) and lexemes.text(at + 1) == "s":
            return Fraction(int(lexemes.text(at))), at + 2
        if lexemes.follows(at + 1, "'", "s") and lexemes.glued(at + 1) and lexemes.glued(at + 2):
            return Fraction(int(lexemes.text(at))), at + 3
    return None


def find_unit(lexemes: Lexemes, at: int, *, glued: bool) -> Unit | None:
    """Return the unit at a lexeme; a single letter only right after a numeral."""
    text = lexemes.text(at)
    unit = _UNITS.get(text)
    if unit is None or text == "£":
        return None
    if text in _LETTER_UNITS and not glued and lexemes.item(at - 1).kind != "numeral":
        return None
    return unit


def add_smaller_units(lexemes: Lexemes, side: Side) -> None:
    """Add "20 cm" to "1 m", "30 minutes" to "1 hour and", "a half" to "an hour and"."""
    unit = side.unit
    at = side.end + 1 if lexemes.text(side.end) == "and" else side.end
    number = read_number(lexemes, at)
    if unit is None or number is None or number.value < 0:
        return
    smaller = find_unit(lexemes, number.end, glued=lexemes.glued(number.end))
    if at > side.end and smaller is not None:
        after = number.end + 1
        if lexemes.text(after) == "in" or joins_thoughts(lexemes, side.end, after):
            return
    if smaller is None:
        part = number.style == "fraction" and lexemes.text(number.end) not in ("a", "an", "of")
        if at > side.end and part and number.value < 1:
            side.values = (side.values[0] + number.value * unit.size,)
            side.end = number.end
        return
    if smaller.dimension == unit.dimension and smaller.size < unit.size:
        joined = side.values[0] + number.value * smaller.size
        # "is 1 m and 10 cm is left": the second may be another thought.
        apart = at > side.end and lexemes.text(side.start - 1) in ("is", "=", "are", "was", "makes")
        side.values = (joined, side.values[0]) if apart else (joined,)
        side.end = number.end + 1


def read_power(lexemes: Lexemes, side: Side) -> Side:
    """Read "squared", "times itself", "doubled" after a quantity."""
    found = _POWERS.match(lexemes, side.end)
    if found is None:
        return side
    how, end = found
    value = side.values[0]
    if side.unit is not None and how in ("square", "cube"):
        # "15 cm squared" is a size of its own kind: the number is what can be checked.
        side.values, side.unit, side.end = (value / side.unit.size,), None, end
        return side
    if side.unit is not None or abs(value) > _MAX_POWER:
        side.end, side.doubt = end, True
        return side
    side.first = value
    side.values = ({"square": value**2, "cube": value**3, "double": 2 * value}.get(how, value / 2),)
    side.end, side.operation, side.words = end, True, False
    return side


def follows_number(lexemes: Lexemes, at: int) -> bool:
    """Say whether the verb at a lexeme stands between two numbers ("45 add 38")."""
    return lexemes.item(at - 1).kind == "numeral" or lexemes.text(at - 1) in _WORDS
