"""Where a board lies that no cut holds to its place: a butted rail between uprights, a butted divider on the bottom."""

from collections.abc import Iterator

from shoplib.lists.butted import butt_joints
from shoplib.lists.sides import side_name
from shoplib.lists.writing import Writing
from shoplib.model.board import CASE, Board
from shoplib.model.solved import Cabinet
from shoplib.words.naming import and_list, in_short


def held_by_no_cut(cabinet: Cabinet) -> dict[str, tuple[str, ...]]:
    """The boards of the case that meet uprights alone, or as dividers bottom and top alone, and enter no cut, each with
    the boards that it meets.

    >>> held_by_no_cut(Cabinet("no boards", (), {}))
    {}
    """
    butts, found = set(butt_joints(cabinet)), {}
    for board in cabinet.groups.get("case", ()):
        joints = [joint for joint in cabinet.joints if joint.enters == board.name]
        way = "z" if board.role == "divider" else "x"
        if board.stage == CASE and joints and all(joint in butts and joint.axis[1] == way for joint in joints):
            found[board.name] = tuple(joint.receives for joint in joints)
    return found


def lies_words(name: str, cabinet: Cabinet, page: Writing) -> str:
    """How high and how far back it lies on its uprights, a divider how far from the left on its bottom, and what it
    touches there.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("under_bench_case")
    >>> lies_words("toe board", cabinet, Writing(cabinet.style))
    'Place of toe board on left side and right side: its bottom edge flush with the bottom end, its front face 3 in \
behind the front edge, where the notch ends; its top edge against bottom.'
    """
    board = cabinet.by_name[name]
    alike: dict[str, list[str]] = {}
    for other in held_by_no_cut(cabinet)[name]:
        alike.setdefault(_on(board, cabinet.by_name[other], page), []).append(other)
    where = "; ".join(f"on {and_list(in_short(names))}: {words}" for words, names in alike.items())
    touched = and_list([f"its {side} against {other}" for side, other in _touched(board, cabinet)])
    return f"Place of {name} {where}{f'; {touched}' if touched else ''}."


_BEYOND = {0: ("to the right of", "to the left of"), 1: ("behind", "before"), 2: ("above", "below")}
"""By world axis: what lies farther from its low end than something else, and what nearer."""


def _on(board: Board, other: Board, page: Writing) -> str:
    """Its left or its lower side, and its front side, from the sides of one board that look the same way."""
    notched = any(
        cut.kind == "notch" and other.placement.to_world(cut.box).high[1] == board.box.low[1] for cut in other.cuts
    )
    places = [
        f"its {_side(board, axis, -1)} {_from(board.box.low[axis] - other.box.low[axis], *_BEYOND[axis], page)} the "
        f"{_side(other, axis, -1)}" for axis in (0 if board.role == "divider" else 2, 1)
    ]
    return f"{', '.join(places)}{', where the notch ends' if notched else ''}"


def _from(ticks: int, beyond: str, short: str, page: Writing) -> str:
    return f"{page.length(abs(ticks))} {beyond if ticks > 0 else short}" if ticks else "flush with"


def _side(board: Board, axis: int, look: int) -> str:
    """The name of the side of a board that looks low (-1) or high (+1) along a world axis."""
    own = board.placement.own_axis(axis)
    up = board.placement.axes[own][0] == "+"
    return side_name(board, own, look if up else -look)


def _touched(board: Board, cabinet: Cabinet) -> Iterator[tuple[str, str]]:
    """The sides along height and depth, of a divider along depth alone, that lie against other boards of the case, with
    these."""
    ways = (1,) if board.role == "divider" else (2, 1)
    for other in cabinet.groups["case"]:
        if other.stage != CASE or other.name == board.name:
            continue
        for axis in ways:
            if all(board.box.low[k] < other.box.high[k] and other.box.low[k] < board.box.high[k]
                   for k in range(3) if k != axis):
                if board.box.high[axis] == other.box.low[axis]:
                    yield _side(board, axis, 1), other.name
                elif board.box.low[axis] == other.box.high[axis]:
                    yield _side(board, axis, -1), other.name
