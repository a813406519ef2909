"""What flags do at their edges. All lines are invented."""

from __future__ import annotations

from pathlib import Path

import pytest

from journal.errors import LexiconError
from journal.evidence.flags import load_worry_rate
from journal.evidence.flags.idea import index_ideas
from journal.evidence.readable import check_readable, name_language
from journal.lexicon.flags import load_help, load_home_languages, load_worries
from journal.lexicon.watchlist import Idea
from journal.lexicon.word_keys import read_words
from journal.lexicon.words import load_speller
from journal.records import Flag
from journal.scoring import Scorer


@pytest.fixture(scope="module")
def scorer() -> Scorer:
    return Scorer()


def kinds(flags: tuple[Flag, ...]) -> set[str]:
    return {flag.kind for flag in flags}


def test_a_starter_put_in_by_a_tap_and_left_alone_is_an_echo(scorer: Scorer) -> None:
    text = "I know this because it"
    score = scorer.score(text, inserted=[(0, len(text))])
    assert "echo" in kinds(score.flags)


def test_a_starter_put_in_by_a_tap_and_gone_on_from_is_none(scorer: Scorer) -> None:
    text = "I know this because it ends in 8 and that is two tens and eight ones"
    assert "echo" not in kinds(scorer.score(text, inserted=[(0, 22)]).flags)


def test_keys_pressed_at_random_get_no_language(scorer: Scorer) -> None:
    score = scorer.score("asdfgh jkl")
    assert (score.not_scored_because, score.flags) == ("unreadable", ())


def test_an_answer_put_right_is_no_idea_to_check(scorer: Scorer) -> None:
    assert "idea_to_check" in kinds(scorer.score("7 x 8 = 54 i think").flags)
    text = "first I had 7 x 8 = 54 but I changed it because I counted again"
    assert "idea_to_check" not in kinds(scorer.score(text).flags)


@pytest.mark.parametrize(
    "text",
    [
        "Sam says that the bigger the denominator the bigger the fraction",
        "the bigger denominator is not the bigger fraction",
    ],
)
def test_an_idea_told_of_others_or_denied_is_not_the_childs(scorer: Scorer, text: str) -> None:
    assert "idea_to_check" not in kinds(scorer.score(text).flags)


def test_a_question_becomes_a_conjecture_once_it_is_tried(scorer: Scorer) -> None:
    """Rule R4 asks for a claim to test; a child who tests it is on the way there."""
    asked = "Does it work for all even numbers?"
    assert "conjecture_to_test" not in kinds(scorer.score(asked).flags)
    tried = asked + " I tried 6 and 10."
    assert "conjecture_to_test" in kinds(scorer.score(tried).flags)


def test_a_claim_with_a_reason_in_circles_is_still_to_be_tested(scorer: Scorer) -> None:
    text = "odd add odd is always even because it always is"
    assert "conjecture_to_test" in kinds(scorer.score(text).flags)


def test_help_that_came_is_no_call_for_help(scorer: Scorer) -> None:
    assert "help" not in kinds(scorer.score("What helped me was the number line").flags)
    assert "help" in kinds(scorer.score("help me with the number line").flags)


def test_what_was_not_done_does_not_count_as_success(scorer: Scorer) -> None:
    assert "help" in kinds(scorer.score("my brain went blank and i didnt do any").flags)


def test_the_same_list_of_ideas_is_read_once_and_many_lists_are_let_go() -> None:
    first = (Idea("a", "A.", ("blue door",)),)
    assert index_ideas(first) is index_ideas(first)
    lists = [(Idea(str(number), "B.", ("red door",)),) for number in range(70)]
    for ideas in lists:
        ((found, *_),) = index_ideas(ideas).find(read_words("a red door"))
        assert found is ideas[0]


def test_groups_stand_for_their_words_and_may_name_groups_above(tmp_path: Path) -> None:
    path = tmp_path / "worries.toml"
    path.write_text(
        '[groups]\ncat = "cat|kitten"\npet = "[cat]|dog"\n[phrases]\na = ["[pet] is ill"]\n'
        "[unless]\npatterns = []\n"
    )
    worries = load_worries(path)
    for text in ("my kitten is ill", "the dog is ill"):
        assert worries.phrases.find(read_words(text))
    assert not worries.phrases.find(read_words("the hen is ill"))


def test_a_group_that_is_not_there_is_named(tmp_path: Path) -> None:
    path = tmp_path / "worries.toml"
    path.write_text('[phrases]\na = ["[pets] ill"]\n[unless]\npatterns = []\n')
    with pytest.raises(LexiconError, match=r"\[pets\] is not known"):
        load_worries(path)


def test_a_file_that_is_not_there_is_named(tmp_path: Path) -> None:
    with pytest.raises(LexiconError, match=r"gone\.toml: this can't be read"):
        load_help(tmp_path / "gone.toml")


def test_a_list_that_is_no_list_is_explained(tmp_path: Path) -> None:
    path = tmp_path / "worries.toml"
    path.write_text("[phrases]\na = 3\n[unless]\npatterns = []\n")
    with pytest.raises(LexiconError, match="not a list of texts"):
        load_worries(path)


def test_letters_of_another_script_are_another_language() -> None:
    assert name_language("لا أفهم", load_speller().words, load_home_languages()) == "other"


def test_one_foreign_word_among_english_ones_is_english() -> None:
    assert check_readable("merci the end was fun", load_speller().words) is None


def test_one_foreign_word_among_unknown_ones_is_no_language() -> None:
    assert name_language("nie the blorp", load_speller().words, load_home_languages()) is None


@pytest.mark.parametrize(
    ("text", "keys"),
    [
        ("we'll", ["we", "will"]),
        ("couldn't", ["could", "not"]),
        ("idk", ["i", "do", "not", "know"]),
        ("in care in a car", ["in", "care", "in", "a", "car"]),
    ],
)
def test_short_forms_are_read_as_their_words(text: str, keys: list[str]) -> None:
    assert read_words(text).keys == keys


def test_numbers_alone_have_no_language() -> None:
    assert name_language("12", load_speller().words, load_home_languages()) is None


def test_offsets_stand_where_a_capital_grows_when_lowered() -> None:
    text = "\u0130 can not do it, 1,000 or 1½"
    words = read_words(text)
    for at, key in enumerate(words.keys):
        if key == "1000":
            assert text[slice(*words.span(at, at + 1))] == "1,000"
    assert "1/2" in words.keys


def test_the_rate_of_the_list_that_ships_is_said_with_the_warning() -> None:
    """Twenty lines and twenty friends that the list was not made for."""
    rate = load_worry_rate()
    assert (rate.lines, rate.friends) == (20, 20)
    assert rate.sentence.endswith("No flag is not reassurance: read every entry.")
