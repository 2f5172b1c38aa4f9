"""What a whole set asks of a case whose sides run its full height, on more than one page of a joint."""

from shoplib.lessons.exercise import Givens, Misconception
from shoplib.lessons.set_exercise import Asked
from shoplib.measure import share


def between_sides(givens: Givens) -> int:
    """From inside to inside: a case `W` wide less two sides of `t`."""
    return givens["W"] - 2 * givens["t"]


def butted(name: str, part: str, boards: tuple[str, ...], *more: Misconception) -> Asked:
    """The length of boards that stand butted between the sides; `more` are slips beside the usual two."""
    return Asked(
        name, part, "length", boards, "x",
        (
            Misconception(f"{name}-nominal", lambda g: g["W"] - 2 * g["T"],
                          "That is the sum with {T}, the name of the sheet.", "Look at what the calipers read."),
            Misconception(f"{name}-one-side", lambda g: g["W"] - g["t"], "That takes one side off.",
                          "How many sides has the case?"),
            *more,
        ),
        lambda g, say: (f"{part.lower()} = {g.texts['W']} - 2 x {g.texts['t']} = {say.length(between_sides(g))}",),
    )


SIDES = Asked(
    "sides", "Sides", "length", ("left side", "right side"), "z",
    (
        Misconception("sides-between", lambda g: g["H"] - 2 * g["t"], "That stands the sides between top and bottom.",
                      "Which boards run past the others here?"),
        Misconception("sides-one", lambda g: g["H"] - g["t"], "That takes one board off the height.",
                      "Do the sides stand on the bottom, or beside it?"),
        Misconception("sides-half", lambda g: share(g["H"], 2, 1)[0], "That is half of the height.",
                      "A side runs from the floor to the top edge."),
    ),
    lambda g, say: (f"sides = the whole height = {g.texts['H']}",),
)
