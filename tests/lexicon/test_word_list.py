"""The words that ship with the package, and what is said when their files are broken."""

from __future__ import annotations

import gzip
from pathlib import Path

import pytest

from journal.errors import LexiconError
from journal.lexicon.words import load_confusions, load_kinds, load_speller, load_words
from journal.resources import LEXICON
from journal.text.spelling.phonetic import skeleton_key

WORDS, BY_SKELETON, NEVER = load_words(LEXICON / "words.tsv.gz")


def test_more_than_eighty_thousand_forms_are_words() -> None:
    assert len(WORDS) > 80_000


def test_every_skeleton_of_the_file_is_what_the_key_says_today() -> None:
    wrong = [
        (word, skeleton)
        for skeleton, words in BY_SKELETON.items()
        for word in words
        if skeleton_key(word) != skeleton
    ]
    assert wrong == []


def test_words_of_a_skeleton_stand_commonest_first() -> None:
    assert all(
        [WORDS[word] for word in words] == sorted((WORDS[word] for word in words), reverse=True)
        for words in BY_SKELETON.values()
    )


@pytest.mark.parametrize("word", ["colour", "color", "metre", "learnt", "realise", "realize"])
def test_british_and_american_spellings_are_words(word: str) -> None:
    assert word in WORDS


@pytest.mark.parametrize("word", ["thay", "becuase", "dont", "wierd", "alot"])
def test_a_common_misspelling_is_no_word(word: str) -> None:
    assert load_speller().find_corrections(word) != []


@pytest.mark.parametrize("word", ["color", "timesed", "vlog"])
def test_american_and_childrens_own_forms_are_never_a_correction(word: str) -> None:
    assert word not in BY_SKELETON.get(skeleton_key(word), [])


def test_the_speller_is_loaded_once() -> None:
    assert load_speller() is load_speller()


def test_a_missing_list_of_words_is_said_plainly(tmp_path: Path) -> None:
    with pytest.raises(LexiconError, match=r"words\.tsv\.gz: the list of words can't be read"):
        load_words(tmp_path / "words.tsv.gz")


def test_a_list_with_a_column_too_few_is_said_plainly(tmp_path: Path) -> None:
    file = tmp_path / "words.tsv.gz"
    file.write_bytes(gzip.compress(b"the\t7.7\n"))
    with pytest.raises(LexiconError, match="three columns"):
        load_words(file)


def test_an_unknown_kind_of_word_is_said_with_its_line(tmp_path: Path) -> None:
    file = tmp_path / "kinds.tsv"
    file.write_text("word\tkind\nhalf\tsums\n")
    with pytest.raises(LexiconError, match="line 2: 'sums' is no kind of word"):
        load_kinds(file)


def test_a_wrong_pattern_of_the_rules_is_said_plainly() -> None:
    rule = {"seen": "hole", "read_as": "whole", "patterns": ["{animal} []"]}
    with pytest.raises(LexiconError, match="no known group 'animal'"):
        load_confusions({"rules": [rule]})
