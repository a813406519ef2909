"""A plan's YAML as plain data, with the line each part stands on."""

from __future__ import annotations

from dataclasses import dataclass, field
from typing import Any

import yaml

from journal.errors import PlanError

_LARGEST = 1_000_000
_DEEPEST = 12

Place = tuple[str | int, ...]
"""The way to a part of a plan: names of fields and positions in lists."""


@dataclass(slots=True)
class PlanSource:
    """What a plan file says, before it is checked.

    Parameters
    ----------
    file : str
        Its name, for messages.
    data : Any
        Dicts, lists and strings. Every value stays the string that stands in the file, so that
        "no", "1:2" or "2026-03-02" are never taken for anything else.
    lines : dict
        Line of each part, counted from 1.
    problems : list of str
        What is wrong already.
    """

    file: str
    data: Any = None
    lines: dict[Place, int] = field(default_factory=dict)
    problems: list[str] = field(default_factory=list)

    def line(self, place: Place) -> int:
        """Return the line of a part, or of the nearest part around it."""
        while place and place not in self.lines:
            place = place[:-1]
        return self.lines.get(place, 1)

    def report(self, place: Place, what: str) -> None:
        """Add a problem at a place."""
        problem = f"{self.file}, line {self.line(place)}: {what}"
        if problem not in self.problems:
            self.problems.append(problem)


def read_plan_source(text: str, file: str) -> PlanSource:
    """Read YAML into plain data, noting lines.

    Parameters
    ----------
    text : str
        Content of a plan file.
    file : str
        Its name, for messages.

    Returns
    -------
    PlanSource
        With problems such as a field given twice.

    Raises
    ------
    PlanError
        If the text is not YAML, is too large, or uses YAML's own programming (aliases, tags).
    """
    if len(text) > _LARGEST:
        raise PlanError(f"{file}: the file is too large for a plan; is it the right file?")
    try:
        events = list(yaml.parse(text, Loader=yaml.SafeLoader))
        for event in events:
            if isinstance(event, yaml.AliasEvent):
                line = event.start_mark.line + 1 if event.start_mark else 1
                raise PlanError(
                    f"{file}, line {line}: '*{event.anchor}' refers to another part of the file,"
                    " which plans don't use; put text with a * in quotation marks"
                )
        node = yaml.compose(text, Loader=yaml.SafeLoader)
    except yaml.MarkedYAMLError as error:
        raise PlanError(_syntax_sentence(error, file)) from error
    except (yaml.YAMLError, RecursionError) as error:
        raise PlanError(f"{file}: this can't be read as a plan; save it as plain text") from error
    source = PlanSource(file)
    if node is None:
        raise PlanError(f"{file}: the plan is empty; docs/plans.md shows how one looks")
    source.data = _plain(node, (), source)
    return source


def _syntax_sentence(error: yaml.MarkedYAMLError, file: str) -> str:
    mark = error.problem_mark or error.context_mark
    place = file if mark is None else f"{file}, line {mark.line + 1}, column {mark.column + 1}"
    problem = error.problem or "the layout can't be followed"
    hint = (
        "check the indents, and put text that holds ': ' or begins with a sign in quotation marks"
    )
    if "\\t" in problem or "'\t'" in problem:
        hint = "use spaces, not tabs, at the beginning of a line"
    return f"{place}: {problem}; {hint}"


def _plain(node: yaml.Node, place: Place, source: PlanSource) -> Any:
    source.lines[place] = node.start_mark.line + 1
    if len(place) > _DEEPEST:
        raise PlanError(
            f"{source.file}, line {source.line(place)}: lists are nested too deeply for a plan"
        )
    if isinstance(node, yaml.MappingNode):
        found: dict[str, Any] = {}
        for key_node, value_node in node.value:
            if not isinstance(key_node, yaml.ScalarNode):
                source.lines[(*place, "?")] = key_node.start_mark.line + 1
                source.report((*place, "?"), "a field's name must be one word before a colon")
                continue
            key = key_node.value
            inner = (*place, key)
            if key in found:
                source.lines[inner] = key_node.start_mark.line + 1
                source.report(inner, f"{key!r} is given twice; keep one of them")
                continue
            found[key] = _plain(value_node, inner, source)
            source.lines[inner] = key_node.start_mark.line + 1
        return found
    if isinstance(node, yaml.SequenceNode):
        return [_plain(item, (*place, i), source) for i, item in enumerate(node.value)]
    value = node.value
    if node.tag == "tag:yaml.org,2002:null" and value in ("", "~", "null"):
        return None
    return value
