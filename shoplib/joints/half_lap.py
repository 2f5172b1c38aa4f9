"""The half lap at a corner (end lap, halving): each board keeps half of its thickness where they cross."""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Stock, Values
from shoplib.joints.draft import middle
from shoplib.joints.in_case import drawn_apart, eighth, one_step
from shoplib.joints.in_frame import laps_hold, long_end, rail, stile, width_and_long
from shoplib.measure import INCH, MM, narrowest, share
from shoplib.model.box import Box
from shoplib.model.solved import Joint

LAP = Setting(
    "lap", "thickness that the rail keeps", eighth,
    lambda stock: narrowest([stock.enters.thinnest, stock.receives.thinnest]) - eighth(stock),
    lambda stock: share(narrowest([stock.enters.thickness, stock.receives.thickness]), 2, 1)[0], one_step,
    "half: Fairham, Woodwork Joints (1920) pp. 13, 28; Noyes, Handwork in Wood (1910) p. 155 (read)",
)
LONG = long_end("1/16 in: Noyes p. 156 (read)", lambda stock: stock.natural(INCH // 16, 3 * MM // 2))


def make(stock: Stock, values: Values) -> Pair:
    """A rail lapped over the top end of a stile, faces flush; both laps gauged from the face, so that errors cancel.

    Taken from the rail: (thickness - lap) * (width of the stile + long) * width of the rail; from the stile: lap *
    (width of the rail + long) * width of the stile. Raises CannotCut where a lap is under 3 mm.
    """
    lap, long, across, width = values["lap"], values["long"], stock.across, stock.width
    thick = stock.enters.thickness
    laps_hold(stock, lap)
    over, under = rail(stock, -long), stile(stock, -stock.receives_length, width + long)
    over.take("lap", Box((-long, lap, 0), (across, thick, width)), "stile")
    under.take("lap", Box((0, 0, 0), (across, lap, width + long)), "rail")
    return Pair(
        "half lap", stock, values, (under.board, over.board), (Joint("half lap", "rail", "stile", "-x", across),),
        (
            Clearance("shoulder of the rail on the stile's edge", "rail", "stile", "-x", 0),
            Clearance("shoulder of the stile on the rail's edge", "rail", "stile", "-z", 0),
            Clearance("cheek on cheek", "rail", "stile", "+y", 0),
        ),
        {"stile": (0, 0, 0), "rail": (0, -drawn_apart(stock), 0)},
        ("z", middle(0, width)),
        {
            "cheek": ("stile", (middle(0, across), lap, middle(0, width))),
            "shoulder": ("stile", (middle(0, across), middle(0, lap), 0)),
            "lap": ("rail", (middle(0, across), middle(0, lap), middle(0, width))),
        },
    )


HALF_LAP = JointKind("half lap", "half lap at a corner", 2, (LAP, LONG), make, width_and_long, frame=True)
"""Frames and brackets; half the section bends. Glued across the grain: narrow stock only (common practice)."""
