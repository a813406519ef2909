"""The same text in plainer characters, character for character, so that no offset moves."""

from __future__ import annotations

import re
import unicodedata

from journal.text.offsets import Edit

_PLAINER = {
    **dict.fromkeys("\u2018\u2019\u201a\u201b\u2032\u00b4`\u02bc", "'"),
    **dict.fromkeys("\u201c\u201d\u201e\u201f\u2033\u00ab\u00bb", '"'),
    **dict.fromkeys("\u2010\u2011", "-"),
    **dict.fromkeys("\u2212\uff0d", "-"),
    **dict.fromkeys("\u2715\u2716\u2a2f\uff0a\u22c5", "×"),
    **dict.fromkeys("\uff1d", "="),
    **dict.fromkeys("\uff0b", "+"),
    **dict.fromkeys("\u2044\u2215", "/"),
}
_BREAKS = "\n\r\u2028\u2029\x0b\x0c\x85"


def _plainer(character: str) -> str:
    if character in _PLAINER:
        return _PLAINER[character]
    if character in _BREAKS:
        return "\n"
    if character.isspace() or unicodedata.category(character) in ("Cc", "Cf", "Zs", "Zl", "Zp"):
        return " "
    return character


class _Table(dict[int, str]):
    """A translation table that is filled as characters turn up."""

    def __missing__(self, code: int) -> str:
        self[code] = plainer = _plainer(chr(code))
        return plainer


_TABLE = _Table()


def normalise_characters(text: str) -> str:
    """Replace curly quotes, unusual signs, spaces and control characters by plain ones.

    Parameters
    ----------
    text : str
        Any text.

    Returns
    -------
    str
        Of the same length: character i stands for ``text[i]``.
    """
    return text.translate(_TABLE)


_SPACES = re.compile(r"\s+")
_NEW_THOUGHT = re.compile(r"[A-Z0-9•*\-]")


def find_spacing_edits(clean: str) -> list[Edit]:
    """Return the edits that leave single spaces, with a full stop where a line ends a thought.

    Parameters
    ----------
    clean : str
        Text after `normalise_characters`.

    Returns
    -------
    list of Edit
        A line break ends a sentence when a blank line follows, or when the next line begins with a
        capital, a digit or a bullet; a line wrapped in mid-sentence is joined.
    """
    edits = []
    for found in _SPACES.finditer(clean):
        run = found.group()
        if run == " ":
            continue
        start, end = found.span()
        before = clean[start - 1] if start else ""
        after = clean[end] if end < len(clean) else ""
        ends_thought = "\n" in run and (run.count("\n") > 1 or bool(_NEW_THOUGHT.match(after)))
        if ends_thought and before and after and before not in ".!?:;,-–—=+×÷/([":
            edits.append(Edit(start, end, " . "))
        else:
            edits.append(Edit(start, end, " "))
    return edits


def lower_shouting(clean: str) -> str:
    """Return a text written in capitals in small letters, and any other as it is.

    Parameters
    ----------
    clean : str
        Text after `normalise_characters`.

    Returns
    -------
    str
        Of the same length. The parser reads capitals as names; a child's caps lock says nothing.
    """
    letters = [character for character in clean if character.isalpha()]
    shouted = sum(map(str.isupper, letters))
    if len(letters) < _FEWEST_LETTERS or shouted < _SHOUTED * len(letters):
        return clean
    lowered = clean.lower()
    # A few letters of other scripts are longer in lower case.
    return lowered if len(lowered) == len(clean) else clean


_FEWEST_LETTERS = 12
_SHOUTED = 0.8
