"""The finger joint (box joint; comb, corner locking): equal fingers of two boards, side by side along a corner."""

from dataclasses import replace

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Stock, Values, refuse
from shoplib.joints.draft import middle
from shoplib.joints.in_case import FIT, NO_SOURCE, drawn_apart, eighth, level, one_step, side
from shoplib.measure import INCH, MM, share
from shoplib.model.box import Box
from shoplib.model.finger_layout import closing, fingers, usual_finger, why_not
from shoplib.model.solved import Joint

FINGER = Setting(
    "finger", "width of a finger", eighth, lambda stock: share(stock.width, 3, 1)[0],
    lambda stock: usual_finger(stock.width, stock.enters.thickness, stock.style), one_step,
    f"the width of the cutter, half to the whole thickness; boards are a whole number of fingers wide, and an odd one "
    f"makes both edges alike ({NO_SOURCE})",
    only=lambda stock: closing(stock.width, stock.style.step),
)
PLAY = replace(
    FIT, label="sockets wider than fingers by",
    rule=f"push fit: 0.002 to 0.005 in, half of it cut off the fingers by the same cutter ({NO_SOURCE})",
)
PROUD = Setting(
    "proud", "left long, to be trimmed", lambda stock: 0, lambda stock: stock.natural(INCH // 16, 2 * MM),
    lambda stock: 0, lambda stock: stock.natural(INCH // 64, MM // 4),
    f"1/64 in where it is to be trimmed ({NO_SOURCE})",
)


def make(stock: Stock, values: Values) -> Pair:
    """The lying board has the fingers at both edges (of an odd count), the standing one those between.

    Sockets are as deep as the mate is thick at its thickest, and `proud` more. One cutter makes those of both boards:
    each is as wide as a finger and half of the fit, and fingers are half of the fit narrower; the last socket of the
    standing board runs out of its edge. Of n fingers the lying board has n/2 sockets (rounded down), which take
    (finger + fit/2) * (thickest of the side + proud) * thickness each. Raises CannotCut where the fingers do not close
    on the width, or are under 3 mm.
    """
    finger, fit, proud = values["finger"], values["fit"], values["proud"]
    refuse("finger", why_not(stock.width, finger, fit, stock.style))
    layout = fingers(stock.width, finger, fit)
    thick, face = stock.enters.thickness, stock.receives.thickness
    play = share(fit, 2, 1)[0]
    long, high = stock.receives.thickest + proud, stock.enters.thickest + proud
    end, low = face - long, thick - high
    upright, bottom = side(stock, low), level(stock, long, "bottom")
    for begins, ends in layout.sockets:
        bottom.take("socket", Box((end, begins, 0), (face, ends, thick)), "side")
    for begins, ends in layout.mate_sockets:
        upright.take("socket", Box((0, begins, low), (face, ends, thick)), "bottom")
    one, two, low_in_it = layout.own[1], layout.mate[0], share(thick, 4, 1)[0]
    return Pair(
        "finger", stock, values, (upright.board, bottom.board),
        (Joint("finger", "bottom", "side", "-x", long, fit),),
        (
            Clearance("socket of the bottom on the side's face", "bottom", "side", "-x", 0),
            Clearance("socket of the side on the bottom's face", "side", "bottom", "-z", 0),
            Clearance("fit towards the back", "bottom", "side", "+y", play),
            Clearance("fit towards the front", "bottom", "side", "-y", play),
        ),
        {"side": (0, 0, drawn_apart(stock)), "bottom": (drawn_apart(stock), 0, 0)},
        ("x", middle(0, face)),
        {
            "finger": ("bottom", (end, middle(*one), low_in_it)),
            "end finger": ("bottom", (end, middle(*layout.own[0]), low_in_it)),
            "socket": ("bottom", (face, middle(*two), thick)),
            "baseline": ("side", (0, middle(*layout.own[0]), thick)),
        },
    )


FINGER_JOINT = JointKind(
    "finger", "finger joint", 1, (FINGER, PLAY, PROUD), make,
    lambda stock, values: stock.receives.thickest + values["proud"],
    wide=(15 * (3 * INCH // 8), 15 * 10 * MM),  # fifteen fingers of a cutter close on it
    boards=("drawer", "drawer"),
)
"""Much glue face; boards are cut to the full outside size. An error of pitch adds up from finger to finger."""
