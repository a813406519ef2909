"""Load the speller: the list of words, the words of mathematics, the rules for real words."""

from __future__ import annotations

import gzip
import json
import tomllib
from collections.abc import Mapping
from functools import lru_cache
from pathlib import Path

from journal.errors import LexiconError
from journal.resources import LEXICON, shipped_folder
from journal.text.confusions import Confusions, read_confusions
from journal.text.spelling import Speller
from journal.text.spelling.likelihood import Weights
from journal.text.spelling.phonetic import skeleton_key

_LIKELIER = {"mathematics": 1.2, "reasoning": 0.8}
# However rare a word of mathematics is elsewhere, a lesson brings it up.
_AT_LEAST = 5.2
_CONTRACTION = 4.8
_SHORT_FORM = 2.5
_NAME = 2.0


@lru_cache(maxsize=1)
def load_speller() -> Speller:
    """Return the speller with the words that ship with the package.

    Returns
    -------
    Speller
        The same object at every call.

    Raises
    ------
    LexiconError
        If a data file is missing or is not as it should be.
    """
    words, by_skeleton, doubtful = load_words(LEXICON / "words.tsv.gz")
    kinds = load_kinds(LEXICON / "words_mathematics.tsv")
    for word in kinds:
        if word not in words:
            words[word] = 2.0
    likelier = {
        word: max(_LIKELIER[kind], _AT_LEAST - words[word])
        for word, kind in kinds.items()
        if kind in _LIKELIER
    }
    table = tomllib.loads((LEXICON / "confusions.toml").read_text("utf-8"))
    for word in table["known"]["words"].split():
        words.setdefault(word, _SHORT_FORM)
    names = [word for word in table["known"]["names"].split() if word not in words]
    words.update(dict.fromkeys(names, _NAME))
    contractions: dict[str, str] = table["contractions"]
    for form in contractions:
        likelier[form] = _CONTRACTION - 2.5
        by_skeleton.setdefault(skeleton_key(form), []).append(form)
    return Speller(
        words,
        by_skeleton,
        weights=load_weights(),
        doubtful=doubtful.union(names),
        likelier=likelier,
        mathematics=frozenset(word for word, kind in kinds.items() if kind == "mathematics"),
        readings=table["readings"],
        contractions=contractions,
        joins=table["joins"],
        confusions=load_confusions(table),
    )


def load_weights() -> Weights:
    """Read the trained weights of a slip's features; see ``models/spelling.md``."""
    model = json.loads((shipped_folder("models") / "spelling.json").read_text("utf-8"))
    return Weights(model["word"], model["none"])


def load_confusions(table: Mapping[str, object]) -> Confusions:
    """Make the rules for real words; `LexiconError` says which pattern is wrong."""
    try:
        return read_confusions(table)
    except ValueError as error:
        raise LexiconError(str(error)) from error


def load_words(file: Path) -> tuple[dict[str, float], dict[str, list[str]], frozenset[str]]:
    """Read the list of words.

    Parameters
    ----------
    file : Path
        Gzipped text, one word a line, commonest first: word, Zipf frequency, and the skeleton of
        its sound, or ``-`` for a word that is never a correction.

    Returns
    -------
    dict, dict and frozenset
        Zipf frequency by word; words by skeleton, commonest first; words that are never a
        correction.

    Raises
    ------
    LexiconError
        If the file is missing or a line has not three columns.
    """
    try:
        fields = gzip.decompress(file.read_bytes()).decode("utf-8").split()
    except (OSError, EOFError) as error:
        raise LexiconError(
            f"{file.name}: the list of words can't be read; install it again."
        ) from error
    if len(fields) % 3:
        raise LexiconError(f"{file.name}: a line has not three columns; build the list again.")
    words = dict(zip(fields[0::3], map(float, fields[1::3]), strict=True))
    by_skeleton: dict[str, list[str]] = {}
    never = []
    for word, skeleton in zip(fields[0::3], fields[2::3], strict=True):
        if skeleton == "-":
            never.append(word)
        else:
            by_skeleton.setdefault(skeleton, []).append(word)
    return words, by_skeleton, frozenset(never)


def load_kinds(file: Path) -> dict[str, str]:
    """Read the words a lesson makes likelier: word and kind, one a line after the heading."""
    kinds: dict[str, str] = {}
    for number, line in enumerate(file.read_text("utf-8").splitlines(), start=1):
        if not line or line.startswith("#") or line == "word\tkind":
            continue
        word, _, kind = line.partition("\t")
        if kind not in ("mathematics", "reasoning", "child"):
            raise LexiconError(
                f"{file.name}, line {number}: {kind!r} is no kind of word; "
                "write mathematics, reasoning or child."
            )
        kinds[word] = kind
    return kinds
