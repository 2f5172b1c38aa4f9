"""The rabbet (rebate): the end of a side cut away to half, and the mate let into it."""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Stock, Values, must_leave
from shoplib.joints.draft import middle
from shoplib.joints.in_case import END_GAP, FIT, depth, depth_less_gap, drawn_apart, level, reading_spread, side
from shoplib.model.box import Box
from shoplib.model.solved import Joint

DEPTH = depth(
    "half of the side, so that the tongue left is as thick: 1/2 to 2/3 (common practice, no source)",
    lambda stock: stock.part(stock.receives.thickness, 2),
)


def make(stock: Stock, values: Values) -> Pair:
    """A board in the rabbet at the lower end of a side, flush with it below.

    The rabbet takes depth * (thickest + fit) * width of the side: as wide as the mate is thick (Griffith, Essentials
    of Woodworking (1908), s. 103 p. 107). Raises CannotCut where the tongue left is under 3 mm.
    """
    deep, fit, gap = values["depth"], values["fit"], values["end gap"]
    thick, face, width = stock.enters.thickness, stock.receives.thickness, stock.width
    must_leave(stock, "depth", "as the tongue of the side", stock.receives.thinnest - deep)
    must_leave(stock, "end gap", "of the bottom in the rabbet", deep - gap, stock.style.step)
    shoulder = stock.enters.thickest + fit
    upright, bottom = side(stock, 0), level(stock, deep - gap, "bottom")
    upright.take("rabbet", Box((face - deep, 0, 0), (face, width, shoulder)), "bottom")
    half = middle(0, width)
    return Pair(
        "rabbet", stock, values, (upright.board, bottom.board),
        (Joint("rabbet", "bottom", "side", "-x", deep, fit, gap),),
        (
            Clearance("end of the bottom and cheek", "bottom", "side", "-x", gap),
            Clearance("fit under the shoulder", "bottom", "side", "+z", fit + reading_spread(stock)),
        ),
        {"side": (0, 0, 0), "bottom": (drawn_apart(stock), 0, 0)},
        ("y", half),
        {
            "shoulder": ("side", (middle(face - deep, face), half, shoulder)),
            "cheek": ("side", (face - deep, half, middle(0, thick))),
            "tongue": ("side", (0, half, middle(0, thick))),
            "end of the bottom": ("bottom", (face - deep + gap, half, middle(0, middle(0, thick)))),
        },
    )


RABBET = JointKind("rabbet", "rabbet", 1, (DEPTH, FIT, END_GAP), make, depth_less_gap)
"""Small boxes, drawer corners, backs; glue and nail, through the mate into the rabbeted side (Griffith p. 107)."""
