"""A pair judged by solids built from its boards as plan.json writes them: overlap, clearance, wood taken away.

Only the records of plan.json are read, as another program would; nothing of the exact dry-fit is used.
"""

import json

import numpy as np
from manifold3d import Manifold, OpType

from shoplib.documents.plan_file import board_record
from shoplib.measure import to_mm
from tests.judge.solids import OWN, Body, _stand, box, direction, is_hole, prism_solid

FACETS = 480
OVER = 0.05
"""A stated clearance is tried that much less and that much more (mm)."""
SHARED = 1e-3
"""Wood shared counts from here (mm3)."""


def body(board):
    """The board as plan.json has it."""
    return Body(json.loads(json.dumps(board_record(board, board.size))))


def bored(one):
    """All wood that is left of a body, in the world, its holes with so many flats that a dowel keeps clear of them."""
    drills = []
    for cut in filter(is_hole, one.plan["cuts"]):
        along = OWN.index(cut["along"])
        start, depth = cut["centre"][along], cut["depth"]
        centre = list(cut["centre"])
        centre[along] = start if start < one.plan["size"][along] / 2 else start - depth
        drill = Manifold.cylinder(depth, cut["diameter"] / 2, circular_segments=FACETS)
        drills.append(_stand(drill, along).translate(tuple(centre)))
    wood = Manifold.batch_boolean([one.own_wood, *drills], OpType.Subtract) if drills else one.own_wood
    return wood.transform(one.matrix)


def shared(pair):
    """Every two boards that share wood, and how much (mm3)."""
    woods = {board.name: bored(body(board)) for board in pair.boards}
    names = list(woods)
    found = {}
    for at, name in enumerate(names):
        for other in names[at + 1 :]:
            volume = (woods[name] ^ woods[other]).volume()
            if volume > SHARED:
                found[name, other] = volume
    return found


def struck(pair, clearance, by):
    """How much wood is shared where the mover is moved by so much along the stated way (mm3)."""
    mover = bored(body(pair.by_name[clearance.mover]))
    if clearance.part is not None:
        low, high = ([to_mm(at) for at in corner] for corner in (clearance.part.low, clearance.part.high))
        mover ^= box(low, high)
    axis, sign = direction(clearance.way)
    shift = np.zeros(3)
    shift[axis] = sign * by
    return (mover.translate(tuple(shift)) ^ bored(body(pair.by_name[clearance.against]))).volume()


def unlike(pair):
    """Each stated clearance that the solids do not have."""
    wrong = []
    for stated in pair.clearances:
        gap = to_mm(stated.gap)
        before, after = struck(pair, stated, max(gap - OVER, 0)), struck(pair, stated, gap + OVER)
        if before > SHARED or after <= SHARED:
            wrong.append((stated.what, gap, before, after))
    return wrong


def taken(board):
    """The wood that the cuts take from a board (mm3), holes apart."""
    one = body(board)
    return float(np.prod(one.plan["size"])) - one.own_wood.volume()


def outlines_inside(board):
    """Whether every outline of the board that someone marks and cuts keeps within its blank.

    The flats of a dowel are left out: a dowel is bought round, and the stroke that stands for a flat runs past it.
    """
    whole = box((0, 0, 0), [to_mm(size) for size in board.size])
    cuts = [prism_solid(cut) for cut in body(board).plan["cuts"] if "outline" in cut and cut["kind"] != "flat"]
    return all((cut - whole).volume() < SHARED for cut in cuts)


def bored_away(board):
    """The wood that the holes of a board take (mm3)."""
    one = body(board)
    return one.own_wood.volume() - bored(one).volume()
