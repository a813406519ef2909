"""Strand A, reasoning: the decision questions A1 to A4b, and the rules for hard cases.

Each question takes the evidence and returns a `Step`: its answer, the words that decided and why.
The rules have the numbers of the written rubric.
"""

from __future__ import annotations

import re

from journal.evidence.clauses import find_clauses
from journal.evidence.evidence import Evidence
from journal.evidence.reasons.generality import is_general
from journal.lexicon.reasoning_words import load_reasoning_words
from journal.records import Claim, Flag, Reason, Span, Step

WORDS = load_reasoning_words()

_NUMERAL = re.compile(r"[0-9]+")
LINKING = ("link", "check", "counter_example")


def ask_a1(evidence: Evidence) -> Step:
    """A1: is any mathematical object, action or idea named beyond the topic alone?"""  # noqa: D400
    spans = _named_mathematics(evidence)
    if not spans:
        return Step("A1", False, False, (), "no mathematical object, action or idea is named")
    if r18_is_topic_alone(evidence):
        why = f"only the topic is named: {_quote(evidence, spans[0])}"
        return Step("A1", False, True, spans[:1], why)
    return Step("A1", True, False, spans, f"names mathematics: {_quote(evidence, *spans[:3])}")


def ask_a2(evidence: Evidence) -> Step:
    """A2: is there a statement of why or how it follows, tied to the mathematics?"""  # noqa: D400
    grounds = _sound(evidence)
    if grounds:
        first = grounds[0]
        spans = (first.reason,) if first.claim is None else (first.claim, first.reason)
        return Step("A2", True, False, spans, f"a reason: {_quote(evidence, first.reason)}")
    if evidence.reasons:
        weak = evidence.reasons[0]
        why = f"{_quote(evidence, weak.reason)} is no reason: {_WEAK[weak.ground]}"
        return Step("A2", False, weak.ground == "procedural", (weak.reason,), why)
    return Step("A2", False, False, (), "tells what was done or is so, not why")


def ask_a3a(evidence: Evidence) -> Step:
    """A3a: is there a link that settles the reason, a check, or a counter-example?"""  # noqa: D400
    joined = _sound(evidence)
    for reason in joined:
        if reason.role in LINKING:
            why = f"{_ROLES[reason.role]}: {_quote(evidence, reason.reason)}"
            return Step("A3a", True, False, (reason.reason,), why)
    why = f"one reason, nothing says why it settles it: {_quote(evidence, joined[0].reason)}"
    return Step("A3a", False, len(joined) > 1, (joined[0].reason,), why)


def ask_a3b(evidence: Evidence) -> Step:
    """A3b: is the central mathematical claim right?"""  # noqa: D400
    claim = r17_central_claim(evidence)
    if claim is not None and claim.verdict != "undecided":
        span = (claim.start, claim.end)
        right = claim.verdict == "true"
        why = "is right" if right else "is worth a check"
        return Step("A3b", right, False, (span,), f"{_quote(evidence, span)} {why}")
    idea = r17_idea_to_check(evidence)
    if idea is not None:
        span = (idea.start, idea.end)
        return Step("A3b", None, True, (span,), f"an idea to check: {_quote(evidence, span)}")
    return Step("A3b", None, False, (), "truth not checked")


def ask_a4a(evidence: Evidence) -> Step:
    """A4a: is anything claimed beyond the cases that were worked?"""  # noqa: D400
    general = general_statements(evidence)
    if not general:
        return Step("A4a", False, False, (), "stays with the cases that were worked")
    return Step("A4a", True, False, general, f"claims it generally: {_quote(evidence, general[0])}")


def ask_a4b(evidence: Evidence) -> Step:
    """A4b: does structure, argument, a set of cases or a limit support the general claim?"""  # noqa: D400
    general = general_statements(evidence)
    claimed = set().union(*(_numerals(evidence, span) for span in general))
    support = [
        reason for reason in _sound(evidence) if r7_supports_generally(evidence, reason, claimed)
    ]
    if not support:
        return Step("A4b", False, True, (), "the general claim rests on a case, not on structure")
    span = support[-1].reason
    return Step("A4b", True, False, (span,), f"supported: {_quote(evidence, span)}")


def r7_supports_generally(evidence: Evidence, reason: Reason, claimed: set[str]) -> bool:
    """R7: one example, in numbers of its own, never supports a generalisation."""
    if reason.role == "limit":
        return True
    if reason.role != "link":
        return False
    return len(_numerals(evidence, reason.reason) - claimed) < 2


def r17_central_claim(evidence: Evidence) -> Claim | None:
    """R17: the claim that answers the prompt, else the one the first reason supports."""
    return next((claim for claim in evidence.claims if claim.central), None)


def r17_idea_to_check(evidence: Evidence) -> Flag | None:
    """R17: where its truth can't be settled, an idea on the watch-list holds the level at 2."""
    return next((flag for flag in evidence.flags if flag.kind == "idea_to_check"), None)


def r11_is_keyword_string(evidence: Evidence, span: Span) -> bool:
    """R11: words strung together without sense give no reason."""
    return any(
        flag.kind == "keyword_string" and flag.start < span[1] and span[0] < flag.end
        for flag in evidence.flags
    )


def r18_is_topic_alone(evidence: Evidence) -> bool:
    """R18: "we did fractions" names the topic and nothing else."""
    parse, kinds = evidence.parse, evidence.mathematics.kinds
    named = [i for i, kind in enumerate(kinds) if kind is not None]
    if not named or len(named) > 2 or any(not parse.tokens[i].lower.isalpha() for i in named):
        return False
    if any(kinds[i] in ("quantity", "relation") for i in named):
        return False
    verbs = {token.lemma for token in parse.tokens if token.pos in ("VERB", "AUX")}
    about = any(token.lower in _TOPIC_WORDS for token in parse.tokens)
    return verbs <= (_TOPIC_VERBS | {"be"} if about else _TOPIC_VERBS)


def general_statements(evidence: Evidence) -> tuple[Span, ...]:
    """Return the general statements that stand as claims, not as the reasons of others."""
    parse = evidence.parse
    reasons = [reason.reason for reason in evidence.reasons]
    claims = {reason.claim for reason in evidence.reasons if reason.claim is not None}
    stretches = {parse.span(clause.first, clause.after) for clause in find_clauses(parse)}
    return tuple(
        span
        for span in sorted(claims | stretches)
        if not any(start < span[1] and span[0] < end for start, end in reasons)
        and is_general(parse, *parse.tokens_in(*span))
    )


_TOPIC_VERBS = WORDS["topic_verb"]
_TOPIC_WORDS = WORDS["topic_word"]
_WEAK = {
    "mathematical": "the words are strung together without sense",
    "procedural": "it tells a step",
    "circular": "it says the claim again",
    "not_mathematical": "it gives nothing mathematical",
}
_ROLES = {
    "link": "says why the reason settles it",
    "check": "a check, written out",
    "counter_example": "a case that goes against it",
}


def _sound(evidence: Evidence) -> list[Reason]:
    return [
        reason
        for reason in evidence.reasons
        if reason.ground == "mathematical" and not r11_is_keyword_string(evidence, reason.reason)
    ]


def _numerals(evidence: Evidence, span: Span) -> set[str]:
    return set(_NUMERAL.findall(evidence.parse.text[span[0] : span[1]]))


def _named_mathematics(evidence: Evidence) -> tuple[Span, ...]:
    parse, kinds = evidence.parse, evidence.mathematics.kinds
    named = tuple(
        (token.start, token.end)
        for token, kind in zip(parse.tokens, kinds, strict=True)
        if kind is not None
    )
    # "because the more people there are the less you get" names its mathematics by its structure.
    return named or tuple(reason.reason for reason in _sound(evidence))


def _quote(evidence: Evidence, *spans: Span) -> str:
    return ", ".join(f"“{evidence.parse.text[start:end]}”" for start, end in spans)
