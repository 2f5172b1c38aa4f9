"""One face of a board as it stands in the cabinet, seen by someone before it: what is up there is up on the paper."""

from dataclasses import dataclass

from shoplib.draw.scene import Point
from shoplib.lists.sides import EDGES, in_or_out, looks, outline_of, side_name
from shoplib.model.board import Board
from shoplib.model.box import Box
from shoplib.model.box import Point as Place
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet

_UP, _BACK = (2, 1), (1, 1)
_CYCLE = {(0, 1): (2, 1), (1, 2): (0, 1), (2, 0): (1, 1), (1, 0): (2, -1), (2, 1): (0, -1), (0, 2): (1, -1)}
"""The vector product of two world axes: the axis it runs along, and its sign."""


@dataclass(frozen=True)
class FaceOn:
    """The face of `board` that looks to `name` (left, right, front, back, top or bottom), its lower left corner at
    (0, 0). Of a level face the back is up.

    What is right on the paper is the vector product of up and the way the face looks, so that the board is turned and
    never mirrored. Raises ValueError where neither face of the board looks there.
    """

    board: Board
    name: str

    def __post_init__(self) -> None:
        if self.name not in (looks(self.board, 2, -1), looks(self.board, 2, 1)):
            raise ValueError(f"no face of {self.board.name} looks to the {self.name}")

    @property
    def upper(self) -> bool:
        """True where the face is w = thickness."""
        return self.name == looks(self.board, 2, 1)

    @property
    def up(self) -> tuple[int, int]:
        """The world axis that runs up the paper, and its sign."""
        return _BACK if EDGES[self.name][0] == 2 else _UP

    @property
    def right(self) -> tuple[int, int]:
        """The world axis that runs to the right on the paper, and its sign."""
        (up, one), (normal, other) = self.up, EDGES[self.name]
        axis, sign = _CYCLE[up, normal]
        return axis, sign * one * other

    @property
    def size(self) -> Point:
        """Width and height on the paper."""
        size = self.board.box.size
        return size[self.right[0]], size[self.up[0]]

    def spot(self, world: Place) -> Point:
        """A place of the cabinet, on the paper."""
        box, found = self.board.box, []
        for axis, sign in (self.right, self.up):
            found.append(world[axis] - box.low[axis] if sign > 0 else box.high[axis] - world[axis])
        return found[0], found[1]

    def hole(self, centre: Place) -> Point:
        """The centre of a hole, from the board's own coordinates."""
        return self.spot(self.board.placement.to_world(Box(centre, centre)).low)

    @property
    def datum_left(self) -> bool:
        """Whether the reference edge (left in the cabinet, or at its front) is on the left of the paper."""
        return self.right[1] > 0

    def edge(self, side: str) -> str:
        """What the board's edge on one side of the paper is called: "left", "right", "below" or "above"."""
        axis, sign = {"left": (self.right[0], -self.right[1]), "right": self.right,
                      "below": (self.up[0], -self.up[1]), "above": self.up}[side]
        own = self.board.placement.own_axis(axis)
        return side_name(self.board, own, sign * directions(self.board.placement.axes)[own][1])

    def called(self, cabinet: Cabinet) -> str:
        """What the face itself is called: its inside face, its left face."""
        return side_name(self.board, 2, self._side, outline_of(self.board, cabinet))

    def in_or_out(self, cabinet: Cabinet) -> str:
        """Whether it is called an "inside" or an "outside" face, which says nothing of where it looks; else ""."""
        return in_or_out(self.board, self._side, outline_of(self.board, cabinet))

    @property
    def _side(self) -> int:
        return 1 if self.upper else -1
