"""The last exercise of measuring: a box out of one strip, with a divider and shelves, put together as it was cut."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.lessons.exercise import Given, Givens, Misconception
from shoplib.lessons.measuring_givens import kerf
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.usual_givens import sheet_as_measured, sheet_as_sold
from shoplib.measure import INCH, INCH_STYLE, share
from shoplib.model.cabinet import solve
from shoplib.model.project import Bay, Carcass, Project, Shelves, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.model.strip import equal_pieces, left_over


def _givens(draw: Draw) -> list[Given]:
    side = draw.tape("H", "each side, length", inch=("9 in", "15 in", "1/4 in"), mm=("230 mm", "380 mm", "5 mm"))
    top = draw.tape("top", "", inch=("13 1/8 in", "21 7/8 in", "1/4 in"), mm=("331 mm", "559 mm", "1 mm"))
    cut = kerf(draw)
    strip = draw.derived("S", "strip, length", 2 * side.value + 2 * top.value + 3 * cut.value)
    return [strip, side, cut, sheet_as_sold(draw), sheet_as_measured(draw)]


def _box(givens: Givens) -> Cabinet:
    """The box whose sides are `H` and whose top and bottom are the two equal pieces that the strip leaves."""
    rest = left_over(givens["S"], [givens["H"]] * 2, givens["k"])
    top, _ = equal_pieces(rest, 2, givens["k"])
    size = Size("outside", top + 2 * givens["t"], givens["H"], 8 * INCH)
    bays = (Bay("shelves", shelves=Shelves(fixed=1)),) * 2
    sheets = {"strip": Sheet("strip", "plywood", givens["t"])}
    return solve(Project("parts box", INCH_STYLE, sheets, size, Carcass("strip"), bays=bays, rounding=1))


def _divider(givens: Givens) -> int:
    return givens["H"] - 2 * givens["t"]


def _top(givens: Givens, cuts: int) -> int:
    """Half of what the strip leaves, had it `cuts` cuts."""
    return share(givens["S"] - 2 * givens["H"] - cuts * givens["k"], 2, 1)[0]


def _divider_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    return (
        f"The name {text['T']} stands in no sum; the calipers give {text['t']}.",
        f"divider = {text['H']} - 2 x {text['t']} = {say.length(_divider(givens))}",
    )


def _top_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, wood = givens.texts, say.length(2 * _top(givens, 3))
    return (
        "Four pieces out of the whole strip: three cuts between them.",
        f"{text['S']} - 2 x {text['H']} - 3 x {text['k']} = {wood}",
        f"top and bottom = {wood} / 2 = {say.length(_top(givens, 3))}",
    )


def _shelf_working(givens: Givens, say: Say) -> tuple[str, ...]:
    top, shelf = say.exact(_top(givens, 3)), share(_top(givens, 3) - givens["t"], 2, 1)[0]
    return (f"shelf = ({top} - {givens.texts['t']}) / 2 = {say.length(shelf)}",)


DIVIDER = Asked(
    "divider", "Divider", "length", ("divider 1",), "z",
    (
        Misconception(
            "divider-nominal", lambda g: g["H"] - 2 * g["T"],
            "That takes off {T} twice, the name of the sheet.",
            "Look at what the calipers read.",
        ),
        Misconception(
            "divider-one", lambda g: g["H"] - g["t"],
            "That takes off one board.",
            "What lies above the divider, and what below?",
        ),
        Misconception(
            "divider-as-side", lambda g: g["H"],
            "That is as long as a side.",
            "The sides run past top and bottom; the divider stands between them.",
        ),
    ),
    _divider_working,
)

TOP = Asked(
    "top", "Top and bottom", "length", ("bottom", "top"), "x",
    (
        Misconception(
            "top-no-kerf", lambda g: _top(g, 0),
            "That shares the strip as if a saw took no wood.",
            "Count the cuts, and take their kerfs off before you share.",
        ),
        Misconception(
            "top-one-kerf", lambda g: _top(g, 1),
            "That takes off one kerf of {k}.",
            "How many cuts lie between four pieces?",
        ),
        Misconception(
            "top-four-kerfs", lambda g: _top(g, 4),
            "That takes off four kerfs, one for each piece.",
            "How many cuts lie between four pieces?",
        ),
        Misconception(
            "top-one-side", lambda g: share(g["S"] - g["H"] - 3 * g["k"], 2, 1)[0],
            "That takes one side of {H} off the strip.",
            "How many sides has the box?",
        ),
    ),
    _top_working,
)

SHELVES = Asked(
    "shelf", "Shelves", "length", ("bay 1 shelf 1", "bay 2 shelf 1"), "x",
    (
        Misconception(
            "shelf-no-divider", lambda g: share(_top(g, 3), 2, 1)[0],
            "That is half of the top.",
            "What stands between the two shelves?",
        ),
        Misconception(
            "shelf-divider-whole", lambda g: share(_top(g, 3), 2, 1)[0] - g["t"],
            "That takes the whole divider off each shelf.",
            "Take the divider off the top first, then halve.",
        ),
        Misconception(
            "shelf-sides-too", lambda g: share(_top(g, 3) - 3 * g["t"], 2, 1)[0],
            "That takes the two sides off as well.",
            "The top already lies between the sides.",
        ),
    ),
    _shelf_working,
)

ONE_STRIP = SetExercise(
    id="01-one-strip",
    title="Assemble what you cut",
    question=(
        "A parts box for the truing stand: two sides, top and bottom come out of one strip of plywood, {S} long and "
        "square at both ends. The sides are {H} each; all that is left becomes top and bottom, both of one length. The "
        "kerf is {k}. Top and bottom lie between the sides. In the middle a divider stands between bottom and top, and "
        "from it a shelf runs to each side, one in bay 1, the left half, one in bay 2; these come out of another "
        "strip. All of it was sold as {T}; the calipers give {t}. Every joint is a plain joint, board against board. "
        "What you give is put together dry."
    ),
    givens=_givens,
    case=_box,
    asked=(TOP, DIVIDER, SHELVES),
    view=View(FRONT, "divider 1"),
    fits="Two sides, two of these and three kerfs make the strip of {S} again.",
    hints=(
        "Draw the strip with its four pieces and mark every cut: each costs {k}. Take sides and kerfs off {S}; share.",
        "Draw the box from the front. The divider is {H} less the two boards above and below it, as they measure.",
        "The top less the divider, {t}, is the room for two shelves.",
    ),
)
