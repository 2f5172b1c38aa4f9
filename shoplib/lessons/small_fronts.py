"""The plain case with fronts that the exercises ask about, solved by the model: their answers are read off it."""

from collections.abc import Mapping

from shoplib.measure import INCH, INCH_STYLE, MM
from shoplib.model.board import Board
from shoplib.model.cabinet import solve
from shoplib.model.project import Back, Bay, Carcass, Drawers, Fronts, JointChoice, Project, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

THICK = 3 * INCH // 4


def small_fronts(
    *, width: int = 18 * INCH, height: int = 24 * INCH, count: int = 1, gap: int = INCH // 8, reveal: int = INCH // 8,
    thick: int = THICK, kind: str = "inset", fall: int = 0, bays: int = 1,
) -> Cabinet:
    """A case with `count` drawers in each bay, unrounded, whose openings are `width` by `height`; lengths in ticks.

    Inset fronts have the gap all round. With a `fall` each front is lower by so much than the one below it.
    """
    rule = Drawers(
        count=count, slide="side-mount ball-bearing, metric lengths", box_sheet="box", bottom_sheet="thin",
        bottom_depth=INCH // 4, **({"heights": "stepped", "difference": fall} if fall else {}),
    )
    sheets = {
        "case": Sheet("case", "plywood", thick), "front": Sheet("front", "plywood", 18 * MM),
        "box": Sheet("box", "plywood", INCH // 2), "thin": Sheet("thin", "plywood", INCH // 5),
    }
    whole = bays * width + (bays - 1) * thick
    return solve(Project(
        "small fronts", INCH_STYLE, sheets, Size("inside", whole, height, 20 * INCH),
        Carcass("case", corner=JointChoice("rabbet", INCH // 4), back=Back("rabbet", "thin", INCH // 4)),
        bays=(Bay("drawers", drawers=rule),) * bays, fronts=Fronts(kind, "front", gap, gap, reveal), rounding=1,
    ))


def front(case: Cabinet, number: int = 1, bay: int = 1) -> Board:
    """One front, counted from the bottom up."""
    return case.by_name[f"bay {bay} drawer {number} front"]


def front_width(case: Cabinet) -> int:
    """How wide the lowest front of the first bay is, in ticks."""
    box = front(case).box
    return box.high[0] - box.low[0]


def front_height(case: Cabinet, number: int) -> int:
    """How high a front of the first bay is, in ticks."""
    box = front(case, number).box
    return box.high[2] - box.low[2]


def beside_divider(givens: Mapping[str, int]) -> Cabinet:
    """Two bays `W` wide with a divider `t` thick; overlay fronts cover `a` of the sides and leave `g` between them."""
    return small_fronts(
        width=givens["W"], reveal=givens["t"] - givens["a"], thick=givens["t"], gap=givens["g"], kind="overlay", bays=2
    )
