"""One drawer in numbers: its opening, its box outside and inside, the room beside it.

>>> from shoplib.documents.examples import cabinet_from
>>> from shoplib.measure import MM
>>> case = cabinet_from("rolling_stand")
>>> bays_alike(case)
[[(1, ['bay 1 drawer 1', 'bay 1 drawer 2', 'bay 1 drawer 3'])]]
>>> one_of_each(case, ["bay 1 drawer 1", "bay 1 drawer 2"])
['bay 1 drawer 1']
>>> sizes, (_, slide) = sizes_of(case, "bay 1 drawer 1"), rule_and_slide(case, "bay 1 drawer 1")
>>> sizes.opening.front / MM, slide.side / MM, sizes.outside[0] / MM, sizes.inside[0] / MM
(312.15, 12.7, 286.5, 262.7)
>>> found = width_sum(case, "bay 1 drawer 1")
>>> (found.least - 2 * found.taken) / MM, found.width / MM  # a whole step
(286.75, 286.5)
"""

from collections.abc import Sequence
from dataclasses import dataclass

from shoplib.building.datum import datum
from shoplib.building.in_opening import box_of, cut_to, rails_behind, read_of
from shoplib.measure import narrowest, share
from shoplib.model.board import Board
from shoplib.model.box import Point
from shoplib.model.drawer_box import box_width
from shoplib.model.drawers import rule_of
from shoplib.model.project import Drawers, Opening
from shoplib.model.solved import Cabinet
from shoplib.tables.slides import Slide


@dataclass(frozen=True, slots=True)
class DrawerSizes:
    """Lengths in ticks; `outside` and `inside` are width, depth and height.

    `opening` is as measured, where `measured` says so, else as planned. `room` is what is free at each side of the
    box, `above_floor` its lower edge above the bottom of the case, `front_less`, `back_less` and `bottom_less` how
    much shorter those boards are than the box is wide, `stock` the thickness of its sides.
    """

    group: str
    opening: Opening
    measured: bool
    outside: Point
    inside: Point
    room: int
    above_floor: int
    front_less: int
    back_less: int
    bottom_less: int
    stock: int


@dataclass(frozen=True, slots=True)
class WidthSum:
    """How a box comes from its opening: `least` of the readings (or its share of it) less twice `taken`, and where the
    slide holds the inside, twice the `stock` more. `exact` is what comes out, `width` that down to a whole step.
    `read_since` where the opening was read again with the box in, and is another by now.
    """

    least: int
    taken: int
    stock: int
    exact: int
    width: int
    read_since: bool = False


def sizes_of(cabinet: Cabinet, group: str) -> DrawerSizes:
    """Read off the boards of a drawer. KeyError where there is no such drawer."""
    part = {board.name.removeprefix(f"{group} "): board for board in cabinet.groups[group]}
    box, read = box_of(cabinet, group), read_of(cabinet, group)
    left, right = part["left box side"].box, part["right box side"].box
    front, back, bottom = (part[f"box {name}"] for name in ("front", "back", "bottom"))
    inside = (right.low[0] - left.high[0], back.box.low[1] - front.box.high[1], left.high[2] - bottom.box.high[2])
    wide = box.size[0]
    drawer = cabinet.part_of(group)
    own = _own(read, rule_of(cabinet.project, drawer.bay))
    return DrawerSizes(
        group, read, drawer.opening in cabinet.project.measured.latest, box.size, inside, share(own - wide, 2, 1)[0],
        box.low[2] - datum(cabinet).height, wide - _across(front), wide - _across(back), wide - _across(bottom),
        part["left box side"].thickness,
    )


def _own(read: Opening, rule: Drawers) -> int:
    """What one box has of the narrower reading of its opening: its share where several stand side by side."""
    least = narrowest([read.front, read.back])
    return share(least, rule.across, 2)[0] if rule.across > 1 else least


def _across(board: Board) -> int:
    """How far a board reaches from left to right."""
    return board.box.size[0]


def width_sum(cabinet: Cabinet, group: str) -> WidthSum | None:
    """The sum of the box's width; None where finished parts that were measured decide it instead."""
    rule, slide = rule_and_slide(cabinet, group)
    sizes, first = sizes_of(cabinet, group), cut_to(cabinet, group)
    least = _own(first, rule)
    more = sizes.stock if slide.holds == "inside" else 0
    if sizes.outside[0] != box_width(least, slide, sizes.stock, cabinet.project.step):
        return None
    return WidthSum(least, slide.side, more, least - 2 * slide.side + 2 * more, sizes.outside[0],
                    sizes.opening != first)


def rule_and_slide(cabinet: Cabinet, group: str) -> tuple[Drawers, Slide]:
    """The rule of a drawer's bay, and what its box runs on."""
    rule = rule_of(cabinet.project, cabinet.part_of(group).bay)
    return rule, cabinet.slides[rule.slide]


def bays_alike(cabinet: Cabinet) -> list[list[tuple[int, list[str]]]]:
    """The bays with drawers and the drawers of each from the bottom up; those whose drawers are alike together."""
    columns: dict[int, list[str]] = {}
    for group, boards in cabinet.groups.items():
        if any(board.role == "box side" for board in boards):
            columns.setdefault(boards[0].part_of.bay, []).append(group)
    alike: dict[tuple, list[tuple[int, list[str]]]] = {}
    for bay, groups in columns.items():
        key = tuple(_key(cabinet, group) for group in groups)
        alike.setdefault(key, []).append((bay, groups))
    return list(alike.values())


def _key(cabinet: Cabinet, group: str) -> tuple:
    sizes = sizes_of(cabinet, group)
    rule, _ = rule_and_slide(cabinet, group)
    return (rule.slide, rule.across, sizes.opening, sizes.measured, sizes.outside, sizes.inside, sizes.above_floor,
            sizes.front_less, sizes.back_less, sizes.bottom_less)


def one_of_each(cabinet: Cabinet, groups: Sequence[str]) -> list[str]:
    """One of those that look alike from above by width, depth and opening, with a rail behind it where any has one."""
    found: dict[tuple, str] = {}
    for group in sorted(groups, key=lambda group: not rails_behind(cabinet, group)):
        sizes = sizes_of(cabinet, group)
        found.setdefault((sizes.outside[:2], sizes.opening, sizes.inside[:2]), group)
    return list(found.values())
