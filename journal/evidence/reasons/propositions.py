"""What each clause says: a step told, a calculation, a judgement, a property, a feeling."""

from __future__ import annotations

import re
from collections.abc import Collection, Sequence
from dataclasses import dataclass

from journal.evidence.clauses import Clause, find_clauses, has_predicate
from journal.evidence.mathematics import Mathematics
from journal.evidence.reasons.stances import (
    OWN,
    is_bare,
    is_feeling,
    is_learning,
    is_rule,
    is_vouched,
)
from journal.language.parse import Parse, Token
from journal.lexicon.reasoning_words import load_reasoning_words

WORDS = load_reasoning_words()

_PERSON = frozenset(("i", "we", "me", "us"))
_OTHERS = frozenset(("he", "she", "they", "table", "everyone", "nobody"))
_STATES = WORDS["state"]
_BE_OR_HAVE = frozenset(("be", "have", "'s", "s", "its", "got"))
_PARTS = WORDS["part"]
_EMPTY = WORDS["empty"]
_SAME = {
    "small": "big",
    "smaller": "big",
    "bigger": "big",
    "little": "big",
    "large": "big",
    "great": "big",
    "low": "big",
    "high": "big",
    "few": "many",
    "less": "many",
    "more": "many",
    "short": "long",
    "tall": "long",
    "equivalent": "same",
    "equal": "same",
    "identical": "same",
}
_STOPS = frozenset(".,!?;:")
_CONTENT = frozenset(("NOUN", "PROPN", "ADJ", "VERB", "NUM", "SYM"))
_OPERATORS = frozenset("+-−×÷x*/<>")
_FRACTIONS = frozenset(("half", "quarter", "third", "fifth", "tenth"))
_CONDITIONS = frozenset(("if", "when", "whenever"))
_PROMPT_WORD = re.compile(r"[^\W_]+(?:[./][0-9]+)?")
_ASKS = re.compile(
    r"\b(why|explain|how (do|can|did) (you|we) (know|tell|see)|how are you sure|convince|prove"
    r"|justify|true or false|always|(is|was) \w+ (right|correct|wrong|true)|agree|mistake"
    r"|will|can|are|do|does)\b"
)
_CLAIMS = re.compile(
    r"\b(know (that|it)|explain why|why (is|are|do|does|did|can|has|must|will)|show that"
    r"|prove that|convince)\b"
)


@dataclass(frozen=True, slots=True)
class Proposition:
    """One clause with what its words say about it.

    Parameters
    ----------
    clause : Clause
        Where it stands.
    words, text, numbers : frozenset of str, str, int
        Its words in lower case, as a set and in order, and how many of them are numbers.
    core : int
        First token of what is said, after "I think" or "I knew that".
    verb : int or None
        The token that carries it.
    learned, told, feeling, vouched, bare : bool
        "I learned ..."; a step told; a feeling; somebody else's word; a guess or a bare knowing.
    learning, rule : bool
        A comment on own learning ("it helped me", strand B); a rule told from memory (R3).
    mathematical, calculation, judges, generic, lists_parts : bool
        Speaks of mathematics; only numbers and signs; says what something is or how it compares;
        about any such thing, in the present; names the parts of a shape.
    names : bool
        Holds a mathematical term or a relation.
    structure : int
        How many words state a property or a structure.
    content : frozenset of str
        What it speaks of, opposites and near words taken together.
    """

    clause: Clause
    words: frozenset[str]
    text: str
    numbers: int
    core: int
    verb: int | None
    learned: bool
    told: bool
    feeling: bool
    vouched: bool
    bare: bool
    learning: bool
    rule: bool
    mathematical: bool
    calculation: bool
    judges: bool
    generic: bool
    lists_parts: bool
    names: bool
    structure: int
    content: frozenset[str]

    @property
    def states(self) -> bool:
        """Whether it says that something is so, and is no step, feeling or word of another."""
        return (
            self.verb is not None
            and not self.told
            and not self.learned
            and not self.learning
            and not self.feeling
            and not self.vouched
            and not self.bare
        )

    @property
    def conditional(self) -> bool:
        """Whether it is the "if" or "when" of the clause after it."""
        return self.clause.joint in _CONDITIONS


@dataclass(frozen=True, slots=True)
class Page:
    """An entry as the finders of reasons see it: the parse and what its clauses say.

    ``asked`` says that the prompt asks for a reason, ``claims_in_prompt`` that it states what the
    reason is for, ``prompt`` holds its words.
    """

    parse: Parse
    mathematics: Mathematics
    propositions: list[Proposition]
    asked: bool = False
    claims_in_prompt: bool = False
    prompt: frozenset[str] = frozenset()

    def clause_at(self, token: int) -> int | None:
        """Return the position of the first clause at or after a token, None past the end."""
        for k, said in enumerate(self.propositions):
            if said.clause.after > token:
                return k
        return None


def read_page(
    parse: Parse,
    mathematics: Mathematics,
    joints: Collection[int] = (),
    prompt: str | None = None,
) -> Page:
    """Say of every clause of an entry what it says."""
    asked = frozenset(_PROMPT_WORD.findall(prompt.lower())) if prompt else frozenset()
    page = Page(
        parse,
        mathematics,
        [],
        asked=prompt is not None and _ASKS.search(prompt.lower()) is not None,
        claims_in_prompt=prompt is not None and _CLAIMS.search(prompt.lower()) is not None,
        prompt=asked,
    )
    before: Proposition | None = None
    heard: set[tuple[str, ...]] = set()
    for clause in find_clauses(parse, joints):
        words = [token.lower for token in parse.tokens[clause.first : clause.after]]
        said = tuple(word for word in words if word not in _STOPS)
        # What is said twice, word for word, is said once.
        if len(said) > 2 and said in heard:
            continue
        heard.add(said)
        before = _read_clause(parse, mathematics, clause, words, before)
        page.propositions.append(before)
    return page


def _read_clause(
    parse: Parse,
    mathematics: Mathematics,
    clause: Clause,
    words: list[str],
    before: Proposition | None,
) -> Proposition:
    tokens = parse.tokens
    core, opener = _find_core(tokens, clause)
    verb = next((i for i in range(core, clause.after) if has_predicate(tokens, i)), None)
    present = frozenset(words)
    inside = tokens[clause.first : clause.after]
    subject = tokens[core:verb] if verb is not None else ()
    told = _is_told(tokens, core, verb, clause, before)
    structure = len(present & WORDS["structure"])
    return Proposition(
        clause=clause,
        words=present,
        text=" ".join(words),
        numbers=sum(t.pos == "NUM" or t.text[0].isnumeric() for t in inside),
        core=core,
        verb=verb,
        learned=opener in ("learn", "revise", "practise")
        or (before is not None and before.learned and clause.joint == "and" and not told),
        told=told,
        feeling=is_feeling(tokens, clause, present),
        vouched=is_vouched(tokens, clause, present)
        or (told and tokens[verb or 0].lower == "had" and OWN.isdisjoint(present)),
        bare=is_bare(tokens, clause, present),
        learning=is_learning(present, words),
        rule=is_rule(tokens, core, verb, clause, present),
        mathematical=mathematics.any_in(clause.first, clause.after) or structure > 0,
        calculation=_is_calculation(words),
        judges=verb is not None and _judges(tokens, verb, clause.after),
        generic=verb is not None and _is_generic(subject, tokens[verb]),
        lists_parts=not present.isdisjoint(_PARTS)
        and (verb is None or tokens[verb].lemma in _BE_OR_HAVE or tokens[verb].lower == "its"),
        names=mathematics.any_in(clause.first, clause.after, "term", "relation"),
        structure=structure,
        content=_content(tokens, core, clause.after),
    )


def _find_core(tokens: Sequence[Token], clause: Clause) -> tuple[int, str | None]:
    """Step over "I think", "I knew that", "we can see", "I learned"."""
    i = clause.first
    while i < clause.after and tokens[i].pos in ("ADV", "INTJ", "CCONJ", "PUNCT"):
        i += 1
    if i == clause.after or tokens[i].lower not in ("i", "we", "you"):
        return clause.first, None
    for j in range(i + 1, min(i + 4, clause.after)):
        if tokens[j].lemma in WORDS["opens_clause"] or tokens[j].lower in WORDS["opens_clause"]:
            rest = range(j + 1, clause.after)
            if any(has_predicate(tokens, k) for k in rest):
                that = j + 1 < clause.after and tokens[j + 1].lower in ("that", "this")
                starts = j + 2 if that and j + 2 < clause.after else j + 1
                return starts, tokens[j].lemma
            return clause.first, tokens[j].lemma
    return clause.first, None


def _is_told(
    tokens: Sequence[Token],
    core: int,
    verb: int | None,
    clause: Clause,
    before: Proposition | None,
) -> bool:
    if verb is None:
        return False
    subject = {token.lower for token in tokens[core:verb]}
    lemma = tokens[verb].lemma
    if not subject.isdisjoint(_PERSON):
        if tokens[verb].lower in ("had", "was", "were"):
            return True
        return lemma not in _STATES or (lemma == "do" and tokens[verb].pos == "VERB")
    if tokens[verb].lower == "had" and not subject.isdisjoint(_OTHERS):
        return True
    if tokens[verb].tag not in ("VBD", "VB", "VBP") or lemma in _STATES:
        return False
    if any(token.pos in ("NOUN", "PRON", "NUM", "PROPN", "DET") for token in tokens[core:verb]):
        return False
    # "and got 24": the doer stands in the clause before; "counted in 5s" has none.
    return before.told if before is not None and "and" in clause.joints else True


def _is_calculation(words: Sequence[str]) -> bool:
    numbers = False
    if (
        words[0][0].isdigit()
        and (words[1:2] == ["%"] or not words[0].isdigit())
        and (
            not _FRACTIONS.isdisjoint(words) and _OPERATORS.isdisjoint(words) and "of" not in words
        )
    ):
        # "25% is a quarter" is a fact to work with.
        return False
    for word in words:
        if any(map(str.isdigit, word)):
            if (
                any(map(str.isalpha, word))
                and not word.endswith(("cm", "m", "km", "g", "kg", "ml", "l", "p", "mm"))
                and "x" not in word
            ):
                return False
            numbers = True
        elif word == "n't" or (word not in WORDS["calculation"] and word.isalpha()):
            return False
    return numbers


def _judges(tokens: Sequence[Token], verb: int, after: int) -> bool:
    for i in range(verb, after):
        token = tokens[i]
        if token.lower in WORDS["judgement"] or "=" in token.text:
            return True
        if token.lemma in WORDS["judgement"] and token.pos in ("NOUN", "ADJ"):
            return True
    return False


def _is_generic(subject: Sequence[Token], verb: Token) -> bool:
    if verb.tag in ("VBD", "VBN"):
        return False
    if not subject:
        return False
    words = [token.lower for token in subject]
    if words[0] in ("a", "an", "any", "every", "each", "all") or "you" in words:
        return True
    nouns = [token for token in subject if token.pos in ("NOUN", "VERB", "PROPN")]
    if not nouns:
        return False
    if words[0] == "the" and not {"a", "an", "any"}.isdisjoint(words):
        return True
    determined = words[0] in ("the", "this", "that", "these", "those", "my", "our", "both")
    plural = nouns[0].tag in ("NNS", "NNPS") and not any(t.pos == "NUM" for t in subject)
    return not determined and (plural or nouns[0].tag == "VBG" or words[0].endswith("ing"))


def _content(tokens: Sequence[Token], first: int, after: int) -> frozenset[str]:
    found = set()
    for token in tokens[first:after]:
        if (
            token.pos in _CONTENT
            or token.lower in WORDS["judgement"]
            or any(map(str.isdigit, token.text))
            or token.lower in _SAME
        ):
            if token.pos in ("PUNCT",):
                continue
            lemma = token.lemma.lower()
            lemma = _SAME.get(token.lower, _SAME.get(lemma, lemma))
            if lemma not in _EMPTY and (lemma[0].isalnum() or lemma in _OPERATORS):
                found.add(lemma)
    return frozenset(found)
