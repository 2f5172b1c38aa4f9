"""The exercises of the finger joint, up the ladder: socket, finger, height, error, another's list, a drawer box."""

from dataclasses import replace

from shoplib.joints import joint
from shoplib.joints.bench_pair import Pair, Stock, stock_of
from shoplib.lessons.drawer_givens import box_stock, box_stock_as_sold
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
from shoplib.lessons.joint_givens import CALIPER, short_or_long, three_readings, too_much_or_too_little
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import SetExercise
from shoplib.measure import INCH, MM, read_length, share
from shoplib.model.project import JointChoice
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet

FINGERS = joint("finger")


def _pair(width: int, finger: int) -> Pair:
    """Two boards of that width with fingers so wide, drawn without a fit."""
    return FINGERS.build(stock_of(INCH // 2, width=width), {"finger": finger, "fit": 0})


def _odd(draw: Draw, name: str, low: int, high: int) -> Given:
    """An odd number of fingers from 2 x `low` + 1 to 2 x `high` + 1; it stands in the question alone."""
    number = 2 * draw.count(name, "", low, high).value + 1
    return Given(name, "", number, str(number))


# Read a number off -------------------------------------------------------------------------------


def _deep(givens: Givens) -> int:
    side = Sheet("side", "plywood", givens["t"], (givens["thin"], givens["t"], givens["thick"]))
    return FINGERS.allowance(Stock(Sheet("bottom", "plywood", INCH // 2), side), {"proud": givens["p"]})


SOCKET = Exercise(
    id="j07-socket", title="How deep the sockets are", rung="read a number off",
    question=(
        "The mate of a finger-jointed board was sold as {T}; calipers read {thin}, {t} and {thick}. Even over its "
        "thickest corner the fingers are to stand {p} proud, to be planed off. How deep are the sockets cut?"
    ),
    givens=lambda draw: [
        box_stock_as_sold(draw), *three_readings(draw, replace(box_stock(draw), name="t")),
        draw.reading("p", "fingers stand proud", inch=("0.015 in", "0.020 in", "0.001 in"),
                     mm=("0.4 mm", "0.5 mm", "0.05 mm")),
    ],
    right=_deep,
    misconceptions=(
        Misconception("flush", lambda g: g["thick"], "That makes the fingers flush.", "What is to be planed off?"),
        Misconception("mean", lambda g: g["t"] + g["p"], "That begins with the mean of the readings.",
                      "Which corner is to be covered?"),
        Misconception("nominal", lambda g: g["T"] + g["p"], "That begins with {T}, the name of the sheet.",
                      "Look at what the calipers read."),
        Misconception("taken-off", lambda g: g["thick"] - g["p"], "That takes off what is to stand proud.",
                      "Do deeper sockets let the fingers stand farther out, or less far?"),
    ),
    effect=too_much_or_too_little(
        "The sockets would be {by} too deep: so much more stands proud, and is planed off.",
        "The sockets would be {by} too shallow: the fingers end so much lower, and a hollow is hard to mend.",
    ),
    fits="Every finger stands out a little, and the plane does the rest.",
    hints=("The sockets take the mate, at its thickest.", "To that comes {p}."),
    working=lambda g, say: (
        f"Of {g.texts['thin']}, {g.texts['t']} and {g.texts['thick']} the thickest is {g.texts['thick']}.",
        f"{g.texts['thick']} + {g.texts['p']} = {say.length(_deep(g))}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=CALIPER, caliper=True,
)

# One step ----------------------------------------------------------------------------------------


def _finger(givens: Givens) -> int:
    cut = _pair(givens["w"], share(givens["w"], givens["k"], 1)[0]).by_name["side"].cuts[0]
    return cut.high[1] - cut.low[1]


CLOSES = Exercise(
    id="j07-closes", title="Fingers that close on the width", rung="one step",
    question=(
        "The boards of a box are {w} wide. {k} fingers are to fill that width from edge to edge, those of the one "
        "board and those of the other together. How wide is a finger, to the last digit of the calipers?"
    ),
    givens=lambda draw: [
        draw.tape("w", "boards, width", inch=("3 1/16 in", "6 1/16 in", "1/8 in"), mm=("81.3 mm", "161.3 mm", "2 mm")),
        _odd(draw, "k", 2, 5),
    ],
    right=_finger,
    misconceptions=(
        Misconception("joints", lambda g: share(g["w"], g["k"] - 1, 1)[0], "That counts the places between fingers.",
                      "How many fingers stand side by side?"),
        Misconception("edges", lambda g: share(g["w"], g["k"] + 1, 1)[0], "That counts the edges of the fingers.",
                      "How many fingers stand side by side?"),
        Misconception("one-board", lambda g: share(2 * g["w"], g["k"] + 1, 1)[0],
                      "That counts the fingers of one board.", "What fills the sockets between them?"),
    ),
    effect=too_much_or_too_little(
        "Each finger would be {by} too wide, and the last one would not be whole.",
        "Each finger would be {by} too narrow, and a strip would be left over at the edge.",
    ),
    fits="An odd count begins and ends alike.",
    hints=("All fingers together are as wide as the board.", "{k} of them share {w}."),
    working=lambda g, say: (f"{g.texts['w']} / {g.texts['k']} = {say.length(_finger(g))}",),
    tolerance=CALIPER, caliper=True,
)

# Two steps ---------------------------------------------------------------------------------------


def _height_givens(draw: Draw) -> list[Given]:
    finger = draw.pick("p", "cutter", inch=("1/4 in", "5/16 in", "3/8 in", "7/16 in", "1/2 in"),
                       mm=("6 mm", "8 mm", "10 mm", "12 mm"))
    number = _odd(draw, "", 4, 9)
    over = draw.tape("over", "", inch=("1/16 in", "3/16 in", "1/32 in"), mm=("1.5 mm", "4.5 mm", "0.5 mm"))
    return [draw.derived("h", "room for the box", (number.value + 1) * finger.value + over.value), finger]


def _fingers_in(givens: Givens) -> int:
    return share(givens["h"], givens["p"], 1)[0]


def _height(givens: Givens) -> int:
    count = _fingers_in(givens)
    odd = count if count % 2 else count - 1
    return _pair(odd * givens["p"], givens["p"]).by_name["bottom"].width


def _height_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, count = givens.texts, _fingers_in(givens)
    return (
        f"{count} fingers of {text['p']} go into {text['h']}, and a rest is left over.",
        f"The largest odd number is {count - 1}.",
        f"{count - 1} x {text['p']} = {say.length(_height(givens))}",
    )


HEIGHT = Exercise(
    id="j07-height", title="As high as its fingers", rung="two steps",
    question=(
        "A box may be {h} high at most. The cutter is {p} wide, and so are the fingers. The box is to be as high as "
        "there is room, in whole fingers, and an odd number of them, so that both edges look alike. How high is it?"
    ),
    givens=_height_givens,
    right=_height,
    misconceptions=(
        Misconception("as-high", lambda g: g["h"], "That fills the room, with a part of a finger at the edge.",
                      "How many whole fingers are that?"),
        Misconception("even", lambda g: _fingers_in(g) * g["p"], "That is a whole number of fingers, but an even one.",
                      "With an even number one edge begins with a finger and the other with a socket."),
        Misconception("over", lambda g: (_fingers_in(g) + 1) * g["p"], "That is the next odd number, upwards.",
                      "The box may not be higher than {h}."),
    ),
    effect=too_much_or_too_little(
        "The box would be {by} higher than an odd number of whole fingers that has room.",
        "The box would be {by} lower than it may be.",
    ),
    fits="It closes on its height, and begins and ends with a finger of the same board.",
    hints=("How many whole fingers of {p} go into {h}?", "Where that number is even, take one finger less."),
    working=_height_working,
    tolerance=RULE,
)


def _creep_givens(draw: Draw) -> list[Given]:
    finger = draw.pick("p", "fingers, as drawn", inch=("1/4 in", "3/8 in", "1/2 in"), mm=("6 mm", "9 mm", "12 mm"))
    number = _odd(draw, "", 3, 7)
    return [
        draw.derived("w", "boards, width", number.value * finger.value), finger,
        draw.reading("x", "each comes out wider by", inch=("0.004 in", "0.008 in", "0.001 in"),
                     mm=("0.11 mm", "0.21 mm", "0.02 mm")),
    ]


def _count(givens: Givens) -> int:
    """How many fingers fill the width: as many as there are sockets in the two boards."""
    return sum(len(board.cuts) for board in _pair(givens["w"], givens["p"]).boards)


def _creep(givens: Givens) -> int:
    return _count(givens) * givens["x"]


CREEP = Exercise(
    id="j07-creep", title="What a small error adds up to", rung="two steps",
    question=(
        "Boards {w} wide are drawn with fingers of {p}, edge to edge. The step of the jig is a little off: each "
        "finger, of the one board or the other, comes out {x} wider than drawn. By how much is the row too long at the "
        "far edge?"
    ),
    givens=_creep_givens,
    right=_creep,
    misconceptions=(
        Misconception("once", lambda g: g["x"], "That is the error of one finger.", "How many stand side by side?"),
        Misconception("one-board", lambda g: share(_count(g) + 1, 2, 1)[0] * g["x"],
                      "That counts the fingers of one board.", "What stands in its sockets comes out wider, too."),
        Misconception("one-more", lambda g: (_count(g) + 1) * g["x"], "That counts the edges of the fingers.",
                      "Count the fingers themselves: how many go into {w}?"),
    ),
    effect=too_much_or_too_little(
        "You would look for {by} more than there is.",
        "The row would be {by} longer than you expect, and the last fingers strike.",
    ),
    fits="So a corner is tried in scrap as wide as the real boards: two fingers alone would not show it.",
    hints=("How many fingers of {p} fill {w}?", "Each of them brings its {x}."),
    working=lambda g, say: (
        f"{g.texts['w']} / {g.texts['p']} = {_count(g)}",
        f"{_count(g)} x {g.texts['x']} = {say.length(_creep(g))}",
    ),
    tolerance=CALIPER, caliper=True, coarse=Twin(read_length("0.005 in"), MM // 10),
)

# Find the slip -----------------------------------------------------------------------------------


def _front(givens: Givens) -> int:
    gain = FINGERS.allowance(stock_of(givens["t"]), {"proud": givens["p"]})
    return givens["W"] - 2 * givens["t"] + 2 * gain


def _list_givens(draw: Draw) -> list[Given]:
    wide = draw.tape("W", "box, outside width", inch=("12 1/32 in", "20 1/32 in", "1/8 in"),
                     mm=("301 mm", "501 mm", "5 mm"))
    thick = draw.pick("t", "boards, thickness", inch=("15/32 in", "1/2 in"), mm=("11.5 mm", "12 mm"))
    proud = draw.pick("p", "fingers stand proud", inch=("1/32 in", "1/16 in"), mm=("0.5 mm", "0.8 mm", "1 mm"))
    return [wide, thick, proud, draw.derived("L", "front in Yara's list", wide.value - 2 * thick.value)]


YARAS_FRONT = Exercise(
    id="j07-yaras-front", title="Yara's front", rung="find the slip",
    question=(
        "Yara's box is to be {W} wide outside when it is done, of boards {t} thick. Its corners are finger joints, "
        "whose fingers are to stand {p} proud at each end and are planed off. Her list has a front {L} long. Something "
        "is wrong with it. How long is the front cut?"
    ),
    givens=_list_givens,
    right=_front,
    misconceptions=(
        Misconception("as-listed", lambda g: g["L"], "That is the length in Yara's list: what lies between the sides.",
                      "How far do the fingers of the front go through?"),
        Misconception("flush", lambda g: g["W"], "That lets the fingers end flush.",
                      "What is to stand proud, and at how many ends?"),
        Misconception("one-end", lambda g: g["W"] - g["t"] + g["p"], "That lets the fingers through at one end.",
                      "How many corners has a front?"),
    ),
    effect=short_or_long(
        "The front", "so much more stands proud, and is planed off",
        "its fingers end below the faces of the sides, or the box comes out too narrow",
    ),
    fits="Boards with fingers are cut to the full outside size, and what is planed off comes on top.",
    hints=("The fingers of the front go right through the sides, to the outside.", "To {W} comes {p}, at each end."),
    working=lambda g, say: (
        f"{g.texts['W']} + 2 x {g.texts['p']} = {say.length(_front(g))}",
        f"Yara's {g.texts['L']} = {g.texts['W']} - 2 x {g.texts['t']}: a front that is butted between its sides.",
    ),
    tolerance=RULE,
)

# A whole set -------------------------------------------------------------------------------------


def _box(givens: Givens) -> Cabinet:
    return joined_box(givens, JointChoice("finger"))


SIDES = sides_asked(
    (
        Misconception("side-between", lambda g: g["L"] - 2 * g["s"], "That stands the sides between front and back.",
                      "How far do the fingers of the sides go through?"),
        Misconception("side-one-end", lambda g: g["L"] - g["s"], "That lets the fingers through at one end.",
                      "How many corners has a side?"),
    ),
    lambda g, say: (f"sides = the whole depth = {g.texts['L']}",),
)

FRONTS = fronts_asked(
    (
        Misconception("front-between", lambda g: g["B"] - 2 * g["s"], "That is the room between the sides.",
                      "How far do the fingers of the front go through?"),
        Misconception("front-one-end", lambda g: g["B"] - g["s"], "That lets the fingers through at one end.",
                      "How many corners has a front?"),
    ),
    lambda g, say: (f"front and back = the whole width = {g.texts['B']}",),
)

BOX_SET = SetExercise(
    id="j07-box-set", title="A drawer box on fingers",
    question=(
        "The box for the spoke keys is {B} wide and {L} deep outside, of stock that measures {s}. All four corners are "
        "finger joints, flush outside. The bottom lies in grooves {q} deep that stop short of the corners, and is made "
        "{e} smaller each way than they would let it be. What you give is put together dry."
    ),
    givens=box_givens, case=_box, asked=(SIDES, FRONTS, BOTTOM_WIDTH, BOTTOM_DEPTH), view=SEEN,
    fits="Each corner closes on its fingers, and all four boards are as long as the box is outside.",
    hints=(
        "Fingers go right through the mate: front, back and sides are cut to the full outside size.",
        "The bottom, both ways: from outside to outside, two boards of {s} off, two grooves of {q} on, {e} off.",
    ),
)

EXERCISES = (SOCKET, CLOSES, HEIGHT, CREEP, YARAS_FRONT)
SETS = (BOX_SET,)
