"""Reasons that no connective joins (rule R2)."""

from __future__ import annotations

import re
from collections.abc import Sequence

from journal.evidence.reasons.drafts import Draft, said_in, taken_by
from journal.evidence.reasons.ground import check_ground
from journal.evidence.reasons.propositions import WORDS, Page, Proposition

_PROPERTY = WORDS["property"]
_SAME_OBJECT = WORDS["same_object"]
_RENAMED = re.compile(
    r"\bwhich (is|are|makes?|means|equals) (the same as |equal to |also )?"
    r"([0-9]+/[0-9]+|half|(a|one) (half|third|quarter|fifth|tenth|whole))\b"
)
_HOW_I_KNOW = ("how i know", "how i knew", "why", "how you know", "how we know")


def find_unmarked(page: Page, drafts: Sequence[Draft]) -> list[Draft]:
    """Return a draft for each claim with a property of the same thing beside it.

    Parameters
    ----------
    page : Page
        The entry.
    drafts : sequence of Draft
        The reasons already found; clauses in them are not read again.

    Returns
    -------
    list of Draft
        In order.
    """
    taken = taken_by(drafts)
    found = []
    k = 0
    while k < len(page.propositions):
        if k not in taken:
            draft = (
                _explained_by_next(page, k, taken)
                or _known_by_last(page, k, taken)
                or _renamed(page, k)
            )
            if draft is not None:
                draft.ground = check_ground(
                    page, said_in(page, draft.reason), said_in(page, draft.claim)
                )
                if draft.ground == "mathematical" and not _crosses(page, draft):
                    found.append(draft)
                    k = max(draft.reason[1], k + 1)
                    continue
        k += 1
    return found


def _explained_by_next(page: Page, k: int, taken: set[int]) -> Draft | None:
    claim = page.propositions[k]
    if not is_claim(claim):
        return None
    j = k + 1
    while j < len(page.propositions) and page.propositions[j].told and j < k + 2:
        j += 1
    if j >= len(page.propositions) or j in taken:
        return None
    reason = page.propositions[j]
    if not _is_property(page, reason, claim):
        return None
    end = j + 1
    while (
        end < len(page.propositions)
        and end not in taken
        and not page.propositions[end].clause.opens_sentence
        and not page.propositions[end].told
        and not page.propositions[end].learned
    ):
        end += 1
    return Draft((j, end), (k, k + 1))


def _known_by_last(page: Page, k: int, taken: set[int]) -> Draft | None:
    """Find the reason before "that's how I know"."""
    said = page.propositions[k]
    if k == 0 or k - 1 in taken or not said.text.startswith(("that", "this")):
        return None
    if not any(phrase in said.text for phrase in _HOW_I_KNOW):
        return None
    return Draft((k - 1, k), (k, k + 1))


def _renamed(page: Page, k: int) -> Draft | None:
    """R15: "3 out of 9, which is 1/3" and "... which is the same as a half"."""
    said = page.propositions[k]
    opened = said.clause.joint == "which"
    if not (opened or "which" in said.words) or said.told or said.learned:
        return None
    if not _RENAMED.search(f"which {said.text}" if opened else said.text):
        return None
    return Draft((k, k + 1), None)


def is_claim(said: Proposition) -> bool:
    """Say whether a clause judges something, so that a property beside it can be its reason."""
    return (
        said.judges
        and said.mathematical
        and not said.told
        and not said.learned
        and not said.feeling
        and not said.lists_parts
    )


def _is_property(page: Page, said: Proposition, claim: Proposition) -> bool:
    if said.verb is None or not said.mathematical or said.learned or said.feeling or said.told:
        return False
    if said.vouched or said.bare or said.content <= claim.content:
        return False
    tokens = page.parse.tokens
    if _action(page, said) not in _PROPERTY and "=" not in tokens[said.verb].text:
        return False
    if ":" in said.clause.joints:
        return True
    if said.calculation and "and" in said.clause.joints:
        return False
    subject = [token.lower for token in tokens[said.core : said.verb]]
    shares = not said.content.isdisjoint(claim.content)
    if said.calculation:
        return shares and not claim.calculation
    if tokens[said.core].lower == "its" or not _SAME_OBJECT.isdisjoint(subject):
        return True
    if said.generic and said.structure > 0:
        return True
    return shares or (bool(subject) and subject[0] in ("the", "you") and said.structure > 0)


def _action(page: Page, said: Proposition) -> str:
    """Return the lemma of the verb that says what is so, past "can" and "do n't"."""
    tokens = page.parse.tokens[said.verb : said.clause.after]
    return next((token.lemma for token in tokens if token.pos == "VERB"), tokens[0].lemma)


def _crosses(page: Page, draft: Draft) -> bool:
    first = min(draft.reason[0], draft.claim[0] if draft.claim else draft.reason[0])
    last = max(draft.reason[1], draft.claim[1] if draft.claim else 0) - 1
    return page.parse.crosses_break(
        page.propositions[first].clause.first, page.propositions[last].clause.after
    )
