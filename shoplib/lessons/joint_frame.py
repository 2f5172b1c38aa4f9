"""A frame put together from corners of the joint bench: two stiles, and a rail at the top and one at the foot.

Each corner is the joint's own pair of boards as the bench builds it, turned over for the other corners; so a frame is
as wide and as high as its joints make it.
"""

from dataclasses import dataclass

from shoplib.joints import joint
from shoplib.joints.bench_pair import Stock
from shoplib.joints.draft import RAIL, STILE, Draft
from shoplib.lessons.joint_cuts import Place, cut_like
from shoplib.measure import Style
from shoplib.model.box import Box, around
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet, Joint


@dataclass(frozen=True)
class Corners:
    """How a rail is joined to both stiles: what the rail is called, the joint's name, and what is set."""

    rail: str
    joint: str
    values: dict[str, int]


def frame_of(
    top: Corners, foot: Corners, *, wide: int, high: int, stile: int, rail: int, thick: int, style: Style
) -> Cabinet:
    """A frame `wide` and `high` outside, of stiles and rails so wide and `thick`; lengths in ticks.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> lapped = (Corners(f"{place} rail", "half lap", {"long": 0}) for place in ("top", "bottom"))
    >>> frame = frame_of(*lapped, wide=20 * INCH, high=30 * INCH, stile=2 * INCH, rail=3 * INCH,
    ...                  thick=3 * INCH // 4, style=INCH_STYLE)
    >>> [(board.name, board.length // INCH, len(board.cuts)) for board in frame.boards]
    [('left stile', 30, 2), ('right stile', 30, 2), ('top rail', 20, 2), ('bottom rail', 20, 2)]
    """
    sheet = Sheet("frame stock", "solid", thick, (thick, thick))
    stock = Stock(sheet, sheet, rail, stile, enters_length=wide, receives_length=high, style=style)
    left, right = (
        Draft(name, sheet, STILE, Box((x, 0, 0), (x + stile, thick, high)))
        for name, x in (("left stile", 0), ("right stile", wide - stile))
    )
    rails, joints = [], []
    for corners, level in ((top, high - rail), (foot, 0)):
        pair = joint(corners.joint).build(stock, corners.values)
        start = pair.by_name["rail"].box.low[0]
        lying = Draft(corners.rail, sheet, RAIL, Box((start, 0, level), (wide - start, thick, level + rail)))
        for upright, way in ((left, "-x"), (right, "+x")):
            names = {"rail": corners.rail, "stile": upright.name}
            place = _turned(wide, level, rail, upright is right, corners is foot)
            cut_like(pair, "rail", lying, place, names)
            cut_like(pair, "stile", upright, place, names)
            (made,) = pair.joints
            joints.append(
                Joint(made.kind, lying.name, upright.name, way, made.depth, made.fit, made.end_gap, made.tongue)
            )
        rails.append(lying)
    boards = tuple(draft.board for draft in (left, right, *rails))
    outside = around([board.box for board in boards])
    return Cabinet("frame", boards, {sheet.name: sheet}, tuple(joints), style=style, outside=outside, envelope=outside)


def _turned(wide: int, level: int, rail: int, right: bool, foot: bool) -> Place:
    """Where a place of the bench's corner, the upper left one, lies at a corner whose rail begins at height `level`."""
    def place(box: Box) -> Box:
        (x0, y0, z0), (x1, y1, z1) = box.low, box.high
        if right:
            x0, x1 = wide - x1, wide - x0
        if foot:
            z0, z1 = rail - z1, rail - z0
        return Box((x0, y0, level + z0), (x1, y1, level + z1))

    return place
