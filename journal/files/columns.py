"""Which column of a file is which input, read as kindly as a colleague would."""

from __future__ import annotations

import re
import tomllib
import unicodedata
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path
from typing import Any

from journal.errors import MissingColumn

_NAMES = Path(__file__).with_name("columns.toml")
ROWS_BEFORE_NAMES = 4
"""Rows that may stand before the row of names: a title, a class, a date."""

_CAMEL = re.compile(r"(?<=[a-z])(?=[A-Z])")
_NOT_WORD = re.compile(r"[\W_]+")
_OWNERS = re.compile(
    r"^(?:(?:the|your|my|their|our|pupils?|childs?|childrens?|students?|learners?)(?: s)? )+"
)


@dataclass(frozen=True, slots=True)
class Columns:
    """How a file's columns were understood.

    Parameters
    ----------
    found : Mapping of str to int
        Input name (``text``, ``pupil``, ...) to the position of its column, from 0.
    headers : tuple of str
        The column names as they stand in the file.
    asked : str or None
        The question that heads the text column, where a form tool put it there.
    """

    found: Mapping[str, int]
    headers: tuple[str, ...]
    asked: str | None = None

    def describe(self) -> tuple[str, ...]:
        """Return what was understood, a sentence each."""
        used = [f"{name} from {self.headers[place]!r}" for name, place in self.found.items()]
        notes = ["Columns: " + ", ".join(used) + "."]
        taken = set(self.found.values())
        unused = [repr(h) for i, h in enumerate(self.headers) if i not in taken and h.strip()]
        if unused:
            notes.append("Not used: " + ", ".join(unused) + ".")
        return tuple(notes)


@lru_cache(maxsize=1)
def load_names() -> dict[str, Any]:
    """Return the tables of ``columns.toml``: columns, modes, speakers."""
    return tomllib.loads(_NAMES.read_text(encoding="utf-8"))


def normalise_name(name: str) -> str:
    """Return a name in lower case, its words parted by single spaces.

    Examples
    --------
    >>> normalise_name(" Entry_ID ")
    'entry id'
    >>> normalise_name("targetTerms")
    'target terms'
    """
    spaced = _CAMEL.sub(" ", unicodedata.normalize("NFKC", name))
    return _NOT_WORD.sub(" ", spaced.casefold()).strip()


def match_columns(headers: Sequence[str], *, file: str | None = None) -> Columns:
    """Match column names to the inputs of the scorer.

    Parameters
    ----------
    headers : sequence of str
        The first row of a table.
    file : str, optional
        The file's name, for the message.

    Returns
    -------
    Columns

    Raises
    ------
    MissingColumn
        If no column can be read as the children's text.
    """
    names = [normalise_name(header) for header in headers]
    found: dict[str, int] = {}
    taken: set[int] = set()
    # Names as they stand go first, so that "Pupil response" never beats a column called "text".
    for candidates in (names, [_OWNERS.sub("", name) for name in names]):
        for field, synonyms in load_names()["columns"].items():
            if field in found:
                continue
            place = _first_place(synonyms, candidates, taken)
            if place is not None:
                found[field] = place
                taken.add(place)
    asked = None
    if "text" not in found:
        questions = [i for i, h in enumerate(headers) if h.strip().endswith("?") and i not in taken]
        if len(questions) != 1:
            raise MissingColumn(_missing(headers), file=file)
        found["text"] = questions[0]
        asked = headers[questions[0]].strip()
    order = {field: i for i, field in enumerate(load_names()["columns"])}
    found = dict(sorted(found.items(), key=lambda item: order[item[0]]))
    return Columns(found, tuple(headers), asked)


def find_names(rows: Sequence[Sequence[str]], *, file: str | None = None) -> tuple[int, Columns]:
    """Find the row of names among the first rows: a sheet may begin with a title.

    Parameters
    ----------
    rows : sequence of sequence of str
        The first rows; those beyond ``ROWS_BEFORE_NAMES`` are not looked at.
    file : str, optional
        The file's name, for the message.

    Returns
    -------
    place : int
        The place of the row, from 0.
    columns : Columns

    Raises
    ------
    MissingColumn
        If the first row has no text column, and no later one has that and another known name
        (one name alone may be something that a child wrote).
    """
    missing: MissingColumn | None = None
    for place, row in enumerate(rows[: ROWS_BEFORE_NAMES + 1]):
        try:
            columns = match_columns(row, file=file)
        except MissingColumn as error:
            missing = missing or error
            continue
        if place == 0 or (len(columns.found) > 1 and columns.asked is None):
            return place, columns
    raise missing or MissingColumn(_missing(()), file=file)


def _first_place(synonyms: Sequence[str], names: Sequence[str], taken: set[int]) -> int | None:
    for synonym in synonyms:
        for place, name in enumerate(names):
            if place not in taken and name == synonym:
                return place
    return None


def _missing(headers: Sequence[str]) -> str:
    seen = ", ".join(repr(h) for h in headers[:12] if h.strip()) or "no names at all"
    return (
        "no column holds the children's writing; name that column 'text' (or reflection, entry, "
        f"response, writing). The first row has {seen}."
    )
