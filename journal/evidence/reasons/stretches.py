"""How far a reason and its claim reach on either side of "because" and "so"."""

from __future__ import annotations

from journal.evidence.reasons.generality import is_general
from journal.evidence.reasons.propositions import Page, Proposition

_STEP_JOINTS = frozenset(("and", "then", ",", ""))


def reach_forward(page: Page, k: int, joined: frozenset[int]) -> int:
    """Return one past the last clause of the reason that begins at clause ``k``.

    ``joined`` holds the clauses that a marker of reason or result opens.
    """
    end = k + 1
    while end < len(page.propositions):
        said = page.propositions[end]
        if end in joined or said.clause.opens_sentence or _turns_away(said) or widens(page, said):
            break
        if not said.clause.joints and _is_claim_of_initial(page, k, end):
            break
        end += 1
    return end


def reach_claim(page: Page, k: int, joined: frozenset[int]) -> int:
    """Return one past the last clause of the result that begins at clause ``k``."""
    end = k + 1
    while end < len(page.propositions):
        said, before = page.propositions[end], page.propositions[end - 1]
        conditional = before.clause.joint in ("when", "if", "whenever")
        carries_on = said.clause.joint in ("and", "but") and not said.told and said.mathematical
        if end in joined or said.clause.opens_sentence or said.learned or said.feeling:
            break
        if not conditional and (not carries_on or widens(page, said)):
            break
        end += 1
    return end


def reach_back(page: Page, k: int, joined: frozenset[int]) -> int:
    """Return the first clause of what stands before clause ``k`` in its sentence."""
    first = k
    while first > 0:
        said = page.propositions[first]
        if said.clause.opens_sentence or first in joined:
            break
        first -= 1
    return first


def claim_before(page: Page, k: int) -> tuple[int, int]:
    """Return the clause before ``k`` with the "when" or "if" that belongs to it."""
    first = at = k - 1
    while at > 0 and not page.propositions[at].clause.opens_sentence:
        before = page.propositions[at - 1]
        # "if you double the length and keep the width the same the area doubles"
        if before.conditional:
            first = at - 1
        elif page.propositions[at - 1].clause.joint != "and":
            break
        at -= 1
    return first, k


def _turns_away(said: Proposition) -> bool:
    """Say whether a reason ends here, as at "and then I tidied up"."""
    return said.learned or said.vouched or (said.told and said.clause.joint in _STEP_JOINTS)


def widens(page: Page, said: Proposition) -> bool:
    """Say so of "and that works for any number": it claims more, it gives no reason."""
    return not said.words.isdisjoint(("works", "work")) and is_general(
        page.parse, said.clause.first, said.clause.after
    )


def _is_claim_of_initial(page: Page, k: int, end: int) -> bool:
    """Say whether, as in "because it ends in 8 it is even", the claim follows."""
    opens = page.propositions[k].clause.opens_sentence
    return opens and page.propositions[end].judges
