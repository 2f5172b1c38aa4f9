"""Spacers: one list of sizes and numbers wherever they are printed, and enough of each for one drawer or one front."""

import re
from itertools import pairwise

import pytest

from shoplib.building.gaps import open_gaps
from shoplib.building.riding import riding
from shoplib.building.spacers import gap_spacers
from shoplib.documents.paper import PAPERS
from shoplib.measure import read_length
from shoplib.model.cabinet import solve
from shoplib.printed.build.drawers import runs
from shoplib.printed.build.fronts import fronts, pulls
from shoplib.printed.plan.front_pages import front_pages
from shoplib.printed.plan.hardware_pages import hardware_pages
from shoplib.printed.true_scale.sticks import bay_sticks
from shoplib.printed.true_scale.story_stick import story_stick_pages
from shoplib.printed.true_scale.template import Template
from shoplib.printed.true_scale.template_pages import templates
from shoplib.printed.typeset.blocks import Table, Together, ToTick
from tests.building.cases import measured_unevenly
from tests.printed.parts import PROJECTS, cabinet_of, found_in
from tests.random_projects import project as random_project

EVERY = pytest.mark.parametrize("project", PROJECTS)
PAPER = PAPERS["a4"]


def tables(blocks):
    for block in blocks:
        if isinstance(block, Together):
            yield from tables(block.blocks)
        elif isinstance(block, Table) and "how many" in block.head and "size" in block.head and "which lie" not in (
                block.head):
            yield block


def told(blocks):
    """What each table of spacers says, as {size: (how many, what for)}."""
    found = {}
    for table in tables(blocks):
        size, many, use = (table.head.index(name) for name in ("size", "how many", "what for"))
        found |= {row[size]: (row[many], row[use]) for row in table.rows}
    return found


def every_row(blocks):
    """Size, how many and what for, also where a gap and a slide are alike."""
    return {tuple(row[table.head.index(name)] for name in ("size", "how many", "what for"))
            for table in tables(blocks) for row in table.rows}


def steps(cabinet):
    wood = tuple(board.name for board in cabinet.boards if board.role in ("runner", "kicker"))
    names = tuple(board.name for board in cabinet.boards if board.role == "front")
    return [*runs(wood, cabinet), *fronts(names, cabinet)]


@EVERY
def test_hardware_page_fronts_page_story_stick_and_build_order_tell_the_same_spacers(project):
    cabinet, findings = cabinet_of(project), found_in(project)
    pages = [*hardware_pages(cabinet), *front_pages(cabinet, findings, PAPER)]
    assert told(pages) == told(steps(cabinet)) == told(story_stick_pages(cabinet, PAPER)) != {}


@EVERY
def test_there_are_as_many_as_one_drawer_has_slides_at_that_height(project):
    cabinet = cabinet_of(project)
    [floor] = [board.box.high[2] for board in cabinet.boards if board.role == "bottom"]
    rows = told(hardware_pages(cabinet))
    heights = {}
    for item in riding(cabinet):
        at = heights.setdefault(item.box.low[2] - floor, {})
        at[item.group] = at.get(item.group, 0) + 1
    for height, at in heights.items():
        told_here = [many for size, (many, _) in rows.items() if abs(read_length(size) - height) < cabinet.style.step]
        assert told_here == [str(max(at.values()))]


@EVERY
def test_there_are_enough_for_two_under_a_front_and_one_at_each_side(project):
    """Common practice, no source."""
    cabinet = cabinet_of(project)
    have = {spacer.size: spacer.count for spacer in gap_spacers(cabinet)}
    for front in (board for board in cabinet.boards if board.role == "front"):
        need = {}
        for gap in open_gaps(cabinet):
            if front.name in gap.between and gap.size > 0:
                under = gap.along == "z" and gap.between[1] == front.name
                need[gap.size] = need.get(gap.size, 0) + (1 if gap.along == "x" else 2 if under else 0)
        assert all(have[size] >= count for size, count in need.items()), (front.name, need, have)


@EVERY
def test_once_measured_each_spacer_is_another_to_cut_and_says_which_gaps_it_is_for(project):
    """Gaps within half a step take one spacer; of several for one kind, all but one name their gaps."""
    cabinet = measured_unevenly(project)
    spacers, step = gap_spacers(cabinet), cabinet.style.step
    rows = told(front_pages(cabinet, (), PAPER))
    assert len(rows) == len(spacers)
    assert all(abs(one.size - other.size) >= step // 2 for one, other in pairwise(spacers))
    assert all(any(2 * abs(gap.size - spacer.size) <= step for spacer in spacers) for gap in open_gaps(cabinet))
    assert len({use for _, use in rows.values()}) == len(rows)
    assert (project == "small_parts_wall_case") == any("bay 1 drawer 1 | bay 2 drawer 1" in use
                                                       for _, use in rows.values())


def test_an_inset_front_with_equal_gaps_has_four():
    assert [spacer.count for spacer in gap_spacers(cabinet_of("under_bench_case"))] == [4]


@EVERY
def test_the_pulls_step_lays_the_template_as_the_template_says_and_drills_before_the_finish(project):
    cabinet = cabinet_of(project)
    named: list[Template] = [one for one in templates(cabinet) if one.what == "holes for pulls"]
    assert named and all(re.search("its heavy lines (flush with|on) th", one.lines[0]) for one in named)
    text = " ".join(line for block in pulls(cabinet) if isinstance(block, ToTick) for line in block.lines)
    assert "heavy lines on the edges or lines that it names" in text and "centre line" not in text
    behind = any("with the front screwed to its box" in line for one in named for line in one.lines)
    assert behind == ("with the front screwed to its box" in text)
    [hung] = [" ".join(block.lines) for block in fronts(
        tuple(board.name for board in cabinet.boards if board.role == "front"), cabinet) if isinstance(block, ToTick)]
    assert "finish both faces" not in hung and text.index("Drill") < text.index("finish both faces")


def test_random_projects_tell_the_same_spacers_everywhere_and_none_of_no_size(count):
    """Where runners lie on the bottom, where a strip parts a gap: one list for hardware, fronts, stick and order."""
    on_bottom = parted = 0
    for seed in range(count(20, 150)):
        cabinet = solve(random_project(seed))
        pages = every_row([*hardware_pages(cabinet), *front_pages(cabinet, (), PAPER)])
        wood = tuple(board.name for board in cabinet.boards if board.role in ("runner", "kicker"))
        names = tuple(board.name for board in cabinet.boards if board.role == "front")
        of_order = runs(wood, cabinet)
        assert pages == every_row([*of_order, *fronts(names, cabinet)]) == every_row(story_head(cabinet)), seed
        assert all(read_length(size) > 0 for size, _, _ in pages), seed
        seen = {gap.size for gap in open_gaps(cabinet) if gap.along == "z"}
        marked = {read_length(length) for stick in bay_sticks(cabinet) for mark in stick.marks
                  for length in re.findall(r"\(gap (.+?) (?:below|above)\)", mark.what)}
        assert all(any(abs(length - size) < cabinet.style.step for size in seen) for length in marked), seed
        assert (len(seen) == 0) == (len(marked) == 0), seed
        lies = any(item.box.low[2] == board.box.high[2] for board in cabinet.boards if board.role == "bottom"
                   for item in riding(cabinet))
        text = " ".join(line for block in of_order if isinstance(block, ToTick) for line in block.lines)
        assert ("needs no spacer" in text) == lies, seed
        assert ("Cut a spacer" in text) == bool(every_row(of_order)), seed
        on_bottom += lies
        parted += seen != {gap.size for gap in cabinet.gaps if gap.along == "z"}
    assert on_bottom and parted


def story_head(cabinet):
    """The story stick without its sheets in true scale."""
    return [block for block in story_stick_pages(cabinet, PAPER) if isinstance(block, Table)]


@EVERY
def test_there_are_two_gap_spacers_at_least(project):
    """A front that is held at one spot turns about it. The wheel case has one gap, between its two fronts."""
    counts = [spacer.count for spacer in gap_spacers(cabinet_of(project))]
    assert counts and min(counts) >= 2
    if project == "wheel_wall_drawers":
        assert (counts, len(open_gaps(cabinet_of(project)))) == ([2], 1)
