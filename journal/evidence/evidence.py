"""All that the finders found in one entry: what the rubric's questions are asked of."""

from __future__ import annotations

from dataclasses import dataclass

from journal.evidence.mathematics import Mathematics
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.records import (
    Claim,
    Flag,
    InformalUse,
    Marker,
    MetacognitionEvidence,
    Reason,
    VocabularyUse,
)


@dataclass(frozen=True, slots=True)
class Evidence:
    """The evidence of one entry, in the order of the text within each kind."""

    parse: Parse
    setting: Setting
    mathematics: Mathematics
    vocabulary: tuple[VocabularyUse, ...]
    informal: tuple[InformalUse, ...]
    markers: tuple[Marker, ...]
    claims: tuple[Claim, ...]
    reasons: tuple[Reason, ...]
    metacognition: tuple[MetacognitionEvidence, ...]
    flags: tuple[Flag, ...]
