"""Words that may tell of danger or distress: an adult reads the entry first.

Recall comes before precision: a false alarm costs a minute. Hints and unusual spellings are
missed all the same, so no flag is not reassurance: every entry is read.
"""

from __future__ import annotations

from collections.abc import Container, Mapping

from journal.evidence.flags.stretches import join_spans, make_flag
from journal.language.parse import Parse
from journal.lexicon.flags import Worries
from journal.lexicon.word_keys import read_words
from journal.records import Flag, Span
from journal.text.likeness import one_letter_apart
from journal.text.normalise import normalise_characters
from journal.text.offsets import OffsetMap

_WHY = (
    "“{words}” may tell of danger or distress. Read the whole entry now and follow the school's "
    "safeguarding procedure; it is not scored until an adult has read it."
)
_CLOSE = 5
"""Words of at least so many letters are also read with one letter wrong."""


def find_worries(
    entry: Parse | OffsetMap | str, worries: Worries, known: Container[str] = frozenset()
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
    spans = _stretches(clean, worries, _slips(clean, worries, known))
    if isinstance(offsets, OffsetMap) and offsets.working != clean:
        spans += [
            offsets.to_original(*span)
            for span in _stretches(offsets.working, worries, worries.slips)
        ]
    return [make_flag("worry", text, span, _WHY) for span in join_spans(spans)]


def _stretches(clean: str, worries: Worries, slips: Mapping[str, str]) -> list[Span]:
    words = read_words(clean, slips)
    return [words.span(first, after) for first, after, _ in worries.phrases.find(words)]


def _slips(clean: str, worries: Worries, known: Container[str]) -> Mapping[str, str]:
    if known == frozenset():
        return worries.slips
    slips = dict(worries.slips)
    for word in set(clean.lower().split()):
        word = word.strip(".,!?'\"")
        if len(word) < _CLOSE or not word.isalpha() or word in known or word in slips:
            continue
        near = sorted(right for right in worries.words if one_letter_apart(word, right))
        if near:
            slips[word] = near[0]
    return slips
