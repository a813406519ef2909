"""The fast pipeline gives the annotations of the official model, token for token."""

from __future__ import annotations

import csv
import hashlib
from importlib.util import find_spec
from pathlib import Path

import pytest
import spacy
from spacy.language import Language
from spacy.tokens import Doc

from journal.errors import ModelMissing
from journal.language import attributes
from journal.language import pipeline as pipeline_room
from journal.language.parse import read_parse
from journal.language.pipeline import describe_model, find_model, load_pipeline, parse_texts
from journal.resources import shipped_folder
from journal.text.offsets import OffsetMap

# SHA-256 of the weights in the wheel of en_core_web_sm 3.8.0 as published by Explosion
# (github.com/explosion/spacy-models, release en_core_web_sm-3.8.0).
WEIGHTS = {
    "parser/model": "e0098910535a863d430082ece57455d5fa071cd4ca3a0054e80582076c752b1e",
    "tok2vec/model": "e84fc06eb319c94d28e460fc334e292120b01f18baa5dc8b50c977459820a090",
    "tagger/model": "1ec3d93f38cebe172f2b5c89d84be72856ce42c8f1a64f1699f1d98a771f36b7",
}

TEXTS = [
    "I knew 48 was even because it ends in 8.",
    "first i did 3 times 5 then i got 15 so i wrote it down and i was so happy",
    "Let's say there are 4 sides. I'm gonna check: y'all got 7? It ain't right.",
    "7x8 = 56 and 3/4 of 12 is 9   it's the same as 50%\n\n½ is bigger than ⅓!",
    "There is a remainder, there's two left over. You've gotta exchange c'mon.",
    "",
    "🙂 my angle is acute. مرحبا the vertices weren't equal; he'd thought it'd be 90°",
]


# Invented: each of the model's patterns of two tokens, and the same words without their partner.
PAIRS = [
    "let us see and let 's add", "Let me say it, let's go", "i got ten and gotta check, got ta go",
    "it ai n't even, it aint odd, ai is a word", "gon na add, gonna add, gon",
    "c'm on then", "y all know and y is 4, y'all and y' all", "there is one and there are two",
    "there's a half, there were quarters, there're more and there was none",
    "there must be an answer is there", "It is clear that there  are\n\n two halves",
]  # fmt: skip


def _entries() -> list[str]:
    file = shipped_folder("demo_entries") / "entries.csv"
    with file.open(encoding="utf-8", newline="") as rows:
        return [row["text"] for row in csv.DictReader(rows)][:300]


Annotation = tuple[str, str, str, int, str, str, str, bool | None]


def _annotations(doc: Doc) -> list[Annotation]:
    return [
        (t.text, t.tag_, t.dep_, t.head.i, t.pos_, t.lemma_, str(t.morph), t.is_sent_start)
        for t in doc
    ]


def _weights() -> Path:
    name = find_model()
    spec = find_spec(name)
    assert spec is not None
    assert spec.origin is not None
    return Path(spec.origin).parent / f"{name}-3.8.0"


@pytest.mark.parametrize("part", sorted(WEIGHTS))
def test_the_models_weights_are_the_official_ones(part: str) -> None:
    assert hashlib.sha256((_weights() / part).read_bytes()).hexdigest() == WEIGHTS[part]


def test_memoised_attributes_are_identical_to_the_models_own(pipeline: Language) -> None:
    stock = spacy.load(find_model(), exclude=["ner", "senter"])
    # Twice, so that the second pass is answered from the memo.
    texts = [*TEXTS, *PAIRS, *_entries()]
    theirs = [_annotations(doc) for doc in stock.pipe(texts)]
    for _ in range(2):
        assert [_annotations(doc) for doc in pipeline.pipe(texts)] == theirs


def test_a_full_memo_of_attributes_is_emptied(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(attributes, "_MEMO_LIMIT", 1)
    nlp = spacy.load(find_model(), exclude=["ner", "senter"])
    attributes.memoise_attributes(nlp)
    texts = ["I knew it was even.", "A half is bigger than a third."]
    once = [_annotations(nlp(text)) for text in texts]
    assert [_annotations(nlp(text)) for text in texts] == once


def test_no_names_are_looked_for(pipeline: Language) -> None:
    assert "ner" not in pipeline.pipe_names


def test_the_pipeline_is_loaded_once() -> None:
    assert load_pipeline() is load_pipeline()


def test_the_official_package_is_preferred(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(pipeline_room, "find_spec", lambda name: object())
    assert find_model() == "en_core_web_sm"


def test_a_missing_model_is_said_with_the_remedy(monkeypatch: pytest.MonkeyPatch) -> None:
    monkeypatch.setattr(pipeline_room, "find_spec", lambda name: None)
    with pytest.raises(ModelMissing, match="make setup"):
        find_model()


def test_the_models_name_and_version_are_known(pipeline: Language) -> None:
    assert describe_model(pipeline).endswith(" 3.8.0")


def test_many_texts_parse_as_one_by_one(pipeline: Language) -> None:
    together = parse_texts(pipeline, ((OffsetMap(text), ()) for text in TEXTS), batch=2)
    for text, parse in zip(TEXTS, together, strict=True):
        alone = read_parse(pipeline(text), OffsetMap(text))
        assert [(t.text, t.dep, t.head) for t in parse.tokens] == [
            (t.text, t.dep, t.head) for t in alone.tokens
        ]
