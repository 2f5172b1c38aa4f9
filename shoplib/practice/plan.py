"""The small case that the practice pair is for: a rack for spray cans and tubes of a bicycle workshop.

Two sides, a bottom and a shelf in through dadoes, and a back in rabbets. The sides are a pair: left and right are
mirror images, because the rabbets for the back lie at the rear.
"""

from dataclasses import dataclass, replace

from shoplib.measure import INCH, MM, thickest
from shoplib.model.board import Board, BoxCut
from shoplib.model.box import Box, around
from shoplib.model.placement import standing_in
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet, Joint
from shoplib.practice.bench import Bench
from shoplib.practice.cutting import Kerf
from shoplib.tables.fits import fit_named

SIDES = ("left side", "right side")
LEVELS = ("bottom", "shelf")

INWARD = {"left side": "-x", "right side": "+x"}
"""Which way a level board enters each side."""


@dataclass(frozen=True, slots=True)
class Plan:
    """The sizes of the case, in ticks. `sheet` is the mean thickness that the sums use.

    `width` is outside. `up` gives the near wall of each dado from the lower end of the side. `dado` is the depth of
    the dadoes, `fit` what they are to be wider than the thickest of the boards: the aim of a tap fit, good for glue.
    `rabbet` is the depth of the rabbets for the back, `back` its thickness.
    """

    unit: str
    height: int
    depth: int
    width: int
    bottom_up: int
    shelf_up: int
    dado: int
    back: int
    rabbet: int
    sheet: int
    fit: int

    @property
    def length(self) -> int:
        """Bottom and shelf from end to end: the outside less two sides, and a depth of dado for each end."""
        return self.width - 2 * self.sheet + 2 * self.dado

    def up(self, level: str) -> int:
        """The near wall of the dado for "bottom" or "shelf", from the lower end of the side."""
        return self.bottom_up if level == "bottom" else self.shelf_up


_SIZES = {
    "in": (16 * INCH, 8 * INCH, 18 * INCH, 3 * INCH // 2, 9 * INCH, INCH // 4, INCH // 4, 5 * INCH // 16),
    "mm": (400 * MM, 200 * MM, 450 * MM, 40 * MM, 230 * MM, 6 * MM, 6 * MM, 8 * MM),
}


def plan_for(bench: Bench) -> Plan:
    """The case for the sheet that lies on this bench.

    >>> from shoplib.practice.spreads import NONE
    >>> plan = plan_for(Bench("Noor", "dado", "in", NONE))
    >>> plan.length == 18 * INCH - 2 * (INCH * 705 // 1000) + INCH // 2
    True
    """
    return Plan(bench.unit, *_SIZES[bench.unit], bench.sheet, fit_named("tap", bench.unit).aim)


@dataclass(frozen=True, slots=True)
class Stock:
    """How thick the blanks came out, by board (ticks): cut from one sheet, and yet not alike."""

    left: int
    right: int
    bottom: int
    shelf: int

    def of(self, board: str) -> int:
        """The thickness of one of the four boards."""
        return getattr(self, board.removesuffix(" side"))

    @property
    def entering(self) -> tuple[int, int]:
        """The two boards that enter dadoes."""
        return self.bottom, self.shelf

    @property
    def thickest(self) -> int:
        """The thicker of those two: what the dadoes must receive."""
        return thickest(self.entering)


def stock_of(bench: Bench) -> Stock:
    """The four blanks as they come off this sheet."""
    return Stock(*(bench.thickness(board) for board in (*SIDES, *LEVELS)))


def rabbet_cut(plan: Plan, hand: str) -> BoxCut:
    """The rabbet for the back in a side of this hand, in the side's own coordinates: see `side_board`."""
    start = plan.depth - plan.back if hand == "left side" else 0
    return BoxCut("rabbet", (0, start, 0), (plan.height, start + plan.back, plan.rabbet), "back")


def dado_cut(plan: Plan, level: str, wall: int, width: int, depth: int) -> BoxCut:
    """A dado across the inner face of a side, `wall` up from its lower end, in the side's own coordinates."""
    return BoxCut("dado", (wall, 0, 0), (wall + width, plan.depth, depth), level)


STANDING = {"left side": ("+z", "+y", "-x"), "right side": ("+z", "-y", "+x")}
"""How each side stands: u up from its lower end, w outward from its inner face."""


def side_board(plan: Plan, hand: str, thickness: int, cuts: tuple[BoxCut, ...]) -> Board:
    """A side with its cuts. u runs up from the lower end, w from the inner face, v from the front of a left side and
    from the rear of a right one: a board is never its own mirror image.
    """
    box = Box((0, 0, 0), (thickness, plan.depth, plan.height))
    place = standing_in(box, STANDING[hand])
    return Board(hand, "case", 1, "sheet", plan.height, plan.depth, thickness, place, cuts, role="side")


def planned_side(plan: Plan, hand: str, stock: Stock, walls: dict[str, int] | None = None) -> Board:
    """A side cut exactly as planned, or with its dadoes at other `walls`."""
    width = stock.thickest + plan.fit
    up = {level: plan.up(level) for level in LEVELS} | (walls or {})
    dadoes = (dado_cut(plan, level, up[level], width, plan.dado) for level in LEVELS)
    return side_board(plan, hand, stock.of(hand), (rabbet_cut(plan, hand), *dadoes))


def cut_side(plan: Plan, hand: str, stock: Stock, kerfs: dict[str, Kerf]) -> Board:
    """A side with its dadoes as the saw left them: what is nothing deep is no cut."""
    dadoes = (dado_cut(plan, level, k.wall, k.width, k.depth) for level, k in kerfs.items() if k.width and k.depth)
    return side_board(plan, hand, stock.of(hand), (rabbet_cut(plan, hand), *dadoes))


def level_board(plan: Plan, level: str, thickness: int, at: int) -> Board:
    """The bottom or the shelf, resting at height `at`."""
    box = Box((0, 0, at), (plan.length, plan.depth - plan.back, at + thickness))
    place = standing_in(box, ("+x", "+y", "+z"))
    return Board(level, "case", 1, "sheet", *place.to_board(box).high, place, role=level)


def back_board(plan: Plan, left: int, right: int) -> Board:
    """The back, cut last: from floor to floor of the rabbets of sides whose inner faces stand at `left` and `right`."""
    box = Box((left - plan.rabbet, plan.depth - plan.back, 0), (right + plan.rabbet, plan.depth, plan.height))
    place = standing_in(box, ("+z", "+x", "+y"))
    return Board("back", "case", 1, "back", *place.to_board(box).high, place, role="back")


def joints_of(plan: Plan) -> tuple[Joint, ...]:
    """Bottom and shelf in their dadoes, the back in its rabbets, as planned."""
    level = [Joint("dado", level, side, INWARD[side], plan.dado, plan.fit) for level in LEVELS for side in SIDES]
    return (*level, *(Joint("rabbet", "back", side, INWARD[side], plan.rabbet) for side in SIDES))


def cabinet_of(bench: Bench, plan: Plan, stock: Stock, boards: tuple[Board, ...], joints: tuple[Joint, ...]) -> Cabinet:
    """The boards and joints as a cabinet that the checks read."""
    sheets = {
        "sheet": Sheet("sheet", "plywood", plan.sheet, stock.entering),
        "back": Sheet("back", "plywood", plan.back, (plan.back,)),
    }
    whole = around([board.box for board in boards])
    return Cabinet("practice case", boards, sheets, joints, style=bench.style, outside=whole, envelope=whole)


def moved(board: Board, x: int, z: int = 0) -> Board:
    """The board shifted in the case."""
    a, b, c = board.placement.origin
    return replace(board, placement=replace(board.placement, origin=(a + x, b, c + z)))
