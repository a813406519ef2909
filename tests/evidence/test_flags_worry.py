"""The worry list is read in the child's and in the corrected words, and by a school's own list."""

from __future__ import annotations

from pathlib import Path

import pytest

from journal.errors import LexiconError
from journal.evidence.flags import find_worries, measure_worries
from journal.lexicon.flags import load_worries
from journal.lexicon.words import load_speller
from journal.text.offsets import Edit, OffsetMap

KNOWN = frozenset(["hungry", "scared", "likes", "number"])


def test_the_flag_stands_over_the_childs_own_words() -> None:
    text = "we did maths. my dad hits me."
    (flag,) = find_worries(text, load_worries())
    assert flag.kind == "worry"
    assert text[flag.start : flag.end] == flag.surface == "dad hits me"
    assert "“dad hits me”" in flag.why
    assert "safeguarding" in flag.why


@pytest.mark.parametrize(
    "text",
    [
        "he hert me",
        "nobdy licks me",
        "i am skared to go hom",
        "I DONT WANT TO GO HOME",
        "i want to kill my self",
        "i’m scared of my dad",
    ],
)
def test_misspelt_words_are_found_in_the_raw_text(text: str) -> None:
    assert find_worries(text, load_worries())


def test_one_letter_wrong_is_found_where_the_word_is_no_english_word() -> None:
    assert find_worries("i feel worthliss", load_worries(), KNOWN)
    assert not find_worries("i feel worthliss", load_worries())


def test_corrected_words_are_read_too_and_lead_back_to_the_original() -> None:
    text = "he panched me"
    offsets = OffsetMap(text, [Edit(3, 10, "punched")])
    (flag,) = find_worries(offsets, load_worries())
    assert flag.surface == text


def test_a_school_can_use_its_own_list(tmp_path: Path) -> None:
    path = tmp_path / "worries.toml"
    path.write_text('[phrases]\nours = ["blue door"]\n[unless]\npatterns = ["blue door game"]\n')
    worries = load_worries(path)
    assert find_worries("the blue doors again", worries)
    assert not find_worries("the blue door game", worries)


@pytest.mark.parametrize(
    ("content", "sentence"),
    [
        ('[phrases]\na = ["(b"]\n[unless]\npatterns = []\n', "opened and not closed"),
        ('[phrases]\na = ["b"]\n', "the part 'unless' is missing"),
        ("[phrases]\na = [b]\n", "each phrase needs quotation marks"),
    ],
)
def test_a_list_that_cannot_be_read_says_what_to_change(
    tmp_path: Path, content: str, sentence: str
) -> None:
    path = tmp_path / "worries.toml"
    path.write_text(content)
    with pytest.raises(LexiconError, match=sentence):
        load_worries(path)


def test_the_miss_rate_is_printed_with_the_warning() -> None:
    rate = measure_worries(load_worries(), load_speller().words)
    assert (rate.lines, rate.friends) == (20, 20)
    assert f"missed {rate.missed}" in rate.sentence
    assert rate.sentence.endswith("No flag is not reassurance: read every entry.")


def test_a_list_of_one_phrase_misses_all(tmp_path: Path) -> None:
    path = tmp_path / "worries.toml"
    path.write_text('[phrases]\nours = ["blue door"]\n[unless]\npatterns = []\n')
    rate = measure_worries(load_worries(path))
    assert (rate.missed, rate.false_alarms) == (20, 0)
