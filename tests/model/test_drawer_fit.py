"""Drawer boxes against published pieces, and shims, offcut and lean against sums by other means."""

from math import hypot
from random import Random

import pytest

from shoplib.lessons.small_box import box_width, part, small_box
from shoplib.measure import INCH, MM, read_length
from shoplib.model.drawer_fit import front_by_offcut, offcut_over, out_of_square, shims, taper
from shoplib.model.project import Opening
from shoplib.tables.slides import slide


def box_of(width, stock, rabbet, groove):
    wide = width + INCH
    return small_box(wide, wide, side=INCH // 2, stock=stock, rabbet=rabbet, groove=groove, slack=0, depth=24 * INCH)


@pytest.mark.parametrize(
    ("piece", "box", "stock", "joint", "published"),
    [
        # H. H. Windsor, Mission Furniture, Part Three (1912), sideboard, pp. 116-118: backs and bottoms as billed. The
        # depths of dado and groove are inferred: one value explains back and bottom alike.
        ("sideboard, small drawer", "24 1/2 in", "1/2 in", "1/4 in", "24 in"),
        ("sideboard, wide drawer", "52 1/2 in", "5/8 in", "3/8 in", "52 in"),
        # The same, dresser, pp. 10-13: bottom of the wide drawer; groove inferred.
        ("dresser, wide drawer", "36 in", "1/2 in", "1/4 in", "35 1/2 in"),
    ],
)
def test_backs_and_bottoms_as_published(piece, box, stock, joint, published):
    box, stock, joint, published = (read_length(text) for text in (box, stock, joint, published))
    case = box_of(box, stock, joint, joint)
    assert part(case, "box bottom", 0) == published, piece
    assert part(case, "box back", 0) == published, piece


def test_a_box_on_runners_below_is_a_sixteenth_smaller_than_the_opening():
    """Foster, Carpentry and Woodwork (1911), read: a drawer is made 1/16 in smaller than its opening."""
    assert 2 * slide("wood runner below with kicker").side == read_length("1/16 in")


def test_side_mount_slides_take_an_inch_for_the_pair():
    """Common practice, no source."""
    case = small_box(16 * INCH, 16 * INCH)
    assert box_width(case) == 15 * INCH


def test_one_offcut_is_right_only_at_half_of_the_measured_stock():
    draw = Random(1)
    for _ in range(60):
        stock = 2 * draw.randint(5 * MM, 9 * MM)
        rabbet = draw.choice([stock // 2, stock // 3, stock * 2 // 5, stock * 3 // 5])
        case = box_of(15 * INCH, stock, rabbet, stock // 3)
        marked = front_by_offcut(box_width(case), stock)
        assert marked - part(case, "box front", 0) == offcut_over(stock, rabbet)
        assert (offcut_over(stock, rabbet) == 0) == (2 * rabbet == stock)


def test_shims_fill_what_box_and_slides_leave():
    draw = Random(2)
    for _ in range(200):
        box, side = draw.randint(300 * MM, 500 * MM), draw.randint(5 * MM, 20 * MM)
        at = [box + 2 * side + draw.randint(0, 3 * MM) for _ in range(2)]
        found = shims(Opening(*at), box, side)
        for shim, opening in zip(found, at, strict=True):
            assert 0 <= opening - (box + 2 * side + 2 * shim) <= 1
        spread, wide = taper(Opening(*at))
        assert spread == abs(at[0] - at[1]) and (wide == "") == (spread == 0)


def test_the_lean_of_an_opening_follows_from_its_diagonals():
    """Corners laid out in the plane, diagonals by Pythagoras in floating point."""
    draw = Random(3)
    for _ in range(200):
        width, side, lean = draw.uniform(250, 900), draw.uniform(300, 700), draw.uniform(0, 20)
        deep = (side**2 - lean**2) ** 0.5
        longer, shorter = hypot(width + lean, deep), hypot(width - lean, deep)
        found = out_of_square(round(longer * MM), round(shorter * MM), round(width * MM))
        assert abs(found / MM - lean) < 1e-3
    with pytest.raises(ValueError, match="width above nothing"):
        out_of_square(3, 2, 0)
