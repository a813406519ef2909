"""The annotated files that a folder may hold, and what is said where one is missing."""

from __future__ import annotations

import csv
import json
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from journal.errors import UnreadableFile

FILES = {
    "misspellings_maths_reasoning.tsv": "spelling of mathematics and reasoning words",
    "misspellings.tsv": "spelling of all words",
    "connectives_dev.jsonl": "markers",
    "maths_sense.jsonl": "senses of mathematical words",
    "classroom_talk_dev.jsonl": "levels against what was said in lessons",
    "judged.jsonl": "levels against a person's levels",
}


def load_jsonl(path: Path) -> list[dict[str, Any]]:
    """Return the objects of a JSONL file.

    Raises
    ------
    UnreadableFile
        If a line is not JSON; the line is named.
    """
    rows = []
    for number, line in enumerate(path.read_text(encoding="utf-8").splitlines(), start=1):
        try:
            rows.append(json.loads(line))
        except json.JSONDecodeError as error:
            raise UnreadableFile(f"is not JSON ({error.msg}).", file=path, line=number) from None
    return rows


def load_tsv(path: Path) -> Iterator[dict[str, str]]:
    """Yield the rows of a tab-separated file with a header."""
    with path.open(encoding="utf-8", newline="") as file:
        yield from csv.DictReader(file, delimiter="\t", quoting=csv.QUOTE_NONE)
