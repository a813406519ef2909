"""Single readings of markers. Sentences are invented unless a source stands beside them."""

from __future__ import annotations

import time
from itertools import pairwise

import pytest
from found_markers import ParseOf, markers_of

from journal.evidence.markers import find_markers
from journal.evidence.mathematics import Mathematics
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.markers import load_markers
from journal.records import Excluded, Marker


def marker(parse_of: ParseOf, text: str, form: str, setting: Setting | None = None) -> Marker:
    found = [m for m in markers_of(parse_of(text), setting) if m.form == form]
    assert found, f"{form!r} is not reported in {text!r}"
    return found[0]


# The five steps of reasoning, describing to proving, and the words said to show them: NRICH
# primary team, University of Cambridge, "Reasoning: the journey from novice to expert".
# The sentences around the words are invented.
@pytest.mark.parametrize(
    ("text", "form", "function"),
    [
        ("It is even because it ends in 8.", "because", "reason"),
        ("the sides are equal therefore it is a square", "therefore", "result"),
        ("each part is 4 and so the whole is 12", "so", "result"),
        ("both numbers are odd that leads to an even total", "that leads to", "result"),
        ("without doubt the next number is 21", "without doubt", "certainty"),
        ("i reckon the answer is 56", "I reckon", "certainty"),
    ],
)
def test_indicator_phrases_of_the_five_steps_have_their_function(
    parse_of: ParseOf, text: str, form: str, function: str
) -> None:
    found = marker(parse_of, text, form)
    assert (found.function, found.counted) == (function, True)


@pytest.mark.parametrize(
    ("text", "form", "reading"),
    [
        ("it was so fun", "so", "look_alike"),
        ("we did a sum so then we went out", "so", "narrative"),
        ("since Monday we have been doing this", "since", "narrative"),
        ("he ran as if he was late", "as if", "look_alike"),
        ("because I like it", "because", "no_mathematics"),
        ("I always like maths", "always", "no_mathematics"),
        ("all of us did it", "all", "look_alike"),
        ("she asked for any questions", "any", "look_alike"),
        ("if I have time I will read", "if", "no_mathematics"),
        ("I must tidy up", "must", "look_alike"),
        ("we sit at the same table", "the same", "look_alike"),
        ("Miss said write because", "because", "mention"),
        ("because so therefore always prove", "prove", "mention"),
        ("I have to tidy my tray", "have to", "look_alike"),
        ("so that is all", "so", "look_alike"),
        ("I put them in rows so that Miss could see", "so that", "look_alike"),
        ("then we tidied up", "then", "narrative"),
        ("I asked Ali when I was stuck", "when", "narrative"),
        ("we sang it as a class", "as", "look_alike"),
    ],
)
def test_other_uses_are_reported_and_not_counted(
    parse_of: ParseOf, text: str, form: str, reading: str
) -> None:
    found = marker(parse_of, text, form)
    assert (found.reading, found.counted) == (reading, False)


@pytest.mark.parametrize(
    ("text", "form", "surface"),
    [
        ("a half is bigger than a third", "bigger than", "bigger than"),
        ("3/4 is as big as 6/8", "as big as", "as big as"),
        ("6 is twice as big as 3", "twice as", "twice as"),
        ("the sides have the same length as the edges", "the same as", "the same length as"),
        ("a cube has more faces than a pyramid", "more than", "more faces than"),
        ("it is a square even though it is tilted 45 degrees", "even though", "even though"),
        ("it cant be a prime number", "can't be", "cant be"),
    ],
)
def test_longest_form_is_reported(parse_of: ParseOf, text: str, form: str, surface: str) -> None:
    assert marker(parse_of, text, form).surface == surface


def test_no_two_markers_overlap(parse_of: ParseOf) -> None:
    text = "it is three times as long as the same line even though that is why it must be bigger"
    found = markers_of(parse_of(text))
    assert all(a.end <= b.start for a, b in pairwise(found))


@pytest.mark.parametrize("form", ["more than", "biggest", "both"])
def test_superlatives_and_both_are_no_comparisons(parse_of: ParseOf, form: str) -> None:
    forms = [m.form for m in markers_of(parse_of("both of the biggest shapes are bigger"))]
    assert form not in forms


@pytest.mark.parametrize("text", ["tall than", "it was red. than no", "rather than that"])
def test_than_without_a_comparison_is_no_marker(parse_of: ParseOf, text: str) -> None:
    assert markers_of(parse_of(text)) == []


def test_a_short_starter_begun_again_is_an_echo_the_first_time(parse_of: ParseOf) -> None:
    setting = Setting(sentence_starters=("I checked by", "Because", "If it is"))
    found = markers_of(parse_of("I checked by I checked by adding 4 and 8"), setting)
    assert [m.reading for m in found] == ["echo", "reasoning"]


def test_a_starter_whose_clause_is_copied_whole_is_an_echo(parse_of: ParseOf) -> None:
    setting = Setting(sentence_starters=("Because the digits",))
    found = markers_of(parse_of("because the digits, because the 7 is worth 700"), setting)
    assert [m.reading for m in found] == ["echo", "reasoning"]


def test_own_words_beside_a_starter_are_own(parse_of: ParseOf) -> None:
    setting = Setting(sentence_starters=("Because the digits",))
    text = "the digits of 12 add to 3 because 1 and 2 is 3"
    assert marker(parse_of, text, "because", setting).reading == "reasoning"


def test_a_new_line_parts_what_is_joined(parse_of: ParseOf) -> None:
    assert not marker(parse_of, "We went home because\nThe number is 4", "because").counted


def test_negated_reasoning_is_language_used(parse_of: ParseOf) -> None:
    assert marker(parse_of, "It is odd, not because it ends in 3 but ...", "because").counted


def test_quoted_partner_is_language_used(parse_of: ParseOf) -> None:
    assert marker(parse_of, 'Ali said "it is even because it ends in 2"', "because").counted


def test_offsets_give_the_childs_own_words(parse_of: ParseOf) -> None:
    text = "  its  even cos it ends in 4 "
    found = marker(parse_of, text, "because")
    assert text[found.start : found.end] == found.surface == "cos"


def test_why_quotes_the_words_that_are_joined(parse_of: ParseOf) -> None:
    found = marker(parse_of, "i know 48 is even because it ends in 8", "because")
    assert "'it ends in 8'" in found.why


STARTER = "I know this because"


def inserted(text: str, words: str) -> Setting:
    start = text.index(words)
    return Setting(
        sentence_starters=(words,), excluded=(Excluded(start, start + len(words), "inserted"),)
    )


def test_a_starter_with_nothing_behind_it_is_an_echo(parse_of: ParseOf) -> None:
    text = f"the answer is 12. {STARTER}"
    assert marker(parse_of, text, "because", inserted(text, STARTER)).reading == "echo"


def test_a_starter_finished_in_own_mathematics_is_reasoning(parse_of: ParseOf) -> None:
    text = f"{STARTER} 3 fours make 12"
    assert marker(parse_of, text, "because", inserted(text, STARTER)).reading == "reasoning"


def test_a_starter_finished_without_mathematics_is_an_echo(parse_of: ParseOf) -> None:
    text = f"{STARTER} i am clever"
    assert marker(parse_of, text, "because", inserted(text, STARTER)).reading == "echo"


def test_words_copied_from_the_prompt_are_an_echo(parse_of: ParseOf) -> None:
    setting = Setting(prompt="Explain why it is always true that odd and odd is even.")
    text = "explain why it is always true that odd and odd is even"
    assert marker(parse_of, text, "always", setting).reading == "echo"


def test_an_empty_text_has_no_markers(parse_of: ParseOf) -> None:
    assert markers_of(parse_of("")) == []


def test_markers_cost_little_beside_the_parse(parse_of: ParseOf) -> None:
    parse = parse_of(
        "first i did 3 times 5 then i got 15 so i wrote it down and i was so happy because it was "
        "easy but if you swap them it is always the same because the array turns round. " * 3
    )
    mathematics = Mathematics([None] * len(parse))
    best = min(_seconds(parse, mathematics) for _ in range(20))
    # Ten times what was measured, so that a busy machine does not fail the test.
    assert best / len(parse) < 100e-6


def _seconds(parse: Parse, mathematics: Mathematics) -> float:
    start = time.perf_counter()
    find_markers(parse, load_markers(), mathematics, Setting())
    return time.perf_counter() - start
