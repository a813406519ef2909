"""Whether the child stands by a statement: not quoted, asked, rejected, supposed or given up."""

from __future__ import annotations

from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.verdicts import Found


def is_asserted(lexemes: Lexemes, found: Found) -> bool:
    """Say whether the child asserts a statement.

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    found : Found
        The statement.
    """
    return lexemes.text(found.end) != "?"
