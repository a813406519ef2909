"""The general statements of an entry: those that stand as claims (question A4)."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.clauses import find_clauses
from journal.evidence.reasons.generality import is_general
from journal.language.parse import Parse
from journal.lexicon.reasoning_words import load_reasoning_words
from journal.records import Reason, Span

WORDS = load_reasoning_words()
_OWN = frozenset(("i", "we"))


def general_statements(parse: Parse, reasons: Sequence[Reason]) -> tuple[Span, ...]:
    """Return the general statements that stand as claims, not as the reasons of others.

    Parameters
    ----------
    parse : Parse
        The entry.
    reasons : sequence of Reason
        Its reasons.

    Returns
    -------
    tuple of Span
        In order; what the child did or used to do ("I always share by the top number") is none.
    """
    # Where a claim stops is itself said of all cases.
    taken = [reason.reason for reason in reasons if reason.role != "limit"]
    claims = {reason.claim for reason in reasons if reason.claim is not None}
    stretches = {
        parse.span(clause.first, clause.after)
        for clause in find_clauses(parse)
        if is_general(parse, clause.first, clause.after)
    }
    return tuple(
        span
        for span in sorted(claims | stretches)
        if not any(start < span[1] and span[0] < end for start, end in taken)
        and _is_claim(parse, span)
    )


def _is_claim(parse: Parse, span: Span) -> bool:
    first, after = parse.tokens_in(*span)
    words = {token.lower for token in parse.tokens[first:after]}
    if not words.isdisjoint(_OWN) and words.isdisjoint(WORDS["opens_clause"]):
        return False
    return is_general(parse, first, after)
