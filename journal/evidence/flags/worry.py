"""Words that may tell of danger or distress: an adult reads the entry first.

Recall comes before precision: a false alarm costs a minute. Hints and unusual spellings are
missed all the same, so no flag is not reassurance: every entry is read.
"""

from __future__ import annotations

from collections.abc import Container, Mapping
from functools import lru_cache

from journal.evidence.flags.stretches import join_spans, make_flag
from journal.language.parse import Parse
from journal.lexicon.flags import Worries
from journal.lexicon.word_keys import WordStream, read_words
from journal.records import Flag, Span
from journal.text.likeness import one_letter_apart
from journal.text.normalise import normalise_characters
from journal.text.offsets import OffsetMap

_WHY = (
    "“{words}” may tell of danger or distress. Read the whole entry now and follow the school's "
    "safeguarding procedure; it is not scored until an adult has read it."
)
_NONE: frozenset[str] = frozenset()
_CLOSE = 5
"""Words of at least so many letters are also read with one letter wrong."""


def find_worries(
    entry: Parse | OffsetMap | str, worries: Worries, known: Container[str] = _NONE
) -> list[Flag]:
    """Find words that may tell of danger or distress.

    Parameters
    ----------
    entry : Parse, OffsetMap or str
        A text as given, or what was made of it: then both the child's and the corrected words
        are read.
    worries : Worries
        The list that serves here.
    known : container of str
        English words in lower case, which are never taken for misspelt worry words. Without
        it only the listed misspellings are read.

    Returns
    -------
    list of Flag
        In order; offsets into the text as given. Stretches that overlap are one flag.
    """
    offsets = entry.offsets if isinstance(entry, Parse) else entry
    text = offsets if isinstance(offsets, str) else offsets.original
    clean = normalise_characters(text)
    words = read_words(clean)
    spans = _stretches(clean, worries, _slips(words, worries, known))
    if isinstance(offsets, OffsetMap) and offsets.working != clean:
        spans += [
            offsets.to_original(*span)
            for span in _stretches(offsets.working, worries, worries.slips)
        ]
    return [make_flag("worry", text, span, _WHY) for span in join_spans(spans)]


def _stretches(clean: str, worries: Worries, slips: Mapping[str, str]) -> list[Span]:
    words = read_words(clean, slips)
    return [words.span(first, after) for first, after, _ in worries.phrases.find(words)]


def _slips(words: WordStream, worries: Worries, known: Container[str]) -> Mapping[str, str]:
    if known == _NONE:
        return worries.slips
    near = {
        word: right
        for word in words.words
        if len(word) >= _CLOSE and word not in known and word not in worries.slips
        if (right := _find_near(word, worries.words))
    }
    return {**worries.slips, **near} if near else worries.slips


@lru_cache(maxsize=8192)
def _find_near(word: str, listed: frozenset[str]) -> str | None:
    """Return the first listed word one letter away; most misspelt words come again."""
    near = sorted(right for right in listed if one_letter_apart(word, right))
    return near[0] if near and word.isalpha() else None
