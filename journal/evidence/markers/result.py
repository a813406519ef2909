"""Markers that draw a result: so, therefore, this means, that is why."""

from __future__ import annotations

from journal.evidence.markers.joining import (
    first_verb,
    in_context,
    is_action,
    is_feeling,
    is_ground,
    is_said,
    is_topic,
    joins_property,
    names_property,
    subject,
    tells_tally,
)
from journal.evidence.markers.view import Judgement, Occurrence, Stretch, View
from journal.evidence.markers.words import AUXILIARIES, BE, PEOPLE, STOPS, SUBJECTS, WORDS

_AMOUNTS = WORDS["result.amounts"]
_DISCOURSE = WORDS["result.discourse"]
_BEFORE_LOOK_ALIKE = WORDS["result.before_look_alike"]
_CLOSERS = WORDS["result.closers"]
_FILLERS = WORDS["result.fillers"] | STOPS | {","}
_ABLE = frozenset(("could", "can", "would"))
_HAVING = frozenset(("had", "have", "has", "got"))
_SHORT = 6
_DONE = WORDS["result.done"]
_RESULT_VERBS = WORDS["result.result_verbs"]


def read_so(view: View, at: Occurrence) -> Judgement:
    """Tell a result from a stronger word, and from the next step."""
    look = look_alike_so(view, at.first)
    if look:
        return Judgement("look_alike", look)
    return judge_result(view, at)


def look_alike_so(view: View, i: int) -> str | None:
    """Say why 'so' is no joining word here, or return None."""
    before = view.word(i - 1)
    word, tag = view.word(i + 1), view.tag(i + 1)
    if word == "-" or (before == "-" and view.word(i - 2) == "and"):
        return "'so' belongs to another word"
    if word in ("called", "named") or (word == "to" and view.word(i + 2) == "speak"):
        return f"'so {word}' is a set phrase"
    if before == "doing" or (before in ("do", "does", "done", "did") and word not in SUBJECTS):
        return f"'{before} so' is a set phrase"
    filled = i
    while view.word(filled + 1) in _FILLERS and view.word(filled + 1) not in STOPS:
        filled += 1
    if filled > i:
        if view.word(filled + 1) in STOPS | {""}:
            return f"'so {word}' only fills"
        return None
    if not word or word in STOPS or (word in (",", ")") and view.word(i + 2) in ("", ")")):
        return "nothing follows 'so'"
    if word in _CLOSERS:
        return f"'so {word}' only fills"
    if before in _BEFORE_LOOK_ALIKE and not (word in SUBJECTS or view.tag(i + 1) == "DT"):
        return f"'{before} so' is a set phrase"
    if word in _AMOUNTS:
        if (
            word not in ("far", "long", "little")
            or before in BE
            or view.word(i + 2) in STOPS | {""}
        ):
            return f"'so' only makes '{word}' stronger"
        return f"'so {word}' tells how much or how long"
    if (
        word == "that"
        and (view.word(i + 2) in ("is", "'s", "s", "was"))
        and (
            (view.word(i + 3) in _DONE and view.word(i + 3) != "it")
            or (view.word(i + 4) in ("", ".") and view.word(i + 3) == "it")
        )
    ):
        return "'so that is all' only closes"
    if word in SUBJECTS or word in _DISCOURSE or tag in ("DT", "PRP$", "CD", "PRP", "WRB", "IN"):
        return None
    if (
        word in AUXILIARIES
        and view.tag(i + 2) in ("PRP", "NNP", "DT", "NN", "NNS", "PRP$")
        and ((tag != "MD" and view.tag(i + 2) != "PRP") or view.following(i + 1)[1] - i < _SHORT)
    ):
        return f"'so {word}' means as well"
    if word in ("just", "please", "let", "lets", "ignore") and before not in BE:
        return None
    if word == "what" and view.word(i + 2) in STOPS | {""}:
        return "'so what' joins nothing"
    if before in BE and tag in ("JJ", "RB", "NN", "VBN", "VBG", "VB", "VBD", "VBP", "UH"):
        return f"'so' only makes '{word}' stronger"
    if tag == "RB" and view.tag(i + 2) in ("VB", "VBN", "VBD") and word.endswith("ly"):
        return f"'so' only makes '{word}' stronger"
    if tag in ("JJ", "RB", "RBR") and not _names_things(view, i + 1):
        return f"'so' only makes '{word}' stronger"
    return None


def _names_things(view: View, i: int) -> bool:
    for at in range(i + 1, min(i + 4, len(view.words))):
        if view.tag(at) in ("NNS", "NN", "NNP", "CD", "PRP") or view.kinds[at] is not None:
            return True
        if view.tag(at) not in ("JJ", "RB"):
            return view.tag(at) in ("VBZ", "VBP", "VBD", "MD", "DT") and view.tag(i) == "RB"
    return view.kinds[i] is not None


def judge_result(view: View, at: Occurrence) -> Judgement:
    """Judge what a result word joins: the clause before it to the clause after it."""
    i = at.after
    left = view.before(at.first)
    step = view.word(i) == "then"
    if step:
        i += 1
    right = view.following(i)
    name = f"'{at.label}'"
    if right[0] >= right[1]:
        return Judgement("look_alike", f"nothing follows {name}")
    said = view.quote(*right)
    left_maths, right_maths = view.maths(left), view.maths(right)
    no = Judgement("no_mathematics", f"{name} joins nothing mathematical: {said}")
    if is_said(view, right) and not right_maths:
        return no
    if _is_purpose(view, left, right):
        return Judgement("look_alike", f"{name} tells a purpose: {said}")
    if tells_tally(view, left) and not right_maths:
        return no
    if is_action(view, right):
        return _judge_action(view, name, left, right, said)
    if is_feeling(view, right):
        return no
    if step and not (right_maths and left_maths and not is_topic(view, right)):
        return Judgement("narrative", f"{name} takes the next step: {said}")
    if left[1] and is_opening(view, left) and not view.maths(right, "quantity", "relation"):
        return Judgement("look_alike", f"{name} only opens the telling: {said}")
    if right_maths and not is_topic(view, right):
        return Judgement("reasoning", f"{name} draws the result: {said}")
    if (
        left_maths
        and not is_feeling(view, left)
        and (
            joins_property(view, right)
            or (
                is_ground(view, left)
                and subject(view, right) != ""
                and first_verb(view, right) is not None
            )
        )
    ):
        return Judgement("reasoning", f"{name} draws the result: {said}")
    if names_property(view, right) and in_context(view, at.first):
        return Judgement("reasoning", f"{name} draws the result: {said}")
    return no


def is_opening(view: View, left: Stretch) -> bool:
    """Say whether nothing but fillers stands before the word."""
    return left[0] == 0 and all(word in _FILLERS for word in view.words[: left[1]])


def _is_purpose(view: View, left: Stretch, right: Stretch) -> bool:
    """Say whether "so I could measure" tells what a step was for."""
    return (
        view.word(right[0] + 1) in _ABLE
        and subject(view, left) in PEOPLE
        and not is_ground(view, left)
    )


def _tells_having(view: View, left: Stretch) -> bool:
    """Say whether somebody only had something: "we had 5 minutes left so we tidied up"."""
    verb = first_verb(view, left)
    return verb is not None and view.words[verb] in _HAVING and subject(view, left) in PEOPLE


def _ends_with_somebody(view: View, left: Stretch) -> bool:
    """Say whether the last part before tells of somebody: "... when I was rushing so I ..."."""
    inner = view.opening(left[1])
    return (
        inner[0] > left[0]
        and view.word(inner[0] - 1) in ("when", "because", "if")
        and subject(view, inner) in PEOPLE
        and not view.maths(inner)
    )


def _judge_action(view: View, name: str, left: Stretch, right: Stretch, said: str) -> Judgement:
    verb = first_verb(view, right)
    left_maths, right_maths = view.maths(left), view.maths(right)
    if is_opening(view, left):
        opens = f"{name} only opens the telling: {said}"
        return Judgement("look_alike" if left[1] else "narrative", opens)
    if (
        verb is not None
        and view.words[verb] in _RESULT_VERBS
        and view.maths((verb, right[1]), "quantity")
        and left_maths
    ):
        return Judgement("reasoning", f"{name} draws the result: {said}")
    if (
        is_ground(view, left)
        and not any(is_feeling(view, left) or is_topic(view, side) for side in (left, right))
        and not _ends_with_somebody(view, left)
        and (right_maths or not _tells_having(view, left))
    ):
        if left_maths or right_maths:
            return Judgement(
                "reasoning", f"{name} says what follows from {view.quote(*left)}: {said}"
            )
        return Judgement("no_mathematics", f"{name} joins nothing mathematical: {said}")
    if is_action(view, left) and not _tells_having(view, left):
        return Judgement("narrative", f"{name} takes the next step: {said}")
    return Judgement("no_mathematics", f"{name} joins nothing mathematical: {said}")


def that_is_subject(view: View, first: int) -> bool:
    """Say whether "so that" is 'so' with 'that' as what follows: "so that makes 12"."""
    return view.word(first + 2) in BE or view.tag(first + 2) in ("VBZ", "VBD", "MD")


def read_so_that(view: View, at: Occurrence) -> Judgement:
    """Tell a purpose from a result."""
    right = view.following(at.after)
    return Judgement("look_alike", f"'so that' tells a purpose: {view.quote(*right)}")


def read_therefore(view: View, at: Occurrence) -> Judgement:
    """Ask whether the result is about mathematics."""
    return judge_result(view, at)


def read_means(view: View, at: Occurrence) -> Judgement:
    """Tell a result ("that means it is even") from a word explained."""
    right = view.following(at.after)
    left = view.before(at.first)
    said = view.quote(*right)
    name = f"'{at.label}'"
    if right[0] >= right[1]:
        return Judgement("look_alike", f"nothing follows {name}")
    if view.word(at.first) == "it" and first_verb(view, right) is None:
        return Judgement("look_alike", f"{name} tells what a word means: {said}")
    if is_feeling(view, right) or is_said(view, right):
        return Judgement("no_mathematics", f"{name} joins nothing mathematical: {said}")
    if view.maths(right) or (view.maths(left) and joins_property(view, right)):
        return Judgement("reasoning", f"{name} draws the result: {said}")
    return Judgement("no_mathematics", f"{name} joins nothing mathematical: {said}")


def read_that_is_why(view: View, at: Occurrence) -> Judgement:
    """Ask whether what it explains is mathematical."""
    right = view.following(at.after)
    left = view.before(at.first)
    said = view.quote(*right)
    if is_feeling(view, right) or (view.maths(right) and is_topic(view, right)):
        return Judgement("no_mathematics", f"'{at.label}' joins nothing mathematical: {said}")
    if view.maths(right) or (
        view.maths(left) and not is_feeling(view, left) and not is_action(view, left)
    ):
        return Judgement("reasoning", f"'{at.label}' points back to the reason for {said}")
    return Judgement("no_mathematics", f"'{at.label}' joins nothing mathematical: {said}")


def read_result_phrase(view: View, at: Occurrence) -> Judgement:
    """Ask whether it leads from one piece of mathematics to another."""
    right = view.following(at.after)
    left = view.before(at.first)
    said = view.quote(*right)
    if is_feeling(view, (at.after, right[1])):
        return Judgement("no_mathematics", f"'{at.label}' joins nothing mathematical: {said}")
    if view.maths(right) or (view.maths(left) and right[0] < right[1]):
        return Judgement("reasoning", f"'{at.label}' leads to {said}")
    return Judgement("no_mathematics", f"'{at.label}' joins nothing mathematical: {said}")
