"""Examples given for a general claim: a reason of one case or more, never a link (R4, R7, R18)."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.reasons.drafts import Draft, taken_by
from journal.evidence.reasons.generality import is_general
from journal.evidence.reasons.propositions import WORDS, Page, Proposition

_TRYING = WORDS["trying"]
_WORKED = WORDS["worked"]
_NAMED = frozenset(("like", "eg", "e.g.", "example"))


def find_examples(page: Page, drafts: Sequence[Draft]) -> list[Draft]:
    """Return a draft for cases worked beside a general claim, and for cases tried out.

    "All numbers in the 4 times table are even. 4 8 12 16" and "yes i tried 1 2 3 and it worked".
    A case that a reason holds already is marked as an example there.
    """
    found = []
    taken = taken_by(drafts)
    claim: int | None = None
    for k, said in enumerate(page.propositions):
        tried = _is_tried(said)
        if claim is not None and k - claim < 3 and k not in taken and _is_case(page, said, tried):
            found.append(Draft((k, k + 1), (claim, claim + 1), example=True))
            claim = None
        elif tried and k not in taken and _came_out(page, k):
            found.append(Draft((k, k + 1), (k - 1, k) if k else None, example=True))
        elif said.states and is_general(page.parse, said.clause.first, said.clause.after):
            claim = k
    for draft in drafts:
        told = page.propositions[draft.reason[0] : draft.reason[1]]
        draft.example = any(_is_tried(said) for said in told)
    return found


def _is_case(page: Page, said: Proposition, tried: bool) -> bool:
    if tried:
        return True
    first = said.clause.first
    named = any(t.lower in _NAMED for t in page.parse.tokens[first : first + 2])
    return said.numbers > 1 and (said.calculation or named)


def _is_tried(said: Proposition) -> bool:
    return said.numbers > 0 and not said.words.isdisjoint(_TRYING)


def _came_out(page: Page, k: int) -> bool:
    return any(not said.words.isdisjoint(_WORKED) for said in page.propositions[k : k + 2])
