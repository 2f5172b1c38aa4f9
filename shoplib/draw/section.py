"""The cabinet cut open: a side section through one bay, and a plan section seen from above."""

from collections.abc import Iterable
from dataclasses import replace
from itertools import pairwise

from shoplib.building.in_opening import back_seat
from shoplib.draw.chains import (
    ends,
    levels,
    not_within,
    rows,
    thicknesses,
    unit_note,
)
from shoplib.draw.look import FROM_ABOVE, FROM_RIGHT, Look, cut_through, is_cut, visible
from shoplib.draw.scene import Chain, Item, Label, Leader, Scene
from shoplib.measure import Style, to_step, write_brief
from shoplib.model.board import BOX_PARTS, Board
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet
from shoplib.model.uprights import UPRIGHTS, bays, uprights

_POINT = {"front": 3, "box front": 9}
"""Where along a board its leader begins, in twelfths, for boards that stand face to face."""


def section_side(cabinet: Cabinet, style: Style, bay: int = 1, x: int | None = None) -> Scene:
    """Cut from top to bottom through the middle of a bay (or at `x`), seen from the right, front on the left.

    Raises ValueError where the cabinet has no such bay and no `x` is given.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> section_side(cabinet, cabinet.style).alt.partition(": ")[2]
    'bottom, top, back, rail 1, bay 1 drawer 1, bay 1 drawer 2.'
    """
    if x is None:
        spaces = bays(cabinet)
        if not 1 <= bay <= len(spaces):
            raise ValueError(f"there is no bay {bay}: the bays are 1 to {len(spaces)}")
        low, high = spaces[bay - 1]
        x = (low + high) // 2
        where = f"bay {bay}"
    else:
        where = f"{write_brief(x, style)} from the left"
    shapes, whole, cut = _cut(cabinet, FROM_RIGHT, x)
    bounds = FROM_RIGHT.flat(whole)
    items: list[Item] = [*shapes, *_group_labels(cut, FROM_RIGHT), *_leaders(cut, FROM_RIGHT, "right")]
    boxes, thick = _boxes(cut), thicknesses(cabinet)
    fronts = [b for b in cut if b.role == "front"]
    backs = [b for b in cut if b.role == "back"]
    lowest = min(boxes, key=lambda group: boxes[group].low[2], default="")
    depths = _both([boxes[lowest]], 1) if lowest else []
    depths += ends([b for b in fronts if b.group == lowest], 1) + _ends_with_back(backs, cabinet)
    sides = [b for b in uprights(cabinet) if b.box.high[0] <= x]
    below = rows("below", [depths, ends(sides[-1:], 1), (whole.low[1], whole.high[1])], style, thick)
    items += _with_box(below, boxes.get(lowest))
    total = [whole.low[2], whole.high[2]]
    lying = ends(levels(cabinet, x, x + 1), 2) + total
    covered = [(b.box.low[2], b.box.high[2]) for b in fronts]
    closed = ends(fronts, 2) + not_within(lying, covered) if fronts else []
    items += rows("left", [_both(boxes.values(), 2), closed, lying, total], style, thick)
    alt = (f"Section through {where} of {cabinet.name}, seen from the right, front on the left. "
           f"Cut and hatched: {_listed(cut)}.")
    return Scene(f"Side section, {where}: {cabinet.name}", unit_note(style, "Cut boards are hatched."), alt,
                 bounds, tuple(items))


def section_plan(cabinet: Cabinet, style: Style, z: int | None = None) -> Scene:
    """Cut level at height `z`, seen from above: the front is at the foot of the drawing.

    Without `z` the cut goes through the uppermost drawer boxes, or at half height where there are none.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> section_plan(cabinet, cabinet.style).alt.partition(": ")[2]
    'left side, right side, back, rail 1, bay 1 drawer 2.'
    """
    if z is None:
        z = to_step(_through_boxes(cabinet), style.step)
    shapes, whole, cut = _cut(cabinet, FROM_ABOVE, z)
    bounds = FROM_ABOVE.flat(whole)
    standing = [b for b in uprights(cabinet) if is_cut(b, FROM_ABOVE, z)]
    fronts = [b for b in cut if b.role == "front"]
    items: list[Item] = [*shapes, *_group_labels(cut, FROM_ABOVE), *_leaders(cut, FROM_ABOVE, "above")]
    boxes, faces, thick = _boxes(cut), ends(standing, 0), thicknesses(cabinet)
    covered = [(b.box.low[0], b.box.high[0]) for b in fronts]
    items += rows("below", [
        ends(fronts, 0) + not_within(faces, covered) if fronts else [],
        _both(boxes.values(), 0) + faces,
        faces,
        (whole.low[0], whole.high[0]),
    ], style, thick)
    first = min(boxes, key=lambda group: boxes[group].low[0], default="")
    depths = _both([boxes[first]], 1) if first else []
    depths += ends([b for b in cut if b.role == "front" and b.group == first], 1)
    depths += _ends_with_back([b for b in cut if b.role == "back"], cabinet)
    left = rows("left", [depths, ends(standing[:1], 1), (whole.low[1], whole.high[1])], style, thick)
    items += _with_box(left, boxes.get(first))
    alt = (f"{cabinet.name} cut level {write_brief(z, style)} above its foot, seen from above, front at the "
           f"foot of the drawing. Cut and hatched: {_listed(cut)}.")
    return Scene(
        f"Plan section: {cabinet.name}",
        unit_note(style, f"Cut {write_brief(z, style)} above the foot. Cut boards are hatched."),
        alt, bounds, tuple(items),
    )


def _cut(cabinet: Cabinet, look: Look, at: int) -> tuple[list, Box, list[Board]]:
    """What is to be seen, the box round all of it, and the boards that are cut."""
    shapes = cut_through(cabinet.boards, visible(cabinet), look, at)
    boxes = [b.box for b in cabinet.boards] + [h.box for h in visible(cabinet)]
    return shapes, around(boxes), [b for b in cabinet.boards if is_cut(b, look, at)]


def _through_boxes(cabinet: Cabinet) -> int:
    sides = [b.box for b in cabinet.boards if b.role == "box side"]
    if sides:
        top = max(sides, key=lambda box: box.high[2])
        return (top.low[2] + 2 * top.high[2]) // 3
    whole = around([b.box for b in cabinet.boards])
    return (whole.low[2] + whole.high[2]) // 2


def _boxes(cut: list[Board]) -> dict[str, Box]:
    """The box round each drawer or pull-out that is cut, its front left out."""
    groups: dict[str, list[Box]] = {}
    for board in cut:
        if board.group != "case" and board.role != "front":
            groups.setdefault(board.group, []).append(board.box)
    return {group: around(boxes) for group, boxes in groups.items()}


def _ends_with_back(backs: list[Board], cabinet: Cabinet) -> list[int]:
    """Where the clear depth ends, and the rear: of a back in a rabbet the rabbet is told, which it lies on."""
    return [end for back in backs for end in (back_seat(cabinet), back.box.high[1])]


def _with_box(chains: list[Chain], box: Box | None) -> list[Chain]:
    """The dimension lines in depth, with the name of the box at its span: a slide is as long, and lies elsewhere."""
    def named(chain: Chain) -> Chain:
        texts = (f"box {text}" if box and span == (box.low[1], box.high[1]) else text
                 for text, span in zip(chain.texts, pairwise(chain.at), strict=True))
        return replace(chain, texts=tuple(texts))

    return [named(chain) for chain in chains]


def _both(boxes: Iterable[Box], axis: int) -> list[int]:
    return [end for box in boxes for end in (box.low[axis], box.high[axis])]


def _listed(cut: list[Board]) -> str:
    """The cut boards of the case by name, and the drawers and pull-outs as wholes."""
    names = [b.name for b in cut if b.group == "case"]
    return ", ".join(names + list(dict.fromkeys(b.group for b in cut if b.group != "case"))) or "nothing"


def _group_labels(cut: list[Board], look: Look) -> list[Item]:
    """The name of each drawer in the middle of its box; a pull-out is named by a leader."""
    drawers = {board.group for board in cut if board.role in BOX_PARTS}
    items: list[Item] = []
    for group, box in _boxes(cut).items():
        left, bottom, right, top = look.flat(box)
        if group in drawers:
            items.append(Label((left, bottom, right, top), (group,), plate=True))
        else:
            side = "above" if look is FROM_ABOVE else "right"
            items.append(Leader(((left + right) // 2, bottom + (top - bottom) * 3 // 4), side, group))
    return items


def _leaders(cut: list[Board], look: Look, side: str) -> list[Leader]:
    """Names of the cut boards of the case and of the parts of one drawer; from above, one of a role is enough.

    What stands at the front is named of the last drawer, where its leader is short: from above on the right, from
    the side over the drawing.
    """
    groups = list(dict.fromkeys(b.group for b in cut if b.group != "case"))
    first, last = (groups[0], groups[-1]) if groups else ("case", "case")
    leaders: list[Leader] = []
    told: set[str] = set()
    for board in cut:
        beside = side == "above" and board.role in _POINT
        over = side == "right" and board.role in _POINT  # the front is on the left: its parts are told above the last
        if board.group not in ("case", last if beside or over else first) or board.role == "panel":
            continue
        if side == "above" and board.role in told and board.role not in UPRIGHTS:
            continue
        told.add(board.role)
        left, bottom, right, top = look.flat(board.box)
        part = _POINT.get(board.role, 6)
        if side == "right":
            lying = right - left > top - bottom
            point = (right - (right - left) // 8 if lying else (left + right) // 2,
                     (bottom + top) // 2 if lying else bottom + (top - bottom) * part // 12)
        else:
            level = right - left > top - bottom
            point = (right - (right - left) // 40 if beside else (left + right) // 2,
                     (bottom + top) // 2 if level else top - (top - bottom) // 8)
        if over:
            point = ((left + right) // 2, top - (top - bottom) // _POINT[board.role])
        name = board.name if board.group == "case" else board.role
        leaders.append(Leader(point, "right" if beside else "above" if over else side, name))
    return leaders
