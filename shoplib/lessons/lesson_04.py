"""The exercises of drawer clearance, up the ladder: read off, one step, two steps, another's list, a whole box."""

from shoplib.lessons.box_boards import BOX_BOARDS
from shoplib.lessons.box_parts import BOTTOM, FRONT, RULE
from shoplib.lessons.drawer_effects import box_off, reading_off
from shoplib.lessons.drawer_givens import box_stock, opening, slide_side
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception
from shoplib.lessons.ilses_list import ILSES_LIST
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.slide_length import SLIDE_LENGTH
from shoplib.lessons.small_box import box_width, small_box
from shoplib.measure import INCH, narrowest, share, thickest


def _mean(givens: Givens) -> int:
    return share(givens["F"] + givens["R"], 2, 1)[0]


def _ends(givens: Givens) -> list[int]:
    return [givens["F"], givens["R"]]


# Read a number off -------------------------------------------------------------------------------


def _card(draw: Draw) -> list[Given]:
    front, rear = opening(draw)
    less = draw.pick("less", "", inch=("3/16 in", "1/4 in"), mm=("5 mm", "6 mm")).value
    more = draw.pick("more", "", inch=("1/16 in",), mm=("1 mm",)).value
    low = narrowest([front.value, rear.value]) - less
    return [
        Given("F", "lower drawer, at the front", front.value, front.text),
        Given("R", "lower drawer, at the back", rear.value, rear.text),
        draw.derived("F2", "upper drawer, at the front", low),
        draw.derived("R2", "upper drawer, at the back", low + more),
    ]


def _governing(givens: Givens) -> int:
    slides = INCH // 2
    return box_width(small_box(givens["F"], givens["R"], side=slides)) + 2 * slides


READING = Exercise(
    id="04-reading",
    title="The reading that decides the box",
    rung="read a number off",
    question=(
        "Two drawers go into one opening. At the height of the lower slides it reads {F} at the front and {R} at the "
        "back, at the height of the upper ones {F2} and {R2}. Which width do you start from for the lower box?"
    ),
    givens=_card,
    right=_governing,
    misconceptions=(
        Misconception(
            "widest", lambda g: thickest(_ends(g)),
            "That is the wider of the two readings.",
            "The box passes both ends: which of them stops it?",
        ),
        Misconception(
            "mean", _mean,
            "That is the mean of the two readings.",
            "A mean is for the thickness of a sheet. A box must pass the narrowest place.",
        ),
        Misconception(
            "whole-case", lambda g: g["F2"],
            "That is the narrowest reading of the whole case, at the height of the other drawer.",
            "Look at the height at which the lower box runs.",
        ),
    ),
    effect=reading_off,
    fits="The narrower end decides, at the height of the drawer's own slides.",
    hints=(
        "Each drawer has readings of its own: leave those of the upper one aside.",
        "The box goes in at the front and runs to the back: the smaller of the two stops it.",
    ),
    working=lambda g, say: (
        f"The readings of the upper drawer, {g.texts['F2']} and {g.texts['R2']}, are for the upper box.",
        f"Lower drawer: the smaller of {g.texts['F']} and {g.texts['R']} decides, {say.length(_governing(g))}",
        f"shims at the wider end, together = {say.length(thickest(_ends(g)))} - {say.length(_governing(g))} = "
        f"{say.length(thickest(_ends(g)) - _governing(g))}",
    ),
    tolerance=RULE,
)


# One step ----------------------------------------------------------------------------------------


def _width_givens(draw: Draw) -> list[Given]:
    return [*opening(draw), slide_side(draw), box_stock(draw)]


def _width(givens: Givens) -> int:
    return box_width(small_box(givens["F"], givens["R"], side=givens["c"], stock=givens["s"]))


def _width_working(givens: Givens, say: Say) -> tuple[str, ...]:
    text, least = givens.texts, say.exact(narrowest(_ends(givens)))
    return (
        f"The narrower end decides: {least}",
        f"The sides, {text['s']} thick, lie inside that width: their thickness is not needed.",
        "box = narrowest opening - 2 x what a slide takes",
        f"box = {least} - 2 x {text['c']} = {least} - {say.exact(2 * givens['c'])} = {say.length(_width(givens))}",
    )


WIDTH = Exercise(
    id="04-box-width",
    title="From the opening to the box",
    rung="one step",
    question=(
        "The opening for the parts drawer reads {F} at the front and {R} at the back. A slide takes {c} at each side, "
        "and the box sides are {s} thick. How wide is the box, outside?"
    ),
    givens=_width_givens,
    right=_width,
    misconceptions=(
        Misconception(
            "one-slide", lambda g: narrowest(_ends(g)) - g["c"],
            "That takes one slide of {c} off.", "How many sides has the box?",
        ),
        Misconception(
            "widest", lambda g: thickest(_ends(g)) - 2 * g["c"],
            "That begins with the wider end.", "The box must pass the narrower end too.",
        ),
        Misconception(
            "mean", lambda g: _mean(g) - 2 * g["c"],
            "That begins with the mean of the two readings.", "The box must pass the narrower end, not the mean.",
        ),
        Misconception(
            "inside", lambda g: narrowest(_ends(g)) - 2 * g["c"] - 2 * g["s"],
            "That is the width inside the box: it takes the two sides off as well.",
            "The slides lie against the outside of the box.",
        ),
        Misconception(
            "twice", lambda g: narrowest(_ends(g)) - 4 * g["c"],
            "That takes {c} off four times.", "{c} is what one slide takes; there are two.",
        ),
    ),
    effect=box_off,
    fits="It goes in at the narrower end with {c} at each side.",
    hints=(
        "Which of the two readings stops the box?",
        "From that one take what the slides take up, one at each side.",
        "Two slides of {c}.",
    ),
    working=_width_working,
    tolerance=RULE,
)

EXERCISES = (READING, WIDTH, FRONT, BOTTOM, SLIDE_LENGTH, ILSES_LIST)
SETS = (BOX_BOARDS,)
