"""The butt joint with screws: one board stands against the face of another, screwed through that face."""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Sizes, Stock, Values, must_leave
from shoplib.joints.draft import middle
from shoplib.joints.in_case import (
    COUNT,
    EDGE,
    NO_SOURCE,
    drawn_apart,
    level,
    room_for_holes,
    side,
    spread_out,
)
from shoplib.measure import INCH, MM, narrowest, share, to_step
from shoplib.model.solved import Joint

LENGTH = Setting(
    "screw", "length of the screw", lambda stock: stock.natural(INCH // 2, 15 * MM),
    lambda stock: stock.natural(4 * INCH, 100 * MM),
    lambda stock: to_step(3 * stock.receives.thickness, stock.natural(INCH // 4, 5 * MM)),
    lambda stock: stock.natural(INCH // 4, 5 * MM),
    f"two thirds of it in the second board: 3/4 in takes 2 1/4 in ({NO_SOURCE}); others take 2 1/2 times the outer "
    f"board, and 1/2 in more into end grain ({NO_SOURCE})",
)
CLEARANCE = Setting(
    "clearance hole", "clearance hole in the outer board", lambda stock: stock.natural(INCH // 16, 2 * MM),
    lambda stock: stock.natural(INCH // 4, 7 * MM), lambda stock: stock.natural(INCH * 11 // 64, 9 * MM // 2),
    lambda stock: stock.natural(INCH // 64, MM // 2),
    "the screw slips through it: Noyes, Handwork in Wood (1910) p. 126 (read); 11/64 in for No. 8 from open tables, "
    "which differ",
)
PILOT = Setting(
    "pilot hole", "pilot hole in the second board", lambda stock: stock.natural(INCH // 32, MM),
    lambda stock: stock.natural(INCH // 8, 4 * MM), lambda stock: stock.natural(INCH * 5 // 64, 2 * MM),
    lambda stock: stock.natural(INCH // 64, MM // 2),
    "5/64 in for No. 8 in softwood, 3/32 in hardwood, from open tables, which differ",
)


def reach(stock: Stock, values: Values) -> int:
    """How far the screw goes into the second board, its head flush with the outside of the side."""
    return values["screw"] - stock.receives.thickness


def pilot_depth(stock: Stock, values: Values) -> int:
    """How deep the pilot hole is: 2/3 of the thread, and never deeper than the screw reaches.

    The thread is about 2/3 of a wood screw (Noyes, Handwork in Wood (1910) pp. 125-126, read), and the hole 1/2 to 2/3
    of the thread (US Army course EN5155 p. 1-37, read): 4/9 of the screw at most, to the nearest step of the shop.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> pilot_depth(stock_of(3 * INCH // 4), {"screw": 9 * INCH // 4}) == INCH
    True
    """
    return narrowest([stock.part(values["screw"], 9, 4), reach(stock, values)])


def reaching(stock: Stock, values: Values) -> Sizes:
    """How far the screw reaches: farther than its hole, so that no cut tells it."""
    return (("screw reaches into the bottom", reach(stock, values)),)


def make(stock: Stock, values: Values) -> Pair:
    """A board against the inside face of a side. No wood is cut away but the holes.

    Bored: from the side, count * pi/4 * clearance hole^2 * thickness; from the end of the other, count * pi/4 * pilot
    hole^2 * the lesser of 4/9 screw, to the nearest step, and screw - thickness of the side. Raises CannotCut where
    holes leave too little wood beside them or the screw does not reach.
    """
    thick, face, width = stock.enters.thickness, stock.receives.thickness, stock.width
    places = spread_out(width, values["edge"], values["count"])
    into, deep = reach(stock, values), pilot_depth(stock, values)
    must_leave(stock, "screw", "for the screw to hold in the second board", into, stock.natural(INCH // 4, 6 * MM))
    must_leave(stock, "screw", "behind the screw's point", stock.enters_length - into)
    room_for_holes(stock, places, values["clearance hole"], width)
    beside = share(stock.enters.thinnest - values["clearance hole"], 2, 1)[0]
    must_leave(stock, "clearance hole", "on either side of the screw", beside, MM)
    upright, bottom = side(stock, 0), level(stock, 0, "bottom")
    height = middle(0, thick)
    for at in places:
        upright.bore("clearance", (0, at, height), 0, values["clearance hole"], face, "bottom")
        bottom.bore("pilot", (face, at, height), 0, values["pilot hole"], deep, "side")
    return Pair(
        "butt", stock, values, (upright.board, bottom.board), (Joint("butt", "bottom", "side", "-x"),),
        (Clearance("end of the bottom on the face of the side", "bottom", "side", "-x", 0),),
        {"side": (0, 0, 0), "bottom": (drawn_apart(stock), 0, 0)},
        ("y", places[0]),
        {
            "face": ("side", (face, middle(0, width), middle(thick, stock.receives_length))),
            "end": ("bottom", (face, 0, height)),
            "clearance hole": ("side", (0, places[0], height)),
            "pilot hole": ("bottom", (face + deep, places[0], height)),
        },
    )


BUTT = JointKind(
    "butt", "butt with screws", 1, (COUNT, EDGE, LENGTH, CLEARANCE, PILOT), make, lambda stock, values: 0,
    reaching,
)
"""Resists little but what its screws do; screws hold poorly in end grain (Noyes p. 127, read)."""
