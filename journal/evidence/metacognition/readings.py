"""Questions about a comment that need the parse or the mathematics, not only the words."""

from __future__ import annotations

import re
from collections.abc import Callable, Mapping
from typing import TypeAlias

from journal.evidence.metacognition.lines import Lines
from journal.lexicon.metacognition import load_metacognition

Reading: TypeAlias = Callable[[Lines, int, int, bool], bool]

_TASKS = load_metacognition().tasks
# One step among others: "first I used ...", "and then I used ...".
_STEP = re.compile(r"^(first|then|next|after that|and then|firstly|secondly)\b")
_FOR = re.compile(r"\b(to help|help me|because|instead|when|to check|to make sure|helped)\b")
# What comes of a step: "and then I added", "and got 12".
_GOES_ON = re.compile(
    r"^(then |i |we |it )*(then|got|added|made|did|took|was|counted|put|jumped)\b"
)
_AND_DID = re.compile(r"\band (then )?(\w+ed|got|made|put|drew|cut|saw|did|took|found)#?\b")
_LIKING = re.compile(
    r"\b(like|liked|love|loved|enjoy|enjoyed|enjoyable|fun|favourite|happy|proud|excited"
    r"|interesting|pleased)\b"
)
_SUBJECT = re.compile(
    r"\b(maths|math|mathematics|sums|learning)\b"
    r"(?! (lesson|today|was|is (my|the) (favourite|best)))"
)
_GROUNDS = ("because", "cos", "coz", "cuz", "and", "since")


def is_own_step(lines: Lines, number: int, at: int, commented: bool) -> bool:
    """R19: say whether a strategy is named as chosen, not as one step of a recount."""
    clause = lines.clauses[number]
    if _STEP.match(lines.say(clause.first, clause.after)) or "then" in clause.joints:
        return False
    after = lines.following(at)
    if _FOR.search(after):
        return True
    if _AND_DID.search(after) or "and" in clause.joints:
        return False
    if number + 1 == len(lines.clauses):
        return True
    following = lines.clauses[number + 1]
    return not (
        {"and", "then", ","} & set(following.joints)
        or _GOES_ON.match(lines.say(following.first, following.after))
    )


def is_about_mathematics(lines: Lines, number: int, at: int, commented: bool) -> bool:
    """R19: say whether liking or pride is about mathematics, not about the lesson alone."""
    clause = lines.clauses[number]
    if _SUBJECT.search(lines.say(clause.first, clause.after)):
        return True
    end = min(lines.end_of_sentence(at), at + 12)
    return lines.mathematics.any_in(clause.first, end)


def is_judged_task(lines: Lines, number: int, at: int, commented: bool) -> bool:
    """Say whether the work is judged, not a thing ("the hard card"), nor why it is liked."""
    tokens = lines.parse.tokens
    token = tokens[at]
    if token.dep == "amod" and token.head > at and tokens[token.head].lower not in _TASKS:
        return False
    return is_unliked(lines, number, at, commented)


def is_unliked(lines: Lines, number: int, at: int, commented: bool) -> bool:
    """R19: say whether a feeling is more than a ground of liking ("because it was easy")."""
    clause = lines.clauses[number]
    if clause.joint in _GROUNDS:
        return not _LIKING.search(lines.say_clause(number - 1))
    return not _LIKING.search(lines.say(clause.first, at))


def is_no_person(lines: Lines, number: int, at: int, commented: bool) -> bool:
    """Say whether it is a thing or a way that helped, not somebody."""
    parse = lines.parse
    subject = parse.child(at, "nsubj")
    if subject is None or lines.mathematics.kinds[subject]:
        return True
    return parse.tokens[subject].pos != "PROPN"


def follows_comment(lines: Lines, number: int, at: int, commented: bool) -> bool:
    """Say whether a comment on own learning came before."""
    return commented


READINGS: Mapping[str, Reading] = {
    "own_step": is_own_step,
    "liking": is_about_mathematics,
    "judged": is_judged_task,
    "unliked": is_unliked,
    "no_person": is_no_person,
    "commented": follows_comment,
}
