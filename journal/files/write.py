"""Scores out: a file is written whole, or not at all."""

from __future__ import annotations

import csv
import json
import os
import re
import secrets
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from journal.errors import UnreadableFile
from journal.files.flat import COLUMNS, flatten_score
from journal.records import Score

SUFFIXES = (".jsonl", ".csv", ".xlsx", ".parquet")
_FORMULA_STARTS = ("=", "+", "-", "@", "\t", "\r", "＝", "＋", "－", "＠")
_LONGEST_CELL = 32_767
_NOT_IN_XML = re.compile("[\x00-\x08\x0b\x0c\x0e-\x1f\ud800-\udfff\ufffe\uffff]")


@dataclass(slots=True)
class Saved:
    """How many scores were written, and how many were kept out for an adult to read first."""

    written: int = 0
    to_read_first: int = 0


def save_scores(scores: Iterable[Score], path: str | Path) -> Saved:
    """Write scores to a JSONL, CSV, XLSX or Parquet file.

    Parameters
    ----------
    scores : iterable of Score
        Read one by one.
    path : str or Path
        Its suffix says which kind. An existing file is replaced only when all has gone well.

    Returns
    -------
    Saved
        Scores with a worry stand in JSONL, where every entry has its record, and in no table.

    Raises
    ------
    UnreadableFile
        If the suffix is unknown or the folder can't be written to.
    """
    place = Path(path)
    check_writable(place, SUFFIXES)
    saved = Saved()
    write = {".csv": _write_csv, ".xlsx": _write_xlsx, ".parquet": _write_parquet}.get(
        place.suffix.lower()
    )
    with replacing(place) as temporary:
        if write is None:
            with temporary.open("w", encoding="utf-8", newline="\n") as out:
                for line in write_lines(scores, saved):
                    out.write(line)
        else:
            write(_rows(scores, saved), temporary)
    return saved


def write_lines(scores: Iterable[Score], saved: Saved, *, on_screen: bool = False) -> Iterator[str]:
    """Yield the line of each score record, counting as it goes.

    On a screen, which others may see, entries to read first are counted and not shown.
    """
    for score in scores:
        saved.to_read_first += score.has_worry
        if on_screen and score.has_worry:
            continue
        saved.written += 1
        yield json.dumps(score.to_dict(), ensure_ascii=False, allow_nan=False) + "\n"


def check_writable(path: Path, suffixes: tuple[str, ...]) -> None:
    """Raise `UnreadableFile` where nothing can be written, before any work is done."""
    if path.suffix.lower() not in suffixes:
        raise UnreadableFile(
            f"files ending in {path.suffix or 'nothing'!r} can't be written; use one of "
            f"{', '.join(suffixes)}.",
            file=path,
        )
    if path.is_dir():
        raise UnreadableFile("this is a folder; name a file.", file=path)
    if not path.absolute().parent.is_dir():
        raise UnreadableFile("the folder does not exist; make it first.", file=path)


@contextmanager
def replacing(path: Path) -> Iterator[Path]:
    """Give a file to write beside ``path``, and put it in its place when all has gone well.

    Raises
    ------
    UnreadableFile
        If the disk or its rights are in the way.
    """
    # A link stays a link, to a new file.
    place = Path(os.path.realpath(path))
    temporary = place.with_name(f".{place.name}.{secrets.token_hex(4)}.part")
    try:
        yield temporary
        with temporary.open("rb") as written:
            os.fsync(written.fileno())
        temporary.replace(place)
    except BrokenPipeError:
        raise
    except OSError as error:
        raise UnreadableFile(
            f"the file can't be written ({error.strerror or error}); close it elsewhere, or "
            "choose another folder.",
            file=path,
        ) from error
    finally:
        temporary.unlink(missing_ok=True)


def guard_formula(cell: Any) -> Any:
    """Return a CSV cell that no spreadsheet takes for a formula.

    Words that begin with = + - @ or a tab get an apostrophe before them; numbers stay numbers.
    """
    if isinstance(cell, str) and cell.startswith(_FORMULA_STARTS):
        return f"'{cell}"
    return cell


def _rows(scores: Iterable[Score], saved: Saved) -> Iterator[dict[str, Any]]:
    for score in scores:
        if score.has_worry:
            saved.to_read_first += 1
            continue
        saved.written += 1
        yield flatten_score(score)


def _write_csv(rows: Iterable[dict[str, Any]], path: Path) -> None:
    # The mark tells spreadsheets that the file is UTF-8.
    with path.open("w", encoding="utf-8-sig", newline="") as out:
        writer = csv.writer(out)
        writer.writerow(COLUMNS)
        for row in rows:
            writer.writerow([_say(guard_formula(cell)) for cell in row.values()])


def _say(cell: Any) -> Any:
    if isinstance(cell, bool):
        return "yes" if cell else "no"
    return "" if cell is None else cell


def _write_xlsx(rows: Iterable[dict[str, Any]], path: Path) -> None:
    from openpyxl import Workbook
    from openpyxl.cell import WriteOnlyCell
    from openpyxl.styles import Font
    from openpyxl.utils import get_column_letter

    # Gathered first: a workbook left half-made would keep children's words in a temporary file.
    gathered = list(rows)
    book = Workbook(write_only=True)
    sheet = book.create_sheet("scores")
    sheet.freeze_panes = "B2"
    for number, name in enumerate(COLUMNS, start=1):
        sheet.column_dimensions[get_column_letter(number)].width = max(len(name) + 2, 12)

    def cell(value: Any, *, bold: bool = False) -> Any:
        if not isinstance(value, str):
            return value
        value = _NOT_IN_XML.sub("\ufffd", value)
        if len(value) > _LONGEST_CELL:
            value = value[: _LONGEST_CELL - 1] + "…"
        made = WriteOnlyCell(sheet, value=value)
        # A string stays a string, also after somebody has edited the cell.
        made.data_type = "s"
        made.quotePrefix = value.startswith(_FORMULA_STARTS)
        if bold:
            made.font = Font(bold=True)
        return made

    sheet.append([cell(name, bold=True) for name in COLUMNS])
    for row in gathered:
        sheet.append([cell(value) for value in row.values()])
    with path.open("wb") as out:
        book.save(out)


def _write_parquet(rows: Iterable[dict[str, Any]], path: Path) -> None:
    import pyarrow as pa
    import pyarrow.parquet as pq

    types = {str: pa.string(), int: pa.int32(), bool: pa.bool_()}
    schema = pa.schema([(name, types[kind]) for name, kind in COLUMNS.items()])
    with path.open("wb") as out, pq.ParquetWriter(out, schema) as writer:
        for chunk in _chunks(rows, 10_000):
            writer.write_table(pa.Table.from_pylist(chunk, schema=schema))


def _chunks(rows: Iterable[dict[str, Any]], size: int) -> Iterator[list[dict[str, Any]]]:
    chunk: list[dict[str, Any]] = []
    for row in rows:
        chunk.append(row)
        if len(chunk) == size:
            yield chunk
            chunk = []
    yield chunk
