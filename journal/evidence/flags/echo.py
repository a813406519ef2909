"""Entries that are (mostly) copied from the prompt or a sentence starter."""

from __future__ import annotations

from collections.abc import Sequence
from functools import lru_cache

from journal.evidence.flags.stretches import make_flag, own_span
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.word_keys import WordStream, read_words
from journal.records import Flag
from journal.text.likeness import one_letter_apart

_WHY = "“{words}” is the prompt or a sentence starter copied, with little of the child's own."
_RUN = 3
"""Copied words count in runs of at least so many."""
_FEWEST = 4
"""An entry is called copied from so many copied words on."""
_OWN = 0.2
"""Share of the words that may be the child's own."""
_AS_GIVEN = 0.4
"""Share of the words that are spelt as they were given, however much a copy is misspelt."""


def find_copied(parse: Parse, words: WordStream, setting: Setting) -> list[Flag]:
    """Find an entry that is (mostly) the prompt or the sentence starters.

    Returns
    -------
    list of Flag
        One at most, from the first copied word to the last. A starter that the child goes on
        from, or a prompt that the child answers, is no echo.
    """
    sources = _read_sources(setting.prompt, setting.sentence_starters)
    inserted = [e for e in setting.excluded if e.why == "inserted"]
    if not (sources or inserted) or not len(words):
        return []
    places = [i for i, key in enumerate(words.keys) if key != "."]
    keys = [words.keys[i] for i in places]
    given = set().union(*sources)
    if not inserted and sum(key in given for key in keys) < _AS_GIVEN * len(keys):
        return []
    copied = [False] * len(keys)
    for source in sources:
        _mark_runs(keys, source, copied)
    if inserted:
        for at, place in enumerate(places):
            start, end = own_span(parse, words, place, place + 1)
            copied[at] = copied[at] or any(e.start <= start and end <= e.end for e in inserted)
    count = sum(copied)
    if count < _FEWEST or len(keys) - count > _OWN * len(keys):
        return []
    marked = [place for place, is_copied in zip(places, copied, strict=True) if is_copied]
    span = own_span(parse, words, marked[0], marked[-1] + 1)
    return [make_flag("echo", parse.text, span, _WHY)]


@lru_cache(maxsize=256)
def _read_sources(prompt: str | None, starters: tuple[str, ...]) -> tuple[tuple[str, ...], ...]:
    texts = (*((prompt,) if prompt else ()), *starters)
    return tuple(tuple(key for key in read_words(text).keys if key != ".") for text in texts)


def _mark_runs(keys: Sequence[str], source: Sequence[str], copied: list[bool]) -> None:
    """Mark every run of words that stands in the source, one letter of a word forgiven."""
    given = set(source)
    for at in range(len(keys) - _RUN + 1):
        # Of three copied words at least two are spelt as they were given.
        if sum(key in given for key in keys[at : at + _RUN]) < _RUN - 1:
            continue
        for begin in range(len(source) - _RUN + 1):
            length = 0
            while (
                at + length < len(keys)
                and begin + length < len(source)
                and _alike(keys[at + length], source[begin + length])
            ):
                length += 1
            if length >= _RUN:
                copied[at : at + length] = [True] * length


def _alike(key: str, other: str) -> bool:
    if key == other:
        return True
    return len(key) > 2 and len(other) > 2 and key.isalpha() and one_letter_apart(key, other)
