"""Stretches of an entry that are not the child's own words."""

from __future__ import annotations

import re
from collections.abc import Sequence

from journal.records import Excluded, Mode, Span

_BRACKETED = re.compile(r"\[[^\[\]]*(?:\]|$)")


def find_adult_prompts(text: str, mode: Mode | None) -> list[Span]:
    """Return the adult's prompts: square brackets in scribed and dictated entries.

    Parameters
    ----------
    text : str
        The entry as given.
    mode : {"typed", "scribed", "dictated"} or None
        In typed entries (and where the mode is unknown) brackets are the child's mathematics.

    Returns
    -------
    list of Span
        Brackets included. One that is never closed runs to the end of the text.
    """
    if mode not in ("scribed", "dictated"):
        return []
    return [found.span() for found in _BRACKETED.finditer(text)]


def find_excluded(text: str, mode: Mode | None, inserted: Sequence[Span]) -> list[Excluded]:
    """Return every stretch that is not scored, in order, none overlapping.

    Parameters
    ----------
    text : str
        The entry as given.
    mode : {"typed", "scribed", "dictated"} or None
        How the entry was taken down.
    inserted : sequence of Span
        Stretches put in by tapping a word or a sentence starter.

    Returns
    -------
    list of Excluded
        A stretch inside an adult's prompt counts as the prompt; spans are cut to the text.
    """
    prompts = find_adult_prompts(text, mode)
    found = [Excluded(start, end, "adult_prompt") for start, end in prompts]
    for start, end in inserted:
        start, end = max(0, start), min(len(text), end)
        if start < end and not any(a < end and start < b for a, b in prompts):
            found.append(Excluded(start, end, "inserted"))
    found.sort(key=lambda stretch: (stretch.start, stretch.end))
    apart: list[Excluded] = []
    for stretch in found:
        if not apart or stretch.start >= apart[-1].end:
            apart.append(stretch)
    return apart


def blank_out(clean: str, spans: Sequence[Span]) -> str:
    """Replace stretches by spaces and a line break, keeping the length.

    Parameters
    ----------
    clean : str
        Text after `normalise_characters`.
    spans : sequence of Span
        Stretches to blank, such as adult prompts.

    Returns
    -------
    str
        Of the same length. A stretch becomes blank lines, so that no sentence runs across it.
    """
    pieces: list[str] = []
    at = 0
    for start, end in spans:
        pieces.append(clean[at:start])
        pieces.append("\n" * (end - start))
        at = end
    pieces.append(clean[at:])
    return "".join(pieces)
