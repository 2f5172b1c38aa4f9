"""Areas: where boards are glued together, and what is left of their faces and edges for the finish."""

from collections.abc import Iterable
from itertools import combinations

from shoplib.measure import MM
from shoplib.model.board import Board
from shoplib.model.box import Box
from shoplib.model.solid_back import fixed_dry
from shoplib.model.solved import Cabinet, Joint

EASE = MM // 10
"""Over the fit of a joint: what its faces may stand apart and still be called together."""

_DRY = ("runner", "kicker", "front", "panel")
"""Roles of boards that are screwed where they are butted, and come off again."""


def meeting_area(one: Iterable[Box], other: Iterable[Box], apart: int) -> int:
    """How much of the faces of two bodies lies face to face, at most so far apart (square ticks).

    >>> shelf, side = Box((4, 0, 0), (90, 30, 4)), Box((0, 0, -20), (4, 30, 80))
    >>> meeting_area([shelf], [side], 0)
    120
    """
    one, other = tuple(one), tuple(other)
    area = 0
    for first, second in ((one, other), (other, one)):
        for low in first:
            for high in second:
                area += sum(_faced(low, high, axis) for axis in range(3)
                            if 0 <= high.low[axis] - low.high[axis] <= apart)
    return area


def _faced(low: Box, high: Box, axis: int) -> int:
    """What two boxes cover of one another, seen along an axis."""
    a, b = (k for k in range(3) if k != axis)
    wide = min(low.high[a], high.high[a]) - max(low.low[a], high.low[a])
    tall = min(low.high[b], high.high[b]) - max(low.low[b], high.low[b])
    return wide * tall if wide > 0 and tall > 0 else 0


def joint_area(joint: Joint, cabinet: Cabinet) -> int:
    """Where the two boards of a joint lie face to face, its ease left out of account (square ticks).

    A pocket or another slanting cut counts as wood.
    """
    enters, receives = cabinet.by_name[joint.enters], cabinet.by_name[joint.receives]
    sheet = cabinet.sheets[enters.sheet]
    apart = joint.fit + joint.end_gap + sheet.thickest - sheet.thickness + EASE if joint.depth else 0
    return meeting_area(enters.pieces, receives.pieces, apart)


def is_glued(joint: Joint, cabinet: Cabinet) -> bool:
    """Whether glue is counted for a joint: what stands in a groove floats, fronts, runners and backs of solid wood
    are screwed.

    Common practice, no source.
    """
    enters = cabinet.by_name[joint.enters]
    return joint.kind != "groove" and enters.role not in _DRY and not fixed_dry(enters, cabinet)


def glue_area(cabinet: Cabinet) -> int:
    """All joints that are glued, one of the two faces of each (square ticks)."""
    return sum(joint_area(joint, cabinet) for joint in _joints(cabinet) if is_glued(joint, cabinet))


def bare_area(board: Board) -> int:
    """All that can be touched of a board that lies by itself, its cuts too (square ticks); bored holes left out."""
    pieces = board.pieces
    faces = sum(2 * (a * b + b * c + a * c) for a, b, c in (piece.size for piece in pieces))
    return faces - 2 * sum(meeting_area([one], [other], 0) for one, other in combinations(pieces, 2))


def finish_areas(cabinet: Cabinet) -> dict[int, int]:
    """By stage: all faces and edges of its boards, inside and out, but where another board lies against them.

    Square ticks. What a joint hides is taken from both its boards.
    """
    found: dict[int, int] = {}
    for board in cabinet.boards:
        found[board.stage] = found.get(board.stage, 0) + bare_area(board)
    for joint in _joints(cabinet):
        hidden = joint_area(joint, cabinet)
        for name in (joint.enters, joint.receives):
            found[cabinet.by_name[name].stage] -= hidden
    return found


def _joints(cabinet: Cabinet) -> tuple[Joint, ...]:
    return tuple(j for j in cabinet.joints if {j.enters, j.receives} <= cabinet.by_name.keys())


SQUARE_METRE = (1000 * MM) ** 2
"""In square ticks."""
