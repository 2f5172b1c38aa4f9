"""Once the case is measured: what is still stopped, what is noted, and what is printed anew."""

import json
from dataclasses import replace
from functools import cache
from pathlib import Path

import pytest

from shoplib.building.drawer_sizes import sizes_of
from shoplib.building.front_chains import chains_upward, fronts_of
from shoplib.building.riding import riding
from shoplib.buying.laid_out import laid_out
from shoplib.buying.list import buying_list
from shoplib.buying.seams import seam_area
from shoplib.buying.stock_lines import stocked
from shoplib.checks import check
from shoplib.checks.in_use import check_in_use
from shoplib.documents.buying_file import yard_cautions
from shoplib.documents.cut_list_file import cut_list_text
from shoplib.documents.cut_order_file import cut_order_csv
from shoplib.documents.paper import PAPERS
from shoplib.documents.plan_words import READ_AGAIN, order_of_work
from shoplib.documents.to_measure import planned_openings, to_measure_text
from shoplib.draw.slide_lines import slide_lines, worked_faces
from shoplib.lists.alike import told_once
from shoplib.lists.cut_list import kinds
from shoplib.lists.writing import Writing
from shoplib.measure import INCH
from shoplib.model.board import BOXES, CASE, FRONTS
from shoplib.model.cabinet import solve
from shoplib.model.project import Opening
from shoplib.printed.build.pages import build_pages
from shoplib.printed.everything import ABOUT, planned, print_files, stamp_of
from shoplib.printed.plan.cover import reading_pages
from shoplib.printed.plan.drawer_page import CUT_BEFORE, drawer_pages
from shoplib.printed.plan.front_pages import front_pages
from shoplib.printed.plan.notes import note_blocks
from shoplib.printed.plan.plan_set import plan_set
from shoplib.printed.told.readings import NEW_PAGES, OLD_PAGES, WHAT_IT_LEFT, to_measure_first
from shoplib.printed.true_scale.reference import reference_words
from shoplib.printed.true_scale.slide_templates import slide_templates
from shoplib.printed.true_scale.sticks import across_stick
from shoplib.printed.typeset.blocks import Heading, ToFillIn, told
from shoplib.words.quoted import in_quotes
from tests.building.cases import SHIPPED, measured, measured_unevenly, shipped
from tests.printed.test_build_pages import flat

PAPER = PAPERS["letter"]
ROOT = Path(__file__).parents[2]


@cache
def found(name):
    return laid_out(measured(name), 0)


def pages(cabinet, laid=None):
    return plan_set(cabinet, check(cabinet), check_in_use(cabinet), laid, PAPER)


def built(cabinet):
    return build_pages(cabinet, check(cabinet), check_in_use(cabinet))


@pytest.mark.parametrize("name", SHIPPED)
def test_fronts_stay_stopped_until_they_are_measured_for(name):
    cabinet = measured(name)
    stage = told(to_measure_first(3, cabinet))
    assert "Do not cut this stage before the boxes hang" in stage and not to_measure_first(2, cabinet)
    boxes = [block for block in flat(built(cabinet)) if isinstance(block, ToFillIn) and block.rooms]
    write = Writing(cabinet.style).length
    read = cabinet.project.measured.openings
    lines = {line for box in boxes for line in box.lines}
    assert lines == {f"{of} (before: {write(read[of].front)}, {write(read[of].back)})"
                     for of in planned_openings(cabinet)}
    assert all(box.rooms == ("front", "back") for box in boxes)
    again = told(built(cabinet))
    assert f"by more than {write(cabinet.project.step)} from the first one" in again
    assert all(line in again for line in lines)
    assert "before measuring again the opening" in told(front_pages(cabinet, (), PAPER))
    order = " ".join(order_of_work(cabinet, "").split())
    assert "Before cutting, measure again" in order and READ_AGAIN in order
    assert READ_AGAIN not in " ".join(order_of_work(shipped(name), "").split())
    assert "Do not cut these before measuring again" in cut_list_text(cabinet)


def test_the_sum_of_a_box_stays_that_of_the_reading_it_was_cut_to():
    """By hand: 1/2 in less in the second reading, the box keeps its width and has 1/4 in of room less at each side."""
    cabinet, group = measured("under_bench_case"), "bay 1 drawer 2"
    readings = cabinet.project.measured
    first, less = readings.openings[group], INCH // 2
    again = solve(replace(cabinet.project, measured=replace(
        readings, openings_again={group: Opening(first.front - less, first.back - less)})))
    before, after = sizes_of(cabinet, group), sizes_of(again, group)
    assert before.outside == after.outside and before.room - after.room == less // 2
    told_now, width = told(drawer_pages(again, (), PAPER)), Writing(cabinet.style).length(before.outside[0])
    assert f"= {width}{CUT_BEFORE}." in told_now and told_now.count(CUT_BEFORE) == 1
    assert CUT_BEFORE not in told(drawer_pages(cabinet, (), PAPER))


@pytest.mark.parametrize("name", SHIPPED)
def test_sheets_of_the_fronts_wait_for_hung_boxes(name):
    """Those of the boxes do not: their sizes are those of the case as built."""
    text = told(pages(measured(name), found(name)))
    alone = any(3 in job.ask.stages and min(job.ask.stages) > 1 for job in found(name).jobs)
    assert ("not before the boxes hang and the openings are measured again" in text) == alone
    assert "its parts have planned sizes" not in text and "not before the case stands" not in text


@pytest.mark.parametrize("name", SHIPPED)
@pytest.mark.parametrize("of", [shipped, measured])
def test_every_note_of_the_verdict_stands_on_paper(name, of):
    cabinet = of(name)
    findings, in_use = check(cabinet), check_in_use(cabinet)
    text = told(pages(cabinet))
    for several in (findings, in_use):
        for note in told_once([f.text for f in several if f.level == "note" and f.check != "diagonals"]):
            assert in_quotes(note) in text
    titles = [block.text for block in note_blocks(findings, in_use) if isinstance(block, Heading)]
    assert any("changed because of what you measured" in title for title in titles) == (of is measured)
    assert "because ." not in text  # a runner is cut to the depth of its bay


@pytest.mark.parametrize("name", SHIPPED)
def test_boards_of_the_case_stay_as_they_were_once_it_is_measured(name):
    """What the sentence about new pages says of stage 1: sizes and cuts are the same, those of later stages are not."""
    before, after = shipped(name), measured(name)
    for cabinet in (before, after):
        assert NEW_PAGES in told(reading_pages(cabinet, ""))
    assert NEW_PAGES in told(built(before))
    same = {board.name for board in before.boards if _as_cut(board) == _as_cut(after.by_name[board.name])}
    assert {board.name for board in before.boards if board.stage == CASE} <= same
    assert {board.stage for board in before.boards if board.name not in same} == {BOXES, FRONTS}
    assert _numbered(before) == _numbered(after)


@pytest.mark.parametrize("name", SHIPPED)
@pytest.mark.parametrize("of", [measured, measured_unevenly])
def test_what_is_marked_out_on_boards_of_the_case_stays_as_it_was_once_it_is_measured(name, of):
    """The faces that carry slides, what a label says the board lies on, the template's faces and heights."""
    before, after = shipped(name), of(name)
    page = Writing(before.style)
    for kind, again in zip(kinds(before), kinds(after), strict=False):
        if kind.stage == CASE:
            assert reference_words(kind, before) == reference_words(again, after)
            assert [worked_faces(board, before) for board in kind.boards] == [
                worked_faces(board, after) for board in again.boards]
            assert slide_lines(kind.boards, before, page) == slide_lines(again.boards, after, page)
    one, other = ([(paper.serves, paper.lines, paper.drawing) for paper in slide_templates(cabinet)]
                  for cabinet in (before, after))
    assert one == other and bool(one) == bool(riding(before))


@pytest.mark.parametrize("name", SHIPPED)
def test_the_stick_across_keeps_its_uprights_and_drops_the_fronts_of_bays_that_are_read(name):
    """So no name stands at two places; how far a front stands from an upright, front pages and spacers tell."""
    before, after = (across_stick(of(name)).marks for of in (shipped, measured_unevenly))
    planned = {(mark.at, what) for mark in before for what in mark.what.split("; ")}
    built = {(mark.at, what) for mark in after for what in mark.what.split("; ")}
    assert built == {(at, what) for at, what in planned if " front, " not in what} != planned


@pytest.mark.parametrize("of", [shipped, measured])
def test_what_is_kept_of_the_old_set_is_said_alike_everywhere(of):
    """On page 3, in the step that measures, in the README, on page 08; nowhere is the whole old set thrown away."""
    cabinet = of("under_bench_case")
    places = [told(reading_pages(cabinet, ""))]
    if of is shipped:
        cells = json.loads((ROOT / "notebooks" / "08_cut_list_and_sheets.ipynb").read_text(encoding="utf-8"))["cells"]
        on_page = " ".join("".join(cell["source"]) for cell in cells).replace("`", "")
        readme = " ".join((ROOT / "README.md").read_text(encoding="utf-8").replace("`", "").split())
        places += [told(built(cabinet)), readme, on_page]
        assert all(WHAT_IT_LEFT in place for place in places)
    else:
        assert "all stock that is left by now, untouched pieces included" in told(built(cabinet))
    for place in places:
        assert OLD_PAGES in place
        assert not any(word in place for word in ("throw the old", "old pages away", "pages away"))


def _as_cut(board):
    return board.size, board.cut_size, board.cuts


def _numbered(cabinet):
    """The numbers of boards of the case in the cut list, which their labels bear."""
    return {name: number for number, kind in enumerate(kinds(cabinet), start=1) if kind.stage == CASE
            for name in kind.names}


@pytest.mark.parametrize("of", [shipped, measured])
def test_files_that_the_pages_name_are_printed(of):
    cabinet, name = of("wheel_wall_drawers"), "wheel_wall_drawers"
    laid = found(name) if of is measured else laid_out(cabinet, 0)
    plan = planned(cabinet, lambda _: laid)
    files = print_files(plan, stamp_of(plan), PAPER)
    assert files["cut_order.csv"].decode() == cut_order_csv(laid)
    assert files["to_measure.toml"].decode() == to_measure_text(cabinet)
    assert {"cut_order.csv", "to_measure.toml"} <= {*ABOUT}
    assert "cut_order.csv" not in print_files(replace(plan, found=None), stamp_of(plan), PAPER)


def test_what_the_buying_list_says_besides_its_lines_is_printed():
    """Cautions for lifting, what it assumes, and what it does not hold, such as the screws that a case hangs by."""
    cabinet, laid = measured("wheel_wall_drawers"), found("wheel_wall_drawers")
    wanted = buying_list(cabinet, stocked(laid.sheets), [], seam_area(laid))
    text = told(pages(cabinet, laid))
    assert wanted.assumed and wanted.missing and yard_cautions(wanted)
    assert all(line in text for line in (*wanted.assumed, *wanted.missing, *yard_cautions(wanted)))
    assert any("Screws that the case hangs by" in line for line in wanted.missing)


def test_it_is_said_that_layouts_may_differ():
    text = told(pages(shipped("wheel_wall_drawers")))
    assert "it may find other layouts, and then the fingerprint is another" in text


@pytest.mark.parametrize("name", SHIPPED)
def test_every_front_of_a_bay_is_in_its_sum_upward_though_each_was_measured_for(name):
    cabinet = measured_unevenly(name)
    fronts, step = fronts_of(cabinet), cabinet.project.step
    unlike = any(front.box.size[0] != other.box.size[0]
                 for several in fronts.values() for front in several for other in several)
    several = len(fronts) < sum(map(len, fronts.values()))
    assert unlike == (several and cabinet.project.fronts.kind == "inset")  # overlay ones of a bay have one width
    for bay, chain in chains_upward(cabinet):
        named = [name for name, _ in chain.terms if name.endswith(" front")]
        assert named == [front.name for front in fronts[bay]]
        assert all(size <= cabinet.project.fronts.gap + step for name, size in chain.terms if name not in named)
