"""Where joints, stops, rails, shelves, pins and bases of a case meet: what a cabinetmaker would look at twice.

Shop practice without a source unless a check names one; sizes are made up.
"""

from dataclasses import replace

import pytest

from shoplib.model.board import BoxCut
from shoplib.model.cabinet import solve
from shoplib.model.project import (
    Base,
    Bay,
    Drawers,
    Edging,
    Fronts,
    JointChoice,
    Project,
    Rail,
    Shelves,
)
from tests.model.plain_case import MM, Solved, a_case, refusal, stops

STOPPED = JointChoice("dado", MM.of(6), stop=MM.of(20))


def shelf_case(shelves: Shelves, **more) -> Project:
    return a_case(MM, t=["18"], bays=(Bay("shelves", shelves=shelves),), **more)


@pytest.mark.parametrize("setback", [0, 10, 20, 35])
def test_a_stopped_dado_and_the_notch_in_its_shelf_end_at_one_place(setback):
    """The dado begins at the stop, or at the shelf where that is set back farther: nothing shows before it."""
    project = shelf_case(Shelves(fixed=1, setbacks=(MM.of(setback),)), carcass={"shelf": STOPPED})
    solved = Solved(project, MM)
    dado = solved.board("left side").placement.to_world(solved.cut("left side", "bay 1 shelf 1").box)
    assert MM.back(dado.low[1]) == max(20, setback)
    notches = [c for c in solved.board("bay 1 shelf 1").cuts if isinstance(c, BoxCut) and c.kind == "notch"]
    assert len(notches) == (2 if setback < 20 else 0)
    for notch in notches:
        assert MM.back(notch.box.size[0]) == 6 and MM.back(notch.box.size[1]) == 20 - setback
    assert stops(project) == []


def test_a_stop_as_long_as_the_joint_is_refused():
    carcass = {"shelf": replace(STOPPED, stop=MM.of(600))}
    assert refusal(shelf_case(Shelves(fixed=1), carcass=carcass)) == "carcass.shelf.stop"


@pytest.mark.parametrize("kind", ["band", "strip"])
def test_edging_on_the_case_leaves_the_dry_fit_and_comes_off_the_saw_size(kind):
    """Finished size with edging fits as before; what is sawn is less the strip (cut size = finished - edging)."""
    carcass = {"corner": JointChoice("rabbet"), "shelf": STOPPED}
    bare = shelf_case(Shelves(fixed=1), carcass=carcass)
    edged = replace(bare, edging=(Edging("case", kind, MM.of(9)), Edging("shelves", kind, MM.of(9))))
    assert [b.box for b in solve(edged).boards] == [b.box for b in solve(bare).boards]
    assert stops(edged) == []
    for name in ("left side", "right side", "top", "bottom", "bay 1 shelf 1"):
        board = solve(edged).by_name[name]
        assert board.cut_size == (board.length, board.width - MM.of(9), board.thickness)


def test_edging_as_wide_as_the_board_is_refused():
    project = replace(shelf_case(Shelves(fixed=1)), edging=(Edging("case", "strip", MM.of(600)),))
    assert refusal(project) == "edging"


def test_a_shelf_goes_to_the_back_under_a_rail_and_stops_at_a_rail_beside_it():
    rail = Rail(MM.of(80))
    case = shelf_case(Shelves(at=(MM.of(300), MM.of(700)), setbacks=()), carcass={"rails": (rail,)})
    solved = Solved(case, MM)
    assert solved.high("bay 1 shelf 1", 1) == 500
    # The rail hangs under the top: its span is 662 to 742 mm, and the shelf at 700 lies in it.
    assert (solved.low("rail 1", 2), solved.high("rail 1", 2)) == (662, 742)
    assert solved.high("bay 1 shelf 2", 1) == 500 - 18
    assert stops(case) == []


@pytest.mark.parametrize(("width", "at", "key"), [(900, None, "width"), (80, 700, "at")])
def test_a_rail_outside_the_case_is_refused(width, at, key):
    rail = Rail(MM.of(width), at=None if at is None else MM.of(at))
    assert refusal(a_case(MM, carcass={"rails": (rail,)})) == f"carcass.rails[1].{key}"


@pytest.mark.parametrize(("deep", "meet"), [("8.9", False), ("9", True), ("10", True)])
def test_pins_from_both_sides_of_a_divider_must_not_meet_in_it(deep, meet):
    """Two holes at one height go 2 d deep into a divider of 18 mm."""
    bay = Bay("shelves", shelves=Shelves(loose=2, pin_diameter=MM.of(5), pin_depth=MM.of(deep)))
    case = a_case(MM, t=["18"], bays=(bay, bay), carcass={"divider": JointChoice("dado")})
    if meet:
        assert refusal(case) == "bays[2].shelves.pin_depth"
    else:
        assert stops(case) == []
    other = replace(bay, shelves=replace(bay.shelves, loose=1))
    assert stops(replace(case, bays=(bay, other))) == []  # at other heights they pass one another


def test_pins_that_would_stand_outside_a_shallow_shelf_are_refused():
    """37 mm from the front and 37 mm from the rear (system holes, common practice, no source)."""
    assert refusal(shelf_case(Shelves(loose=1, loose_depth=MM.of(75)))) == "bays[1].shelves.loose_depth"
    assert stops(shelf_case(Shelves(loose=1, loose_depth=MM.of(90)))) == []


@pytest.mark.parametrize(("setback", "fits"), [(0, True), (50, True), (482, True), (483, False), (600, False)])
def test_a_toe_board_stands_inside_the_case_under_its_bottom(setback, fits):
    base = Base("toe space", MM.of(100), MM.of(setback), "case sheet")
    case = a_case(MM, t=["18"], base=base)
    if not fits:
        assert refusal(case) == "base.setback"
        return
    solved = Solved(case, MM)
    assert (solved.low("toe board", 1), solved.high("toe board", 1)) == (setback, setback + 18)
    assert (solved.low("toe board", 2), solved.high("toe board", 2)) == (0, 100)
    assert solved.low("bottom", 2) == 100
    assert solved.size("toe board", 0) == 600 - 2 * 18
    # More than a third of the 500 mm hangs over: it stands, but nobody would let it.
    assert ["tips forward" in told for told in stops(case)] == ([True] if 3 * setback > 500 else [])


def test_a_table_for_another_kind_of_bay_is_refused():
    fronts = Fronts("none")
    assert refusal(a_case(MM, bays=(Bay("open", drawers=Drawers()),), fronts=fronts)) == "bays[1].drawers"
    assert refusal(a_case(MM, bays=(Bay("shelves"),), fronts=fronts)) == "bays[1].shelves"
    assert refusal(a_case(MM, bays=(), fronts=fronts)) == "bays"


@pytest.mark.parametrize(
    ("at", "wrong"),
    [
        (("1",), 1),
        (("30", "760"), 2),
        (("200", "210"), 2),
        (("300", "200", "290"), 1),
        (("741",), 1),
        (("742", "30"), 1),
    ],
)
def test_a_shelf_at_a_height_where_it_cannot_stand_is_refused(at, wrong):
    """Between a bottom up to 18 mm and a top from 742 mm; 18 mm thick itself."""
    assert refusal(shelf_case(Shelves(at=tuple(map(MM.of, at))))) == f"bays[1].shelves.at[{wrong}]"


def test_shelves_that_leave_no_openings_are_refused():
    assert refusal(shelf_case(Shelves(fixed=40))) == "bays[1].shelves.fixed"
    assert refusal(shelf_case(Shelves(loose=40))) == "bays[1].shelves.loose"
