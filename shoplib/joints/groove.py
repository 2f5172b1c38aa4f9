"""The groove (plough): a bottom or panel let into a channel that runs with the grain."""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Stock, Values, must_leave
from shoplib.joints.draft import Draft, middle
from shoplib.joints.in_case import (
    FIT,
    NO_SOURCE,
    depth,
    depth_less_gap,
    drawn_apart,
    eighth,
    level,
    one_step,
    reading_spread,
)
from shoplib.measure import INCH, MM, share
from shoplib.model.box import Box
from shoplib.model.solved import Joint

DEPTH = depth(
    "about as deep as a panel groove is wide, a third of the frame: Noyes, Handwork in Wood (1910) p. 164 (read); "
    "1/4 in deep and 3/8 wide, Windsor, Mission Furniture part 3 (1912) (read)",
    lambda stock: stock.part(stock.receives.thickness, 3),
)
UP = Setting(
    "up", "wood below the groove", eighth, lambda stock: share(stock.across, 2, 1)[0],
    lambda stock: stock.natural(INCH // 4, 6 * MM), one_step,
    "1/4 in up: Windsor, Mission Furniture part 3 (1912) p. 87 (read)",
)
FLOAT = Setting(
    "end gap", "room for the panel to move", lambda stock: 0, lambda stock: stock.natural(INCH // 8, 3 * MM),
    lambda stock: stock.natural(INCH // 16, 3 * MM // 2), one_step,
    f"1/32 to 1/16 in, so that the panel does not bottom ({NO_SOURCE}); it floats, without glue: Noyes p. 164 (read)",
)


def make(stock: Stock, values: Values) -> Pair:
    """A bottom in the groove of a box side. The groove takes depth * (thickest + fit) * length of the side.

    The side is as long as the bottom is wide, and as high as the receiving board is wide. Raises CannotCut where too
    little is left under the groove, below it or above it.
    """
    deep, fit, gap, up = values["depth"], values["fit"], values["end gap"], values["up"]
    thick, face, width = stock.enters.thickness, stock.receives.thickness, stock.width
    top = stock.enters.thickest + fit
    must_leave(stock, "depth", "behind the groove in the side", stock.receives.thinnest - deep)
    must_leave(stock, "end gap", "of the bottom in the groove", deep - gap, stock.style.step)
    must_leave(stock, "up", "below the groove", up)
    must_leave(stock, "up", "above the groove", stock.across - up - top)
    upright = Draft("side", stock.receives, ("+y", "+z", "+x"), Box((0, 0, -up), (face, width, stock.across - up)))
    bottom = level(stock, deep - gap, "bottom")
    upright.take("groove", Box((face - deep, 0, 0), (face, width, top)), "bottom")
    half = middle(0, width)
    return Pair(
        "groove", stock, values, (upright.board, bottom.board),
        (Joint("groove", "bottom", "side", "-x", deep, fit, gap),),
        (
            Clearance("edge of the bottom and bottom of the groove", "bottom", "side", "-x", gap),
            Clearance("bottom on the lower wall", "bottom", "side", "-z", 0),
            Clearance("fit under the upper wall", "bottom", "side", "+z", fit + reading_spread(stock)),
        ),
        {"side": (0, 0, 0), "bottom": (drawn_apart(stock), 0, 0)},
        ("y", half),
        {
            "bottom of the groove": ("side", (face - deep, 0, middle(0, thick))),
            "wall": ("side", (middle(face - deep, face), 0, top)),
            "edge of the bottom": ("bottom", (face - deep + gap, 0, middle(0, thick))),
        },
    )


GROOVE = JointKind("groove", "groove", 1, (DEPTH, FIT, UP, FLOAT), make, depth_less_gap, boards=("thin", "drawer"))
"""Holds a panel that moves with the season."""
