"""The general watch-list: well-formed, over all primary domains, every source stated."""

from __future__ import annotations

import re

import pytest

from journal.lexicon.patterns import compile_pattern
from journal.lexicon.plan import DOMAINS
from journal.lexicon.watchlist import Idea, load_watchlist


def test_there_are_about_45_ideas_with_ids_of_their_own() -> None:
    ids = [idea.id for idea in load_watchlist()]
    assert len(ids) >= 45
    assert len(set(ids)) == len(ids)


def test_every_domain_has_an_idea() -> None:
    assert {idea.domain for idea in load_watchlist()} == set(DOMAINS)


@pytest.mark.parametrize("idea", load_watchlist(), ids=lambda idea: idea.id)
def test_an_idea_is_described_with_a_source_or_says_it_has_none(idea: Idea) -> None:
    assert idea.description.endswith(".")
    if idea.source != "common practice, no source":
        assert re.search(r"\b(19|20)\d\d\b", idea.source)
        assert idea.source.endswith("(from memory)")


@pytest.mark.parametrize("idea", load_watchlist(), ids=lambda idea: idea.id)
def test_every_pattern_needs_at_least_one_word(idea: Idea) -> None:
    assert all(compile_pattern(pattern).needs for pattern in idea.patterns)
