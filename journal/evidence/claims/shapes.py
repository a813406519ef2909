"""Facts of named shapes and turns: sides, corners, faces, edges, angles."""

from __future__ import annotations

from journal.evidence.claims.contexts import thought_ends
from journal.evidence.claims.lexing import Lexemes
from journal.evidence.claims.numbers import read_number
from journal.evidence.claims.phrases import Phrases
from journal.evidence.claims.verdicts import Found
from journal.lexicon.facts import load_claim_words, load_shape_facts
from journal.records import Verdict

_FACTS = load_shape_facts()
_NEGATIVES = load_claim_words()["negatives"]
_OPENERS = load_claim_words()["openers"]
_DETERMINERS = frozenset(["a", "an", "every", "all", "each", "any", "the", "one", "1"])
_ADJECTIVES = frozenset(
    ("regular", "irregular", "normal", "proper", "isosceles", "scalene", "2d", "3d", "angled")
)
# "2 sides the same", "3 sides on the left": only some of them are meant.
_LIMITS = frozenset(
    ("that", "which", "on", "at", "the", "left", "in", "with", "same", "each", "like", "of", "are")
)
_HAVE = frozenset(("has", "have", "had", "hasn't", "haven't", "havent", "hasnt"))


def _plural(thing: str) -> list[str]:
    endings = {"rhombus": ["rhombuses", "rhombi"], "trapezium": ["trapeziums", "trapezia"]}
    return endings.get(thing, [f"{thing}s"])


_THINGS = Phrases(
    (form, thing) for thing in {thing for thing, _ in _FACTS} for form in (thing, *_plural(thing))
)
PARTS = Phrases(
    (
        *((form, "sides") for form in ("sides", "side", "straight sides", "edges", "edge")),
        *((form, "vertices") for form in ("vertices", "vertex", "verticies", "vertexes")),
        *((form, "vertices") for form in ("corners", "corner", "vertices", "points")),
        *((form, "angles") for form in ("angles", "angle")),
        *((form, "faces") for form in ("faces", "face", "flat faces")),
        *((form, "right angles") for form in ("right angles", "right angle")),
        *((form, "lines of symmetry") for form in ("lines of symmetry", "line of symmetry")),
        *((form, "equal sides") for form in ("equal sides", "same sides", "equal length sides")),
    )
)
_ANGLE_LINKS = Phrases(
    (form, form)
    for form in (
        "in",
        "of",
        "inside",
        "on",
        "around",
        "round",
        "at",
        "about",
        "in every",
        "in any",
    )
)
_ADDS = Phrases(
    (form, form)
    for form in (
        "add up to",
        "adds up to",
        "add to",
        "make",
        "makes",
        "equal",
        "equals",
        "total",
        "add up to make",
        "sum to",
        "are",
        "is",
        "come to",
        "added up to",
    )
)


SHAPE_STARTS = frozenset(_THINGS.firsts()) | _ADJECTIVES


def starts_shape(lexemes: Lexemes, at: int) -> bool:
    """Say whether a named shape, with or without "a", may begin at a lexeme."""
    text = lexemes.text(at)
    return text in _DETERMINERS or text in _THINGS or text in _ADJECTIVES


def read_shape(lexemes: Lexemes, at: int) -> tuple[str, int] | None:
    """Read "a hexagon", "every square based pyramid", "triangles"."""
    end = at
    if lexemes.text(end) in _DETERMINERS:
        end += 1
        end += lexemes.text(end - 1) == "all" and lexemes.text(end) == "the"
    found = _THINGS.match(lexemes, end)
    while found is None and lexemes.text(end) in (*_ADJECTIVES, "right", "-", "2", "3", "d"):
        end += 1
        found = _THINGS.match(lexemes, end)
    return found


def read_parts(
    lexemes: Lexemes, at: int, same_part: str | None = None
) -> tuple[list[Found], int] | None:
    """Read "a hexagon has six sides", "a square has 4 sides and 4 right angles".

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        Where the shape must begin.
    same_part : str, optional
        The part just spoken of: "and a pentagon has five".

    Returns
    -------
    (list of Found, int) or None
        One for each part; ``computed`` is how many there are.
    """
    shape = read_shape(lexemes, at)
    if shape is None:
        return None
    thing, end = shape
    if lexemes.text(end) == "shapes" or lexemes.text(end) == "shape":
        end += 1
    generic = _is_generic(lexemes, at)
    negated = False
    while lexemes.text(end) in (
        *("always", "only", "also", "all", "must", "does", "do", "will", "that", "which"),
        *("doesn't", "don't", "doesnt", "dont", "not", "never", "can't", "cannot", "both"),
    ):
        negated = negated or lexemes.text(end) in _NEGATIVES
        end += 1
    if lexemes.text(end) in ("because", "and", ",", "as", "since", "cos") and _named(lexemes, at):
        end += 1
    if lexemes.text(end) in ("it", "they") and lexemes.text(end + 1) in _HAVE:
        # "it is a hexagon because it has 6 sides"
        if not _named(lexemes, at):
            return None
        end += 1
    if lexemes.text(end) not in _HAVE:
        return _turn(lexemes, at, thing, end, generic=generic)
    negated = negated or lexemes.text(end).startswith("hasn") or lexemes.text(end) == "haven't"
    end += 1
    while lexemes.text(end) in ("got", "only", "exactly", "always", "also", "to", "have"):
        end += 1
    found: list[Found] = []
    start = at
    if same_part is not None:
        alone = _alone(lexemes, at, end, thing, same_part)
        if alone is not None:
            return [alone], alone.end
    while True:
        part = _part(lexemes, end, thing, start, negated=negated, generic=generic)
        if part is None:
            break
        found.append(part)
        end = part.end
        following = end
        while lexemes.text(following) in (",", "and", "so", "it", "has", "also", "they", "have"):
            following += 1
        if following == end and lexemes.item(end).kind != "numeral":
            break
        start, end = following, following
    return (found, found[-1].end) if found else None


def _named(lexemes: Lexemes, at: int) -> bool:
    """Say whether a thing is said to be the shape that begins here ("it is a hexagon")."""
    return lexemes.text(at - 1) in ("is", "its", "it's", "was", "called", "thats", "that's")


def last_part(lexemes: Lexemes, end: int) -> str | None:
    """Return the part of a shape that a statement ends with ("sides")."""
    found = PARTS.match(lexemes, end - 1)
    return None if found is None else found[0]


def _alone(lexemes: Lexemes, at: int, end: int, thing: str, part: str) -> Found | None:
    """Read "a pentagon has five" after "a hexagon has six sides"."""
    number = read_number(lexemes, end)
    if number is None or number.style != "whole" or PARTS.match(lexemes, number.end) is not None:
        return None
    count = count_parts(thing, part)
    if count is None or not thought_ends(lexemes, number.end):
        return None
    verdict: Verdict = "true" if number.value == count else "false"
    if verdict == "false" and lexemes.text(number.end) in _LIMITS:
        verdict = "undecided"
    return Found(at, number.end, verdict, str(count))


def _is_generic(lexemes: Lexemes, at: int) -> bool:
    before = lexemes.text(at - 1)
    return not before or before in _OPENERS or before in ("is", "with", "why", "how", "about")


def _part(
    lexemes: Lexemes, at: int, thing: str, start: int, *, negated: bool, generic: bool
) -> Found | None:
    number = read_number(lexemes, at)
    if number is None or number.style != "whole":
        return None
    matched = PARTS.match(lexemes, number.end)
    if matched is None:
        return None
    part, end = matched
    count = count_parts(thing, part)
    if lexemes.text(number.end) in ("edges", "edge"):
        solid = _FACTS.get((thing, "edges"))
        count = solid if solid is not None else count
    if count is None:
        return None
    right = number.value == count
    verdict: Verdict = "true" if right != negated else "false"
    if verdict == "false" and not generic and lexemes.text(at - 1) in _HAVE:
        return None
    if verdict == "false":
        symmetry = part == "lines of symmetry" and number.value < count
        clear = thought_ends(lexemes, end) and lexemes.text(end) not in _LIMITS
        if not generic or symmetry or not clear:
            verdict = "undecided"
    return Found(start, end, verdict, str(count))


def count_parts(thing: str, part: str) -> int | None:
    """Return how many, for "regular hexagon" as for "hexagon" where it has no fact of its own."""
    count = _FACTS.get((thing, part))
    if count is None and " " in thing:
        count = _FACTS.get((thing.rsplit(" ", 1)[1], part))
    return count


def read_right_angles(lexemes: Lexemes, at: int) -> Found | None:
    """Read "4 right angles make a full turn", "2 right angles make a straight line"."""
    number = read_number(lexemes, at)
    if number is None or not lexemes.follows(number.end, "right", "angles"):
        return None
    end = number.end + 2
    if lexemes.text(end) not in ("make", "makes", "are", "is", "=", "equal", "in"):
        return None
    turn = read_shape(lexemes, end + 1)
    count = None if turn is None else _FACTS.get((turn[0], "degrees"))
    if turn is None or count is None or turn[0] == "right angle":
        return None
    right = number.value * _FACTS["right angle", "degrees"] == count
    verdict: Verdict = "true" if right else "false"
    if verdict == "false" and not thought_ends(lexemes, turn[1]):
        verdict = "undecided"
    return Found(at, turn[1], verdict, str(count // _FACTS["right angle", "degrees"]))


def _turn(
    lexemes: Lexemes, at: int, thing: str, end: int, *, generic: bool
) -> tuple[list[Found], int] | None:
    """Read "a right angle is 90 degrees", "quarter past is 15 minutes"."""
    what = "degrees" if (thing, "degrees") in _FACTS else "minutes"
    count = _FACTS.get((thing, what))
    negated = lexemes.text(end) in ("isn't", "isnt", "aren't")
    if count is None or not (
        negated or lexemes.text(end) in ("is", "are", "=", "equals", "measures", "means", "has")
    ):
        return None
    end += 1
    while lexemes.text(end) in ("always", "exactly", "not", "also"):
        negated = negated or lexemes.text(end) == "not"
        end += 1
    number = read_number(lexemes, end)
    if number is None or number.style != "whole":
        return None
    end = number.end
    unit = lexemes.text(end)
    named = unit in (("degrees", "°", "degree") if what == "degrees" else ("minutes", "mins"))
    if not named and (thing != "right angle" or not thought_ends(lexemes, end)):
        return None
    end += named
    after = lexemes.text(end)
    right = number.value == count
    verdict: Verdict = "true" if right != negated else "false"
    if verdict == "false" and (not generic or after in ("past", "to", "more", "less")):
        verdict = "undecided"
    return [Found(at, end, verdict, str(count))], end


def read_angle_sum(lexemes: Lexemes, at: int) -> Found | None:
    """Read "the angles in a triangle add up to 180", "angles on a straight line make 180".

    Parameters
    ----------
    lexemes : Lexemes
        Of the working text.
    at : int
        At "angles".
    """
    link = _ANGLE_LINKS.match(lexemes, at + 1)
    if link is None:
        return None
    shape = read_shape(lexemes, link[1])
    if shape is None:
        return None
    thing, end = shape
    around = link[0] in ("on", "around", "round", "at", "about")
    count = _FACTS.get((thing, "degrees")) if around else count_parts(thing, "angle sum")
    while lexemes.text(end) in ("all", "always", "will", "must", "should", "both", "together"):
        end += 1
    added = _ADDS.match(lexemes, end)
    if count is None or added is None:
        return None
    number = read_number(lexemes, added[1])
    if number is None:
        return None
    end = number.end
    end += lexemes.text(end) in ("degrees", "°", "degree")
    each = lexemes.text(end) in ("each", "and", "or") or added[0] in ("are", "is", "make")
    right = number.value == count
    verdict: Verdict = "true" if right else "undecided" if each else "false"
    return Found(at, end, verdict, str(count))
