"""What a wrong number does between the cut list and the yard, in words with the actual amounts."""

from shoplib.lessons.exercise import Givens
from shoplib.lessons.say import Say


def sawn_off(_givens: Givens, off: int, say: Say) -> str:
    """A part sawn `off` too long (minus: too short)."""
    by = say.amount(off)
    if off > 0:
        return f"With its bands on, the part would come out {by} too long and not go in."
    return f"With its bands on, the part would come out {by} too short, and no plane puts wood back."


def left_off(_givens: Givens, off: int, say: Say) -> str:
    """An offcut taken to be `off` wider (minus: narrower) than it is."""
    by = say.amount(off)
    if off > 0:
        return f"You would count on {by} more than is left: a part planned on it would come out that much too narrow."
    return f"You would count on {by} less than is left, and perhaps buy a sheet for a part that it still holds."


def board_off(_givens: Givens, off: int, say: Say) -> str:
    """A board taken `off` too long (minus: too short)."""
    by = say.amount(off)
    if off > 0:
        return f"You would pay for {by} more board than the fronts ask for."
    return f"The board would be {by} too short: the last front would not come out of it, and its grain runs on nowhere."


def strips_off(_givens: Givens, off: int, say: Say) -> str:
    """So many strips too many (minus: too few)."""
    by = say.amount(off)
    if off > 0:
        return f"You would count on {by} that the offcut does not hold, and find out at the last cut."
    return f"The offcut holds {by} over what you count on."


def sheets_off(_givens: Givens, off: int, say: Say) -> str:
    """So many sheets too many (minus: too few)."""
    by = say.amount(off)
    if off > 0:
        return f"You would pay for {by} that no part needs."
    return f"You would come home {by} short, and the next one may be of another thickness."


def spare_off(_givens: Givens, off: int, say: Say) -> str:
    """So many replacements too many (minus: too few)."""
    by = say.amount(off)
    if off > 0:
        return f"You would trust in {by} that cannot be cut from it with the grain where it must be."
    return f"You would leave {by} out of the count that the offcut does hold."
