"""What a part that is off does in the shop, in words with the actual amounts."""

from shoplib.lessons.exercise import Givens
from shoplib.lessons.say import Say


def bottom_off(givens: Givens, off: int, say: Say) -> str:
    """A bottom between two dadoes `d` deep, `off` too long (minus: too short)."""
    by, half = say.amount(off), say.amount(abs(off) // 2)
    if off > 0:
        return (
            f"The bottom would be {by} too long: with {half} at each end that its dado cannot take in, it would hold "
            f"the sides apart, and the case would come out {by} too wide."
        )
    if abs(off) // 2 >= givens["d"]:
        return (
            f"The bottom would be {by} too short, {half} at each end: it would not enter its dadoes and "
            "would drop out of the case."
        )
    return (
        f"The bottom would be {by} too short: each end would stop {half} short of the floor of its dado, or, "
        f"drawn tight, the case would come out {by} too narrow."
    )


def back_off(givens: Givens, off: int, say: Say) -> str:
    """A back in rabbets `b` wide, `off` too wide (minus: too narrow)."""
    by, half = say.amount(off), say.amount(abs(off) // 2)
    if off > 0:
        return (
            f"The back would be {by} too wide: {half} at each side would stand on the edge beyond the "
            "rabbet, and the back would not go in."
        )
    if abs(off) // 2 >= givens["b"]:
        return (
            f"The back would be {by} too narrow, {half} at each side: it would reach no rabbet, and there "
            "would be nothing to fasten it to."
        )
    return (
        f"The back would be {by} too narrow: {half} of each rabbet would show open beside it, with that much "
        "less to fasten it to."
    )


def bay_off(givens: Givens, off: int, say: Say, right: int) -> str:
    """A spacer for `n` equal bays of `right`, `off` too long (minus: too short)."""
    by, count = say.amount(off), givens["n"]
    if right - (count - 1) * off <= 0:
        return f"The spacer would be {by} too long: the last of the {count} bays would have no room left."
    how, other = ("long", "narrower") if off > 0 else ("short", "wider")
    return (
        f"The spacer would be {by} too {how}: set out from the left side, the last of the {count} bays would "
        f"come out {say.amount(count * off)} {other} than the others."
    )


def thickness_off(_givens: Givens, off: int, say: Say) -> str:
    """A thickness that is `off` too large (minus: too small) in sums that take two sides away."""
    thick, how = ("thick", "short") if off > 0 else ("thin", "long")
    return (
        f"It is {say.amount(off)} too {thick}. Two sides are taken off the case width, so every part between "
        f"them would be cut {say.amount(2 * off)} too {how}."
    )
