"""Conjectures to test: general claims about mathematics with nothing to support them (R4, R18)."""

from __future__ import annotations

import re
from collections.abc import Sequence

from journal.evidence.flags.stretches import make_flag, own_span
from journal.evidence.mathematics import Mathematics
from journal.language.parse import Parse
from journal.lexicon.flags import Conjectures
from journal.lexicon.word_keys import WordStream
from journal.records import Flag, Marker, Reason, Span

_WHY = "“{words}” claims something in general and gives no reason why; it is worth testing."
_WHY_ONE = "“{words}” claims something in general on one example; it is worth testing."
_NOT_A_CLAIM = ("no_mathematics", "narrative", "echo", "mention", "look_alike")
_EXAMPLE = re.compile(r"\d")
_STRUCTURE = re.compile(
    r"\b(each|every|any|all|always|never|pairs?|groups?|left ?overs?|left over|means?|half|"
    r"the same|equal|inverse|nothing|no |whole|parts?|sides?|place|tens|ones|multiple|factor)\b"
)


def find_conjectures(
    parse: Parse,
    words: WordStream,
    phrases: Conjectures,
    *,
    markers: Sequence[Marker],
    reasons: Sequence[Reason],
    mathematics: Mathematics,
) -> list[Flag]:
    """Find general claims about mathematics that no reason supports.

    Returns
    -------
    list of Flag
        One a sentence, over the sentence. One example worked out is no support for a general
        claim (R7); a sentence that asks is no claim.
    """
    found: dict[Span, Flag] = {}
    claimed = phrases.phrases.find(words)
    claimed += [(first, after, name) for name, _, first, after in phrases.sure.find(words)]
    for first, after, group in sorted(claimed):
        span = own_span(parse, words, first, after)
        if group != "certain" and any(
            marker.start < span[1] and span[0] < marker.end and marker.reading in _NOT_A_CLAIM
            for marker in markers
        ):
            continue
        at, past = _sentence(words, first)
        whole = own_span(parse, words, at, past)
        if whole in found or (_asks(words, at, past) and not _is_tried(words, past, phrases)):
            continue
        if not mathematics.any_in(*parse.tokens_in(*whole)) and not any(
            at <= a and b <= past for _, _, a, b in phrases.mathematics.find(words)
        ):
            continue
        support = [
            reason
            for reason in reasons
            if _supports(reason, whole)
            and not _is_condition(reason, markers)
            and not _is_claim_itself(reason, span)
        ]
        if any(not _only_example(parse.text, reason) for reason in support):
            continue
        found[whole] = make_flag(
            "conjecture_to_test", parse.text, whole, _WHY_ONE if support else _WHY
        )
    return list(found.values())


def _sentence(words: WordStream, at: int) -> tuple[int, int]:
    first = at
    while first and words.keys[first - 1] != ".":
        first -= 1
    after = at
    while after < len(words) and words.keys[after] != ".":
        after += 1
    return first, after


_ASKING = frozenset({"is", "does", "do", "are", "will", "can", "would", "could", "why", "how"})


def _asks(words: WordStream, first: int, after: int) -> bool:
    if after < len(words) and "?" in words.text[words.starts[after] : words.ends[after]]:
        return True
    opening = words.text[words.starts[first] : words.ends[first]].lower()
    return opening in _ASKING


def _is_tried(words: WordStream, after: int, phrases: Conjectures) -> bool:
    """Say whether the child goes on to try what a sentence asks."""
    return any(first >= after for _, _, first, _ in phrases.tried.find(words))


def _is_condition(reason: Reason, markers: Sequence[Marker]) -> bool:
    """Say whether a reason is the "if" of the claim: part of what is claimed, not its support."""
    return any(
        marker.function == "condition" and 0 <= reason.reason[0] - marker.end <= 1
        for marker in markers
    )


def _is_claim_itself(reason: Reason, general: Span) -> bool:
    """Say whether a reason told without a connective holds the very words that claim."""
    start, end = reason.reason
    return reason.marker is None and start <= general[0] and general[1] <= end


def _supports(reason: Reason, sentence: Span) -> bool:
    """Say whether a reason belongs to what the sentence claims."""
    near = reason.claim or reason.reason
    return (near[0] < sentence[1] and sentence[0] < near[1]) or (
        reason.reason[0] < sentence[1] and sentence[0] < reason.reason[1]
    )


def _only_example(text: str, reason: Reason) -> bool:
    """Say whether a reason is no more than a case worked out with numbers."""
    if reason.ground in ("circular", "not_mathematical"):
        return True
    stretch = text[reason.reason[0] : reason.reason[1]].lower()
    return bool(_EXAMPLE.search(stretch)) and not _STRUCTURE.search(stretch)
