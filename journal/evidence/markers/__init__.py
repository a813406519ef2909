"""Markers of reasoning: a question for each ambiguous form, and one finder."""

from journal.evidence.markers.find import find_markers

__all__ = ["find_markers"]
