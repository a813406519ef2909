"""Calculations worked out exactly, in every way they can be read."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from fractions import Fraction

from journal.evidence.claims.numbers import Style
from journal.lexicon.facts import Unit


@dataclass(slots=True)
class Side:
    """One side of a statement.

    Parameters
    ----------
    start, end : int
        First lexeme and one past the last.
    values : tuple of Fraction
        What it comes to, in the base unit where there is a unit; several where it can be read in
        several ways; none where a number is missing.
    operation : bool
        Whether something is worked out.
    first : Fraction or None
        The first number of a calculation (3 in "3 + 4").
    unit : Unit or None
        The unit of the last quantity.
    style : str
        How the answer is best written.
    places : int
        Decimal places, where written as a decimal.
    noun : str or None
        What is counted, as written ("sweets").
    whole : str or None
        What it is a part of ("pizza" in "half of a pizza").
    doubt : bool
        Whether the side may mean something else: never decided against the child.
    division : (Fraction, Fraction) or None
        The numbers of a plain division, for remainders.
    words : bool
        Whether any operation is in words.
    spelt : bool
        A single number in words.
    divided : bool
        Written "12/4".
    swapped : Fraction or None
        What a taking away or sharing told in words comes to with its two numbers the other way
        round ("3 take away 10" as 10 - 3).
    """

    start: int
    end: int
    values: tuple[Fraction, ...]
    operation: bool = False
    first: Fraction | None = None
    unit: Unit | None = None
    style: Style = "whole"
    places: int = 0
    noun: str | None = None
    whole: str | None = None
    doubt: bool = False
    division: tuple[Fraction, Fraction] | None = None
    words: bool = False
    spelt: bool = False
    divided: bool = False
    swapped: Fraction | None = None

    @property
    def known(self) -> bool:
        """Whether no number is missing."""
        return bool(self.values)


@dataclass(slots=True)
class Chain:
    """The operands and operators of a side, flat."""

    operands: list[Side] = field(default_factory=list)
    operators: list[str] = field(default_factory=list)
    words: bool = False


_PRECEDENCE = {"multiply": 2, "divide": 2, "into": 2, "difference": 2}


def _apply(operator: str, a: Fraction, b: Fraction) -> Fraction | None:
    if operator == "add":
        return a + b
    if operator == "subtract":
        return a - b
    if operator == "from":
        return b - a
    if operator == "difference":
        return abs(a - b)
    if operator == "multiply":
        return a * b
    if operator == "into":
        a, b = b, a
    return a / b if b else None


def work_out(chain: Chain, start: int, end: int) -> Side:
    """Work a chain out, by BIDMAS and where words are used from left to right as well.

    Parameters
    ----------
    chain : Chain
        Operands and operators, flat.
    start, end : int
        The lexemes it covers.
    """
    operands = chain.operands
    first = operands[0]
    unit, doubt = _common_unit(chain)
    side = Side(start, end, (), operation=True, first=first.values[0] if first.known else None)
    side.words = chain.words or any(operand.words for operand in operands)
    side.doubt = doubt or any(operand.doubt or operand.whole for operand in operands[:-1])
    side.doubt = side.doubt or operands[-1].doubt
    side.unit = unit
    side.noun = first.noun
    side.style = _style(operands)
    side.places = max(operand.places for operand in operands)
    if (
        chain.operators == ["multiply"]
        and unit is not None
        and operands[0].unit == operands[1].unit
    ):
        # Length times length: the numbers are what can be checked.
        operands = [replace(o, values=tuple(v / unit.size for v in o.values)) for o in operands]
        chain = Chain(operands, chain.operators, chain.words)
        side.unit, side.doubt = None, any(operand.doubt for operand in operands)
    if all(operand.known for operand in operands):
        side.values = _readings(chain, in_words=side.words)
        scaled = any(operand.whole == "of" for operand in operands)
        if scaled and len(operands) > 1:
            # "half of 6 + 4": half of 6, or half of the sum?
            side.doubt = True
    if len(operands) == 2 and chain.words and side.known:
        operator = chain.operators[0]
        if operator in ("divide", "subtract"):
            side.swapped = _apply(operator, operands[1].values[0], operands[0].values[0])
    if len(operands) == 2 and chain.operators == ["divide"] and side.known:
        side.division = (operands[0].values[0], operands[1].values[0])
    if len(operands) == 2 and chain.operators[0] in ("add", "from"):
        # "3/4 is 1 more than 2/4" counts quarters.
        styles = {operand.style for operand in operands}
        if chain.words and "fraction" in styles and "whole" in styles:
            side.doubt = True
    return side


def _common_unit(chain: Chain) -> tuple[Unit | None, bool]:
    units = [operand.unit for operand in chain.operands]
    known = [unit for unit in units if unit is not None]
    if not known:
        return None, False
    same = len({unit.dimension for unit in known}) == 1
    additive = all(operator in ("add", "subtract", "from") for operator in chain.operators)
    if additive:
        return known[-1], not same or len(known) < len(units)
    # A length times a number is a length; a length times a length is left to the teacher.
    return known[0], len(known) > 1


def _style(operands: list[Side]) -> Style:
    styles = {operand.style for operand in operands}
    order: tuple[Style, ...] = ("decimal", "fraction", "percent")
    for style in order:
        if style in styles:
            return style
    return "whole"


def _readings(chain: Chain, *, in_words: bool) -> tuple[Fraction, ...]:
    values = [operand.values[0] for operand in chain.operands]
    readings = [_by_precedence(values, chain.operators)]
    if in_words and len(values) > 2:
        readings.append(_left_to_right(values, chain.operators))
    for place, operand in enumerate(chain.operands):
        for other in operand.values[1:]:
            varied = [*values[:place], other, *values[place + 1 :]]
            readings.append(_by_precedence(varied, chain.operators))
    found = dict.fromkeys(reading for reading in readings if reading is not None)
    return tuple(found)


def _by_precedence(values: list[Fraction], operators: list[str]) -> Fraction | None:
    numbers, pending = [values[0]], []
    for operator, value in zip(operators, values[1:], strict=True):
        if operator in _PRECEDENCE:
            result = _apply(operator, numbers[-1], value)
            if result is None:
                return None
            numbers[-1] = result
        else:
            numbers.append(value)
            pending.append(operator)
    return _left_to_right(numbers, pending)


def _left_to_right(values: list[Fraction], operators: list[str]) -> Fraction | None:
    total: Fraction | None = values[0]
    for operator, value in zip(operators, values[1:], strict=True):
        if total is None:
            return None
        total = _apply(operator, total, value)
    return total
