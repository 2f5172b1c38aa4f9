"""The drawers in print: sizes by plan.json, sums that close, how a box comes from its opening."""

import csv
import io
import re
import tomllib
from dataclasses import replace
from fractions import Fraction
from itertools import pairwise

import pytest

from shoplib.building.drawer_sizes import bays_alike, rule_and_slide, sizes_of
from shoplib.building.in_opening import rails_behind
from shoplib.checks import check
from shoplib.documents.cut_list_file import cut_list_csv
from shoplib.documents.paper import PAPERS
from shoplib.documents.to_measure import planned_depths, planned_openings
from shoplib.draw.drawer_plan import drawer_plan
from shoplib.draw.scene import Chain
from shoplib.draw.section import section_plan, section_side
from shoplib.measure import MM, read_length
from shoplib.model.board import BOX_WALLS
from shoplib.model.cabinet import solve
from shoplib.model.project import JointChoice, Measured, Opening
from shoplib.model.shell import shell_of
from shoplib.model.solved import Finding
from shoplib.printed.build.pages import build_pages
from shoplib.printed.plan.drawer_page import HEADING, SIZES, drawer_pages
from shoplib.printed.typeset.blocks import Framed, Heading, ToFillIn, Words
from tests.building.cases import measured_unevenly
from tests.printed.lengths import HIDDEN, UNIT, about, boards, corners, mm, near, plan, unit_of
from tests.printed.parts import PROJECTS, cabinet_of, found_in, in_print, printed
from tests.printed.test_build_pages import flat
from tests.random_projects import project as random_project

SETS = pytest.mark.parametrize(("project", "paper"), [(one, paper) for one in PROJECTS for paper in PAPERS])
SUM = re.compile(r": (.+?) - 2 × (.+?)(?: \+ 2 × (.+?))? = (.+?)(?:, down to (.+?))?\.(?: |$)")


def under(project, paper):
    return printed(project, paper).under(HEADING)


def groups(project):
    return {board["group"] for board in boards(project).values() if board["role"] == "box side"}


def parts_of(project, group):
    return {board["role"]: board for board in boards(project).values() if board["group"] == group}


@SETS
def test_boxes_are_as_large_outside_and_inside_as_their_boards_make_them(project, paper):
    unit, seen = unit_of(project), 0
    tables = [part for part in under(project, paper) if part.tag == "Table" and part.rows[0] == SIZES]
    rows = [row for table in tables for row in table.rows[1:]]
    columns = [column for bays in bays_alike(cabinet_of(project)) for column in zip(*(g for _, g in bays), strict=True)]
    assert len(rows) == len(columns) > 0
    for (_, opening, room, outside, inside, above), alike in zip(rows, columns, strict=True):
        for group in alike:
            seen += 1
            part = parts_of(project, group)
            walls = [board for role, board in part.items() if role.startswith("box ")]
            low, high = about([*walls, *(b for b in boards(project).values() if b["group"] == group
                                         and b["role"] == "box side")])
            assert all(near(text, b - a, unit) for text, a, b in zip(outside.split(" × "), low, high, strict=True))
            sides = [corners(b) for b in boards(project).values() if b["group"] == group and b["role"] == "box side"]
            left, right = sorted(sides)
            back, front = corners(part["box back"]), corners(part["box front"])
            within = (right[0][0] - left[1][0], back[0][1] - front[1][1],
                      high[2] - corners(part["box bottom"])[1][2])
            assert all(near(text, size, unit) for text, size in zip(inside.split(" × "), within, strict=True))
            assert near(above, low[2] - corners(boards(project)["bottom"])[1][2], unit)
            wide = dict(plan(project)["sums"][0]["terms"])[" ".join(group.split()[:2])]
            assert near(opening, wide, unit)
            assert near(room, (wide - (high[0] - low[0])) / 2, unit)
    assert seen == len(groups(project))


@SETS
def test_parts_are_those_of_the_cut_list(project, paper):
    """Every board of every drawer once, at the size of its row."""
    unit, count = unit_of(project), 0
    rows = list(csv.DictReader(io.StringIO(cut_list_csv(cabinet_of(project), found_in(project)))))
    sizes = [[row[f"{side}_mm"] for side in ("length", "width", "thickness")] for row in rows]
    for part in under(project, paper):
        if part.tag == "Table" and part.rows[0][0] == "count":
            for many, _, size, sheet in part.rows[1:]:
                count += int(many)
                three = size.split(" × ")
                assert any(row["sheet"] == sheet and all(near(*pair, unit) for pair in zip(three, exact, strict=True))
                           for row, exact in zip(rows, sizes, strict=True)), size
    assert count == sum(board["group"] in groups(project) for board in boards(project).values())


@SETS
def test_the_sum_from_opening_to_box_closes_in_the_numbers_that_are_printed(project, paper):
    """Fractions of what stands there; the room at the side is that of slides.toml, the width that of plan.json."""
    unit = unit_of(project)
    slide = _slide(project)
    step = Fraction(cabinet_of(project).project.step, 80_000)
    found = [SUM.search(part.text) for part in under(project, paper)
             if part.tag == "P" and SUM.search(part.text)]
    assert found
    for least, taken, stock, exact, width in (match.groups() for match in found):
        least, taken, exact = (mm(_bare(text), unit) for text in (least, taken, exact))
        assert exact == least - 2 * taken + 2 * (mm(_bare(stock), unit) if stock else 0)
        assert taken == slide
        wide = mm(_bare(width), unit) if width else exact
        assert 0 <= exact - wide < step
        assert any(near(_bare(width or match_exact), b - a, unit) for match_exact in [f"{exact / UNIT[unit]}"]
                   for a, b in _widths(project))


def test_the_sum_of_a_box_whose_inside_the_slide_holds_has_its_two_sides_in_it():
    """By hand: 312.15 mm between the uprights, 21 mm at each side for the slide (slides.toml), sides of 11.9 mm by
    their readings: 312.15 - 42 + 23.8 = 293.95 mm, in steps of 0.5 mm 293.5 mm.
    """
    drawn = cabinet_of("rolling_stand").project
    first, *others = drawn.bays
    bay = replace(first, drawers=replace(first.drawers, slide="undermount"))
    cabinet = solve(replace(drawn, bays=(bay, *others)))
    [told] = [block.text for block in flat(drawer_pages(cabinet, (), PAPERS["a4"]))
              if isinstance(block, Words) and SUM.search(block.text)]
    assert SUM.search(told).groups() == ("312.15 mm", "21 mm", "11.9 mm", "293.95 mm", "293.5 mm")
    sides = [board.box for board in cabinet.groups["bay 1 drawer 1"] if board.role == "box side"]
    assert max(box.high[0] for box in sides) - min(box.low[0] for box in sides) == 587 * MM // 2


def _bare(text):
    return re.sub(r" (in|mm)\b", "", text)


def _widths(project):
    for group in groups(project):
        low, high = about([b for b in boards(project).values() if b["group"] == group and b["role"] == "box side"])
        yield low[0], high[0]


def _slide(project):
    """What the slide of the first drawer bay takes at each side, in mm, from the data file and the project file."""
    with open("data/slides.toml", "rb") as file:
        rows = {row["name"]: row for row in tomllib.load(file)["slide"]}
    with open(f"data/projects/{project}.toml", "rb") as file:
        bay = next(bay for bay in tomllib.load(file)["bays"] if "drawers" in bay)
    row = rows[bay["drawers"]["slide"]]
    text = (row["mm"] if unit_of(project) == "mm" and "side" in row.get("mm", {}) else row)["side"]
    number, unit = text.rsplit(" ", 1)
    return sum(Fraction(part) for part in number.split()) * UNIT[unit]


def in_depth(scene):
    """The dimension lines in depth, from the drawing outward."""
    chains = [item for item in scene.items if isinstance(item, Chain) and item.side == "left"]
    return sorted(chains, key=lambda chain: chain.row)


@pytest.mark.parametrize("project", PROJECTS)
def test_from_above_box_and_slide_each_have_a_line_in_depth_with_their_name(project):
    """Both are as long; who takes the one for the other sets the box back by as much as the slide (geometry)."""
    cabinet = cabinet_of(project)
    for bays in bays_alike(cabinet):
        group, boxes = bays[0][1][0], [board.box for board in cabinet.groups[bays[0][1][0]] if board.role in BOX_WALLS]
        box = min(one.low[1] for one in boxes), max(one.high[1] for one in boxes)
        slides = {(item.box.low[1], item.box.high[1]) for item in cabinet.hardware
                  if item.what == "slide" and item.group == group}
        _, slide = rule_and_slide(cabinet, group)
        scene = drawer_plan(cabinet, cabinet.style, group, slide)
        assert spans_named(scene, "box") == {box} and spans_named(scene, "slide") == slides
        assert len(spans_named(scene, "depth")) == 1
    for scene in (section_plan(cabinet, cabinet.style), section_side(cabinet, cabinet.style)):
        assert len(spans_named(scene, "box")) == 1 and not spans_named(scene, "slide")


def spans_named(scene, name):
    return {span for item in scene.items if isinstance(item, Chain)
            for text, span in zip(item.texts, pairwise(item.at), strict=True) if text.startswith(f"{name} ")}


@pytest.mark.parametrize("project", PROJECTS)
def test_the_drawing_from_above_is_as_deep_as_what_is_measured_before_the_boxes_are_cut(project):
    """Geometry: a back lies on the floor of its rabbet, which is cut for its thickest reading."""
    cabinet = cabinet_of(project)
    if not cabinet.travel:
        return
    planned = planned_depths(cabinet)
    for bays in bays_alike(cabinet):
        group = bays[0][1][0]
        _, slide = rule_and_slide(cabinet, group)
        ends = in_depth(drawer_plan(cabinet, cabinet.style, group, slide))[-1:]
        free = any(board.role == "rail" for board in cabinet.boards) and not rails_behind(cabinet, group)
        deep = shell_of(cabinet.project).behind if free else planned[" ".join(group.split()[:2])]
        assert [chain.sizes for chain in ends] == [(deep,)]


@pytest.mark.parametrize("project", PROJECTS)
def test_once_the_depth_is_read_the_drawing_from_above_has_what_was_read(project):
    cabinet, seen = measured_unevenly(project), 0
    for group in (group for bays in bays_alike(cabinet) for _, groups in bays for group in groups):
        _, slide = rule_and_slide(cabinet, group)
        deep = in_depth(drawer_plan(cabinet, cabinet.style, group, slide))[-1].sizes
        if rails_behind(cabinet, group) or not any(board.role == "rail" for board in cabinet.boards):
            seen += 1
            assert deep == (cabinet.project.measured.depths[" ".join(group.split()[:2])],)
        else:  # the reading is that to the rail above it
            assert deep == (shell_of(cabinet.project).behind,)
    assert seen


@pytest.mark.parametrize("section", [section_side, section_plan])
def test_a_section_tells_the_depth_to_the_floor_of_the_rabbet(section):
    cabinet = cabinet_of("under_bench_case")
    told = {place for item in section(cabinet, cabinet.style).items if isinstance(item, Chain) for place in item.at}
    assert {planned_depths(cabinet)["bay 1"], cabinet.by_name["back"].box.high[1]} <= told
    assert cabinet.by_name["back"].box.low[1] not in told


@SETS
def test_the_page_names_the_step_in_which_openings_are_written_down(project, paper):
    """There is room to write at one place only, so that two readings never differ: in the build order."""
    cabinet = cabinet_of(project)
    [step] = re.findall(r"written down, in step (\d+) of the build order", " ".join(
        part.text for part in under(project, paper)))
    [title] = [block.text for block in flat(build_pages(cabinet, (), ()))
               if isinstance(block, Heading) and block.text.startswith(f"Step {step}. ")]
    assert title.startswith(f"Step {step}. Measure the case as built")
    assert not any(isinstance(block, ToFillIn) for block in flat(drawer_pages(cabinet, (), PAPERS[paper])))


def test_readings_stand_in_their_lines_and_the_sums_go_by_them():
    cabinet = cabinet_of("under_bench_case")
    step = cabinet.project.step
    openings = {name: Opening(wide // step * step, wide // step * step - step)
                for name, wide in planned_openings(cabinet).items()}
    depths = {name: deep // step * step for name, deep in planned_depths(cabinet).items()}
    again = solve(replace(cabinet.project, measured=Measured(openings, depths)))
    parts = in_print([drawer_pages(again, (), PAPERS["a4"])], "a4").under(HEADING)
    [sizes] = [part.rows for part in parts if part.tag == "Table" and part.rows[0] == SIZES]
    assert {row[1] for row in sizes[1:]} == {"read: front 22 19/32, back 22 9/16"}
    text = " ".join(part.text for part in parts)
    assert "written down" not in text
    assert "22 9/16 in - 2 × 1/2 in = 21 9/16 in." in text


def test_drawings_have_their_title_and_their_words():
    for project in PROJECTS:
        parts = under(project, "letter")
        titles = [part.text for part in parts if part.tag == "H3" and part.text.endswith("cut open")]
        figures = [part.alt for part in parts if part.tag == "Figure"]
        assert len(titles) == len(figures) >= 2 * len(bays_alike(cabinet_of(project)))
        assert all(len(alt) > 40 for alt in figures)


def test_a_stop_on_a_drawer_stands_first():
    cabinet = cabinet_of("rolling_stand")
    stop = Finding("overlap", "stop", ("bay 1 drawer 2 box back",), "The box back of drawer 2 is in the way.")
    blocks = drawer_pages(cabinet, [stop], PAPERS["a4"])
    frames = [block for block in blocks if isinstance(block, Framed)]
    assert [words.text for words in frames[0].blocks] == [f"STOP, do not cut: {stop.text}"]


def test_a_case_without_drawers_has_no_such_page():
    seen = 0
    for seed in range(60):
        cabinet = solve(random_project(seed))
        drawers = any(board.role == "box side" for board in cabinet.boards)
        blocks = drawer_pages(cabinet, check(cabinet), PAPERS["a4"])
        assert bool(blocks) == drawers
        assert not blocks or blocks[0] == Heading(HEADING)
        seen += not drawers
    assert seen > 3


LESS = re.compile(
    r"box front and box back are (.+?) shorter|the box front is (.+?) shorter, the box back (.+?) shorter")


@pytest.mark.parametrize("back", [None, JointChoice("butt")], ids=["as shipped", "back butted"])
@pytest.mark.parametrize("project", ["rolling_stand", "under_bench_case", "wheel_wall_drawers"])
def test_front_and_back_are_told_as_much_shorter_as_they_are(project, back):
    """Measured on the boards: how much less far they reach from left to right than the box does."""
    drawn = cabinet_of(project).project
    bays = tuple(replace(bay, drawers=bay.drawers and replace(bay.drawers, back_corner=back)) for bay in drawn.bays)
    cabinet = solve(replace(drawn, bays=bays))
    [found] = {LESS.search(line).groups() for line in said(cabinet) if "so wide is the box" in line}
    front, other = (found[0], found[0]) if found[0] else found[1:]
    group = next(board.group for board in cabinet.boards if board.role == "box front")
    ends = {board.role: board.box.size[0] for board in cabinet.groups[group] if board.role in ("box front", "box back")}
    wide = sizes_of(cabinet, group).outside[0]
    finest = HIDDEN[cabinet.style.unit] * UNIT[cabinet.style.unit] * MM
    assert (front != other) == (back is not None)
    for told, role in ((front, "box front"), (other, "box back")):
        assert abs(read_length(told) - (wide - ends[role])) < finest


def said(cabinet):
    return [block.text for block in flat(drawer_pages(cabinet, (), PAPERS["a4"])) if isinstance(block, Words)]
