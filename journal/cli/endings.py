"""How a command ends: with one clear sentence and an exit code, never with a traceback."""

from __future__ import annotations

import os
import sys
import traceback
from pathlib import Path
from typing import Any

import typer
from typer.core import TyperGroup

from journal.errors import JournalError

FINE = 0
FAULT = 1
CAN_NOT_BE_DONE = 2
ROWS_LEFT_OUT = 3
STOPPED = 130
PIPE_CLOSED = 141
_SHOW = "JOURNAL_SHOW_FAULTS"


class Commands(TyperGroup):
    """The commands; whatever a user can put right ends as a sentence on standard error."""

    def invoke(self, ctx: Any) -> Any:
        try:
            return super().invoke(ctx)
        except JournalError as error:
            for sentence in error.args or (str(error),):
                complain(str(sentence))
            raise typer.Exit(CAN_NOT_BE_DONE) from None
        except (KeyboardInterrupt, typer.Abort):
            complain("Stopped; no file was changed.")
            raise typer.Exit(STOPPED) from None
        except BrokenPipeError:
            # Nobody reads on; without this the interpreter would complain while it closes.
            os.dup2(os.open(os.devnull, os.O_WRONLY), sys.stdout.fileno())
            raise typer.Exit(PIPE_CLOSED) from None
        except Exception as error:
            # The command line's own exceptions (usage, exit) end as they always do.
            if type(error).__module__.startswith(("typer", "click")) or _SHOW in os.environ:
                raise
            complain(_describe_fault(error))
            raise typer.Exit(FAULT) from None


def _describe_fault(error: Exception) -> str:
    # The place but not the message: it may quote a child.
    frame = traceback.extract_tb(error.__traceback__)[-1]
    place = f"{Path(frame.filename).name}, line {frame.lineno}"
    return (
        f"A fault in the program stopped this ({type(error).__name__} in {place}). Please report "
        f"it; with {_SHOW}=1 in the environment the whole of it is shown."
    )


def complain(sentence: str) -> None:
    """Print a sentence for a person to standard error."""
    typer.echo(sentence, err=True)
