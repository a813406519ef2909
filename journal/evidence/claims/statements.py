"""Statements that two sides are equal, or that one is more: "7 x 8 = 56", "1/2 is 2/4"."""

from __future__ import annotations

from fractions import Fraction

from journal.evidence.claims.calculation import Side
from journal.evidence.claims.contexts import (
    begins_itself,
    goes_on,
    is_label,
    names_one,
    opens_freely,
)
from journal.evidence.claims.expressions import read_side
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import read_number
from journal.evidence.claims.relations import Relation, read_relation
from journal.evidence.claims.values import write_value
from journal.evidence.claims.verdicts import (
    Found,
    check_link,
    check_remainder,
    worked_out,
    write_quotient,
)
from journal.lexicon.facts import load_claim_words
from journal.records import Verdict

_REMAINDERS = frozenset(("remainder", "r", "rem", "remainders"))
_CARRYING = load_claim_words()["carrying"]
_LEFT = frozenset(("left", "leftover", "remaining", "over"))


def read_statement(lexemes: Lexemes, left: Side, free_from: int) -> tuple[list[Found], int] | None:
    """Read the statement that begins at a lexeme, with all its links.

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    left : Side
        Its left side.
    free_from : int
        Where the last statement ended.

    Returns
    -------
    (list of Found, int) or None
        One for each link of a chain, and one past its last lexeme.
    """
    at = left.start
    own = begins_itself(lexemes, at, free_from)
    if own is False:
        return None
    summed = _and_sum(lexemes, left)
    if summed is not None:
        left = summed
    doubt = own is None
    # "half is 6 and a quarter is 3": no sum of 6 and a quarter.
    label_like = summed is not None or (left.style == "whole" and not left.operation)
    if label_like and not opens_freely(lexemes, at, free_from):
        doubt = True
    if is_label(lexemes, at) and not left.operation:
        return None
    if names_one(lexemes, at) and not left.operation:
        return None
    return _links(lexemes, left, doubt=doubt)


def _links(lexemes: Lexemes, left: Side, *, doubt: bool) -> tuple[list[Found], int] | None:
    found: list[Found] = []
    last = left.end
    relation = read_relation(lexemes, left.end)
    chained = False
    while relation is not None:
        if relation.kind == "between":
            within = _between(lexemes, left, relation, doubt=doubt)
            if within is not None:
                found.append(within)
                last = within.end
            break
        right = read_side(lexemes, relation.end)
        if right is None:
            break
        following = read_relation(lexemes, right.end)
        if following is not None and following.kind == "equal" and _new_thought(lexemes, right):
            following = None
        link = _link(lexemes, left, relation, right, following, doubt=doubt, chained=chained)
        if link is not None:
            found.append(link)
        last = max(right.end, link.end if link is not None else 0)
        chained = True
        if not relation.negated:
            left = right
            doubt = doubt and not right.operation
        relation = following if last == right.end else None
    return (found, last) if found else None


def _new_thought(lexemes: Lexemes, right: Side) -> bool:
    """Say whether "so it is.." after a result speaks of something else."""
    return not right.operation and lexemes.text(right.end) in (",", "so", "and", "then", "if")


def _link(
    lexemes: Lexemes,
    left: Side,
    relation: Relation,
    right: Side,
    following: Relation | None,
    *,
    doubt: bool,
    chained: bool,
) -> Found | None:
    rest = _remainder(lexemes, right)
    if rest is not None and relation.kind == "equal" and left.division is not None:
        remainder, end = rest
        verdict = check_remainder(left, right.values[0], remainder)
        if relation.negated or relation.about or (doubt and verdict == "false"):
            verdict = "undecided"
        return Found(left.start, end, verdict, write_quotient(left.division), relation.other)
    if not left.operation and not right.operation and not _compares_numbers(left, relation, right):
        return None
    if following is None:
        doubt = doubt or goes_on(lexemes, right.end, symbol=relation.symbol)
    if relation.gets and not left.operation:
        return None
    if relation.told and (not left.operation or right.operation):
        # "a fourth, and this is a half", "96 divided by 3 it's 63 divided by 9"
        doubt = True
    verdict = check_link(left, relation, right, doubt=doubt)
    plain = relation.kind == "equal" and not right.operation and (doubt or left.doubt)
    if verdict == "undecided" and left.known and not left.operation and (relation.told or plain):
        return None
    end = right.end
    if verdict == "false" and chained and _tail(lexemes, left) == right.values[:1]:
        # "5 x 20 = 100 + 5 x 3 = 15": each step is right, only the signs run on.
        verdict = "undecided"
    if relation.kind == "equal" and verdict == "false" and _runs_on(left, right):
        # "3 + 4 = 7 + 2 = 9": each step is right, only the sign runs on.
        if following is None:
            verdict = "undecided"
        else:
            shown = read_number(lexemes, right.start)
            return Found(
                left.start,
                right.start + 1 if shown is None else shown.end,
                "true",
                write_value(left.values[0], left.style) if len(left.values) == 1 else None,
                relation.other,
            )
    computed = worked_out(left, right) if relation.kind == "equal" and left.known else None
    if not right.known:
        computed = None
    return Found(left.start, end, verdict, computed, relation.other)


def _tail(lexemes: Lexemes, left: Side) -> tuple[Fraction, ...] | None:
    """Return what a calculation comes to without its first number and sign."""
    first = read_number(lexemes, left.start)
    rest = None if first is None else read_side(lexemes, first.end + 1)
    return rest.values if rest is not None and rest.end == left.end and rest.operation else None


def _runs_on(left: Side, right: Side) -> bool:
    return right.operation and right.first is not None and right.first in left.values


def _compares_numbers(left: Side, relation: Relation, right: Side) -> bool:
    """Say whether two plain numbers are compared as numbers."""
    if not left.known or not right.known:
        return False
    if relation.kind != "equal":
        return True
    if left.unit is not None or right.unit is not None:
        return left.unit is not None and right.unit is not None
    if left.style == right.style == "whole":
        return (relation.symbol or relation.same) and left.values == right.values
    return True


def _between(lexemes: Lexemes, side: Side, relation: Relation, *, doubt: bool) -> Found | None:
    low = read_side(lexemes, relation.end)
    if low is None or lexemes.text(low.end) != "and":
        return None
    high = read_side(lexemes, low.end + 1)
    if high is None or not (side.known and low.known and high.known):
        return None
    units = {s.unit.dimension if s.unit else None for s in (side, low, high)}
    verdict: Verdict = "undecided"
    if len(units) == 1 and len(side.values) == len(low.values) == len(high.values) == 1:
        ends = sorted((low.values[0], high.values[0]))
        inside = ends[0] < side.values[0] < ends[1]
        outside = not ends[0] <= side.values[0] <= ends[1]
        if inside or outside:
            verdict = "true" if inside != relation.negated else "false"
    doubt = doubt or side.doubt or low.doubt or high.doubt
    if verdict == "false" and (doubt or goes_on(lexemes, high.end, symbol=False)):
        verdict = "undecided"
    return Found(side.start, high.end, verdict, None, relation.other)


def _remainder(lexemes: Lexemes, right: Side) -> tuple[Fraction, int] | None:
    """Read "remainder 2", "r 1", "with 1 left over" after a quotient."""
    if right.operation or not right.known:
        return None
    at = right.end
    if lexemes.text(at) == "each":
        at += 1
    if lexemes.text(at) in ("and", "with", ","):
        at += 1
    if lexemes.text(at) in ("a", "there's") or lexemes.follows(at, "there", "is"):
        at += 2 if lexemes.text(at) == "there" else 1
    if lexemes.text(at) in _REMAINDERS:
        at += 1
        if lexemes.text(at) in ("of", "is"):
            at += 1
        number = read_number(lexemes, at)
        return None if number is None else (number.value, number.end)
    number = read_number(lexemes, at)
    if number is None or at == right.end:
        return None
    end = number.end + (lexemes.text(number.end) in ("are", "is"))
    if lexemes.text(end) in _LEFT:
        return number.value, end + 1 + (lexemes.text(end + 1) == "over")
    return None


def _and_sum(lexemes: Lexemes, left: Side) -> Side | None:
    """Read "3 and 4" before "makes" as a sum."""
    if left.operation or not left.known or left.style == "percent":
        return None
    total, end, count = left.values[0], left.end, 1
    commas = False
    parts = [left]
    while lexemes.text(end) in ("and", ","):
        at = end + 1 + (lexemes.text(end + 1) == "and")
        part = read_side(lexemes, at)
        if part is None or part.operation or part.doubt or not part.known:
            return None
        commas = commas or lexemes.text(end) == ","
        total, end, count = total + part.values[0], part.end, count + 1
        parts.append(part)
    if count < 2:
        return None
    relation = read_relation(lexemes, end)
    if relation is None or relation.kind != "equal" or relation.gets:
        return None
    if lexemes.text(end) == "is" and (count > 2 or commas):
        return None
    if not (relation.makes or lexemes.text(end) in ("is", "altogether", "together", "=", "gives")):
        return None
    right = read_side(lexemes, relation.end)
    if right is None or right.style == "percent":
        return None
    units = {part.unit.dimension if part.unit else None for part in parts}
    digits = "".join(str(part.values[0]) for part in parts)
    side = Side(left.start, end, (total,), operation=True, words=True, unit=left.unit)
    side.style = "fraction" if any(part.style == "fraction" for part in parts) else left.style
    # "3 and 4 make 34" may speak of digits, "2 and 3 make 6" of factors.
    product = parts[0].values[0] * parts[1].values[0]
    side.doubt = (
        len(units) > 1
        or (right.known and str(right.values[0]) == digits)
        or (lexemes.text(end) == "is" and right.values[:1] in [part.values for part in parts])
        or (right.known and right.values[0] == product and lexemes.text(end) != "=")
    )
    return side


def read_carried(lexemes: Lexemes, at: int, link: Found) -> Found | None:
    """Read "so a quarter is 8" after "half of 30 is 15": a part of the same amount.

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        Where the part must begin.
    link : Found
        The statement before.
    """
    whole = read_side(lexemes, link.start)
    part = read_side(lexemes, at)
    if whole is None or part is None or whole.whole != "of" or not whole.first:
        return None
    if part.style not in ("fraction", "percent") or part.operation or part.doubt or part.whole:
        return None
    if not set(lexemes.texts[link.end : at]) <= _CARRYING or len(whole.values) != 1:
        return None
    relation = read_relation(lexemes, part.end)
    right = None if relation is None else read_side(lexemes, relation.end)
    if relation is None or right is None or relation.kind != "equal" or relation.negated:
        return None
    if right.operation or right.style in ("fraction", "percent") or len(right.values) != 1:
        return None
    if right.unit is not None and right.unit != whole.unit:
        return None
    amount = part.values[0] * whole.values[0] / whole.first
    said = right.values[0] * (whole.unit.size if whole.unit and not right.unit else 1)
    verdict: Verdict = "true" if said == amount else "false"
    plain = relation.weak or relation.about or goes_on(lexemes, right.end, symbol=relation.symbol)
    if verdict == "false" and (plain or right.doubt or right.noun):
        verdict = "undecided"
    return Found(at, right.end, verdict, write_value(amount, "decimal", whole.unit))
