"""The shipped projects are sound, and a fault sown into any of them is caught with its amount."""

from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.checks import check
from shoplib.documents.project_file import read_project
from shoplib.measure import MM
from shoplib.model.board import BoxCut
from shoplib.model.cabinet import solve
from shoplib.model.placement import standing_in

FILES = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
SHIPPED = {path.stem: solve(read_project(path)) for path in FILES}
LEFT, RIGHT = ("+z", "+y", "-x"), ("+z", "-y", "+x")


def with_board(cabinet, board):
    boards = tuple(board if old.name == board.name else old for old in cabinet.boards)
    return replace(cabinet, boards=boards)


def with_cut(cabinet, board, cut, **changes):
    changed = replace(cut, **changes)
    return with_board(cabinet, replace(board, cuts=tuple(changed if c is cut else c for c in board.cuts)))


def a_cut(cabinet, role, kinds, receives=""):
    """The first cut of these kinds in a board of this role that receives such a board and lies in one face."""
    return next(
        (board, cut)
        for board in cabinet.boards
        if board.role == role
        for cut in board.cuts
        if isinstance(cut, BoxCut) and cut.kind in kinds and cut.for_board.endswith(receives)
        if cut.for_board and cut.low[2] == 0
    )


def stops(cabinet, name):
    return [f for f in check(cabinet) if f.level == "stop" and f.check == name]


pytestmark = pytest.mark.parametrize("cabinet", SHIPPED.values(), ids=SHIPPED)


def test_nothing_stops_a_shipped_project(cabinet):
    assert [f.text for f in check(cabinet) if f.level == "stop"] == []


def test_the_case_corner_cut_too_shallow(cabinet):
    board, cut = a_cut(cabinet, "side", {"dado", "rabbet"})
    spoilt = with_cut(cabinet, board, cut, high=(*cut.high[:2], cut.high[2] - MM))
    told = [f for f in stops(spoilt, "seating") if f.boards == (cut.for_board, board.name)]
    assert [f.amount for f in told if "too shallow" in f.text] == [MM]
    assert any({board.name, cut.for_board} == set(f.boards) for f in stops(spoilt, "overlap"))


def test_the_groove_of_a_box_laid_low(cabinet):
    board, cut = a_cut(cabinet, "box side", {"groove"}, "box bottom")
    low, high = [(u, v - 2 * MM, w) for u, v, w in (cut.low, cut.high)]
    told = stops(with_cut(cabinet, board, cut, low=low, high=high), "seating")
    assert any(f.boards == (cut.for_board, board.name) and "over the wall" in f.text for f in told)


def test_a_box_back_cut_short(cabinet):
    back = next(board for board in cabinet.boards if board.role == "box back")
    told = stops(with_board(cabinet, replace(back, length=back.length - 3 * MM)), "seating")
    assert [(f.boards[0], f.amount) for f in told] == [(back.name, 3 * MM)]


def test_a_box_side_too_long_for_the_case(cabinet):
    side = next(board for board in cabinet.boards if board.role == "box side")
    rear = max(board.box.high[1] for board in cabinet.boards)
    long = replace(side, length=rear - side.box.low[1] + MM)
    spoilt = with_board(cabinet, long)
    assert [f.amount for f in stops(spoilt, "outside")] == [MM]


def test_a_mirrored_side(cabinet):
    """The right side made like the left one: its cuts look outward."""
    side = next(board for board in cabinet.boards if board.name == "right side")
    assert side.placement.axes == RIGHT
    spoilt = with_board(cabinet, replace(side, placement=standing_in(side.box, LEFT)))
    assert stops(spoilt, "overlap") and stops(spoilt, "seating")


def test_a_stop_in_the_way_of_a_drawer(cabinet):
    run = cabinet.travel[0]
    front = min((b for b in cabinet.groups[run.group]), key=lambda b: b.box.low[1])
    ahead = -(front.box.high[1] - front.box.low[1]) - 10 * MM
    post = replace(front, name="post", group="case", cuts=(), placement=standing_in(
        front.box.moved((0, ahead, 0)), front.placement.axes))  # fmt: skip
    told = stops(replace(cabinet, boards=(*cabinet.boards, post)), "travel")
    assert any(f.boards == (front.name, "post") for f in told)
