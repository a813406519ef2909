"""Shared fixtures: the pipeline is loaded once, a parse is made the way the scorer makes it."""

from __future__ import annotations

from collections.abc import Callable

import pytest
from spacy.language import Language

from journal.language.parse import Parse, read_parse
from journal.language.pipeline import load_pipeline
from journal.text.normalise import find_spacing_edits, normalise_characters
from journal.text.offsets import OffsetMap


@pytest.fixture(scope="session")
def pipeline() -> Language:
    return load_pipeline()


@pytest.fixture(scope="session")
def parse_of(pipeline: Language) -> Callable[[str], Parse]:
    """Parse a text as it stands, without correcting any spelling."""

    def parse(text: str) -> Parse:
        clean = normalise_characters(text)
        offsets = OffsetMap(text, find_spacing_edits(clean), clean)
        return read_parse(pipeline(offsets.working), offsets)

    return parse
