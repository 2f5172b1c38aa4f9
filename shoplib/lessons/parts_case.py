"""The last exercise of what holds: a long case of shelves, divided so that none sags too far, and put together."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.draw.sag_view import widest_within
from shoplib.lessons.exercise import Given, Givens, Misconception
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.usual_givens import sheet_as_measured, sheet_as_sold
from shoplib.live.sag_panel import LOADS, over_spans, stuff
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, share, to_step
from shoplib.measure.quantity import read_quantity
from shoplib.model.cabinet import solve
from shoplib.model.project import Bay, Carcass, Project, Shelves, Size
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

DEEP = 12 * INCH


def _span(thick: int, unit: str) -> int:
    """How far a shelf of that sheet may span under the heaviest load of the panel, as its chart shows it."""
    style, load = (INCH_STYLE, LOADS["in"][-1]) if unit == "in" else (MM_STYLE, LOADS["mm"][-1])
    over = over_spans(DEEP, thick, stuff("plywood"), read_quantity(load), "simply supported", style)
    return to_step(widest_within(over), INCH if unit == "in" else 5 * MM, "down")


def _givens(draw: Draw) -> list[Given]:
    sheet = sheet_as_measured(draw)
    span = draw.derived("M", "a shelf may span", _span(sheet.value, draw.unit))
    # Wide enough that one divider leaves too much, and two do not.
    more = draw.tape("more", "", inch=("5 1/8 in", "18 in", "1/4 in"), mm=("131 mm", "450 mm", "1 mm"))
    return [
        draw.derived("W", "case, outside width", 2 * span.value + more.value),
        draw.tape("H", "sides, length", inch=("24 1/8 in", "36 in", "1/4 in"), mm=("601 mm", "900 mm", "1 mm")),
        span, sheet_as_sold(draw), sheet, Given("q", "", 0, LOADS[draw.unit][-1]),
    ]


def _case(givens: Givens) -> Cabinet:
    bays = (Bay("shelves", shelves=Shelves(fixed=1)),) * 3
    size, sheets = Size("outside", givens["W"], givens["H"], DEEP), {"case": Sheet("case", "plywood", givens["t"])}
    return solve(Project("parts case", INCH_STYLE, sheets, size, Carcass("case"), bays=bays, rounding=1))


def _clear(givens: Givens) -> int:
    return givens["W"] - 2 * givens["t"]


def _shelf(givens: Givens, dividers: int) -> int:
    """One of the equal shelves beside and between so many dividers."""
    return share(_clear(givens) - dividers * givens["t"], dividers + 1, 1)[0]


def _shelf_lines(givens: Givens, say: Say) -> tuple[str, ...]:
    text, clear = givens.texts, say.exact(_clear(givens))
    return (
        f"one divider: ({clear} - {text['t']}) / 2 = {say.length(_shelf(givens, 1))}, more than {text['M']}",
        f"two dividers: ({clear} - 2 x {text['t']}) / 3 = {say.length(_shelf(givens, 2))}, within {text['M']}",
    )


BOTTOM = Asked(
    "bottom", "Top and bottom", "length", ("bottom", "top"), "x",
    (
        Misconception(
            "bottom-nominal", lambda g: g["W"] - 2 * g["T"],
            "That takes off {T} twice, the name of the sheet.", "Look at what the calipers read.",
        ),
        Misconception(
            "bottom-outside", lambda g: g["W"],
            "That is the whole width.", "Where do the sides stand?",
        ),
        Misconception(
            "bottom-one-side", lambda g: g["W"] - g["t"],
            "That takes one side off.", "How many sides has the case?",
        ),
    ),
    lambda g, say: (f"{g.texts['W']} - 2 x {g.texts['t']} = {say.length(_clear(g))}",),
)

DIVIDERS = Asked(
    "divider", "Dividers", "length", ("divider 1", "divider 2"), "z",
    (
        Misconception(
            "divider-as-side", lambda g: g["H"],
            "That is as long as a side.", "The dividers stand between bottom and top.",
        ),
        Misconception(
            "divider-one", lambda g: g["H"] - g["t"],
            "That takes off one board.", "What lies above a divider, and what below?",
        ),
        Misconception(
            "divider-nominal", lambda g: g["H"] - 2 * g["T"],
            "That takes off {T} twice, the name of the sheet.", "Look at what the calipers read.",
        ),
    ),
    lambda g, say: (f"{g.texts['H']} - 2 x {g.texts['t']} = {say.length(g['H'] - 2 * g['t'])}",),
)

SHELVES = Asked(
    "shelf", "Shelves", "length", ("bay 1 shelf 1", "bay 2 shelf 1", "bay 3 shelf 1"), "x",
    (
        Misconception(
            "shelf-one-divider", lambda g: _shelf(g, 1),
            "That is for one divider, and so long a shelf sags more than the card allows.",
            "Hold it against {M}: how many dividers does it take?",
        ),
        Misconception(
            "shelf-three-dividers", lambda g: _shelf(g, 3),
            "That is for three dividers: it holds, with one more than it takes.", "Do two of them leave less than {M}?",
        ),
        Misconception(
            "shelf-no-divider", lambda g: share(_clear(g), 3, 1)[0],
            "That shares the whole room inside.", "What stands between the shelves?",
        ),
        Misconception(
            "shelf-sides-too", lambda g: share(g["W"] - 6 * g["t"], 3, 1)[0],
            "That takes the two sides off twice.", "Inside, only the dividers are left to take off.",
        ),
    ),
    _shelf_lines,
)

PARTS_CASE = SetExercise(
    id="07-parts-case",
    title="Assemble what you cut: a long case that holds",
    question=(
        "A case for boxes of parts, {W} wide outside, with sides {H} long, of plywood sold as {T}; the calipers give "
        "{t}. Under {q} a shelf of it may span {M}: the chart of the panel says so. Put in as few dividers as do, so "
        "that all bays are equal and no shelf spans more. Top and bottom lie between the sides, the dividers stand "
        "between bottom and top, and a shelf runs across each bay. Every joint is a plain one, board against board. "
        "What you give is put together dry."
    ),
    givens=_givens,
    case=_case,
    asked=(BOTTOM, DIVIDERS, SHELVES),
    view=View(FRONT, "divider 1"),
    fits="No shelf spans more than {M}. Now fasten the case to the wall, with a rail and screws, before you load it.",
    hints=(
        "Top and bottom: the width less the two sides, as they measure.",
        "The dividers: {H} less the two boards above and below.",
        "Try one divider: what it leaves is halved. Is that within {M}? If not, try two, and share by three.",
    ),
)
