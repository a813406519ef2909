"""Markers that compare mathematical things: bigger than, as big as, the same as, whereas."""

from __future__ import annotations

from journal.evidence.markers.joining import first_verb, in_context, is_feeling, subject
from journal.evidence.markers.view import Judgement, Occurrence, Stretch, View
from journal.evidence.markers.words import BE, LIKING, PEOPLE, STOPS, SUBJECTS, WORDS

_COMPARATIVES = WORDS["comparison.comparatives"]
_NOT_COMPARED = WORDS["comparison.not_compared"]
_EVERYDAY = WORDS["comparison.everyday"]
_ORDINARY = WORDS["comparison.ordinary"]
_SAME_WHAT = WORDS["comparison.same_what"]
_THINGS = WORDS["comparison.things"]
_POINTING = frozenset(("it", "its", "it's", "that", "this", "they", "theyre", "these"))
_MEASURES = WORDS["comparison.measures"]
_SIZES = WORDS["comparison.sizes"]
_MULTIPLES = frozenset(("twice as", "half as", "times as"))


def is_than(view: View, i: int) -> bool:
    """Say whether "then" stands for "than": right after a comparative, before a thing."""
    before = view.word(i - 1)
    return (
        (
            before in _COMPARATIVES
            or (before.endswith("er") and (view.tag(i - 1) == "JJR" or view.word(i - 2) in BE))
        )
        and before not in _EVERYDAY
        and before not in ("more", "less", "later", "earlier", "further", "over")
        and view.word(i + 1) not in SUBJECTS
        and view.tag(i + 1) in ("DT", "CD", "NN", "NNS", "JJ", "PRP$")
    )


def find_than(view: View, i: int) -> tuple[int, str] | None:
    """Find where the comparison that ends in "than" begins, and its form.

    Parameters
    ----------
    view : View
        The entry.
    i : int
        The position of "than".

    Returns
    -------
    tuple of int and str, or None
        First token and the form ("bigger than", "more than"), or None where nothing is compared.
    """
    for at in range(i - 1, max(-1, i - 6), -1):
        word = view.words[at]
        if word in STOPS or (word in _NOT_COMPARED and at == i - 1):
            return None
        if (
            word in _COMPARATIVES
            or (view.tags[at] in ("JJR", "RBR") and word not in _NOT_COMPARED)
            or (word.endswith("er") and at == i - 1 and word not in ("number", "answer", "other"))
        ):
            return at, f"{word} than"
    return None


def find_as_as(view: View, i: int) -> tuple[int, str] | None:
    """Find the end of "as ... as" that begins at token ``i``, and its form ("as big as")."""
    if view.word(i + 1) in ("soon", "well", "far"):
        return None
    if view.word(i + 1) == "long" and (
        view.word(i - 1) not in BE or first_verb(view, (i + 3, min(i + 8, len(view.words))))
    ):
        return None
    for at in range(i + 2, min(i + 6, len(view.words))):
        if view.words[at] == "as":
            if view.words[i + 1] in _SIZES or (at == i + 2 and view.tags[i + 1][:1] in "JR"):
                return at + 1, f"as {view.words[i + 1]} as"
            return None
        if view.words[at] in STOPS or view.words[at] in SUBJECTS:
            return None
    return None


def read_than(view: View, at: Occurrence) -> Judgement:
    """Ask whether mathematical things are compared."""
    word = view.word(at.first)
    left = view.opening(at.first)
    right = view.following(at.after)
    nearby = (at.first + 1, min(at.after + 5, right[1]))
    span = view.quote(at.first, nearby[1])
    people = subject(view, left) in PEOPLE and subject(view, left) not in ("i", "we")
    no = Judgement("no_mathematics", f"{span} compares nothing mathematical")
    if word in _EVERYDAY and not view.maths((at.after, nearby[1]), "quantity", "term"):
        return no
    if (
        view.word(at.after) in _ORDINARY
        and not view.maths((at.after + 1, nearby[1]))
        and (view.word(at.after) not in ("that", "them") or not view.maths(left))
    ):
        return no
    if view.word(at.after) in PEOPLE or (
        view.word(at.after + 1) in PEOPLE and view.word(at.after) in ("my", "the", "your")
    ):
        return no
    if view.tag(at.after) == "CD" and view.has((at.after + 1, min(at.after + 3, right[1])), PEOPLE):
        return no
    if view.has(left, LIKING):
        return no
    if view.has(nearby, _THINGS) and in_context(view, at.first):
        return Judgement("reasoning", f"{span} compares mathematical things")
    if view.maths(nearby) or (view.maths((left[0], at.first)) and not people):
        return Judgement("reasoning", f"{span} compares mathematical things")
    return no


def read_as_as(view: View, at: Occurrence) -> Judgement:
    """Ask whether 'as ... as' compares mathematical things."""
    judgement = read_comparing(view, at)
    if judgement.reading != "reasoning":
        return Judgement("look_alike", judgement.why)
    return judgement


def read_comparing(view: View, at: Occurrence) -> Judgement:
    """Ask whether the phrase compares mathematical things."""
    left = view.opening(at.first)
    right = view.following(at.after)
    nearby = (at.after, min(at.after + 6, right[1]))
    span = view.quote(at.first, nearby[1])
    if at.form.form in _MULTIPLES and (
        view.word(at.after) in ("well", "usual", "before") or view.tag(at.after)[:1] not in "JRV"
    ):
        return Judgement("look_alike", f"{span} compares nothing")
    inside = (at.first + 1, at.after - 1)
    no = Judgement("no_mathematics", f"{span} compares nothing mathematical")
    if view.has(inside, _SAME_WHAT) or view.word(at.after) in ("yesterday", "last", "usual", "me"):
        return Judgement("look_alike", f"{span} compares nothing mathematical")
    if view.word(at.after) in PEOPLE or (
        view.word(at.after) in ("my", "the", "your") and view.word(at.after + 1) in PEOPLE
    ):
        return no
    if view.maths(nearby) or view.maths((left[0], at.first)) or view.has(nearby, _THINGS):
        return Judgement("reasoning", f"{span} compares mathematical things")
    if at.form.form in _MULTIPLES and _is_measured(view, at, right):
        return Judgement("reasoning", f"{span} compares two amounts")
    if view.word(left[0]) in _POINTING and in_context(view, at.first):
        return Judgement("reasoning", f"{span} compares mathematical things")
    return no


def _is_measured(view: View, at: Occurrence, right: Stretch) -> bool:
    """Say whether a multiple is of a size, and of things rather than people."""
    return view.word(at.after) in _SIZES and not view.has((at.after, right[1]), PEOPLE)


def read_equal_to(view: View, at: Occurrence) -> Judgement:
    """Tell two equal things from an answer that is given."""
    left = view.opening(at.first)
    if view.maths((left[0], at.first), "operation"):
        return Judgement("look_alike", "'equal to' gives an answer here")
    return read_comparing(view, at)


def read_same(view: View, at: Occurrence) -> Judgement:
    """Tell mathematical things that are the same from the same table."""
    after = view.word(at.after)
    left = view.opening(at.first)
    span = view.quote(at.first, at.after + (after in _MEASURES or after in _SAME_WHAT))
    if after in _SAME_WHAT:
        return Judgement("look_alike", f"{span} is no comparison of mathematical things")
    if (
        view.word(at.first - 1) in ("at", "in", "on", "all")
        and after not in _MEASURES
        and (view.word(at.first - 1) != "all")
    ):
        return Judgement("look_alike", f"{span} is no comparison of mathematical things")
    if after in _MEASURES or view.maths((at.after, at.after + 2)):
        return Judgement("reasoning", f"{span} compares mathematical things")
    alone = after in STOPS or not after or view.tag(at.after) not in ("NN", "NNS", "NNP")
    things = view.maths(left) or view.has(left, _THINGS | _MEASURES)
    if alone and things and not is_feeling(view, left):
        return Judgement("reasoning", f"{span} compares mathematical things")
    if subject(view, left) in PEOPLE:
        return Judgement("look_alike", f"{span} is no comparison of mathematical things")
    return Judgement("no_mathematics", f"{span} compares nothing mathematical")


def read_whereas(view: View, at: Occurrence) -> Judgement:
    """Ask whether two mathematical statements are set side by side."""
    left, right = view.opening(at.first), view.following(at.after)
    if (view.maths(left) or view.maths(right)) and not is_feeling(view, right):
        return Judgement(
            "reasoning", f"'whereas' sets {view.quote(*left)} beside {view.quote(*right)}"
        )
    return Judgement("no_mathematics", "'whereas' joins nothing mathematical")


def read_just_like(view: View, at: Occurrence) -> Judgement:
    """Ask whether mathematics is likened to mathematics."""
    right = view.following(at.after)
    left = view.opening(at.first)
    if view.maths(right) and subject(view, left) not in PEOPLE:
        return Judgement("reasoning", f"'{at.label}' likens it to {view.quote(*right)}")
    return Judgement("look_alike", f"'{at.label}' compares nothing mathematical")


def _is_case(view: View, case: Stretch) -> bool:
    """Say whether a whole mathematical statement follows: "like 7 is 3 and a half"."""
    first, after = case
    opens = view.word(first)
    if not (view.maths((first, first + 1)) or opens in ("if", "when")):
        return False
    verb = first_verb(view, case)
    return (
        verb is not None
        and verb > first
        and view.tags[verb] in ("VBZ", "VBP", "VBD", "MD", "SYM", "JJ", "NN", "CD")
        and view.maths((verb, after))
        and not is_feeling(view, case)
    )


def read_like(view: View, at: Occurrence) -> Judgement:
    """Tell a likening of mathematics from liking, filling and naming."""
    i = at.first
    if view.tag(i)[:1] == "V" and view.word(i - 1) not in ("is", "'s", "are", "s", "its"):
        return Judgement("look_alike", "'like' tells a liking")
    case = view.following(at.after)
    if _is_case(view, case):
        return Judgement("reasoning", f"'like' gives an example: {view.quote(*case)}", "evidence")
    be = view.word(i - 1) in ("is", "are", "'s", "s", "its", "it's", "works", "work", "looks")
    near = (at.after, min(at.after + 5, len(view.words)))
    left = view.opening(i)
    if (
        be
        and view.maths(near, "quantity", "operation")
        and subject(view, left) not in PEOPLE
        and (view.word(at.after) != "really")
    ):
        return Judgement("reasoning", f"'like' likens it to {view.quote(*near)}")
    return Judgement("look_alike", "'like' fills or names something, it compares no mathematics")
