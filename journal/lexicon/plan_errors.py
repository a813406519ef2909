"""What is wrong with a plan, in sentences that name the field and the nearest right word."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from difflib import get_close_matches

from pydantic_core import ErrorDetails

from journal.lexicon.plan_source import Place, PlanSource

_PARTS = {
    "lessons": "a lesson",
    "watch_list": "an idea on the watch-list",
    "target_terms": "a target term",
}
_WANTED = {
    "too_short": "is an empty list; give at least one",
    "string_too_short": "is empty; write something or remove the line",
    "string_type": "should be text",
    "list_type": "should be a list, one item a line, each after '- '",
    "tuple_type": "should be a list, one item a line, each after '- '",
    "dict_type": "should hold fields, each a name and a colon",
    "model_type": "should hold fields, each a name and a colon",
    "model_attributes_type": "should hold fields, each a name and a colon",
    "dataclass_type": "should hold fields, each a name and a colon",
}


def nearest_word(word: str, right: Iterable[str]) -> str | None:
    """Return the word of ``right`` that ``word`` was most likely meant to be, or None."""
    found = get_close_matches(word.lower(), sorted(right), n=1, cutoff=0.6)
    return found[0] if found else None


def did_you_mean(word: str, right: Iterable[str]) -> str:
    """Return "; did you mean 'x'?", or the words there are to choose from."""
    right = sorted(right)
    near = right[0] if len(right) == 1 else nearest_word(word, right)
    if near is not None:
        return f"; did you mean {near!r}?"
    return f"; there are {', '.join(map(repr, right))}"


def report_invalid(
    source: PlanSource, errors: Iterable[ErrorDetails], fields: Mapping[str, Iterable[str]]
) -> None:
    """Add a sentence for each error that the models raised.

    Parameters
    ----------
    source : PlanSource
        Where the sentences go.
    errors : iterable of ErrorDetails
        ``ValidationError.errors()``.
    fields : mapping of str to iterable of str
        The right names of fields for "a plan", "a lesson" and so on.
    """
    errors = [{**error, "loc": _place(error)} for error in errors]
    # A field spelt wrongly is reported once, not also as missing.
    meant = {
        (*error["loc"][:-1], nearest_word(str(error["loc"][-1]), fields[_part(error["loc"][:-1])]))
        for error in errors
        if error["type"] == "extra_forbidden"
    }
    for error in errors:
        place = error["loc"]
        name = place[-1] if place else ""
        part = _part(place[:-1])
        kind = error["type"]
        if kind == "extra_forbidden":
            what = f"{name!r} is not a field of {part}"
            source.report(place, what + did_you_mean(str(name), fields[part]))
        elif kind == "missing" and place not in meant:
            source.report(place[:-1], f"{part} needs the field {name!r}; add a line '{name}: ...'")
        elif kind == "value_error":
            source.report(place, str(error["ctx"]["error"]))
        elif kind == "too_short" and error["input"]:
            continue  # only because every item has a problem of its own
        elif kind != "missing":
            wanted = _WANTED.get(kind, error["msg"][:1].lower() + error["msg"][1:])
            if kind in ("string_type", "list_type", "tuple_type") and error["input"] is None:
                wanted = f"is empty; it {wanted}"
            source.report(place, f"{_named(place)} of {_part(place)} {wanted}")


def _place(error: ErrorDetails) -> Place:
    # Which of two kinds of listed idea was read is no part of the file.
    return tuple(name for name in error["loc"] if name not in ("named", "described"))


def _named(place: Place) -> str:
    for name in reversed(place):
        if isinstance(name, str):
            return repr(name)
    return "the whole"


def _part(place: Place) -> str:
    for at in range(len(place) - 1, -1, -1):
        name = place[at]
        if isinstance(name, str) and name in _PARTS and at + 1 < len(place):
            return _PARTS[name]
    return "a plan"
