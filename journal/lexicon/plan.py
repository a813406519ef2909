"""Unit plans: what a teacher sets for each lesson, read from a YAML file.

docs/plans.md shows how to write one.
"""

from __future__ import annotations

import hashlib
import json
import re
from datetime import date as calendar_date
from pathlib import Path
from typing import Annotated, Any, get_args

from pydantic import (
    BaseModel,
    ConfigDict,
    Discriminator,
    Field,
    Tag,
    ValidationError,
    field_validator,
    model_validator,
)

from journal.errors import PlanError
from journal.lexicon.patterns import PatternError, compile_pattern
from journal.lexicon.plan_errors import did_you_mean, nearest_word, report_invalid
from journal.lexicon.plan_source import Place, PlanSource, read_plan_source
from journal.lexicon.watchlist import Idea, load_watchlist
from journal.records import Function

DOMAINS = (
    "addition & subtraction",
    "algebra",
    "fractions, decimals & percentages",
    "geometry: position & direction",
    "geometry: shape",
    "measures",
    "multiplication & division",
    "number & place value",
    "ratio & proportion",
    "reasoning & working mathematically",
    "statistics",
)
_YEAR = re.compile(r"(?:year\s*|y)?([0-6])", re.IGNORECASE)
_ID = re.compile(r"[a-z0-9]+(?:[-_.][a-z0-9]+)*")


def _checked_id(value: str) -> str:
    if not _ID.fullmatch(value):
        raise ValueError(
            f"the id {value!r} should be small letters and numbers joined by -, such as 'halves-2'"
        )
    return value


class _Part(BaseModel):
    model_config = ConfigDict(extra="forbid", frozen=True, str_strip_whitespace=True)


class TargetTerm(_Part):
    """A term the unit is to teach, with informal forms that are welcome for it."""

    term: str = Field(min_length=1)
    informal: tuple[str, ...] = ()

    @model_validator(mode="before")
    @classmethod
    def _plain_term(cls, value: Any) -> Any:
        return {"term": value} if isinstance(value, str) else value


class PlanIdea(_Part):
    """A wrong idea to listen for, in the plan's own words."""

    id: str
    description: str = Field(min_length=1)
    patterns: tuple[str, ...]

    _check_id = field_validator("id")(_checked_id)

    @field_validator("patterns")
    @classmethod
    def _readable(cls, patterns: tuple[str, ...]) -> tuple[str, ...]:
        for pattern in patterns:
            try:
                compile_pattern(pattern)
            except PatternError as error:
                raise ValueError(str(error)) from error
        return patterns


def _idea_kind(value: Any) -> str:
    return "named" if isinstance(value, str) else "described"


ListedIdea = Annotated[
    Annotated[str, Tag("named")] | Annotated[PlanIdea, Tag("described")],
    Discriminator(_idea_kind),
]
"""An idea described in the plan, or named by the id it has on a watch-list."""


class Lesson(_Part):
    """One lesson: what it is about, what the children are asked and shown."""

    id: str
    focus: str = Field(min_length=1)
    prompt: str = Field(min_length=1)
    date: str | None = None
    target_terms: tuple[TargetTerm, ...] | None = None
    sentence_starters: tuple[str, ...] = ()
    word_bank: tuple[str, ...] = ()
    expected_function: Function | None = None
    watch_list: tuple[ListedIdea, ...] = ()

    _check_id = field_validator("id")(_checked_id)

    @field_validator("date")
    @classmethod
    def _real_day(cls, value: str | None) -> str | None:
        if value is None:
            return None
        try:
            return calendar_date.fromisoformat(value).isoformat()
        except ValueError as error:
            raise ValueError(
                f"the date {value!r} should be year-month-day, such as 2026-03-02"
            ) from error

    @field_validator("expected_function", mode="before")
    @classmethod
    def _known_function(cls, value: Any) -> Any:
        known = get_args(Function)
        if value is not None and value not in known:
            raise ValueError(
                f"'expected_function' can't be {value!r}{did_you_mean(str(value), known)}"
            )
        return value


class Plan(_Part):
    """A unit's plan.

    ``sha256`` is of the content (not the layout of the file): the same plan has the same hash
    wherever it is kept, and any change of content another.
    """

    id: str
    title: str = Field(min_length=1)
    unit: str = Field(min_length=1)
    year: int = Field(ge=0, le=6)
    domain: str
    target_terms: tuple[TargetTerm, ...] = Field(min_length=1)
    lessons: tuple[Lesson, ...] = Field(min_length=1)
    watch_list: tuple[ListedIdea, ...] = ()
    sha256: str = ""

    _check_id = field_validator("id")(_checked_id)

    @field_validator("year", mode="before")
    @classmethod
    def _school_year(cls, value: Any) -> Any:
        if isinstance(value, str):
            if value.strip().lower() in ("r", "reception", "year r", "yr"):
                return 0
            match = _YEAR.fullmatch(value.strip())
            if match is None:
                raise ValueError(f"'year' can't be {value!r}; write 0 for Reception, or 1 to 6")
            return int(match.group(1))
        return value

    @field_validator("domain")
    @classmethod
    def _known_domain(cls, value: str) -> str:
        wanted = " ".join(value.lower().replace(" and ", " & ").split())
        if wanted in DOMAINS:
            return wanted
        holding = [name for name in DOMAINS if re.search(rf"\b{re.escape(wanted)}\b", name)]
        if len(holding) == 1:
            return holding[0]
        near = nearest_word(wanted, {word for name in DOMAINS for word in re.findall(r"\w+", name)})
        meant = [name for name in DOMAINS if near is not None and near in name]
        raise ValueError(f"'domain' can't be {value!r}{did_you_mean(value, meant or DOMAINS)}")

    def lesson(self, which: str | int) -> Lesson:
        """Return a lesson by its id, its date, or its number in the plan, counted from 1.

        Parameters
        ----------
        which : str or int
            An id or date goes before a number.

        Returns
        -------
        Lesson

        Raises
        ------
        PlanError
            If the plan has no such lesson; the message lists those it has.
        """
        wanted = str(which).strip()
        for lesson in self.lessons:
            if wanted in (lesson.id, lesson.date):
                return lesson
        number = re.fullmatch(r"(?:lesson\s*|l)?([0-9]{1,3})", wanted, re.IGNORECASE)
        if number and 1 <= int(number.group(1)) <= len(self.lessons):
            return self.lessons[int(number.group(1)) - 1]
        choice = did_you_mean(wanted, [lesson.id for lesson in self.lessons])
        raise PlanError(f"the plan {self.id!r} has no lesson {wanted!r}{choice}")

    def terms_for(self, lesson: Lesson) -> tuple[TargetTerm, ...]:
        """Return the lesson's target terms with their informal forms: its own, else the plan's."""
        if lesson.target_terms is None:
            return self.target_terms
        informal = {term.term: term for term in self.target_terms}
        return tuple(
            term if term.informal else informal.get(term.term, term) for term in lesson.target_terms
        )

    def targets_for(self, lesson: Lesson) -> tuple[str, ...]:
        """Return the lesson's target terms as the teacher wrote them."""
        return tuple(term.term for term in self.terms_for(lesson))

    def informal_for(self, lesson: Lesson) -> dict[str, tuple[str, ...]]:
        """Return the informal forms allowed for each target term that has any."""
        return {term.term: term.informal for term in self.terms_for(lesson) if term.informal}

    def earlier_for(self, lesson: Lesson) -> tuple[str, ...]:
        """Return target terms of earlier lessons that are not targets of this one, in order."""
        today = set(self.targets_for(lesson))
        earlier: dict[str, None] = {}
        for before in self.lessons:
            if before.id == lesson.id:
                break
            earlier.update(dict.fromkeys(self.targets_for(before)))
        return tuple(term for term in earlier if term not in today)

    def ideas_for(self, lesson: Lesson) -> tuple[Idea, ...]:
        """Return the ideas to listen for: the lesson's, then the plan's, each once."""
        own = {idea.id: idea for idea in self._own_ideas()}
        general = {idea.id: idea for idea in load_watchlist()}
        found: dict[str, Idea] = {}
        for item in (*lesson.watch_list, *self.watch_list):
            name = item if isinstance(item, str) else item.id
            idea = own.get(name) or general[name]
            found.setdefault(name, idea)
        return tuple(found.values())

    def _own_ideas(self) -> list[Idea]:
        parts = (self.watch_list, *(lesson.watch_list for lesson in self.lessons))
        return [
            Idea(item.id, item.description, item.patterns, self.domain, "this plan")
            for part in parts
            for item in part
            if not isinstance(item, str)
        ]


_FIELDS = {
    "a plan": sorted(set(Plan.model_fields) - {"sha256"}),
    "a lesson": sorted(Lesson.model_fields),
    "an idea on the watch-list": sorted(PlanIdea.model_fields),
    "a target term": sorted(TargetTerm.model_fields),
}


def load_plan(path: str | Path) -> Plan:
    """Read a unit plan.

    Parameters
    ----------
    path : str or Path
        A YAML file in UTF-8.

    Returns
    -------
    Plan

    Raises
    ------
    PlanError
        With every problem of the plan, one sentence each: file, line, field, and the nearest
        right word.
    """
    path = Path(path)
    try:
        text = path.read_text(encoding="utf-8-sig")
    except FileNotFoundError as error:
        raise PlanError(f"{path}: there is no such file; check the name of the plan") from error
    except UnicodeDecodeError as error:
        raise PlanError(f"{path}: this is not plain text; save it as UTF-8") from error
    except OSError as error:
        raise PlanError(f"{path}: this can't be read ({error.strerror})") from error
    return read_plan(text, path.name)


def read_plan(text: str, file: str = "plan") -> Plan:
    """Read a unit plan from its text; see `load_plan`.

    Parameters
    ----------
    text : str
        YAML.
    file : str
        A name for messages.

    Returns
    -------
    Plan

    Raises
    ------
    PlanError
        With every problem of the plan.
    """
    source = read_plan_source(text, file)
    if not isinstance(source.data, dict):
        raise PlanError(
            f"{file}, line 1: a plan is a list of fields such as 'title: ...'; "
            "docs/plans.md shows how one looks"
        )
    if "sha256" in source.data:
        source.report(("sha256",), "'sha256' is worked out, not written; remove the line")
        del source.data["sha256"]
    _check_repeats(source)
    _check_ideas(source)
    try:
        plan = Plan.model_validate(source.data)
    except ValidationError as error:
        report_invalid(source, error.errors(), _FIELDS)
    if source.problems:
        raise PlanError(*sorted(source.problems, key=_line_of))
    content = json.dumps(plan.model_dump(mode="json", exclude={"sha256"}), sort_keys=True)
    digest = hashlib.sha256(content.encode()).hexdigest()
    return plan.model_copy(update={"sha256": digest})


def _line_of(problem: str) -> int:
    match = re.search(r", line (\d+)", problem)
    return int(match.group(1)) if match else 0


def _check_repeats(source: PlanSource) -> None:
    """Report ids and dates that stand twice."""
    lessons = source.data.get("lessons")
    if not isinstance(lessons, list):
        return
    for name in ("id", "date"):
        seen: dict[Any, int] = {}
        for number, lesson in enumerate(lessons):
            value = lesson.get(name) if isinstance(lesson, dict) else None
            if not isinstance(value, str):
                continue
            place = ("lessons", number, name)
            if value in seen:
                source.report(
                    place,
                    f"two lessons have the {name} {value!r}, the other on line {seen[value]};"
                    f" give each its own",
                )
            seen.setdefault(value, source.line(place))


def _check_ideas(source: PlanSource) -> None:
    """Report ideas that are named but described nowhere."""
    lists: list[tuple[Place, Any]] = [(("watch_list",), source.data.get("watch_list"))]
    lessons = source.data.get("lessons")
    for number, lesson in enumerate(lessons if isinstance(lessons, list) else []):
        if isinstance(lesson, dict):
            lists.append((("lessons", number, "watch_list"), lesson.get("watch_list")))
    items = [
        ((*place, number), item)
        for place, listed in lists
        if isinstance(listed, list)
        for number, item in enumerate(listed)
    ]
    known = {idea.id for idea in load_watchlist()}
    known |= {str(item.get("id")) for _, item in items if isinstance(item, dict)}
    for place, item in items:
        if isinstance(item, str) and item not in known:
            near = nearest_word(item, known)
            remedy = f"did you mean {near!r}?" if near else "give it id, description and patterns"
            source.report(place, f"no watch-list has an idea {item!r}; {remedy}")
