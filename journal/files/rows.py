"""One row of any kind of file to one entry, or one clear sentence on why not."""

from __future__ import annotations

import json
import math
import re
from collections.abc import Mapping
from datetime import date, datetime
from typing import Any, cast

from journal.errors import BrokenRow
from journal.files.columns import load_names, normalise_name
from journal.files.encodings import replace_lone_surrogates
from journal.records import Entry, Mode, Span

MOST_CHARACTERS = 20_000
"""Longest text of one entry: some 4,000 words, fifty times a long reflection."""

_DATE_FORMATS = (
    "%d/%m/%Y", "%d.%m.%Y", "%d-%m-%Y", "%d/%m/%y", "%d.%m.%y", "%d-%m-%y", "%Y/%m/%d",
    "%d %B %Y", "%d %b %Y", "%B %d %Y", "%b %d %Y",
)  # fmt: skip
_TIME_OF_DAY = re.compile(r"[T ]+\d{1,2}:\d{2}.*$")
_ORDINAL = re.compile(r"(?<=\d)(?:st|nd|rd|th)\b")
_YEAR = re.compile(r"(?:year|yr|y)?\s*([0-6])(?:\s*[a-z])?")
_PAIR = re.compile(r"(\d+)\s*[-–:,]\s*(\d+)")
_TRUE = frozenset({"true", "yes", "y", "1"})
_FALSE = frozenset({"false", "no", "n", "0", ""})


class Row:
    """The cells of one row by input name, with the place to name when one can't be read."""

    def __init__(self, cells: Mapping[str, Any], *, file: str | None, line: int | None) -> None:
        self.cells = cells
        self.file = file
        self.line = line

    def broken(self, what: str, column: str | None = None) -> BrokenRow:
        """Return the error for this row; it never quotes what a child wrote."""
        return BrokenRow(what, file=self.file, line=self.line, column=column)

    def word(self, name: str) -> str | None:
        """Return a cell as stripped text, ``None`` where it is empty."""
        value = self.cells.get(name)
        if isinstance(value, (datetime, date)):
            return value.isoformat()
        if isinstance(value, (bool, list, dict, tuple)):
            raise self.broken("this should be plain words; the row was left out.", name)
        word = _plain(value).strip()
        return word or None


def read_row(
    cells: Mapping[str, Any], *, number: int, file: str | None = None, line: int | None = None
) -> Entry:
    """Return the entry of one row.

    Parameters
    ----------
    cells : Mapping
        Input name (as in `journal.records.Entry`) to the raw cell; missing and empty are alike.
    number : int
        The row's number from 1: its entry id where the row has none.
    file, line : optional
        Where the row stands, for the message.

    Raises
    ------
    BrokenRow
        If a cell can't be read; the message is one sentence.
    """
    row = Row(cells, file=file, line=line)
    text = _read_text(row)
    return Entry(
        text=text,
        entry_id=row.word("entry_id") or str(number),
        pupil=row.word("pupil"),
        date=_read_date(row),
        unit=row.word("unit"),
        lesson=row.word("lesson"),
        year=_read_year(row),
        prompt=row.word("prompt"),
        mode=_read_mode(row),
        revision=_read_revision(row),
        after_next_step=_read_yes(row, "after_next_step"),
        worry_released=_read_yes(row, "worry_released"),
        target_terms=_read_list(row, "target_terms", commas=True),
        word_bank=_read_list(row, "word_bank", commas=True) or (),
        # A starter may hold a comma ("First, I ..."), so commas don't part starters.
        sentence_starters=_read_list(row, "sentence_starters", commas=False) or (),
        inserted=_read_spans(row, len(text)),
    )


def read_mode(value: str) -> Mode | None:
    """Return the mode that a word stands for, ``None`` where it stands for none."""
    word = normalise_name(value)
    for mode, synonyms in load_names()["modes"].items():
        if word in synonyms:
            return cast("Mode", mode)
    return None


def read_year(value: str) -> int | None:
    """Return the school year of "4", "Year 4", "Y4", "4B" or "Reception" (0), else ``None``."""
    word = normalise_name(value)
    if word in ("r", "reception", "yr", "year r", "eyfs"):
        return 0
    match = _YEAR.fullmatch(word)
    return int(match.group(1)) if match else None


def _show(word: str) -> str:
    # Where columns have slipped, a cell may hold what a child wrote: only short ones are quoted.
    return repr(word) if len(word) <= 20 and len(word.split()) <= 3 else "what stands here"


def _plain(value: Any) -> str:
    if value is None:
        return ""
    if isinstance(value, float):
        if math.isnan(value):  # how tables of numbers write an empty cell
            return ""
        # A spreadsheet keeps 42 as 42.0; the child wrote 42.
        return str(int(value)) if value.is_integer() and abs(value) < 1e15 else repr(value)
    return replace_lone_surrogates(str(value))


def _read_text(row: Row) -> str:
    value = row.cells.get("text")
    if isinstance(value, (datetime, date)):
        raise row.broken(
            "the spreadsheet has turned the writing into a date; type it again with an "
            "apostrophe before it. The row was left out."
        )
    if isinstance(value, (bool, list, dict, tuple, bytes)):
        raise row.broken("the writing should be plain text; the row was left out.")
    text = _plain(value)
    if len(text) > MOST_CHARACTERS:
        raise row.broken(
            f"the writing has {len(text):,} characters and an entry may have {MOST_CHARACTERS:,}; "
            "split it or check for a missing quotation mark. The row was left out."
        )
    return text


def _read_date(row: Row) -> str | None:
    value = row.cells.get("date")
    if isinstance(value, datetime):
        return value.date().isoformat()
    if isinstance(value, date):
        return value.isoformat()
    word = row.word("date")
    if word is None:
        return None
    day = _ORDINAL.sub("", _TIME_OF_DAY.sub("", word)).replace(",", " ")
    day = " ".join(day.split())
    try:
        return date.fromisoformat(day).isoformat()
    except ValueError:
        pass
    for form in _DATE_FORMATS:
        try:
            return datetime.strptime(day, form).date().isoformat()
        except ValueError:
            continue
    raise row.broken(
        f"{_show(word)} is not a date; write it like 2026-03-14 or 14/03/2026. "
        "The row was left out.",
        "date",
    )


def _read_year(row: Row) -> int | None:
    word = row.word("year")
    if word is None:
        return None
    year = read_year(word)
    if year is None:
        raise row.broken(
            f"{_show(word)} is not a school year; write R or 1 to 6. The row was left out.", "year"
        )
    return year


def _read_mode(row: Row) -> Mode | None:
    word = row.word("mode")
    if word is None:
        return None
    mode = read_mode(word)
    if mode is None:
        raise row.broken(
            f"{_show(word)} is not a mode; write typed, scribed or dictated. The row was left out.",
            "mode",
        )
    return mode


def _read_revision(row: Row) -> int:
    word = row.word("revision")
    if word is None:
        return 1
    if not (word.isdecimal() and int(word) >= 1):
        raise row.broken(
            f"{_show(word)} is not a revision; write 1, 2, 3. The row was left out.", "revision"
        )
    return int(word)


def _read_yes(row: Row, name: str) -> bool:
    value = row.cells.get(name)
    word = normalise_name(_plain(value))
    if word in _TRUE:
        return True
    if word in _FALSE:
        return False
    raise row.broken(f"{_show(word)} is neither yes nor no. The row was left out.", name)


def _read_list(row: Row, name: str, *, commas: bool) -> tuple[str, ...] | None:
    value = row.cells.get(name)
    if isinstance(value, (list, tuple)):
        if not all(isinstance(item, (str, int, float)) for item in value):
            raise row.broken("this should be a list of words; the row was left out.", name)
        items = [_plain(item).strip() for item in value]
        return tuple(item for item in items if item)
    word = row.word(name)
    if word is None:
        return None
    if word.startswith("["):
        try:
            return _read_list(
                Row({name: json.loads(word)}, file=row.file, line=row.line), name, commas=commas
            )
        except json.JSONDecodeError:
            pass
    marks = "[;\n|]" if any(mark in word for mark in ";\n|") or not commas else "[,]"
    return tuple(item for item in (part.strip() for part in re.split(marks, word)) if item)


def _read_spans(row: Row, length: int) -> tuple[Span, ...]:
    value = row.cells.get("inserted")
    if isinstance(value, str) and value.strip():
        try:
            value = json.loads(value) if value.lstrip().startswith("[") else _pairs(value)
        except ValueError:
            value = False
    if _plain(value) == "":
        return ()
    try:
        spans = tuple(
            (int(item["start"]), int(item["end"]))
            if isinstance(item, Mapping)
            else (int(item[0]), int(item[1]))
            for item in cast("Any", value)
        )
    except (TypeError, ValueError, KeyError, IndexError):
        spans = ((-1, -1),)
    if not all(0 <= start < end <= length for start, end in spans):
        raise row.broken(
            "the spans should be start-end pairs inside the text, such as 0-12; "
            "the row was left out.",
            "inserted",
        )
    return tuple(sorted(spans))


def _pairs(value: str) -> list[tuple[int, int]]:
    pairs = []
    for part in re.split("[;|]", value):
        match = _PAIR.fullmatch(part.strip())
        if match is None:
            raise ValueError(part)
        pairs.append((int(match.group(1)), int(match.group(2))))
    return pairs
