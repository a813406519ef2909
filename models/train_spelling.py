"""Train the weights of the speller: ``python models/train_spelling.py TRAIN.tsv``.

Each line of the file is a spelling, the word it stands for (empty if it is a name or a word that
the list rightly lacks) and how much the line counts. The file is not shipped; see ``spelling.md``
for what it is made from.
"""

from __future__ import annotations

import argparse
import json
from pathlib import Path

import numpy as np
from scipy.optimize import minimize

from journal.lexicon.words import load_speller
from journal.text.spelling.likelihood import read_none_features

HERE = Path(__file__).parent
PENALTY = 1e-4
"""Of the squared weights, for each line."""
DIGITS = 3

Line = tuple[str, str, float]


def read_lines(path: Path) -> list[Line]:
    """Read spelling, word and how much the line counts."""
    rows = (line.split("\t") for line in path.read_text(encoding="utf-8").splitlines())
    return [(spelling, word, float(counts)) for spelling, word, counts in rows]


def train(lines: list[Line]) -> dict[str, dict[str, float]]:
    """Return the weights that make the right readings likeliest."""
    speller = load_speller()
    rows, nones, sizes, right, counts = [], [], [], [], []
    names: list[str] = []
    for spelling, word, weight in lines:
        found = speller.find_features(spelling)
        words = [candidate for candidate, _ in found]
        if not found or (word and word not in words):
            continue
        names = names or list(found[0][1])
        rows += [list(features.values()) for _, features in found]
        nones.append(read_none_features(spelling, speller.words))
        sizes.append(len(found))
        right.append(words.index(word) if word else -1)
        counts.append(weight)
    x = np.array(rows)
    z = np.array([list(none.values()) for none in nones])
    size, target, weight_of = np.array(sizes), np.array(right), np.array(counts)
    starts = np.cumsum(size) - size
    line = np.repeat(np.arange(len(size)), size)
    chosen = target >= 0
    at = (starts + target)[chosen]
    width = x.shape[1]

    def loss(weights: np.ndarray) -> tuple[float, np.ndarray]:
        word, none = x @ weights[:width], z @ weights[width:]
        most = np.maximum(np.maximum.reduceat(word, starts), none)
        power, blank = np.exp(word - most[line]), np.exp(none - most)
        total = np.add.reduceat(power, starts) + blank
        score = none.copy()
        score[chosen] = word[at]
        fit = weight_of @ (score - most - np.log(total))
        missed = -(power / total[line]) * weight_of[line]
        missed[at] += weight_of[chosen]
        blanked = (~chosen - blank / total) * weight_of
        slope = np.concatenate([missed @ x, blanked @ z])
        shrink = PENALTY * len(size)
        return -fit + shrink * (weights @ weights) / 2, -slope + shrink * weights

    found = minimize(loss, np.zeros(width + z.shape[1]), jac=True, method="L-BFGS-B")
    values = [round(float(value), DIGITS) for value in found.x]
    return {
        "word": dict(zip(names, values[:width], strict=True)),
        "none": dict(zip(nones[0], values[width:], strict=True)),
    }


def main() -> None:
    """Train and write ``spelling.json`` beside this script."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("train", type=Path)
    trained = {"id": "spelling-1"} | train(read_lines(parser.parse_args().train))
    (HERE / "spelling.json").write_text(json.dumps(trained, indent=1) + "\n", encoding="utf-8")


if __name__ == "__main__":
    main()
