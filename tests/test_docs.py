"""Documentation that can't rot: every command, option, suffix and column is written down."""

from __future__ import annotations

import re
from collections.abc import Iterator
from pathlib import Path
from typing import Any

import pytest
import typer

from journal.cli import app, endings
from journal.files import load, write
from journal.files.columns import load_names
from journal.files.rows import MOST_CHARACTERS

ROOT = Path(__file__).parent.parent
COMMANDS = (ROOT / "docs" / "commands.md").read_text(encoding="utf-8")


def _commands(group: Any, path: tuple[str, ...] = ()) -> Iterator[tuple[str, Any]]:
    for name, command in group.commands.items():
        if hasattr(command, "commands"):
            yield from _commands(command, (*path, name))
        else:
            yield " ".join((*path, name)), command


def _section(command: str) -> str:
    sections = re.split(r"^## ", COMMANDS, flags=re.MULTILINE)
    return next((part for part in sections if part.startswith(f"`journal {command}")), "")


FOUND = dict(_commands(typer.main.get_command(app)))
OPTIONS = [
    (name, option)
    for name, command in FOUND.items()
    for parameter in command.params
    for option in parameter.opts
    if option.startswith("--") and option != "--help"
]


def test_there_are_commands_to_document() -> None:
    assert {"score", "report", "explain", "demo", "schema", "plan check", "lexicon show"} <= set(
        FOUND
    )


@pytest.mark.parametrize("command", sorted(FOUND))
def test_every_command_is_documented(command: str) -> None:
    assert f"| `journal {command}" in COMMANDS
    assert _section(command)


@pytest.mark.parametrize(("command", "option"), OPTIONS)
def test_every_option_is_documented_with_its_command(command: str, option: str) -> None:
    assert f"`{option}`" in _section(command)


@pytest.mark.parametrize("option", sorted(set(re.findall(r"`(--[a-z-]+)`", COMMANDS))))
def test_no_option_is_documented_that_is_not_there(option: str) -> None:
    assert option in {found for _, found in OPTIONS}


@pytest.mark.parametrize("suffix", sorted({*load.SUFFIXES, *write.SUFFIXES} - {".ndjson", ".xlsm"}))
def test_every_kind_of_file_is_documented(suffix: str) -> None:
    assert f"`{suffix}`" in COMMANDS


@pytest.mark.parametrize("column", sorted(load_names()["columns"]))
def test_every_column_is_documented(column: str) -> None:
    assert f"`{column}`" in COMMANDS


@pytest.mark.parametrize(
    "code",
    [
        endings.FINE,
        endings.FAULT,
        endings.CAN_NOT_BE_DONE,
        endings.ROWS_LEFT_OUT,
        endings.STOPPED,
        endings.PIPE_CLOSED,
    ],
)
def test_every_exit_code_is_documented(code: int) -> None:
    assert re.search(rf"^\| {code} \|", COMMANDS, re.MULTILINE)


def test_the_longest_text_is_documented() -> None:
    assert f"{MOST_CHARACTERS:,} characters" in COMMANDS
