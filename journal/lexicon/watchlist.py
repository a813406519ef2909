"""Ideas to check: common wrong ideas, with the patterns of words that show them."""

from __future__ import annotations

from dataclasses import dataclass


@dataclass(frozen=True, slots=True)
class Idea:
    """A wrong idea worth a second look.

    Parameters
    ----------
    id : str
        Stands in flags.
    description : str
        In a teacher's words.
    patterns : tuple of str
        Patterns of words; see `journal.lexicon.patterns`.
    domain : str or None
        One of the lexicon's domains.
    source : str
        Where the idea is described, or "common practice, no source".
    """

    id: str
    description: str
    patterns: tuple[str, ...]
    domain: str | None = None
    source: str = "common practice, no source"
