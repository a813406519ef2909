"""Words about the pupil's own knowing, difficulty, strategy, checking, change and next step."""

from __future__ import annotations

import re
from collections.abc import Sequence
from typing import cast

from journal.evidence.clauses import Clause, find_clauses
from journal.evidence.mathematics import Mathematics
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.metacognition import load_metacognition
from journal.lexicon.reasoning_words import load_reasoning_words
from journal.records import Marker, MetacognitionEvidence, MetacognitionKind

WORDS = load_reasoning_words()

_PATTERNS = load_metacognition()
_TRIGGERS = WORDS["own_learning"]
# One step among others: "first I used ...", "and then I used ...".
_STEP = re.compile(r"^(first|then|next|after that|and then|firstly|secondly)\b")
_DID_AND_GOT = re.compile(r"\bused\b(?!.*\b(help|because|easier|better)\b)")


def find_metacognition(
    parse: Parse, markers: Sequence[Marker], mathematics: Mathematics, setting: Setting
) -> list[MetacognitionEvidence]:
    """Find what the pupil says of their own knowing and learning.

    Parameters
    ----------
    parse : Parse
        The entry.
    markers : sequence of Marker
        As `find_markers` gives them.
    mathematics : Mathematics
        What each token speaks of.
    setting : Setting
        What was set.

    Returns
    -------
    list of MetacognitionEvidence
        Sorted by start; one for each kind that a clause shows. Rule R19: a strategy told as one
        step of a recount, and liking the lesson without any mathematics, are left out.
    """
    found = []
    clauses = find_clauses(parse)
    for number, clause in enumerate(clauses):
        words = [token.lower for token in parse.tokens[clause.first : clause.after]]
        if _TRIGGERS.isdisjoint(words):
            continue
        said = " ".join(words).replace("’", "'")
        for kind in _find_kinds(said, words):
            if kind == "strategy" and _is_step(said, clause, clauses, number, parse):
                continue
            if kind == "feeling" and _is_liking_alone(said, mathematics, clause):
                continue
            start, end = parse.span(clause.first, _without_stop(parse, clause))
            found.append(MetacognitionEvidence(start, end, parse.text[start:end], kind))
    return found


def _find_kinds(said: str, words: Sequence[str]) -> list[MetacognitionKind]:
    kinds = [kind for kind, pattern in _PATTERNS.items() if pattern.search(said)]
    if "knowing" in kinds:
        kinds.remove("knowing")
        if "change" not in kinds:
            kinds.append("feeling")
    return cast("list[MetacognitionKind]", kinds)


def _is_step(
    said: str, clause: Clause, clauses: Sequence[Clause], number: int, parse: Parse
) -> bool:
    if "help" in said or "chose" in said or "better" in said or "easier" in said:
        return False
    if _STEP.search(said) or "then" in clause.joints:
        return True
    following = clauses[number + 1] if number + 1 < len(clauses) else None
    return (
        following is not None
        and following.joint in ("and", "then")
        and bool(_DID_AND_GOT.search(said))
    )


_LIKING = re.compile(
    r"\b(like|liked|love|loved|enjoy|enjoyed|enjoyable|fun|favourite|happy|proud|excited|boring"
    r"|interesting|hate|hated|pleased)\b"
)
_LEARNING = re.compile(
    r"\b(hard|harder|easy|easier|tricky|difficult|confus\w*|confident|good at|better at|best|effort"
    r"|challeng\w*|nervous|worried|understand|give up|giving up|learn|learned|sense|myself)\b"
)
_OWN_MATHS = re.compile(r"\b(maths|math|mathematics)\b(?! (lesson|today|was|is))")


def _is_liking_alone(said: str, mathematics: Mathematics, clause: Clause) -> bool:
    """R19: liking or pride about the lesson says nothing of learning."""
    if not _LIKING.search(said) or _LEARNING.search(said):
        return False
    return not (mathematics.any_in(clause.first, clause.after) or _OWN_MATHS.search(said))


def _without_stop(parse: Parse, clause: Clause) -> int:
    after = clause.after
    while after - 1 > clause.first and parse.tokens[after - 1].pos == "PUNCT":
        after -= 1
    return after
