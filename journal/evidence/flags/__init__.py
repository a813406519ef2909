"""Flags: what an adult should look at today, one module a kind."""

from journal.evidence.flags.all_kinds import find_flags
from journal.evidence.flags.worry import find_worries
from journal.evidence.flags.worry_rate import WorryRate, load_worry_rate, measure_worries

__all__ = ["WorryRate", "find_flags", "find_worries", "load_worry_rate", "measure_worries"]
