"""Every figure that a folder's data allow; missing data are said plainly."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from pathlib import Path

from journal.errors import UnreadableFile
from journal.evaluation.connectives import measure_connectives
from journal.evaluation.data import FILES, load_jsonl, load_tsv
from journal.evaluation.figures import Figure
from journal.evaluation.levels import measure_levels
from journal.evaluation.senses import measure_senses
from journal.evaluation.spelling import measure_false_changes, measure_misspellings
from journal.evaluation.talk import measure_talk
from journal.scoring import Scorer


def measure_all(folder: Path, scorer: Scorer) -> Iterator[Figure | str]:
    """Yield a figure for each thing measured, and a sentence for each file that is missing.

    Raises
    ------
    UnreadableFile
        If there is no such folder.
    """
    if not folder.is_dir():
        raise UnreadableFile("there is no such folder; name the one with the data.", file=folder)
    measures: dict[str, Callable[[Path], list[Figure]]] = {
        "misspellings_maths_reasoning.tsv": lambda path: measure_misspellings(
            load_tsv(path), "mathematics and reasoning words"
        ),
        "misspellings.tsv": lambda path: measure_misspellings(load_tsv(path), "all words"),
        "connectives_dev.jsonl": lambda path: [
            *measure_connectives(scorer, load_jsonl(path)),
            measure_false_changes([row["text"] for row in load_jsonl(path)]),
        ],
        "maths_sense.jsonl": lambda path: measure_senses(scorer, load_jsonl(path)),
        "classroom_talk_dev.jsonl": lambda path: measure_talk(scorer, load_jsonl(path)),
        "judged.jsonl": lambda path: measure_levels(scorer, load_jsonl(path)),
    }
    for name, what in FILES.items():
        path = folder / name
        if path.is_file():
            yield from measures[name](path)
        else:
            yield f"{name} is not in {folder}: {what} not measured."
