from journal.evidence.echo import find_echoes, find_word_lists
from journal.evidence.setting import Setting
from journal.records import Excluded


def test_four_words_in_a_row_are_an_echo(parse_of):
    text = "i say how you know it is even because 2 fits"
    assert [
        text[a:b]
        for a, b in find_echoes(parse_of(text), Setting(prompt="Say how you know it is even"))
    ] == ["say how you know it is even"]


def test_three_words_in_a_row_are_the_childs_own(parse_of):
    assert find_echoes(parse_of("how you know"), Setting(prompt="Say how you know it")) == []


def test_a_list_in_the_order_of_the_word_bank_is_an_echo(parse_of):
    bank = ("half", "quarter", "whole")
    assert find_echoes(parse_of("half, quarter and whole"), Setting(word_bank=bank)) == [(0, 23)]


def test_the_childs_own_list_is_no_echo_but_a_word_list(parse_of):
    setting = Setting(word_bank=("half", "quarter", "whole"))
    parse = parse_of("whole half quarter")
    assert find_echoes(parse, setting) == []
    assert find_word_lists(parse, setting) == [(0, 18)]


def test_words_put_in_by_a_tap_are_an_echo(parse_of):
    setting = Setting(excluded=(Excluded(0, 4, "inserted"),))
    assert find_echoes(parse_of("half of it"), setting) == [(0, 4)]


def test_words_that_are_no_items_are_no_word_list(parse_of):
    setting = Setting(word_bank=("half", "quarter", "whole"))
    assert find_word_lists(parse_of("the half was big and a quarter too"), setting) == []
    assert find_word_lists(parse_of("half quarter"), Setting(word_bank=("half",))) == []


def test_and_may_stand_in_a_word_list(parse_of):
    setting = Setting(targets=("half", "quarter", "whole"))
    assert find_word_lists(parse_of("whole and half and quarter and"), setting) == [(0, 26)]


def test_a_sentence_in_the_prompt_parts_two_lists(parse_of):
    prompt = "half, quarter, third, tell me what you know about it, whole, part"
    setting = Setting(prompt=prompt)
    assert find_echoes(parse_of("half quarter third whole"), setting) == [(0, 18)]
    assert find_echoes(parse_of("whole part"), setting) == []


def test_no_word_of_what_was_set_is_no_echo(parse_of):
    assert find_echoes(parse_of("i cut it"), Setting(prompt="Why is 3/4 more than 1/2?")) == []
