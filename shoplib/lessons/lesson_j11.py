"""The exercises of the dovetail's page, up the ladder: gauge, slope, tails and pins, another's list, a whole box."""

from dataclasses import replace

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FROM_ABOVE
from shoplib.joints import joint
from shoplib.joints.bench_pair import Stock, stock_of
from shoplib.joints.dovetail import deep_tails, lean, wide_tail
from shoplib.lessons.box_boards import bottom_asked
from shoplib.lessons.drawer_givens import bottom_groove, bottom_slack
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.joint_givens import (
    CALIPER,
    board_as_measured,
    board_as_ordered,
    short_or_long,
    too_much_or_too_little,
)
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.pair_box import BoxSizes, pair_box
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.measure import INCH, MM, share
from shoplib.model.solved import Cabinet


def _side(draw: Draw) -> Given:
    return draw.reading("s", "sides, measured", inch=("0.460 in", "0.485 in", "0.001 in"),
                        mm=("11.5 mm", "12.3 mm", "0.05 mm"))


def _front(draw: Draw) -> list[Given]:
    """`T` and `p`, what the front of a drawer was ordered in and what it measures."""
    return [board_as_ordered(draw, "front"), board_as_measured(draw, "front", "p")]


def _stock(givens: Givens) -> Stock:
    """A side that enters a front, as the bench has them."""
    return stock_of(givens["s"], givens["p"])


# Read a number off -------------------------------------------------------------------------------


def _deep(givens: Givens) -> int:
    """How long the tails on a side are."""
    return joint("dovetail").allowance(_stock(givens), {"proud": givens["x"]})


GAUGE = Exercise(
    id="j11-gauge", title="What the gauge is set to", rung="read a number off",
    question=(
        "A drawer for patches: its front was ordered planed to {T} and measures {p}, its sides measure {s}. The tails "
        "are cut on the sides, and left {x} proud of the front, to be planed off. To what is the marking gauge set for "
        "the baseline of the tails?"
    ),
    givens=lambda draw: [
        *_front(draw), _side(draw),
        draw.reading("x", "tails, left proud", inch=("0.015 in", "0.030 in", "0.005 in"),
                     mm=("0.4 mm", "0.8 mm", "0.1 mm")),
    ],
    right=_deep,
    misconceptions=(
        Misconception("own-board", lambda g: g["s"] + g["x"], "That is the sum with the thickness of the side itself.",
                      "The tails reach through the other board: which one is that?"),
        Misconception("nominal", lambda g: g["T"] + g["x"], "That is the sum with what the front was ordered in.",
                      "Look at what the calipers read."),
        Misconception("flush", lambda g: g["p"], "That ends the tails flush with the front.",
                      "How much is to be left to plane off?"),
    ),
    effect=too_much_or_too_little(
        "The tails would stand {by} farther out than you meant: so much more to plane off.",
        "The tails would end {by} lower than you meant. Where that is below the front, the whole front has to be "
        "planed down to them.",
    ),
    fits="The tails stand {x} proud, and come flush with a few strokes of the plane.",
    hints=("The tails of one board go through its mate.", "Which board is the mate of a side, what did the calipers "
           "read on it, and what is added?"),
    working=lambda g, say: (
        f"The mate of a side is the front; it measures {g.texts['p']}. {g.texts['s']} is the side's own thickness, "
        f"{g.texts['T']} a name.",
        f"gauge = {g.texts['p']} + {g.texts['x']} = {say.length(_deep(g))}",
    ),
    tolerance=CALIPER, caliper=True,
)

# One step ----------------------------------------------------------------------------------------


def _slope(draw: Draw) -> Given:
    return draw.count("k", "", 6, 8)


def _lean(givens: Givens) -> int:
    return lean(_stock(givens), {"slope": 10 * givens["k"], "proud": 0})


LEAN = Exercise(
    id="j11-lean", title="How far a flank leans", rung="one step",
    question=(
        "The tails on a side go through a front that was ordered planed to {T} and measures {p}; the side measures "
        "{s}. They are marked with a slope of 1 in {k}. How far does one flank of a tail lean, from baseline to end?"
    ),
    givens=lambda draw: [*_front(draw), _side(draw), _slope(draw)],
    right=_lean,
    misconceptions=(
        Misconception("own-board", lambda g: share(g["s"], g["k"], 1)[0], "That is the lean over the side's own {s}.",
                      "Over which length does the flank run, from baseline to end?"),
        Misconception("nominal", lambda g: share(g["T"], g["k"], 1)[0], "That begins with {T}, as ordered.",
                      "Look at what the calipers read."),
        Misconception("half", lambda g: share(_lean(g), 2, 1)[0], "That shares one lean between both flanks.",
                      "Each flank leans 1 in {k} for itself."),
    ),
    effect=too_much_or_too_little(
        "The flank would lean {by} too far: the corner of the tail is shorter grain.",
        "The flank would lean {by} too little: the tail holds less like a wedge.",
    ),
    fits="That is what the sliding bevel shows over the length of the tail.",
    hints=("The slope says how far it leans: one part across for {k} along.", "The tail is as long as the front is "
           "thick: share that by {k}."),
    working=lambda g, say: (
        f"The flank runs over the front's {g.texts['p']}, not over the side's {g.texts['s']}.",
        f"{g.texts['T']} is what was ordered.",
        f"lean = {g.texts['p']} / {g['k']} = {say.length(_lean(g))}",
    ),
    tolerance=CALIPER, caliper=True, coarse=Twin(INCH // 50, MM // 2),
)

# Two steps ---------------------------------------------------------------------------------------


def _layout_givens(draw: Draw) -> list[Given]:
    tails = draw.count("m", "", 3, 4)
    pin = draw.pick("p", "pins, small end", inch=("1/4 in", "5/16 in", "3/8 in"), mm=("6 mm", "8 mm", "10 mm"))
    half = draw.pick("h", "half pins, small end", inch=("3/16 in", "1/4 in", "5/16 in"), mm=("5 mm", "6 mm", "7 mm"))
    tail = draw.tape("tail", "", inch=("1 in", "1 5/8 in", "1/32 in"), mm=("25 mm", "41 mm", "0.5 mm")).value
    wide = tails.value * tail + (tails.value - 1) * pin.value + 2 * half.value
    return [draw.derived("w", "boards, width", wide), tails, pin, half]


def _tail(givens: Givens) -> int:
    stock = stock_of(3 * INCH // 4, width=givens["w"])
    return wide_tail(stock, {"tails": givens["m"], "pin": givens["p"], "half-pin": givens["h"]})


def _shared(over: str):
    """A slip: the width less other pins than there are; `over` says which, of pins (p) and half pins (h)."""
    taken = {"as-many": (0, 2), "no-half": (-1, 0), "one-half": (-1, 1), "no-pins": (None, 2)}[over]

    def rule(givens: Givens) -> int:
        more, halves = taken
        pins = 0 if more is None else (givens["m"] + more) * givens["p"]
        return share(givens["w"] - pins - halves * givens["h"], givens["m"], 1)[0]

    return rule


TAIL = Exercise(
    id="j11-tail", title="Tails and pins that close on the width", rung="two steps",
    question=(
        "A box board is {w} wide. It gets {m} equal tails; the pins between them are {p} wide at their small end, and "
        "the half pin at each edge {h}. How wide is a tail at its end?"
    ),
    givens=_layout_givens,
    right=_tail,
    misconceptions=(
        Misconception("as-many", _shared("as-many"), "That counts as many pins as tails.",
                      "Draw the end of the board: how many pins stand between {m} tails?"),
        Misconception("no-half", _shared("no-half"), "That leaves the half pins out.",
                      "What stands at the two edges of the board?"),
        Misconception("one-half", _shared("one-half"), "That takes one half pin off.",
                      "How many edges has the board?"),
        Misconception("no-pins", _shared("no-pins"), "That leaves the pins between the tails out.",
                      "Something stands between two tails."),
    ),
    effect=too_much_or_too_little(
        "Each tail would be {by} too wide: the last one runs over the edge of the board.",
        "Each tail would be {by} too narrow: the half pin at the far edge comes out wider than the first.",
    ),
    fits="Tails, pins and both half pins come to {w}.",
    hints=("First take off what is no tail: both half pins, and the pins.", "Between {m} tails stand one pin fewer.",
           "Share what is left by {m}."),
    working=lambda g, say: (
        f"Between {g['m']} tails stand {g['m'] - 1} pins.",
        f"for the tails = {g.texts['w']} - 2 x {g.texts['h']} - {g['m'] - 1} x {g.texts['p']} = "
        f"{say.length(g['m'] * _tail(g))}",
        f"tail = {say.length(g['m'] * _tail(g))} / {g['m']} = {say.length(_tail(g))}",
    ),
    tolerance=RULE, coarse=Twin(INCH // 2, 10 * MM),
)

# Find the slip -----------------------------------------------------------------------------------


def _inside(draw: Draw) -> Given:
    return draw.tape("I", "box, inside width", inch=("9 1/8 in", "17 7/8 in", "1/8 in"),
                     mm=("231 mm", "451 mm", "5 mm"))


def _gain(givens: Givens) -> int:
    """What a board gains at one corner, as the bench has it."""
    stock = stock_of(givens["t"])
    return deep_tails(stock, joint("dovetail").values(stock))


JONAS = Exercise(
    id="j11-jonass-box", title="Jonas's box", rung="find the slip",
    question=(
        "Jonas's list has a front {L} long, for a box that is to be {I} wide inside, through dovetails at its corners. "
        "The boards were ordered planed to {T} and measure {t}. Something is wrong with it. How long should the front "
        "be, from outside to outside?"
    ),
    givens=lambda draw: (lambda inside, ordered, measured: [
        inside, ordered, measured, draw.derived("L", "front in Jonas's list", inside.value + 2 * ordered.value)
    ])(_inside(draw), board_as_ordered(draw), board_as_measured(draw)),
    right=lambda g: g["I"] + 2 * _gain(g),
    misconceptions=(
        Misconception("as-listed", lambda g: g["I"] + 2 * g["T"], "That is the length in Jonas's list.",
                      "How thick are the boards that the front's pins go through?"),
        Misconception("between", lambda g: g["I"], "That is what lies between the sides.",
                      "The pins reach to the outside of the box."),
        Misconception("one-end", lambda g: g["I"] + _gain(g), "That counts one corner.", "How many ends has a front?"),
        Misconception("taken-off", lambda g: g["I"] - 2 * g["t"], "That takes the sides off.",
                      "Is the front longer or shorter than the box is wide inside?"),
    ),
    effect=short_or_long(
        "The front", "so much is left to plane off the pins, or the box is wider than it was to be",
        "the box comes out narrower by so much",
    ),
    fits="Jonas had counted with the thickness that was ordered.",
    hints=("Work the front out once more, from {I}.", "At each end it gains the thickness of a side: ordered, or "
           "measured?"),
    working=lambda g, say: (
        f"front = {g.texts['I']} + 2 x {g.texts['t']} = {say.length(g['I'] + 2 * _gain(g))}",
        f"Jonas took {g.texts['T']}, as ordered: {g.texts['L']}.",
    ),
    tolerance=RULE,
)

# A whole set -------------------------------------------------------------------------------------


def _set_givens(draw: Draw) -> list[Given]:
    return [
        _inside(draw),
        draw.tape("J", "box, inside depth", inch=("6 1/4 in", "8 3/4 in", "1/4 in"), mm=("160 mm", "220 mm", "5 mm")),
        draw.pick("H", "box, height", inch=("4 in",), mm=("100 mm",)),
        board_as_ordered(draw), board_as_measured(draw, name="s"), bottom_groove(draw), bottom_slack(draw),
    ]


def _case(givens: Givens) -> Cabinet:
    outside = (givens[inside] + 2 * givens["s"] for inside in "IJ")
    sizes = BoxSizes(*outside, givens["H"], givens["s"], givens["q"], givens["e"])
    return pair_box("dovetail", "dovetail", sizes, {"fit": 0})


def _board(name: str, part: str, boards: tuple[str, ...], axis: str, inside: str) -> Asked:
    return Asked(
        name, part, "length", boards, axis,
        (
            Misconception(f"{name}-between", lambda g: g[inside], "That is the room inside.",
                          "Tails and pins reach to the outside of the box."),
            Misconception(f"{name}-one", lambda g: g[inside] + g["s"], "That counts one corner.",
                          "How many ends has the board?"),
            Misconception(f"{name}-nominal", lambda g: g[inside] + 2 * g["T"], "That is the sum with {T}, as ordered.",
                          "Look at what the calipers read."),
        ),
        lambda g, say: (f"{g.texts[inside]} + 2 x {g.texts['s']} = {say.length(g[inside] + 2 * g['s'])}",),
    )


BOX_SET = SetExercise(
    id="j11-box-set", title="Cut the box for the spoke keys",
    question=(
        "The box for the spoke keys is {I} wide and {J} deep inside, and {H} high. Its boards were ordered planed to "
        "{T} and measure {s}; all four corners are through dovetails, flush outside. The bottom lies in grooves {q} "
        "deep all round, and is made {e} smaller than they would let it be. Give the three sizes: what you give is put "
        "together dry."
    ),
    givens=_set_givens, case=_case,
    asked=(
        _board("front", "Front and back", ("front", "back"), "x", "I"),
        _board("sides", "Sides", ("left side", "right side"), "y", "J"),
        replace(bottom_asked("width", lambda g: g["I"] + 2 * g["s"], "the sides"), boards=("bottom",)),
    ),
    view=View(FROM_ABOVE, "bottom"),
    fits="All corners close flush, and the bottom has room to move.",
    hints=("Front and back reach from outside to outside: {I} and two thicknesses.", "So do the sides, from {J}.",
           "The bottom: {I}, two grooves of {q} on, {e} off."),
)

EXERCISES = (GAUGE, LEAN, TAIL, JONAS)
SETS = (BOX_SET,)
