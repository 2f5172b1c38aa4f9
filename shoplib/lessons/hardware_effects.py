"""What hardware that is set out wrong does in the shop, in words with the actual amounts."""

from shoplib.lessons.exercise import Givens
from shoplib.lessons.say import Say


def spacer_off(_givens: Givens, off: int, say: Say) -> str:
    """A slide that lies `off` too high (minus: too low)."""
    by = say.amount(off)
    way = "high" if off > 0 else "low"
    return f"The slide would lie {by} too {way} on both sides, and its drawer with it: it would strike its neighbour."


def setback_off(givens: Givens, off: int, say: Say) -> str:
    """A slide that begins `off` too far back (minus: too far forward), behind a front `t` thick."""
    by = say.amount(off)
    if off > givens["t"] and not say.rough:
        return "The slide would begin so far back that the whole front would stand inside the case."
    if off > 0:
        return f"The slide would begin {by} too far back, and the front would stand that much inside the case."
    return f"The slide would begin {by} too far forward, and the front would stand out of the case by as much."


def hole_off(_givens: Givens, off: int, say: Say) -> str:
    """The left hole of a pull `off` too far right (minus: too far left), the right one its mirror image."""
    by, both = say.amount(off), say.amount(2 * off)
    way, apart = ("right", "near") if off > 0 else ("left", "far")
    return (
        f"The left hole would stand {by} too far {way}; with the right one its mirror image, they would be "
        f"{both} too {apart} for the pull."
    )


def screw_off(_givens: Givens, off: int, say: Say) -> str:
    """A screw that is `off` longer (minus: shorter) than the longest."""
    by = say.amount(off)
    if off > 0:
        return f"A screw that long would have its point {by} nearer to the face than you allow, or through it."
    return f"You would pass over screws up to {by} longer, which hold better and still keep their distance."


def pegs_off(givens: Givens, off: int, say: Say) -> str:
    """Each of five spaces beside four tools `off` too wide (minus: too narrow), on a panel `W` wide."""
    by, tools = say.amount(off), sum(givens[f"w{number}"] for number in (1, 2, 3, 4))
    if 5 * off >= givens["W"] - tools and not say.rough:
        return "With spaces that wide the last tool would hang beside the panel."
    if off > 0:
        return f"Each space would be {by} too wide; before the last tool stand four of them, and it adds up."
    return f"Each space would be {by} too narrow; behind the last tool all of it would be left over."
