"""Markers of a condition: if, when, unless, once, and 'then' after them."""

from __future__ import annotations

from journal.evidence.markers.joining import (
    first_verb,
    in_context,
    is_feeling,
    is_said,
    names_property,
    subject,
    tells_tally,
)
from journal.evidence.markers.view import Judgement, Occurrence, Stretch, View
from journal.evidence.markers.words import AUXILIARIES, PEOPLE, STOPS, SUBJECTS, WORDS

_WHETHER = WORDS["condition.whether"]
_PREPOSITIONS = frozenset(("of", "from", "to", "in", "than", "how", "year"))
_WOULD = frozenset(("would", "'d"))
_THING = 2
_FINDING = WORDS["condition.finding"]
_RESULTS = WORDS["result.result_verbs"]
_OTHERS = PEOPLE - frozenset(("i", "we", "im", "i'm", "ive"))
_PAST = WORDS["condition.past"]


def read_if(view: View, at: Occurrence) -> Judgement:
    """Tell a condition about mathematics from whether."""
    before = view.word(at.first - 1)
    if (before in _WHETHER and (before != "out" or view.has(_near(at), _FINDING))) or (
        before in ("it", "me", "him", "her", "us", "them")
        and view.word(at.first - 2) in _WHETHER | {"asked", "ask", "told"}
    ):
        return Judgement("look_alike", f"'{before} if' means whether")
    if view.word(at.after) in ("not", "any", "possible", "so", "ever"):
        return Judgement("look_alike", f"'if {view.word(at.after)}' is a set phrase")
    return judge_condition(view, at)


def _near(at: Occurrence) -> Stretch:
    return max(0, at.first - 3), at.first


def judge_condition(view: View, at: Occurrence) -> Judgement:
    """Judge what a condition joins: the clause after it to the one that follows or precedes."""
    case = view.following(at.after)
    said = view.quote(*case)
    name = f"'{at.label}'"
    if case[0] >= case[1]:
        return Judgement("look_alike", f"nothing follows {name}")
    outcome = _outcome(view, at, case)
    if (
        view.maths(case)
        and not _is_personal(view, case)
        and (subject(view, case) not in _OTHERS or view.maths(outcome))
        and (not tells_tally(view, case) or view.maths(outcome))
    ):
        return Judgement("reasoning", f"{name} sets the condition: {said}")
    if in_context(view, at.first) and (
        names_property(view, case)
        or (names_property(view, outcome) and not _is_personal(view, case))
    ):
        return Judgement("reasoning", f"{name} sets the condition: {said}")
    if (
        view.maths(outcome)
        and not is_feeling(view, outcome)
        and not _is_personal(view, case)
        and (
            subject(view, case) not in PEOPLE
            or (
                view.word(case[0]) in ("i", "we")
                and not _is_personal(view, outcome)
                and not _is_habit(view, outcome)
                and view.maths(outcome, "quantity", "relation")
            )
        )
    ):
        return Judgement("reasoning", f"{name} sets the condition: {said}")
    return Judgement("no_mathematics", f"{name} sets a condition, not about mathematics: {said}")


def _outcome(view: View, at: Occurrence, case: Stretch) -> Stretch:
    before = view.before(at.first)
    opens = at.first == 0 or view.word(at.first - 1) in STOPS or before[0] >= before[1]
    later = case[1]
    if opens or view.word(later) in (",", "then") or view.word(later) in SUBJECTS:
        return view.following(later + (view.word(later) in (",", "then")))
    return before


def _is_personal(view: View, stretch: Stretch) -> bool:
    return is_feeling(view, stretch) or is_said(view, stretch) or _is_stuck(view, stretch)


def _is_habit(view: View, outcome: Stretch) -> bool:
    """Say whether the outcome is what somebody does, not what they get."""
    verb = first_verb(view, outcome)
    return (
        subject(view, outcome) in PEOPLE and verb is not None and view.words[verb] not in _RESULTS
    )


def _is_stuck(view: View, stretch: Stretch) -> bool:
    return view.has(stretch, frozenset(("stuck", "time", "finish", "finished", "help")))


def read_when(view: View, at: Occurrence) -> Judgement:
    """Tell a general condition from a moment that is told."""
    case = view.following(at.after)
    said = view.quote(*case)
    name = f"'{at.label}'"
    before = view.word(at.first - 1)
    if case[0] >= case[1]:
        return Judgement("look_alike", f"nothing follows {name}")
    if before in _PREPOSITIONS or (
        view.tag(at.after) in ("VBD", "VBZ", "VBP", "MD")
        and view.word(at.after) in AUXILIARIES
        and (at.first == 0 or before in STOPS)
    ):
        return Judgement("look_alike", f"{name} asks or tells which time: {said}")
    if view.word(at.after) == "to" or (
        before in ("know", "knew", "remember", "time", "day", "is", "tell")
        and at.first
        and not view.maths(case)
    ):
        return Judgement("look_alike", f"{name} asks or tells which time: {said}")
    verb = first_verb(view, case)
    if (
        (verb is not None and _is_past(view, verb))
        or is_feeling(view, case)
        or _is_stuck(view, case)
    ):
        return Judgement("narrative", f"{name} tells the moment: {said}")
    return judge_condition(view, at)


def _is_past(view: View, verb: int) -> bool:
    return view.tags[verb] == "VBD" or view.words[verb] in _PAST


def read_unless(view: View, at: Occurrence) -> Judgement:
    """Ask whether the condition stands between two pieces of mathematics."""
    return judge_condition(view, at)


def read_otherwise(view: View, at: Occurrence) -> Judgement:
    """Ask whether it says what would go wrong in the mathematics."""
    right = view.following(at.after)
    left = view.before(at.first)
    said = view.quote(*right)
    if (
        right[0] < right[1]
        and not is_feeling(view, right)
        and (view.maths(right) or (view.maths(left) and subject(view, right) not in PEOPLE))
    ):
        return Judgement("reasoning", f"'{at.label}' says what would follow: {said}")
    return Judgement("no_mathematics", f"'{at.label}' joins nothing mathematical: {said}")


def read_once(view: View, at: Occurrence) -> Judgement:
    """Tell a condition from a moment, and from one time."""
    case = view.following(at.after)
    before = view.word(at.first - 1)
    if before in ("at", "only", "than", "just", "all", "it", "more") or (
        view.word(at.after) in ("a", "again", "upon", "more", "and", "or") or case[0] >= case[1]
    ):
        return Judgement("look_alike", "'once' counts one time")
    verb = first_verb(view, case)
    if (
        verb is None
        or verb - at.after > 5
        or (view.word(at.after) not in SUBJECTS and view.tag(at.after) not in ("DT", "PRP$", "NNS"))
    ):
        return Judgement("look_alike", "'once' counts one time")
    if _is_past(view, verb) or not view.maths(case):
        return Judgement("narrative", f"'once' tells the time: {view.quote(*case)}")
    return judge_condition(view, at)


def read_then(view: View, at: Occurrence) -> Judgement:
    """Tell the end of a condition from the next step."""
    if view.word(at.first - 1) in ("by", "until", "till", "since", "back", "now", "from", "just"):
        return Judgement("look_alike", "'then' names a time")
    if view.word(at.after) in STOPS | {"", ")"} or view.word(at.first - 1) == "(":
        return Judgement("look_alike", "'then' joins nothing here")
    opener = _opener(view, at.first)
    right = view.following(at.after)
    if opener is not None:
        word, place = opener
        case = (place + 1, at.first)
        if (
            (view.maths(case) or view.maths(right))
            and not is_feeling(view, right)
            and not _is_personal(view, case)
            and (word == "if" or not _any_past(view, case))
        ):
            return Judgement("reasoning", f"'then' says what follows: {view.quote(*right)}")
        if word == "if":
            return Judgement("no_mathematics", f"'then' says what follows: {view.quote(*right)}")
    if view.has((right[0], min(right[0] + 4, right[1])), _WOULD) and _claims(view, right):
        return Judgement("reasoning", f"'then' says what would follow: {view.quote(*right)}")
    told = any(view.tags[i][:1] == "V" or view.tags[i] == "MD" for i in range(*right))
    if not told and not view.maths(right) and right[1] - right[0] > _THING:
        return Judgement("look_alike", f"'then' lists a thing: {view.quote(*right)}")
    return Judgement("narrative", f"'then' takes the next step: {view.quote(*right)}")


def _claims(view: View, stretch: Stretch) -> bool:
    return (
        view.maths(stretch)
        and subject(view, stretch) not in PEOPLE
        and not is_feeling(view, stretch)
    )


def _opener(view: View, i: int) -> tuple[str, int] | None:
    """Find the 'if' or 'when' that 'then' answers, in the same sentence and not far back."""
    if view.word(i - 1) == "and":
        return None
    for at in range(i - 1, max(-1, i - 22), -1):
        word = view.words[at]
        if word in STOPS or word in ("then", "so", "because", "but"):
            return None
        if word in ("if", "when", "whenever", "unless"):
            if view.word(at - 1) in _WHETHER:
                return None
            return ("when" if word.startswith("when") else "if"), at
    return None


def _any_past(view: View, stretch: Stretch) -> bool:
    return any(view.tags[i] == "VBD" for i in range(*stretch))
