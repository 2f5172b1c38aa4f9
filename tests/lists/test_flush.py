"""Fronts of another thickness: which faces come out of line, by hand numbers. Sizes are made up."""

import pytest

from shoplib.lists.flush import out_of_flush
from shoplib.lists.refit import refit
from shoplib.measure import INCH
from shoplib.model.cabinet import solve
from shoplib.model.project import Fronts
from shoplib.model.solved import Cabinet
from tests.lists.projects import chest

INSET = chest(fronts=Fronts("inset", "case sheet"))
"""Fronts of 0.704 in, the mean of 0.703 and 0.705, with their faces in line with the front edges of the case."""


def told(planned: Cabinet, thickness: dict[int, int]) -> list[str]:
    """What is said of the fronts of drawers of bay 1 that come out so thick."""
    sizes = {}
    for number, thick in thickness.items():
        front = planned.by_name[f"bay 1 drawer {number} front"]
        sizes[front.name] = (front.length, front.width, thick)
    return out_of_flush(refit(planned, sizes).cabinet, planned)


@pytest.mark.parametrize(
    ("thick", "where"),
    [(500, "13/64 in behind"), (704, None), (750, "0.046 in in front of"), (1000, "19/64 in in front of")],
)
def test_an_inset_front_is_held_against_the_front_edges_of_the_case(thick, where):
    """It is screwed to its box: 0.704 - 0.5 = 0.204 in, 0.75 - 0.704 = 0.046 in, 1 - 0.704 = 0.296 in; 1/64 steps."""
    expected = [f"bay 1 drawer 2 front stands {where} the front edges of the case"] if where else []
    assert told(solve(INSET), {2: thick * INCH // 1000}) == expected


def test_inset_fronts_that_moved_alike_are_told_together():
    half = INCH // 2
    assert told(solve(INSET), dict.fromkeys((1, 2, 3), half)) == [
        "front of bay 1 drawers 1 to 3 stand 13/64 in behind the front edges of the case"
    ]
    assert told(solve(INSET), dict.fromkeys((1, 2, 3, 4), half)) == [
        "all 4 fronts stand 13/64 in behind the front edges of the case"
    ]
    assert told(solve(INSET), {1: half, 2: INCH}) == [
        "bay 1 drawer 1 front stands 13/64 in behind the front edges of the case",
        "bay 1 drawer 2 front stands 19/64 in in front of the front edges of the case",
    ]


def test_overlay_fronts_are_held_against_each_other():
    """They lie on the case: one of 1/2 in among three of 0.704 in stands 0.204 in back; four of them are in line."""
    planned = solve(chest())
    assert told(planned, {4: INCH // 2}) == [
        "bay 1 drawer 4 front stands 13/64 in behind the faces of the other fronts"
    ]
    assert told(planned, {4: 3 * INCH // 4}) == [
        "bay 1 drawer 4 front stands 0.046 in in front of the faces of the other fronts"
    ]
    assert told(planned, dict.fromkeys((1, 2, 3, 4), INCH // 2)) == []
    assert told(planned, {}) == []


def test_overlay_fronts_none_of_which_stayed_are_still_out_of_line():
    planned = solve(chest())
    assert told(planned, {1: INCH // 2, 2: INCH // 2, 3: INCH // 2, 4: INCH}) == [
        "bay 1 drawer 4 front stands 1/2 in in front of the faces of the other fronts"
    ]
