"""Stretches copied from what was set: the prompt, a sentence starter, the word bank."""

from __future__ import annotations

import re
from collections.abc import Iterable, Iterator
from functools import lru_cache
from typing import NamedTuple

from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.terms import Words, split_words
from journal.records import Span

COPIED_WORDS = 4
"""So many consecutive words identical to what was set are an echo."""
COPIED_TERMS = 3
"""So many terms in the order of a list that was set are an echo."""

_BLANK = re.compile(r"_{2,}|\.{2,}|…|[?!;:\n]")
_BETWEEN_ITEMS = re.compile(r"[,;:\n•]|\band\b|\.(?!\d)")
_LONGEST_ITEM = 3


class Copied(NamedTuple):
    """What was set, ready to compare: runs of four words, and lists of terms."""

    runs: frozenset[Words]
    lists: tuple[tuple[Words, ...], ...]


def find_echoes(parse: Parse, setting: Setting) -> list[Span]:
    """Return the stretches that are copied from what was set.

    Parameters
    ----------
    parse : Parse
        The entry.
    setting : Setting
        Prompt, sentence starters and word bank; words put in by a tap are in ``excluded``.

    Returns
    -------
    list of Span
        Offsets into the original, in order, none overlapping: four or more consecutive words
        identical to a prompt, starter or word bank; three or more terms in the order of a list
        that was set; words put in by a tap. Single words of the prompt are the child's own.
    """
    spans = [(part.start, part.end) for part in setting.excluded if part.why == "inserted"]
    if setting.prompt or setting.word_bank or setting.sentence_starters:
        copied = _read_set(setting.prompt, setting.sentence_starters, setting.word_bank)
        words, places = _own_words(parse)
        for first, after in (*_runs(words, copied.runs), *_ordered(words, copied.lists)):
            spans.append(parse.span(places[first], places[after - 1] + 1))
    return _joined(spans) if spans else spans


def find_word_lists(parse: Parse, setting: Setting) -> list[Span]:
    """Return bare lists of terms that were set, in whatever order.

    Returns
    -------
    list of Span
        Stretches of three or more different items of the word bank (or of the targets) with
        nothing but commas and "and" between them.
    """
    items = {split_words(item) for item in (*setting.word_bank, *setting.targets)} - {()}
    if len(items) < COPIED_TERMS:
        return []
    words, places = _own_words(parse)
    spans = []
    at = 0
    while at < len(words):
        found, end, after = set(), at, at
        while (item := _item_at(words, after, items)) is not None:
            found.add(item)
            end = after = after + len(item)
            while after < len(words) and words[after] == "and":
                after += 1
        if len(found) >= COPIED_TERMS:
            spans.append(parse.span(places[at], places[end - 1] + 1))
        at = max(end, at + 1)
    return spans


def is_echo(start: int, end: int, echoes: Iterable[Span]) -> bool:
    """Say whether a stretch lies inside an echo."""
    return any(first <= start and end <= after for first, after in echoes)


@lru_cache(maxsize=256)
def _read_set(prompt: str | None, starters: Words, bank: Words) -> Copied:
    runs: set[Words] = set()
    lists: list[tuple[Words, ...]] = []
    for source in (prompt or "", *starters, *bank):
        for stretch in _BLANK.split(source):
            words = _letters(split_words(stretch))
            for at in range(len(words) - COPIED_WORDS + 1):
                runs.add(words[at : at + COPIED_WORDS])
    for items in (bank, *map(_BETWEEN_ITEMS.split, (prompt or "", *starters))):
        terms = tuple(_letters(split_words(item)) for item in items)
        # A long item is a sentence, not a term: it parts two lists.
        lists.extend(_parted(terms))
    return Copied(frozenset(runs), tuple(lists))


def _parted(items: Iterable[Words]) -> Iterator[tuple[Words, ...]]:
    together: list[Words] = []
    for item in items:
        if not item:
            continue
        if len(item) <= _LONGEST_ITEM:
            together.append(item)
            continue
        if len(together) >= COPIED_TERMS:
            yield tuple(together)
        together = []
    if len(together) >= COPIED_TERMS:
        yield tuple(together)


def _letters(words: Words) -> Words:
    return tuple(word for word in words if word[0].isalnum())


def _own_words(parse: Parse) -> tuple[list[str], list[int]]:
    words: list[str] = []
    places: list[int] = []
    for token in parse.tokens:
        for word in (token.lower,) if token.lower.isalpha() else split_words(token.lower):
            if word[0].isalnum():
                words.append(word)
                places.append(token.index)
    return words, places


def _runs(words: list[str], runs: frozenset[Words]) -> Iterator[tuple[int, int]]:
    for at in range(len(words) - COPIED_WORDS + 1):
        if tuple(words[at : at + COPIED_WORDS]) in runs:
            yield at, at + COPIED_WORDS


def _ordered(words: list[str], lists: tuple[tuple[Words, ...], ...]) -> Iterator[tuple[int, int]]:
    for items in lists:
        for first in range(len(items) - COPIED_TERMS + 1):
            for at in range(len(words)):
                after, count = at, 0
                for item in items[first:]:
                    start = after + 1 if count and words[after : after + 1] == ["and"] else after
                    if tuple(words[start : start + len(item)]) != item:
                        break
                    after, count = start + len(item), count + 1
                if count >= COPIED_TERMS:
                    yield at, after


def _item_at(words: list[str], at: int, items: set[Words]) -> Words | None:
    for length in range(_LONGEST_ITEM, 0, -1):
        item = tuple(words[at : at + length])
        if len(item) == length and item in items:
            return item
    return None


def _joined(spans: list[Span]) -> list[Span]:
    joined: list[Span] = []
    for start, end in sorted(spans):
        if joined and start <= joined[-1][1]:
            joined[-1] = (joined[-1][0], max(end, joined[-1][1]))
        else:
            joined.append((start, end))
    return joined
