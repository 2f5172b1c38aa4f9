"""Diagonals to expect, so that squareness is checked with a tape."""

from math import isqrt

from shoplib.measure import write_brief
from shoplib.model.board import Board
from shoplib.model.box import around
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list, in_short

_FRAME = {"side", "top", "bottom", "stretcher"}
_BOX_WALLS = {"box side", "box front", "box back"}


def diagonal(a: int, b: int, step: int = 1) -> int:
    """The diagonal of a rectangle with sides `a` and `b`, at the nearest whole `step`, all in ticks.

    sqrt(a2 + b2), taken with whole numbers only: floor(2 d / step) is exact, and half of it rounded
    up is the nearest step.

    >>> diagonal(3, 4), diagonal(1, 1), diagonal(100, 100, step=10)
    (5, 1, 140)
    """
    return step * ((isqrt(4 * (a * a + b * b) // (step * step)) + 1) // 2)


def give_diagonals(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "note" with the diagonal to expect for the case, each back, and each kind of drawer box.

    Rounded to the nearest step that the project shows. The case is measured over the outer corners
    of its sides, top and bottom; a back over its own corners; a box seen from above.
    """
    found = []
    squeeze = "where they differ, squeeze the corners of the longer one together"
    case = cabinet.groups.get("case", ())
    frame = [board for board in case if board.role in _FRAME]
    if {"side"} < {board.role for board in frame}:
        width, _, height = around([board.box for board in frame]).size
        found.append(_note(cabinet, frame, "the case", "over the outer corners of its front", width, height, squeeze))
    for board in case:
        if board.role == "back":
            trim = "where they differ, it is not square: trim it before it goes in, for it squares the case"
            found.append(_note(cabinet, [board], f"the {board.name}", "as cut", board.length, board.width, trim))
    for (width, depth), groups in _box_kinds(cabinet).items():
        boards = [board for group in groups for board in cabinet.groups[group] if board.role in _BOX_WALLS]
        what = f"the box of {and_list(in_short(groups))}"
        found.append(_note(cabinet, boards, what, "seen from above", width, depth, squeeze))
    return tuple(found)


def _box_kinds(cabinet: Cabinet) -> dict[tuple[int, int], list[str]]:
    """The groups that hold a drawer box, by its outside width and depth."""
    kinds: dict[tuple[int, int], list[str]] = {}
    for group, boards in cabinet.groups.items():
        walls = [board.box for board in boards if board.role in _BOX_WALLS]
        if walls:
            width, depth, _ = around(walls).size
            kinds.setdefault((width, depth), []).append(group)
    return kinds


def _note(cabinet: Cabinet, boards: list[Board], what: str, where: str, a: int, b: int, mend: str) -> Finding:
    size = diagonal(a, b, cabinet.style.step)
    text = (
        f"Both diagonals of {what}, {where}, should measure {write_brief(size, cabinet.style)}; {mend}."
    )
    return Finding("diagonals", "note", tuple(board.name for board in boards), text, size)
