"""One entry explained in the terminal: the marked words, the evidence, the path."""

from __future__ import annotations

import re

from rich.console import Console
from rich.table import Table
from rich.text import Text

from journal.levels import NOT_SCORED, NOT_YET_CHECKED, QUESTIONS, describe_decision
from journal.records import Score, Step
from journal.reports.marking import find_look_alikes, find_marks, find_notes, quote, split_runs

_CONTROL = re.compile("[\x00-\x08\x0b-\x1f\x7f-\x9f\u202a-\u202e\u2066-\u2069]")
_STYLES = {"reason": "bold underline2", "result": "bold underline2", "learning": "italic"}
_ANSWERS = {True: "yes", False: "no", None: "not known"}


def show_explanation(score: Score, console: Console | None = None) -> None:
    """Print one entry with its evidence and the path to each level.

    The marks can be read without colour: each is followed by its kind, as in becuse‹reason›.
    """
    console = console or Console(highlight=False, soft_wrap=True)
    console.print(Text(_headline(score), style="bold"))
    console.print()
    console.print(_mark_text(score))
    console.print()
    if score.has_worry:
        for flag in score.flags:
            console.print(Text(f"Marked for {quote(flag.surface)}. It was not scored."))
        return
    if score.not_scored_because is not None:
        console.print(Text(f"Not scored: {NOT_SCORED[score.not_scored_because]}."))
    _show_list(console, "Evidence", [(m.kind, score.text[m.start : m.end], m.why)
                                     for m in find_marks(score)])  # fmt: skip
    _show_list(console, "In the margin", [(f"{n.words} for {n.explains}" if n.explains else n.words,
               score.text[n.start : n.end], n.why) for n in find_notes(score)])  # fmt: skip
    _show_list(console, "Read and not counted", [(n.kind.replace("_", " "),
               score.text[n.start : n.end], n.why) for n in find_look_alikes(score)])  # fmt: skip
    _show_list(console, "Spelling read as", [(item.read_as, item.surface, item.why)
                                             for item in score.spelling])  # fmt: skip
    for strand, part in (("reasoning", score.reasoning), ("metacognition", score.metacognition)):
        _show_path(console, strand, part.level, part.rule, part.path)


def _headline(score: Score) -> str:
    source = score.source
    parts = [f"Entry {score.entry_id}", source.pupil, source.date, source.unit]
    if source.lesson:
        parts.append(f"lesson {source.lesson}")
    return clean(", ".join(part for part in parts if part))


def _mark_text(score: Score) -> Text:
    marked = Text()
    for run in split_runs(score, find_marks(score)):
        if run.given:
            style = "dim"
        else:
            style = " ".join(_STYLES.get(kind, "underline") for kind in run.kinds[:1])
        marked.append(clean(run.text), style)
        for kind in reversed(run.closing):
            marked.append(f"‹{'word' if kind == 'vocabulary' else kind}›", "dim")
    return marked


def _show_list(console: Console, title: str, rows: list[tuple[str, str, str]]) -> None:
    if not rows:
        return
    console.print(Text(title, style="bold"))
    table = Table(box=None, show_header=False, pad_edge=False)
    for kind, words, why in rows:
        table.add_row(Text(f"  {clean(kind)}"), Text(clean(quote(words))), Text(clean(why)))
    console.print(table)
    console.print()


def _show_path(
    console: Console, strand: str, level: int | None, rule: str | None, path: tuple[Step, ...]
) -> None:
    words = describe_decision(strand, level, rule)
    if words is None:
        return
    console.print(Text(f"{strand.capitalize()}: {words} (level {level})", style="bold"))
    console.print(Text(f"  {NOT_YET_CHECKED}"))
    for step in path:
        near = "; a small change would turn this" if step.near else ""
        console.print(
            Text(f"  {step.question} {QUESTIONS[step.question]} {_ANSWERS[step.answer]}{near}")
        )
        if step.why:
            console.print(Text(f"     {clean(step.why)}"))
    console.print()


def clean(words: str) -> str:
    """Return words with control characters as U+FFFD: same length, safe for a terminal."""
    # A child's text may hold anything; the terminal must not obey it.
    return _CONTROL.sub("\ufffd", words)
