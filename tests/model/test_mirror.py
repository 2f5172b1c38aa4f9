"""A project that is planned the same from both sides gives boards that are: exact to the tick."""

from dataclasses import replace

import pytest

from shoplib.measure import MM
from shoplib.model.board import Board, BoxCut, Hole
from shoplib.model.box import Box
from shoplib.model.cabinet import solve
from shoplib.model.project import Bay, ImpossibleProject, Project
from shoplib.model.solved import Cabinet
from tests.random_projects import project

EVEN = 4
"""Thicknesses are halved for tongues, and the rest again for their shoulders."""


def mirrored_bays(bays: tuple[Bay, ...]) -> tuple[Bay, ...]:
    """The bays and, after them, the same ones as seen in a mirror; a pull-out changes walls."""

    def other(bay: Bay) -> Bay:
        if bay.pull_out is None:
            return bay
        return replace(bay, pull_out=replace(bay.pull_out, on="left" if bay.pull_out.on == "right" else "right"))

    return (*bays, *(other(bay) for bay in reversed(bays)))


def symmetric(seed: int) -> Project:
    """A random project whose right half mirrors its left; thicknesses and sizes can be halved."""
    drawn = project(seed)
    sheets = {
        name: replace(sheet, readings=tuple(reading // EVEN * EVEN for reading in sheet.readings[:1]))
        for name, sheet in drawn.sheets.items()
    }
    size = drawn.size if drawn.size.width is None else replace(drawn.size, width=2 * drawn.size.width)
    fits = [drawn.carcass.corner, drawn.carcass.divider, drawn.carcass.shelf]
    assert all(choice.fit % 2 == 0 for choice in fits)
    return replace(drawn, sheets=sheets, size=size, bays=mirrored_bays(drawn.bays))


def seen_from(board: Board, middle: int) -> tuple:
    """What there is of a board about the plane x = middle / 2: its box, its cuts and holes, its sheet and stage."""
    return (board.sheet, board.stage, board.box, tuple(sorted(_cuts(board), key=repr)))


def mirror(what: tuple, middle: int) -> tuple:
    """The same, mirrored."""
    sheet, stage, box, cuts = what
    return (sheet, stage, _flip(box, middle), tuple(sorted(((kind, _flip(b, middle)) for kind, b in cuts), key=repr)))


def _cuts(board: Board) -> list[tuple[str, Box]]:
    found = []
    for cut in board.cuts:
        if isinstance(cut, BoxCut):
            found.append((cut.kind, board.placement.to_world(cut.box)))
        elif isinstance(cut, Hole):
            found.append((f"hole {cut.diameter} {cut.depth}", board.placement.to_world(Box(cut.centre, cut.centre))))
    return found


def _flip(box: Box, middle: int) -> Box:
    (a, b, c), (d, e, f) = box.low, box.high
    return Box((middle - d, b, c), (middle - a, e, f))


def asymmetry(cabinet: Cabinet) -> list[str]:
    """Boards without a mirror image, to within one tick where a width had to be halved."""
    middle = cabinet.outside.low[0] + cabinet.outside.high[0]
    seen = {board.name: seen_from(board, middle) for board in cabinet.boards}
    there = set(seen.values())
    return [name for name, what in seen.items() if mirror(what, middle) not in there]


@pytest.mark.parametrize("seed", range(100))
def test_a_mirrored_plan_gives_mirrored_boards(seed: int) -> None:
    try:
        cabinet = solve(symmetric(seed))
    except ImpossibleProject as reason:
        pytest.fail(f"seed {seed}: {reason}")
    assert asymmetry(cabinet) == []


def test_a_crooked_plan_is_seen() -> None:
    plan = symmetric(3)
    crooked = replace(plan, bays=(replace(plan.bays[0], width=200 * MM), *plan.bays[1:]))
    assert asymmetry(solve(crooked))
