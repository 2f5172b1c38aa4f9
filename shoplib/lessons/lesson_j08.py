"""The exercises of the half laps' page: notch, depth, a test crossing, another's list, a whole frame."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.joints import joint
from shoplib.joints.bench_pair import stock_of
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception
from shoplib.lessons.frame_givens import frame_width, planed_board, rail_width, stile_width
from shoplib.lessons.joint_frame import Corners, frame_of
from shoplib.lessons.joint_givens import CALIPER, short_or_long, too_much_or_too_little
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.measure import INCH, INCH_STYLE, share
from shoplib.model.solved import Cabinet

THICK = 3 * INCH // 4
"""The boards of a frame, where no sum asks how thick they are."""


def _half(ticks: int) -> int:
    return share(ticks, 2, 1)[0]


# Read a number off -------------------------------------------------------------------------------


def _notch(givens: Givens) -> int:
    pair = joint("cross lap").build(stock_of(THICK, width=givens["r"], receives_width=givens["w"]), {"fit": 0})
    notch = pair.by_name["rail"].cuts[0]
    return notch.high[0] - notch.low[0]


NOTCH = Exercise(
    id="j08-notch", title="The notch in the rail", rung="read a number off",
    question=(
        "A rail {r} wide crosses an upright {w} wide in a cross lap, {f} from the rail's left end. How wide is the "
        "notch in the rail?"
    ),
    givens=lambda draw: [
        rail_width(draw), draw.tape("w", "upright, width", inch=("1 9/16 in", "1 15/16 in", "1/16 in"),
                                    mm=("41 mm", "49 mm", "1 mm")),
        draw.tape("f", "notch, from the left end", inch=("8 in", "14 in", "1/8 in"), mm=("200 mm", "350 mm", "5 mm")),
    ],
    right=_notch,
    misconceptions=(
        Misconception("own-width", lambda g: g["r"], "That is how wide the rail itself is.",
                      "Which board has to go into the notch of the rail?"),
        Misconception("half", lambda g: _half(g["w"]), "That is half of the upright.",
                      "It is the depth that is halved; the width is not."),
        Misconception("to-the-far-wall", lambda g: g["f"] + g["w"], "That is where the notch ends, from the left end.",
                      "How far is it from one wall of the notch to the other?"),
    ),
    effect=too_much_or_too_little("The notch would be {by} too wide: the upright rocks in it.",
                                  "The notch would be {by} too narrow: the upright does not go in."),
    fits="The upright fills it from wall to wall. Lay the upright itself on, and knife along both its edges.",
    hints=("Draw the crossing from the front.", "What lies in the notch of the rail? Take its width."),
    working=lambda g, say: (
        f"notch in the rail = width of the upright = {g.texts['w']}",
        f"far wall, from the left end = {g.texts['f']} + {g.texts['w']} = {say.length(g['f'] + g['w'])}",
        f"The rail's own {g.texts['r']} is the notch in the upright.",
    ),
    tolerance=RULE,
)

# One step ----------------------------------------------------------------------------------------


def _lap(givens: Givens) -> int:
    """What each board keeps, and so what each loses."""
    return joint("half lap").usual(stock_of(givens["t"], kind="solid"))["lap"]


def _both_off(_givens: Givens, off: int, say: Say) -> str:
    by, twice = say.amount(off), say.amount(2 * off)
    if off > 0:
        return f"Each lap would be cut {by} too deep: together the two are {twice} thinner than the boards."
    return f"Each lap would be cut {by} too shallow: together the two are {twice} thicker than the boards."


DEEP = Exercise(
    id="j08-deep", title="Half of what", rung="one step",
    question="Both boards of a corner were sold as {T}; calipers read {t} on both. How deep is each lap cut?",
    givens=planed_board,
    right=_lap,
    misconceptions=(
        Misconception("nominal", lambda g: _half(g["T"]), "That is half of {T}, the name of the boards.",
                      "Look at what the calipers read."),
        Misconception("two-thirds", lambda g: share(2 * g["t"], 3, 1)[0],
                      "That is two thirds, as deep as some cut a rabbet.", "The mate keeps as much as this one does."),
        Misconception("third", lambda g: share(g["t"], 3, 1)[0], "That is a third, as where three boards cross.",
                      "How many boards lie on each other here?"),
    ),
    effect=_both_off,
    fits="Two such halves make one board again: both faces are flush.",
    hints=("Two boards lie in the thickness of one.", "Take half of what was measured, {t}."),
    working=lambda g, say: (
        f"{g.texts['t']} / 2 = {say.length(_lap(g))}", f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)

# Two steps ---------------------------------------------------------------------------------------


def _crossing_givens(draw: Draw) -> list[Given]:
    sold, read = planed_board(draw)
    over = draw.reading("o", "", inch=("0.010 in", "0.018 in", "0.001 in"), mm=("0.3 mm", "0.5 mm", "0.05 mm"))
    return [
        sold, read, draw.derived_reading("c", "test crossing, as measured", read.value + 2 * over.value),
        draw.reading("d", "scale of the saw at that cut", inch=("0.360 in", "0.380 in", "0.005 in"),
                     mm=("9 mm", "9.4 mm", "0.1 mm")),
    ]


def _scale(givens: Givens) -> int:
    """Half of the crossing is what each offcut kept; the lap is what it should keep."""
    return givens["d"] + _half(givens["c"]) - _lap(givens)


RAISE = Exercise(
    id="j08-raise", title="From the test crossing to the saw", rung="two steps",
    question=(
        "Two offcuts of the boards, sold as {T} and measured {t}, were both lapped at one setting: the scale of the "
        "saw stood at {d}. Laid together, the crossing measures {c}. To what is the scale set now?"
    ),
    givens=_crossing_givens,
    right=_scale,
    misconceptions=(
        Misconception("not-halved", lambda g: g["d"] + g["c"] - g["t"], "That raises the cutter by all that the "
                      "crossing is too thick.", "The setting cuts both boards. How much has each to lose?"),
        Misconception("wrong-way", lambda g: g["d"] - _half(g["c"]) + _lap(g), "That lowers the cutter.",
                      "The crossing is too thick: have the laps to be cut deeper, or less deep?"),
        Misconception("nominal", lambda g: g["d"] + _half(g["c"] - g["T"]),
                      "That sum begins with {T}, the name of the boards.",
                      "How thick should the crossing be? Look at what the calipers read."),
        Misconception("half-board", _lap, "That is half of the board, which this scale does not cut.",
                      "What did the saw cut when its scale stood at {d}? Only the difference can be trusted."),
    ),
    effect=lambda g, off, say: (
        f"The cutter would stand {say.amount(off)} too {'high' if off > 0 else 'low'}, and the next crossing come "
        f"{say.amount(2 * off)} too {'thin' if off > 0 else 'thick'}."
    ),
    fits="Both boards lose half of what was too much, and the faces come flush. Cut one more crossing to see it.",
    hints=("By how much is the crossing thicker than one board?",
           "Both boards are cut at the new setting: each loses half of that."),
    working=lambda g, say: (
        f"too thick = {g.texts['c']} - {g.texts['t']} = {say.length(g['c'] - g['t'])}",
        f"each board = {say.length(g['c'] - g['t'])} / 2 = {say.length(_half(g['c'] - g['t']))}",
        f"scale = {g.texts['d']} + {say.length(_half(g['c'] - g['t']))} = {say.length(_scale(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)

# Find the slip -----------------------------------------------------------------------------------


def _list_givens(draw: Draw) -> list[Given]:
    wide, stile = frame_width(draw), stile_width(draw)
    long = draw.pick("e", "each end left long, to be planed flush", inch=("1/16 in", "1/8 in"),
                     mm=("1.5 mm", "2 mm", "3 mm"))
    listed = draw.derived("L", "rail in Hanne's list", wide.value - stile.value + 2 * long.value)
    return [wide, stile, long, listed]


def _rail(givens: Givens) -> int:
    gain = joint("half lap").allowance(stock_of(THICK, receives_width=givens["w"]), {"long": givens["e"]})
    return givens["W"] - 2 * givens["w"] + 2 * gain


HANNES_RAILS = Exercise(
    id="j08-hannes-rails", title="Hanne's rails", rung="find the slip",
    question=(
        "Hanne's frame is to be {W} wide outside, its stiles {w} wide, half laps at all four corners. Every end is "
        "left {e} long and planed off later. Her list has rails {L} long. Something is wrong with it. How long should "
        "they be cut?"
    ),
    givens=_list_givens,
    right=_rail,
    misconceptions=(
        Misconception("as-listed", lambda g: g["L"], "That is the length in Hanne's list.",
                      "Over how many stiles does a rail run?"),
        Misconception("between", lambda g: g["W"] - 2 * g["w"] + 2 * g["e"], "That ends the rail between the stiles.",
                      "A lap lies on the stile: where does the rail end?"),
        Misconception("not-long", lambda g: g["W"], "That is the frame's width, with nothing to plane off.",
                      "What is left long at each end?"),
        Misconception("long-once", lambda g: g["W"] + g["e"], "That leaves one end long.", "How many ends has a rail?"),
    ),
    effect=short_or_long("The rail", "there is more to plane off than was meant", "it ends before the frame does"),
    fits="It runs over both stiles, and leaves {e} to plane off at either end. Hanne had counted one stile.",
    hints=("Where does a lapped rail end: at the stile's near edge, or at its far one?",
           "From end to end it is as long as the frame is wide; then what is left long, twice."),
    working=lambda g, say: (
        f"gain at each end = {g.texts['w']} + {g.texts['e']} = {say.length(g['w'] + g['e'])}",
        f"rail = {g.texts['W']} - 2 x {g.texts['w']} + 2 x {say.length(g['w'] + g['e'])} = {say.length(_rail(g))}",
        f"Hanne's {g.texts['L']} runs over one stile only.",
    ),
    tolerance=RULE,
)

# A whole set -------------------------------------------------------------------------------------


def _set_givens(draw: Draw) -> list[Given]:
    return [
        draw.tape("I", "opening, width", inch=("16 in", "28 in", "1/8 in"), mm=("400 mm", "700 mm", "4 mm")),
        draw.tape("J", "opening, height", inch=("22 in", "36 in", "1/4 in"), mm=("560 mm", "900 mm", "5 mm")),
        stile_width(draw), rail_width(draw),
    ]


def _frame(givens: Givens) -> Cabinet:
    lapped = (Corners(f"{place} rail", "half lap", {"long": 0}) for place in ("top", "bottom"))
    return frame_of(
        *lapped, wide=givens["I"] + 2 * givens["w"], high=givens["J"] + 2 * givens["r"], stile=givens["w"],
        rail=givens["r"], thick=THICK, style=INCH_STYLE,
    )


RAILS = Asked(
    "rails", "Rails", "length", ("top rail", "bottom rail"), "x",
    (
        Misconception("rails-opening", lambda g: g["I"], "That is the opening alone.",
                      "The rail goes on over the stiles: how far?"),
        Misconception("rails-one", lambda g: g["I"] + g["w"], "That laps over one stile.",
                      "How many stiles does a rail meet?"),
        Misconception("rails-own-width", lambda g: g["I"] + 2 * g["r"], "That counts the rail's own width at each end.",
                      "What does the rail lie on at its ends? Take its width."),
    ),
    lambda g, say: (f"rails = {g.texts['I']} + 2 x {g.texts['w']} = {say.length(g['I'] + 2 * g['w'])}",),
)

STILES = Asked(
    "stiles", "Stiles", "length", ("left stile", "right stile"), "z",
    (
        Misconception("stiles-opening", lambda g: g["J"], "That is the opening alone.",
                      "The stile goes on under the rails: how far?"),
        Misconception("stiles-one", lambda g: g["J"] + g["r"], "That laps under one rail.",
                      "How many rails does a stile meet?"),
        Misconception("stiles-own-width", lambda g: g["J"] + 2 * g["w"],
                      "That counts the stile's own width at each end.",
                      "What lies on the stile at its ends? Take its width."),
    ),
    lambda g, say: (f"stiles = {g.texts['J']} + 2 x {g.texts['r']} = {say.length(g['J'] + 2 * g['r'])}",),
)

FRAME_SET = SetExercise(
    id="j08-frame-set", title="Cut the frame for the parts board",
    question=(
        "The parts board shows through an opening {I} wide and {J} high. Round it goes a frame of stiles {w} wide and "
        "rails {r} wide, half laps at the corners, all ends flush. Give both lengths: what you give is put together "
        "dry."
    ),
    givens=_set_givens, case=_frame, asked=(RAILS, STILES), view=View(FRONT, "top rail"), whole="frame",
    fits="Every lap is as long as its mate is wide, and the opening is {I} by {J}.",
    hints=("A rail is the opening and what it lies on at both ends.", "So is a stile: what lies on it at both ends?",
           "A half lap takes no more off and adds no more than that: all boards are as long as the frame outside."),
)

EXERCISES = (NOTCH, DEEP, RAISE, HANNES_RAILS)
SETS = (FRAME_SET,)
