"""Bytes to text: UTF-8, UTF-16 and the Windows code page that spreadsheets still write."""

from __future__ import annotations

import codecs

from journal.errors import UnreadableFile

_MARKS = (
    (codecs.BOM_UTF8, "utf-8-sig", "UTF-8"),
    (codecs.BOM_UTF32_LE, "utf-32", "UTF-32"),
    (codecs.BOM_UTF32_BE, "utf-32", "UTF-32"),
    (codecs.BOM_UTF16_LE, "utf-16", "UTF-16"),
    (codecs.BOM_UTF16_BE, "utf-16", "UTF-16"),
)
_WINDOWS = "Windows-1252"


def decode(data: bytes, *, file: str | None = None) -> tuple[str, str]:
    """Decode the bytes of a text file.

    Parameters
    ----------
    data : bytes
        The whole file.
    file : str, optional
        The file's name, for the message.

    Returns
    -------
    text : str
        Without a byte order mark.
    encoding : str
        The encoding's name, to be shown.

    Raises
    ------
    UnreadableFile
        If the bytes are not text.

    Notes
    -----
    Without a mark, UTF-8 is tried first. A file that is not UTF-8 throughout is read line by line,
    each as UTF-8 where it can be and as Windows-1252 elsewhere: a file pasted together from two
    sources keeps both its halves.
    """
    for mark, codec, name in _MARKS:
        if data.startswith(mark):
            return _decode_whole(data, codec, name, file), name
    if b"\0" in data:
        order = _utf16_order(data)
        if order is None:
            raise UnreadableFile("this is not a text file; save it as CSV or XLSX.", file=file)
        return _decode_whole(data, order, "UTF-16", file), "UTF-16"
    try:
        return data.decode("utf-8"), "UTF-8"
    except UnicodeDecodeError:
        lines = [_decode_line(line) for line in data.splitlines(keepends=True)]
        return "".join(lines), _WINDOWS


def replace_lone_surrogates(text: str) -> str:
    """Return the text with halves of a surrogate pair as U+FFFD: same length, can be written."""
    if text.isascii():
        return text
    return "".join("\ufffd" if "\ud800" <= char <= "\udfff" else char for char in text)


def _decode_whole(data: bytes, codec: str, name: str, file: str | None) -> str:
    try:
        return data.decode(codec)
    except UnicodeDecodeError:
        raise UnreadableFile(
            f"the file says it is {name} but is damaged; save it again as UTF-8.", file=file
        ) from None


def _utf16_order(data: bytes) -> str | None:
    # Latin text in UTF-16 has a zero in every other byte, nearly always on the same side.
    sample = data[:4096]
    even, odd = sample[0::2].count(0), sample[1::2].count(0)
    half = max(len(sample) // 2, 1)
    if odd > 0.6 * half and even < 0.1 * half:
        return "utf-16-le"
    if even > 0.6 * half and odd < 0.1 * half:
        return "utf-16-be"
    return None


def _decode_line(line: bytes) -> str:
    try:
        return line.decode("utf-8")
    except UnicodeDecodeError:
        # Five bytes mean nothing in Windows-1252; the mark for "unknown" keeps the rest readable.
        return line.decode("cp1252", errors="replace")
