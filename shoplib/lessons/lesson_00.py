"""The exercise of the start page: one right answer, read off what a slider does."""

from dataclasses import replace

from shoplib.lessons.effects import bottom_off
from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.small_case import bottom_length, small_case
from shoplib.lessons.usual_givens import case_width, dado_depth, side_by_the_rule
from shoplib.measure import INCH, MM


def _givens(draw: Draw) -> list[Given]:
    width, side = case_width(draw), side_by_the_rule(draw)
    dado = replace(dado_depth(draw), what="", called="depth of a dado")
    ranges = {"inch": ("2 in", "5 in", "1/2 in"), "mm": ("50 mm", "120 mm", "10 mm")}
    more = draw.tape("X", "the slider goes up by", **ranges)
    before = small_case(width.value, side.value, dado=dado.value)
    bottom = draw.derived("L", "bottom, length before", bottom_length(before))
    return [width, bottom, more, side, dado]


def _right(givens: Givens) -> int:
    after = small_case(givens["W"] + givens["X"], givens["t"], dado=givens["d"])
    return bottom_length(after)


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    return (
        "The sides and the dadoes stay as they are, so the bottom grows by just what the case grows.",
        f"bottom = {text['L']} + {text['X']} = {say.length(_right(givens))}",
        f"The case is then {say.length(givens['W'] + givens['X'])} wide, from {text['W']}.",
    )


FOLLOWS = Exercise(
    id="00-bottom-follows",
    title="What the slider did",
    rung="read a number off",
    question=(
        "A case for the truing bench is {W} wide, and its bottom is {L} long. You drag the width slider up "
        "by {X}. How long is the bottom now?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=(
        Misconception(
            "unchanged", lambda g: g["L"],
            "That is the bottom of the case before you dragged.",
            "Drag the slider and watch the row of the bottom: does it stand still?",
        ),
        Misconception(
            "outside", lambda g: g["W"] + g["X"],
            "That is how wide the whole case is now.",
            "The bottom lies between the sides: find its own row in the table of parts.",
        ),
        Misconception(
            "twice", lambda g: g["L"] + 2 * g["X"],
            "That is the old bottom with {X} added twice, once for each side.",
            "The case grows by {X} altogether, not at each side.",
        ),
        Misconception(
            "other-way", lambda g: g["L"] - g["X"],
            "That is the old bottom with {X} taken away.",
            "The slider went up: does the drawing grow or shrink?",
        ),
    ),
    effect=bottom_off,
    fits="The bottom follows the case: with that length it sits home in both dadoes.",
    hints=(
        "The thickness of the sides and the depth of the dadoes did not change.",
        "Whatever the case gains in width, the bottom gains in length.",
        "Add {X} to {L}.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 5),
    version=2,
)

EXERCISES = (FOLLOWS,)
