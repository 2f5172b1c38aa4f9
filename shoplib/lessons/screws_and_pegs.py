"""Two exercises of hardware layout: the longest screw from a box into its front, and even spaces between tools."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.hardware_effects import pegs_off, screw_off
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.usual_givens import sheet_as_sold
from shoplib.measure import INCH, MM, share
from shoplib.model.screw_room import room_for_screw
from shoplib.model.tool_row import tool_row

RULE = Twin(INCH // 64, MM // 5)
"""What an answer may be off and still be right: one step of a fine rule."""


# The longest screw -------------------------------------------------------------------------------


def _wood(draw: Draw) -> list[Given]:
    read = {"inch": ("0.469 in", "0.480 in", "0.001 in"), "mm": ("11.3 mm", "11.8 mm", "0.01 mm")}
    front = {"inch": ("0.690 in", "0.711 in", "0.001 in"), "mm": ("17.2 mm", "17.5 mm", "0.01 mm")}
    return [
        draw.pick("B", "box sheet, as sold", inch=("1/2 in",), mm=("12 mm",)),
        draw.reading("b", "box front, thinnest reading", **read),
        sheet_as_sold(draw), draw.reading("t", "front, thinnest reading", **front),
        draw.pick("e", "wood to stay before the point", inch=("1/8 in",), mm=("3 mm",)),
    ]


def _longest(givens: Givens) -> int:
    return room_for_screw(givens["b"], givens["t"], givens["e"])


SCREW = Exercise(
    id="06-screw",
    title="The longest screw",
    rung="two steps",
    question=(
        "From inside a box, a screw goes through the box front, sold as {B} and at its thinnest {b} by the calipers, "
        "into a front sold as {T} and at its thinnest {t}. {e} of wood is to stay before its point. How long may it "
        "be at most?"
    ),
    givens=_wood,
    right=_longest,
    misconceptions=(
        Misconception(
            "through", lambda g: g["b"] + g["t"],
            "That is all the wood there is.", "How much of it must the point not reach?",
        ),
        Misconception(
            "nominal", lambda g: g["B"] + g["T"] - g["e"],
            "That is the sum with the names of the sheets.", "Look at what the calipers read.",
        ),
        Misconception(
            "front-only", lambda g: g["t"] - g["e"],
            "That counts the front alone.", "What does the screw pass through before it reaches the front?",
        ),
        Misconception(
            "added", lambda g: g["b"] + g["t"] + g["e"],
            "That adds what should stay.", "Must the screw be longer or shorter than the wood?",
        ),
    ),
    effect=screw_off,
    fits="Take the next shorter length that is sold.",
    hints=(
        "What wood lies between the head of the screw and the face that is seen?",
        "Box front and front, each at its thinnest reading. Of that, {e} must stay whole.",
    ),
    working=lambda g, say: (
        f"{g.texts['B']} and {g.texts['T']} are only the names of the sheets.",
        f"wood = {g.texts['b']} + {g.texts['t']} = {say.exact(g['b'] + g['t'])}",
        f"longest screw = {say.exact(g['b'] + g['t'])} - {g.texts['e']} = {say.exact(_longest(g))}",
        "Of the lengths that are sold, take the longest that is not longer than this.",
    ),
    tolerance=RULE,
)


# Even spaces between tools -----------------------------------------------------------------------


TOOLS = ("cone wrench", "floor pump", "chain whip", "hub wrench")


def _tools(draw: Draw) -> list[Given]:
    sizes = (
        (("3/4 in", "1 1/4 in"), ("20 mm", "32 mm")), (("2 in", "3 in"), ("50 mm", "76 mm")),
        (("1 1/2 in", "2 1/4 in"), ("38 mm", "56 mm")), (("1 in", "1 1/2 in"), ("26 mm", "38 mm")),
    )
    rows = [
        draw.tape(f"w{number}", f"{tool}, width", inch=(*inch, "1/8 in"), mm=(*mm, "2 mm"))
        for number, (tool, (inch, mm)) in enumerate(zip(TOOLS, sizes, strict=True), 1)
    ]
    # A panel on which each space comes to a mark.
    space = draw.tape("space", "", inch=("2 1/16 in", "3 1/16 in", "1/8 in"), mm=("51.5 mm", "77.5 mm", "2 mm")).value
    whole = sum(row.value for row in rows) + 5 * space
    return [draw.derived("W", "panel, free width", whole), *rows]


def _widths(givens: Givens) -> list[int]:
    return [givens[f"w{number}"] for number in (1, 2, 3, 4)]


def _space(givens: Givens) -> int:
    return tool_row(givens["W"], _widths(givens), 1).space


def _left(givens: Givens) -> int:
    return givens["W"] - sum(_widths(givens))


def _pegs_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    together, widths = say.length(sum(_widths(givens))), " + ".join(text[f"w{number}"] for number in (1, 2, 3, 4))
    return (
        f"the tools together = {widths} = {together}",
        f"left for spaces = {text['W']} - {together} = {say.length(_left(givens))}",
        f"four tools have five spaces: {say.length(_left(givens))} / 5 = {say.length(_space(givens))}",
    )


PEGS = Exercise(
    id="06-pegs",
    title="Four tools on a panel",
    rung="two steps",
    question=(
        "Four tools are to hang side by side on a panel {W} wide: {w1}, {w2}, {w3} and {w4} wide. The spaces between "
        "them, and at both ends, are to be equal. How wide is each space?"
    ),
    givens=_tools,
    right=_space,
    misconceptions=(
        Misconception(
            "a-space-each", lambda g: share(_left(g), 4, 1)[0],
            "That counts as many spaces as tools.", "Draw the tools and count the spaces, from end to end.",
        ),
        Misconception(
            "between-only", lambda g: share(_left(g), 3, 1)[0],
            "That counts the spaces between the tools only.", "There is a space at each end too.",
        ),
        Misconception(
            "widths-left-out", lambda g: share(g["W"], 5, 1)[0],
            "That shares the whole panel, as if the tools had no width.", "What is left when the tools hang there?",
        ),
    ),
    effect=pegs_off,
    fits="Five equal spaces and four tools just fill the panel.",
    hints=(
        "First add up the tools, and take them off the panel.",
        "How many spaces are there, from end to end?",
        "One more than tools: share what is left by five.",
    ),
    working=_pegs_working,
    tolerance=RULE,
)
