"""Measures worked out from given numbers: areas, perimeters, means, times of day."""

from __future__ import annotations

import re
from collections.abc import Callable
from fractions import Fraction

from journal.evidence.claims.contexts import goes_on
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import read_number
from journal.evidence.claims.values import write_value
from journal.evidence.claims.verdicts import Found
from journal.lexicon.facts import load_number_words
from journal.records import Verdict

_LONGEST = 24
_N = r"(\d[\d.]*)"
_UNIT = r"(?: (?P<u{}>cm|m|mm|km|centimetres?|metres?|squares?))?"
_IS = r" (?:is|=|equals|will be|would be|must be|was) "
_BOX = r"(?:rectangle|oblong|square|rectangular field|field|room|garden|shape|table|playground)"
_MY = r"(?:a|an|the|my|this|our|any)"
_RECTANGLE = re.compile(
    rf"(?:(?:the|an|a) )?(?P<what>area|perimeter) of {_MY} (?:{_N}{_UNIT.format(1)}"
    rf" (?:by|x|×) {_N}{_UNIT.format(2)}(?: {_BOX})?"
    rf"|(?:rectangle|oblong) (?:(?:that|which|with|is|of|sides|measuring|thats) )*"
    rf"{_N}{_UNIT.format(3)} (?:by|x|×|and) {_N}{_UNIT.format(4)}){_IS}"
)
_SQUARE = re.compile(
    rf"(?:(?:the|an|a) )?(?P<what>area|perimeter) of {_MY} square (?:with|that has|of|has)"
    rf"(?: (?:a|each|all))? (?:sides?(?: lengths?)?(?: (?:of|are|is|that are))? )?"
    rf"{_N}{_UNIT.format(1)}(?: sides?)?{_IS}"
)
_LIST = re.compile(
    r"(?:(?:the|a) )?(?P<what>mean|range|average)(?: average)? of"
    rf" (?P<list>{_N}(?: ,? ?(?:and )?{_N})+){_IS}"
)
_HOUR = r"(?P<hour>one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\d\d?)"
_CLOCK = re.compile(
    r"(?:a )?(?:(?P<part>half|quarter)|(?P<minutes>\d\d?|five|ten|twenty|twenty five)(?: minutes)?)"
    rf" (?P<side>past|to) {_HOUR}(?: o'clock)? (?:is|=|means|is the same as|would be)"
    r"(?: the same as)? (?P<said>\d\d?:\d\d)(?= |$)"
)
_SPAN = re.compile(
    r"(?:from )?(?P<start>\d\d?:\d\d) (?:to|until|till) (?P<end>\d\d?:\d\d)"
    rf" (?:is|=|takes|lasts|was) {_N} (?P<unit>minutes?|mins?|hours?)(?= |$)"
)
_HALF_DAY = 12 * 60


def read_measure(lexemes: Lexemes, at: int) -> Found | None:
    """Read "the area of a 4 by 6 rectangle is 24", "quarter past 7 is 7:15".

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        Where the statement must begin.

    Returns
    -------
    Found or None
        ``computed`` is the right measure or time.
    """
    spoken = " ".join(lexemes.texts[at : at + _LONGEST]).rstrip()
    for pattern, read in _READERS:
        matched = pattern.match(spoken)
        if matched is not None:
            return read(lexemes, at, matched)
    return None


def _length(matched: re.Match[str]) -> int:
    return len(matched.group().split())


def _told(
    lexemes: Lexemes, at: int, matched: re.Match[str], right: Fraction, unit: str = ""
) -> Found | None:
    end = at + _length(matched)
    number = read_number(lexemes, end)
    if number is None:
        return None
    after = lexemes.text(number.end)
    holds = number.value == right
    sure = not goes_on(lexemes, number.end, symbol=False) or after.startswith(
        ("square", "cm", "m", "centimetre", "metre", "unit")
    )
    # "5 cm sides": a result in metres or squares of another size is left to the teacher.
    sure = sure and not (unit and after in _LENGTHS and after != unit)
    verdict: Verdict = "true" if holds else "false" if sure else "undecided"
    return Found(at, number.end, verdict, write_value(right, "decimal"))


_LENGTHS = frozenset(("mm", "cm", "m", "km", "metres", "metre"))


def _rectangle(lexemes: Lexemes, at: int, matched: re.Match[str]) -> Found | None:
    sides = [Fraction(text) for text in matched.groups() if text and text[0].isdigit()]
    units = {matched[f"u{n}"] for n in range(1, 5)} - {None}
    if len(units) > 1:
        return None
    a, b = sides
    right = a * b if matched["what"] == "area" else 2 * (a + b)
    return _told(lexemes, at, matched, right, next(iter(units), ""))


def _square(lexemes: Lexemes, at: int, matched: re.Match[str]) -> Found | None:
    side = Fraction(matched[2])
    right = side * side if matched["what"] == "area" else 4 * side
    return _told(lexemes, at, matched, right, matched["u1"] or "")


def _listed(lexemes: Lexemes, at: int, matched: re.Match[str]) -> Found | None:
    numbers = [Fraction(text) for text in re.findall(r"\d[\d.]*", matched["list"])]
    if matched["what"] == "range":
        return _told(lexemes, at, matched, max(numbers) - min(numbers))
    found = _told(lexemes, at, matched, sum(numbers, Fraction(0)) / len(numbers))
    if found is not None and matched["what"] == "average" and found.verdict == "false":
        # A median or a mode may be meant.
        return Found(found.start, found.end, "undecided", found.computed)
    return found


def _minutes(time: str) -> int:
    hours, minutes = time.split(":")
    return int(hours) * 60 + int(minutes)


def _clock(lexemes: Lexemes, at: int, matched: re.Match[str]) -> Found | None:
    words = load_number_words()

    def value(text: str) -> int:
        return int(text) if text.isdigit() else int(sum(words[word].value for word in text.split()))

    past = {"half": 30, "quarter": 15}.get(matched["part"]) or value(matched["minutes"])
    time = value(matched["hour"]) * 60 + (past if matched["side"] == "past" else -past)
    right = (_minutes(matched["said"]) - time) % _HALF_DAY == 0
    hours, minutes = divmod(time % _HALF_DAY, 60)
    end = at + _length(matched)
    return Found(at, end, "true" if right else "false", f"{hours or 12}:{minutes:02}")


def _span(lexemes: Lexemes, at: int, matched: re.Match[str]) -> Found | None:
    took = (_minutes(matched["end"]) - _minutes(matched["start"])) % _HALF_DAY
    said = Fraction(matched[3]) * (60 if matched["unit"].startswith("hour") else 1)
    end = at + _length(matched)
    verdict: Verdict = "true" if (said - took) % _HALF_DAY == 0 else "false"
    if verdict == "false" and goes_on(lexemes, end, symbol=False):
        verdict = "undecided"
    return Found(at, end, verdict, f"{took} minutes")


_READERS: tuple[
    tuple[re.Pattern[str], Callable[[Lexemes, int, re.Match[str]], Found | None]], ...
] = (
    (_RECTANGLE, _rectangle),
    (_SQUARE, _square),
    (_LIST, _listed),
    (_CLOCK, _clock),
    (_SPAN, _span),
)
