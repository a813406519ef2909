"""Informal forms in an entry: "bottom number" for denominator, "timesed" for multiplied."""

from __future__ import annotations

from collections.abc import Mapping
from functools import lru_cache

from journal.evidence.senses import Pieces, read_pieces
from journal.evidence.setting import Setting
from journal.language.parse import Parse
from journal.lexicon.informal import InformalForm, InformalForms
from journal.lexicon.kinds import load_kinds
from journal.records import InformalUse

_REACH = 8
_DOERS = frozenset(("i", "you", "we", "to", "then", "just", "can", "could", "had", "and"))
_THINGS_TIMESED = frozenset(("it", "them", "the", "by", "that", "both", "each", "this"))


def find_informal(parse: Parse, forms: InformalForms, setting: Setting) -> list[InformalUse]:
    """Return the informal forms, in order, the longest first where two begin together.

    Parameters
    ----------
    parse : Parse
        The entry.
    forms : InformalForms
        From `journal.lexicon.informal.load_informal`.
    setting : Setting
        The plan's domain helps where a form is plain English elsewhere.

    Returns
    -------
    list of InformalUse
        A form that may be plain English is reported only where its context shows it.
    """
    pieces = read_pieces(parse)
    words = pieces.words
    found: list[InformalUse] = []
    at, count = 0, len(words)
    while at < count:
        candidates = forms.get(words[at])
        if candidates is not None:
            for form in candidates:
                after = at + len(form.words)
                if tuple(words[at:after]) == form.words and _is_shown(
                    pieces, at, after, form, setting.domain or ""
                ):
                    start, end = pieces.starts[at], max(pieces.ends[at:after])
                    found.append(InformalUse(start, end, parse.text[start:end], form.formal))
                    at = after - 1
                    break
        at += 1
    return found


def _is_shown(pieces: Pieces, first: int, after: int, form: InformalForm, domain: str) -> bool:
    if form.safe or form.context == "always":
        return True
    words = pieces.words
    behind = words[after] if after < len(words) else ""
    before = words[first - 1] if first else ""
    if form.context == "number before":
        return _is_number(pieces, first - 1)
    if form.context == "number after":
        return _is_number(pieces, after) or (behind in ("it", "a") and domain == form.domain)
    if form.context == "verb":
        return before in _DOERS and behind in _THINGS_TIMESED
    start, end = pieces.window(first, after, _REACH)
    around = [at for at in range(start, end) if not first <= at < after]
    if form.context in ("numbers", "number near", "operations") and any(
        _is_number(pieces, at) for at in around
    ):
        return True
    company = _company()[form.context]
    return any(words[at] in company for at in around)


def _is_number(pieces: Pieces, at: int) -> bool:
    if not 0 <= at < len(pieces):
        return False
    word = pieces.words[at]
    return word[0].isnumeric() or word in load_kinds()["number"]


@lru_cache(maxsize=1)
def _company() -> Mapping[str, frozenset[str]]:
    # What must stand near a form that is plain English elsewhere.
    kinds = load_kinds()
    fractions = kinds["fraction"] | {"fraction", "fractions", "denominator", "numerator"}
    return {
        "fractions": fractions | {"whole", "equal", "shaded", "cut", "shape", "pizza"},
        "decimals": frozenset(("decimal", "decimals", "tenths", "number", "numbers", "digits")),
        "columns": frozenset(
            ("tens", "ones", "hundreds", "ten", "hundred", "column", "thousands", "digit")
        ),
        "numbers": frozenset(),
        "number near": frozenset(),
        "operations": kinds["operation"] | {"number", "numbers", "share"},
        "signs": frozenset(("bigger", "greater", "number", "sign", "eats", "smaller", "<", ">")),
        "measures": kinds["unit"] | {"measure", "measured", "scales", "ruler", "weigh", "clock"},
        "units": kinds["unit"],
        "shapes": kinds["shape"]
        | {"sides", "side", "faces", "edges", "angles", "symmetry", "perimeter", "3d", "2d"},
        "lines": kinds["shape"] | {"line", "lines", "axis", "angle", "parallel"},
        "data": frozenset(("data", "order", "numbers", "score", "scores", "number", "mode")),
        "algebra": frozenset(("letter", "equation", "n", "x", "=", "equals", "box")),
    }
