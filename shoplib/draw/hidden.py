"""What an eye far away sees of solids: each face less the parts of others that stand before it.

A face turned away is behind the wood that it belongs to, so the faces turned to the eye are enough. One of them
hides of another what lies over it in the picture and before its plane in the shop. That asks for no order among the
faces and is right for any solids, hollow or interlocked.
"""

from dataclasses import dataclass
from functools import cache

import numpy as np
import shapely

from shoplib.draw.parallel import PARTS, Direction
from shoplib.draw.solids import Faces

_NEAR = 1.0
"""In ticks: what lies less than this before a plane lies in it."""
_THIN = 2.0 * PARTS
"""In the picture: what is narrower is the rounding of two edges that meet."""


@dataclass(frozen=True, slots=True, eq=False)
class Turned:
    """The faces turned to the eye: which of those given they are, and what was reckoned of them for the picture.

    `normals` and `levels` are their planes (ticks), `low` and `high` the boxes round them, `flat` their polygons in
    the picture, `spans` how far these reach along the three ways in which edges of a square board are drawn.
    """

    direction: Direction
    numbers: np.ndarray
    normals: np.ndarray
    levels: np.ndarray
    low: np.ndarray
    high: np.ndarray
    flat: np.ndarray
    spans: tuple[np.ndarray, np.ndarray]

    def plane_across(self, face: np.ndarray, plane: np.ndarray) -> np.ndarray:
        """How far a point of a face lies before a plane: rows (a, b, c), so that it is a x + b y + c at (x, y) of the
        picture. Arrays of face and plane numbers, pair by pair."""
        full = np.empty((len(face), 3, 3))
        full[:, :2] = self.direction.matrix
        full[:, 2] = self.normals[face]
        ways = np.linalg.solve(np.swapaxes(full, 1, 2), self.normals[plane][:, :, None])[:, :, 0]
        rest = ways[:, 2] * self.levels[face] - self.levels[plane]
        return np.column_stack([ways[:, :2], rest])


@cache
def _across(direction: Direction) -> np.ndarray:
    """The matrix that gives of a corner how far it lies across the ways in which x, y and z are drawn."""
    ways = direction.matrix
    return ways.T @ np.array([-ways[1], ways[0]])


def turned_to(faces: Faces, direction: Direction) -> Turned:
    """Those of the faces that the eye could see if nothing stood before them.

    >>> from shoplib.draw.parallel import FRONT_RIGHT_ABOVE
    >>> from shoplib.draw.solids import world_faces
    >>> from shoplib.model.board import Board
    >>> from shoplib.model.placement import Placement
    >>> faces = world_faces(Board("shelf", "case", 1, "sheet", 900, 300, 18, Placement((0, 0, 0), ("+x", "+y", "+z"))))
    >>> turned = turned_to(faces, FRONT_RIGHT_ABOVE)
    >>> len(faces), sorted(turned.normals.tolist())  # of the six its front, its right end and its top
    (6, [[0.0, -1.0, 0.0], [0.0, 0.0, 1.0], [1.0, 0.0, 0.0]])
    """
    turned = faces.normals @ direction.eye > 1e-9
    numbers = np.flatnonzero(turned)
    rings = turned[faces.of_face]
    corners = faces.corners[np.repeat(rings, faces.lengths)]
    lengths, of_ring = faces.lengths[rings], (np.cumsum(turned) - 1)[faces.of_face[rings]]
    starts = np.cumsum(lengths) - lengths
    first = starts[np.searchsorted(of_ring, np.arange(len(numbers)))]
    normals = faces.normals[numbers]
    across = corners @ _across(direction)
    return Turned(
        direction, numbers, normals, (normals * corners[first]).sum(axis=1),
        np.minimum.reduceat(corners, first), np.maximum.reduceat(corners, first),
        _polygons(corners @ direction.matrix.T, lengths, starts, of_ring),
        (np.minimum.reduceat(across, first), np.maximum.reduceat(across, first)),
    )


def _polygons(places: np.ndarray, lengths: np.ndarray, starts: np.ndarray, of_ring: np.ndarray) -> np.ndarray:
    """Rings made polygons, face by face; the outer ring is the one that runs left about."""
    rings = shapely.linearrings(places, indices=np.repeat(np.arange(len(lengths)), lengths))
    following = np.arange(1, len(places) + 1)
    following[starts + lengths - 1] = starts
    x, y = places.T
    areas = np.add.reduceat(x * y[following] - x[following] * y, starts)
    order = np.lexsort((areas < 0, of_ring))
    return shapely.polygons(rings[order], indices=of_ring[order])


def shown(faces: Faces, direction: Direction) -> tuple[Turned, np.ndarray]:
    """The faces turned to the eye, and what is seen of each: polygons in `PARTS` of a tick, empty where it is hidden.

    >>> from shoplib.draw.parallel import FRONT_RIGHT_ABOVE
    >>> from shoplib.draw.solids import joined, world_faces
    >>> from shoplib.model.board import Board
    >>> from shoplib.model.placement import Placement
    >>> near, far = (Board(name, "case", 1, "sheet", 900, 10, 900, Placement((0, y, 0), ("+x", "+y", "+z")))
    ...              for name, y in (("near", 0), ("far", 10)))
    >>> _, seen = shown(joined([world_faces(near), world_faces(far)]), FRONT_RIGHT_ABOVE)
    >>> sum(region.is_empty for region in seen)
    1
    """
    turned = turned_to(faces, direction)
    seen = turned.flat.copy()
    behind, before, part = _hiding(turned)
    order = np.lexsort((-shapely.area(part), behind))
    behind, before, part = behind[order], before[order], part[order]
    # The largest that stands before each face is taken off first, then the next. What is gone needs no more, and hides
    # nothing that what hid it does not hide.
    turn = np.arange(len(behind)) - np.searchsorted(behind, behind)
    there = np.ones(len(seen), bool)
    for number in range(turn.max(initial=-1) + 1):
        now = (turn == number) & there[behind] & there[before]
        face = behind[now]
        seen[face] = shapely.difference(seen[face], part[now])
        there[face] = ~shapely.is_empty(seen[face])
    # In whole ticks, as the faces were: a way out and back that rounding left is gone then.
    cut = np.unique(behind)
    seen[cut] = shapely.set_precision(seen[cut], PARTS)
    return turned, seen


def _hiding(turned: Turned) -> tuple[np.ndarray, np.ndarray, np.ndarray]:
    """Pairs: a face, another that hides some of it, and the part of the other that does."""
    low, high = turned.spans
    over = ~np.eye(len(low), dtype=bool)
    for k in range(3):
        over &= low[:, None, k] < high[None, :, k] - PARTS
        over &= low[None, :, k] < high[:, None, k] - PARTS
    behind, before = np.nonzero(over)
    # A face hides nothing of one that it lies wholly behind, or that lies wholly before it.
    can = (_support(turned, before, behind, far=True) > _NEAR) & (_support(turned, behind, before, far=False) < -_NEAR)
    behind, before = behind[can], before[can]
    crossing = _support(turned, before, behind, far=False) < -_NEAR
    still, cut = np.ones(len(behind), bool), crossing.copy()
    one, other = behind[crossing], before[crossing]
    still[crossing] = _meet(turned, one, other)
    # Where no part of the nearer face that lies beyond comes under the other, the whole of it covers as well.
    cut[crossing] = _meet(turned, other, one)
    behind, before, cut = behind[still], before[still], np.flatnonzero(cut[still])
    part = turned.flat[before]
    if len(cut):
        part[cut] = shapely.intersection(part[cut], _before_plane(turned, before[cut], behind[cut]))
        left = ~shapely.is_empty(part)
        behind, before, part = behind[left], before[left], part[left]
    return behind, before, part


def _meet(turned: Turned, behind: np.ndarray, before: np.ndarray) -> np.ndarray:
    """Of faces that cross each other's planes: whether what is behind of the one and before of the other can meet in
    the picture.

    Boxes round them are cut where a plane is square to an axis; that leaves too much, never too little.
    """
    ways = _across(turned.direction)
    spans = []
    for face, plane, sign in ((behind, before, 1), (before, behind, -1)):
        low, high = turned.low[face].copy(), turned.high[face].copy()
        pair, axis = np.nonzero(np.abs(turned.normals[plane]) == 1.0)
        outward = turned.normals[plane[pair], axis]
        level = turned.levels[plane[pair]] * outward
        below = outward * sign > 0
        p, k = pair[below], axis[below]
        high[p, k] = np.minimum(high[p, k], level[below])
        p, k = pair[~below], axis[~below]
        low[p, k] = np.maximum(low[p, k], level[~below])
        spans.append((
            low @ np.maximum(ways, 0) + high @ np.minimum(ways, 0),
            high @ np.maximum(ways, 0) + low @ np.minimum(ways, 0),
        ))
    (a, b), (c, d) = spans
    return ((a < d - PARTS) & (c < b - PARTS)).all(axis=1)


def _support(turned: Turned, face: np.ndarray, plane: np.ndarray, far: bool) -> np.ndarray:
    """How far the box round a face reaches before (`far`) or least lies before a plane, in ticks."""
    normal = turned.normals[plane]
    one, other = normal * turned.low[face], normal * turned.high[face]
    return (np.maximum(one, other) if far else np.minimum(one, other)).sum(axis=1) - turned.levels[plane]


def _before_plane(turned: Turned, face: np.ndarray, plane: np.ndarray) -> np.ndarray:
    """The half of the picture in which a face lies before a plane, as large as the face needs."""
    rows = turned.plane_across(face, plane)
    slope = np.linalg.norm(rows[:, :2], axis=1)
    steep = np.where(slope > 0, slope, 1.0)
    way = rows[:, :2] / steep[:, None]
    box = shapely.bounds(turned.flat[face])
    middle = (box[:, :2] + box[:, 2:]) / 2
    reach = np.linalg.norm(box[:, 2:] - box[:, :2], axis=1)[:, None] * 2 + 1
    out = ((rows[:, :2] * middle).sum(axis=1) + rows[:, 2] - _NEAR) / steep
    # Where the two planes are one way, the face lies wholly before or wholly behind: the edge goes far off.
    out = np.where(slope > 0, out, np.sign(rows[:, 2]) * 1e18)
    edge = middle - way * np.clip(out, -reach[:, 0], reach[:, 0])[:, None]
    along = np.column_stack([-way[:, 1], way[:, 0]])
    corners = np.stack([
        edge - along * reach * 2, edge + along * reach * 2, edge + along * reach * 2 + way * reach * 4,
        edge - along * reach * 2 + way * reach * 4,
    ], axis=1)
    return shapely.polygons(corners)


def whole_parts(regions: np.ndarray) -> tuple[np.ndarray, np.ndarray]:
    """The polygons of regions, without the slivers that rounding leaves, and the number of the region of each.

    >>> wide, thin = shapely.box(0, 0, 9000, 9000), shapely.box(9500, 0, 9501, 9000)
    >>> parts, numbers = whole_parts(np.array([shapely.Polygon(), shapely.MultiPolygon([wide, thin])]))
    >>> [part.equals(wide) for part in parts], numbers.tolist()
    ([True], [1])
    """
    parts, numbers = shapely.get_parts(regions, return_index=True)
    whole = shapely.area(parts) > _THIN * shapely.length(parts)
    return parts[whole], numbers[whole]
