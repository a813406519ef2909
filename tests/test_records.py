"""The score record and its JSON Schema are one."""

from __future__ import annotations

from dataclasses import fields, is_dataclass

from journal import records
from journal.records import Score, record_schema


def test_every_record_is_frozen_and_slotted() -> None:
    for name in dir(records):
        thing = getattr(records, name)
        if isinstance(thing, type) and is_dataclass(thing):
            assert thing.__dataclass_params__.frozen, name  # type: ignore[attr-defined]
            assert "__slots__" in vars(thing), name


def test_the_schema_requires_every_key() -> None:
    schema = record_schema()
    assert set(schema["required"]) == {f.name for f in fields(Score)}
    for part in schema["$defs"].values():
        assert set(part["required"]) == set(part["properties"])


def test_the_schema_allows_no_other_key() -> None:
    schema = record_schema()
    assert all(
        part["additionalProperties"] is False for part in (schema, *schema["$defs"].values())
    )
