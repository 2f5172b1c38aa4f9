"""Sets of boards that gape or clash: found where boards of sizes written here must meet."""

import pytest

from shoplib.checks.misfits import BARE, CLASH, GAP, SLIDE, misfits, outside
from shoplib.lists.refit import refit
from shoplib.measure import INCH, INCH_STYLE
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Carcass, Drawers, Fronts, JointChoice, Project, Size
from shoplib.model.sheet import Sheet
from shoplib.tables.slides import slide

BACK_ENDS = 29 * INCH + INCH * 3 // 4
"""The back's rabbet in the right side of `case` ends 1/4 in short of the outside."""


def case(**other):
    """30 in wide and 20 in high, of 3/4 in sheet; rabbets 1/4 in at the corners and 1/2 in for the back."""
    sheets = {"case": Sheet("case", "plywood", INCH * 3 // 4), "thin": Sheet("thin", "plywood", INCH // 4)}
    carcass = Carcass("case", corner=JointChoice("rabbet", INCH // 4), back=Back("rabbet", "thin", INCH // 2))
    size = Size("outside", 30 * INCH, 20 * INCH, 18 * INCH)
    return solve(Project("case", INCH_STYLE, sheets, size, carcass, **other))


def cut(cabinet, name, own, by):
    size = list(cabinet.by_name[name].size)
    size[own] += by
    return refit(cabinet, {name: tuple(size)}).cabinet


def applied():
    """30 in wide and 20 in high, with a back 1/4 in thick laid over the rear edges, flush with the outside."""
    sheets = {"case": Sheet("case", "plywood", INCH * 3 // 4), "thin": Sheet("thin", "plywood", INCH // 4)}
    carcass = Carcass("case", back=Back("applied", "thin"))
    return solve(Project("case", INCH_STYLE, sheets, Size("outside", 30 * INCH, 20 * INCH, 18 * INCH), carcass))


BOX = "bay 1 drawer 1"


def off_its_slides(by):
    """A case with one drawer, and the same with its box `by` wider."""
    rule = Drawers(count=1, box_sheet="case", bottom_sheet="thin", slide="side-mount ball-bearing")
    planned = case(bays=(Bay("drawers", drawers=rule),), slides={rule.slide: slide(rule.slide)})
    ends = (f"{BOX} box front", f"{BOX} box back")
    return planned, refit(planned, {
        name: (board.length + by, board.width, board.thickness)
        for name in ends for board in [planned.by_name[name]]
    }).cabinet


@pytest.mark.parametrize(("by", "kind"), [(INCH, CLASH), (-INCH, GAP)])
def test_a_back_of_another_width_gapes_or_clashes_at_its_right_end(by, kind):
    planned = case()
    (misfit,) = misfits(cut(planned, "back", 0, by), planned)
    assert (misfit.kind, misfit.boards, misfit.axis, misfit.amount) == (kind, ("back", "right side"), 0, INCH)
    assert {misfit.box.low[0], misfit.box.high[0]} == {BACK_ENDS, BACK_ENDS + by}


def test_the_outside_is_that_of_the_case_though_its_back_sticks_out():
    planned = case()
    built = refit(planned, {n: (27 * INCH, 18 * INCH, INCH * 3 // 4) for n in ("bottom", "top")}).cabinet  # 2 in short
    assert outside(built, planned).size == (28 * INCH, 18 * INCH, 20 * INCH)


def test_what_fits_has_no_misfit():
    assert misfits(case(), case()) == ()


def test_fronts_and_boards_without_a_joint_are_found_too():
    rule = Drawers(count=2, box_sheet="case", bottom_sheet="thin")
    fronts = Fronts("inset", "case", gap=INCH // 8, around=INCH // 8)
    planned = case(bays=(Bay("drawers", drawers=rule),), fronts=fronts)
    lower, upper = (b.name for b in planned.boards if b.role == "front")
    height = 1 if planned.by_name[lower].placement.own_axis(2) == 1 else 0
    wide = [m for m in misfits(cut(planned, lower, height, -INCH // 16), planned) if set(m.boards) == {lower, upper}]
    assert [(m.kind, m.axis, m.amount) for m in wide] == [(GAP, 2, INCH // 16)]
    meet = [m for m in misfits(cut(planned, lower, height, INCH // 4), planned) if set(m.boards) == {lower, upper}]
    assert [(m.kind, m.axis, m.amount) for m in meet] == [(CLASH, 2, INCH // 8)]


@pytest.mark.parametrize(("own", "axis", "under"), [(0, 0, "left side"), (1, 2, "bottom")])
def test_an_applied_back_that_ends_short_leaves_an_edge_bare_there(own, axis, under):
    planned = applied()
    (misfit,) = misfits(cut(planned, "back", own, -INCH // 4), planned)
    assert (misfit.kind, misfit.boards, misfit.axis, misfit.amount) == (BARE, ("back", under), axis, INCH // 4)
    assert (misfit.box.low[axis], misfit.box.high[axis]) == (0, INCH // 4)
    # The back lies on the rear edges: 18 in deep with it, so from 17 3/4 in on.
    assert (misfit.box.low[1], misfit.box.high[1]) == (18 * INCH - INCH // 4, 18 * INCH)


@pytest.mark.parametrize("by", [-INCH // 8, INCH // 8])
def test_a_box_off_its_slides_is_found_at_its_right_slide(by):
    planned, built = off_its_slides(by)
    (found,) = [misfit for misfit in misfits(built, planned) if SLIDE in misfit.boards]
    assert (found.kind, found.boards[0], found.amount) == (
        GAP if by < 0 else CLASH, f"{BOX} right box side", INCH // 8
    )
    # The right slide begins where the box should end.
    inner = max(fitting.box.low[0] for fitting in planned.hardware if fitting.what == "slide")
    assert {found.box.low[0], found.box.high[0]} == {inner, inner + by}
