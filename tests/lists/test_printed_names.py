"""What the plan prints for several boards can be typed back."""

import pytest

from shoplib.lists.cut_list import kinds
from shoplib.lists.typed import TypedRow, assign, printed_names
from shoplib.model.board import Board
from shoplib.model.cabinet import solve
from shoplib.model.placement import Placement
from shoplib.words.naming import boards_in_short, in_short
from tests.random_projects import project


@pytest.mark.parametrize("seed", range(40))
def test_every_printed_row_reads_back_to_its_boards(seed):
    cabinet = solve(project(seed))
    rows = kinds(cabinet)
    typed = tuple(
        TypedRow(line, (f"  {boards_in_short(kind.boards).upper()} ",), (), (), count=kind.count)
        for line, kind in enumerate(rows, 2)
    )
    assigned = assign(typed, cabinet, lambda _row, _board: True)
    assert assigned.faults == () and assigned.missing == ()
    for kind, (_, boards) in zip(rows, assigned.boards, strict=True):
        assert {board.name for board in boards} == set(kind.names)


def test_a_printed_name_means_one_set_of_boards():
    for seed in range(40):
        cabinet = solve(project(seed))
        names = printed_names(cabinet)
        assert len({boards_in_short(kind.boards).casefold() for kind in kinds(cabinet)}) == len(kinds(cabinet))
        assert all(set(boards) <= set(cabinet.by_name) for boards in names.values())


def test_a_board_told_twice_is_named_once():
    place = Placement((0, 0, 0), ("+x", "+y", "+z"))
    panel = Board("bay 2 pull-out panel", "bay 2 pull-out", 2, "s", 9, 9, 9, place)
    cleat = Board("bay 2 pull-out cleat", "bay 2 pull-out", 2, "s", 9, 9, 9, place)
    assert boards_in_short([panel, cleat, panel]) == "bay 2 pull-out panel and cleat"
    assert in_short(["bay 2 pull-out", "bay 2 pull-out"]) == ["bay 2 pull-out"]
