"""The wood runner that comes with the workbook leaves sound wood in the sides that it is meant for."""

from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.project_file import read_project
from shoplib.measure import INCH, MM
from shoplib.model.cabinet import solve
from shoplib.model.project import JointChoice
from shoplib.tables.slides import slide

PROJECTS = Path(__file__).parents[2] / "data" / "projects"


def on_runners(corner):
    plan = read_project(PROJECTS / "under_bench_case.toml")
    bays = tuple(
        replace(bay, drawers=replace(bay.drawers, slide="side-hung wood runner", corner=corner)) if bay.drawers else bay
        for bay in plan.bays
    )
    return solve(replace(plan, bays=bays))


@pytest.mark.parametrize("kind", ["butt", "rabbet", "tongue"])
def test_a_corner_of_no_given_depth_goes_with_the_groove_of_the_runner(kind):
    cabinet = on_runners(JointChoice(kind, fit=INCH // 250))
    assert [f.text for f in check(cabinet) if f.level == "stop"] == []
    side = cabinet.by_name["bay 1 drawer 1 left box side"]
    groove = next(cut for cut in side.cuts if "runner" in cut.for_board)
    deep = groove.high[2] - groove.low[2]
    assert deep == slide("side-hung wood runner").groove_depth <= side.thickness / 2
    corner = max((cut.high[2] - cut.low[2] for cut in side.cuts if "box front" in cut.for_board), default=0)
    assert corner > 0 or kind == "butt"
    assert side.thickness - deep - corner >= 3 * MM  # what still holds: common practice, no source


def test_a_rabbet_of_half_the_side_behind_the_groove_is_a_stop():
    side = on_runners(JointChoice("rabbet")).by_name["bay 1 drawer 1 left box side"]
    cabinet = on_runners(JointChoice("rabbet", depth=side.thickness // 2))
    told = [f for f in check(cabinet) if f.level == "stop" and f.check == "wood left"]
    assert told and all("cross" in f.text for f in told)
