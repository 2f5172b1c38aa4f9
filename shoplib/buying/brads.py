"""Brads: how many, how long, how far in, and how far from the edge, so that they hold and come out of no face."""

from dataclasses import dataclass

from shoplib.measure import INCH, MM
from shoplib.model.board import Board
from shoplib.model.solid_back import fixed_dry
from shoplib.model.solved import Cabinet, Joint

SOLD = {
    "in": tuple(INCH * n // 8 for n in (4, 5, 6, 8, 10, 12, 14, 16)),
    "mm": tuple(n * MM for n in (12, 15, 20, 25, 30, 35, 40, 45, 50)),
}
"""Lengths of 18-gauge (1.2 mm) brads, from memory."""
TIMES = 3
"""A brad is about so many times as long as what it passes is thick: common practice, no source."""


HAND = {"in": 4 * INCH, "mm": 100 * MM}
"""A hand's width, by the unit of the shop: a brad for each along an edge (common practice, no source)."""
GAUGE = {"in": "18-gauge", "mm": "1.2 mm"}
"""How thick the brads are that are sold in these lengths, from memory."""


PLAY = MM
"""What a divider may stand off a back and still be nailed: a brad draws it in (common practice, no source)."""


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


def brads_into(cabinet: Cabinet) -> dict[str, dict[str, int]]:
    """By the name of each back nailed from behind: how many brads go into each board that it lies on.

    A solid back is screwed, in slots. Where it lies on the edge of a divider or a shelf it is nailed there too.
    """
    every = HAND[cabinet.style.unit]
    found: dict[str, dict[str, int]] = {}
    for name, joints in backs_from_behind(cabinet).items():
        back = cabinet.by_name[name]
        if name in dry_backs(cabinet):
            continue
        behind = [joint.receives for joint in joints]
        behind += [b.name for b in cabinet.boards if b.name not in behind and _lies_on(back, b)]
        found[name] = {on: max(2, -(-_runs(back, cabinet.by_name[on]) // every)) for on in behind}
    return found


def _lies_on(back: Board, board: Board) -> bool:
    """Whether the back lies on the rear edge of a divider or a fixed shelf."""
    one, other = back.box, board.box
    meets = all(one.low[k] < other.high[k] and other.low[k] < one.high[k] for k in (0, 2))
    return board.role in ("divider", "fixed shelf") and meets and 0 <= one.low[1] - other.high[1] <= PLAY


def _runs(back: Board, board: Board) -> int:
    """How far the two run along one another, seen from behind (ticks)."""
    return max(min(back.box.high[k], board.box.high[k]) - max(back.box.low[k], board.box.low[k]) for k in (0, 2))


def back_brads(cabinet: Cabinet) -> dict[str, Brad]:
    """By the name of each back nailed from behind, none of solid wood: the brad, by the narrowest strip behind it."""
    found: dict[str, Brad] = {}
    for name, joints in backs_from_behind(cabinet).items():
        back = cabinet.by_name[name]
        if name in dry_backs(cabinet):
            continue
        strips = [_strip(joint, cabinet) for joint in joints]
        found[name] = brad_for(back.thickness, min(strips), cabinet.style.unit)
    return found


def backs_from_behind(cabinet: Cabinet) -> dict[str, list[Joint]]:
    """The joints of each back that goes on from behind when all else stands: in a rabbet or laid on, not in grooves.

    >>> backs_from_behind(Cabinet("no boards", (), {}))
    {}
    """
    found: dict[str, list[Joint]] = {}
    for joint in cabinet.joints:
        board = cabinet.by_name.get(joint.enters)
        if board is not None and board.role == "back" and joint.kind != "groove" and joint.receives in cabinet.by_name:
            found.setdefault(board.name, []).append(joint)
    return found


def dry_backs(cabinet: Cabinet) -> tuple[str, ...]:
    """The backs that go on from behind with screws and no glue: those of solid wood.

    >>> dry_backs(Cabinet("no boards", (), {}))
    ()
    """
    return tuple(name for name in backs_from_behind(cabinet) if fixed_dry(cabinet.by_name[name], cabinet))


def _strip(joint: Joint, cabinet: Cabinet) -> int:
    """How wide the wood is that lies behind the edge of a back: the rabbet, or the edge of the board it lies on."""
    return joint.depth - joint.end_gap if joint.depth else cabinet.by_name[joint.receives].thickness
