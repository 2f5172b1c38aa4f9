"""Where a leaning blade and its fence stand for the slot of a splined mitre, by the corners of the cut boards."""

from fractions import Fraction

import pytest

from shoplib.joints import joint
from shoplib.joints.bench_pair import stock_of
from shoplib.joints.splined_mitre import blade_height, blade_to_fence, toe_to_slot
from shoplib.measure import INCH, MM, MM_STYLE, read_length

MITRE = joint("splined mitre")
STOCKS = [
    stock_of(19 * MM, style=MM_STYLE), stock_of(3 * INCH // 4), stock_of(INCH * 703 // 1000),
    stock_of(INCH, 3 * INCH // 4), stock_of(16 * MM, 25 * MM, style=MM_STYLE),
]


def slot_of(pair, name):
    """The corners of a board's slot: how far from its outer face, and how far from its long point along the board."""
    board = pair.by_name[name]
    [cut] = [cut for cut in board.cuts if cut.kind == "slot"]
    prism = cut.prism.placed(board.placement)
    assert prism.axis == 1
    corners = [(z, x) for z, x in prism.outline]
    return corners if name == "bottom" else [(x, z) for z, x in corners]


@pytest.mark.parametrize("stock", STOCKS)
@pytest.mark.parametrize("name", ["bottom", "side"])
def test_the_tip_cuts_the_corner_of_the_slot_that_is_farthest_from_the_table(stock, name):
    """The board lies on its inside face: a corner stands as high as the board is thick less its way from outside."""
    pair = MITRE.build(stock)
    thick = pair.by_name[name].thickness
    highest = max(thick - out for out, _ in slot_of(pair, name))
    assert blade_height(stock, pair.values, thick) == pytest.approx(highest, abs=2)


@pytest.mark.parametrize("stock", STOCKS)
@pytest.mark.parametrize("name", ["bottom", "side"])
def test_the_fence_stands_at_the_long_point_and_the_blade_on_the_line_of_the_wall(stock, name):
    """The wall nearer to the toe, drawn on down to the table: how far from the long point it gets there."""
    pair = MITRE.build(stock)
    thick = pair.by_name[name].thickness
    wall = sorted(slot_of(pair, name), key=sum)[:2]  # both corners that lie least far up the mitre
    (out, along), (deeper_out, deeper_along) = sorted(wall, key=lambda corner: -corner[0])
    lean = Fraction(int(along - deeper_along), int(out - deeper_out))
    at_table = along + lean * (thick - out)
    assert blade_to_fence(stock, pair.values, thick) == pytest.approx(float(at_table), abs=4)
    toe = min((out**2 + along**2) ** 0.5 for out, along in wall)
    assert toe_to_slot(stock, pair.values) == pytest.approx(toe, abs=4)


def test_by_hand_in_both_units():
    """Worked by hand from the corner of the triangle: 19 mm: (6.02 + 7.6) / 1.41421 = 9.63, 26.87 - 6.02 = 20.85 mm."""
    stock = STOCKS[0]
    values = MITRE.usual(stock)
    assert blade_height(stock, values, 19 * MM) == pytest.approx(963 * MM // 100, abs=MM // 100)
    assert toe_to_slot(stock, values) == pytest.approx(2085 * MM // 100, abs=MM // 100)
    inches = STOCKS[1]
    high = blade_height(inches, MITRE.usual(inches), 3 * INCH // 4)
    assert high == pytest.approx(read_length("0.388 in"), abs=INCH // 1000)
