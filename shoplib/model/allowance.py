"""What one joint asks of its two boards, read off the boards as solved: what is gained, what is cut, what is left."""

from dataclasses import dataclass

from shoplib.model.board import Board
from shoplib.model.box import Box, around
from shoplib.model.joinery import axis_of
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet, Joint


@dataclass(frozen=True, slots=True)
class Allowance:
    """One joint in numbers, all in ticks; a butt joint cuts and gains nothing.

    `gain` is how far the entering board goes past the face of the receiving one: what it is longer at that end
    than if it were butted. `width` and `depth` are those of the cut, `enters` the thickness of what stands in
    it (the whole board, or its tongue), `wood_left` what remains under the cut, `near_wall` how far the wall of
    the cut is from the nearer end or edge of the receiving board (0 where the cut runs out of it). `stop` is how
    far from the front edge of the receiving board the cut begins.
    """

    gain: int
    width: int
    depth: int
    enters: int
    wood_left: int
    near_wall: int
    stop: int

    @property
    def end_gap(self) -> int:
        """What the cut is deeper than the board enters."""
        return self.depth - self.gain

    @property
    def clearance(self) -> int:
        """What the cut is wider than the mean thickness of what stands in it, both walls together."""
        return self.width - self.enters


def allowance(cabinet: Cabinet, joint: Joint) -> Allowance:
    """What the joint asks of its boards.

    gain = depth of the cut - end gap; wood left = thickness - depth (common practice, no source). Neither is
    computed here: both are measured on the boards as they came out. Raises KeyError where a board is not of the
    cabinet.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> from shoplib.model.cabinet import solve
    >>> from shoplib.model.project import Carcass, JointChoice, Project, Size
    >>> from shoplib.model.sheet import Sheet
    >>> corner = JointChoice("rabbet", INCH // 4)
    >>> size, ply = Size("outside", 30 * INCH, 20 * INCH, 12 * INCH), Sheet("ply", "plywood", 3 * INCH // 4)
    >>> case = solve(Project("box", INCH_STYLE, {"ply": ply}, size, Carcass("ply", corner=corner)))
    >>> found = allowance(case, next(joint for joint in case.joints if joint.enters == "bottom"))
    >>> found.gain == INCH // 4, found.wood_left == INCH // 2, found.near_wall
    (True, True, 0)
    """
    enters, receives = cabinet.by_name[joint.enters], cabinet.by_name[joint.receives]
    along, sign = axis_of(joint.axis)
    across = directions(enters.placement.axes)[2][0]
    cut = cut_for(enters, receives)
    if cut is None:
        return Allowance(0, 0, 0, enters.thickness, receives.box.size[along], 0, 0)
    inside = around([piece.common(cut) for piece in enters.pieces if piece.overlaps(cut)])
    body = receives.box
    gain = inside.high[along] - body.low[along] if sign > 0 else body.high[along] - inside.low[along]
    walls = [cut.low[across] - body.low[across], body.high[across] - cut.high[across]]
    run = 3 - along - across
    return Allowance(
        gain, cut.size[across], cut.size[along], inside.size[across], body.size[along] - cut.size[along],
        walls[walls[1] < walls[0]], cut.low[run] - body.low[run] if run == 1 else 0,
    )


def cut_for(enters: Board, receives: Board) -> Box | None:
    """The cut of one board that the other goes into, in the world; None where they are butted."""
    for cut in receives.cuts:
        if cut.for_board == enters.name and hasattr(cut, "low"):
            box = receives.placement.to_world(cut.box)
            if any(piece.overlaps(box) for piece in enters.pieces):
                return box
    return None
