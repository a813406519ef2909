"""A mapping becomes an entry, or the sentence says why not."""

from __future__ import annotations

from typing import Any

import pytest

from journal.entries import make_entry, read_mode, read_spans, read_terms, read_year
from journal.errors import InputError


def test_a_mapping_with_text_alone_is_an_entry() -> None:
    entry = make_entry({"text": "It is even."}, entry_id="7")
    assert (entry.entry_id, entry.text, entry.target_terms) == ("7", "It is even.", None)


def test_the_text_is_never_altered() -> None:
    assert make_entry({"text": "  it’s\t8 \n"}).text == "  it’s\t8 \n"


@pytest.mark.parametrize("row", [{}, {"text": None}, {"text": 8}])
def test_an_entry_without_text_is_refused(row: dict[str, Any]) -> None:
    with pytest.raises(InputError, match="text"):
        make_entry(row)


@pytest.mark.parametrize(
    ("value", "terms"),
    [
        ("denominator; numerator ;", ("denominator", "numerator")),
        (["half"], ("half",)),
        (None, ()),
        ("", ()),
    ],
)
def test_terms_are_a_list_or_text_with_semicolons(value: Any, terms: tuple[str, ...]) -> None:
    assert read_terms(value) == terms


@pytest.mark.parametrize("value", [7, [1, 2]])
def test_terms_that_are_no_words_are_refused(value: Any) -> None:
    with pytest.raises(InputError, match="semicolons"):
        read_terms(value)


@pytest.mark.parametrize(
    ("value", "year"),
    [(4, 4), ("4", 4), ("Y4", 4), ("Year 4", 4), ("R", 0), ("Reception", 0), (4.0, 4), ("", None)],
)
def test_a_year_is_read_as_schools_write_it(value: Any, year: int | None) -> None:
    assert read_year(value) == year


@pytest.mark.parametrize("value", ["9", "four", -1])
def test_what_is_no_year_is_refused(value: Any) -> None:
    with pytest.raises(InputError, match="school year"):
        read_year(value)


@pytest.mark.parametrize(("value", "mode"), [("Scribed", "scribed"), (None, None), (" ", None)])
def test_a_mode_is_read_in_any_case(value: Any, mode: str | None) -> None:
    assert read_mode(value) == mode


def test_an_unknown_mode_is_refused_with_the_known_ones() -> None:
    with pytest.raises(InputError, match="typed, scribed, dictated"):
        read_mode("sung")


def test_spans_are_pairs_or_start_and_end() -> None:
    assert read_spans([[0, 2], {"start": 3, "end": 4}], length=5) == ((0, 2), (3, 4))


@pytest.mark.parametrize("item", [[0], [0, 9], [3, 1], ["a", 2]])
def test_a_span_outside_the_text_is_refused(item: Any) -> None:
    with pytest.raises(InputError, match="inside the text"):
        read_spans([item], length=5)
