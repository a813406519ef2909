"""Train the model of connectives: ``python models/train_connectives.py TRAIN.jsonl DEV.jsonl``.

Each line of the files is one occurrence of a form: ``text``, ``start``, ``end``, ``form``,
``is_connective`` and ``senses`` (PDTB labels). The files are made from the GUM corpus and are not
shipped; see ``connectives.md`` for the source and its licence.
"""

from __future__ import annotations

import argparse
import json
import re
import string
from collections.abc import Iterator
from pathlib import Path
from typing import Any

from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

from journal.evidence.markers.model import USES, read_features, score_uses
from journal.evidence.markers.reason import hint_as, hint_since
from journal.evidence.markers.view import View
from journal.evidence.mathematics import Mathematics
from journal.language.parse import read_parse
from journal.language.pipeline import load_pipeline
from journal.text.normalise import find_spacing_edits, normalise_characters
from journal.text.offsets import OffsetMap

HINTS = {"as": hint_as, "since": hint_since}
"""The forms where rules alone are weak, with what the words alone make of each."""

STRENGTH = 0.1
"""Inverse of the penalty on the weights: small, since features outnumber occurrences.
Chosen, with the costs, by five-fold cross-validation on the training part."""

COSTS = {"other": 1.0, "joins": 1.5, "causal": 1.5}
"""What a missed occurrence of each use costs, since joining is the rarer use."""

DIGITS = 3
HERE = Path(__file__).parent


def read_rows(path: Path, forms: tuple[str, ...]) -> list[dict[str, Any]]:
    """Read the occurrences of the forms, each as written and lower-cased without punctuation."""
    rows = []
    for line in path.read_text(encoding="utf-8").splitlines():
        row = json.loads(line)
        row["form"] = row["form"].lower()
        if row["form"] in forms:
            rows += [row, strip(row)]
    return rows


def strip(row: dict[str, Any]) -> dict[str, Any]:
    """Lower-case a row's text and take its punctuation away, as children write."""
    text: list[str] = []
    start = end = 0
    for at, sign in enumerate(row["text"]):
        if at == row["start"]:
            start = len(text)
        if at == row["end"]:
            end = len(text)
        if sign not in string.punctuation.replace("'", "") + "“”—–":
            text.append(sign.lower())
    return {**row, "text": "".join(text), "start": start, "end": end or len(text)}


def use_of(row: dict[str, Any]) -> str:
    """Return the row's label: another use, joins, or joins a cause and its effect."""
    if row.get("altlex"):
        return "causal"
    if not row["is_connective"]:
        return "other"
    return "causal" if any("Cause" in sense for sense in row["senses"]) else "joins"


def features_of(rows: list[dict[str, Any]]) -> Iterator[list[str]]:
    """Parse the rows and name the features of each occurrence."""
    maps = []
    for row in rows:
        clean = normalise_characters(row["text"])
        maps.append(OffsetMap(row["text"], find_spacing_edits(clean), clean))
    docs = load_pipeline().pipe([offsets.working for offsets in maps], batch_size=64)
    for row, offsets, doc in zip(rows, maps, docs, strict=True):
        parse = read_parse(doc, offsets)
        first, after = parse.tokens_in(row["start"], row["end"])
        view = View(parse, Mathematics([None] * len(parse)))
        found = read_features(view, first, max(after, first + 1))
        yield [f"hint={HINTS[row['form']](view, first)}", *found]


def train(rows: list[dict[str, Any]]) -> dict[str, list[float]]:
    """Return one weight a use for each feature, rounded, zeros left out."""
    names = DictVectorizer()
    matrix = names.fit_transform(dict.fromkeys(found, 1) for found in features_of(rows))
    labels = [use_of(row) for row in rows]
    model = LogisticRegression(C=STRENGTH, class_weight=COSTS, max_iter=2000).fit(matrix, labels)
    order = [list(model.classes_).index(use) for use in USES]
    weights = {"(bias)": [round(float(model.intercept_[k]), DIGITS) for k in order]}
    for column, name in enumerate(names.get_feature_names_out()):
        row = [round(float(model.coef_[k, column]), DIGITS) for k in order]
        if any(row):
            weights[str(name)] = row
    return weights


def measure(weights: dict[str, list[float]], rows: list[dict[str, Any]]) -> dict[str, float]:
    """Return F1 of joining or not, and of causal or not."""
    said = [
        max(zip(score_uses(weights, found), USES, strict=True))[1] for found in features_of(rows)
    ]
    meant = [use_of(row) for row in rows]
    return {
        "connective": _f1([use != "other" for use in meant], [use != "other" for use in said]),
        "causal": _f1([use == "causal" for use in meant], [use == "causal" for use in said]),
    }


def _f1(meant: list[bool], said: list[bool]) -> float:
    both = sum(a and b for a, b in zip(meant, said, strict=True))
    return round(2 * both / max(1, sum(meant) + sum(said)), 3)


def write_rows(record: dict[str, Any]) -> str:
    """Return the record as JSON with the weights of one feature on a line."""
    text = json.dumps(record, indent=1, ensure_ascii=False, sort_keys=True)
    return re.sub(r"\[\s+([^\[\]]*?)\s+\]", lambda m: f"[{' '.join(m[1].split())}]", text) + "\n"


def main() -> None:
    """Train on the first file, measure on the second, write ``connectives.json``."""
    parser = argparse.ArgumentParser(description=__doc__)
    parser.add_argument("train", type=Path)
    parser.add_argument("dev", type=Path)
    given = parser.parse_args()
    record: dict[str, Any] = {
        "id": "connectives-2",
        "uses": list(USES),
        "data": "GUM corpus, discourse annotations, CC-BY 4.0",
        "measured": {},
        "weights": {},
    }
    for form in HINTS:
        record["weights"][form] = train(read_rows(given.train, (form,)))
        dev = read_rows(given.dev, (form,))
        record["measured"][form] = {
            "as written": measure(record["weights"][form], dev[::2]),
            "lower case, no punctuation": measure(record["weights"][form], dev[1::2]),
        }
    (HERE / "connectives.json").write_text(write_rows(record), encoding="utf-8")
    print(json.dumps(record["measured"], indent=1))  # noqa: T201


if __name__ == "__main__":
    main()
