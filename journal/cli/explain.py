"""``journal explain``: one entry, its evidence, and the path to each level."""

from __future__ import annotations

from typing import Annotated

import typer

from journal.cli.running import (
    FileArgument,
    LessonOption,
    ModeOption,
    PlanOption,
    YearOption,
    close,
    read_given,
    read_plans,
    read_source,
    score_entries,
)
from journal.errors import InputError
from journal.records import Entry, Score

WARNING = (
    "This entry should be read by an adult first. It may worry or upset you. Check that no child\n"
    "and nobody who need not know can see this screen. If you are concerned, speak to the\n"
    "designated safeguarding lead today."
)


def explain(
    file: FileArgument,
    entry: Annotated[
        str | None, typer.Option("--entry", help="The entry's id.", show_default=False)
    ] = None,
    read_first: Annotated[
        bool,
        typer.Option("--read-first", help="Show the entries that an adult should read first."),
    ] = False,
    plan: PlanOption = None,
    lesson: LessonOption = None,
    year: YearOption = None,
    mode: ModeOption = None,
    yes: Annotated[
        bool,
        typer.Option("--yes", help="Do not ask before showing an entry to read first."),
    ] = False,
) -> None:
    """Explain one entry: the child's words with the evidence marked, and why each level.

    For an entry to read first there is a warning and a question before anything is shown.

    \b
    Examples:
      journal explain entries.csv --entry 17
      journal explain entries.csv --entry 17 --plan fractions.yaml --lesson 3
      journal explain entries.csv --read-first
    """
    if (entry is None) != read_first:
        raise InputError("name one entry with --entry, or ask for --read-first.")
    given = read_given(lesson, year, mode)
    plans = read_plans(plan)
    loaded = read_source(file, given)
    chosen = [item for item in loaded.entries if read_first or item.entry_id == entry]
    if not chosen:
        raise InputError(_no_entry(str(entry), loaded.entries), file=file)
    scores = [score for score in score_entries(chosen, plans) if score.has_worry or not read_first]
    if not scores:
        typer.echo("No entry was marked to be read first. Every entry still needs a reader.")
    if read_first:
        from journal.evidence.flags import load_worry_rate

        typer.echo(load_worry_rate().sentence, err=True)
    for score in scores:
        _show(score, sure=yes)
    close(loaded)


def _show(score: Score, *, sure: bool) -> None:
    from journal.reports.explanation import show_explanation

    if score.has_worry:
        typer.echo(WARNING, err=True)
        if not sure and not typer.confirm(f"Show entry {score.entry_id}?", err=True):
            return
    show_explanation(score)


def _no_entry(wanted: str, entries: tuple[Entry, ...]) -> str:
    ids = [item.entry_id for item in entries]
    some = ", ".join(ids[:8]) + (", ..." if len(ids) > 8 else "")
    return f"there is no entry {wanted!r}; there are {some}."
