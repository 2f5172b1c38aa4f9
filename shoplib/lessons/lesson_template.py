"""The exercise of the style guide for a new lesson: one exercise with all that an exercise must have.

Copy this module, give the exercise your lesson's number, and put your own numbers, rule and slips in place.
"""

from shoplib.lessons.exercise import Exercise, Given, Givens, Misconception, Twin
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.small_case import bay_width, small_case
from shoplib.lessons.usual_givens import case_width, sheet_as_measured, sheet_as_sold
from shoplib.measure import INCH, MM


def _givens(draw: Draw) -> list[Given]:
    # What is given, drawn for each learner, on marks that a shop can set or read; each with its millimetre twin.
    return [case_width(draw), sheet_as_sold(draw), sheet_as_measured(draw)]


def _right(givens: Givens) -> int:
    # Read off boards that the model solved: never a second formula beside the model's own.
    return bay_width(small_case(givens["W"], givens["t"]))


def _working(givens: Givens, say: Say) -> tuple[str, ...]:
    text = givens.texts
    return (
        "room = outside width - 2 x side, as measured",
        f"room = {text['W']} - 2 x {text['t']} = {say.length(_right(givens))}",
        f"The {text['T']} on the label stands in no sum.",
    )


def _off(_givens: Givens, off: int, say: Say) -> str:
    # What the wrong number does in the shop, with its amount.
    by = say.amount(off)
    if off > 0:
        return f"A tray of that width would be {by} too wide and would not go between the sides."
    return f"A tray of that width would leave {by} open beside it."


ROOM = Exercise(
    id="template-room",
    title="Room between the sides",
    rung="one step",
    question=(
        "A case for the wheel tools is {W} wide outside. Its sheet was sold as {T}; the calipers give a mean of {t}. "
        "How wide is the room between its sides?"
    ),
    givens=_givens,
    right=_right,
    misconceptions=(  # slips that people really make, three or more, each a rule of the givens
        Misconception(
            "outside", lambda g: g["W"],
            "That is the outside width of the case.",
            "The sides have a thickness: how much of the width is wood?",
        ),
        Misconception(
            "nominal", lambda g: g["W"] - 2 * g["T"],
            "That is the sum with {T}, the name of the sheet.",
            "Look at what the calipers read.",
        ),
        Misconception(
            "one-side", lambda g: g["W"] - g["t"],
            "That takes one side of {t} off the width.",
            "How many sides has the case?",
        ),
    ),
    effect=_off,
    fits="That is the widest thing that can stand between the sides.",
    hints=(  # a step at a time; none holds the answer
        "From outside to outside there is wood, room, wood.",
        "Take off two sides, each {t}.",
    ),
    working=_working,
    tolerance=Twin(INCH // 64, MM // 5),
)

EXERCISES = (ROOM,)
