"""Word banks pasted as a list instead of used in a sentence."""

from __future__ import annotations

from functools import lru_cache

from journal.evidence.flags.stretches import make_flag, own_span
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.word_keys import WordStream, read_words
from journal.records import Flag
from journal.text.likeness import one_letter_apart

_WHY = "“{words}” lists words that were set, with no sentence about them."
_ITEMS = 3
_OWN = 2
"""From so many words of the child's own on, the sentence says something about the list."""
_BETWEEN = frozenset({"and", "or", ".", "-", "/", "+", "also", "then"})


def find_pasted_bank(
    parse: Parse, words: WordStream, setting: Setting, bare: frozenset[str]
) -> list[Flag]:
    """Find lists of three or more words that were set.

    Returns
    -------
    list of Flag
        Over each list of three or more different items of the word bank (or of the targets), in
        any order, with nothing but commas and "and" between them and no sentence around them.
    """
    items = _read_items((*setting.word_bank, *setting.targets))
    if len(items) < _ITEMS or not len(words):
        return []
    flags = []
    at = 0
    while at < len(words):
        after = end = at
        found: set[tuple[str, ...]] = set()
        while (length := _item_at(words, after, items, found)) or (
            found and after < len(words) and words.keys[after] in _BETWEEN
        ):
            after += length or 1
            end = after if length else end
        if len(found) >= _ITEMS and _own_words(words, at, end, bare) < _OWN:
            flags.append(make_flag("word_bank", parse.text, own_span(parse, words, at, end), _WHY))
        at = max(end, at + 1)
    return flags


@lru_cache(maxsize=256)
def _read_items(texts: tuple[str, ...]) -> tuple[tuple[str, ...], ...]:
    items = {tuple(read_words(text).keys) for text in texts} - {()}
    return tuple(sorted(items, key=lambda item: (-len(item), item)))


def _item_at(
    words: WordStream, at: int, items: tuple[tuple[str, ...], ...], found: set[tuple[str, ...]]
) -> int:
    """Return how many words the item that begins here has, 0 for none, and note the item."""
    first = words.keys[at][0] if at < len(words) else ""
    for item in items:
        # A misspelt word keeps its first letter (see `one_letter_apart`).
        if item[0][0] != first:
            continue
        own = words.keys[at : at + len(item)]
        if len(own) == len(item) and all(map(_alike, own, item)):
            found.add(item)
            return len(item)
    return 0


def _alike(own: str, key: str) -> bool:
    return own == key or (
        min(len(own), len(key)) > 3 and own.isalpha() and one_letter_apart(own, key)
    )


def _own_words(words: WordStream, first: int, after: int, bare: frozenset[str]) -> int:
    """Count the words around a list, in its sentence, that say something."""
    begin, end = first, after
    while begin and words.keys[begin - 1] != ".":
        begin -= 1
    while end < len(words) and words.keys[end] != ".":
        end += 1
    around = (*words.keys[begin:first], *words.keys[after:end])
    return sum(key not in bare for key in around)
