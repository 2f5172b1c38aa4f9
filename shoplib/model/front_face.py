"""The fronts of a case as spans seen from the front, and what one part that is off does to the gaps about them."""

from dataclasses import dataclass, replace
from itertools import pairwise

from shoplib.measure.traced import named
from shoplib.model.solved import Cabinet
from shoplib.model.uprights import uprights

Span = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Piece:
    """One front: its bay and its number in the bay (both from 1), and where it reaches in width and in height."""

    bay: int
    number: int
    x: Span
    z: Span

    @property
    def height(self) -> int:
        """How high it is, in ticks."""
        return self.z[1] - self.z[0]

    @property
    def width(self) -> int:
        """How wide it is, in ticks."""
        return self.x[1] - self.x[0]


@dataclass(frozen=True, slots=True)
class Face:
    """What stands beside fronts (`uprights`, left to right), below them (`floor`) and above (`ceiling`), and they.

    `inset` says whether they stand between those, or cover them. All in ticks.
    """

    uprights: tuple[Span, ...]
    floor: Span
    ceiling: Span
    pieces: tuple[Piece, ...]
    inset: bool

    def bay(self, number: int) -> tuple[Piece, ...]:
        """The fronts of one bay from the bottom up."""
        return tuple(piece for piece in self.pieces if piece.bay == number)

    @property
    def bays(self) -> int:
        """How many bays there are."""
        return len(self.uprights) - 1


def face_of(cabinet: Cabinet, inset: bool) -> Face:
    """The face of a solved case that has bottom, top, two sides and one drawer across in each bay.

    Every span is read off the boards. KeyError where the case has no bottom or no top.
    """
    boards = cabinet.by_name
    pieces = []
    for board in cabinet.boards:
        if board.role == "front":
            part, box = board.part_of, board.box
            pieces.append(Piece(part.bay, part.number, (box.low[0], box.high[0]), (box.low[2], box.high[2])))
    floor, ceiling = boards["bottom"].box, boards["top"].box
    return Face(
        tuple((board.box.low[0], board.box.high[0]) for board in uprights(cabinet)),
        (floor.low[2], floor.high[2]), (ceiling.low[2], ceiling.high[2]),
        tuple(sorted(pieces, key=lambda piece: (piece.bay, piece.number))), inset,
    )


@dataclass(frozen=True, slots=True)
class FrontGap:
    """One gap beside a front: between what (in words), along "x" or "z", and how wide; less than nothing: a clash.

    `fronts` are the heights of the fronts above and below it, which swell into it where they are of solid wood; a gap
    along x has none, since fronts hardly move along their grain.
    """

    between: tuple[str, str]
    along: str
    size: int
    fronts: tuple[int, ...] = ()


def gaps_of(face: Face) -> tuple[FrontGap, ...]:
    """All gaps about the fronts, in each bay from the bottom up, then beside them.

    Inset fronts have gaps to the case; overlay fronts only to each other.
    """
    found = []
    for bay in range(1, face.bays + 1):
        column = face.bay(bay)
        if face.inset:
            low = column[0]
            found.append(_gap("bottom", _name(low, face), "z", low.z[0] - face.floor[1], low))
        for below, above in pairwise(column):
            found.append(_gap(_name(below, face), _name(above, face), "z", above.z[0] - below.z[1], below, above))
        if face.inset:
            high = column[-1]
            found.append(_gap(_name(high, face), "top", "z", face.ceiling[0] - high.z[1], high))
            for piece in column:
                left, right = face.uprights[bay - 1][1], face.uprights[bay][0]
                found.append(_gap("left of", _name(piece, face), "x", piece.x[0] - left))
                found.append(_gap("right of", _name(piece, face), "x", right - piece.x[1]))
    if not face.inset:
        for left in face.pieces:
            for right in face.bay(left.bay + 1):
                if left.z[0] < right.z[1] and right.z[0] < left.z[1]:
                    found.append(_gap(_name(left, face), _name(right, face), "x", right.x[0] - left.x[1]))
    return tuple(found)


def _name(piece: Piece, face: Face) -> str:
    return f"front {piece.number}" if face.bays == 1 else f"bay {piece.bay} front {piece.number}"


def _gap(one: str, other: str, along: str, size: int, *fronts: Piece) -> FrontGap:
    told = f"{one} {other}" if one.endswith(" of") else f"gap between {one} and {other}"
    return FrontGap((one, other), along, named(size, told), tuple(front.height for front in fronts))


def front_too_high(face: Face, bay: int, number: int, over: int) -> Face:
    """The face where one front came out `over` too high (minus: too low) and the fronts are set by spacers upward.

    Every front above it moves by as much, and the last gap takes it all.

    >>> two = Piece(1, 1, (3, 11), (3, 11)), Piece(1, 2, (3, 11), (12, 21))
    >>> low = Face(((0, 2), (12, 14)), (0, 2), (22, 24), two, True)
    >>> [gap.size for gap in gaps_of(front_too_high(low, 1, 1, 1)) if gap.along == "z"]
    [1, 1, 0]
    """
    moved = []
    for piece in face.pieces:
        low, high = piece.z
        if piece.bay == bay and piece.number == number:
            piece = replace(piece, z=(low, high + over))
        elif piece.bay == bay and piece.number > number:
            piece = replace(piece, z=(low + over, high + over))
        moved.append(piece)
    return replace(face, pieces=tuple(moved))


def front_too_wide(face: Face, bay: int, number: int, over: int) -> Face:
    """The face where one front came out `over` too wide and is set by a spacer at its left: its right gap takes it."""
    pieces = tuple(
        replace(piece, x=(piece.x[0], piece.x[1] + over)) if (piece.bay, piece.number) == (bay, number) else piece
        for piece in face.pieces
    )
    return replace(face, pieces=pieces)


def divider_off(face: Face, number: int, over: int) -> Face:
    """The face where divider `number` (from the left, 1 up) stands `over` too far right; fronts keep their places."""
    uprights = list(face.uprights)
    low, high = uprights[number]
    uprights[number] = (low + over, high + over)
    return replace(face, uprights=tuple(uprights))
