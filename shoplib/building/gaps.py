"""The gaps about fronts as they are seen and set with spacers."""

from itertools import pairwise

from shoplib.model.board import Board
from shoplib.model.solved import Cabinet, Gap


def open_gaps(cabinet: Cabinet) -> tuple[Gap, ...]:
    """The gaps about fronts; one above another that a strip or a shelf fills in part becomes the two beside that.

    >>> open_gaps(Cabinet("no boards", (), {}))
    ()
    """
    found: list[Gap] = []
    for gap in cabinet.gaps:
        below, above = (cabinet.by_name[name] for name in gap.between)
        filled = filling(cabinet, below, above) if gap.along == "z" else []
        stations = [below, *filled, above]
        found += [gap] if not filled else [
            Gap((one.name, other.name), "z", other.box.low[2] - one.box.high[2]) for one, other in pairwise(stations)
        ]
    return tuple(found)


def fronted(board: Board) -> str:
    """What a gap lies beside: the drawer or pull-out that a front is of, or the board of the case.

    >>> from shoplib.model.part_of import PartOf
    >>> from shoplib.model.placement import Placement
    >>> at = Placement((0, 0, 0), ("+x", "+z", "-y"))
    >>> fronted(Board("bay 1 drawer 2 front", "bay 1 drawer 2", 3, "s", 9, 4, 1, at, (), role="front",
    ...               part_of=PartOf(1, "drawer", 2)))
    'bay 1 drawer 2'
    """
    return board.part_of.name if board.role == "front" else board.name


def filling(cabinet: Cabinet, below: Board, above: Board) -> list[Board]:
    """Strips and shelves whose front edges stand between two inset fronts, from the bottom up.

    >>> from shoplib.model.placement import Placement
    >>> places = (Placement((0, 0, height), ("+x", "+z", "-y")) for height in (0, 6))
    >>> low, high = (Board(f"front {at.origin}", "case", 3, "s", 9, 4, 1, at) for at in places)
    >>> filling(Cabinet("two fronts", (low, high), {}), low, high)
    []
    """
    low, high = below.box, above.box
    found = [
        board for board in cabinet.boards if board.role in ("strip", "fixed shelf")
        and low.high[2] <= board.box.low[2] and board.box.high[2] <= high.low[2]
        and all(board.box.low[k] < low.high[k] and low.low[k] < board.box.high[k] for k in (0, 1))
    ]
    return sorted(found, key=lambda board: board.box.low[2])
