"""Markers inside stretches that are not the child's own words."""

from __future__ import annotations

from collections.abc import Sequence, Set
from functools import lru_cache

from journal.evidence.echo import COPIED_WORDS, find_echoes
from journal.evidence.markers.view import Judgement, Occurrence, Stretch, View
from journal.evidence.markers.words import JOINS_ALWAYS, STOPS
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.terms import split_words
from journal.records import Span


def find_copied(parse: Parse, setting: Setting, words: Set[str]) -> list[Span]:
    """Return the stretches put in by a tap or copied from prompt, starters or word bank.

    Only stretches that could hold one of ``words`` are looked for.
    """
    spans = [(part.start, part.end) for part in setting.excluded]
    if not words.isdisjoint(
        _words_set(setting.prompt, setting.sentence_starters, setting.word_bank)
    ):
        spans += find_echoes(parse, setting)
        spans += _short_starters(parse, setting)
    return sorted(spans)


@lru_cache(maxsize=256)
def _words_set(prompt: str | None, starters: Sequence[str], bank: Sequence[str]) -> frozenset[str]:
    """Return every word of what was set: most entries use none of its markers."""
    sources = (prompt or "", *starters, *bank)
    return frozenset(word for source in sources for word in split_words(source.lower()))


def _short_starters(parse: Parse, setting: Setting) -> list[Span]:
    """Return sentence starters too short to be told from own words anywhere but at an opening."""
    tokens = parse.tokens
    spans = []
    for starter in setting.sentence_starters:
        words = [word for word in split_words(starter) if word[0].isalpha()]
        size = len(words)
        if not 1 < size < COPIED_WORDS:
            continue
        for at in range(len(tokens) - size + 1):
            opens = at == 0 or tokens[at - 1].lower in STOPS
            if opens and [token.lower for token in tokens[at : at + size]] == words:
                spans.append(parse.span(at, at + size))
    return spans


def read_copied(
    view: View, at: Occurrence, judgement: Judgement, copied: Sequence[Span]
) -> Judgement:
    """Read a marker in a copied stretch as an echo, unless the child goes on in own words."""
    start, end = view.parse.span(at.first, at.after)
    for a, b in copied:
        if a <= start and end <= b:
            after = view.parse.tokens_in(a, b)[1]
            rest = view.following(after)
            own = (
                rest[1] - rest[0] > 1
                and view.maths(rest)
                and view.following(at.after)[1] >= after
                and not _begins_again(view, rest, at)
            )
            if own and judgement.reading == "reasoning":
                return judgement
            quote = view.parse.text[a:b].strip()
            return Judgement("echo", f"'{at.label}' stands in words that were given: '{quote}'")
    return judgement


def _begins_again(view: View, rest: Stretch, at: Occurrence) -> bool:
    """Say whether the child starts afresh with the same words or another joining word."""
    first = rest[0] + (view.word(rest[0]) == "and")
    size = at.after - at.first
    return (
        view.words[first : first + size] == view.words[at.first : at.after]
        or view.word(first) in JOINS_ALWAYS
    )
