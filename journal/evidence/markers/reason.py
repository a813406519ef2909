"""Markers that introduce a reason: because, since, as, the reason."""

from __future__ import annotations

from journal.evidence.markers.joining import (
    first_verb,
    in_context,
    is_feeling,
    is_said,
    is_self,
    is_topic,
    joins_property,
    names_property,
    subject,
    tells_check,
    tells_tally,
)
from journal.evidence.markers.model import estimate_use
from journal.evidence.markers.view import Judgement, Occurrence, Stretch, View
from journal.evidence.markers.words import BE, PEOPLE, STOPS, SUBJECTS, TIME_WORDS, WORDS

_HELPING = frozenset(("help", "helps", "helped"))
_FINITE = frozenset(("VBZ", "VBP", "VBD", "MD"))
_OPENS_NOUN = frozenset(("DT", "PRP$", "CD", "NN", "NNS", "NNP", "JJ", "PDT"))
_BEFORE_AS = WORDS["reason.before_as"]
_AFTER_AS = WORDS["reason.after_as"]
_PRESENT = frozenset(("VBZ", "VBP", "MD", "JJ", "NN", "NNS"))
_STATES = WORDS["reason.states"]
_SAYING_OR_SEEING = WORDS["reason.saying_or_seeing"]
_NOUN_BEFORE_CAUSE = WORDS["reason.noun_before_cause"]


def read_because(view: View, at: Occurrence) -> Judgement:
    """Ask whether what follows is a reason about mathematics."""
    if view.word(at.first) == "cause" and not _is_cause(view, at.first):
        return Judgement("look_alike", "'cause' is a noun or a verb here, not because")
    return judge_reason(view, at)


def judge_reason(view: View, at: Occurrence) -> Judgement:
    """Judge what a reason word joins: the clause after it to the clause before it."""
    reason = view.following(at.after)
    claim = view.before(at.first)
    if reason[0] >= reason[1]:
        return Judgement("look_alike", f"nothing follows '{at.label}'")
    if claim[0] >= claim[1]:
        claim = view.following(reason[1])
    said = view.quote(*reason)
    name = f"'{at.label}'"
    if is_said(view, reason):
        return Judgement("no_mathematics", f"{name} leans on somebody's word or a rule: {said}")
    if is_feeling(view, reason):
        return Judgement("no_mathematics", f"{name} gives a feeling or how hard it was: {said}")
    if is_self(view, reason):
        return Judgement("no_mathematics", f"{name} says only that the child knows: {said}")
    if _names_topic(view, reason):
        return Judgement("no_mathematics", f"{name} only names what it was about: {said}")
    if is_topic(view, reason) and (is_feeling(view, claim) or not view.maths(claim)):
        return Judgement("no_mathematics", f"{name} only names what was done: {said}")
    if tells_tally(view, reason) and (not view.maths(claim) or tells_tally(view, claim)):
        return Judgement("no_mathematics", f"{name} only counts what somebody had: {said}")
    if view.maths(reason) or tells_check(view, reason):
        return Judgement("reasoning", f"{name} gives the reason: {said}")
    if view.has(reason, _HELPING):
        return Judgement("no_mathematics", f"{name} says only that it helped: {said}")
    if view.maths(claim) and not is_feeling(view, claim) and joins_property(view, reason):
        return Judgement("reasoning", f"{name} gives the reason for {view.quote(*claim)}: {said}")
    if names_property(view, reason) and (in_context(view, at.first) or view.maths(claim)):
        return Judgement("reasoning", f"{name} gives the reason: {said}")
    return Judgement("no_mathematics", f"{name} joins nothing mathematical: {said}")


def _names_topic(view: View, stretch: Stretch) -> bool:
    """Say whether a clause only says what the lesson was about."""
    verb = first_verb(view, stretch)
    return verb is not None and view.words[verb] in BE and view.word(verb + 1) == "about"


def _is_cause(view: View, first: int) -> bool:
    after, before = view.word(first + 1), view.word(first - 1)
    if after in ("of", "for", "by", "in") or before in _NOUN_BEFORE_CAUSE:
        return False
    reason = view.following(first + 1)
    return view.word(reason[0]) in SUBJECTS or first_verb(view, reason) is not None


def read_because_of(view: View, at: Occurrence) -> Judgement:
    """Ask whether something mathematical is named as the cause."""
    thing = view.following(at.after)
    name = f"'{at.label}'"
    if view.maths((at.after, min(thing[1], at.after + 6))) and not is_feeling(view, thing):
        return Judgement("reasoning", f"{name} names the reason: {view.quote(*thing)}")
    return Judgement("look_alike", f"{name} names a thing and joins no statement")


def read_the_reason(view: View, at: Occurrence) -> Judgement:
    """Ask whether a reason about mathematics is announced."""
    rest = view.following(at.after)
    end = min(rest[1] + 8, len(view.words))
    if view.maths((at.after, end)) and not is_feeling(view, (at.after, end)):
        return Judgement("reasoning", f"'{at.label}' announces a reason: {view.quote(*rest)}")
    return Judgement("no_mathematics", f"'{at.label}' joins nothing mathematical")


def read_since(view: View, at: Occurrence) -> Judgement:
    """Tell a reason from a point in time."""
    rest = view.following(at.after)
    quote = view.quote(*rest)
    hint = hint_since(view, at.first)
    use = estimate_use(view, at.first, at.after, "since", hint)
    verb = first_verb(view, rest)
    stated = any("=" in view.words[k] for k in range(*rest)) or (
        hint == "reason" and verb is not None and view.tags[verb] in _PRESENT
    )
    if stated and view.maths(rest) and not is_feeling(view, rest):
        # "since 6 is half of 12" states a reason whatever adults use "since" for.
        return judge_reason(view, at)
    if hint == "other" or (use == "other" and hint != "moment"):
        return Judgement("look_alike", f"'since' names a point in time: {quote}")
    if hint == "moment" or use == "joins":
        return Judgement("narrative", f"'since' tells the time: {quote}")
    return judge_reason(view, at)


def hint_since(view: View, first: int) -> str:
    """Say what the words alone make of 'since': a point in time, a time told or a reason."""
    i = first + 1
    rest = view.following(i)
    if rest[0] >= rest[1] or view.word(i) in STOPS or view.word(first - 1) == "ever":
        return "other"
    finite = any(view.tags[at] in _FINITE or view.verbs[at] for at in range(i + 1, rest[1]))
    if any(view.word(k) in TIME_WORDS for k in range(i, min(i + 3, rest[1]))) and not (
        finite and view.word(i) in SUBJECTS
    ):
        return "moment"
    if view.tag(i) == "VBG":
        return "moment"
    if not finite or (view.tag(i) == "CD" and not _states(view, rest)):
        return "other"
    verb = first_verb(view, rest)
    if verb is not None and _perfect_before(view, first) and view.tag(verb) == "VBD":
        return "moment"
    return "reason"


def _states(view: View, rest: Stretch) -> bool:
    """Say whether a number is what the clause is about: "since 6 is half of 12"."""
    return any(view.verbs[rest[0] + 1 : rest[0] + 2]) or view.maths(rest, "operation")


def _perfect_before(view: View, i: int) -> bool:
    first, after = view.before(i)
    words = view.words[first:after]
    return any(word in ("have", "has", "'ve", "ve", "had", "ive", "been") for word in words)


def read_as(view: View, at: Occurrence) -> Judgement:
    """Tell a reason ("as there are 4") from a moment, and from parts of other phrases."""
    rest = view.following(at.after)
    hint = hint_as(view, at.first)
    use = estimate_use(view, at.first, at.after, "as", hint)
    other = Judgement(
        "look_alike", f"'as' belongs to another phrase: {view.quote(at.first, at.after + 2)}"
    )
    if rest[0] >= rest[1]:
        return other
    verb = first_verb(view, rest)
    states = (
        verb is not None
        and view.words[verb] in _STATES
        and not _goes_on(view, verb, rest)
        and subject(view, rest) not in PEOPLE
    )
    if use == "other" and not (states and hint == "reason" and view.maths(rest)):
        return other
    told = Judgement("narrative", f"'as' tells the moment: {view.quote(*rest)}")
    if verb is not None and _is_moment(view, rest, verb):
        return told
    judgement = judge_reason(view, at)
    if judgement.reading == "reasoning":
        # "as 10 is double 5" states a reason even where the model hears a moment.
        return judgement if states or use == "causal" else told
    return judgement if use == "causal" else told


def hint_as(view: View, first: int) -> str:
    """Say what the words alone make of 'as': another phrase, a moment or a reason."""
    before, after = view.word(first - 1), view.word(first + 1)
    if before in _BEFORE_AS or after in _AFTER_AS or not after:
        return "other"
    rest = view.following(first + 1)
    opens = after in SUBJECTS
    verb = first_verb(view, rest)
    if verb is None or verb - first > 8 or (view.tags[verb] in ("VB", "VBN") and not opens):
        return "other"
    if not opens and view.tag(first + 1) not in _OPENS_NOUN:
        return "other"
    if after in ("you", "we", "i") and view.word(verb) in _SAYING_OR_SEEING:
        return "other"
    return "moment" if _is_moment(view, rest, verb) else "reason"


def _is_moment(view: View, rest: Stretch, verb: int) -> bool:
    words = view.words
    if words[verb] in ("was", "were") and _goes_on(view, verb, rest):
        return True
    if words[verb] in ("go", "goes", "went", "got", "get", "gets", "walked", "came"):
        return True
    return subject(view, rest) in PEOPLE and view.tags[verb] == "VBD"


def _goes_on(view: View, verb: int, rest: Stretch) -> bool:
    return any(view.tags[i] == "VBG" for i in range(verb + 1, min(verb + 3, rest[1])))
