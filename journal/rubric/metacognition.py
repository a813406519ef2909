"""Strand B, metacognition: the questions B1 to B3, with rule R19."""

from __future__ import annotations

from journal.evidence.evidence import Evidence
from journal.records import Metacognition, MetacognitionEvidence, Step


def check_metacognition(evidence: Evidence) -> Metacognition:
    """Suggest a level of metacognition, with the path of questions that led to it.

    Parameters
    ----------
    evidence : Evidence
        All that was found in the entry.

    Returns
    -------
    Metacognition
        ``level`` 0 to 3; ``rule`` the first question answered no, ``"B3"`` for level 3, ``"R19"``
        where that rule decided.
    """
    return Metacognition(0, "B1", (), evidence.metacognition)
