"""Schemas by which pupils speak of their own knowing and learning."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from dataclasses import dataclass
from functools import lru_cache
from itertools import chain
from typing import Any, cast

from journal.records import MetacognitionKind
from journal.resources import LEXICON

FILE = "metacognition.toml"
SCHEMAS = ("metacognition_knowing.toml", "metacognition_acting.toml")
_CLASS = re.compile(r"<(\w+)>")
# Where a word ends in a pattern, it may carry the sign of a word that speaks of mathematics.
_WORD_END = re.compile(r"(?<!\\)([a-z])(?=[ |)$]|\\b)")
_CLOSING = re.compile(r"(?<=[?)])\\b")
_NEVER = re.compile(r"(?!)")
_ANYTHING = re.compile("")


@dataclass(frozen=True, slots=True)
class Schema:
    """One way of commenting on own learning, tried where one of its words stands.

    Parameters
    ----------
    kind : MetacognitionKind
        What the comment is.
    before, not_before : pattern
        Searched in the words of the clause before the word.
    after, not_after : pattern
        Matched at the words that follow in the sentence.
    previous : pattern
        Searched in the clause before.
    later : pattern
        Searched in what follows, over the end of the sentence.
    joint : str or None
        What joins the clause to the one before.
    when : str or None
        A question that needs the parse.
    """

    kind: MetacognitionKind
    before: re.Pattern[str]
    after: re.Pattern[str]
    not_before: re.Pattern[str]
    not_after: re.Pattern[str]
    previous: re.Pattern[str]
    later: re.Pattern[str]
    joint: str | None
    when: str | None


@dataclass(frozen=True, slots=True)
class OwnLearning:
    """How pupils speak of their own knowing and learning.

    Parameters
    ----------
    schemas : mapping of str to tuple of Schema
        The schemas to try at a word, by the word.
    prompts : mapping of kind to pattern
        What in a prompt asks for a kind of comment.
    tasks : frozenset of str
        Nouns that stand for the work set.
    deciding : mapping of str to pattern
        What makes a comment specific or regulating, by name.
    topics, vague_nouns : frozenset of str
        What names no piece of mathematics: topics as `Lines` says them, lemmas of nouns.
    """

    schemas: Mapping[str, tuple[Schema, ...]]
    prompts: Mapping[MetacognitionKind, re.Pattern[str]]
    tasks: frozenset[str]
    deciding: Mapping[str, re.Pattern[str]]
    topics: frozenset[str]
    vague_nouns: frozenset[str]


@lru_cache(maxsize=1)
def load_metacognition() -> OwnLearning:
    """Return the schemas of `SCHEMAS`, with what they share, by the words that call for them.

    Returns
    -------
    OwnLearning
        Every ``<class>`` is written out in its patterns.
    """
    data = _read(FILE)
    classes: dict[str, str] = data.pop("classes")
    prompts = {
        cast("MetacognitionKind", kind): re.compile(pattern)
        for kind, pattern in data.pop("prompts").items()
    }
    deciding = {name: _compile(pattern, classes) for name, pattern in data.pop("deciding").items()}
    named = {name: frozenset(words.split()) for name, words in data.pop("named").items()}
    schemas: dict[str, tuple[Schema, ...]] = {}
    for kind, many in chain.from_iterable(_read(name).items() for name in SCHEMAS):
        for one in many:
            schema = _read_schema(cast("MetacognitionKind", kind), one, classes)
            for word in _spell_out(one["words"], classes).replace("|", " ").split():
                word = word.strip("(?:)")
                schemas[word] = (*schemas.get(word, ()), schema)
    return OwnLearning(
        schemas=schemas,
        prompts=prompts,
        tasks=frozenset(classes["task"].split("|")),
        deciding=deciding,
        topics=named["topics"],
        vague_nouns=named["vague_nouns"],
    )


def _read(name: str) -> dict[str, Any]:
    return tomllib.loads((LEXICON / name).read_text(encoding="utf-8"))


def _read_schema(
    kind: MetacognitionKind, one: Mapping[str, Any], classes: Mapping[str, str]
) -> Schema:
    def compiled(name: str, otherwise: re.Pattern[str]) -> re.Pattern[str]:
        return _compile(one[name], classes) if name in one else otherwise

    return Schema(
        kind=kind,
        before=compiled("before", _ANYTHING),
        after=compiled("after", _ANYTHING),
        not_before=compiled("not_before", _NEVER),
        not_after=compiled("not_after", _NEVER),
        previous=compiled("previous", _ANYTHING),
        later=compiled("later", _ANYTHING),
        joint=one.get("joint"),
        when=one.get("when"),
    )


def _spell_out(pattern: str, classes: Mapping[str, str]) -> str:
    return _CLASS.sub(lambda match: f"(?:{classes[match[1]]})", pattern)


def _compile(pattern: str, classes: Mapping[str, str]) -> re.Pattern[str]:
    marked = _WORD_END.sub(r"\1#?", _spell_out(pattern, classes))
    return re.compile(_CLOSING.sub(r"(?!\\w)", marked))
