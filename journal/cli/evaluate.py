"""``journal evaluate``: every figure that a folder of annotated files allows."""

from __future__ import annotations

import json
from dataclasses import asdict
from pathlib import Path
from typing import Annotated

import typer

from journal.cli.endings import complain


def evaluate(
    data: Annotated[Path, typer.Option("--data", help="The folder with the annotated files.")],
    as_json: Annotated[
        bool, typer.Option("--json", help="JSON on standard output instead of a table.")
    ] = False,
) -> None:
    """Measure accuracy on annotated files, each figure beside its size and its baselines.

    A file that is not in the folder is named, and what it would measure is left out.

    \b
    Example:
      journal evaluate --data annotated/ --json > figures.json
    """
    from rich.console import Console
    from rich.table import Table

    from journal.evaluation.figures import Figure
    from journal.evaluation.run import measure_all
    from journal.scoring import Scorer

    figures: list[Figure] = []
    for found in measure_all(data, Scorer()):
        if isinstance(found, str):
            complain(found)
        else:
            figures.append(found)
    if as_json:
        typer.echo(json.dumps([asdict(figure) for figure in figures], indent=2))
        return
    table = Table("what", "measure", "figure", "aim", "cases", "baselines")
    for figure in figures:
        table.add_row(
            figure.what,
            figure.measure,
            _show(figure.value),
            figure.target,
            str(figure.size),
            ", ".join(f"{name} {_show(value)}" for name, value in figure.baselines),
        )
    Console().print(table)


def _show(value: float | None) -> str:
    return "no case" if value is None else f"{value:.3f}"
