"""Once stage 1 is cut: only later stages are laid out, from the pieces that it left as they were measured."""

import re
from dataclasses import replace
from functools import cache

import pytest

from shoplib.building.order import build_order, is_done
from shoplib.buying.laid_out import laid_out
from shoplib.buying.list import buying_list
from shoplib.buying.stock_lines import not_laid_out, stocked
from shoplib.checks import check
from shoplib.documents.buying_file import buying_text
from shoplib.documents.cut_list_file import cut_list_csv, cut_list_text
from shoplib.documents.cut_order_file import order_rows
from shoplib.documents.paper import PAPERS
from shoplib.documents.plan_words import order_of_work
from shoplib.documents.sheets_file import sheets_text
from shoplib.measure import INCH
from shoplib.model.board import CASE, FRONTS
from shoplib.model.cabinet import solve
from shoplib.model.cutting import OnHand
from shoplib.model.project import Bay, ImpossibleProject, Measured
from shoplib.printed.build.pages import build_pages
from shoplib.printed.everything import planned, stamp_of
from shoplib.printed.plan.buying_pages import buying_pages
from shoplib.printed.plan.cut_list_pages import cut_list_pages
from shoplib.printed.plan.drawer_page import drawer_pages
from shoplib.printed.plan.plan_set import plan_set
from shoplib.printed.told.readings import WHAT_IT_LEFT
from shoplib.printed.typeset.blocks import told
from tests.building.cases import SHIPPED, measured

LEFT = {"case sheet": OnHand(40 * INCH, 24 * INCH, trim=0), "thin sheet": OnHand(47 * INCH, 36 * INCH, trim=0)}
"""What the case left, as a person may have measured it."""


@cache
def cut(name="under_bench_case", already_cut="case", lay_out="stage by stage"):
    """A shipped case as it stands and was measured, with what it left on hand."""
    project = measured(name).project
    sheets = {called: replace(sheet, on_hand=(LEFT[called],) if called in LEFT else ())
              for called, sheet in project.sheets.items()}
    return solve(replace(project, sheets=sheets, cutting=replace(
        project.cutting, already_cut=already_cut, lay_out=lay_out,
    )))


def wanted(found):
    return buying_list(found.cabinet, stocked(found.sheets))


@pytest.mark.parametrize("lay_out", ["stage by stage", "all together"])
def test_no_board_of_a_stage_that_is_cut_is_laid_out_and_the_pieces_used_are_those_on_hand(lay_out):
    found = laid_out(cut(lay_out=lay_out), 0)
    laid = [piece.board for sheet in found.sheets for piece in sheet.pieces]
    assert sorted(board.name for board in laid) == sorted(
        board.name for board in found.cabinet.boards if board.stage != CASE
    )
    first = [sheet.held for job in found.jobs for sheet in job.sheets if sheet.held and not sheet.held.left_of]
    assert {(held.length, held.width) for held in first} == {(one.length, one.width) for one in LEFT.values()}
    assert not any(CASE in sheet.stages for sheet in found.sheets)
    assert not any("1" in row[2].split(", ") for row in order_rows(found))  # no joint cut of the case either


def test_nothing_is_bought_twice():
    """The case needs one case sheet and its back one thin sheet; what is left of both holds the pull-out and bottoms.

    By hand: a panel of 27 3/32 x 20 in and its cleat come out of 40 x 24 in.
    """
    found = laid_out(cut(), 0)
    whole, left = wanted(laid_out(measured("under_bench_case"), 0)), wanted(found)
    assert not [line for line in left.lines if line.item.startswith("case sheet")]
    assert all(line.stage > CASE for line in left.lines)
    gone = {line.item for line in whole.lines if line.stage == CASE and line.kind not in ("sheet", "board")}
    assert {"wood glue", "clear finish"} < gone and all(item in left.left_out for item in gone)
    same = {line for line in whole.lines if line.stage != CASE and line.kind not in ("sheet", "board")}
    assert same <= set(left.lines)
    for text in (buying_text(left), told(buying_pages(found))):
        assert "Already cut: the case." in " ".join(text.split()) and "ow, for the case\n" not in text
    assert not_laid_out(found.cabinet, stocked(found.sheets)) == ()
    assert not whole.left_out


def test_a_piece_that_is_not_written_is_bought_again_and_so_all_are_asked_for():
    """A piece in the shop that holds the pull-out: left out of the project, a sheet is paid for."""
    sheets = cut().project.sheets
    none = {**sheets, "case sheet": replace(sheets["case sheet"], on_hand=())}
    found = laid_out(solve(replace(cut().project, sheets=none)), 0)
    assert any(line.item.startswith("case sheet") for line in wanted(found).lines)
    assert "all stock that is left, untouched pieces included," in WHAT_IT_LEFT


def test_with_the_boxes_cut_only_fronts_are_laid_out():
    found = laid_out(cut(already_cut="case and boxes"), 0)
    assert {piece.board.stage for sheet in found.sheets for piece in sheet.pieces} == {FRONTS}
    assert {line.stage for line in wanted(found).lines} == {FRONTS}
    assert "Already cut: the case, and the drawer boxes and pull-outs." in wanted(found).left_out


@pytest.mark.parametrize("name", SHIPPED)
def test_all_boards_stay_in_the_cut_list_and_the_build_order_is_the_same(name):
    before, after = cut(name, "nothing"), cut(name)
    text = cut_list_text(after)
    assert text.count("Already cut.") == 1
    assert [line for line in text.replace("  Already cut.\n\n", "").splitlines()] == cut_list_text(before).splitlines()
    assert told(cut_list_pages(after, ())).count("Already cut.") == 1
    rows = cut_list_csv(after).splitlines()
    assert len(rows) == len(cut_list_csv(before).splitlines())
    assert all(row.endswith(",Already cut.") == row.startswith("1,") for row in rows)
    assert "boards. Already cut." in " ".join(order_of_work(after, "").split())
    assert [step.kind for step in build_order(after)] == [step.kind for step in build_order(before)]
    laid = laid_out(after, 0)
    assert not any(piece.board.stage == CASE for sheet in laid.sheets for piece in sheet.pieces)


def test_no_step_cuts_boxes_that_are_cut_again_and_what_is_wrong_with_one_is_said_of_a_cut_one():
    """By hand: 1/8 in less than read for the boxes, each slide pair has 1/8 in too little room."""
    after = cut(already_cut="case and boxes")
    steps = told(build_pages(after, (), ()))
    again = re.compile("Cut from the new sizes: (?!front of)")
    assert again.search(told(build_pages(cut(), (), ()))) and not again.search(steps)
    assert steps.count("Already cut: ") == sum(step.kind in ("box", "pull-outs") for step in build_order(after))
    read = after.project.measured
    again = {of: replace(one, front=one.front - INCH // 8) for of, one in read.openings.items()}
    tight = solve(replace(after.project, measured=replace(read, openings_again=again)))
    findings = check(tight)
    pages = told((*cut_list_pages(tight, findings), *drawer_pages(tight, findings, PAPERS["letter"])))
    assert "STOP: bay 1 drawer 1: the box is 1/8 in too wide" in pages
    assert not any(words in pages for words in ("STOP, do not cut", "Look before cutting"))


def test_printed_twice_without_time_to_search_it_is_the_same():
    """That the same plan gives the same bytes is asked of `print_files` in test_fingerprint.py."""
    sets = [planned(cut(), lambda cabinet: laid_out(cabinet, 0)) for _ in range(2)]
    one, other = (
        (stamp_of(plan), plan_set(plan.cabinet, plan.findings, plan.in_use, plan.found, PAPERS["letter"]))
        for plan in sets
    )
    assert sheets_text(sets[0].found) == sheets_text(sets[1].found) and one == other


def test_where_nothing_is_left_to_lay_out_one_sentence_says_so():
    project = cut().project
    bare = solve(replace(project, bays=(Bay("open"),), measured=Measured()))
    with pytest.raises(ImpossibleProject) as said:
        laid_out(bare, 0)
    assert str(said.value).startswith('cutting.already_cut: with "case" no board is left to lay out; ')


@pytest.mark.parametrize("name", SHIPPED)
def test_steps_of_a_stage_that_is_cut_are_told_as_done_and_not_as_work(name):
    """All up to the case in its place: it was measured there. What comes after is told as before."""
    before, after = cut(name, "nothing"), cut(name)
    old, new = (told(build_pages(case, (), ())).split("\nStep ")[1:] for case in (before, after))
    kinds = [step.kind for step in build_order(after)]
    last = kinds.index("place")
    later = {board.sheet for board in after.boards if board.stage > CASE}
    waits = any(after.sheets[sheet].kind == "solid" for sheet in later)
    for at, (one, other) in enumerate(zip(old, new, strict=True)):
        if at > last or (kinds[at] == "solid wood" and waits):
            assert other == one
        else:
            assert other == f"{one.splitlines()[0]}: done"
    assert "What is marked done" in told(build_pages(after, (), ()))
    assert "What is marked done" not in told(build_pages(before, (), ()))


def test_a_case_that_is_cut_and_not_yet_read_is_sawn_and_no_more():
    case = cut()
    bare = solve(replace(case.project, measured=Measured()))
    done = [step.kind for step in build_order(bare) if is_done(step, bare)]
    assert done == ["cut the case"]
