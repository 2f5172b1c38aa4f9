"""What each board is part of, held against where it stands between the uprights.

Bays count from the left, drawers from the bottom up: common practice, no source.
"""

import pytest

from shoplib.model.cabinet import solve
from shoplib.model.uprights import bays
from tests import random_projects
from tests.building.cases import SHIPPED, shipped


def _each(cabinet):
    spaces = bays(cabinet)
    for board in cabinet.boards:
        part = board.part_of
        if part is None:
            assert board.group == "case"
            continue
        left, right = spaces[part.bay - 1]
        assert 2 * left < board.box.low[0] + board.box.high[0] < 2 * right
        assert board.name == part.name or board.name.startswith(f"{part.name} ")
        assert board.group in ("case", part.name)
        assert cabinet.part_of(part.name) in (None, part)


@pytest.mark.parametrize("name", SHIPPED)
def test_each_board_stands_in_the_bay_that_it_is_part_of(name):
    _each(shipped(name))


def test_so_do_those_of_other_projects(count):
    for seed in range(count(12, 200)):
        _each(solve(random_projects.project(seed)))


@pytest.mark.parametrize("name", SHIPPED)
def test_drawers_of_a_bay_are_counted_from_the_bottom_up_and_from_the_left(name):
    cabinet, places = shipped(name), {}
    for board in cabinet.boards:
        if board.role == "box bottom":
            places.setdefault(board.part_of.bay, []).append((board.part_of, board.box.low[2], board.box.low[0]))
    for drawers in places.values():
        by_number = sorted(drawers, key=lambda one: (one[0].number, one[0].place))
        assert by_number == sorted(drawers, key=lambda one: one[1:])
