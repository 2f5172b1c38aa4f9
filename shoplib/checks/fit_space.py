"""The cabinet must fit the space that was measured for it, and be brought there."""

from collections.abc import Sequence
from itertools import product
from math import isqrt

from shoplib.measure import narrowest, write_brief
from shoplib.model.box import Box, Point
from shoplib.model.project import Block, Space
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import how_much
from shoplib.words.naming import and_list

_LESS = ("narrower", "shallower", "lower")


def stands_up(height: int, other: int, room: int) -> bool:
    """Whether a case laid on its back (`other` = depth) or side (`other` = width) can be tipped upright.

    While it turns, its diagonal stands upright once: sqrt(height2 + other2) must not exceed the
    room's height. Squares are compared, so the answer is exact.

    >>> stands_up(4, 3, 5), stands_up(4, 3, 4)
    (True, False)
    """
    return height * height + other * other <= room * room


def diagonal_up(a: int, b: int, step: int) -> int:
    """The diagonal of a rectangle, rounded up to a whole step: so much height is enough.

    >>> diagonal_up(3, 4, 1), diagonal_up(1, 1, 1), diagonal_up(30, 40, 20)
    (5, 2, 60)
    """
    square = a * a + b * b
    whole = isqrt(square)
    whole += whole * whole < square
    return -(-whole // step) * step


def too_big_for_door(sizes: Sequence[int], openings: Sequence[int]) -> int:
    """By how much the case is too big for a door: its smaller sizes against the door's, each in order.

    A case goes through with its longest size ahead, so only the two smaller ones meet the door.
    With one size of the door known, the smallest meets it. 0 where it goes through.

    >>> too_big_for_door((60, 24, 30), (80, 28)), too_big_for_door((60, 24, 30), (80, 22))
    (0, 2)
    """
    return max([size - room for size, room in zip(sorted(sizes), sorted(openings), strict=False)] + [0])


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

    "stop" where it does not fit, cannot be stood up or does not go through the door; "warn" where
    only a floor out of level may take the height; "note" for the height that standing it up needs.
    """
    space = cabinet.project.space if cabinet.project else None
    if space is None:
        return ()
    size = cabinet.envelope.size
    found = _too_large(cabinet, size, space) or _in_the_way(cabinet, size, space)
    for look in (_floor, _standing_up, _door):
        found += look(cabinet, size, space)
    return tuple(found)


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
            text = (
                f"The cabinet takes {write_brief(need, style)} of {what}{kept}, but the space has only "
                f"{write_brief(room, style)}. Make it {how_much(over, style)} {_LESS[axis]}."
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
    less = f"{how_much(cut[0], cabinet.style)} {_LESS[cut[1]]}" if cut else "smaller in two sizes"
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
    """A level case on a floor that falls is shimmed up at its low end, and may need that height."""
    if not space.floor_fall:
        return []
    fall = how_much(space.floor_fall, cabinet.style)
    over = size[2] + space.clearance_height + space.floor_fall - _room(space)[2]
    if over <= 0 or over > space.floor_fall:
        text = f"The floor falls {fall}: shim the low end until the case stands level."
        return [_finding("note", text, space.floor_fall)]
    lacking = how_much(over, cabinet.style)
    text = (
        f"The floor falls {fall}. If what is above falls with it, the case set level lacks {lacking} of "
        f"height: hold a level across the space, and make the case {lacking} lower if it does."
    )
    return [_finding("warn", text, over)]


def _standing_up(cabinet: Cabinet, size: Point, space: Space) -> list[Finding]:
    if space.bring_in == "slid in":
        return []
    style, (width, depth, height) = cabinet.style, size
    other = depth if space.bring_in == "stood up from its back" else width
    needed = diagonal_up(height, other, style.step)
    need = f"{space.bring_in.capitalize()}, the cabinet needs {write_brief(needed, style)} of height"
    if space.room_height is None:
        text = f"{need}. Measure the room's height and put it into space.room_height."
        return [_finding("note", text, needed)]
    room = write_brief(space.room_height, style)
    if stands_up(height, other, space.room_height):
        return [_finding("note", f"{need}; the room has {room}.", needed)]
    short = needed - space.room_height
    below = {fitting.what for fitting in cabinet.hardware} & {"caster", "foot"}
    off = "Leave its casters or feet off until it stands, slide" if below else "Slide"
    text = (
        f"{need} and the room has {room}: {how_much(short, style)} too little. "
        f"{off} it in upright, or build it in two parts."
    )
    return [_finding("stop", text, short)]


def _door(cabinet: Cabinet, size: Point, space: Space) -> list[Finding]:
    openings = [given for given in (space.door_width, space.door_height) if given is not None]
    over = too_big_for_door(size, openings)
    if not over:
        return []
    small = " x ".join(write_brief(part, cabinet.style) for part in sorted(size)[: len(openings)])
    door = " x ".join(write_brief(part, cabinet.style) for part in sorted(openings))
    names = {"pull": "pulls", "caster": "casters", "foot": "feet"}
    loose = [name for what, name in names.items() if any(fitting.what == what for fitting in cabinet.hardware)]
    off = f"Take {and_list(loose)} off, or build" if loose else "Build"
    text = (
        f"With its longest size ahead the cabinet is {small} and the door is {door}: "
        f"{how_much(over, cabinet.style)} too much. {off} it in two parts."
    )
    return [_finding("stop", text, over)]
