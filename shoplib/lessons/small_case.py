"""The plain case that the exercises ask about, solved by the model: their answers are read off its boards."""

from shoplib.measure import INCH, INCH_STYLE
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Carcass, JointChoice, Project, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.model.uprights import bays


def small_case(
    width: int, side: int, *, height: int = 24 * INCH, depth: int = 20 * INCH,
    dado: int = INCH // 4, rabbet: int = INCH // 4, bays: int = 1,
) -> Cabinet:
    """A case `width` outside, of a sheet that measures `side`, unrounded; all lengths in ticks.

    Top and bottom stand in dadoes `dado` deep, the back lies in rabbets `rabbet` wide, and dividers
    make `bays` equal bays. Height, depth and the back's thickness change none of the widths. Without a base
    the dadoes of top and bottom run out of the ends of the sides: they are rabbets.
    """
    sheets = {"case": Sheet("case", "plywood", side), "back": Sheet("back", "plywood", INCH // 4)}
    carcass = Carcass("case", corner=JointChoice("dado", dado), back=Back("rabbet", "back", rabbet))
    size = Size("outside", width, height, depth)
    return solve(Project("small case", INCH_STYLE, sheets, size, carcass, bays=(Bay(),) * bays, rounding=1))


def bottom_length(case: Cabinet) -> int:
    """The bottom from left to right, in ticks."""
    return _across(case, "bottom")


def back_width(case: Cabinet) -> int:
    """The back from left to right, in ticks."""
    return _across(case, "back")


def bay_width(case: Cabinet) -> int:
    """The clear width of the first bay, in ticks: what will not divide, less than a tick a bay, is not in it."""
    left, right = bays(case)[0]
    return right - left


def _across(case: Cabinet, name: str) -> int:
    box = case.by_name[name].box
    return box.high[0] - box.low[0]
