"""Children's spelling: which word a spelling stands for, with the reason in a teacher's words."""

from journal.text.spelling.correct import Speller

__all__ = ["Speller"]
