"""Levels under changes that change no meaning, over every judged sentence (all invented).

A change of wording may turn a level now and then; the share allowed is what was measured, rounded
up. An opening "because" makes a fragment an answer to a question nobody gave, so it turns most.
"""

from __future__ import annotations

import csv
import re
from collections.abc import Callable

import pytest
from judged import DATA, load_scorer

SWAPS = {"bigger": "larger", "pieces": "parts", "makes": "gives", "because": "since"}


def read_sentences() -> list[tuple[str, str | None]]:
    found = []
    for name in ("judged_tuning", "judged_held_out", "judged_second_held_out", "judged_fresh"):
        with (DATA / f"{name}.csv").open(encoding="utf-8", newline="") as file:
            rows = csv.DictReader(line for line in file if not line.startswith("#"))
            found += [(r["text"], r.get("prompt") or None) for r in rows if r["strand"] == "A"]
    return found


SENTENCES = read_sentences()


def level(text: str, prompt: str | None) -> int | None:
    return load_scorer().score(text, prompt=prompt).reasoning.level


def swap(text: str) -> str:
    for word, other in SWAPS.items():
        text = re.sub(rf"\b{word}\b", other, text)
    return text


@pytest.mark.parametrize(
    ("change", "allowed"),
    [
        pytest.param(lambda t: f"because {t}", 0.20, id="because in front"),
        pytest.param(lambda t: f"{t.rstrip('.')} because", 0.02, id="because left hanging"),
        pytest.param(lambda t: f"{t.rstrip('.')}. {t}", 0.04, id="written twice"),
        pytest.param(
            lambda t: f"{t.rstrip('.')}. fraction, numerator, denominator, equal, whole",
            0.04,
            id="word bank pasted behind",
        ),
        pytest.param(str.lower, 0.03, id="lower case"),
        pytest.param(lambda t: re.sub(r"[.,;!](?!\d)", "", t), 0.06, id="no punctuation"),
        pytest.param(swap, 0.06, id="other words for the same"),
        pytest.param(lambda t: t.replace("because", "cos"), 0.02, id="cos"),
    ],
)
def test_a_change_without_meaning_seldom_turns_a_level(
    change: Callable[[str], str], allowed: float
) -> None:
    changed = [(text, prompt) for text, prompt in SENTENCES if change(text) != text]
    before = [level(text, prompt) for text, prompt in changed]
    after = [level(change(text), prompt) for text, prompt in changed]
    turned = [
        (text, a, b)
        for (text, _), a, b in zip(changed, before, after, strict=True)
        # Pasted words name mathematics where there was none (A1).
        if a is not None and b is not None and a != b and (a, b) != (0, 1)
    ]
    assert len(turned) / len(changed) <= allowed, turned
