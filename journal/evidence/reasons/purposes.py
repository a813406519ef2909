"""A purpose as a reason (R14): "so that the tens are under the tens"."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.reasons.drafts import Draft
from journal.evidence.reasons.propositions import WORDS, Page


def find_purposes(page: Page, drafts: Sequence[Draft]) -> list[Draft]:
    """Return a draft for each "so that" which is tied to a mathematical property.

    Handling a tool ("so that it did not slip") is no reason.
    """
    tokens = page.parse.tokens
    found = []
    for k, said in enumerate(page.propositions):
        first = said.clause.first
        after_so = said.clause.joint == "so" and tokens[first].lower in ("that", "the", "all")
        if not k or not after_so or any(d.reason[0] <= k < d.reason[1] for d in drafts):
            continue
        if any(d.claim and d.claim[0] <= k < d.claim[1] for d in drafts):
            continue
        if (
            not said.words.isdisjoint(WORDS["purpose"])
            and said.clause.predicate
            and not said.told
            and not said.learning
        ):
            found.append(Draft((k, k + 1), (k - 1, k)))
    return found
