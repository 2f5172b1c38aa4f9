"""Sets of boards that gape or clash, drawn: the marks lie where boards of sizes written here must meet."""

import pytest

from shoplib.checks.misfits import CLASH, GAP, SLIDE, misfits
from shoplib.draw.dry_fit import View, dry_fit
from shoplib.draw.look import FROM_ABOVE, FRONT
from shoplib.draw.pen import draw
from shoplib.draw.scene import Leader, Line, Shape
from shoplib.lists.refit import refit
from shoplib.measure import INCH
from tests.checks.test_misfits import BACK_ENDS, BOX, applied, case, cut, off_its_slides
from tests.draw.test_pen import overlaps

FRONT_VIEW = View(FRONT, "back")


def marks(scene):
    return [item for item in scene.items if type(item) is Shape and item.fill in ("air", "clash")]


@pytest.mark.parametrize(("by", "kind", "low", "high"), [
    (INCH, CLASH, BACK_ENDS, BACK_ENDS + INCH), (-INCH, GAP, BACK_ENDS - INCH, BACK_ENDS),
])
def test_a_back_of_another_width_is_marked_at_its_right_end(by, kind, low, high):
    planned = case()
    built = cut(planned, "back", 0, by)
    scene = dry_fit(built, planned, misfits(built, planned), FRONT_VIEW)
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
    middle = BACK_ENDS + INCH // 32
    assert right - left > INCH // 4 and abs((left + right) // 2 - middle) <= 1
    assert "drawn larger than they are" in scene.note and "drawn larger than they are" in scene.alt
    assert "1/16 in" in scene.alt


def test_another_outside_is_dashed_and_said():
    planned = case()
    built = refit(planned, {n: (27 * INCH, 18 * INCH, INCH * 3 // 4) for n in ("bottom", "top")}).cabinet  # 2 in short
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


@pytest.mark.parametrize(("own", "under"), [(0, "left side"), (1, "bottom")])
def test_an_edge_left_bare_is_marked_and_named(own, under):
    planned = applied()
    built = cut(planned, "back", own, -INCH // 4)
    scene = dry_fit(built, planned, misfits(built, planned), FRONT_VIEW)
    assert len(marks(scene)) == 1 and "bare 1/4 in" in [item.text for item in scene.items if type(item) is Leader]
    assert f"back leaves the edge of {under} bare for 1/4 in" in scene.alt


@pytest.mark.parametrize("by", [-INCH // 8, INCH // 8])
def test_slides_are_drawn_beside_a_box_that_is_off_them(by):
    planned, built = off_its_slides(by)
    found = [misfit for misfit in misfits(built, planned) if SLIDE in misfit.boards]
    scene = dry_fit(built, planned, found, View(FROM_ABOVE, f"{BOX} box bottom"))
    drawn = [item.rects[0] for item in scene.items if type(item) is Shape and item.name == "slide"]
    assert drawn == [FROM_ABOVE.flat(fitting.box) for fitting in planned.hardware if fitting.what == "slide"]
    assert "right box side and its slide, from left to right, is marked" in scene.alt
    assert "Its slides are drawn in" in scene.note
    assert overlaps(draw(scene)) == []
