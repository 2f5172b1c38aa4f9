"""What a joint that was worked out wrong does in the shop, in words with the actual amounts."""

from shoplib.lessons.exercise import Givens
from shoplib.lessons.say import Say


def place_off(_givens: Givens, off: int, say: Say) -> str:
    """A dado marked `off` too far from the datum edge (minus: too near)."""
    by, how = say.amount(off), "high" if off > 0 else "low"
    return (
        f"The shelf would stand {by} too {how}; and where the other side is marked right, it would slope by that "
        "much from one side to the other."
    )


def width_off(_givens: Givens, off: int, say: Say) -> str:
    """A dado cut `off` too wide (minus: too narrow)."""
    by = say.amount(off)
    if off > 0:
        return f"The dado would be {by} too wide: the shelf would stand loose in it, and glue fills no such gap well."
    return f"The dado would be {by} too narrow: the thick corner of the sheet, swollen by glue, would not go in."


def wood_off(_givens: Givens, off: int, say: Say) -> str:
    """Wood taken to be `off` more (minus: less) than there is."""
    by = say.amount(off)
    if off > 0:
        return f"You would count on {by} of wood that is not there, and choose a cut or a screw too deep for it."
    return f"There is {by} more wood than that: you would pass over a joint that would hold."


def tongues_off(givens: Givens, off: int, say: Say) -> str:
    """A bottom with tongues in dadoes `d` deep, `e` clear at each end, `off` too long (minus: too short)."""
    by, half, left = say.amount(off), say.amount(abs(off) // 2), givens["e"] - off // 2
    if off > 0 and 2 * left >= say.style.step:
        return (
            f"The bottom would be {by} too long: {say.amount(left)} would stay open under each tongue instead of "
            f"{say.amount(givens['e'])}, and the glue would have less room."
        )
    if off > 0 and left >= 0:
        return (
            f"The bottom would be {by} too long: both tongues would reach to the floors of their dadoes, with no room "
            "for glue, and the shoulders might not close."
        )
    if off > 0:
        return (
            f"The bottom would be {by} too long: its tongues would strike the floors of the dadoes before the "
            "shoulders close, and the case would come out too wide."
        )
    if abs(off) // 2 >= givens["d"] - givens["e"]:
        return f"The bottom would be {by} too short, {half} at each end: the tongues would not reach their dadoes."
    return (
        f"The bottom would be {by} too short: each shoulder would stand {half} off its side, or, drawn tight, the "
        f"case would come out {by} too narrow."
    )
