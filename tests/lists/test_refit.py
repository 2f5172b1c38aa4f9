"""Boards of other sizes put together: worked by hand for a case whose sizes are written here."""

import pytest

from shoplib.checks.outside import find_outside_difference
from shoplib.lists.refit import refit
from shoplib.measure import INCH, MM
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Carcass, Fronts, JointChoice
from shoplib.model.solved import Cabinet
from tests.lists.projects import chest, stand


def changed(cabinet: Cabinet, own: int, by: int, *names: str):
    sizes = {}
    for name in names:
        size = list(cabinet.by_name[name].size)
        size[own] += by
        sizes[name] = tuple(size)
    return refit(cabinet, sizes)


def plain_case() -> Cabinet:
    """The chest without drawers, fronts and back: sides, bottom and top."""
    carcass = Carcass("case sheet", corner=JointChoice("rabbet"), back=Back("none"))
    return solve(chest(bays=(Bay("open"),), fronts=Fronts("none"), carcass=carcass))


@pytest.mark.parametrize("project", [chest(), stand()], ids=["chest", "stand"])
def test_the_planned_sizes_give_the_planned_cabinet(project):
    cabinet = solve(project)
    built = refit(cabinet, {board.name: board.size for board in cabinet.boards})
    assert built.cabinet == cabinet
    assert built.shifts == {}


def test_a_top_comes_down_with_both_sides_and_its_rabbets():
    cabinet = plain_case()
    built = changed(cabinet, 0, -2 * INCH, "left side", "right side")
    assert built.shifts == {"top": (0, 0, -2 * INCH)}
    assert built.cabinet.by_name["top"].box.high[2] == 28 * INCH
    assert built.cabinet.by_name["bottom"] == cabinet.by_name["bottom"]
    # The case goes together so: the only thing off is its height.
    (finding,) = find_outside_difference(built.cabinet)
    assert finding.amount == -2 * INCH


def test_a_top_stays_up_on_the_one_side_that_is_not_short():
    assert changed(plain_case(), 0, -2 * INCH, "left side").shifts == {}


def test_a_side_follows_the_boards_that_hold_it_off():
    short = changed(plain_case(), 0, -INCH, "top", "bottom")
    assert short.shifts == {"right side": (-INCH, 0, 0)}
    assert changed(plain_case(), 0, -INCH, "top").shifts == {}
    assert changed(plain_case(), 0, INCH, "top").shifts == {"right side": (INCH, 0, 0)}


def test_the_right_side_comes_in_past_a_back_that_goes_in_last():
    built = changed(solve(chest()), 0, -INCH, "top", "bottom")
    assert built.shifts == {"right side": (-INCH, 0, 0)}


def test_a_shelf_in_its_dadoes_stays_when_the_sides_are_short():
    cabinet = solve(stand())
    built = changed(cabinet, 0, -20 * MM, "left side", "right side")
    assert set(built.shifts) == {"top"}


def test_a_thicker_side_keeps_its_inside_face():
    cabinet = plain_case()
    built = changed(cabinet, 2, MM, "left side", "right side")
    left, right = (built.cabinet.by_name[name].box for name in ("left side", "right side"))
    assert left.high[0] == cabinet.by_name["left side"].box.high[0]
    assert right.low[0] == cabinet.by_name["right side"].box.low[0]
    assert left.low[0] == -MM


def test_cuts_past_the_end_of_a_shortened_board_are_gone():
    cabinet = solve(stand())
    built = changed(cabinet, 0, -400 * MM, "left side")
    side = built.cabinet.by_name["left side"]
    assert all(cut.high[0] <= side.length for cut in side.cuts)
    assert len(side.cuts) == len(cabinet.by_name["left side"].cuts) - 1  # the shelf at 521.2 mm
