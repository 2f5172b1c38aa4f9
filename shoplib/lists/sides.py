"""What the sides of a board are called: its two ends, two edges and two faces, by where they look."""

from shoplib.model.board import Board
from shoplib.model.box import Box, around
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet

EDGES = {"left": (0, -1), "right": (0, 1), "front": (1, -1), "back": (1, 1), "bottom": (2, -1), "top": (2, 1)}
"""The world axis that each way of looking runs along, and its sign."""

_LOOKS = {way: name for name, way in EDGES.items()}
_NOUNS = ("end", "edge", "face")


def datum_side(board: Board, own: int) -> int:
    """The side (-1 low, +1 high, own coordinates) that lies left, in front or at the bottom.

    Every place in the list is measured from there, so that equal boards are laid out alike.
    """
    _, sign = directions(board.placement.axes)[own]
    return -sign


def looks(board: Board, own: int, side: int) -> str:
    """Which way a side looks in the cabinet: left, right, front, back, bottom, top.

    >>> from shoplib.model.placement import Placement
    >>> looks(Board("left side", "case", 1, "s", 90, 50, 2, Placement((2, 0, 0), ("+z", "+y", "-x"))), 2, -1)
    'right'
    """
    axis, sign = directions(board.placement.axes)[own]
    return _LOOKS[axis, side * sign]


def side_name(board: Board, own: int, side: int, outline: Box | None = None) -> str:
    """The name of one side: `own` is 0 for the ends, 1 for the edges, 2 for the faces.

    With the `outline` of the box that the board is part of, the faces of a board that stands on the
    outline are its inside and its outside face: the same words for a left side and for a right one.

    >>> from shoplib.model.placement import Placement
    >>> side = Board("left side", "case", 1, "s", 90, 50, 2, Placement((2, 0, 0), ("+z", "+y", "-x")))
    >>> side_name(side, 0, -1), side_name(side, 1, 1), side_name(side, 2, -1)
    ('bottom end', 'back edge', 'right face')
    >>> side_name(side, 2, -1, Box((0, 0, 0), (80, 50, 90)))
    'inside face'
    """
    turned = in_or_out(board, side, outline) if own == 2 and outline is not None else ""
    return f"{turned or looks(board, own, side)} {_NOUNS[own]}"


def in_or_out(board: Board, side: int, outline: Box) -> str:
    """Whether a face of a board that stands on the outline is its "inside" or its "outside" one; "" for other boards.

    >>> from shoplib.model.placement import Placement
    >>> side = Board("left side", "case", 1, "s", 90, 50, 2, Placement((2, 0, 0), ("+z", "+y", "-x")))
    >>> [in_or_out(side, way, Box((0, 0, 0), (wide, 50, 90))) for way, wide in ((-1, 80), (1, 80), (1, 2))]
    ['inside', 'outside', '']
    """
    axis, sign = directions(board.placement.axes)[2]
    on_low = board.box.low[axis] == outline.low[axis]
    on_high = board.box.high[axis] == outline.high[axis]
    if on_low == on_high:
        return ""
    return "outside" if (side * sign < 0) == on_low else "inside"


def outline_of(board: Board, cabinet: Cabinet) -> Box:
    """The outline of the box that the board is part of: the case, or its drawer without the front.

    A runner that is fixed to the case later on is within it, and not an outline of its own.
    """
    stage = 1 if board.role in ("runner", "kicker") and board.group == "case" else board.stage
    return around([part.box for part in cabinet.groups[board.group] if part.stage == stage])


def own_side(board: Board, edge: str) -> tuple[int, int]:
    """The own axis (0, 1, 2) and side (-1, +1) of the edge that looks to the front, left, ...

    >>> from shoplib.model.placement import Placement
    >>> side = Board("right side", "case", 1, "s", 90, 50, 2, Placement((78, 50, 0), ("+z", "-y", "+x")))
    >>> own_side(side, "front")
    (1, 1)
    """
    world, look = EDGES[edge]
    own = board.placement.own_axis(world)
    return own, look * directions(board.placement.axes)[own][1]
