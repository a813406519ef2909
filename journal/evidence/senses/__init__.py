"""In which sense a word is used: as mathematics, or as everyone uses it."""

from journal.evidence.senses.decide import SenseDecision, decide_sense
from journal.evidence.senses.pieces import Pieces, read_pieces

__all__ = ["Pieces", "SenseDecision", "decide_sense", "read_pieces"]
