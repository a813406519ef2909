"""Answers to a prompt that asks about learning: they comment, whatever words they use."""

from __future__ import annotations

import re
from collections.abc import Sequence

from journal.evidence.clauses import Clause
from journal.evidence.mathematics import Mathematics
from journal.evidence.metacognition.lines import Lines
from journal.language.parse import Parse
from journal.lexicon.metacognition import load_metacognition
from journal.records import MetacognitionEvidence

_PROMPTS = load_metacognition().prompts
# "I used the bar model", "I wrote (2,5)"; an answer without subject is one as well.
_OWN_DOING = re.compile(r"^(then )?(i|we|when|the|my|using|by)\b")


def find_answers(
    parse: Parse,
    mathematics: Mathematics,
    prompt: str,
    found: Sequence[MetacognitionEvidence],
) -> list[MetacognitionEvidence]:
    """Find the answer to a prompt about learning, where nothing of its kind was found yet.

    Parameters
    ----------
    parse : Parse
        The entry.
    mathematics : Mathematics
        What each token speaks of.
    prompt : str
        What was asked.
    found : sequence of MetacognitionEvidence
        What the schemas found.

    Returns
    -------
    list of MetacognitionEvidence
        One at most: the first clause, where the pupil says what they did or names a thing.
    """
    asked = prompt.lower()
    kind = next((kind for kind, pattern in _PROMPTS.items() if pattern.search(asked)), None)
    if kind is None or any(item.kind == kind for item in found):
        return []
    clauses = Lines(parse, mathematics).clauses
    if not clauses or not _answers(parse, clauses[0]):
        return []
    start, end = parse.span(clauses[0].first, clauses[0].after)
    return [MetacognitionEvidence(start, end, parse.text[start:end], kind)]


def _answers(parse: Parse, clause: Clause) -> bool:
    first = parse.tokens[clause.first]
    return (
        not clause.predicate
        or bool(_OWN_DOING.match(first.lower))
        or (first.tag == "VB" and first.dep == "ROOT")
    )
