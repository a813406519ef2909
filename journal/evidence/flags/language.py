"""Entries in another language than English: not scored, but never overlooked."""

from __future__ import annotations

from collections.abc import Container

from journal.evidence.flags.stretches import make_flag
from journal.evidence.readable import name_language
from journal.language.parse import Parse
from journal.lexicon.flags import load_home_languages
from journal.records import Flag


def find_other_language(parse: Parse, known: Container[str]) -> list[Flag]:
    """Find an entry that is not English.

    Parameters
    ----------
    parse : Parse
        The entry.
    known : container of str
        English words in lower case.

    Returns
    -------
    list of Flag
        One at most, over the whole text.
    """
    text = parse.text
    language = name_language(text, known, load_home_languages())
    if language is None:
        return []
    start = len(text) - len(text.lstrip())
    span = (start, len(text.rstrip()))
    named = "another language" if language == "other" else f"{language} or a language like it"
    why = f"“{{words}}” seems to be in {named}; it is not scored, please read it with someone."
    return [make_flag("not_english", text, span, why)]
