"""The exercises of fronts and gaps, up the ladder: read off, one step, two steps, another's list, a whole bay."""

from shoplib.lessons.bay_fronts import BAY_FRONTS
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.front_effects import divider_off, overlay_off, reading_off, stack_off
from shoplib.lessons.front_givens import covered, divider, opening_height, opening_width, usual_gap, wide_gap
from shoplib.lessons.front_season import SEASON
from shoplib.lessons.irmas_list import IRMAS_LIST
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.small_fronts import THICK, beside_divider, front_height, front_width, small_fronts
from shoplib.measure import INCH, MM, narrowest, share, thickest

RULE = Twin(INCH // 64, MM // 5)
"""What an answer may be off and still be right: one step of a fine rule."""


# Read a number off -------------------------------------------------------------------------------


def _readings(givens: Givens) -> list[int]:
    return [givens["top"], givens["middle"], givens["bottom"]]


def _card(draw: Draw) -> list[Given]:
    least = draw.tape("least", "", inch=("14 1/32 in", "22 in", "1/16 in"), mm=("360.5 mm", "560 mm", "1 mm")).value
    # So little apart that the case need not be straightened; the middle one is their mean, and on a mark of the rule.
    most = draw.pick("most", "", inch=("3/32 in",), mm=("2 mm",))
    turn = draw.count("turn", "", 0, 2).value
    sizes = [least, least + share(most.value, 2, 1)[0], least + most.value]
    names = ("top", "middle", "bottom")
    return [
        *(draw.derived(name, f"opening, width at the {name}", sizes[(number + turn) % 3])
          for number, name in enumerate(names)),
        draw.pick("g", "gap, at each side", inch=("3/32 in", "1/8 in"), mm=("2 mm", "2.5 mm", "3 mm")), most,
    ]


def _governing(givens: Givens) -> int:
    return narrowest(_readings(givens))


READING = Exercise(
    id="05-reading",
    title="The reading that decides the front",
    rung="read a number off",
    question=(
        "One inset front, cut square, is to close an opening that reads {top} at the top, {middle} in the middle and "
        "{bottom} at the bottom, with a gap of {g} at each side. From which width do you take the gaps off?"
    ),
    givens=_card,
    right=_governing,
    misconceptions=(
        Misconception(
            "widest", lambda g: thickest(_readings(g)),
            "That is the widest of the three readings.", "The front must pass all three places, and leave gaps there.",
        ),
        Misconception(
            "mean", lambda g: share(sum(_readings(g)), 3, 1)[0],
            "That is the mean of the three readings, which here the one between the others is too.",
            "A front does not bend to a mean: where would its gaps be too narrow?",
        ),
        Misconception(
            "gaps-off", lambda g: narrowest(_readings(g)) - 2 * g["g"],
            "That is the front, with both gaps taken off.", "Which of the three readings did you take them from?",
        ),
    ),
    effect=reading_off,
    fits=(
        "The front passes all three places, and where the opening is widest {most} more stands open. Is that too much "
        "for the eye, square the case first, or leave the front full and plane it to the opening."
    ),
    hints=(
        "Think of the finished front: it is equally wide from top to bottom.",
        "Of the three, take the one that leaves least room.",
    ),
    working=lambda g, say: (
        f"Readings: {g.texts['top']}, {g.texts['middle']}, {g.texts['bottom']}; the gaps of {g.texts['g']} come off "
        "after.",
        f"The smallest of them decides: {say.length(_governing(g))}",
        f"widest less narrowest = {say.length(thickest(_readings(g)))} - {say.length(_governing(g))} = "
        f"{say.length(thickest(_readings(g)) - _governing(g))}",
    ),
    tolerance=Twin(INCH // 128, MM // 5),
    version=2,
)


# One step ----------------------------------------------------------------------------------------


def _overlay(givens: Givens) -> int:
    return front_width(small_fronts(width=givens["W"], reveal=THICK - givens["a"], kind="overlay"))


OVERLAY = Exercise(
    id="05-overlay",
    title="A front before its opening",
    rung="one step",
    question=(
        "An overlay front covers {a} of the side at the left and as much at the right. Its opening is {W} wide; the "
        "gap to the front above is {g}. How wide is the front?"
    ),
    givens=lambda draw: [opening_width(draw), covered(draw), usual_gap(draw)],
    right=_overlay,
    misconceptions=(
        Misconception(
            "one-side", lambda g: g["W"] + g["a"],
            "That adds the overlay of {a} once.", "How many sides does the front cover?",
        ),
        Misconception(
            "inset", lambda g: g["W"] - 2 * g["g"],
            "That is the sum for an inset front: opening less two gaps.",
            "Does this front stand in the opening, or before it?",
        ),
        Misconception(
            "opening", lambda g: g["W"],
            "That is the opening itself.", "The front reaches past the opening, at both sides.",
        ),
    ),
    effect=overlay_off,
    fits="It covers {a} of each side.",
    hints=(
        "Begin with the opening. Does an overlay front end inside it or past it?",
        "Once {a} at the left, once at the right.",
    ),
    working=lambda g, say: (
        f"The gap of {g.texts['g']} lies above the front: it stands in no sum of widths.",
        "front = opening + 2 x overlay",
        f"front = {g.texts['W']} + 2 x {g.texts['a']} = {g.texts['W']} + {say.exact(2 * g['a'])} = "
        f"{say.length(_overlay(g))}",
    ),
    tolerance=RULE,
)


# Two steps ---------------------------------------------------------------------------------------


def _inset(givens: Givens) -> int:
    return front_height(small_fronts(height=givens["O"], count=givens["n"], gap=givens["g"]), 2)


def _inset_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, n = givens.texts, givens["n"]
    left = givens["O"] - (n + 1) * givens["g"]
    return (
        f"gaps: one below each front, and one above the top one, so {n + 1}",
        f"left for the fronts = {text['O']} - {n + 1} x {text['g']} = {say.length(left)}",
        f"one front = ({text['O']} - {n + 1} x {text['g']}) / {n} = {say.length(_inset(givens))}",
    )


INSET = Exercise(
    id="05-inset",
    title="Equal fronts in one opening",
    rung="two steps",
    question=(
        "{n} inset fronts of equal height stand one above another in an opening {O} high, with a gap of {g} "
        "everywhere: below, between and above. How high is one front?"
    ),
    givens=lambda draw: [opening_height(draw), wide_gap(draw), draw.count("n", "", 3, 3)],
    right=_inset,
    misconceptions=(
        Misconception(
            "a-gap-each", lambda g: share(g["O"] - g["n"] * g["g"], g["n"], 1)[0],
            "That counts as many gaps as fronts.", "Draw the fronts and count the gaps, from the bottom to the top.",
        ),
        Misconception(
            "gaps-between", lambda g: share(g["O"] - (g["n"] - 1) * g["g"], g["n"], 1)[0],
            "That counts the gaps between the fronts only.", "An inset front has a gap to the case too.",
        ),
        Misconception(
            "no-gaps", lambda g: share(g["O"], g["n"], 1)[0],
            "That shares the opening and leaves no gap at all.",
            "What is left of the opening when the gaps are taken off?",
        ),
        Misconception(
            "two-gaps-each", lambda g: share(g["O"], g["n"], 1)[0] - 2 * g["g"],
            "That takes two gaps off every front.", "Two neighbours share the gap between them.",
        ),
    ),
    effect=stack_off,
    fits="The fronts and their gaps just fill the opening.",
    hints=(
        "First count the gaps, from the bottom of the opening to its top.",
        "There is one gap more than there are fronts.",
        "Take all gaps off {O}, then share what is left among the fronts.",
    ),
    working=_inset_working,
    tolerance=RULE,
)


def _on_divider(givens: Givens) -> int:
    return front_width(beside_divider(givens))


DIVIDER = Exercise(
    id="05-divider",
    title="Two fronts on one divider",
    rung="two steps",
    question=(
        "Two overlay fronts meet on a divider that measures {t}, with a gap of {g} between them, and each covers as "
        "much of it as the other. At its outer end each covers {a} of the side. The opening is {W} wide. How wide is "
        "one front?"
    ),
    givens=lambda draw: [opening_width(draw), covered(draw), divider(draw), usual_gap(draw)],
    right=_on_divider,
    misconceptions=(
        Misconception(
            "not-shared", lambda g: g["W"] + g["a"] + g["t"] - g["g"],
            "That gives one front what both cover of the divider together.", "There are two fronts on this divider.",
        ),
        Misconception(
            "no-gap", lambda g: g["W"] + g["a"] + share(g["t"], 2, 1)[0],
            "That covers half of the divider, with no gap.", "The two fronts would touch: where does the gap go?",
        ),
        Misconception(
            "gap-each", lambda g: g["W"] + g["a"] + share(g["t"], 2, 1)[0] - g["g"],
            "That takes the whole gap off each front.", "There is one gap, and each front gives half of it.",
        ),
        Misconception(
            "like-the-side", lambda g: g["W"] + 2 * g["a"],
            "That covers as much of the divider as of the side.", "On the divider there are two fronts, and a gap.",
        ),
    ),
    effect=divider_off,
    fits="The two fronts leave just {g} between them.",
    hints=(
        "Begin with the opening, and add what is covered at each end.",
        "What do the two fronts cover of the divider together? Take the gap off {t}.",
        "Half of that is for one front.",
    ),
    working=lambda g, say: (
        f"of the divider = ({g.texts['t']} - {g.texts['g']}) / 2 = {say.exact(share(g['t'] - g['g'], 2, 1)[0])}",
        f"front = opening + overlay at the side + half of what is left of the divider = {g.texts['W']} + "
        f"{g.texts['a']} + ({g.texts['t']} - {g.texts['g']}) / 2 = {say.length(_on_divider(g))}",
    ),
    tolerance=RULE,
)

EXERCISES = (READING, OVERLAY, INSET, DIVIDER, SEASON, IRMAS_LIST)
SETS = (BAY_FRONTS,)
