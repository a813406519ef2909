"""The commands by name; each stands in its own file."""

from __future__ import annotations

import typer

from journal import __version__
from journal.cli.demo import demo
from journal.cli.endings import Commands
from journal.cli.evaluate import evaluate
from journal.cli.explain import explain
from journal.cli.lexicon import lexicon
from journal.cli.plan import plan
from journal.cli.report import report
from journal.cli.schema import schema
from journal.cli.score import score

app = typer.Typer(
    cls=Commands,
    name="journal",
    no_args_is_help=True,
    add_completion=False,
    rich_markup_mode=None,
    pretty_exceptions_enable=False,
    context_settings={"help_option_names": ["-h", "--help"], "max_content_width": 96},
)
app.command(short_help="Score a file of entries.")(score)
app.command(short_help="Explain one entry, step by step.")(explain)
app.command(short_help="Write one HTML page to read and print.")(report)
app.command(short_help="Score an invented class.")(demo)
app.command(short_help="Print the schema of a score record.")(schema)
app.command(short_help="Measure accuracy on annotated files.")(evaluate)
app.add_typer(plan, name="plan", short_help="Check a unit plan.")
app.add_typer(lexicon, name="lexicon", short_help="Show the words the tool knows.")


def _say_version(wanted: bool) -> None:
    if wanted:
        typer.echo(f"journal {__version__}")
        raise typer.Exit


@app.callback()
def journal(
    version: bool = typer.Option(
        False, "--version", help="Say the version and stop.", callback=_say_version, is_eager=True
    ),
) -> None:
    """Show mathematical vocabulary and reasoning in children's written reflections.

    Every level is a suggestion with its evidence in the child's own words; the teacher decides.
    Everything runs on this computer and nothing is sent anywhere.

    \b
    Examples:
      journal demo                                 score an invented class
      journal score entries.csv --out scores.xlsx  score your own
      journal report entries.csv --out report.html a page to read and print
      journal explain entries.csv --entry 17       one entry, step by step

    \b
    Exit codes: 0 all is well; 2 it can't be done; 3 done, but some rows were left out;
    1 a fault in the program; 130 stopped with Ctrl-C; 141 the reader of a pipe went away.
    """


def main() -> None:
    """Run the command line."""
    app()
