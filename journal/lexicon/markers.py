"""The listed marker forms: what a child may reason with, and the question that settles each."""

from __future__ import annotations

import tomllib
from collections import defaultdict
from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from functools import lru_cache
from pathlib import Path
from types import MappingProxyType
from typing import Any, cast, get_args

from journal.errors import LexiconError
from journal.records import Function
from journal.resources import LEXICON

MARKERS = LEXICON / "markers.toml"
MARKER_WORDS = LEXICON / "marker_words.toml"


@dataclass(frozen=True, slots=True)
class MarkerForm:
    """One listed form.

    Parameters
    ----------
    form : str
        As it is reported.
    function : str
        Its function unless the context shows another.
    read : str
        Name of the question that settles its reading.
    words : tuple of tuple of str
        The ways it is written, in lower case, cut into words as the parser cuts them.
    note : str
        What a maintainer should know.
    """

    form: str
    function: Function
    read: str
    words: tuple[tuple[str, ...], ...]
    note: str = ""


@dataclass(frozen=True, slots=True)
class MarkerForms:
    """All listed forms, with a look-up by first word.

    Parameters
    ----------
    forms : tuple of MarkerForm
        In the order of the file.
    """

    forms: tuple[MarkerForm, ...]
    by_first_word: Mapping[str, tuple[tuple[tuple[str, ...], MarkerForm], ...]] = field(
        init=False, repr=False, compare=False
    )
    by_two_words: Mapping[tuple[str, str], tuple[tuple[tuple[str, ...], MarkerForm], ...]] = field(
        init=False, repr=False, compare=False
    )
    """Ways of writing by their first two words, longest first; one word alone is (word, "")."""

    def __post_init__(self) -> None:
        found: dict[str, list[tuple[tuple[str, ...], MarkerForm]]] = defaultdict(list)
        for form in self.forms:
            for words in form.words:
                found[words[0]].append((words, form))
        look_up = {
            first: tuple(sorted(ways, key=lambda way: -len(way[0])))
            for first, ways in found.items()
        }
        object.__setattr__(self, "by_first_word", look_up)
        pairs: dict[tuple[str, str], list[tuple[tuple[str, ...], MarkerForm]]] = defaultdict(list)
        for ways in look_up.values():
            for words, form in ways:
                pairs[words[0], words[1] if len(words) > 1 else ""].append((words, form))
        two_words = {start: tuple(ways) for start, ways in pairs.items()}
        object.__setattr__(self, "by_two_words", two_words)


@lru_cache(maxsize=4)
def load_markers(path: Path = MARKERS) -> MarkerForms:
    """Load the marker forms.

    Parameters
    ----------
    path : Path
        A TOML file with one ``[[marker]]`` table a form.

    Returns
    -------
    MarkerForms
        Shared by all callers.

    Raises
    ------
    LexiconError
        If the file is missing or broken, a form has no or an unknown function, or two forms are
        written the same way.
    """
    data = _read_toml(path)
    forms = MarkerForms(tuple(_read_form(table, path.name) for table in data.get("marker", [])))
    _check_unique(forms.forms, path.name)
    return forms


@lru_cache(maxsize=4)
def load_marker_words(path: Path = MARKER_WORDS) -> Mapping[str, frozenset[str]]:
    """Load the closed sets of words that the questions about markers look for.

    Parameters
    ----------
    path : Path
        A TOML file: the shared sets in a table ``words``, those of one module in its own table.

    Returns
    -------
    mapping of str to frozenset of str
        Shared sets by their name, the others by ``module.name``.

    Raises
    ------
    LexiconError
        If the file is missing or broken.
    """
    return MappingProxyType(
        {
            name if table == "words" else f"{table}.{name}": frozenset(words.split())
            for table, sets in _read_toml(path).items()
            for name, words in sets.items()
        }
    )


def _read_toml(path: Path) -> dict[str, Any]:
    try:
        return tomllib.loads(path.read_text(encoding="utf-8"))
    except OSError as error:
        raise LexiconError(f"{path.name} can't be read: {error.strerror}.") from error
    except tomllib.TOMLDecodeError as error:
        raise LexiconError(f"{path.name} is not valid TOML: {error}.") from error


def _read_form(table: Mapping[str, Any], file: str) -> MarkerForm:
    form = table.get("form")
    if not form:
        raise LexiconError(f"{file}: a marker has no form; add one, such as form = 'because'.")
    function = table.get("function")
    if function not in get_args(Function):
        choices = ", ".join(get_args(Function))
        raise LexiconError(f"{file}, {form!r}: function {function!r} is not one of {choices}.")
    if not table.get("read"):
        raise LexiconError(f"{file}, {form!r}: add 'read', the question that settles its reading.")
    words = tuple(tuple(way.lower().split()) for way in table.get("words", [form]))
    if not words or not all(words):
        raise LexiconError(f"{file}, {form!r}: 'words' holds an empty way of writing it.")
    return MarkerForm(form, cast(Function, function), table["read"], words, table.get("note", ""))


def _check_unique(forms: Iterable[MarkerForm], file: str) -> None:
    seen: dict[tuple[str, ...], str] = {}
    for form in forms:
        for words in form.words:
            if words in seen:
                way = " ".join(words)
                raise LexiconError(
                    f"{file}: {way!r} is listed under {seen[words]!r} and {form.form!r}; "
                    "keep one of them."
                )
            seen[words] = form.form
