"""Flags: what an adult should look at today, one module a kind."""

from journal.evidence.flags.all_kinds import find_flags
from journal.evidence.flags.worry import find_worries

__all__ = ["find_flags", "find_worries"]
