"""Boards drawn apart: the thin lines along which they come together, as far as no wood stands before them."""

from collections.abc import Mapping, Sequence
from itertools import combinations, product

import numpy as np
import shapely

from shoplib.draw.hidden import Turned
from shoplib.draw.parallel import PARTS
from shoplib.draw.solids import world_faces
from shoplib.measure import MM
from shoplib.model.board import Board
from shoplib.model.box import Point

_NEAR = 1.0
_SMALL = 20 * MM
"""A dowel, or what is no larger across the way it goes, has one line along its middle."""
_SHORTEST = MM

Way = tuple[Point, Point]


def ways_together(boards: Sequence[Board], moved: Mapping[str, Point]) -> list[Way]:
    """From where to where corners that will lie on one another are drawn (world, ticks), for each two boards that
    touch when they are together: those of the end that enters.

    >>> from shoplib.model.placement import Placement
    >>> side, shelf = (Board(name, "case", 1, "sheet", *size, Placement((x, 0, 0), ("+x", "+y", "+z")))
    ...                for name, size, x in (("side", (10, 90, 90), 0), ("shelf", (90, 90, 10), 5)))
    >>> ways_together([side, shelf], {"shelf": (40, 0, 0)})
    [((45, 45, 5), (5, 45, 5))]
    """
    found = []
    for one, other in combinations(boards, 2):
        a, b = (np.array(moved.get(board.name, (0, 0, 0))) for board in (one, other))
        if not (a - b).any():
            continue
        if not a.any():
            one, other, a, b = other, one, b, a
        low = np.maximum(one.box.low, other.box.low)
        high = np.minimum(one.box.high, other.box.high)
        if (low > high).any() or (low == high).sum() > 1:
            continue
        along = int(np.abs(a - b).argmax())
        across = [k for k in range(3) if k != along]
        end = low[along] if a[along] > b[along] else high[along]
        low, high = _reach(one, low, high, along, end)
        if (high - low)[across].max() < _SMALL:
            corners = [tuple((low[k] + high[k]) // 2 for k in across)]
        else:
            corners = product(*((low[k], high[k]) for k in across))
        for corner in corners:
            point = np.empty(3, np.int64)
            point[along], point[across] = end, corner
            found.append((tuple((point + a).tolist()), tuple((point + b).tolist())))
    return found


def _reach(
    board: Board, low: np.ndarray, high: np.ndarray, along: int, end: int
) -> tuple[np.ndarray, np.ndarray]:
    """How far the wood of a board really reaches within a box at the end that enters: a tenon is smaller than its rail.

    The whole box where the board has no corner there.
    """
    corners = np.rint(world_faces(board).corners).astype(np.int64)
    there = ((corners >= low) & (corners <= high)).all(axis=1) & (corners[:, along] == end)
    return (corners[there].min(axis=0), corners[there].max(axis=0)) if there.any() else (low, high)


def in_sight(way: Way, turned: Turned) -> list[Way]:
    """The stretches of a straight line of the shop that no face stands before, in whole ticks."""
    ends = np.array(way, float)
    first, last = ends @ turned.direction.matrix.T
    depth = (turned.normals @ ends.T - turned.levels[:, None] + _NEAR).T
    # Where along the line, from 0 to 1, it goes under the plane of each face or comes up from under it.
    with np.errstate(divide="ignore", invalid="ignore"):
        crossing = depth[0] / (depth[0] - depth[1])
    start = np.where(depth[0] < 0, 0.0, crossing)
    end = np.where(depth[1] < 0, 1.0, crossing)
    under = np.flatnonzero((depth < 0).any(axis=0))
    here = np.stack([first + start[under, None] * (last - first), first + end[under, None] * (last - first)], axis=1)
    covered = shapely.intersection(shapely.linestrings(here), turned.flat[under])
    length = ((last - first) ** 2).sum()
    taken = []
    for piece in shapely.get_parts(covered):
        if piece.geom_type == "LineString" and not piece.is_empty:
            places = (shapely.get_coordinates(piece) - first) @ (last - first) / length
            taken.append((places.min(), places.max()))
    shortest = _SHORTEST * PARTS / np.sqrt(length)
    return [
        (tuple(round(x) for x in (ends[0] + a * (ends[1] - ends[0])).tolist()),
         tuple(round(x) for x in (ends[0] + b * (ends[1] - ends[0])).tolist()))
        for a, b in _left(taken) if b - a > shortest
    ]


def _left(taken: list[tuple[float, float]]) -> list[tuple[float, float]]:
    """What of the stretch from 0 to 1 is not taken.

    >>> _left([(0.5, 0.75), (0.0, 0.25), (0.125, 0.375)])
    [(0.375, 0.5), (0.75, 1.0)]
    """
    found, at = [], 0.0
    for a, b in sorted(taken):
        if a > at:
            found.append((at, a))
        at = max(at, b)
    return [*found, (at, 1.0)] if at < 1.0 else found
