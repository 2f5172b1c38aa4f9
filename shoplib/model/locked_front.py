"""The drawer-front joint in numbers: lip, groove and tongue of the front, and the dado in the side.

Places are measured from the outer face of the front backward, and from the inside face of the side outward.
"""

from dataclasses import dataclass
from typing import NamedTuple

from shoplib.measure import share, to_step
from shoplib.model.sheet import Sheet


@dataclass(frozen=True, slots=True)
class Lock:
    """What is chosen, in ticks: the front's `lip`, `groove` and tongue `length`, `fit`, and the `gap` at its end."""

    lip: int
    groove: int
    length: int
    fit: int = 0
    gap: int = 0


class Room(NamedTuple):
    """A cut seen from above: from where to where out from the side's inside face, and back from the front's outside."""

    out: tuple[int, int]
    back: tuple[int, int]


class LockCuts(NamedTuple):
    """The cuts of one corner: groove and rabbet of the front, dado of the side, and the tongue that is left."""

    groove: Room
    rabbet: Room
    dado: Room
    tongue: int


def usual_lip(front: int, step: int) -> int:
    """A third of the front, to the nearest step: of its lip, its groove and so its tongue (common practice, no source).

    >>> from shoplib.measure import INCH
    >>> usual_lip(3 * INCH // 4, INCH // 32) == INCH // 4
    True
    """
    return to_step(share(front, 3, 1)[0], step)


def usual_length(side: int, step: int) -> int:
    """Half the side, to the nearest step: the length of the front's tongue (common practice, no source).

    >>> from shoplib.measure import INCH
    >>> usual_length(INCH // 2, INCH // 32) == usual_length(INCH * 48 // 100, INCH // 32) == INCH // 4
    True
    """
    return to_step(share(side, 2, 1)[0], step)


def lock_cuts(front: int, reach: int, lock: Lock) -> LockCuts:
    """The cuts in a front that goes `reach` past the inside of the side; lip + groove + tongue = its thickness.

    The groove is as deep as that, and bears on the inside of the side; the dado begins groove - fit from the side's
    end. On the bench a front reaches over the thickest reading of the side; in a box it is as long as the box is wide,
    by the mean, so that nothing stands before the slides.

    >>> lock_cuts(18, 12, Lock(6, 6, 6)).dado
    Room(out=(0, 6), back=(12, 18))
    """
    slot = lock.lip + lock.groove
    return LockCuts(
        Room((0, reach), (lock.lip, slot)),
        Room((lock.length, reach), (slot, front)),
        Room((0, lock.length + lock.gap), (slot - lock.fit, front)),
        front - slot,
    )


def thin_of(front: int, side: Sheet, lock: Lock) -> tuple[tuple[str, str, int], ...]:
    """What must stay as wood: the setting that decides it, what it is, and how much is left (ticks).

    >>> [left for _, _, left in thin_of(18, Sheet("box sheet", "plywood", 12), Lock(6, 6, 6))]
    [6, 6, 6, 6, 6]
    """
    return (
        ("lip", "as the lip of the front", lock.lip),
        ("groove", "as the tongue of the front", front - lock.lip - lock.groove),
        ("groove", "at the end of the side, before its dado", lock.groove - lock.fit),
        ("tongue length", "as the length of the tongue", lock.length),
        ("tongue length", "behind the dado in the side", side.thinnest - lock.length - lock.gap),
    )
