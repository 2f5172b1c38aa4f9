"""Cabinets laid out: every board once, each leftover where it was left, fronts in order, a search that is stopped."""

from collections import Counter
from dataclasses import replace

import pytest

from shoplib.buying import searched as module
from shoplib.buying.jobs import Held
from shoplib.buying.kept import left_after
from shoplib.buying.laid_out import laid_out
from shoplib.buying.lifts import needs_two, weight_of
from shoplib.buying.numbering import turns
from shoplib.buying.spare_parts import spares
from shoplib.buying.waiting import HANG, STANDS, cut_waits
from shoplib.documents.cut_order_words import minded
from shoplib.documents.project_file import read_project
from shoplib.layout.offcuts import LEAST
from shoplib.layout.pieces import Rect
from shoplib.measure import INCH, MM
from shoplib.model.cabinet import solve
from shoplib.model.cutting import Cutting
from shoplib.model.sheet import Sheet
from tests.buying.laid import NAMES, PROJECTS, laid
from tests.layout.judged import judged

EACH = pytest.mark.parametrize("name", NAMES)


@EACH
def test_every_board_lies_on_one_sheet_in_its_own_size(name):
    found = laid(name)
    lying = Counter(piece.board.name for sheet in found.sheets for piece in sheet.pieces)
    cabinet = found.cabinet
    staves = {piece.board.name: [] for sheet in found.sheets for piece in sheet.pieces if piece.stave}
    assert {lying[board.name] for board in cabinet.boards if board.name not in staves} == {1}
    for sheet in found.sheets:
        for piece in sheet.pieces:
            staves.get(piece.board.name, []).append(piece.stave)
    assert all(sorted(numbers) == [1, 2] for numbers in staves.values())
    assert (name == "wheel_wall_drawers") == bool(staves)
    for sheet in found.sheets:
        assert [piece.placed for piece in sheet.pieces] == list(sheet.laid.placed)
        for piece in sheet.pieces:
            if piece.board.name in cabinet.by_name and sheet.sheet.kind != "solid":
                length, width = piece.board.cut_size[:2]
                at = piece.placed.at
                assert (at.w, at.h) == ((width, length) if piece.placed.turned else (length, width))
                assert not piece.placed.turned or piece.board.grain == "none"


@EACH
def test_the_judge_of_coordinates_finds_nothing(name):
    for job in laid(name).jobs:
        assert judged(job.job, job.layout) == []


@EACH
def test_each_part_has_a_cut_of_its_own(name):
    """Common practice, no source: what is left takes the error. All sheets of these projects have wood to spare.

    Where stages share a sheet, parts may be left to size if that keeps what waits uncut, which is the graver fault.
    """
    at_once = laid_out(solve(read_project(next(path for path in PROJECTS if path.stem == name))), 0.0)
    for found in (at_once, laid(name)):
        for job in found.jobs:
            if len({part.turn for part in job.ask.parts}) == 1:
                assert [step for step in job.steps if step.to_size] == []


@EACH
def test_nothing_is_cut_before_what_it_waits_for(name):
    """What is cut of a later stage has its size for good before the reading that it follows (common practice)."""
    found = laid(name)
    for turn in turns(found):
        parts, letters = turn.job.ask.parts, turn.job.ask.letters
        for step in turn.cuts:
            assert ("and wait" in minded(step, letters, str, ("", ""))) == bool(step.too_early)
            assert {parts[part].turn for part in step.done if part not in step.too_early} <= {turn.number}
    numbers = [turn.number for turn in turns(found)]
    assert numbers == sorted(numbers)
    stages = {board.stage for board in found.cabinet.boards}
    assert {stage: cut_waits(stage, found.cabinet) for stage in stages} == {
        stage: {1: "", 2: STANDS, 3: HANG}[stage] for stage in stages
    }


@EACH
def test_what_an_earlier_stage_left_is_what_a_later_one_is_cut_from(name):
    found = laid(name)
    by_name = {sheet.name: sheet for sheet in found.sheets}
    assert len(by_name) == len(found.sheets)
    done: set[str] = set()
    for sheet in found.sheets:
        if sheet.held and sheet.held.left_of:
            source = by_name[sheet.held.left_of]
            assert source.name in done
            named = {f"{source.name}, offcut {small}": rest for rest, small in source.kept.items()}
            rest = named[sheet.name]
            assert (sheet.stock.length, sheet.stock.width) == (rest.w, rest.h)
            assert (sheet.stock.trim_ends, sheet.stock.trim_edges) == (0, 0)
        done.add(sheet.name)


@EACH
def test_what_goes_in_is_parts_blade_trim_and_what_is_left_at_the_end(name):
    """Over all sheets of a name, to the last square tick."""
    found = laid(name)
    for sheet_name, left in found.left.items():
        sheets = [sheet for sheet in found.sheets if sheet.sheet.name == sheet_name]
        new = [sheet for sheet in sheets if sheet.bought or not sheet.held.left_of]
        unused = sum(held.length * held.width for held in left if not held.left_of)
        came_in = sum(sheet.stock.length * sheet.stock.width for sheet in new)
        parts = sum(piece.placed.at.area for sheet in sheets for piece in sheet.pieces)
        lost = sum(sheet.sawn.kerf + sheet.sawn.trim for sheet in sheets)
        assert came_in + unused == parts + lost + sum(held.length * held.width for held in left)


def test_fronts_of_a_row_lie_in_one_board_from_left_to_right():
    """The ash fronts of the case over the wheel bench: the order of their grain is that in which they stand."""
    found = laid("wheel_wall_drawers")
    [sheet] = [sheet for sheet in found.sheets if any(piece.board.role == "front" for piece in sheet.pieces)]
    fronts = sorted((piece for piece in sheet.pieces if piece.board.role == "front"), key=lambda one: one.placed.at.x)
    assert [front.board.name for front in fronts] == ["bay 1 drawer 1 front", "bay 2 drawer 1 front"]
    first, second = (front.placed.at for front in fronts)
    assert first.y == second.y and second.x == first.x + first.w + sheet.kerf


def test_equal_fronts_of_a_bay_lie_from_the_top_one_down():
    """Four equal fronts are one part of the job: the order of the boards is still that of the case."""
    plain = read_project(next(path for path in PROJECTS if path.stem == "under_bench_case"))
    bays = [
        replace(bay, drawers=replace(bay.drawers, heights="equal", difference=0)) if bay.drawers else bay
        for bay in plain.bays
    ]
    asked = Cutting(fronts_in_grain_order="down each bay")
    found = laid_out(solve(replace(plain, bays=tuple(bays), cutting=asked)), 1.0)
    lying = {piece.board.name: (sheet.name, piece.placed.at) for sheet in found.sheets for piece in sheet.pieces}
    for bay in (1, 3):
        run = [lying[f"bay {bay} drawer {number} front"] for number in (4, 3, 2, 1)]
        assert len({name for name, _ in run}) == 1
        places = [(at.x, at.y) for _, at in run]
        assert places == sorted(places)


def test_offcuts_come_before_what_is_bought():
    """The two box offcuts of the finger-jointed drawers hold all eight parts (by hand: 2 x 2 on each)."""
    found = laid("finger_jointed_drawers")
    box = [sheet for sheet in found.sheets if sheet.sheet.name == "box sheet"]
    assert [sheet.bought for sheet in box] == [False, False]
    assert [len(sheet.pieces) for sheet in box] == [4, 4]


def test_of_what_lies_in_the_shop_the_least_is_taken():
    """Both drawer bottoms come out of one rest of the first thin sheet (by hand: 2 x 323.3 + 3 of 821 mm)."""
    found = laid("finger_jointed_drawers")
    assert len([sheet for sheet in found.sheets if sheet.sheet.name == "thin sheet" and 2 in sheet.stages]) == 1


def test_what_lies_in_the_shop_when_pieces_are_cut():
    one, other = Held(60, 30, 1, 1), Held(40, 30)
    kept = Rect(5, 5, 20 * INCH, 5 * INCH)
    left = left_after([one, other], [(other, "ply on hand 1", [kept]), (None, "ply 1", [Rect(0, 0, 7, 6)])], LEAST)
    assert left == (
        one, Held(20 * INCH, 5 * INCH, left_of="ply on hand 1", name="ply on hand 1, offcut a"),
        Held(7, 6, left_of="ply 1"),
    )  # fmt: skip
    again = left_after(left, [(left[1], left[1].name, [Rect(0, 0, 13 * INCH, 5 * INCH)])], LEAST)
    assert again[-1].name == "ply on hand 1, offcut a, offcut a" and left[1] not in again


def test_what_is_left_and_too_small_to_keep_is_not_cut_up_later():
    """A strip for a runner is ripped from a board, not from a chip of 8 by 1 3/8 in that an earlier stage leaves."""
    for name in NAMES:
        for sheet in laid(name).sheets:
            if sheet.held and sheet.held.left_of:
                along, across = sheet.stock.length, sheet.stock.width
                if sheet.sheet.grain == "none":
                    along, across = max(along, across), min(along, across)
                assert along >= 12 * INCH and across >= 4 * INCH


def test_without_grain_an_offcut_is_kept_whichever_way_it_lies():
    """Common practice, no source: 12 by 4 in is kept. Only what is shorter both ways, or narrower, has no letter."""
    slim, seen = Rect(0, 0, 11 * INCH, 15 * INCH), Counter()
    for name in NAMES:
        for sheet in laid(name).sheets:
            turns = sheet.sheet.grain == "none"
            seen[turns] += 1
            assert bool(replace(sheet, sawn=replace(sheet.sawn, offcuts=(slim,))).kept) == turns
            for rest in sheet.sawn.offcuts:
                ways = [(rest.w, rest.h), *([(rest.h, rest.w)] if turns else [])]
                assert (rest in sheet.kept) == any(long >= 12 * INCH and wide >= 4 * INCH for long, wide in ways)
    assert len(seen) == 2


@pytest.mark.parametrize("at", [1, 3, 5])
def test_a_search_that_is_stopped_keeps_the_best_so_far_and_lays_out_the_rest(at):
    """As when Ctrl+C is pressed while a better layout is told."""
    plain = solve(read_project(next(path for path in PROJECTS if path.stem == "under_bench_case")))
    told = []

    def tell(ask, on, layout):
        told.append((ask, layout))
        if len(told) == at:
            raise KeyboardInterrupt

    found = laid_out(plain, 3.0, tell)
    assert found.stopped
    asked, best = told[at - 1]
    [job] = [job for job in found.jobs if job.ask == asked]
    assert job.layout.cost == best.cost
    assert {piece.board.name for sheet in found.sheets for piece in sheet.pieces} == set(plain.by_name)


def test_a_search_that_is_stopped_before_its_first_layout_still_gives_one(monkeypatch):
    plain = solve(read_project(next(path for path in PROJECTS if path.stem == "rolling_stand")))
    search, calls = module.layouts, []

    def stopped(job, seconds):
        calls.append(seconds)
        if len(calls) == 1:
            raise KeyboardInterrupt
        return search(job, seconds)

    monkeypatch.setattr(module, "layouts", stopped)
    found = laid_out(plain, 3.0)
    assert found.stopped and {*calls[1:]} == {0.0}
    assert {piece.board.name for sheet in found.sheets for piece in sheet.pieces} == set(plain.by_name)


def test_a_full_sheet_of_three_quarter_plywood_is_lifted_by_two():
    """60 to 75 lb is what yards say of it (common practice, no source); half of it one person lifts."""
    ply = Sheet("ply", "plywood", 3 * INCH // 4)
    weight = weight_of(ply, 96 * INCH, 48 * INCH)
    assert weight.low.to("lbf").magnitude < 60 < 70 < weight.high.to("lbf").magnitude < 80
    assert needs_two(ply, 96 * INCH, 48 * INCH, "50 lb")
    assert not needs_two(ply, 48 * INCH, 48 * INCH, "50 lb")
    assert not needs_two(ply, 96 * INCH, 48 * INCH, "80 lb")


def test_what_no_table_weighs_is_not_guessed():
    board = Sheet("board", "hardboard", 3 * MM)
    assert weight_of(board, 2440 * MM, 1220 * MM) is None
    assert not needs_two(board, 2440 * MM, 1220 * MM, "1 kg")


def test_a_part_is_lost_where_no_leftover_is_as_large():
    """By hand: the back of the under-bench case is 59 5/32 x 28 21/32 in, and nothing so long is left."""
    found = laid("under_bench_case")
    thin = next(one for one in spares(found) if one.sheet.name == "thin sheet")
    back = next(thin.job.parts[number] for number in thin.found.lost if thin.job.parts[number].name == "back")
    for held in found.left["thin sheet"]:
        long, wide = max(held.length, held.width), min(held.length, held.width)
        assert long < back.length or wide < back.width
    assert thin.more is not None and not thin.more[1].lost
