"""Sides of a statement: quantities and calculations in symbols and in words, worked out exactly.

::

    side   = operand (operator operand)*
    operand = "(" side ")" | before operand | pair number "and" number | verb number by number
            | number [unit | noun] [after]

Symbols are worked out by BIDMAS. Words are heard left to right as well: where the two differ, the
side has two values and nothing is decided on the difference.
"""

from __future__ import annotations

from dataclasses import replace
from fractions import Fraction
from typing import cast

from journal.evidence.claims.calculation import Chain, Side, work_out
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import Number, read_number
from journal.evidence.claims.phrases import load_operation_words
from journal.evidence.claims.quantities import (
    ROOTS,
    add_smaller_units,
    find_unit,
    follows_number,
    read_coins,
    read_out_of,
    read_plural,
    read_power,
    read_root,
    shares_equally,
)
from journal.lexicon.facts import load_number_words, load_units

_WORDS = load_number_words()
_UNITS = load_units()
_BETWEEN = load_operation_words()["between"]
_BEFORE = load_operation_words()["before"]
_PAIR = load_operation_words()["pair"]
_VERB = load_operation_words()["verb"]

_SYMBOLS = frozenset("+-–×x*÷/")
_OPERAND_STARTS = (
    frozenset(_WORDS)
    | frozenset(first for words in (_BEFORE, _PAIR, _VERB, ROOTS) for first in words.firsts())
    | frozenset(("something", "minus", "negative", "point", "a", "an", "the"))
)
_WHOLES = frozenset(("a", "an", "the", "my", "your", "his", "her", "our", "their", "one"))
_UNKNOWN = frozenset(("?", "_", "__", "___", "____", "□", "☐", "something"))


def read_side(lexemes: Lexemes, at: int) -> Side | None:
    """Read the longest calculation or quantity that begins at a lexeme.

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        Where the side must begin.

    Returns
    -------
    Side or None
        None where no quantity begins.
    """
    known = lexemes.read[1]
    if at in known:
        return cast("Side | None", known[at])
    known[at] = side = _side(lexemes, at)
    return side


def _side(lexemes: Lexemes, at: int) -> Side | None:
    first = _operand(lexemes, at)
    if first is None:
        return None
    chain = Chain([first])
    end = first.end
    while True:
        found = _operator(lexemes, end)
        if found is None:
            break
        operator, after, symbol = found
        operand = _operand(lexemes, after)
        if operand is None:
            break
        chain.operands.append(operand)
        chain.operators.append(operator)
        chain.words = chain.words or not symbol
        end = operand.end
    if not chain.operators:
        return first
    return work_out(chain, at, end)


def _operator(lexemes: Lexemes, at: int) -> tuple[str, int, bool] | None:
    text = lexemes.text(at)
    if text in _SYMBOLS:
        operation = {"+": "add", "-": "subtract", "–": "subtract", "÷": "divide", "/": "divide"}
        return operation.get(text, "multiply"), at + 1, True
    if text == "between":
        return ("divide", at + 1, False) if shares_equally(lexemes, at + 1) else None
    found = _BETWEEN.match(lexemes, at)
    return None if found is None else (*found, False)


def _operand(lexemes: Lexemes, at: int) -> Side | None:
    text = lexemes.text(at)
    if lexemes.item(at).kind == "word" and text not in _OPERAND_STARTS:
        return None
    if text == "(":
        inner = read_side(lexemes, at + 1)
        if inner is None or lexemes.text(inner.end) != ")":
            return None
        return replace(inner, start=at, end=inner.end + 1)
    if text in _UNKNOWN:
        return Side(at, at + 1, ())
    if text in ("minus", "negative") or (text in ("-", "–") and _is_minus(lexemes, at)):
        negative = _pair_or_verb(lexemes, at) if text == "minus" else None
        if negative is not None:
            return negative
        number = read_number(lexemes, at + 1)
        if number is None:
            return None
        return _quantity(lexemes, at, number, sign=-1)
    if text == "£":
        number = read_number(lexemes, at + 1)
        return (
            None
            if number is None
            else Side(at, number.end, (number.value,), unit=_UNITS["£"], style="decimal", places=2)
        )
    before = _before(lexemes, at) or _pair_or_verb(lexemes, at)
    if before is not None:
        return before
    if text in ROOTS:
        root = read_root(lexemes, at)
        if root is not None:
            return root
    if text == "the" and lexemes.item(at + 1).kind == "numeral":
        number = read_number(lexemes, at + 1)
        if number is None:
            return None
        side = _quantity(lexemes, at + 1, number)
        side.start, side.doubt = at, True
        return side
    if text in ("a", "an", "one"):
        unit = _UNITS.get(lexemes.text(at + 1))
        if unit is not None and len(unit.name) > 1 and not unit.name.endswith("s"):
            side = Side(at, at + 2, (unit.size,), unit=unit, spelt=True)
            add_smaller_units(lexemes, side)
            return side
    number = read_number(lexemes, at)
    return None if number is None else _quantity(lexemes, at, number)


def _is_minus(lexemes: Lexemes, at: int) -> bool:
    """Say whether a dash is the sign of the numeral after it: "-3", not "one-half"."""
    free = not lexemes.glued(at) or lexemes.item(at - 1).kind == "sign"
    return free and lexemes.glued(at + 1) and lexemes.item(at + 1).kind == "numeral"


def _quantity(lexemes: Lexemes, at: int, number: Number, sign: int = 1) -> Side:
    """Read what stands after a number: "of 12", a unit, "fives", "squared", a counted noun."""
    value = number.value * sign
    side = Side(
        at,
        number.end,
        (value,),
        style=number.style,
        places=number.places,
        spelt=number.spelt,
        divided=number.divided,
        # "12/4" is worked out; "3/4" is a number.
        operation=(number.divided and number.value >= 1) or number.composed,
    )
    end = number.end
    text = lexemes.text(end)
    if text == "of" and number.style in ("fraction", "percent"):
        inner = _operand(lexemes, end + 1)
        if inner is not None and inner.known:
            return _scaled(side, inner, value)
        return _part_of_whole(lexemes, side)
    coins = read_coins(lexemes, side)
    if coins is not None:
        return coins
    if text == "out" and lexemes.text(end + 1) == "of" and number.style == "whole":
        return read_out_of(lexemes, side) or side
    unit = find_unit(lexemes, end, glued=lexemes.glued(end))
    if unit is not None:
        side.unit, side.values = unit, (value * unit.size,)
        side.end = end + 1
        add_smaller_units(lexemes, side)
        return read_power(lexemes, side)
    if lexemes.glued(end) and text in ("s", "'") and number.style == "whole":
        side.doubt = True
        return side
    plural = read_plural(lexemes, end)
    if plural is not None and number.style == "whole":
        size, after = plural
        side.values, side.end = (value * size,), after
        side.operation, side.first, side.words = True, value, True
        return side
    if text in lexemes.nouns and number.style != "percent":
        side.noun, side.end = text, end + 1
        return side
    return read_power(lexemes, side)


def _part_of_whole(lexemes: Lexemes, side: Side) -> Side:
    """Read "of a pizza" after a fraction: what it is a part of."""
    at = side.end + 1
    if lexemes.text(at) in _WHOLES:
        unit = _UNITS.get(lexemes.text(at + 1))
        if unit is not None:
            side.unit, side.values = unit, (side.values[0] * unit.size,)
            side.end, side.operation = at + 2, True
            return side
        if lexemes.item(at + 1).kind == "word":
            side.whole, side.end = lexemes.text(at + 1), at + 2
    else:
        side.doubt = True
    return side


def _scaled(part: Side, inner: Side, by: Fraction) -> Side:
    values = tuple(by * value for value in inner.values)
    return Side(
        part.start,
        inner.end,
        values,
        operation=True,
        first=by,
        unit=inner.unit,
        style=inner.style,
        places=inner.places,
        doubt=inner.doubt,
        words=True,
        whole="of",
    )


def _before(lexemes: Lexemes, at: int) -> Side | None:
    """Read "double 6", "half of 12", "twice as big as 3"."""
    if lexemes.text(at) not in _BEFORE and lexemes.text(at) not in ("a", "one"):
        return None
    for by, end in _BEFORE.match_all(lexemes, at):
        inner = _operand(lexemes, end)
        if inner is not None and inner.known:
            if inner.style == "fraction" and lexemes.text(at).startswith("hal"):
                return None
            return _scaled(Side(at, end, ()), inner, Fraction(by))
    return None


def _pair_or_verb(lexemes: Lexemes, at: int) -> Side | None:
    """Read "the sum of 3 and 4", "add 3 and 4", "take 3 away from 10", "share 12 by 3"."""
    pair = _PAIR.match(lexemes, at) if lexemes.text(at) in _PAIR else None
    verb = None
    if pair is None and lexemes.text(at) in _VERB and not follows_number(lexemes, at):
        verb = _VERB.match(lexemes, at)
    found = pair or verb
    if found is None:
        return None
    operation, end = found
    first = _single(lexemes, end)
    if first is None:
        return None
    link = first.end
    if operation == "subtract" and lexemes.text(link) in ("away", "off"):
        link += 1
    joins = {
        "add": ("and", "to", "with", "onto", "on"),
        "subtract": ("from",),
        "multiply": ("by", "and", "with"),
        "divide": ("by", "between", "into", "among"),
        "difference": ("and",),
    }[operation]
    if pair is not None:
        joins = ("and",)
    if operation == "divide" and lexemes.text(link) == "equally":
        link += 1
    if lexemes.text(link) not in joins:
        return None
    second = _single(lexemes, link + 1)
    if second is None or (lexemes.text(link) == "and" and lexemes.text(second.end) in _SYMBOLS):
        # "then I add 38 and 45 + 38 = 83"
        return None
    kind = {"subtract": "from"}.get(operation, operation)
    chain = Chain([first, second], [kind], words=True)
    side = work_out(chain, at, second.end)
    if pair is None:
        if lexemes.text(side.end) == "together":
            side.end += 1
        elif lexemes.text(side.end) == "and" and read_number(lexemes, side.end + 1) is not None:
            side.doubt = True
    return side


def _single(lexemes: Lexemes, at: int) -> Side | None:
    number = read_number(lexemes, at)
    if number is None:
        if lexemes.text(at) == "£":
            return _operand(lexemes, at)
        return None
    return _quantity(lexemes, at, number)
