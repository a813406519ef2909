"""What a reason stands on: mathematics, a procedure, the claim itself, or nothing mathematical."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.mathematics import MathematicsKind
from journal.evidence.reasons.propositions import WORDS, Page, Proposition
from journal.records import Ground

_AMOUNT = WORDS["amount"]
# A ruler or a table is handled; by itself it is no mathematics said.
_KINDS: tuple[MathematicsKind, ...] = ("quantity", "term", "operation", "relation")
_RECORDS = frozenset(("write", "draw", "colour", "color", "put", "stick", "label"))
_PER = frozenset(("each", "every", "per", "only"))


def check_ground(
    page: Page,
    reason: Sequence[Proposition],
    claim: Sequence[Proposition],
    *,
    follows: bool = False,
) -> Ground:
    """Say what a reason stands on.

    Parameters
    ----------
    page : Page
        The entry.
    reason : sequence of Proposition
        What is given as the reason; not empty.
    claim : sequence of Proposition
        What it is given for; empty where the claim is not written.
    follows : bool
        Whether the claim is said to follow ("so ..."): it may then take up the reason's words.

    Returns
    -------
    Ground
        Rule R1: a feeling, somebody's word or a guess is no ground, nor is a reason for a comment
        on own learning. Rule R3: a rule told from memory is a procedure. Rule R13: steps told are
        a ground where working in numbers or names is joined to a result, and only a procedure
        where one step is given for another.
    """
    sound = [
        said for said in reason if not (said.feeling or said.vouched or said.bare or said.learning)
    ]
    about = page.asked or any(said.mathematical or said.judges for said in claim)
    if not any(_says_something(said) and _speaks(page, said, about=about) for said in sound):
        return "not_mathematical"
    if follows and not any(_can_follow(page, said) for said in claim):
        return "not_mathematical"
    if claim and all(said.learning for said in claim):
        return "not_mathematical"
    if claim and _repeats(page, sound, claim, follows):
        return "circular"
    if any(said.feeling and not said.mathematical for said in claim):
        return "not_mathematical"
    if all(said.told or said.learned for said in sound):
        return "mathematical" if _is_working(sound, claim) else "procedural"
    if all(said.told or said.learned or said.rule for said in sound):
        return "procedural"
    return "mathematical"


def _speaks(page: Page, said: Proposition, *, about: bool) -> bool:
    """Say whether a clause speaks of mathematics, or of an amount where mathematics is claimed."""
    if said.structure or page.mathematics.any_in(said.clause.first, said.clause.after, *_KINDS):
        return True
    if not about or said.told:
        return False
    return said.judges or said.numbers > 0 or not said.words.isdisjoint(_AMOUNT)


def _is_working(sound: Sequence[Proposition], claim: Sequence[Proposition]) -> bool:
    """R13: steps joined to a result; to the answer of the prompt only with their numbers."""
    if claim:
        return any(is_result(said) for said in claim) and any(len(s.content) > 1 for s in sound)
    numbers = {word for said in sound for word in said.content if word[0].isdigit()}
    return len(numbers) > 1 and not any(said.learned for said in sound)


def _can_follow(page: Page, said: Proposition) -> bool:
    """Say so of a statement; "so we did it again" draws on no mathematics."""
    if said.told and said.verb is not None:
        # "so I wrote square" records, "so I added 7" draws on what was said.
        return said.mathematical and page.parse.tokens[said.verb].lemma not in _RECORDS
    return said.mathematical or (said.clause.predicate and not said.learning)


def is_result(said: Proposition) -> bool:
    """Say whether a clause states what came out, not what was done."""
    return not said.told or said.calculation or said.judges


def _says_something(said: Proposition) -> bool:
    """Say so: "because the hall" joins nothing, "because same denominators" and "6 x 10" do."""
    whole = said.names and len(said.content) > 2
    return said.clause.predicate or said.structure > 0 or said.calculation or whole


def _repeats(
    page: Page, reason: Sequence[Proposition], claim: Sequence[Proposition], follows: bool
) -> bool:
    given: frozenset[str] = frozenset().union(*(said.content for said in reason))
    claimed: frozenset[str] = frozenset().union(*(said.content for said in claim))
    if not given or given == claimed:
        return bool(given)
    exactly = follows or all(said.calculation for said in reason)
    return given <= claimed and not exactly and not _has_other_subject(page, reason, claim)


def _has_other_subject(
    page: Page, reason: Sequence[Proposition], claim: Sequence[Proposition]
) -> bool:
    """Say so of "3/4 is bigger because the numbers are bigger" and of "each top has 2"."""
    tokens = page.parse.tokens
    said_before = {t.lemma for said in claim for t in tokens[said.clause.first : said.clause.after]}
    return any(
        t.lower in _PER or (t.pos == "NOUN" and t.lemma not in said_before)
        for said in reason
        for t in tokens[said.core : said.verb]
    )
