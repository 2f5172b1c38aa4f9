"""The exercises of the page on pocket screws, up the ladder: rail, reach, collar, another's screws, a whole set."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.joints import joint
from shoplib.joints.bench_pair import stock_of
from shoplib.joints.pocket_screws import along_the_drill
from shoplib.lessons.case_sides import between_sides, butted
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.hardware_effects import screw_off
from shoplib.lessons.joint_case import joint_case
from shoplib.lessons.joint_givens import between, short_or_long, too_much_or_too_little
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.lesson_j01 import DRILLED, HOLD
from shoplib.lessons.numbers import Draw
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.usual_givens import case_width, sheet_as_measured, sheet_as_sold
from shoplib.measure import INCH, MM, to_step
from shoplib.model.screw_room import room_for_screw
from shoplib.model.solved import Cabinet

POCKETS = joint("pocket screws")


def _web(draw: Draw) -> Given:
    """`b`, what stays before the head of the screw."""
    sizes = {"inch": ("5/16 in", "27/64 in", "1/64 in"), "mm": ("8 mm", "10.5 mm", "0.1 mm")}
    return draw.tape("b", "web, along the screw", **sizes)


def _kept(givens: Givens) -> int:
    """The web as the bench cuts it in that board."""
    return POCKETS.build(stock_of(givens["t"]), {"web": givens["b"]}).values["web"]


# Read a number off -------------------------------------------------------------------------------

RAIL = Exercise(
    id="j02-rail", title="A rail between two stiles", rung="read a number off",
    question=(
        "Two stiles of a face frame, each {w} wide, stand {I} apart. The rail between them gets the pockets in its two "
        "ends, and is screwed to both edges. How long is it cut?"
    ),
    givens=lambda draw: [
        between(draw, "between the stiles"),
        draw.pick("w", "stile, width", inch=("1 1/2 in", "1 3/4 in", "2 in"), mm=("40 mm", "45 mm", "50 mm")),
    ],
    right=lambda g: g["I"] + 2 * POCKETS.allowance(stock_of(INCH)),
    misconceptions=(
        Misconception("outside", lambda g: g["I"] + 2 * g["w"], "That is the frame over both stiles.",
                      "Which pieces run past the others at its corners?"),
        Misconception("one-stile", lambda g: g["I"] + g["w"], "That counts one stile in.",
                      "The rail stands between the stiles."),
        Misconception("taken-off", lambda g: g["I"] - 2 * g["w"], "That takes the stiles off.",
                      "Is that room measured over the stiles, or between them?"),
    ),
    effect=short_or_long("The rail", "it holds the stiles apart, and the frame comes out too wide for its case",
                         "its ends stand off the stiles, and the screws pull the frame narrower or leave a gap"),
    fits="A pocket takes nothing off the length and adds nothing.",
    hints=("What does a butted end gain?", "The ends of the rail stand against the edges of the stiles."),
    working=lambda g, say: (
        f"rail = {g.texts['I']} + 2 x {say.length(0)} = {say.length(g['I'])}",
        f"The stiles, {g.texts['w']} wide, stand beside it.",
    ),
    tolerance=RULE,
)

# One step ----------------------------------------------------------------------------------------

REACH = Exercise(
    id="j02-reach", title="Past the end of the rail", rung="one step",
    question=(
        "A rail measures {t}. Its pockets are drilled so that {b} of wood, the web, stays before the head of the "
        "screw, which is {L} long. How far does it reach past the end of the rail into the stile, along the screw?"
    ),
    givens=lambda draw: [
        sheet_as_measured(draw), _web(draw),
        draw.pick("L", "screw, length", inch=("1 1/4 in", "1 1/2 in"), mm=("30 mm", "35 mm", "40 mm")),
    ],
    right=lambda g: g["L"] - _kept(g),
    misconceptions=(
        Misconception("whole", lambda g: g["L"], "That is the whole screw.", "Where does its head stop?"),
        Misconception("board", lambda g: g["L"] - g["t"], "That takes the whole board off.",
                      "The head lies in the pocket: how much wood is before it?"),
        Misconception("web", lambda g: g["b"], "That is the web itself.", "What is left of {L} beyond it?"),
    ),
    effect=HOLD,
    fits="Square to the edge it reaches a little less deep: the screw leans.",
    hints=("The head bears on the step at the bottom of the pocket.", "From there to the end of the rail lies {b}."),
    working=lambda g, say: (
        f"reach = {g.texts['L']} - {g.texts['b']} = {say.length(g['L'] - _kept(g))}",
        f"The sheet, {g.texts['t']}, stands in no sum: the head lies inside it.",
    ),
    tolerance=RULE, coarse=Twin(INCH // 4, 5 * MM),
)

# Two steps ---------------------------------------------------------------------------------------


def _run(draw: Draw, name: str, what: str, sheet: Given) -> Given:
    """How far the drill runs from face to end in a sheet, as calipers would read it."""
    stock, step = stock_of(sheet.value), INCH // 1000 if draw.unit == "in" else MM // 100
    return draw.derived_reading(name, what, to_step(along_the_drill(stock, POCKETS.usual(stock)), step))


def _collar_givens(draw: Draw) -> list[Given]:
    sold, sheet = sheet_as_sold(draw), sheet_as_measured(draw)
    return [
        sold, sheet,
        draw.pick("k", "guide, along the drill", inch=("1 1/4 in", "1 1/2 in", "1 3/4 in"),
                  mm=("30 mm", "35 mm", "40 mm")),
        _run(draw, "A", "from face to end, in the sheet as sold", sold),
        _run(draw, "a", "from face to end, in the sheet as measured", sheet),
        draw.pick("b", "web, to stay", inch=("5/16 in", "11/32 in", "3/8 in"), mm=("8 mm", "9 mm", "10 mm")),
    ]


def _collar(givens: Givens) -> int:
    return givens["k"] + givens["a"] - givens["b"]


COLLAR = Exercise(
    id="j02-collar", title="Where the collar goes", rung="two steps",
    question=(
        "A guide of your own making leads the drill for {k}, then it enters the board at 15 degrees. From face to end "
        "it would run {A} in a sheet of {T}, and {a} in yours, which measures {t}. {b} is to stay before the step of "
        "the bit. How far behind the step do you fix the collar that stops at the guide?"
    ),
    givens=_collar_givens,
    right=_collar,
    misconceptions=(
        Misconception("nominal", lambda g: g["k"] + g["A"] - g["b"], "That is the setting for {T}, the sheet's name.",
                      "How far does the drill run in your own sheet?"),
        Misconception("no-web", lambda g: g["k"] + g["a"], "That lets the step come out at the end.",
                      "What is to stay before it?"),
        Misconception("no-guide", lambda g: g["a"] - g["b"], "That is the pocket alone.",
                      "What does the bit pass through before it meets the board?"),
        Misconception("added", lambda g: g["k"] + g["a"] + g["b"], "That adds the web.",
                      "Does the step stop before the end, or beyond it?"),
    ),
    effect=too_much_or_too_little(
        "The drill would go {by} too deep: so much less wood stays before the head, which may burst it.",
        "The pocket would end {by} too early: the screw reaches so much less far into the side.",
    ),
    fits="Try it in an offcut of the same sheet, and measure what is left at the end.",
    hints=("How deep is the pocket, along the drill? {b} of its way stays.",
           "Before the board, the bit is in the guide."),
    working=lambda g, say: (
        f"pocket = {g.texts['a']} - {g.texts['b']} = {say.length(g['a'] - g['b'])}",
        f"collar = {g.texts['k']} + {say.length(g['a'] - g['b'])} = {say.length(_collar(g))}",
        f"{g.texts['A']} and {g.texts['T']} belong to the name; {g.texts['a']} is for a sheet of {g.texts['t']}.",
    ),
    tolerance=DRILLED, caliper=True,
)

# Find the slip -----------------------------------------------------------------------------------


def _jonas_givens(draw: Draw) -> list[Given]:
    read = {"inch": ("0.690 in", "0.711 in", "0.001 in"), "mm": ("17.2 mm", "17.5 mm", "0.05 mm")}
    shelf = draw.reading("t", "shelf, thinnest reading", **read)
    side = draw.reading("s", "side, thinnest reading", **read)
    spare = draw.pick("e", "wood to stay before the point", inch=("1/8 in",), mm=("3 mm",))
    return [
        sheet_as_sold(draw), shelf, side, _web(draw), spare,
        draw.derived_reading("L", "longest screw in Jonas's list", shelf.value + side.value - spare.value),
    ]


def _longest(givens: Givens) -> int:
    return room_for_screw(_kept(givens), givens["s"], givens["e"])


JONAS_SCREWS = Exercise(
    id="j02-jonas-screws", title="Jonas's screws", rung="find the slip",
    question=(
        "Jonas joins a shelf to a side with pocket screws, both of a sheet sold as {T}. At their thinnest the shelf "
        "reads {t} and the side {s}; the web is {b}, and {e} is to stay before the point. His list says: screws up to "
        "{L}. Something is wrong with it. How long may they be, counted as if they went in straight?"
    ),
    givens=_jonas_givens,
    right=_longest,
    misconceptions=(
        Misconception("as-listed", lambda g: g["t"] + g["s"] - g["e"],
                      "That is Jonas's: all of the shelf and all of the side.", "Where does the head stop?"),
        Misconception("through", lambda g: g["b"] + g["s"], "That is all the wood before the point's way out.",
                      "How much of it must the point not reach?"),
        Misconception("no-web", lambda g: g["s"] - g["e"], "That counts the side alone.",
                      "What does the screw pass through before it reaches the side?"),
        Misconception("nominal", lambda g: g["b"] + g["T"] - g["e"],
                      "That takes {T}, the name of the sheet, for the side.", "Look at what the calipers read."),
    ),
    effect=screw_off,
    fits="Take the next shorter length that is sold. The screw leans, so its point stops a little sooner: to be safe.",
    hints=("From the head on: first the web, then the side.", "Of the side {e} must stay whole."),
    working=lambda g, say: (
        f"wood before the head = {g.texts['b']} + {g.texts['s']} = {say.length(g['b'] + g['s'])}",
        f"longest screw = {say.length(g['b'] + g['s'])} - {g.texts['e']} = {say.length(_longest(g))}",
        f"Jonas's {g.texts['L']} count all of the shelf, {g.texts['t']}; the name {g.texts['T']} stands in no sum.",
    ),
    tolerance=DRILLED, caliper=True,
)

# A whole set -------------------------------------------------------------------------------------


def _set_givens(draw: Draw) -> list[Given]:
    return [
        case_width(draw),
        draw.tape("H", "stand, outside height", inch=("30 in", "36 in", "1/2 in"), mm=("760 mm", "900 mm", "10 mm")),
        sheet_as_sold(draw), sheet_as_measured(draw),
    ]


def _case(givens: Givens) -> Cabinet:
    return joint_case((givens["t"],), width=givens["W"], height=givens["H"], top="over")


TOP = Asked(
    "top", "Top", "length", ("top",), "x",
    (
        Misconception("top-between", between_sides, "That lets the top in between the sides.",
                      "Do the sides run up beside the top here, or under it?"),
        Misconception("top-one", lambda g: g["W"] - g["t"], "That takes one side off.",
                      "Over which boards does the top lie?"),
    ),
    lambda g, say: (f"top = the whole width = {g.texts['W']}",),
)

UNDER = Asked(
    "sides", "Sides", "length", ("left side", "right side"), "z",
    (
        Misconception("sides-full", lambda g: g["H"], "That is the whole height of the stand.",
                      "What lies on the upper ends of the sides?"),
        Misconception("sides-both", lambda g: g["H"] - 2 * g["t"], "That stands the sides on the bottom as well.",
                      "Do the sides stand on the bottom, or beside it?"),
    ),
    lambda g, say: (f"sides = {g.texts['H']} - {g.texts['t']} = {say.length(g['H'] - g['t'])}",),
)

BOTTOM = butted("bottom", "Bottom", ("bottom",), Misconception(
    "bottom-outside", lambda g: g["W"], "That is the whole width of the stand.",
    "Is the bottom over the sides' ends, as the top is, or between them?",
))

STAND_SET = SetExercise(
    id="j02-stand-set", title="Cut the stand for the parts washer",
    question=(
        "A stand is {W} wide and {H} high outside. Its sheet was sold as {T} and measures {t}. The top lies over the "
        "ends of the sides, drawn down by screws from pockets in the sides; the bottom stands between the sides, with "
        "pockets in its underside. Give the three lengths: what you give is put together dry."
    ),
    givens=_set_givens, case=_case, asked=(TOP, UNDER, BOTTOM), view=View(FRONT, "bottom"),
    fits="That is a stand {W} wide and {H} high, and no head shows from outside.",
    hints=("The board with the pockets is the one whose end stands against the other.",
           "The top runs past both sides; the sides end under it.", "The bottom: {W} less two sides of {t}."),
)

EXERCISES = (RAIL, REACH, COLLAR, JONAS_SCREWS)
SETS = (STAND_SET,)
