"""The records that pass between rooms, and the score record itself (schema 1).

All offsets are Python string indices (code points) into ``Score.text``, exactly as it was given,
end exclusive: ``text[start:end] == surface``. Every key is always present; unknown is ``None``.
"""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, fields, is_dataclass
from typing import Any, Literal, TypeAlias

SCHEMA = 1

Span: TypeAlias = tuple[int, int]
"""Start and end in the original text: Python string indices, end exclusive."""

Mode: TypeAlias = Literal["typed", "scribed", "dictated"]
NotScored: TypeAlias = Literal["empty", "too_short", "not_english", "unreadable", "worry"]
ExcludedWhy: TypeAlias = Literal["adult_prompt", "inserted"]
SpellingKind: TypeAlias = Literal["non_word", "real_word", "split", "join"]
TermKind: TypeAlias = Literal["target", "earlier", "curriculum"]
TermForm: TypeAlias = Literal["exact", "inflected", "derived", "variant", "symbol", "misspelt"]
Sense: TypeAlias = Literal["mathematical", "everyday", "unsure"]
Function: TypeAlias = Literal[
    "reason",
    "result",
    "condition",
    "comparison",
    "contrast",
    "generalisation",
    "evidence",
    "certainty",
]
Reading: TypeAlias = Literal[
    "reasoning", "no_mathematics", "narrative", "echo", "mention", "look_alike"
]
Role: TypeAlias = Literal["grounds", "link", "check", "counter_example", "limit"]
Ground: TypeAlias = Literal["mathematical", "procedural", "circular", "not_mathematical"]
Verdict: TypeAlias = Literal["true", "false", "undecided"]
Question: TypeAlias = Literal["A1", "A2", "A3a", "A3b", "A4a", "A4b", "B1", "B2", "B3"]
MetacognitionKind: TypeAlias = Literal[
    "feeling", "difficulty", "strategy", "check", "change", "next"
]
FlagKind: TypeAlias = Literal[
    "help",
    "idea_to_check",
    "worry",
    "echo",
    "word_bank",
    "keyword_string",
    "not_english",
    "conjecture_to_test",
]


@dataclass(frozen=True, slots=True)
class Entry:
    """One reflection with what was set for it: the input of the scorer.

    ``inserted`` holds the spans of ``text`` put in by tapping a word or a sentence starter.
    ``worry_released`` says that an adult has read the entry and found no cause for worry.
    """

    text: str
    entry_id: str = "1"
    pupil: str | None = None
    date: str | None = None
    unit: str | None = None
    lesson: str | None = None
    year: int | None = None
    prompt: str | None = None
    mode: Mode | None = None
    revision: int = 1
    after_next_step: bool = False
    worry_released: bool = False
    target_terms: tuple[str, ...] | None = None
    word_bank: tuple[str, ...] = ()
    sentence_starters: tuple[str, ...] = ()
    inserted: tuple[Span, ...] = ()


@dataclass(frozen=True, slots=True)
class Source:
    """Where an entry comes from, as far as it is known."""

    pupil: str | None = None
    date: str | None = None
    unit: str | None = None
    lesson: str | None = None
    year: int | None = None
    prompt: str | None = None
    mode: Mode | None = None
    revision: int = 1
    after_next_step: bool = False


@dataclass(frozen=True, slots=True)
class PlanReference:
    """Which plan served, by its id and the hash of its content."""

    id: str
    sha256: str


@dataclass(frozen=True, slots=True)
class ScorerVersion:
    """Everything that decided the score beside the text: same versions, same score."""

    version: str
    language_model: str
    lexicon: str
    rubric: str
    models: tuple[str, ...] = ()


@dataclass(frozen=True, slots=True)
class Excluded:
    """A stretch that is not the child's own: an adult's prompt, or words put in by a tap."""

    start: int
    end: int
    why: ExcludedWhy


@dataclass(frozen=True, slots=True)
class Spelling:
    """A stretch read as another word; the original is never altered."""

    start: int
    end: int
    surface: str
    read_as: str
    kind: SpellingKind
    why: str


@dataclass(frozen=True, slots=True)
class VocabularyUse:
    """One use of a mathematical term, with the sense it is used in."""

    term: str
    start: int
    end: int
    surface: str
    kind: TermKind
    form: TermForm
    sense: Sense
    echo: bool
    counted: bool
    in_reason: bool
    why: str


@dataclass(frozen=True, slots=True)
class InformalUse:
    """An informal form, beside the formal term it stands for."""

    start: int
    end: int
    surface: str
    formal: str


@dataclass(frozen=True, slots=True)
class Marker:
    """One occurrence of a listed form, with its function and how it is read here."""

    start: int
    end: int
    surface: str
    form: str
    function: Function
    reading: Reading
    counted: bool
    why: str


@dataclass(frozen=True, slots=True)
class Reason:
    """A statement of why or how it follows.

    ``marker`` and ``supports`` are indices into the score's markers and reasons.
    """

    marker: int | None
    claim: Span | None
    reason: Span
    role: Role
    supports: int | None
    ground: Ground
    why: str


@dataclass(frozen=True, slots=True)
class Claim:
    """A statement that can be worked out.

    ``verdict`` is about the statement, ``asserted`` about the child.
    """

    start: int
    end: int
    surface: str
    verdict: Verdict
    asserted: bool
    central: bool
    computed: str | None


@dataclass(frozen=True, slots=True)
class Step:
    """One question of the rubric with its answer, the deciding spans and the words to show."""

    question: Question
    answer: bool | None
    near: bool
    spans: tuple[Span, ...]
    why: str


@dataclass(frozen=True, slots=True)
class Reasoning:
    """Strand A: the suggested level, the rule that decided it, and the path to it."""

    level: int | None
    level_by_rules: int | None
    level_by: str
    rule: str | None
    path: tuple[Step, ...]
    probabilities: tuple[float, ...] | None = None


@dataclass(frozen=True, slots=True)
class MetacognitionEvidence:
    """Words about the pupil's own knowing, feeling, strategy or next step."""

    start: int
    end: int
    surface: str
    kind: MetacognitionKind


@dataclass(frozen=True, slots=True)
class Metacognition:
    """Strand B: the suggested level, the rule that decided it, and the path to it."""

    level: int | None
    rule: str | None
    path: tuple[Step, ...]
    evidence: tuple[MetacognitionEvidence, ...]


@dataclass(frozen=True, slots=True)
class Flag:
    """Something for an adult to look at today. ``claim`` is an index into the score's claims."""

    kind: FlagKind
    start: int
    end: int
    surface: str
    idea: str | None
    claim: int | None
    why: str


@dataclass(frozen=True, slots=True)
class Score:
    """The score record of one entry: evidence for a teacher's judgement, never a verdict."""

    entry_id: str
    text: str
    words: int
    source: Source
    plan: PlanReference | None
    targets: tuple[str, ...]
    scorer: ScorerVersion
    scored: bool
    not_scored_because: NotScored | None
    excluded: tuple[Excluded, ...]
    spelling: tuple[Spelling, ...]
    vocabulary: tuple[VocabularyUse, ...]
    informal: tuple[InformalUse, ...]
    markers: tuple[Marker, ...]
    reasons: tuple[Reason, ...]
    claims: tuple[Claim, ...]
    reasoning: Reasoning
    metacognition: Metacognition
    flags: tuple[Flag, ...]
    schema: Literal[1] = field(default=1)

    @property
    def has_worry(self) -> bool:
        """Whether an adult has to read this entry before anything else is done with it."""
        return self.not_scored_because == "worry" or any(f.kind == "worry" for f in self.flags)

    def to_dict(self) -> dict[str, Any]:
        """Return the record as plain dicts, lists, numbers and strings, ready for JSON.

        Returns
        -------
        dict
            The score record of schema 1, ``schema`` first.
        """
        record: dict[str, Any] = {"schema": self.schema}
        record.update(_plain(self))
        return record


def _plain(value: Any) -> Any:
    if is_dataclass(value) and not isinstance(value, type):
        return {f.name: _plain(getattr(value, f.name)) for f in fields(value)}
    if isinstance(value, (tuple, list)):
        return [_plain(item) for item in value]
    if isinstance(value, Mapping):
        return {key: _plain(item) for key, item in value.items()}
    return value


def record_schema() -> dict[str, Any]:
    """Return the JSON Schema (draft 2020-12) of the score record.

    Returns
    -------
    dict
        Made from the dataclasses above, so that schema and record can't drift apart.
    """
    # Imported here: reading records needs no validator.
    from pydantic import TypeAdapter

    schema = TypeAdapter(Score).json_schema(mode="serialization")
    schema["$schema"] = "https://json-schema.org/draft/2020-12/schema"
    _require_every_key(schema)
    return schema


def _require_every_key(schema: dict[str, Any]) -> None:
    for part in (schema, *schema.get("$defs", {}).values()):
        if "properties" in part:
            part["required"] = list(part["properties"])
            part["additionalProperties"] = False
