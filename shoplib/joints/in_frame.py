"""What the joints of frames share: an upright stile or leg, and a rail that enters it from the right.

The stile stands from x = 0 to its width, the rail lies from z = 0 to its own; thickness runs along y from the face
side at y = 0, from which everything is gauged.
"""

from shoplib.joints.bench_pair import Of, Setting, Stock, Values, must_leave
from shoplib.joints.draft import RAIL, STILE, Draft
from shoplib.joints.in_case import NO_SOURCE, fine_step, one_step
from shoplib.measure import INCH, MM
from shoplib.model.box import Box

TIGHT_FIT = Setting(
    "fit", "wider than what enters by", lambda stock: 0, lambda stock: stock.natural(INCH // 64, MM // 2),
    lambda stock: stock.natural(INCH // 1000, MM // 50), fine_step,
    f"a tap fit, 0 to 0.002 in ({NO_SOURCE}); the open mortise and tenon was strongest 0.1 mm tight; the bench takes "
    "no fit tighter than 0",
)


def long_end(rule: str, default: Of) -> Setting:
    """How much longer an end is left than it will be when it is planed flush."""
    return Setting("long", "left long, to be planed flush", lambda stock: 0,
                   lambda stock: stock.natural(INCH // 2, 12 * MM), default, one_step, rule)


def laps_hold(stock: Stock, lap: int) -> None:
    """Refuse a lap (what the rail keeps): CannotCut where either board keeps under 3 mm, or the rail loses nothing."""
    must_leave(stock, "lap", "as the lap of the rail", lap)
    must_leave(stock, "lap", "as the lap of the stile", stock.receives.thinnest - lap)
    must_leave(stock, "lap", "to cut from the rail", stock.enters.thickness - lap, stock.style.step)


def stile(stock: Stock, low: int, high: int, name: str = "stile") -> Draft:
    """The upright, from one height to another."""
    return Draft(name, stock.receives, STILE, Box((0, 0, low), (stock.across, stock.receives.thickness, high)))


def rail(stock: Stock, start: int, name: str = "rail", back: int = 0) -> Draft:
    """The rail from x = `start` on, its face `back` behind the stile's."""
    low = (start, back, 0)
    return Draft(name, stock.enters, RAIL, Box(low, (stock.across + stock.enters_length, back + stock.enters.thickness,
                                                     stock.width)))


def width_and_long(stock: Stock, values: Values) -> int:
    """What a rail gains that runs across the whole stile: its width, and what is left long."""
    return stock.across + values["long"]
