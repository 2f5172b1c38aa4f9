"""The last exercise of fronts and gaps: three inset fronts of one bay, put in dry as the learner cut them."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.lessons.exercise import Given, Givens, Misconception
from shoplib.lessons.front_givens import opening_width
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.small_fronts import small_fronts
from shoplib.measure import share
from shoplib.model.solved import Cabinet

FRONTS = tuple(f"bay 1 drawer {number} front" for number in (1, 2, 3))


def _givens(draw: Draw) -> list[Given]:
    falls = {"inch": ("1 in", "1 1/4 in", "1 1/2 in"), "mm": ("25 mm", "30 mm", "35 mm")}
    gaps = {"inch": ("3/16 in", "1/4 in"), "mm": ("5 mm", "6 mm")}
    middle = draw.tape("middle", "", inch=("6 1/64 in", "9 in", "1/32 in"), mm=("150.5 mm", "240 mm", "1 mm")).value
    gap = draw.pick("g", "gap, everywhere", **gaps)
    # A middle front on a mark, so that the lowest has no rest to take up.
    return [
        draw.derived("O", "opening, height", 3 * middle + 4 * gap.value), opening_width(draw), gap,
        draw.pick("d", "each lower than the one below, by", **falls),
    ]


def _case(givens: Givens) -> Cabinet:
    return small_fronts(width=givens["W"], height=givens["O"], count=3, gap=givens["g"], fall=givens["d"])


def _middle(givens: Givens, gaps: int = 4) -> int:
    return share(givens["O"] - gaps * givens["g"], 3, 1)[0]


def _height_slips(name: str, steps: int) -> tuple[Misconception, ...]:
    found = (
        Misconception(
            f"{name}-no-gaps", lambda g: _middle(g, 0) + steps * g["d"],
            "That leaves no gap at all.", "Take the gaps off the opening first.",
        ),
        Misconception(
            f"{name}-gaps-between", lambda g: _middle(g, 2) + steps * g["d"],
            "That counts the gaps between the fronts only.", "How many gaps are there, from bottom to top?",
        ),
    )
    if not steps:
        return found
    return (*found, Misconception(
        f"{name}-equal", _middle,
        "That is the height of three equal fronts.", "This front differs from the middle one by {d}.",
    ))


def _height_lines(name: str, steps: int):
    def lines(givens: Givens, say: Say) -> tuple[str, ...]:
        text, middle = givens.texts, _middle(givens)
        first = f"middle front = ({text['O']} - 4 x {text['g']}) / 3 = {say.length(middle)}"
        if not steps:
            return ("What the lowest has more, the top one has less: the middle one is a third.", first)
        sign = "+" if steps > 0 else "-"
        return (
            first,
            f"{name} front = {say.length(middle)} {sign} {text['d']} = {say.length(middle + steps * givens['d'])}",
        )

    return lines


WIDTH = Asked(
    "width", "All three fronts", "width", FRONTS, "x",
    (
        Misconception("width-no-gap", lambda g: g["W"], "That is the opening itself.", "There is a gap at each side."),
        Misconception(
            "width-one-gap", lambda g: g["W"] - g["g"], "That takes one gap off.", "At how many sides is there a gap?",
        ),
    ),
    lambda g, say: (f"{g.texts['W']} - 2 x {g.texts['g']} = {say.length(g['W'] - 2 * g['g'])}",),
)

LOWEST, MIDDLE, TOP = (
    Asked(name, f"{name.capitalize()} front", "height", (board,), "z", _height_slips(name, steps),
          _height_lines(name, steps))
    for name, board, steps in zip(("lowest", "middle", "top"), FRONTS, (1, 0, -1), strict=True)
)

BAY_FRONTS = SetExercise(
    id="05-bay-fronts",
    title="Assemble what you cut: the fronts of a bay",
    question=(
        "Three inset fronts close an opening {W} wide and {O} high, with a gap of {g} everywhere: at both sides, "
        "below, between and above. Each front is {d} lower than the one below it. What you cut is put in dry, each "
        "front where its place was marked, and every gap must come out within 1/32 in (0.8 mm)."
    ),
    givens=_givens,
    case=_case,
    asked=(WIDTH, LOWEST, MIDDLE, TOP),
    view=View(FRONT, FRONTS[1]),
    fits="Every gap is {g}, and the rows step down evenly.",
    hints=(
        "Across: the opening less a gap at each side.",
        "Up: count the gaps from bottom to top, and take all of them off {O}.",
        "Share what is left among three. That is the middle front; the lowest has {d} more, the top one {d} less.",
    ),
)
