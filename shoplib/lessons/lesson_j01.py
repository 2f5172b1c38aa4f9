"""The exercises of the screwed butt's own page, up the ladder: holes, reach, screws in a row, a cleat, a whole set."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.joints import joint
from shoplib.joints.bench_pair import Pair, stock_of
from shoplib.joints.butt import reach
from shoplib.lessons.case_sides import SIDES, butted
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.hardware_effects import screw_off
from shoplib.lessons.joint_case import joint_case
from shoplib.lessons.joint_givens import too_much_or_too_little
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.usual_givens import case_width, sheet_as_measured, sheet_as_sold
from shoplib.measure import INCH, read_length, share
from shoplib.model.screw_room import room_for_screw
from shoplib.model.solved import Cabinet

DRILLED = Twin(read_length("0.005 in"), read_length("0.1 mm"))
"""What a hole may be off in its depth and still be right."""

HOLD = too_much_or_too_little(
    "You would count on {by} of hold that is not there.", "The screw holds in {by} more wood than you count on.",
)
"""What comes of counting on a screw to reach farther than it does, or less far."""


def _side_and_screw(draw: Draw) -> list[Given]:
    return [
        sheet_as_sold(draw), sheet_as_measured(draw),
        draw.pick("L", "screw, length", inch=("1 1/2 in", "1 3/4 in", "2 in"), mm=("40 mm", "45 mm", "50 mm")),
    ]


def _pair(givens: Givens) -> Pair:
    return joint("butt").build(stock_of(givens["t"]), {"screw": givens["L"]})


def _through(givens: Givens) -> int:
    """How deep the hole in the side of the pair is."""
    return _pair(givens).by_name["side"].cuts[0].depth


def _reach(givens: Givens) -> int:
    return reach(stock_of(givens["t"]), {"screw": givens["L"]})


# Read a number off -------------------------------------------------------------------------------

WHOLE_SCREW = Misconception("whole-screw", lambda g: g["L"], "That is the whole screw.",
                              "The question is about one of the two boards.")

THROUGH = Exercise(
    id="j01-through", title="Where the wide hole ends", rung="read a number off",
    question=(
        "A screw {L} long goes through the side into the end of a bottom. The side was sold as {T} and measures {t}. "
        "The clearance hole goes right through it and no farther. For which depth do you set the collar on the bit?"
    ),
    givens=_side_and_screw,
    right=_through,
    misconceptions=(
        Misconception("nominal", lambda g: g["T"], "That is {T}, the name of the sheet.",
                      "Look at what the calipers read."),
        Misconception("pilot", lambda g: g["L"] - g["t"], "That is what the screw has left for the bottom.",
                      "In which board must the screw slip through?"),
        WHOLE_SCREW,
    ),
    effect=too_much_or_too_little(
        "The wide hole would run on {by} into the bottom, just where the thread is to bite.",
        "The last {by} of the side would stay undrilled: the thread grips it, and nothing draws the boards together.",
    ),
    fits="The screw slips through the side, and bites in the bottom alone.",
    hints=("Which board does the screw only slip through?",
           "The hole is as deep as that board is thick: by its name, or as read?"),
    working=lambda g, say: (
        f"The side measures {g.texts['t']}; {g.texts['T']} is its name.",
        f"clearance hole = thickness of the side, as measured = {say.length(_through(g))}",
        f"The screw, {g.texts['L']} long, goes on into the bottom.",
    ),
    tolerance=DRILLED, caliper=True,
)

# One step ----------------------------------------------------------------------------------------

REACH = Exercise(
    id="j01-reach", title="What holds in the bottom", rung="one step",
    question=(
        "A side was sold as {T} and measures {t}. A screw {L} long goes square through it into the end of a bottom, "
        "its head flush. How far does it reach into the bottom?"
    ),
    givens=_side_and_screw,
    right=_reach,
    misconceptions=(
        Misconception("nominal", lambda g: g["L"] - g["T"], "That takes {T} off, the name of the sheet.",
                      "Look at what the calipers read."),
        Misconception("side", lambda g: g["t"], "That is what lies in the side.", "What is left of {L} beyond it?"),
        WHOLE_SCREW,
    ),
    effect=HOLD,
    fits="The pilot hole ends before that: it is 2/3 of the thread deep.",
    hints=("The head is flush with the outside: {L} begins there.", "How much of it does the side take up?"),
    working=lambda g, say: (
        f"reach = {g.texts['L']} - {g.texts['t']} = {say.length(_reach(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=DRILLED, caliper=True,
)

# Two steps ---------------------------------------------------------------------------------------


def _row_givens(draw: Draw) -> list[Given]:
    return [
        draw.tape("w", "bottom, from front to back", inch=("11 9/16 in", "15 9/16 in", "1/8 in"),
                  mm=("281 mm", "391 mm", "5 mm")),
        draw.pick("e", "first and last screw from the edge", inch=("1 in", "1 1/4 in", "1 1/2 in"),
                  mm=("25 mm", "30 mm", "40 mm")),
        draw.count("n", "", 3, 5),
    ]


def _apart(givens: Givens) -> int:
    stock = stock_of(3 * INCH // 4, width=givens["w"])
    first, second, *_ = joint("butt").build(stock, {"count": givens["n"], "edge": givens["e"]}).by_name["side"].cuts
    return second.centre[1] - first.centre[1]


def _spaced(long: int, spaces: int) -> int:
    return share(long, spaces, 1)[0]


ROW = Exercise(
    id="j01-row", title="Screws in a row", rung="two steps",
    question=(
        "A bottom is {w} wide from front to back, and screwed along its end with {n} screws: the first and the last "
        "{e} from an edge, all the same distance apart. How far is it from one screw to the next?"
    ),
    givens=_row_givens,
    right=_apart,
    misconceptions=(
        Misconception("screws-for-spaces", lambda g: _spaced(g["w"] - 2 * g["e"], g["n"]),
                      "That shares by {n}, the number of screws.", "How many spaces lie between {n} screws?"),
        Misconception("no-edges", lambda g: _spaced(g["w"], g["n"] - 1), "That shares the whole width.",
                      "Between which two screws do the spaces lie?"),
        Misconception("one-edge", lambda g: _spaced(g["w"] - g["e"], g["n"] - 1), "That takes one edge off.",
                      "The first screw stands off one edge, and the last?"),
    ),
    effect=too_much_or_too_little(
        "Each space would be {by} too wide, and it adds up: the last screw runs out to the edge, and splits it.",
        "Each space would be {by} too narrow, and it adds up: the last screw stands too far in, and its edge gapes.",
    ),
    fits="Step it off with dividers from the first screw: the last comes out {e} from its edge.",
    hints=("Draw the row. What lies between the first screw and the last?", "{n} screws have one space fewer."),
    working=lambda g, say: (
        f"first to last = {g.texts['w']} - 2 x {g.texts['e']} = {say.length(g['w'] - 2 * g['e'])}",
        f"{g['n']} screws have {g['n'] - 1} spaces",
        f"each = {say.exact(g['w'] - 2 * g['e'])} / {g['n'] - 1} = {say.length(_apart(g))}",
    ),
    tolerance=RULE,
)

# Find the slip -----------------------------------------------------------------------------------


def _cleat_givens(draw: Draw) -> list[Given]:
    read = {"inch": ("0.690 in", "0.711 in", "0.001 in"), "mm": ("17.2 mm", "17.5 mm", "0.01 mm")}
    sold = sheet_as_sold(draw)
    return [
        sold,
        draw.reading("s", "cleat, thinnest reading", **read), draw.reading("t", "shelf, thinnest reading", **read),
        draw.pick("e", "wood to stay over the point", inch=("1/8 in",), mm=("3 mm",)),
        draw.derived("L", "screws in Vera's list", 2 * sold.value),
    ]


def _longest(givens: Givens) -> int:
    return room_for_screw(givens["s"], givens["t"], givens["e"])


VERAS_CLEAT = Exercise(
    id="j01-veras-cleat", title="Vera's cleat", rung="find the slip",
    question=(
        "Vera screws a cleat flat under a shelf, face to face, both of a sheet sold as {T}. At their thinnest the "
        "cleat reads {s} and the shelf {t}; {e} of wood is to stay over the point. Her list says: screws {L} long. "
        "Something is wrong with it. How long may they be at most?"
    ),
    givens=_cleat_givens,
    right=_longest,
    misconceptions=(
        Misconception("as-listed", lambda g: 2 * g["T"], "That is the length in Vera's list: the sheet's name, twice.",
                      "What do the calipers read, and what is to stay over the point?"),
        Misconception("through", lambda g: g["s"] + g["t"], "That is all the wood there is.",
                      "How much of it must the point not reach?"),
        Misconception("shelf-only", lambda g: g["t"] - g["e"], "That counts the shelf alone.",
                      "What does the screw pass through before it reaches the shelf?"),
        Misconception("spare-twice", lambda g: g["s"] + g["t"] - 2 * g["e"], "That leaves {e} twice.",
                      "The head may lie flush with the cleat."),
    ),
    effect=screw_off,
    fits="Vera's would have stood out of the shelf. Take the next shorter length that is sold.",
    hints=("Which wood lies between the head and the top of the shelf?", "Both thinnest readings, less {e}."),
    working=lambda g, say: (
        f"wood = {g.texts['s']} + {g.texts['t']} = {say.exact(g['s'] + g['t'])}",
        f"longest screw = {say.exact(g['s'] + g['t'])} - {g.texts['e']} = {say.exact(_longest(g))}",
        f"on the rule: {say.length(_longest(g))}",
        f"Vera's {g.texts['L']} are 2 x {g.texts['T']}, the name of the sheet, with nothing over the point.",
    ),
    tolerance=RULE,
)

# A whole set -------------------------------------------------------------------------------------


def _set_givens(draw: Draw) -> list[Given]:
    return [
        case_width(draw),
        draw.tape("H", "case, outside height", inch=("20 in", "30 in", "1/2 in"), mm=("500 mm", "760 mm", "10 mm")),
        sheet_as_sold(draw), sheet_as_measured(draw),
    ]


def _case(givens: Givens) -> Cabinet:
    return joint_case((givens["t"],), width=givens["W"], height=givens["H"], bays=2)


def _upright(givens: Givens) -> int:
    return givens["H"] - 2 * givens["t"]


BOTTOM = butted("bottom", "Top and bottom", ("bottom", "top"), Misconception(
    "bottom-outside", lambda g: g["W"], "That is the whole width of the case.",
    "Which boards run past the others at the corners?",
))

DIVIDER = Asked(
    "divider", "Divider", "length", ("divider 1",), "z",
    (
        Misconception("divider-full", lambda g: g["H"], "That is the whole height of the case.",
                      "Between which boards does the divider stand?"),
        Misconception("divider-one", lambda g: g["H"] - g["t"], "That takes one board off the height.",
                      "What lies under the divider, and what over it?"),
        Misconception("divider-nominal", lambda g: g["H"] - 2 * g["T"],
                      "That is the sum with {T}, the name of the sheet.", "Look at what the calipers read."),
    ),
    lambda g, say: (f"divider = {g.texts['H']} - 2 x {g.texts['t']} = {say.length(_upright(g))}",),
)

RACK_SET = SetExercise(
    id="j01-rack-set", title="Cut the case for the floor pumps",
    question=(
        "A case for floor pumps is {W} wide and {H} high outside, all of it butted and screwed. Its sheet was sold as "
        "{T} and measures {t}. The sides run the full height; top and bottom stand between them, and a divider stands "
        "between top and bottom. Give the three lengths: what you give is put together dry."
    ),
    givens=_set_givens, case=_case, asked=(BOTTOM, DIVIDER, SIDES), view=View(FRONT, "divider 1"),
    fits="That is a case {W} wide and {H} high. No end gained anything, so no sum but the thickness is in it.",
    hints=("A butted end gains nothing.", "Top and bottom: {W} less two sides of {t}.",
           "The divider: {H} less the two boards that it stands between."),
)

EXERCISES = (THROUGH, REACH, ROW, VERAS_CLEAT)
SETS = (RACK_SET,)
