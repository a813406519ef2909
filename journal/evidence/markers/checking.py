"""Markers that point to evidence: for example, you can see, I checked, prove, it shows."""

from __future__ import annotations

from journal.evidence.markers.joining import is_feeling, subject, tells_check
from journal.evidence.markers.view import Judgement, Occurrence, View
from journal.evidence.markers.words import PEOPLE, STOPS, WORDS

_TOLD = WORDS["checking.told"]
_CHECKED = WORDS["checking.checked"]
_AUDIENCE = WORDS["checking.audience"]


def _nearby(view: View, at: Occurrence, extra: int = 0) -> tuple[int, int]:
    right = view.following(at.after)
    after = right[1]
    if extra and after < len(view.words):
        after = min(view.following(after + 1)[1], after + extra)
    return at.after, max(at.after, after)


def _said_before(view: View, at: Occurrence) -> tuple[int, int]:
    """Return the clause before, which "you can see it" or "I can prove it" points back to."""
    return view.before(view.opening(at.first)[0])[0], at.first


def read_example(view: View, at: Occurrence) -> Judgement:
    """Ask whether the example is a mathematical one."""
    right = _nearby(view, at)
    span = view.quote(at.first, min(right[1], at.after + 6))
    if at.after - at.first == 1 and view.word(at.first) == "example":
        return Judgement("look_alike", "'example' names a thing, it gives none")
    left = view.opening(at.first)
    if right[0] >= right[1]:
        right = left
    if view.maths(right) and not is_feeling(view, right):
        return Judgement("reasoning", f"{span} gives an example")
    return Judgement("no_mathematics", f"{span} gives no mathematical example")


def read_you_can_see(view: View, at: Occurrence) -> Judgement:
    """Ask whether something mathematical is there to be seen."""
    right = _nearby(view, at)
    left = _said_before(view, at)
    span = view.quote(at.first, min(right[1], at.after + 6))
    if view.maths(right) or (
        view.word(at.after) in ("it", "this", "that", "from", "because") and view.maths(left)
    ):
        return Judgement("reasoning", f"{span} points to what shows it")
    return Judgement("no_mathematics", f"{span} points to nothing mathematical")


def read_checked(view: View, at: Occurrence) -> Judgement:
    """Ask whether a check of the mathematics is told."""
    right = _nearby(view, at, extra=12)
    span = view.quote(at.first, min(right[1], at.after + 7))
    one = at.after - at.first == 1
    if (
        one
        and view.word(at.first) in ("check", "checking")
        and view.word(at.first - 1) in ("the", "a", "my", "in", "spelling", "to")
        and not view.maths(right)
    ):
        return Judgement("look_alike", f"{span} tells of no check of the mathematics")
    left = view.opening(at.first)
    if subject(view, left) in _TOLD:
        return Judgement("no_mathematics", f"{span}: somebody else checked")
    if (
        view.word(at.after) in ("with", "if")
        and view.word(at.after + 1) in ("my", "miss", "sam", "the", "a")
        and not view.maths(right)
    ):
        return Judgement("no_mathematics", f"{span} tells of no check of the mathematics")
    if _checks_something_else(view, at):
        return Judgement("no_mathematics", f"{span} tells of no check of the mathematics")
    if view.maths(right) or tells_check(view, (at.first, right[1])):
        return Judgement("reasoning", f"{span} tells how it was checked")
    return Judgement("no_mathematics", f"{span} does not say how")


def _checks_something_else(view: View, at: Occurrence) -> bool:
    """Say whether a thing is checked that is no answer: "I checked my spelling"."""
    thing = view.parse.child(at.after - 1, "dobj")
    if thing is None or thing > at.after + 3 or tells_check(view, (at.first, thing + 6)):
        return False
    return (
        view.kinds[thing] is None
        and view.words[thing] not in _CHECKED
        and view.tags[thing] in ("NN", "NNS")
        and not view.maths((at.after, thing + 1))
    )


def read_prove(view: View, at: Occurrence) -> Judgement:
    """Ask whether something mathematical is proved."""
    right = _nearby(view, at)
    left = _said_before(view, at)
    span = view.quote(max(0, at.first - 1), min(right[1], at.after + 6))
    if view.word(at.first - 1) in ("the", "a") and view.word(at.after) in (
        "it",
        "question",
        "sheet",
    ):
        return Judgement("mention", f"{span} names the task")
    if is_feeling(view, right) or (is_feeling(view, left) and not view.maths(right)):
        return Judgement("no_mathematics", f"{span} proves nothing mathematical")
    further = (right[1], min(right[1] + 12, len(view.words)))
    if view.maths(right) or (
        (view.maths(left) or view.maths(further))
        and (
            not view.word(at.after)
            or view.word(at.after) in ("it", "this", "that", "by", "because")
            or view.word(at.after) in STOPS
        )
    ):
        return Judgement("reasoning", f"{span} says that it is proved")
    return Judgement("no_mathematics", f"{span} proves nothing mathematical")


def read_shows(view: View, at: Occurrence) -> Judgement:
    """Tell what shows the mathematics from what is shown to somebody."""
    left = view.opening(at.first)
    right = _nearby(view, at)
    who = subject(view, left)
    span = view.quote(max(left[0], at.first - 2), min(right[1], at.after + 6))
    other = Judgement("look_alike", f"{span}: something is shown to somebody")
    bare = at.form.form == "show"
    if bare and who in _TOLD:
        return other
    if (bare and who in ("i", "we")) or (bare and view.word(at.first - 1) in ("to", "will", "me")):
        if view.word(at.after) in _AUDIENCE or not view.maths(right):
            return other
        if view.word(at.after) not in ("that", "it"):
            return other
        return Judgement("reasoning", f"{span} points to what shows it")
    if view.word(at.after) in ("my", "me", "us", "him", "her") and not view.maths(right):
        return other
    if bare and who in PEOPLE:
        return other
    if view.maths(right) or (
        view.maths(_said_before(view, at))
        and view.word(at.after) in ("it", "this", "why", "that", "how")
    ):
        return Judgement("reasoning", f"{span} points to what shows it")
    if bare:
        return other
    return Judgement("no_mathematics", f"{span} shows nothing mathematical")


def read_counter_example(view: View, at: Occurrence) -> Judgement:
    """Ask whether a counter-example is given."""
    right = _nearby(view, at, extra=10)
    left = view.opening(at.first)
    if view.maths(right) or view.maths(left):
        return Judgement("reasoning", f"'{at.label}' gives a case against: {view.quote(*right)}")
    return Judgement("mention", f"'{at.label}' is named, none is given")


def read_look_at(view: View, at: Occurrence) -> Judgement:
    """Ask whether the reader is pointed to mathematics."""
    right = _nearby(view, at)
    left = view.opening(at.first)
    near = (at.after, min(at.after + 4, right[1]))
    span = view.quote(at.first, near[1])
    who = subject(view, left)
    if view.maths(near) and not who:
        return Judgement("reasoning", f"{span} points to what shows it")
    return Judgement("look_alike", f"{span} tells of looking, it points to no evidence")
