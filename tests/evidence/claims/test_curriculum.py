"""What the national curriculum in England (mathematics, 2013) asks children to know."""

from __future__ import annotations

import pytest

from journal.evidence.claims import find_claims
from journal.evidence.setting import Setting
from journal.lexicon.facts import load_shape_facts, load_units


def verdicts(parse_of, text):
    return [claim.verdict for claim in find_claims(parse_of(text), Setting())]


def test_multiplication_facts_up_to_12_x_12_are_known(parse_of):
    """Year 4: recall multiplication and division facts for tables up to 12 x 12."""
    right = " ".join(f"{a} x {b} = {a * b}." for a in range(1, 13) for b in range(1, 13))
    assert verdicts(parse_of, right) == ["true"] * 144
    wrong = " ".join(f"{a} x {b} = {a * b + 1}." for a in range(1, 13) for b in range(1, 13))
    assert verdicts(parse_of, wrong) == ["false"] * 144


@pytest.mark.parametrize(
    "statement",
    [
        "there are 60 minutes in an hour",  # Year 2: minutes in an hour, hours in a day
        "there are 24 hours in a day",
        "there are 60 seconds in a minute",  # Year 3: seconds in a minute
        "a year has 12 months",
        "1 km is 1000 m",  # Year 4: convert between units (kilometre to metre)
        "1 m is 100 cm",
        "1 cm is 10 mm",
        "1 kg is 1000 g",
        "1 litre is 1000 ml",
        "£1 is 100p",  # Year 2: pounds and pence
        "a right angle is 90 degrees",  # Year 5: angles
        "angles around a point add up to 360 degrees",
        "angles on a straight line add up to 180 degrees",
        "angles in a triangle add up to 180 degrees",  # Year 6
        "2/4 is equivalent to 1/2",  # Year 2: equivalence of 2/4 and 1/2
        "0.25 = 1/4",  # Year 4: decimal equivalents
        "0.5 = 1/2",
        "0.75 = 3/4",
        "50% is 1/2",  # Year 5: percentage equivalents
        "20% = 1/5",
        "2/5 + 4/5 = 1 1/5",  # Year 5: mixed numbers, the document's own example
        "0.71 = 71/100",  # Year 5, the document's own example
        "5/7 + 1/7 = 6/7",  # Year 3, the document's own example
        "1/4 × 1/2 = 1/8",  # Year 6, the document's own example
        "1/3 ÷ 2 = 1/6",  # Year 6, the document's own example
    ],
)
def test_a_statement_of_the_curriculum_is_true(parse_of, statement):
    assert verdicts(parse_of, statement) == ["true"]


def test_solids_keep_eulers_formula():
    """Euler 1758: faces + vertices = edges + 2 for every convex solid."""
    facts = load_shape_facts()
    solids = {thing for thing, part in facts if part == "faces"}
    assert solids
    for solid in solids:
        total = facts[solid, "faces"] + facts[solid, "vertices"]
        assert total == facts[solid, "edges"] + 2


def test_flat_shapes_have_as_many_corners_as_sides():
    facts = load_shape_facts()
    for (thing, part), count in facts.items():
        if part == "sides":
            assert facts[thing, "vertices"] == count
            assert facts[thing, "angle sum"] == (count - 2) * 180


def test_every_spelling_of_a_unit_has_one_size():
    units = load_units()
    for short, long in (("cm", "centimetres"), ("kg", "kilograms"), ("ml", "millilitre")):
        assert units[short].size == units[long].size
