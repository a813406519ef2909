"""What the speller must read in a child's words, and what it must leave alone. All invented."""

from __future__ import annotations

import pytest

from journal.lexicon.words import load_speller, load_weights
from journal.records import Spelling
from journal.text.normalise import normalise_characters
from journal.text.spelling import Speller, correct

SPELLER = load_speller()


def corrections(text: str, *targets: str) -> list[Spelling]:
    clean = normalise_characters(text)
    return SPELLER.find_corrections(clean, original=text, targets=targets)


def read(text: str, *targets: str) -> str:
    """The text as it is read: corrections put in from the end."""
    for spelling in reversed(corrections(text, *targets)):
        text = text[: spelling.start] + spelling.read_as + text[spelling.end :]
    return text


@pytest.mark.parametrize(
    ("spelling", "word"),
    [
        ("becuse", "because"),
        ("becos", "because"),
        ("coz", "because"),
        ("cos", "because"),
        ("cuz", "because"),
        ("fracshun", "fraction"),
        ("denomanator", "denominator"),
        ("nummerator", "numerator"),
        ("lernt", "learnt"),
        ("devide", "divide"),
        ("wen", "when"),
        ("wich", "which"),
        ("dounle", "double"),
        ("desimal", "decimal"),
        ("trie-angle", "triangle"),
        ("kworter", "quarter"),
        ("multaply", "multiply"),
        ("eekwul", "equal"),
        ("perimiter", "perimeter"),
        ("thort", "thought"),
        ("cwestion", "question"),
        ("rong", "wrong"),
        ("anser", "answer"),
        ("sed", "said"),
        ("eny", "any"),
        ("becawse", "because"),
        ("cudnt", "couldn't"),
        ("did'nt", "didn't"),
        ("skool", "school"),
        ("tryed", "tried"),
        ("untill", "until"),
        ("alot", "a lot"),
    ],
)
def test_a_childs_spelling_is_read_as_the_word_it_sounds_like(spelling: str, word: str) -> None:
    assert read(spelling) == word


def test_an_angle_written_by_ear_is_read_in_its_place() -> None:
    assert read("it has a rite angul") == "it has a right angle"


def test_two_words_written_as_one_are_read_apart() -> None:
    (found,) = corrections("a wholenumber is easy")
    assert (found.surface, found.read_as, found.kind) == ("wholenumber", "whole number", "join")


def test_one_word_written_as_two_is_read_together() -> None:
    (found,) = corrections("we cut the who le cake")
    assert (found.surface, found.read_as, found.kind) == ("who le", "whole", "split")


@pytest.mark.parametrize(
    "text",
    [
        "i timesed it by 4 and it worked",
        "he was timesing and I was minusing",
        "we minused ten then we plussed two",
        "we learnt about it",
        "I sat next to Oluwaseun and Zofia Kowalczyk",
        "5cm and 20mm is 7 cm, 3kg, 250ml",
        "my code is x2yz and QWRT",
        "look at https://exampel.test/becuse",
        "the colour of the metre ruler",
        "the color of the center",
        "a café and a naïve idea",
    ],
)
def test_what_is_no_misspelling_stays(text: str) -> None:
    assert corrections(text) == []


@pytest.mark.parametrize(
    "text",
    [
        "Dzisiaj uczyliśmy się ułamków i było bardzo trudno",
        "nous avons appris les fractions et je comprends bien",
        "hoy aprendimos las fracciones y me gusta mucho",
        "heute haben wir Brüche gelernt und es war schwer",
        "heddiw fe wnaethom ni ddysgu am ffracsiynau",
    ],
)
def test_a_text_in_another_language_is_left_alone(text: str) -> None:
    assert corrections(text) == []


def test_a_word_of_the_lesson_is_likelier_than_any_other() -> None:
    assert read("the vinkulum", "vinculum") == "the vinculum"


def test_the_reason_names_a_word_of_todays_lesson() -> None:
    (found,) = corrections("the denomanator", "denominator")
    assert found.why == "sounds like 'denominator', a word of today's lesson"


def test_a_missing_apostrophe_is_put_back() -> None:
    assert read("i dont know and it cant be") == "i don't know and it can't be"


def test_a_capital_is_kept() -> None:
    assert read("Becuse it is") == "Because it is"


def test_no_word_of_an_excluded_stretch_is_corrected() -> None:
    text = "becuse it becuse"
    found = SPELLER.find_corrections(text, excluded=[(0, 6)])
    assert [spelling.start for spelling in found] == [10]


def test_a_very_long_run_of_letters_is_left_alone() -> None:
    assert corrections("we did it " + "a" * 2000) == []


def test_a_text_without_words_has_no_corrections() -> None:
    assert corrections("  3 + 4 = 7 !!") == []


def test_a_speller_made_of_a_small_list_corrects_to_its_words() -> None:
    words = {"whole": 5.0, "the": 7.0}
    speller = Speller(
        words,
        {"Al": ["whole"], "F": ["the"], "hl": ["whole"], "wl": ["whole"]},
        weights=load_weights(),
    )
    (found,) = speller.find_corrections("the whoel")
    assert found.read_as == "whole"


@pytest.mark.parametrize(
    ("written", "meant"),
    [
        ("the skool's hall", "the school's hall"),
        ("it is so mew hat hard", "it is so mew hat hard"),
        ("a frac tion of it", "a fraction of it"),
        ("the frend-ship game", "the friendship game"),
        ("the fracshun's top is 3", "the fraction's top is 3"),
        ("BECUSE IT IS EVEN", "BECAUSE IT IS EVEN"),
    ],
)
def test_a_word_in_parts_or_with_an_ending_is_read(written: str, meant: str) -> None:
    assert read(written) == meant


@pytest.mark.parametrize(
    "text",
    [
        "bilal helped me and so did zaynab and oisin",
        "i worked with aaliyah and noor",
        "mr khan and mrs ali and dr obi",
        "x's and y's",
        "the abided rule",
    ],
)
def test_names_and_titles_in_lower_case_stay(text: str) -> None:
    assert corrections(text) == []


@pytest.mark.parametrize(
    ("spelling", "word"),
    [
        ("measurd", "measured"),
        ("showin", "showing"),
        ("measurin", "measuring"),
        ("volums", "volumes"),
        ("sequencs", "sequences"),
        ("perimter", "perimeter"),
        ("mulitply", "multiply"),
        ("notist", "noticed"),
    ],
)
def test_the_ending_that_is_written_is_kept(spelling: str, word: str) -> None:
    assert read(spelling) == word


def test_a_spelling_that_is_like_no_word_stays() -> None:
    weights = load_weights()
    speller = Speller({"the": 7.0, "a": 7.0}, {"F": ["the"]}, weights=weights)
    assert speller.find_corrections("the xqzkvw") == []


def test_targets_of_several_words_and_signs_are_taken_word_by_word() -> None:
    assert read("the nummber lines", "number-line", "3/4 of", "\u00bd") == "the number lines"


def test_the_words_of_a_spelling_can_be_looked_at_with_their_features() -> None:
    found = dict(SPELLER.find_features("fracshun"))
    assert found["fraction"]["other_last_letter"] == 0.0
    assert found["fraction"]["letters"] > found["fraction"]["sounds"]


def test_every_list_of_targets_and_full_memos_give_the_same_answer(
    monkeypatch: pytest.MonkeyPatch,
) -> None:
    monkeypatch.setattr(correct, "_LESSONS", 1)
    monkeypatch.setattr(correct, "_MEMO", 1)
    for targets in (("vinculum",), ("angle",), ("vinculum",)):
        assert read("becuse the fracshun becuse", *targets) == "because the fraction because"
