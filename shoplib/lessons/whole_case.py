"""The last exercise of carcass sizing: all boards of a case with a back, put together as the learner cut them."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.lessons.exercise import Given, Givens, Misconception
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.small_case import small_case
from shoplib.lessons.usual_givens import case_width, dado_depth, rabbet_width, sheet_as_measured, sheet_as_sold
from shoplib.model.solved import Cabinet


def _givens(draw: Draw) -> list[Given]:
    high = draw.tape("H", "case, outside height", inch=("18 in", "26 in", "1/4 in"), mm=("450 mm", "650 mm", "5 mm"))
    deep = draw.tape("D", "case, outside depth", inch=("11 in", "16 in", "1/2 in"), mm=("280 mm", "400 mm", "10 mm"))
    joint, rabbet = dado_depth(draw), rabbet_width(draw)
    return [
        case_width(draw), high, deep, sheet_as_sold(draw), sheet_as_measured(draw),
        Given(joint.name, "rabbets at the ends of the sides, depth", joint.value, joint.text),
        Given(rabbet.name, "rabbets for the back, width", rabbet.value, rabbet.text),
    ]


def _case(givens: Givens) -> Cabinet:
    return small_case(
        givens["W"], givens["t"], height=givens["H"], depth=givens["D"], dado=givens["d"], rabbet=givens["b"]
    )


def _sum(name: str, outside: str, joint: str):
    """The working of a size that runs from the outside in: two sheets off, two joints on."""

    def lines(givens: Givens, say: Say) -> tuple[str, ...]:
        text = givens.texts
        sheets, joints = say.exact(2 * givens["t"]), say.exact(2 * givens[joint])
        comes_to = say.length(givens[outside] - 2 * givens["t"] + 2 * givens[joint])
        return (
            f"{text[outside]} - 2 x {text['t']} + 2 x {text[joint]} = {text[outside]} - {sheets} + {joints}",
            f"{name} = {comes_to}",
        )

    return lines


BOTTOM = Asked(
    "bottom", "Top and bottom", "length", ("bottom", "top"), "x",
    (
        Misconception(
            "bottom-nominal", lambda g: g["W"] - 2 * g["T"] + 2 * g["d"],
            "That is the sum with {T}, the name of the sheet.",
            "Look at what the calipers read.",
        ),
        Misconception(
            "bottom-no-joint", lambda g: g["W"] - 2 * g["t"],
            "That is the room between the sides, with no rabbet counted.",
            "Top and bottom go on into the sides: how far, and at how many ends?",
        ),
        Misconception(
            "bottom-one-joint", lambda g: g["W"] - 2 * g["t"] + g["d"],
            "That counts one rabbet of {d}.",
            "How many ends has the bottom?",
        ),
        Misconception(
            "bottom-outside", lambda g: g["W"],
            "That is the outside width of the whole case.",
            "How much of each side is left beyond the end of the bottom?",
        ),
    ),
    _sum("top and bottom", "W", "d"),
)

SIDES = Asked(
    "side", "Sides", "length", ("left side", "right side"), "z",
    (
        Misconception(
            "side-between", lambda g: g["H"] - 2 * g["t"],
            "That takes top and bottom off the height.",
            "Which boards run past which at the corner? Top and bottom lie in the ends of the sides.",
        ),
        Misconception(
            "side-like-bottom", lambda g: g["H"] - 2 * g["t"] + 2 * g["d"],
            "That is the sum for a board that lies between two others.",
            "Which boards run past which at the corner? Top and bottom lie in the ends of the sides.",
        ),
    ),
    lambda g, say: (
        "The sides run past top and bottom, from the floor to the top of the case.",
        f"sides = {say.length(g['H'])}",
    ),
)

BACK_WIDTH = Asked(
    "back_width", "Back", "width", ("back",), "x",
    (
        Misconception(
            "back-outside", lambda g: g["W"],
            "That is the outside width of the case.",
            "The back lies in the rabbets, not over the edges: how much of each side is left beside it?",
        ),
        Misconception(
            "back-inside", lambda g: g["W"] - 2 * g["t"],
            "That is the room between the sides, with no rabbet counted.",
            "The back goes on past the inner faces of the sides: how far?",
        ),
        Misconception(
            "back-one-rabbet", lambda g: g["W"] - 2 * g["t"] + g["b"],
            "That counts one rabbet of {b}.",
            "How many sides have a rabbet?",
        ),
    ),
    _sum("back, width", "W", "b"),
)

BACK_HEIGHT = Asked(
    "back_height", "Back", "height", ("back",), "z",
    (
        Misconception(
            "back-full-height", lambda g: g["H"],
            "That is the outside height of the case.",
            "The rabbet runs along top and bottom too: how much of each is left beside the back?",
        ),
        Misconception(
            "back-inside-height", lambda g: g["H"] - 2 * g["t"],
            "That is the room between top and bottom, with no rabbet counted.",
            "The back goes on past the inner faces of top and bottom: how far?",
        ),
        Misconception(
            "back-one-rabbet-high", lambda g: g["H"] - 2 * g["t"] + g["b"],
            "That counts one rabbet of {b}.",
            "Both top and bottom have a rabbet.",
        ),
    ),
    _sum("back, height", "H", "b"),
)

WHOLE_CASE = SetExercise(
    id="02-whole-case",
    title="Assemble what you cut",
    question=(
        "The case for the truing stand is to be {W} wide, {H} high and {D} deep outside. Its sheet was sold as "
        "{T}; the calipers give a mean of {t}. Each side has a rabbet {d} deep at both ends, and top and bottom "
        "lie in these. A rabbet {b} wide runs round the back edges of all four boards, and the back fills it. "
        "From front to back all four are {D}. Cut them and the back: what you give is put together dry."
    ),
    givens=_givens,
    case=_case,
    asked=(BOTTOM, SIDES, BACK_WIDTH, BACK_HEIGHT),
    view=View(FRONT, "back"),
    fits="That is a case of {W} by {H}, and its back squares it.",
    hints=(
        "Draw one corner first: the side runs past, and the bottom goes {d} into it.",
        "From left to right, begin with {W} and take off two sides of {t}. What goes into the rabbets comes on again.",
        "The back does the same both ways, with its own rabbets of {b}: once from {W}, once from {H}.",
    ),
    version=2,
)
