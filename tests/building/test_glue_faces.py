"""Glue faces and brads, by hand."""

from dataclasses import replace

from shoplib.building.glue_faces import GlueFace, glue_faces
from shoplib.buying.brads import SOLD, TIMES, back_brads, backs_from_behind, brad_for
from shoplib.buying.surfaces import is_glued
from shoplib.lists.sides import EDGES
from shoplib.measure import INCH, MM
from shoplib.model.cabinet import solve
from tests.building.cases import SHIPPED, shipped
from tests.random_projects import project


def test_strips_of_the_case_under_the_bench():
    """Dado 1/4 in deep, 1/64 in free at its end: a divider enters 15/64 in, on both faces. The top lies in a rabbet
    5/16 in wide: only its underside meets wood. The toe board, 0.703 in thick, stands against the sides.
    """
    faces = glue_faces(shipped("under_bench_case"))
    assert GlueFace("divider 1", "faces", "bottom", 15 * INCH // 64, "bottom") in faces
    assert GlueFace("top", "face", "left", 5 * INCH // 16, "left side") in faces
    assert GlueFace("bottom", "faces", "left", 5 * INCH // 16, "left side") in faces
    assert GlueFace("toe board", "end", "left", 0, "left side") in faces
    thick = shipped("under_bench_case").sheets["case sheet"].thickness
    assert GlueFace("left side", "spot", "", thick, "toe board") in faces


def test_each_glued_joint_of_the_case_is_masked_on_both_boards(count):
    cabinets = [*map(shipped, SHIPPED), *(solve(project(seed)) for seed in range(count(30, 300)))]
    for cabinet in cabinets:
        case = {board.name for board in cabinet.groups["case"] if board.stage == 1}
        pairs = {frozenset((face.board, face.to)) for face in glue_faces(cabinet)}
        joints = [j for j in cabinet.joints if {j.enters, j.receives} <= case]
        assert pairs == {frozenset((j.enters, j.receives)) for j in joints if is_glued(j, cabinet)}
        assert all(face.strip >= 0 for face in glue_faces(cabinet))


def test_fingers_are_masked_between():
    drawn = shipped("under_bench_case").project
    corner = replace(drawn.carcass.corner, kind="finger", depth=None, finger=3 * INCH // 4)
    base = replace(drawn.base, kind="none", height=0, setback=0)
    fingered = solve(replace(drawn, base=base, carcass=replace(drawn.carcass, corner=corner, top="between")))
    found = [face for face in glue_faces(fingered) if face.what == "fingers"]
    assert {face.board for face in found} == {"left side", "right side", "top", "bottom"}


def test_a_back_in_grooves_floats_and_is_not_masked():
    assert not any(face.board == "back" for face in glue_faces(shipped("small_parts_wall_case")))


def test_brads_of_the_back_by_hand():
    """0.204 in thick (mean of 0.203 and 0.205 in), three times that is 0.612 in: 5/8 in are sold. It lies 9/32 in on
    the rabbet (5/16 in less 1/32 in): the brad goes 9/64 in from its edge.
    """
    brad = back_brads(shipped("under_bench_case"))["back"]
    assert (brad.length, brad.passes, brad.inset) == (5 * INCH // 8, 204 * INCH // 1000, 9 * INCH // 64)
    assert brad.holds == brad.length - brad.passes


def test_a_brad_holds_in_what_lies_behind():
    """Three times the thickness, common practice, no source; where none so long is sold, the longest."""
    for unit, thick in (("in", INCH // 4), ("mm", 6 * MM), ("mm", 3 * MM)):
        brad = brad_for(thick, 18 * MM, unit)
        assert brad.length in SOLD[unit] and brad.length >= TIMES * thick and brad.holds >= 2 * thick
    assert brad_for(40 * MM, 18 * MM, "mm").length == SOLD["mm"][-1]


def test_only_backs_that_are_nailed_have_brads():
    for name in SHIPPED:
        assert set(back_brads(shipped(name))) == set(backs_from_behind(shipped(name)))


def test_the_edge_that_meets_the_other_board_is_masked_and_not_the_one_across():
    """By hand: the back of the rolling stand lies behind the case, so sides, top and bottom are bare at the back."""
    ends = {(face.board, face.end) for face in glue_faces(shipped("rolling_stand"))
            if face.what == "end" and face.to == "back"}
    assert ends == {(name, "back") for name in ("left side", "right side", "top", "bottom")}
    for name in SHIPPED:
        cabinet = shipped(name)
        for face in (face for face in glue_faces(cabinet) if face.what == "end"):
            board, other = cabinet.by_name[face.board].box, cabinet.by_name[face.to].box
            axis = EDGES[face.end][0]
            ours = board.low[axis] if face.end in ("left", "front", "bottom") else board.high[axis]
            assert ours in (other.low[axis], other.high[axis]), (name, face)
