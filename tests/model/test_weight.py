"""Weight and middle of one board, worked by hand; whole cases are weighed as solids in `test_tipping.py`."""

import pytest

from shoplib.measure import MM, ureg
from shoplib.model.board import Board, BoxCut, PrismCut
from shoplib.model.material import material_of
from shoplib.model.placement import Placement
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.model.weight import middle, unweighed, volume, weight

FLAT = Placement((0, 0, 0), ("+x", "+y", "+z"))


def board(*cuts, sheet="oak"):
    return Board("shelf", "case", 1, sheet, 1000 * MM, 300 * MM, 20 * MM, FLAT, cuts)


def test_a_board_by_hand():
    """Northern red oak, 0.63 (from memory): 1 x 0.3 x 0.02 m is 0.006 m3; 630 x 1.12 = 705.6 kg/m3; 4.2336 kg."""
    oak = Sheet("oak", "solid", 20 * MM, species="northern red oak")
    found = weight(board(), Cabinet("case", (board(),), {"oak": oak}))
    assert found.low == found.high
    assert found.low.to("newton").magnitude == pytest.approx(4.2336 * 9.80665)
    assert found.middle == (500 * MM, 150 * MM, 10 * MM)


def test_what_is_cut_away_weighs_nothing():
    """A rabbet 300 wide, half the thickness, along one end takes 0.3 x 0.3 x 0.01 m3; the middle moves off it:
    (6 x 500 - 0.9 x 150) / 5.1 = 561.76 mm."""
    cut = BoxCut("rabbet", (0, 0, 0), (300 * MM, 300 * MM, 10 * MM))
    assert volume(board(cut)).magnitude == pytest.approx(0.0051)
    assert middle(board(cut))[0] / MM == pytest.approx(561.7647, abs=1e-3)


def test_a_slanting_cut_weighs_what_it_leaves():
    """A mitre over the whole thickness takes half of 20 x 20 x 300 mm at one end: 60,000 of 6,000,000 mm3, its middle a
    third of 20 mm from the end: (6000 x 500 - 60 x 6.6667) / 5940 = 504.98 mm."""
    cut = PrismCut("mitre", ((0, 0), (20 * MM, 0), (0, 20 * MM)), "v", 0, 300 * MM)
    assert volume(board(cut)).magnitude == pytest.approx(0.00594)
    at = middle(board(cut))
    assert at[0] / MM == pytest.approx((6000 * 500 - 60 * 20 / 3) / 5940, abs=1e-3)
    assert at[2] / MM == pytest.approx((6000 * 10 - 60 * 20 / 3) / 5940, abs=1e-3) and at[1] == 150 * MM


def test_a_sheet_without_a_figure_is_named_and_not_guessed():
    hard = Sheet("back sheet", "hardboard", 3 * MM)
    case = Cabinet("case", (board(sheet="back sheet"),), {"back sheet": hard})
    assert weight(case.boards[0], case) is None and unweighed(case) == ("back sheet",)


def test_a_sheet_weighs_within_its_range():
    """Plywood 0.4 to 0.6 (Wood Handbook Table 12-1, read): 400 to 600 kg/m3."""
    ply = material_of(Sheet("ply", "plywood", 18 * MM))
    low, high = (each.to("newton / meter ** 3").magnitude / 9.80665 for each in ply.weighs)
    assert (round(low), round(high)) == (400, 600)
    assert ply.stiffnesses[0] == ureg.Quantity(6960, "megapascal")
