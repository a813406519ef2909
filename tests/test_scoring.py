"""The scorer as its callers see it."""

from __future__ import annotations

import json
from collections.abc import Iterator
from dataclasses import fields, is_dataclass
from itertools import count, islice
from pathlib import Path
from typing import Any

import jsonschema
import pytest
import spacy
from hypothesis import HealthCheck, example, given, settings
from hypothesis import strategies as st

from journal import Entry, JournalError, Scorer
from journal.records import Score, record_schema
from journal.resources import shipped_folder

PLAN = shipped_folder("demo_entries") / "plans" / "fractions_y4.yaml"
EVEN = "I knew 48 was even becuase it ends in 8."  # invented, after the rubric's exemplar 2b


@pytest.fixture(scope="module")
def scorer() -> Scorer:
    return Scorer()


def _spans(part: Any) -> Iterator[tuple[int, int, str | None]]:
    """Yield every span of a record with its surface, wherever it stands."""
    if isinstance(part, (tuple, list)):
        for item in part:
            yield from _spans(item)
    elif is_dataclass(part) and not isinstance(part, type):
        names = {f.name for f in fields(part)}
        if {"start", "end"} <= names:
            yield part.start, part.end, getattr(part, "surface", None)  # type: ignore[attr-defined]
        for name in names:
            value = getattr(part, name)
            if name in ("claim", "reason") and isinstance(value, tuple):
                yield (*value, None)
            elif name == "spans":
                yield from ((*span, None) for span in value)
            else:
                yield from _spans(value)


# Invented stretches that have broken offsets elsewhere, joined at random.
PIECES = st.lists(
    st.one_of(
        st.sampled_from(
            [
                "I knew it was even becos it ends in 8",
                " 7x8 = 54. ",
                "i dont get it",
                " wholenumber ",
                "½ is bigger then ⅓",
                "[why?]",
                "it’s “half”\t\n",
                "\u00a0ang\u0301le\u200b",
                "🙂👩🏽‍🏫",
                "\u202eשלום مرحبا",
                "always ",
                " so therefore ",
            ]
        ),
        st.text(max_size=12),
    ),
    max_size=8,
).map("".join)


@settings(deadline=None, max_examples=120, suppress_health_check=list(HealthCheck))
@given(PIECES, st.sampled_from([None, "typed", "scribed"]))
@example("x" * 5000, None)
@example("because 1/2 " * 400, "typed")
def test_every_span_is_the_childs_own_words(text: str, mode: str | None) -> None:
    score = Scorer().score(text, mode=mode, target_terms=["even", "half"])  # type: ignore[arg-type]
    assert score.text == text
    for start, end, surface in _spans(score):
        assert 0 <= start <= end <= len(text)
        if surface is not None:
            assert text[start:end] == surface


@settings(deadline=None, max_examples=40, suppress_health_check=list(HealthCheck))
@given(PIECES)
def test_every_record_fits_the_published_schema(text: str) -> None:
    jsonschema.validate(json.loads(json.dumps(Scorer().score(text).to_dict())), record_schema())


def test_a_record_has_the_evidence_the_level_and_the_rule(scorer: Scorer) -> None:
    score = scorer.score(EVEN, target_terms="even", entry_id="17")
    assert score.entry_id == "17"
    assert (score.reasoning.level, score.reasoning.rule) == (2, "A3a")
    assert [marker.form for marker in score.markers if marker.counted] == ["because"]
    assert [use.term for use in score.vocabulary if use.counted] == ["even"]


def test_the_same_entry_gets_the_same_score(scorer: Scorer) -> None:
    assert scorer.score(EVEN) == Scorer().score(EVEN)


def test_a_score_names_the_models_that_had_a_part_in_it(scorer: Scorer) -> None:
    assert len(scorer.version.models) == len(list(shipped_folder("models").glob("*.json")))


def test_a_stream_of_entries_keeps_its_order(scorer: Scorer) -> None:
    entries = [Entry(f"I got {number} + 1", entry_id=str(number)) for number in range(150)]
    assert [score.entry_id for score in scorer.score_many(iter(entries))] == [
        entry.entry_id for entry in entries
    ]


def test_a_stream_is_read_only_as_it_is_needed(scorer: Scorer) -> None:
    numbers = count()
    scores = scorer.score_many({"text": f"I got {number}"} for number in numbers)
    list(islice(scores, 3))
    assert next(numbers) <= 65


def test_two_workers_give_the_scores_of_one(scorer: Scorer) -> None:
    entries = [{"text": EVEN, "pupil": f"P{number}"} for number in range(70)]
    assert list(scorer.score_many(entries, workers=2)) == list(scorer.score_many(entries))


def test_entries_without_an_id_are_numbered(scorer: Scorer) -> None:
    scores = scorer.score_many([{"text": EVEN}, {"text": EVEN}])
    assert [score.entry_id for score in scores] == ["1", "2"]


def test_adult_prompts_of_a_scribed_entry_are_not_scored(scorer: Scorer) -> None:
    score = scorer.score("[is it even because it ends in 8?] yes", mode="scribed")
    assert score.words == 1
    assert not score.markers
    assert [part.why for part in score.excluded] == ["adult_prompt"]


def test_brackets_of_a_typed_entry_are_the_childs_mathematics(scorer: Scorer) -> None:
    assert not scorer.score("[3 + 4] x 2 = 14", mode="typed").excluded


@pytest.mark.parametrize(
    ("text", "why"),
    [
        ("", "empty"),
        ("it was fun", "too_short"),
        ("je ne comprends pas la question", "not_english"),
        ("asdfghj kkkk zzzz", "unreadable"),
        ("nobody likes me and i am scared to go home", "worry"),
    ],
)
def test_an_entry_that_is_not_scored_says_why_and_has_no_level(
    scorer: Scorer, text: str, why: str
) -> None:
    score = scorer.score(text)
    assert (score.scored, score.not_scored_because) == (False, why)
    assert score.reasoning.level is None
    assert score.metacognition.level is None


def test_a_short_call_for_help_reaches_the_teacher(scorer: Scorer) -> None:
    score = scorer.score("I don't get it")
    assert score.not_scored_because == "too_short"
    assert [flag.kind for flag in score.flags] == ["help"]


def test_a_worry_keeps_only_its_flag(scorer: Scorer) -> None:
    score = scorer.score("7 is odd because i am scared to go home")
    assert {flag.kind for flag in score.flags} == {"worry"}
    assert (score.markers, score.vocabulary, score.reasons, score.claims) == ((), (), (), ())


def test_a_worry_that_an_adult_released_is_scored(scorer: Scorer) -> None:
    score = scorer.score("7 is odd because i am scared to go home", worry_released=True)
    assert score.scored
    assert not any(flag.kind == "worry" for flag in score.flags)


def test_a_lesson_of_the_plan_brings_its_words_and_prompt(scorer: Scorer) -> None:
    score = scorer.score("a third is equal parts of 3", plan=PLAN, lesson=1)
    assert score.plan is not None
    assert score.source.prompt
    assert score.targets


def test_an_entrys_own_words_and_prompt_override_the_plans(scorer: Scorer) -> None:
    score = scorer.score(EVEN, plan=PLAN, lesson=1, target_terms=["even"], prompt="Why?")
    assert (score.targets, score.source.prompt) == (("even",), "Why?")


def test_a_lesson_unknown_to_the_plan_falls_back_on_the_units_words(scorer: Scorer) -> None:
    assert scorer.score(EVEN, plan=PLAN, lesson="99").targets


def test_a_plan_given_to_the_scorer_serves_every_call() -> None:
    assert Scorer(plan=str(PLAN)).score(EVEN).plan is not None


def test_a_word_put_in_by_a_tap_is_not_counted_as_the_childs(scorer: Scorer) -> None:
    text = "denominator is what I like about 1/4"
    score = scorer.score(text, target_terms=["denominator"], inserted=[(0, 11)])
    use = next(use for use in score.vocabulary if use.term == "denominator")
    assert (use.echo, use.counted) == (True, False)


def test_a_missing_plan_is_one_clear_sentence(scorer: Scorer, tmp_path: Path) -> None:
    with pytest.raises(JournalError, match="no such file"):
        scorer.score(EVEN, plan=tmp_path / "none.yaml")


def test_a_reason_marks_the_words_inside_it(scorer: Scorer) -> None:
    score = scorer.score(
        "1/3 is equal because the denominator is 3 parts", target_terms="denominator"
    )
    assert any(use.in_reason for use in score.vocabulary)


def test_the_spacy_component_adds_the_evidence_to_a_doc() -> None:
    nlp = spacy.blank("en")
    nlp.add_pipe("reasoning_journal")
    doc = nlp(EVEN)
    assert isinstance(doc._.journal, Score)
    assert doc._.reasoning_level == 2
    assert [span.text for span in doc.spans["markers"]] == ["becuase"]
    assert doc.spans["reasons"][0].label_ == "mathematical"
