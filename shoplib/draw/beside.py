"""A drawer in its opening with the room beside it drawn larger, so that slides, play and a taper can be seen."""

from dataclasses import dataclass

from shoplib.draw.scene import Rect, Shape
from shoplib.measure import narrowest
from shoplib.model.board import Board
from shoplib.model.box import Box, around
from shoplib.model.project import Opening
from shoplib.model.shell import shell_of
from shoplib.model.solved import Cabinet, Hardware

_ROOM, _TAPER, _MOST = 18, 40, 8
"""Room beside the box is drawn at least its width divided by the first, a taper at least by the second on each side
and at most by the third."""

ENLARGED = "The room beside the box is drawn larger than it is."


@dataclass(frozen=True, slots=True)
class Beside:
    """Where the faces of an opening are drawn beside a box from `left` to `right` (world x, plain ticks).

    `least` is the room at each side at the narrower end of the opening, `room` as it is drawn; `front` and `back`
    are how far from the box its faces are drawn at the two ends.
    """

    left: int
    right: int
    least: int
    room: int
    front: int
    back: int

    @property
    def enlarged(self) -> bool:
        """Whether anything is drawn larger than it is."""
        return self.room != self.least or self.front != self.back

    def place(self, x: int) -> int:
        """Where a world x is drawn: the box true, the room beside it stretched, what lies beyond only shifted.

        >>> beside = Beside(100, 200, 5, 10, 10, 10)
        >>> [beside.place(x) for x in (90, 95, 98, 100, 200, 205, 210)]
        [85, 90, 96, 100, 200, 210, 215]
        """
        x = int(x)
        if x < self.left:
            return self.left - self._out(self.left - x)
        return self.right + self._out(x - self.right) if x > self.right else x

    def _out(self, by: int) -> int:
        return by * self.room // self.least if by < self.least else by - self.least + self.room

    def wall(self, y: int, end: int) -> int:
        """How far from the box the face of the opening is drawn at depth `y` of `end`."""
        return self.front + (self.back - self.front) * int(y) // end

    def moved(self, shape: Shape) -> Shape:
        """The shape with its corners where they are drawn."""
        rects: list[Rect] = [(self.place(a), int(b), self.place(c), int(d)) for a, b, c, d in shape.rects]
        return Shape(tuple(rects), shape.fill, shape.name, shape.hatch)


def beside(box: Box, read: Opening) -> Beside:
    """The drawn opening for a box and the readings of its opening."""
    left, right = int(box.low[0]), int(box.high[0])
    wide, least = right - left, int(narrowest([read.front, read.back]))
    true = max((least - wide) // 2, 1)
    room = max(true, wide // _ROOM)
    over = [min(half // 2 * 3 + wide // _TAPER, wide // _MOST) if half else 0
            for half in (int(read.front) - least, int(read.back) - least)]
    return Beside(left, right, true, room, room + over[0], room + over[1])


def parts_of(cabinet: Cabinet, group: str) -> tuple[tuple[Board, ...], tuple[Hardware, ...]]:
    """The boards of a drawer with its runners, and its slides."""
    boards = tuple(board for board in cabinet.boards if board.group == group or board.name.startswith(f"{group} "))
    return boards, tuple(piece for piece in cabinet.hardware if piece.what == "slide" and piece.group == group)


def box_of(cabinet: Cabinet, group: str) -> Box:
    """The outside of a drawer box, its front left out. Raises KeyError where there is no such drawer."""
    return around([board.box for board in cabinet.groups[group] if board.role.startswith("box ")])


def runs_of(cabinet: Cabinet, group: str) -> tuple[int, int]:
    """Where a drawer's slides begin and end in depth; its box, where it has none.

    A bought slide is as long as the box, begins a little behind the front, and ends as far behind the box.
    """
    _, slides = parts_of(cabinet, group)
    runs = slides[0].box if slides else box_of(cabinet, group)
    return runs.low[1], runs.high[1]


def back_seat(cabinet: Cabinet) -> int:
    """How far back the front face of the back lies, pressed home: on the floor of its rabbet, where it is let into one.

    A rabbet is cut for the thickest reading of the back, so a thinner one lies a little within the edges behind it.
    """
    face = cabinet.by_name["back"].box.low[1]
    return narrowest([face, shell_of(cabinet.project).behind]) if cabinet.project else face


def rails_behind(cabinet: Cabinet, group: str) -> list[Board]:
    """The rails that stand behind a drawer, at the height of its box, before the back; the nearest first."""
    box = box_of(cabinet, group)
    rails = [board for board in cabinet.boards if board.role == "rail"
             and board.box.low[2] < box.high[2] and box.low[2] < board.box.high[2]]
    return sorted(rails, key=lambda board: board.box.low[1])


def read_of(cabinet: Cabinet, group: str) -> Opening:
    """The opening of a drawer as measured, or as planned where it was not."""
    measured = cabinet.project.measured.openings.get(group) if cabinet.project else None
    if measured is not None:
        return measured
    row = int(group.split()[1]) - 1
    standing = sorted((board.box.low[0], board.box.high[0]) for board in cabinet.boards
                      if board.role in ("side", "divider"))
    width = standing[row + 1][0] - standing[row][1]
    return Opening(width, width)
