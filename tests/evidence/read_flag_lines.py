"""Invented lines for each kind of flag, with what was set for them."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path

from journal.records import Flag
from journal.scoring import Scorer

FOLDER = Path(__file__).parent / "flag_lines"
LATER = ("_second", "_third", "_fourth", "_fifth", "_sixth", "_seventh")
KINDS = sorted(
    path.stem for path in FOLDER.glob("*.txt") if "_" + path.stem.rsplit("_", 1)[-1] not in LATER
)


@dataclass(frozen=True)
class Line:
    """A line, whether it should be flagged (as which idea), and whether it is held out."""

    wanted: bool
    text: str
    idea: str | None
    held_out: bool
    prompt: str | None
    starters: tuple[str, ...]
    bank: tuple[str, ...]

    def is_flagged(self, scorer: Scorer, kind: str) -> bool:
        flags = [flag for flag in self.flags(scorer) if flag.kind == kind]
        if self.idea == "claim":
            return any(flag.claim is not None for flag in flags)
        return any(self.idea in (None, flag.idea) for flag in flags)

    def flags(self, scorer: Scorer) -> tuple[Flag, ...]:
        return scorer.score(
            self.text,
            prompt=self.prompt,
            word_bank=self.bank,
            sentence_starters=self.starters,
        ).flags


def read_lines(name: str) -> Iterator[Line]:
    """Read a file of lines; every second one of each sign is held out from tuning."""
    prompt, starters, bank = None, [], ()
    seen = {"+": 0, "-": 0}
    for row in (FOLDER / f"{name}.txt").read_text(encoding="utf-8").splitlines():
        sign, rest = row[:1], row[2:]
        if sign == "P":
            prompt, starters = rest, []
        elif sign == "S":
            starters.append(rest)
        elif sign == "W":
            bank = tuple(item.strip() for item in rest.split(","))
        elif sign in seen:
            idea, _, text = rest.rpartition(" | ")
            held_out = bool(seen[sign] % 2)
            seen[sign] += 1
            yield Line(sign == "+", text, idea or None, held_out, prompt, tuple(starters), bank)


def rate(scorer: Scorer, kind: str, lines: list[Line]) -> float:
    """Return the share of lines that carry the flag."""
    return sum(line.is_flagged(scorer, kind) for line in lines) / len(lines)
