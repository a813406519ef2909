"""Patterns of words in which pupils speak of their own knowing and learning."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache

from journal.resources import LEXICON

FILE = "metacognition.toml"


@dataclass(frozen=True, slots=True)
class OwnLearning:
    """How pupils speak of their own knowing and learning.

    Parameters
    ----------
    triggers : frozenset of str
        Words of which one must stand in a clause before any pattern is tried.
    these : frozenset of str
        Words that point back at mathematics named before.
    general : frozenset of str
        Nouns (lemmas) that name no piece of mathematics.
    patterns : mapping of str to pattern
        Kind to pattern, to be searched in a clause in lower case with tokens apart by spaces.
    """

    triggers: frozenset[str]
    these: frozenset[str]
    general: frozenset[str]
    patterns: Mapping[str, re.Pattern[str]]


@lru_cache(maxsize=1)
def load_metacognition() -> OwnLearning:
    """Return the words and patterns of ``metacognition.toml``."""
    data = tomllib.loads((LEXICON / FILE).read_text(encoding="utf-8"))
    words = [frozenset(data.pop(name).split()) for name in ("triggers", "these", "general")]
    patterns = {
        kind: re.compile("|".join(f"(?:{one})" for one in many)) for kind, many in data.items()
    }
    return OwnLearning(*words, patterns)
