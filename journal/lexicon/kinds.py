"""Words by the kind of mathematics they speak of: numbers, units, shapes, operations, relations."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from functools import lru_cache

from journal.errors import LexiconError
from journal.resources import LEXICON

KINDS = (
    "number",
    "ordinal",
    "fraction",
    "unit",
    "shape",
    "operation",
    "operation_on",
    "relation",
    "comparing",
    "representation",
    "thing",
    "parting",
    "shape_like",
    "subject",
    "about",
    "everyday_things",
    "labelled",
)


@lru_cache(maxsize=1)
def load_kinds() -> Mapping[str, frozenset[str]]:
    """Return the words of each of `KINDS`, in lower case.

    Raises
    ------
    LexiconError
        If the file can't be read or a kind is missing.
    """
    path = LEXICON / "mathematics.toml"
    try:
        words = tomllib.loads(path.read_text(encoding="utf-8"))["words"]
    except (OSError, tomllib.TOMLDecodeError, KeyError) as error:
        raise LexiconError(f"{path.name}: can't be read ({error}); correct it") from error
    missing = [kind for kind in KINDS if kind not in words]
    if missing:
        raise LexiconError(f"{path.name}: the words of {missing[0]!r} are missing; add them")
    return {kind: frozenset(words[kind]) for kind in KINDS}
