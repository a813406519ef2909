"""When an entry is not judged at all (rules R9 and R10)."""

from __future__ import annotations

from collections.abc import Sequence

from journal.records import Flag

FEWEST_WORDS = 5

_SYMBOLS = frozenset("0123456789+-−×÷=<>/%£½¼¾⅓⅔√²³")


def check_too_short(clean: str, words: int) -> bool:
    """R9: fewer than five words with no symbols is "not scored", not 0.

    Parameters
    ----------
    clean : str
        The entry in plain characters.
    words : int
        How many words the entry holds.

    Returns
    -------
    bool
        True where nothing can be judged.
    """
    return words < FEWEST_WORDS and _SYMBOLS.isdisjoint(clean)


def check_worry(flags: Sequence[Flag]) -> bool:
    """R10: a worry about safety stops all judging until an adult has read it."""
    return any(flag.kind == "worry" for flag in flags)
