"""One face of a board laid flat: which way it is turned, what its edges are called, where its datum is."""

from dataclasses import dataclass

from shoplib.draw.scene import Rect
from shoplib.lists.sides import datum_side, looks
from shoplib.model.board import Board, Cut, Hole
from shoplib.model.box import Box
from shoplib.model.placement import directions

_OWN = {"u": 0, "v": 1, "w": 2}


def faces(board: Board) -> tuple[str, ...]:
    """The faces to draw, named by where they look in the cabinet: every one that has cuts of its own.

    A board without cuts, or with through cuts only, is shown from its upper face (w = thickness).

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("under_bench_case")
    >>> [faces(cabinet.by_name[name]) for name in ("left side", "divider 1", "bottom")]
    [('right',), ('left',), ('top',)]
    """
    upper, lower = looks(board, 2, 1), looks(board, 2, -1)
    found = {_opens(board, cut) for cut in board.cuts}
    chosen = [name for name, one in ((upper, "upper"), (lower, "lower")) if one in found]
    return tuple(chosen) or (upper,)


def _opens(board: Board, cut: Cut) -> str:
    """Which face a cut opens on: upper (w = thickness), lower (w = 0), both, or neither (an edge)."""
    if isinstance(cut, Hole):
        if cut.along != "w":
            return "neither"
        if cut.depth >= board.thickness:
            return "both"
        return "lower" if cut.centre[2] == 0 else "upper"
    low, high = cut.low[2] <= 0, cut.high[2] >= board.thickness
    return {(True, True): "both", (True, False): "lower", (False, True): "upper"}.get((low, high), "neither")


@dataclass(frozen=True)
class Face:
    """A board turned so that one face looks at the reader, its length level.

    A board whose width stands upright in the cabinet is drawn upright, its top edge above, so that a box
    front and a box back lie the same way; any other has its datum end on the left. The datum edges are those
    nearest the front, the bottom and the left of the cabinet, so that the boards of a pair are measured from
    the same edges. The board is only ever turned, never mirrored.
    """

    board: Board
    name: str

    @property
    def upper(self) -> bool:
        """True where the face seen is w = thickness."""
        return self.name == looks(self.board, 2, 1)

    @property
    def _signs(self) -> tuple[int, int]:
        """Which way u and v run on the page (right and up are 1)."""
        (_, along), (axis, across), _ = directions(self.board.placement.axes)
        if axis == 2:
            return across if self.upper else -across, across
        return along, along if self.upper else -along

    def flat(self, box: Box) -> Rect:
        """A box of the board's own coordinates on the page, the board's lower left corner at (0, 0)."""
        (s, t), board = self._signs, self.board
        a, c = (box.low[0], box.high[0]) if s > 0 else (board.length - box.high[0], board.length - box.low[0])
        b, d = (box.low[1], box.high[1]) if t > 0 else (board.width - box.high[1], board.width - box.low[1])
        return a, b, c, d

    def opens_here(self, cut: Cut) -> bool:
        """Whether the cut can be seen on this face."""
        return _opens(self.board, cut) in ("both", "upper" if self.upper else "lower")

    def through(self, cut: Cut) -> bool:
        """Whether the cut goes from face to face."""
        return _opens(self.board, cut) == "both"

    @property
    def sides(self) -> dict[str, tuple[int, int]]:
        """What lies on each side of the page: 0 for an end of the board or 1 for an edge, -1 low or 1 high."""
        (s, t) = self._signs
        return {"left": (0, -s), "right": (0, s), "below": (1, -t), "above": (1, t)}

    @property
    def edges(self) -> dict[str, str]:
        """Which way the board's edge on each side of the page looks in the cabinet."""
        return {place: looks(self.board, *side) for place, side in self.sides.items()}

    @property
    def datum_below(self) -> bool:
        """Whether the datum edge across the width is at the foot of the page and not at its head."""
        own, side = self.sides["below"]
        return datum_side(self.board, own) == side

    @property
    def datum_left(self) -> bool:
        """Whether the datum end is on the left of the page and not on the right."""
        own, side = self.sides["left"]
        return datum_side(self.board, own) == side

    def extent(self, cut: Cut) -> Rect:
        """The cut on the page."""
        if not isinstance(cut, Hole):
            return self.flat(cut.box)
        low, high = list(cut.centre), list(cut.centre)
        own = _OWN[cut.along]
        for axis in range(3):
            if axis == own:
                if low[axis] == 0:
                    high[axis] += cut.depth
                else:
                    low[axis] -= cut.depth
            else:
                low[axis] -= cut.diameter // 2
                high[axis] += cut.diameter // 2
        return self.flat(Box(tuple(low), tuple(high)))
