"""What counts as a word of an entry."""

from __future__ import annotations

import re
from collections.abc import Sequence

from journal.records import Span

# Signs that are no letter or digit, then one that is. It is tried only where a run begins, and
# gives nothing back, so that a long row of signs takes no longer than a long word.
_WORD = re.compile(r"(?<!\S)(?:[^\w\s]|_)*+[^\W_]\S*")


def find_words(clean: str, excluded: Sequence[Span] = ()) -> list[Span]:
    """Return the words: runs of non-space that hold a letter or digit, outside ``excluded``.

    Parameters
    ----------
    clean : str
        Text after `normalise_characters`.
    excluded : sequence of Span
        Stretches that are not the child's own.

    Returns
    -------
    list of Span
        In order. A run that touches an excluded stretch counts by the part outside it.
    """
    if excluded:
        characters = list(clean)
        for start, end in excluded:
            characters[start:end] = " " * (end - start)
        clean = "".join(characters)
    return [found.span() for found in _WORD.finditer(clean)]
