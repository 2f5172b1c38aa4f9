"""What a part of a drawer that is off does in the shop, in words with the actual amounts."""

from shoplib.lessons.exercise import Givens
from shoplib.lessons.say import Say


def reading_off(_givens: Givens, off: int, say: Say) -> str:
    """An opening taken to be `off` wider (minus: narrower) than where it is narrowest."""
    by = say.amount(off)
    if off > 0:
        return f"The box would be {by} too wide: it would go in at one end, and stick at the other."
    return f"The box would be {by} narrower than it need be, and its slides would have to be shimmed all along."


def box_off(_givens: Givens, off: int, say: Say) -> str:
    """A box that is `off` too wide (minus: too narrow) for its slides."""
    by, half = say.amount(off), say.amount(abs(off) // 2)
    if off > 0:
        return f"The box would be {by} too wide, and would not go in between its slides: nothing forgives that."
    return f"The box would be {by} too narrow: {half} would be open between each slide and its side."


def front_off(_givens: Givens, off: int, say: Say) -> str:
    """A box front that is `off` too long (minus: too short) between its sides."""
    by = say.amount(off)
    if off > 0:
        return f"Front and back would be {by} too long, so the box would be {by} too wide for its slides."
    return (
        f"Front and back would be {by} too short: drawn tight, the box would be {by} too narrow, and its slides "
        "would not reach it."
    )


def bottom_off(givens: Givens, off: int, say: Say) -> str:
    """A bottom in grooves `q` deep with slack `e`, `off` too wide (minus: too narrow)."""
    by, half = say.amount(off), say.amount(abs(off) // 2)
    if 0 < off <= givens["e"]:
        return f"The bottom would be {by} too wide: it would touch the floors of its grooves, and jam once it swells."
    if off > 0:
        return f"The bottom would be {by} too wide: it would hold the sides apart, and the corners would not close."
    if -off >= givens["q"] - givens["e"]:
        return f"The bottom would be {by} too narrow: pushed to one side, its other edge would drop out of its groove."
    return f"The bottom would be {by} too narrow: {half} less of it would stand in each groove, and it would rattle."
