"""Numerals and number words, read as exact numbers."""

from __future__ import annotations

import unicodedata
from dataclasses import dataclass
from fractions import Fraction
from functools import lru_cache
from typing import Literal, TypeAlias, cast

from journal.evidence.claims.lexing import Lexemes
from journal.lexicon.facts import load_number_words

Style: TypeAlias = Literal["whole", "decimal", "fraction", "percent"]

_WORDS = load_number_words()
_ORDINAL_ENDINGS = frozenset(("st", "nd", "rd", "th"))
_PERCENT = frozenset(("%", "percent", "percentage"))
_LINKS = frozenset(("is", "are", "=", "makes", "equals", "make", "was", "gives", "got"))
_OPERATORS = frozenset(
    (
        "of",
        *(
            "times",
            "plus",
            "add",
            "minus",
            "lots",
            "x",
            "×",
            "+",
            "divided",
            "more",
            "*",
            "÷",
            "-",
            "=",
        ),
        *("take", "takeaway", "subtract", "multiplied", "shared", "groups", "less", "percent", "%"),
        *(word for word, entry in _WORDS.items() if entry.kind in ("plural", "place")),
    )
)
_OPENING = frozenset(("a", "an", "point"))
_VULGAR_LIMIT = 1000
_INTEGERS = {
    word: int(entry.value)
    for word, entry in _WORDS.items()
    if entry.kind in ("small", "ten", "scale")
}


@lru_cache(maxsize=4096)
def _exactly(numeral: str) -> Fraction:
    return Fraction(numeral)


@dataclass(frozen=True, slots=True)
class Number:
    """A number as written.

    Parameters
    ----------
    value : Fraction
        Exactly.
    style : str
        How it is written: ``whole``, ``decimal``, ``fraction`` or ``percent``.
    end : int
        One past its last lexeme.
    spelt : bool
        In words ("three quarters") rather than numerals.
    places : int
        Decimal places as written.
    divided : bool
        Written "12/4": a fraction that may be meant as a division.
    composed : bool
        Told by place ("4 tens and 5 ones").
    """

    value: Fraction
    style: Style
    end: int
    spelt: bool = False
    places: int = 0
    divided: bool = False
    composed: bool = False


def read_number(lexemes: Lexemes, at: int) -> Number | None:
    """Read the longest number that begins at a lexeme.

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        Where the number must begin.

    Returns
    -------
    Number or None
        None where no number begins, or for a number that is no quantity ("5th", "3D").
    """
    known = lexemes.read[0]
    if at in known:
        return cast("Number | None", known[at])
    known[at] = number = _number(lexemes, at)
    return number


def _number(lexemes: Lexemes, at: int) -> Number | None:
    lexeme = lexemes.item(at)
    if lexeme.kind == "numeral":
        number = _numeral(lexemes, at)
    elif lexeme.text in _WORDS or lexeme.text in _OPENING:
        number = _spelt(lexemes, at)
    else:
        return None
    if number is None:
        return None
    after = lexemes.text(number.end)
    if after in _PERCENT or lexemes.follows(number.end, "per", "cent"):
        end = number.end + (2 if after == "per" else 1)
        return Number(number.value / 100, "percent", end, number.spelt, number.places)
    return number


def _numeral(lexemes: Lexemes, at: int) -> Number | None:
    text = lexemes.item(at).text
    end = at + 1
    if not text[0].isdigit() and text[0] != ".":
        return Number(_vulgar(text), "fraction", end)
    plain = text.replace(",", "").replace(" ", "")
    value = _exactly("0" + plain if plain[0] == "." else plain)
    if "." in plain:
        return Number(value, "decimal", end, places=len(plain) - plain.index(".") - 1)
    following = lexemes.item(end)
    if following.text == "/" and lexemes.glued(end) and lexemes.glued(end + 1):
        below = lexemes.item(end + 1)
        if below.kind == "numeral" and below.text.isdigit() and int(below.text):
            return Number(value / int(below.text), "fraction", end + 2, divided=True)
        return None
    if lexemes.glued(end) and following.text in _ORDINAL_ENDINGS:
        return None
    if following.text == "point" and _digit(lexemes, end + 1):
        return _after_point(lexemes, end + 1, value)
    return _with_part(lexemes, end, value, spelt=False)


def _vulgar(text: str) -> Fraction:
    return Fraction(unicodedata.numeric(text)).limit_denominator(_VULGAR_LIMIT)


def _with_part(lexemes: Lexemes, end: int, value: Fraction, *, spelt: bool) -> Number:
    """Read what may follow a whole number: "3 quarters", "2 1/2", "2 and a half", "3 tens"."""
    following = lexemes.item(end)
    if following.text == "-" and lexemes.glued(end) and lexemes.glued(end + 1):
        # "three-quarters", "two-thirds"; never "10-3".
        word = _WORDS.get(lexemes.text(end + 1))
        if word is not None and word.kind == "part":
            return Number(value * word.value, "fraction", end + 2, spelt=True)
    word = _WORDS.get(following.text)
    if word is not None:
        if word.kind == "part" and not (following.text == "half" and value > 1):
            return Number(value * word.value, "fraction", end + 1, spelt=True)
        if word.kind == "scale" and not spelt:
            return _with_part(lexemes, end + 1, value * word.value, spelt=False)
        if word.kind == "whole":
            more = _mixed_part(lexemes, end + 1)
            if more is not None:
                return Number(value + more.value, "fraction", more.end, more.spelt)
            return Number(value, "whole", end + 1, spelt)
        if word.kind == "place":
            return _places(lexemes, end + 1, value * word.value, word.value)
    if following.kind == "numeral":
        if not following.text.isascii():
            return Number(value + _vulgar(following.text), "fraction", end + 1)
        fraction = _proper(lexemes, end)
        # "28 plus 8 equals 36 2/6 + 2/6 = 4/6": the fraction begins the next statement.
        begins = lexemes.text(end + 3) in _OPERATORS and _is_result(lexemes, end - 1)
        if fraction is not None and not begins:
            return Number(value + fraction.value, "fraction", fraction.end)
    more = _mixed_part(lexemes, end)
    if more is not None:
        return Number(value + more.value, "fraction", more.end, more.spelt)
    return Number(value, "whole", end, spelt)


def _places(lexemes: Lexemes, end: int, value: Fraction, size: Fraction) -> Number:
    """Read "3 tens and 4 ones", "2 hundreds 3 tens": each place smaller than the one before."""
    while True:
        at = end + 1 if lexemes.text(end) in ("and", ",") else end
        at = at + 1 if lexemes.text(at) == "and" else at
        count = lexemes.item(at)
        amount: Fraction | None = None
        if count.kind == "numeral" and count.text.isdigit():
            amount = Fraction(int(count.text))
        elif (word := _WORDS.get(count.text)) is not None and word.kind == "small":
            amount = word.value
        elif count.text == "no":
            amount = Fraction(0)
        place = _WORDS.get(lexemes.text(at + 1))
        if amount is None or place is None:
            break
        if place.kind not in ("place", "part") and lexemes.text(at + 1) not in ("one", "ten"):
            break
        if place.value >= size:
            break
        value, size, end = value + amount * place.value, place.value, at + 2
    style: Style = "whole" if value.denominator == 1 else "decimal"
    return Number(value, style, end, spelt=True, composed=True)


def _mixed_part(lexemes: Lexemes, end: int) -> Number | None:
    """Read "and a half", "and 3/4", "and three quarters" after a whole number."""
    if lexemes.text(end) != "and":
        return None
    part = _part_after_and(lexemes, end)
    if part is None or lexemes.text(part.end) == "of":
        # "a quarter of 8 is 2 and a half of 8 is 4"
        return None
    return None if joins_thoughts(lexemes, end, part.end) else part


def joins_thoughts(lexemes: Lexemes, at: int, end: int) -> bool:
    """Say whether "and" at ``at`` joins two statements: "is 3 and a half is 6".

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        Where "and" stands.
    end : int
        One past what would be joined.
    """
    said_before = any(lexemes.text(place) in _LINKS for place in range(max(at - 4, 0), at))
    return said_before and (lexemes.text(end) in _LINKS or lexemes.text(end) in _OPERATORS)


def _part_after_and(lexemes: Lexemes, end: int) -> Number | None:
    if lexemes.text(end + 1) in ("a", "one", "1"):
        word = _WORDS.get(lexemes.text(end + 2))
        if word is not None and word.kind == "part":
            return Number(word.value, "fraction", end + 3, spelt=True)
        return None
    small = _WORDS.get(lexemes.text(end + 1))
    part = _WORDS.get(lexemes.text(end + 2))
    if small is not None and small.kind == "small" and part is not None and part.kind == "part":
        return Number(small.value * part.value, "fraction", end + 3, spelt=True)
    return _proper(lexemes, end + 1)


def _proper(lexemes: Lexemes, at: int) -> Number | None:
    """Read a proper fraction in numerals: "3/4"."""
    above, below = lexemes.item(at), lexemes.item(at + 2)
    if (
        above.kind == "numeral"
        and above.text.isdigit()
        and lexemes.text(at + 1) == "/"
        and below.kind == "numeral"
        and below.text.isdigit()
        and lexemes.glued(at + 1)
        and lexemes.glued(at + 2)
        and 0 < int(above.text) < int(below.text)
    ):
        return Number(Fraction(int(above.text), int(below.text)), "fraction", at + 3)
    return None


def _spelt(lexemes: Lexemes, at: int) -> Number | None:
    text = lexemes.text(at)
    if text == "point":
        return _after_point(lexemes, at + 1, Fraction(0)) if _digit(lexemes, at + 1) else None
    if text in ("a", "an", "one"):
        word = _WORDS.get(lexemes.text(at + 1))
        if word is not None and word.kind == "part":
            return Number(word.value, "fraction", at + 2, spelt=True)
        if word is not None and word.kind == "whole":
            return _with_part(lexemes, at + 1, Fraction(1), spelt=True)
        if word is not None and word.kind == "scale":
            return _words(lexemes, at + 1)
        if text != "one" and not (word is not None and lexemes.text(at + 1) == "dozen"):
            return None
        if text != "one":
            return Number(Fraction(12), "whole", at + 2, spelt=True)
    if text in ("half", "quarter"):
        return Number(_WORDS[text].value, "fraction", at + 1, spelt=True)
    if text in ("third", "tenth") and lexemes.text(at + 1) == "of":
        return Number(_WORDS[text].value, "fraction", at + 1, spelt=True)
    word = _WORDS.get(text)
    if word is None or word.kind not in ("small", "ten"):
        return None
    return _words(lexemes, at)


def _words(lexemes: Lexemes, at: int) -> Number:
    """Read "one hundred and twenty-four", "sixty three", "two thousand and six"."""
    total = below = 0
    joined = False
    if _WORDS[lexemes.text(at)].kind == "scale":
        below = 1
    end = at
    room = 10**9
    while (size := _INTEGERS.get(lexemes.text(end))) is not None:
        if _WORDS[lexemes.text(end)].kind != "scale":
            if size >= room or lexemes.text(end) == "dozen":
                break
            if room == 10 and _counts_next(lexemes, at, end):
                break
            below += size
            # After "twenty" only one to nine may follow, after "seven" nothing.
            room = 10 if size >= 20 and _INTEGERS.get(lexemes.text(end + 1)) != 0 else 0
        elif size == 100:
            if not 0 < below < 100:
                break
            below, room, joined = below * 100, 100, True
        else:
            total, below, room, joined = total + (below or 1) * size, 0, 100, True
        end += 1
        if room == 10 and lexemes.text(end) == "-" and lexemes.glued(end):
            if 0 < _INTEGERS.get(lexemes.text(end + 1), 0) < 10:
                end += 1
        elif joined and room == 100 and lexemes.text(end) == "and":
            part = _WORDS.get(lexemes.text(end + 2))
            follows = lexemes.text(end + 1) in _INTEGERS and not (part and part.kind == "part")
            if follows and not joins_thoughts(lexemes, end, end + 2):
                end += 1
    value = Fraction(total + below)
    if lexemes.text(end) == "point" and _digit(lexemes, end + 1):
        return _after_point(lexemes, end + 1, value)
    return _with_part(lexemes, end, value, spelt=True)


def _is_result(lexemes: Lexemes, at: int) -> bool:
    """Say whether the number that goes on at a lexeme is told as a result ("makes one hundred")."""
    before = at - 1
    while before > at - 8 and (lexemes.text(before) in _WORDS or lexemes.text(before) == "and"):
        before -= 1
    return lexemes.text(before) in _LINKS


def _counts_next(lexemes: Lexemes, at: int, end: int) -> bool:
    """Say whether the last word begins the next statement: "is eighty four threes are twelve"."""
    counted = _WORDS.get(lexemes.text(end + 1))
    return counted is not None and counted.kind == "plural" and _is_result(lexemes, at)


def _digit(lexemes: Lexemes, at: int) -> str | None:
    lexeme = lexemes.item(at)
    if lexeme.kind == "numeral" and lexeme.text.isdigit():
        return lexeme.text
    word = _WORDS.get(lexeme.text)
    if word is not None and word.kind in ("small", "ten") and word.value.denominator == 1:
        return str(word.value)
    return None


def _after_point(lexemes: Lexemes, at: int, whole: Fraction) -> Number:
    """Read the digits after "point": "three five", "35", "twenty five"."""
    digits = ""
    end = at
    while (digit := _digit(lexemes, end)) is not None:
        if digits and (len(digit) > 1 or lexemes.item(end).kind == "numeral"):
            break
        digits += digit
        end += 1
        if len(digit) > 1:
            # "point twenty five" is read as 25 hundredths.
            ending = _digit(lexemes, end)
            if lexemes.item(end - 1).kind == "word" and digit.endswith("0") and ending:
                digits = str(int(digit) + int(ending)) if len(ending) == 1 else digits
                end += 1 if len(ending) == 1 else 0
            break
    return Number(
        whole + Fraction(int(digits), 10 ** len(digits)), "decimal", end, True, len(digits)
    )
