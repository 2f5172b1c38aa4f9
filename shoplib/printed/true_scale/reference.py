"""The three sides of a board that it is marked out from."""

from dataclasses import dataclass

from shoplib.draw.face_on import FaceOn
from shoplib.draw.slide_lines import worked_faces
from shoplib.lists.cut_list import Kind, turns_between
from shoplib.lists.sides import datum_side, looks, side_name
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, in_short


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


def reference(board: Board, kind: Kind, cabinet: Cabinet) -> Reference:
    """The sides that the places of its cuts are given from: the edge and the end nearest the front, the bottom or the
    left of the cabinet, and the face that is worked (see `reference_face`).

    Raises KeyError where the board is not of the cabinet.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.lists.cut_list import kinds
    >>> case = cabinet_from("finger_jointed_drawers")
    >>> sides = kinds(case)[0]
    >>> reference(sides.first, sides, case).words
    'inside face, front edge and bottom end'
    """
    face = FaceOn(board, reference_face(board, kind, cabinet)).called(cabinet)
    end, edge = (side_name(board, own, datum_side(board, own)) for own in (0, 1))
    return Reference(face, edge, end)


def reference_face(board: Board, kind: Kind, cabinet: Cabinet) -> str:
    """Which way the face looks that a board is marked out on: what its label names, and its page draws or names.

    Of the first of its kind it is the face that is drawn first; of another the one that has the same cuts, laid cut on
    cut, and where that carries nothing, the one that does. Where either would do, the one of the same name.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.lists.cut_list import kinds
    >>> case = cabinet_from("finger_jointed_drawers")
    >>> sides = kinds(case)[0]
    >>> [reference_face(side, sides, case) for side in sides.boards]
    ['right', 'left']
    """
    own = worked_faces(board, cabinet)
    if board.name == kind.first.name:
        return own[0]
    drawn = FaceOn(kind.first, worked_faces(kind.first, cabinet)[0])
    side = 1 if drawn.upper else -1
    equal = {looks(board, 2, -side if over else side) for _, _, over in turns_between(kind.first, board)}
    name = drawn.called(cabinet)
    return min(own, key=lambda face: (face not in equal, FaceOn(board, face).called(cabinet) != name, own.index(face)))


def reference_words(kind: Kind, cabinet: Cabinet) -> str:
    """The sides of all boards of a kind in a line; where equal boards are called otherwise, which is which.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.lists.cut_list import kinds
    >>> case = cabinet_from("finger_jointed_drawers")
    >>> sides = kinds(case)[0]
    >>> reference_words(sides, case)
    'inside face, front edge and bottom end'
    """
    first = reference(kind.first, kind, cabinet)
    told: dict[str, list[str]] = {}
    for board in kind.boards[1:]:
        other = reference(board, kind, cabinet)
        if other != first:
            told.setdefault(_apart(other, first), []).append(board.name)
    return "; ".join((first.words, *(f"of {and_list(in_short(names))} the {words}" for words, names in told.items())))


def _apart(other: Reference, first: Reference) -> str:
    """The face alone, where that is all in which two differ."""
    return other.face if (other.edge, other.end) == (first.edge, first.end) else other.words
