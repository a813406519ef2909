"""Words reduced to keys, so that a pattern matches every inflection of its words."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass, field
from functools import lru_cache

_WORD = re.compile(
    r"\d+/\d+|\d[\d,]*(?:\.\d+)?|\.\d+|[^\W\d_]+(?:'[^\W\d_]+)*|[.!?]+(?=\s|$)|[%+×÷=<>*/-]"
    r"|[\u00bc-\u00be\u2150-\u215e]"
)
_GLYPHS = {
    "½": "1/2",
    "⅓": "1/3",
    "⅔": "2/3",
    "¼": "1/4",
    "¾": "3/4",
    "⅕": "1/5",
    "⅖": "2/5",
    "⅗": "3/5",
    "⅘": "4/5",
    "⅙": "1/6",
    "⅛": "1/8",
    "⅜": "3/8",
    "⅝": "5/8",
    "⅞": "7/8",
}
_IRREGULAR = {
    form: key
    for key, forms in {
        "be": "is are am been being",
        "was": "was were",
        "have": "has had having",
        "do": "does did done doing",
        "go": "goes went gone going",
        "mak": "made",
        "get": "got gotten",
        "think": "thought",
        "know": "knew known",
        "giv": "gave given",
        "tak": "took taken",
        "tel": "told",
        "say": "said",
        "mean": "meant",
        "find": "found",
        "cut": "cutting",
        "times": "times timesed timesing timsed timsing",
        "feel": "felt",
        "bring": "brought",
        "understand": "understood",
        "half": "halves",
        "vertex": "vertices vertexes vertexs verticies",
        "axi": "axes axis",
        "not": "n't",
        "his": "his",
        "this": "this",
        "us": "us",
        "use": "use uses used using",
        "les": "less",
        "hid": "hidden hiding",
        "cry": "crying cries cried",
        "di": "dying die dies died dieing",
        "bit": "bitten",
        "beat": "beaten",
        "hit": "hitting hits hited hitted",
        "hurt": "hurts hurting hurted hurten",
        "run": "ran running",
        "keep": "kept",
        "lov": "luv",
        "com": "came",
        "see": "saw seen",
        "leav": "left leaving",
        # Help that came is not help that is asked for.
        "helped": "helped helps",
    }.items()
    for form in (key, *forms.split())
}
_CONTRACTED = {
    form: tuple(keys.split())
    for form, keys in {
        "dont": "do not",
        "idk": "i do not know",
        "dunno": "do not know",
        "doesnt": "do not",
        "didnt": "do not",
        "cant": "can not",
        "cannot": "can not",
        "can't": "can not",
        "isnt": "be not",
        "arent": "be not",
        "wasnt": "was not",
        "werent": "was not",
        "aint": "be not",
        "wont": "will not",
        "won't": "will not",
        "couldnt": "could not",
        "wouldnt": "would not",
        "shouldnt": "should not",
        "havent": "have not",
        "hasnt": "have not",
        "hadnt": "have not",
        "im": "i be",
        "i'm": "i be",
        "ive": "i have",
        "i've": "i have",
        "its": "it be",
        "it's": "it be",
        "thats": "that be",
        "that's": "that be",
        "hes": "he be",
        "shes": "she be",
        "theyre": "they be",
    }.items()
}
_VOWELS = frozenset("aeiouy")


@lru_cache(maxsize=32768)
def key_of(word: str) -> str:
    """Return the key that all inflections of a lower-case word share.

    Comparatives keep their ending: bigger and big are different ideas.
    """
    return _IRREGULAR.get(word) or _strip(word)


def _strip(word: str) -> str:
    length = len(word)
    if length <= 3:
        return word
    if word.endswith(("ies", "ied")) and length > 4:
        return word[:-3] + "y"
    if word.endswith(("ches", "shes", "sses", "xes")):
        word = word[:-2]
    elif word.endswith("s") and not word.endswith(("ss", "us", "is", "'s")):
        word = word[:-1]
    elif word.endswith("'s"):
        word = word[:-2]
    elif word.endswith("ing") and length > 5 and _VOWELS & set(word[:-3]):
        word = word[:-3]
    elif word.endswith("ed") and length > 4 and _VOWELS & set(word[:-2]):
        word = word[:-2]
    if word.endswith("e") and len(word) > 3:
        word = word[:-1]
    if len(word) > 3 and word[-1] == word[-2] and word[-1] not in "eo":
        word = word[:-1]
    return word


@lru_cache(maxsize=32768)
def keys_of(word: str) -> tuple[str, ...]:
    """Return the keys of a lower-case word: two for a contraction such as "don't"."""
    if word in _CONTRACTED:
        return _CONTRACTED[word]
    if word in _GLYPHS:
        return (_GLYPHS[word],)
    if word[0] in ".!?" and not word[1:2].isdigit():
        return (".",)
    if "," in word:
        return (word.replace(",", ""),)
    if word.endswith("n't") and len(word) > 3:
        return (key_of(word[:-3]), "not")
    for ending, key in (("'re", "be"), ("'ve", "have"), ("'ll", "will"), ("'m", "be")):
        if word.endswith(ending):
            return (key_of(word[: -len(ending)]), key)
    return (key_of(word),)


@dataclass(slots=True)
class WordStream:
    """The words of a text as keys, with the way back to the text.

    Parameters
    ----------
    text : str
        The text that was read.
    keys : sequence of str
        One for each word, two for a contraction; "." for the end of a sentence.
    starts, ends : sequence of int
        Of each key's word, indices into ``text``, end exclusive.
    """

    text: str
    keys: Sequence[str]
    starts: Sequence[int]
    ends: Sequence[int]
    joined: str = field(init=False)
    places: list[int] = field(init=False)
    present: frozenset[str] = field(init=False)

    def __post_init__(self) -> None:
        self.joined = f" {' '.join(self.keys)} "
        self.places = []
        at = 1
        for key in self.keys:
            self.places.append(at)
            at += len(key) + 1
        self.present = frozenset(self.keys)

    def __len__(self) -> int:
        return len(self.keys)

    def span(self, first: int, after: int) -> tuple[int, int]:
        """Return the stretch of ``text`` of words ``first`` to ``after`` (exclusive)."""
        return self.starts[first], self.ends[after - 1]


def read_words(text: str, slips: Mapping[str, str] | None = None) -> WordStream:
    """Read a text (after `normalise_characters`) as a stream of keys.

    Parameters
    ----------
    text : str
        Any text, corrected or not.
    slips : mapping of str to str, optional
        Misspelt words in lower case, with the word to read instead.

    Returns
    -------
    WordStream
    """
    keys: list[str] = []
    starts: list[int] = []
    ends: list[int] = []
    lower = text.lower()
    if len(lower) != len(text):
        # A few capitals grow when lowered; the offsets must not move.
        lower = "".join(c.lower() if len(c.lower()) == 1 else c for c in text)
    for match in _WORD.finditer(lower):
        start, end = match.span()
        word = match.group()
        for key in keys_of(slips.get(word, word) if slips else word):
            keys.append(key)
            starts.append(start)
            ends.append(end)
    return WordStream(text, keys, starts, ends)
