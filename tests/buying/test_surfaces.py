"""Areas of glue and finish: against solids that know nothing of the workbook, and against sums done by hand."""

import json
from dataclasses import replace
from decimal import Decimal

import pytest
from manifold3d import Manifold, OpType

from shoplib.buying.by_area import amount, area_lines
from shoplib.buying.surfaces import SQUARE_METRE, bare_area, finish_areas, glue_area, is_glued, joint_area
from shoplib.documents.plan_file import plan_text
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Carcass, JointChoice, Project, Shelves, Size
from shoplib.model.sheet import Sheet
from shoplib.tables.coverage import coverage
from tests.judge.solids import Body
from tests.lists.projects import chest, stand
from tests.random_projects import project


def exact(drawn):
    """The project with every joint tight and every sheet flat, so that what meets does meet."""

    def tight(value):
        if isinstance(value, JointChoice):
            return replace(value, fit=0, end_gap=0)
        return value

    def joints_of(record, names):
        return replace(record, **{name: tight(getattr(record, name)) for name in names})

    carcass = joints_of(drawn.carcass, ("corner", "divider", "shelf"))
    carcass = replace(
        carcass, back=replace(carcass.back, fit=0, end_gap=0),
        rails=tuple(replace(rail, joint=tight(rail.joint)) for rail in carcass.rails),
    )  # fmt: skip
    bays = tuple(
        replace(bay, drawers=replace(joints_of(bay.drawers, ("corner", "back_corner")), bottom_fit=0, bottom_slack=0))
        if bay.drawers else bay for bay in drawn.bays
    )
    sheets = {name: replace(sheet, readings=sheet.readings[:1]) for name, sheet in drawn.sheets.items()}
    return replace(drawn, carcass=carcass, bays=bays, sheets=sheets)


def bodies(cabinet):
    return {one["name"]: Body(one) for one in json.loads(plan_text(cabinet, ()))["boards"]}


STEP = 0.05
"""How far a solid is pushed (mm): less than any wood here is thick, much more than a sum of floats is off."""


def shared(one, other):
    """Where two solids lie face to face (mm2): pushed a little in each of six ways, what they then share.

    Pushed along x, only faces across x come to share wood, as thick as the push.
    """
    ways = [tuple(sign * STEP * (axis == k) for k in range(3)) for axis in range(3) for sign in (1, -1)]
    return sum((one.translate(way) ^ other).volume() for way in ways) / STEP


SEEDS = [1, 3, 4, 7, 8, 19, 20, 27]  # projects without pockets, whose slanting holes are counted as wood


@pytest.mark.parametrize("seed", SEEDS)
def test_joints_meet_where_the_solids_meet_and_the_rest_is_finished(seed):
    cabinet = solve(exact(project(seed)))
    solids = bodies(cabinet)
    assert not any("pocket" in cut.kind for board in cabinet.boards for cut in board.cuts)
    hidden = 0
    for joint in cabinet.joints:
        expected = shared(solids[joint.enters].wood, solids[joint.receives].wood)
        assert joint_area(joint, cabinet) / MM**2 == pytest.approx(expected, rel=1e-3, abs=1), joint
        hidden += expected
    surface = sum(body.wood.surface_area() for body in solids.values())
    assert sum(finish_areas(cabinet).values()) / MM**2 == pytest.approx(surface - 2 * hidden, rel=1e-5)


@pytest.mark.parametrize("corner", [JointChoice("dado", 9 * MM), JointChoice("finger", fit=0), JointChoice()])
def test_a_case_alone_is_finished_all_round_and_inside(corner):
    """A box without a back has the surface of the solid that its boards make together."""
    sheet = Sheet("ply", "plywood", 18 * MM)
    case = solve(Project("case", MM_STYLE, {"ply": sheet}, Size("outside", 600 * MM, 400 * MM, 300 * MM),
                         Carcass("ply", corner=corner)))
    whole = Manifold.batch_boolean([body.wood for body in bodies(case).values()], OpType.Add)
    assert sum(finish_areas(case).values()) / MM**2 == pytest.approx(whole.surface_area(), rel=1e-9)


@pytest.mark.parametrize(("style", "unit"), [(INCH_STYLE, INCH), (MM_STYLE, 25 * MM)])
def test_a_butted_case_by_hand(style, unit):
    """30 by 20 by 10, all of one unit thick: each end is 1 x 10; outside 2 (30 x 20) less the hole, inside the hole."""
    sheet = Sheet("ply", "plywood", unit)
    case = solve(Project("case", style, {"ply": sheet}, Size("outside", 30 * unit, 20 * unit, 10 * unit),
                         Carcass("ply")))
    assert glue_area(case) == 4 * 1 * 10 * unit**2
    outside, inside = 2 * (30 + 20) * 10, 2 * (28 + 18) * 10
    rims = 2 * (30 * 20 - 28 * 18)
    assert sum(finish_areas(case).values()) == (outside + inside + rims) * unit**2


def test_the_ease_of_a_joint_changes_no_area():
    """A shelf in a dado 1/2 mm wider and deeper is glued on as much of its faces as in a tight one."""
    areas = []
    for gap in (0, MM // 2):
        cabinet = solve(stand(carcass=replace(
            stand().carcass, divider=JointChoice("dado", 6 * MM, fit=gap, end_gap=0),
            shelf=JointChoice("dado", 6 * MM, fit=gap, end_gap=gap))))
        areas.append([joint_area(joint, cabinet) for joint in cabinet.joints])
    tight, eased = map(sum, areas)
    assert tight == pytest.approx(eased, rel=0.03)  # an end gap takes its depth off the cheeks


def test_a_dado_by_hand():
    """Floor and two cheeks of a shelf 18 thick, 300 deep, 6 let in: 300 (18 + 6 + 6), at either end."""
    sheet = Sheet("ply", "plywood", 18 * MM)
    case = solve(Project("case", MM_STYLE, {"ply": sheet}, Size("outside", 600 * MM, 400 * MM, 300 * MM),
                         Carcass("ply", shelf=JointChoice("dado", 6 * MM)),
                         bays=(Bay("shelves", shelves=Shelves(fixed=1)),)))
    shelves = [joint for joint in case.joints if "shelf" in joint.enters]
    assert [joint_area(joint, case) for joint in shelves] == [300 * (18 + 6 + 6) * MM**2] * 2


def test_a_board_by_itself_has_its_cuts_on_its_surface():
    side = solve(stand()).by_name["left side"]
    a, b, c = side.size
    assert bare_area(replace(side, cuts=())) == 2 * (a * b + b * c + a * c)
    assert bare_area(side) > 2 * (a * b + b * c + a * c)  # the cheeks of its dadoes come on top


def test_no_glue_in_grooves_and_behind_what_comes_off_again():
    cabinet = solve(chest(carcass=replace(chest().carcass, back=Back("groove", "thin sheet", INCH // 4))))
    kinds = {(joint.kind, cabinet.by_name[joint.enters].role) for joint in cabinet.joints if is_glued(joint, cabinet)}
    assert not any(kind == "groove" or role == "front" for kind, role in kinds)
    assert ("rabbet", "top") in kinds


def test_how_much_is_bought_by_hand():
    """7 m2, three coats, 10 m2 a litre: 2.1 l; a US quart is 0.946352946 l (NIST Handbook 44): 2.219 qt, so 2.3."""
    assert amount(7 * SQUARE_METRE, coverage("finish"), "l") == Decimal("2.1")
    assert amount(7 * SQUARE_METRE, coverage("finish"), "qt") == Decimal("2.3")
    # 0.5 m2 of glue, 6 m2 a litre: 83.3 ml, so 90; 2.82 fl oz, so 3.
    assert amount(SQUARE_METRE // 2, coverage("glue"), "ml") == 90
    assert amount(SQUARE_METRE // 2, coverage("glue"), "fl oz") == 3


def test_coverage_says_what_it_rests_on():
    for name in ("glue", "finish"):
        assert any(mark in coverage(name).mark for mark in ("from memory", "common practice, no source"))
    lines = {line.kind: line for line in area_lines(solve(stand()))}
    assert lines["finish"].unit == "l"
    assert "inside and out" in lines["finish"].uses
    assert lines["glue"].unit == "ml"
    assert {line.unit for line in area_lines(solve(chest()))} == {"fl oz", "qt"}
