"""A reason while it is being put together, in positions of propositions."""

from __future__ import annotations

from dataclasses import dataclass

from journal.evidence.reasons.propositions import Page, Proposition
from journal.records import Ground, Role


@dataclass(slots=True)
class Draft:
    """A reason in positions of the page's propositions, ends exclusive.

    ``supports`` is the draft that this one carries further.
    """

    reason: tuple[int, int]
    claim: tuple[int, int] | None
    marker: int | None = None
    role: Role = "grounds"
    ground: Ground = "mathematical"
    supports: Draft | None = None
    why: str = ""


def said_in(page: Page, span: tuple[int, int] | None) -> list[Proposition]:
    """Return the propositions of a span of positions."""
    return [] if span is None else page.propositions[span[0] : span[1]]
