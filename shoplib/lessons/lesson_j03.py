"""The exercises of the rabbet's own page, up the ladder: shoulder, width, a back, another's bottom, a whole set."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.joints import joint
from shoplib.joints.bench_pair import Stock
from shoplib.lessons.case_sides import SIDES, between_sides, butted
from shoplib.lessons.effects import back_off
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception
from shoplib.lessons.joint_case import across, joint_case
from shoplib.lessons.joint_givens import (
    CALIPER,
    close_fit,
    short_or_long,
    three_readings,
    too_much_or_too_little,
)
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.small_case import back_width, small_case
from shoplib.lessons.usual_givens import case_width, rabbet_width, sheet_as_measured, sheet_as_sold
from shoplib.live.joint_project import with_one_shelf
from shoplib.measure import INCH
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

RABBET = joint("rabbet")


def _deep(draw: Draw) -> Given:
    """`d`, less than half of the thinnest side, so that no other rule comes to the same."""
    return draw.pick("d", "rabbets, depth", inch=("1/4 in", "9/32 in", "5/16 in"), mm=("6 mm", "7 mm", "8 mm"))


def _stock(givens: Givens, *readings: str) -> Stock:
    """A bottom with these readings, and a side of the same sheet."""
    read = tuple(givens[name] for name in readings)
    return Stock(Sheet("bottom", "plywood", read[0], read), Sheet("side", "plywood", givens["t"]))


# Read a number off -------------------------------------------------------------------------------


def _rabbet(givens: Givens, fit: int, *readings: str) -> int:
    """How wide the rabbet for a bottom with these readings is, from its shoulder to the end of the side."""
    rabbet = RABBET.build(_stock(givens, *readings), {"depth": INCH // 4, "fit": fit}).by_name["side"].cuts[0]
    return rabbet.high[0] - rabbet.low[0]


WIDE_OR_NARROW = too_much_or_too_little(
    "The rabbet would be {by} too wide: the end of the side stands out past the bottom, to be planed off.",
    "The rabbet would be {by} too narrow: the bottom stands proud of the ends of the sides.",
)

SHOULDER = Exercise(
    id="j03-shoulder", title="Where the shoulder is knifed", rung="read a number off",
    question=(
        "A rabbet {d} deep is cut by hand across the lower end of a side. The bottom that stands in it was sold as {T} "
        "and measures {t}. How far from the end do you knife the line of the shoulder?"
    ),
    givens=lambda draw: [sheet_as_sold(draw), sheet_as_measured(draw), _deep(draw)],
    right=lambda g: _rabbet(g, 0, "t"),
    misconceptions=(
        Misconception("nominal", lambda g: g["T"], "That is {T}, the name of the sheet.",
                      "Look at what the calipers read."),
        Misconception("depth", lambda g: g["d"], "That is how deep the rabbet goes into the side.",
                      "The line lies on the face. What stands between it and the end?"),
        Misconception("tongue", lambda g: g["t"] - g["d"], "That is about the tongue, the wood beside the step.",
                      "The line lies on the face. What stands between it and the end?"),
    ),
    effect=WIDE_OR_NARROW,
    fits="Better still: stand the bottom on the side, flush with its end, and knife along it.",
    hints=("A rabbet is as wide as its mate is thick.", "By its name, or as it was read?"),
    working=lambda g, say: (
        f"width of the rabbet = thickness of its mate = {say.length(_rabbet(g, 0, 't'))}",
        f"Its depth, {g.texts['d']}, is gauged on the end; the name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)

# One step ----------------------------------------------------------------------------------------


def _width_givens(draw: Draw) -> list[Given]:
    return [
        sheet_as_sold(draw), *three_readings(draw, sheet_as_measured(draw)), close_fit(draw),
        draw.pick("c", "stack, all of it", inch=("13/16 in",), mm=("20 mm",)),
    ]


def _width(givens: Givens) -> int:
    return _rabbet(givens, givens["f"], "thin", "t", "thick")


WIDTH = Exercise(
    id="j03-width", title="What stands out of the fence", rung="one step",
    question=(
        "The sheet of the bottom was sold as {T}; calipers read {thin}, {t} and {thick}. The fit is {f}. The stack, "
        "{c} wide, is wider than the rabbet: part of it runs in the wooden face of the fence. How much stands out?"
    ),
    givens=_width_givens,
    right=_width,
    misconceptions=(
        Misconception("stack", lambda g: g["c"], "That is the whole stack.", "How wide is the rabbet to be?"),
        Misconception("nominal", lambda g: g["T"], "That is {T}, the name of the sheet.",
                      "Look at what the calipers read."),
        Misconception("mean", lambda g: g["t"] + g["f"], "That goes by the mean of the readings.",
                      "Which reading must still go in?"),
        Misconception("no-fit", lambda g: g["thick"], "That is the thickest reading, with no fit.",
                      "What comes on top of it?"),
    ),
    effect=WIDE_OR_NARROW,
    fits="Try a piece of the bottom in the test cut: no step either way.",
    hints=("The rabbet is as wide as the bottom is thick: at which place?", "The fit comes on top of that reading."),
    working=lambda g, say: (
        f"Of {g.texts['thin']}, {g.texts['t']} and {g.texts['thick']} the thickest is {g.texts['thick']}.",
        f"rabbet = {g.texts['thick']} + {g.texts['f']} = {say.length(_width(g))}",
        f"The rest of the {g.texts['c']} runs in the wooden face; the name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)

# Two steps ---------------------------------------------------------------------------------------


def _back(givens: Givens) -> int:
    return back_width(small_case(givens["W"], givens["t"], rabbet=givens["b"]))


BACK = Exercise(
    id="j03-back", title="A back for the tyre rack", rung="two steps",
    question=(
        "The tyre rack is {W} wide outside. Its sides were sold as {T} and measure {t}. The back lies in rabbets along "
        "their rear edges, which go {b} into each side. How wide is the back?"
    ),
    givens=lambda draw: [case_width(draw), sheet_as_sold(draw), sheet_as_measured(draw), rabbet_width(draw)],
    right=_back,
    misconceptions=(
        Misconception("outside", lambda g: g["W"], "That covers the edges of the sides.",
                      "Where does the wood of the side begin beside the rabbet?"),
        Misconception("inside", between_sides, "That is what lies between the sides.",
                      "The back goes on into both rabbets."),
        Misconception("one-rabbet", lambda g: between_sides(g) + g["b"], "That counts one rabbet.",
                      "How many sides has the rack?"),
        Misconception("nominal", lambda g: g["W"] - 2 * g["T"] + 2 * g["b"],
                      "That is the sum with {T}, the name of the sheet.", "Look at what the calipers read."),
    ),
    effect=back_off,
    fits="It reaches from cheek to cheek, and squares the case when it goes in.",
    hints=("First what lies between the sides.", "Then what the back gains at each side: {b}."),
    working=lambda g, say: (
        f"between the sides = {g.texts['W']} - 2 x {g.texts['t']} = {say.exact(between_sides(g))}",
        f"back = {say.exact(between_sides(g))} + 2 x {g.texts['b']} = {say.length(_back(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=RULE,
)

# Find the slip -----------------------------------------------------------------------------------


def _rabbeted(givens: Givens) -> int:
    return across(_case(givens), "bottom")


def _case(givens: Givens) -> Cabinet:
    return with_one_shelf(joint_case(
        (givens["t"],), width=givens["W"], height=givens.get("H", 24 * INCH), rabbet=givens["d"], shelf=True,
    ))


def _marit_givens(draw: Draw) -> list[Given]:
    wide, sheet = case_width(draw), sheet_as_measured(draw)
    listed = draw.derived_reading("L", "bottom in Marit's list", wide.value - sheet.value)
    return [wide, sheet_as_sold(draw), sheet, _deep(draw), listed]


MARITS_BOTTOM = Exercise(
    id="j03-marits-bottom", title="Marit's bottom", rung="find the slip",
    question=(
        "Marit has read that a board in rabbets is one thickness shorter than the case. Her case is {W} wide outside, "
        "of a sheet sold as {T} that measures {t}; her rabbets are {d} deep, and her list has a bottom {L} long. "
        "Something is wrong with it. How long should it be?"
    ),
    givens=_marit_givens,
    right=_rabbeted,
    misconceptions=(
        Misconception("as-listed", lambda g: g["W"] - g["t"], "That is the length in Marit's list.",
                      "For which depth of the rabbets would her rule be right?"),
        Misconception("butted", between_sides, "That is what lies between the sides.",
                      "The bottom goes on into both rabbets."),
        Misconception("one-end", lambda g: between_sides(g) + g["d"], "That counts one rabbet.",
                      "How many ends has the bottom?"),
        Misconception("nominal", lambda g: g["W"] - 2 * g["T"] + 2 * g["d"],
                      "That is the sum with {T}, the name of the sheet.", "Look at what the calipers read."),
    ),
    effect=short_or_long("The bottom", "it strikes both cheeks, and the case comes out wider than it is drawn",
                         "it stops short of the cheeks, or draws the case narrower"),
    fits="Marit's rule holds only where the rabbets go to half of the side.",
    hints=("Work it out once more, from {W}.", "Two sides come off; each end gains {d}."),
    working=lambda g, say: (
        f"between the sides = {g.texts['W']} - 2 x {g.texts['t']} = {say.exact(between_sides(g))}",
        f"bottom = {say.exact(between_sides(g))} + 2 x {g.texts['d']} = {say.length(_rabbeted(g))}",
        f"Marit's {g.texts['L']} would need rabbets to half of the side; the name {g.texts['T']} stands in no sum.",
    ),
    tolerance=RULE,
)

# A whole set -------------------------------------------------------------------------------------


def _set_givens(draw: Draw) -> list[Given]:
    return [
        case_width(draw),
        draw.tape("H", "case, outside height", inch=("20 in", "30 in", "1/2 in"), mm=("500 mm", "760 mm", "10 mm")),
        sheet_as_sold(draw), sheet_as_measured(draw), _deep(draw),
    ]


CORNERS = Asked(
    "bottom", "Top and bottom", "length", ("bottom", "top"), "x",
    (
        Misconception("bottom-butted", between_sides, "That is what lies between the sides, with no rabbet counted.",
                      "Top and bottom go on into the sides: how far?"),
        Misconception("bottom-one-end", lambda g: between_sides(g) + g["d"], "That counts one rabbet of {d}.",
                      "How many ends has a bottom?"),
        Misconception("bottom-nominal", lambda g: g["W"] - 2 * g["T"] + 2 * g["d"],
                      "That is the sum with {T}, the name of the sheet.", "Look at what the calipers read."),
    ),
    lambda g, say: (
        f"top and bottom = {say.exact(between_sides(g))} + 2 x {g.texts['d']} "
        f"= {say.length(between_sides(g) + 2 * g['d'])}",
    ),
)

SHELF = butted("shelf", "Shelf", ("shelf",), Misconception(
    "shelf-rabbets", lambda g: between_sides(g) + 2 * g["d"], "That lets the shelf into the sides.",
    "Which boards stand in the rabbets, and which only stands between?",
))

CASE_SET = SetExercise(
    id="j03-case-set", title="Cut the case for the repair stands",
    question=(
        "The case for the repair stands is {W} wide and {H} high outside. Its sheet was sold as {T} and measures {t}. "
        "The sides run the full height; top and bottom stand in rabbets {d} deep across their ends, and a shelf is "
        "butted between the sides. Give the three lengths: what you give is put together dry."
    ),
    givens=_set_givens, case=_case, asked=(CORNERS, SHELF, SIDES), view=View(FRONT, "shelf"),
    fits="That is a case {W} wide, top and bottom home in their rabbets.",
    hints=("All three across begin with {W} less two sides of {t}.",
           "Top and bottom gain {d} at each end; the shelf gains nothing.", "The sides run the full height."),
)

EXERCISES = (SHOULDER, WIDTH, BACK, MARITS_BOTTOM)
SETS = (CASE_SET,)
