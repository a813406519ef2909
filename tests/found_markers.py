"""Markers of a text as the scorer finds them, without correcting any spelling."""

from __future__ import annotations

from collections.abc import Callable

from journal.evidence.claims import find_claims
from journal.evidence.informal import find_informal
from journal.evidence.markers import find_markers
from journal.evidence.mathematics import find_mathematics
from journal.evidence.setting import Setting
from journal.evidence.vocabulary import find_vocabulary
from journal.language.parse import Parse
from journal.lexicon.informal import load_informal
from journal.lexicon.markers import load_markers
from journal.lexicon.terms import load_terms
from journal.records import Marker

ParseOf = Callable[[str], Parse]


def markers_of(parse: Parse, setting: Setting | None = None) -> list[Marker]:
    setting = setting or Setting()
    mathematics = find_mathematics(
        parse,
        find_vocabulary(parse, load_terms(), setting),
        find_informal(parse, load_informal(), setting),
        find_claims(parse, setting),
    )
    return find_markers(parse, load_markers(), mathematics, setting)
