"""Screws have drills, and boards that are screwed through have holes: places and widths by hand and by the table."""

from dataclasses import replace

import pytest

from shoplib.buying.screws import BRAD, estimated, planned
from shoplib.documents.hardware_page import drills_section
from shoplib.lists.cut_words import cut_words
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, read_length
from shoplib.model.board import Hole
from shoplib.model.box import Box
from shoplib.printed.build.pages import build_pages
from shoplib.printed.typeset.blocks import told
from shoplib.tables.screw_sizes import size_of
from tests.printed.parts import PROJECTS, cabinet_of


@pytest.mark.parametrize("project", PROJECTS)
def test_each_screw_has_its_drills_and_the_holes_of_the_drawings_are_bored_with_them(project):
    """No gauge without a row; a hole that a screw passes is as wide on its board as the table says."""
    cabinet = cabinet_of(project)
    section = drills_section(cabinet, Writing(cabinet.style))
    needs = [n for n in (*planned(cabinet), *estimated(cabinet)) if n.head not in (BRAD, "pocket")]
    assert {row[0] for row in section.rows} == {need.gauge for need in needs}
    assert all(size_of(row[0]).source in section.lines[1] for row in section.rows)
    wide = {row[0]: read_length(row[1]) for row in section.rows}
    held = {(need.passed.name, need.into.name): need.gauge for need in needs}
    holes = [(board.name, cut) for board in cabinet.boards for cut in board.cuts
             if isinstance(cut, Hole) and cut.kind == "screw"]
    for name, hole in holes:
        assert hole.diameter == wide[held[name, hole.for_board]]
        assert f"{Writing(cabinet.style).bored(hole.diameter)} across" in cut_words(
            cabinet.by_name[name], cabinet, Writing(cabinet.style), [hole])[0]


def test_a_toe_board_is_screwed_through_holes_that_the_sides_have():
    """Two a side, as for a butted rail: a quarter of its 4 in from its edges, in the middle of its thickness."""
    cabinet = cabinet_of("under_bench_case")
    toe = cabinet.by_name["toe board"].box
    for name in ("left side", "right side"):
        side = cabinet.by_name[name]
        at = [side.placement.to_world(Box(hole.centre, hole.centre)).low for hole in side.cuts
              if isinstance(hole, Hole) and hole.for_board == "toe board"]
        assert sorted(z - toe.low[2] for _, _, z in at) == [INCH, 3 * INCH]
        assert all(abs(2 * y - toe.low[1] - toe.high[1]) <= cabinet.project.step for _, y, _ in at)
    [need] = {(n.gauge, n.length, n.count) for n in planned(cabinet) if n.into.name == "toe board"}
    assert need == ("No. 8", 2 * INCH, 2)
    assert not [n for n in estimated(cabinet) if n.into.name == "toe board"]
    assert "toe board" in told(build_pages(cabinet, (), ())) and "7/8 in deep" in told(build_pages(cabinet, (), ()))


def test_a_box_bottom_has_the_holes_that_it_is_screwed_up_through():
    """Two a box, told a box; each meets the lower edge of the back in its middle, well inside its ends."""
    cabinet = cabinet_of("rolling_stand")
    for number in (1, 2, 3):
        bottom, back = (cabinet.by_name[f"bay 1 drawer {number} box {what}"] for what in ("bottom", "back"))
        at = [bottom.placement.to_world(Box(hole.centre, hole.centre)).low for hole in bottom.cuts
              if isinstance(hole, Hole) and hole.for_board == back.name]
        assert len(at) == 2
        for x, y, z in at:
            assert abs(2 * y - back.box.low[1] - back.box.high[1]) <= 2 * cabinet.project.step
            assert z == bottom.box.low[2] and back.box.low[0] < x < back.box.high[0]
    words = told(build_pages(cabinet, (), ()))
    assert "2 of 3.5 mm \u00d7 16 mm in each box" in words and "slot" not in words.split("under the back")[1][:300]
    solid = {name: replace(sheet, kind="solid", species="red oak") for name, sheet in cabinet.sheets.items()}
    assert "file each hole of the bottom to a slot" in told(build_pages(replace(cabinet, sheets=solid), (), ()))
