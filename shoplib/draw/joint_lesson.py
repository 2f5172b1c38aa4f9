"""A joint cut across as a lesson shows it: with a line where the entering board would end if it were butted."""

from collections.abc import Sequence

from shoplib.draw.chains import stacked, unit_note
from shoplib.draw.clip import within
from shoplib.draw.joint_section import joint_section
from shoplib.draw.look import FROM_ABOVE, FROM_RIGHT, FRONT, Look, cut_through
from shoplib.draw.scene import Chain, Item, Label, Line, Rect, Scene, Shape, Told
from shoplib.draw.spilled import largest_rooms
from shoplib.lists.writing import Writing
from shoplib.measure import Style
from shoplib.model.allowance import allowance, cut_for
from shoplib.model.board import Board
from shoplib.model.box import Box
from shoplib.model.joinery import axis_of
from shoplib.model.placement import directions
from shoplib.model.solved import Cabinet, Joint

_LOOK = {0: FROM_RIGHT, 1: FRONT, 2: FROM_ABOVE}
_SEEN_FROM = {0: "right", 1: "front", 2: "top"}
_PART = 28
"""A clearance is drawn at least as wide as the picture divided by this."""


def joint_lesson(cabinet: Cabinet, joint: Joint, style: Style) -> Scene:
    """The joint with what the entering board gains beside it; a butt joint too, which gains nothing.

    The gain is told as it is, though a clearance at the end may be drawn larger. Raises KeyError where a board
    is not of the cabinet.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> first = next(joint for joint in cabinet.joints if joint.kind == "dado")
    >>> joint_lesson(cabinet, first, cabinet.style).alt.rpartition(". ")[2]
    'A dashed line shows where left side would end if it were butted; past it, it gains 8.'
    """
    if not joint.depth:
        return _butted(cabinet, joint, style)
    scene = joint_section(cabinet, joint, style)
    enters = cabinet.by_name[joint.enters]
    along, sign = axis_of(joint.axis)
    face = _face(joint, cabinet.by_name[joint.receives])
    across = directions(enters.placement.axes)[2][0]
    look = _LOOK[3 - along - across]
    own = next(item for item in scene.items if isinstance(item, Shape) and item.name == enters.name)
    upright = look.up == along
    ends = [end for rect in own.rects for end in ((rect[1], rect[3]) if upright else (rect[0], rect[2]))]
    tip = max(ends) if sign > 0 else min(ends)
    walls = [wall for rect in own.rects for wall in ((rect[0], rect[2]) if upright else (rect[1], rect[3]))]
    low, high = min(walls), max(walls)
    line = Line((low, face), (high, face), "hidden") if upright else Line((face, low), (face, high), "hidden")
    gain = allowance(cabinet, joint).gain
    text = Writing(style, units=False).setting(gain)
    side = "right" if upright else "above"
    row = 1 if any(isinstance(item, Chain) and item.side == side for item in scene.items) else 0
    at = (face, tip) if sign > 0 else (tip, face)
    legend = f"Dashed: where {enters.name} would end if it were butted. Past that it gains {text}."
    return scene.with_items(
        line, Chain(side, row, at, (stacked(text),), sizes=(gain,)),
        legend=(legend,), told=(Told(legend, ((f"{enters.name} gains", gain),)),),
        alt=f"A dashed line shows where {enters.name} would end if it were butted; past it, it gains {text}.",
    )


def stop_seen_from_above(cabinet: Cabinet, joint: Joint, style: Style) -> Scene:
    """The front end of a stopped dado, cut through the middle of the board that lies in it and seen from above.

    Raises ValueError where the joint has no stop.
    """
    enters, receives = cabinet.by_name[joint.enters], cabinet.by_name[joint.receives]
    cut, found = cut_for(enters, receives), allowance(cabinet, joint)
    if cut is None or not found.stop:
        raise ValueError(f"the joint of {enters.name} in {receives.name} has no stop to draw")
    along, sign = axis_of(joint.axis)
    face = _face(joint, receives)
    reach = 5 * receives.thickness // 2
    low, high = list(receives.box.low), list(receives.box.high)
    low[0], high[0] = (face - reach, high[0]) if sign > 0 else (low[0], face + reach)
    high[1] = low[1] + found.stop + reach
    frame = FROM_ABOVE.flat(Box(tuple(low), tuple(high)))
    at = (enters.box.low[2] + enters.box.high[2]) // 2
    tip = enters.box.high[along] if sign > 0 else enters.box.low[along]
    floor = cut.high[along] if sign > 0 else cut.low[along]
    shown = max(frame[2] - frame[0], frame[3] - frame[1]) // _PART
    drawn = floor - sign * max(found.end_gap, shown) if found.end_gap else tip
    items = _cut_pair((receives, enters), FROM_ABOVE, at, frame, {tip: drawn} if found.end_gap else {})
    page = Writing(style, units=False)
    front, start = receives.box.low[1], cut.low[1]
    left, right = sorted((face, drawn))
    items += [
        Line((face, start), (face, frame[3]), "hidden"),
        Chain("left" if sign < 0 else "right", 0, (front, start), (page.setting(found.stop),)),
        Chain("above", 0, (left, right), (stacked(page.setting(found.gain)),), sizes=(found.gain,)),
    ]
    note = "Front edge at the foot. The boards run on beyond the frame."
    note += " The clearance is drawn larger than it is." if found.end_gap else ""
    notch = f"A corner of {enters.name} is notched so that it passes the end of the dado."
    return Scene(
        "A stopped dado, seen from above", unit_note(style, note),
        f"{enters.name} and {receives.name} cut level through the middle of {enters.name}, front edge at the foot. The "
        f"dado begins {page.setting(found.stop)} behind the front edge. {notch} {note}",
        frame, tuple(items), (notch, f"Dashed: where {enters.name} would end if it were butted."),
    )


def _butted(cabinet: Cabinet, joint: Joint, style: Style) -> Scene:
    enters, receives = cabinet.by_name[joint.enters], cabinet.by_name[joint.receives]
    along, sign = axis_of(joint.axis)
    across = directions(enters.placement.axes)[2][0]
    look = _LOOK[3 - along - across]
    face, reach = _face(joint, receives), max(enters.thickness, receives.thickness)
    low, high = list(enters.box.low), list(enters.box.high)
    low[along], high[along] = sorted((face - sign * 3 * reach // 2, face + sign * receives.box.size[along]))
    low[across] = max(low[across] - reach, receives.box.low[across])
    high[across] = min(high[across] + reach, receives.box.high[across])
    frame = look.flat(Box(tuple(low), tuple(high)))
    at = (enters.box.low[look.along] + enters.box.high[look.along]) // 2
    items = _cut_pair((receives, enters), look, at, frame, {})
    page = Writing(style, units=False)
    body, own = receives.box, enters.box
    side = {look.across: ("below", "above"), look.up: ("left", "right")}
    items += [
        Chain(side[across][1], 0, (own.low[across], own.high[across]), (page.measured(own.size[across]),)),
        Chain(side[along][0], 0, (body.low[along], body.high[along]), (page.measured(body.size[along]),)),
    ]
    note = f"Seen from the {_SEEN_FROM[look.along]}. The boards run on beyond the frame."
    said = f"{enters.name} is butted against {receives.name}: it gains nothing, and nothing is cut."
    return Scene(
        f"Joint: {enters.name} against {receives.name}", unit_note(style, note),
        f"Section of a butt joint. {said} {note}", frame, tuple(items), (said,),
    )


def _face(joint: Joint, receives: Board) -> int:
    """The face of the receiving board that the entering one meets."""
    along, sign = axis_of(joint.axis)
    return receives.box.low[along] if sign > 0 else receives.box.high[along]


def _cut_pair(
    boards: Sequence[Board], look: Look, at: int, frame: Rect, moved: dict[int, int]
) -> list[Item]:
    """Both boards cut through inside the frame, with their names; `moved` shifts ends of what enters, the second."""
    items: list[Item] = []
    rooms: dict[str, list[Rect]] = {}
    for shape in cut_through(boards, (), look, at):
        if not shape.hatch:
            continue
        rects = list(shape.rects)
        if shape.name == boards[1].name:
            rects = [(moved.get(a, a), b, moved.get(c, c), d) for a, b, c, d in rects]
        rects = [rect for rect in (within(rect, frame) for rect in rects) if rect]
        rooms[shape.name] = rects
        items.append(Shape(tuple(rects), shape.fill, shape.name, shape.hatch))
    named = {board.name: board for board in boards}
    return [*items, *(_name(named[name], rects) for name, rects in rooms.items())]


def _name(board: Board, rects: list[Rect]) -> Label:
    name, (largest, *others) = board.name, largest_rooms(rects)
    short = name.removeprefix(f"{board.part_of.bay_name} ") if board.part_of else name
    return Label(largest, (name, short, short.replace(" ", "\n")), plate=True, rooms=tuple(others))
