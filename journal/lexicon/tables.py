"""Reading the lexicon's tables: rows of a CSV file with the columns they must have."""

from __future__ import annotations

import csv
from collections.abc import Iterator, Sequence
from pathlib import Path

from journal.errors import LexiconError


def load_rows(path: Path, columns: Sequence[str], key: Sequence[str]) -> Iterator[dict[str, str]]:
    """Yield the rows of a table of the lexicon.

    Parameters
    ----------
    path : Path
        A CSV file in UTF-8 with a header.
    columns : sequence of str
        Columns that must be there.
    key : sequence of str
        Columns that together may stand only once.

    Raises
    ------
    LexiconError
        If the file is missing, a column is missing, or a row is empty in its key or repeated.
    """
    try:
        text = path.read_text(encoding="utf-8")
    except OSError as error:
        raise LexiconError(
            f"{path.name}: the table can't be read ({error.strerror}); reinstall it"
        ) from error
    reader = csv.DictReader(text.splitlines())
    missing = [name for name in columns if name not in (reader.fieldnames or ())]
    if missing:
        raise LexiconError(f"{path.name}: column {missing[0]!r} is missing; add it to the header")
    seen: set[tuple[str, ...]] = set()
    for row in reader:
        identity = tuple(row[name] or "" for name in key)
        if not all(identity):
            raise LexiconError(
                f"{path.name}, line {reader.line_num}: {key[0]!r} is empty; fill it or drop the row"
            )
        if identity in seen:
            raise LexiconError(
                f"{path.name}, line {reader.line_num}: {identity[0]!r} stands twice; drop one row"
            )
        seen.add(identity)
        yield {name: row[name] or "" for name in columns}
