"""An entry from a mapping: what a row of a file or a caller's dictionary says, checked."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from typing import Any, get_args

from journal.errors import InputError
from journal.records import Entry, Mode, Span

MODES: tuple[str, ...] = get_args(Mode)
_YEAR = re.compile(r"(?:y|yr|year)?\s*([0-6r])", re.IGNORECASE)


def make_entry(row: Mapping[str, Any], *, entry_id: str = "1") -> Entry:
    """Return the entry that a mapping describes.

    Parameters
    ----------
    row : mapping
        Keys as the fields of `Entry`; unknown keys are passed over, missing ones unknown.
    entry_id : str
        Used where the row has none.

    Raises
    ------
    InputError
        If the text is missing, or a mode, year or span is not one; the column is named.
    """
    text = row.get("text")
    if not isinstance(text, str):
        raise InputError("an entry needs its text, as a string.", column="text")
    return Entry(
        text=text,
        entry_id=_text_or_none(row.get("entry_id")) or entry_id,
        pupil=_text_or_none(row.get("pupil")),
        date=_text_or_none(row.get("date")),
        unit=_text_or_none(row.get("unit")),
        lesson=_text_or_none(row.get("lesson")),
        year=read_year(row.get("year")),
        prompt=_text_or_none(row.get("prompt")),
        mode=read_mode(row.get("mode")),
        revision=int(row.get("revision") or 1),
        after_next_step=bool(row.get("after_next_step", False)),
        worry_released=bool(row.get("worry_released", False)),
        target_terms=None
        if row.get("target_terms") is None
        else read_terms(row["target_terms"], column="target_terms"),
        word_bank=read_terms(row.get("word_bank"), column="word_bank"),
        sentence_starters=read_terms(row.get("sentence_starters"), column="sentence_starters"),
        inserted=read_spans(row.get("inserted"), length=len(text)),
    )


def read_terms(value: Any, *, column: str = "target_terms") -> tuple[str, ...]:
    """Return a list of terms given as a list or as text separated by semicolons.

    Raises
    ------
    InputError
        If the value is neither.
    """
    if value is None:
        return ()
    if isinstance(value, str):
        value = value.split(";")
    if not isinstance(value, Sequence) or not all(isinstance(term, str) for term in value):
        raise InputError(
            f"{value!r} is not a list of words; separate them by semicolons.", column=column
        )
    return tuple(term.strip() for term in value if term.strip())


def read_mode(value: Any) -> Mode | None:
    """Return how an entry was taken down.

    Raises
    ------
    InputError
        If the value is none of typed, scribed and dictated.
    """
    mode = (_text_or_none(value) or "").lower()
    if not mode:
        return None
    if mode not in MODES:
        raise InputError(f"{value!r} is not a mode; use {', '.join(MODES)}.", column="mode")
    return mode  # type: ignore[return-value]  # narrowed by the check above


def read_year(value: Any) -> int | None:
    """Return a school year, 0 (Reception) to 6, from 4, "4", "Y4" or "Year 4".

    Raises
    ------
    InputError
        If the value is none of these.
    """
    if value is None or str(value).strip() == "":
        return None
    text = str(value).strip()
    text = text[:-2] if text.endswith(".0") else text
    if text.lower() == "reception":
        return 0
    found = _YEAR.fullmatch(text)
    if found is None:
        raise InputError(f"{value!r} is not a school year; use 1 to 6, or R.", column="year")
    return 0 if found.group(1) in "rR" else int(found.group(1))


def read_spans(value: Any, *, length: int) -> tuple[Span, ...]:
    """Return spans given as ``[start, end]`` pairs or ``{"start": .., "end": ..}``.

    Raises
    ------
    InputError
        If one is not a pair of whole numbers inside the text.
    """
    spans: list[Span] = []
    for item in value or ():
        pair = (item.get("start"), item.get("end")) if isinstance(item, Mapping) else tuple(item)
        if (
            len(pair) != 2
            or not all(isinstance(number, int) for number in pair)
            or not 0 <= pair[0] <= pair[1] <= length
        ):
            raise InputError(
                f"{item!r} is not a start and an end inside the text.", column="inserted"
            )
        spans.append((pair[0], pair[1]))
    return tuple(spans)


def _text_or_none(value: Any) -> str | None:
    if value is None:
        return None
    text = str(value).strip()
    return text or None
