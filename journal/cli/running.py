"""What the commands share: entries in, the scorer, the progress bar, the closing lines."""

from __future__ import annotations

import sys
from collections.abc import Iterable, Iterator
from dataclasses import dataclass, replace
from itertools import groupby
from pathlib import Path
from typing import TYPE_CHECKING, Annotated

import typer

from journal.cli.endings import ROWS_LEFT_OUT, complain
from journal.errors import InputError, PlanError
from journal.files import Loaded, load_entries, read_entries
from journal.files.rows import read_mode, read_year
from journal.records import Entry, Mode, Score

if TYPE_CHECKING:
    from journal.lexicon.plan import Plan
    from journal.scoring import Scorer

FileArgument = Annotated[
    str,
    typer.Argument(
        metavar="FILE",
        help="CSV, TSV, JSONL, XLSX or Parquet; a .docx, .vtt or .srt transcript; a folder of .txt "
        "files; or - for CSV or JSONL on standard input.",
        show_default=False,
    ),
]
PlanOption = Annotated[
    Path | None,
    typer.Option(
        "--plan",
        help="The unit's plan (YAML), or a folder of plans, matched by the entries' unit.",
        show_default=False,
    ),
]
LessonOption = Annotated[
    str | None,
    typer.Option(
        "--lesson",
        help="The plan's lesson (number, id or date), for entries that do not name one.",
        show_default=False,
    ),
]
YearOption = Annotated[
    str | None,
    typer.Option(
        "--year", help="School year, R or 1 to 6, for entries without one.", show_default=False
    ),
]
ModeOption = Annotated[
    str | None,
    typer.Option(
        "--mode",
        help="typed, scribed or dictated, for entries that do not say.",
        show_default=False,
    ),
]
WorkersOption = Annotated[
    int, typer.Option("--workers", min=1, max=64, help="Processes to work in.")
]


@dataclass(frozen=True, slots=True)
class Given:
    """What the options say about entries that do not say it themselves."""

    lesson: str | None = None
    year: int | None = None
    mode: Mode | None = None


def read_given(lesson: str | None, year: str | None, mode: str | None) -> Given:
    """Check the options, and refuse those that can't be read."""
    given = Given(
        lesson=lesson,
        year=None if year is None else read_year(year),
        mode=None if mode is None else read_mode(mode),
    )
    if year is not None and given.year is None:
        raise InputError(f"--year {year!r} is not a school year; write R or 1 to 6.")
    if mode is not None and given.mode is None:
        raise InputError(f"--mode {mode!r} is not a mode; write typed, scribed or dictated.")
    return given


def read_source(source: str, given: Given) -> Loaded:
    """Read the entries, say what was understood and which rows were left out.

    All of this goes to standard error, so that standard output holds records only.
    """
    if source == "-":
        loaded = read_entries(sys.stdin.buffer.read(), name="standard input")
    else:
        loaded = load_entries(source)
    for note in loaded.notes:
        complain(note)
    for error in loaded.left_out:
        complain(str(error))
    entries = tuple(
        replace(
            entry,
            lesson=entry.lesson if entry.lesson is not None else given.lesson,
            year=entry.year if entry.year is not None else given.year,
            mode=entry.mode or given.mode,
        )
        for entry in loaded.entries
    )
    return replace(loaded, entries=entries)


def read_plans(path: Path | None) -> dict[str, Plan]:
    """Return the plans by every name that an entry's unit may use; one plan serves all as ""."""
    if path is None:
        return {}
    from journal.lexicon.plan import load_plan

    if not path.is_dir():
        return {"": load_plan(path)}
    plans = {}
    for file in sorted((*path.glob("*.yaml"), *path.glob("*.yml"))):
        plan = load_plan(file)
        for name in (plan.unit, plan.title, plan.id, file.stem):
            plans[name.casefold()] = plan
    if not plans:
        raise PlanError(f"{path}: the folder holds no plans (.yaml).")
    return plans


def make_scorer() -> Scorer:
    """Load the language model; this is the one slow step before the first score."""
    from journal.scoring import Scorer

    return Scorer()


def score_entries(
    entries: Iterable[Entry], plans: dict[str, Plan], *, workers: int = 1
) -> Iterator[Score]:
    """Score entries in their order, each by its unit's plan, with a bar where one can be seen."""
    scorer = make_scorer()

    def plan_of(entry: Entry) -> Plan | None:
        return plans.get("") or plans.get((entry.unit or "").casefold())

    def scores() -> Iterator[Score]:
        for _, group in groupby(entries, key=lambda entry: id(plan_of(entry))):
            run = list(group)
            yield from scorer.score_many(run, plan=plan_of(run[0]), workers=workers)

    return scores()


def show_progress(scores: Iterable[Score], total: int) -> Iterator[Score]:
    """Pass scores on, with a bar on standard error where that is a terminal."""
    if not sys.stderr.isatty():
        yield from scores
        return
    from rich.console import Console
    from rich.progress import BarColumn, MofNCompleteColumn, Progress, TextColumn

    bar = BarColumn(style="dim", complete_style="cyan", finished_style="cyan", pulse_style="cyan")
    columns = (TextColumn("Reading entries"), bar, MofNCompleteColumn())
    with Progress(*columns, console=Console(stderr=True), transient=True) as progress:
        task = progress.add_task("", total=total)
        for score in scores:
            yield score
            progress.advance(task)


def say_read_first(count: int, source: str) -> None:
    """Say, and no more than this, that an adult should read some entries before anything else."""
    if count:
        entries = "1 entry" if count == 1 else f"{count} entries"
        where = "FILE" if source == "-" else source
        complain(f"{entries} to read first: journal explain {where} --read-first")
        # Loading scorer and speller takes a moment: not before a count is said.
        from journal.evidence.flags import load_worry_rate

        complain(load_worry_rate().sentence)


def close(loaded: Loaded) -> None:
    """End with the exit code that says whether rows were left out."""
    if loaded.left_out:
        count = len(loaded.left_out)
        complain(f"{count} row{'s' * (count != 1)} left out; {len(loaded.entries)} scored.")
        raise typer.Exit(ROWS_LEFT_OUT)
