"""The command line, in-process with scores made by hand: quick, and of one thing at a time."""

from __future__ import annotations

import io
import json
from collections.abc import Iterator, Sequence
from dataclasses import replace
from pathlib import Path
from typing import Any

import pytest
from made_scores import NONE, TEXT, make_score, make_worry
from typer.testing import CliRunner, Result

from journal import __version__
from journal.cli import app
from journal.cli.running import show_progress
from journal.files import load_entries
from journal.records import Entry, Reasoning, Score

SECRET = make_worry().text


class MadeScorer:
    """Stands in for the scorer: the known text gets its evidence, the secret one its worry."""

    def __init__(self) -> None:
        self.entries: list[Entry] = []
        self.plans: list[Any] = []

    def score_many(self, entries: Sequence[Entry], *, plan: Any, workers: int) -> Iterator[Score]:
        for entry in entries:
            self.entries.append(entry)
            self.plans.append(plan)
            if entry.text == "stop":
                raise KeyboardInterrupt
            yield _score(entry)


def _score(entry: Entry) -> Score:
    if entry.text == SECRET:
        return make_worry(entry.entry_id, entry.pupil or "Wren")
    if entry.text == TEXT:
        return make_score(entry.entry_id, entry.pupil)
    score = make_score(entry.entry_id, entry.pupil, text=entry.text, vocabulary=(), informal=())
    return replace(
        score, spelling=(), markers=(), reasons=(), claims=(), flags=(), metacognition=NONE,
        reasoning=Reasoning(None, None, "rules", None, ()),
    )  # fmt: skip


@pytest.fixture
def scorer(monkeypatch: pytest.MonkeyPatch) -> MadeScorer:
    made = MadeScorer()
    monkeypatch.setattr("journal.cli.running.make_scorer", lambda: made)
    return made


@pytest.fixture
def entries(tmp_path: Path) -> Path:
    path = tmp_path / "class.csv"
    path.write_text(
        f'id,pupil,reflection\n17,Ava,"{TEXT}"\n18,Ben,I know it\n99,Wren,{SECRET}\n',
        encoding="utf-8",
    )
    return path


def run(*args: object, **extra: Any) -> Result:
    return CliRunner().invoke(app, [str(arg) for arg in args], **extra)


def test_the_version_is_said() -> None:
    assert run("--version").output == f"journal {__version__}\n"


@pytest.mark.parametrize(
    "command", ["score", "explain", "report", "demo", "schema", "plan check", "lexicon show"]
)
def test_the_help_of_each_command_has_an_example(command: str) -> None:
    result = run(*command.split(), "--help")
    assert result.exit_code == 0
    assert f"  journal {command}" in result.output


def test_records_go_to_standard_output_and_nothing_else_does(
    scorer: MadeScorer, entries: Path
) -> None:
    result = run("score", entries)
    assert result.exit_code == 0
    records = [json.loads(line) for line in result.stdout.splitlines()]
    assert [record["entry_id"] for record in records] == ["17", "18", "99"]
    assert "text from 'reflection'" in result.stderr


@pytest.mark.parametrize("data", ["reflection\nI know\n", '{"text": "I know"}\n'])
def test_standard_input_is_scored(data: str, scorer: MadeScorer) -> None:
    result = run("score", "-", input=data)
    assert json.loads(result.stdout)["text"] == "I know"


def test_a_file_is_written_and_named(scorer: MadeScorer, entries: Path, tmp_path: Path) -> None:
    result = run("score", entries, "--out", tmp_path / "out.csv")
    assert result.exit_code == 0
    assert result.stdout == ""
    assert (tmp_path / "out.csv").read_text(encoding="utf-8-sig").count("\n") == 3


def test_entries_to_read_first_are_only_counted(scorer: MadeScorer, entries: Path) -> None:
    result = run("score", entries)
    assert "1 entry to read first: journal explain" in result.stderr
    assert SECRET not in result.stderr
    assert "Wren" not in result.stderr


def test_rows_left_out_are_named_and_end_with_three(scorer: MadeScorer, tmp_path: Path) -> None:
    path = tmp_path / "class.csv"
    path.write_text("id,text,mode\n1,I know,typed\n2,me too,sung\n", encoding="utf-8")
    result = run("score", path)
    assert result.exit_code == 3
    assert "line 3, column 'mode': 'sung' is not a mode" in result.stderr
    assert len(result.stdout.splitlines()) == 1


@pytest.mark.parametrize(
    ("name", "content", "word"),
    [
        ("class.csv", b"", "empty"),
        ("class.csv", b"colour\nred\n", "no column"),
        ("class.csv", b"id,text\n1,a\n1,b\n", "twice"),
        ("class.odt", b"x", "can't be read"),
        ("class.xlsx", b"x", "damaged"),
        ("class.xlsx", b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1", "password"),
        ("missing.csv", None, "no such file"),
    ],
)
@pytest.mark.parametrize("command", ["score", "report"])
def test_what_can_not_be_done_is_one_sentence_and_two(
    command: str, name: str, content: bytes | None, word: str, tmp_path: Path, scorer: MadeScorer
) -> None:
    if content is not None:
        (tmp_path / name).write_bytes(content)
    result = run(command, tmp_path / name)
    assert result.exit_code == 2
    assert word in result.stderr
    assert len(result.stderr.splitlines()) == 1
    assert result.stdout == ""


def test_the_file_of_entries_is_never_written_over(scorer: MadeScorer, entries: Path) -> None:
    before = entries.read_bytes()
    assert run("score", entries, "--out", entries).exit_code == 2
    assert entries.read_bytes() == before


@pytest.mark.parametrize(("option", "value"), [("--year", "9"), ("--mode", "sung")])
def test_an_option_that_can_not_be_read_is_refused(
    option: str, value: str, entries: Path, scorer: MadeScorer
) -> None:
    result = run("score", entries, option, value)
    assert result.exit_code == 2
    assert value in result.stderr


def test_options_speak_for_entries_that_do_not(scorer: MadeScorer, tmp_path: Path) -> None:
    path = tmp_path / "class.csv"
    path.write_text("text,year,lesson\nI know,,\nI see,3,2\n", encoding="utf-8")
    run("score", path, "--year", "Y5", "--lesson", "1", "--mode", "dictated")
    said = [(entry.year, entry.lesson, entry.mode) for entry in scorer.entries]
    assert said == [(5, "1", "dictated"), (3, "2", "dictated")]


PLAN = """
id: {id}
title: Invented unit
unit: {id}
year: 4
domain: fractions
target_terms: [half]
lessons:
  - {{id: "1", focus: halves, prompt: "Why?", target_terms: [half]}}
"""


def test_a_folder_of_plans_serves_each_unit(scorer: MadeScorer, tmp_path: Path) -> None:
    for name in ("fractions", "angles"):
        (tmp_path / f"{name}.yaml").write_text(PLAN.format(id=name), encoding="utf-8")
    path = tmp_path / "class.csv"
    path.write_text("text,unit\na,Angles\nb,fractions\nc,other\n", encoding="utf-8")
    result = run("score", path, "--plan", tmp_path)
    assert result.exit_code == 0, result.stderr
    assert [plan and plan.id for plan in scorer.plans] == ["angles", "fractions", None]


def test_a_plan_with_nothing_to_put_right_is_summed_up(tmp_path: Path) -> None:
    (tmp_path / "plan.yaml").write_text(PLAN.format(id="fractions"), encoding="utf-8")
    result = run("plan", "check", tmp_path / "plan.yaml")
    assert result.exit_code == 0, result.stderr
    assert "nothing to put right" in result.stdout


def test_every_problem_of_a_plan_is_a_sentence(tmp_path: Path) -> None:
    text = PLAN.format(id="fractions").replace("year: 4", "year: 40").replace("title:", "titel:")
    (tmp_path / "plan.yaml").write_text(text, encoding="utf-8")
    result = run("plan", "check", tmp_path / "plan.yaml")
    assert result.exit_code == 2
    assert "titel" in result.stderr
    assert "40" in result.stderr


def test_an_entry_is_explained_with_its_marks_and_its_path(
    scorer: MadeScorer, entries: Path
) -> None:
    result = run("explain", entries, "--entry", "17")
    assert result.exit_code == 0
    assert "bigger then‹comparison›" in result.stdout
    assert "becuse‹reason›" in result.stdout
    assert "Reasoning: a reason, not yet linked: A3a (level 2)" in result.stdout
    assert "not yet checked against your school's judgements" in result.stdout
    assert "A2 Is there a reason about the mathematics? yes" in result.stdout
    assert "“is smaller” is another use" in result.stdout


def test_a_terminal_never_obeys_a_text(scorer: MadeScorer, tmp_path: Path) -> None:
    path = tmp_path / "class.jsonl"
    path.write_text(json.dumps({"text": "\x1b]0;x\x07 [bold]a[/bold]"}), encoding="utf-8")
    result = run("explain", path, "--entry", "1")
    assert "\x1b" not in result.stdout
    assert "[bold]a[/bold]" in result.stdout


def test_an_unknown_entry_is_said_with_those_there_are(scorer: MadeScorer, entries: Path) -> None:
    result = run("explain", entries, "--entry", "3")
    assert result.exit_code == 2
    assert "there is no entry '3'; there are 17, 18, 99." in result.stderr


@pytest.mark.parametrize(
    ("answer", "shown"), [("n\n", False), ("", False), ("y\n", True)], ids=["no", "nothing", "yes"]
)
@pytest.mark.parametrize("which", [("--entry", "99"), ("--read-first",)])
def test_an_entry_to_read_first_is_shown_only_after_a_yes(
    which: tuple[str, ...], answer: str, shown: bool, scorer: MadeScorer, entries: Path
) -> None:
    result = run("explain", entries, *which, input=answer)
    assert "designated safeguarding lead" in result.stderr
    assert (SECRET in result.output) is shown


def test_yes_is_taken_for_an_answer(scorer: MadeScorer, entries: Path) -> None:
    result = run("explain", entries, "--entry", "99", "--yes")
    assert SECRET in result.stdout
    assert "safeguarding" in result.stderr


def test_a_report_is_written_whole(scorer: MadeScorer, entries: Path, tmp_path: Path) -> None:
    result = run("report", entries, "--out", tmp_path / "report.html")
    assert result.exit_code == 0
    page = (tmp_path / "report.html").read_text(encoding="utf-8")
    assert page.endswith("</html>")
    assert SECRET not in page
    assert "Wren" not in page


def test_a_stop_leaves_the_old_report(scorer: MadeScorer, tmp_path: Path) -> None:
    (tmp_path / "class.csv").write_text("text\nI know\nstop\n", encoding="utf-8")
    (tmp_path / "report.html").write_text("old", encoding="utf-8")
    result = run("report", tmp_path / "class.csv", "--out", tmp_path / "report.html")
    assert result.exit_code == 130
    assert "Stopped" in result.stderr
    assert (tmp_path / "report.html").read_text(encoding="utf-8") == "old"


def test_a_fault_shows_no_traceback_and_no_words_of_a_child(
    monkeypatch: pytest.MonkeyPatch, entries: Path
) -> None:
    def fail() -> None:
        raise ValueError("I know it")

    monkeypatch.setattr("journal.cli.running.make_scorer", fail)
    result = run("score", entries)
    assert result.exit_code == 1
    assert "A fault in the program stopped this (ValueError in test_cli.py" in result.stderr
    assert "I know it" not in result.stderr
    assert "Traceback" not in result.stderr


def test_an_entry_and_all_to_read_first_can_not_both_be_asked_for(entries: Path) -> None:
    assert run("explain", entries).exit_code == 2
    assert run("explain", entries, "--entry", "17", "--read-first").exit_code == 2


def test_nothing_to_read_first_is_said_with_a_caution(scorer: MadeScorer, tmp_path: Path) -> None:
    (tmp_path / "class.csv").write_text("text\nI know\n", encoding="utf-8")
    result = run("explain", tmp_path / "class.csv", "--read-first")
    assert "Every entry still needs a reader." in result.stdout


def test_a_bar_is_shown_where_standard_error_is_a_terminal(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    class Terminal(io.StringIO):
        def isatty(self) -> bool:
            return True

    seen = Terminal()
    monkeypatch.setattr("sys.stderr", seen)
    monkeypatch.setenv("TERM", "xterm")
    scores = [make_score("1"), make_score("2")]
    assert list(show_progress(iter(scores), 2)) == scores
    assert "Reading entries" in seen.getvalue()


def test_a_folder_without_plans_is_refused(entries: Path, tmp_path: Path) -> None:
    (tmp_path / "plans").mkdir()
    result = run("score", entries, "--plan", tmp_path / "plans")
    assert result.exit_code == 2
    assert "holds no plans" in result.stderr


def test_a_report_folder_that_can_not_be_made_is_refused(
    scorer: MadeScorer, tmp_path: Path
) -> None:
    (tmp_path / "taken").write_text("a file")
    result = run("demo", "--out", tmp_path / "taken")
    assert result.exit_code == 2


def test_the_schema_describes_the_record() -> None:
    import jsonschema

    schema = json.loads(run("schema").stdout)
    jsonschema.validate(make_score().to_dict(), schema)


def test_the_lexicon_is_shown_by_year_and_domain() -> None:
    shown = run("lexicon", "show", "--year", "4", "--domain", "fractions").stdout
    assert "unit fraction" in shown
    assert "perimeter" not in shown


def test_an_unknown_domain_is_said_with_those_there_are() -> None:
    result = run("lexicon", "show", "--domain", "alchemy")
    assert result.exit_code == 2
    assert "geometry" in result.stderr


def test_the_demo_shows_tables_and_says_where_the_report_is(
    scorer: MadeScorer, tmp_path: Path
) -> None:
    result = run("demo", "--out", tmp_path / "shown")
    assert result.exit_code == 0, result.stderr
    assert "By pupil" in result.stdout
    assert "By word" in result.stdout
    page = tmp_path / "shown" / "report.html"
    assert str(page) in result.stdout
    assert page.is_file()


def test_a_table_of_entries_can_be_read_again_from_its_records(
    scorer: MadeScorer, entries: Path, tmp_path: Path
) -> None:
    run("score", entries, "--out", tmp_path / "scores.jsonl")
    again = load_entries(tmp_path / "scores.jsonl").entries
    assert [entry.text for entry in again] == [e.text for e in load_entries(entries).entries]
