"""Properties of given numbers: even, odd, prime, square, factors, multiples, digits."""

from __future__ import annotations

from collections.abc import Callable
from fractions import Fraction
from math import isqrt

from journal.evidence.claims.contexts import (
    begins_itself,
    goes_on,
    is_label,
    names_one,
    opens_freely,
    opens_statement,
    thought_ends,
)
from journal.evidence.claims.expressions import read_side
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import read_number
from journal.evidence.claims.verdicts import Found
from journal.lexicon.facts import load_claim_words
from journal.records import Verdict

_NEGATIVES = load_claim_words()["negatives"]
_VERBS = load_claim_words()["property verbs"]
_FILLERS = load_claim_words()["property fillers"]
_LARGEST = 10**7


def _is_prime(n: int) -> bool:
    return n > 1 and all(n % d for d in range(2, isqrt(n) + 1))


def _is_cube(n: int) -> bool:
    root = round(n ** (1 / 3)) if n > 0 else 0
    return n > 0 and root**3 == n


def _is_triangular(n: int) -> bool:
    return n > 0 and isqrt(8 * n + 1) ** 2 == 8 * n + 1


_KINDS: dict[str, Callable[[int], bool]] = {
    "even": lambda n: n % 2 == 0,
    "odd": lambda n: n % 2 == 1,
    "prime": _is_prime,
    "composite": lambda n: n > 3 and not _is_prime(n),
    "square": lambda n: n >= 0 and isqrt(n) ** 2 == n,
    "cube": _is_cube,
    "triangular": _is_triangular,
    "triangle": _is_triangular,
    "negative": lambda n: n < 0,
    "positive": lambda n: n > 0,
}
_VERB_OF = {
    **dict.fromkeys(("goes", "go", "fits", "fit"), "go"),
    **dict.fromkeys(("ends", "end"), "end"),
    **dict.fromkeys(("has", "have"), "have"),
}
_NEED_NUMBER = frozenset(("square", "cube", "triangle"))


def read_property(lexemes: Lexemes, at: int, free_from: int) -> Found | None:
    """Read what is said of the number or numbers that begin at a lexeme.

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        Where the first number must begin.
    free_from : int
        Where the last statement ended.

    Returns
    -------
    Found or None
        ``computed`` only where something is counted ("12 has 6 factors").
    """
    read = _numbers(lexemes, at)
    if read is None:
        return None
    numbers, end, worked = read
    before = lexemes.text(at - 1)
    if is_label(lexemes, at) and not (before == "number" and not worked):
        return None
    if names_one(lexemes, at):
        return None
    verb = _verb(lexemes, end)
    if verb is None:
        return None
    word, negated, end = verb
    said = (
        _said_of(lexemes, end, numbers)
        if word == "be"
        else _said_by_verb(lexemes, word, end, numbers)
    )
    if said is None:
        return None
    answers, after, computed, sure = said
    begins = begins_itself(lexemes, at, free_from) if worked else True
    sure = sure and begins is True and (worked or _alone(lexemes, at, free_from))
    return Found(at, after, _verdict(answers, negated=negated, sure=sure), computed)


def _verdict(answers: list[bool | None], *, negated: bool, sure: bool) -> Verdict:
    if any(answer is None for answer in answers):
        return "undecided"
    if negated:
        right = not any(answers)
        wrong = all(answers)
    else:
        right = all(answers)
        wrong = not right
    if right:
        return "true"
    return "false" if wrong and sure else "undecided"


def _alone(lexemes: Lexemes, at: int, free_from: int) -> bool:
    """Say whether the number is no digit or place of something else."""
    before = lexemes.text(at - 1)
    if lexemes.item(at - 1).kind == "numeral" and at != free_from:
        return False
    return opens_freely(lexemes, at, free_from) or before in (
        "number",
        "the",
        "is",
        "are",
        "noticed",
        "=",
        "does",
    )


def _numbers(lexemes: Lexemes, at: int) -> tuple[list[Fraction], int, bool] | None:
    """Read "48", "3 x 4" or "2, 3 and 5"."""
    side = read_side(lexemes, at)
    if side is None or side.unit is not None or len(side.values) != 1 or side.noun:
        return None
    if side.operation:
        return [side.values[0]], side.end, True
    values, end = [side.values[0]], side.end
    while lexemes.text(end) in (",", "and", "or"):
        following = end + 1 + (lexemes.text(end + 1) in ("and", "or"))
        number = read_number(lexemes, following)
        if number is None or number.style != "whole":
            break
        values.append(number.value)
        end = number.end
    return values, end, False


def _verb(lexemes: Lexemes, at: int) -> tuple[str, bool, int] | None:
    end = at
    while lexemes.text(end) in ("which", "that", ",", "both", "all", "only", "always", "also"):
        end += 1
    negated = False
    word = lexemes.text(end)
    while word in _VERBS:
        negated = negated or word in _NEGATIVES
        end += 1
        if word in _VERB_OF:
            return _VERB_OF[word], negated, end
        if word in ("be", "is", "are", "was", "were", "isn't", "isnt", "aren't", "arent"):
            return "be", negated, end
        while lexemes.text(end) in ("not", "never", "always", "only", "also", "to", "n't"):
            negated = negated or lexemes.text(end) in ("not", "never")
            end += 1
        word = lexemes.text(end)
    return None


_Said = tuple[list[bool | None], int, str | None, bool]


def _said_of(lexemes: Lexemes, end: int, numbers: list[Fraction]) -> _Said | None:
    negated = False
    while lexemes.text(end) in _FILLERS:
        negated = negated or lexemes.text(end) in ("not", "never")
        end += 1
    word = lexemes.text(end)
    said = _kind(lexemes, word, end, numbers) or _related(lexemes, word, end, numbers)
    if said is not None and negated:
        answers, after, computed, sure = said
        flipped = [None if answer is None else not answer for answer in answers]
        # "are not even": none of them is.
        return flipped, after, computed, sure and len(answers) == 1
    return said


def _kind(lexemes: Lexemes, word: str, end: int, numbers: list[Fraction]) -> _Said | None:
    holds = _KINDS.get(word)
    if holds is None:
        return None
    after = end + 1
    named = lexemes.text(after) in ("number", "numbers")
    if named:
        after += 1
    elif word in _NEED_NUMBER and lexemes.text(end - 1) not in ("a", "is", "are", "not"):
        return None
    if lexemes.text(after) in ("one", "out", "bigger", "smaller", "more", "less", "though", "if"):
        return None
    if not named and not thought_ends(lexemes, after):
        return None
    answers: list[bool | None] = []
    for value in numbers:
        if word in ("negative", "positive"):
            answers.append(value != 0 and (value < 0) == (word == "negative"))
        elif value.denominator != 1 or abs(value) > _LARGEST:
            answers.append(None)
        else:
            answers.append(holds(int(value)))
    return answers, after, None, True


def _related(lexemes: Lexemes, word: str, end: int, numbers: list[Fraction]) -> _Said | None:
    if word == "common":
        end += 1
        word = lexemes.text(end)
    table = None
    if word in ("factor", "factors", "divisor", "divisors") and lexemes.text(end + 1) == "of":
        others = _others(lexemes, end + 2)
        return None if others is None else _division(numbers, others, lexemes, factors=True)
    if (word in ("multiple", "multiples") and lexemes.text(end + 1) == "of") or (
        word == "divisible" and lexemes.text(end + 1) == "by"
    ):
        table = _others(lexemes, end + 2)
    elif word == "divided" and lexemes.text(end + 1) in ("by", "exactly", "equally", "evenly"):
        exact = lexemes.text(end + 1) != "by"
        others = _others(lexemes, end + 2 + exact)
        if others is None:
            return None
        exact = exact or lexemes.text(others[1]) in ("exactly", "equally", "evenly")
        answers, after, computed, sure = _division(numbers, others, lexemes, factors=False)
        return answers, after, computed, sure and (exact or all(answers))
    elif word in ("in", "on", "part"):
        start = end + 1 + (lexemes.text(end + 1) == "of")
        start += lexemes.text(start) in ("the", "my", "our")
        table = _times_table(lexemes, start)
    return None if table is None else _division(numbers, table, lexemes, factors=False)


def _others(lexemes: Lexemes, at: int) -> tuple[list[int], int] | None:
    found: list[int] = []
    end = at + (lexemes.text(at) in ("both", "the"))
    while True:
        number = read_number(lexemes, end)
        if number is None or number.value.denominator != 1 or number.value <= 0:
            break
        if found and opens_statement(lexemes, end):
            # "a factor of 42 and 8 is .."
            break
        found.append(int(number.value))
        at = number.end
        if lexemes.text(at) != "and":
            break
        end = at + 1
    return (found, at) if found else None


def _times_table(lexemes: Lexemes, at: int) -> tuple[list[int], int] | None:
    number = read_number(lexemes, at)
    if number is None or number.value.denominator != 1 or number.value <= 0:
        return None
    end = number.end
    if lexemes.glued(end) and lexemes.text(end) == "s":
        return [int(number.value)], end + 1
    if lexemes.text(end) in ("times", "x", "×", "time"):
        end += 1
        if lexemes.text(end) in ("table", "tables"):
            return [int(number.value)], end + 1
    return None


def _division(
    numbers: list[Fraction], others: tuple[list[int], int], lexemes: Lexemes, *, factors: bool
) -> _Said:
    divisors, end = others
    answers: list[bool | None] = []
    for value in numbers:
        if value.denominator != 1 or value <= 0:
            answers.append(None)
        elif factors:
            answers.append(all(other % int(value) == 0 for other in divisors))
        else:
            answers.append(all(int(value) % other == 0 for other in divisors))
    sure = not (goes_on(lexemes, end, symbol=False) and lexemes.item(end).kind != "word")
    return answers, end, None, sure


def _said_by_verb(lexemes: Lexemes, verb: str, end: int, numbers: list[Fraction]) -> _Said | None:
    if len(numbers) > 1 and verb != "end":
        return None
    value = numbers[0]
    if verb == "go":
        return _goes_into(lexemes, end, value)
    if verb == "end":
        return _ends_in(lexemes, end, numbers)
    return _has(lexemes, end, value)


def _goes_into(lexemes: Lexemes, end: int, value: Fraction) -> _Said | None:
    while lexemes.text(end) in ("exactly", "evenly", "equally"):
        end += 1
    if lexemes.text(end) == "in" and lexemes.text(end + 1) == "to":
        end += 2
    elif lexemes.text(end) in ("into", "in"):
        end += 1
    else:
        return None
    number = read_number(lexemes, end)
    if number is None or value <= 0:
        return None
    end = number.end
    times = read_number(lexemes, end)
    exact = number.value / value
    if lexemes.text(end) in ("twice", "once"):
        count = Fraction(2 if lexemes.text(end) == "twice" else 1)
        return [count == exact], end + 1, str(exact), count != int(exact)
    if times is not None and lexemes.text(times.end) in ("times", "time", "x"):
        holds = times.value == exact
        sure = times.value != int(exact)
        shown = str(exact) if exact.denominator == 1 else None
        return [holds], times.end + 1, shown, sure
    sure = lexemes.text(end) not in ("with", "remainder", "r", "and") and times is None
    return [exact.denominator == 1], end, None, sure


def _ends_in(lexemes: Lexemes, end: int, numbers: list[Fraction]) -> _Said | None:
    if lexemes.text(end) not in ("in", "with", "on"):
        return None
    end += 1 + (lexemes.text(end + 1) in ("a", "an", "the"))
    endings = []
    while True:
        number = read_number(lexemes, end)
        if number is None or number.style != "whole":
            break
        endings.append(str(number.value))
        end = number.end
        if lexemes.text(end) not in ("or", "and") or read_number(lexemes, end + 1) is None:
            break
        if opens_statement(lexemes, end + 1):
            break
        end += 1
    if not endings or any(value.denominator != 1 for value in numbers):
        return None
    sure = not (lexemes.item(end).kind == "sign" and lexemes.text(end) in "+-/x×%")
    return [any(str(v).endswith(e) for e in endings) for v in numbers], end, None, sure


def _has(lexemes: Lexemes, end: int, value: Fraction) -> _Said | None:
    end += lexemes.text(end) in ("got", "only", "exactly")
    number = read_number(lexemes, end)
    if number is None or value.denominator != 1 or not 0 < value <= _LARGEST:
        return None
    what = lexemes.text(number.end)
    if what in ("digits", "digit"):
        count = len(str(value))
    elif what in ("factors", "factor") and value <= 10**4:
        count = sum(1 for d in range(1, int(value) + 1) if value % d == 0)
    else:
        return None
    # "12 has 2 factors that are odd" is about some of them.
    sure = lexemes.text(number.end + 1) not in ("that", "which", "in", "of", "the", "less", "more")
    return [number.value == count], number.end + 1, str(count), sure
