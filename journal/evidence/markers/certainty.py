"""Markers of how sure a mathematical claim is: must, has to, can't be, might, probably."""

from __future__ import annotations

from journal.evidence.markers.joining import in_context, is_feeling, subject, tells_tally
from journal.evidence.markers.view import Judgement, Occurrence, Stretch, View
from journal.evidence.markers.words import PEOPLE, STOPS, WORDS

_THING = WORDS["certainty.thing"]
_BE = WORDS["certainty.be"]
_DOERS = WORDS["certainty.doers"]
_RIGHT_OR_WRONG = frozenset(("right", "wrong", "correct", "true", "mistaken"))
_STEPS = WORDS["certainty.steps"]
_CLOSE = 6


def _about(view: View, at: Occurrence) -> tuple[str, tuple[int, int], tuple[int, int], str]:
    left, right = view.opening(at.first), view.following(at.after)
    span = view.quote(max(left[0], at.first - 2), min(right[1], at.after + 5))
    who = _grammatical_subject(view, at) or subject(view, left)
    if not who and left[0] and view.word(at.first - 1) not in STOPS:
        # "we each got a card and had to stand": the subject is said once.
        who = subject(view, view.before(left[0]))
    return who, left, right, span


def _grammatical_subject(view: View, at: Occurrence) -> str:
    """Return the subject of the verb, as the parse has it, where it stands close before.

    "if I move the cubes the volume has to stay": the clause opens with 'I', but the volume has to.
    """
    token = view.parse.tokens[at.first]
    for verb in (token.index, token.head):
        at_subject = view.parse.child(verb, "nsubj", "nsubjpass", "expl")
        if at_subject is not None and at.first - _CLOSE <= at_subject < at.first:
            return view.words[at_subject]
    return ""


def _sure(span: str) -> Judgement:
    return Judgement("reasoning", f"{span} says how sure the mathematics is")


def _other(span: str) -> Judgement:
    return Judgement(
        "look_alike", f"{span} says what somebody does, not how sure the mathematics is"
    )


def _not_mathematical(span: str) -> Judgement:
    return Judgement("no_mathematics", f"{span} says nothing mathematical")


def read_must(view: View, at: Occurrence) -> Judgement:
    """Tell a certain conclusion from a duty."""
    who, left, right, span = _about(view, at)
    if who in _DOERS or who in PEOPLE:
        if view.maths(right) and at.after - at.first > 1 and not is_feeling(view, right):
            return _sure(span)
        return _other(span)
    if is_feeling(view, right):
        return _not_mathematical(span)
    if view.maths(right) or view.maths((left[0], at.first)):
        return _sure(span)
    if who in _THING and view.maths((max(0, at.first - 25), at.first)):
        return _sure(span)
    return _other(span)


def read_have_to(view: View, at: Occurrence) -> Judgement:
    """Tell a necessity of the mathematics from something to do."""
    who, left, right, span = _about(view, at)
    if who in _DOERS or who in PEOPLE or is_feeling(view, right):
        return _other(span)
    if view.word(at.first - 1) in PEOPLE or (
        who == "you" and view.word(at.first) == "had" and _is_recount(view, left, right)
    ):
        return _other(span)
    if view.maths((at.after, right[1])) or view.maths((left[0], at.first)):
        return _sure(span)
    if who in ("you", *_THING):
        further = view.following(right[1] + 1)
        if view.maths(further) and view.word(right[1]) in ("because", "so", "cos", "since", "as"):
            return _sure(span)
        if who in _THING and view.maths((max(0, at.first - 25), at.first)):
            return _sure(span)
    return _other(span)


def _is_recount(view: View, left: Stretch, right: Stretch) -> bool:
    """Say whether "you had to" tells one of the steps of the lesson."""
    around = (max(0, left[0] - 1), right[1] + 1)
    return view.has(around, _STEPS) or any(
        view.tags[i] == "VBD" and view.words[i] != "had"
        for i in range(max(0, left[0] - 8), left[0])
    )


def read_cannot(view: View, at: Occurrence) -> Judgement:
    """Tell what the mathematics rules out from what somebody is not able to do."""
    who, left, right, span = _about(view, at)
    if who in _DOERS or who in PEOPLE:
        return _other(span)
    if is_feeling(view, right):
        return _not_mathematical(span)
    if view.maths((at.after, right[1])) or view.maths((left[0], at.first)):
        return _sure(span)
    if who in (*_THING, "you") and view.maths((max(0, at.first - 25), at.first)):
        return _sure(span)
    return _other(span)


def read_might(view: View, at: Occurrence) -> Judgement:
    """Ask whether a mathematical claim is held to be possible."""
    who, left, right, span = _about(view, at)
    if who in _DOERS or who in PEOPLE:
        # "I might be wrong but 5/8 is bigger" hedges the claim that follows.
        claim = (at.after, view.following(right[1] + 1)[1])
        if view.has((at.after, min(at.after + 2, right[1])), _RIGHT_OR_WRONG) and view.maths(claim):
            return _sure(span)
        return _not_mathematical(span)
    if is_feeling(view, right):
        return _not_mathematical(span)
    if view.maths((at.after, right[1])) or view.maths((left[0], at.first)):
        return _sure(span)
    if who in _THING and view.maths((max(0, at.first - 25), at.first)):
        return _sure(span)
    return _not_mathematical(span)


def read_could(view: View, at: Occurrence) -> Judgement:
    """Tell what is possible in the mathematics from what somebody was able to do."""
    who, left, right, span = _about(view, at)
    if (
        who in _DOERS
        or who in PEOPLE
        or who == "you"
        or (who not in _THING and not view.maths(left))
    ):
        return _other(span)
    if view.word(at.after) in _BE and view.maths(right) and not is_feeling(view, right):
        return _sure(span)
    return _other(span)


def read_maybe(view: View, at: Occurrence) -> Judgement:
    """Ask whether the claim beside the word is mathematical."""
    who, left, right, span = _about(view, at)
    if not who:
        who = subject(view, right)
    if view.maths(right) and view.word(right[0]) in PEOPLE:
        who = view.word(right[0])
    if is_feeling(view, right) or who in PEOPLE:
        return _not_mathematical(span)
    if view.maths(right) or view.maths((left[0], at.first)):
        return _sure(span)
    if who in _THING and view.maths((max(0, at.first - 25), at.first)):
        return _sure(span)
    return _not_mathematical(span)


def read_i_think(view: View, at: Occurrence) -> Judgement:
    """Ask whether what the child thinks or reckons is a mathematical claim."""
    right = view.following(at.after)
    if view.word(right[0]) == "that":
        right = view.following(right[0] + 1)
    span = view.quote(at.first, min(right[1], at.after + 6))
    if right[0] >= right[1] or view.word(at.after) in ("so", "about", "of"):
        if view.word(at.after) in ("of", "about") and in_context(view, at.first):
            return _sure(span)
        return Judgement("look_alike", f"{span} holds no claim")
    who = subject(view, right)
    if (
        is_feeling(view, right)
        or tells_tally(view, right)
        or (who in PEOPLE and not view.maths(right, "quantity", "relation"))
    ):
        return _not_mathematical(span)
    if view.maths(right):
        return _sure(span)
    return _not_mathematical(span)
