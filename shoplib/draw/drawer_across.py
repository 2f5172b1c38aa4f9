"""Drawers in their opening cut upright through the middle of the boxes, seen from the front."""

from itertools import pairwise

from shoplib.building.in_opening import box_of, parts_of, read_of
from shoplib.draw.beside import ENLARGED, Beside, beside
from shoplib.draw.chains import bare, unit_note
from shoplib.draw.look import FRONT, cut_through
from shoplib.draw.scene import Chain, Item, Label, Leader, Scene, Shape, Slanted
from shoplib.lists.writing import Writing
from shoplib.measure import Style, narrowest, share, write_brief
from shoplib.model.board import Board
from shoplib.model.drawer_fit import beside as room_beside
from shoplib.model.solved import Cabinet
from shoplib.model.uprights import uprights


def drawer_across(cabinet: Cabinet, style: Style, bay: int = 1) -> Scene:
    """Every drawer of a bay with its slides or runners, its bottom in its grooves, and the room round it.

    The room beside the boxes is drawn larger than it is, and the drawing says so. Raises ValueError where the
    bay has no drawer, and KeyError where the case has no bottom or no top.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> drawer_across(cabinet, cabinet.style).alt[:101]
    'The box of drawer 1, cut through and seen from the front: 339 mm wide and 100 mm high, its lower edge'
    """
    parts = {group: boards[0].part_of for group, boards in cabinet.groups.items()}
    groups = [group for group, part in parts.items() if part and (part.bay, part.what) == (bay, "drawer")]
    if not groups:
        raise ValueError("there is no drawer to draw")
    drawn = {group: beside(box_of(cabinet, group), read_of(cabinet, group)) for group in groups}
    beside_it = uprights(cabinet)[bay - 1:bay + 1]
    side, under, over = beside_it[0], cabinet.by_name["bottom"], cabinet.by_name["top"]
    floor, ceiling = under.box.high[2], over.box.low[2]
    faces = [_faces(cabinet, group, drawn[group]) for group in groups]
    inner = [_at(faces, int(z)) for z in (floor, ceiling)]
    out = max(x for pair in inner for x in (-pair[0], pair[1])) + int(side.thickness)
    foot, head = int(under.box.low[2]), int(over.box.high[2])
    items: list[Item] = []
    for group in groups:
        items += _drawer(cabinet, group, drawn[group])
    items += _walls(inner, out, foot, head, int(floor), int(ceiling), beside_it)
    items += [Shape(((-out, foot, out, int(floor)),), "cut case", "bottom", "\\"),
              Shape(((-out, int(ceiling), out, head),), "cut case", "top", "\\")]
    items += [Shape(((left, int(board.box.low[2]), right, int(board.box.high[2])),), "cut case", board.name, "\\")
              for board in cabinet.boards if board.role == "fixed shelf" and _between(board, beside_it)
              for left, right in [_at(faces, int(board.box.low[2]))]]
    items += _sizes(cabinet, groups, drawn, floor, ceiling, style)
    enlarged = any(one.enlarged for one in drawn.values())
    centred = tuple(items)
    note = f"Cut through the middle, seen from the front. {ENLARGED if enlarged else ''}".strip()
    said = " ".join(_said(cabinet, group, floor, style) for group in groups)
    return Scene(
        "From the front, cut open", unit_note(style, note), f"{said} {ENLARGED if enlarged else ''}".strip(),
        (-out, foot, out, head), centred,
    )


def _middle(drawn: Beside) -> int:
    return (drawn.left + drawn.right) // 2


def _faces(cabinet: Cabinet, group: str, drawn: Beside) -> tuple[int, int, int]:
    """The height of the middle of a box, and where the faces of its opening are drawn there, from its middle."""
    box = box_of(cabinet, group)
    height = (int(box.low[2]) + int(box.high[2])) // 2
    return height, drawn.left - drawn.room - _middle(drawn), drawn.right + drawn.room - _middle(drawn)


def _at(faces: list[tuple[int, int, int]], z: int) -> tuple[int, int]:
    """Both faces at a height, on the straight line through those of the lowest and the highest drawer."""
    (z0, *low), (z1, *high) = faces[0], faces[-1]
    if z1 == z0:
        return low[0], low[1]
    return tuple(a + (b - a) * (z - z0) // (z1 - z0) for a, b in zip(low, high, strict=True))


def _between(board: Board, beside_it: list[Board]) -> bool:
    """Whether a board lies between two uprights."""
    left, right = (upright.box for upright in beside_it)
    return board.box.low[0] < right.low[0] and left.high[0] < board.box.high[0]


def _walls(inner: list[tuple[int, int]], out: int, foot: int, head: int, floor: int, ceiling: int,
           beside_it: list[Board]) -> list[Slanted]:
    (left0, right0), (left1, right1) = inner
    return [
        Slanted(((-out, foot), (left0, floor), (left1, ceiling), (-out, head)), "cut case", beside_it[0].name, "/"),
        Slanted(((out, foot), (right0, floor), (right1, ceiling), (out, head)), "cut case", beside_it[1].name, "/"),
    ]


def _drawer(cabinet: Cabinet, group: str, drawn: Beside) -> list[Item]:
    boards, slides = parts_of(cabinet, group)
    box, by = box_of(cabinet, group), _middle(drawn)
    at = int(share(box.low[1] + box.high[1], 2, 1)[0])
    shapes = [drawn.moved(shape) for shape in cut_through(boards, slides, FRONT, at)]
    items: list[Item] = [
        Shape(tuple((a - by, b, c - by, d) for a, b, c, d in shape.rects), shape.fill, shape.name, shape.hatch)
        for shape in shapes if not shape.name.endswith(" front")
    ]
    half = (drawn.right - drawn.left) // 2
    low, high = int(box.low[2]), int(box.high[2])
    bottom = next(board.box for board in boards if board.role == "box bottom")
    name = cabinet.part_of(group).in_bay
    items += [
        Label((-half, int(bottom.high[2]), half, high), (f"{name}\nbox back beyond", name), plate=True),
        Leader((half - half // 30, high - (high - low) // 6), "right", "box side"),
        Leader((half * 2 // 3, (int(bottom.low[2]) + int(bottom.high[2])) // 2), "right", "bottom, in grooves"),
    ]
    runs = next((shape for shape in reversed(shapes) if "slide" in shape.name or "runner" in shape.name), None)
    if runs is not None:
        a, b, c, d = runs.rects[-1]
        items.append(Leader(((a + c) // 2 - by, (b + d) // 2), "right", "slide" if "slide" in runs.name else "runner"))
    return items


def _sizes(cabinet: Cabinet, groups: list[str], drawn: dict[str, Beside], floor: int, ceiling: int,
           style: Style) -> list[Chain]:
    found: list[Chain] = []
    heights, page = [floor], Writing(style, units=False)
    for number, group in enumerate((groups[0], groups[-1]) if len(groups) > 1 else groups):
        box, one = box_of(cabinet, group), drawn[group]
        read = read_of(cabinet, group)
        least, wide = narrowest([read.front, read.back]), box.size[0]
        room = room_beside(least, wide)
        sizes = (room, wide, least - wide - room)
        half, by = (one.right - one.left) // 2, one.room
        where = ("below", "above")[number]
        at = (-half - by, -half, half, half + by)
        found += [
            Chain(where, 0, at, (page.setting(sizes[0]), bare(wide, style), page.setting(sizes[2])), sizes=sizes),
            Chain(where, 1, (at[0], at[-1]), (f"opening {bare(least, style)}",), sizes=(least,)),
        ]
    for group in groups:
        box = box_of(cabinet, group)
        heights += [box.low[2], box.high[2]]
    heights = list(dict.fromkeys([*heights, ceiling]))
    sizes = tuple(b - a for a, b in pairwise(heights))
    found += [
        Chain("left", 0, tuple(int(z) for z in heights), tuple(bare(size, style) for size in sizes), sizes=sizes),
        Chain("left", 1, (int(floor), int(ceiling)), (bare(ceiling - floor, style),), sizes=(ceiling - floor,)),
    ]
    return found


def _said(cabinet: Cabinet, group: str, floor: int, style: Style) -> str:
    box = box_of(cabinet, group)
    bottom = next(board.box for board in cabinet.groups[group] if board.role == "box bottom")
    return (
        f"The box of {cabinet.part_of(group).in_bay}, cut through and seen from the front: "
        f"{write_brief(box.size[0], style)} wide and {write_brief(box.size[2], style)} high, its lower edge "
        f"{write_brief(box.low[2] - floor, style)} above the floor of the case, the underside of its bottom "
        f"{write_brief(bottom.low[2] - box.low[2], style)} above that."
    )
