"""How fast the scorer is, beside what it stands on.

Run with ``make bench``. Times are CPU seconds of this process; the ratio is the median over
interleaved rounds on the same texts, so that a machine that slows down slows both.
"""

from __future__ import annotations

import csv
import json
import resource
import statistics
import subprocess
import sys
import time
from collections.abc import Callable
from concurrent.futures import ThreadPoolExecutor

import spacy
from rich.console import Console
from rich.table import Table

import journal.language  # noqa: F401 - settles the threads of arithmetic before numpy loads
from journal import Scorer
from journal.language.pipeline import find_model, load_pipeline
from journal.resources import shipped_folder

ROUNDS = 7


def load_texts() -> list[str]:
    """Return the texts of the invented class."""
    path = shipped_folder("demo_entries") / "entries.csv"
    with path.open(encoding="utf-8", newline="") as file:
        return [row["text"] for row in csv.DictReader(file)]


def cpu_seconds(work: Callable[[], object]) -> float:
    """Return the CPU seconds that one call takes."""
    start = time.process_time()
    work()
    return time.process_time() - start


def median_ratio(first: Callable[[], object], second: Callable[[], object]) -> tuple[float, float]:
    """Return the median ratio first / second over interleaved rounds, and the first's median."""
    first(), second()
    pairs = [(cpu_seconds(first), cpu_seconds(second)) for _ in range(ROUNDS)]
    return (
        statistics.median(a / b for a, b in pairs),
        statistics.median(a for a, _ in pairs),
    )


def wall_seconds(scorer: Scorer, texts: list[str], workers: int) -> float:
    """Return the wall seconds to score the texts, workers started beforehand."""
    start = time.perf_counter()
    for _ in scorer.score_many(({"text": text} for text in texts), workers=workers):
        pass
    return time.perf_counter() - start


def cold_start() -> float:
    """Return the wall seconds from starting Python to the first score."""
    code = "from journal import Scorer; Scorer().score('It is even because it ends in 8.')"
    times = []
    for _ in range(5):
        start = time.perf_counter()
        subprocess.run([sys.executable, "-c", code], check=True)
        times.append(time.perf_counter() - start)
    return statistics.median(times)


def main() -> None:
    """Measure everything and print it as a table and as JSON."""
    texts = load_texts()
    scorer = Scorer()
    ours = load_pipeline()

    def score_all() -> None:
        for _ in scorer.score_many({"text": text} for text in texts):
            pass

    # The stock parse uses the arithmetic that spaCy chooses by itself, in a thread of its own,
    # because the choice is kept per thread.
    with ThreadPoolExecutor(1) as stock_thread:
        stock = stock_thread.submit(spacy.load, find_model(), exclude=["ner"]).result()

        def stock_all() -> None:
            stock_thread.submit(lambda: [None for _ in stock.pipe(texts, batch_size=64)]).result()

        against_stock, full = median_ratio(score_all, stock_all)
    against_own, _ = median_ratio(
        score_all, lambda: [None for _ in ours.pipe(texts, batch_size=64)]
    )
    singles = sorted(cpu_seconds(lambda text=text: scorer.score(text)) for text in texts)
    many = texts * 6
    one = wall_seconds(scorer, many, workers=1)
    two = wall_seconds(scorer, many, workers=2)
    rows = {
        "entries": len(texts),
        "full score / stock parse without names (CPU, median; aim 0.70)": round(against_stock, 3),
        "full score / our own parse (CPU, median)": round(against_own, 3),
        "entries a second, one process": round(len(texts) / full, 1),
        "single entry p50, ms": round(1000 * singles[len(singles) // 2], 2),
        "single entry p95, ms": round(1000 * singles[int(len(singles) * 0.95)], 2),
        "cold start to first score, s (aim 1.5)": round(cold_start(), 2),
        "peak memory, MB (aim 300)": resource.getrusage(resource.RUSAGE_SELF).ru_maxrss // 1024,
        "two workers, times one (wall; aim 1.35)": round(one / two, 2),
    }
    table = Table("what", "figure")
    for name, value in rows.items():
        table.add_row(name, str(value))
    console = Console()
    console.print(table)
    console.print_json(json.dumps(rows))


if __name__ == "__main__":
    main()
