"""All reasons of an entry, put together."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.mathematics import Mathematics
from journal.evidence.reasons.answers import find_answers
from journal.evidence.reasons.checks import find_checks, find_estimates, mark_cases
from journal.evidence.reasons.drafts import Draft
from journal.evidence.reasons.examples import find_examples
from journal.evidence.reasons.links import find_links
from journal.evidence.reasons.marked import CAUSAL, find_marked
from journal.evidence.reasons.propositions import Page, read_page
from journal.evidence.reasons.purposes import find_purposes
from journal.evidence.reasons.unmarked import find_unmarked
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.records import Claim, Marker, Reason, Span

_GROUND_WORDS = {
    "mathematical": "it speaks of the mathematics",
    "procedural": "it tells a step, not why",
    "circular": "it says the claim again",
    "not_mathematical": "nothing mathematical is given as the reason",
}
_ROLE_WORDS = {
    "grounds": "the reason given",
    "link": "says why the reason settles it",
    "check": "a check, written out",
    "counter_example": "a case that goes against it",
    "limit": "where it works and where it stops",
}


def find_reasons(
    parse: Parse,
    markers: Sequence[Marker],
    claims: Sequence[Claim],
    mathematics: Mathematics,
    setting: Setting,
) -> list[Reason]:
    """Find the reasons of an entry, with and without a connective.

    Parameters
    ----------
    parse : Parse
        The entry.
    markers : sequence of Marker
        As `find_markers` gives them.
    claims : sequence of Claim
        As `find_claims` gives them.
    mathematics : Mathematics
        What each token speaks of.
    setting : Setting
        What was set.

    Returns
    -------
    list of Reason
        Sorted by start of the reason; ``marker`` and ``supports`` are positions in ``markers`` and
        in this list. No reason and claim lie on two sides of an adult's prompt.
    """
    joints: set[int] = set()
    for marker in markers:
        if marker.function in CAUSAL and marker.reading != "look_alike":
            joints.update(range(*parse.tokens_in(marker.start, marker.end)))
    page = read_page(parse, mathematics, joints, setting.prompt)
    drafts = find_marked(page, markers)
    drafts += find_unmarked(page, drafts)
    drafts += find_checks(page, drafts)
    drafts += find_estimates(page, drafts)
    drafts += find_purposes(page, drafts)
    drafts += mark_cases(page, drafts)
    drafts += find_examples(page, drafts)
    drafts += find_answers(page, drafts)
    drafts += find_links(page, drafts)
    return _record(page, drafts)


def _record(page: Page, drafts: list[Draft]) -> list[Reason]:
    drafts = sorted(drafts, key=lambda draft: (draft.reason, draft.role != "grounds"))
    places = {id(draft): number for number, draft in enumerate(drafts)}
    found = []
    for draft in drafts:
        reason = _span(page, draft.reason)
        words = page.parse.text[reason[0] : reason[1]]
        found.append(
            Reason(
                marker=draft.marker,
                claim=None if draft.claim is None else _span(page, draft.claim),
                reason=reason,
                role=draft.role,
                supports=None if draft.supports is None else places.get(id(draft.supports)),
                ground=draft.ground,
                why=f"“{words}”: {_ROLE_WORDS[draft.role]}; {_GROUND_WORDS[draft.ground]}",
            )
        )
    return found


def _span(page: Page, positions: tuple[int, int]) -> Span:
    first = page.propositions[positions[0]].clause.first
    after = page.propositions[positions[1] - 1].clause.after
    while after - 1 > first and page.parse.tokens[after - 1].pos == "PUNCT":
        after -= 1
    return page.parse.span(first, after)
