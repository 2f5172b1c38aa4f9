"""Boards as solids of manifold3d, made here and not by the drawing, and rays cast at them from the eye.

Lengths are millimetres. The eye is placed by its angles: 3-4-5 to the side, 8-15-17 up.
"""

from math import cos, sin

import numpy as np
from manifold3d import CrossSection, FillRule, Manifold

from shoplib.measure import MM
from shoplib.model.board import BoxCut, Hole

FAR = 5000.0
OUTSIDE = 2.0
FACETS = 24


def eye(front=True, right=True, above=True):
    """The way to the eye, and the ways to the right and up in the picture, by turning a camera."""
    side, up = np.arctan2(3, 4), np.arctan2(8, 15)
    way = np.array([(1 if right else -1) * cos(up) * sin(side), (-1 if front else 1) * cos(up) * cos(side),
                    (1 if above else -1) * sin(up)])
    across = np.cross([0, 0, 1], way)
    across /= np.linalg.norm(across)
    return way, across, np.cross(way, across)


def wood(board, moved=(0, 0, 0), holes=True):
    """One board where it stands."""
    u, v, w = (s / MM for s in board.size)
    solid = Manifold.cube((u, v, w))
    for cut in board.cuts:
        if isinstance(cut, BoxCut):
            low, high = ([c / MM for c in corner] for corner in (cut.low, cut.high))
            solid -= Manifold.cube([b - a for a, b in zip(low, high, strict=True)]).translate(low)
        elif isinstance(cut, Hole):
            if holes:
                solid -= drill(cut, (u, v, w))
        else:
            solid -= prism(cut)
    matrix = np.zeros((3, 4))
    for own, text in enumerate(board.placement.axes):
        matrix["xyz".index(text[1]), own] = 1.0 if text[0] == "+" else -1.0
    matrix[:, 3] = (np.array(board.placement.origin) + moved) / MM
    return solid.transform(matrix)


def prism(cut):
    """The hull of its corners, whose coordinates stay as they are: an outline that ends in a face leaves no skin."""
    along = "uvw".index(cut.along)
    corners = np.zeros((2 * len(cut.outline), 3))
    corners[:, (along + 1) % 3] = [a / MM for a, _ in cut.outline] * 2
    corners[:, (along + 2) % 3] = [b / MM for _, b in cut.outline] * 2
    corners[:, along] = np.repeat([cut.start / MM, cut.end / MM], len(cut.outline))
    return Manifold.hull_points(corners)


def drill(hole, size):
    along = "uvw".index(hole.along)
    deep = hole.depth / MM
    solid = Manifold.cylinder(deep + OUTSIDE, hole.diameter / MM / 2, circular_segments=FACETS)
    centre = [c / MM for c in hole.centre]
    centre[along] += -OUTSIDE if centre[along] < size[along] / 2 else -deep
    return solid.transform(stand(along)).translate(centre)


def stand(along):
    """What is made along its third axis, turned to run along `along`; the first two are the next in cyclic order."""
    turn = np.zeros((3, 4))
    for made in range(3):
        turn[(along + 1 + made) % 3, made] = 1.0
    return turn


def first_hit(solids, place, camera):
    """The name and the outward way of what a ray from the eye strikes first, at a place of the picture; or None.

    `solids` are pairs of a name and a solid, `place` is to the right and up in mm.
    """
    way, across, up = camera
    foot = across * place[0] + up * place[1]
    hits = []
    for name, solid in solids:
        for hit in solid.ray_cast(tuple(foot + way * FAR), tuple(foot - way * FAR))[:1]:
            hits.append((hit.distance, name, np.array(hit.normal)))
    return min(hits, key=lambda hit: hit[0])[1:] if hits else None


def silhouette(solid, camera):
    """What a solid covers of the picture (mm2)."""
    way, across, up = camera
    flat = solid.transform(np.column_stack([np.vstack([across, up, way]), [0, 0, 0]])).project()
    return CrossSection(flat.to_polygons(), FillRule.Positive)


