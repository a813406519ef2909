"""Reasons given in answer to a prompt that asks for one, with nothing to join them (rule R2)."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.reasons.drafts import Draft
from journal.evidence.reasons.generality import is_general
from journal.evidence.reasons.propositions import WORDS, Page, Proposition

_SAYS_YES = frozenset(("yes", "no", "yeah", "yep", "nope", "true", "false"))
_AMOUNT = WORDS["amount"]


def find_answers(page: Page, drafts: Sequence[Draft]) -> list[Draft]:
    """Return a draft for the statements that answer "How do you know?" where none is joined.

    The bare answer, the prompt said again, a rule from memory and steps told are no reasons.
    """
    own_steps = any(_is_own_step(page, said) for said in page.propositions)
    if not page.asked or (own_steps and not _says_yes(page)):
        return []
    if any(draft.ground == "mathematical" for draft in drafts):
        return []
    first = 0
    while first < len(page.propositions) and not _answers(page, first):
        if page.propositions[first].told:
            return []
        first += 1
    end = first
    while end < len(page.propositions) and (
        _answers(page, end) or page.propositions[end].conditional
    ):
        end += 1
    if first == end or not (first or end - first > 1 or page.claims_in_prompt or _says_yes(page)):
        return []
    return [Draft((first, end), (first - 1, first) if first else None)]


def _answers(page: Page, k: int) -> bool:
    said = page.propositions[k]
    if said.rule or _is_own_step(page, said):
        return False
    if said.calculation:
        if k and not page.propositions[k - 1].calculation and _answers(page, k - 1):
            return True
        return _says_yes(page) and sum(w[0].isdigit() for w in said.content - page.prompt) > 1
    if said.learned or said.learning or said.feeling or said.vouched or said.bare:
        return False
    amount = not said.words.isdisjoint(_AMOUNT)
    if said.verb is None or not (said.mathematical or said.numbers or amount):
        return False
    if page.parse.tokens[said.verb].tag == "VBD" and not _of_another(page, said):
        return False
    if not (said.structure or amount or said.names):
        return False
    if is_general(page.parse, said.clause.first, said.clause.after):
        return True
    own = said.content - page.prompt - _SAYS_YES
    following = page.propositions[k + 1 : k + 2]
    put_to_use = any(after.calculation for after in following)
    return len(own) > 1 or (bool(own) and (not said.judges or put_to_use))


def _says_yes(page: Page) -> bool:
    return bool(page.parse.tokens) and page.parse.tokens[0].lower in _SAYS_YES


def _is_own_step(page: Page, said: Proposition) -> bool:
    """Say so of "I did ..."; what somebody else did can be why an answer is wrong."""
    return said.told and not _of_another(page, said)


def _of_another(page: Page, said: Proposition) -> bool:
    subject = {t.lower for t in page.parse.tokens[said.core : said.verb]}
    return not subject.isdisjoint(("he", "she", "they"))
