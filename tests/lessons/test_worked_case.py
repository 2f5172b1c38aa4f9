"""The worked sums of carcass sizing, again by hand in exact fractions of a millimetre.

Board between two others = room between them + 2 x depth of the joint; air = outside - uprights; casters come on
top of a case, a toe space and a plinth within its height (common practice, no source).
"""

import re
from fractions import Fraction

import pytest

from shoplib.lessons import worked_case
from tests.lessons.answers import millimetres

START = {"in": ("34 1/2 in", "30 in", "20 in", "0.703 in", "1/4 in", "4 in", "0.204 in"),
         "mm": ("876 mm", "760 mm", "500 mm", "17.5 mm", "6 mm", "100 mm", "5.9 mm")}
"""Width, height, depth, sheet, joint, base, back."""

SHOWN = {"in": Fraction(254, 10) / 2000, "mm": Fraction(1, 200)}
"""Half a step of what a caliper text shows."""

MARK = {"in": Fraction(254, 10) / 32, "mm": Fraction(1, 2)}
"""A step of the rule that the page shows."""


def comes_to(worked):
    """The lengths at the end of each line, in millimetres."""
    return [
        [millimetres(text) for text in re.findall(r"(?:\d+ )?\d+(?:/\d+|\.\d+)? (?:in|mm)\b", line[2])]
        for line in worked.lines
    ]


def by_hand(name, unit):
    wide, high, deep, side, joint, base, back = (millimetres(text) for text in START[unit])
    inside, bay = wide - 2 * side, (wide - 4 * side) / 3
    if name == "back":
        up = high - 2 * side
        return [[inside], [inside + 2 * joint], [up], [up + 2 * joint]]
    if name == "bays":
        return [[4 * side], [wide - 4 * side], [bay] * 3]
    if name == "divider":
        return [[high - base - 2 * side], [high - base - 2 * side + 2 * joint]]
    if name == "base":
        return [[high], [high - base], [high + base]]
    if name == "shelf":
        return [[bay + 2 * joint], [deep - back]]
    return [[wide - 2 * millimetres(text) + 2 * joint] for text in worked_case.TWO_SHEETS[unit]]


@pytest.mark.parametrize("name", ["back", "bays", "divider", "base", "shelf", "sheets"])
def test_each_line_comes_to_the_sum_by_hand(name, unit):
    found = comes_to(getattr(worked_case, f"{name}_worked")(unit))
    expected = by_hand(name, unit)
    assert [len(line) for line in found] == [len(line) for line in expected]
    near = MARK[unit] if name in ("bays", "shelf") else 0  # what will not divide is shared in whole marks
    for line, sums in zip(found, expected, strict=True):
        assert all(abs(one - other) <= near + SHOWN[unit] for one, other in zip(line, sums, strict=True)), line


def test_the_bays_and_the_uprights_fill_the_case(unit):
    _, (air,), bays = comes_to(worked_case.bays_worked(unit))
    assert abs(sum(bays) - air) <= MARK[unit] and (unit == "in" or sum(bays) == air)


def test_how_each_line_is_worked_out_comes_to_its_number(unit):
    """A sum of lengths, differences and multiples, as it stands in the middle column."""
    for name in ("back", "divider", "sheets"):
        for line in getattr(worked_case, f"{name}_worked")(unit).lines:
            total, sign, times = Fraction(0), 1, 1
            for part in re.findall(r"[-+]|\d+ x|(?:\d+ )?\d+(?:/\d+|\.\d+)? (?:in|mm)\b", line[1]):
                if part in "+-":
                    sign, times = (1 if part == "+" else -1), 1
                elif part.endswith(" x"):
                    times = int(part[:-2])
                else:
                    total += sign * times * millimetres(part)
            assert abs(total - millimetres(line[2])) <= 3 * SHOWN[unit], line
