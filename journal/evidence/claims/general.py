"""General statements settled for good: odd and even, nought and one, kinds of shapes."""

from __future__ import annotations

import re
import tomllib
from functools import lru_cache
from typing import NamedTuple

from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.verdicts import Found
from journal.lexicon.facts import load_shape_facts
from journal.records import Verdict
from journal.resources import LEXICON

_LONGEST = 18
_SIDES = load_shape_facts()
_MORE = r"(?:(?:always|will|would|must|can|it|they|should|just|also|you|you'll|together|to) )*"
_IS = rf"{_MORE}(?:is|are|makes?|equals?|=|gives?|be|get|gets|got|have to be|has to be)(?: you)?"
_NOT = r"(?P<not> never| not|n't)?"
_ADD = r"add|plus|\+|and|added to|take away|minus|subtract|-"
_TIMES = r"times|x|×|multiplied by|lots of"
_NUMBER = r"(?: numbers?)?"
_PARITY = re.compile(
    rf"(?:(?:any|an|all) )?(?P<a>odd|even)s?{_NUMBER} (?P<by>{_ADD}|{_TIMES})"
    rf"(?: (?:any|an|another|any other))? (?P<b>odd|even)s?{_NUMBER} {_IS}{_NOT}(?: always)?"
    r"(?: an?)? (?P<said>odd|even)\b(?: numbers?)?"
)
_TWO = re.compile(
    rf"(?:any )?(?:two|2) (?P<a>odd|even)s?{_NUMBER}(?: (?:added|add))?(?: together)?"
    rf" (?:(?:{_IS})|{_MORE}adds? up to|{_MORE}add to){_NOT}(?: always)?"
    r"(?: an?)? (?P<said>odd|even)\b(?: numbers?)?"
)
_HEDGED = frozenset(("if", "unless", "when", "sometimes", "or", "except", "but"))


class _General(NamedTuple):
    facts: tuple[tuple[re.Pattern[str], Verdict], ...]
    kinds: dict[str, frozenset[str]]
    is_kind: re.Pattern[str]


@lru_cache(maxsize=1)
def load_general_facts() -> _General:
    """Return the patterns of general facts with their verdicts, and the kinds of shapes."""
    data = tomllib.loads((LEXICON / "general_facts.toml").read_text(encoding="utf-8"))
    words = data["words"]
    facts = tuple(
        (re.compile(rf"(?:{pattern.format(**words)})(?= |$)"), fact["verdict"])
        for fact in data["fact"]
        for pattern in fact["patterns"]
    )
    kinds = {name: frozenset(above) for name, above in data["kinds"].items()}
    names = "|".join(sorted({*kinds, *(above for each in kinds.values() for above in each)}))
    is_kind = re.compile(
        rf"(?:(?P<all>all|every|each|any|a|an) )?(?P<one>{names})(?:s|es)?"
        r" (?:(?:must|will|can) )?(?P<be>is|are|be|isn't|aren't|isnt|arent)(?P<not> not| never)?"
        r"(?P<only> always)?(?: also)?(?: (?:an?|types? of|kinds? of|special|sort of|all))*"
        rf" (?P<other>{names})(?:s|es)?(?= |$)"
    )
    return _General(facts, kinds, is_kind)


def read_general(lexemes: Lexemes, at: int) -> Found | None:
    """Read "odd add odd is even", "any number times 0 is 0", "every square is a rectangle".

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        Where the statement must begin.

    Returns
    -------
    Found or None
        Nothing is computed. A general statement that holds only for some is undecided.
    """
    spoken = " ".join(lexemes.texts[at : at + _LONGEST]).rstrip()
    parity = _PARITY.match(spoken) or _TWO.match(spoken)
    if parity is not None:
        return _found(lexemes, at, parity, _check_parity(parity))
    general = load_general_facts()
    for pattern, verdict in general.facts:
        fact = pattern.match(spoken)
        if fact is not None:
            return _found(lexemes, at, fact, verdict)
    kind = general.is_kind.match(spoken)
    return None if kind is None else _found(lexemes, at, kind, _check_kind(kind, general.kinds))


def _found(lexemes: Lexemes, at: int, matched: re.Match[str], verdict: Verdict) -> Found:
    end = at + matched.group().count(" ") + 1
    if lexemes.text(end) in _HEDGED and verdict == "false":
        verdict = "undecided"
    return Found(at, end, verdict)


def _check_parity(matched: re.Match[str]) -> Verdict:
    parts = matched.groupdict()
    odd_a, odd_b = parts["a"] == "odd", parts.get("b", parts["a"]) == "odd"
    multiplies = re.fullmatch(_TIMES, parts.get("by") or "") is not None
    odd = (odd_a and odd_b) if multiplies else odd_a != odd_b
    right = (parts["said"] == "odd") == odd
    return "true" if right != bool(parts["not"]) else "false"


def _check_kind(matched: re.Match[str], kinds: dict[str, frozenset[str]]) -> Verdict:
    one, other = matched["one"], matched["other"]
    negated = bool(matched["not"]) or matched["be"] not in ("is", "are", "be")
    if one in (other, "polygon"):
        return "undecided"
    if other in kinds.get(one, ()):
        return "false" if negated else "true"
    sides = _SIDES.get((one, "sides")), _SIDES.get((other, "sides"))
    if None not in sides and sides[0] != sides[1]:
        return "true" if negated else "false"
    # "a rectangle is a square": some are, so only "every" makes it wrong.
    whole = matched["all"] in ("all", "every", "each", "any") or matched["only"]
    return "false" if whole and not negated and one in kinds.get(other, ()) else "undecided"
