"""Find everything a child asserts about numbers, quantities and shapes, worked out exactly."""

from __future__ import annotations

import re

from journal.evidence.claims.assertion import is_asserted, is_supposed, sentence_end
from journal.evidence.claims.contents import read_contents
from journal.evidence.claims.expressions import read_side
from journal.evidence.claims.factors import read_factor_list
from journal.evidence.claims.general import read_general
from journal.evidence.claims.lexing import Lexemes, read_lexemes
from journal.evidence.claims.measures import read_measure
from journal.evidence.claims.phrases import load_operation_words
from journal.evidence.claims.place_value import read_digit_value, read_places, read_rounding
from journal.evidence.claims.properties import read_property
from journal.evidence.claims.shapes import (
    SHAPE_STARTS,
    last_part,
    read_angle_sum,
    read_parts,
    read_right_angles,
    starts_shape,
)
from journal.evidence.claims.statements import read_carried, read_statement
from journal.evidence.claims.verdicts import Found
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.facts import load_claim_words, load_number_words, load_shape_facts, load_units
from journal.records import Claim

_UNCOUNTED = load_claim_words()["uncounted"]


def _triggers() -> frozenset[str]:
    words = set(load_number_words())
    words.update(name for name in load_units() if len(name) > 3)
    words.update(thing.split()[-1] for thing, _ in load_shape_facts())
    words.update(f"{thing.split()[-1]}s" for thing, _ in load_shape_facts())
    words.update(("odd", "even", "odds", "evens", "multiplying", "dividing", "multiplication"))
    words.update(("multiply", "divide", "division", "prime", "primes", "timesing"))
    words -= {"one", "point", "past", "turn", "line"}
    return frozenset(words)


_LISTS = load_claim_words()
_SIGNS = frozenset("=<>≠≈")
_ROUNDING = frozenset(("to", "rounds", "rounded", "round", "is", "would", "will", "goes", "from"))
# What may follow the first side of a statement.
_FOLLOW = (
    frozenset(name for each in ("leads", "equal verbs", "auxiliaries") for name in _LISTS[each])
    | _LISTS["property verbs"]
    | _SIGNS
    | _ROUNDING
    | frozenset(("comes", "came", "come", "adds", "add", "added", "works", "or", "in", "both"))
    | frozenset(("always", "had", "~", ">", "gives", "between", "out"))
    | frozenset(("simplifies", "simplified", "cancels", "converts", "reduces", "turns"))
)
_NUMERAL = re.compile(r"[\d½¼¾⅓⅔⅕⅛]")
# Without any of these words or signs nothing is claimed.
_LINKS = frozenset(
    (
        *load_claim_words()["equal verbs"],
        *load_claim_words()["property verbs"],
        *("comes", "come", "came", "adds", "add", "added", "works", "thats", "its", "there"),
        *("means", "stands", "represents", "measures", "had", "havent", "hasnt", "round"),
        *("rounds", "rounded", "equal", "total", "simplifies", "simplified", "cancels"),
        *("converts", "reduces", "turns", "stays", "lasts"),
    )
)
_TRIGGERS = _triggers()
_STATING = (_FOLLOW | _LINKS) - _LISTS["not stating"]
_LONGEST = 30
_STARTS = (
    frozenset(load_number_words())
    | frozenset(first for phrases in load_operation_words().values() for first in phrases.firsts())
    | frozenset(
        (
            "a",
            "an",
            "the",
            "in",
            "there",
            "theres",
            "there's",
            "angles",
            "factors",
            "multiples",
            "every",
            "all",
        )
    )
    | frozenset(("each", "any", "round", "rounded", "rounding", "negative", "point"))
    | SHAPE_STARTS
    | frozenset(("(", "£", "-", "–", "?", "_", "□", "√", "root"))
)
_SMALL = frozenset(("a", "an", "the", "in", "all", "every", "any", "each", "there", "some"))
_AFTER_SMALL = (_STARTS - _SMALL - load_claim_words()["property verbs"]) | frozenset(
    (*load_units(), "are", "is", "digit", "difference", "product", "sum", "total", "the")
)
_GENERAL = _LISTS["general starts"]
_MEASURES = _LISTS["measure starts"]
_STARTS |= _GENERAL | _MEASURES
_AFTER_SMALL |= _LISTS["general seconds"]
_NOT_COUNTED = _UNCOUNTED | _LINKS | frozenset(load_number_words()) | frozenset(load_units())


def find_claims(parse: Parse, setting: Setting) -> list[Claim]:
    """Return the statements that can be worked out, with a verdict on each.

    Parameters
    ----------
    parse : Parse
        Of the entry; the corrected text decides, offsets are of the original.
    setting : Setting
        What was set; stretches that are not the child's own are left out.

    Returns
    -------
    list of Claim
        Sorted by start, none central yet. ``computed`` is the right value of what is worked out
        (of an equality, a fact, a place value or a rounding), None where nothing is.
    """
    working = parse.working
    if not _may_claim(parse):
        return []
    nouns = frozenset(
        token.lower
        for token in parse.tokens
        if token.tag == "NNS" and token.lower.isalpha() and token.lower not in _NOT_COUNTED
    )
    lexemes = read_lexemes(working, nouns)
    claims = []
    supposed_until = -1
    for found in _find(lexemes):
        start, end = lexemes.item(found.start).start, lexemes.item(found.end - 1).end
        first, after = parse.offsets.to_original(start, end)
        if any(s.start < after and first < s.end for s in setting.excluded):
            continue
        if any(first <= at < after for at in parse.breaks):
            continue
        asserted = not found.other and is_asserted(lexemes, found)
        if is_supposed(lexemes, found) and found.verdict == "false":
            supposed_until = sentence_end(lexemes, found.end)
        asserted = asserted and found.start >= supposed_until
        claims.append(
            Claim(
                first,
                after,
                parse.text[first:after],
                found.verdict,
                asserted,
                False,
                found.computed,
            )
        )
    claims.sort(key=lambda claim: (claim.start, claim.end))
    return claims


def _may_claim(parse: Parse) -> bool:
    working = parse.working
    words = {token.lower for token in parse.tokens}
    if _NUMERAL.search(working) is None and _TRIGGERS.isdisjoint(words):
        return False
    return not _LINKS.isdisjoint(words) or not _SIGNS.isdisjoint(working)


def _may_start(lexemes: Lexemes, at: int) -> bool:
    text = lexemes.text(at)
    if text in _SMALL:
        return lexemes.item(at + 1).kind == "numeral" or lexemes.text(at + 1) in _AFTER_SMALL
    return text in _STARTS


def _find(lexemes: Lexemes) -> list[Found]:
    found: list[Found] = []
    free_from = -10
    at = 0
    general = not _LISTS["general words"].isdisjoint(lexemes.texts)
    # Nothing is stated without a verb or sign somewhat later.
    verbs = [place for place, text in enumerate(lexemes.texts) if text in _STATING]
    verbs.append(len(lexemes) + _LONGEST)
    while at < len(lexemes):
        while verbs[0] <= at:
            del verbs[0]
        if verbs[0] - at >= _LONGEST:
            at += 1
            continue
        lexeme = lexemes.item(at)
        if lexeme.kind not in ("numeral", "barrier") and not _may_start(lexemes, at):
            at += 1
            continue
        near = found and at - free_from <= 5
        carried = read_carried(lexemes, at, found[-1]) if near else None
        if carried is not None:
            read: tuple[list[Found], int] | None = ([carried], carried.end)
        else:
            read = _read(lexemes, at, free_from, general=general)
        if read is None:
            at += 1
            continue
        links, end = read
        found.extend(links)
        last = _said_of_result(lexemes, links[-1], end)
        if last is not None:
            found.append(last)
            end = max(end, last.end)
        at = free_from = end
    return found


def _read(
    lexemes: Lexemes, at: int, free_from: int, *, general: bool
) -> tuple[list[Found], int] | None:
    """Read what begins at a lexeme; the more special kinds of statement first."""
    text = lexemes.text(at)
    one: Found | None = None
    if text in ("the", "in"):
        one = read_digit_value(lexemes, at)
    elif text == "angles":
        one = read_angle_sum(lexemes, at)
    elif text in ("factors", "multiples"):
        one = read_factor_list(lexemes, at)
    elif text.startswith("round"):
        one = read_rounding(lexemes, at)
    elif lexemes.texts[at + 1 : at + 3] == ["right", "angles"]:
        one = read_right_angles(lexemes, at)
    if one is None and general and text in _GENERAL:
        one = read_general(lexemes, at)
    if one is None and (text in _MEASURES or lexemes.item(at).kind in ("numeral", "barrier")):
        one = read_measure(lexemes, at)
    if one is None and starts_shape(lexemes, at):
        same = None
        if 0 < free_from < at <= free_from + 3:
            same = last_part(lexemes, free_from)
        parts = read_parts(lexemes, at, same)
        if parts is not None:
            return parts
    if one is not None:
        return [one], one.end
    if text in ("each", "every") and one is None:
        one = read_contents(lexemes, at)
        if one is not None:
            return [one], one.end
    if text.startswith("there"):
        one = read_contents(lexemes, at)
        return None if one is None else ([one], one.end)
    side = read_side(lexemes, at)
    if side is None:
        return None
    after = lexemes.text(side.end)
    if after not in _FOLLOW:
        return None
    if not side.doubt or lexemes.item(at).kind == "numeral":
        if after in ("in", "has", "have"):
            one = read_contents(lexemes, at, free_from) or read_places(lexemes, at, free_from)
        elif after in _ROUNDING:
            one = read_rounding(lexemes, at)
    one = one or read_property(lexemes, at, free_from)
    if one is not None:
        return [one], one.end
    return read_statement(lexemes, side, free_from)


def _said_of_result(lexemes: Lexemes, link: Found, end: int) -> Found | None:
    """Read "which is even" after a result."""
    if link.verdict == "undecided" or lexemes.text(end) not in ("which", "and", ","):
        return None
    if lexemes.text(end + 1) not in ("is", "which") or lexemes.item(end - 1).kind != "numeral":
        return None
    return read_property(lexemes, end - 1, end - 1)
