"""One joint as its two boards have it: where the board enters, how far, and the cut that takes it."""

from dataclasses import dataclass

from shoplib.checks.geometry import common_boxes, direction, far, near
from shoplib.model.board import Board, BoxCut
from shoplib.model.box import Box, around
from shoplib.model.placement import directions
from shoplib.model.solved import Joint


@dataclass(frozen=True, slots=True)
class Seat:
    """One joint as the boards have it.

    `axis` and `sign` are the direction of entry, `across` the world axis of the entering board's
    thickness, `face` where the receiving board's uncut box begins for it. `inside` is the wood that
    stands inside the receiving board's uncut box, `entering` the box around it, `entered` how far
    past the face it reaches (negative where it stops short; more than the receiving board is thick where
    it comes out behind), `cut` the cut that takes it (None where there is none), `room` that cut in the cabinet.
    """

    joint: Joint
    enters: Board
    receives: Board
    axis: int
    sign: int
    across: int
    face: int
    inside: list[Box]
    entering: Box | None
    entered: int
    cut: BoxCut | None
    room: Box | None

    @property
    def cut_depth(self) -> int:
        """How deep the cut goes from the face, in ticks."""
        return self.sign * (far(self.room, self.axis, self.sign) - self.face)


def seat_of(joint: Joint, enters: Board, receives: Board) -> Seat:
    """Reads a joint off its two boards. The cut is the one made for the entering board, else the
    one that takes most of it.
    """
    axis, sign = direction(joint.axis)
    inside = common_boxes(enters.pieces, [receives.box])
    face = near(receives.box, axis, sign)
    entering = around(inside) if len(inside) > 1 else inside[0] if inside else None
    reaching = [piece for piece in enters.pieces if piece.overlaps(receives.box)] or [enters.box]
    entered = max(sign * (far(piece, axis, sign) - face) for piece in reaching)
    across = directions(enters.placement.axes)[2][0]
    cut, room = _cut_for(enters, receives, inside, axis, sign)
    return Seat(joint, enters, receives, axis, sign, across, face, inside, entering, entered, cut, room)


def _cut_for(
    enters: Board, receives: Board, inside: list[Box], axis: int, sign: int
) -> tuple[BoxCut | None, Box | None]:
    cuts = [cut for cut in receives.cuts if isinstance(cut, BoxCut)]
    choice = list(zip(cuts, receives.cut_boxes, strict=True))
    named = [pair for pair in choice if pair[0].for_board == enters.name]
    if len(named) == 1:
        return named[0]
    taking = named or [pair for pair in choice if any(pair[1].overlaps(box) for box in inside)]

    def taken(pair: tuple[BoxCut, Box]) -> tuple[int, int]:
        """Of several that are made for one board, such as groove and rabbet of a front, the deepest tells."""
        deep = sign * far(pair[1], axis, sign) if named else 0
        return deep, sum(box.volume for box in common_boxes(inside, [pair[1]]))

    return max(taking, key=taken, default=(None, None))
