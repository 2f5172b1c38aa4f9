"""The last exercise of drawer clearance: the five boards of a drawer box, put together as the learner cut them."""

from collections.abc import Callable
from typing import Literal

from shoplib.draw.dry_fit import View
from shoplib.draw.look import FROM_ABOVE
from shoplib.lessons.drawer_givens import (
    bottom_groove,
    bottom_slack,
    box_stock,
    corner_rabbet,
    opening,
    slide_side,
)
from shoplib.lessons.exercise import Given, Givens, Misconception
from shoplib.lessons.numbers import Draw
from shoplib.lessons.say import Say
from shoplib.lessons.set_exercise import Asked, SetExercise
from shoplib.lessons.small_box import GROUP, small_box
from shoplib.measure import narrowest
from shoplib.model.solved import Cabinet


def _givens(draw: Draw) -> list[Given]:
    long = draw.pick("L", "slides, length", inch=("14 in", "16 in", "18 in"), mm=("350 mm", "400 mm", "450 mm"))
    spare = draw.pick("spare", "", inch=("1 in", "1 1/4 in", "1 1/2 in"), mm=("25 mm", "30 mm", "35 mm")).value
    return [
        *opening(draw), draw.derived("I", "inside depth of the case", long.value + spare), slide_side(draw), long,
        box_stock(draw), corner_rabbet(draw), bottom_groove(draw), bottom_slack(draw),
        Given("metric", "", int(draw.unit == "mm"), ""),
    ]


def _case(givens: Givens) -> Cabinet:
    return small_box(
        givens["F"], givens["R"], unit="mm" if givens["metric"] else "in", side=givens["c"], stock=givens["s"],
        rabbet=givens["r"], groove=givens["q"], slack=givens["e"], depth=givens["I"],
    )


def _box(givens: Givens) -> int:
    return narrowest([givens["F"], givens["R"]]) - 2 * givens["c"]


def _front_lines(givens: Givens, say: Say) -> tuple[str, ...]:
    text, box = givens.texts, say.exact(_box(givens))
    least = say.exact(narrowest([givens["F"], givens["R"]]))
    comes_to = say.length(_box(givens) - 2 * givens["s"] + 2 * givens["r"])
    return (
        f"box = {least} - 2 x {text['c']} = {box}",
        f"{box} - 2 x {text['s']} + 2 x {text['r']} = {comes_to}",
    )


def _bottom_lines(whole: Callable[[Givens], int]) -> Callable[[Givens, Say], tuple[str, ...]]:
    def lines(givens: Givens, say: Say) -> tuple[str, ...]:
        text, size = givens.texts, whole(givens)
        comes_to = say.length(size - 2 * givens["s"] + 2 * givens["q"] - givens["e"])
        return (f"{say.exact(size)} - 2 x {text['s']} + 2 x {text['q']} - {text['e']} = {comes_to}",)

    return lines


def _bottom_slips(name: str, whole: Callable[[Givens], int], between: str) -> tuple[Misconception, ...]:
    return (
        Misconception(
            f"{name}-no-slack", lambda g: whole(g) - 2 * g["s"] + 2 * g["q"],
            "That fills both grooves to their floors.", "What was the bottom to be smaller by?",
        ),
        Misconception(
            f"{name}-no-groove", lambda g: whole(g) - 2 * g["s"],
            f"That is the room between {between}, with no groove counted.",
            "The bottom goes on into its grooves, all round.",
        ),
        Misconception(
            f"{name}-one-groove", lambda g: whole(g) - 2 * g["s"] + g["q"],
            "That counts one groove of {q}, and no slack.", "How many grooves does it reach into, that way?",
        ),
    )


def bottom_asked(size: Literal["width", "depth"], whole: Callable[[Givens], int], between: str) -> Asked:
    """One size of a bottom in grooves `q` deep of boards `s` thick, with slack `e`: `whole` is the box outside."""
    return Asked(
        f"bottom_{size}", "Bottom", size, (f"{GROUP} box bottom",), "x" if size == "width" else "y",
        _bottom_slips(size, whole, between), _bottom_lines(whole),
    )


SIDES = Asked(
    "side", "Box sides", "length", (f"{GROUP} left box side", f"{GROUP} right box side"), "y",
    (
        Misconception(
            "side-depth", lambda g: g["I"],
            "That is the inside depth of the case.", "The sides are as long as the slides that are screwed to them.",
        ),
        Misconception(
            "side-between", lambda g: g["L"] - 2 * g["s"] + 2 * g["r"],
            "That is the sum for a board that lies between two others.",
            "Which boards run past which at the corner? Front and back lie in the ends of the sides.",
        ),
    ),
    lambda g, say: ("The sides run past front and back, and are as long as the slides.", say.length(g["L"])),
)

FRONT = Asked(
    "front", "Box front and back", "length", (f"{GROUP} box front", f"{GROUP} box back"), "x",
    (
        Misconception(
            "front-outside", _box,
            "That is the outside width of the box.", "Front and back end inside the sides.",
        ),
        Misconception(
            "front-no-joint", lambda g: _box(g) - 2 * g["s"],
            "That is the room between the sides, with no rabbet counted.",
            "Front and back go on into the sides, by the depth of the rabbet.",
        ),
        Misconception(
            "front-offcut", lambda g: _box(g) - g["s"],
            "That takes one thickness off, as with one offcut held beside the width.",
            "That is right only where the rabbet is half of the side. Is it here?",
        ),
        Misconception(
            "front-one-joint", lambda g: _box(g) - 2 * g["s"] + g["r"],
            "That counts one rabbet of {r}.", "How many ends has the front?",
        ),
    ),
    _front_lines,
)

BOTTOM_WIDTH = bottom_asked("width", _box, "the sides")

BOTTOM_DEPTH = bottom_asked("depth", lambda g: g["L"], "front and back")

BOX_BOARDS = SetExercise(
    id="04-box-boards",
    title="Assemble what you cut: a drawer box",
    question=(
        "The opening for the spoke drawer reads {F} at the front and {R} at the back, and the case is {I} deep inside. "
        "The slides are {L} long, the box as long as they are, and each takes {c}. Box stock measures {s}. The sides "
        "have a rabbet {r} deep at both ends for front and back; all four have a groove {q} deep for the bottom, which "
        "is made {e} smaller each way than the grooves would let it be. What you cut is put together dry."
    ),
    givens=_givens,
    case=_case,
    asked=(SIDES, FRONT, BOTTOM_WIDTH, BOTTOM_DEPTH),
    view=View(FROM_ABOVE, f"{GROUP} box bottom"),
    fits="The box closes at its corners, its bottom has room, and it goes in between its slides.",
    hints=(
        "First the box: the narrower reading of the opening, less two slides of {c}.",
        "Front and back: two sides of {s} off the box, two rabbets of {r} on.",
        "The bottom, both ways: from outside to outside, two boards of {s} off, two grooves of {q} on, {e} off.",
    ),
)
