"""Boards of a plan as solids, built from plan.json alone.

A board is its own box from (0, 0, 0) to its size, less its cuts, set into the cabinet by `origin`
and `axes`. Bored holes are kept apart: wood that is free of the undrilled board is free of the
drilled one, so the faceted cylinders are only built where they could matter.
"""

from dataclasses import dataclass
from functools import cached_property

import numpy as np
from manifold3d import CrossSection, FillRule, Manifold, OpType, triangulate

SAME = 2e-6
"""Two numbers of a plan, or a sum of a few, are the same within this (mm); a plan is exact to 1e-6."""
OVERLAP = 1e-3
"""Wood shared by two boards counts from here (mm3)."""
FACETS = 48
OUTSIDE = 1.0
"""How far a drill is started in front of the face, so that no skin is left (mm)."""

WORLD = "xyz"
OWN = "uvw"


def direction(text):
    """World axis (0, 1, 2) and sign of a direction such as "-y"."""
    return WORLD.index(text[1]), {"+": 1.0, "-": -1.0}[text[0]]


def rotation(axes):
    """The matrix whose columns are the world directions of u, v and w."""
    matrix = np.zeros((3, 3))
    for own, text in enumerate(axes):
        axis, sign = direction(text)
        matrix[axis, own] = sign
    return matrix


def box(low, high):
    """The solid between two corners."""
    low, high = np.asarray(low, float), np.asarray(high, float)
    return Manifold.cube(tuple(high - low)).translate(tuple(low))


def is_box_cut(cut):
    """True for a dado, rabbet, groove or notch: wood between two corners."""
    return "low" in cut


def is_hole(cut):
    """True for a bored hole."""
    return "centre" in cut


def hole_solid(cut, size):
    """A drill that starts in front of the face its centre lies on and ends at the hole's depth."""
    along = OWN.index(cut["along"])
    depth, start = cut["depth"], cut["centre"][along]
    inward = 1.0 if start < size[along] / 2 else -1.0
    drill = Manifold.cylinder(depth + OUTSIDE, cut["diameter"] / 2, circular_segments=FACETS)
    centre = list(cut["centre"])
    centre[along] = start - OUTSIDE if inward > 0 else start - depth
    return _stand(drill, along).translate(tuple(centre))


def prism_solid(cut, outline=None):
    """An outline run along one axis from `from` to `to`."""
    section = CrossSection([outline if outline is not None else cut["outline"]], FillRule.NonZero)
    along = OWN.index(cut["along"])
    shift = [0.0, 0.0, 0.0]
    shift[along] = cut["from"]
    return _stand(Manifold.extrude(section, cut["to"] - cut["from"]), along).translate(tuple(shift))


def _stand(solid, along):
    """Turn a solid made along its own third axis so that it runs along `along`.

    The first two coordinates become the next two axes in cyclic order: along u they are (v, w),
    along v (w, u), along w (u, v).
    """
    turn = np.zeros((3, 4))
    for made in range(3):
        turn[(along + 1 + made) % 3, made] = 1.0
    return solid.transform(turn)


@dataclass
class Body:
    """One board of the plan as a solid in the cabinet."""

    plan: dict

    @property
    def name(self):
        return self.plan["name"]

    @property
    def group(self):
        return self.plan["group"]

    @cached_property
    def matrix(self):
        """Own coordinates to world, as manifold3d takes it (3 x 4)."""
        return np.column_stack([rotation(self.plan["axes"]), self.plan["origin"]])

    def to_world(self, points):
        """Own points (n x 3) in the cabinet."""
        return np.asarray(points, float) @ self.matrix[:, :3].T + self.matrix[:, 3]

    def world_box(self, low, high):
        """Corners of a box of the board's own coordinates, as it stands in the cabinet."""
        ends = self.to_world([low, high])
        return ends.min(axis=0), ends.max(axis=0)

    @cached_property
    def corners(self):
        """Low and high corner of the uncut board in the cabinet."""
        return self.world_box((0, 0, 0), self.plan["size"])

    @property
    def low(self):
        return self.corners[0]

    @property
    def high(self):
        return self.corners[1]

    @property
    def thickness_axis(self):
        """World axis that the thickness runs along."""
        return direction(self.plan["axes"][2])[0]

    @cached_property
    def own_wood(self):
        """The board less its box cuts and prisms, in its own coordinates."""
        solid = Manifold.cube(tuple(self.plan["size"]))
        cuts = [
            box(c["low"], c["high"]) if is_box_cut(c) else prism_solid(c)
            for c in self.plan["cuts"]
            if not is_hole(c)
        ]
        return Manifold.batch_boolean([solid, *cuts], OpType.Subtract) if cuts else solid

    @cached_property
    def wood(self):
        """The board less its box cuts and prisms, in the cabinet; holes not yet drilled."""
        return self.own_wood.transform(self.matrix)

    @cached_property
    def drilled(self):
        """The board less all its cuts, in the cabinet."""
        drills = [hole_solid(c, self.plan["size"]) for c in self.plan["cuts"] if is_hole(c)]
        if not drills:
            return self.wood
        return Manifold.batch_boolean([self.own_wood, *drills], OpType.Subtract).transform(self.matrix)

    @cached_property
    def box_cuts(self):
        """Every box cut with its corners in the cabinet: (cut, low, high)."""
        return [(c, *self.world_box(c["low"], c["high"])) for c in self.plan["cuts"] if is_box_cut(c)]

    @cached_property
    def pieces(self):
        """The undrilled board as convex pieces: corner points in the cabinet, an array each."""
        boxes = [(tuple(map(float, (0, 0, 0))), tuple(map(float, self.plan["size"])))]
        for cut in filter(is_box_cut, self.plan["cuts"]):
            boxes = [rest for piece in boxes for rest in _split_box(piece, cut["low"], cut["high"])]
        prisms = [c for c in self.plan["cuts"] if "outline" in c]
        if not prisms:
            return [self.to_world(_box_points(low, high)) for low, high in boxes]
        solids = [box(low, high) for low, high in boxes]
        for prism in prisms:
            for wedge in _wedges(prism):
                solids = [rest for solid in solids for rest in _split_solid(solid, wedge)]
        return [self.to_world(s.to_mesh64().vert_properties[:, :3]) for s in solids]


def _box_points(low, high):
    return [(x, y, z) for x in (low[0], high[0]) for y in (low[1], high[1]) for z in (low[2], high[2])]


def _split_box(piece, hole_low, hole_high):
    """What is left of a box beside another one: at most six boxes that do not overlap."""
    low, high = list(piece[0]), list(piece[1])
    if any(hole_high[a] <= low[a] or hole_low[a] >= high[a] for a in range(3)):
        return [piece]
    rest = []
    for a in range(3):
        if hole_low[a] > low[a]:
            rest.append((tuple(low), (*high[:a], hole_low[a], *high[a + 1 :])))
            low[a] = hole_low[a]
        if hole_high[a] < high[a]:
            rest.append(((*low[:a], hole_high[a], *low[a + 1 :]), tuple(high)))
            high[a] = hole_high[a]
    return rest


def _wedges(prism):
    """A prism as triangular prisms, each a list of outward planes (normal, offset)."""
    outline = np.asarray(prism["outline"], float)
    following = np.roll(outline, -1, axis=0)
    area = np.sum(outline[:, 0] * following[:, 1] - following[:, 0] * outline[:, 1])
    if area < 0:
        outline = outline[::-1]
    along = OWN.index(prism["along"])
    first, second = (along + 1) % 3, (along + 2) % 3
    for triangle in triangulate([outline]):
        planes = []
        for k in range(3):
            (a, b), (c, d) = outline[triangle[k]], outline[triangle[(k + 1) % 3]]
            normal = np.zeros(3)
            normal[first], normal[second] = d - b, a - c
            normal /= np.linalg.norm(normal)
            planes.append((normal, normal[first] * a + normal[second] * b))
        for sign, end in ((-1.0, prism["from"]), (1.0, prism["to"])):
            normal = np.zeros(3)
            normal[along] = sign
            planes.append((normal, sign * end))
        yield planes


def _split_solid(solid, planes):
    """What is left of a convex solid outside a convex hole given by its outward planes."""
    rest = []
    for normal, offset in planes:
        outside, solid_inside = solid.split_by_plane(tuple(normal), float(offset))
        if outside.volume() > OVERLAP / 10:
            rest.append(outside)
        if solid_inside.volume() <= OVERLAP / 10:
            return rest
        solid = solid_inside
    return rest


def boxes_share(low, high, other_low, other_high):
    """Volume that two boxes share (mm3)."""
    extent = np.minimum(high, other_high) - np.maximum(low, other_low)
    return float(np.prod(extent)) if (extent > 0).all() else 0.0


def shared_wood(one, other):
    """Volume of the wood that two boards would share (mm3)."""
    if boxes_share(one.low, one.high, other.low, other.high) <= OVERLAP:
        return 0.0
    volume = (one.wood ^ other.wood).volume()
    if volume > OVERLAP:
        volume = (one.drilled ^ other.drilled).volume()
    return volume
