"""What a reason stands on: mathematics, a procedure, the claim itself, or nothing mathematical."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.reasons.propositions import Proposition
from journal.records import Ground


def check_ground(
    reason: Sequence[Proposition], claim: Sequence[Proposition], *, follows: bool = False
) -> Ground:
    """Say what a reason stands on.

    Parameters
    ----------
    reason : sequence of Proposition
        What is given as the reason; not empty.
    claim : sequence of Proposition
        What it is given for; empty where the claim is not written.
    follows : bool
        Whether the claim is said to follow ("so ..."): it may then take up the reason's words.

    Returns
    -------
    Ground
        Rule R1: a feeling, somebody's word or a guess is no ground. Rule R13: steps told are a
        ground where working in numbers or names is joined to a result, and only a procedure where
        one step is given for another.
    """
    sound = [said for said in reason if not (said.feeling or said.vouched or said.bare)]
    if not any(said.mathematical and _says_something(said) for said in sound):
        return "not_mathematical"
    if follows and not any(_can_follow(said) for said in claim):
        return "not_mathematical"
    if claim and _repeats(sound, claim, follows):
        return "circular"
    if any(said.feeling and not said.mathematical for said in claim):
        return "not_mathematical"
    if all(said.told or said.learned for said in sound):
        return "mathematical" if _is_working(sound, claim) else "procedural"
    return "mathematical"


def _is_working(sound: Sequence[Proposition], claim: Sequence[Proposition]) -> bool:
    """R13: steps joined to a result; to the answer of the prompt only with their numbers."""
    if claim:
        return any(is_result(said) for said in claim) and any(len(s.content) > 1 for s in sound)
    numbers = {word for said in sound for word in said.content if word[0].isdigit()}
    return len(numbers) > 1 and not any(said.learned for said in sound)


def _can_follow(said: Proposition) -> bool:
    """Say so of a statement; "so we did it again" draws on no mathematics."""
    return said.mathematical or (said.clause.predicate and not said.told)


def is_result(said: Proposition) -> bool:
    """Say whether a clause states what came out, not what was done."""
    return not said.told or said.calculation or said.judges


def _says_something(said: Proposition) -> bool:
    """Say so: "because the hall" joins nothing, "because same denominators" does."""
    return said.clause.predicate or said.structure > 0


def _repeats(reason: Sequence[Proposition], claim: Sequence[Proposition], follows: bool) -> bool:
    given: frozenset[str] = frozenset().union(*(said.content for said in reason))
    claimed: frozenset[str] = frozenset().union(*(said.content for said in claim))
    exactly = follows or all(said.calculation for said in reason)
    return bool(given) and (given == claimed if exactly else given <= claimed)
