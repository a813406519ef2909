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
from journal.records import Marker, MetacognitionEvidence, MetacognitionKind, Reason

_PATTERNS = load_metacognition().patterns
_TRIGGERS = load_metacognition().triggers
# One step among others: "first I used ...", "and then I used ...".
_STEP = re.compile(r"^(first|then|next|after that|and then|firstly|secondly)\b")
_DID_AND_GOT = re.compile(r"\bused\b(?!.*\b(help|because|easier|better)\b)")


def find_metacognition(
    parse: Parse,
    markers: Sequence[Marker],
    mathematics: Mathematics,
    setting: Setting,
    reasons: Sequence[Reason] = (),
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
    reasons : sequence of Reason
        As `find_reasons` gives them: a check written out is a comment on one's own work.

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
        for kind, at in _find_kinds(said):
            if kind == "strategy" and _is_step(said, clause, clauses, number, parse):
                continue
            first = clause.first + at
            if kind == "feeling" and _is_liking_alone(said, mathematics, first, clause.after):
                continue
            start, end = parse.span(first, _without_stop(parse, first, clause.after))
            found.append(MetacognitionEvidence(start, end, parse.text[start:end], kind))
    found += _find_written_checks(parse, reasons, found)
    found.sort(key=lambda item: (item.start, item.end))
    return found


def _find_kinds(said: str) -> list[tuple[MetacognitionKind, int]]:
    """Return the kinds a clause shows, each with the word at which its comment begins."""
    kinds: dict[str, int] = {}
    for kind, pattern in _PATTERNS.items():
        match = pattern.search(said)
        if match:
            kinds[kind] = said.count(" ", 0, match.start())
    if "knowing" in kinds:
        at = kinds.pop("knowing")
        if "change" not in kinds:
            kinds.setdefault("feeling", at)
    # What is felt begins with the feeling; every other comment is its whole clause.
    return [
        (cast("MetacognitionKind", kind), at if kind == "feeling" else 0)
        for kind, at in kinds.items()
    ]


def _find_written_checks(
    parse: Parse, reasons: Sequence[Reason], found: Sequence[MetacognitionEvidence]
) -> list[MetacognitionEvidence]:
    """R16 and R19: an inverse, estimate or second method written out is a described check."""
    checks = [item for item in found if item.kind == "check"]
    return [
        MetacognitionEvidence(*reason.reason, parse.text[slice(*reason.reason)], "check")
        for reason in reasons
        if reason.role == "check"
        and not any(
            item.start < reason.reason[1] and reason.reason[0] < item.end for item in checks
        )
    ]


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
_OWN_MATHS = re.compile(r"\b(maths|math|mathematics)\b(?! (lesson|today|was))")


def _is_liking_alone(said: str, mathematics: Mathematics, first: int, after: int) -> bool:
    """R19: liking or pride about the lesson says nothing of learning."""
    if not _LIKING.search(said) or _LEARNING.search(said):
        return False
    return not (mathematics.any_in(first, after) or _OWN_MATHS.search(said))


def _without_stop(parse: Parse, first: int, after: int) -> int:
    while after - 1 > first and parse.tokens[after - 1].pos == "PUNCT":
        after -= 1
    return after
