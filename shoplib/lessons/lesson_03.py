"""The exercises of joinery allowances, up the ladder: read off, one step, two steps, another's list, a whole set."""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.joint_case import across, joint_case, wood_between
from shoplib.lessons.joint_effects import tongues_off, wood_off
from shoplib.lessons.lesson_02 import RULE
from shoplib.lessons.noors_marks import ANOTHERS_MARKS
from shoplib.lessons.numbers import Draw
from shoplib.lessons.one_joint import PLACE, WIDTH, WOOD, by_the_rule
from shoplib.lessons.say import Say
from shoplib.lessons.tongue_set import TONGUE_SET
from shoplib.lessons.usual_givens import case_width, sheet_as_measured, sheet_as_sold
from shoplib.measure import read_length

# Two steps ---------------------------------------------------------------------------------------


def _pair_givens(draw: Draw) -> list[Given]:
    deep = draw.pick("d", "each dado, depth", inch=("7/32 in", "1/4 in"), mm=("5 mm", "6 mm", "7 mm"))
    return [sheet_as_sold(draw), sheet_as_measured(draw), deep]


def _pair(givens: Givens) -> int:
    return wood_between(joint_case((givens["t"],), dado=givens["d"], bays=2))


def _pair_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, both = givens.texts, say.exact(2 * givens["d"])
    return (
        f"both dadoes = 2 x {text['d']} = {both}",
        f"left = {text['t']} - {both} = {say.length(_pair(givens))}",
        f"The name {text['T']} stands in no sum.",
    )


PAIR = Exercise(
    id="03-back-to-back",
    title="Dadoes back to back",
    rung="two steps",
    question=(
        "A divider measures {t}; its sheet was sold as {T}. A shelf stands in a dado {d} deep on its left, and "
        "another, at the same height, in one {d} deep on its right. How much wood is left between the two dadoes?"
    ),
    givens=_pair_givens,
    right=_pair,
    misconceptions=(
        Misconception(
            "nominal", lambda g: g["T"] - 2 * g["d"],
            "That takes both dadoes off {T}, the name of the sheet.",
            "How thick is the divider under the calipers?",
        ),
        Misconception(
            "one-dado", lambda g: g["t"] - g["d"],
            "That takes one dado off the divider.",
            "How many faces of the divider are cut here?",
        ),
        Misconception(
            "the-cuts", lambda g: 2 * g["d"],
            "That is the wood that both dadoes take away.",
            "The question is about what stays between them.",
        ),
    ),
    effect=wood_off,
    fits="So thin a wall of wood is why dadoes on both sides of a divider are cut shallower, or the shelves staggered.",
    hints=(
        "Draw the divider from the front, cut across: a dado from the left, a dado from the right.",
        "Both take from the same {t}.",
    ),
    working=_pair_working,
    tolerance=Twin(read_length("0.005 in"), read_length("0.1 mm")),
    caliper=True,
)


def _tongue_givens(draw: Draw) -> list[Given]:
    return [
        case_width(draw), by_the_rule(draw, "sides, thickness as measured"),
        draw.pick("d", "dadoes, depth", inch=("1/4 in", "5/16 in"), mm=("7 mm", "8 mm")),
        draw.pick("k", "tongues, thickness", inch=("3/16 in", "1/4 in"), mm=("5 mm", "6 mm")),
        draw.pick("e", "left open under each tongue", inch=("1/32 in", "1/16 in"), mm=("1 mm", "1.5 mm")),
    ]


def _tongues(givens: Givens) -> int:
    case = joint_case(
        (givens["t"],), width=givens["W"], tongue=givens["k"], tongue_dado=givens["d"], end_gap=givens["e"]
    )
    return across(case, "bottom")


def _tongue_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, gain = givens.texts, givens["d"] - givens["e"]
    return (
        f"each tongue = depth - what stays open = {text['d']} - {text['e']} = {say.length(gain)}",
        f"bottom = {text['W']} - 2 x {text['t']} + 2 x {say.length(gain)} = {say.length(_tongues(givens))}",
        f"How thick the tongue is, {text['k']}, changes the width of the dado, not the length of the bottom.",
    )


TONGUES = Exercise(
    id="03-tongues",
    title="A bottom with tongues",
    rung="two steps",
    question=(
        "The case for chain tools is {W} wide outside, its sides are {t} thick. The bottom has a tongue {k} thick at "
        "each end. The dadoes for the tongues are {d} deep, and {e} is to stay open under each tongue, for glue. How "
        "long is the bottom, over its tongues?"
    ),
    givens=_tongue_givens,
    right=_tongues,
    misconceptions=(
        Misconception(
            "gap-forgotten", lambda g: g["W"] - 2 * g["t"] + 2 * g["d"],
            "That lets the tongues reach to the floors of the dadoes.",
            "How deep is the dado, and how much of that stays open?",
        ),
        Misconception(
            "gap-added", lambda g: g["W"] - 2 * g["t"] + 2 * (g["d"] + g["e"]),
            "That adds what stays open to the tongue.",
            "Is the tongue longer or shorter than its dado is deep?",
        ),
        Misconception(
            "one-tongue", lambda g: g["W"] - 2 * g["t"] + g["d"] - g["e"],
            "That counts one tongue.",
            "How many ends has the bottom?",
        ),
        Misconception(
            "no-joint", lambda g: g["W"] - 2 * g["t"],
            "That is the room between the sides: the bottom would be butted.",
            "The tongues are part of the bottom: they come on top.",
        ),
        Misconception(
            "thickness", lambda g: g["W"] - 2 * g["t"] + 2 * g["k"],
            "That adds the thickness of the tongues, not their length.",
            "A tongue has a thickness and a length. Which of them goes into the side?",
        ),
    ),
    effect=tongues_off,
    fits="Its shoulders close on the sides, and {e} stays open under each tongue.",
    hints=(
        "How long is one tongue? The dado is {d} deep, and {e} of that stays open.",
        "Between the sides there is the outside width less two sides.",
        "Two ends, two tongues.",
    ),
    working=_tongue_working,
    tolerance=RULE,
    version=2,
)

EXERCISES = (PLACE, WIDTH, WOOD, PAIR, TONGUES, ANOTHERS_MARKS)
SETS = (TONGUE_SET,)
