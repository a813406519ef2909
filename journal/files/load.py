"""Entries in: any file, folder or standard input to entries, with what was understood."""

from __future__ import annotations

import re
from collections.abc import Callable
from dataclasses import dataclass
from pathlib import Path

from journal.errors import BrokenRow, UnreadableFile
from journal.files.delimited import read_delimited
from journal.files.encodings import decode
from journal.files.jsonlines import read_json_lines
from journal.files.raw import RawRow, RawTable
from journal.files.rows import read_row
from journal.files.tables import read_parquet, read_workbook
from journal.files.transcripts import read_captions, read_document
from journal.records import Entry

_DIGITS = re.compile(r"(\d+)")
SUFFIXES = (
    ".csv", ".tsv", ".jsonl", ".ndjson", ".json", ".xlsx", ".xlsm", ".parquet", ".txt", ".docx",
    ".vtt", ".srt",
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Loaded:
    """The entries of a file, the rows that could not be read, and how the file was understood.

    Parameters
    ----------
    entries : tuple of Entry
        In the file's order.
    left_out : tuple of BrokenRow
        One sentence each, with the line.
    notes : tuple of str
        Which column was read as what, the encoding, the separator: to be shown.
    """

    entries: tuple[Entry, ...]
    left_out: tuple[BrokenRow, ...]
    notes: tuple[str, ...]


def load_entries(path: str | Path) -> Loaded:
    """Read the entries of a file, or of a folder of .txt files.

    Parameters
    ----------
    path : str or Path
        CSV, TSV, JSONL, JSON, XLSX, Parquet, .txt, .docx, .vtt, .srt, or a folder.

    Returns
    -------
    Loaded

    Raises
    ------
    UnreadableFile
        If the path is missing, of an unknown kind, empty, damaged, or gives an entry id twice.
    MissingColumn
        If no column can be read as text.
    """
    place = Path(path)
    name = str(path)
    if place.is_dir():
        return _understand(_read_folder(place), name)
    suffix = place.suffix.lower()
    if not place.exists():
        raise UnreadableFile("there is no such file; check the name and the folder.", file=name)
    if suffix not in SUFFIXES:
        raise UnreadableFile(
            f"files ending in {suffix or 'nothing'!r} can't be read; use one of "
            f"{', '.join(SUFFIXES)}, or a folder of .txt files.",
            file=name,
        )
    try:
        data = place.read_bytes()
    except OSError as error:
        raise UnreadableFile(
            f"the file can't be opened ({error.strerror}); close it elsewhere or check who may "
            "read it.",
            file=name,
        ) from None
    return read_entries(data, suffix=suffix, name=name)


def read_entries(data: bytes, *, suffix: str | None = None, name: str = "input") -> Loaded:
    """Read entries from bytes, such as standard input.

    Parameters
    ----------
    data : bytes
        A whole file.
    suffix : str, optional
        Its kind, such as ".csv"; without one it is told from the first bytes.
    name : str
        What to call it in messages.

    Returns
    -------
    Loaded

    Raises
    ------
    UnreadableFile, MissingColumn
        As for `load_entries`.
    """
    if not data.strip():
        raise UnreadableFile("the file is empty.", file=name)
    suffix = suffix or _sniff(data)
    whole: dict[str, Callable[[], RawTable]] = {
        ".xlsx": lambda: read_workbook(data, file=name),
        ".xlsm": lambda: read_workbook(data, file=name),
        ".parquet": lambda: read_parquet(data, file=name),
        ".docx": lambda: read_document(data, file=name),
    }
    if suffix in whole:
        return _understand(whole[suffix](), name)
    text, encoding = decode(data, file=name)
    if not text.strip():
        raise UnreadableFile("the file is empty.", file=name)
    if suffix in (".jsonl", ".ndjson", ".json"):
        table = read_json_lines(text, file=name)
    elif suffix in (".vtt", ".srt"):
        table = read_captions(text, file=name, kind=suffix[1:])
    elif suffix == ".txt":
        table = RawTable(("One entry.",))
        table.rows.append(RawRow(None, {"text": text, "entry_id": Path(name).stem}))
    else:
        table = read_delimited(text, file=name, delimiter="\t" if suffix == ".tsv" else None)
    table.notes = (f"Encoding: {encoding}.", *table.notes)
    return _understand(table, name)


def _sniff(data: bytes) -> str:
    if data.startswith(b"PK\x03\x04"):
        return ".xlsx"
    if data.startswith(b"PAR1"):
        return ".parquet"
    text, _ = decode(data[:4096] if data[:1].isascii() else data)
    return ".jsonl" if text.lstrip()[:1] in ("{", "[") else ".csv"


def _read_folder(folder: Path) -> RawTable:
    files = [file for file in folder.iterdir() if not file.name.startswith(".")]
    texts = sorted(
        (file for file in files if file.is_file() and file.suffix.lower() == ".txt"),
        key=lambda file: [
            (1, int(part), "") if part.isdecimal() else (0, 0, part.casefold())
            for part in _DIGITS.split(file.stem)
        ],
    )
    if not texts:
        raise UnreadableFile("the folder holds no .txt files.", file=folder)
    table = RawTable(("Each .txt file is an entry, its name the entry id.",))
    others = sorted(file.name for file in files if file not in texts)
    if others:
        table.notes += (f"Not read: {', '.join(others[:8])}{', ...' * (len(others) > 8)}.",)
    for file in texts:
        try:
            text, _ = decode(file.read_bytes(), file=str(file))
        except UnreadableFile as error:
            table.rows.append(BrokenRow(error.what, file=file))
        except OSError as error:
            what = f"the file can't be opened ({error.strerror}); it was left out."
            table.rows.append(BrokenRow(what, file=file))
        else:
            cells = {"text": text, "entry_id": file.stem}
            table.rows.append(RawRow(None, cells, file=str(file)))
    return table


def _understand(table: RawTable, name: str) -> Loaded:
    entries: list[Entry] = []
    left_out: list[BrokenRow] = []
    lines: dict[tuple[str, int], int | None] = {}
    for number, row in enumerate(table.rows, start=1):
        if isinstance(row, BrokenRow):
            left_out.append(row)
            continue
        cells = row.cells
        if table.asked is not None and not cells.get("prompt"):
            cells = {**cells, "prompt": table.asked}
        try:
            entry = read_row(cells, number=number, file=row.file or name, line=row.line)
        except BrokenRow as error:
            left_out.append(error)
            continue
        _check_once(entry, row.line, lines, name)
        entries.append(entry)
    if not entries:
        if left_out:
            raise UnreadableFile(f"no row could be read; the first: {left_out[0]}", file=name)
        raise UnreadableFile("the file has a first row of names and no entries.", file=name)
    return Loaded(tuple(entries), tuple(left_out), table.notes)


def _check_once(
    entry: Entry, line: int | None, lines: dict[tuple[str, int], int | None], name: str
) -> None:
    # Revisions of one entry share its id.
    key = (entry.entry_id, entry.revision)
    if key in lines:
        raise UnreadableFile(
            f"the entry id {entry.entry_id[:20]!r} stands twice (lines {lines[key]} and {line}); "
            "give every entry its own. If that column tells the children apart, call it 'pupil'.",
            file=name,
        )
    lines[key] = line
