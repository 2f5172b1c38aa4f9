"""Looking at solid boxes along one axis: what is nearer is painted later, what is cut is hatched.

For boxes that do not overlap, painting in the order of their near faces shows exactly what an eye far away
would see, so no line that is hidden is left standing.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from shoplib.draw.scene import Rect, Shape
from shoplib.model.board import Board
from shoplib.model.box import Box
from shoplib.model.screwed import BOTTOM_SCREWS, TOE_SCREWS
from shoplib.model.solved import Cabinet, Hardware

_FILL = {
    "back": "back", "front": "front", "box side": "box", "box front": "box", "box back": "box",
    "box bottom": "box", "runner": "box", "kicker": "box", "panel": "box", "cleat": "box",
}
"""By the role of a board; every other role is part of the case."""

_IN_THE_WOOD = ("front screws", "rail screws", "cleat screws", "pocket screws", TOE_SCREWS, BOTTOM_SCREWS)

_CUT = {"case": "cut case", "box": "cut box", "front": "cut front", "back": "cut back"}


@dataclass(frozen=True, slots=True)
class Look:
    """World axes (0, 1, 2) drawn to the right and up, and the one looked along.

    `toward` is 1 where larger values of that axis are nearer the eye, -1 where smaller ones are.
    """

    across: int
    up: int
    along: int
    toward: int

    def flat(self, box: Box) -> Rect:
        """The box as the eye sees it.

        >>> FRONT.flat(Box((1, 2, 3), (4, 5, 6)))
        (1, 3, 4, 6)
        """
        low, high = box.low, box.high
        return low[self.across], low[self.up], high[self.across], high[self.up]

    def nearness(self, box: Box) -> int:
        """Grows toward the eye."""
        return box.high[self.along] if self.toward > 0 else -box.low[self.along]


FRONT = Look(0, 2, 1, -1)
"""From the front: x to the right, z up."""
FROM_RIGHT = Look(1, 2, 0, 1)
"""From the right-hand side: the front of the case is on the left."""
FROM_ABOVE = Look(0, 1, 2, 1)
"""From above: the front of the case is at the foot of the drawing."""


def visible(cabinet: Cabinet) -> list[Hardware]:
    """The fittings that can be seen: not those that lie wholly in the wood, such as screws.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> sorted({piece.what for piece in cabinet.hardware} - {piece.what for piece in visible(cabinet)})
    ['bottom screws', 'front screws']
    """
    return [h for h in cabinet.hardware if h.what not in _IN_THE_WOOD]


def fill_of(board: Board) -> str:
    """What a board's shape stands for.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> [fill_of(cabinet.by_name[name]) for name in ("left side", "bay 1 drawer 1 front", "bay 1 drawer 1 box front")]
    ['case', 'front', 'box']
    """
    return _FILL.get(board.role, "case")


def seen(boards: Iterable[Board], fittings: Iterable[Hardware], look: Look) -> list[Shape]:
    """Everything as it looks from outside, the farthest first; what one nearer board hides is left out.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> [shape.name for shape in seen(cabinet.boards, (), FRONT)]
    ['back', 'rail 1', 'left side', 'right side', 'bottom', 'top', 'bay 1 drawer 1 front', 'bay 1 drawer 2 front']
    """
    layers: dict[tuple[int, str], list[Rect]] = {}
    fills: dict[str, str] = {}
    for board in boards:
        fills[board.name] = fill_of(board)
        for piece in board.pieces:
            layers.setdefault((look.nearness(piece), board.name), []).append(look.flat(piece))
    shapes = [
        (near, Shape(_merged(rects), fills[name], name)) for (near, name), rects in layers.items()
    ]
    shapes += [(look.nearness(h.box), _fitting(h, look)) for h in fittings]
    shapes.sort(key=lambda pair: pair[0])
    return _not_hidden([shape for _, shape in shapes])


def cut_through(boards: Iterable[Board], fittings: Iterable[Hardware], look: Look, at: int) -> list[Shape]:
    """What stands beyond the plane at `at` on the axis looked along, then what the plane cuts, hatched.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> at = cabinet.outside.size[0] // 2
    >>> [shape.name for shape in cut_through(cabinet.groups["case"], (), FROM_RIGHT, at) if shape.hatch]
    ['bottom', 'top', 'back', 'rail 1']
    """
    boards, fittings = tuple(boards), tuple(fittings)
    beyond: list[tuple[int, Shape]] = []
    cut: list[Shape] = []
    for board in boards:
        fill = fill_of(board)
        layers: dict[int, list[Rect]] = {}
        sliced: list[Rect] = []
        through = is_cut(board, look, at)
        for piece in board.pieces:
            # A plane along the wall of a cut takes the wood on its far side, or the board would look whole.
            if through and piece.low[look.along] <= at < piece.high[look.along]:
                sliced.append(look.flat(piece))
            elif _is_beyond(piece, look, at):
                layers.setdefault(look.nearness(piece), []).append(look.flat(piece))
        beyond += [(near, Shape(_merged(rects), fill, board.name)) for near, rects in layers.items()]
        if sliced:
            cut.append(Shape(_merged(sliced), _CUT[fill], board.name, _hatch(board, look)))
    for fitting in fittings:
        if _crosses(fitting.box, look, at):
            cut.append(_fitting(fitting, look))
        elif _is_beyond(fitting.box, look, at):
            beyond.append((look.nearness(fitting.box), _fitting(fitting, look)))
    beyond.sort(key=lambda pair: pair[0])
    return _not_hidden([shape for _, shape in beyond] + cut)


def is_cut(board: Board, look: Look, at: int) -> bool:
    """Whether the plane goes through the board.

    >>> from shoplib.documents.examples import cabinet_from
    >>> side = cabinet_from("rolling_stand").by_name["left side"]
    >>> low, high = side.box.low[0], side.box.high[0]
    >>> [is_cut(side, FROM_RIGHT, at) for at in (low, (low + high) // 2, high)]
    [False, True, False]
    """
    return _crosses(board.box, look, at)


def _not_hidden(shapes: list[Shape]) -> list[Shape]:
    """Leave out a shape that lies wholly behind one rectangle painted later: there is nothing of it to see."""
    kept: list[Shape] = []
    covers: list[Rect] = []
    for shape in reversed(shapes):
        new = []
        for rect in shape.rects:
            a, b, c, d = rect
            for e, f, g, h in covers:
                if e <= a and f <= b and c <= g and d <= h:
                    break
            else:
                new.append(rect)
        if new:
            covers += new
            kept.append(shape)
    kept.reverse()
    return kept


def _crosses(box: Box, look: Look, at: int) -> bool:
    return box.low[look.along] < at < box.high[look.along]


def _is_beyond(box: Box, look: Look, at: int) -> bool:
    return box.high[look.along] <= at if look.toward > 0 else box.low[look.along] >= at


def _fitting(fitting: Hardware, look: Look) -> Shape:
    return Shape((look.flat(fitting.box),), "hardware", f"{fitting.what} on {fitting.on}")


def _hatch(board: Board, look: Look) -> str:
    """Boards that meet at a right angle are hatched against each other."""
    return "/" if board.placement.own_axis(look.across) == 2 else "\\"


def _merged(rects: list[Rect]) -> tuple[Rect, ...]:
    """One rectangle where the pieces fill the rectangle round them."""
    if len(rects) == 1:
        return tuple(rects)
    around = (
        min(r[0] for r in rects), min(r[1] for r in rects),
        max(r[2] for r in rects), max(r[3] for r in rects),
    )
    return (around,) if around in rects else tuple(rects)
