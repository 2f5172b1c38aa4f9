"""What dado, rabbet and their like share: a level board let into an upright side, and the settings of that.

The side stands at the left from x = 0 to its thickness, the level board lies from z = 0 to its own and runs to the
right; the joint runs along y, front to back.
"""

from shoplib.joints.bench_pair import Of, Setting, Stock, Values
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
