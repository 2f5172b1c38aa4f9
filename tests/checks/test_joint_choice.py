"""Joints that a stop leaves little of, joints with no clearance, and gaps that are closed."""

from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.checks.gaps import find_tight_gaps
from shoplib.checks.joint_choice import find_joints_without_clearance, find_weak_joints
from shoplib.documents.project_file import read_project
from shoplib.live.carcass_panel import style_for
from shoplib.live.carcass_project import BACKS, HOLDS, case_project, starting_case
from shoplib.measure import INCH, MM
from shoplib.model.cabinet import solve
from shoplib.model.solved import Gap
from tests.checks.cabinets import board, cabinet, tool_case

PROJECTS = Path(__file__).parents[2] / "data" / "projects"
STAND = read_project(PROJECTS / "rolling_stand.toml")
SHELF_DEPTH = solve(STAND).by_name["bay 2 shelf 1"].box.size[1]


def stopped_at(stop):
    shelf = replace(STAND.carcass.shelf, stop=stop)
    return find_weak_joints(solve(replace(STAND, carcass=replace(STAND.carcass, shelf=shelf))))


@pytest.mark.parametrize(
    ("share", "level"), [(0, None), (0.5, None), (0.51, "warn"), (0.75, "warn"), (0.76, "stop"), (0.99, "stop")]
)
def test_a_stop_that_leaves_little_of_the_joint(share, level):
    stop = int(SHELF_DEPTH * share)
    found = stopped_at(stop)
    assert [f.level for f in found] == ([level] if level else [])
    for finding in found:
        assert finding.amount == SHELF_DEPTH - stop
        assert {"bay 2 shelf 1", "bay 2 shelf 2", "divider 1", "right side"} == set(finding.boards)
        assert finding.text.endswith("Stop the cut nearer to the front edge.")


def test_the_shipped_stand_stops_its_dadoes_early():
    assert find_weak_joints(solve(STAND)) == ()


def test_a_joint_with_no_clearance_is_a_note_that_says_what_is_usual():
    assert find_joints_without_clearance(solve(STAND)) == ()
    tight = replace(STAND, carcass=replace(STAND.carcass, divider=replace(STAND.carcass.divider, fit=0)))
    (found,) = find_joints_without_clearance(solve(tight))
    assert (found.level, found.boards) == ("note", ("divider 1",))
    assert "exactly as wide as what enters (fit 0)" in found.text
    assert "0.1 mm over the thickest reading is usual" in found.text


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("holds", HOLDS)
@pytest.mark.parametrize("back", BACKS)
def test_the_carcass_panel_asks_no_fit_and_has_the_usual_one(unit, holds, back):
    choices = replace(starting_case(unit), bays=3, holds=holds, back=back, base="toe space")
    case = solve(case_project(choices, style_for(unit)))
    assert find_joints_without_clearance(case) == ()
    usual = {"in": INCH * 4 // 1000, "mm": MM // 10}[unit]  # common practice, no source
    assert {joint.fit for joint in case.joints if joint.kind == "dado"} == {usual}


def test_a_rabbet_and_a_butt_need_no_clearance():
    joints = tuple(replace(j, fit=0) for j in tool_case().joints if j.kind == "rabbet")
    assert joints and find_joints_without_clearance(replace(tool_case(), joints=joints)) == ()


@pytest.mark.parametrize(("size", "told"), [(0, True), (INCH // 64, True), (INCH // 32, False), (3 * MM, False)])
def test_a_gap_that_is_all_but_closed(size, told):
    side = board("left side", (0, 0, 0), (18, 300, 400), "x", role="side")
    front = board("bay 1 drawer 1 front", (18, 0, 0), (300, 18, 400), "y", group="bay 1 drawer 1", role="front")
    found = find_tight_gaps(cabinet([side, front], gaps=(Gap((side.name, front.name), "x", size),)))
    assert [(f.level, f.amount) for f in found] == ([("warn", size)] if told else [])
    assert all("between left side and bay 1 drawer 1 front: they will rub. Plane the fronts" in f.text for f in found)


def test_gaps_planned_too_small_are_told_once():
    plan = read_project(PROJECTS / "under_bench_case.toml")
    closed = replace(plan, fronts=replace(plan.fronts, gap=0, around=0))
    (found,) = find_tight_gaps(solve(closed))
    assert "more places: they will rub. Plan fronts.gap and fronts.around" in found.text
