"""Words about the pupil's own knowing, difficulty, strategy, checking, change and next step."""

from journal.evidence.metacognition.find import find_metacognition

__all__ = ["find_metacognition"]
