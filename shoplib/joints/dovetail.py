"""The through dovetail: tails on the lying board between pins on the standing one, wedged against being pulled out."""

from itertools import pairwise

from shoplib.joints.bench_pair import CannotCut, Clearance, JointKind, Pair, Setting, Sizes, Stock, Values, must_leave
from shoplib.joints.draft import middle
from shoplib.joints.finger import PROUD
from shoplib.joints.in_case import NO_SOURCE, drawn_apart, level, one_step, side
from shoplib.joints.in_frame import TIGHT_FIT
from shoplib.measure import INCH, MM, share
from shoplib.model.solved import Joint

SLOPE = Setting(
    "slope", "slope of the tails", lambda stock: 40, lambda stock: 100, lambda stock: 80, lambda stock: 1,
    "1 in 8, 1 in 6 the limit: Fairham, Woodwork Joints (1920) p. 134 (read); 5/8 in 3, that is 1 in 4.8: Noyes, "
    "Handwork in Wood (1910) p. 165 (read); 1 in 4: Ross, Elementary Course in Woodwork (read)", "slope",
)
TAILS = Setting(
    "tails", "number of tails", lambda stock: 1, lambda stock: 12,
    lambda stock: share(stock.width, stock.natural(3 * INCH // 2, 37 * MM), 1)[0] or 1, lambda stock: 1,
    "no tail over 1 3/4 in wide: Noyes p. 165 (read)", "count",
)
PIN = Setting(
    "pin", "small end of a pin", lambda stock: stock.natural(INCH // 16, 3 * MM // 2),
    lambda stock: stock.natural(INCH, 25 * MM), lambda stock: stock.natural(INCH // 4, 6 * MM), one_step,
    "about 1/16 in: Griffith, Essentials of Woodworking (1908) p. 103 (read), the finest; pins as wide as tails are "
    f"strongest: Noyes p. 165 (read); 1/4 in is a chisel's width between the two ({NO_SOURCE})",
)
HALF_PIN = Setting(
    "half-pin", "small end of the half pin at an edge", lambda stock: 0, lambda stock: stock.natural(INCH, 25 * MM),
    lambda stock: stock.natural(INCH // 4, 6 * MM), one_step,
    f"as a pin, so that its short side does not break out ({NO_SOURCE}); none leaves half a tail at the edge",
)


def wide_tail(stock: Stock, values: Values) -> int:
    """How wide each tail is at its end: what half pins and pins leave of the width, shared; CannotCut where it is none.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> wide_tail(stock_of(INCH, width=4 * INCH), {"tails": 2, "pin": INCH, "half-pin": INCH // 2}) == INCH
    True
    """
    tails = values["tails"]
    room = stock.width - 2 * values["half-pin"] - (tails - 1) * values["pin"]
    must_leave(stock, "tails", "for the tails", room)
    return share(room, tails, 1)[0]


def layout(stock: Stock, values: Values) -> list[tuple[int, int]]:
    """From where to where each pin reaches across the width, at its small end: half pins at the edges, tails between.

    Tails are equal; what does not divide, under a tick a tail, goes to the half pin at the back, or to the last tail.
    Raises CannotCut where nothing is left for tails, or nothing divides them.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> stock = stock_of(3 * INCH // 4, width=7 * INCH // 4)
    >>> [(low / INCH, high / INCH) for low, high in layout(stock, {"tails": 2, "pin": INCH // 4, "half-pin": 0})]
    [(0.75, 1.0)]
    """
    tails, pin, half, tail = values["tails"], values["pin"], values["half-pin"], wide_tail(stock, values)
    if tails == 1 and not half:
        sentence = f"A single tail needs half pins beside it, and there are none: make each {stock.say(pin)}."
        raise CannotCut("half-pin", sentence, pin)
    starts = [half + (at + 1) * tail + at * pin for at in range(tails - 1)]
    pins = [(start, start + pin) for start in starts]
    last = half + tails * tail + (tails - 1) * pin
    return [(0, half), *pins, (last, stock.width)] if half else pins


def lean(stock: Stock, values: Values) -> int:
    """How far a flank leans over the depth of the tails: 10 * depth / slope, for slopes are in tenths.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> lean(stock_of(3 * INCH // 4), {"slope": 80, "proud": 0}) * 8 == 3 * INCH // 4
    True
    """
    long, slope = deep_tails(stock, values), values["slope"]
    return share(long, slope // 10, 1)[0] if slope % 10 == 0 else share(long * 10, slope, 1)[0]


def deep_tails(stock: Stock, values: Values) -> int:
    """How long the tails are, from their baseline: the thickest place of the mate, and what is left proud."""
    return stock.receives.thickest + values["proud"]


def slanting(stock: Stock, values: Values) -> Sizes:
    """What is marked out: both gauge settings, and tails and pins at both of their ends."""
    rise = lean(stock, values)
    return (
        ("gauge setting for the tails", deep_tails(stock, values)),
        ("gauge setting for the pins", stock.enters.thickest + values["proud"]),
        ("lean of a flank over the tails' length", rise),
        ("tail, at its wide end", wide_tail(stock, values)),
        ("pin, at its small end", values["pin"]),
        ("pin, at its wide end", values["pin"] + 2 * rise),
    )


def make(stock: Stock, values: Values) -> Pair:
    """Tails of a lying board between the pins of a standing one; the outside of the side shows the tails' wide ends.

    A flank leans by rise = 10 * depth / slope over the depth = thickest of the side + proud. From the lying board each
    pin's socket takes (pin + rise + fit) * depth * thickness, each half pin's (half pin + rise/2 + half the fit) *
    depth * thickness. The standing board loses, from end to baseline, its thickness times the width that is no pin, on
    the mean of its two faces. Raises CannotCut where a pin or a tail is too narrow at its narrow end.
    """
    fit, proud = values["fit"], values["proud"]
    thick, face, width = stock.enters.thickness, stock.receives.thickness, stock.width
    long, high = deep_tails(stock, values), stock.enters.thickest + proud
    rise = lean(stock, values)
    shows = share(rise * (long - face), long, 1)[0]  # the lean at the side's own outside, to the tick within the pin
    pins = layout(stock, values)
    near = share(fit, 2, 1)[0]
    far = fit - near
    if values["half-pin"]:
        must_leave(stock, "half-pin", "as the small end of a half pin", values["half-pin"], MM)
    end, low = face - long, thick - high
    upright, bottom = side(stock, low), level(stock, long, "bottom")
    for begins, ends in pins:
        front, back = begins > 0, ends < width
        bottom.take_prism(
            "socket", 2,
            [
                (end, begins - near * front), (face, begins - (rise + near) * front),
                (face, ends + (rise + far) * back), (end, ends + far * back),
            ],
            0, thick, "side",
        )
    tails = list(pairwise(pins))
    tails = [((0, 0), pins[0]), *tails, (pins[-1], (width, width))] if not values["half-pin"] else tails
    for (_, begins), (ends, _) in tails:
        front, back = begins > 0, ends < width
        left = ends - begins - (rise + far) * front - (rise + near) * back
        must_leave(stock, "tails", "of a tail at its narrow end", left)
        upright.take_prism(
            "socket", 2,
            [
                (0, begins + shows * front), (face, begins + rise * front),
                (face, ends - rise * back), (0, ends - shows * back),
            ],
            low, thick, "bottom",
        )
    tail, pin, height = (tails[0][0][1], tails[0][1][0]), pins[1 if values["half-pin"] else 0], middle(0, thick)
    named = {
        "tail": ("bottom", (end, middle(*tail), height)),
        "pin": ("side", (0, middle(*pin), height)),
        "socket": ("side", (middle(0, face), middle(*tail), thick)),
        "baseline": ("bottom", (face, middle(*pin), height)),
    }
    if values["half-pin"]:
        named["half-pin"] = ("side", (0, 0, height))
    return Pair(
        "dovetail", stock, values, (upright.board, bottom.board),
        (Joint("dovetail", "bottom", "side", "-x", long, fit),),
        (
            Clearance("baseline of the tails on the side's face", "bottom", "side", "-x", 0),
            Clearance("tails in the floor of their sockets", "bottom", "side", "+z", 0),
            Clearance("fit towards the back", "bottom", "side", "+y", near),
            Clearance("fit towards the front", "bottom", "side", "-y", far),
        ),
        {"side": (0, 0, 0), "bottom": (0, 0, -drawn_apart(stock))},
        ("z", height), named,
    )


DOVETAIL = JointKind(
    "dovetail", "through dovetail", 3, (SLOPE, TAILS, PIN, HALF_PIN, TIGHT_FIT, PROUD), make,
    deep_tails, slanting,
)
"""Resists pull on the tails: drawers and chests. More splay for hardwood, or less: sources disagree."""
