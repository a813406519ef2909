"""How often the speller is right: on spellings it was not tuned on, and on words it must keep.

The spellings are invented (data/invented_spellings.tsv). The words are the statutory list for
years 3 and 4 of the National Curriculum in England, English Appendix 1 (DfE 2013).
"""

from __future__ import annotations

from pathlib import Path

import pytest

from journal.lexicon.words import load_speller

YEARS_3_AND_4 = """
accident accidentally actual actually address answer appear arrive believe bicycle breath breathe
build busy business calendar caught centre century certain circle complete consider continue decide
describe different difficult disappear early earth eight eighth enough exercise experience
experiment extreme famous favourite february forward forwards fruit grammar group guard guide heard
heart height history imagine increase important interest island knowledge learn length library
material medicine mention minute natural naughty notice occasion occasionally often opposite
ordinary particular peculiar perhaps popular position possess possession possible potatoes pressure
probably promise purpose quarter question recent regular reign remember sentence separate special
straight strange strength suppose surprise therefore though although thought through various weight
woman women
""".split()


def invented(part: str) -> list[tuple[str, str]]:
    lines = (Path(__file__).parent / "data" / "invented_spellings.tsv").read_text("utf-8")
    rows = [line.split("\t") for line in lines.splitlines() if not line.startswith("#")][1:]
    return [(word, spelling) for word, spelling, of in rows if of == part]


def is_right(word: str, spelling: str) -> bool:
    found = load_speller().find_corrections(spelling)
    return [one.read_as for one in found] == [word]


def test_nine_in_ten_held_out_non_words_are_read_rightly() -> None:
    speller = load_speller()
    rows = [row for row in invented("held") if speller.find_corrections(row[1])]
    assert len(rows) > 200
    assert sum(is_right(*row) for row in rows) / len(rows) >= 0.9


def test_few_held_out_spellings_are_given_up() -> None:
    rows = invented("held")
    given_up = [row for row in rows if not load_speller().find_corrections(row[1])]
    assert len(given_up) / len(rows) <= 0.1


@pytest.mark.parametrize("word", YEARS_3_AND_4)
def test_a_word_of_the_statutory_list_is_kept(word: str) -> None:
    assert load_speller().find_corrections(word) == []
