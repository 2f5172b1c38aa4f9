"""Drawer clearance, two steps: a box front between rabbeted sides, and a bottom in grooves."""

from shoplib.lessons.drawer_effects import bottom_off, front_off
from shoplib.lessons.drawer_givens import (
    bottom_groove,
    bottom_slack,
    box_outside,
    box_stock,
    box_stock_as_sold,
    corner_rabbet,
)
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.small_box import part, small_box
from shoplib.measure import INCH, MM
from shoplib.model.solved import Cabinet

RULE = Twin(INCH // 64, MM // 5)
"""What an answer may be off and still be right: one step of a fine rule."""


def _front_givens(draw: Draw) -> list[Given]:
    return [box_outside(draw), box_stock_as_sold(draw), box_stock(draw), corner_rabbet(draw)]


def _box_of_width(givens: Givens, **more: int) -> Cabinet:
    wide = givens["B"] + INCH
    return small_box(wide, wide, side=INCH // 2, stock=givens["s"], **more)


def _front(givens: Givens) -> int:
    return part(_box_of_width(givens, rabbet=givens["r"]), "box front", 0)


def _front_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, sides, rabbets = givens.texts, say.exact(2 * givens["s"]), say.exact(2 * givens["r"])
    return (
        "box front = box - 2 x side as measured + 2 x rabbet",
        f"box front = {text['B']} - 2 x {text['s']} + 2 x {text['r']} = {text['B']} - {sides} + {rabbets}",
        f"box front = {say.length(_front(givens))}; the {text['T']} on the label stands in no sum",
    )


FRONT = Exercise(
    id="04-box-front",
    title="Front and back between the sides",
    rung="two steps",
    question=(
        "The box is to be {B} wide outside. Its sides were sold as {T}; the calipers give a mean of {s}. Each side has "
        "a rabbet {r} deep at both ends, and front and back lie in these. How long is the box front?"
    ),
    givens=_front_givens,
    right=_front,
    misconceptions=(
        Misconception(
            "outside", lambda g: g["B"],
            "That is the outside width of the box.", "Front and back end inside the sides: how far from the outside?",
        ),
        Misconception(
            "no-joint", lambda g: g["B"] - 2 * g["s"],
            "That is the room between the sides, with no rabbet counted.",
            "Front and back go on into the sides, by the depth of the rabbet.",
        ),
        Misconception(
            "offcut", lambda g: g["B"] - g["s"],
            "That takes one thickness off, as if one offcut were held beside the width.",
            "One thickness stands for two sides less two rabbets only where a rabbet is half a side. Is it here?",
        ),
        Misconception(
            "one-joint", lambda g: g["B"] - 2 * g["s"] + g["r"],
            "That counts one rabbet of {r}.", "How many ends has the front?",
        ),
        Misconception(
            "nominal", lambda g: g["B"] - 2 * g["T"] + 2 * g["r"],
            "That is the sum with {T}, the name of the stock.", "Look at what the calipers read.",
        ),
    ),
    effect=front_off,
    fits="With it the box comes to {B} outside.",
    hints=(
        "First the room between the sides: {B} less two sides as measured.",
        "Then add what goes into the rabbets, {r} at each end.",
        "{B} - 2 x {s} + 2 x {r}.",
    ),
    working=_front_working,
    tolerance=RULE,
)


def _bottom_givens(draw: Draw) -> list[Given]:
    return [box_outside(draw), box_stock(draw), bottom_groove(draw), bottom_slack(draw)]


def _bottom(givens: Givens) -> int:
    return part(_box_of_width(givens, groove=givens["q"], slack=givens["e"]), "box bottom", 0)


def _bottom_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, sides, grooves = givens.texts, say.exact(2 * givens["s"]), say.exact(2 * givens["q"])
    return (
        "bottom = box - 2 x side + 2 x groove - slack",
        f"bottom = {text['B']} - 2 x {text['s']} + 2 x {text['q']} - {text['e']} = "
        f"{text['B']} - {sides} + {grooves} - {text['e']}",
        f"bottom = {say.length(_bottom(givens))}",
    )


BOTTOM = Exercise(
    id="04-bottom",
    title="A bottom in grooves",
    rung="two steps",
    question=(
        "The box is {B} wide outside, its sides are {s} thick. The bottom lies in grooves {q} deep in both sides, and "
        "is made {e} narrower than they would let it be, so that it does not jam. How wide is the bottom?"
    ),
    givens=_bottom_givens,
    right=_bottom,
    misconceptions=(
        Misconception(
            "no-slack", lambda g: g["B"] - 2 * g["s"] + 2 * g["q"],
            "That fills both grooves to their floors.", "What was the bottom to be narrower by?",
        ),
        Misconception(
            "no-groove", lambda g: g["B"] - 2 * g["s"],
            "That is the room between the sides, with no groove counted.",
            "The bottom goes on into the grooves at both sides.",
        ),
        Misconception(
            "one-groove", lambda g: g["B"] - 2 * g["s"] + g["q"],
            "That counts one groove of {q}, and no slack.", "How many sides have a groove?",
        ),
        Misconception(
            "outside", lambda g: g["B"],
            "That is the outside width of the box.", "How much of each side is left beyond its groove?",
        ),
    ),
    effect=bottom_off,
    fits="It stands well in both grooves, with {e} to spare.",
    hints=(
        "First the room between the sides: {B} less two sides.",
        "Two grooves of {q} come on again.",
        "Then {e} off, once: it is the slack of both sides together.",
    ),
    working=_bottom_working,
    tolerance=RULE,
)
