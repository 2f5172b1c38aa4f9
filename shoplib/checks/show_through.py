"""A groove that runs right through a drawer box for its bottom may be seen from outside."""

from collections.abc import Iterator, Sequence

from shoplib.checks.geometry import common_boxes, far
from shoplib.model.board import BOX_WALLS, Board, BoxCut
from shoplib.model.box import Box, Point, around, what_remains
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import boards_in_short

_ENDS = (("left end", "right end"), ("front", "rear"), ("underside", "top"))


def find_grooves_that_show(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "note" for each kind of box wall whose groove for the bottom comes out at an end that no
    other board of the box covers. Stopped grooves and covered ends give nothing.
    """
    seen: dict[tuple[str, str], list[Board]] = {}
    for group in cabinet.groups.values():
        bottoms = {board.name for board in group if board.role == "box bottom"}
        if not bottoms:
            continue
        whole = around([board.box for board in group])
        for board in group:
            if board.role in BOX_WALLS:
                for end in open_ends(board, group, bottoms, whole):
                    seen.setdefault((board.role, end), []).append(board)
    return tuple(_note(role, end, boards) for (role, end), boards in seen.items())


def open_ends(board: Board, group: Sequence[Board], bottoms: set[str], whole: Box) -> Iterator[str]:
    """The ends ("front", "rear", "left end", "right end") where a groove for one of the bottoms can be seen.

    `whole` is the box round the group. From the middle of the groove one looks out along it: what another
    board fills anywhere on the way is hidden. The bottom itself hides nothing, its edge is what is seen.
    """
    others = [other for other in group if other is not board and other.name not in bottoms]
    for cut in board.cuts:
        if not isinstance(cut, BoxCut) or cut.for_board not in bottoms:
            continue
        room = board.placement.to_world(cut.box)
        size = room.size
        axis = size.index(max(size))
        for end, sign in enumerate((-1, 1)):
            runs_out = sign * (far(room, axis, sign) - far(board.box, axis, sign)) >= 0
            if runs_out and _is_seen(room, others, axis, sign, far(whole, axis, sign)):
                yield _ENDS[axis][end]


def _is_seen(room: Box, others: list[Board], axis: int, sign: int, end: int) -> bool:
    """True where some line from the middle of the groove out to `end` meets none of the other boards."""
    middle = (room.low[axis] + room.high[axis]) // 2
    low, high = (end, middle) if sign < 0 else (middle, end)
    view = Box(_at(room.low, axis, low), _at(room.high, axis, high))
    shadows = []
    for other in others:
        if other.box.overlaps(view):
            for wall in common_boxes(other.pieces, [view]):
                shadow = Box(_at(wall.low, axis, low), _at(wall.high, axis, high))
                if shadow == view:  # one wall hides all of it
                    return False
                shadows.append(shadow)
    return bool(what_remains([view], shadows))


def _at(point: Point, axis: int, value: int) -> Point:
    changed = list(point)
    changed[axis] = value
    return tuple(changed)


def _note(role: str, end: str, boards: list[Board]) -> Finding:
    text = (
        f"{boards_in_short(boards)}: the groove for the bottom runs right through and shows at the {end}. "
        "Stop it short of the end or plug it, or leave it where nobody looks."
    )
    return Finding("show-through", "note", tuple(board.name for board in boards), text)
