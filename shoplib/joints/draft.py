"""A board of a pair while it is cut: cuts are said where they lie in the world, and kept in the board's own places.

World axes are those of a cabinet: x left to right, y front to back, z up.
"""

from collections.abc import Sequence

from shoplib.measure import share
from shoplib.model.board import CASE, Board, BoxCut, Cut, Hole, prism_cut
from shoplib.model.box import Box, Point
from shoplib.model.placement import Axes, directions, standing_in
from shoplib.model.sheet import Sheet

STANDING: Axes = ("+z", "+y", "-x")
"""A case side at the left: its length up, its inside face to the right."""
LYING: Axes = ("+x", "+y", "+z")
"""A shelf: its length to the right, its face up."""
RAIL: Axes = ("+x", "+z", "-y")
"""A rail of a frame, or the front of a drawer: its length to the right, on edge."""
STILE: Axes = ("+z", "+x", "+y")
"""A stile or leg of a frame: its length up, its face to the front."""


class Draft:
    """A blank that fills a world box; the cuts are collected until `board` makes the board of it."""

    def __init__(self, name: str, sheet: Sheet, axes: Axes, box: Box, grain: str = "length") -> None:
        self.name, self.sheet, self.box, self.grain = name, sheet, box, grain
        self.placement = standing_in(box, axes)
        self._cuts: list[Cut] = []

    def take(self, kind: str, box: Box, for_board: str = "") -> None:
        """Take a world box out, or what of it lies in the blank; nothing where that has no volume."""
        common = self.box.common(box)
        if common is not None:
            own = self.placement.to_board(common)
            self._cuts.append(BoxCut(kind, own.low, own.high, for_board))

    def take_prism(
        self, kind: str, axis: int, outline: Sequence[tuple[int, int]], low: int, high: int, for_board: str = ""
    ) -> None:
        """Take out an outline, given in the two other world axes in cyclic order, from `low` to `high` along one."""
        self._cuts.append(prism_cut(self.placement, kind, axis, outline, (low, high), for_board))

    def bore(self, kind: str, centre: Point, axis: int, diameter: int, depth: int, for_board: str = "") -> None:
        """Bore from the face that the world point lies on, along a world axis, inward."""
        along = "uvw"[self.placement.own_axis(axis)]
        self._cuts.append(Hole(kind, self.placement.point_to_board(centre), along, diameter, depth, for_board))

    @property
    def board(self) -> Board:
        """The board as cut."""
        sizes = [self.box.size[axis] for axis, _ in directions(self.placement.axes)]
        cuts = tuple(self._cuts)
        return Board(
            self.name, "case", CASE, self.sheet.name, *sizes, self.placement, cuts, self.grain, role=self.name
        )


def middle(low: int, high: int) -> int:
    """Half way between two places, to the tick below.

    >>> middle(2, 7)
    4
    """
    return low + share(high - low, 2, 1)[0]
