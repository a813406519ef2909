"""Informal forms in an entry: "bottom number" for denominator, "timesed" for multiplied."""

from __future__ import annotations

from journal.evidence.senses import Pieces, read_pieces
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.informal import InformalForm, InformalForms
from journal.records import InformalUse


def find_informal(parse: Parse, forms: InformalForms, setting: Setting) -> list[InformalUse]:
    """Return the informal forms, in order, the longest first where two begin together.

    Parameters
    ----------
    parse : Parse
        The entry.
    forms : InformalForms
        From `journal.lexicon.informal.load_informal`.
    setting : Setting
        The year and the targets: an accepted early form is left alone while it is taught.

    Returns
    -------
    list of InformalUse
        A form that may be plain English is reported only where its context shows it.
    """
    pieces = read_pieces(parse)
    words = pieces.words
    found: list[InformalUse] = []
    at, count = 0, len(words)
    while at < count:
        candidates = forms.get(words[at])
        if candidates is not None:
            for form in candidates:
                after = at + len(form.words)
                if tuple(words[at:after]) == form.words and _is_shown(pieces, at, after, form):
                    start, end = pieces.starts[at], max(pieces.ends[at:after])
                    found.append(InformalUse(start, end, parse.text[start:end], form.formal))
                    at = after - 1
                    break
        at += 1
    return found


def _is_shown(pieces: Pieces, first: int, after: int, form: InformalForm) -> bool:
    return form.safe
