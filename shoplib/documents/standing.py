"""Where in its space the case stands, and what is left free round it there."""

from dataclasses import dataclass
from itertools import product

from shoplib.measure import narrowest, share, write_brief
from shoplib.model.box import Box, Point
from shoplib.model.project import Space
from shoplib.model.solved import Cabinet


@dataclass(frozen=True, slots=True)
class Standing:
    """A place on the floor: from the left wall and off the back wall, and what is free on each side of it (ticks).

    What bounds it on a side is the name of a block, or "" for a wall or the edge of the space.
    """

    left: int
    back: int
    free: dict[str, int]
    bounds: dict[str, str]


def standing(size: Point, space: Space) -> Standing | None:
    """The place nearest the back wall for a thing of this size (width, depth, height); None where it has none.

    In width it stands in the middle of what is free there. A place that also keeps the clearance of the space
    goes before one that does not. The smallest readings are the space.
    """
    room = (narrowest(space.width), narrowest(space.depth), narrowest(space.height))
    clearance = (space.clearance_width, space.clearance_depth, space.clearance_height)
    blocks = [
        (block.name, Box((block.left, block.back, block.bottom),
                         (block.left + block.width, block.back + block.depth, block.bottom + block.height)))
        for block in space.blocks
    ]
    with_clearance = tuple(a + b for a, b in zip(size, clearance, strict=True))
    corner = _corner(with_clearance, room, blocks) or _corner(size, room, blocks)
    return _freed(size, room, corner, blocks) if corner else None


def _corner(size: Point, room: Point, blocks: list[tuple[str, Box]]) -> tuple[int, int] | None:
    """The left rear corner of the free place that is nearest the back wall, then nearest the left one."""
    backs = sorted({0, *(box.high[1] for _, box in blocks)})
    lefts = sorted({0, *(box.high[0] for _, box in blocks)})
    if size[2] > room[2]:
        return None
    for back, left in product(backs, lefts):
        taken = Box((left, back, 0), (left + size[0], back + size[1], size[2]))
        inside = left + size[0] <= room[0] and back + size[1] <= room[1]
        if inside and not any(taken.overlaps(box) for _, box in blocks):
            return left, back
    return None


def _freed(size: Point, room: Point, corner: tuple[int, int], blocks: list[tuple[str, Box]]) -> Standing:
    """From the corner into the middle of the free width, then how far it is to what stands on each side."""
    left, back = corner
    across = (left, left + size[0]), (back, back + size[1]), (0, size[2])
    low, high = _limits(0, across, room, blocks)
    left = low[0] + share(high[0] - low[0] - size[0], 2, 1)[0]
    taken = (left, left + size[0]), (back, back + size[1]), (0, size[2])
    behind, before = _limits(1, taken, room, blocks)
    _, above = _limits(2, taken, room, blocks)
    ends = {"left": (left - low[0], low[1]), "right": (high[0] - left - size[0], high[1]),
            "back": (back - behind[0], behind[1]), "front": (before[0] - back - size[1], before[1]),
            "above": (above[0] - size[2], above[1])}
    return Standing(left, back, {side: ticks for side, (ticks, _) in ends.items()},
                    {side: name for side, (_, name) in ends.items()})


def _limits(axis: int, taken: tuple[tuple[int, int], ...], room: Point,
            blocks: list[tuple[str, Box]]) -> tuple[tuple[int, str], tuple[int, str]]:
    """The nearest things on the low and the high side along one axis: where, and the name of a block or ""."""
    low, high = (0, ""), (room[axis], "")
    for name, box in blocks:
        beside = all(box.low[k] < taken[k][1] and taken[k][0] < box.high[k] for k in range(3) if k != axis)
        if beside and low[0] < box.high[axis] <= taken[axis][0]:
            low = (box.high[axis], name)
        if beside and taken[axis][1] <= box.low[axis] < high[0]:
            high = (box.low[axis], name)
    return low, high


def standing_words(cabinet: Cabinet) -> tuple[str, ...]:
    """Where to stand the case and what is free round it; empty without a space, or where it fits nowhere."""
    space = cabinet.project.space if cabinet.project else None
    place = standing(cabinet.envelope.size, space) if space else None
    if place is None:
        return ()
    style = cabinet.style

    def written(ticks: int) -> str:
        return write_brief(ticks, style) if ticks else "nothing"

    back = f"{write_brief(place.back, style)} off the back wall" if place.back else "against the back wall"
    before = f", before the {place.bounds['back']}" if place.bounds["back"] else ""
    beside = f", beside the {place.bounds['left']}" if place.bounds["left"] else ""
    counted = {fitting.what for fitting in cabinet.hardware}
    pulls = ", before the pulls" if cabinet.envelope.low[1] < cabinet.outside.low[1] and "pull" in counted else ""
    ends = {
        "left": "at the left", "right": "at the right", "front": f"in front{pulls}", "above": "above it",
    }
    free = [
        f"{written(place.free[side])} {words}" + (f" to the {place.bounds[side]}" if place.bounds[side] else "")
        for side, words in ends.items()
    ]
    if place.free["back"]:
        free.insert(2, f"{written(place.free['back'])} behind it")
    shims = " Shims under its low end take from what is free above." if space.floor_fall else ""
    return (
        f"Stand the case {back}{before}, its left end {write_brief(place.left, style)} from the left wall{beside}. "
        f"By the smallest readings of the space this leaves free: {'; '.join(free)}.{shims}",
    )
