"""The exercises of the page of bridle, mortise and tenon: a mortise, a third, two lines, another's list, a frame."""

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FRONT
from shoplib.joints import joint
from shoplib.joints.bench_pair import Stock, stock_of
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception
from shoplib.lessons.frame_givens import (
    frame_height,
    frame_width,
    mortise_room,
    planed_board,
    rail_width,
    stile_width,
    tenon_length,
)
from shoplib.lessons.joint_frame import Corners, frame_of
from shoplib.lessons.joint_givens import CALIPER, short_or_long, too_much_or_too_little
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.measure import INCH, INCH_STYLE, share
from shoplib.model.solved import Cabinet

THICK = 3 * INCH // 4
"""The boards of a frame, where no sum asks how thick they are."""


def _tenoned(givens: Givens) -> dict[str, int]:
    """What is set for a tenon of the givens."""
    return {"length": givens["L"], "end gap": givens["e"]}


# Read a number off -------------------------------------------------------------------------------


def _mortise(givens: Givens) -> int:
    stock = stock_of(2 * INCH, width=3 * INCH, receives_width=4 * INCH)
    pair = joint("mortise and tenon").build(stock, _tenoned(givens))
    return pair.joints[0].depth


MORTISE = Exercise(
    id="j10-mortise", title="How deep the mortise", rung="read a number off",
    question=(
        "A tenon is {L} long. Its mortise does not go through: {e} is to stay open at its bottom, for glue. How deep "
        "is the mortise cut?"
    ),
    givens=lambda draw: [
        draw.tape("L", "tenon, length", inch=("1 1/64 in", "1 53/64 in", "1/64 in"), mm=("26 mm", "74 mm", "1 mm")),
        draw.pick("e", "open at the bottom of the mortise", inch=("1/16 in", "5/64 in", "3/32 in", "1/8 in"),
                  mm=("1.5 mm", "2 mm", "3 mm")),
    ],
    right=_mortise,
    misconceptions=(
        Misconception("no-room", lambda g: g["L"], "That lets the tenon strike the bottom.",
                      "Where does the glue go that the tenon drives before it?"),
        Misconception("taken-off", lambda g: g["L"] - g["e"], "That takes the room off.",
                      "Is the mortise deeper than its tenon, or less deep?"),
        Misconception("twice", lambda g: g["L"] + 2 * g["e"], "That leaves room at two ends.",
                      "A mortise that does not go through has how many bottoms?"),
    ),
    effect=too_much_or_too_little(
        "The mortise would be {by} too deep: so much less of the stile is left behind it.",
        "The mortise would be {by} too shallow: the shoulders stay open, or the glue has too little room.",
    ),
    fits="The shoulders close first, and {e} is left for glue.",
    hints=("Must the shoulders close first, or the end of the tenon?", "Deeper than {L}, by what stays open."),
    working=lambda g, say: (f"{g.texts['L']} + {g.texts['e']} = {say.length(_mortise(g))}",),
    tolerance=RULE,
)

# One step ----------------------------------------------------------------------------------------


def _third(givens: Givens) -> int:
    """The bridle's tongue, which is not rounded to a chisel."""
    return joint("bridle").usual(stock_of(givens["t"], kind="solid"))["tongue"]


THIRD = Exercise(
    id="j10-third", title="A third of what", rung="one step",
    question=(
        "A rail was sold as {T} and measures {t}. By the rule of three equal parts (Fairham, p. 39), how thick is its "
        "tongue, before you look for the chisel that comes nearest?"
    ),
    givens=planed_board,
    right=_third,
    misconceptions=(
        Misconception("nominal", lambda g: share(g["T"], 3, 1)[0], "That is a third of {T}, the name of the board.",
                      "Look at what the calipers read."),
        Misconception("half", lambda g: share(g["t"], 2, 1)[0], "That is half, as in a half lap.",
                      "How many parts are there: tongue, and on its two sides?"),
        Misconception("quarter", lambda g: share(g["t"], 4, 1)[0], "That is a quarter.",
                      "Count the parts: a cheek, the tongue, a cheek."),
    ),
    effect=too_much_or_too_little("The tongue would be {by} too thick: the cheeks of the slot are the weak place.",
                                  "The tongue would be {by} too thin: it is the weak place itself."),
    fits="Tongue and both cheeks are alike, so none of the three breaks first.",
    hints=("Cheek, tongue, cheek: three equal parts.", "Share what was measured, {t}."),
    working=lambda g, say: (
        f"{g.texts['t']} / 3 = {say.length(_third(g))}", f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)

# Two steps ---------------------------------------------------------------------------------------


def _lines_givens(draw: Draw) -> list[Given]:
    return [
        draw.pick("T", "boards, sold as", inch=("7/8 in",), mm=("22 mm",)),
        draw.reading("t", "boards, as measured", inch=("0.852 in", "0.866 in", "0.001 in"),
                     mm=("21.2 mm", "21.75 mm", "0.05 mm")),
        draw.pick("k", "chisel, and so tongue", inch=("1/4 in", "5/16 in"), mm=("6 mm", "8 mm")),
    ]


def _far_line(givens: Givens) -> int:
    """The far cheek of the tongue, as the bench cuts it, from the face side."""
    pair = joint("bridle").build(stock_of(givens["t"], kind="solid"), {"tongue": givens["k"], "fit": 0})
    before = pair.by_name["rail"].placement.to_world(pair.by_name["rail"].cuts[0].box)
    return before.size[1] + givens["k"]


LINES = Exercise(
    id="j10-lines", title="The far gauge line", rung="two steps",
    question=(
        "Boards sold as {T} measure {t}. The tongue of a bridle is as thick as the chisel, {k}, and stands in the "
        "middle. Both lines are gauged from the face side. How far from it is the farther one?"
    ),
    givens=_lines_givens,
    right=_far_line,
    misconceptions=(
        Misconception("near-line", lambda g: share(g["t"] - g["k"], 2, 1)[0], "That is the nearer line.",
                      "What lies between the two lines?"),
        Misconception("rest-not-halved", lambda g: g["t"] - g["k"], "That lays the tongue at the back.",
                      "How is what is left beside the tongue shared?"),
        Misconception("thirds", lambda g: share(2 * g["t"], 3, 1)[0], "That is two equal thirds.",
                      "How thick is the tongue that this chisel makes?"),
        Misconception("nominal", lambda g: share(g["T"] + g["k"], 2, 1)[0],
                      "That sum begins with {T}, the name of the boards.", "Look at what the calipers read."),
    ),
    effect=too_much_or_too_little("The tongue would stand {by} too far back, or be thicker than the slot.",
                                  "The tongue would stand {by} too far forward, or be thinner than the slot."),
    fits="Slot and tongue are gauged at one setting from their face sides, and the faces come flush.",
    hints=("What is left beside the tongue, on both its sides together?", "Half of that lies before the tongue.",
           "The farther line: what lies before the tongue, and the tongue."),
    working=lambda g, say: (
        f"beside the tongue = {g.texts['t']} - {g.texts['k']} = {say.length(g['t'] - g['k'])}",
        f"near line = {say.length(g['t'] - g['k'])} / 2 = {say.length(share(g['t'] - g['k'], 2, 1)[0])}",
        f"far line = {say.length(share(g['t'] - g['k'], 2, 1)[0])} + {g.texts['k']} = {say.length(_far_line(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)

# Find the slip -----------------------------------------------------------------------------------


def _list_givens(draw: Draw) -> list[Given]:
    wide, stile, long, room = frame_width(draw), stile_width(draw), tenon_length(draw), mortise_room(draw)
    listed = wide.value - 2 * stile.value + 2 * (long.value + room.value)
    return [wide, stile, long, room, draw.derived("R", "rail in Lotte's list", listed)]


def _rail(givens: Givens) -> int:
    stock = Stock(*(stock_of(THICK).enters,) * 2, width=3 * INCH, receives_width=givens["w"])
    gain = joint("mortise and tenon").allowance(stock, _tenoned(givens))
    return givens["W"] - 2 * givens["w"] + 2 * gain


LOTTES_RAIL = Exercise(
    id="j10-lottes-rail", title="Lotte's rails", rung="find the slip",
    question=(
        "Lotte's frame is {W} wide outside, its stiles {w} wide. The tenons of the rails are {L} long, and each "
        "mortise is {e} deeper than that. Her list has rails {R} long. Something is wrong with it. How long should "
        "they be?"
    ),
    givens=_list_givens,
    right=_rail,
    misconceptions=(
        Misconception("as-listed", lambda g: g["R"], "That is the length in Lotte's list.",
                      "Does a rail reach as far as its mortises are deep?"),
        Misconception("shoulders", lambda g: g["W"] - 2 * g["w"], "That is from shoulder to shoulder.",
                      "The rail goes on into both stiles: how far?"),
        Misconception("one-tenon", lambda g: g["W"] - 2 * g["w"] + g["L"], "That counts one tenon.",
                      "How many ends has a rail?"),
        Misconception("bridle", lambda g: g["W"], "That is as long as a rail with bridles, which runs over the stiles.",
                      "Do these tenons go right through?"),
    ),
    effect=short_or_long("The rail", "its shoulders stand that much too far apart, or its tenons strike",
                         "its tenons are short, or the frame is too narrow"),
    fits="Shoulder to shoulder, and a tenon at either end. Lotte had counted the room in the mortises as wood.",
    hints=("How far is it from shoulder to shoulder? The width less two stiles.", "At each end there is a tenon, {L}.",
           "What stays open in the mortise is no part of the rail."),
    working=lambda g, say: (
        f"shoulder to shoulder = {g.texts['W']} - 2 x {g.texts['w']} = {say.length(g['W'] - 2 * g['w'])}",
        f"rail = {say.length(g['W'] - 2 * g['w'])} + 2 x {g.texts['L']} = {say.length(_rail(g))}",
        f"Lotte's {g.texts['R']} counts {g.texts['e']} more at each end, which is to stay open.",
    ),
    tolerance=RULE,
)

# A whole set -------------------------------------------------------------------------------------


def _set_givens(draw: Draw) -> list[Given]:
    return [
        frame_width(draw), frame_height(draw), stile_width(draw), rail_width(draw), tenon_length(draw),
        mortise_room(draw),
    ]


def _frame(givens: Givens) -> Cabinet:
    return frame_of(
        Corners("top rail", "bridle", {"long": 0}), Corners("bottom rail", "mortise and tenon", _tenoned(givens)),
        wide=givens["W"], high=givens["H"], stile=givens["w"], rail=givens["r"], thick=THICK, style=INCH_STYLE,
    )


def _shoulders(givens: Givens) -> int:
    return givens["W"] - 2 * givens["w"]


TOP = Asked(
    "top", "Top rail", "length", ("top rail",), "x",
    (
        Misconception("top-shoulders", _shoulders, "That is from shoulder to shoulder.",
                      "How far do the tongues of a bridle go across the stile?"),
        Misconception("top-one", lambda g: g["W"] - g["w"], "That counts one tongue.", "How many ends has a rail?"),
        Misconception("top-tenoned", lambda g: _shoulders(g) + 2 * g["L"], "That gives the top rail tenons.",
                      "Which rail has tenons, and which has bridles?"),
    ),
    lambda g, say: (f"top rail: its tongues run across the stiles, so it is as long as the frame: {g.texts['W']}",),
)

BOTTOM = Asked(
    "bottom", "Bottom rail", "length", ("bottom rail",), "x",
    (
        Misconception("bottom-shoulders", _shoulders, "That is from shoulder to shoulder.",
                      "What goes on into the stiles?"),
        Misconception("bottom-one", lambda g: _shoulders(g) + g["L"], "That counts one tenon.",
                      "How many ends has a rail?"),
        Misconception("bottom-mortises", lambda g: _shoulders(g) + 2 * (g["L"] + g["e"]),
                      "That makes the tenons as long as their mortises are deep.",
                      "What is to stay open at the bottom of a mortise?"),
        Misconception("bottom-through", lambda g: g["W"], "That runs right across the stiles.",
                      "Which rail has tenons, and which has bridles?"),
    ),
    lambda g, say: (
        f"shoulder to shoulder = {g.texts['W']} - 2 x {g.texts['w']} = {say.length(_shoulders(g))}",
        f"bottom rail = {say.length(_shoulders(g))} + 2 x {g.texts['L']} = {say.length(_shoulders(g) + 2 * g['L'])}",
    ),
)

STILES = Asked(
    "stiles", "Stiles", "length", ("left stile", "right stile"), "z",
    (
        Misconception("stiles-opening", lambda g: g["H"] - 2 * g["r"], "That is the opening between the rails.",
                      "The stile goes on past both rails: how far?"),
        Misconception("stiles-under", lambda g: g["H"] - g["r"], "That ends the stile under the top rail.",
                      "The slot of a bridle is cut in the stile: how far up must it reach?"),
        Misconception("stiles-over", lambda g: g["H"] + g["r"], "That lets the stile stand past the frame.",
                      "Where does the slot of a bridle end?"),
    ),
    lambda g, say: (f"stiles: the fork takes the whole width of the top rail, so they are as long as the frame is "
                    f"high: {g.texts['H']}",),
)

FRAME_SET = SetExercise(
    id="j10-frame-set", title="Cut the frame with two joints",
    question=(
        "The frame for the parts board is {W} wide and {H} high outside, with stiles {w} wide and rails {r} wide. The "
        "top rail has bridles at its ends; the bottom rail has tenons {L} long, in mortises {e} deeper. All ends are "
        "flush. Give the three lengths: what you give is put together dry."
    ),
    givens=_set_givens, case=_frame, asked=(TOP, BOTTOM, STILES), view=View(FRONT, "top rail"), whole="frame",
    fits="The shoulders of both rails close on the stiles at the same width.",
    hints=("A bridle's tongue runs right across the stile: where does the top rail end?",
           "The bottom rail: from shoulder to shoulder, and a tenon at either end.",
           "The stiles have the slots of the bridles: they run the full height."),
)

EXERCISES = (MORTISE, THIRD, LINES, LOTTES_RAIL)
SETS = (FRAME_SET,)
