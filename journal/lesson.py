"""What was set for an entry: its own words first, then the lesson's, then the unit's."""

from __future__ import annotations

from contextlib import suppress
from pathlib import Path

from journal.errors import PlanError
from journal.evidence.setting import Setting
from journal.lexicon.plan import Lesson, Plan, load_plan
from journal.lexicon.watchlist import Idea, load_watchlist
from journal.records import Entry
from journal.text.exclusions import find_excluded


def read_plan(plan: Plan | str | Path | None) -> Plan | None:
    """Return a plan given as itself or as the path of its file."""
    return load_plan(plan) if isinstance(plan, (str, Path)) else plan


def make_setting(entry: Entry, plan: Plan | None) -> Setting:
    """Return what was set: the entry's own words first, then the lesson's, then the unit's."""
    lesson = _find_lesson(entry, plan)
    targets = entry.target_terms
    if targets is None and plan is not None:
        terms = plan.terms_for(lesson) if lesson else plan.target_terms
        targets = tuple(term.term for term in terms)
    year = entry.year if plan is None or entry.year is not None else plan.year
    return Setting(
        targets=targets or (),
        earlier=plan.earlier_for(lesson) if plan and lesson else (),
        year=year,
        domain=plan.domain if plan else None,
        prompt=entry.prompt or (lesson.prompt if lesson else None),
        mode=entry.mode,
        word_bank=entry.word_bank or (lesson.word_bank if lesson else ()),
        sentence_starters=entry.sentence_starters or (lesson.sentence_starters if lesson else ()),
        excluded=tuple(find_excluded(entry.text, entry.mode, entry.inserted)),
        ideas=_ideas(plan, lesson),
    )


def _find_lesson(entry: Entry, plan: Plan | None) -> Lesson | None:
    """Return the plan's lesson of the entry's lesson or date; an unknown one stops nobody."""
    for which in (entry.lesson, entry.date) if plan else ():
        with suppress(PlanError):
            if which is not None and plan is not None:
                return plan.lesson(which)
    return None


_found_ideas: dict[tuple[str, str], tuple[Idea, ...]] = {}


def _ideas(plan: Plan | None, lesson: Lesson | None) -> tuple[Idea, ...]:
    """Return the plan's ideas to listen for, then the general ones that it does not name.

    One tuple a lesson, however many entries it has: patterns are compiled once for each.
    """
    if plan is None or lesson is None:
        return load_watchlist()
    key = (plan.sha256, lesson.id)
    if key not in _found_ideas:
        own = plan.ideas_for(lesson)
        named = {idea.id for idea in own}
        general = (idea for idea in load_watchlist() if idea.id not in named)
        _found_ideas[key] = (*own, *general)
    return _found_ideas[key]
