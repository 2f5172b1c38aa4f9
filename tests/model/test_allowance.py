"""What a joint gains, cuts and leaves, against sizes printed in old handbooks and against plain sums.

Foster, Carpentry and Woodwork (1911), pp. 210-211; Windsor, Mission Furniture part 3 (1912), the dictionary stand;
both public domain, the depths derived from their printed sizes.
"""

from itertools import product

import pytest

from shoplib.measure import INCH, INCH_STYLE, MM, read_length
from shoplib.model.allowance import allowance
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Carcass, JointChoice, Project, Shelves, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Joint


def case(width, thick, *, corner=None, shelf=None, bays=1, back=None, readings=()):
    sheets = {"ply": Sheet("ply", "plywood", thick, readings), "thin": Sheet("thin", "plywood", INCH // 4)}
    bay = Bay("shelves", shelves=Shelves(at=(9 * INCH,))) if shelf else Bay()
    carcass = Carcass("ply", corner=corner or JointChoice(), shelf=shelf or JointChoice(), back=back or Back())
    size = Size("outside", width, 30 * INCH, 12 * INCH)
    return solve(Project("case", INCH_STYLE, sheets, size, carcass, bays=(bay,) * bays, rounding=1))


def of(cabinet, enters, receives="left side"):
    return allowance(cabinet, next(j for j in cabinet.joints if (j.enters, j.receives) == (enters, receives)))


def inches(text):
    return read_length(f"{text} in")


def test_a_shelf_of_the_twelve_drawer_cabinet():
    """Foster pp. 210-211: 25 1/8 outside, ends 1/2; the shelf is printed 24 5/8, so it goes 1/4 into each end."""
    cabinet = case(inches("25 1/8"), inches("1/2"), shelf=JointChoice("dado"))  # half the thickness
    assert cabinet.by_name["bay 1 shelf 1"].length == inches("24 5/8")
    found = of(cabinet, "bay 1 shelf 1")
    assert (found.gain, found.depth, found.wood_left) == (inches("1/4"),) * 3


def test_the_housed_shelf_of_the_dictionary_stand():
    """Windsor, part 3: sides 3/4, shelf 17, housed 1/4: the stand is 18 wide."""
    cabinet = case(18 * INCH, inches("3/4"), shelf=JointChoice("dado", inches("1/4")))
    assert cabinet.by_name["bay 1 shelf 1"].length == 17 * INCH
    assert of(cabinet, "bay 1 shelf 1").wood_left == inches("1/2")


def test_a_tongue_lies_at_the_inner_face():
    """Common practice, no source: stock 3/4, tongue 1/4: rabbet 1/2 deep, dado begins 1/2 from the end."""
    cabinet = case(24 * INCH, inches("3/4"), corner=JointChoice("tongue", inches("1/4"), tongue=inches("1/4")))
    found = of(cabinet, "bottom")
    assert (found.near_wall, found.width, found.depth) == (inches("1/2"), inches("1/4"), inches("1/4"))
    rabbet = next(cut for cut in cabinet.by_name["bottom"].cuts if cut.kind == "rabbet")
    assert rabbet.box.size[2] == inches("1/2")


def test_the_thickest_reading_and_the_fit_make_the_width():
    readings = tuple(inches(text) for text in ("0.699", "0.703", "0.710"))
    cabinet = case(24 * INCH, inches("3/4"), shelf=JointChoice("dado", INCH // 4, inches("0.004")), readings=readings)
    found = of(cabinet, "bay 1 shelf 1")
    assert found.width == inches("0.714")
    assert found.wood_left == inches("0.704") - INCH // 4
    assert found.clearance == inches("0.714") - inches("0.704")


@pytest.mark.parametrize(("depth", "gap"), [*product((4 * MM, 6 * MM, 9 * MM), (0, MM // 2, 2 * MM))])
def test_gain_is_depth_less_end_gap_in_every_joint(depth, gap):
    """Common practice, no source."""
    t = 175 * MM // 10
    corner, shelf = JointChoice("rabbet", depth, end_gap=gap), JointChoice("dado", depth, end_gap=gap)
    tongue = JointChoice("tongue", depth, end_gap=gap, tongue=6 * MM)
    back = Back("groove", "thin", depth, 12 * MM, end_gap=gap)
    for cabinet, enters in (
        (case(600 * MM, t, corner=corner), "bottom"), (case(600 * MM, t, corner=tongue), "bottom"),
        (case(600 * MM, t, shelf=shelf), "bay 1 shelf 1"), (case(600 * MM, t, back=back), "back"),
    ):
        for receives in ("left side", "right side"):
            found = of(cabinet, enters, receives)
            assert (found.gain, found.depth, found.end_gap) == (depth - gap, depth, gap)
            assert found.wood_left == t - depth
        assert cabinet.by_name[enters].box.size[0] == 600 * MM - 2 * t + 2 * (depth - gap)


def test_a_butt_joint_gains_and_cuts_nothing():
    found = of(case(24 * INCH, inches("0.703")), "bottom")
    assert (found.gain, found.width, found.depth, found.near_wall) == (0, 0, 0, 0)
    assert found.wood_left == inches("0.703")


def test_a_stop_keeps_the_dado_behind_the_front_edge():
    """Windsor, part 3: the shelf of the dictionary stand is stopped 1/2 behind the edge."""
    cabinet = case(18 * INCH, inches("3/4"), shelf=JointChoice("dado", inches("1/4"), stop=inches("1/2")))
    assert of(cabinet, "bay 1 shelf 1").stop == inches("1/2")


def test_a_board_that_is_not_there():
    with pytest.raises(KeyError):
        allowance(case(18 * INCH, inches("3/4")), Joint("butt", "lid", "top", "+z"))
