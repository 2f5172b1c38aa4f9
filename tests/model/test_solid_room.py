"""The room that solid wood needs, worked by hand from the Wood Handbook's sum."""

from fractions import Fraction

import pytest

from shoplib.measure import MM
from shoplib.model.movement import gap_left
from shoplib.model.season import moisture
from shoplib.model.solid_room import gap_to_plan, year_round

OAK = Fraction("0.00365")  # white oak, flatsawn, Wood Handbook Table 13-5, read


def test_a_year_by_hand():
    """dD = D C dM (Wood Handbook ch. 13): 45, 35 and 65 % come to 8.5, 6.9 and 12.0 % of moisture at 70 F."""
    moves = year_round(400 * MM, OAK, 45, 35, 65)
    as_made, dry, damp = (moisture(humid) for humid in (45, 35, 65))
    assert [round(m, 1) for m in (as_made, dry, damp)] == [8.5, 6.9, 12.0]
    assert moves.grows / MM == pytest.approx(400 * 0.00365 * (damp - as_made), abs=1e-4)
    assert moves.shrinks / MM == pytest.approx(400 * 0.00365 * (as_made - dry), abs=1e-4)


def test_made_in_the_dampest_air_it_never_grows():
    moves = year_round(400 * MM, OAK, 65, 35, 65)
    assert moves.grows == 0 and moves.shrinks > 0


@pytest.mark.parametrize("beside", [0, 150 * MM, 333 * MM])
def test_the_gap_to_plan_leaves_just_what_is_asked(beside):
    gap = gap_to_plan(200 * MM, beside, OAK, 45, 65, MM)
    grown = [year_round(width, OAK, 45, 45, 65).grows for width in (200 * MM, beside)]
    assert MM <= gap_left(gap, grown) <= MM + 1


def test_outside_the_sum_it_is_refused():
    with pytest.raises(ValueError, match="6 to 14 %"):
        year_round(400 * MM, OAK, 45, 20, 65)
