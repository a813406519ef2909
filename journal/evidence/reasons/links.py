"""The second step of an argument: a stated property, definition or fact that settles the reason."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.reasons.drafts import Draft, said_in
from journal.evidence.reasons.generality import is_general
from journal.evidence.reasons.propositions import WORDS, Page, Proposition
from journal.evidence.reasons.stretches import widens

_TAKES_UP = frozenset(("that", "thats", "it", "its", "which", "this"))
_OPPOSITES = frozenset(("or", "otherwise", "else"))
_NEEDS = frozenset(("cant", "ca", "can't", "cannot", "need", "needs", "must", "has", "have"))
_NUMBER_WORDS = frozenset(
    ("one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten", "half", "third")
)
_ASIDE = frozenset(
    ("other", "quick", "quicker", "easy", "easier", "fast", "faster", "simple", "simpler")
)
_WOULD = frozenset(("would", "wouldnt", "wo", "could", "couldnt", "'d", "d"))


def find_links(page: Page, drafts: Sequence[Draft]) -> list[Draft]:
    """Return a draft for each link, and give chained drafts the role of one.

    Parameters
    ----------
    page : Page
        The entry.
    drafts : sequence of Draft
        The reasons found so far, in order; those that prove to be links are changed.

    Returns
    -------
    list of Draft
        The links found inside or beside the reasons, to be added to them.
    """
    links = []
    grounded = [
        draft
        for draft in drafts
        if draft.ground == "mathematical"
        and not draft.example
        # "Because ..." in answer to nothing settles nothing.
        and (draft.claim is not None or page.asked or draft.marker is None)
    ]
    for number, draft in enumerate(grounded):
        _chain(page, draft, grounded[:number])
        inside = _split(page, draft)
        beside = inside or _within_claim(page, draft) or _find_beside(page, draft, grounded)
        if beside is not None:
            links.append(beside)
        elif draft.role == "grounds" and (
            _is_whole_argument(page, draft)
            or _is_fact_applied(page, draft)
            or _is_needed(page, draft)
            or any(supposes(page, j) for j in range(*draft.reason))
        ):
            draft.role = "link"
    return links


def is_link(said: Proposition, before: Sequence[Proposition]) -> bool:
    """Say whether a clause carries an argument a step further than those before it.

    A bare calculation, a step told, a repetition and one more feature of the same shape do not.
    """
    if not said.states or not said.mathematical or said.calculation:
        return False
    numbers = sum(any(map(str.isdigit, w)) or w in _NUMBER_WORDS for w in said.content)
    if not (said.structure or said.generic or said.names or numbers > 1):
        return False
    if any(_says_again(said, earlier) for earlier in before):
        return False
    if len(said.content) < 2 or not said.content.isdisjoint(_ASIDE):
        # "but 9 isn't", "the other one was obtuse", "counting up is quicker"
        return said.structure > 0 and said.content.isdisjoint(_ASIDE)
    features = [earlier for earlier in before if earlier.lists_parts]
    counts = numbers > 0 or len(said.content) < 3
    return not (said.lists_parts and features and counts and not said.generic)


def _says_again(said: Proposition, earlier: Proposition) -> bool:
    """Say so of the same words; the same numbers can stand in another relation."""
    if said.content == earlier.content:
        return True
    return said.content <= earlier.content and not any(w[0].isdigit() for w in said.content)


def is_applied(said: Proposition, facts: Sequence[Proposition]) -> bool:
    """Say whether a sum puts a stated fact to use: "one person is 75 and 75 x 10 is 750"."""
    return said.calculation and any(
        fact.states
        and not fact.calculation
        and (fact.mathematical or fact.generic)
        and not said.content <= fact.content
        for fact in facts
    )


def _is_one_step(page: Page, j: int) -> bool:
    """Say whether a clause belongs to the one before: a condition, or what came of a sum."""
    said, before = page.propositions[j], page.propositions[j - 1]
    follows = before.conditional and said.clause.joint != "and"
    if said.conditional or (follows and not supposes(page, j)):
        return True
    subject = page.parse.tokens[said.core].lower
    return before.calculation and subject in _TAKES_UP and said.numbers == 0


def supposes(page: Page, j: int) -> bool:
    """Say whether a clause draws what would follow from the opposite ("or else ...", "would")."""
    said = page.propositions[j]
    if not _OPPOSITES.isdisjoint(said.clause.joints):
        return said.clause.predicate and not said.told
    if not j or not page.propositions[j - 1].conditional:
        return False
    return not said.words.isdisjoint(_WOULD)


def _chain(page: Page, draft: Draft, earlier: Sequence[Draft]) -> None:
    """Join "X because Y so Z" and "Y so Z so W" where the later step is a link."""
    for before in reversed(earlier):
        carried = said_in(page, before.reason) + said_in(page, before.claim)
        within = before.reason[0] <= draft.reason[0] and draft.reason[1] <= before.reason[1]
        if within and draft.claim is not None:
            steps = said_in(page, draft.claim)
        elif before.claim == draft.reason:
            steps, carried = said_in(page, draft.reason), said_in(page, before.reason)
        elif draft.claim == before.claim and before.marker != draft.marker:
            # "X so Z because Y"
            steps = said_in(page, draft.reason)
        elif draft.claim == before.reason or draft.reason[0] == before.reason[1]:
            steps = said_in(page, draft.reason)
        else:
            continue
        draft.supports = before
        # "so when you put them together its still all pairs"
        made = steps[0].conditional and not any(s.judges or s.told for s in steps[1:])
        if any(is_link(step, carried) for step in steps) or (
            made and any(step.mathematical for step in steps[1:])
        ):
            draft.role = "link"
        return


def _split(page: Page, draft: Draft) -> Draft | None:
    """Cut a link off the end of a reason of several clauses."""
    first, end = draft.reason
    claim = said_in(page, draft.claim)
    if draft.role in ("counter_example", "limit", "check"):
        return None
    for j in range(first + 1 + _only_looks(page, first), end):
        said = page.propositions[j]
        if _is_one_step(page, j) or all(_only_handles(page, i) for i in range(first, j)):
            continue
        earlier = page.propositions[first:j]
        if (
            is_link(said, [*earlier, *claim])
            or is_applied(said, earlier)
            or (supposes(page, j) and not said.conditional)
        ):
            draft.reason = first, j
            return Draft((j, end), draft.claim, draft.marker, "link", supports=draft)
    # "Angles in a triangle add to 180 and the other two make 120": the fact comes first.
    fact = page.propositions[first]
    rest = [s for s in page.propositions[first + 1 : end] if not s.conditional]
    if _only_looks(page, first):
        return None
    if fact.conditional:
        return None
    if fact.generic and is_link(fact, claim) and any(s.mathematical and not s.told for s in rest):
        draft.reason = first + 1, end
        return Draft((first, first + 1), draft.claim, draft.marker, "link", supports=draft)
    return None


def _only_handles(page: Page, k: int) -> bool:
    """Say so of "I tried to divide it": what was seen then is the first step."""
    said = page.propositions[k]
    if not said.told or said.verb is None:
        return False
    return page.parse.tokens[said.verb].lemma in WORDS["handling"]


def _only_looks(page: Page, k: int) -> bool:
    said = page.propositions[k]
    if said.verb is None or said.clause.joint not in ("if", "when"):
        return False
    return page.parse.tokens[said.verb].lemma in WORDS["looking"]


def _within_claim(page: Page, draft: Draft) -> Draft | None:
    """Find the fact in "so it has more than two factors and a prime can only have two"."""
    if draft.claim is None:
        return None
    first, end = draft.claim
    for j in range(first + 1, end):
        said = page.propositions[j]
        earlier = said_in(page, draft.reason) + page.propositions[first:j]
        if _is_one_step(page, j) or widens(page, said):
            continue
        # What stands before "because" is the claim; what follows "so" goes on.
        further = said.generic or first >= draft.reason[1]
        if further and (is_link(said, earlier) or is_applied(said, earlier[:-1])):
            draft.claim = first, j
            return Draft((j, end), draft.claim, None, "link", supports=draft)
    return None


def _find_beside(page: Page, draft: Draft, drafts: Sequence[Draft]) -> Draft | None:
    """Find a general fact in the sentence after an argument, or in the one before it."""
    ends = [draft.reason[1]] + ([draft.claim[1]] if draft.claim else [])
    starts = [draft.reason[0]] + ([draft.claim[0]] if draft.claim else [])
    own = said_in(page, draft.reason) + said_in(page, draft.claim)
    spoken: frozenset[str] = frozenset().union(*(said.content for said in own))
    for j in (max(ends), min(starts) - 1):
        if not 0 <= j < len(page.propositions):
            continue
        said = page.propositions[j]
        taken = any(_holds(d.reason, j) or _holds(d.claim, j) for d in drafts)
        if taken or said.conditional or not is_link(said, own) or widens(page, said):
            continue
        if j > 0 and page.propositions[j - 1].conditional:
            continue
        if j == max(ends):
            beside = not said.clause.opens_sentence and said.structure > 0
        else:
            beside = "but" in page.propositions[j + 1].clause.joints and said.structure > 0
        if not (beside or said.generic or _is_fact(page, said)):
            continue
        if beside or not said.content.isdisjoint(spoken):
            return Draft((j, j + 1), draft.claim, None, "link", supports=draft)
    return None


def _is_fact_applied(page: Page, draft: Draft) -> bool:
    """Say so of "a straight line is 180 degrees so you take away 65 and its 115"."""
    reason, claim = said_in(page, draft.reason), said_in(page, draft.claim)
    if not any(_is_fact(page, said) for said in reason):
        return False
    worked = [said for said in claim if sum(w[0].isdigit() for w in said.content) > 1]
    return len(claim) > 1 or bool(worked)


def _is_needed(page: Page, draft: Draft) -> bool:
    """Say so of "they are not the same size so you cant compare", on the way to an answer."""
    if not page.asked or draft.claim is None or draft.claim[0] < draft.reason[0]:
        return False
    return any(
        said.states
        and not said.judges
        and not said.calculation
        and bool(said.content - page.prompt)
        and not said.words.isdisjoint(_NEEDS)
        for said in said_in(page, draft.claim)
    )


def _is_fact(page: Page, said: Proposition) -> bool:
    """Say whether a clause states a definition or a property of every such thing."""
    if not said.states or said.verb is None or said.calculation:
        return False
    tokens = page.parse.tokens
    defines = any(
        tokens[i].lemma in WORDS["definition"] for i in range(said.verb, said.clause.after)
    )
    subject = [t.lower for t in tokens[said.core : said.verb]]
    each = subject[:1] in (["each"], ["every"], ["all"], ["both"]) or "you" in subject
    return (said.generic and said.names and not each) or defines or "table" in subject


def _has(page: Page, said: Proposition) -> bool:
    """Say so of "it has 2 parts": a feature noticed."""
    return said.verb is not None and page.parse.tokens[said.verb].lemma == "have"


def _holds(span: tuple[int, int] | None, j: int) -> bool:
    return span is not None and span[0] <= j < span[1]


def _is_whole_argument(page: Page, draft: Draft) -> bool:
    """Say whether a general claim rests on one clause that itself holds why it is so."""
    reason, claim = said_in(page, draft.reason), said_in(page, draft.claim)
    if not any(is_general(page.parse, said.clause.first, said.clause.after) for said in claim):
        return False
    claimed: frozenset[str] = frozenset().union(*(said.content for said in claim))
    return any(
        (said.structure > 1 or (said.structure and not _has(page, said)))
        and not said.told
        and not said.calculation
        and not said.lists_parts
        and len(said.content - claimed) >= 2
        for said in reason
    )
