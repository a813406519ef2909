"""What was set for an entry: the prompt, the words and the ideas to listen for."""

from __future__ import annotations

from dataclasses import dataclass, field

from journal.lexicon.watchlist import Idea
from journal.records import Excluded, Mode


@dataclass(frozen=True, slots=True)
class Setting:
    """What the finders know beside the text.

    Parameters
    ----------
    targets : tuple of str
        The lesson's target terms, as the teacher wrote them.
    earlier : tuple of str
        Target terms of earlier lessons of the plan that are not targets today.
    year : int or None
        School year, 0 for Reception to 6.
    domain : str or None
        The plan's domain, one of the lexicon's.
    prompt : str or None
        What the children were asked.
    mode : {"typed", "scribed", "dictated"} or None
        How the entry was taken down.
    word_bank, sentence_starters : tuple of str
        What was shown beside the page.
    excluded : tuple of Excluded
        Stretches of the text that are not the child's own.
    ideas : tuple of Idea
        The watch-list that serves here: the plan's, else the general one.
    """

    targets: tuple[str, ...] = ()
    earlier: tuple[str, ...] = ()
    year: int | None = None
    domain: str | None = None
    prompt: str | None = None
    mode: Mode | None = None
    word_bank: tuple[str, ...] = ()
    sentence_starters: tuple[str, ...] = ()
    excluded: tuple[Excluded, ...] = field(default=())
    ideas: tuple[Idea, ...] = field(default=())
