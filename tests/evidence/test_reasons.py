"""Reasons with their claims, roles and ground (all sentences invented)."""

from __future__ import annotations

import pytest
from judged import load_scorer

from journal.evidence.reasons import mark_central
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.records import Claim, Reason, Score, Verdict
from journal.text.offsets import OffsetMap


def score_of(text: str, **setting: object) -> Score:
    return load_scorer().score(text, **setting)  # type: ignore[arg-type]


def make_parse() -> Parse:
    return Parse(OffsetMap("", [], ""), [])


def first_of(text: str) -> tuple[str | None, str, Reason]:
    reason = score_of(text).reasons[0]
    claim = None if reason.claim is None else text[slice(*reason.claim)]
    return claim, text[slice(*reason.reason)], reason


@pytest.mark.parametrize(
    ("text", "claim", "reason"),
    [
        ("48 is even because it ends in 8.", "48 is even", "it ends in 8"),
        ("Because it ends in 8, 48 is even.", "48 is even", "it ends in 8"),
        ("because it ends in 8 it is even", "it is even", "it ends in 8"),
        ("It ends in 8 so it is even.", "it is even", "It ends in 8"),
        ("It ends in 8. So it is even.", "it is even", "It ends in 8"),
        ("i know its even it ends in 8", "i know its even", "it ends in 8"),
        ("48 is even: it ends in 8.", "48 is even", "it ends in 8"),
        ("they both end in 0 thats how i know", "thats how i know", "they both end in 0"),
    ],
)
def test_claim_and_reason_are_found_on_either_side(text: str, claim: str, reason: str) -> None:
    found_claim, found_reason, _ = first_of(text)
    assert (found_claim, found_reason) == (claim, reason)


@pytest.mark.parametrize(
    ("text", "ground"),
    [
        ("48 is even because it ends in 8", "mathematical"),
        ("48 is even because it is an even number", "circular"),
        ("The answer is 48 because Miss said so", "not_mathematical"),
        ("The answer is 48 because I like 48", "not_mathematical"),
        ("The answer is 48 because I guessed", "not_mathematical"),
        ("I drew a number line because I counted in tens", "procedural"),
        ("because I used the number line and counted", "procedural"),
        ("because i did 3 x 5 and then 4 more", "mathematical"),
        ("I was happy because 4 + 4 = 8", "not_mathematical"),
    ],
)
def test_ground_is_what_the_reason_speaks_of(text: str, ground: str) -> None:
    assert first_of(text)[2].ground == ground


def test_a_link_carries_the_reason_it_settles() -> None:
    found = score_of("6 x 7 is 42 because 5 x 7 is 35 and one more group of 7 makes 42.").reasons
    assert [(reason.role, reason.supports) for reason in found] == [("grounds", None), ("link", 0)]


def test_reasons_chained_by_so_support_each_other() -> None:
    found = score_of("It ends in 0 so it has no ones left over so 10 divides it exactly").reasons
    assert [reason.supports for reason in found] == [None, 0]


def test_a_fact_told_before_the_case_is_a_link() -> None:
    text = "Even numbers end in 0, 2, 4, 6 or 8. The number 48 ends in 8 so it is even."
    assert "link" in {reason.role for reason in score_of(text).reasons}


def test_an_estimate_written_out_is_a_check() -> None:
    text = "My answer is 601. 400 + 200 is 600 so it should be about 600."
    assert {reason.role for reason in score_of(text).reasons} == {"check"}


def test_an_estimate_beside_the_answer_is_a_check() -> None:
    text = "I got 601 for my sum, 400 and 200 should be about 600"
    assert {reason.role for reason in score_of(text).reasons} == {"check"}


def test_a_counter_example_goes_against_a_general_claim() -> None:
    text = "Not all odd numbers are prime because 9 is odd and it is 3 x 3."
    assert score_of(text).reasons[0].role == "counter_example"


def test_what_is_said_twice_counts_once() -> None:
    once = "It ends in 8 so it is even."
    assert len(score_of(f"{once} {once}").reasons) == len(score_of(once).reasons)


def test_no_reason_reaches_across_an_adults_prompt() -> None:
    text = "It is an even number. [Why?] So 8 is in the middle."
    assert score_of(text, mode="scribed").reasons == ()
    assert score_of(text.replace("[Why?] ", ""), mode="scribed").reasons != ()


@pytest.mark.parametrize("text", ["So it is an even number", "48 is an even number because"])
def test_a_connective_with_one_side_missing_gives_no_reason(text: str) -> None:
    assert score_of(text).reasons == ()


def test_a_reason_ends_where_the_next_step_is_told() -> None:
    text = "48 is even because it ends in 8 and then I drew the cubes."
    assert first_of(text)[1] == "it ends in 8"


def test_the_central_claim_answers_the_prompt() -> None:
    text = "4 + 4 = 8 is easy. 7 x 8 = 56 because 7 x 7 is 49 and 7 more."
    score = score_of(text, prompt="What is 4 + 4?")
    assert [claim.surface for claim in score.claims if claim.central] == ["4 + 4 = 8"]


def test_without_a_prompt_the_first_reason_finds_the_central_claim() -> None:
    score = score_of("4 + 4 = 8. 7 x 8 = 56 because 7 x 7 is 49 and 7 more.")
    assert [claim.surface for claim in score.claims if claim.central] == ["7 x 8 = 56"]


def test_a_settled_claim_is_central_before_an_undecided_one() -> None:
    def claim(surface: str, start: int, verdict: Verdict) -> Claim:
        return Claim(start, start + len(surface), surface, verdict, True, False, None)

    claims = [claim("4 tops", 0, "undecided"), claim("4 x 2 = 8", 10, "true")]
    reason = Reason(None, (0, 19), (28, 40), "grounds", None, "mathematical", "")
    marked = mark_central(claims, [reason], make_parse(), Setting())
    assert [item.central for item in marked] == [False, True]


def test_a_prompt_without_numbers_leaves_the_first_reason_to_decide() -> None:
    score = score_of("48 is even because it ends in 8.", prompt="How do you know?")
    assert [claim.surface for claim in score.claims if claim.central] == ["48 is even"]


@pytest.mark.parametrize(
    ("text", "level"),
    [
        ("because i added 12 and 9", 2),
        ("because the more people there are the less pizza you get", 2),
        ("36 is even its got two equal halves", 2),
        ("no because 0.4 is 4 tenths and 0.04 is 4 hundredths", 2),
        ("3/4 is bigger because if you draw both of them 3/4 has more shaded", 2),
        ("Four is even. That is why we did it again.", 1),
        ("they are the same. that is a cube and a cuboid", 1),
    ],
)
def test_children_answer_in_fragments(text: str, level: int) -> None:
    assert score_of(text).reasoning.level == level


def test_a_general_condition_is_a_general_claim() -> None:
    text = (
        "If you add two odd numbers it is even because each odd has one left over "
        "and the two left overs make a pair."
    )
    assert score_of(text).reasoning.level == 4


def test_a_property_after_an_adults_prompt_is_not_joined_to_the_claim() -> None:
    text = "The number 48 is even [How do you know?] it ends in 8"
    assert score_of(text, mode="scribed").reasons == ()


@pytest.mark.parametrize(
    "text",
    [
        "The number looks so it should be about right.",
        "It is not always true. I liked it a lot.",
    ],
)
def test_a_check_or_a_case_must_be_written_out(text: str) -> None:
    roles = {reason.role for reason in score_of(text).reasons}
    assert roles.isdisjoint({"check", "counter_example"})


def test_a_feeling_with_numbers_is_no_check() -> None:
    text = "I am happy because I like 400 and 200 and it should be about 600."
    assert score_of(text).reasoning.level in (0, 1)


@pytest.mark.parametrize(
    ("text", "prompt", "level"),
    [
        ("25% is a quarter and 60 ÷ 4 is 15", "What is 25% of 60? Explain.", 3),
        ("it doesnt end in 5 or 0", "Explain how you know that 456 is not a multiple of 5.", 2),
        ("yes there was a big number line on the floor", "Is 3/4 more than 1/2? Explain.", 1),
        ("yes i tried 1 2 3 and 10 11 12 and it worked", "Is it always in the 3s? Explain.", 2),
        ("no you can only fold it two ways", "Has an oblong four lines? Explain.", 2),
        ("i think it is 42 and i wrote it down", "How do you know?", 1),
        ("they are not the same size so you cant compare", "Is 1/2 of mine more? Why?", 3),
        ("yes 12 x 4 is 48 so it is", "Is 48 a multiple of 12?", 2),
    ],
)
def test_an_answer_to_the_prompt_needs_no_connective(text: str, prompt: str, level: int) -> None:
    """Rules R2, R4 and R6: the prompt's question joins what answers it."""
    assert score_of(text, prompt=prompt).reasoning.level == level


@pytest.mark.parametrize(
    ("text", "level"),
    [
        ("Numbers in the 4 times table are always even. I tested 12 and 28 and 40.", 2),
        ("all the numbers in the 4 times table are even. 4 8 12 16 20 24", 2),
        ("If you add two odd numbers you always get even, like 3 + 5 is 8.", 2),
    ],
)
def test_cases_tried_out_are_a_reason_and_settle_nothing(text: str, level: int) -> None:
    assert score_of(text).reasoning.level == level


@pytest.mark.parametrize(
    "text",
    [
        "There was no 5p in the tub because table 3 had them all",
        "Counters helped me because I could take 5 away and see the 7 left",
        "i dident get it but Kaya said look at the tens so i did",
        "that is 40 because that is the formula we learnt",
        "I measured 12 cm because the ruler was broken",
        "We drew 3 lines so that our lines were neat",
    ],
)
def test_what_helped_who_said_so_and_what_was_handled_is_no_reason(text: str) -> None:
    assert score_of(text).reasoning.level == 1


@pytest.mark.parametrize(
    "text",
    [
        "240 is 8 lots of 30 because 24 is 8 lots of 3 and 240 is ten times bigger than 24",
        "there is 1000 g in a kg so 1.4 kg is 1400 g and thats 50 more than 1350",
        "The triangle fits twice because you fold it or else it would change shape",
        "It is not odd because if it was odd there would be one left over",
        "10 people need 750 g because one person is 75 g and 75 x 10 is 750",
    ],
)
def test_a_further_fact_or_the_opposite_supposed_is_a_link(text: str) -> None:
    assert "link" in {reason.role for reason in score_of(text).reasons}


@pytest.mark.parametrize(
    "text",
    [
        "it is even because it ends in 8, but 9 isn't",
        "the angle is acute because its less than 90 and the other one was obtuse",
        "the shape has 1 line of symmetry because when you fold it the sides match",
        "The remainder is 2 because 4 times 5 is 20 and there are 22 sweets.",
        "It is a hexagon because it has six sides and six corners.",
    ],
)
def test_a_second_feature_or_another_thing_is_no_link(text: str) -> None:
    assert "link" not in {reason.role for reason in score_of(text).reasons}


def test_where_a_claim_stops_is_its_limit() -> None:
    text = "You cant say it is always more because it only works when the wholes are the same."
    assert "limit" in {reason.role for reason in score_of(text).reasons}
