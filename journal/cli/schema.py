"""``journal schema``: the JSON Schema of a score record."""

from __future__ import annotations

import json

import typer

from journal.records import record_schema


def schema() -> None:
    """Print the JSON Schema of a score record, for programs that read scores.

    \b
    Example:
      journal schema > score.schema.json
    """
    typer.echo(json.dumps(record_schema(), indent=2, ensure_ascii=False))
