"""Ideas to check: common wrong ideas, with the patterns of words that show them."""

from __future__ import annotations

from dataclasses import dataclass
from functools import lru_cache

import yaml

from journal.errors import LexiconError
from journal.lexicon.patterns import compile_pattern
from journal.resources import LEXICON

# As safe as safe_load and ten times as quick, where libyaml is installed.
_Loader = getattr(yaml, "CSafeLoader", yaml.SafeLoader)


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


@lru_cache(maxsize=1)
def load_watchlist() -> tuple[Idea, ...]:
    """Return the general watch-list, every pattern of it checked.

    Returns
    -------
    tuple of Idea
        In the order of the file ``data/watchlist.yaml``.

    Raises
    ------
    LexiconError
        If the file is not as it should be; the message names the idea.
    """
    path = LEXICON / "watchlist.yaml"
    rows = yaml.load(path.read_text(encoding="utf-8"), Loader=_Loader)
    ideas = []
    for row in rows:
        try:
            idea = Idea(
                id=row["id"],
                description=row["description"],
                patterns=tuple(row["patterns"]),
                domain=row["domain"],
                source=row["source"],
            )
            for pattern in idea.patterns:
                compile_pattern(pattern)
        except (KeyError, TypeError, LexiconError) as error:
            name = row.get("id", "without an id") if isinstance(row, dict) else row
            raise LexiconError(f"{path.name}: the idea {name!r} can't be read: {error}") from error
        ideas.append(idea)
    if len({idea.id for idea in ideas}) < len(ideas):
        raise LexiconError(f"{path.name}: two ideas have the same id; give each its own")
    return tuple(ideas)
