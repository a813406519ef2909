"""``journal demo``: an invented class, scored from start to report."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

from journal.cli.endings import complain
from journal.cli.report import write_report
from journal.cli.running import read_plans, say_read_first, score_entries, show_progress
from journal.errors import UnreadableFile
from journal.files import load_entries
from journal.resources import shipped_folder


def demo(
    out: Annotated[Path, typer.Option("--out", help="The folder for the report.")] = Path(
        "demo_out"
    ),
) -> None:
    """Score an invented class, show tables here and write a report to read.

    \b
    Example:
      journal demo
    """
    from journal.reports.terminal import show_pupils, show_words

    folder = shipped_folder("demo_entries")
    source = folder / "entries.csv"
    if not source.is_file():
        raise UnreadableFile(
            "the invented class is missing; install the package again.", file=folder
        )
    loaded = load_entries(source)
    plans = read_plans(folder / "plans")
    scores = list(show_progress(score_entries(loaded.entries, plans), len(loaded.entries)))
    show_pupils(scores)
    show_words(scores)
    try:
        out.mkdir(parents=True, exist_ok=True)
    except OSError as error:
        raise UnreadableFile(
            f"the folder can't be made ({error.strerror}); choose another with --out.", file=out
        ) from None
    page = out / "report.html"
    to_read_first = write_report(scores, page, title="An invented class")
    typer.echo(f"Report: {page.resolve()}")
    say_read_first(to_read_first, str(source))
    complain("Every name and every entry is invented.")
