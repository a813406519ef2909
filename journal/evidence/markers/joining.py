"""What a marker joins: mathematics, or a feeling, somebody's word, a topic, a step."""

from __future__ import annotations

from journal.evidence.markers.view import Stretch, View
from journal.evidence.markers.words import (
    AUTHORITIES,
    BE,
    FEELINGS,
    KNOWING,
    LIKING,
    PEOPLE,
    SAYING,
    STATES,
    TOPIC_VERBS,
    WORDS,
)

_NOT = frozenset(("n't", "nt", "not", "never"))
_CHECKING = frozenset(("checked", "check", "tested", "test", "proved", "prove"))
_AM = frozenset(("am", "'m", "m", "im", "i'm", "was"))
_I = WORDS["joining.i"]
_NEGATED = WORDS["joining.negated"]
_KNOWN = WORDS["joining.known"]
_TALLYING = WORDS["joining.tallying"]
_LABELLED = WORDS["joining.labelled"]
_PROPERTIES = WORDS["joining.properties"]
_TAIL = WORDS["joining.tail"]
_SKIP = WORDS["joining.skip"]


def subject(view: View, stretch: Stretch) -> str:
    """Return the first word that can be a clause's subject, or ""."""
    first, after = stretch
    while first < after and (
        view.words[first] in _SKIP or view.tags[first] in ("RB", "IN", ",", "``", "''")
    ):
        first += 1
    if first >= after:
        return ""
    # "in the shop I had": what goes before is where, not who.
    if first > stretch[0] and view.tags[first - 1] == "IN":
        for at in range(first + 1, min(first + 4, after)):
            if view.words[at] in _I and view.tags[at - 1] in ("NN", "NNS", "NNP"):
                return view.words[at]
    # "my partner", "the teacher": the noun says who it is.
    if view.tags[first] in ("DT", "PRP$"):
        at = first + 1
        while at < after and view.tags[at] in ("JJ", "NN", "NNP") and at < first + 3:
            if view.words[at] in PEOPLE:
                return view.words[at]
            at += 1
    return view.words[first]


def about_people(view: View, stretch: Stretch) -> bool:
    """Say whether a person is the subject."""
    word = subject(view, stretch)
    return word in PEOPLE or (
        view.parse.tokens[stretch[0]].tag == "NNP" and not view.maths((stretch[0], stretch[0] + 1))
        if stretch[0] < stretch[1]
        else False
    )


def first_verb(view: View, stretch: Stretch) -> int | None:
    """Return the position of the first word that can carry the clause."""
    view.edges()
    for i in range(*stretch):
        if view.verbs[i] or view.tags[i] in ("VB", "VBN"):
            return i
    return None


def is_feeling(view: View, stretch: Stretch) -> bool:
    """Say whether a clause tells a liking, a feeling, how hard it was, or who somebody is.

    "fractions are hard" is one though it names mathematics; "it is easy to see that 3 is less
    than 4" is not.
    """
    words = view.words
    first, after = stretch
    for i in range(first, after):
        word = words[i]
        if word in LIKING and view.tags[i][:1] in ("V", "I"):
            if word in ("like", "likes") and i > first and words[i - 1] in BE:
                continue
            if subject(view, (first, i)) in PEOPLE:
                return True
        if word in FEELINGS:
            back = max(first, i - 4)
            if not any(words[at] in BE for at in range(back, i)) and view.maths(stretch):
                continue
            rest = (i + 1, after)
            if view.tag(i + 1) in ("NN", "NNS") and view.maths((i + 1, i + 2)):
                continue
            tail = rest[0] < after and words[rest[0]] in _TAIL
            if not (tail and view.maths(rest)):
                return True
    return False


def is_said(view: View, stretch: Stretch) -> bool:
    """Say whether a clause leans on somebody's word, or on a bare rule."""
    words = view.words
    first, after = stretch
    for i in range(first, after):
        if words[i] in SAYING and not (
            i + 1 < after
            and words[i + 1] in ("you", "us", "that")
            and view.maths((i, after))
            and words[i] == "tells"
        ):
            return any(words[at] in AUTHORITIES or words[at] in PEOPLE for at in range(first, i))
        if words[i] in ("rule", "rules") and not view.maths((i + 1, after)):
            return True
    return False


def is_self(view: View, stretch: Stretch) -> bool:
    """Say whether a clause only says that the child knows, is clever, remembered or guessed."""
    words = view.words
    _first, after = stretch
    if subject(view, stretch) not in _I:
        return False
    verb = first_verb(view, stretch)
    if verb is not None and view.words[verb] in _AM and view.tag(verb + 1) == "CD":
        return after <= verb + 4
    if is_not_knowing(view, stretch):
        return True
    if view.maths(stretch, "quantity", "relation"):
        return False
    if verb is None:
        return True
    word = words[verb]
    if word in ("know", "knew", "remembered", "guessed", "practised", "tried", "just", "listened"):
        return not view.maths((verb, after))
    return False


def is_not_knowing(view: View, stretch: Stretch) -> bool:
    """Say whether a clause of the child's opens with "I don't know", "I'm not sure"."""
    opening = (stretch[0], min(stretch[0] + 5, stretch[1]))
    return view.has(opening, _NEGATED) and view.has(opening, _KNOWN)


def tells_tally(view: View, stretch: Stretch) -> bool:
    """Say whether a clause only counts what somebody got or has: "I got 10 out of 10"."""
    verb = first_verb(view, stretch)
    if verb is None or view.words[verb] not in _TALLYING or not about_people(view, stretch):
        return False
    kinds = {view.kinds[i] for i in range(*stretch) if view.words[i] not in ("out", "of")}
    return kinds <= {None, "quantity"}


def is_topic(view: View, stretch: Stretch) -> bool:
    """Say whether a clause only names what the class did: "we did fractions"."""
    if subject(view, stretch) not in _I:
        return False
    verb = first_verb(view, stretch)
    return (
        verb is not None
        and (view.words[verb] in TOPIC_VERBS or view.words[verb] == "had")
        and not (view.words[verb] == "had" and view.word(verb + 1) == "to")
        and (
            view.has(stretch, _LABELLED)
            or not view.maths(stretch, "quantity", "relation", "operation")
        )
        and view.word(verb + 1) not in _NOT
    )


def joins_property(view: View, stretch: Stretch) -> bool:
    """Say whether a clause can state a property of the mathematics before it ("it fits")."""
    word = subject(view, stretch)
    if word in PEOPLE or not word:
        return False
    if about_people(view, stretch):
        return False
    verb = first_verb(view, stretch)
    return verb is not None and not is_feeling(view, stretch) and not is_said(view, stretch)


def tells_check(view: View, stretch: Stretch) -> bool:
    """Say whether a clause tells how something was checked: "I checked it by adding back"."""
    first, after = stretch
    return view.has(stretch, _CHECKING) and any(
        view.words[i] == "by" and view.tag(i + 1) == "VBG"
        for i in range(first, min(after, len(view.words)))
    )


def in_context(view: View, i: int, reach: int = 25) -> bool:
    """Say whether mathematics stands in the words before token ``i``."""
    return view.maths((max(0, i - reach), i))


def names_property(view: View, stretch: Stretch) -> bool:
    """Say whether a clause states a property in everyday words ("it is bigger", "they fit")."""
    return joins_property(view, stretch) and (
        view.has(stretch, _PROPERTIES) or "JJR" in view.tags[stretch[0] : stretch[1]]
    )


def is_action(view: View, stretch: Stretch) -> bool:
    """Say whether a clause tells what I or we did (not what I knew, had or could)."""
    if subject(view, stretch) not in _I:
        return False
    verb = first_verb(view, stretch)
    if verb is None:
        return True
    return view.words[verb] not in KNOWING and not view.words[verb].startswith(("'", "need"))


def is_ground(view: View, stretch: Stretch) -> bool:
    """Say whether a clause states something that a next step can follow from."""
    verb = first_verb(view, stretch)
    if verb is None:
        return view.maths(stretch)
    if subject(view, stretch) in PEOPLE:
        return view.words[verb] in STATES
    return True
