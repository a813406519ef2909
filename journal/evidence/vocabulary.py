"""Uses of mathematical terms: which, in what form, in which sense, and whether they count."""

from __future__ import annotations

from collections.abc import Iterator
from functools import lru_cache
from typing import NamedTuple

from journal.evidence.echo import find_echoes, is_echo
from journal.evidence.senses import Pieces, decide_sense, read_pieces
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.senses import load_senses
from journal.lexicon.terms import Pattern, Symbol, Term, TermIndex, split_words
from journal.records import Sense, TermForm, TermKind, VocabularyUse
from journal.text.normalise import normalise_characters

_TIMES_OF_DAY = frozenset(
    [
        "noon",
        "midnight",
        "lunch",
        "o'clock",
        "oclock",
        "hour",
        "hours",
        "minute",
        "minutes",
        "day",
        "days",
        "week",
        "weeks",
        "am",
        "pm",
    ]
)
_MINUS = frozenset("-−–")


class Match(NamedTuple):
    """A term found in ``pieces[first:after]``; ``symbol`` where a sign shows it."""

    first: int
    after: int
    pattern: Pattern
    symbol: Symbol | None = None


def find_vocabulary(parse: Parse, terms: TermIndex, setting: Setting) -> list[VocabularyUse]:
    """Return every use of a mathematical term, in order.

    Parameters
    ----------
    parse : Parse
        The entry.
    terms : TermIndex
        The lexicon's terms; the setting's own are added here.
    setting : Setting
        Targets, earlier terms and year decide the kind; prompt and word bank what is an echo.

    Returns
    -------
    list of VocabularyUse
        ``in_reason`` is false, to be set when the reasons are known. A longer term wins over a
        shorter one inside it, but a target inside a longer term that is no target is still a use
        of the target ("unit fraction" is a fraction), unless its meaning is lost there ("right
        angle" is not right). Words of general English are left out where they are not used as
        mathematics.
    """
    index = terms.with_targets(setting.targets, setting.earlier)
    pieces = read_pieces(parse)
    matches = list(_find_matches(pieces, index))
    if not matches:
        return []
    pieces.mark()
    _mark_strong(pieces, matches)
    echoes = find_echoes(parse, setting)
    uses = []
    for match in matches:
        use = _read_use(pieces, match, setting, echoes)
        if use is not None:
            uses.append(use)
    return uses


def _find_matches(pieces: Pieces, index: TermIndex) -> Iterator[Match]:
    words = pieces.words
    heads, own, symbols, starts = index.heads, index.own, index.symbols, index.starts
    at, count = 0, len(words)
    while at < count:
        word = words[at]
        if word not in starts and not word[0].isdigit():
            at += 1
            continue
        if word[0].isdigit() or (word in symbols and not _opens_longer(pieces, at, index)):
            shown = _read_symbol(pieces, at, index)
            if shown is not None:
                yield shown
                at = shown.after
                continue
        if word in heads or word in own:
            found = list(_longest(pieces, at, index))
            if found:
                yield from found
                at = max(found[-1].after, at + 1)
                continue
        at += 1


def _opens_longer(pieces: Pieces, at: int, index: TermIndex) -> bool:
    # "p.m." begins with the sign for pence.
    found = _fitting(pieces, at, index.own) or _fitting(pieces, at, index.heads)
    return found is not None and len(found.words) > 1


def _longest(pieces: Pieces, at: int, index: TermIndex) -> Iterator[Match]:
    mine = _fitting(pieces, at, index.own) if index.own else None
    listed = _fitting(pieces, at, index.heads)
    if listed is None or (mine is not None and len(mine.words) >= len(listed.words)):
        if mine is not None:
            yield Match(at, at + len(mine.words), mine)
        return
    after = at + len(listed.words)
    if after == at + 1:
        yield Match(at, after, listed)
        return
    inside = []
    place = at
    while place < after:
        shorter = _fitting(pieces, place, index.own)
        if shorter is not None and not listed.term.hides.intersection(shorter.words):
            inside.append(Match(place, place + len(shorter.words), shorter))
            place += len(shorter.words)
        else:
            place += 1
    if inside:
        yield from inside
    else:
        yield Match(at, after, listed)


def _fitting(pieces: Pieces, at: int, heads: dict[str, tuple[Pattern, ...]]) -> Pattern | None:
    candidates = heads.get(pieces.words[at])
    if candidates is None:
        return None
    words = pieces.words
    for place, pattern in enumerate(candidates):
        size = len(pattern.words)
        if size == 1 or (
            tuple(words[at : at + size]) == pattern.words
            and not pieces.parse.crosses_break(
                pieces.tokens[at].index, pieces.tokens[at + size - 1].index + 1
            )
        ):
            if place + 1 < len(candidates) and pattern.kind == "curriculum":
                return _of_time(pieces, at, pattern, candidates[place + 1])
            return pattern
    return None


def _of_time(pieces: Pieces, at: int, pattern: Pattern, other: Pattern) -> Pattern:
    # "second (time)" beside "second": the term with a sense in brackets where time is told.
    if other.words != pattern.words or not other.shown.endswith("(time)"):
        return pattern
    first, after = pieces.window(at, at + len(pattern.words), 3)
    if _TIMES_OF_DAY.intersection(pieces.words[first:after]) or pattern.form == "inflected":
        return other
    return pattern


def _read_symbol(pieces: Pieces, at: int, index: TermIndex) -> Match | None:
    words = pieces.words
    word, size = words[at], 1
    if word[0].isdigit():
        # A fraction written with a stroke.
        if words[at + 1 : at + 2] != ["/"] or at + 2 >= len(words):
            return None
        word, size = "".join(words[at : at + 3]), 3
        if "/" in (words[at - 1] if at else "", *words[at + 3 : at + 4]):
            return None  # a date
    symbol = index.symbols.get(word)
    if symbol is None or not _in_place(pieces, at, at + size, symbol):
        return None
    for name in symbol.shows:
        key = split_words(name)
        for pattern in index.own.get(key[0], ()):
            if pattern.words == key:
                return Match(at, at + size, pattern, symbol)
    key = split_words(symbol.shows[0])
    for pattern in index.heads.get(key[0], ()):
        if pattern.words == key:
            return Match(at, at + size, pattern, symbol)
    return None  # pi is no term of the curriculum: found only as a target


def _in_place(pieces: Pieces, at: int, after: int, symbol: Symbol) -> bool:
    before = pieces.words[at - 1] if at else ""
    behind = pieces.words[after] if after < len(pieces) else ""
    if symbol.place == "between numbers":
        return _is_amount(before) and (_is_amount(behind) or behind in _MINUS)
    if symbol.place == "after a number":
        return before[:1].isnumeric() or (before in ")" and bool(before))
    if symbol.place == "before a number":
        return behind[:1].isnumeric()
    return True


def _is_amount(word: str) -> bool:
    return word[:1].isnumeric() or word in ("a", "b", "n", "y", "?", "(", ")", "_", "=", "%", "cm")


def _mark_strong(pieces: Pieces, matches: list[Match]) -> None:
    # Terms with no everyday sense are company for the words that have one.
    for match in matches:
        if match.symbol is not None or _is_firm(match.pattern.term, pieces.words[match.first]):
            for at in range(match.first, match.after):
                pieces.strong[at] = True


@lru_cache(maxsize=4096)
def _is_firm(term: Term, word: str) -> bool:
    table = load_senses()
    name = term.name.lower()
    if term.word_type != "technical" or term.everyday_sense_risk or name in table.plain:
        return False
    entry = table.entries.get(name) or table.entries.get(word)
    return entry is None or entry.otherwise == "mathematical"


def _read_use(
    pieces: Pieces, match: Match, setting: Setting, echoes: list[tuple[int, int]]
) -> VocabularyUse | None:
    first, after, pattern, symbol = match
    start, end = pieces.starts[first], max(pieces.ends[first:after])
    if pattern.shown.endswith(".") and pieces.tokens[after - 1].end == end + 1:
        end += 1  # the last full stop of "a.m."
    kind = _kind(pattern, setting)
    is_target = kind == "target"
    sense: Sense
    if symbol is not None:
        sense, why = "mathematical", f"the sign shows {pattern.shown}"
    else:
        name = pattern.term.name.lower()
        sense, why = decide_sense(
            pieces, first, after, name, pattern.term.word_type, is_target=is_target
        )
    if sense == "everyday" and not is_target and not pattern.term.everyday_sense_risk:
        return None
    echo = is_echo(start, end, echoes)
    if echo:
        why = f"copied from what was set; {why}"
    return VocabularyUse(
        term=pattern.shown,
        start=start,
        end=end,
        surface=pieces.parse.text[start:end],
        kind=kind,
        form="symbol" if symbol is not None else _form(pieces, first, after, pattern.form),
        sense=sense,
        echo=echo,
        counted=not echo and (sense == "mathematical" or (sense == "unsure" and is_target)),
        in_reason=False,
        why=why,
    )


def _kind(pattern: Pattern, setting: Setting) -> TermKind:
    if pattern.kind != "curriculum":
        return pattern.kind
    year = pattern.term.first_year
    if setting.year is not None and year is not None and year < setting.year:
        return "earlier"
    return "curriculum"


def _form(pieces: Pieces, first: int, after: int, form: TermForm) -> TermForm:
    start, end = pieces.starts[first], max(pieces.ends[first:after])
    surface = pieces.parse.text[start:end]
    if after == first + 1:
        if surface.lower() == pieces.words[first]:
            return form
    elif len(set(pieces.starts[first:after])) < after - first:
        # Two words were read in one: "wholenumber".
        return "misspelt" if _was_corrected(pieces, first, after) else form
    written = split_words(normalise_characters(surface))
    spaced = " " in surface and after == first + 1
    return "misspelt" if spaced or written != tuple(pieces.words[first:after]) else form


def _was_corrected(pieces: Pieces, first: int, after: int) -> bool:
    tokens = {pieces.tokens[at].index for at in range(first, after)}
    return len(tokens) > 1
