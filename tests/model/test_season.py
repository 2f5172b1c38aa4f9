"""Gaps beside solid fronts through the year, by hand: dD = D C (M_F - M_I), Wood Handbook (2010), chapter 13.

White oak, flatsawn, C_T .00365 (Table 13-5, read); at 70 F 50 % humidity comes to 9.2 % of moisture, 60 % to 11.0 %
(Table 4-2, read). A front held along its middle gives half of its growth to each side (common practice, no source).
"""

from fractions import Fraction

import pytest

from shoplib.measure import INCH
from shoplib.model.movement import gap_left, moisture_content, movement
from shoplib.model.season import FAHRENHEIT, HUMIDITIES, Season, moisture

OAK = Fraction("0.00365")
NEAR = Fraction("0.14") * OAK
"""Each printed moisture content is within 0.07 of ours, so a movement within this part of the height."""


@pytest.mark.parametrize(("gap", "grown", "left"), [
    (100, [], 100), (100, [40], 80), (100, [40, 40], 60), (100, [40, 20], 70), (100, [240], -20),
    (100, [-40, -20], 130),
])
def test_each_front_takes_half_of_what_it_grows(gap, grown, left):
    assert gap_left(gap, grown) == left


@pytest.mark.parametrize(("height", "beside", "left"), [
    # 23.75 x .00365 x 1.8 = 0.1560 in; half of it from 0.125
    ("23.75", "0", "0.0470"),
    # the same in a column: 7.75 x .00365 x 1.8 = 0.0509, both halves
    ("7.75", "7.75", "0.0741"),
    # 8.875 and 6.875 in: 0.0583 / 2 + 0.0452 / 2 = 0.0517
    ("8.875", "6.875", "0.0733"),
])
def test_what_is_left_of_an_eighth_by_hand(height, beside, left):
    high, low = (int(Fraction(size) * INCH) for size in (height, beside))
    season = Season(high, low, INCH // 8, OAK, 50, 30, 60)
    near = NEAR * (Fraction(height) + Fraction(beside)) / 2 + Fraction("0.0001")
    assert abs(Fraction(season.narrowest_gap(), INCH) - Fraction(left)) <= near


def test_the_gap_opens_in_the_dry_season():
    """20 x .00365 x (9.2 - 6.2) = 0.219 (30 % comes to 6.2 %, Table 4-2, read): half of it on top of 1/8 in."""
    season = Season(20 * INCH, 0, INCH // 8, OAK, 50, 30, 60)
    assert abs(Fraction(season.widest_gap(), INCH) - Fraction("0.2345")) <= NEAR * 10


def test_the_humidities_end_where_the_sum_ends():
    """6 to 14 %, chapter 13; at 70 F 70 % humidity comes to 13.1 and 80 % to 16.0 % (Table 4-2, read)."""
    assert all(6 <= moisture(humid) <= 14 for humid in HUMIDITIES)
    assert moisture_content(FAHRENHEIT, HUMIDITIES[-1] + 1) > 14
    with pytest.raises(ValueError, match="is outside"):
        movement(INCH, OAK, moisture(45), moisture(HUMIDITIES[-1] + 1))
