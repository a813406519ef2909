"""Which tokens speak of mathematics: quantities, terms, operations, relations, representations."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Literal, TypeAlias

from journal.language.parse import Parse, Token
from journal.lexicon.kinds import load_kinds
from journal.records import Claim, InformalUse, VocabularyUse

MathematicsKind: TypeAlias = Literal["quantity", "term", "operation", "relation", "representation"]
Words: TypeAlias = Mapping[str, frozenset[str]]

_SIGNS: Mapping[str, MathematicsKind] = {
    **dict.fromkeys("+-−–×÷*/", "operation"),
    **dict.fromkeys(("=", "<", ">", "≠", "≈", "≤", "≥"), "relation"),
}
_REACH = 5
_SMALL_WORDS = frozenset(("DET", "ADP", "PRON", "SCONJ", "CCONJ", "AUX", "PUNCT"))
_PARTED = frozenset(
    ("one", "each", "every", "this", "equal", "same", "bigger", "smaller", "different", "no", "of")
)
_POINTING = frozenset(
    [
        "this",
        "that",
        "the",
        "which",
        "each",
        "every",
        "another",
        "first",
        "next",
        "last",
        "other",
        "hard",
        "easy",
        "easier",
        "harder",
        "good",
        "any",
        "no",
        "some",
        "these",
        "those",
        "my",
        "your",
        "wrong",
        "right",
        "same",
        "different",
        "new",
        "only",
        "big",
        "little",
    ]
)


@dataclass(frozen=True, slots=True)
class Mathematics:
    """What kind of mathematics each token of a parse speaks of, if any.

    Parameters
    ----------
    kinds : sequence of str or None
        One for each token of the parse.
    """

    kinds: Sequence[MathematicsKind | None]

    def any_in(self, first: int, after: int, *kinds: MathematicsKind) -> bool:
        """Say whether ``tokens[first:after]`` hold mathematics (of the given kinds)."""
        for kind in self.kinds[first:after]:
            if kind is not None and (not kinds or kind in kinds):
                return True
        return False

    def first_in(self, first: int, after: int, *kinds: MathematicsKind) -> int | None:
        """Return the first token of ``tokens[first:after]`` that is mathematics, or None."""
        for at in range(first, min(after, len(self.kinds))):
            kind = self.kinds[at]
            if kind is not None and (not kinds or kind in kinds):
                return at
        return None

    def count_in(self, first: int, after: int) -> int:
        """Return how many of ``tokens[first:after]`` are mathematics."""
        return sum(kind is not None for kind in self.kinds[first:after])


def find_mathematics(
    parse: Parse,
    vocabulary: Sequence[VocabularyUse],
    informal: Sequence[InformalUse],
    claims: Sequence[Claim],
) -> Mathematics:
    """Say for each token what kind of mathematics it speaks of.

    Parameters
    ----------
    parse : Parse
        The entry.
    vocabulary, informal, claims
        What the finders before this one found; everyday uses of a term are no mathematics.

    Returns
    -------
    Mathematics
        The words for the subject itself ("maths", "sums", "question") and numbers that count
        people or pages are none (rubric A1: beyond the word maths or a title).
    """
    words = load_kinds()
    kinds: list[MathematicsKind | None] = [None] * len(parse)
    everyday = _mark_vocabulary(parse, vocabulary, words, kinds)
    _mark_informal(parse, informal, words, kinds)
    listed = _listed_words()
    spoken = [token for token in parse.tokens if token.lower in listed or not token.lower.isalpha()]
    _mark_quantities(parse, spoken, words, kinds, everyday)
    _mark_claims(parse, claims, kinds)
    _mark_by_company(parse, spoken, words, kinds, everyday)
    _mark_comparisons(parse, spoken, words, kinds)
    return Mathematics(kinds)


@lru_cache(maxsize=1)
def _listed_words() -> frozenset[str]:
    # All that can be mathematics by itself or by its company.
    words = load_kinds()
    kinds = ("number", "unit", "fraction", "relation", "representation", "operation")
    more = ("operation_on", "thing", "parting", "shape_like")
    return frozenset({"one", "each", "many", "much"}.union(*(words[k] for k in (*kinds, *more))))


def _mark_vocabulary(
    parse: Parse,
    vocabulary: Sequence[VocabularyUse],
    words: Words,
    kinds: list[MathematicsKind | None],
) -> set[int]:
    everyday: set[int] = set()
    for use in vocabulary:
        first, after = parse.tokens_in(use.start, use.end)
        if use.sense == "everyday":
            everyday.update(range(first, after))
        elif use.term.lower() in words["about"] or use.term.lower() in words["subject"]:
            continue
        elif use.sense == "mathematical" or use.counted:
            for at in range(first, after):
                kinds[at] = _kind_of(parse.tokens[at].lower, use.term.lower(), words)
    return everyday


def _kind_of(word: str, term: str, words: Words) -> MathematicsKind:
    if word in _SIGNS:
        return _SIGNS[word]
    if word == "one" or any(word in words[k] for k in ("fraction", "unit", "number")):
        return "quantity"
    for name in (word, term):
        if name in words["operation"] or name in words["operation_on"]:
            return "operation"
        if name in words["relation"]:
            return "relation"
        if name in words["representation"]:
            return "representation"
    return "term"


def _mark_informal(
    parse: Parse,
    informal: Sequence[InformalUse],
    words: Words,
    kinds: list[MathematicsKind | None],
) -> None:
    for use in informal:
        formal = use.formal.split()[0].lower()
        if formal in words["about"] or formal in ("because", "strategy", "calculations"):
            continue
        kind: MathematicsKind = "operation" if formal in words["operation"] else "term"
        first, after = parse.tokens_in(use.start, use.end)
        for at in range(first, after):
            if after == first + 1 or parse.tokens[at].pos not in _SMALL_WORDS:
                kinds[at] = kind


def _mark_quantities(
    parse: Parse,
    spoken: Sequence[Token],
    words: Words,
    kinds: list[MathematicsKind | None],
    everyday: set[int],
) -> None:
    tokens = parse.tokens
    numbers, units, fractions = words["number"], words["unit"], words["fraction"]
    for token in spoken:
        at = token.index
        word = token.lower
        if kinds[at] is not None or at in everyday:
            continue
        if word in numbers or word.lstrip("-−–")[:1].isnumeric():
            if not _counts_everyday_things(tokens, at, words):
                kinds[at] = "quantity"
        elif word == "one":
            if _is_number_one(tokens, at, words, kinds):
                kinds[at] = "quantity"
        elif word in _SIGNS:
            if _beside_quantity(tokens, at, numbers):
                kinds[at] = _SIGNS[word]
        elif word in units:
            if at and (kinds[at - 1] == "quantity" or tokens[at - 1].lower in numbers):
                kinds[at] = "quantity"
        elif (
            word in fractions and _stands_alone(tokens, at) and tokens[at - 1].lower in ("a", "one")
        ):
            kinds[at] = "quantity"


def _stands_alone(tokens: Sequence[Token], at: int) -> bool:
    # Not "a fifth time".
    return at + 1 == len(tokens) or tokens[at + 1].pos not in ("NOUN", "PROPN", "ADJ")


def _counts_everyday_things(tokens: Sequence[Token], at: int, words: Words) -> bool:
    if at and tokens[at - 1].lower in words["labelled"]:
        return tokens[at].lower not in ("hundred", "thousand", "tens")
    after = at + 1
    if after < len(tokens) and tokens[after].pos == "ADJ":
        after += 1
    if after >= len(tokens) or tokens[after].lower not in words["everyday_things"]:
        return False
    if tokens[after].lower != "of":
        return True
    behind = tokens[after + 1].lower if after + 1 < len(tokens) else ""
    return behind in ("us", "them", "my", "the", "our", "you")


def _is_number_one(
    tokens: Sequence[Token], at: int, words: Words, kinds: Sequence[MathematicsKind | None]
) -> bool:
    before = tokens[at - 1] if at else None
    after = tokens[at + 1] if at + 1 < len(tokens) else None
    if after is not None:
        if after.lower in words["fraction"] or after.lower in words["unit"]:
            return True
        if after.lower in ("more", "less", "hundred", "thousand", "million", "whole", "left"):
            return True
        if kinds[at + 1] is not None and after.pos in ("NOUN", "NUM", "SYM"):
            return True
    if before is None:
        return False
    if before.lower in _POINTING or before.pos in ("ADJ", "DET"):
        return False
    return (
        before.lower in words["operation"]
        or before.lower in ("by", "add", "plus", "minus", "number")
        or (
            before.lower in ("is", "equals", "=", "makes")
            and kinds[at - 2 if at > 1 else 0] == "quantity"
        )
    )


def _beside_quantity(tokens: Sequence[Token], at: int, numbers: frozenset[str]) -> bool:
    def amount(place: int) -> bool:
        if not 0 <= place < len(tokens):
            return False
        word = tokens[place].lower
        return word[0].isnumeric() or word in numbers or word in ("n", "x", "y", "a", "b", "?", "_")

    if tokens[at].lower in "-–−/" and not (amount(at - 1) and amount(at + 1)):
        return False
    return amount(at - 1) or amount(at + 1)


def _mark_claims(
    parse: Parse, claims: Sequence[Claim], kinds: list[MathematicsKind | None]
) -> None:
    for claim in claims:
        first, after = parse.tokens_in(claim.start, claim.end)
        for at in range(first, after):
            if kinds[at] is not None:
                continue
            word = parse.tokens[at].lower
            if word in _SIGNS:
                kinds[at] = _SIGNS[word]
            elif word[0].isnumeric() or (len(word) == 1 and word.isalpha() and word not in "ai"):
                kinds[at] = "quantity"


def _mark_by_company(
    parse: Parse,
    spoken: Sequence[Token],
    words: Words,
    kinds: list[MathematicsKind | None],
    everyday: set[int],
) -> None:
    # Read from the first pass, so that company never spreads from word to word.
    certain = list(kinds)
    tokens = parse.tokens
    for token in spoken:
        at = token.index
        if certain[at] is not None or at in everyday:
            continue
        word = token.lower
        kind: MathematicsKind
        if word in words["relation"]:
            kind = "relation"
        elif word in words["representation"]:
            kind = "representation"
        elif word in words["operation"]:
            kind = "operation"
        elif word in words["operation_on"]:
            if token.pos not in ("VERB", "NOUN") or not _in_reach(tokens, certain, at, 0):
                continue
            kind = "operation"
        else:
            continue
        if _in_reach(tokens, certain, at, _REACH) or word in ("array", "arrays", "counters"):
            kinds[at] = kind


def _mark_comparisons(
    parse: Parse,
    spoken: Sequence[Token],
    words: Words,
    kinds: list[MathematicsKind | None],
) -> None:
    # "not the same size pieces", "cut it again and they get smaller", "it rolls because it is
    # round": two plain words that together speak of parts, amounts or shapes.
    things, partings, shapes = words["thing"], words["parting"], words["shape_like"]
    told: list[tuple[int, str, MathematicsKind]] = []
    for token in spoken:
        word, at = token.lower, token.index
        if word in words["relation"]:
            told.append((at, "relation", "relation"))
        elif word in ("many", "much"):
            if at and parse.tokens[at - 1].lower == "how":
                told.append((at, "count", "quantity"))
        elif word in partings and token.pos in ("VERB", "NOUN", "ADJ"):
            told.append((at, "parting", "operation"))
        elif word in things and _is_thing(parse.tokens, at):
            told.append((at, "thing", "term"))
        elif word == "each":
            told.append((at, "each", "quantity"))
        if word in shapes:
            told.append((at, "shape", "term"))
    for place, (at, role, kind) in enumerate(told):
        for other, role_of_other, kind_of_other in told[place + 1 :]:
            if other - at > _REACH or parse.tokens[other].sentence != parse.tokens[at].sentence:
                break
            if _speak_together(parse.tokens, (at, role), (other, role_of_other)):
                kinds[at] = kinds[at] or kind
                kinds[other] = kinds[other] or kind_of_other


def _is_thing(tokens: Sequence[Token], at: int) -> bool:
    # Not "a bit harder", "the hard part", "the other side of the room", "our group".
    before = tokens[at - 1].lower if at else ""
    if tokens[at].lower in ("bit", "part", "group", "number", "side", "line", "half", "bits"):
        return before in _PARTED
    return True


def _speak_together(tokens: Sequence[Token], one: tuple[int, str], two: tuple[int, str]) -> bool:
    roles = {one[1], two[1]}
    if roles == {"shape"}:
        return tokens[one[0]].lower != tokens[two[0]].lower
    if roles in ({"relation", "thing"}, {"relation", "parting"}, {"count", "thing"}):
        return True
    if roles == {"relation", "each"}:
        relation = one[0] if one[1] == "relation" else two[0]
        return tokens[relation].lower in ("less", "more", "fewer", "equal", "equally")
    return False


def _in_reach(
    tokens: Sequence[Token], kinds: Sequence[MathematicsKind | None], at: int, before: int
) -> bool:
    sentence = tokens[at].sentence
    for place in range(max(0, at - before), min(len(kinds), at + _REACH + 1)):
        if kinds[place] is not None and tokens[place].sentence == sentence:
            return True
    return False
