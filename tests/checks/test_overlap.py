"""Shared wood: hand-made pairs with known amounts, and random boards against a count of grid cells."""

from itertools import combinations

import numpy as np
import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from shoplib.checks.overlap import find_overlaps, overlapping
from shoplib.model.board import Board, BoxCut
from shoplib.model.placement import Placement
from tests.checks.cabinets import board, cabinet, case_boards, joint, ticks, tool_case


def test_a_sound_case_with_its_drawer_shares_no_wood():
    assert find_overlaps(tool_case()) == ()


def test_faces_that_touch_share_nothing():
    one = board("shelf", (0, 0, 0), (500, 300, 18), "z")
    other = board("rail", (0, 0, 18), (500, 18, 80), "y")
    assert find_overlaps(cabinet([one, other])) == ()


def test_two_boards_in_one_place_are_named_with_what_they_share():
    one = board("shelf", (0, 0, 100), (500, 300, 118), "z")
    other = board("rail", (0, 0, 116.5), (500, 18, 180), "y")
    (found,) = find_overlaps(cabinet([one, other]))
    assert (found.level, found.boards, found.amount) == ("stop", ("shelf", "rail"), ticks(1.5))
    assert found.text == (
        "shelf and rail want the same wood: 1.5 mm up and down. "
        "Make rail narrower by 1.5 mm, or move one of them by 1.5 mm."
    )


def test_boards_that_lie_flat_on_each_other_are_not_told_to_be_thinner():
    one = board("shelf", (0, 0, 100), (500, 300, 118), "z")
    other = board("strip", (0, 0, 117), (500, 50, 135), "z")
    (found,) = find_overlaps(cabinet([one, other]))
    assert found.text == "shelf and strip want the same wood: 1 mm up and down. Move one of them by 1 mm."


def test_two_fronts_in_one_plane_are_told_how_far_they_run_into_each_other():
    one = board("left front", (0, -18, 0), (323, 0, 200), "y")
    other = board("right front", (300, -18, 0), (600, 0, 200), "y")
    (found,) = find_overlaps(cabinet([one, other]))
    assert found.amount == ticks(23)
    assert found.text == (
        "left front and right front want the same wood: 23 mm from side to side. "
        "Make left front shorter by 23 mm, or move one of them by 23 mm."
    )


def test_a_dado_too_shallow_is_mended_along_the_joint():
    boards = case_boards()
    boards[0] = board(
        "left side", (0, 0, 0), (18, 300, 400), "x",
        ("rabbet", (13.2, 0, 0), (18, 300, 18.2), "bottom"),
        ("rabbet", (12, 0, 381.8), (18, 300, 400), "top"),
    )  # fmt: skip
    (found,) = find_overlaps(cabinet(boards, [joint("rabbet", "bottom", "left side", "-x", 6)]))
    assert found.amount == ticks(1)
    assert found.text == (
        "left side and bottom want the same wood: 1 mm from side to side. "
        "Cut left side deeper there by 1 mm, or make bottom shorter by 1 mm."
    )


def test_a_dado_too_narrow_is_mended_across_the_joint():
    side = board("side", (0, 0, 0), (18, 300, 400), "x", ("dado", (12, 0, 100), (18, 300, 117.6), "shelf"))
    shelf = board("shelf", (12, 0, 100), (400, 300, 118), "z")
    (found,) = find_overlaps(cabinet([side, shelf], [joint("dado", "shelf", "side", "-x", 6)]))
    assert found.amount == ticks(0.4)
    assert found.text.endswith("Cut side wider there by 0.4 mm, or move the cut by 0.4 mm.")


def side_with_dado_at(low):
    return board("side", (0, 0, 0), (18, 300, 400), "x", ("dado", (12, 0, low), (18, 300, low + 18), "shelf"))


def overlap_with_shelf_to(end, low=100, depth=6):
    shelf = board("shelf", (end, 0, 100), (400, 300, 118), "z")
    return find_overlaps(cabinet([side_with_dado_at(low), shelf], [joint("dado", "shelf", "side", "-x", depth)]))


def test_a_board_right_through_another_gives_way_by_all_that_it_is_too_long():
    """It strikes 12 mm of wood and comes out 5 mm behind: shortened by 12 it would still be 5 too long."""
    (found,) = overlap_with_shelf_to(-5)
    assert found.amount == ticks(12)
    assert found.text == "side and shelf want the same wood: 12 mm from side to side. Make shelf shorter by 17 mm."


def test_a_board_just_to_the_outer_face_is_not_let_in_through_it():
    (found,) = overlap_with_shelf_to(0)
    assert found.text.endswith("Make shelf shorter by 12 mm.")
    (found,) = overlap_with_shelf_to(1)
    assert found.text.endswith("Cut side deeper there by 11 mm, or make shelf shorter by 11 mm.")


def test_a_board_whose_cut_lies_elsewhere_is_not_to_be_shortened():
    """Shortened it would end at the face, and nothing would hold it (a cabinetmaker's find)."""
    (found,) = overlap_with_shelf_to(12, low=118)
    assert found.text.endswith(". It is not the length of shelf: the dado for it in side lies elsewhere.")
    (found,) = overlap_with_shelf_to(10, low=118)
    assert "shelf shorter by 2 mm" in found.text


def test_wood_on_both_walls_of_a_cut_is_measured_wall_by_wall():
    side = board("side", (0, 0, 0), (18, 300, 400), "x", ("dado", (12, 0, 100.5), (18, 300, 117), "shelf"))
    shelf = board("shelf", (12, 0, 100), (400, 300, 118), "z")
    (found,) = find_overlaps(cabinet([side, shelf], [joint("dado", "shelf", "side", "-x", 6)]))
    assert found.amount == ticks(1)


@pytest.mark.parametrize("boards", [[], [board("shelf", (0, 0, 0), (500, 300, 18), "z")]])
def test_no_board_or_one_shares_nothing(boards):
    assert overlapping(boards) == []


SIZE = 9
AXES = (("+x", "+y", "+z"), ("+z", "+y", "-x"), ("+y", "-x", "+z"), ("-z", "+x", "-y"))


@st.composite
def boards(draw):
    """Up to seven boards of a few ticks each, with cuts, standing any way round in a small room."""
    made = []
    for number in range(draw(st.integers(2, 7))):
        size = [draw(st.integers(1, 6)) for _ in range(3)]
        origin = tuple(draw(st.integers(0, SIZE)) for _ in range(3))
        cuts = []
        for _ in range(draw(st.integers(0, 3))):
            low = tuple(draw(st.integers(-1, extent - 1)) for extent in size)
            high = tuple(draw(st.integers(a + 1, extent + 1)) for a, extent in zip(low, size, strict=True))
            cuts.append(BoxCut("dado", low, high))
        axes = draw(st.sampled_from(AXES))
        made.append(Board(f"board {number}", "case", 1, "s", *size, Placement(origin, axes), tuple(cuts)))
    return made


def cells(piece):
    """The unit cells of wood of a board, worked by walking its own grid and turning each cell over."""
    wood = np.ones(piece.size, dtype=bool)
    for cut in piece.cuts:
        low = [max(value, 0) for value in cut.low]
        wood[low[0] : cut.high[0], low[1] : cut.high[1], low[2] : cut.high[2]] = False
    grid = np.zeros((SIZE + 14,) * 3, dtype=bool)
    for cell in np.argwhere(wood):
        world = list(piece.placement.origin)
        for step, text in zip(cell, piece.placement.axes, strict=True):
            world["xyz".index(text[1])] += step if text[0] == "+" else -step - 1
        grid[tuple(value + 7 for value in world)] = True
    return grid


@settings(max_examples=150, deadline=None)
@given(boards())
def test_agrees_with_a_count_of_grid_cells(made):
    """An independent reckoning: unit cells in numpy, counted pair by pair."""
    grids = {piece.name: cells(piece) for piece in made}
    expected = {
        (one.name, other.name): int((grids[one.name] & grids[other.name]).sum())
        for one, other in combinations(made, 2)
    }
    found = {
        (one.name, other.name): sum(b.volume for b in shared) for one, other, shared in overlapping(made)
    }
    assert found == {pair: volume for pair, volume in expected.items() if volume}
