"""A board as a true solid, and its flat faces, whatever was cut and bored in it.

The solid is made by manifold3d in the board's own coordinates, in ticks. Its triangles are put together again
to whole faces, so that a drawing has no line where there is no edge.
"""

from collections.abc import Sequence
from dataclasses import dataclass
from functools import lru_cache
from math import cos, pi, sin

import numpy as np
from manifold3d import Manifold, Mesh64, OpType

from shoplib.model.board import Board, BoxCut, Cut, Hole, PrismCut
from shoplib.model.box import Box, Point
from shoplib.model.placement import directions
from shoplib.model.prism import Prism
from shoplib.model.prism import turned as turned_about

FACETS = 24
"""A bored hole is drawn with so many sides."""
_SAME_PLANE = 1e-7
_NO_HEIGHT = 0.01
"""In ticks: a triangle that is lower is a line."""
_BENDS_LITTLE = cos(pi / 7.5)
"""Two facets that meet at less than 24 degrees may belong to one curve,"""
_CURVE = 4
"""and do where so many follow one another that bend alike: a bevel stays a bevel."""
_ALIKE = 1e-3

_AXES = "uvw"


@dataclass(frozen=True, slots=True, eq=False)
class Faces:
    """Flat faces of solids: their rings of corners one after another, the wood on the left as seen from outside.

    `corners` (n x 3, ticks); `lengths`, how many each ring has; `of_face`, the number of the face that each ring
    belongs to, rising. For each face `normals` is the unit vector out of the wood and `curves` the number of the curve
    that it is a facet of, -1 for a face that stands by itself.
    """

    corners: np.ndarray
    lengths: np.ndarray
    of_face: np.ndarray
    normals: np.ndarray
    curves: np.ndarray

    def __len__(self) -> int:
        """How many faces there are."""
        return len(self.normals)


def solid(board: Board) -> Manifold:
    """The board with all its cuts, in its own coordinates (ticks); volumes are cubic ticks.

    >>> from shoplib.model.placement import Placement
    >>> board = Board("shelf", "case", 1, "sheet", 100, 40, 10, Placement((0, 0, 0), ("+x", "+y", "+z")),
    ...               (BoxCut("rabbet", (0, 0, 5), (100, 4, 10)),))
    >>> round(solid(board).volume())
    38000
    """
    return _solid(board.size, board.cuts)


def faces(board: Board) -> Faces:
    """The faces of `solid(board)`, in the board's own coordinates.

    >>> from shoplib.model.placement import Placement
    >>> board = Board("shelf", "case", 1, "sheet", 100, 40, 10, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> len(faces(board))
    6
    """
    return _faces(board.size, board.cuts)


def world_faces(board: Board, moved: Point = (0, 0, 0)) -> Faces:
    """The faces where the board stands in the cabinet, shifted by `moved` (ticks).

    >>> from shoplib.model.placement import Placement
    >>> board = Board("shelf", "case", 1, "ply", 90, 40, 10, Placement((5, 0, 0), ("+x", "+y", "+z")))
    >>> faces = world_faces(board, (0, 0, 100))
    >>> faces.corners.min(axis=0).tolist(), faces.corners.max(axis=0).tolist()
    ([5.0, 0.0, 100.0], [95.0, 40.0, 110.0])
    """
    turn, own = turned(board), faces(board)
    start = np.array(board.placement.origin, float) + moved
    return Faces(own.corners @ turn.T + start, own.lengths, own.of_face, own.normals @ turn.T, own.curves)


def joined(several: Sequence[Faces]) -> Faces:
    """The faces of several boards in one row; curves keep numbers of their own.

    >>> from shoplib.model.placement import Placement
    >>> board = Board("shelf", "case", 1, "ply", 90, 40, 10, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> both = joined([world_faces(board), world_faces(board, (0, 0, 100))])
    >>> len(both), both.of_face.tolist()[-3:]
    (12, [9, 10, 11])
    """
    counts = np.array([len(each) for each in several])
    first = np.cumsum(counts) - counts
    curves = np.concatenate([each.curves for each in several])
    return Faces(
        np.concatenate([each.corners for each in several]),
        np.concatenate([each.lengths for each in several]),
        np.concatenate([each.of_face + k for each, k in zip(several, first, strict=True)]),
        np.concatenate([each.normals for each in several]),
        np.where(curves < 0, -1, curves + np.repeat(first, counts)),
    )


def turned(board: Board) -> np.ndarray:
    """The matrix whose columns are the world directions of the board's u, v and w.

    >>> from shoplib.model.placement import Placement
    >>> turned(Board("side", "case", 1, "ply", 9, 9, 4, Placement((0, 0, 0), ("+z", "+y", "-x")))).tolist()
    [[0.0, 0.0, -1.0], [0.0, 1.0, 0.0], [1.0, 0.0, 0.0]]
    """
    turn = np.zeros((3, 3))
    for own, (axis, sign) in enumerate(directions(board.placement.axes)):
        turn[axis, own] = sign
    return turn


def _solid(size: Point, cuts: tuple[Cut, ...]) -> Manifold:
    whole = _in_one_piece(size, cuts)
    if whole is not None:
        return whole
    wood = Manifold.cube(tuple(map(float, size)))
    cutters = [_cutter(cut, size) for cut in cuts]
    return Manifold.batch_boolean([wood, *cutters], OpType.Subtract) if cutters else wood


def _in_one_piece(size: Point, cuts: tuple[Cut, ...]) -> Manifold | None:
    """What outlines that all run right through along one axis leave, where that is convex: a dowel, a mitred strip.

    It is known without the solid arithmetic, which for the many flats of a dowel takes most of the time of a picture.
    """
    if not cuts or not all(isinstance(cut, PrismCut) for cut in cuts):
        return None
    along = _AXES.index(cuts[0].along)
    wood = [Prism.of(Box((0, 0, 0), size), along)]
    for cut in cuts:
        if cut.along != cuts[0].along or cut.start > 0 or cut.end < size[along]:
            return None
        outline = Prism(along, turned_about(cut.outline), 0, size[along])
        wood = [rest for piece in wood for rest in piece.without(outline)]
    return _prism(wood[0].outline, along, 0, size[along]) if len(wood) == 1 else None


def _cutter(cut: Cut, size: Point) -> Manifold:
    """What is taken out of the board."""
    if isinstance(cut, BoxCut):
        extent = (float(high - low) for low, high in zip(cut.low, cut.high, strict=True))
        return Manifold.cube(tuple(extent)).translate(tuple(map(float, cut.low)))
    along = _AXES.index(cut.along)
    if isinstance(cut, Hole):
        a, b = cut.centre[(along + 1) % 3], cut.centre[(along + 2) % 3]
        outline = [
            (a + cut.diameter / 2 * cos(2 * pi * k / FACETS), b + cut.diameter / 2 * sin(2 * pi * k / FACETS))
            for k in range(FACETS)
        ]
        at = cut.centre[along]
        low, high = (at, at + cut.depth) if 2 * at < size[along] else (at - cut.depth, at)
        return _prism(outline, along, low, high)
    return _prism(cut.outline, along, cut.start, cut.end)


def _prism(outline: Sequence[tuple[float, float]], along: int, low: int, high: int) -> Manifold:
    """A convex outline of the two other coordinates, in cyclic order, run from `low` to `high` along one."""
    flat = np.array(outline, float)
    x, y = flat.T
    if (x * np.roll(y, -1) - y * np.roll(x, -1)).sum() < 0:
        flat = flat[::-1]
    count = len(flat)
    here = np.arange(count)
    cap = np.column_stack([np.zeros(count - 2, int), here[1:-1], here[2:]])
    following = (here + 1) % count
    triangles = np.vstack([
        cap[:, ::-1], cap + count,
        np.column_stack([here, following, following + count]), np.column_stack([here, following + count, here + count]),
    ])
    corners = np.empty((2 * count, 3))
    corners[:, (along + 1) % 3] = np.tile(flat[:, 0], 2)
    corners[:, (along + 2) % 3] = np.tile(flat[:, 1], 2)
    corners[:, along] = np.repeat([low, high], count)
    return Manifold(Mesh64(vert_properties=corners, tri_verts=triangles.astype(np.uint64)))


@lru_cache(maxsize=512)
def _faces(size: Point, cuts: tuple[Cut, ...]) -> Faces:
    mesh = _solid(size, cuts).to_mesh64()
    corners, triangles = np.asarray(mesh.vert_properties)[:, :3], np.asarray(mesh.tri_verts).astype(np.int64)
    sides = corners[np.roll(triangles, -1, axis=1)] - corners[triangles]
    normals = np.cross(sides[:, 0], sides[:, 1])
    twice_area, lengths = np.linalg.norm(normals, axis=1), np.linalg.norm(sides, axis=2)
    # Three corners of one edge make a triangle that has no way out. It goes with what lies along its longest side, and
    # stands last, so that no face is called by it.
    none = twice_area < lengths.max(axis=1) * _NO_HEIGHT
    if none.any():
        order = np.argsort(none, kind="stable")
        triangles, normals, twice_area, lengths, none = (
            each[order] for each in (triangles, normals, twice_area, lengths, none)
        )
    normals = np.where(none, 0.0, 1.0)[:, None] * normals / np.where(none, 1.0, twice_area)[:, None]
    # Each edge is met twice, once in either direction, by the two triangles that share it.
    start, end = triangles.ravel(), np.roll(triangles, -1, axis=1).ravel()
    many = len(corners)
    twin = np.empty_like(start)
    twin[np.argsort(end * many + start)] = np.argsort(start * many + end)
    owner = np.arange(len(start)) // 3
    other = owner[twin]
    flat = np.abs(normals[owner] - normals[other]).max(axis=1) < _SAME_PLANE
    flat[np.flatnonzero(none) * 3 + lengths[none].argmax(axis=1)] = True
    group = _gathered(len(triangles), owner[flat], other[flat])
    bend = np.einsum("ij,ij->i", normals[owner], normals[other])
    bends = (bend > _BENDS_LITTLE) & ~flat
    curves = _curves(group, group[owner[bends]], group[other[bends]], bend[bends])
    # Two such triangles that have only each other have no face.
    edge = np.flatnonzero((group[owner] != group[other]) & ~none[group[owner]])
    edge = edge[np.argsort(group[owner[edge]], kind="stable")]
    numbers, first = np.unique(group[owner[edge]], return_index=True)
    start, end, ends = start[edge].tolist(), end[edge].tolist(), [*first.tolist()[1:], len(edge)]
    each = [_rings(start[k:m], end[k:m]) for k, m in zip(first.tolist(), ends, strict=True)]
    rings = [ring for found in each for ring in found]
    return Faces(
        corners[[corner for ring in rings for corner in ring]],
        np.array([len(ring) for ring in rings], int),
        np.repeat(np.arange(len(each)), [len(found) for found in each]),
        normals[numbers],
        np.array([curves.get(number, -1) for number in numbers.tolist()], int),
    )


def _curves(group: np.ndarray, one: np.ndarray, other: np.ndarray, bend: np.ndarray) -> dict[int, int]:
    """For each facet of a curve, called by the lowest of its triangles, the place in the row of faces of the first of
    them; `one` and `other` are faces that meet, and `bend` is the cosine between them."""
    if not len(one):
        return {}
    # Facets of one curve bend alike; a flat face that the curve runs out in bends less, or more.
    curve = _gathered(len(group), one, other)[one]
    usual = {k: np.median(bend[curve == k]) for k in set(curve.tolist())}
    alike = np.abs(bend - [usual[k] for k in curve.tolist()]) < _ALIKE
    curve = _gathered(len(group), one[alike], other[alike])
    found: dict[int, list[tuple[int, int]]] = {}
    for number, face in enumerate(np.unique(group).tolist()):
        found.setdefault(int(curve[face]), []).append((number, face))
    return {face: facets[0][0] for facets in found.values() if len(facets) >= _CURVE for _, face in facets}


def _gathered(count: int, one: np.ndarray, other: np.ndarray) -> np.ndarray:
    """For each of `count` things, the lowest number of those that it hangs together with, pair by pair."""
    lowest = np.arange(count)
    while True:
        before = lowest.copy()
        np.minimum.at(lowest, one, lowest[other])
        lowest = lowest[lowest]
        if (lowest == before).all():
            return lowest


def _rings(starts: list[int], ends: list[int]) -> list[list[int]]:
    """Edges put together to rings that do not meet themselves.

    >>> _rings([0, 1, 2, 2, 3, 4], [1, 2, 3, 0, 4, 2])
    [[2, 3, 4], [0, 1, 2]]
    """
    out: dict[int, list[int]] = {}
    for a, b in zip(starts, ends, strict=True):
        out.setdefault(a, []).append(b)
    rings = []
    while out:
        walk, place = [], {}
        at = next(iter(out))
        while True:
            if at in place:
                rings.append(walk[place[at]:])
                for corner in rings[-1]:
                    del place[corner]
                del walk[len(walk) - len(rings[-1]):]
                if at not in out:
                    break
            if at not in out:
                break
            place[at] = len(walk)
            walk.append(at)
            ways = out[at]
            following = ways.pop(0)
            if not ways:
                del out[at]
            at = following
    return rings
