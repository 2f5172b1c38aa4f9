"""What the trade and its handbooks say, held against solved cabinets; each fact with its source or its mark.

"read": the figure was read in a copy of the source. "common practice, no source": what shops do.
"""

from dataclasses import replace
from fractions import Fraction

import pytest

from shoplib.measure import read_length, to_mm
from shoplib.model.board import Hole
from shoplib.model.box import Box
from shoplib.model.project import Base, Bay, Drawers, JointChoice, Opening, Shelves, Size, Space
from tests.model.plain_case import IN, MM, Solved, a_case, drawer_case, each, exact, usual_size

DRAWER = "bay 1 drawer 1"


def opening_read(project, unit, wide):
    """The project with the opening of its first drawer read as so wide, front and back."""
    read = Opening(unit.of(wide), unit.of(wide))
    return replace(project, measured=replace(project.measured, openings={DRAWER: read}))


@each(
    "opening, pair",
    (IN, "16", "1"),
    (IN, "22 37/64", "1"),
    (MM, "565.4", "25.4"),
    (MM, "400.9", "25.4"),
)
def test_a_pair_of_side_mount_slides_takes_one_inch(unit, opening, pair):
    """1/2 in each side, 1 in for the pair: common practice, no source. Openings that leave the box whole steps."""
    width = opening + 2 * exact("0.703" if unit is IN else "17.86")
    solved = Solved(drawer_case(unit, size=usual_size(unit, width=width)), unit)
    assert opening - solved.box_width(DRAWER) == pair
    slides = [piece.box for piece in solved.cabinet.hardware if piece.what == "slide"]
    assert [unit.back(box.size[0]) for box in slides] == [pair / 2, pair / 2]
    assert Solved(opening_read(drawer_case(unit), unit, opening), unit).box_width(DRAWER) == opening - pair


@each(
    "measured, nominal",
    (IN, "0.472", "1/2"),
    (IN, "0.494", "1/2"),
    (IN, "0.7", "3/4"),
    (MM, "11.86", "12"),
    (MM, "14.7", "15"),
)
def test_rabbets_of_half_the_measured_thickness_make_front_and_back_one_side_shorter(unit, measured, nominal):
    """Common practice, no source: one offcut held in the opening then stands for both sides.

    With half the nominal thickness they come out too long by what the sheet lacks.
    """

    def shorter_by(depth):
        corner = JointChoice("rabbet", depth)
        solved = Solved(drawer_case(unit, s=[measured], rule={"corner": corner}), unit)
        box = solved.box_width(DRAWER)
        return {box - solved.size(f"{DRAWER} {end}", 0) for end in ("box front", "box back")}

    assert shorter_by(unit.of(measured / 2)) == {measured}
    assert shorter_by(None) == {measured}  # the depth that a project gets that names none
    assert shorter_by(unit.of(nominal / 2)) == {2 * measured - nominal}
    assert 2 * measured - nominal != measured


@each("height", (IN, "3"), (IN, "3 1/2"), (IN, "4"), (MM, "75"), (MM, "100"))
def test_casters_stand_under_the_boards_and_are_left_out_of_their_outside(unit, height):
    """Casters add 3 to 4 in under a case: common practice, no source."""
    casters = Base("casters", unit.of(height))
    plain, rolling = (Solved(a_case(unit, base=base), unit) for base in (Base(), casters))
    assert rolling.outside() == plain.outside() == usual_size(unit)
    assert rolling.cabinet.boards == plain.cabinet.boards
    assert unit.back(rolling.cabinet.envelope.low[2]) == -height
    assert unit.back(rolling.cabinet.envelope.size[2]) == usual_size(unit)[1] + height
    assert plain.cabinet.envelope == plain.cabinet.outside


@each("height", (IN, "3 1/2"), (MM, "100"))
def test_leaving_casters_off_gives_their_height_back(unit, height):
    """Common practice, no source: of a space to fill, casters take their height from the case."""
    space = Space(*((unit.of(side),) * 2 for side in usual_size(unit)))
    plain, rolling = (
        Solved(a_case(unit, size=Size("space"), space=space, base=base), unit)
        for base in (Base(), Base("casters", unit.of(height)))
    )
    assert plain.outside()[1] - rolling.outside()[1] == height
    assert plain.cabinet.envelope.size == rolling.cabinet.envelope.size


@pytest.mark.parametrize("opening", ["16", "11 13/64", "21 7/8"])
def test_a_box_on_runners_below_it_is_a_sixteenth_smaller_than_its_opening(opening):
    """Foster, Carpentry and Woodwork (1911), read: 1/16 in smaller than the opening."""
    project = opening_read(drawer_case(IN, rule={"slide": "wood runner below with kicker"}), IN, exact(opening))
    assert exact(opening) - Solved(project, IN).box_width(DRAWER) == Fraction(1, 16)


@each("opening,thick,groove,play", (IN, "16", "3/8", "3/16", "1/32"), (MM, "400", "10", "5", "1"))
def test_a_side_hung_box_stands_off_by_half_of_its_runners(unit, opening, thick, groove, play):
    """Common practice, no source: a runner that holds a screw's head lies half in its groove, with play before it."""
    rule = {"slide": "side-hung wood runner", "corner": JointChoice("butt")}
    solved = Solved(opening_read(drawer_case(unit, rule=rule), unit, opening), unit)
    assert solved.size(f"{DRAWER} left runner", 0) == thick
    assert solved.cut_size(f"{DRAWER} left box side", f"{DRAWER} left runner", 0) == groove
    assert opening - solved.box_width(DRAWER) == 2 * (thick - groove + play)


@each("one, t", (IN, "1 3/4", "0.703"), (IN, "2 1/8", "0.719"), (MM, "45", "17.86"))
@pytest.mark.parametrize("ratio", [(7, 6, 5, 4, 3, 2, 1)[:count] for count in (4, 5, 6)])
def test_drawers_are_graded_as_7_6_5_4_3_2_1_from_the_bottom_up(unit, one, t, ratio):
    """Varnum, Industrial Arts Design (1916), Rule 2c (arithmetic), read. A case whose fronts come out whole."""
    gap = exact("1/8" if unit is IN else 3)
    height = 2 * t + sum(ratio) * one + (len(ratio) + 1) * gap
    rule = {"count": len(ratio), "heights": "ratio", "ratio": ratio}
    solved = Solved(drawer_case(unit, size=usual_size(unit, height=height), t=[t], gap=gap, rule=rule), unit)
    heights = [solved.size(f"bay 1 drawer {row} front", 2) for row in range(1, len(ratio) + 1)]
    assert heights == [part * one for part in ratio]


def test_the_groove_of_a_drawer_bottom_is_a_quarter_inch_up():
    """Windsor, Mission Furniture, Part Three (1912), p. 87, read; what a project gets that names no height."""
    rule = Drawers(slide=IN.slide, box_sheet="box sheet", bottom_sheet="thin sheet")
    solved = Solved(a_case(IN, bays=(Bay("drawers", drawers=rule),)), IN)
    for part in ("left box side", "right box side", "box front", "box back"):
        name = f"{DRAWER} {part}"
        groove = solved.cut(name, f"{DRAWER} box bottom")
        assert groove.kind == "groove"
        up = solved.board(name).placement.own_axis(2)
        assert solved.board(name).placement.axes[up] == "+z"
        assert IN.back(groove.low[up]) == Fraction(1, 4), part


@pytest.mark.parametrize("thin", ["1/4", "0.204"])
def test_a_bottom_under_a_low_back_is_free_behind(thin):
    """Noyes, Handwork in Wood (1910), read: the bottom runs under a low back and is held in front and at the sides."""
    solved = Solved(drawer_case(IN, thin=[thin], rule={"bottom": "under back"}), IN)
    bottom, back = f"{DRAWER} box bottom", f"{DRAWER} box back"
    held = {joint.receives for joint in solved.cabinet.joints if joint.enters == bottom}
    assert held == {f"{DRAWER} {part}" for part in ("left box side", "right box side", "box front")}
    assert solved.low(back, 2) == solved.high(bottom, 2)
    assert solved.high(bottom, 1) == solved.high(back, 1)


@pytest.mark.parametrize("unit", [IN, MM], ids=["in", "mm"])
def test_shelf_pins_stand_37_mm_behind_the_front_edge(unit):
    """System holes, 37 mm from the front edge: common practice, no source."""
    solved = Solved(a_case(unit, bays=(Bay("shelves", shelves=Shelves(loose=2)),)), unit)
    for name in ("left side", "right side"):
        side = solved.board(name)
        holes = [hole for hole in side.cuts if isinstance(hole, Hole)]
        assert len(holes) == 4
        across = {side.placement.to_world(Box(hole.centre, hole.centre)).low[1] for hole in holes}
        assert to_mm(min(across)) == 37


# --- units: NIST SP 811 and Handbook 44, read


def test_an_inch_is_25_4_mm_exactly():
    assert read_length("1 in") == read_length("25.4 mm")
    assert read_length("5 in") == read_length("127 mm")
    assert read_length("1 in") * 10 == read_length("1 mm") * 254
    assert read_length("1 ft") == read_length("12 in") == read_length("304.8 mm")


def test_a_sheet_of_4_by_8_feet_in_millimetres():
    assert read_length("4 ft") == read_length("1219.2 mm")
    assert read_length("8 ft") == read_length("2438.4 mm")


def test_a_board_foot_is_144_cubic_inches_or_2359_737216_cubic_centimetres():
    foot = Box((0, 0, 0), (read_length("12 in"), read_length("1 ft"), read_length("1 in")))
    assert Fraction(foot.volume, read_length("1 in") ** 3) == 144
    assert Fraction(foot.volume, read_length("1 cm") ** 3) == Fraction("2359.737216")
