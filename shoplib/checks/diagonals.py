"""Diagonals to expect, so that squareness is checked with a tape."""

from collections.abc import Iterator
from dataclasses import dataclass
from math import isqrt
from typing import Literal

from shoplib.measure import Style, narrowest, write_brief
from shoplib.measure.traced import chosen
from shoplib.model.board import BOX_WALLS, Board
from shoplib.model.box import Box, around
from shoplib.model.solid_back import fixed_dry
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list, in_short

OUT_OF_SQUARE = "where they differ, set a clamp across the longer one and draw it in until they are equal"
"""What is done about a case or a box out of square, the same wherever it is told (common practice, no source)."""


@dataclass(frozen=True, slots=True)
class Diagonals:
    """Two diagonals that come out alike: `of` the case, a back, or boxes of one size; on which `boards` they are
    measured, `where` in words, their `size` in ticks, and how to `mend` it where they differ.
    """

    of: Literal["case", "back", "box"]
    boards: tuple[str, ...]
    where: str
    size: int
    mend: str

    def expected(self, style: Style) -> str:
        """What both should measure, in a sentence without its full stop."""
        return f"Both diagonals of {self.where}, should measure {write_brief(self.size, style)}"


def diagonal(a: int, b: int, step: int = 1) -> int:
    """The diagonal of a rectangle with sides `a` and `b`, at the nearest whole `step`, all in ticks.

    sqrt(a2 + b2), taken with whole numbers only: floor(2 d / step) is exact, and half of it rounded
    up is the nearest step.

    >>> diagonal(3, 4), diagonal(1, 1), diagonal(100, 100, step=10)
    (5, 1, 140)
    """
    size = step * ((isqrt(4 * (a * a + b * b) // (step * step)) + 1) // 2)
    return chosen(size, "diagonal nearest", [a, b], steps=step)


def give_diagonals(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "note" with the diagonals to expect of the case, of each back, and of each kind of drawer box."""
    return tuple(
        Finding("diagonals", "note", one.boards, f"{one.expected(cabinet.style)}; {one.mend}.", one.size)
        for one in diagonals(cabinet)
    )


def diagonals(cabinet: Cabinet) -> Iterator[Diagonals]:
    """The diagonals to expect of the case, of each back, and of each kind of drawer box.

    Rounded to the nearest step that the project shows. The case is measured where a tape reaches: on the
    outside of its two sides, from corner to corner of what can be seen of them in front; a back over its own
    corners; a box seen from above.

    >>> list(diagonals(Cabinet("no boards", (), {})))
    []
    """
    step = cabinet.style.step
    case = cabinet.groups.get("case", ())
    sides = [board for board in case if board.role == "side"]
    levels = [board for board in case if board.role in _LEVELS]
    if sides and levels:
        width, height, where = _front_of(sides, levels)
        yield Diagonals("case", _names([*sides, *levels]), f"the case, {where}", diagonal(width, height, step),
                        OUT_OF_SQUARE)
    for board in case:
        if board.role == "back":
            loose = fixed_dry(board, cabinet) or any(j.enters == board.name and j.end_gap for j in cabinet.joints)
            trim = "where they differ, it is not square: trim it before it goes in" + (
                "; it has play, so the diagonals of the case tell whether that is square" if loose
                else ", for it squares the case")
            size = diagonal(board.length, board.width, step)
            yield Diagonals("back", (board.name,), f"the {board.name}, as cut", size, trim)
    for (width, depth), groups in _box_kinds(cabinet).items():
        boards = [board for group in groups for board in cabinet.groups[group] if board.role in BOX_WALLS]
        what = f"the box of {and_list(in_short(groups))}, seen from above"
        yield Diagonals("box", _names(boards), what, diagonal(width, depth, step), OUT_OF_SQUARE)


def _names(boards: list[Board]) -> tuple[str, ...]:
    return tuple(board.name for board in boards)


_LEVELS = {"top", "bottom", "stretcher"}


def _front_of(sides: list[Board], levels: list[Board]) -> tuple[int, int, str]:
    """Width and height between the corners that a tape reaches in front, and from where to where that is.

    A level board as wide as the case has its corners there itself. One that stands out covers those of the
    sides, so the tape is held under or over it; a toe notch cuts the lower ones away.
    """
    both = around([side.box for side in sides])
    low = narrowest([piece.low[2] for side in sides for piece in side.pieces if piece.low[1] == side.box.low[1]])
    high, above, below = both.high[2], "the top corner", "the bottom corner"
    if low > both.low[2]:
        below = "the upper corner of the toe notch"
    for board in levels:
        box = board.box
        if box.low[0] > both.low[0] or box.high[0] < both.high[0]:
            continue  # it stands between the sides
        flush = (box.low[0], box.high[0], box.low[1]) == (both.low[0], both.high[0], both.low[1])
        if _middle(box) > _middle(both):
            high, above = (box.high[2], above) if flush else (box.low[2], f"the corner under the {board.name}")
        else:
            low, below = (box.low[2], below) if flush else (box.high[2], f"the corner over the {board.name}")
    where = "over the outer corners of its front"
    if (above, below) != ("the top corner", "the bottom corner"):
        where = f"at its front from {above} of one side to {below} of the other"
    return both.size[0], high - low, where


def _middle(box: Box) -> int:
    """Twice the height of its middle."""
    return box.low[2] + box.high[2]


def _box_kinds(cabinet: Cabinet) -> dict[tuple[int, int], list[str]]:
    """The groups that hold a drawer box, by its outside width and depth."""
    kinds: dict[tuple[int, int], list[str]] = {}
    for group, boards in cabinet.groups.items():
        walls = [board.box for board in boards if board.role in BOX_WALLS]
        if walls:
            width, depth, _ = around(walls).size
            kinds.setdefault((width, depth), []).append(group)
    return kinds
