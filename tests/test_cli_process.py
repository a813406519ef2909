"""The command as a person starts it: a real process with the real scorer."""

from __future__ import annotations

import json
import os
import signal
import subprocess
import sys
import time
from pathlib import Path

import pytest

JOURNAL = (sys.executable, "-m", "journal")
# Invented.
LINES = (
    '{"text": "a half is bigger than a third becuse you cut it in less parts", "entry_id": "a"}\n'
    "not json\n"
    '{"text": "We did fractions ½", "entry_id": "b"}\n'
)


def run(*args: object, stdin: str = "") -> subprocess.CompletedProcess[str]:
    # No UTF-8 mode and no English locale: records are UTF-8 all the same.
    return subprocess.run(
        [*JOURNAL, *map(str, args)],
        input=stdin.encode(),
        capture_output=True,
        check=False,
        env={**os.environ, "PYTHONUTF8": "0", "LC_ALL": "C"},
    )  # type: ignore[return-value]


@pytest.fixture(scope="module")
def scored() -> subprocess.CompletedProcess[bytes]:
    return run("score", "-", stdin=LINES)  # type: ignore[return-value]


def test_records_come_out_of_a_pipe_one_a_line(
    scored: subprocess.CompletedProcess[bytes],
) -> None:
    records = [json.loads(line) for line in scored.stdout.decode("utf-8").splitlines()]
    assert [record["entry_id"] for record in records] == ["a", "b"]
    assert records[1]["text"] == "We did fractions ½"
    for marker in records[0]["markers"]:
        assert records[0]["text"][marker["start"] : marker["end"]] == marker["surface"]


def test_a_row_left_out_ends_with_three(scored: subprocess.CompletedProcess[bytes]) -> None:
    assert scored.returncode == 3
    assert b"standard input, line 2: the line is not valid JSON" in scored.stderr


def test_no_progress_bar_where_nobody_sees_it(scored: subprocess.CompletedProcess[bytes]) -> None:
    assert b"\x1b" not in scored.stderr
    assert b"Reading entries" not in scored.stderr


def test_a_reader_that_goes_away_is_no_trouble(tmp_path: Path) -> None:
    lines = "".join(f'{{"text": "I know {n} is even", "entry_id": "{n}"}}\n' for n in range(900))
    (tmp_path / "many.jsonl").write_text(lines, encoding="utf-8")
    process = subprocess.Popen(
        [*JOURNAL, "score", str(tmp_path / "many.jsonl")],
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    assert process.stdout is not None
    assert process.stderr is not None
    process.stdout.readline()
    process.stdout.close()
    errors = process.stderr.read().decode()
    process.stderr.close()
    assert process.wait(timeout=60) == 141
    assert "Traceback" not in errors
    assert "Error" not in errors


def test_ctrl_c_ends_with_a_sentence(tmp_path: Path) -> None:
    process = subprocess.Popen(
        [*JOURNAL, "score", "-", "--out", str(tmp_path / "out.csv")],
        stdin=subprocess.PIPE,
        stdout=subprocess.PIPE,
        stderr=subprocess.PIPE,
    )
    time.sleep(1.5)
    process.send_signal(signal.SIGINT)
    _, errors = process.communicate(timeout=60)
    assert process.returncode == 130
    assert errors.decode().splitlines() == ["Stopped; no file was changed."]
    assert list(tmp_path.iterdir()) == []


@pytest.mark.parametrize(
    ("command", "heavy"),
    [
        ("journal.cli", {"spacy", "pandas", "numpy", "openpyxl", "pyarrow", "docx"}),
        ("journal.files", {"spacy", "pandas", "numpy", "openpyxl", "pyarrow", "docx", "rich"}),
    ],
)
def test_the_command_starts_light(command: str, heavy: set[str]) -> None:
    code = f"import {command}, sys; print(*sys.modules)"
    shown = subprocess.run(
        [sys.executable, "-c", code], check=True, capture_output=True, text=True
    ).stdout
    assert not {name.split(".")[0] for name in shown.split()} & heavy


def test_scoring_to_json_lines_loads_no_table_library(tmp_path: Path) -> None:
    (tmp_path / "a.csv").write_text("text\nI know\n", encoding="utf-8")
    code = (
        "import sys; from journal.cli import app\n"
        f"app(['score', {str(tmp_path / 'a.csv')!r}, '--out', {str(tmp_path / 'o.jsonl')!r}], "
        "standalone_mode=False)\nprint(*sys.modules)"
    )
    shown = subprocess.run(
        [sys.executable, "-c", code], check=True, capture_output=True, text=True
    ).stdout
    loaded = {name.split(".")[0] for name in shown.split()}
    assert not loaded & {"pandas", "openpyxl", "pyarrow", "docx", "webvtt", "sklearn"}
