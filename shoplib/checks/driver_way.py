"""What must stay free while pocket screws are driven: the way of the long bit, and room for the chuck behind it."""

from dataclasses import dataclass

from shoplib.checks.geometry import direction
from shoplib.measure import INCH, MM, share
from shoplib.model.board import Board, PrismCut
from shoplib.model.box import Box
from shoplib.model.placement import directions
from shoplib.model.pocketed import POCKET
from shoplib.model.solved import Cabinet

ROOM = {"in": (6 * INCH, 3 * INCH // 2), "mm": (150 * MM, 40 * MM)}
"""What a long bit needs before the pocket: so far from its mouth along the board, and so far off the face, where it
leaves a pocket that leans 15 degrees (6 in and 150 mm bits are from memory; common practice, no source)."""
CHUCK = {"in": 3 * INCH // 4, "mm": 20 * MM}
"""Half as wide as a chuck is, round its bit. It holds the farther half of the bit (from memory; common practice, no
source)."""


@dataclass(frozen=True, slots=True)
class Driven:
    """The pocket screws from one board into another, with where bit and chuck lie while they are driven (world)."""

    enters: str
    receives: str
    bits: tuple[Box, ...]
    chucks: tuple[Box, ...]

    @property
    def pair(self) -> frozenset[str]:
        """Both boards: the screws are driven as soon as they stand."""
        return frozenset((self.enters, self.receives))

    def bit_meets(self, board: Board) -> bool:
        """Whether a board stands in the way of the bit, so that no driver reaches the pockets.

        >>> Driven("rail", "side", (), ()).pair == {"rail", "side"}
        True
        """
        return board.name not in self.pair and _meets(self.bits, board)

    def chuck_meets(self, board: Board) -> bool:
        """Whether a board leaves the chuck no room: then only a right-angle driver gets at the pockets."""
        return board.name not in self.pair and _meets(self.chucks, board)


def _meets(places: tuple[Box, ...], board: Board) -> bool:
    return any(place.overlaps(board.box) and any(place.overlaps(piece) for piece in board.pieces) for place in places)


def driven(cabinet: Cabinet) -> tuple[Driven, ...]:
    """All pocket screws of the case, joint by joint; none where no screw is sold that is short enough.

    >>> driven(Cabinet("no boards", (), {}))
    ()
    """
    fitted = {(h.on, screw.into) for h in cabinet.hardware if h.what == POCKET and h.group == "case"
              for screw in h.screws}
    found = []
    for joint in cabinet.joints:
        if joint.kind == POCKET and (joint.enters, joint.receives) in fitted:
            board = cabinet.by_name[joint.enters]
            mouths = [board.placement.to_world(cut.box) for cut in board.cuts
                      if isinstance(cut, PrismCut) and cut.kind == "pocket" and cut.for_board == joint.receives]
            bits, chucks = zip(*(_ways(mouth, board, joint.axis, cabinet.style.unit) for mouth in mouths), strict=True)
            found.append(Driven(joint.enters, joint.receives, bits, chucks))
    return tuple(found)


def _ways(mouth: Box, board: Board, axis: str, unit: str) -> tuple[Box, Box]:
    """Where bit and chuck lie before one pocket of a board whose end is screwed along `axis`."""
    along, sign = direction(axis)
    thin = directions(board.placement.axes)[2][0]
    run, half = 3 - along - thin, CHUCK[unit]
    far, off = ROOM[unit]
    near = share(far, 2, 1)[0]
    low, high = list(mouth.low), list(mouth.high)
    if sign > 0:
        low[along] -= far
    else:
        high[along] += far
    outward = mouth.high[thin] == board.box.high[thin]
    low[thin], high[thin] = (
        (board.box.high[thin], board.box.high[thin] + off) if outward else
        (board.box.low[thin] - off, board.box.low[thin])
    )
    bit = Box(tuple(low), tuple(high))
    if sign > 0:
        high[along] = mouth.low[along] - near
    else:
        low[along] = mouth.high[along] + near
    middle = share(mouth.low[run] + mouth.high[run], 2, 1)[0]
    low[run], high[run] = middle - half, middle + half
    if outward:
        high[thin] += half
    else:
        low[thin] -= half
    return bit, Box(tuple(low), tuple(high))
