"""A reason never spans what is not the child's own (the score record's contract)."""

from __future__ import annotations

import pytest

from journal.evidence.reasons.own_words import keep_own_words
from journal.records import Excluded, Reason, Span


def _reason(reason: Span, claim: Span | None = None, supports: int | None = None) -> Reason:
    return Reason(None, claim, reason, "grounds", supports, "mathematical", "invented")


TAPPED = "I know because it ends in 8"
STARTER = (Excluded(0, 14, "inserted"),)


def test_without_anything_excluded_reasons_stay_as_they_are() -> None:
    reasons = [_reason((0, 5))]
    assert keep_own_words(reasons, (), TAPPED) == reasons


def test_a_reason_outside_an_excluded_stretch_stays() -> None:
    assert keep_own_words([_reason((15, 27))], STARTER, TAPPED)[0].reason == (15, 27)


def test_a_reason_is_cut_to_the_childs_words() -> None:
    kept = keep_own_words([_reason((0, 27))], STARTER, TAPPED)
    assert [TAPPED[slice(*item.reason)] for item in kept] == ["it ends in 8"]


def test_the_longest_own_part_is_kept() -> None:
    text = "it is [why?] even as it ends in 8"
    kept = keep_own_words([_reason((0, len(text)))], (Excluded(6, 12, "adult_prompt"),), text)
    assert text[slice(*kept[0].reason)] == "even as it ends in 8"


def test_a_reason_with_none_of_the_childs_words_is_left_out() -> None:
    assert keep_own_words([_reason((2, 14))], STARTER, TAPPED) == []


@pytest.mark.parametrize(("claim", "kept"), [((0, 6), None), ((15, 27), (15, 27)), (None, None)])
def test_a_claim_with_none_of_the_childs_words_is_unknown(
    claim: Span | None, kept: Span | None
) -> None:
    assert keep_own_words([_reason((15, 27), claim)], STARTER, TAPPED)[0].claim == kept


def test_supports_points_into_what_is_kept() -> None:
    reasons = [_reason((0, 6)), _reason((15, 20)), _reason((21, 27), supports=1)]
    assert [item.supports for item in keep_own_words(reasons, STARTER, TAPPED)] == [None, 0]


def test_support_for_a_reason_left_out_is_unknown() -> None:
    reasons = [_reason((0, 6)), _reason((15, 20), supports=0)]
    assert keep_own_words(reasons, STARTER, TAPPED)[0].supports is None
