"""What a reader of one kind of file hands over: cells by input name, not yet understood."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from typing import Any

from journal.errors import BrokenRow


@dataclass(frozen=True, slots=True)
class RawRow:
    """One row's cells by input name, and the line (row, cue, paragraph) it begins on, from 1."""

    line: int | None
    cells: Mapping[str, Any]
    file: str | None = None


@dataclass(slots=True)
class RawTable:
    """The rows of a file, those that can't be read among them, and what was understood.

    Parameters
    ----------
    notes : tuple of str
        How the file was understood, a sentence each, to be shown.
    asked : str or None
        A question for every row that has no prompt of its own.
    """

    notes: tuple[str, ...] = ()
    asked: str | None = None
    rows: list[RawRow | BrokenRow] = field(default_factory=list)
