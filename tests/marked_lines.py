"""Invented sentences with the reading of each marker written behind it: ``{because|R}``."""

from __future__ import annotations

import re
from dataclasses import dataclass
from functools import lru_cache
from pathlib import Path

from journal.records import Reading, Span

DATA = Path(__file__).parent / "evidence" / "data"
READINGS: dict[str, Reading] = {
    "R": "reasoning",
    "N": "no_mathematics",
    "T": "narrative",
    "E": "echo",
    "M": "mention",
    "L": "look_alike",
}
_MARK = re.compile(r"\{([^{}|]+)\|([RNTEML])\}")


@dataclass(frozen=True)
class Line:
    """A sentence and the reading meant for each marked stretch of it."""

    text: str
    readings: dict[Span, Reading]


@lru_cache(maxsize=4)
def read_lines(name: str) -> list[Line]:
    """Read a file of marked sentences; blank lines and those with # are for the reader."""
    lines = []
    for row in (DATA / name).read_text(encoding="utf-8").splitlines():
        if not row or row.startswith("#"):
            continue
        text, at = "", 0
        readings: dict[Span, Reading] = {}
        for mark in _MARK.finditer(row):
            text += row[at : mark.start()]
            readings[len(text), len(text) + len(mark[1])] = READINGS[mark[2]]
            text += mark[1]
            at = mark.end()
        lines.append(Line(text + row[at:], readings))
    return lines
