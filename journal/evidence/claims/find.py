"""Find everything a child asserts about numbers, quantities and shapes, worked out exactly."""

from __future__ import annotations

from journal.evidence.claims.assertion import is_asserted
from journal.evidence.claims.lexing import Lexemes, read_lexemes
from journal.evidence.claims.statements import read_statement
from journal.evidence.claims.verdicts import Found
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.facts import load_number_words, load_shape_facts, load_units
from journal.records import Claim

_UNCOUNTED = frozenset(
    "times lots groups sets rows thats its equals makes gives gets adds minus plus ones".split()
)


def _triggers() -> frozenset[str]:
    words = set(load_number_words())
    words.update(name for name in load_units() if len(name) > 3)
    words.update(thing.split()[-1] for thing, _ in load_shape_facts())
    words.update(f"{thing.split()[-1]}s" for thing, _ in load_shape_facts())
    words -= {"one", "point", "past", "turn", "line"}
    return frozenset(words)


_TRIGGERS = _triggers()
_KNOWN = frozenset(load_number_words()) | frozenset(load_units())


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
        if token.tag == "NNS" and token.lower not in _KNOWN and token.lower not in _UNCOUNTED
    )
    lexemes = read_lexemes(working, nouns)
    claims = []
    for found in _find(lexemes):
        start, end = lexemes[found.start].start, lexemes[found.end - 1].end
        first, after = parse.offsets.to_original(start, end)
        if any(s.start < after and first < s.end for s in setting.excluded):
            continue
        if any(first <= at < after for at in parse.breaks):
            continue
        asserted = not found.other and is_asserted(lexemes, found)
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
    if any(digit in working for digit in "0123456789½¼¾"):
        return True
    return not _TRIGGERS.isdisjoint(token.lower for token in parse.tokens)


def _find(lexemes: Lexemes) -> list[Found]:
    found: list[Found] = []
    free_from = -1
    at = 0
    while at < len(lexemes):
        statement = read_statement(lexemes, at, free_from)
        if statement is not None:
            links, end = statement
            found.extend(links)
            at = free_from = end
        else:
            at += 1
    return found
