"""Numbers drawn for one learner, the same in every process and on every machine.

The seed is the sha256 of who, what and which version (Python's `hash` changes with each process). Each number is
drawn by its own name, so that drawing one more leaves the others as they were. All is done in whole numbers.
"""

from hashlib import sha256

from shoplib.measure.choose import to_step

_TERMS, _SIDES = 12, 65_536
"""Twelve equal-chance numbers of 16 bits add up to a bell curve whose spread is 65 536, for 12 x 65 536² / 12."""

_MIDDLE = _TERMS * (_SIDES - 1) // 2


def seed_of(learner: str, exercise: str, variant: str, version: int) -> str:
    """The seed of one exercise for one learner, as hexadecimal text.

    >>> seed_of("Noor", "02-bottom", "in", 1)[:12]
    '48539c18628e'
    """
    return _digest(learner, exercise, variant, str(version)).hex()


def below(count: int, *names: str) -> int:
    """A whole number from 0 to `count` - 1, each with the same chance, drawn by its names.

    >>> below(100, "seed", "width"), below(100, "seed", "depth")
    (66, 28)
    """
    return int.from_bytes(_digest(*names)[:8], "big") % count


def bell(spread: int, *names: str) -> int:
    """A whole number that is 0 in the mean, with this spread (standard deviation), drawn by its names.

    The sum of twelve equal-chance draws: as good as the normal law up to three spreads, and never over six.

    >>> bell(1000, "seed", "width"), bell(0, "seed", "width")
    (-1538, 0)
    """
    drawn = _digest(*names)
    total = sum(int.from_bytes(drawn[at : at + 2], "big") for at in range(0, 2 * _TERMS, 2))
    return to_step((total - _MIDDLE) * spread, _SIDES) // _SIDES


def _digest(*names: str) -> bytes:
    # A typed name may hold half of a surrogate pair, which plain UTF-8 refuses.
    return sha256("\x1f".join(names).encode("utf-8", "surrogatepass")).digest()
