"""The exercises from the cut list to the yard, up the ladder: a line read, bands, strips and sheets, solid fronts."""

from shoplib.layout.strips import left_beside, run_of
from shoplib.lessons.exercise import Exercise, Given, Misconception, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.sheet_counts import SHEETS, SPARE, STRIPS
from shoplib.lessons.sheet_effects import board_off, left_off, sawn_off
from shoplib.lessons.sheet_givens import band, kerf, trim
from shoplib.lessons.umas_list import UMAS_LIST
from shoplib.lessons.whole_list import WHOLE_LIST
from shoplib.measure import INCH, MM

RULE = Twin(INCH // 64, MM // 5)
"""What an answer may be off and still be right: one fine step of a rule."""


# Read a number off -------------------------------------------------------------------------------


def _line(draw: Draw) -> list[Given]:
    whole = draw.tape("f", "first size behind \"finished\"", inch=("31 1/8 in", "42 in", "1/8 in"),
                      mm=("761 mm", "1060 mm", "1 mm"))
    strip = band(draw)
    return [
        draw.derived("c", "first size of the line", whole.value - 2 * strip.value),
        draw.tape("w", "second size", inch=("10 1/8 in", "14 in", "1/8 in"), mm=("251 mm", "350 mm", "1 mm")),
        draw.reading("t", "third size", inch=("0.695 in", "0.712 in", "0.001 in"),
                     mm=("17.3 mm", "17.8 mm", "0.05 mm")),
        whole,
    ]


READING = Exercise(
    id="08-reading",
    title="A line of the list",
    rung="read a number off",
    question=(
        "A line of the cut list says: \"2 x shelves, {c} x {w} x {t}, case sheet, grain along the length; finished "
        "{f} x {w} with edging: band at both ends\". What length do you set the stop block to?"
    ),
    givens=_line,
    right=lambda g: g["c"],
    misconceptions=(
        Misconception(
            "finished", lambda g: g["f"],
            "That is the finished length.", "The bands are still to be glued on; what leaves the saw stands first.",
        ),
        Misconception(
            "width", lambda g: g["w"],
            "That is the width.", "The list tells first the size along the grain.",
        ),
        Misconception(
            "bands-twice", lambda g: 2 * g["c"] - g["f"],
            "That takes the bands off once more.", "The first size of the line has them off already.",
        ),
    ),
    effect=sawn_off,
    fits="Sizes of a cut list are sizes at the saw; what is glued on comes after.",
    hints=("Which of the sizes is the one at the saw, and which comes when the bands are on?",
           "The line begins with length x width x thickness at the saw."),
    working=lambda g, say: (
        f"Along the grain at the saw: {say.length(g['c'])}. Across it is {g.texts['w']}, and {g.texts['t']} thick; "
        "neither is asked for.",
        f"{g.texts['c']} + {say.exact(g['f'] - g['c'])} = {g.texts['f']}",
        f"So {g.texts['f']} is what it comes to with its bands, and {g.texts['c']} goes to the saw.",
    ),
    tolerance=RULE,
)


# One step ----------------------------------------------------------------------------------------


BANDS = Exercise(
    id="08-bands",
    title="A band at both ends",
    rung="one step",
    question=(
        "A shelf is to be {L} long when it is finished. Each of its two ends gets a band {b} thick, glued on after it "
        "is sawn. How long is it at the saw?"
    ),
    givens=lambda draw: [
        draw.tape("L", "shelf, finished length", inch=("31 1/16 in", "44 in", "1/8 in"),
                  mm=("661 mm", "1110 mm", "1 mm")),
        band(draw),
    ],
    right=lambda g: g["L"] - 2 * g["b"],
    misconceptions=(
        Misconception("no-bands", lambda g: g["L"], "That leaves the bands out.", "What is glued on later?"),
        Misconception("one-band", lambda g: g["L"] - g["b"], "That takes one band off.", "How many ends has a shelf?"),
        Misconception(
            "added", lambda g: g["L"] + 2 * g["b"], "That adds the bands.",
            "The finished length holds them already: is the sheet longer or shorter than that?",
        ),
    ),
    effect=sawn_off,
    fits="A thin iron-on band counts as well, where a part has to fit between two others.",
    hints=("Finished length = band + sheet + band.", "Take both bands off."),
    working=lambda g, say: (f"{g.texts['L']} - 2 x {g.texts['b']} = {say.length(g['L'] - 2 * g['b'])}",),
    tolerance=RULE,
)


# Two steps ---------------------------------------------------------------------------------------


OFFCUT = Exercise(
    id="08-offcut",
    title="What is left of a sheet",
    rung="two steps",
    question=(
        "A sheet {S} wide: {e} comes off each of its long edges, blade included. Then {n} strips of {w} are ripped "
        "off, one after another; the blade takes {k}. How wide is what is left?"
    ),
    givens=lambda draw: [
        draw.pick("S", "sheet, width", inch=("48 in", "49 in", "60 in"), mm=("1220 mm", "1250 mm", "1525 mm")),
        trim(draw), draw.count("n", "strips", 4, 6),
        draw.tape("w", "strips, width", inch=("3 1/16 in", "6 in", "1/16 in"), mm=("81 mm", "150 mm", "1 mm")),
        kerf(draw),
    ],
    right=lambda g: left_beside(g["S"], g["w"], g["k"], g["e"], g["n"]),
    misconceptions=(
        Misconception(
            "no-kerf", lambda g: g["S"] - 2 * g["e"] - g["n"] * g["w"],
            "That leaves the blade out.", "Each strip is parted from the rest by a cut. What does a cut take?",
        ),
        Misconception(
            "one-kerf-less", lambda g: g["S"] - 2 * g["e"] - g["n"] * g["w"] - (g["n"] - 1) * g["k"],
            "That counts the kerfs between the strips alone.", "The last strip is parted from the rest as well.",
        ),
        Misconception(
            "trim-left-out", lambda g: g["S"] - g["n"] * (g["w"] + g["k"]),
            "That leaves the trim out.", "What comes off before the first strip?",
        ),
        Misconception(
            "one-edge", lambda g: g["S"] - g["e"] - g["n"] * (g["w"] + g["k"]),
            "That trims one edge.", "A sheet has two long edges, and both were bruised on their way.",
        ),
    ),
    effect=left_off,
    fits="Write that on the offcut, with an arrow along its grain.",
    hints=(
        "First the two edges.",
        "Each strip takes its own width and one kerf: here something stays on the other side of the last cut.",
        "{n} times strip and kerf together, off what the trim has left.",
    ),
    working=lambda g, say: (
        f"{g.texts['S']} - 2 x {g.texts['e']} = {say.exact(g['S'] - 2 * g['e'])}",
        f"{g.texts['n']} x ({g.texts['w']} + {g.texts['k']}) = {say.exact(g['n'] * (g['w'] + g['k']))}",
        f"{say.exact(g['S'] - 2 * g['e'])} - {say.exact(g['n'] * (g['w'] + g['k']))} = "
        f"{say.length(left_beside(g['S'], g['w'], g['k'], g['e'], g['n']))}",
    ),
    tolerance=RULE,
)


FRONTS = Exercise(
    id="08-fronts",
    title="Solid fronts from one board",
    rung="two steps",
    question=(
        "{n} drawer fronts of solid wood come one after another out of one board, so that their grain runs on. Each is "
        "{L} long when it is finished, and sawn {x} longer. The blade takes {k}, and {e} comes off each end of the "
        "board, blade included, for the checks in it. How long must the board be at least?"
    ),
    givens=lambda draw: [
        draw.count("n", "fronts", 3, 4),
        draw.tape("L", "front, finished length", inch=("11 1/16 in", "16 in", "1/16 in"),
                  mm=("281 mm", "410 mm", "1 mm")),
        draw.pick("x", "each sawn longer by", inch=("1/2 in", "3/4 in"), mm=("12 mm", "20 mm")),
        draw.pick("e", "off each end of the board", inch=("2 in", "2 1/2 in", "3 in"), mm=("50 mm", "60 mm", "75 mm")),
        kerf(draw),
    ],
    right=lambda g: run_of(g["L"] + g["x"], g["k"], g["e"], g["n"]),
    misconceptions=(
        Misconception(
            "finished", lambda g: run_of(g["L"], g["k"], g["e"], g["n"]),
            "That lines them up at their finished length.", "What is left to plane and to square?",
        ),
        Misconception(
            "no-kerf", lambda g: g["n"] * (g["L"] + g["x"]) + 2 * g["e"],
            "That leaves the blade out.", "How many cuts lie between the fronts?",
        ),
        Misconception(
            "no-trim", lambda g: run_of(g["L"] + g["x"], g["k"], 0, g["n"]),
            "That uses the board to its very ends.", "Ends have checks, fine cracks: what comes off?",
        ),
        Misconception(
            "one-end", lambda g: run_of(g["L"] + g["x"], g["k"], 0, g["n"]) + g["e"],
            "That trims one end.", "A board has two ends, and both dry first.",
        ),
        Misconception(
            "kerf-for-each", lambda g: run_of(g["L"] + g["x"], g["k"], g["e"], g["n"]) + g["k"],
            "That counts a kerf for each front.",
            "How many cuts lie between the fronts? Those at the ends are in the trim.",
        ),
    ),
    effect=board_off,
    fits="Number the fronts on the board before you cut: their order is the picture.",
    hints=(
        "How long is one front as sawn?",
        "Between {n} fronts there is one kerf less than fronts.",
        "Then both ends of the board.",
    ),
    working=lambda g, say: (
        f"as sawn: {g.texts['L']} + {g.texts['x']} = {say.exact(g['L'] + g['x'])}",
        f"{g.texts['n']} x {say.exact(g['L'] + g['x'])} + {g['n'] - 1} x {g.texts['k']} + 2 x {g.texts['e']} = "
        f"{say.length(run_of(g['L'] + g['x'], g['k'], g['e'], g['n']))}",
    ),
    tolerance=RULE,
)

EXERCISES = (READING, BANDS, STRIPS, OFFCUT, SHEETS, SPARE, FRONTS, UMAS_LIST)
SETS = (WHOLE_LIST,)
