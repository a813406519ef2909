"""Calls for help: a child who is stuck now, as against one who was and got on."""

from __future__ import annotations

from journal.evidence.flags.stretches import join_spans, make_flag, own_span
from journal.language.parse import Parse
from journal.lexicon.flags import Help
from journal.lexicon.word_keys import read_words
from journal.records import Flag

_WHY = "“{words}”: the child says that something is not clear yet."


def find_help(parse: Parse, phrases: Help) -> list[Flag]:
    """Find calls for help.

    Parameters
    ----------
    parse : Parse
        The entry.
    phrases : Help
        What to look for.

    Returns
    -------
    list of Flag
        Stuck, confused or lost now; not a difficulty that the entry goes on to resolve.
    """
    words = read_words(parse.working, phrases.slips)
    alone = " ".join(key for key in words.keys if key != ".")
    if alone in phrases.alone:
        return [make_flag("help", parse.text, own_span(parse, words, 0, len(words)), _WHY)]
    found = [(first, after) for first, after, _ in phrases.phrases.find(words)]
    found += [(first, after) for _, _, first, after in phrases.requests.find(words)]
    if not found:
        return []
    solved = [
        first
        for _, _, first, after in phrases.solved.find(words)
        if words.keys[after : after + 1] != ["not"]
    ]
    spans = [
        own_span(parse, words, first, after)
        for first, after in found
        if not any(at >= first for at in solved)
    ]
    return [make_flag("help", parse.text, span, _WHY) for span in join_spans(spans)]
