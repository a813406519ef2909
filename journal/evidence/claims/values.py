"""Exact values written the way the child wrote the numbers."""

from __future__ import annotations

from fractions import Fraction

from journal.evidence.claims.numbers import Style
from journal.lexicon.facts import Unit

_MAX_PLACES = 6


def write_value(value: Fraction, style: Style = "whole", unit: Unit | None = None) -> str:
    """Write an exact value as plain text.

    Parameters
    ----------
    value : Fraction
        In the base unit where there is a unit.
    style : {"whole", "decimal", "fraction", "percent"}
        How it is best written; a decimal that does not end is written as a fraction.
    unit : Unit or None
        The unit to write it in.

    Returns
    -------
    str
        "56", "3/4", "1 1/2", "0.5", "25%", "£1.50", "50 cm".
    """
    if unit is not None:
        value = value / unit.size
    text = f"{_plain(value * 100, 'decimal')}%" if style == "percent" else _plain(value, style)
    if unit is None:
        return text
    if unit.name == "£":
        pounds = f"£{float(abs(value)):.2f}" if value.denominator != 1 else f"£{abs(value)}"
        return f"-{pounds}" if value < 0 else pounds
    return f"{text}{unit.name}" if unit.name in ("p", "°") else f"{text} {unit.name}"


def _plain(value: Fraction, style: Style) -> str:
    if value.denominator == 1:
        return str(value.numerator)
    places = _places(value)
    if style != "fraction" and places is not None:
        sign = "-" if value < 0 else ""
        digits = str(abs(value.numerator) * 10**places // value.denominator).rjust(places + 1, "0")
        return f"{sign}{digits[:-places]}.{digits[-places:]}"
    whole, rest = divmod(abs(value.numerator), value.denominator)
    sign = "-" if value < 0 else ""
    part = f"{rest}/{value.denominator}"
    return f"{sign}{whole} {part}" if whole else f"{sign}{part}"


def _places(value: Fraction) -> int | None:
    """Return how many decimal places write a value exactly, None if they never end."""
    for places in range(1, _MAX_PLACES + 1):
        if (value.numerator * 10**places) % value.denominator == 0:
            return places
    return None


def ends_as_decimal(value: Fraction) -> bool:
    """Say whether a value can be written as a decimal of few places."""
    return value.denominator == 1 or _places(value) is not None
