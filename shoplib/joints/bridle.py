"""The bridle (open mortise and tenon, slip joint) at a corner: a tongue in a slot, the thickness in three."""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Stock, Values, must_leave
from shoplib.joints.draft import middle
from shoplib.joints.in_case import drawn_apart, eighth, one_step
from shoplib.joints.in_frame import TIGHT_FIT, long_end, rail, stile, width_and_long
from shoplib.measure import INCH, MM, narrowest, share
from shoplib.model.box import Box
from shoplib.model.solved import Joint

TONGUE = Setting(
    "tongue", "thickness of the tongue", eighth,
    lambda stock: narrowest([stock.enters.thinnest, stock.receives.thinnest]) - 2 * eighth(stock),
    lambda stock: share(stock.enters.thickness, 3, 1)[0], one_step,
    "a third: Fairham, Woodwork Joints (1920) p. 39 (read); take the chisel or cutter nearest to it",
)
LONG = long_end("1/4 in an end: Fairham p. 39 (read)", lambda stock: stock.natural(INCH // 4, 6 * MM))


def make(stock: Stock, values: Values) -> Pair:
    """A rail's tongue in the open slot of a stile's top end, the slot in the middle of the stile's thickness.

    Taken from the rail: (thickness - tongue) * (width of the stile + long) * its width; from the stile: (tongue +
    fit) * (width of the rail + long) * its width. Raises CannotCut where a cheek of the slot or the tongue is under
    3 mm.
    """
    tongue, fit, long = values["tongue"], values["fit"], values["long"]
    across, width, thick = stock.across, stock.width, stock.enters.thickness
    must_leave(stock, "tongue", "as the tongue", tongue)
    begin = share(thick - tongue, 2, 1)[0]
    near = share(fit, 2, 1)[0]
    slot = (begin - near, begin + tongue + fit - near)
    must_leave(stock, "tongue", "as the cheek before the slot", slot[0])
    must_leave(stock, "tongue", "as the cheek behind the slot", stock.receives.thinnest - slot[1])
    enters, receives = rail(stock, -long), stile(stock, -stock.receives_length, width + long)
    receives.take("slot", Box((0, slot[0], 0), (across, slot[1], width + long)), "rail")
    enters.take("cheek", Box((-long, 0, 0), (across, begin, width)), "stile")
    enters.take("cheek", Box((-long, begin + tongue, 0), (across, thick, width)), "stile")
    return Pair(
        "bridle", stock, values, (receives.board, enters.board),
        (Joint("bridle", "rail", "stile", "-x", across, fit, 0, tongue),),
        (
            Clearance("shoulders on the stile's edge", "rail", "stile", "-x", 0),
            Clearance("bottom of the slot on the rail's edge", "rail", "stile", "-z", 0),
            Clearance("fit before the tongue", "rail", "stile", "-y", near),
            Clearance("fit behind the tongue", "rail", "stile", "+y", fit - near),
        ),
        {"stile": (0, 0, 0), "rail": (drawn_apart(stock) + across, 0, 0)},
        ("z", middle(0, width)),
        {
            "tongue": ("rail", (middle(0, across), begin, middle(0, width))),
            "shoulder": ("rail", (across, 0, middle(0, width))),
            "cheek of the slot": ("stile", (middle(0, across), 0, middle(0, width))),
            "bottom of the slot": ("stile", (middle(0, across), middle(*slot), 0)),
        },
    )


BRIDLE = JointKind("bridle", "bridle", 2, (TONGUE, TIGHT_FIT, LONG), make, width_and_long, frame=True)
"""Frames, legs under tops; stronger than halving, less labour than a closed mortise (Fairham pp. 37-39, read)."""
