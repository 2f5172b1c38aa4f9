"""A box of four boards that are joined at its corners by a joint of the bench, with a bottom in grooves.

Each corner is cut as the `Pair` of the joint has it: the board that enters is a side of the box, the one that receives
it its front or back, and what is their width on the bench is the height of the box.
"""

from dataclasses import dataclass, replace

from shoplib.joints import joint
from shoplib.joints.bench_pair import Pair, Values, stock_of
from shoplib.joints.draft import LYING, RAIL, Draft
from shoplib.measure import INCH, MM, share
from shoplib.model.board import PrismCut
from shoplib.model.box import Box, around
from shoplib.model.placement import Axes
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet, Joint

SIDE: Axes = ("+y", "+z", "+x")
"""A side of a box, on edge: its length front to back."""
SIDES, ENDS = ("left side", "right side"), ("front", "back")


@dataclass(frozen=True, slots=True)
class BoxSizes:
    """Outside width, depth and height of the box, and the thickness of its four boards; in ticks.

    The bottom is `bottom` thick and lies `up` above the lower edges, in grooves `groove` deep; it is `slack` smaller
    each way than they would let it be.
    """

    width: int
    depth: int
    height: int
    thick: int
    groove: int
    slack: int
    bottom: int = INCH // 4
    up: int = 10 * MM


def pair_box(name: str, kind: str, sizes: BoxSizes, values: Values) -> Cabinet:
    """The box with the joint of that name, its records called `kind`; `values` are the settings of the joint.

    Pieces of a joint that are boards of their own, such as splines, go in afterwards and are no boards of it.

    >>> inches = [part * INCH for part in (12, 8, 4, 1)]
    >>> box = pair_box("dovetail", "dovetail", BoxSizes(*inches, INCH // 4, INCH // 16), {"fit": 0})
    >>> [box.by_name[name].length == size * INCH for name, size in (("front", 12), ("left side", 8))]
    [True, True]
    """
    thick = int(sizes.thick)
    pair = joint(name).build(stock_of(thick, kind="solid", width=int(sizes.height)), values)
    board, ply = Sheet("box board", "solid", sizes.thick), Sheet("bottom", "plywood", sizes.bottom)
    wide, deep, high, side = sizes.width, sizes.depth, sizes.height, sizes.thick
    drafts = {
        "left side": Draft("left side", board, SIDE, Box((0, 0, 0), (side, deep, high))),
        "right side": Draft("right side", board, SIDE, Box((wide - side, 0, 0), (wide, deep, high))),
        "front": Draft("front", board, RAIL, Box((0, 0, 0), (wide, side, high))),
        "back": Draft("back", board, RAIL, Box((0, deep - side, 0), (wide, deep, high))),
    }
    half = share(sizes.slack, 2, 1)[0]
    low, top = side - sizes.groove, sizes.up + sizes.bottom
    room = Box((low, low, sizes.up), (wide - low, deep - low, top))
    for draft in drafts.values():
        draft.take("groove", room, "bottom")
    for mine in SIDES:
        for other in ENDS:
            _cut_corner(pair, drafts, (mine, other), (int(wide), int(deep)))
    gap = sizes.slack - half
    lies = Box((low + half, low + half, sizes.up), (wide - low - gap, deep - low - gap, top))
    bottom = replace(Draft("bottom", ply, LYING, lies).board, role="box bottom")
    boards = (*(draft.board for draft in drafts.values()), bottom)
    corners = [(mine, other, way) for mine in SIDES for other, way in zip(ENDS, ("-y", "+y"), strict=True)]
    joints = [Joint(kind, mine, other, way, side) for mine, other, way in corners]
    ways = zip((*SIDES, *ENDS), (("-x", half), ("+x", gap), ("-y", half), ("+y", gap)), strict=True)
    joints += [Joint("groove", "bottom", of, way, sizes.groove, end_gap=free) for of, (way, free) in ways]
    whole = around([one.box for one in boards])
    return Cabinet(f"{name} box", boards, {one.name: one for one in (board, ply)}, tuple(joints), outside=whole,
                   envelope=whole)


def _cut_corner(pair: Pair, drafts: dict[str, Draft], corner: tuple[str, str], ends: tuple[int, int]) -> None:
    """The cuts of both boards of the pair at one corner, mirrored where it lies at the right or at the back.

    The pair's axes x, y, z are y, z, x of the box: turned, so that no hand changes; `ends` are where it is mirrored.
    """
    mine, other = corner
    mirror = {0: ends[0] if mine == SIDES[1] else 0, 1: ends[1] if other == ENDS[1] else 0}
    joined = pair.joints[0]
    for here, there, fellow in ((joined.enters, mine, other), (joined.receives, other, mine)):
        cut_board = pair.by_name[here]
        for cut in cut_board.cuts:
            if not isinstance(cut, PrismCut):
                continue
            solid = cut.prism.placed(cut_board.placement)
            axis = (solid.axis + 1) % 3

            def at(place: int, axis: int) -> int:
                return mirror[axis] - place if mirror.get(axis) else place

            outline = [(at(p, (axis + 1) % 3), at(q, (axis + 2) % 3)) for p, q in solid.outline]
            low, high = sorted((at(solid.low, axis), at(solid.high, axis)))
            drafts[there].take_prism(cut.kind, axis, outline, low, high, fellow)
