"""XLSX and Parquet tables to rows."""

from __future__ import annotations

import io
import warnings
import zipfile
from collections.abc import Sequence
from typing import Any

from journal.errors import MissingColumn, UnreadableFile
from journal.files.columns import find_names, match_columns
from journal.files.raw import RawRow, RawTable

_OLD_OFFICE = b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1"
_MOST_UNPACKED = 512 * 1024 * 1024


def read_workbook(data: bytes, *, file: str) -> RawTable:
    """Return the rows of the first sheet of a workbook that holds a text column.

    Parameters
    ----------
    data : bytes
        The whole .xlsx file.
    file : str
        Its name, for messages.

    Returns
    -------
    RawTable
        Lines are the sheet's row numbers.

    Raises
    ------
    UnreadableFile
        If the workbook is protected by a password, of an old kind, damaged or empty.
    MissingColumn
        If no sheet has a text column.
    """
    check_container(data, file=file, kind="workbook", suffix=".xlsx")
    import openpyxl

    try:
        with warnings.catch_warnings():
            # Remarks on styles and extensions that have no bearing on the words.
            warnings.simplefilter("ignore")
            book = openpyxl.load_workbook(io.BytesIO(data), read_only=True, data_only=True)
            sheets = [(sheet.title, _read_sheet(sheet)) for sheet in book.worksheets]
            book.close()
    except Exception:  # noqa: BLE001 - a damaged part raises whatever its reader stumbles over
        raise UnreadableFile(
            "the workbook is damaged; open it, and save it again as .xlsx.", file=file
        ) from None
    return _choose_sheet(sheets, file)


def read_parquet(data: bytes, *, file: str) -> RawTable:
    """Return the rows of a Parquet file; see `read_workbook` for what is raised."""
    import pyarrow as pa
    import pyarrow.parquet as pq

    try:
        table = pq.read_table(pa.BufferReader(data))
        records = table.to_pylist()
    except (pa.ArrowException, OSError, ValueError):
        raise UnreadableFile("the Parquet file is damaged; write it again.", file=file) from None
    columns = match_columns(table.column_names, file=file)
    rows = RawTable(columns.describe(), columns.asked)
    names = {name: columns.headers[place] for name, place in columns.found.items()}
    for number, record in enumerate(records, start=1):
        rows.rows.append(RawRow(number, {n: record[header] for n, header in names.items()}))
    return rows


def check_container(data: bytes, *, file: str, kind: str, suffix: str) -> None:
    """Raise `UnreadableFile` where bytes are not a sound, open Office file of the newer kind."""
    if data.startswith(_OLD_OFFICE):
        raise UnreadableFile(
            f"the {kind} is protected by a password or of an older kind; save it as {suffix} "
            "without a password.",
            file=file,
        )
    try:
        with zipfile.ZipFile(io.BytesIO(data)) as archive:
            size = sum(part.file_size for part in archive.infolist())
    except (zipfile.BadZipFile, NotImplementedError, OSError, ValueError):
        raise UnreadableFile(
            f"the {kind} is damaged; open it, and save it again as {suffix}.", file=file
        ) from None
    if size > _MOST_UNPACKED:
        raise UnreadableFile(f"the {kind} is far too large for entries; split it.", file=file)


def _read_sheet(sheet: Any) -> list[tuple[int, Sequence[Any]]]:
    # The size that a workbook claims for a sheet is often wrong.
    sheet.reset_dimensions()
    rows: list[tuple[int, Sequence[Any]]] = []
    for number, cells in enumerate(sheet.iter_rows(values_only=True), start=1):
        if any(cell is not None and str(cell).strip() for cell in cells):
            rows.append((number, tuple(cells)))
    return rows


def _choose_sheet(sheets: list[tuple[str, list[tuple[int, Sequence[Any]]]]], file: str) -> RawTable:
    missing: MissingColumn | None = None
    for title, rows in sheets:
        if not rows:
            continue
        first = [["" if cell is None else str(cell) for cell in cells] for _, cells in rows[:9]]
        try:
            start, columns = find_names(first, file=file)
        except MissingColumn as error:
            missing = missing or error
            continue
        table = RawTable(columns.describe(), columns.asked)
        if len(sheets) > 1:
            others = ", ".join(repr(name) for name, _ in sheets if name != title)
            table.notes = (f"Sheet {title!r} was read, {others} not.", *table.notes)
        for number, cells in rows[start + 1 :]:
            found = {
                name: cells[place] if place < len(cells) else None
                for name, place in columns.found.items()
            }
            table.rows.append(RawRow(number, found))
        return table
    raise missing or UnreadableFile("the workbook is empty.", file=file)
