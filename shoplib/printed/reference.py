"""The three sides of a board that it is marked out from."""

from dataclasses import dataclass

from shoplib.draw.board_face import Face
from shoplib.draw.slide_lines import worked_faces
from shoplib.lists.sides import datum_side, outline_of, side_name
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet


@dataclass(frozen=True, slots=True)
class Reference:
    """Names of sides, by where they look in the cabinet: "inside face", "front edge", "bottom end"."""

    face: str
    edge: str
    end: str

    @property
    def words(self) -> str:
        """All three.

        >>> Reference("inside face", "front edge", "bottom end").words
        'inside face, front edge and bottom end'
        """
        return f"{self.face}, {self.edge} and {self.end}"


def reference(board: Board, cabinet: Cabinet) -> Reference:
    """The sides that the places of its cuts are given from: the edge and the end nearest the front, the bottom or the
    left of the cabinet, and the face that is worked, of two the one that is drawn first.

    Raises KeyError where the board is not of the cabinet.
    """
    seen = Face(board, worked_faces(board, cabinet)[0])
    face = side_name(board, 2, 1 if seen.upper else -1, outline_of(board, cabinet))
    end, edge = (side_name(board, own, datum_side(board, own)) for own in (0, 1))
    return Reference(face, edge, end)
