"""What a wrong sag, arm or screw does in the shop, in words with the actual amounts."""

from shoplib.lessons.exercise import Givens
from shoplib.lessons.say import Say


def sag_off(_givens: Givens, off: int, say: Say) -> str:
    """A sag taken to be `off` more (minus: less) than it is."""
    by = say.amount(off)
    if off > 0:
        return f"You would expect {by} more sag than comes, and buy a thicker board than the shelf needs."
    return f"The shelf would go down {by} farther than you expect, and whoever looks along it sees that."


def limit_off(_givens: Givens, off: int, say: Say) -> str:
    """A limit taken to be `off` more (minus: less) than the card allows."""
    by = say.amount(off)
    if off > 0:
        return f"You would let the shelf sag {by} more than the card allows."
    return f"You would hold the shelf to {by} less than the card allows, and pay for wood that it does not ask for."


def arm_off(_givens: Givens, off: int, say: Say) -> str:
    """A reach taken to be `off` more (minus: less) than the one at which the case just tips."""
    by = say.amount(off)
    if off > 0:
        return f"The drawer would stand {by} farther out than the case can bear: it would lie on its face before that."
    return f"You would stop the drawer {by} before the case is about to tip: careful, but not where the balance lies."


def screw_off(_givens: Givens, off: int, say: Say) -> str:
    """A screw that is `off` too long (minus: too short) for what it must bear."""
    by = say.amount(off)
    if off > 0:
        return f"The screw would be {by} longer than the load asks for: look whether its point still stays inside."
    return f"The screw would be {by} too short: so much thread would be missing in the wood that it must hold in."
