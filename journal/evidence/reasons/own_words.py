"""Reasons kept to the child's own words: none spans an adult's prompt or words put in by a tap."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from journal.records import Excluded, Reason, Span


def keep_own_words(
    reasons: Sequence[Reason], excluded: Sequence[Excluded], text: str
) -> list[Reason]:
    """Cut reasons and their claims to the longest stretch of the child's own words in them.

    Parameters
    ----------
    reasons : sequence of Reason
        As they were found.
    excluded : sequence of Excluded
        What is not the child's own, in order.
    text : str
        The entry as given.

    Returns
    -------
    list of Reason
        A reason with no word of the child's is left out, a claim with none is unknown;
        ``supports`` points into this list.
    """
    if not excluded:
        return list(reasons)
    kept: list[Reason] = []
    place: dict[int, int] = {}
    for number, item in enumerate(reasons):
        own = _own_part(item.reason, excluded, text)
        if own is None:
            continue
        claim = _own_part(item.claim, excluded, text) if item.claim else None
        place[number] = len(kept)
        kept.append(replace(item, reason=own, claim=claim))
    return [
        replace(item, supports=None if item.supports is None else place.get(item.supports))
        for item in kept
    ]


def _own_part(span: Span, excluded: Sequence[Excluded], text: str) -> Span | None:
    start, end = span
    parts: list[Span] = []
    for stretch in excluded:
        if stretch.end <= start or stretch.start >= end:
            continue
        parts.append((start, stretch.start))
        start = stretch.end
    if not parts:
        return span
    parts.append((start, end))
    trimmed = [_trim(part, text) for part in parts if part[0] < part[1]]
    own = [part for part in trimmed if any(map(str.isalnum, text[slice(*part)]))]
    return max(own, key=lambda part: part[1] - part[0], default=None)


def _trim(span: Span, text: str) -> Span:
    start, end = span
    inside = text[start:end]
    return start + len(inside) - len(inside.lstrip()), end - len(inside) + len(inside.rstrip())
