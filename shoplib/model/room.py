"""The room that a space leaves for a case: its readings, its clearance, and what stands in it."""

from collections.abc import Sequence
from dataclasses import replace
from itertools import product

from shoplib.measure import Style, narrowest, to_step, write_brief
from shoplib.model.box import Box
from shoplib.model.project import Block, ImpossibleProject, Space
from shoplib.model.solved import Finding

Sizes = tuple[int, int, int]
Span = tuple[int, int]


def governing(space: Space, step: int) -> Sizes:
    """Width, height and depth that a case may have: the smallest readings, clear of the blocks, less the clearance.

    Each goes down to a whole step, for a case that is 1/64 in too wide does not go in.

    Raises ImpossibleProject where the blocks leave no place to stand in.
    """
    room, free = _readings(space), (space.clearance_width, space.clearance_height, space.clearance_depth)
    if space.blocks:
        boxes = [_box(block) for block in space.blocks]
        clear = largest_clear(room, boxes, free)
        if clear is None:
            raise ImpossibleProject(
                "space.blocks",
                "beside them and the clearance no place is left to stand in; take out what can be moved",
            )
        room = clear
    return tuple(to_step(size - less, step, "down") for size, less in zip(room, free, strict=True))


def note_on_blocks(space: Space, style: Style) -> tuple[Finding, ...]:
    """What the blocks cost a case that fills its space: each size that they made smaller, by how much."""
    whole, clear = governing(replace(space, blocks=()), style.step), governing(space, style.step)
    less = [
        f"{write_brief(free - left, style)} {word}"
        for free, left, word in zip(whole, clear, ("narrower", "lower", "shallower"), strict=True)
        if free > left
    ]
    if not less:
        return ()
    names = ", ".join(block.name for block in space.blocks)
    text = (
        f"To stand clear of what is in the space ({names}) the case is {' and '.join(less)} than the room. "
        'Of all cases that do, this is the largest; for another, write size.by = "outside" with its sizes.'
    )
    return (Finding("space", "note", (), text),)


def largest_clear(room: Sizes, blocks: Sequence[Box], free: Sizes = (0, 0, 0)) -> Sizes | None:
    """The largest box on the floor of the room that meets no block: width, height, depth, or None.

    Blocks are x from the left wall, y from the back wall, z from the floor. Largest is by volume, once
    the clearance `free` (width, height, depth) is off. Such a box is held on each side by a wall or a
    block, so only those places are tried, the largest first.

    >>> post = Box((80, 0, 0), (90, 10, 99))
    >>> largest_clear((100, 50, 20), [post])
    (80, 50, 20)
    """
    width, height, depth = room
    across, back = _spans(width, blocks, 0), _spans(depth, blocks, 1)
    tops = _longest_first([(0, height), *((0, block.low[2]) for block in blocks if 0 < block.low[2] < height)])
    best, most = None, 0
    for x in across:
        for y in back:
            for z in tops:
                size = (x[1] - x[0], z[1] - z[0], y[1] - y[0])
                volume = _volume(size, free)
                if volume <= most:
                    break  # those that follow are no larger
                if not any(_within((x, y, z), block) for block in blocks):
                    best, most = size, volume
            if _volume((x[1] - x[0], height, y[1] - y[0]), free) <= most:
                break
    return best


def _volume(size: Sizes, free: Sizes) -> int:
    left = [int(side - less) for side, less in zip(size, free, strict=True)]
    return left[0] * left[1] * left[2] if all(side > 0 for side in left) else 0


def _spans(size: int, blocks: Sequence[Box], axis: int) -> list[Span]:
    starts = [0, *(block.high[axis] for block in blocks if block.high[axis] < size)]
    ends = [size, *(block.low[axis] for block in blocks if 0 < block.low[axis] < size)]
    return _longest_first([(start, end) for start, end in product(starts, ends) if start < end])


def _longest_first(spans: list[Span]) -> list[Span]:
    return sorted(dict.fromkeys(spans), key=lambda span: span[0] - span[1])


def _within(spans: tuple[Span, Span, Span], block: Box) -> bool:
    return all(block.low[axis] < end and start < block.high[axis] for axis, (start, end) in enumerate(spans))


def _readings(space: Space) -> Sizes:
    return (narrowest(space.width), narrowest(space.height), narrowest(space.depth))


def _box(block: Block) -> Box:
    low = (block.left, block.back, block.bottom)
    return Box(low, (block.left + block.width, block.back + block.depth, block.bottom + block.height))
