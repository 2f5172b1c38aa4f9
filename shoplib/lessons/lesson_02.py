"""The exercises of carcass sizing, up the ladder: read off, one step, two steps, another's list, a whole set."""

from shoplib.lessons.effects import back_off, bay_off, bottom_off, thickness_off
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.noors_list import ANOTHERS_LIST
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.small_case import back_width, bay_width, bottom_length, small_case
from shoplib.lessons.usual_givens import (
    case_width,
    dado_depth,
    rabbet_width,
    sheet_as_measured,
    sheet_as_sold,
    side_by_the_rule,
)
from shoplib.lessons.whole_case import WHOLE_CASE
from shoplib.measure import INCH, MM, read_length, share

RULE = Twin(INCH // 64, MM // 5)
"""What an answer may be off and still be right: one step of a fine rule."""


# Read a number off -------------------------------------------------------------------------------


def _card(draw: Draw) -> list[Given]:
    mean, nominal = sheet_as_measured(draw), sheet_as_sold(draw)
    ranges = {"inch": ("0.008 in", "0.012 in", "0.001 in"), "mm": ("0.15 mm", "0.25 mm", "0.05 mm")}
    spread = draw.reading("s", "", **ranges)
    thin = draw.derived_reading("thin", "thinnest reading", mean.value - spread.value)
    thick = draw.derived_reading("thick", "thickest reading", mean.value + spread.value)
    return [nominal, thin, thick, mean]


THICKNESS = Exercise(
    id="02-thickness",
    title="The number for the sums",
    rung="read a number off",
    question=(
        "The sheet for the tool case was sold as {T}. Its card gives three caliper readings, {thin}, {t} and "
        "{thick}, and their mean, {t}. Which thickness goes into the sums for lengths and widths?"
    ),
    givens=_card,
    right=lambda g: g["t"],
    misconceptions=(
        Misconception(
            "nominal", lambda g: g["T"],
            "That is the name under which the sheet is sold, not its thickness.",
            "Look on the card for what the calipers read.",
        ),
        Misconception(
            "thickest", lambda g: g["thick"],
            "That is the thickest reading, which decides how wide a dado is cut.",
            "A sum meets the whole sheet, not only its thickest corner.",
        ),
        Misconception(
            "thinnest", lambda g: g["thin"],
            "That is the thinnest reading.",
            "A sum meets the whole sheet, not only its thinnest corner.",
        ),
    ),
    effect=thickness_off,
    fits="The mean keeps the widths right over the whole sheet; the thickest reading is for dado widths.",
    hints=(
        "{T} is only a name: calipers tell what the sheet is.",
        "One reading is one corner. Which number stands for the whole sheet?",
    ),
    working=lambda g, say: (
        f"mean of {g.texts['thin']}, {g.texts['t']} and {g.texts['thick']} = {say.length(g['t'])}",
        f"The name {g.texts['T']} stands in no sum.",
    ),
    tolerance=Twin(read_length("0.002 in"), read_length("0.04 mm")),
    caliper=True,
)


# One step ----------------------------------------------------------------------------------------


def _back_givens(draw: Draw) -> list[Given]:
    width = case_width(draw)
    side, rabbet = side_by_the_rule(draw), rabbet_width(draw)
    inside = draw.derived("I", "between the sides", width.value - 2 * side.value)
    return [width, inside, rabbet, side]


def _back(givens: Givens) -> int:
    return back_width(small_case(givens["W"], givens["t"], rabbet=givens["b"]))


def _back_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, both = givens.texts, say.length(2 * givens["b"])
    return (
        f"The outside width, {text['W']}, is not needed: between the sides there is {text['I']}.",
        "back = between the sides + 2 x rabbet width",
        f"back = {text['I']} + 2 x {text['b']} = {text['I']} + {both} = {say.length(_back(givens))}",
    )


BACK = Exercise(
    id="02-back",
    title="A back in rabbets",
    rung="one step",
    question=(
        "The parts case is {W} wide outside and {I} between its sides. A rabbet {b} wide runs down the back "
        "edge of each side, and the back fills both. How wide is the back?"
    ),
    givens=_back_givens,
    right=_back,
    misconceptions=(
        Misconception(
            "outside", lambda g: g["W"],
            "That is the outside width of the case.",
            "The back lies in the rabbets, not over the edges: how much of each side is left beside it?",
        ),
        Misconception(
            "inside", lambda g: g["W"] - 2 * g["t"],
            "That is the room between the sides, with no rabbet counted.",
            "Follow the back to its end in the drawing: it goes on past the inner face of the side.",
        ),
        Misconception(
            "one-rabbet", lambda g: g["W"] - 2 * g["t"] + g["b"],
            "That counts one rabbet of {b}.",
            "How many sides have a rabbet?",
        ),
        Misconception(
            "sign", lambda g: g["W"] - 2 * g["t"] - 2 * g["b"],
            "That takes the rabbets away from the room between the sides.",
            "Does a rabbet make more room for the back, or less?",
        ),
    ),
    effect=back_off,
    fits="It fills the {I} between the sides and the {b} of each rabbet.",
    hints=(
        "Begin with what lies between the sides, {I}.",
        "At each side the back goes on by the width of the rabbet, {b}.",
        "Two sides, two rabbets.",
    ),
    working=_back_working,
    tolerance=RULE,
    version=2,
)


# Two steps ---------------------------------------------------------------------------------------


def _bottom_givens(draw: Draw) -> list[Given]:
    return [case_width(draw), sheet_as_sold(draw), sheet_as_measured(draw), dado_depth(draw)]


def _bottom(givens: Givens) -> int:
    return bottom_length(small_case(givens["W"], givens["t"], dado=givens["d"]))


def _bottom_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, sides, dadoes = givens.texts, say.exact(2 * givens["t"]), say.exact(2 * givens["d"])
    return (
        "bottom = outside width - 2 x side + 2 x dado depth",
        f"bottom = {text['W']} - 2 x {text['t']} + 2 x {text['d']} = {text['W']} - {sides} + {dadoes}",
        f"bottom = {say.length(_bottom(givens))}; the {text['T']} on the label stands in no sum.",
    )


BOTTOM = Exercise(
    id="02-bottom",
    title="A bottom between the sides",
    rung="two steps",
    question=(
        "The case under the truing bench is to be {W} wide outside. Its sheet was sold as {T}; the calipers "
        "give a mean of {t}. Each side gets a dado {d} deep, and the bottom goes to the floor of both. How "
        "long is the bottom, from left to right?"
    ),
    givens=_bottom_givens,
    right=_bottom,
    misconceptions=(
        Misconception(
            "nominal", lambda g: g["W"] - 2 * g["T"] + 2 * g["d"],
            "That is the sum with {T}, the name of the sheet.",
            "Look at what the calipers read.",
        ),
        Misconception(
            "no-joint", lambda g: g["W"] - 2 * g["t"],
            "That is the room between the sides, with no dado counted.",
            "The bottom goes on into the sides: look at its ends in the drawing, where the sides are cut through.",
        ),
        Misconception(
            "one-joint", lambda g: g["W"] - 2 * g["t"] + g["d"],
            "That counts one dado of {d}.",
            "How many ends has the bottom?",
        ),
        Misconception(
            "sign", lambda g: g["W"] - 2 * g["t"] - 2 * g["d"],
            "That takes the dadoes away from the room between the sides.",
            "Does a dado make the bottom longer or shorter?",
        ),
        Misconception(
            "one-side", lambda g: g["W"] - g["t"] + 2 * g["d"],
            "That takes one side of {t} off the width.",
            "How many sides stand between the bottom and the outside of the case?",
        ),
        Misconception(
            "outside", lambda g: g["W"],
            "That is the outside width of the whole case.",
            "The bottom ends inside the sides: how much of each side is left beyond its end?",
        ),
    ),
    effect=bottom_off,
    fits="Pushed home in both dadoes, it brings the case to {W} outside.",
    hints=(
        "First find the room between the sides: the outside width less two sides as measured.",
        "Then add what goes into the dadoes, {d} at each end.",
        "{W} - 2 x {t} + 2 x {d}.",
    ),
    working=_bottom_working,
    tolerance=RULE,
    version=3,
)


def _bay_givens(draw: Draw) -> list[Given]:
    return [case_width(draw), sheet_as_measured(draw), draw.count("n", "bays", 2, 4)]


def _nth(total: int, count: int) -> int:
    return share(total, count, 1)[0]


def _bay(givens: Givens) -> int:
    return bay_width(small_case(givens["W"], givens["t"], bays=givens["n"]))


def _bay_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, count = givens.texts, givens["n"]
    wood = (count + 1) * givens["t"]
    sides = f"{text['W']} - {count + 1} x {text['t']}"
    return (
        f"{count} bays have 2 sides and {count - 1} divider{'s' if count > 2 else ''}: {count + 1} uprights.",
        f"bay = ({sides}) / {count} = ({text['W']} - {say.exact(wood)}) / {count}",
        f"bay = {say.exact(givens['W'] - wood)} / {count} = {say.length(_bay(givens))}",
    )


BAYS = Exercise(
    id="02-bays",
    title="Equal bays",
    rung="two steps",
    question=(
        "The wall case for brake and gear parts is {W} wide outside and has {n} bays of equal width. Sides "
        "and dividers are all {t} thick. A spacer, a stick as long as a "
        "bay is wide inside, sets the dividers. How long is it?"
    ),
    givens=_bay_givens,
    right=_bay,
    misconceptions=(
        Misconception(
            "no-wood", lambda g: _nth(g["W"], g["n"]),
            "That shares the outside width, as if sides and dividers had no thickness.",
            "Count the uprights and take their wood away before you share.",
        ),
        Misconception(
            "no-dividers", lambda g: _nth(g["W"] - 2 * g["t"], g["n"]),
            "That takes the two sides away, but no divider.",
            "What stands between two bays?",
        ),
        Misconception(
            "a-divider-each", lambda g: _nth(g["W"] - (g["n"] + 2) * g["t"], g["n"]),
            "That takes away two sides and {n} dividers.",
            "Draw the {n} bays and count the dividers between them.",
        ),
    ),
    effect=lambda g, off, say: bay_off(g, off, say, _bay(g)),
    fits="With a spacer that long the last of the {n} bays closes on the right side.",
    hints=(
        "Draw the {n} bays. How many uprights do you see, sides and dividers together?",
        "Take the wood of all uprights off the outside width; what is left is air.",
        "Share the air among {n} bays.",
    ),
    working=_bay_working,
    tolerance=RULE,
)

EXERCISES = (THICKNESS, BACK, BOTTOM, BAYS, ANOTHERS_LIST)
SETS = (WHOLE_CASE,)
