"""Comma-, semicolon- and tab-separated text to rows with their line numbers."""

from __future__ import annotations

import csv
import io
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from itertools import islice

from journal.errors import BrokenRow, MissingColumn, UnreadableFile
from journal.files.columns import ROWS_BEFORE_NAMES, Columns, find_names
from journal.files.raw import RawRow, RawTable

_DELIMITERS = {",": "commas", ";": "semicolons", "\t": "tabs"}
_FIELD_LIMIT = threading.Lock()


def read_delimited(text: str, *, file: str, delimiter: str | None = None) -> RawTable:
    """Return the rows of a CSV or TSV file.

    Parameters
    ----------
    text : str
        The whole file, decoded.
    file : str
        Its name, for messages.
    delimiter : str, optional
        Known from the suffix; otherwise the one that makes the most sense of the first row.

    Returns
    -------
    RawTable
        A quoted field may hold line breaks; a row's line is the one it begins on.

    Raises
    ------
    UnreadableFile, MissingColumn
        If there is no first row, or none of its names is read as text.
    """
    lines = list(io.StringIO(text, newline=""))
    at = 0
    while at < len(lines) and not lines[at].strip():
        at += 1
    # A spreadsheet's own hint, on a line before the names.
    if at < len(lines) and lines[at].lower().startswith("sep=") and len(lines[at].strip()) == 5:
        delimiter = lines[at].strip()[-1]
        at += 1
    if at == len(lines):
        raise UnreadableFile("the file is empty.", file=file)
    columns, delimiter, at = _read_header(lines, at, file, delimiter)
    table = RawTable(columns.describe(), columns.asked)
    table.notes = (f"Fields parted by {_DELIMITERS.get(delimiter, delimiter)}.", *table.notes)
    for line, fields in islice(_read_fields(lines, at, delimiter), 1, None):
        if isinstance(fields, str):
            table.rows.append(BrokenRow(fields, file=file, line=line))
        elif any(field.strip() for field in fields):
            table.rows.append(_match_row(columns, line, fields, file))
    return table


def _match_row(columns: Columns, line: int, fields: list[str], file: str) -> RawRow | BrokenRow:
    expected = len(columns.headers)
    # Trailing delimiters of a spreadsheet are no extra fields.
    while len(fields) > expected and not fields[-1].strip():
        fields.pop()
    if len(fields) != expected:
        return BrokenRow(
            f"the row has {len(fields)} fields and the first row has {expected}; put writing that "
            "holds the separator in double quotes. The row was left out.",
            file=file,
            line=line,
        )
    return RawRow(line, {name: fields[place] for name, place in columns.found.items()})


def _read_header(
    lines: list[str], at: int, file: str, delimiter: str | None
) -> tuple[Columns, str, int]:
    """Return the columns, the delimiter that makes the most of them, and their line from 0."""
    best: tuple[Columns, str, int] | None = None
    missing: MissingColumn | None = None
    widest = 0
    for candidate in [delimiter] if delimiter else _DELIMITERS:
        start = list(islice(_read_fields(lines, at, candidate), ROWS_BEFORE_NAMES + 1))
        if not start or isinstance(start[0][1], str):
            continue
        first = [
            (line, _strip_end(fields)) for line, fields in start if not isinstance(fields, str)
        ]
        try:
            place, columns = find_names([headers for _, headers in first], file=file)
        except MissingColumn as error:
            if len(first[0][1]) > widest:
                missing, widest = error, len(first[0][1])
            continue
        score = (len(columns.found), len(columns.headers))
        if best is None or score > (len(best[0].found), len(best[0].headers)):
            best = (columns, candidate, first[place][0] - 1)
    if best is None:
        raise missing or UnreadableFile(
            "the first row can't be read; check its quotation marks.", file=file
        )
    return best


def _strip_end(fields: list[str]) -> list[str]:
    while len(fields) > 1 and not fields[-1].strip():
        fields = fields[:-1]
    return fields


def _read_fields(
    lines: list[str], at: int, delimiter: str
) -> Iterator[tuple[int, list[str] | str]]:
    """Yield each row's line, from 1, with its fields, or with what is wrong with it.

    After a row that can't be read, reading goes on with the next line: a quotation mark that is
    never closed costs its own row, not the rest of the class.
    """
    while at < len(lines):
        rows: list[tuple[int, list[str] | str]] = []
        with _any_length():
            reader = csv.reader(_Lines(lines, at), delimiter=delimiter, strict=True)
            done = 0
            try:
                for fields in reader:
                    rows.append((at + done + 1, fields))
                    done = reader.line_num
                    if len(rows) == 1024:
                        break
                else:
                    done = len(lines) - at
            except csv.Error:
                rows.append(
                    (
                        at + done + 1,
                        "a quotation mark is not closed, or not doubled inside the writing; "
                        "the row was left out.",
                    )
                )
                done += 1
        yield from rows
        at += done


class _Lines:
    """The lines from one on, without copying the rest of the file at every restart."""

    def __init__(self, lines: list[str], at: int) -> None:
        self.lines = lines
        self.at = at

    def __iter__(self) -> _Lines:
        return self

    def __next__(self) -> str:
        if self.at >= len(self.lines):
            raise StopIteration
        self.at += 1
        return self.lines[self.at - 1]


@contextmanager
def _any_length() -> Iterator[None]:
    # The module's limit is global and would refuse the whole file for one long field; our own
    # limit names the row. It is put back, so that nobody else is surprised.
    with _FIELD_LIMIT:
        before = csv.field_size_limit(2**31 - 1)
        try:
            yield
        finally:
            csv.field_size_limit(before)
