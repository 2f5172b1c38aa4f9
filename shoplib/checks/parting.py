"""In which order boards go together so that each can still be entered: found by taking the whole apart.

What comes off last goes in first. A board comes off along a world axis where no wood of what still stands lies in its
way. Bored holes, pockets and other slanting cuts count as wood, so no way is said to be free that is not.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from shoplib.checks.driver_way import Driven
from shoplib.model.board import Board
from shoplib.model.box import Box
from shoplib.model.solved import Joint
from shoplib.words.naming import and_list

WAYS = ("+x", "-x", "+y", "-y", "+z", "-z")
_SLIDES_BADLY = ("dado", "tongue")
"""Joints that are pushed straight home: along a dado a board wipes the glue off (common practice, no source)."""

_COMES_OFF = {
    "back": 0, "toe board": 1, "plinth": 1, "box bottom": 1, "rail": 2, "side": 4, "box side": 4, "top": 5,
    "stretcher": 5, "box back": 5, "box front": 6, "divider": 6, "bottom": 7, "fixed shelf": 8,
}
"""What comes off first where several boards could, so what goes in last: the back squares the case, the sides hold all
that lies between them (common practice, no source)."""

HELD_AT_ENDS = ("fixed shelf", "box front", "box back")
"""Roles of boards that lie between two uprights."""
_HANGS = 3
"""Their place in that order once one of the uprights is off."""


@dataclass(frozen=True, slots=True)
class Entry:
    """A board that goes onto those that stand already; `way` is the world direction in which it moves.

    The first board of a whole has nothing to go onto and no way.
    """

    board: str
    onto: tuple[str, ...] = ()
    way: str = ""


def in_the_way(moving: Board, standing: Iterable[Board], way: str) -> tuple[str, ...]:
    """The boards that one strikes on its way in from outside, moving along `way` into its place.

    >>> from shoplib.model.placement import Placement
    >>> def shelf(name, height):
    ...     return Board(name, "case", 1, "s", 90, 30, 2, Placement((0, 0, height), ("+x", "+y", "+z")))
    >>> one, two, three = shelf("one", 0), shelf("two", 10), shelf("three", 20)
    >>> in_the_way(two, [one, three], "-z"), in_the_way(two, [one, three], "+y")
    (('three',), ())
    """
    return tuple(board.name for board in standing if _strikes(moving, board, way))


def _strikes(moving: Board, standing: Board, way: str) -> bool:
    return _behind(moving.box, standing.box, way) and any(
        _behind(a, b, way) for a in moving.pieces for b in standing.pieces
    )


def _behind(moving: Box, standing: Box, way: str) -> bool:
    """Whether a box that comes along a way passes through another before it is in its place."""
    (a, b, c), (d, e, f) = moving.low, moving.high
    (g, h, i), (j, k, m) = standing.low, standing.high
    x, y, z = a < j and g < d, b < k and h < e, c < m and i < f
    axis, plus = way[1], way[0] == "+"
    if axis == "x":
        return y and z and (g < d if plus else j > a)
    if axis == "y":
        return x and z and (h < e if plus else k > b)
    return x and y and (i < f if plus else m > c)


def put_together(
    boards: Iterable[Board], joints: Iterable[Joint], screws: Iterable[Driven] = ()
) -> tuple[Entry, ...]:
    """How the boards go together one by one, each past what stands by then.

    Boards that would leave no room for the driver of the `screws` go in after these wherever the joints allow it.
    Raises `Captured` where some of them cannot, whatever the order: a plan that is dry-fitted has none so far.
    """
    left = {board.name: board for board in boards}
    within = tuple(joint for joint in joints if {joint.enters, joint.receives} <= left.keys())
    strikes = {
        way: {name: set(in_the_way(board, (b for b in left.values() if b is not board), way))
              for name, board in left.items()}
        for way in WAYS
    }
    entries, screws = [], tuple(screws)
    while len(left) > 1:
        ways = [(name, way) for name in left for way in WAYS if not strikes[way][name] & left.keys()]
        if not ways:
            raise Captured(tuple(left))
        place = {name: k for k, name in enumerate(left)}
        off, way = min(ways, key=lambda found: (
            *_shuts(found[0], left, screws), *_before(*found, left, within), -place[found[0]],
        ))
        del left[off]
        entries.append(Entry(off, tuple(left), way))
    return (*map(Entry, left), *reversed(entries))


class Captured(ValueError):
    """Boards that no straight move brings together one by one; `boards` are their names."""

    def __init__(self, boards: tuple[str, ...]) -> None:
        super().__init__(f"no straight move brings {and_list(boards)} together one by one.")
        self.boards = boards


def _shuts(off: str, left: dict[str, Board], screws: tuple[Driven, ...]) -> tuple[int, int]:
    """How many boards stand in the way of the bits, and of the chucks, when a board goes in and its screws with it."""
    now = [each for each in screws if off in each.pair and each.pair <= left.keys()]
    return (
        sum(each.bit_meets(board) for each in now for board in left.values()),
        sum(each.chuck_meets(board) for each in now for board in left.values()),
    )


def _before(off: str, way: str, left: dict[str, Board], joints: tuple[Joint, ...]) -> tuple[int, ...]:
    """What decides between ways: a straight push, a rest that holds together, the usual order, along a joint."""
    met = [joint for joint in joints if off in (joint.enters, joint.receives)
           and {joint.enters, joint.receives} <= left.keys()]
    slid = sum(joint.kind in _SLIDES_BADLY and joint.axis[1] != way[1] for joint in met)
    straight = sum(joint.axis[1] == way[1] for joint in met)
    parts = _held_together([name for name in left if name != off], joints)
    return (slid, parts, _rank(left[off], joints, left), -straight)


def _rank(board: Board, joints: tuple[Joint, ...], left: dict[str, Board]) -> int:
    """What comes off first; a board held at one end only, its other end being free by now, goes before its like."""
    if board.role in HELD_AT_ENDS:
        ends = [joint.receives in left for joint in joints if joint.enters == board.name]
        nothing_on_it = not any(joint.receives == board.name and joint.enters in left for joint in joints)
        if nothing_on_it and len(ends) > 1 and sum(ends) <= 1:
            return _HANGS
    return _COMES_OFF.get(board.role, 9)


def _held_together(names: list[str], joints: tuple[Joint, ...]) -> int:
    """Into how many parts these boards fall; what floats in a groove holds nothing and is not counted."""
    held = [(joint.enters, joint.receives) for joint in joints if joint.kind != "groove"]
    floats = {joint.enters for joint in joints if joint.kind == "groove"} - {one for one, _ in held}
    left, parts = {name for name in names if name not in floats}, 0
    while left:
        parts, ahead = parts + 1, [left.pop()]
        while ahead:
            name = ahead.pop()
            for one, other in held:
                next_one = other if one == name else one if other == name else ""
                if next_one in left:
                    left.remove(next_one)
                    ahead.append(next_one)
    return parts
