"""Markers of contrast: but, however, although, while, yet, except."""

from __future__ import annotations

from journal.evidence.markers.joining import (
    first_verb,
    is_action,
    is_feeling,
    is_said,
    is_topic,
    subject,
)
from journal.evidence.markers.view import Judgement, Occurrence, Stretch, View
from journal.evidence.markers.words import PEOPLE, STOPS, SUBJECTS, WORDS

_HAVING = frozenset(("had", "have", "has", "got", "was"))
_ALL = WORDS["contrast.all"]


def judge_contrast(view: View, at: Occurrence, left: Stretch, right: Stretch) -> Judgement:
    """Judge what a contrast joins: two statements, of which neither is a mere feeling."""
    name = f"'{at.label}'"
    if right[0] >= right[1]:
        return Judgement("look_alike", f"nothing follows {name}")
    said = view.quote(*right)
    no = Judgement("no_mathematics", f"{name} joins nothing mathematical: {said}")
    right_counts = view.maths(right) and not is_feeling(view, right) and not is_topic(view, right)
    left_counts = view.maths(left) and not is_feeling(view, left) and not is_topic(view, left)
    if first_verb(view, right) is None and is_feeling(view, left):
        return no
    if not left_counts and (is_action(view, right) or _tells_having(view, right)):
        return no
    if right_counts and not is_said(view, right):
        return Judgement("reasoning", f"{name} sets {said} against {view.quote(*left)}")
    if (
        left_counts
        and not is_feeling(view, right)
        and (
            subject(view, right) not in PEOPLE
            or (not is_action(view, right) and not is_said(view, right))
        )
    ):
        return Judgement("reasoning", f"{name} sets {said} against {view.quote(*left)}")
    if first_verb(view, right) is None and view.word(right[0]) != "not":
        return Judgement("look_alike", f"{name} joins two words, not two statements: {said}")
    return no


def _tells_having(view: View, stretch: Stretch) -> bool:
    """Say whether a clause tells what somebody had: "but in the shop I had two pounds"."""
    verb = first_verb(view, stretch)
    return verb is not None and view.words[verb] in _HAVING and subject(view, stretch) in PEOPLE


def read_but(view: View, at: Occurrence) -> Judgement:
    """Tell a contrast of two statements from 'all but'."""
    before = view.word(at.first - 1)
    right = view.following(at.after)
    if before in _ALL and view.word(at.after) not in SUBJECTS:
        return Judgement("look_alike", f"'{before} but' means except")
    return judge_contrast(view, at, view.before(at.first), right)


def read_however(view: View, at: Occurrence) -> Judgement:
    """Tell a contrast of two statements from 'however many'."""
    if (
        view.tag(at.after) in ("JJ", "RB")
        and view.word(at.after - 1) == "however"
        and (
            first_verb(view, (at.after, min(at.after + 6, len(view.words)))) is not None
            and view.word(at.after)
            in ("many", "much", "big", "long", "small", "far", "hard", "large")
        )
    ):
        if view.maths(view.following(at.after)):
            return Judgement(
                "reasoning", "'however' means no matter how", function="generalisation"
            )
        return Judgement("look_alike", "'however' means no matter how")
    right = view.following(at.after)
    left = view.before(at.first)
    if right[0] >= right[1]:
        right, left = left, view.before(left[0])
    return judge_contrast(view, at, left, right)


def read_although(view: View, at: Occurrence) -> Judgement:
    """Ask whether one statement is granted against another."""
    granted = view.following(at.after)
    opens = at.first == 0 or view.word(at.first - 1) in STOPS
    other = view.following(granted[1]) if opens else view.before(at.first)
    if opens and view.word(granted[1]) not in SUBJECTS:
        other = granted
    return judge_contrast(view, at, other, granted)


def read_though(view: View, at: Occurrence) -> Judgement:
    """Tell a contrast of two statements from the end of a remark."""
    after = view.word(at.after)
    if not after or after in STOPS or after == ",":
        left = view.before(at.first)
        return judge_contrast(view, at, view.before(left[0]), left)
    return read_although(view, at)


def read_yet(view: View, at: Occurrence) -> Judgement:
    """Tell 'but' from 'up to now'."""
    after = view.word(at.after)
    left = view.before(at.first)
    right = view.following(at.after)
    up_to_now = Judgement("look_alike", "'yet' means up to now")
    if not after or after in STOPS or after in ("another", "again", "to", "more", "and", "because"):
        return up_to_now
    negated = view.has(left, frozenset(("not", "n't", "nt", "never", "havent", "dont", "have")))
    if (
        negated
        and view.word(at.first - 1) not in (",", "and")
        and after not in ("it", "they", "he", "she")
    ):
        return up_to_now
    if first_verb(view, right) is None and view.word(at.first - 1) not in (",", "and"):
        return up_to_now
    return judge_contrast(view, at, left, right)


def read_while(view: View, at: Occurrence) -> Judgement:
    """Tell two statements side by side from a moment, and from a stretch of time."""
    if view.word(at.first - 1) in (
        "a",
        "little",
        "long",
        "short",
        "the",
        "worth",
        "whole",
        "good",
        "every",
        "awhile",
        "quite",
    ):
        return Judgement("look_alike", "'while' is a stretch of time")
    right = view.following(at.after)
    left = view.before(at.first)
    if right[0] >= right[1]:
        return Judgement("look_alike", "nothing follows 'while'")
    verb = first_verb(view, right)
    past = verb is not None and (
        view.tags[verb] in ("VBD", "VBG") or view.words[verb] in ("was", "were")
    )
    people = subject(view, right) in PEOPLE
    if verb is None or past or people or view.tag(at.after) == "VBG":
        return Judgement("narrative", f"'while' tells the time: {view.quote(*right)}")
    opens = at.first == 0 or view.word(at.first - 1) in STOPS
    if view.maths(right) and (opens or view.maths(left)):
        return Judgement("reasoning", f"'while' sets {view.quote(*right)} beside the rest")
    return Judgement("narrative", f"'while' tells the time: {view.quote(*right)}")


def read_except(view: View, at: Occurrence) -> Judgement:
    """Ask whether it names where a mathematical statement stops."""
    right = view.following(at.after)
    left = view.before(at.first)
    said = view.quote(*right)
    if subject(view, right) in PEOPLE and not view.maths(right):
        return Judgement("no_mathematics", f"'{at.label}' leaves out nothing mathematical: {said}")
    if view.maths(right) or (
        view.maths(left)
        and right[0] < right[1]
        and not is_feeling(view, left)
        and not is_action(view, left)
    ):
        return Judgement("reasoning", f"'{at.label}' says where it stops: {said}")
    return Judgement("no_mathematics", f"'{at.label}' leaves out nothing mathematical: {said}")
