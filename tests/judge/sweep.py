"""Does every drawer and pull-out run out? Each convex piece of its boards is swept along the travel."""

import numpy as np
from manifold3d import Manifold, OpType

from tests.judge.solids import OVERLAP, boxes_share


def travel_faults(plan, bodies):
    """Wood of other groups in the way of a group that runs out.

    The way of a convex piece is the hull of the piece and the moved piece, which is exact. The hull
    of a whole board would fill the groove that a runner lies in.
    """
    faults = []
    for entry in plan["travel"]:
        vector = np.asarray(entry["vector"], float)
        others = [b for b in bodies.values() if b.group != entry["group"]]
        for body in bodies.values():
            if body.group == entry["group"]:
                faults += [
                    f"travel: {body.name} runs into {other.name} ({volume:.4f} mm3)"
                    for other, volume in _hits(body, vector, others)
                ]
    return faults


def _hits(body, vector, others):
    low, high = np.minimum(body.low, body.low + vector), np.maximum(body.high, body.high + vector)
    near = [o for o in others if boxes_share(low, high, o.low, o.high) > OVERLAP]
    if not near:
        return
    ways = [np.vstack([points, points + vector]) for points in body.pieces]
    for other in near:
        struck = [part for way in ways if (part := _in_the_way(way, other))]
        if struck:
            yield other, Manifold.batch_boolean(struck, OpType.Add).volume()


def _in_the_way(way, other):
    """The other board's wood that one swept piece strikes; None where that is nothing."""
    if boxes_share(way.min(axis=0), way.max(axis=0), other.low, other.high) <= OVERLAP:
        return None
    swept = Manifold.hull_points(way)
    if (swept ^ other.wood).volume() <= OVERLAP:
        return None
    struck = swept ^ other.drilled
    return struck if struck.volume() > OVERLAP else None
