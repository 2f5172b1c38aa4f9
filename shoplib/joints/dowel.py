"""The dowelled butt: round pegs across a butt joint, half in each board."""

from itertools import pairwise
from math import cos, pi, sin

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Stock, Values, must_leave
from shoplib.joints.draft import LYING, Draft, middle
from shoplib.joints.in_case import (
    COUNT,
    EDGE,
    NO_SOURCE,
    drawn_apart,
    eighth,
    level,
    one_step,
    room_for_holes,
    side,
    spread_out,
)
from shoplib.joints.in_frame import TIGHT_FIT
from shoplib.measure import INCH, MM, narrowest, share
from shoplib.model.box import Box
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Joint

FLATS = 16
"""A dowel is drawn with so many flats, its corners on the round or a tick within it."""


def _drill(stock: Stock) -> int:
    return stock.natural(INCH // 16, MM)


SOLD_IN = tuple(INCH * sixteenths // 16 for sixteenths in (4, 5, 6, 7, 8, 10, 12, 16))
SOLD_MM = tuple(MM * wide for wide in (6, 8, 10, 12, 16, 20, 25))
"""Dowels that are sold, in inches and in millimetres (common practice, no source)."""


def usual_diameter(stock: Stock) -> int:
    """Half the thickness of the entering board, at the next size below that is sold.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> usual_diameter(stock_of(3 * INCH // 4)) * 8 == 3 * INCH
    True
    """
    half, sold = share(stock.enters.thickness, 2, 1)[0], SOLD_IN if stock.style.unit == "in" else SOLD_MM
    return next((size for size in reversed(sold) if size <= half), sold[0])


def _into_side(stock: Stock) -> int:
    return narrowest([3 * usual_diameter(stock), stock.receives.thinnest - eighth(stock) - _hole_gap(stock)])


def _hole_gap(stock: Stock) -> int:
    return stock.natural(INCH // 16, 3 * MM // 2)


DIAMETER = Setting(
    "diameter", "diameter of the dowel", eighth, lambda stock: stock.natural(INCH, 25 * MM), usual_diameter, _drill,
    f"half the thickness, at a size that is sold: 3/8 in 3/4, 8 mm in 19 ({NO_SOURCE}); others a third of it "
    f"({NO_SOURCE})",
)
INTO_END = Setting(
    "into end", "dowel in the end of the entering board", eighth, lambda stock: stock.natural(3 * INCH, 75 * MM),
    lambda stock: 3 * usual_diameter(stock), one_step,
    f"three diameters ({NO_SOURCE}); 7/8 to 1 1/4 in: Fairham, Woodwork Joints (1920) (read)",
)
INTO_SIDE = Setting(
    "into side", "dowel in the receiving board", eighth, lambda stock: stock.receives.thinnest - eighth(stock),
    _into_side, one_step, f"three diameters where the board has them, else what leaves 1/8 in behind ({NO_SOURCE})",
)
HOLE_GAP = Setting(
    "end gap", "hole deeper than the dowel goes", lambda stock: 0, lambda stock: stock.natural(INCH // 8, 3 * MM),
    _hole_gap, one_step, f"1/16 in at either end, so that the dowel is 1/8 in shorter than its holes ({NO_SOURCE})",
)


def make(stock: Stock, values: Values) -> Pair:
    """A board butted to the face of a side, with dowels in the middle of its thickness.

    Bored: from the side, count * pi/4 * (diameter + fit)^2 * (into side + end gap); from the end the same with `into
    end`. Raises CannotCut where a hole comes too near a face, an edge or another hole.
    """
    thick, face, width = stock.enters.thickness, stock.receives.thickness, stock.width
    radius = share(values["diameter"], 2, 1)[0]
    near = share(values["fit"], 2, 1)[0]
    hole, gap = 2 * (radius + near), values["end gap"]
    into_end, into_side = values["into end"], values["into side"]
    places = spread_out(width, values["edge"], values["count"])
    room_for_holes(stock, places, hole, width)
    must_leave(stock, "diameter", "beside the dowel", share(stock.enters.thinnest - hole, 2, 1)[0])
    must_leave(stock, "into side", "behind the hole in the side", stock.receives.thinnest - into_side - gap)
    must_leave(stock, "into end", "behind the hole in the end", stock.enters_length - into_end - gap)
    must_leave(stock, "into end", "of the dowel in the end", into_end)
    must_leave(stock, "into side", "of the dowel in the side", into_side)
    upright, board = side(stock, 0), level(stock, 0, "bottom")
    height = middle(0, thick)
    peg = Sheet("dowel", "solid", 2 * radius)
    pegs, stated = [], [Clearance("end of the bottom on the face of the side", "bottom", "side", "-x", 0)]
    for number, at in enumerate(places, 1):
        name = f"dowel {number}"
        upright.bore("dowel hole", (face, at, height), 0, hole, into_side + gap, name)
        board.bore("dowel hole", (face, at, height), 0, hole, into_end + gap, name)
        pegs.append(_round(name, peg, radius, (face - into_side, face + into_end), at, height))
        stated += [
            Clearance("hole in the side deeper than the dowel", name, "side", "-x", gap),
            Clearance("hole in the end deeper than the dowel", name, "bottom", "+x", gap),
            Clearance("fit of the dowel in the side", name, "side", "+y", near),
            Clearance("fit of the dowel in the end", name, "bottom", "+z", near),
        ]
    apart = {"side": (0, 0, 0), "bottom": (2 * drawn_apart(stock), 0, 0)}
    apart |= {draft.name: (drawn_apart(stock), 0, 0) for draft in pegs}
    return Pair(
        "dowel", stock, values, (upright.board, board.board, *(draft.board for draft in pegs)),
        (Joint("butt", "bottom", "side", "-x"),), tuple(stated), apart, ("y", places[0]),
        {
            "hole": ("side", (face, places[0], height + radius + near)),
            "end": ("bottom", (face, 0, height)),
        },
    )


def _round(name: str, sheet: Sheet, radius: int, ends: tuple[int, int], at: int, height: int) -> Draft:
    """A dowel along x: a square length with its corners planed off to `FLATS` flats."""
    low, high = (ends[0], at - radius, height - radius), (ends[1], at + radius, height + radius)
    draft = Draft(name, sheet, LYING, Box(low, high))
    turns = [2 * pi * flat / FLATS for flat in range(1, FLATS // 4)]
    arc = [(radius, 0), *((int(radius * cos(turn)), int(radius * sin(turn))) for turn in turns), (0, radius)]
    for right in (1, -1):
        for up in (1, -1):
            for one, other in pairwise(arc):
                corners = [(at + right * p, height + up * q) for p, q in _all_beyond(one, other)]
                draft.take_prism("flat", 0, corners, *ends)
    return draft


def _all_beyond(one: tuple[int, int], other: tuple[int, int]) -> list[tuple[int, int]]:
    """A triangle that holds all of the square length beyond the line of a flat, so that each flat takes its waste off
    at once; it reaches far out of the wood."""
    p, q = other[0] - one[0], other[1] - one[1]
    return [(one[0] - FLATS * p, one[1] - FLATS * q), (other[0] + FLATS * p, other[1] + FLATS * q),
            (one[0] + FLATS * q, one[1] - FLATS * p)]


DOWEL = JointKind(
    "dowel", "dowelled butt", 2, (DIAMETER, INTO_END, INTO_SIDE, COUNT, EDGE, TIGHT_FIT, HOLE_GAP), make,
    lambda stock, values: 0,
)
"""Tables and frames of two boards; what it holds is glue on the round of the pegs."""
