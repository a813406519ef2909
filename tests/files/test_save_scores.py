"""Scores out: whole or not at all, nothing taken for a formula, no worry in a table."""

from __future__ import annotations

import csv
import json
from collections.abc import Iterator
from pathlib import Path

import openpyxl
import pyarrow.parquet as pq
import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st
from made_scores import TEXT, make_score, make_worry

from journal.errors import UnreadableFile
from journal.files import Saved, save_scores
from journal.files.flat import COLUMNS, flatten_score
from journal.files.write import write_lines
from journal.records import Score, Source

TABLES = (".csv", ".xlsx", ".parquet")


def _read(path: Path) -> list[dict[str, object]]:
    if path.suffix == ".csv":
        with path.open(encoding="utf-8-sig", newline="") as file:
            return list(csv.DictReader(file))
    if path.suffix == ".parquet":
        return pq.read_table(path).to_pylist()
    rows = list(openpyxl.load_workbook(path).active.iter_rows(values_only=True))  # type: ignore[union-attr]
    return [dict(zip(rows[0], row, strict=True)) for row in rows[1:]]


def test_json_lines_hold_the_whole_record(tmp_path: Path) -> None:
    save_scores([make_score(pupil="Zoë")], tmp_path / "out.jsonl")
    line = (tmp_path / "out.jsonl").read_text(encoding="utf-8")
    assert json.loads(line) == make_score(pupil="Zoë").to_dict()
    assert "Zoë" in line


@pytest.mark.parametrize("suffix", TABLES)
def test_a_table_has_one_row_an_entry(suffix: str, tmp_path: Path) -> None:
    saved = save_scores([make_score("1"), make_score("2")], tmp_path / f"out{suffix}")
    rows = _read(tmp_path / f"out{suffix}")
    assert saved.written == 2
    assert [row["entry_id"] for row in rows] == ["1", "2"]
    assert [str(row["reasoning_level"]) for row in rows] == ["2", "2"]
    assert rows[0]["target_terms_used"] == "half"
    assert rows[0]["grounded_reasons"] == "the bottom number is smaller"
    assert rows[0]["claims_to_check"] == "7x8 = 54 (= 56)"
    assert str(rows[0]["markers_comparison"]) == "1"


def test_every_level_says_that_it_is_not_checked_yet() -> None:
    assert "not yet checked" in flatten_score(make_score())["levels_are"]


def test_the_columns_are_the_same_for_every_entry() -> None:
    assert list(flatten_score(make_score())) == list(COLUMNS)


@pytest.mark.parametrize("suffix", TABLES)
def test_an_entry_with_a_worry_is_in_no_table(suffix: str, tmp_path: Path) -> None:
    saved = save_scores([make_worry(), make_score("2")], tmp_path / f"out{suffix}")
    assert [row["entry_id"] for row in _read(tmp_path / f"out{suffix}")] == ["2"]
    assert (saved.written, saved.to_read_first) == (1, 1)


def test_an_entry_with_a_worry_has_its_record(tmp_path: Path) -> None:
    saved = save_scores([make_worry()], tmp_path / "out.jsonl")
    record = json.loads((tmp_path / "out.jsonl").read_text(encoding="utf-8"))
    assert record["not_scored_because"] == "worry"
    assert saved.to_read_first == 1


def test_an_entry_with_a_worry_is_not_shown_on_a_screen() -> None:
    saved = Saved()
    lines = list(write_lines([make_worry(), make_score("2")], saved, on_screen=True))
    assert [json.loads(line)["entry_id"] for line in lines] == ["2"]
    assert (saved.written, saved.to_read_first) == (1, 1)


FORMULAS = ["=1+1", "+1", "-1", "@SUM(A1)", "\t=1", '=HYPERLINK("x")']


@pytest.mark.parametrize("words", FORMULAS)
def test_words_never_become_a_formula_in_a_workbook(words: str, tmp_path: Path) -> None:
    save_scores([make_score(pupil=words)], tmp_path / "out.xlsx")
    cell = openpyxl.load_workbook(tmp_path / "out.xlsx").active["B2"]  # type: ignore[index]
    assert (cell.data_type, cell.value) == ("s", words)


@pytest.mark.parametrize("words", FORMULAS)
def test_words_that_look_like_a_formula_get_an_apostrophe_in_csv(
    words: str, tmp_path: Path
) -> None:
    save_scores([make_score(pupil=words)], tmp_path / "out.csv")
    assert _read(tmp_path / "out.csv")[0]["pupil"] == f"'{words}"


def _fails_after(score: Score) -> Iterator[Score]:
    yield score
    raise RuntimeError("power cut")


@pytest.mark.parametrize("suffix", [".jsonl", *TABLES])
def test_a_failure_leaves_the_old_file_and_nothing_else(suffix: str, tmp_path: Path) -> None:
    path = tmp_path / f"out{suffix}"
    path.write_bytes(b"old")
    with pytest.raises(RuntimeError):
        save_scores(_fails_after(make_score()), path)
    assert path.read_bytes() == b"old"
    assert list(tmp_path.iterdir()) == [path]


def test_a_link_stays_a_link(tmp_path: Path) -> None:
    (tmp_path / "real.jsonl").write_text("old")
    (tmp_path / "link.jsonl").symlink_to(tmp_path / "real.jsonl")
    save_scores([make_score()], tmp_path / "link.jsonl")
    assert (tmp_path / "link.jsonl").is_symlink()
    assert TEXT in (tmp_path / "real.jsonl").read_text()


@pytest.mark.parametrize("name", ["out.doc", "out", "missing/out.csv"])
def test_what_can_not_be_written_is_refused_before_any_work(name: str, tmp_path: Path) -> None:
    with pytest.raises(UnreadableFile):
        save_scores(_fails_after(make_score()), tmp_path / name)


NAMES = st.text(
    st.characters(blacklist_categories=("Cs", "Cc"), blacklist_characters="\ufffe\uffff"),
    min_size=1,
    max_size=40,
)


@pytest.mark.parametrize("suffix", TABLES)
@settings(max_examples=25, suppress_health_check=[HealthCheck.function_scoped_fixture])
@given(pupil=NAMES)
def test_any_words_come_back_from_a_table(suffix: str, pupil: str, tmp_path: Path) -> None:
    path = tmp_path / f"out{suffix}"
    save_scores([make_score(source=Source(pupil=pupil))], path)
    read = str(_read(path)[0]["pupil"])
    assert read == pupil or (suffix == ".csv" and read == f"'{pupil}")


def test_characters_that_a_workbook_can_not_hold_do_not_stop_it(tmp_path: Path) -> None:
    save_scores([make_score(pupil="A\x0bv\uffffa")], tmp_path / "out.xlsx")
    assert _read(tmp_path / "out.xlsx")[0]["pupil"] == "A\ufffdv\ufffda"
