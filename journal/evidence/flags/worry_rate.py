"""How much a worry list misses, on invented lines it was not made for."""

from __future__ import annotations

from collections.abc import Container
from dataclasses import dataclass
from functools import lru_cache

from journal.evidence.flags.worry import find_worries
from journal.lexicon.flags import Worries, load_worries, load_worry_lines
from journal.lexicon.words import load_speller


@dataclass(frozen=True, slots=True)
class WorryRate:
    """What a worry list finds and misses.

    Parameters
    ----------
    lines, missed : int
        Lines that tell of a worry, and how many of them were not found.
    friends, false_alarms : int
        Lines that only sound like one, and how many of them were found.
    """

    lines: int
    missed: int
    friends: int
    false_alarms: int

    @property
    def sentence(self) -> str:
        """What to print wherever the list is used."""
        return (
            f"On {self.lines} invented lines this list missed {self.missed}, and it raised "
            f"{self.false_alarms} false alarms on {self.friends} others. "
            "No flag is not reassurance: read every entry."
        )


def measure_worries(worries: Worries, known: Container[str] = frozenset()) -> WorryRate:
    """Measure a worry list on the invented lines that ship.

    Parameters
    ----------
    worries : Worries
        The list that ships, or a school's own.
    known : container of str
        English words in lower case, as for `find_worries`.

    Returns
    -------
    WorryRate
        Invented lines are fewer and plainer than what children write: expect more misses.
    """
    lines = load_worry_lines()
    found = {text: bool(find_worries(text, worries, known)) for text in lines}
    return WorryRate(
        lines=sum(lines.values()),
        missed=sum(wanted and not found[text] for text, wanted in lines.items()),
        friends=sum(not wanted for wanted in lines.values()),
        false_alarms=sum(found[text] and not wanted for text, wanted in lines.items()),
    )


@lru_cache(maxsize=1)
def load_worry_rate() -> WorryRate:
    """Return what the list that ships finds and misses, measured once."""
    return measure_worries(load_worries(), load_speller().words)
