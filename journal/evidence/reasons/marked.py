"""Reasons that a connective joins to their claim."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.reasons.drafts import Draft, said_in
from journal.evidence.reasons.ground import check_ground
from journal.evidence.reasons.propositions import Page, Proposition
from journal.evidence.reasons.stretches import (
    claim_before,
    reach_back,
    reach_claim,
    reach_forward,
)
from journal.records import Marker

CAUSAL = ("reason", "result")
JOINING = ("reasoning", "no_mathematics", "narrative")


def find_marked(page: Page, markers: Sequence[Marker]) -> list[Draft]:
    """Return a draft for each marker of reason or result that joins two things.

    Parameters
    ----------
    page : Page
        The entry.
    markers : sequence of Marker
        As `find_markers` gives them.

    Returns
    -------
    list of Draft
        In the order of the markers.
    """
    opened: dict[int, tuple[int, str]] = {}
    for number, marker in enumerate(markers):
        if marker.function in CAUSAL and marker.reading in JOINING:
            _, after = page.parse.tokens_in(marker.start, marker.end)
            k = page.clause_at(after)
            # What was said before, word for word, has been left out.
            # "because it means ...": the first of two markers together decides.
            if k is not None and k not in opened and page.propositions[k].clause.first - after < 3:
                opened[k] = number, marker.function
    joined = frozenset(opened)
    drafts = []
    for k, (number, function) in sorted(opened.items()):
        join = _join_reason if function == "reason" else _join_result
        draft = join(page, k, joined)
        if draft is not None and not _crosses(page, draft):
            draft.marker = number
            draft.ground = check_ground(
                page,
                said_in(page, draft.reason),
                said_in(page, draft.claim),
                follows=function == "result",
            )
            if draft.claim is None and not page.asked and _is_no_answer(page, draft):
                draft.ground = "procedural"
            drafts.append(draft)
    return [draft for draft in drafts if not _is_senseless(draft, drafts)]


def _is_senseless(draft: Draft, drafts: Sequence[Draft]) -> bool:
    """Say whether a "because" opens what is itself given a reason, and so joins nothing."""
    return draft.claim is None and any(
        other.claim is not None
        and (other.claim[0] < draft.reason[1] or other.reason == draft.reason)
        for other in drafts
    )


def _join_reason(page: Page, k: int, joined: frozenset[int]) -> Draft | None:
    end = reach_forward(page, k, joined)
    said = page.propositions[k]
    if not said.clause.opens_sentence:
        return Draft((k, end), claim_before(page, k))
    # "Because it ends in 8 it is even."
    after = page.propositions[end] if end < len(page.propositions) else None
    if (
        after is not None
        and not after.clause.opens_sentence
        and not after.told
        and end not in joined
    ):
        return Draft((k, end), (end, end + 1))
    for main in range(k + 1, end):
        if page.propositions[main].clause.joint == ",":
            return Draft((k, main), (main, main + 1))
    return Draft((k, end), claim_before(page, k) if k else None)


def _join_result(page: Page, k: int, joined: frozenset[int]) -> Draft | None:
    if k == 0:
        return None
    # "So" at the start of a sentence draws on the sentence before.
    first = reach_back(page, k - 1, joined)
    for j in range(first, k - 1):
        if _is_handled(page.propositions[j]) or (j == first and page.propositions[j].told):
            first = j + 1
    return Draft((first, k), (k, reach_claim(page, k, joined)))


def _is_no_answer(page: Page, draft: Draft) -> bool:
    """Say so of "because" put before steps told one after the other, or before a bare answer."""
    said = said_in(page, draft.reason)
    steps = [step for step in said if step.told and "then" in (*step.clause.joints, *step.words)]
    return bool(steps) or (said[0].calculation and sum(step.numbers for step in said) < 2)


def _is_handled(said: Proposition) -> bool:
    """Say so of a step told without its working: nothing before it is part of the argument."""
    numbers = sum(word[0].isdigit() for word in said.content)
    return said.told and numbers < 2 and said.structure < 2


def _crosses(page: Page, draft: Draft) -> bool:
    spans = [draft.reason] + ([draft.claim] if draft.claim else [])
    first = min(a for a, _ in spans)
    last = max(b for _, b in spans) - 1
    return page.parse.crosses_break(
        page.propositions[first].clause.first, page.propositions[last].clause.after
    )
