"""Ideas to check: what the child holds true that is not, by a claim worked out or a pattern."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import replace

from journal.evidence.flags.comparison import compares_rightly
from journal.evidence.flags.stretches import make_flag, own_span, shorten
from journal.language.parse import Parse
from journal.lexicon.flags import NotAsserted
from journal.lexicon.patterns import Pattern, PatternIndex
from journal.lexicon.watchlist import Idea
from journal.lexicon.word_keys import WordStream
from journal.records import Claim, Flag, Span

_ASKING = frozenset({"is", "are", "does", "do", "can", "could", "will", "would", "why"})
_REACH = 14
"""A rejection may follow an idea within so many words."""
_SOON = 60
"""A change of mind follows a claim within so many characters."""


def find_ideas(
    parse: Parse,
    words: WordStream,
    ideas: tuple[Idea, ...],
    claims: Sequence[Claim],
    phrases: NotAsserted,
) -> list[Flag]:
    """Find ideas to check.

    Returns
    -------
    list of Flag
        For every claim that is false and asserted, and for every idea of the watch-list whose
        words are asserted: one flag where both meet. Ideas quoted, rejected, asked about or no
        longer held are passed over.
    """
    matches = _pattern_matches(parse, words, ideas, claims, phrases)
    flags: list[Flag] = []
    met: set[int] = set()
    for number, claim in enumerate(claims):
        if claim.verdict != "false" or not claim.asserted:
            continue
        span = (claim.start, claim.end)
        if _is_taken_back(parse, words, span, phrases):
            continue
        overlapping = [
            at for at, (_, found) in enumerate(matches) if found[0] < span[1] and span[0] < found[1]
        ]
        met.update(overlapping)
        why = f"“{shorten(claim.surface)}” does not hold"
        why += f": it is {claim.computed}." if claim.computed else "."
        if not overlapping:
            flags.append(replace(_flag(parse, span, why, None), claim=number))
        for at in overlapping:
            idea, found = matches[at]
            whole = (min(span[0], found[0]), max(span[1], found[1]))
            flags.append(replace(_flag(parse, whole, f"{why} {_said(idea)}", idea), claim=number))
    for at, (idea, found) in enumerate(matches):
        if at not in met:
            flags.append(_flag(parse, found, f"“{{words}}”: {_said(idea)}", idea))
    return _once(flags)


def index_ideas(ideas: tuple[Idea, ...]) -> PatternIndex[Idea]:
    """Return the patterns of a watch-list, ready; kept for the lists in use.

    A list is known again by its identity: to compare sixty ideas by their words would cost more
    than to look for them.
    """
    if id(ideas) not in _INDEXES:
        if len(_INDEXES) >= _LISTS:
            _INDEXES.clear()
        _INDEXES[id(ideas)] = ideas, PatternIndex([(idea, idea.patterns) for idea in ideas])
    return _INDEXES[id(ideas)][1]


_LISTS = 64
_INDEXES: dict[int, tuple[tuple[Idea, ...], PatternIndex[Idea]]] = {}
"""By the identity of the list, which is kept with its index so that it stays its own."""


def _pattern_matches(
    parse: Parse,
    words: WordStream,
    ideas: tuple[Idea, ...],
    claims: Sequence[Claim],
    phrases: NotAsserted,
) -> list[tuple[Idea, Span]]:
    found: list[tuple[Idea, Span]] = []
    for idea, pattern, first, after in index_ideas(ideas).find(words):
        span = own_span(parse, words, first, after)
        if compares_rightly(words, first, after):
            continue
        if any(c.start <= span[0] < c.end and c.verdict == "true" for c in claims):
            continue
        if any(c.start < span[1] and span[0] < c.end and not c.asserted for c in claims):
            continue
        if not _is_asserted(words, pattern, first, after, phrases):
            continue
        found.append((idea, span))
    return found


def _is_taken_back(parse: Parse, words: WordStream, span: Span, phrases: NotAsserted) -> bool:
    """Say whether the child changes a claim soon after it."""
    starts = [
        own_span(parse, words, at, after)[0] for _, _, at, after in phrases.changed.find(words)
    ]
    return any(0 <= start - span[1] <= _SOON for start in starts)


def _is_asserted(
    words: WordStream, pattern: Pattern, first: int, after: int, phrases: NotAsserted
) -> bool:
    begin = first
    while begin and words.keys[begin - 1] != ".":
        begin -= 1
    end = after
    while end < len(words) and words.keys[end] != ".":
        end += 1
    if end < len(words) and "?" in words.text[words.starts[end] : words.ends[end]]:
        return False
    if words.text[words.starts[begin] : words.ends[begin]].lower() in _ASKING:
        return False
    # "not", or a word like it, just before the idea turns it round.
    if set(words.keys[max(begin, first - 2) : first]) & {"not", "never"}:
        return False
    if any(
        begin <= a < first and b <= max(after, first + 3)
        for _, _, a, b in phrases.before.find(words)
    ):
        return False
    return not any(
        first < a <= after + _REACH and b > first + 1 for _, _, a, b in phrases.after.find(words)
    )


def _said(idea: Idea) -> str:
    return f"Idea to check: {idea.description}"


def _flag(parse: Parse, span: Span, why: str, idea: Idea | None) -> Flag:
    return make_flag("idea_to_check", parse.text, span, why, None if idea is None else idea.id)


def _once(flags: list[Flag]) -> list[Flag]:
    """Keep, of flags for the same idea that overlap, the first with a claim, else the longest."""
    kept: list[Flag] = []
    for flag in sorted(flags, key=lambda f: (f.claim is None, f.start - f.end, f.start)):
        if flag.idea is None or not any(
            other.idea == flag.idea and other.start < flag.end and flag.start < other.end
            for other in kept
        ):
            kept.append(flag)
    return kept
