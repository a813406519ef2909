"""Whether a statement reaches beyond the cases that were worked (question A4, rule R18)."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import lru_cache

from journal.language.parse import Parse, Token
from journal.lexicon.reasoning_words import load_reasoning_words

WORDS = load_reasoning_words()
_CLASS = WORDS["class_noun"]
_NARROW = WORDS["narrow"]
_CORRELATES = re.compile(
    r"\bthe (more|less|fewer|\w+er)\b.*\bthe (more|less|fewer|\w+er)\b"
    r"|\bfor every (?![0-9]|one|two|three|four|five)"
    r"|\b(if|when|whenever|whether) (the|a|your|any|both|two|its|it's|it is)( \w+)? "
    r"(number|numbers|fraction|denominator|numerator|digit|digits|side|sides)\b"
)
# Every general statement holds one of these (or "the ... the ...").
_TRIGGERS = (
    WORDS["general"] | WORDS["general_trigger"] | frozenset(f"{digit}n" for digit in range(1, 10))
)
_BINDING = frozenset(
    ("ca", "cant", "can't", "cannot", "must", "can", "could", "wo", "wont", "never", "always")
)
_WHATEVER = (
    "no matter",
    "every time you",
    "each time you",
    "however many",
    "however long",
    "however big",
    "doesn't matter",
    "does not matter",
    "dosen't matter",
    "works for",
    "work for",
    "works with",
    "work with",
    "the rule is",
    "in general",
    "for any",
    "for all",
    "the only",
    "only works",
    "only true",
)


@lru_cache(maxsize=256)
def is_general(parse: Parse, first: int, after: int) -> bool:
    """Say whether ``tokens[first:after]`` claim something of an open class.

    Parameters
    ----------
    parse : Parse
        The entry.
    first, after : int
        First token and one past the last.

    Returns
    -------
    bool
        True for any, all, always, never, every over a class of mathematical things, for a letter
        that stands for a number, for "it works for ..." and for "if you ..." without given
        numbers.
    """
    tokens = parse.tokens[first:after]
    words = [token.lower for token in tokens]
    opened = first > 0 and parse.tokens[first - 1].lower in ("if", "when", "whenever")
    if not opened and _TRIGGERS.isdisjoint(words) and words.count("the") < 2:
        return False
    joined = " ".join(["if", *words] if opened else words).replace(" n't", "n't")
    if any(phrase in joined for phrase in _WHATEVER):
        return True
    for i, token in enumerate(tokens):
        if token.lower in WORDS["general"] and _is_open(tokens, i):
            return True
        if _is_letter(tokens, i):
            return True
    if _CORRELATES.search(joined):
        return True
    if len(tokens) > 2 and words[0] in ("a", "an") and _is_class(tokens[1]):
        return not _BINDING.isdisjoint(words) or _is_about_a_class(words, opened)
    return _is_about_a_class(words, opened)


def _is_open(tokens: Sequence[Token], i: int) -> bool:
    word = tokens[i].lower
    if word in ("all", "each", "every", "any"):
        following = tokens[i + 1] if i + 1 < len(tokens) else None
        if word == "all" and following is not None and following.lower == "the":
            # "all the numbers in the 4 times table"; "all the sides" are those of one shape.
            after = [t.lower for t in tokens[i + 2 : i + 5]]
            return (
                bool(after)
                and after[0] in ("numbers", "multiples", "answers")
                and (not {"in", "that", "ending"}.isdisjoint(after))
            )
        if following is None or following.lower in _NARROW or following.pos in ("NUM", "VERB"):
            return False
        ahead = tokens[i + 1 : i + 4]
        return any(t.lower in _CLASS or t.lemma in _CLASS for t in ahead) and word != "each"
    return word in ("always", "never", "whenever", "whatever", "whichever", "anything")


def _is_class(token: Token) -> bool:
    return token.lower in _CLASS or token.lemma in _CLASS


def _is_letter(tokens: Sequence[Token], i: int) -> bool:
    text = tokens[i].text
    if len(text) == 2 and text[0].isdigit() and text[1] == "n":
        return True
    return text == "n" or (
        text in ("x", "y", "a", "b") and i + 1 < len(tokens) and tokens[i + 1].text in ("=", "+")
    )


def _is_about_a_class(words: list[str], conditional: bool) -> bool:
    """Say so of "odd add odd is even" and of "if you add two odd numbers"."""
    if any(any(map(str.isdigit, word)) for word in words):
        return False
    if "you" in words and conditional:
        return any(word in _CLASS for word in words)
    return (
        bool(words)
        and words[0] in ("odd", "even", "odds", "evens", "two", "a")
        and any(
            word in ("add", "plus", "times", "+", "x", "odds", "evens", "and") for word in words[:4]
        )
        and any(word in ("odd", "even") for word in words)
    )
