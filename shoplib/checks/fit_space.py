"""The cabinet must fit the space that was measured for it."""

from collections.abc import Sequence
from itertools import product

from shoplib.measure import narrowest, write_brief
from shoplib.model.box import Box, Point
from shoplib.model.project import Block, Space
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import at_least, how_much
from shoplib.words.naming import and_list

_LESS = ("narrower", "shallower", "lower")
_REACH = (set(), {"pull"}, {"caster", "foot"})
"""What makes the envelope larger than the boards, in width, depth and height."""
_CALLED = {"pull": "pulls", "caster": "casters", "foot": "feet"}


def has_place(size: Point, space: Point, blocks: Sequence[Box]) -> bool:
    """Whether a box of this size can stand on the floor of the space, clear of all the blocks.

    Sizes and blocks are x from the left wall, y from the back wall, z from the floor. Any place that
    is free can be pushed left and back until it meets a wall or a block, so those places are tried.

    >>> post = Box((40, 0, 0), (50, 10, 99))
    >>> has_place((40, 10, 30), (100, 20, 50), [post]), has_place((60, 15, 30), (100, 20, 50), [post])
    (True, False)
    """
    width, depth, height = size
    if any(need > room for need, room in zip(size, space, strict=True)):
        return False
    lefts = [0, *(block.high[0] for block in blocks)]
    backs = [0, *(block.high[1] for block in blocks)]
    return any(
        x + width <= space[0]
        and y + depth <= space[1]
        and not any(Box((x, y, 0), (x + width, y + depth, height)).overlaps(block) for block in blocks)
        for x, y in product(lefts, backs)
    )


def least_cut(size: Point, space: Point, blocks: Sequence[Box]) -> tuple[int, int] | None:
    """The smallest amount by which one size must shrink to find a place: (amount, axis), or None.

    >>> least_cut((60, 15, 30), (100, 20, 50), [Box((40, 0, 0), (50, 10, 99))])
    (5, 1)
    """
    ways = []
    for axis in range(3):
        starts = [0] if axis == 2 else [0, *(block.high[axis] for block in blocks)]
        ends = [space[axis], *(block.low[axis] for block in blocks)]
        widest = sorted({end - start for start, end in product(starts, ends)}, reverse=True)
        for value in widest:
            trial = tuple(value if a == axis else size[a] for a in range(3))
            if 0 < value < size[axis] and has_place(trial, space, blocks):
                ways.append((size[axis] - value, axis))
                break
    return min(ways, default=None)


def find_space_conflicts(cabinet: Cabinet) -> tuple[Finding, ...]:
    """What keeps the envelope (casters, feet and pulls included) out of `project.space`.

    "stop" where it does not fit; "warn" where only a floor out of level may take the height.
    """
    space = cabinet.project.space if cabinet.project else None
    if space is None:
        return ()
    size = cabinet.envelope.size
    found = _too_large(cabinet, size, space) or _in_the_way(cabinet, size, space)
    return (*found, *_floor(cabinet, size, space))


def _room(space: Space) -> Point:
    return (narrowest(space.width), narrowest(space.depth), narrowest(space.height))


def _clearance(space: Space) -> Point:
    return (space.clearance_width, space.clearance_depth, space.clearance_height)


def _finding(level: str, text: str, amount: int | None = None) -> Finding:
    return Finding("space", level, (), text, amount)


def _too_large(cabinet: Cabinet, size: Point, space: Space) -> list[Finding]:
    found, style = [], cabinet.style
    for axis, what in enumerate(("width", "depth", "height")):
        need, room, free = size[axis], _room(space)[axis], _clearance(space)[axis]
        over = need + free - room
        if over > 0:
            kept = f" and {write_brief(free, style)} must stay free" if free else ""
            fitted = need > cabinet.outside.size[axis] and _REACH[axis] & {f.what for f in cabinet.hardware}
            counted = f", {' and '.join(_CALLED[what] for what in sorted(fitted))} included," if fitted else ""
            text = (
                f"The cabinet{counted} takes {write_brief(need, style)} of {what}{kept}, but the space has only "
                f"{write_brief(room, style)}. Make it {_LESS[axis]} by {at_least(over, style)}."
            )
            found.append(_finding("stop", text, over))
    return found


def _in_the_way(cabinet: Cabinet, size: Point, space: Space) -> list[Finding]:
    """Blocks in the space: the case and its clearance must find a place beside, before or under them."""
    if not space.blocks:
        return []
    need = tuple(a + b for a, b in zip(size, _clearance(space), strict=True))
    blocks = [_box(block) for block in space.blocks]
    if has_place(need, _room(space), blocks):
        return []
    cut = least_cut(need, _room(space), blocks)
    less = f"{_LESS[cut[1]]} by {at_least(cut[0], cabinet.style)}" if cut else "smaller in two sizes"
    in_the_way = and_list([block.name for block in space.blocks])
    text = (
        f"No place in the space keeps the cabinet clear of the {in_the_way}. "
        f"Make it {less}, or move what is in the way."
    )
    return [_finding("stop", text, cut[0] if cut else None)]


def _box(block: Block) -> Box:
    low = (block.left, block.back, block.bottom)
    return Box(low, (block.left + block.width, block.back + block.depth, block.bottom + block.height))


def _floor(cabinet: Cabinet, size: Point, space: Space) -> list[Finding]:
    """A level case on a floor that falls is shimmed up at its low end, and may need that height.

    One on casters stands as the floor does.
    """
    if not space.floor_fall:
        return []
    fall = how_much(space.floor_fall, cabinet.style)
    if cabinet.project.base.kind == "casters":
        text = (
            f"The floor falls {fall}: on its casters the cabinet leans with it, and is not shimmed. Lock the casters, "
            "for on a slope it rolls off and its drawers run out by themselves."
        )
        return [_finding("note", text, space.floor_fall)]
    over = size[2] + space.clearance_height + space.floor_fall - _room(space)[2]
    if over <= 0 or over > space.floor_fall:
        text = f"The floor falls {fall}: shim the low end until the case stands level."
        return [_finding("note", text, space.floor_fall)]
    lacking = at_least(over, cabinet.style)
    text = (
        f"The floor falls {fall}. If what is above falls with it, the case set level lacks {lacking} of "
        f"height: hold a level across the space, and make the case lower by {lacking} if it does."
    )
    return [_finding("warn", text, over)]
