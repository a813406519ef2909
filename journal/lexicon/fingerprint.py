"""A hash of the lexicon's data, so that a score says by which words it was made."""

from __future__ import annotations

import json
from functools import lru_cache
from hashlib import sha256

from journal.resources import LEXICON, shipped_folder


@lru_cache(maxsize=1)
def hash_lexicon() -> str:
    """Return ``sha256:`` and the first 16 hex digits over every data file, by name and content."""
    digest = sha256()
    for path in sorted(LEXICON.iterdir()):
        if path.is_file():
            digest.update(path.name.encode())
            digest.update(path.read_bytes())
    return f"sha256:{digest.hexdigest()[:16]}"


@lru_cache(maxsize=1)
def name_models() -> tuple[str, ...]:
    """Return the ids of the trained models that ship, by the names of their files."""
    files = sorted(shipped_folder("models").glob("*.json"))
    return tuple(json.loads(file.read_text(encoding="utf-8"))["id"] for file in files)
