"""A folder of annotated files is measured as far as it goes. All lines here are invented."""

from __future__ import annotations

import json
from pathlib import Path

import pytest
from typer.testing import CliRunner

from journal.cli import app
from journal.errors import UnreadableFile
from journal.evaluation.connectives import as_a_child_types
from journal.evaluation.figures import Figure
from journal.evaluation.run import measure_all
from journal.scoring import Scorer

CAUSE = "Contingency.Cause.Reason"


@pytest.fixture(scope="module")
def folder(tmp_path_factory: pytest.TempPathFactory) -> Path:
    data = tmp_path_factory.mktemp("annotated")
    (data / "misspellings.tsv").write_text(
        "correct\tmisspelling\tsource\nbecause\tbecos\tinvented\nfraction\tfracshun\tinvented\n"
    )
    _save(
        data / "connectives_dev.jsonl",
        _occurrence(
            "It is even because it ends in 8.", "because", True, ["Contingency.Cause.Reason"]
        ),
        _occurrence("It was so hard today.", "so", False, []),
        _occurrence("I added ten so I got 30.", "so", True, ["Contingency.Cause.Result"]),
    )
    _save(
        data / "maths_sense.jsonl",
        {"text": "We sat at the table for lunch.", "start": 14, "end": 19, "maths": False},
        {"text": "12 is in the four times table.", "start": 24, "end": 29, "maths": True},
    )
    _save(
        data / "classroom_talk_dev.jsonl",
        {"text": "It is 12 because 3 times 4 is 12.", "label_name": "providing_evidence_reasoning"},
        {"text": "Can I go first?", "label_name": "none"},
    )
    _save(
        data / "judged.jsonl",
        {"text": "It was fun and I liked it.", "level_a": 0, "level_b": 0},
        {"text": "I knew 48 was even because it ends in 8.", "level_a": 2, "level_b": 0},
        {"text": "We cut the bar into three quarters.", "level_a": 1, "level_b": None},
    )
    return data


def _save(path: Path, *rows: object) -> None:
    path.write_text("\n".join(json.dumps(row) for row in rows), encoding="utf-8")


def _occurrence(text: str, form: str, is_connective: bool, senses: list[str]) -> dict[str, object]:
    start = text.index(form)
    return {
        "text": text,
        "form": form,
        "start": start,
        "end": start + len(form),
        "is_connective": is_connective,
        "senses": senses,
        "altlex": False,
    }


@pytest.fixture(scope="module")
def found(folder: Path) -> list[Figure | str]:
    return list(measure_all(folder, Scorer()))


def _value(found: list[Figure | str], what: str) -> float | None:
    return next(f.value for f in found if isinstance(f, Figure) and f.what.startswith(what))


@pytest.mark.parametrize(
    ("what", "value"),
    [
        ("all words: misspelling read", 1.0),
        ("all words: of the changes", 1.0),
        ("connective or not, because, as written", 1.0),
        ("connective or not, so, lower case", 1.0),
        ("causal or not, without then and for, as written", 1.0),
        ("ordinary text: words changed", 0.0),
        ("everyday uses of mathematical words counted", 0.0),
        ("mathematical uses counted", 1.0),
        ("level 2 or more", 1.0),
        ("level of reasoning", 1.0),
    ],
)
def test_plain_cases_are_all_right(found: list[Figure | str], what: str, value: float) -> None:
    assert _value(found, what) == value


def test_metacognition_at_one_level_only_has_no_kappa(found: list[Figure | str]) -> None:
    assert _value(found, "level of metacognition") is None


def test_a_missing_file_is_said_plainly(found: list[Figure | str]) -> None:
    missing = [item for item in found if isinstance(item, str)]
    assert len(missing) == 1
    assert missing[0].startswith("misspellings_maths_reasoning.tsv is not in")


def test_a_missing_folder_is_one_clear_sentence(tmp_path: Path) -> None:
    with pytest.raises(UnreadableFile, match="no such folder"):
        list(measure_all(tmp_path / "none", Scorer()))


def test_a_broken_line_is_named(tmp_path: Path) -> None:
    (tmp_path / "judged.jsonl").write_text('{"text": "It is 8."}\n{"text": \n')
    with pytest.raises(UnreadableFile, match="line 2: is not JSON"):
        list(measure_all(tmp_path, Scorer()))


def test_levels_without_judgements_give_no_figure(tmp_path: Path) -> None:
    _save(tmp_path / "judged.jsonl", {"text": "It is even because it ends in 8."})
    assert all(isinstance(item, str) for item in measure_all(tmp_path, Scorer()))


def test_typing_like_a_child_moves_no_offset() -> None:
    text = "It’s even, because (I think) it ends in 8!"
    assert len(as_a_child_types(text)) == len(text)
    assert as_a_child_types("So, 50%!") == "so  50% "


def test_the_command_prints_a_table(folder: Path) -> None:
    result = CliRunner().invoke(app, ["evaluate", "--data", str(folder)])
    assert result.exit_code == 0
    assert "baselines" in result.output


def test_the_command_prints_json(folder: Path) -> None:
    result = CliRunner().invoke(app, ["evaluate", "--data", str(folder), "--json"])
    shown = json.loads(result.stdout)
    assert {"what", "measure", "value", "size", "target", "baselines"} == set(shown[0])


def test_the_command_says_where_there_is_no_folder(tmp_path: Path) -> None:
    result = CliRunner().invoke(app, ["evaluate", "--data", str(tmp_path / "none")])
    assert result.exit_code == 2
    assert "no such folder" in result.output
