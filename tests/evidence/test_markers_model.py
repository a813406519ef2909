"""The model of 'as': what is trained is what is applied."""

from __future__ import annotations

import importlib.util
import sys
from pathlib import Path
from types import ModuleType

import numpy as np
import pytest
from found_markers import ParseOf
from sklearn.feature_extraction import DictVectorizer
from sklearn.linear_model import LogisticRegression

from journal.evidence.markers.model import (
    USES,
    estimate_use,
    load_connectives,
    read_features,
    score_uses,
)
from journal.evidence.markers.reason import hint_as
from journal.evidence.markers.view import View
from journal.evidence.mathematics import Mathematics

# Invented.
SENTENCES = [
    ("As there are 4 quarters in a whole, 3 wholes are 12 quarters.", "causal"),
    ("it has to be even as it ends in 8", "causal"),
    ("I knew it was wrong as the total was too big", "causal"),
    ("We stopped as the bell rang.", "joins"),
    ("As I counted, the tower fell.", "joins"),
    ("the line gets longer as you add more squares", "joins"),
    ("We worked as a class.", "other"),
    ("I did the sum as well.", "other"),
    ("numbers such as 4 and 6 are even", "other"),
    ("He used a pencil as a ruler.", "other"),
]


@pytest.fixture(scope="module")
def training() -> ModuleType:
    path = Path(__file__).parents[2] / "models" / "train_connectives.py"
    spec = importlib.util.spec_from_file_location("train_connectives", path)
    assert spec is not None
    assert spec.loader is not None
    module = importlib.util.module_from_spec(spec)
    sys.modules[spec.name] = module
    spec.loader.exec_module(module)
    return module


def rows() -> list[dict[str, object]]:
    senses = {"causal": ["Contingency.Cause.Reason"], "joins": ["Temporal.Synchronous"]}
    return [
        {
            "form": "as",
            "text": text,
            "start": text.lower().index("as "),
            "end": text.lower().index("as ") + 2,
            "is_connective": use != "other",
            "senses": senses.get(use, []),
        }
        for text, use in SENTENCES
        if not text.startswith("numbers such")
    ]


def test_applied_scores_are_the_trained_ones(training: ModuleType) -> None:
    examples = rows()
    weights = training.train(examples)
    found = list(training.features_of(examples))
    names = DictVectorizer()
    matrix = names.fit_transform(dict.fromkeys(row, 1) for row in found)
    labels = [training.use_of(row) for row in examples]
    model = LogisticRegression(C=training.STRENGTH, class_weight=training.COSTS, max_iter=2000)
    model.fit(matrix, labels)
    order = [list(model.classes_).index(use) for use in USES]
    applied = [score_uses(weights, row) for row in found]
    # Weights are stored with three digits; about fifty of them are summed.
    assert np.allclose(model.decision_function(matrix)[:, order], applied, atol=0.05)


def test_a_row_is_stripped_as_children_write(training: ModuleType) -> None:
    row = {"text": "Yes, as it's even.", "start": 5, "end": 7}
    stripped = training.strip(row)
    assert stripped["text"] == "yes as it's even"
    assert stripped["text"][stripped["start"] : stripped["end"]] == "as"


@pytest.mark.parametrize(("text", "use"), SENTENCES)
def test_as_joins_or_not_in_plain_sentences(parse_of: ParseOf, text: str, use: str) -> None:
    parse = parse_of(text)
    view = View(parse, Mathematics([None] * len(parse)))
    at = view.words.index("as")
    estimated = estimate_use(view, at, at + 1, "as", hint_as(view, at))
    assert (estimated == "other") == (use == "other")


def test_only_function_words_are_features(parse_of: ParseOf) -> None:
    parse = parse_of("the hexagon tessellates as hexagons do")
    view = View(parse, Mathematics([None] * len(parse)))
    assert not any("hexagon" in name for name in read_features(view, 3, 4))


def test_model_is_named() -> None:
    assert load_connectives().id == "connectives-2"
