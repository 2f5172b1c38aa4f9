"""The steps: each board once, nothing before it is measured for, the back last, what a case lacks left out."""

from collections import Counter
from dataclasses import replace

import pytest

from shoplib.building.order import build_order
from shoplib.buying.brads import backs_from_behind
from shoplib.model.board import BOXES, CASE, FRONTS
from shoplib.model.cabinet import solve
from shoplib.model.project import Base
from tests.building.cases import SHIPPED, measured, shipped
from tests.random_projects import project


def kinds(cabinet):
    return [step.kind for step in build_order(cabinet)]


def check_order(cabinet):
    steps = build_order(cabinet)
    assert Counter(name for step in steps for name in step.boards) == Counter(b.name for b in cabinet.boards)
    waits = {one.stage for one in cabinet.waiting} | ({FRONTS} if cabinet.again else set())
    measured = set()
    for step in steps:
        measured.add(step.measures)
        stages = {cabinet.by_name[name].stage for name in step.boards}
        assert (stages & waits) <= measured, step.kind
    assert {step.measures for step in steps} - {0} == waits
    backs = backs_from_behind(cabinet)
    if backs:
        place = next(n for n, step in enumerate(steps) if step.kind == "back")
        before = [name for step in steps[:place] for name in step.boards]
        apart = ("plinth", "loose shelf")
        case = [b.name for b in cabinet.boards if b.stage == CASE and b.role not in apart and b.name not in backs]
        assert sorted(before) == sorted(case)


@pytest.mark.parametrize("name", SHIPPED)
def test_shipped(name):
    check_order(shipped(name))


def test_random(count):
    for seed in range(count(30, 600)):
        check_order(solve(project(seed)))


def test_the_case_under_the_bench():
    """As a shop works, common practice, no source."""
    assert kinds(shipped("under_bench_case")) == [
        "cut the case", "finish inside", "dry run", "glue", "glue", "back", "finish outside", "place", "measure",
        "runs", "box", "hang boxes", "pull-outs", "measure", "fronts", "pulls", "load",
    ]


def test_what_a_case_does_not_have_is_left_out():
    wall, solid = kinds(shipped("small_parts_wall_case")), kinds(shipped("wheel_wall_drawers"))
    assert "runs" not in wall and "back" not in wall  # its boxes slide on shelves, its back lies in grooves
    assert solid[0] == "solid wood" and "runs" in solid
    drawn = shipped("under_bench_case").project
    shelves = solve(replace(drawn, bays=tuple(replace(bay, kind="open", drawers=None, pull_out=None)
                                              for bay in drawn.bays)))
    assert kinds(shelves) == ["cut the case", "finish inside", "dry run", "glue", "glue", "back", "finish outside",
                              "place", "load"]
    none = replace(drawn.carcass.back, kind="none", sheet="")
    bare = solve(replace(drawn, carcass=replace(drawn.carcass, back=none)))
    assert "back" not in kinds(bare)


def test_a_plinth_is_a_step_of_its_own():
    drawn = shipped("rolling_stand").project
    on_plinth = solve(replace(drawn, base=Base("plinth", drawn.base.height, 0)))
    step = next(step for step in build_order(on_plinth) if step.kind == "plinth")
    assert {on_plinth.by_name[name].role for name in step.boards} == {"plinth"}
    assert len(step.entries) == len(step.boards)


def test_a_case_that_is_measured_waits_for_nothing():
    """Every reading is in: no step asks for it again."""
    cabinet = replace(shipped("under_bench_case"), waiting=(), again=())
    assert not any(step.measures for step in build_order(cabinet))
    assert {step.measures for step in build_order(shipped("under_bench_case"))} == {0, BOXES, FRONTS}


@pytest.mark.parametrize("name", SHIPPED)
def test_openings_that_were_read_for_the_boxes_are_read_again_before_the_fronts(name):
    """Slides draw an upright in: common practice, no source. The first reading frees the boxes alone."""
    cabinet = measured(name)
    check_order(cabinet)
    found = kinds(cabinet)
    assert found.count("measure") == 1 and not cabinet.waiting
    assert found.index("hang boxes") < found.index("measure") < found.index("fronts")


def test_without_fronts_nothing_is_read_again():
    drawn = measured("under_bench_case").project
    bare = solve(replace(drawn, fronts=replace(drawn.fronts, kind="none")))
    assert not bare.again and "measure" not in kinds(bare)
