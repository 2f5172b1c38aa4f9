"""What dado, rabbet and their like share: a level board let into an upright side, and the settings of that.

The side stands at the left from x = 0 to its thickness, the level board lies from z = 0 to its own and runs to the
right; the joint runs along y, front to back.
"""

from itertools import pairwise

from shoplib.joints.bench_pair import Of, Setting, Stock, Values, must_leave
from shoplib.joints.draft import LYING, STANDING, Draft
from shoplib.measure import INCH, MM, share
from shoplib.model.box import Box

NO_SOURCE = "common practice, no source"


def one_step(stock: Stock) -> int:
    """The finest step of the shop."""
    return stock.style.step


def fine_step(stock: Stock) -> int:
    """What a fit is chosen by: 0.001 in or 0.02 mm."""
    return stock.natural(INCH // 1000, MM // 50)


def eighth(stock: Stock) -> int:
    """1/8 in or 3 mm: no cut is shallower, and no less wood is left under one."""
    return stock.natural(INCH // 8, 3 * MM)


def depth(rule: str, default: Of) -> Setting:
    """How deep the receiving board is cut."""
    return Setting("depth", "depth of the cut", eighth, lambda stock: stock.receives.thinnest - eighth(stock), default,
                   one_step, rule)


FIT = Setting(
    "fit", "wider than the thickest reading by", lambda stock: 0, lambda stock: stock.natural(INCH // 64, MM // 2),
    lambda stock: stock.natural(INCH // 500, MM // 20), fine_step,
    f"push fit: 0.002 to 0.005 in over the thickest reading ({NO_SOURCE})",
)

END_GAP = Setting(
    "end gap", "gap at the end", lambda stock: 0, lambda stock: stock.natural(INCH // 16, 2 * MM), lambda stock: 0,
    one_step, f"none: the end of the board stands on the floor of the cut ({NO_SOURCE})",
)

GLUE_GAP = Setting(
    "end gap", "gap before the tongue's end", lambda stock: 0, lambda stock: stock.natural(INCH // 16, 2 * MM),
    lambda stock: stock.natural(INCH // 64, MM // 2), one_step,
    f"the tongue is 1/64 to 1/32 in shorter than the dado is deep ({NO_SOURCE})",
)


def depth_less_gap(stock: Stock, values: Values) -> int:
    """What a board gains that enters a cut: its depth less the gap at the end."""
    return values["depth"] - values["end gap"]


def reading_spread(stock: Stock) -> int:
    """How much more the thickest reading of the entering board is than its mean: a cut for the one is loose by that."""
    return stock.enters.thickest - stock.enters.thickness


def side(stock: Stock, low: int, name: str = "side") -> Draft:
    """The upright board, from z = `low` on, as far as the stock shows it above the level one."""
    high = stock.enters.thickness + stock.receives_length
    return Draft(name, stock.receives, STANDING, Box((0, 0, low), (stock.receives.thickness, stock.width, high)))


def level(stock: Stock, gain: int, name: str = "shelf") -> Draft:
    """The level board, its end `gain` past the side's inside face."""
    face = stock.receives.thickness
    low, high = (face - gain, 0, 0), (face + stock.enters_length, stock.width, stock.enters.thickness)
    return Draft(name, stock.enters, LYING, Box(low, high))


def drawn_apart(stock: Stock) -> int:
    """How far the entering board is drawn from the receiving one: half of what is shown of it."""
    return share(stock.enters_length, 2, 1)[0]


def spread_out(width: int, edge: int, count: int) -> list[int]:
    """Places along a width: the first and the last `edge` from its ends, the rest evenly between, to the tick.

    One alone stands in the middle.

    >>> spread_out(100, 10, 3), spread_out(100, 10, 1)
    ([10, 50, 90], [50])
    """
    if count == 1:
        return [share(width, 2, 1)[0]]
    return [edge + share((width - 2 * edge) * at, count - 1, 1)[0] for at in range(count)]


def room_for_holes(stock: Stock, places: list[int], diameter: int, run: int) -> None:
    """Refuse holes that run into each other or out of an edge: CannotCut with what is missing."""
    radius = share(diameter + 1, 2, 1)[0]
    must_leave(stock, "edge", "between the edge and the first hole", places[0] - radius)
    must_leave(stock, "edge", "between the last hole and the edge", run - places[-1] - radius)
    for one, other in pairwise(places):
        must_leave(stock, "count", "between two holes", other - one - diameter)


COUNT = Setting(
    "count", "how many", lambda stock: 1, lambda stock: 8, lambda stock: 2, lambda stock: 1,
    f"one near each edge ({NO_SOURCE})", "count",
)

EDGE = Setting(
    "edge", "first and last from the edge", lambda stock: stock.natural(INCH // 2, 10 * MM),
    lambda stock: share(stock.width, 2, 1)[0], lambda stock: stock.part(stock.width, 6), one_step,
    f"a sixth of the width, so that neither board splits ({NO_SOURCE})",
)
