"""Checks written out, counter-examples, and where a claim stops (A3a, A4b, rule R16)."""

from __future__ import annotations

import re
from collections.abc import Sequence

from journal.evidence.reasons.drafts import Draft
from journal.evidence.reasons.propositions import WORDS, Page, Proposition

_NEARLY = re.compile(
    r"\b(about right|close to (the|my) (answer|estimate)|near(ly)? (the|my) (answer|estimate)"
    r"|should be (about|around|near|close|a bit|a little|just|roughly)|must be (about|around|near)"
    r"|makes sense|is reasonable|(it|that|answer|i)( ?i?'?s| is| was|'?m| am) (right|correct))\b"
)
_ANOTHER_WAY = re.compile(r"\b(second|another|other|different) (way|method)\b|\b(make|be) sure\b")
_ONLY = re.compile(
    r"\bonly (works?|true|has to be true|if|when|happens?|for|counts?)\b"
    r"|\bdoes ?n.?t work (if|when)\b"
)
_CHECKING = WORDS["checking"]
_NEAR_WORDS = frozenset(
    ("right", "correct", "close", "near", "nearly", "should", "must", "sense", "reasonable")
)
_NEGATIONS = frozenset(("not", "n't", "isnt", "doesnt", "wrong", "false", "only", "work", "works"))
_NEGATED_GENERAL = (
    "not always",
    "n't always",
    "not true that",
    "n't true that",
    "not every",
    "not all",
    "n't work for all",
    "n't work for every",
    "not work for",
    "n't work for",
    "isnt always",
    "doesnt always",
    "n't true for every",
    "n't true for all",
    "wrong that",
    "false that",
)


def find_checks(page: Page, drafts: Sequence[Draft]) -> list[Draft]:
    """Return a draft for each check that is written out; "I checked" alone is none.

    A reason already found that is the written-out part of a check takes the role instead.
    """
    found: list[Draft] = []
    for k, said in enumerate(page.propositions):
        named = not said.words.isdisjoint(_CHECKING)
        if said.learned or not (named or _ANOTHER_WAY.search(said.text)):
            continue
        for j in range(k, min(k + 3, len(page.propositions))):
            if page.propositions[j].numbers > 1:
                draft = _draft_at(drafts, j)
                if draft is None:
                    found.append(Draft((j, j + 1), (k - 1, k) if k else None, role="check"))
                else:
                    draft.role, draft.ground = "check", "mathematical"
                break
    return found


def find_estimates(page: Page, drafts: Sequence[Draft]) -> list[Draft]:
    """Give a calculation that an answer is held against ("so it is about right") its role."""
    found: list[Draft] = []
    for k, said in enumerate(page.propositions):
        if said.words.isdisjoint(_NEAR_WORDS) or not _NEARLY.search(said.text):
            continue
        for j in (k - 1, k):
            if j >= 0 and page.propositions[j].numbers > 1:
                draft = _draft_at(drafts, j)
                if draft is not None and draft.ground != "not_mathematical":
                    draft.role, draft.ground = "check", "mathematical"
                elif draft is None:
                    found.append(Draft((j, j + 1), (k, k + 1) if j < k else None, role="check"))
                break
    return found


def mark_cases(page: Page, drafts: Sequence[Draft]) -> list[Draft]:
    """Return counter-examples to a general claim, and the limits of one."""
    found: list[Draft] = []
    for k, said in enumerate(page.propositions):
        if said.words.isdisjoint(_NEGATIONS):
            continue
        text = said.text.replace("’", "'").replace(" n't", "n't")
        if _ONLY.search(text) and not said.told:
            draft = _draft_at(drafts, k)
            if draft is None:
                found.append(Draft((k, k + 1), (k - 1, k) if k else None, role="limit"))
            else:
                draft.role = "limit"
            continue
        if not any(phrase in text for phrase in _NEGATED_GENERAL):
            continue
        cases = [
            j
            for j in range(k + 1, min(k + 5, len(page.propositions)))
            if _is_case(page.propositions[j])
        ]
        beside = any(
            not {"but", "whereas", "while"}.isdisjoint(page.propositions[j].clause.joints)
            for j in cases[1:]
        ) and all(page.propositions[j].numbers > 1 for j in cases)
        for j in cases:
            draft = _draft_at(drafts, j)
            # One case goes against the claim; two set side by side show where it stops.
            role = "counter_example" if j == cases[-1] and not beside else "limit"
            if draft is None:
                found.append(Draft((j, j + 1), (k, k + 1), role=role))  # type: ignore[arg-type]
            else:
                draft.role = role  # type: ignore[assignment]
                draft.ground = "mathematical"
    return found


def _draft_at(drafts: Sequence[Draft], j: int) -> Draft | None:
    return next((d for d in drafts if d.reason[0] <= j < d.reason[1]), None)


def _is_case(said: Proposition) -> bool:
    if said.learned or said.feeling or not said.mathematical:
        return False
    return said.numbers > 0 or said.generic
