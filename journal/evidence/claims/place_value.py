"""Place value and rounding: "the 4 in 345 is worth 40", "46 rounds to 50"."""

from __future__ import annotations

from fractions import Fraction

from journal.evidence.claims.contexts import goes_on, opens_freely
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import Number, read_number
from journal.evidence.claims.phrases import Phrases
from journal.evidence.claims.values import write_value
from journal.evidence.claims.verdicts import Found
from journal.lexicon.facts import load_number_words
from journal.records import Verdict

_WORDS = load_number_words()
_WORTH = Phrases(
    (phrase, phrase.split(" ")[0] if phrase == "is" else "worth")
    for phrase in (
        "is",
        "is worth",
        "is really",
        "is actually",
        "is really worth",
        "is actually worth",
        "means",
        "stands for",
        "represents",
        "has a value of",
        "has the value of",
        "has the value",
        "equals",
        "= ",
        "=",
        "isn't worth",
        "is not worth",
        "isn't",
        "is not",
        "doesn't mean",
    )
)
_ROUNDS = Phrases(
    (phrase, phrase)
    for phrase in (
        "rounds to",
        "rounds up to",
        "rounds down to",
        "round to",
        "rounded to",
        "rounded up to",
        "rounded down to",
        "is rounded to",
        "is rounded up to",
        "is rounded down to",
        "rounded is",
        "rounded up is",
        "would round to",
        "would round up to",
        "would round down to",
        "will round to",
        "rounds up",
        "goes up to",
    )
)
# Rounded to these now and then, though seldom said so.
_ODD_SIZES = tuple(Fraction(size) for size in (5, 25, 50, 500))
_NEAREST = frozenset(("nearest", "closest"))
_RESULTS = Phrases(
    (phrase, phrase)
    for phrase in (
        "is",
        "=",
        "rounds to",
        "would be",
        "will be",
        "becomes",
        "and got",
        "and i got",
        "and it is",
        "and it was",
        "and that is",
        "it is",
        "it's",
        "you get",
        "i got",
        "gives",
        "goes to",
        "makes",
        "to get",
        "equals",
        "it would be",
        "it will be",
    )
)


def read_digit_value(lexemes: Lexemes, at: int) -> Found | None:
    """Read "the 4 in 345 is worth 40", "in 345 the 4 is worth 40".

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        At "the" or "in".

    Returns
    -------
    Found or None
        ``computed`` is what the digit is worth.
    """
    if lexemes.text(at) == "in":
        number = read_number(lexemes, at + 1)
        if number is None:
            return None
        start = number.end + (lexemes.text(number.end) == ",")
        digit = _digit(lexemes, start)
        if digit is None:
            return None
        return _worth(lexemes, at, digit[1], digit[0], number)
    digit = _digit(lexemes, at)
    if digit is None or lexemes.text(digit[1]) not in ("in", "of"):
        return None
    where = digit[1] + 1
    where += lexemes.text(where) in ("the",)
    where += lexemes.text(where) == "number"
    number = read_number(lexemes, where)
    if number is None:
        return None
    return _worth(lexemes, at, number.end, digit[0], number)


def _digit(lexemes: Lexemes, at: int) -> tuple[str, int] | None:
    if lexemes.text(at) != "the":
        return None
    at += 1
    if lexemes.text(at) == "digit":
        at += 1
    text = lexemes.text(at)
    if len(text) == 1 and text.isdigit():
        return text, at + 1
    word = _WORDS.get(text)
    if word is not None and word.kind == "small" and word.value < 10:
        return str(word.value), at + 1
    return None


def _worth(lexemes: Lexemes, start: int, at: int, digit: str, number: Number) -> Found | None:
    values = _digit_values(digit, number)
    matched = _WORTH.match(lexemes, at)
    if matched is None or not values:
        return None
    how, end = matched
    negated = bool({"not", "isn't", "doesn't"} & set(lexemes.texts[at:end]))
    computed = write_value(values[0], "decimal") if len(values) == 1 else None
    if lexemes.text(end) == "in" and lexemes.text(end + 1) == "the":
        place = _WORDS.get(lexemes.text(end + 2))
        if place is None or lexemes.text(end + 3) not in ("column", "place", "columns", "position"):
            return None
        right = any(value == int(digit) * place.value for value in values)
        if digit == "0":
            return None
        return Found(start, end + 4, "true" if right != negated else "false", computed)
    place = _WORDS.get(lexemes.text(end))
    if place is not None and place.kind == "place":
        right = any(value == int(digit) * place.value for value in values)
        return Found(start, end + 1, "true" if right != negated else "false", computed)
    said = read_number(lexemes, end)
    if said is None:
        return None
    verdict: Verdict = "true" if (said.value in values) != negated else "false"
    bare = how == "is" and said.value == int(digit)
    if verdict == "false" and (bare or goes_on(lexemes, said.end, symbol=False)):
        verdict = "undecided"
    return Found(start, said.end, verdict, computed)


def _digit_values(digit: str, number: Number) -> list[Fraction]:
    if number.value < 0 or number.style not in ("whole", "decimal"):
        return []
    digits = str(int(number.value * 10**number.places)).rjust(number.places + 1, "0")
    power = len(digits) - number.places - 1
    return [
        int(digit) * Fraction(10) ** (power - place)
        for place, found in enumerate(digits)
        if found == digit
    ]


def read_places(lexemes: Lexemes, at: int, free_from: int) -> Found | None:
    """Read "345 has 4 tens", "345 has 3 hundreds, 4 tens and 5 ones".

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        Where the number must begin.
    free_from : int
        Where the last statement ended.
    """
    number = read_number(lexemes, at)
    if number is None or number.style != "whole" or number.spelt:
        return None
    end = number.end
    if lexemes.text(end) not in ("has", "had"):
        return None
    end += 1
    end += lexemes.text(end) in ("got", "only")
    count = lexemes.item(end)
    place = _WORDS.get(lexemes.text(end + 1))
    said = read_number(lexemes, end)
    if said is None or place is None or place.kind != "place":
        return None
    if said.end > end + 2:
        verdict: Verdict = "true" if said.value == number.value else "undecided"
        return Found(at, said.end, verdict, None)
    amount = _WORDS[count.text].value if count.kind == "word" else Fraction(count.text)
    of_place = number.value // place.value
    right = amount in (of_place % 10, of_place)
    sure = opens_freely(lexemes, at, free_from) and not goes_on(lexemes, said.end, symbol=False)
    sure = sure and lexemes.text(said.end) not in ("and", ",", "left", "after")
    verdict = "true" if right else "false" if sure else "undecided"
    return Found(at, said.end, verdict, str(of_place % 10))


def read_rounding(lexemes: Lexemes, at: int) -> Found | None:
    """Read "46 rounds to 50 to the nearest ten", "46 to the nearest 10 is 50".

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        At the number, or at "round", "rounded", "rounding" before it.
    """
    start = at
    command = lexemes.text(at) in ("round", "rounded", "rounding")
    if command:
        at += 1
    number = read_number(lexemes, at)
    if number is None or number.style not in ("whole", "decimal"):
        return None
    end = number.end
    size = None
    if lexemes.text(end) == "rounded" and _nearest(lexemes, end + 1) is not None:
        end += 1
    near = _nearest(lexemes, end)
    if near is not None:
        size, end = near
        result = _RESULTS.match(lexemes, end)
        if result is None:
            return None
        end = result[1]
    else:
        rounds = _ROUNDS.match(lexemes, end)
        if rounds is None and command and lexemes.text(end) in ("to", "up", "down"):
            end += 1 + (lexemes.text(end + 1) == "to")
        elif rounds is None:
            return None
        else:
            end = rounds[1]
    said = read_number(lexemes, end)
    if said is None:
        return None
    end = said.end
    if size is None:
        near = _nearest(lexemes, end)
        if near is not None:
            size, end = near
    return _rounded(lexemes, (start, end), number, said, size)


def _rounded(
    lexemes: Lexemes, span: tuple[int, int], number: Number, said: Number, size: Fraction | None
) -> Found:
    start, end = span
    if size is not None:
        right = _round(number.value, size)
        verdict: Verdict = "true" if right == said.value else "false"
        if verdict == "false" and goes_on(lexemes, said.end, symbol=False) and end == said.end:
            verdict = "undecided"
        return Found(start, end, verdict, write_value(right, "decimal"))
    sizes = [Fraction(10) ** power for power in range(-3, 7)]
    if any(_round(number.value, each) == said.value != number.value for each in sizes):
        return Found(start, end, "true", None)
    # True of no size at all: wrong however it was rounded.
    plain = number.style == said.style == "whole" and said.value not in (number.value, 0)
    plain = plain and any(text.startswith("round") for text in lexemes.texts[start:end])
    plain = plain and all(_round(number.value, each) != said.value for each in _ODD_SIZES)
    sure = plain and not goes_on(lexemes, end, symbol=False)
    return Found(start, end, "false" if sure else "undecided", None)


def _decimal_places(lexemes: Lexemes, at: int) -> tuple[Fraction, int] | None:
    """Read "1 decimal place", "two dp" as the size rounded to."""
    count = {"one": 1, "1": 1, "a": 1, "two": 2, "2": 2, "three": 3, "3": 3}.get(lexemes.text(at))
    if count is None:
        return None
    if lexemes.text(at + 1) == "decimal" and lexemes.text(at + 2) in ("place", "places"):
        return Fraction(1, 10**count), at + 3
    return (Fraction(1, 10**count), at + 2) if lexemes.text(at + 1) in ("dp", "d.p") else None


def _round(value: Fraction, size: Fraction) -> Fraction:
    """Round half up, as primary schools do."""
    return ((value / size + Fraction(1, 2)) // 1) * size


def _nearest(lexemes: Lexemes, at: int) -> tuple[Fraction, int] | None:
    at += lexemes.text(at) == "to"
    places = _decimal_places(lexemes, at)
    if places is not None:
        return places
    at += lexemes.text(at) == "the"
    if lexemes.text(at) not in _NEAREST:
        return None
    at += 1
    word = lexemes.text(at)
    if word == "whole":
        return Fraction(1), at + 1 + (lexemes.text(at + 1) == "number")
    if word in ("hundred", "thousand", "million", "ten", "one", "tenth", "hundredth", "tens"):
        return _WORDS[word].value, at + 1
    if word in ("hundreds", "thousands"):
        return _WORDS[word].value, at + 1
    number = read_number(lexemes, at)
    if number is None or number.value <= 0:
        return None
    return number.value, number.end
