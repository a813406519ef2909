"""Patterns of words in which pupils speak of their own knowing and learning."""

from __future__ import annotations

import re
import tomllib
from functools import lru_cache

from journal.resources import LEXICON

FILE = "metacognition.toml"


@lru_cache(maxsize=1)
def load_metacognition() -> dict[str, re.Pattern[str]]:
    """Return one compiled pattern for each kind of ``metacognition.toml``.

    Returns
    -------
    dict
        Kind to pattern, to be searched in a clause in lower case with tokens apart by spaces.
    """
    data = tomllib.loads((LEXICON / FILE).read_text(encoding="utf-8"))
    return {kind: re.compile("|".join(f"(?:{one})" for one in many)) for kind, many in data.items()}
