"""What a front that is off does in the shop, in words with the actual amounts."""

from shoplib.lessons.exercise import Givens
from shoplib.lessons.say import Say


def reading_off(_givens: Givens, off: int, say: Say) -> str:
    """An opening taken to be `off` wider (minus: narrower) than where it is narrowest."""
    by = say.amount(off)
    if off > 0:
        return f"The front would be {by} too wide where the opening is narrowest: its gaps there would lack as much."
    return f"The front would be {by} narrower than it need be, and that would stand open beside it."


def stack_off(givens: Givens, off: int, say: Say) -> str:
    """Each of `n` fronts is `off` too high (minus: too low): spacer upon spacer it adds up at the top."""
    by, count = say.amount(off), givens["n"]
    total = say.amount(count * off)
    if off > 0:
        return f"Each front would be {by} too high. Spacer upon spacer, the top one would end {total} too far up."
    return f"Each front would be {by} too low, and over the top one {total} more than a gap would stand open."


def overlay_off(_givens: Givens, off: int, say: Say) -> str:
    """An overlay front that is `off` too wide (minus: too narrow)."""
    by, half = say.amount(off), say.amount(abs(off) // 2)
    if off > 0:
        return f"The front would be {by} too wide: {half} more of each side would be covered, or stand out past it."
    return f"The front would be {by} too narrow: {half} less of each side would be covered."


def divider_off(_givens: Givens, off: int, say: Say) -> str:
    """Each of two fronts on one divider is `off` too wide (minus: too narrow)."""
    by, both = say.amount(off), say.amount(2 * off)
    if off > 0:
        return f"Each front would reach {by} too far over the divider: together they would take {both} from the gap."
    return f"Each front would stop {by} short: the gap between the two would be {both} too wide."


def season_off(_givens: Givens, off: int, say: Say) -> str:
    """A height in the damp season that is `off` too large (minus: too small)."""
    by = say.amount(off)
    if off > 0:
        return f"You would expect {by} more than comes, and leave a gap that looks like a slip of the saw."
    return f"The front would grow {by} more than you expect: planned so, it would press on its neighbour and stick."
