"""The error tree: everything this package raises on purpose.

::

    JournalError                 anything a user can put right
     ├── InputError              a file of entries
     │    ├── UnreadableFile     missing, empty, unknown suffix, wrong encoding, broken container
     │    ├── MissingColumn      the file has no column that can be read as text
     │    └── BrokenRow          one row of a file; the rest is still read
     ├── PlanError               a unit plan
     ├── LexiconError            a data file of the lexicon
     └── ModelMissing            no English model installed

Every message is one clear sentence: what is wrong, where, and what to do.
"""

from __future__ import annotations

from pathlib import Path


class JournalError(Exception):
    """Something a user can put right; ``str(error)`` is the sentence to show."""


class InputError(JournalError):
    """A file of entries can't be used as it is.

    Parameters
    ----------
    what : str
        What is wrong and what to do, without the place.
    file : str or Path, optional
        The file, as the user named it.
    line : int, optional
        Line of the file, counted from 1 (for a spreadsheet, the row).
    column : str, optional
        The column's name as it stands in the file.
    """

    def __init__(
        self,
        what: str,
        *,
        file: str | Path | None = None,
        line: int | None = None,
        column: str | None = None,
    ) -> None:
        self.what = what
        self.file = None if file is None else str(file)
        self.line = line
        self.column = column
        place = ", ".join(
            part
            for part in (
                self.file,
                None if line is None else f"line {line}",
                None if column is None else f"column {column!r}",
            )
            if part
        )
        super().__init__(f"{place}: {what}" if place else what)


class UnreadableFile(InputError):
    """The file is missing, empty, of an unknown kind, or can't be decoded."""


class MissingColumn(InputError):
    """No column of the file can be read as the children's text."""


class BrokenRow(InputError):
    """One row can't be read; it is reported and the rest is scored."""


class PlanError(JournalError):
    """A unit plan can't be used as it is.

    Parameters
    ----------
    *problems : str
        Every problem that was found, one sentence each with its file and line.
    """

    def __init__(self, *problems: str) -> None:
        self.problems = problems
        super().__init__("\n".join(problems))


class LexiconError(JournalError):
    """A data file of the lexicon is not as it should be."""


class ModelMissing(JournalError):
    """No English language model is installed."""
