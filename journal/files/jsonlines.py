"""JSON, one entry a line (or one list of entries), to rows."""

from __future__ import annotations

import json
from collections.abc import Mapping, Sequence
from typing import Any

from journal.errors import BrokenRow, MissingColumn, UnreadableFile
from journal.files.columns import match_columns
from journal.files.raw import RawRow, RawTable


def read_json_lines(text: str, *, file: str) -> RawTable:
    """Return the entries of a JSONL file, or of a JSON file that holds one list.

    Parameters
    ----------
    text : str
        The whole file, decoded.
    file : str
        Its name, for messages.

    Returns
    -------
    RawTable
        Keys are matched as kindly as column names, line by line. A score record is read as the
        entry it was made from, so that old scores can be scored again.

    Raises
    ------
    UnreadableFile, MissingColumn
        If there is nothing in it, or no line holds a text.
    """
    found: list[tuple[int, Any] | BrokenRow] = []
    if text.lstrip().startswith("["):
        found.extend(_read_list(text, file))
    else:
        # Only a line feed parts JSON lines: other line separators may stand inside a string.
        for number, line in enumerate(text.split("\n"), start=1):
            if line.strip():
                found.append(_read_line(line, number, file))
    if not found:
        raise UnreadableFile("the file is empty.", file=file)
    table = RawTable()
    missing: MissingColumn | None = None
    shapes: dict[tuple[str, ...], Mapping[str, int]] = {}
    for item in found:
        if isinstance(item, BrokenRow):
            table.rows.append(item)
            continue
        number, record = item
        row = _flatten(record)
        keys = tuple(row)
        try:
            if keys not in shapes:
                columns = match_columns(keys, file=file)
                shapes[keys] = columns.found
                table.notes = table.notes or columns.describe()
        except MissingColumn as error:
            missing = missing or error
            table.rows.append(
                BrokenRow("the line has no 'text'; it was left out.", file=file, line=number)
            )
            continue
        cells = list(row.values())
        table.rows.append(RawRow(number, {n: cells[place] for n, place in shapes[keys].items()}))
    if missing is not None and not shapes:
        raise missing
    return table


def _read_line(line: str, number: int, file: str) -> tuple[int, Any] | BrokenRow:
    try:
        record = json.loads(line)
    except (json.JSONDecodeError, RecursionError):
        return BrokenRow("the line is not valid JSON; it was left out.", file=file, line=number)
    if not isinstance(record, dict):
        return BrokenRow(
            "the line is not a JSON object in { }; it was left out.", file=file, line=number
        )
    return number, record


def _read_list(text: str, file: str) -> Sequence[tuple[int, Any] | BrokenRow]:
    try:
        records = json.loads(text)
    except (json.JSONDecodeError, RecursionError) as error:
        line = getattr(error, "lineno", None)
        raise UnreadableFile(
            "the file is not valid JSON; put one entry in { } on each line.", file=file, line=line
        ) from None
    return [
        (number, record)
        if isinstance(record, dict)
        else BrokenRow("the item is not in { }; it was left out.", file=file, line=number)
        for number, record in enumerate(records, start=1)
    ]


def _flatten(record: Mapping[str, Any]) -> Mapping[str, Any]:
    if "schema" not in record or not isinstance(record.get("source"), dict):
        return record
    entry = {"entry_id": record.get("entry_id"), "text": record.get("text"), **record["source"]}
    entry["target_terms"] = record.get("targets") or None
    return entry
