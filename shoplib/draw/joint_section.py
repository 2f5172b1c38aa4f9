"""A joint cut across, large: both boards hatched, sizes written true, clearances drawn larger than they are."""

from itertools import pairwise

from shoplib.draw.chains import stacked, unit_note
from shoplib.draw.clip import within
from shoplib.draw.look import FROM_ABOVE, FROM_RIGHT, FRONT, Look, cut_through
from shoplib.draw.scene import Chain, Item, Label, Rect, Scene, Shape, Told
from shoplib.draw.spilled import largest_rooms
from shoplib.lists.writing import Writing
from shoplib.measure import Style
from shoplib.model.allowance import cut_for
from shoplib.model.board import Board
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet, Joint

_LOOK = {0: FROM_RIGHT, 1: FRONT, 2: FROM_ABOVE}
_SEEN_FROM = {0: "right", 1: "front", 2: "top"}
_PART = 28
"""A clearance is drawn at least as wide as the picture divided by this."""


class NoCut(ValueError):
    """A joint has no section, for the one board enters no cut of the other."""


def joint_section(cabinet: Cabinet, joint: Joint, style: Style) -> Scene:
    """The joint cut across the run of its dado, groove or rabbet.

    Sizes are written as they are; only the clearances are drawn larger, and the drawing says so. Raises
    NoCut for a joint without a cut (a butt joint), KeyError where a board is not of the cabinet.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> first = next(joint for joint in cabinet.joints if joint.kind == "dado")
    >>> joint_section(cabinet, first, cabinet.style).title
    'Joint: left side in top'
    """
    enters, receives = cabinet.by_name[joint.enters], cabinet.by_name[joint.receives]
    cut = _cut_for(enters, receives)
    along = "xyz".index(joint.axis[1])
    inside = around([piece.common(cut) for piece in enters.pieces if piece.overlaps(cut)])
    across = _thin_axis(cut, along)
    look = _LOOK[3 - along - across]
    at = (inside.low[look.along] + inside.high[look.along]) // 2
    window = _window(cut, enters, receives, along, across)
    sign = 1 if joint.axis[0] == "+" else -1
    shown = max(window.size[along], window.size[across]) // _PART
    moved = _moved(cut, inside, along, across, sign, shown)
    frame = look.flat(window)
    items: list[Item] = []
    rooms: dict[str, list[Rect]] = {}
    page = Writing(style, units=False)
    for shape in cut_through((receives, enters), (), look, at):
        if not shape.hatch:
            continue
        own = shape.name == enters.name
        rects = [_shifted(r, look, moved) for r in shape.rects] if own else list(shape.rects)
        rects = [r for r in (within(r, frame) for r in rects) if r]
        rooms[shape.name] = rects
        items.append(Shape(tuple(rects), shape.fill, shape.name, shape.hatch))
    items += [_name(cabinet.by_name[name], rects) for name, rects in rooms.items()]
    items += _dimensions(cut, inside, enters, receives, along, across, look, moved, page)
    gaps = _gaps(cut, inside, along, across, sign)
    note = "The boards run on beyond the frame."
    if any(gaps):
        note += " Clearances are drawn larger than they are."
    cut_in = _cut_in(joint)
    wide, deep = cut.size[across], cut.size[along]
    if joint.kind == "drawer lock" and not joint.tongue:
        wide, deep = deep, wide  # the groove is sunk into the end of the front, whatever way the side comes
    legend = (
        f"{enters.name} enters {receives.name}{cut_in}, {page.measured(wide)} wide and {page.setting(deep)} deep.",
        f"Clearance across the cut: {_small(gaps[0] + gaps[1], style)}; at its end: {_small(gaps[2], style)}.",
    )
    clear = (("clearance across the cut", gaps[0] + gaps[1]), ("clearance at its end", gaps[2]))
    told = (
        Told(legend[0], (("width of the cut", wide), ("depth of the cut", deep))),
        Told(legend[1], tuple((called, size) for called, size in clear if size)),
    )
    return Scene(
        f"Joint: {enters.name} in {receives.name}",
        unit_note(style, f"Seen from the {_SEEN_FROM[look.along]}. {note}"),
        f"Section of a {_CALLED.get(joint.kind, joint.kind)}. {' '.join(legend)} {note}", frame, tuple(items), legend,
        told=tuple(line for line in told if line.sizes),
    )


_CALLED = {"drawer lock": "drawer-front joint", "finger": "finger joint"}
"""What the trade calls a joint whose kind in a project file is another word."""


def _cut_in(joint: Joint) -> str:
    """The cut that takes the board, as the legend says it."""
    if joint.tongue:
        return " with its tongue: dado"
    return f": {({'drawer lock': 'groove', 'finger': 'socket'}).get(joint.kind, joint.kind)}"


def _small(ticks: int, style: Style) -> str:
    """A clearance: a decimal where it is no whole number of the rule's marks."""
    return Writing(style).setting(ticks) if ticks else "none"


def _cut_for(enters: Board, receives: Board) -> Box:
    """The cut of one board that the other goes into, in the world."""
    cut = cut_for(enters, receives)
    if cut is not None:
        return cut
    raise NoCut(f"{enters.name} enters no cut of {receives.name}: there is no section to draw")


def _thin_axis(cut: Box, along: int) -> int:
    """The axis across the cut: the shorter of the two that are not its depth."""
    return min((axis for axis in range(3) if axis != along), key=lambda axis: cut.size[axis])


def _window(cut: Box, enters: Board, receives: Board, along: int, across: int) -> Box:
    """The joint with some of both boards round it."""
    reach = max(enters.thickness, receives.thickness)
    low, high = list(cut.low), list(cut.high)
    low[across] -= reach * 5 // 4
    high[across] += reach * 5 // 4
    low[along] = min(receives.box.low[along], cut.low[along] - reach * 3 // 2)
    high[along] = max(receives.box.high[along], cut.high[along] + reach * 3 // 2)
    if receives.box.size[along] > 3 * reach:
        low[along], high[along] = cut.low[along] - 2 * reach, cut.high[along] + 2 * reach
    both = around([enters.box, receives.box])
    for axis in (along, across):
        low[axis], high[axis] = max(low[axis], both.low[axis]), min(high[axis], both.high[axis])
    return Box(tuple(low), tuple(high))


def _gaps(cut: Box, inside: Box, along: int, across: int, sign: int) -> tuple[int, int, int]:
    """Open space on the low side, the high side and at the end."""
    end = cut.high[along] - inside.high[along] if sign > 0 else inside.low[along] - cut.low[along]
    return inside.low[across] - cut.low[across], cut.high[across] - inside.high[across], end


def _moved(cut: Box, inside: Box, along: int, across: int, sign: int, shown: int) -> dict[tuple[int, int], int]:
    """Where each face of the entering board is drawn: (axis, true place) to drawn place."""
    below, above, end = _gaps(cut, inside, along, across, sign)
    places = {}
    if below:
        places[across, inside.low[across]] = cut.low[across] + max(below, shown)
    if above:
        places[across, inside.high[across]] = cut.high[across] - max(above, shown)
    if end:
        tip = inside.high[along] if sign > 0 else inside.low[along]
        bottom = cut.high[along] if sign > 0 else cut.low[along]
        places[along, tip] = bottom - sign * max(end, shown)
    return places


def _shifted(rect: Rect, look: Look, moved: dict[tuple[int, int], int]) -> Rect:
    a, b, c, d = rect
    return (moved.get((look.across, a), a), moved.get((look.up, b), b),
            moved.get((look.across, c), c), moved.get((look.up, d), d))


def _name(board: Board, rects: list[Rect]) -> Label:
    """The name, without that of its group (and of its bay where room is short), in the largest part of the board."""
    name = board.name.removeprefix(f"{board.group} ")
    largest, *others = largest_rooms(rects)
    short = name.removeprefix(f"{board.part_of.bay_name} ") if board.part_of else name
    return Label(largest, (name, short, short.replace(" ", "\n")), plate=True, rooms=tuple(others))


def _dimensions(cut: Box, inside: Box, enters: Board, receives: Board, along: int, across: int, look: Look,
                moved: dict[tuple[int, int], int], page: Writing) -> list[Item]:
    """Across: the cut, and the board or tongue in it. Along: the depth, and the wood left behind it."""
    side = {look.across: ("below", "above"), look.up: ("left", "right")}
    near, far = side[across]
    low, high = cut.low[across], cut.high[across]
    drawn = [moved.get((across, t), t) for t in (inside.low[across], inside.high[across])]
    wood = receives.box
    stations = sorted({cut.low[along], cut.high[along], wood.low[along], wood.high[along]})
    deep = {b - a for a, b in pairwise(stations)}

    def wide(size: int) -> str:
        """As measured, but in one form with a depth of the same size."""
        return page.setting(size) if size in deep else page.measured(size)

    items: list[Item] = [
        Chain(near, 0, (low, high), (wide(high - low),)),
        Chain(far, 0, tuple(drawn), (wide(inside.size[across]),), sizes=(inside.size[across],)),
    ]
    if wood.size[along] <= 3 * max(enters.thickness, receives.thickness):
        texts = tuple(stacked(page.setting(b - a)) for a, b in pairwise(stations))
        items.append(Chain(side[along][0], 0, tuple(stations), texts))
    else:
        depth = (stacked(page.setting(cut.size[along])),)
        items.append(Chain(side[along][0], 0, (cut.low[along], cut.high[along]), depth))
    return items
