"""Markers of a claim over an open class: always, never, every, any, all, each, no matter."""

from __future__ import annotations

from journal.evidence.markers.joining import is_feeling, is_said, subject
from journal.evidence.markers.view import Judgement, Occurrence, Stretch, View
from journal.evidence.markers.words import CLOSED_NOUNS, PEOPLE, STOPS, VERBS_ANYWHERE, WORDS

_ENDS_CLASS = frozenset(("VBZ", "VBP", "MD", "IN", "CC", ",", "PRP", "WDT", "TO", "RB"))
_ENDS_ALWAYS = frozenset(("IN", "CC", ","))
_POINTING = frozenset(("them", "these", "those", "all", "every", "both"))
_RIGHT_OR_WRONG = frozenset(("right", "wrong", "stuck", "maths", "math"))
_NOT_ANY = WORDS["generalisation.not_any"]
_ONES = frozenset(("one", "ones"))
_COUNTS = WORDS["generalisation.counts"]
_PARTS = WORDS["generalisation.parts"]
_WORKS = WORDS["generalisation.works"]
_CLASSES = WORDS["generalisation.classes"]
_TIME_OF = WORDS["generalisation.time_of"]


def read_always(view: View, at: Occurrence) -> Judgement:
    """Tell a claim about mathematics for every case from one about people."""
    left, right = view.opening(at.first), view.following(at.after)
    clause = (left[0], right[1])
    span = view.quote(max(left[0], at.first - 3), min(right[1], at.after + 5))
    name = f"'{at.label}'"
    no = Judgement("no_mathematics", f"{name} claims nothing mathematical: {span}")
    who = subject(view, left)
    if who in ("i", "we", "im", "i'm") and view.word(at.first - 1) in (
        "i",
        "we",
        "have",
        "'ve",
        "will",
        "'ll",
        "would",
        "am",
        "'m",
        "im",
        "can",
        "ca",
        "could",
        "was",
        "were",
    ):
        if (
            view.word(at.after) in ("get", "gets", "got", "find", "end", "add", "make")
            and view.maths(right, "quantity", "term", "relation")
            and not view.has(right, _RIGHT_OR_WRONG)
            and not is_feeling(view, right)
        ):
            return Judgement("reasoning", f"{name} claims it for every case: {span}")
        return no
    if (
        (who in PEOPLE and who not in ("i", "we"))
        or is_feeling(view, right)
        or is_said(view, right)
        or (view.word(at.after) in ("get", "got", "getting") and view.has(right, _RIGHT_OR_WRONG))
    ):
        return no
    if view.maths(clause) or view.has((at.after, right[1]), _WORKS) or _works(view, who, left):
        return Judgement("reasoning", f"{name} claims it for every case: {span}")
    if (who in ("it", "they", "this", "that", "you", "its") or view.has(left, _ONES)) and (
        _maths_earlier(view, at.first) or "JJR" in view.tags[at.after : right[1]]
    ):
        return Judgement("reasoning", f"{name} claims it for every case: {span}")
    return no


def _works(view: View, who: str, left: Stretch) -> bool:
    """Say whether a method is said to work: "it works every time"."""
    return who in ("it", "this", "that", "its") and view.has(left, _WORKS)


def _maths_earlier(view: View, i: int) -> bool:
    return view.maths((max(0, i - 25), i))


def _noun_after(view: View, i: int) -> tuple[int, int]:
    """Return the stretch of the words that name the class: up to its noun."""
    end = i
    while end < min(i + 5, len(view.words)):
        word, tag = view.words[end], view.tags[end]
        if word in STOPS or tag in _ENDS_ALWAYS or (tag in _ENDS_CLASS and view.kinds[end] is None):
            break
        # "in every rectangle the diagonals ...": the next noun has its own word before it.
        if (
            tag in ("DT", "PRP$", "EX", "VBG")
            and end > i
            and view.tags[end - 1] in ("NN", "NNS", "NNP")
        ):
            break
        end += 1
    return i, end


def _judge_class(
    view: View, at: Occurrence, what: tuple[int, int], *, open_class: bool
) -> Judgement:
    span = view.quote(at.first, max(what[1], at.after))
    if open_class and (view.maths(what) or view.has(what, _CLASSES)):
        return Judgement("reasoning", f"{span} speaks of every such case")
    return Judgement("look_alike", f"{span} is no claim over every case")


def read_every(view: View, at: Occurrence) -> Judgement:
    """Tell an open class of mathematical things from days and the things at hand."""
    what = _noun_after(view, at.after)
    closed = view.has(what, CLOSED_NOUNS | _TIME_OF | PEOPLE)
    rest = view.following(what[1])
    tried = view.has((what[1], min(what[1] + 3, rest[1])), frozenset(["i", "we", "tried", "did"]))
    on_the = view.word(what[1]) in ("on", "of") and view.word(what[1] + 1) in ("the", "my", "our")
    return _judge_class(view, at, what, open_class=not closed and not tried and not on_the)


def read_each(view: View, at: Occurrence) -> Judgement:
    """Tell an open class from sharing things out."""
    what = _noun_after(view, at.after)
    after = view.word(at.after)
    if after in ("other", "of", "person", "", "time") or after in STOPS:
        if after == "of":
            return Judgement("look_alike", "'each of' picks from the things at hand")
        return Judgement("look_alike", "'each' shares things out")
    if after in ("one", "number", "of") and _general_earlier(view, at.first):
        return Judgement("reasoning", "'each' speaks of every such case")
    clause = view.opening(at.first)
    acting = subject(view, clause) in PEOPLE and clause[1] > clause[0]
    closed = view.has(what, CLOSED_NOUNS | PEOPLE | _PARTS) and not _general_earlier(view, at.first)
    past = any(view.tags[i] == "VBD" for i in range(what[1], min(what[1] + 3, len(view.words))))
    has_verb = any(
        view.tags[i] in ("VBZ", "VBP", "MD") or view.words[i] in VERBS_ANYWHERE
        for i in range(what[0] + 1, min(what[1] + 8, len(view.words)))
    )
    return _judge_class(
        view, at, what, open_class=not closed and not acting and not past and has_verb
    )


def _general_earlier(view: View, i: int) -> bool:
    return view.has(
        (max(0, i - 30), i), frozenset(["any", "every", "all", "always", "whenever", "if"])
    )


def read_any(view: View, at: Occurrence) -> Judgement:
    """Tell an open class of mathematical things from a question or a denial."""
    what = _noun_after(view, at.after)
    after = view.word(at.after)
    if after in _NOT_ANY and not (after == "other" and view.maths(what)):
        return Judgement("look_alike", f"'any {after}' is no claim over every case")
    window = view.words[max(0, at.first - 4) : at.first]
    negated = any(
        w in ("n't", "not", "nt", "dont", "didnt", "without", "havent", "if", "have")
        for w in window
    )
    asked = view.has((max(0, at.first - 8), at.first), frozenset(["does", "anyone", "got"]))
    have = any(w in ("have", "had", "get", "make", "has", "got", "there", "find") for w in window)
    if (negated and have) or asked:
        return Judgement(
            "look_alike",
            f"{view.quote(at.first, what[1])} asks or denies, it claims nothing over every case",
        )
    return _judge_class(view, at, what, open_class=not view.has(what, CLOSED_NOUNS | PEOPLE))


def read_all(view: View, at: Occurrence) -> Judgement:
    """Tell an open class from the things at hand."""
    i = at.after
    after = view.word(i)
    before = view.word(at.first - 1)
    closed = Judgement("look_alike", f"{view.quote(at.first, i + 2)} means the things at hand")
    if before in ("at", "after", "them", "that", "is", "'s", "we", "us", "you", "it") and (
        before != "they"
    ):
        return closed
    if after in (
        "of",
        "right",
        "the",
        "these",
        "those",
        "my",
        "our",
        "your",
        "his",
        "her",
        "i",
        "we",
        "that",
        "this",
        "done",
        "day",
        "over",
        "in",
        "on",
        "",
        "it",
        "about",
    ):
        if after in ("the", "of") and _open_relative(view, i):
            return Judgement(
                "reasoning", f"{view.quote(at.first, i + 4)} speaks of every such case"
            )
        return closed
    if after in _COUNTS or view.tag(i) == "CD" or after in STOPS:
        return closed
    what = _noun_after(view, i)
    if what[0] == what[1] or view.has(what, CLOSED_NOUNS | PEOPLE):
        return closed
    if view.has(what, _PARTS) and not _general_earlier(view, at.first):
        return closed
    if view.word(at.first - 1) in ("did", "do", "wrote", "got", "used", "finished"):
        return closed
    return _judge_class(view, at, what, open_class=True)


def _open_relative(view: View, i: int) -> bool:
    """Say whether "the numbers that end in 0", "the multiples of 5" opens a class."""
    if view.word(i) == "of" and view.word(i + 1) == "the":
        i += 1
    elif view.word(i) == "of":
        return False
    what = _noun_after(view, i + 1)
    if not view.maths(what) or view.has(what, CLOSED_NOUNS) or view.has(what, _PARTS):
        return False
    after = view.word(what[1])
    if after in ("on", "i", "we", "he", "she", "from", "at"):
        return False
    if after in ("that", "which"):
        return view.word(what[1] + 1) not in PEOPLE
    if after == "in":
        return view.has(
            (what[1], min(what[1] + 7, len(view.words))),
            frozenset(("table", "tables", "sequence", "pattern")),
        )
    if after in ("with", "ending", "of", "above", "below", "under", "over", "between"):
        return True
    return view.tag(what[1]) in ("VBZ", "VBP", "MD", "VBG") and view.word(what[1] - 1) in (
        "numbers",
        "multiples",
        "evens",
        "odds",
        "squares",
        "primes",
        "triangles",
        "rectangles",
        "fractions",
    )


def read_no_matter(view: View, at: Occurrence) -> Judgement:
    """Ask whether a claim is opened to every case."""
    right = view.following(at.after)
    left = view.opening(at.first)
    span = view.quote(at.first, min(right[1], at.after + 6))
    if is_feeling(view, right) or (subject(view, right) in PEOPLE and not view.maths(right)):
        return Judgement("no_mathematics", f"{span} claims nothing mathematical")
    if (
        view.maths((at.after, right[1]))
        or view.maths(left)
        or view.has(left, _WORKS)
        or (view.word(at.after) in ("what", "which", "how") and _maths_earlier(view, at.first))
    ):
        return Judgement("reasoning", f"{span} claims it for every case")
    return Judgement("no_mathematics", f"{span} claims nothing mathematical")


def read_in_general(view: View, at: Occurrence) -> Judgement:
    """Ask whether a rule is stated about mathematics."""
    right = view.following(at.after)
    left = view.opening(at.first)
    span = view.quote(at.first, min(right[1], at.after + 6))
    if view.maths((at.after, right[1])) or (at.form.form == "in general" and view.maths(left)):
        return Judgement("reasoning", f"{span} states it in general")
    return Judgement("no_mathematics", f"{span} states nothing mathematical")


def read_works_for(view: View, at: Occurrence) -> Judgement:
    """Ask for which numbers or shapes something is said to hold."""
    right = view.following(at.after)
    left = view.opening(at.first)
    span = view.quote(at.first, min(right[1], at.after + 6))
    named = (at.after, min(right[1], at.after + 7))
    if (
        subject(view, left) in PEOPLE
        or view.word(at.after) in PEOPLE
        or not (view.maths(named) or view.has(named, _CLASSES) or _all_of_them(view, at))
    ):
        return Judgement("look_alike", f"{span} is no claim over numbers or shapes")
    return Judgement("reasoning", f"{span} says what it holds for")


def _all_of_them(view: View, at: Occurrence) -> bool:
    return view.has((at.after, at.after + 3), _POINTING) and _maths_earlier(view, at.first)
