"""The verdict on one link of a statement: two sides and what joins them."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass
from fractions import Fraction

from journal.evidence.claims.calculation import Side
from journal.evidence.claims.relations import Relation
from journal.evidence.claims.values import ends_as_decimal, write_value
from journal.records import Verdict


@dataclass(frozen=True, slots=True)
class Found:
    """A statement that was found.

    ``start`` and ``end`` are lexemes, end exclusive; ``other`` marks another person's result.
    """

    start: int
    end: int
    verdict: Verdict
    computed: str | None = None
    other: bool = False


_HOLDS: dict[str, Callable[[Fraction, Fraction], bool]] = {
    "equal": lambda a, b: a == b,
    "more": lambda a, b: a > b,
    "less": lambda a, b: a < b,
}
_SCALES = frozenset(Fraction(size) for size in (60, 3600, 7, 12, 24, 100, 1000, 10, 365, 52))


def check_link(left: Side, relation: Relation, right: Side, *, doubt: bool) -> Verdict:
    """Say whether a link holds.

    Parameters
    ----------
    left, right : Side
        What is joined.
    relation : Relation
        How.
    doubt : bool
        Whether either side may not be what it seems: then nothing is called false.

    Returns
    -------
    {"true", "false", "undecided"}
        Of the statement as it stands, "not" included.
    """
    if not left.known or not right.known or relation.about:
        return "undecided"
    values = _comparable(left, right)
    if values is None:
        return "undecided"
    lefts, rights, sure = values
    holds = _HOLDS[relation.kind]
    if right.unit is not None and len(rights) > 1 and relation.kind == "equal" and len(lefts) == 1:
        # "1 hour and 30 minutes": either the whole, or the first with another thought after it.
        rights = (lefts[0],) if lefts[0] in rights else rights[:1]
    answers = {
        holds(a, b) or (relation.same and relation.kind != "equal" and a == b)
        for a in lefts
        for b in rights
    }
    if len(answers) != 1:
        return "undecided"
    right_one = answers.pop() != relation.negated
    if right_one:
        # Different things counted are not the same amount of anything.
        return "true" if _same_things(left, right) else "undecided"
    doubt = doubt or left.doubt or right.doubt or relation.weak or not sure
    doubt = doubt or (left.swapped is not None and left.swapped in rights and not relation.negated)
    if doubt or not _surely_false(left, relation, right):
        return "undecided"
    return "false"


def _comparable(
    left: Side, right: Side
) -> tuple[tuple[Fraction, ...], tuple[Fraction, ...], bool] | None:
    if left.unit is None and right.unit is None:
        return left.values, right.values, True
    if left.unit is not None and right.unit is not None:
        if left.unit.dimension != right.unit.dimension:
            return None
        return left.values, right.values, True
    # One side has no unit: it may be meant in the unit of the other.
    size = (left.unit or right.unit).size  # type: ignore[union-attr]
    lefts = tuple(v / size for v in left.values) if left.unit else left.values
    rights = tuple(v / size for v in right.values) if right.unit else right.values
    sure = right.unit is not None and left.operation
    for a in lefts:
        for b in rights:
            if a == 0 or b == 0 or a / b in _SCALES or b / a in _SCALES:
                sure = False
    return lefts, rights, sure


def _same_things(left: Side, right: Side) -> bool:
    return left.whole in (None, "of") or right.whole in (None, "of") or left.whole == right.whole


def _surely_false(left: Side, relation: Relation, right: Side) -> bool:
    if left.whole != right.whole and not {left.whole, right.whole} <= {None, "of"}:
        return False
    if relation.kind != "equal":
        return _comparison_is_sure(left, right)
    if left.noun and right.noun and left.noun != right.noun:
        return False
    if right.noun and not left.noun and not relation.symbol:
        return False
    if _rounded(left, right) or _rounded(right, left):
        return False
    if left.style in ("fraction", "percent") and not left.operation and right.operation:
        # "One quarter is 20 ÷ 4": a quarter of what was spoken of.
        return right.values[0] < 1
    if left.operation or right.operation:
        return not (_is_quotient(left, right) or _is_quotient(right, left))
    if left.unit is not None and right.unit is not None:
        return True
    return _equivalence_is_sure(left, right)


def _comparison_is_sure(left: Side, right: Side) -> bool:
    """Say no where a small fraction, set against a whole number, may be of some amount."""
    if bool(left.noun) != bool(right.noun) or left.noun != right.noun:
        return False
    for one, other in ((left, right), (right, left)):
        small = one.style in ("fraction", "percent") and not one.operation
        if small and other.style == "whole" and other.values[0] > 1:
            return False
    return True


def _equivalence_is_sure(left: Side, right: Side) -> bool:
    """Two plain numbers: sure only where both are written as numbers between the wholes."""
    styles = (left.style, right.style)
    if "whole" not in styles:
        return True
    whole, part = (left, right) if left.style == "whole" else (right, left)
    if part.style == "whole":
        return False
    return whole.values[0] == 1 and part.style == "fraction"


def _rounded(exact: Side, given: Side) -> bool:
    """Say whether one side is the other, rounded to the decimal places it is written with."""
    if given.operation or given.style not in ("decimal", "percent") or given.unit is not None:
        return False
    value = given.values[0]
    size = Fraction(1, 10**given.places) * (Fraction(1, 100) if given.style == "percent" else 1)
    return any(not ends_as_decimal(v) and abs(v - value) < size for v in exact.values)


def _is_quotient(worked: Side, given: Side) -> bool:
    """Say whether a whole number is given for a division that does not come out."""
    if worked.division is None or given.operation or given.style != "whole":
        return False
    exact = worked.values[0]
    return exact.denominator != 1 and abs(exact - given.values[0]) < 1


def check_remainder(left: Side, quotient: Fraction, remainder: Fraction) -> Verdict:
    """Say whether a division comes to this quotient with this remainder."""
    if left.division is None or left.unit is not None:
        return "undecided"
    amount, by = left.division
    if amount == quotient * by + remainder:
        return "true" if 0 <= remainder < by else "undecided"
    return "false"


def write_quotient(division: tuple[Fraction, Fraction]) -> str:
    """Write a division with its remainder: "2 remainder 2"."""
    amount, by = division
    quotient, rest = divmod(amount, by)
    return f"{quotient} remainder {rest}" if rest else str(quotient)


def worked_out(left: Side, right: Side) -> str | None:
    """Write the right value of the side that is worked out, the way the other is written."""
    worked, other = (right, left) if right.operation and not left.operation else (left, right)
    if len(worked.values) != 1:
        return None
    style = other.style if other.style != "whole" else worked.style
    unit = other.unit or worked.unit
    value = worked.values[0]
    if worked.unit is None and unit is not None:
        value = value * unit.size
    return write_value(value, style, unit)
