"""Joints that went wrong, cut across: a dado too narrow, two sides that are not alike, dadoes back to back."""

from dataclasses import replace

from shoplib.draw.chains import unit_note
from shoplib.draw.clip import within
from shoplib.draw.joint_lesson import joint_lesson
from shoplib.draw.look import FRONT, cut_through
from shoplib.draw.scene import Chain, Item, Label, Leader, Rect, Scene, Shape
from shoplib.draw.spilled import largest_rooms
from shoplib.lists.writing import Writing
from shoplib.measure import Style
from shoplib.model.allowance import cut_for
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet, Joint

_PART = 22
"""A clash is drawn at least as wide as the picture divided by this."""


def too_narrow(cabinet: Cabinet, joint: Joint, over: int, style: Style) -> Scene:
    """The joint of a board that lies level and is `over` ticks too thick for its dado, the clash marked."""
    scene = joint_lesson(cabinet, joint, style)
    enters, receives = cabinet.by_name[joint.enters], cabinet.by_name[joint.receives]
    cut = cut_for(enters, receives)
    shown = max(over, max(scene.size) // _PART)
    size = Writing(style).measured(over)
    mark = (cut.low[0], cut.high[2], cut.high[0], cut.high[2] + shown)
    clash = Shape((mark,), "clash", "clash", "x")
    point = ((mark[0] + mark[2]) // 2, (mark[1] + mark[3]) // 2)
    said = f"Where the sheet is thickest it is {size} too thick for the dado."
    larger = " The clash is drawn larger than it is." if shown > over else ""
    name = Leader(point, "left", f"clash {size}", size=over)
    return scene.with_items(clash, name, legend=(said + larger,), alt=said)


def unlike_sides(cabinet: Cabinet, name: str, style: Style) -> Scene:
    """Both ends of the level board `name`, cut and seen from the front; the run between them is left out.

    Its dado lies higher in the right side than in the left: there the clash is marked, and the dado stays empty.
    """
    shelf, page = cabinet.by_name[name], Writing(style, units=False)
    t, whole = shelf.thickness, cabinet.outside
    at = (shelf.box.low[1] + shelf.box.high[1]) // 2
    low, high, seen = shelf.box.low[2] - 2 * t, shelf.box.high[2] + 3 * t, 4 * t
    right = whole.high[0] - seen
    shift = seen + t - right
    sides = [cabinet.by_name[side] for side in ("left side", "right side")]
    items: list[Item] = []
    for frame, by in (((0, low, seen, high), 0), ((right, low, whole.high[0], high), shift)):
        items += [_moved(item, by) for item in _cut([*sides, shelf], frame, at)]
    for piece in sides[1].pieces:
        if piece.overlaps(shelf.box):
            items.append(Shape((_shifted(FRONT.flat(piece.common(shelf.box)), shift),), "clash", "clash", "x"))
    struck = [item.rects[0] for item in items if isinstance(item, Shape) and item.fill == "clash"]
    items = [_clear(item, struck) if isinstance(item, Label) else item for item in items]
    walls = [
        next(side.placement.to_world(cut.box).low[2] for cut in side.cuts if cut.for_board == name) for side in sides
    ]
    items.append(Chain("right", 0, (walls[0], walls[1]), (page.length(walls[1] - walls[0]),)))
    texts = [page.length(wall - side.box.low[2]) for wall, side in zip(walls, sides, strict=True)]
    said = f"Near wall, from the lower end: left side {texts[0]}, right side {texts[1]}."
    return Scene(
        "Two sides that are not alike", unit_note(style, "Seen from the front; the run between is left out."),
        f"Both ends of a {name}, cut and seen from the front. {said} In the right side the end of the {name} strikes "
        "wood under the empty dado; the clash is cross-hatched.",
        (0, low, 2 * seen + t, high), tuple(items), (said, "Cross-hatched: the end of the shelf strikes wood."),
    )


def back_to_back(cabinet: Cabinet, style: Style) -> Scene:
    """A divider with a shelf in a dado on each side, at the same height: how little is left between the two.

    The case has shelves called "bay 1 shelf 1" and "bay 2 shelf 1".
    """
    divider, page = cabinet.by_name["divider 1"], Writing(style, units=False)
    shelves = [cabinet.by_name[f"bay {bay} shelf 1"] for bay in (1, 2)]
    left, right = (cut_for(shelf, divider) for shelf in shelves)
    reach, body = 3 * divider.thickness // 2, divider.box
    frame = (body.low[0] - reach, left.low[2] - reach, body.high[0] + reach, left.high[2] + reach)
    items = _cut([divider, *shelves], frame, (shelves[0].box.low[1] + shelves[0].box.high[1]) // 2)
    stations = (left.low[0], left.high[0], right.low[0], right.high[0])
    web = page.measured(right.low[0] - left.high[0])
    texts = (page.setting(left.size[0]), web, page.setting(right.size[0]))
    note = "Seen from the front. The boards run on beyond the frame."
    return Scene(
        "Dadoes back to back", unit_note(style, note),
        f"A divider cut across, with a shelf in a dado from the left and another from the right at the same height. "
        f"Each dado is {texts[0]} deep; {web} is left between them. {note}",
        frame, (*items, Chain("below", 0, stations, texts)),
        (f"Each dado is {texts[0]} deep: {web} is left between them.",),
    )


def _cut(boards: list[Board], frame: Rect, at: int) -> list[Shape | Label]:
    items: list[Shape | Label] = []
    for shape in cut_through(boards, (), FRONT, at):
        rects = tuple(rect for rect in (within(rect, frame) for rect in shape.rects) if rect)
        if shape.hatch and rects:
            items.append(Shape(rects, shape.fill, shape.name, shape.hatch))
            largest, *others = largest_rooms(rects)
            name = "shelf" if "shelf" in shape.name else shape.name.removesuffix(" 1")
            items.append(Label(largest, (name, name.replace(" ", "\n")), plate=True, rooms=tuple(others)))
    return items


def _clear(label: Label, marks: list[Rect]) -> Label:
    """The name in a room that has none of the marks in it, where there is one."""
    rooms = [rect for rect in (label.room, *label.rooms) if not any(within(rect, mark) for mark in marks)]
    return replace(label, room=rooms[0], rooms=tuple(rooms[1:])) if rooms else label


def _moved(item: Shape | Label, by: int) -> Shape | Label:
    if isinstance(item, Shape):
        return replace(item, rects=tuple(_shifted(rect, by) for rect in item.rects))
    return replace(item, room=_shifted(item.room, by), rooms=tuple(_shifted(rect, by) for rect in item.rooms))


def _shifted(rect: Rect, by: int) -> Rect:
    return rect[0] + by, rect[1], rect[2] + by, rect[3]
