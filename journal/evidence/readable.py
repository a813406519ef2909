"""Whether a text can be scored at all: there, readable, English, and long enough (R9)."""

from __future__ import annotations

import re
import unicodedata
from collections import Counter
from collections.abc import Container
from functools import lru_cache

from journal.lexicon.flags import HomeLanguages, load_home_languages
from journal.records import NotScored
from journal.text.normalise import normalise_characters
from journal.text.words import find_words

_FEWEST_WORDS = 5
_FOREIGN = 4
"""An entry of which less than one word in so many is foreign is English."""
_SYMBOL = re.compile(r"\d|[+×÷=<>%½¼¾⅓⅔]")
_LETTERS = re.compile(r"[^\W\d_]+(?:'[^\W\d_]+)*")
_VOWEL = re.compile(r"[aeiouyàâäáãåąăæéèêëęėîïíìıöóôòõøœüúùûūů]", re.IGNORECASE)
_REPEATED = re.compile(r"(.)\1\1|^(.{1,3})\2{2,}$")
_ROWS = ("qwertyuiop", "asdfghjkl", "zxcvbnm", "poiuytrewq", "lkjhgfdsa", "mnbvcxz")
_KEYS_IN_A_ROW = 4
_ROW_OF_A_WORD = 5
"""Property holds four keys in a row; no word but qwerty holds five."""
_CONSONANTS = re.compile(r"[bcdfghjklmnpqrstvwxz]{5,}")
_SIMPLER = (
    (re.compile(r"(.)\1+"), r"\1"),
    (re.compile(r"ck|c(?=[aou])|q|c$"), "k"),
    (re.compile(r"ph|th"), "f"),
    (re.compile(r"wh"), "w"),
    (re.compile(r"z"), "s"),
    (re.compile(r"[aeiouy]+"), "a"),
    (re.compile(r"(?<=a)r$|(?<=.)a$"), ""),
)


def check_readable(text: str, known: Container[str]) -> NotScored | None:
    """Say why a text can't be scored.

    Parameters
    ----------
    text : str
        The child's words (adult prompts left out).
    known : container of str
        English words in lower case.

    Returns
    -------
    {"empty", "unreadable", "not_english", "too_short"} or None
        None for a text that can be scored. Numbers and signs belong to every language; fewer
        than five words are enough where there are numbers or signs (R9). However it is spelt,
        English is English.
    """
    clean = normalise_characters(text)
    spans = find_words(clean)
    if not spans and not _SYMBOL.search(clean):
        return "unreadable" if clean.strip() else "empty"
    languages = load_home_languages()
    words = _LETTERS.findall(clean.lower())
    has_symbols = _SYMBOL.search(clean) is not None
    if not has_symbols and _is_gibberish(words, known, languages):
        return "unreadable"
    if _name_language(words, known, languages) is not None:
        return "not_english"
    if len(spans) < _FEWEST_WORDS and not has_symbols:
        return "too_short"
    return None


def name_language(text: str, known: Container[str], languages: HomeLanguages) -> str | None:
    """Return the language that a text seems to be in, or None for English.

    Parameters
    ----------
    text : str
        Any text.
    known : container of str
        English words in lower case.
    languages : HomeLanguages
        Common words of home languages.

    Returns
    -------
    str or None
        "other" where it is not English and no listed language fits. A text of which half the
        words are English is English.
    """
    words = _LETTERS.findall(normalise_characters(text).lower())
    return _name_language(words, known, languages)


def _name_language(words: list[str], known: Container[str], languages: HomeLanguages) -> str | None:
    told = [word for word in words if word not in languages.either]
    listed = sum(word in languages.listed for word in told)
    # Most entries end here: plain letters, and no share of another language's words.
    if listed * _FOREIGN < max(len(told), 1) and "".join(words).isascii():
        return None
    scripts = [word for word in words if not _is_latin(word)]
    if len(scripts) * 2 > len(words):
        return "other"
    votes: Counter[str] = Counter()
    english = foreign = 0
    for word in told:
        if word in languages.english:
            english += 1
            # The same letters may be a word of both: it may support, never decide.
            continue
        speakers = [name for name, listed in languages.words.items() if word in listed]
        votes.update(speakers)
        if speakers or (set(word) & languages.letters and word not in known):
            foreign += 1
        elif word in known or not _is_latin(word) or _sounds_english(word, languages):
            english += 1
    if not foreign or english * 2 >= len(told) or foreign * _FOREIGN < len(told):
        return None
    if foreign == 1 and (english * 3 >= len(told) or len(words) < 3):
        return None
    return votes.most_common(1)[0][0].replace("_romanised", "").capitalize() if votes else "other"


def _is_latin(word: str) -> bool:
    return "LATIN" in unicodedata.name(word[0], "")


def _sounds_english(word: str, languages: HomeLanguages) -> bool:
    """Say whether a word sounds like one of the commonest English words, as children spell."""
    return len(word) > 2 and _sound(word) in _sounds(languages.english)


@lru_cache(maxsize=4)
def _sounds(english: frozenset[str]) -> frozenset[str]:
    return frozenset(_sound(word) for word in english if len(word) > 2)


@lru_cache(maxsize=8192)
def _sound(word: str) -> str:
    for pattern, plain in _SIMPLER:
        word = pattern.sub(plain, word)
    return word


def _is_gibberish(words: list[str], known: Container[str], languages: HomeLanguages) -> bool:
    """Say whether most words are no words of any language: keys pressed at random."""
    bad = sum(
        _is_mashed(word)
        for word in words
        if word not in languages.english and not _is_listed(word, known)
    )
    return bad * 2 > len(words)


def _is_listed(word: str, known: Container[str]) -> bool:
    return len(word) > 2 and word in known and not _is_typed_at_random(word)


@lru_cache(maxsize=8192)
def _is_typed_at_random(word: str) -> bool:
    return bool(_REPEATED.search(word)) or _runs_along_keys(word, _ROW_OF_A_WORD)


@lru_cache(maxsize=8192)
def _is_mashed(word: str) -> bool:
    if not _is_latin(word):
        return False
    if len(word) == 1:
        return True
    if _REPEATED.search(word) or _CONSONANTS.search(word) or not _VOWEL.search(word):
        return True
    return _runs_along_keys(word, _KEYS_IN_A_ROW)


def _runs_along_keys(word: str, length: int) -> bool:
    return any(
        word[at : at + length] in row for row in _ROWS for at in range(len(word) - length + 1)
    )
