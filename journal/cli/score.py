"""``journal score``: entries in, score records or a table out."""

from __future__ import annotations

import sys
from pathlib import Path
from typing import Annotated

import typer

from journal.cli.endings import complain
from journal.cli.running import (
    FileArgument,
    LessonOption,
    ModeOption,
    PlanOption,
    WorkersOption,
    YearOption,
    close,
    read_given,
    read_plans,
    read_source,
    say_read_first,
    score_entries,
    show_progress,
)
from journal.errors import InputError
from journal.files import Saved, save_scores
from journal.files.write import SUFFIXES, check_writable, write_lines


def score(
    file: FileArgument,
    plan: PlanOption = None,
    lesson: LessonOption = None,
    out: Annotated[
        str,
        typer.Option(
            "--out",
            help="Where to write: .jsonl (the whole record), .csv, .xlsx or .parquet (a row an "
            "entry), or - for JSONL on standard output.",
        ),
    ] = "-",
    workers: WorkersOption = 1,
    year: YearOption = None,
    mode: ModeOption = None,
) -> None:
    """Score the entries of FILE: one record, or one row, an entry.

    A column with the writing is needed (text, reflection, entry, response ...). Read as well,
    under many names: entry_id, pupil, date, unit, lesson, prompt, mode, year, target_terms,
    word_bank, sentence_starters, inserted. What was understood is said on standard error.

    Entries to read first are in no table, only in JSONL, where every entry has its record.

    \b
    Examples:
      journal score entries.csv --out scores.jsonl
      journal score entries.xlsx --plan fractions.yaml --lesson 3 --out scores.xlsx
      journal score talk.vtt --year 4
      cat entries.csv | journal score - > scores.jsonl
    """
    given = read_given(lesson, year, mode)
    place = None if out == "-" else Path(out)
    if place is not None:
        check_writable(place, SUFFIXES)
        if file != "-" and place.exists() and place.samefile(file):
            raise InputError("--out names the file of entries itself; choose another.", file=out)
    plans = read_plans(plan)
    loaded = read_source(file, given)
    scores = show_progress(
        score_entries(loaded.entries, plans, workers=workers), len(loaded.entries)
    )
    if place is None:
        saved = Saved()
        # Bytes, since a console may not be in UTF-8; a line at a time, since a pipe may wait.
        stream = sys.stdout.buffer
        for line in write_lines(scores, saved, on_screen=sys.stdout.isatty()):
            stream.write(line.encode())
            stream.flush()
    else:
        saved = save_scores(scores, place)
        complain(f"{saved.written} entries written: {place}")
    say_read_first(saved.to_read_first, file)
    close(loaded)
