"""The rules for hard cases of strand A, one named function each, in the rubric's own numbers.

A rule asks whether its case is the one in hand; it is asked only after the question beside which
it stands in `HARD_CASES` has been answered.
"""

from __future__ import annotations

import re
from collections.abc import Callable

from journal.evidence.evidence import Evidence
from journal.lexicon.reasoning_words import load_reasoning_words
from journal.records import Claim, Flag, Reason, Span
from journal.rubric.generality import general_statements

WORDS = load_reasoning_words()

_NUMERAL = re.compile(r"[0-9]+")
_CHECKED = re.compile(r"\b(check|checked|double checked)\b")
_PURPOSE = re.compile(r"\bso (that|the|my|our|it)\b")
_RENAMED = re.compile(
    r"\b(which|that|this|it)('?s| is| are) (just |also |exactly )?"
    r"(the same as|[0-9]+/[0-9]+|half|a half|a quarter|one (half|third|quarter))"
)
_EXAMPLES_NEEDED = 2
_LISTED = 2


def r1_reason_without_mathematics(evidence: Evidence) -> bool:
    """R1: a connective is not a reason: "because it was fun", "because Miss said so"."""
    return any(r.ground in ("not_mathematical", "circular") for r in evidence.reasons)


def r3_rule_from_memory(evidence: Evidence) -> bool:
    """R3: a rule stated from memory without why, "you flip the second one", is a recount."""
    words = [token.lower for token in evidence.parse.tokens]
    for i, token in enumerate(evidence.parse.tokens):
        if token.lemma in WORDS["rule_action"] and token.pos == "VERB" and i:
            before = words[max(0, i - 4) : i]
            if "you" in before or "always" in before or before[-1] == "just":
                return True
    return not WORDS["rule_name"].isdisjoint(words) and any(
        reason.ground == "procedural" for reason in evidence.reasons
    )


def r4_always_without_support(evidence: Evidence) -> bool:
    """R4: "always" or "never" with nothing, or with one example, to support it."""
    return bool(general_statements(evidence.parse, evidence.reasons))


def r6_answers_alone(evidence: Evidence) -> bool:
    """R6: an answer alone, a list of facts or a list of words gives no reason."""
    verbs = sum(token.pos in ("VERB", "AUX") for token in evidence.parse.tokens)
    told = any(token.lower in ("i", "we") for token in evidence.parse.tokens)
    return not told and (verbs < _LISTED or len(evidence.claims) >= _LISTED)


def r7_supports_generally(evidence: Evidence, reason: Reason, claimed: set[str]) -> bool:
    """R7: one example, in numbers of its own, never supports a generalisation."""
    if reason.role == "limit":
        return True
    if reason.role != "link":
        return False
    own = numerals(evidence, reason.reason) - claimed
    return len(own) < _EXAMPLES_NEEDED or _speaks_of_all(evidence, reason.reason)


def r7_only_examples(evidence: Evidence) -> bool:
    """R7: the general claim rests on examples."""
    return any(numerals(evidence, reason.reason) for reason in evidence.reasons)


def r11_keyword_string(evidence: Evidence) -> bool:
    """R11: "because therefore always prove" without sense."""
    return any(flag.kind == "keyword_string" for flag in evidence.flags)


def r11_is_keyword_string(evidence: Evidence, span: Span) -> bool:
    """R11: words strung together without sense give no reason."""
    return any(
        flag.kind == "keyword_string" and flag.start < span[1] and span[0] < flag.end
        for flag in evidence.flags
    )


def r13_steps_told(evidence: Evidence) -> bool:
    """R13: steps told in order, even ending in the answer, are a recount."""
    tokens = evidence.parse.tokens
    told = any(token.lower in ("i", "we", "then", "first") for token in tokens)
    return told and any(any(map(str.isdigit, token.text)) for token in tokens)


def r13_working_alone(evidence: Evidence) -> bool:
    """R13: working joined to the answer is grounds; nothing says what the quantities mean."""
    sound = sound_reasons(evidence)
    return bool(sound) and all(len(numerals(evidence, r.reason)) >= _LISTED for r in sound)


def r14_purpose_of_a_tool(evidence: Evidence) -> bool:
    """R14: "so that the ruler did not slip" is about handling a tool."""
    return _PURPOSE.search(evidence.parse.text.lower()) is not None


def r15_renamed(evidence: Evidence) -> bool:
    """R15: "3 out of 9, which is 1/3" names the same amount again and does not say why."""
    return any(
        _RENAMED.search(evidence.parse.text[max(0, start - 6) : end].lower()) is not None
        for start, end in (reason.reason for reason in sound_reasons(evidence))
    )


def r16_checked_alone(evidence: Evidence) -> bool:
    """R16: "I checked" alone is no reason."""
    return _CHECKED.search(evidence.parse.text.lower()) is not None


def r17_central_claim(evidence: Evidence) -> Claim | None:
    """R17: the claim that answers the prompt, else the one the first reason supports."""
    return next((claim for claim in evidence.claims if claim.central), None)


def r17_idea_to_check(evidence: Evidence) -> Flag | None:
    """R17: where its truth can't be settled, an idea on the watch-list holds the level at 2.

    Only an idea in the central claim or its reason counts.
    """
    central = r17_central_claim(evidence)
    spans: list[Span] = [] if central is None else [(central.start, central.end)]
    for reason in sound_reasons(evidence)[:1]:
        spans += [reason.reason] if reason.claim is None else [reason.reason, reason.claim]
    for flag in evidence.flags:
        if flag.kind == "idea_to_check" and any(
            flag.start < end and start < flag.end for start, end in spans
        ):
            return flag
    return None


def r18_topic_alone(evidence: Evidence) -> bool:
    """R18: "we did fractions" names the topic and nothing else."""
    parse, kinds = evidence.parse, evidence.mathematics.kinds
    named = [i for i, kind in enumerate(kinds) if kind is not None]
    if not named or len(named) > _LISTED or any(not parse.tokens[i].lower.isalpha() for i in named):
        return False
    if any(kinds[i] in ("quantity", "relation") for i in named):
        return False
    verbs = {token.lemma for token in parse.tokens if token.pos in ("VERB", "AUX")}
    about = any(token.lower in WORDS["topic_word"] for token in parse.tokens)
    return verbs <= (WORDS["topic_verb"] | {"be"} if about else WORDS["topic_verb"])


def sound_reasons(evidence: Evidence) -> list[Reason]:
    """Return the reasons that stand on mathematics and make sense."""
    return [
        reason
        for reason in evidence.reasons
        if reason.ground == "mathematical" and not r11_is_keyword_string(evidence, reason.reason)
    ]


def numerals(evidence: Evidence, span: Span) -> set[str]:
    """Return the numbers written in figures in a stretch."""
    return set(_NUMERAL.findall(evidence.parse.text[span[0] : span[1]]))


def _speaks_of_all(evidence: Evidence, span: Span) -> bool:
    first, after = evidence.parse.tokens_in(*span)
    words = {token.lower for token in evidence.parse.tokens[first:after]}
    return not words.isdisjoint(WORDS["general"] | {"you", "or"})


HARD_CASES: dict[str, tuple[tuple[str, Callable[[Evidence], bool]], ...]] = {
    "A1": (
        ("R11", r11_keyword_string),
        ("R1", r1_reason_without_mathematics),
        ("R18", r18_topic_alone),
    ),
    "A2": (
        ("R11", r11_keyword_string),
        ("R3", r3_rule_from_memory),
        ("R1", r1_reason_without_mathematics),
        ("R16", r16_checked_alone),
        ("R14", r14_purpose_of_a_tool),
        ("R4", r4_always_without_support),
        ("R6", r6_answers_alone),
        ("R13", r13_steps_told),
    ),
    "A3a": (("R4", r4_always_without_support), ("R15", r15_renamed), ("R13", r13_working_alone)),
    "A4b": (("R7", r7_only_examples),),
}
"""Beside each question answered no, the rules that may have decided it, in the order asked."""
