"""The faces that a template from the front or back edge is laid on, and which of them have it turned over."""

from collections.abc import Sequence
from dataclasses import dataclass

from shoplib.draw.face_on import FaceOn
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list


@dataclass(frozen=True, slots=True)
class OnFace:
    """A face that a template is laid on, along its `edge`; `left` where that is on the left as one stands before it."""

    face: FaceOn
    edge: str
    left: bool

    def called(self, cabinet: Cabinet) -> str:
        """The board and its face."""
        return f"{self.face.board.name} ({self.face.called(cabinet)}, from the {self.edge})"


def for_faces(laid: Sequence[OnFace], cabinet: Cabinet) -> list[str]:
    """Which faces it serves as it is drawn, for the hand of the first of them, and which it serves turned over.

    >>> from shoplib.model.board import Board
    >>> from shoplib.model.placement import Placement
    >>> side = Board("side", "case", 1, "s", 90, 50, 2, Placement((2, 0, 0), ("+z", "+y", "-x")))
    >>> both = [OnFace(FaceOn(side, name), "front edge", FaceOn(side, name).datum_left) for name in ("right", "left")]
    >>> told = for_faces(both, Cabinet("Trial", (side,), {}))
    >>> told[0], told[1].partition(":")[0]
    ('For side (right face, from the front edge).', 'TURN IT OVER for side (left face, from the front edge)')
    """
    first = laid[0].left
    as_drawn, over = (
        and_list([one.called(cabinet) for one in laid if one.left == same]) for same in (first, not first))
    told = [f"For {as_drawn}."]
    if over:
        told.append(f"TURN IT OVER for {over}: prick the marks through, and lay it with its back up along the edge.")
    return told
