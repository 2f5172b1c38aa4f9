"""The dado (housing, trench): a shelf let into a channel across a side."""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Stock, Values, must_leave
from shoplib.joints.draft import middle
from shoplib.joints.in_case import (
    END_GAP,
    FIT,
    depth,
    depth_less_gap,
    drawn_apart,
    level,
    reading_spread,
    side,
)
from shoplib.measure import share
from shoplib.model.box import Box
from shoplib.model.solved import Joint

DEPTH = depth(
    "a third of the side: 1/4 in 3/4, Windsor, Mission Furniture part 3 (1912), dictionary stand (read); half of it: "
    "1/4 in 1/2, Foster, Carpentry and Woodwork (1911) pp. 210-211 (numbers read, derived)",
    lambda stock: stock.part(stock.receives.thickness, 3),
)


def make(stock: Stock, values: Values) -> Pair:
    """A shelf resting on the lower wall of its dado. The dado takes depth * (thickest + fit) * width of the side.

    Raises CannotCut where less than 3 mm of the side is left under it.
    """
    deep, fit, gap = values["depth"], values["fit"], values["end gap"]
    thick, face, width = stock.enters.thickness, stock.receives.thickness, stock.width
    must_leave(stock, "depth", "under the dado in the side", stock.receives.thinnest - deep)
    must_leave(stock, "end gap", "of the shelf in the dado", deep - gap, stock.style.step)
    top = stock.enters.thickest + fit
    upright, shelf = side(stock, -share(stock.receives_length, 2, 1)[0]), level(stock, deep - gap)
    upright.take("dado", Box((face - deep, 0, 0), (face, width, top)), "shelf")
    half = middle(0, width)
    return Pair(
        "dado", stock, values, (upright.board, shelf.board),
        (Joint("dado", "shelf", "side", "-x", deep, fit, gap),),
        (
            Clearance("end of the shelf and bottom of the dado", "shelf", "side", "-x", gap),
            Clearance("shelf on the lower wall", "shelf", "side", "-z", 0),
            Clearance("fit under the upper wall", "shelf", "side", "+z", fit + reading_spread(stock)),
        ),
        {"side": (0, 0, 0), "shelf": (drawn_apart(stock), 0, 0)},
        ("y", half),
        {
            "bottom": ("side", (face - deep, 0, middle(0, thick))),
            "wall": ("side", (middle(face - deep, face), 0, top)),
            "shoulder line": ("side", (face, 0, 0)),
            "end of the shelf": ("shelf", (face - deep + gap, 0, middle(0, middle(0, thick)))),
        },
    )


DADO = JointKind("dado", "dado", 1, (DEPTH, FIT, END_GAP), make, depth_less_gap)
"""Resists a load from above; only glue keeps it from being pulled out."""
