"""What boards weigh, from the wood that is left of them, and where they are heaviest."""

from collections.abc import Iterable
from dataclasses import dataclass
from fractions import Fraction
from itertools import pairwise

import pint

from shoplib.measure import MM, ureg
from shoplib.model.board import Board, PrismCut
from shoplib.model.box import Point
from shoplib.model.material import material_of
from shoplib.model.prism import Prism, twice_area
from shoplib.model.solved import Cabinet

_NEWTON = ureg.newton  # looked up once: a case has many boards, and a panel weighs them between two moves


@dataclass(frozen=True, slots=True)
class Weight:
    """A weight of at least `low` and at most `high`, with its middle (world, ticks); `of` names what weighs it."""

    of: str
    low: pint.Quantity
    high: pint.Quantity
    middle: Point


def volume(board: Board) -> pint.Quantity:
    """The wood that is left of a board after its cuts; bored holes, which take next to nothing, are left in."""
    return ureg.Quantity(_cubic_metres(board), "meter ** 3")


def _cubic_metres(board: Board) -> float:
    return float(sum(lump for lump, _ in _lumps(board))) / MM**3 * 1e-9


def middle(board: Board) -> Point:
    """The middle of the wood that is left of a board (world, to the tick): where its weight acts.

    >>> from shoplib.model.placement import Placement
    >>> middle(Board("shelf", "case", 1, "s", 100, 40, 10, Placement((0, 0, 0), ("+x", "+y", "+z"))))
    (50, 20, 5)
    """
    lumps = _lumps(board)
    whole = sum(lump for lump, _ in lumps)
    if not whole:
        return board.box.low
    return tuple(round(sum(lump * at[axis] for lump, at in lumps) / Fraction(whole)) for axis in range(3))


Lump = tuple[int | Fraction, tuple[int | Fraction, ...]]


def _lumps(board: Board) -> list[Lump]:
    """The wood of a board in pieces: the volume of each, and its middle (world)."""
    if any(isinstance(cut, PrismCut) for cut in board.cuts):
        return [(piece.volume, _middle_of(piece)) for piece in board.solids]
    return [
        (piece.volume, tuple(Fraction(a + b, 2) for a, b in zip(piece.low, piece.high, strict=True)))
        for piece in board.pieces
    ]


def _middle_of(prism: Prism) -> tuple[int | Fraction, ...]:
    """The middle of an outline, from the triangles over its first corner, halfway along its run."""
    first = prism.outline[0]
    threes = [(first, b, c) for b, c in pairwise(prism.outline[1:])]
    areas = [twice_area(three) for three in threes]
    at = [Fraction(0)] * 3
    at[prism.axis] = Fraction(prism.low + prism.high) / 2
    for side in (0, 1):
        moment = sum(area * sum(corner[side] for corner in three) for area, three in zip(areas, threes, strict=True))
        at[(prism.axis + 1 + side) % 3] = Fraction(moment) / (3 * sum(areas))
    return tuple(at)


def weight(board: Board, cabinet: Cabinet) -> Weight | None:
    """What a board weighs by its sheet; None where the table has no figure for that sheet."""
    sheet = cabinet.sheets.get(board.sheet)
    material = material_of(sheet) if sheet else None
    if material is None:
        return None
    wood = _cubic_metres(board)
    low, high = (ureg.Quantity(weighs.magnitude * wood, _NEWTON) for weighs in material.weighs)
    return Weight(board.name, low, high, middle(board))


def weights(boards: Iterable[Board], cabinet: Cabinet) -> tuple[Weight, ...]:
    """The weights of the boards, without those whose sheet has no figure (`unweighed` names them)."""
    return tuple(found for board in boards if (found := weight(board, cabinet)))


def unweighed(cabinet: Cabinet) -> tuple[str, ...]:
    """The names of the sheets that boards are cut from and that have no figure for their weight."""
    cut = dict.fromkeys(board.sheet for board in cabinet.boards)
    return tuple(name for name in cut if name not in cabinet.sheets or material_of(cabinet.sheets[name]) is None)


def together(found: Iterable[Weight]) -> tuple[pint.Quantity, pint.Quantity]:
    """The least and the most that these weigh together.

    >>> [force.magnitude for force in together([])]
    [0, 0]
    """
    found = tuple(found)
    none = ureg.Quantity(0, "newton")
    return sum((one.low for one in found), none), sum((one.high for one in found), none)
