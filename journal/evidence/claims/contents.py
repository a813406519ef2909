"""How many of one go into another: "60 minutes in an hour", "there are 4 fives in 20"."""

from __future__ import annotations

from journal.evidence.claims.calculation import Side
from journal.evidence.claims.contexts import goes_on
from journal.evidence.claims.expressions import read_side
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import read_number
from journal.evidence.claims.shapes import PARTS, count_parts, read_shape
from journal.evidence.claims.values import write_value
from journal.evidence.claims.verdicts import Found
from journal.lexicon.facts import load_number_words, load_units
from journal.records import Verdict

_WORDS = load_number_words()
_UNITS = load_units()


def read_contents(lexemes: Lexemes, at: int, free_from: int = -1) -> Found | None:
    """Read "there are 100 cm in a metre", "there are 12 edges on a cube".

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        At "there", or at the number where "there are" is left out.
    free_from : int, optional
        Where the last statement ended: "there are" may have been said with it.
    """
    start = at
    negated = False
    if lexemes.text(at) in ("a", "an", "1", "one", "each", "every"):
        return _unit_has(lexemes, at)
    said = lexemes.text(at) in ("there", "theres", "there's")
    again = free_from == at - 1 and lexemes.text(at - 1) in ("and", ",")
    if said:
        at += 1
        if lexemes.text(start) == "there":
            if lexemes.text(at) not in ("are", "is", "aren't", "isn't", "were"):
                return None
            negated = lexemes.text(at) in ("aren't", "isn't")
            at += 1
        while lexemes.text(at) in ("only", "exactly", "always", "also", "not"):
            negated = negated or lexemes.text(at) == "not"
            at += 1
    number = read_number(lexemes, at)
    if number is None:
        return None
    shape = _shape_parts(lexemes, start, number.end, negated=negated, said=said)
    if shape is not None:
        return shape
    part = read_side(lexemes, at)
    if part is None or len(part.values) != 1 or lexemes.text(part.end) != "in":
        return None
    measure = part.unit is not None
    counted = part.operation or _WORDS.get(lexemes.text(part.end - 1)) is not None
    if not measure and not (counted and lexemes.item(part.end - 1).kind != "numeral"):
        return None
    whole = read_side(lexemes, part.end + 1)
    if whole is None or len(whole.values) != 1 or whole.doubt:
        return None
    if measure != (whole.unit is not None):
        return None
    return _amount(lexemes, start, part, whole, negated=negated, said=said or again)


def _unit_has(lexemes: Lexemes, at: int) -> Found | None:
    """Read "a year has 12 months", "1 m has 100 cm"."""
    whole = read_side(lexemes, at + (lexemes.text(at) in ("each", "every")))
    if whole is None and lexemes.text(at) in ("each", "every"):
        unit = _UNITS.get(lexemes.text(at + 1))
        whole = None if unit is None else Side(at, at + 2, (unit.size,), unit=unit)
    if whole is None or whole.unit is None or lexemes.text(whole.end) not in ("has", "have"):
        return None
    part = read_side(lexemes, whole.end + 1 + (lexemes.text(whole.end + 1) in ("got", "only")))
    if part is None or part.unit is None or part.unit.dimension != whole.unit.dimension:
        return None
    if part.unit.size >= whole.unit.size or len(part.values) != 1 or len(whole.values) != 1:
        return None
    right = part.values == whole.values
    sure = not goes_on(lexemes, part.end, symbol=False) and lexemes.text(part.end) != "left"
    computed = write_value(whole.values[0], "whole", part.unit)
    return Found(at, part.end, "true" if right else "false" if sure else "undecided", computed)


def _amount(
    lexemes: Lexemes, start: int, part: Side, whole: Side, *, negated: bool, said: bool
) -> Found | None:
    if part.unit is not None and whole.unit is not None:
        if part.unit.dimension != whole.unit.dimension:
            return None
        computed: str | None = write_value(whole.values[0], "whole", part.unit)
        right = part.values == whole.values
        sure = said or lexemes.text(start - 1) in ("because", "is", "are", "know", "=", "")
    else:
        right = part.values == whole.values
        size = part.values[0] / part.first if part.first else None
        if size is None:
            size = _WORDS[lexemes.text(part.end - 1)].value
        if not size:
            return None
        count = part.values[0] / size
        exact = whole.values[0] / size
        computed = str(exact) if exact.denominator == 1 else None
        place = _WORDS.get(lexemes.text(part.end - 1))
        if place is not None and place.kind == "place" and exact // 1 % 10 == count:
            right = True
        # 3 fives in 17, with some left over.
        sure = said and count != exact // 1
        if exact // 1 == count and exact.denominator != 1 and not right:
            return Found(start, whole.end, "undecided", None)
    verdict: Verdict = "true" if right != negated else "false"
    if verdict == "false" and (not sure or goes_on(lexemes, whole.end, symbol=False)):
        verdict = "undecided"
    return Found(start, whole.end, verdict, computed)


def _shape_parts(
    lexemes: Lexemes, start: int, at: int, *, negated: bool, said: bool
) -> Found | None:
    number = read_number(lexemes, at - 1)
    part = PARTS.match(lexemes, at)
    if number is None or part is None or lexemes.text(part[1]) not in ("in", "on", "of"):
        return None
    shape = read_shape(lexemes, part[1] + 1)
    if shape is None or lexemes.text(part[1] + 1) not in ("a", "an", "every", "any", "each"):
        return None
    count = count_parts(shape[0], part[0])
    if lexemes.text(at) == "edges":
        count = count_parts(shape[0], "edges") or count
    if count is None:
        return None
    right = number.value == count
    verdict: Verdict = "true" if right != negated else "false" if said else "undecided"
    return Found(start, shape[1], verdict, str(count))
