"""Sets of boards that gape or clash, drawn: the marks lie where boards of sizes written here must meet."""

import pytest

from shoplib.draw.dry_fit import View, dry_fit
from shoplib.draw.look import FROM_ABOVE, FRONT
from shoplib.draw.misfits import BARE, CLASH, GAP, SLIDE, misfits, outside
from shoplib.draw.pen import draw
from shoplib.draw.scene import Leader, Line, Shape
from shoplib.lists.refit import refit
from shoplib.measure import INCH, INCH_STYLE
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Carcass, Drawers, Fronts, JointChoice, Project, Size
from shoplib.model.sheet import Sheet
from shoplib.tables.slides import slide
from tests.draw.test_pen import overlaps

FRONT_VIEW = View(FRONT, "back")


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


def marks(scene):
    return [item for item in scene.items if type(item) is Shape and item.fill in ("air", "clash")]


@pytest.mark.parametrize(("by", "kind", "low", "high"), [
    # The back's rabbet in the right side ends 1/4 in short of the outside, at 29 3/4 in.
    (INCH, CLASH, 29 * INCH + INCH * 3 // 4, 30 * INCH + INCH * 3 // 4),
    (-INCH, GAP, 28 * INCH + INCH * 3 // 4, 29 * INCH + INCH * 3 // 4),
])
def test_a_back_of_another_width_gapes_or_clashes_at_its_right_end(by, kind, low, high):
    planned = case()
    built = cut(planned, "back", 0, by)
    (misfit,) = misfits(built, planned)
    assert (misfit.kind, misfit.boards, misfit.amount) == (kind, ("back", "right side"), INCH)
    scene = dry_fit(built, planned, [misfit], FRONT_VIEW)
    (mark,) = marks(scene)
    assert (mark.rects[0][0], mark.rects[0][2]) == (low, high)
    assert mark.hatch == ("x" if kind == CLASH else "")
    assert f"A {kind} of 1 in between back and right side" in scene.alt and "larger" not in scene.note
    assert f"{kind} 1 in" in [item.text for item in scene.items if type(item) is Leader]
    assert draw(scene).count("<desc>") == 1


def test_a_small_one_is_drawn_larger_where_it_is_and_said_so():
    planned = case()
    built = cut(planned, "back", 0, INCH // 16)
    scene = dry_fit(built, planned, misfits(built, planned), FRONT_VIEW)
    (mark,) = marks(scene)
    left, _, right, _ = mark.rects[0]
    middle = 29 * INCH + INCH * 3 // 4 + INCH // 32
    assert right - left > INCH // 4 and abs((left + right) // 2 - middle) <= 1
    assert "drawn larger than they are" in scene.note and "drawn larger than they are" in scene.alt
    assert "1/16 in" in scene.alt


def test_the_outside_is_that_of_the_case_though_its_back_sticks_out():
    planned = case()
    built = refit(planned, {n: (27 * INCH, 18 * INCH, INCH * 3 // 4) for n in ("bottom", "top")}).cabinet  # 2 in short
    assert outside(built, planned).size[0] == 28 * INCH
    scene = dry_fit(built, planned, misfits(built, planned), FRONT_VIEW)
    assert any(type(item) is Line and item.kind == "hidden" for item in scene.items)
    assert scene.legend == ("Dashed: the outside that was asked for. It comes to 28 in wide, asked for 30 in.",)


def test_what_fits_has_no_marks():
    planned = case()
    scene = dry_fit(planned, planned, misfits(planned, planned), FRONT_VIEW)
    assert not marks(scene) and not scene.legend and "No gap and no clash is marked." in scene.alt


def test_a_misfit_along_the_line_of_sight_is_not_drawn():
    planned = case()
    built = cut(planned, "back", 1, INCH)  # too high; seen from above that is along the line of sight
    (misfit,) = misfits(built, planned)
    assert misfit.axis == 2 and not marks(dry_fit(built, planned, [misfit], View(FROM_ABOVE, "back")))


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


def applied():
    """30 in wide and 20 in high, with a back 1/4 in thick laid over the rear edges, flush with the outside."""
    sheets = {"case": Sheet("case", "plywood", INCH * 3 // 4), "thin": Sheet("thin", "plywood", INCH // 4)}
    carcass = Carcass("case", back=Back("applied", "thin"))
    return solve(Project("case", INCH_STYLE, sheets, Size("outside", 30 * INCH, 20 * INCH, 18 * INCH), carcass))


@pytest.mark.parametrize(("own", "axis", "under"), [(0, 0, "left side"), (1, 2, "bottom")])
def test_an_applied_back_that_ends_short_leaves_an_edge_bare_there(own, axis, under):
    planned = applied()
    built = cut(planned, "back", own, -INCH // 4)
    (misfit,) = misfits(built, planned)
    assert (misfit.kind, misfit.boards, misfit.axis, misfit.amount) == (BARE, ("back", under), axis, INCH // 4)
    assert (misfit.box.low[axis], misfit.box.high[axis]) == (0, INCH // 4)
    # The back lies on the rear edges: 18 in deep with it, so from 17 3/4 in on.
    assert (misfit.box.low[1], misfit.box.high[1]) == (18 * INCH - INCH // 4, 18 * INCH)
    scene = dry_fit(built, planned, [misfit], FRONT_VIEW)
    assert len(marks(scene)) == 1 and "bare 1/4 in" in [item.text for item in scene.items if type(item) is Leader]
    assert f"back leaves the edge of {under} bare for 1/4 in" in scene.alt


@pytest.mark.parametrize("by", [-INCH // 8, INCH // 8])
def test_a_box_off_its_slides_is_marked_at_its_right_slide(by):
    rule = Drawers(count=1, box_sheet="case", bottom_sheet="thin", slide="side-mount ball-bearing")
    planned = case(bays=(Bay("drawers", drawers=rule),), slides={rule.slide: slide(rule.slide)})
    box = "bay 1 drawer 1"
    ends = (f"{box} box front", f"{box} box back")
    built = refit(planned, {
        name: (board.length + by, board.width, board.thickness)
        for name in ends for board in [planned.by_name[name]]
    }).cabinet
    found = [misfit for misfit in misfits(built, planned) if SLIDE in misfit.boards]
    assert [(m.kind, m.boards[0], m.amount) for m in found] == [
        (GAP if by < 0 else CLASH, f"{box} right box side", INCH // 8)
    ]
    slides = [fitting.box for fitting in planned.hardware if fitting.what == "slide"]
    inner = max(room.low[0] for room in slides)  # the right slide begins where the box should end
    assert {found[0].box.low[0], found[0].box.high[0]} == {inner, inner + by}
    scene = dry_fit(built, planned, found, View(FROM_ABOVE, f"{box} box bottom"))
    drawn = [item.rects[0] for item in scene.items if type(item) is Shape and item.name == "slide"]
    assert drawn == [FROM_ABOVE.flat(room) for room in slides]
    assert "right box side and its slide, from left to right, is marked" in scene.alt
    assert "Its slides are drawn in" in scene.note
    assert overlaps(draw(scene)) == []
