"""Reasons: statements of why or how it follows, with the claims they stand under."""

from __future__ import annotations

from journal.evidence.reasons.central import mark_central
from journal.evidence.reasons.find import find_reasons

__all__ = ["find_reasons", "mark_central"]
