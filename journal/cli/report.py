"""``journal report``: one HTML page to read, print and keep."""

from __future__ import annotations

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
from journal.files.write import check_writable, replacing
from journal.records import Score


def report(
    file: FileArgument,
    out: Annotated[
        Path, typer.Option("--out", help="The page to write; an older one is replaced.")
    ] = Path("report.html"),
    plan: PlanOption = None,
    lesson: LessonOption = None,
    workers: WorkersOption = 1,
    year: YearOption = None,
    mode: ModeOption = None,
) -> None:
    """Score FILE and write one HTML page: every entry with its evidence marked.

    The page works without a network and prints well. It leaves out entries to read first.

    \b
    Examples:
      journal report entries.csv --out report.html
      journal report entries.csv --plan fractions.yaml --out fractions.html
    """
    given = read_given(lesson, year, mode)
    check_writable(out, (".html", ".htm"))
    plans = read_plans(plan)
    loaded = read_source(file, given)
    scores = list(
        show_progress(score_entries(loaded.entries, plans, workers=workers), len(loaded.entries))
    )
    title = file if file != "-" else "entries"
    to_read_first = write_report(scores, out, title=Path(title).stem, left_out=len(loaded.left_out))
    complain(f"Report: {out}")
    say_read_first(to_read_first, file)
    close(loaded)


def write_report(scores: list[Score], out: Path, *, title: str, left_out: int = 0) -> int:
    """Write the page whole or not at all; return how many entries an adult should read first."""
    from journal.evidence.flags import load_worry_rate
    from journal.reports.page import render_report

    caution = load_worry_rate().sentence
    page = render_report(scores, title=title, left_out=left_out, caution=caution)
    with replacing(out) as temporary:
        temporary.write_text(page, encoding="utf-8")
    return sum(score.has_worry for score in scores)
