"""Informal forms of mathematical words, beside the formal terms they stand for."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache

from journal.errors import LexiconError
from journal.lexicon.tables import load_rows
from journal.lexicon.terms import Words, split_words
from journal.resources import LEXICON


@dataclass(frozen=True, slots=True)
class InformalForm:
    """One informal form.

    Parameters
    ----------
    words : tuple of str
        As texts are compared.
    formal : str
        The formal term.
    domain : str
        Where it belongs.
    safe : bool
        Whether the form alone shows it; else its context must.
    context : str
        For a form that is not safe: the kind of company that shows it; see
        `journal.evidence.informal`.
    """

    words: Words
    formal: str
    domain: str
    safe: bool
    context: str


# As the parser cuts them: "ca n't", "there 's".
_CUT_OFF = re.compile(r"(n't|(?<=ca)nt|'s)\b")

InformalForms = Mapping[str, tuple[InformalForm, ...]]
"""Forms by their first word, the longest first."""


@lru_cache(maxsize=1)
def load_informal() -> InformalForms:
    """Load the informal forms.

    Raises
    ------
    LexiconError
        If the table is not as it should be.
    """
    heads: dict[str, list[InformalForm]] = {}
    columns = ["informal", "formal", "domain", "safe", "context"]
    for row in load_rows(LEXICON / "informal.csv", columns, ["informal"]):
        if row["safe"] not in ("yes", "no"):
            raise LexiconError(f"informal.csv, {row['informal']!r}: safe must be yes or no")
        for surface in row["informal"].split("|"):
            words = split_words(_CUT_OFF.sub(r" \1", surface))
            form = InformalForm(
                words, row["formal"], row["domain"], row["safe"] == "yes", row["context"]
            )
            heads.setdefault(words[0], []).append(form)
    return {
        word: tuple(sorted(forms, key=lambda form: -len(form.words)))
        for word, forms in heads.items()
    }
