"""Brads: how long, how far in, and how far from the edge, so that they hold and do not come out of a face."""

from dataclasses import dataclass

from shoplib.measure import INCH, MM
from shoplib.model.solved import Cabinet, Joint

SOLD = {
    "in": tuple(INCH * n // 8 for n in (4, 5, 6, 8, 10, 12, 14, 16)),
    "mm": tuple(n * MM for n in (12, 15, 20, 25, 30, 35, 40, 45, 50)),
}
"""Lengths of 18-gauge (1.2 mm) brads, from memory."""
TIMES = 3
"""A brad is about so many times as long as what it passes is thick: common practice, no source."""


@dataclass(frozen=True, slots=True)
class Brad:
    """A brad through a board that is `passes` thick, `length` long, so that `holds` is in the board behind. It is set
    `inset` from the edge of the board it passes, in the middle of what lies behind (ticks).
    """

    length: int
    passes: int
    holds: int
    inset: int


def brad_for(thickness: int, behind: int, unit: str) -> Brad:
    """The brad through a board, where a strip `behind` wide lies behind its edge.

    The shortest that is sold of at least three times the thickness, else the longest.

    >>> found = brad_for(6 * MM, 8 * MM, "mm")
    >>> [ticks // MM for ticks in (found.length, found.holds, found.inset)]
    [20, 14, 4]
    """
    lengths = SOLD[unit]
    length = min((sold for sold in lengths if sold >= TIMES * thickness), default=lengths[-1])
    return Brad(length, thickness, length - thickness, behind // 2)


def back_brads(cabinet: Cabinet) -> dict[str, Brad]:
    """By the name of each back nailed from behind: the brad, by the narrowest strip of wood behind its edge."""
    found: dict[str, Brad] = {}
    for name, joints in _backs(cabinet).items():
        back = cabinet.by_name[name]
        strips = [_strip(joint, cabinet) for joint in joints]
        found[name] = brad_for(back.thickness, min(strips), cabinet.style.unit)
    return found


def _backs(cabinet: Cabinet) -> dict[str, list[Joint]]:
    """The joints of each back that does not lie in grooves."""
    found: dict[str, list[Joint]] = {}
    for joint in cabinet.joints:
        board = cabinet.by_name.get(joint.enters)
        if board is not None and board.role == "back" and joint.kind != "groove" and joint.receives in cabinet.by_name:
            found.setdefault(board.name, []).append(joint)
    return found


def _strip(joint: Joint, cabinet: Cabinet) -> int:
    """How wide the wood is that lies behind the edge of a back: the rabbet, or the edge of the board it lies on."""
    return joint.depth - joint.end_gap if joint.depth else cabinet.by_name[joint.receives].thickness
