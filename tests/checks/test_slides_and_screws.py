"""Slides with the wrong room, and fittings that no screw suits."""

from dataclasses import replace
from pathlib import Path

import pytest

from shoplib.checks.screws import find_missing_screws
from shoplib.checks.slide_room import find_wrong_slide_room
from shoplib.documents.project_file import read_project
from shoplib.measure import INCH
from shoplib.model.board import Board
from shoplib.model.cabinet import solve
from shoplib.model.placement import Placement
from shoplib.model.solved import Cabinet

UNDER_BENCH = Path(__file__).parents[2] / "data" / "projects" / "under_bench_case.toml"


@pytest.fixture(scope="module")
def case() -> Cabinet:
    return solve(read_project(UNDER_BENCH))


def moved_side(case: Cabinet, by: int) -> Cabinet:
    """The right side of the first box, moved left by so much: a box that much narrower."""

    def shift(board: Board) -> Board:
        if board.name != "bay 1 drawer 1 right box side":
            return board
        x, y, z = board.placement.origin
        return replace(board, placement=Placement((x - by, y, z), board.placement.axes))

    return replace(case, boards=tuple(map(shift, case.boards)))


def test_planned_boxes_suit_their_slides(case: Cabinet) -> None:
    assert find_wrong_slide_room(case) == ()


@pytest.mark.parametrize(
    ("by", "level", "word"),
    [(INCH * 3 // 32, "warn", "Shim"), (INCH // 4, "stop", "too narrow"), (-INCH // 16, "stop", "too wide")],
)
def test_a_box_that_does_not_suit_its_slides(case: Cabinet, by: int, level: str, word: str) -> None:
    # Up to 1/16 in narrow is shimmed, none wide: common practice, no source.
    (found,) = find_wrong_slide_room(moved_side(case, by))
    assert found.level == level
    assert word in found.text
    assert abs(found.amount - abs(by)) < case.style.step


def test_a_fitting_without_a_screw_is_told(case: Cabinet) -> None:
    assert find_missing_screws(case) == ()
    bare = tuple(replace(piece, screws=piece.screws[:1]) for piece in case.hardware)
    (found,) = find_missing_screws(replace(case, hardware=bare))
    assert found.level == "warn" and "slides" in found.text
