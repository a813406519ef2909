"""A reason while it is being put together, in positions of propositions."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from journal.evidence.reasons.propositions import Page, Proposition
from journal.records import Ground, Role


@dataclass(slots=True)
class Draft:
    """A reason in positions of the page's propositions, ends exclusive.

    ``supports`` is the draft that this one carries further; an ``example`` is a case tried out,
    which settles nothing (R7).
    """

    reason: tuple[int, int]
    claim: tuple[int, int] | None
    marker: int | None = None
    role: Role = "grounds"
    ground: Ground = "mathematical"
    supports: Draft | None = None
    example: bool = False


def said_in(page: Page, span: tuple[int, int] | None) -> list[Proposition]:
    """Return the propositions of a span of positions."""
    return [] if span is None else page.propositions[span[0] : span[1]]


def taken_by(drafts: Sequence[Draft]) -> set[int]:
    """Return the positions that stand in a reason or in its claim."""
    taken: set[int] = set()
    for draft in drafts:
        taken.update(range(*draft.reason))
        if draft.claim:
            taken.update(range(*draft.claim))
    return taken
