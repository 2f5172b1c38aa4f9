"""The exercises of groove and tongue, up the ladder: wall, width, place, bottom, another's list, a drawer box."""

from shoplib.joints import joint
from shoplib.joints.bench_pair import Stock, stock_of
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.joint_box import (
    BOTTOM_DEPTH,
    BOTTOM_WIDTH,
    SEEN,
    box_givens,
    fronts_asked,
    joined_box,
    sides_asked,
)
from shoplib.lessons.joint_givens import (
    CALIPER,
    between,
    close_fit,
    cut_depth,
    end_gap,
    short_or_long,
    three_readings,
    too_much_or_too_little,
)
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import SetExercise
from shoplib.lessons.usual_givens import sheet_as_measured, sheet_as_sold
from shoplib.measure import INCH, MM, share
from shoplib.model.project import JointChoice
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

# Read a number off -------------------------------------------------------------------------------


def _upper(givens: Givens) -> int:
    stock = stock_of(givens["w"], INCH // 2, receives_width=givens["H"])
    side = joint("groove").build(stock, {"up": givens["u"], "fit": 0, "end gap": 0, "depth": INCH // 4}).by_name["side"]
    return side.cuts[0].high[1]


UPPER = Exercise(
    id="j05-upper", title="The other wall of the groove", rung="read a number off",
    question=(
        "A drawer side is {H} high. The groove for its bottom begins {u} above the lower edge and is {w} wide. A blade "
        "in passes cuts one wall, then the other. How far above the lower edge is the upper wall?"
    ),
    givens=lambda draw: [
        draw.tape("H", "drawer side, height", inch=("3 1/16 in", "7 1/16 in", "1/16 in"),
                  mm=("81 mm", "181 mm", "1 mm")),
        draw.pick("u", "groove, above the lower edge", inch=("1/4 in", "5/16 in", "3/8 in", "1/2 in"),
                  mm=("6 mm", "8 mm", "10 mm", "12 mm")),
        draw.pick("w", "groove, width", inch=("7/32 in", "9/32 in"), mm=("5.3 mm", "5.7 mm", "6.2 mm")),
    ],
    right=_upper,
    misconceptions=(
        Misconception("lower", lambda g: g["u"], "That is the lower wall.", "The groove has two walls, {w} apart."),
        Misconception("middle", lambda g: g["u"] + share(g["w"], 2, 1)[0], "That is the middle of the groove.",
                      "How far is it from there to the wall?"),
        Misconception("wrong-edge", lambda g: g["H"] - g["u"] - g["w"], "That is measured from the upper edge.",
                      "The fence is at the lower edge, for all four boards."),
    ),
    effect=too_much_or_too_little(
        "The groove would be {by} too wide: the bottom rattles in it.",
        "The groove would be {by} too narrow: the bottom does not go in.",
    ),
    fits="Both walls are set out from the one edge, so that the groove runs through at one height round the box.",
    hints=("Draw the end of the side, lower edge down.", "From the lower edge up: first {u} of wood, then the groove."),
    working=lambda g, say: (
        f"{g.texts['u']} + {g.texts['w']} = {say.length(_upper(g))}",
        f"The height {g.texts['H']} stands in no sum.",
    ),
    tolerance=RULE, coarse=Twin(INCH // 8, 3 * MM),
)

# One step ----------------------------------------------------------------------------------------


def _thin_sheet(draw: Draw) -> list[Given]:
    ranges = {"inch": ("0.198 in", "0.216 in", "0.001 in"), "mm": ("5.2 mm", "5.6 mm", "0.05 mm")}
    mean = draw.reading("t", "sheet, mean of the readings", **ranges)
    return [
        draw.pick("T", "thin sheet, sold as", inch=("1/4 in",), mm=("6 mm",)), *three_readings(draw, mean),
        close_fit(draw),
    ]


def _wide(givens: Givens) -> int:
    thin = Sheet("bottom", "plywood", givens["t"], (givens["thin"], givens["t"], givens["thick"]))
    pair = joint("groove").build(Stock(thin, Sheet("side", "plywood", INCH // 2)), {"fit": givens["f"]})
    cut = pair.by_name["side"].cuts[0]
    return cut.high[1] - cut.low[1]


WIDTH = Exercise(
    id="j05-width", title="A groove for this bottom", rung="one step",
    question=(
        "The thin sheet for drawer bottoms was sold as {T}; calipers read {thin}, {t} and {thick}. The fit is {f}. How "
        "wide are the grooves cut?"
    ),
    givens=_thin_sheet,
    right=_wide,
    misconceptions=(
        Misconception("nominal", lambda g: g["T"], "That is the name of the sheet.", "Look at what the calipers read."),
        Misconception("mean", lambda g: g["t"] + g["f"], "That is the mean of the readings, and the fit.",
                      "Which reading must still go in?"),
        Misconception("no-fit", lambda g: g["thick"], "That is as wide as the thickest reading.",
                      "A bottom has to slide in: what is the fit for?"),
        Misconception("thinnest", lambda g: g["thin"] + g["f"], "That begins with the thinnest reading.",
                      "Which reading must still go in?"),
    ),
    effect=too_much_or_too_little(
        "The groove would be {by} too wide: the bottom buzzes whenever the drawer runs.",
        "The groove would be {by} too narrow: the thick corner of the bottom stays out.",
    ),
    fits="Every bottom out of that sheet slides in.",
    hints=("The groove takes the thickest reading.", "To that the fit is added: {f}."),
    working=lambda g, say: (
        f"Of {g.texts['thin']}, {g.texts['t']} and {g.texts['thick']} the thickest is {g.texts['thick']}.",
        f"{g.texts['thick']} + {g.texts['f']} = {say.length(_wide(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)


def _from_end(givens: Givens) -> int:
    return joint("tongue").build(stock_of(givens["t"], INCH), {"tongue": givens["k"]}).by_name["side"].cuts[0].low[0]


PLACE = Exercise(
    id="j05-place", title="Where the dado for a tongue begins", rung="one step",
    question=(
        "The top of a case gets a tongue {k} thick at each end, flush with its inner face. Its sheet was sold as {T} "
        "and measures {t}. Outside, top and sides are to be flush. How far from the end of the side does the dado "
        "for the tongue begin?"
    ),
    givens=lambda draw: [
        sheet_as_sold(draw), sheet_as_measured(draw),
        draw.reading("k", "tongue, thickness", inch=("0.248 in", "0.254 in", "0.001 in"),
                     mm=("6 mm", "6.4 mm", "0.05 mm")),
    ],
    right=_from_end,
    misconceptions=(
        Misconception("whole", lambda g: g["t"], "That is where the top ends, with its tongue.",
                      "The dado begins where the tongue begins."),
        Misconception("tongue", lambda g: g["k"], "That is the thickness of the tongue.",
                      "What of the top lies outside its tongue?"),
        Misconception("nominal", lambda g: g["T"] - g["k"], "That is the sum with {T}, the name of the sheet.",
                      "Look at what the calipers read."),
        Misconception("middle", lambda g: share(g["t"] - g["k"], 2, 1)[0], "That puts the tongue into the middle.",
                      "It has one shoulder, all of it on the outside."),
    ),
    effect=too_much_or_too_little(
        "The dado would begin {by} too far in: the end of the side stands proud of the top.",
        "The dado would begin {by} too near the end: the top stands proud, and the short grain is thinner.",
    ),
    fits="The corner closes flush, and the short grain is all that it can be.",
    hints=("Draw the corner: the tongue at the inner face, its shoulder outside.",
           "From the end of the side to the tongue it is the shoulder: {t} less the tongue."),
    working=lambda g, say: (
        f"{g.texts['t']} - {g.texts['k']} = {say.length(_from_end(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)

# Two steps ---------------------------------------------------------------------------------------


def _in_groove(givens: Givens) -> int:
    return joint("groove").allowance(stock_of(INCH // 4, INCH // 2), {"depth": givens["q"], "end gap": givens["m"]})


BOTTOM_WIDE = Exercise(
    id="j05-bottom", title="A bottom with room to move", rung="two steps",
    question=(
        "Two drawer sides stand {I} apart, inside to inside. The bottom, of solid wood, runs in grooves {q} deep, and "
        "{m} is to stay free before each of its edges. How wide is the bottom?"
    ),
    givens=lambda draw: [
        draw.tape("I", "between the sides", inch=("12 1/32 in", "20 1/32 in", "1/8 in"),
                  mm=("301 mm", "501 mm", "5 mm")),
        draw.pick("q", "grooves, depth", inch=("3/16 in", "1/4 in"), mm=("5 mm", "6 mm")),
        draw.pick("m", "free before each edge", inch=("1/32 in", "1/16 in"), mm=("1 mm", "1.5 mm", "2 mm")),
    ],
    right=lambda g: g["I"] + 2 * _in_groove(g),
    misconceptions=(
        Misconception("no-room", lambda g: g["I"] + 2 * g["q"], "That fills both grooves to their floors.",
                      "What is to stay free before each edge?"),
        Misconception("one-groove", lambda g: g["I"] + g["q"] - g["m"], "That counts one groove.",
                      "How many edges run in a groove?"),
        Misconception("no-groove", lambda g: g["I"], "That is the room between the sides.",
                      "The bottom goes on into its grooves."),
        Misconception("room-added", lambda g: g["I"] + 2 * (g["q"] + g["m"]), "That adds what is to stay free.",
                      "Does room to move make the bottom wider or narrower?"),
    ),
    effect=too_much_or_too_little(
        "The bottom would be {by} too wide: it has so much less room in damp months, or pushes the sides out.",
        "The bottom would be {by} too narrow: it stands by so much less in its grooves, both together.",
    ),
    fits="It stands in both grooves and may still move.",
    hints=("What does the bottom gain at one edge? The groove, less what stays free.", "Two edges gain that over {I}."),
    working=lambda g, say: (
        f"gain at each edge = {g.texts['q']} - {g.texts['m']} = {say.exact(_in_groove(g))}",
        f"{g.texts['I']} + 2 x {say.exact(_in_groove(g))} = {say.length(g['I'] + 2 * _in_groove(g))}",
    ),
    tolerance=RULE,
)

# Find the slip -----------------------------------------------------------------------------------


def _tongue(givens: Givens) -> int:
    """How long a tongue is: what the board gains at that end."""
    return joint("tongue").allowance(stock_of(INCH), {"depth": givens["d"], "end gap": givens["e"]})


def _hers(givens: Givens) -> int:
    return givens["I"] + 2 * (givens["d"] + givens["e"])


def _list_givens(draw: Draw) -> list[Given]:
    inside = between(draw, "between the sides")
    deep, gap = cut_depth(draw, "dadoes, depth"), end_gap(draw, "gap before each tongue")
    return [inside, deep, gap, draw.derived("L", "top in Marit's list", inside.value + 2 * (deep.value + gap.value))]


MARITS_TOP = Exercise(
    id="j05-marits-top", title="Marit's top", rung="find the slip",
    question=(
        "Marit's list has a top {L} long, tongues and all, for sides that stand {I} apart. Her dadoes are {d} deep, "
        "and {e} is to stay open before the end of each tongue. Something is wrong with it. How long should the top be?"
    ),
    givens=_list_givens,
    right=lambda g: g["I"] + 2 * _tongue(g),
    misconceptions=(
        Misconception("as-listed", _hers, "That is the length in Marit's list.",
                      "How long is a tongue that leaves {e} open?"),
        Misconception("no-gap", lambda g: g["I"] + 2 * g["d"], "That makes the tongues as long as the dadoes are deep.",
                      "What is to stay open before each tongue?"),
        Misconception("one-tongue", lambda g: g["I"] + _tongue(g), "That counts one tongue.",
                      "How many ends has the top?"),
        Misconception("shoulders", lambda g: g["I"], "That is the top from shoulder to shoulder.",
                      "The board is cut with its tongues on it."),
    ),
    effect=short_or_long(
        "The top", "its tongues strike the floors of the dadoes sooner, and the shoulders stay open",
        "its shoulders stand off the sides, or the case is drawn in by so much",
    ),
    fits="Marit added the gap. Hers would have struck both floors before the shoulders closed.",
    hints=("Work the top out once more, from {I}.", "How long is one tongue, when {e} of {d} stays open?"),
    working=lambda g, say: (
        f"tongue = {g.texts['d']} - {g.texts['e']} = {say.exact(_tongue(g))}",
        f"top = {g.texts['I']} + 2 x {say.exact(_tongue(g))} = {say.length(g['I'] + 2 * _tongue(g))}",
        f"Marit's {g.texts['L']} has the gap added, not taken off.",
    ),
    tolerance=RULE,
)

# A whole set -------------------------------------------------------------------------------------


def _box(givens: Givens) -> Cabinet:
    tongue = 5 * MM if givens["metric"] else 3 * INCH // 16
    return joined_box(givens, JointChoice("tongue", givens["d"], end_gap=givens["g"], tongue=tongue))


def _long(givens: Givens) -> int:
    return givens["B"] - 2 * givens["s"] + 2 * (givens["d"] - givens["g"])


def _front_lines(givens: Givens, say: Say) -> tuple[str, ...]:
    text, tongue = givens.texts, say.exact(givens["d"] - givens["g"])
    return (
        f"tongue = {text['d']} - {text['g']} = {tongue}",
        f"{text['B']} - 2 x {text['s']} + 2 x {tongue} = {say.length(_long(givens))}",
    )


FRONT = fronts_asked(
    (
        Misconception("front-outside", lambda g: g["B"], "That is the outside width of the box.",
                      "Front and back end inside the sides."),
        Misconception("front-shoulders", lambda g: g["B"] - 2 * g["s"], "That is the front from shoulder to shoulder.",
                      "The board is cut with its tongues on it."),
        Misconception("front-one-tongue", lambda g: g["B"] - 2 * g["s"] + g["d"] - g["g"], "That counts one tongue.",
                      "How many ends has the front?"),
        Misconception("front-no-gap", lambda g: _long(g) + 2 * g["g"],
                      "That makes the tongues as long as the dadoes are deep.",
                      "What is to stay open before each tongue?"),
    ),
    _front_lines,
)

SIDES = sides_asked(
    (
        Misconception("side-between", lambda g: g["L"] - 2 * g["s"], "That stands the sides between front and back.",
                      "Which boards have the dadoes, and run past the others?"),
        Misconception("side-tongues", lambda g: g["L"] - 2 * g["s"] + 2 * (g["d"] - g["g"]),
                      "That gives the sides the tongues.", "Which boards have the dadoes here?"),
    ),
    lambda g, say: ("The sides have the dadoes and run past front and back.", say.length(g["L"])),
)

BOX_SET = SetExercise(
    id="j05-box-set", title="A drawer box with tongues",
    question=(
        "The box for the patch kits is {B} wide and {L} deep outside, of stock that measures {s}. Front and back have "
        "tongues at both ends, in dadoes {d} deep in the sides; {g} stays open before each tongue. All four boards "
        "have a groove {q} deep for the bottom, which is made {e} smaller each way than the grooves would let it be. "
        "What you give is put together dry."
    ),
    givens=lambda draw: [
        *box_givens(draw),
        draw.pick("d", "dadoes for the tongues, depth", inch=("3/16 in", "7/32 in"), mm=("5 mm", "5.5 mm")),
        draw.pick("g", "gap before each tongue", inch=("1/32 in",), mm=("0.5 mm", "1 mm")),
    ],
    case=_box, asked=(SIDES, FRONT, BOTTOM_WIDTH, BOTTOM_DEPTH), view=SEEN,
    fits="Its corners close at their shoulders, and the bottom has room all round.",
    hints=(
        "The sides have the dadoes: they are as long as the box is deep.",
        "Front and back: two sides of {s} off the width, two tongues on. A tongue is the dado less {g}.",
        "The bottom, both ways: from outside to outside, two boards of {s} off, two grooves of {q} on, {e} off.",
    ),
)

EXERCISES = (UPPER, WIDTH, PLACE, BOTTOM_WIDE, MARITS_TOP)
SETS = (BOX_SET,)
