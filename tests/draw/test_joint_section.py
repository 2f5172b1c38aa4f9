"""Joint sections against the joints' own records: what is written is true, what is drawn can be seen."""

import re
from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.documents.project_file import read_project
from shoplib.draw.joint_section import NoCut, joint_section
from shoplib.draw.pen import draw
from shoplib.draw.scene import Chain, Shape
from shoplib.measure import INCH, MM, read_length
from shoplib.model.cabinet import solve
from tests.draw.bench_case import bench_case
from tests.draw.test_pen import outside, overlaps

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))


@pytest.mark.parametrize("path", PROJECTS, ids=lambda p: p.stem)
def test_every_joint_with_a_cut_is_drawn(path):
    cabinet = solve(read_project(path))
    drawn = 0
    for joint in cabinet.joints:
        if joint.depth == 0:
            continue
        scene = joint_section(cabinet, joint, cabinet.style)
        entering, receiving = (
            next(s for s in scene.items if isinstance(s, Shape) and s.name == name)
            for name in (joint.enters, joint.receives)
        )
        assert {entering.hatch, receiving.hatch} == {"/", "\\"}
        assert not any(
            a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]
            for a in entering.rects for b in receiving.rects
        ), scene.title
        assert any(joint.depth == c.at[1] - c.at[0] or joint.depth == c.at[-1] - c.at[-2]
                   for c in scene.items if isinstance(c, Chain)), scene.title
        end = re.search(r"at its end: (.*)\.$", scene.legend[1]).group(1)
        size = 0 if end == "none" else read_length(end)
        # Decimals are written to 0.0005 in or 0.01 mm.
        finest = INCH // 2000 if cabinet.style.unit == "in" else MM // 100
        assert size == pytest.approx(joint.end_gap, abs=finest / 2 + 1), scene.title
        assert overlaps(draw(scene)) == [] and outside(draw(scene)) == [], scene.title
        cut = {"finger": "socket", "drawer lock": "groove"}.get(joint.kind, joint.kind)
        named = " with its tongue: dado, " if joint.tongue else f": {cut}, "
        assert f"enters {joint.receives}{named}" in scene.legend[0]
        drawn += 1
    assert drawn > 20


def test_a_clearance_is_drawn_larger_and_the_drawing_says_so():
    case = bench_case()
    joint = next(j for j in case.joints if j.enters == "bottom")
    tight = joint_section(case, joint, case.style)
    assert "drawn larger" not in tight.note
    side = case.by_name["left side"]
    deeper = tuple(
        replace(c, high=(c.high[0], c.high[1], c.high[2] + MM // 2)) if getattr(c, "for_board", "") == "bottom" else c
        for c in side.cuts
    )
    loose = replace(case, boards=tuple(replace(b, cuts=deeper) if b is side else b for b in case.boards))
    scene = joint_section(loose, joint, case.style)
    assert "Clearances are drawn larger than they are." in scene.note
    assert "at its end: 0.0195 in" in scene.legend[1]
    bottom = next(s for s in scene.items if isinstance(s, Shape) and s.name == "bottom")
    left = min(r[0] for r in bottom.rects)
    assert left - case.by_name["bottom"].box.low[0] > 0


def test_a_butt_joint_has_no_section():
    case = bench_case()
    with pytest.raises(NoCut, match="enters no cut"):
        joint_section(case, replace(case.joints[0], enters="top", receives="back"), case.style)
