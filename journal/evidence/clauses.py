"""Clauses of a child's text, found by words as well as by the parse, so that run-ons come apart.

A parser trained on edited text reads "i know its even it ends in 8" as one sentence. Here a new
clause begins at punctuation, at a connective, and where a new subject with its verb follows a
clause that already has its own.
"""

from __future__ import annotations

from collections.abc import Collection, Sequence
from dataclasses import dataclass
from functools import lru_cache

from journal.language.parse import Parse, Token
from journal.lexicon.reasoning_words import load_reasoning_words

WORDS = load_reasoning_words()


@dataclass(frozen=True, slots=True)
class Clause:
    """A stretch of tokens that says one thing.

    Parameters
    ----------
    first, after : int
        First token and one past the last, without the joint and without closing punctuation.
    joints : tuple of str
        What joins it to the clause before: punctuation and connectives in lower case, ``"."`` at
        the start of a sentence; empty where a run-on simply goes on.
    predicate : bool
        Whether it has a verb or an equals sign of its own.
    """

    first: int
    after: int
    joints: tuple[str, ...]
    predicate: bool

    @property
    def joint(self) -> str:
        """The last joint, which says most, or ``""``."""
        return self.joints[-1] if self.joints else ""

    @property
    def opens_sentence(self) -> bool:
        """Whether a sentence begins here."""
        return "." in self.joints


_STOPS = frozenset(".!?")
_BREAKS = frozenset([":", ";", "(", ")", "–", "—", "...", "…", "->", "=>", "→", "..", "--"])
_ALWAYS = WORDS["joins_always"]
_JOINS_ANYWAY = _BREAKS | _ALWAYS
_WITH_VERB = WORDS["joins_with_verb"]
_TAKEN_FOR_NOUN = frozenset(("ends", "means", "makes", "goes", "fits", "beats", "works", "equals"))
_FINITE = frozenset(("VB", "VBP", "VBZ", "VBD", "MD"))
_PRONOUNS = WORDS["subject_pronoun"]
_WITH_VERB_INSIDE = WORDS["verb_inside"]
_OPENING_POS = frozenset(("DET", "NUM", "PRON", "ADJ"))
_RELATIONS = frozenset("=<>")
_HOLDING_POS = frozenset(("ADP", "DET", "AUX", "CCONJ", "SCONJ", "PART"))
_HOLDING = WORDS["holds_on"]
_OPENS = WORDS["opens_clause"]


def has_predicate(tokens: Sequence[Token], i: int) -> bool:
    """Say whether a token can carry a clause: a finite verb, "its" for "it's", an equals sign."""
    token = tokens[i]
    if token.tag in _FINITE and token.pos in ("VERB", "AUX"):
        # An infinitive is carried by the verb before it.
        return not (token.tag == "VB" and i and tokens[i - 1].lower == "to")
    word = token.lower
    if word in _WITH_VERB_INSIDE:
        return word != "its" or _its_is_it_is(tokens, i)
    if word == "your":
        # "your cutting it up more": you are.
        return i + 1 < len(tokens) and tokens[i + 1].lower.endswith("ing")
    if word in _TAKEN_FOR_NOUN and i:
        before = tokens[i - 1]
        return before.lower in _PRONOUNS or before.pos == "NUM"
    return not token.lower.isalpha() and not _RELATIONS.isdisjoint(token.text)


def _its_is_it_is(tokens: Sequence[Token], i: int) -> bool:
    if i + 1 == len(tokens):
        return False
    after = tokens[i + 1]
    return after.pos not in ("NOUN", "PROPN") or after.lower in WORDS["judgement"]


def find_clauses(parse: Parse, joints: Collection[int] = ()) -> list[Clause]:
    """Split an entry into clauses.

    Parameters
    ----------
    parse : Parse
        The entry.
    joints : collection of int
        Tokens known to join clauses (such as markers of reasons), whatever follows them.

    Returns
    -------
    list of Clause
        In order; tokens that only join or punctuate belong to none. Nothing crosses an adult's
        prompt, which ends a sentence.
    """
    return _split(parse, frozenset(joints))


# Several rooms ask for the clauses of the entry in hand.
@lru_cache(maxsize=8)
def _split(parse: Parse, joints: frozenset[int]) -> list[Clause]:
    tokens = parse.tokens
    carries = _find_carriers(parse)
    clauses: list[Clause] = []
    first = sentence = 0
    pending: tuple[str, ...] = (".",)
    for i, token in enumerate(tokens):
        word = token.lower
        if token.sentence != sentence:
            sentence = token.sentence
            # Without a stop or a capital the parser only guesses that a sentence begins.
            stop = (".",) if _opens_sentence(tokens, i) else ()
            pending = (*_close(clauses, carries, first, i, pending), *stop)
            first = i
        if word in _STOPS:
            pending = (*_close(clauses, carries, first, i, pending), ".")
            first = i + 1
        elif (
            i in joints
            or word in _JOINS_ANYWAY
            or (word in _WITH_VERB and _joins(tokens, carries, first, i))
        ):
            pending = (*_close(clauses, carries, first, i, pending), word)
            first = i + 1
        elif (
            i > first
            and (word in _PRONOUNS or carries[i] or token.pos in _OPENING_POS)
            and _starts_anew(tokens, carries, first, i)
        ):
            pending = _close(clauses, carries, first, i, pending)
            first = i
    _close(clauses, carries, first, len(tokens), pending)
    return clauses


@lru_cache(maxsize=8)
def _find_carriers(parse: Parse) -> list[bool]:
    return [has_predicate(parse.tokens, i) for i in range(len(parse.tokens))]


def _close(
    clauses: list[Clause],
    carries: list[bool],
    first: int,
    after: int,
    pending: tuple[str, ...],
) -> tuple[str, ...]:
    """Add the clause that ends here and return the joints that still wait for one."""
    if first == after:
        return pending
    clauses.append(Clause(first, after, pending, any(carries[first:after])))
    return ()


def _opens_sentence(tokens: Sequence[Token], i: int) -> bool:
    text = tokens[i].text
    return tokens[i - 1].text[-1] in _STOPS or (text[0].isupper() and text != "I")


def _joins(tokens: Sequence[Token], carries: list[bool], first: int, i: int) -> bool:
    """Whether "and", "so", a comma ... stands between two clauses, not inside one."""
    word = tokens[i].lower
    if word == "so" and i + 1 < len(tokens) and tokens[i + 1].pos in ("ADJ", "ADV"):
        return tokens[i + 1].lower in ("now", "then", "both", "all", "half", "each", "double")
    if word == "-" and _is_number(tokens[i - 1]):
        return False
    begins_second = word in ("when", "if", "since", "while", "until", "whenever", "so")
    if not begins_second and first < i and not any(carries[first:i]):
        return False
    if (
        word == "and"
        and i + 1 < len(tokens)
        and _is_number(tokens[i - 1])
        and _is_number(tokens[i + 1])
        and not any(carries[j] and tokens[j].lower not in _OPENS for j in range(first, i))
    ):
        # "I know 6 and 4 makes 10"
        return False
    for j in range(i + 1, min(len(tokens), i + 12)):
        following = tokens[j].lower
        if carries[j]:
            return True
        if following in _STOPS or following in _BREAKS:
            return False
        if (
            following == "and"
            and _is_number(tokens[j - 1])
            and _is_number(tokens[min(j + 1, len(tokens) - 1)])
        ):
            continue
        if following in _WITH_VERB or following in _ALWAYS:
            # "and because", "so when": the two joints stand together.
            return j == i + 1
    return False


def _starts_anew(tokens: Sequence[Token], carries: list[bool], first: int, i: int) -> bool:
    """Whether a new subject with its verb starts here, with no word to join it."""
    before = tokens[i - 1]
    if before.pos in _HOLDING_POS or before.lower in _HOLDING:
        return False
    if before.lower in _OPENS or before.lemma in _OPENS or not any(carries[first:i]):
        return False
    token = tokens[i]
    if token.tag == "IN":
        return False
    if carries[i] and token.lower in _WITH_VERB_INSIDE:
        return True
    if token.lower in ("it", "them") and i + 1 < len(tokens) and tokens[i + 1].pos == "DET":
        # "when you fold it the sides match": an object.
        return False
    if token.lower in _PRONOUNS:
        verb = _verb_within(carries, i, 3)
    elif token.pos in ("DET", "NUM") or token.lower in ("both", "all", "every", "each"):
        # "the" after a verb opens its object: "it is the same".
        verb = None if before.pos in ("VERB", "AUX") else _verb_within(carries, i, 5)
    else:
        return False
    if verb is None:
        return False
    between = tokens[i + 1 : verb]
    if any(t.lower in _HOLDING or t.pos == "PUNCT" for t in between):
        return False
    # "the number you multiply by": a relative clause belongs to its noun.
    relative = tokens[verb].dep == "relcl" and tokens[verb].head < i and before.pos == "NOUN"
    return not relative or token.lower in ("it", "its", "they")


def _is_number(token: Token) -> bool:
    return token.pos == "NUM" or any(map(str.isdigit, token.text))


def _verb_within(carries: list[bool], i: int, reach: int) -> int | None:
    for j in range(i + 1, min(len(carries), i + 1 + reach)):
        if carries[j]:
            return j
    return None
