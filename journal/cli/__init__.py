"""The command line: thin commands that parse, call and print."""

from journal.cli.commands import app, main

__all__ = ["app", "main"]
