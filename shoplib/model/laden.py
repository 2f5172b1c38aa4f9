"""A case in use: what its boards and drawers weigh together, what lies in them, and the line that it stands on."""

from collections.abc import Collection, Mapping
from dataclasses import dataclass, replace

import pint

from shoplib.measure import narrowest, share, thickest, to_quantity
from shoplib.model.box import Box, Point
from shoplib.model.solved import Cabinet
from shoplib.model.weight import Weight, together, weights


def drawer_groups(cabinet: Cabinet) -> tuple[str, ...]:
    """The drawers that have a box to put something in, in the order of their names in the plan."""
    return tuple(
        group for group, boards in cabinet.groups.items()
        if {"box side", "box front", "box back", "box bottom"} <= {board.role for board in boards}
    )


def room_in(cabinet: Cabinet, group: str) -> Box:
    """The room inside the box of a drawer, up to the upper edge of its sides (world). KeyError for no such group."""
    of = {role: [board.box for board in cabinet.groups[group] if board.role == role] for role in (
        "box side", "box front", "box back", "box bottom")}  # fmt: skip
    left, right = sorted(of["box side"], key=lambda box: box.low[0])
    front, back, bottom = of["box front"][0], of["box back"][0], of["box bottom"][0]
    return Box((left.high[0], front.high[1], bottom.high[2]), (right.low[0], back.low[1], left.high[2]))


def filled(room: Box, load: pint.Quantity) -> pint.Quantity:
    """What lies in a drawer: a load on its area, or a filling of its room, by the kind of the quantity.

    >>> from shoplib.measure import FOOT
    >>> from shoplib.measure.quantity import read_quantity
    >>> room = Box((0, 0, 0), (2 * FOOT, FOOT, FOOT // 2))
    >>> [round(filled(room, read_quantity(text, kind)).to("pound_force").magnitude, 3)
    ...  for text, kind in (("15 lb/ft2", "load"), ("8.5 lb/ft3", "filling"))]
    [30.0, 8.5]
    """
    wide, deep, high = (to_quantity(ticks, "foot") for ticks in room.size)
    area = wide * deep
    return (load * area if load.check("[pressure]") else load * area * high).to("newton")


def as_one(of: str, parts: tuple[Weight, ...]) -> Weight | None:
    """Several weights as one in their common middle, by the middle of their ranges; None where there are none."""
    if not parts:
        return None
    low, high = together(parts)
    each = [int((part.low + part.high).m_as(low.units) * 1000) for part in parts]
    whole = sum(each)
    if not whole:
        return None
    middle = tuple(
        share(sum(by * part.middle[axis] for by, part in zip(each, parts, strict=True)), whole, 1)[0]
        for axis in range(3)
    )
    return Weight(of, low, high, middle)


def closed(cabinet: Cabinet) -> dict[str, Weight]:
    """The case, and each drawer and pull-out, as one weight where it stands closed; none where no figure is known."""
    each = {group: as_one(group, weights(boards, cabinet)) for group, boards in cabinet.groups.items()}
    return {group: one for group, one in each.items() if one is not None}


def in_use(
    cabinet: Cabinet,
    load: pint.Quantity | None = None,
    opened: Collection[str] | None = (),
    own: Mapping[str, Weight] | None = None,
) -> tuple[Weight, ...]:
    """The case, each drawer and pull-out as one weight, and what lies in each drawer.

    `load` is put into every drawer (None: they are empty); the groups that are `opened` (None: all) stand at the end of
    their travel. Shelves are empty, and so is a pull-out: what lies there is not known, and on a shelf it holds the
    case down. `own` is what `closed` gave, where it is at hand.
    """
    run = {travel.group: travel.vector for travel in cabinet.travel if opened is None or travel.group in opened}
    boxes, found = set(drawer_groups(cabinet)), []
    for group, one in (closed(cabinet) if own is None else own).items():
        found.append(replace(one, middle=_moved(one.middle, run.get(group))))
    for group in cabinet.groups:
        if load is not None and group in boxes:
            room = room_in(cabinet, group)
            inside = filled(room, load)
            middle = tuple(share(a + b, 2, 1)[0] for a, b in zip(room.low, room.high, strict=True))
            found.append(Weight(f"what lies in {group}", inside, inside, _moved(middle, run.get(group))))
    return tuple(found)


def _moved(point: Point, by: Point | None) -> Point:
    return point if by is None else tuple(a + b for a, b in zip(point, by, strict=True))


@dataclass(frozen=True, slots=True)
class Stand:
    """Where a case stands, ticks: it tips over the line at `edge` (y), and `rear` is where it stands behind.

    `floor` and `top` are heights (z): what it stands on, and its upper face.
    """

    edge: int
    rear: int
    floor: int
    top: int

    @property
    def height(self) -> int:
        """From the floor to its upper face."""
        return self.top - self.floor


def stand_of(cabinet: Cabinet) -> Stand:
    """The front line that the case stands on.

    The front edge of the sides, or of the feet; behind the toe room, where it stands on a plinth or on notched sides;
    the rear end of the front casters, for a wheel that swivels may point inward (common practice, no source).
    """
    base = cabinet.project.base if cabinet.project else None
    sides = [board.box for board in cabinet.boards if board.role == "side"] or [cabinet.outside]
    under = [piece.box for piece in cabinet.hardware if piece.what in ("caster", "foot")]
    if under:
        front = narrowest([box.low[1] for box in under])
        casters = base is not None and base.kind == "casters"
        reach = [box.high[1] for box in under if box.low[1] == front]
        edge, rear = thickest(reach) if casters else front, thickest([box.high[1] for box in under])
    else:
        setback = base.setback if base is not None and base.kind in ("toe space", "plinth") else 0
        edge = narrowest([box.low[1] for box in sides]) + setback
        rear = thickest([box.high[1] for box in sides])
    return Stand(edge, rear, narrowest([cabinet.envelope.low[2], cabinet.outside.low[2]]), cabinet.outside.high[2])
