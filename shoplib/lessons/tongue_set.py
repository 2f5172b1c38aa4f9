"""The last exercise of joinery allowances: all that runs from side to side, each board by its own joint."""

from collections.abc import Callable

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FROM_ABOVE
from shoplib.lessons.exercise import Given, Givens, Misconception
from shoplib.lessons.joint_case import joint_case
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.usual_givens import case_width, sheet_as_measured, sheet_as_sold
from shoplib.live.joint_project import with_one_shelf
from shoplib.measure import read_length
from shoplib.model.solved import Cabinet


def _givens(draw: Draw) -> list[Given]:
    deep = draw.tape("D", "case, outside depth", inch=("10 in", "14 in", "1/2 in"), mm=("250 mm", "350 mm", "10 mm"))
    high = draw.pick("H", "case, outside height", inch=("24 in",), mm=("600 mm",))
    return [
        case_width(draw), high, deep, sheet_as_sold(draw), sheet_as_measured(draw),
        draw.pick("d", "tongues of top and bottom: dadoes, depth", inch=("1/4 in", "5/16 in"), mm=("7 mm", "8 mm")),
        draw.pick("e", "left open under each tongue", inch=("1/16 in",), mm=("1.5 mm", "2 mm")),
        draw.pick("k", "shelf: dadoes, depth", inch=("3/16 in", "1/4 in"), mm=("5 mm", "6 mm")),
        draw.pick("b", "back: grooves, depth", inch=("1/8 in", "5/16 in"), mm=("4 mm", "7 mm")),
    ]


def _case(givens: Givens) -> Cabinet:
    thin = read_length("1/4 in")
    return with_one_shelf(joint_case(
        (givens["t"],), width=givens["W"], deep=givens["D"], height=givens["H"], dado=givens["k"],
        tongue=thin, tongue_dado=givens["d"], end_gap=givens["e"], groove=givens["b"],
    ))


def _sum(name: str, joint: str, gap: str = "") -> Callable[[Givens, Say], tuple[str, ...]]:
    """The working of a board between the sides: two sides off, two gains on."""

    def lines(givens: Givens, say: Say) -> tuple[str, ...]:
        text = givens.texts
        sides, gain = say.exact(2 * givens["t"]), givens[joint] - (givens[gap] if gap else 0)
        comes_to = say.length(givens["W"] - 2 * givens["t"] + 2 * gain)
        first = f"gain at each end = {text[joint]}" + (f" - {text[gap]} = {say.exact(gain)}" if gap else "")
        return (
            first,
            f"{text['W']} - 2 x {text['t']} + 2 x {say.exact(gain)} = {text['W']} - {sides} + {say.exact(2 * gain)}",
            f"{name} = {comes_to}",
        )

    return lines


BOTTOM = Asked(
    "bottom", "Top and bottom", "length", ("bottom", "top"), "x",
    (
        Misconception(
            "bottom-nominal", lambda g: g["W"] - 2 * g["T"] + 2 * (g["d"] - g["e"]),
            "That is the sum with {T}, the name of the sheet.",
            "Look at what the calipers read.",
        ),
        Misconception(
            "bottom-gap-forgotten", lambda g: g["W"] - 2 * g["t"] + 2 * g["d"],
            "That gains all of {d} at each end. Its tongues are cut to leave {e} open all the same, so each of its "
            "shoulders stands {e} too far out.",
            "How deep is the dado, and how much of that stays open?",
        ),
        Misconception(
            "bottom-no-joint", lambda g: g["W"] - 2 * g["t"],
            "That is the room between the sides, with no tongue counted.",
            "The tongues are part of top and bottom: they come on top.",
        ),
        Misconception(
            "bottom-one-joint", lambda g: g["W"] - 2 * g["t"] + g["d"] - g["e"],
            "That counts one tongue.",
            "How many ends has the bottom?",
        ),
    ),
    _sum("top and bottom", "d", "e"),
)

SHELF = Asked(
    "shelf", "Shelf", "length", ("shelf",), "x",
    (
        Misconception(
            "shelf-no-joint", lambda g: g["W"] - 2 * g["t"],
            "That is the room between the sides, with no dado counted.",
            "The shelf goes on into the sides: how far?",
        ),
        Misconception(
            "shelf-one-joint", lambda g: g["W"] - 2 * g["t"] + g["k"],
            "That counts one dado of {k}.",
            "How many ends has the shelf?",
        ),
        Misconception(
            "shelf-like-bottom", lambda g: g["W"] - 2 * g["t"] + 2 * (g["d"] - g["e"]),
            "That is the gain of the bottom, whose joint is another.",
            "How deep are the dadoes of the shelf?",
        ),
    ),
    _sum("shelf", "k"),
)

BACK = Asked(
    "back", "Back", "width", ("back",), "x",
    (
        Misconception(
            "back-outside", lambda g: g["W"],
            "That is the outside width of the case.",
            "The back lies in grooves: how much of each side is left beside it?",
        ),
        Misconception(
            "back-inside", lambda g: g["W"] - 2 * g["t"],
            "That is the room between the sides, with no groove counted.",
            "The back goes on past the inner faces of the sides: how far?",
        ),
        Misconception(
            "back-one-groove", lambda g: g["W"] - 2 * g["t"] + g["b"],
            "That counts one groove of {b}.",
            "How many sides have a groove?",
        ),
    ),
    _sum("back, width", "b"),
)

TONGUE_SET = SetExercise(
    id="03-tongue-set",
    title="Assemble what you cut",
    question=(
        "A case for the chain tools is to be {W} wide, {H} high and {D} deep outside. Its sheet was sold as {T} and "
        "measures {t}. Top and bottom have tongues in dadoes {d} deep, with {e} left open under each tongue. The shelf "
        "goes to the floor of dadoes {k} deep, the back to the floor of grooves {b} deep. Give all that runs from "
        "side to side: what you give is put together dry."
    ),
    givens=_givens,
    case=_case,
    asked=(BOTTOM, SHELF, BACK),
    view=View(FROM_ABOVE, "shelf"),
    fits="That is a case {W} wide, and each joint in it is home.",
    hints=(
        "All three begin with what lies between the sides: {W} less two sides of {t}.",
        "Each board then gains at both ends what its own joint lets in.",
        "Under the tongues {e} stays open; shelf and back go to the floors of their cuts.",
    ),
    version=2,
)
