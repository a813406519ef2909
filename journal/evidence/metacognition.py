"""Words about the pupil's own knowing, difficulty, strategy, checking, change and next step."""

from __future__ import annotations

from collections.abc import Sequence

from journal.evidence.mathematics import Mathematics
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.records import Marker, MetacognitionEvidence


def find_metacognition(
    parse: Parse, markers: Sequence[Marker], mathematics: Mathematics, setting: Setting
) -> list[MetacognitionEvidence]:
    """Find what the pupil says of their own knowing and learning."""
    return []
