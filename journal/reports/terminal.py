"""Tables for the terminal: a row a pupil, a row a word, the lexicon's terms."""

from __future__ import annotations

from collections.abc import Iterable

from rich.console import Console
from rich.table import Table
from rich.text import Text

from journal.lexicon.terms import Term
from journal.records import Score
from journal.reports.explanation import clean
from journal.reports.gathered import gather_pupils, gather_words

_UNSEEN_WIDTH = 120


def make_console() -> Console:
    """Return a console on standard output; wide where no terminal gives it a width."""
    console = Console(highlight=False)
    return console if console.is_terminal else Console(highlight=False, width=_UNSEEN_WIDTH)


def show_pupils(scores: Iterable[Score], console: Console | None = None) -> None:
    """Print what each pupil's entries show, in the alphabet's order, without levels."""
    table = _table("By pupil, in the alphabet's order", "Pupil", "Entries", "Words of the lessons",
                   "In a reason", "Reasoning language", "To look at")  # fmt: skip
    for row in gather_pupils(scores):
        table.add_row(
            Text(clean(row.pupil)),
            str(len(row.entries)),
            _join(row.words),
            _join(row.words_in_reasons),
            _join(row.functions),
            str(row.to_look_at or ""),
        )
    (console or make_console()).print(table)


def show_words(scores: Iterable[Score], console: Console | None = None) -> None:
    """Print who used each word of the lessons, who used it in a reason, and informal forms."""
    table = _table("By word of the lessons", "Word", "Used by", "In a reason by",
                   "Informal forms seen")  # fmt: skip
    for row in gather_words(scores):
        if row.target:
            table.add_row(
                Text(clean(row.word)),
                _join(row.used_by, "nobody yet"),
                _join(row.in_reason_by),
                _join(row.informal),
            )
    (console or make_console()).print(table)


def show_terms(terms: Iterable[Term], console: Console | None = None) -> None:
    """Print terms with their domain, the year they are first expected, and the source."""
    table = _table("Terms", "Term", "Domain", "From", "Everyday sense too", "Listed in")
    for term in sorted(terms, key=lambda term: (term.domain or "", term.headword)):
        year = "" if term.first_year is None else str(term.first_year or "R")
        everyday = "yes" if term.everyday_sense_risk else ""
        table.add_row(term.headword, term.domain or "", year, everyday, term.source)
    (console or make_console()).print(table)


def _table(title: str, *columns: str) -> Table:
    table = Table(title=title, title_justify="left", title_style="bold", show_lines=False)
    for column in columns:
        table.add_column(column, overflow="fold")
    return table


def _join(words: Iterable[str], nobody: str = "") -> Text:
    return Text(clean(", ".join(sorted(words, key=str.casefold)) or nobody))
