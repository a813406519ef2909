"""The report: one HTML page that needs no network, made to be read and printed."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from functools import lru_cache
from pathlib import Path

from jinja2 import Environment, FileSystemLoader, StrictUndefined, Template

from journal.levels import NOT_SCORED, NOT_YET_CHECKED, QUESTIONS, describe_decision
from journal.lexicon.watchlist import load_watchlist
from journal.records import Score, Step
from journal.reports.gathered import (
    Found,
    PupilRow,
    WordRow,
    gather_calls,
    gather_ideas,
    gather_pupils,
    gather_words,
    writer_of,
)
from journal.reports.marking import (
    WORDS_BESIDE,
    Note,
    Run,
    find_context,
    find_look_alikes,
    find_marks,
    find_notes,
    quote,
    split_runs,
)

_TEMPLATES = Path(__file__).with_name("templates")


@dataclass(frozen=True, slots=True)
class LevelView:
    """A suggested level as it is shown: words and rule, then the number, then the path."""

    strand: str
    words: str
    level: int
    unchecked: bool
    path: tuple[Step, ...]


@dataclass(frozen=True, slots=True)
class EntryView:
    """One entry as it is shown; ``anchor`` is unique on the page."""

    anchor: str
    writer: str
    score: Score
    runs: tuple[Run, ...]
    notes: tuple[Note, ...]
    look_alikes: tuple[Note, ...]
    levels: tuple[LevelView, ...]
    not_scored: str | None


@dataclass(frozen=True, slots=True)
class LessonView:
    """The entries of one lesson, in the alphabet's order of the pupils."""

    heading: str
    prompt: str | None
    words: tuple[str, ...]
    entries: tuple[EntryView, ...]


@dataclass(frozen=True, slots=True)
class IdeaView:
    """An idea to check, and where it was met."""

    heading: str
    found: tuple[Found, ...]


def render_report(
    scores: Sequence[Score],
    *,
    title: str,
    left_out: int = 0,
    ideas: Mapping[str, str] | None = None,
    caution: str = "",
) -> str:
    """Return the page for some entries.

    Parameters
    ----------
    scores : sequence of Score
        In the order of their file. Scores with a worry are counted and otherwise left out.
    title : str
        What the entries are, for the heading.
    left_out : int
        Rows of the file that could not be read.
    ideas : mapping, optional
        Ids of ideas to check to their descriptions; by default those of the watch-list.
    caution : str
        How much the worry list misses, to stand where entries to read first are counted.

    Returns
    -------
    str
        A whole HTML document: no scripts, and nothing fetched from anywhere.
    """
    if ideas is None:
        ideas = {idea.id: idea.description for idea in load_watchlist()}
    shown = [score for score in scores if not score.has_worry]
    anchors = {id(score): f"entry-{number}" for number, score in enumerate(shown, start=1)}
    pupils: list[PupilRow] = gather_pupils(shown)
    words: list[WordRow] = gather_words(shown)
    return _template().render(
        title=title,
        lessons=_view_lessons(shown, anchors, ideas),
        entries=len(shown),
        dates=_span_of_dates(shown),
        to_read_first=len(scores) - len(shown),
        left_out=left_out,
        caution=caution,
        calls=gather_calls(shown),
        ideas=[
            IdeaView(_name_idea(idea, ideas), tuple(found))
            for idea, found in gather_ideas(shown).items()
        ],
        not_scored=[score for score in shown if score.not_scored_because is not None],
        pupils=pupils,
        targets=[row for row in words if row.target],
        others=[row for row in words if not row.target],
        anchors=anchors,
        style=(_TEMPLATES / "report.css").read_text(encoding="utf-8"),
    )


@lru_cache(maxsize=1)
def _template() -> Template:
    environment = Environment(
        loader=FileSystemLoader(_TEMPLATES),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        lstrip_blocks=True,
    )
    environment.filters.update(quote=quote, id=id, short_date=_say_day)
    environment.globals.update(
        writer_of=writer_of,
        find_context=find_context,
        words_beside=WORDS_BESIDE,
        questions=QUESTIONS,
        not_yet_checked=NOT_YET_CHECKED.replace("'", "’"),
        reasons_not_scored=NOT_SCORED,
    )
    return environment.get_template("report.html")


def _view_lessons(
    scores: Iterable[Score], anchors: Mapping[int, str], ideas: Mapping[str, str]
) -> list[LessonView]:
    lessons: dict[tuple[str | None, str | None, str | None], list[Score]] = {}
    for score in scores:
        source = score.source
        # Entries without a lesson are parted by their day.
        key = (source.unit, source.lesson, source.date if source.lesson is None else None)
        lessons.setdefault(key, []).append(score)
    views = []
    for (unit, lesson, written), group in lessons.items():
        group.sort(key=lambda score: (writer_of(score).casefold(), score.source.revision))
        prompts = {score.source.prompt for score in group}
        days = {score.source.date for score in group if score.source.date}
        parts = [
            _say_unit(unit),
            f"lesson {lesson}" if lesson else None,
        ]
        day = written or (days.pop() if len(days) == 1 else None)
        parts.append(day and _say_date(day))
        views.append(
            LessonView(
                heading=", ".join(part for part in parts if part) or "Entries",
                prompt=prompts.pop() if len(prompts) == 1 else None,
                words=tuple(dict.fromkeys(word for score in group for word in score.targets)),
                entries=tuple(_view_entry(score, anchors[id(score)], ideas) for score in group),
            )
        )
    return views


def _view_entry(score: Score, anchor: str, ideas: Mapping[str, str]) -> EntryView:
    notes = find_notes(score, ideas)
    levels = []
    for strand, part in (("reasoning", score.reasoning), ("metacognition", score.metacognition)):
        words = describe_decision(strand, part.level, part.rule)
        if words is not None and part.level is not None:
            unchecked = any(s.question == "A3b" and s.answer is None for s in part.path)
            levels.append(LevelView(strand, words, part.level, unchecked, part.path))
    return EntryView(
        anchor=anchor,
        writer=writer_of(score),
        score=score,
        runs=split_runs(score, find_marks(score), notes),
        notes=notes,
        look_alikes=find_look_alikes(score),
        levels=tuple(levels),
        not_scored=score.not_scored_because and NOT_SCORED[score.not_scored_because],
    )


def _name_idea(idea: str | None, ideas: Mapping[str, str]) -> str:
    if idea is None:
        return "Calculations that do not come out"
    return ideas.get(idea, idea.replace("_", " ").replace("-", " "))


def _span_of_dates(scores: Iterable[Score]) -> str:
    days = sorted({score.source.date for score in scores if score.source.date})
    if not days:
        return ""
    if len(days) == 1:
        return _say_date(days[0])
    return f"{_say_date(days[0])} to {_say_date(days[-1])}"


def _say_day(day: str) -> str:
    """Return a day in short, without the year that stands at the top of the page."""
    day, month, *_ = (*_say_date(day).split(" "), "")
    return f"{day} {month[:3]}".strip()


def _say_unit(unit: str | None) -> str | None:
    words = (unit or "").replace("_", " ")
    return words[:1].upper() + words[1:] or None


def _say_date(day: str) -> str:
    try:
        read = date.fromisoformat(day)
    except ValueError:
        return day
    return f"{read.day} {read:%B %Y}"
