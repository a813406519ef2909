"""Lists of factors and multiples: "the factors of 12 are 1, 2, 3, 4, 6 and 12"."""

from __future__ import annotations

from fractions import Fraction

from journal.evidence.claims.contexts import goes_on
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import read_number
from journal.evidence.claims.verdicts import Found

_LARGEST = 10**6


def read_factor_list(lexemes: Lexemes, at: int) -> Found | None:
    """Read "the factors of 12 are 1, 2, 3, 4, 6 and 12", "multiples of 5 are 5, 10".

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        At "factors" or "multiples".
    """
    word = lexemes.text(at)
    if word not in ("factors", "multiples") or lexemes.text(at + 1) != "of":
        return None
    number = read_number(lexemes, at + 2)
    if number is None or number.value.denominator != 1 or not 0 < number.value <= _LARGEST:
        return None
    end = number.end
    if lexemes.text(end) not in ("are", "is", "include", "=", ":"):
        return None
    end += 1
    said: list[Fraction] = []
    while (item := read_number(lexemes, end)) is not None and item.style == "whole":
        said.append(item.value)
        end = item.end
        following = end
        while lexemes.text(following) in (",", "and"):
            following += 1
        # The next thought: "and 3 x 4 is 12".
        if following == end or lexemes.text(following + 1) in ("x", "×", "+", "-", "times", "is"):
            break
        if read_number(lexemes, following) is None:
            break
        end = following
    if not said or any(value.denominator != 1 or value <= 0 for value in said):
        return None
    whole = int(number.value)
    if word == "factors":
        right = all(whole % int(value) == 0 for value in said)
    else:
        right = all(int(value) % whole == 0 for value in said)
    if not right:
        sure = not goes_on(lexemes, end, symbol=False)
        return Found(at, end, "false" if sure else "undecided")
    # All of them are factors; whether any is missing matters only where a list is given.
    complete = word == "multiples" or whole > 10**4 or lexemes.text(number.end) == "include"
    complete = complete or {int(value) for value in said} == {
        d for d in range(1, whole + 1) if whole % d == 0
    }
    return Found(at, end, "true" if complete else "undecided")
