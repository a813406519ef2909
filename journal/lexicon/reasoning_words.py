"""Word classes that the finders of reasons and of metacognition ask about."""

from __future__ import annotations

import tomllib
from functools import lru_cache

from journal.resources import LEXICON

FILE = "reasoning_words.toml"


@lru_cache(maxsize=1)
def load_reasoning_words() -> dict[str, frozenset[str]]:
    """Return the classes of ``reasoning_words.toml`` by name.

    Returns
    -------
    dict
        Class name to its lower-case words.
    """
    data = tomllib.loads((LEXICON / FILE).read_text(encoding="utf-8"))
    return {name: frozenset(words.split()) for name, words in data.items()}
