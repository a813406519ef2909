"""``journal lexicon``: the words the tool knows."""

from __future__ import annotations

from typing import Annotated

import typer

from journal.cli.running import YearOption, read_given
from journal.errors import InputError

lexicon = typer.Typer(no_args_is_help=True, rich_markup_mode=None)


@lexicon.callback()
def words() -> None:
    """Show the mathematical words that the tool knows."""


@lexicon.command()
def show(
    year: YearOption = None,
    domain: Annotated[
        str | None,
        typer.Option(
            "--domain", help="Part of mathematics, or some of its name.", show_default=False
        ),
    ] = None,
) -> None:
    """Show the terms expected by a school year, with where each is listed.

    \b
    Examples:
      journal lexicon show --year 4 --domain fractions
      journal lexicon show --domain geometry
    """
    from journal.lexicon.terms import load_terms
    from journal.reports.terminal import show_terms

    last = read_given(None, year, None).year
    terms = load_terms().terms
    domains = sorted({term.domain for term in terms if term.domain})
    wanted = domains
    if domain is not None:
        part = domain.casefold().replace(" and ", " & ")
        wanted = [name for name in domains if part in name.casefold()]
        if not wanted:
            raise InputError(
                f"--domain {domain!r} is unknown; the lexicon has {', '.join(domains)}."
            )
    show_terms(
        [
            term
            for term in terms
            if (term.domain in wanted or (domain is None and term.domain is None))
            and (last is None or (term.first_year is not None and term.first_year <= last))
        ]
    )
