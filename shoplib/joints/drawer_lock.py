"""The drawer-front joint (dado, tongue and rabbet; lock rabbet): the front's tongue held in a dado of the side.

From above: the front lies along x with its outside at y = 0, the left side runs back along y from x = 0.
"""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Stock, Values, must_leave
from shoplib.joints.draft import RAIL, Draft, middle
from shoplib.joints.in_case import FIT, GLUE_GAP, NO_SOURCE, drawn_apart, eighth, one_step
from shoplib.model.box import Box
from shoplib.model.locked_front import Lock, Room, lock_cuts, thin_of, usual_length, usual_lip
from shoplib.model.solved import Joint

LIP = Setting(
    "lip", "lip before the side", eighth, lambda stock: stock.receives.thinnest - 2 * eighth(stock),
    lambda stock: usual_lip(stock.receives.thickness, stock.style.step), one_step,
    f"1/4 in of 3/4: a third of the front ({NO_SOURCE}); thinner, its short grain is weak",
)
SLOT = Setting(
    "groove", "width of the groove in the front", eighth, lambda stock: stock.receives.thinnest - 2 * eighth(stock),
    lambda stock: usual_lip(stock.receives.thickness, stock.style.step), one_step,
    f"1/4 in of 3/4 with a tongue of 1/4, or 3/8 with one of 1/8 ({NO_SOURCE})",
)
TONGUE_LENGTH = Setting(
    "tongue length", "length of the front's tongue", eighth, lambda stock: stock.enters.thinnest - eighth(stock),
    lambda stock: usual_length(stock.enters.thickness, stock.style.step), one_step,
    f"half the side ({NO_SOURCE}); Noyes, Handwork in Wood (1910) Fig. 266-27, scaled from the figure, 0.46",
)


def make(stock: Stock, values: Values) -> Pair:
    """The front's lip before the end of the side, its tongue in the side's dado: lip + groove + tongue = front.

    The groove is as deep as the side is thick at its thickest reading; the dado begins groove - fit from the side's
    end. Taken from the front: (groove * thickest + tongue * (thickest - tongue length)) * width; from the side:
    (tongue length + end gap) * (tongue + fit) * width. Raises CannotCut where lip, tongue, or what holds it in the
    side is under 3 mm.
    """
    front, width, side = stock.receives.thickness, stock.width, stock.enters.thickest
    lip, groove, long, fit, gap = (values[name] for name in ("lip", "groove", "tongue length", "fit", "end gap"))
    lock = Lock(lip, groove, long, fit, gap)
    for setting, what, left in thin_of(front, stock.enters, lock):
        must_leave(stock, setting, what, left)
    cuts = lock_cuts(front, side, lock)
    inside, face = stock.enters.thickness, side
    front_end = inside - side
    board = Draft("front", stock.receives, RAIL, Box((front_end, 0, 0), (face + stock.receives_length, front, width)))

    def room(cut: Room) -> Box:
        return Box((inside - cut.out[1], cut.back[0], 0), (inside - cut.out[0], cut.back[1], width))

    board.take("groove", room(cuts.groove), "side")
    board.take("rabbet", room(cuts.rabbet), "side")
    back = front + stock.enters_length
    left = Draft("side", stock.enters, ("+y", "+z", "+x"), Box((0, lip, 0), (inside, back, width)))
    left.take("dado", room(cuts.dado), "front")
    held = Box((0, lip, 0), (inside, lip + groove - fit, width))
    entered = Box((inside - long, lip + groove, 0), (inside, front, width))
    half, centre = middle(0, width), middle(lip + groove, front)
    return Pair(
        "drawer lock", stock, values, (board.board, left.board),
        (Joint("drawer lock", "side", "front", "-y", front - lip, fit, gap, cuts.tongue),),
        (
            Clearance("end of the side on the lip", "side", "front", "-y", 0),
            Clearance("fit before the tongue", "side", "front", "+y", fit, held),
            Clearance("bottom of the groove", "side", "front", "+x", 0, held),
            Clearance("end of the tongue and bottom of the dado", "front", "side", "-x", gap, entered),
        ),
        {"front": (0, -drawn_apart(stock), 0), "side": (0, 0, 0)},
        ("z", half),
        {
            "lip": ("front", (front_end, middle(0, lip), half)),
            "groove": ("front", (inside, middle(lip, lip + groove), width)),
            "tongue": ("front", (middle(inside - long, inside), centre, width)),
            "dado": ("side", (inside - long - gap, centre, width)),
        },
    )


DRAWER_LOCK = JointKind(
    "drawer lock", "drawer-front joint", 1, (LIP, SLOT, TONGUE_LENGTH, FIT, GLUE_GAP), make,
    lambda stock, values: stock.receives.thickness - values["lip"], boards=("drawer", ""),
)
"""Keeps the front from being pulled off (Noyes p. 190, read)."""
