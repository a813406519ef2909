"""What joins two sides: equals, makes, is bigger than, is not, and got."""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Literal, TypeAlias

from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.phrases import Phrases
from journal.lexicon.facts import load_claim_words

RelationKind: TypeAlias = Literal["equal", "more", "less", "between"]

_VERBS = load_claim_words()["equal verbs"]
_BE = frozenset(("is", "are", "was", "were", "be", "isnt", "isn't", "aren't", "arent", "wasn't"))
_PHRASES = Phrases(
    (phrase, phrase)
    for phrase in (
        "comes to",
        "came to",
        "come to",
        "adds up to",
        "add up to",
        "added up to",
        "adds to",
        "adds to make",
        "works out as",
        "comes out as",
        "equals to",
        "equal to",
        "goes to",
        "simplifies to",
        "simplifies down to",
        "simplified to",
        "simplified is",
        "simplified down to",
        "simplified down is",
        "can be simplified to",
        "cancels to",
        "cancels down to",
        "converts to",
        "reduces to",
        "turns into",
    )
)
_MODALS = load_claim_words()["auxiliaries"]
_NEGATIVES = load_claim_words()["negatives"]
_LEADS = load_claim_words()["leads"]
_CLOSED_LEADS = {"that's": "is", "it's": "is", "thats": "is", "its": "is", "which's": "is"}
_FILLERS = load_claim_words()["fillers"]
_ABOUT = load_claim_words()["about"]
_MORE = load_claim_words()["more"]
_LESS = load_claim_words()["less"]
_OTHERS = frozenset(("he", "she", "they"))
_SYMBOLS: dict[str, RelationKind] = {"=": "equal", ">": "more", "<": "less"}
_THAN: dict[str, RelationKind] = {
    "over": "more",
    "above": "more",
    "under": "less",
    "below": "less",
}
_TELLERS = frozenset(("i", "you", "we"))
_LONGEST_LEAD = 6


@dataclass(frozen=True, slots=True)
class Relation:
    """What joins two sides.

    Parameters
    ----------
    kind : str
        ``equal``, ``more``, ``less`` or ``between``.
    end : int
        One past its last lexeme.
    negated : bool
        "is not", "doesn't make".
    symbol : bool
        Written "=", ">" or "<".
    weak : bool
        The result is told in another clause ("and got", "then it was"): the two need not belong
        together.
    about : bool
        An estimate ("is about").
    other : bool
        Someone else's result ("and he got").
    same : bool
        Said to be the same, or equality is allowed beside the comparison.
    gets, makes : bool
        The verb is "get" or "got"; "makes", "equals" or "adds up to".
    told : bool
        Joined by a pronoun or a comma ("it is", ", and this is").
    """

    kind: RelationKind
    end: int
    negated: bool = False
    symbol: bool = False
    weak: bool = False
    about: bool = False
    other: bool = False
    same: bool = False
    gets: bool = False
    makes: bool = False
    told: bool = False


def read_relation(lexemes: Lexemes, at: int) -> Relation | None:
    """Read a relation that begins at a lexeme.

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        The lexeme after the left side.

    Returns
    -------
    Relation or None
        None where the left side is not followed by one.
    """
    text = lexemes.text(at)
    if text in _SYMBOLS:
        return _symbol(lexemes, at)
    if text == "≠":
        return Relation("equal", at + 1, negated=True, symbol=True)
    if text in ("≈", "~"):
        return Relation("equal", at + 1, about=True, symbol=True)
    lead = at
    verb = ""
    while lead - at < _LONGEST_LEAD and lexemes.text(lead) in _LEADS:
        verb = _CLOSED_LEADS.get(lexemes.text(lead), "")
        lead += 1
        if verb:
            break
    leads = lexemes.texts[at:lead]
    weak = ("then" in leads and not _TELLERS & set(leads)) or not _OTHERS.isdisjoint(leads)
    weak = weak or ({",", "and"} <= set(leads) and not {"i", "you", "we"} & set(leads))
    told = lead > at and leads[0] not in ("which", "that", "that's", "thats", "altogether", "also")
    other = not _OTHERS.isdisjoint(leads)
    if lexemes.text(lead) in _SYMBOLS and lead > at and not weak:
        return _symbol(lexemes, lead)
    negated = False
    end = lead
    if not verb:
        while lexemes.text(end) in _MODALS:
            negated = negated or lexemes.text(end) in _NEGATIVES
            end += 1
            if lexemes.text(end) in ("to", "not", "never", "always", "n't", "just", "also"):
                negated = negated or lexemes.text(end) in ("not", "never")
                end += 1
        word = lexemes.text(end)
        phrase = _PHRASES.match(lexemes, end)
        if phrase is not None:
            verb, end = phrase
        elif word in _VERBS or word == "be":
            verb = word
            negated = negated or word in _NEGATIVES
            end += 1
            if verb in _BE and lexemes.text(end) in ("equals", "equal", "made", "makes"):
                end += 1
        else:
            return None
    found = _predicate(lexemes, end, verb, negated=negated, weak=weak, other=other)
    return replace(found, told=True) if told and found is not None else found


def _symbol(lexemes: Lexemes, at: int) -> Relation:
    kind = _SYMBOLS[lexemes.text(at)]
    end = at + 1
    same = False
    if kind != "equal" and lexemes.text(end) == "=":
        same, end = True, end + 1
    elif lexemes.text(end) in (">", "=") and kind == "equal":
        end += 1
    about = lexemes.text(end) in _ABOUT
    return Relation(kind, end + about, symbol=True, about=about, same=same)


def _predicate(
    lexemes: Lexemes, end: int, verb: str, *, negated: bool, weak: bool, other: bool
) -> Relation | None:
    about = False
    same = False
    be = verb in _BE
    while True:
        word = lexemes.text(end)
        if word in ("not", "never", "n't"):
            negated = True
        elif word in _ABOUT:
            about = True
        elif word == "=" or word in _FILLERS:
            same = same or word in ("same", "equal", "equivalent")
            # "a" may open the right side: "a half", "a metre".
            if word in ("a", "an", "the") and lexemes.text(end + 1) not in (
                "same",
                "answer",
                "total",
            ):
                break
        else:
            break
        end += 1
    word = lexemes.text(end)
    if be and (word in _MORE or word in _LESS) and lexemes.text(end + 1) == "than":
        kind: RelationKind = "more" if word in _MORE else "less"
        end += 2
        or_equal = lexemes.follows(end, "or", "equal", "to")
        end += 3 if or_equal else 0
        return Relation(kind, end, negated, False, weak, about, other, or_equal)
    if be and word in _THAN:
        return Relation(_THAN[word], end + 1, negated, False, weak, about, other)
    if be and (word in _MORE or word in _LESS):
        return None
    if be and (word == "between" or lexemes.follows(end, "in", "between")):
        return Relation("between", end + (2 if word == "in" else 1), negated, other=other)
    if verb == "got" and lexemes.text(end - 1) == "to":
        # "and then I got to twelve" counts.
        weak = True
    gets = verb in ("get", "gets", "got", "getting")
    makes = verb in ("makes", "make", "made", "equals", "equal") or "add" in verb
    return Relation("equal", end, negated, False, weak, about, other, same, gets, makes)
