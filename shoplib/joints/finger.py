"""The finger joint (box joint; comb, corner locking): equal fingers of two boards, side by side along a corner."""

from itertools import pairwise

from shoplib.joints.bench_pair import CannotCut, Clearance, JointKind, Pair, Setting, Stock, Values, must_leave
from shoplib.joints.draft import middle
from shoplib.joints.in_case import FIT, NO_SOURCE, drawn_apart, eighth, level, one_step, side
from shoplib.measure import INCH, MM, share, to_step
from shoplib.model.box import Box
from shoplib.model.solved import Joint


def usual_finger(stock: Stock) -> int:
    """The width of finger that an odd count of equal ones leaves, nearest to three quarters of the thickness.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> usual_finger(stock_of(3 * INCH // 4, width=9 * INCH // 2)) * 9 == 9 * INCH // 2
    True
    """
    pairs = share(stock.width, 2 * stock.part(stock.enters.thickness, 4, 3), 1)[0] or 1
    return share(stock.width, 2 * pairs + 1, 1)[0]


FINGER = Setting(
    "finger", "width of a finger", eighth, lambda stock: share(stock.width, 3, 1)[0], usual_finger, one_step,
    f"the width of the cutter, half to the whole thickness; an odd count makes both ends alike ({NO_SOURCE})",
)
PROUD = Setting(
    "proud", "left long, to be trimmed", lambda stock: 0, lambda stock: stock.natural(INCH // 16, 2 * MM),
    lambda stock: 0, lambda stock: stock.natural(INCH // 64, MM // 4),
    f"1/64 in where it is to be trimmed ({NO_SOURCE})",
)


def fingers(stock: Stock, finger: int) -> int:
    """How many fingers of both boards fill the width. Raises CannotCut where they do not close, with what is over.

    A rest under a tick a finger, from a width that was shared, is none.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> fingers(stock_of(INCH // 2, width=9 * INCH // 2), INCH // 2)
    9
    """
    count, over = share(stock.width, finger, 1)
    if over < count:
        return count
    hundredths = to_step(stock.width * 100, finger) // finger
    raise CannotCut(
        "finger",
        f"{stock.say(stock.width)} is {hundredths // 100}.{hundredths % 100:02} fingers of {stock.say(finger)}: "
        f"{count} of them leave {stock.say(over)}. Make the boards that much narrower, or choose a finger that closes.",
        over,
    )


def boundaries(stock: Stock, finger: int) -> list[int]:
    """Where fingers meet, from edge to edge: one more than there are fingers."""
    return [at * finger for at in range(fingers(stock, finger))] + [stock.width]


def make(stock: Stock, values: Values) -> Pair:
    """The lying board has the fingers at both edges (of an odd count), the standing one those between.

    Sockets are as deep as the mate is thick at its thickest, and `proud` more. With n fingers, the sockets of the
    lying board are n/2 (rounded down), each as wide as a finger and the fit; they take (finger + fit) * (thickest
    of the side + proud) * thickness each. The standing board's sockets are as wide as a finger, where the other's
    fingers are. Raises CannotCut where the fingers do not close on the width, or are under 3 mm.
    """
    finger, fit, proud = values["finger"], values["fit"], values["proud"]
    must_leave(stock, "finger", "as a finger", finger - fit)
    edges = boundaries(stock, finger)
    if len(edges) < 4:
        raise CannotCut("finger", f"Three fingers take {stock.say(3 * finger)}; the boards are "
                        f"{stock.say(stock.width)} wide.", 3 * finger - stock.width)
    thick, face = stock.enters.thickness, stock.receives.thickness
    near = share(fit, 2, 1)[0]
    far = fit - near
    long, high = stock.receives.thickest + proud, stock.enters.thickest + proud
    end, low = face - long, thick - high
    upright, bottom = side(stock, low), level(stock, long, "bottom")
    places = list(pairwise(edges))
    for begins, ends in places[1::2]:
        begin = begins - near
        stop = ends if ends == stock.width else ends + far
        bottom.take("socket", Box((end, begin, 0), (face, stop, thick)), "side")
    for begins, ends in places[::2]:
        upright.take("socket", Box((0, begins, low), (face, ends, thick)), "bottom")
    one, two = places[2], places[1]
    return Pair(
        "finger", stock, values, (upright.board, bottom.board),
        (Joint("finger", "bottom", "side", "-x", long, fit),),
        (
            Clearance("socket of the bottom on the side's face", "bottom", "side", "-x", 0),
            Clearance("socket of the side on the bottom's face", "side", "bottom", "-z", 0),
            Clearance("fit towards the back", "bottom", "side", "+y", near),
            Clearance("fit towards the front", "bottom", "side", "-y", far),
        ),
        {"side": (0, 0, drawn_apart(stock)), "bottom": (drawn_apart(stock), 0, 0)},
        ("y", middle(*one)),
        {
            "finger": ("bottom", (end, middle(*one), middle(0, thick))),
            "end finger": ("bottom", (end, middle(*places[0]), middle(0, thick))),
            "socket": ("bottom", (face, middle(*two), thick)),
            "baseline": ("side", (0, middle(*two), thick)),
        },
    )


FINGER_JOINT = JointKind(
    "finger", "finger joint", 1, (FINGER, FIT, PROUD), make,
    lambda stock, values: stock.receives.thickest + values["proud"],
)
"""Much glue face; boards are cut to the full outside size. An error of pitch adds up from finger to finger."""
