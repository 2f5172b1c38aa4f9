"""The exercises of the splined mitre's page, up the ladder: outside and inside, what adds up, a spline, a tray."""

from dataclasses import replace

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FROM_ABOVE
from shoplib.joints import joint
from shoplib.joints.bench_pair import stock_of
from shoplib.joints.splined_mitre import last_corner, slanting
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
from shoplib.measure import INCH, MM, share, to_step
from shoplib.model.solved import Cabinet

ROOT = 1_414_214
"""A millionth of this times a thickness is how long its mitre face is across the board."""


def _gain(givens: Givens) -> int:
    """What a board gains at one mitred end, from its inside face to its outside one, as the bench has it."""
    return joint("splined mitre").allowance(stock_of(givens["t"]))


def _slanted(givens: Givens) -> int:
    """Twice the mitre face of a board, measured along the slant: nothing that a length gains."""
    return 2 * (to_step(int(givens["t"]) * ROOT, 10**6) // 10**6)


# Read a number off -------------------------------------------------------------------------------

LONGER = Exercise(
    id="j12-longer", title="Outside and inside", rung="read a number off",
    question=(
        "The boards of a tray were ordered planed to {T} and measure {t}. Each is mitred at 45 degrees at both ends. "
        "By how much is its outside face longer than its inside face?"
    ),
    givens=lambda draw: [board_as_ordered(draw), board_as_measured(draw)],
    right=lambda g: 2 * _gain(g),
    misconceptions=(
        Misconception("one-end", _gain, "That counts one end.", "How many ends of the board are mitred?"),
        Misconception("nominal", lambda g: 2 * g["T"], "That is the sum with {T}, as ordered.",
                      "Look at what the calipers read."),
        Misconception("slant", _slanted, "That is twice the mitre face, measured along its slant.",
                      "How far back along the board does the slant go?"),
    ),
    effect=too_much_or_too_little(
        "You would count on {by} more length outside than there is.",
        "You would count on {by} less length outside than there is.",
    ),
    fits="At 45 degrees the cut goes as far along the board as the board is thick.",
    hints=("At 45 degrees a line goes as far along as it goes across.", "It goes across {t} at each end."),
    working=lambda g, say: (
        f"{g.texts['T']} is what was ordered.",
        f"2 x {g.texts['t']} = {say.length(2 * _gain(g))}",
    ),
    tolerance=CALIPER, caliper=True,
)

# One step ----------------------------------------------------------------------------------------


def _outside(draw: Draw) -> Given:
    return draw.tape("W", "long point to long point", inch=("12 1/8 in", "20 7/8 in", "1/8 in"),
                     mm=("301 mm", "521 mm", "5 mm"))


INSIDE = Exercise(
    id="j12-inside", title="From the long points to the heels", rung="one step",
    question=(
        "A side of a tray is cut {W} long, from long point to long point. Its boards were ordered planed to {T} and "
        "measure {t}. How long is the tray inside, from heel to heel?"
    ),
    givens=lambda draw: [_outside(draw), board_as_ordered(draw), board_as_measured(draw)],
    right=lambda g: g["W"] - 2 * _gain(g),
    misconceptions=(
        Misconception("outside", lambda g: g["W"], "That is the outside.", "From heel to heel there is less room."),
        Misconception("one-end", lambda g: g["W"] - _gain(g), "That takes one end off.",
                      "How many ends of the board are mitred?"),
        Misconception("nominal", lambda g: g["W"] - 2 * g["T"], "That takes {T} off at each end, as ordered.",
                      "Look at what the calipers read."),
        Misconception("slant", lambda g: g["W"] - _slanted(g), "That takes the mitre face off, along its slant.",
                      "How far back along the board does the slant go?"),
    ),
    effect=short_or_long("What you cut to lie inside", "it does not go in", "it lies loose by so much"),
    fits="What is to lie inside may be so long, less a little play.",
    hints=("The heels lie behind the long points, at both ends.", "Each as far as the board is thick."),
    working=lambda g, say: (
        f"{g.texts['W']} - 2 x {g.texts['t']} = {say.length(g['W'] - 2 * _gain(g))}",
        f"{g.texts['T']} is what was ordered.",
    ),
    tolerance=RULE,
)

# Two steps ---------------------------------------------------------------------------------------


def _square_givens(draw: Draw) -> list[Given]:
    times = 2 * draw.count("k", "", 1, 2).value + 1  # 4 would make the answer the gap that is given
    face = draw.pick("m", "mitre faces, length", inch=("1 1/4 in", "1 1/2 in", "2 in"), mm=("30 mm", "40 mm", "50 mm"))
    return [
        draw.derived("b", "blade of the square, length", times * face.value), face,
        draw.reading("g", "gap at the tip of the blade", inch=("0.016 in", "0.031 in", "0.001 in"),
                     mm=("0.4 mm", "0.8 mm", "0.05 mm")),
    ]


def _last(givens: Givens, corners: int = 4) -> int:
    return last_corner(givens["g"], givens["b"], givens["m"], corners)


LAST = Exercise(
    id="j12-last", title="What adds up at the last corner", rung="two steps",
    question=(
        "Two scraps from the saw are closed to a corner. A square held into it touches at the heel, and gapes {g} at "
        "the tip of its blade, {b} from there. The mitre faces of the frame are {m} long. All four of its corners are "
        "like that one. Three are pulled tight: how far does the fourth gape over its mitre face?"
    ),
    givens=_square_givens,
    right=_last,
    misconceptions=(
        Misconception("one-corner", lambda g: _last(g, 1), "That is one corner.",
                      "What becomes of the other three when they are pulled tight?"),
        Misconception("three-corners", lambda g: _last(g, 3), "That counts the three that were pulled tight.",
                      "The fourth is off by itself, too."),
        Misconception("blade", lambda g: 4 * g["g"], "That is the gap over the blade of the square.",
                      "The mitre face is shorter than the blade."),
    ),
    effect=too_much_or_too_little(
        "You would look for a gap {by} wider than comes: the saw is better than you think.",
        "The last corner would gape {by} more than you expect.",
    ),
    fits="A gap that hardly shows in one corner shows in the last one.",
    hints=("First one corner: {g} over {b}. How much is that over {m}?", "Then all four, for they add up."),
    working=lambda g, say: (
        f"{g.texts['b']} of blade are {g['b'] // g['m']} mitre faces of {g.texts['m']}.",
        f"four corners, over the blade = 4 x {g.texts['g']} = {say.length(4 * g['g'])}",
        f"over the mitre face = {say.length(4 * g['g'])} / {g['b'] // g['m']} = {say.length(_last(g))}",
    ),
    tolerance=CALIPER, caliper=True, coarse=Twin(INCH // 100, MM // 4),
)

# Find the slip -----------------------------------------------------------------------------------


def _spline_givens(draw: Draw) -> list[Given]:
    deep = draw.tape("d", "slot in each mitre, depth", inch=("19/64 in", "27/64 in", "1/32 in"),
                     mm=("6 mm", "11 mm", "0.5 mm"))
    gap = draw.pick("e", "free in each slot", inch=("1/32 in",), mm=("0.6 mm", "0.8 mm"))
    return [
        draw.tape("h", "tray, height", inch=("2 in", "6 in", "1/16 in"), mm=("50 mm", "100 mm", "2 mm")), deep, gap,
        draw.derived("L", "spline in Mila's list, across the mitre", 2 * deep.value),
    ]


def _spline(givens: Givens) -> int:
    stock = stock_of(3 * INCH // 4, width=givens["h"])
    values = joint("splined mitre").values(stock, {"slot": givens["d"], "end gap": givens["e"]})
    return dict(slanting(stock, values))["spline, across the mitre"]


MILA = Exercise(
    id="j12-milas-spline", title="Mila's splines", rung="find the slip",
    question=(
        "Mila cuts splines for a tray {h} high. The slot is {d} deep in each mitre, and {e} of each slot is to stay "
        "free for glue. Her list has splines {L} wide, across the mitre. Something is wrong with it. How wide should "
        "they be?"
    ),
    givens=_spline_givens,
    right=_spline,
    misconceptions=(
        Misconception("as-listed", lambda g: 2 * g["d"], "That is the width in Mila's list.",
                      "What is to stay free in the slots?"),
        Misconception("free-once", lambda g: 2 * g["d"] - g["e"], "That leaves {e} free once.",
                      "In how many slots does a spline stand?"),
        Misconception("one-slot", lambda g: share(_spline(g), 2, 1)[0], "That fills one slot.",
                      "A spline stands half in each mitre."),
        Misconception("gap-added", lambda g: 2 * (g["d"] + g["e"]), "That adds what is to stay free.",
                      "Does the free room make the spline wider or narrower?"),
    ),
    effect=too_much_or_too_little(
        "The spline would be {by} too wide: less stays free for glue, and where nothing does, the mitre stays open.",
        "The spline would be {by} too narrow: so much less of it is glued.",
    ),
    fits="Mila's would have struck both floors before the mitre closed.",
    hints=("How far may the spline reach into one slot?", "It reaches into two."),
    working=lambda g, say: (
        f"into one slot = {g.texts['d']} - {g.texts['e']} = {say.length(g['d'] - g['e'])}",
        f"spline = 2 x {say.length(g['d'] - g['e'])} = {say.length(_spline(g))}",
        f"Mila's {g.texts['L']} fill both slots; as long as the tray is high, {g.texts['h']}, they are either way.",
    ),
    tolerance=Twin(INCH // 128, MM // 10), coarse=Twin(INCH // 8, 3 * MM),
)

# A whole set -------------------------------------------------------------------------------------


def _set_givens(draw: Draw) -> list[Given]:
    return [
        _outside(draw),
        draw.tape("D", "tray, outside depth", inch=("7 1/4 in", "10 1/4 in", "1/4 in"),
                  mm=("180 mm", "260 mm", "5 mm")),
        draw.pick("H", "tray, height", inch=("3 in",), mm=("75 mm",)),
        board_as_ordered(draw), board_as_measured(draw, name="s"), bottom_groove(draw), bottom_slack(draw),
    ]


def _case(givens: Givens) -> Cabinet:
    sizes = BoxSizes(givens["W"], givens["D"], givens["H"], givens["s"], givens["q"], givens["e"])
    return pair_box("splined mitre", "mitre", sizes, {"fit": 0})


def _board(name: str, part: str, boards: tuple[str, ...], axis: str, outside: str) -> Asked:
    return Asked(
        name, part, "length", boards, axis,
        (
            Misconception(f"{name}-heels", lambda g: g[outside] - 2 * g["s"], "That is the length from heel to heel.",
                          "The saw is set to the long points."),
            Misconception(f"{name}-one", lambda g: g[outside] - g["s"], "That takes one board off.",
                          "Which board runs past the other at a mitre?"),
            Misconception(f"{name}-more", lambda g: g[outside] + 2 * g["s"], "That adds both boards once more.",
                          "The long points lie at the outside of the tray already."),
        ),
        lambda g, say: (f"{part.lower()} = the outside, long point to long point = {g.texts[outside]}",),
    )


TRAY_SET = SetExercise(
    id="j12-tray-set", title="Cut the tray for the valve caps",
    question=(
        "The tray for valve caps is {W} wide, {D} deep and {H} high outside. Its boards were ordered planed to {T} and "
        "measure {s}; all four corners are mitred, and the splines go in afterwards. The bottom lies in grooves {q} "
        "deep all round, and is made {e} smaller than they would let it be. Give the three sizes, lengths from long "
        "point to long point: what you give is put together dry."
    ),
    givens=_set_givens, case=_case,
    asked=(
        _board("front", "Front and back", ("front", "back"), "x", "W"),
        _board("sides", "Sides", ("left side", "right side"), "y", "D"),
        replace(bottom_asked("width", lambda g: g["W"], "the sides"), boards=("bottom",)),
    ),
    view=View(FROM_ABOVE, "bottom"),
    fits="All four mitres close, and the bottom has room to move.",
    hints=("A mitred board reaches from outside to outside, whichever board it is.",
           "The bottom begins with the room from heel to heel: {W} less two boards of {s}.",
           "To that come two grooves of {q}, less {e}."),
)

EXERCISES = (LONGER, INSIDE, LAST, MILA)
SETS = (TRAY_SET,)
