"""Reasoning words strung together without sense (R11)."""

from __future__ import annotations

from journal.evidence.flags.stretches import make_flag, own_span
from journal.language.parse import Parse
from journal.lexicon.flags import Keywords
from journal.lexicon.word_keys import WordStream
from journal.records import Flag

_WHY = "“{words}” strings reasoning words together with nothing for them to join."
_BETWEEN = frozenset({"and", "or", ".", "/", "-", "+", "this", "mean"})
_CERTAIN = 4
"""So many reasoning words in a row are never a sentence."""
_ENOUGH = 3
"""A run of two or three is, where so many other words follow it."""


def find_keyword_strings(parse: Parse, words: WordStream, keywords: Keywords) -> list[Flag]:
    """Find runs of reasoning words that join nothing.

    Returns
    -------
    list of Flag
        Over each run, "and" and commas between its words included.
    """
    listed = keywords.listed
    if not words.present & listed:
        return []
    if sum(key in listed for key in words.keys) < 2 and len(words) > 3:
        return []
    content = [k != "." and k not in listed and k not in keywords.fillers for k in words.keys]
    whole_is_bare = not any(content)
    flags = []
    at = 0
    while at < len(words):
        if words.keys[at] not in listed:
            at += 1
            continue
        first, run, after = at, [words.keys[at]], at + 1
        at += 1
        while at < len(words):
            key = words.keys[at]
            if key in listed:
                run.append(key)
                after = at + 1
            elif key not in _BETWEEN:
                break
            at += 1
        if len(run) == 1 and not whole_is_bare:
            continue
        joining = sum(key in keywords.connectives for key in run)
        following = sum(content[after : _sentence_end(words, after)])
        alone = whole_is_bare and (joining > 1 or len(run) == len(words))
        if alone or _strung(run, joining, following, keywords):
            flags.append(
                make_flag("keyword_string", parse.text, own_span(parse, words, first, after), _WHY)
            )
    return flags


def _strung(run: list[str], joining: int, following: int, keywords: Keywords) -> bool:
    if len(run) >= _CERTAIN:
        return joining >= 2 or len(set(run)) == 1 or following < _ENOUGH
    if len(set(run)) < 2 or following >= _ENOUGH:
        return False
    if len(run) == 2 and tuple(run) in keywords.natural:
        return False
    return joining >= 2


def _sentence_end(words: WordStream, at: int) -> int:
    while at < len(words) and words.keys[at] != ".":
        at += 1
    return at
