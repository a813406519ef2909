"""From words of the corrected text to flags over the child's own words."""

from __future__ import annotations

from collections.abc import Iterable

from journal.language.parse import Parse
from journal.lexicon.word_keys import WordStream
from journal.records import Flag, FlagKind, Span


def own_span(parse: Parse, words: WordStream, first: int, after: int) -> Span:
    """Return the original offsets of words ``first`` to ``after`` of the corrected text."""
    return parse.offsets.to_original(*words.span(first, after))


def make_flag(kind: FlagKind, text: str, span: Span, why: str, idea: str | None = None) -> Flag:
    """Make a flag whose reason quotes the child's words (for "{words}" in ``why``)."""
    surface = text[span[0] : span[1]]
    return Flag(kind, *span, surface, idea, None, why.replace("{words}", shorten(surface)))


def shorten(surface: str, most: int = 80) -> str:
    """Return a quotation short enough for a line, on one line."""
    surface = " ".join(surface.split())
    return surface if len(surface) <= most else surface[: most - 1].rstrip() + "…"


def join_spans(spans: Iterable[Span]) -> list[Span]:
    """Return spans in order, with those that overlap or touch made one."""
    joined: list[Span] = []
    for start, end in sorted(spans):
        if joined and start <= joined[-1][1]:
            joined[-1] = (joined[-1][0], max(end, joined[-1][1]))
        else:
            joined.append((start, end))
    return joined
