"""Words reduced to keys, so that a pattern matches every inflection of its words."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from functools import cached_property, lru_cache
from itertools import accumulate, chain
from types import MappingProxyType

_NO_SLIPS: Mapping[str, str] = MappingProxyType({})
_WORD = re.compile(
    r"[^\W\d_]+(?:'[^\W\d_]+)*|\d+/\d+|\d[\d,]*(?:\.\d+)?|\.\d+|[.!?]+(?=\s|$)|[%+×÷=<>*/-]"
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
        "burn": "burnt burned",
        "care": "cares cared caring",
        "sleep": "slept",
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


class WordStream:
    """The words of a text as keys, with the way back to the text.

    Parameters
    ----------
    text : str
        The text that was read.
    words : sequence of str
        Its words in lower case.
    slips : mapping of str to str
        Misspelt words, with the word to read instead.

    Attributes
    ----------
    keys : list of str
        One for each word, two for a contraction; "." for the end of a sentence.
    present : frozenset of str
        The different keys.
    starts, ends : list of int
        Of each key's word, indices into ``text``, end exclusive; worked out when first asked for.
    joined, places
        The keys as one text, and where each begins in it; worked out when first asked for.
    """

    def __init__(self, text: str, words: Sequence[str], slips: Mapping[str, str]) -> None:
        self.text = text
        self.words = words
        self._slips = slips
        read = [slips.get(word, word) for word in words] if slips else words
        self.keys: list[str] = list(chain.from_iterable(map(keys_of, read)))
        self.present = frozenset(self.keys)

    def __len__(self) -> int:
        return len(self.keys)

    @cached_property
    def _spans(self) -> tuple[list[int], list[int]]:
        starts: list[int] = []
        ends: list[int] = []
        for match in _WORD.finditer(_lower(self.text)):
            for _ in keys_of(self._slips.get(match.group(), match.group())):
                starts.append(match.start())
                ends.append(match.end())
        return starts, ends

    @property
    def starts(self) -> list[int]:
        return self._spans[0]

    @property
    def ends(self) -> list[int]:
        return self._spans[1]

    @cached_property
    def joined(self) -> str:
        return f" {' '.join(self.keys)} "

    @cached_property
    def places(self) -> list[int]:
        lengths = accumulate((len(key) + 1 for key in self.keys), initial=1)
        return list(lengths)[:-1]

    def span(self, first: int, after: int) -> tuple[int, int]:
        """Return the stretch of ``text`` of words ``first`` to ``after`` (exclusive)."""
        return self.starts[first], self.ends[after - 1]


def read_words(text: str, slips: Mapping[str, str] = _NO_SLIPS) -> WordStream:
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
        The same one for the same text, where none of the slips stands in it.
    """
    words = _read(text)
    return words if slips.keys().isdisjoint(words.words) else WordStream(text, words.words, slips)


@lru_cache(maxsize=128)
def _read(text: str) -> WordStream:
    """Read a text once for all kinds of flags: as many texts as are scored at a time."""
    return WordStream(text, _WORD.findall(_lower(text)), _NO_SLIPS)


def _lower(text: str) -> str:
    lower = text.lower()
    # A few capitals grow when lowered; the offsets must not move.
    if len(lower) != len(text):
        lower = "".join(c.lower() if len(c.lower()) == 1 else c for c in text)
    return lower
