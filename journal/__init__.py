"""Reasoning Journal: mathematical vocabulary and reasoning language in pupils' reflections.

``from journal import Scorer`` is the way in. Importing this package loads no language model.
"""

from __future__ import annotations

from typing import TYPE_CHECKING, Any

__version__ = "0.1.0"
__all__ = ["Entry", "JournalError", "Score", "Scorer", "__version__"]

if TYPE_CHECKING:
    from journal.errors import JournalError
    from journal.records import Entry, Score
    from journal.scoring import Scorer


def __getattr__(name: str) -> Any:
    if name == "Scorer":
        from journal.scoring import Scorer

        return Scorer
    if name in ("Entry", "Score"):
        import journal.records

        return getattr(journal.records, name)
    if name == "JournalError":
        from journal.errors import JournalError

        return JournalError
    raise AttributeError(f"module 'journal' has no attribute {name!r}")
