"""Talk that was taken down: one speaker's turn, one entry."""

from __future__ import annotations

import html
import io
import re
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from typing import Any

from journal.errors import MissingColumn, UnreadableFile
from journal.files.columns import load_names, match_columns, normalise_name
from journal.files.raw import RawRow, RawTable
from journal.files.tables import check_container
from journal.records import Mode

_TIME = r"[\[(]?\d{1,2}(?::\d{2}){1,2}(?:[.,]\d{1,3})?[\])]?"
# A name begins with a capital or is a code with a number; "and so: 3 : 4" is no name.
_NAMED = re.compile(
    rf"^\s*(?:{_TIME}\s+)?(?P<name>"
    r"(?:(?=[^\W\d_a-z])[^\W\d_]|[a-z]{1,8} ?\d)[\w'’.-]*(?: [A-Z\d(][\w'’.()-]*){0,3}?)"
    rf"(?:\s+{_TIME})?:(?:\s+|$)(?P<words>.*)$",
    re.DOTALL,
)
_VOICE = re.compile(r"<v(?:\.[^\s>]*)?(?:\s+(?P<name>[^>]*))?>", re.IGNORECASE)
_TAG = re.compile(r"<[^<>]*>")


@dataclass(slots=True)
class Turn:
    """What one speaker said before the next; ``line`` is where it begins, from 1."""

    speaker: str | None
    words: str
    line: int


def read_document(data: bytes, *, file: str) -> RawTable:
    """Return the turns of a .docx file whose paragraphs read "Name: words".

    Parameters
    ----------
    data : bytes
        The whole file.
    file : str
        Its name, for messages.

    Returns
    -------
    RawTable
        A paragraph without a name goes on with the turn before it. Where no paragraph has a name,
        each is an entry. Lines are paragraph numbers. A table in the document whose first row
        names a column with the writing is read instead, as in a workbook.

    Raises
    ------
    UnreadableFile
        If the file is protected by a password, damaged or empty.
    """
    check_container(data, file=file, kind="document", suffix=".docx")
    import docx

    try:
        document = docx.Document(io.BytesIO(data))
        paragraphs = [
            (number, paragraph.text)
            for number, paragraph in enumerate(document.paragraphs, start=1)
            if paragraph.text.strip()
        ]
        tables = [
            [[cell.text for cell in row.cells] for row in table.rows] for table in document.tables
        ]
    except Exception:  # noqa: BLE001 - a damaged part raises whatever its reader stumbles over
        raise UnreadableFile(
            "the document is damaged; open it, and save it again as .docx.", file=file
        ) from None
    for rows in tables:
        found = _read_table(rows)
        if found is not None:
            return found
    turns = _split_paragraphs(paragraphs)
    table = _to_table(turns, mode="scribed", file=file, place="paragraph")
    skipped = sum(number < turns[0].line for number, _ in paragraphs)
    if skipped:
        table.notes += (f"Paragraphs before the first name, not read: {skipped}.",)
    if tables:
        table.notes += ("Words inside the document's tables were not read.",)
    return table


def _read_table(rows: list[list[str]]) -> RawTable | None:
    try:
        columns = match_columns(rows[0] if rows else ())
    except MissingColumn:
        return None
    table = RawTable(("The document's table was read, its paragraphs not.", *columns.describe()))
    table.asked = columns.asked
    for number, cells in enumerate(rows[1:], start=2):
        if any(cell.strip() for cell in cells):
            found = {name: cells[place] for name, place in columns.found.items()}
            table.rows.append(RawRow(number, found))
    return table


def read_captions(text: str, *, file: str, kind: str) -> RawTable:
    """Return the turns of a .vtt or .srt file.

    Parameters
    ----------
    text : str
        The whole file, decoded.
    file : str
        Its name, for messages.
    kind : {"vtt", "srt"}
        How the captions are written.

    Returns
    -------
    RawTable
        The speaker is the voice (``<v Name>``), else a name before a colon; captions of one
        speaker in a row are one turn. Lines are caption numbers.

    Raises
    ------
    UnreadableFile
        If there are no captions in it.
    """
    import webvtt
    from webvtt.errors import MalformedCaptionError, MalformedFileError

    try:
        captions: Any = webvtt.from_buffer(io.StringIO(text), format=kind)
    except (MalformedFileError, MalformedCaptionError, ValueError, IndexError):
        raise UnreadableFile(
            f"this is not a .{kind} transcript; check that it begins and is timed like one.",
            file=file,
        ) from None
    cues = [(number, caption.raw_text) for number, caption in enumerate(captions, start=1)]
    return _to_table(_join_cues(cues), mode="dictated", file=file, place="caption")


def is_adult(speaker: str) -> bool:
    """Tell whether a speaker's name is an adult's: a title before a name, or a role."""
    name = normalise_name(speaker)
    speakers = load_names()["speakers"]
    words = name.split()
    return name in speakers["adults"] or bool(words and words[0] in speakers["titles"])


def _split_paragraphs(paragraphs: Iterable[tuple[int, str]]) -> list[Turn]:
    turns: list[Turn] = []
    before: list[Turn] = []
    for number, text in paragraphs:
        match = _NAMED.match(text)
        if match:
            turns.append(Turn(match["name"].strip(), match["words"].strip(), number))
        elif turns:
            turns[-1].words = f"{turns[-1].words}\n{text.strip()}".strip()
        else:
            before.append(Turn(None, text.strip(), number))
    return turns or before


def _join_cues(cues: Iterable[tuple[int, str]]) -> list[Turn]:
    turns: list[Turn] = []
    for number, speaker, words in _split_voices(cues):
        if turns and (speaker is None or speaker == turns[-1].speaker):
            turns[-1].words = f"{turns[-1].words} {words}".strip()
        else:
            turns.append(Turn(speaker, words, number))
    return [turn for turn in turns if turn.words]


def _split_voices(cues: Iterable[tuple[int, str]]) -> Iterator[tuple[int, str | None, str]]:
    for number, raw in cues:
        parts = _VOICE.split(raw)
        if parts[0].strip():
            words = _plain_words(parts[0])
            match = _NAMED.match(words)
            if match:
                yield number, match["name"].strip(), match["words"].strip()
            else:
                yield number, None, words
        for name, words in zip(parts[1::2], parts[2::2], strict=True):
            yield number, html.unescape((name or "").strip()) or None, _plain_words(words)


def _plain_words(raw: str) -> str:
    return html.unescape(" ".join(_TAG.sub("", raw).split()))


def _to_table(turns: list[Turn], *, mode: Mode, file: str, place: str) -> RawTable:
    if not turns:
        raise UnreadableFile("there are no words in the file.", file=file)
    table = RawTable()
    asked: str | None = None
    adults = 0
    speakers: dict[str, None] = {}
    for turn in turns:
        if turn.speaker is not None and is_adult(turn.speaker):
            adults += 1
            asked = turn.words
            continue
        if turn.speaker is not None:
            speakers[turn.speaker] = None
        cells = {"text": turn.words, "pupil": turn.speaker, "prompt": asked, "mode": mode}
        table.rows.append(RawRow(turn.line, cells))
    named = ", ".join(speakers) if speakers else "nobody is named"
    table.notes = (f"Each turn is an entry, lines are {place} numbers, mode {mode}; {named}.",)
    if adults:
        table.notes += (
            f"{adults} adult turn{'s' * (adults != 1)} not scored, but kept as the prompt of the "
            "turns that follow.",
        )
    return table
