"""All flags of one entry."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.flags.conjecture import find_conjectures
from journal.evidence.flags.echo import find_copied
from journal.evidence.flags.help import find_help
from journal.evidence.flags.idea import find_ideas
from journal.evidence.flags.keyword_string import find_keyword_strings
from journal.evidence.flags.word_bank import find_pasted_bank
from journal.evidence.mathematics import Mathematics
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.flags import (
    load_conjectures,
    load_help,
    load_keywords,
    load_not_asserted,
)
from journal.lexicon.word_keys import read_words
from journal.records import Claim, Flag, Marker, Reason, VocabularyUse


def find_flags(  # noqa: PLR0917 - in the order in which they are found
    parse: Parse,
    vocabulary: Sequence[VocabularyUse],
    markers: Sequence[Marker],
    reasons: Sequence[Reason],
    claims: Sequence[Claim],
    mathematics: Mathematics,
    setting: Setting,
) -> list[Flag]:
    """Find what an adult should look at today, worries and other languages excepted.

    Parameters
    ----------
    parse : Parse
        The entry.
    vocabulary, markers, reasons, claims : sequences
        What the other finders found in it.
    mathematics : Mathematics
        Of the same parse.
    setting : Setting
        Prompt, word bank, starters and ideas that serve here.

    Returns
    -------
    list of Flag
        By start. `find_worries` is asked separately, before anything else.
    """
    words = read_words(parse.working)
    flags = [
        *find_help(parse, load_help()),
        *find_ideas(parse, words, setting.ideas, claims, load_not_asserted()),
        *find_copied(parse, words, setting),
        *find_pasted_bank(parse, words, setting, load_keywords().bare),
        *find_keyword_strings(parse, words, load_keywords()),
        *find_conjectures(
            parse,
            words,
            load_conjectures(),
            markers=markers,
            reasons=reasons,
            mathematics=mathematics,
        ),
    ]
    return sorted(flags, key=lambda flag: (flag.start, flag.end, flag.kind))
