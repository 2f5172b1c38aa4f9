"""Pockets of pocket screws between outline and words: how they lean, which face they open in, towards which end."""

from math import atan2, cos, degrees, hypot, radians
from typing import NamedTuple

from shoplib.measure import share
from shoplib.model.board import Board, PrismCut
from shoplib.model.pocket import Pocket, pocket_shape

POCKETS = ("pocket", "shank hole")
"""The two cuts of a pocket screw, as they are called."""


class Slant(NamedTuple):
    """Degrees to the face, the web in ticks, and the face (own w) and the end (own u) as -1 low or +1 high."""

    angle: int
    web: int
    face: int
    end: int


def slant_of(cut: PrismCut, board: Board) -> Slant:
    """Read off the outline: its first two corners and its last two are the ends of the cut, one of them at the foot.

    >>> from shoplib.model.placement import Placement
    >>> board = Board("shelf", "case", 1, "s", 4000, 900, 180, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> slant_of(pocket_cut("pocket", board, Slant(15, 100, -1, 1), 300, 95, "side"), board)
    Slant(angle=15, web=100, face=-1, end=1)
    """
    first, second = (_middle(cut.outline[k], cut.outline[k + 1]) for k in (0, 2))
    foot = first if cut.kind == "pocket" else second
    end = -1 if 2 * foot[1] < board.length else 1
    from_end = foot[1] if end < 0 else board.length - foot[1]
    face = -1 if 2 * foot[0] < board.thickness else 1
    edges = [(cut.outline[0], cut.outline[3]), (cut.outline[1], cut.outline[2])]
    (a, b), (c, d) = max(edges, key=lambda edge: hypot(edge[0][0] - edge[1][0], edge[0][1] - edge[1][1]))
    angle = round(degrees(atan2(abs(c - a), abs(d - b))))
    return Slant(angle, round(from_end / cos(radians(angle))), face, end)


def pocket_cut(kind: str, board: Board, slant: Slant, at: int, across: int, for_board: str = "") -> PrismCut:
    """The cut that is so said, its middle `at` across the board."""
    shape = pocket_shape(board.thickness, Pocket(slant.angle, across, across, slant.web))
    outline = shape.pocket if kind == "pocket" else shape.shank
    corners = tuple(
        (above if slant.face < 0 else board.thickness - above, along if slant.end < 0 else board.length - along)
        for along, above in outline
    )
    start = at - share(across, 2, 1)[0]
    return PrismCut(kind, corners, "v", start, start + across, for_board)


def _middle(one: tuple[int, int], other: tuple[int, int]) -> tuple[int, int]:
    return tuple(share(a + b, 2, 1)[0] for a, b in zip(one, other, strict=True))
