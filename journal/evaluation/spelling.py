"""Misspellings put right, and ordinary words left alone."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence

from journal.evaluation.figures import Figure, ratio
from journal.lexicon.words import load_speller
from journal.text.normalise import normalise_characters


def _read(word: str) -> str:
    found = load_speller().find_corrections(word, original=word)
    return found[0].read_as if found else word


def measure_misspellings(rows: Iterable[Mapping[str, str]], what: str) -> list[Figure]:
    """Return recall and precision over misspelt words standing alone, without any plan.

    Parameters
    ----------
    rows : iterable of mapping
        With ``correct`` and ``misspelling``; where ``is_word`` is 1, no dictionary can tell.
    what : str
        Which words these are.
    """
    right = changed = size = 0
    for row in rows:
        misspelt, correct = row["misspelling"], row["correct"].lower()
        last = list(row.values())[-1]
        if last == "1" or not misspelt.isalpha():
            continue
        read = _read(misspelt).lower()
        size += 1
        changed += read != misspelt.lower()
        right += read == correct
    return [
        Figure(f"{what}: misspelling read as the right word", "recall", ratio(right, size), size),
        Figure(f"{what}: of the changes made, right", "precision", ratio(right, changed), changed),
    ]


def measure_false_changes(texts: Sequence[str]) -> Figure:
    """Return the changes made in 1,000 words of ordinary, rightly spelt text."""
    speller = load_speller()
    changes = words = 0
    for text in texts:
        words += len(text.split())
        changes += len(speller.find_corrections(normalise_characters(text), original=text))
    value = ratio(1000 * changes, words)
    return Figure("ordinary text: words changed in 1,000", "rate", value, words, "<= 1")
