"""The loose spline (loose, cross or feather tongue): two boards edge to edge, a strip in a groove of each.

The joint runs along y; both boards lie with their face side down at z = 0, from which both grooves are cut.
"""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Stock, Values, must_leave
from shoplib.joints.draft import LYING, Draft, middle
from shoplib.joints.in_case import NO_SOURCE, drawn_apart, eighth, one_step
from shoplib.joints.in_frame import TIGHT_FIT
from shoplib.measure import INCH, MM, share, to_step
from shoplib.model.box import Box
from shoplib.model.placement import Axes
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Joint

ALONG_THE_JOINT: Axes = ("+y", "-x", "+z")

THICK = Setting(
    "spline", "thickness of the spline", eighth, lambda stock: stock.enters.thinnest - 2 * eighth(stock),
    lambda stock: to_step(stock.part(stock.enters.thickness, 3), stock.natural(INCH // 16, MM // 2)), one_step,
    f"1/4 in for 3/4 stock: a third ({NO_SOURCE})",
)
WIDE = Setting(
    "spline width", "width of the spline", lambda stock: stock.natural(INCH // 4, 6 * MM),
    lambda stock: stock.natural(3 * INCH // 2, 40 * MM), lambda stock: stock.natural(7 * INCH // 8, 22 * MM), one_step,
    f"7/8 in: Fairham, Woodwork Joints (1920) p. 52 (read); up to 3/4 in in 3/4 stock ({NO_SOURCE})",
)
SLOT_GAP = Setting(
    "end gap", "each groove deeper than half the spline", lambda stock: 0,
    lambda stock: stock.natural(INCH // 8, 3 * MM), lambda stock: stock.natural(INCH // 64, MM // 2), one_step,
    f"both grooves together 1/32 to 1/16 in more than the spline ({NO_SOURCE})",
)
STOP = Setting(
    "stop", "groove stopped before each end", lambda stock: 0, lambda stock: share(stock.enters_length, 3, 1)[0],
    lambda stock: 0, one_step, "none; 1 1/4 in from the ends of a moulded top: Fairham p. 52 (read)",
)


def make(stock: Stock, values: Values) -> Pair:
    """Two boards as long as `enters_length`, a spline between them with its grain across the joint.

    Each board loses (half of the spline's width + end gap) * (spline + fit) * (length - 2 * stop). Raises CannotCut
    where a wall of a groove is under 3 mm.
    """
    thick, wide, fit, gap, stop = (values[name] for name in ("spline", "spline width", "fit", "end gap", "stop"))
    length, near = stock.enters_length, share(fit, 2, 1)[0]
    low = share(stock.enters.thickness - thick, 2, 1)[0]
    walls = (low - near, low + thick + fit - near)
    half = share(wide, 2, 1)[0]
    rest = wide - half
    must_leave(stock, "spline", "as the spline", thick)
    must_leave(stock, "spline", "before the groove", walls[0])
    must_leave(stock, "spline", "behind the groove of the right board", stock.enters.thinnest - walls[1])
    must_leave(stock, "spline", "behind the groove of the left board", stock.receives.thinnest - walls[1])
    must_leave(stock, "spline width", "behind the groove in the right board", stock.width - rest - gap)
    must_leave(stock, "spline width", "behind the groove in the left board", stock.across - half - gap)
    must_leave(stock, "stop", "of the spline between the stops", length - 2 * stop)
    left = Draft("left board", stock.receives, ALONG_THE_JOINT,
                 Box((-stock.across, 0, 0), (0, length, stock.receives.thickness)))
    right = Draft("right board", stock.enters, ALONG_THE_JOINT,
                  Box((0, 0, 0), (stock.width, length, stock.enters.thickness)))
    strip = Draft("spline", Sheet("spline stock", "plywood", thick), LYING,
                  Box((-half, stop, low), (rest, length - stop, low + thick)))
    left.take("groove", Box((-half - gap, stop, walls[0]), (0, length - stop, walls[1])), "spline")
    right.take("groove", Box((0, stop, walls[0]), (rest + gap, length - stop, walls[1])), "spline")
    centre, at = middle(low, low + thick), middle(0, length)
    return Pair(
        "spline", stock, values, (left.board, right.board, strip.board),
        (
            Joint("butt", "right board", "left board", "-x"),
            Joint("groove", "spline", "left board", "-x", half + gap, fit, gap),
            Joint("groove", "spline", "right board", "+x", rest + gap, fit, gap),
        ),
        (
            Clearance("edge on edge", "right board", "left board", "-x", 0),
            Clearance("groove of the left board deeper than the spline", "spline", "left board", "-x", gap),
            Clearance("groove of the right board deeper than the spline", "spline", "right board", "+x", gap),
            Clearance("fit towards the face side", "spline", "right board", "-z", near),
            Clearance("fit away from the face side", "spline", "left board", "+z", fit - near),
        ),
        {
            "left board": (-drawn_apart(stock), 0, 0), "right board": (drawn_apart(stock), 0, 0), "spline": (0, 0, 0),
        },
        ("y", at),
        {
            "spline": ("spline", (0, at, centre)),
            "groove": ("left board", (-half - gap, at, centre)),
            "wall": ("left board", (middle(-half, 0), at, middle(0, walls[0]))),
            "edge": ("right board", (0, at, middle(walls[1], stock.enters.thickness))),
        },
    )


SPLINE = JointKind("spline", "loose spline", 2, (THICK, WIDE, TIGHT_FIT, SLOT_GAP, STOP), make, lambda stock, values: 0)
"""Keeps faces level; a cross-grained strip is stronger than a diagonal one (Fairham p. 52, read)."""
