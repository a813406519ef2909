"""Strand A, reasoning: the decision questions A1 to A4b.

Each question takes the evidence and returns a `Step`: its answer, the words that decided and why,
and whether a small change would turn it.
"""

from __future__ import annotations

from journal.evidence.evidence import Evidence
from journal.lexicon.reasoning_words import load_reasoning_words
from journal.records import Reason, Span, Step
from journal.rubric.generality import general_statements
from journal.rubric.rules import (
    numerals,
    r7_supports_generally,
    r17_central_claim,
    r17_idea_to_check,
    r18_topic_alone,
    sound_reasons,
)

WORDS = load_reasoning_words()

LINKING = ("link", "check", "counter_example", "limit")
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
    "limit": "where it works and where it stops",
}
_LONG_REASON = 9
"""Tokens from which a single reason may hold a second fact."""


def ask_a1(evidence: Evidence) -> Step:
    """A1: is any mathematical object, action or idea named beyond the topic alone?"""  # noqa: D400
    spans = _named_mathematics(evidence)
    if spans:
        if r18_topic_alone(evidence):
            why = f"only the topic is named: {_quote(evidence, spans[0])}"
            return Step("A1", False, True, spans[:1], why)
        why = f"names mathematics: {_quote(evidence, *spans[:3])}"
        return Step("A1", True, len(spans) == 1, spans, why)
    judged = _judged_by_name(evidence)
    if judged:
        why = f"names mathematics: {_quote(evidence, *judged[:3])}"
        return Step("A1", True, True, judged, why)
    return Step("A1", False, False, (), "no mathematical object, action or idea is named")


def ask_a2(evidence: Evidence) -> Step:
    """A2: is there a statement of why or how it follows, tied to the mathematics?"""  # noqa: D400
    grounds = sound_reasons(evidence)
    if grounds:
        first = grounds[0]
        spans = (first.reason,) if first.claim is None else (first.claim, first.reason)
        near = len(grounds) == 1 and (first.marker is None or not _names(evidence, first.reason))
        return Step("A2", True, near, spans, f"a reason: {_quote(evidence, first.reason)}")
    if evidence.reasons:
        weak = evidence.reasons[0]
        why = f"{_quote(evidence, weak.reason)} is no reason: {_WEAK[weak.ground]}"
        near = weak.ground != "not_mathematical" or _names(evidence, weak.reason)
        return Step("A2", False, near, (weak.reason,), why)
    near = any(
        marker.function in ("reason", "result", "condition") and marker.reading != "look_alike"
        for marker in evidence.markers
    ) or bool(general_statements(evidence.parse, ()))
    return Step("A2", False, near, (), "tells what was done or is so, not why")


def ask_a3a(evidence: Evidence) -> Step:
    """A3a: is there a link that settles the reason, a check, or a counter-example?"""  # noqa: D400
    joined = sound_reasons(evidence)
    linking = [reason for reason in joined if reason.role in LINKING]
    if linking:
        reason = linking[0]
        # A link of no reason but its own stands in one clause with it.
        near = len(linking) == 1 and reason.role == "link" and reason.supports is None
        why = f"{_ROLES[reason.role]}: {_quote(evidence, reason.reason)}"
        return Step("A3a", True, near, (reason.reason,), why)
    near = len({reason.reason for reason in joined}) > 1 or _is_long(evidence, joined[0])
    why = f"one reason, nothing says why it settles it: {_quote(evidence, joined[0].reason)}"
    return Step("A3a", False, near, (joined[0].reason,), why)


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
    return Step("A3b", None, claim is not None, (), "truth not checked")


def ask_a4a(evidence: Evidence) -> Step:
    """A4a: is anything claimed beyond the cases that were worked?"""  # noqa: D400
    general = general_statements(evidence.parse, evidence.reasons)
    if not general:
        # A general statement that stands as a reason could have been the claim.
        near = bool(general_statements(evidence.parse, ()))
        return Step("A4a", False, near, (), "stays with the cases that were worked")
    near = not any(_is_strongly_general(evidence, span) for span in general)
    return Step("A4a", True, near, general, f"claims it generally: {_quote(evidence, general[0])}")


def ask_a4b(evidence: Evidence) -> Step:
    """A4b: does structure, argument, a set of cases or a limit support the general claim?"""  # noqa: D400
    general = general_statements(evidence.parse, evidence.reasons)
    claimed: set[str] = set().union(*(numerals(evidence, span) for span in general))
    support = [
        reason
        for reason in sound_reasons(evidence)
        if r7_supports_generally(evidence, reason, claimed)
    ]
    if not support:
        return Step("A4b", False, True, (), "the general claim rests on a case, not on structure")
    span = support[-1].reason
    near = len(support) == 1 and support[0].supports is None
    return Step("A4b", True, near, (span,), f"supported: {_quote(evidence, span)}")


def _named_mathematics(evidence: Evidence) -> tuple[Span, ...]:
    tokens = evidence.parse.tokens
    named = tuple(
        (tokens[i].start, tokens[i].end)
        for i, kind in enumerate(evidence.mathematics.kinds)
        if kind is not None
    )
    # "because the more people there are the less you get" names its mathematics by its structure.
    return named or tuple(reason.reason for reason in sound_reasons(evidence))


def _judged_by_name(evidence: Evidence) -> tuple[Span, ...]:
    """Return what names mathematics by judging or comparing: "true" of a prompt, "greater than"."""
    tokens = evidence.parse.tokens
    asked = evidence.setting.prompt is not None
    return tuple(
        (token.start, token.end)
        for i, token in enumerate(tokens)
        if (asked and token.lower in WORDS["judged"])
        or (i + 1 < len(tokens) and f"{token.lower}_{tokens[i + 1].lower}" in WORDS["named_pairs"])
    )


def _names(evidence: Evidence, span: Span) -> bool:
    return evidence.mathematics.any_in(*evidence.parse.tokens_in(*span))


def _is_long(evidence: Evidence, reason: Reason) -> bool:
    first, after = evidence.parse.tokens_in(*reason.reason)
    return after - first >= _LONG_REASON


def _is_strongly_general(evidence: Evidence, span: Span) -> bool:
    first, after = evidence.parse.tokens_in(*span)
    return any(t.lower in WORDS["general"] for t in evidence.parse.tokens[first:after])


def _quote(evidence: Evidence, *spans: Span) -> str:
    return ", ".join(f"“{evidence.parse.text[start:end]}”" for start, end in spans)
