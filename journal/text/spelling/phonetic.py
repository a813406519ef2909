"""How a spelling sounds to a child in England: two keys, one fine and one coarse.

The sound key writes a word by its British sounds: r is heard only before a vowel, h may be dropped,
th is one sound with f and v ("fink", "togever"), c and g are soft before e, i and y, and letters
that are not heard (knew, write, could, half) are left out. The skeleton is the sound key without
its vowels, which children spell least surely.
"""

from __future__ import annotations

import re
from collections.abc import Callable
from functools import lru_cache


def _gh_sound(found: re.Match[str]) -> str:
    return {"igh": "3", "eigh": "1", "ough": "4"}.get(found[0], "")


# Applied in order to the lower-case word between "<" and ">". Capitals are finished sounds:
# S = sh and zh, C = ch, J = the sound in "jam", N = the end of "sing", F = f, v and th.
_Sound = str | Callable[[re.Match[str]], str]
_SPELLED: tuple[tuple[str, _Sound], ...] = (
    (r"<(?:kn|gn|pn)", "<n"),
    (r"<(?:wr|rh)", "<r"),
    (r"<ps", "<s"),
    (r"<who", "<ho"),
    (r"wh", "w"),
    (r"<(?:one|wun|won)(?=[>scd])", "<wun"),
    (r"(?<=[aeiou])w?one>", "wun>"),
    (r"<heigh", "<h3"),
    (r"<eigh?", "<1"),
    (r"through", "Fr5"),
    (r"(?<=<)(en|r|t)ough>", r"\1uff>"),
    (r"(?<=<)(l)augh", r"\1aRff"),
    (r"(?<=<)(c)ough", r"\1off"),
    (r"(?:augh|ough|ort|awt|aught)(?=t)", "or"),
    (r"ough|eigh|igh|gh(?=[ts>])", _gh_sound),
    (r"gh", "g"),
    (r"(?<=[oa])l(?=[dfkm])(?<!ol)", ""),
    (r"ould", "ud"),
    (r"ph", "f"),
    (r"(?:ti|ci|si|ssi|shi|sci|ce|xi)(?=on|an|al|ou|en)(?<!<si)(?<!<ci)(?<!<ti)", "S"),
    (r"sh|zh", "S"),
    (r"ss?ure|zure", "Sa"),
    (r"(?<=[a-z])tu(?=re|al)", "C"),
    (r"sch(?=oo|e)", "sk"),
    (r"tch|ch", "C"),
    (r"thm", "Fm"),
    (r"th|ff|vv|f|v", "F"),
    (r"dge|dj|gg(?=e>)", "J"),
    (r"gg", "G"),
    (r"<g(?=e[tae]|i[vgrf]|u)", "G"),
    (r"gu(?=[eiy])", "G"),
    (r"g(?=[eiy])|j", "J"),
    (r"cc(?=[eiy])|x", "ks"),
    (r"sc(?=[eiy])", "s"),
    (r"c(?=[eiy])", "s"),
    (r"cq?u(?=[aei])|qu?", "kw"),
    (r"ck|cc|kk|c", "k"),
    (r"stl(?=e)", "sl"),
    (r"mb(?=>|s>|ed>|ing>)|mn>", "m"),
    (r"bt", "t"),
    (r"(?<=n)g(?=k)", ""),
    (r"nd(?=s>)", "n"),
    (r"<h", "<"),
    (r"(?<=[aeiouy])w(?![aeiouy])", "u"),
    (r"(?<=[aeiouyw])r(?![aeiouy])", "R"),
    (r"(?<=[aeiouyw])re>", "R>"),
    (r"z", "s"),
    (r"G", "g"),
    (r"<y(?=[aeiou])", "<Y"),
    (r"(?<=[aeiou])y(?=[aeiou])", "Y"),
    (r"(?<=[kpSC])ed>|(?<=ks)ed>", "t>"),
    # Long vowels become digits: 1 day, 2 see, 3 my, 4 show, 5 moon, 6 now, 7 law, 8 her.
    (r"<([^aeiouyR]+)(?:y|ie)(?=[sd]?>)", r"<\g<1>3"),
    (r"a(?=[^aeiouyRw]e[sd]?>)|ai|ay|ei|ey(?!>)", "1"),
    (r"e(?=[^aeiouyRw]e[sd]?>)|ee|ea|ie(?!>)|(?<=[^aeiou])(?:y|ey|ie)(?=>)", "2"),
    (r"[iy](?=[^aeiouyRw]e[sd]?>)|ie|uy", "3"),
    (r"o(?=[^aeiouyRw]e[sd]?>)|oa|oe|ou(?=>)", "4"),
    (r"u(?=[^aeiouyRw]e[sd]?>)|oo|eu|ue|ui", "5"),
    (r"(?<=[aeiou1-8])([^aeiou<>1-8]+)(?:ou?|a)R(?=s?>)", r"\g<1>8"),
    (r"ou", "6"),
    (r"[ao]R|a[uw]|a(?=ll)", "7"),
    (r"[eiu]R|(?<=[^<])a(?=>)", "8"),
    (r"S[aeiou]+(?=ns?>)", "S8"),
    (r"([aeiou1-8].*[^aeiou<>1-8])[aeiou]+l+(?=s?>)", r"\1l"),
    (r"y", "i"),
    (r"(?<=[^aeiouR<1-8])ed>", "d>"),
    (r"(?<=[^aeiou<])e>", ">"),
    (r"(?<=[^aeiou<])es>", "s>"),
)
_RULES = tuple((re.compile(pattern), sound) for pattern, sound in _SPELLED)
_DOUBLED = re.compile(r"([a-zA-Z])\1+")
# Vowels go; so do w and y inside a word; j and g, which share a letter, become one.
_VOWELS = str.maketrans("J", "g", "aeiouyRwY12345678")
_MARKS = str.maketrans("", "", "<>'-")


@lru_cache(maxsize=32768)
def sound_key(word: str) -> str:
    """Write a word by its sounds.

    Parameters
    ----------
    word : str
        One lower-case word.

    Returns
    -------
    str
        Lower-case vowels and consonants, with S for sh, C for ch, J for j, F for f, v and th,
        Y for y as in "yes" and R for an r that only lengthens its vowel.
    """
    sounds = f"<{word.translate(_MARKS)}>"
    for pattern, sound in _RULES:
        sounds = pattern.sub(sound, sounds)
    return _DOUBLED.sub(r"\1", sounds[1:-1])


def skeleton_of(sounds: str) -> str:
    """Leave only the consonants of a sound key, with an A for a vowel at the start.

    Parameters
    ----------
    sounds : str
        What `sound_key` returned.

    Returns
    -------
    str
        Consonants, none twice running, so that "rember" and "remember" meet.
    """
    first = sounds[:1]
    consonants = _DOUBLED.sub(r"\1", sounds.translate(_VOWELS))
    if first in "wY":
        return first + consonants
    return "A" + consonants if first in "aeiouy12345678R" else consonants


@lru_cache(maxsize=32768)
def skeleton_key(word: str) -> str:
    """Return the skeleton of a word; see `skeleton_of`."""
    return skeleton_of(sound_key(word))
