"""The last exercise of the cut list: all its sizes for a case of two bays, put together as they are given."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.lessons.exercise import Given, Givens, Misconception
from shoplib.lessons.numbers import Draw
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.usual_givens import case_width, sheet_as_measured, sheet_as_sold
from shoplib.measure import INCH_STYLE, share
from shoplib.model.cabinet import solve
from shoplib.model.project import Bay, Carcass, Project, Shelves, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet


def _givens(draw: Draw) -> list[Given]:
    ranges = {"inch": ("22 1/8 in", "34 in", "1/4 in"), "mm": ("561 mm", "860 mm", "1 mm")}
    high = draw.tape("H", "case, outside height", **ranges)
    deep = draw.pick("D", "case, outside depth", inch=("12 in",), mm=("300 mm",))
    return [case_width(draw), high, deep, sheet_as_sold(draw), sheet_as_measured(draw)]


def _case(g: Givens) -> Cabinet:
    sheets, bays = {"case": Sheet("case", "plywood", g["t"])}, (Bay("shelves", shelves=Shelves(fixed=1)),) * 2
    size = Size("outside", g["W"], g["H"], g["D"])
    return solve(Project("case of two bays", INCH_STYLE, sheets, size, Carcass("case"), bays=bays, rounding=1))


def _inside(g: Givens) -> int:
    return g["W"] - 2 * g["t"]


def _shelf(g: Givens) -> int:
    return share(_inside(g) - g["t"], 2, 1)[0]


def _nominal(name: str, size: str, parts: int) -> Misconception:
    return Misconception(
        name, lambda g: g[size] - parts * g["T"], "That takes off {T} each time, the name of the sheet.",
        "Look at what the calipers read.",
    )


SIDES = Asked(
    "side", "2 x sides", "length", ("left side", "right side"), "z",
    (
        Misconception(
            "side-between", lambda g: g["H"] - 2 * g["t"], "That puts the sides between bottom and top.",
            "Which of them run through from the floor to the top?",
        ),
        _nominal("side-nominal", "H", 2),
    ),
    lambda g, say: (f"they run through: {say.length(g['H'])}",),
)

BOTTOM = Asked(
    "bottom", "2 x bottom and top", "length", ("bottom", "top"), "x",
    (
        Misconception("bottom-outside", lambda g: g["W"], "That is the whole width.", "Where do the sides stand?"),
        Misconception(
            "bottom-one-side", lambda g: g["W"] - g["t"], "That takes one side off.", "How many sides has the case?",
        ),
        _nominal("bottom-nominal", "W", 2),
    ),
    lambda g, say: (f"{g.texts['W']} - 2 x {g.texts['t']} = {say.length(_inside(g))}",),
)

DIVIDER = Asked(
    "divider", "1 x divider", "length", ("divider 1",), "z",
    (
        Misconception(
            "divider-as-side", lambda g: g["H"], "That is as long as a side.", "What lies above it, and what below?",
        ),
        Misconception(
            "divider-one", lambda g: g["H"] - g["t"], "That takes off one board.", "One lies above it; and below?",
        ),
        _nominal("divider-nominal", "H", 2),
    ),
    lambda g, say: (f"{g.texts['H']} - 2 x {g.texts['t']} = {say.length(g['H'] - 2 * g['t'])}",),
)

SHELVES = Asked(
    "shelf", "2 x shelves", "length", ("bay 1 shelf 1", "bay 2 shelf 1"), "x",
    (
        Misconception(
            "shelf-no-divider", lambda g: share(_inside(g), 2, 1)[0], "That halves the bottom.",
            "What stands between the two shelves?",
        ),
        Misconception(
            "shelf-divider-each", lambda g: share(_inside(g) - 2 * g["t"], 2, 1)[0],
            "That takes a divider off for each shelf.", "How many dividers stand between them?",
        ),
        Misconception(
            "shelf-half-width", lambda g: share(g["W"], 2, 1)[0], "That halves the width of the case.",
            "Close the sum: side + shelf + divider + shelf + side.",
        ),
    ),
    lambda g, say: (f"({g.texts['W']} - 3 x {g.texts['t']}) / 2 = {say.length(_shelf(g))}",),
)

WHOLE_LIST = SetExercise(
    id="08-whole-list",
    title="Assemble what you cut: the whole list",
    question=(
        "Write the list of a case {W} wide, {H} high and {D} deep outside, of plywood sold as {T}; the calipers give "
        "{t}. The sides run through; bottom and top lie between them, a divider stands between bottom and top and "
        "makes two equal bays, and each bay has a shelf. Every joint is a plain one, board against board, and no edge "
        "is banded. What you give is put together dry."
    ),
    givens=_givens,
    case=_case,
    asked=(SIDES, BOTTOM, DIVIDER, SHELVES),
    view=View(FRONT, "divider 1"),
    fits="The sums close: seven boards, and every one has its place.",
    hints=(
        "Which boards run through, and which stand between two others?",
        "Between the sides: the width less two boards. Between bottom and top: the height less two boards.",
        "Shelf + divider + shelf make the bottom: take the divider off, then halve.",
    ),
)
