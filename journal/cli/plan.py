"""``journal plan``: unit plans."""

from __future__ import annotations

from pathlib import Path
from typing import Annotated

import typer

plan = typer.Typer(no_args_is_help=True, rich_markup_mode=None)


@plan.callback()
def plans() -> None:
    """Check unit plans: the lessons, their prompts and their words."""


@plan.command()
def check(
    file: Annotated[Path, typer.Argument(metavar="FILE", help="A plan (YAML).")],
) -> None:
    """Check a unit plan: every problem is a sentence with its line; no problem, a summary.

    \b
    Example:
      journal plan check fractions.yaml
    """
    from journal.lexicon.plan import load_plan

    read = load_plan(file)
    year = "Reception" if read.year == 0 else f"year {read.year}"
    typer.echo(f"{read.title} ({read.unit}, {year}, {read.domain}): nothing to put right.")
    for number, lesson in enumerate(read.lessons, start=1):
        words = ", ".join(read.targets_for(lesson))
        typer.echo(f"  {number}. {lesson.id}: {lesson.prompt}")
        typer.echo(f"     words: {words}")
        ideas = ", ".join(idea.id for idea in read.ideas_for(lesson))
        if ideas:
            typer.echo(f"     ideas to listen for: {ideas}")
