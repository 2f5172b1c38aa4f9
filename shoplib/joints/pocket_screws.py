"""Pocket screws: a butt joint screwed from a slanting pocket in the face of the entering board."""

from shoplib.joints.bench_pair import Clearance, JointKind, Pair, Setting, Sizes, Stock, Values, must_leave
from shoplib.joints.draft import middle
from shoplib.joints.in_case import (
    COUNT,
    EDGE,
    NO_SOURCE,
    drawn_apart,
    level,
    one_step,
    room_for_holes,
    side,
    spread_out,
)
from shoplib.measure import INCH, MM, share
from shoplib.measure.traced import leaf_beside
from shoplib.model.pocket import LEAN, Pocket, pocket_shape, point_in, usual_pocket
from shoplib.model.pocketed import pocket_screw
from shoplib.model.screw_room import room_for_screw
from shoplib.model.slant import line_of
from shoplib.model.solved import Joint


def usual(stock: Stock) -> Pocket:
    """The usual pocket in the entering board."""
    return usual_pocket(stock.enters.thickness, stock.style)


ANGLE = Setting(
    "angle", "lean of the pocket", lambda stock: 10, lambda stock: 20, lambda stock: LEAN, lambda stock: 1,
    f"15 degrees to the face ({NO_SOURCE})", "degrees",
)
POCKET = Setting(
    "pocket", "diameter of the pocket", lambda stock: stock.natural(INCH // 4, 6 * MM),
    lambda stock: stock.natural(INCH // 2, 12 * MM), lambda stock: usual(stock).wide,
    lambda stock: stock.natural(INCH // 64, MM // 2), f"3/8 in, 9.5 mm ({NO_SOURCE})",
)
SHANK = Setting(
    "shank hole", "hole before the pocket", lambda stock: stock.natural(INCH * 3 // 32, 2 * MM),
    lambda stock: stock.natural(INCH // 4, 6 * MM), lambda stock: usual(stock).hole,
    lambda stock: stock.natural(INCH // 64, MM // 2), f"the screw slips through it ({NO_SOURCE})",
)
WEB = Setting(
    "web", "wood before the pocket, along the screw", lambda stock: stock.natural(INCH // 4, 6 * MM),
    lambda stock: stock.enters.thickness, lambda stock: usual(stock).web, one_step,
    f"half the thickness: what the head of the screw bears on ({NO_SOURCE})",
)


def make(stock: Stock, values: Values) -> Pair:
    """A board against the face of a side, its pockets in the lower face, their axes leaving its end in the middle.

    A pocket is drawn with flat sides, as wide as its drill: it takes pocket^2 * (half the thickness / sin(angle) -
    web), the hole before it shank hole^2 * web. Raises CannotCut where the board is too thin for the pocket.
    """
    thick, face, width = stock.enters.thickness, stock.receives.thickness, stock.width
    angle, wide, hole, web = (values[name] for name in ("angle", "pocket", "shank hole", "web"))
    places = spread_out(width, values["edge"], values["count"])
    room_for_holes(stock, places, wide, width)
    shape = pocket_shape(thick, Pocket(angle, wide, hole, web))
    upper, lower, out = shape.upper, shape.lower, shape.out
    must_leave(stock, "web", "beside the pocket at its lower corner", lower[1], 1)
    must_leave(stock, "pocket", "over the pocket", thick - upper[1])
    must_leave(stock, "web", "at the end beside the pocket", lower[0])
    must_leave(stock, "angle", "behind the pocket", stock.enters_length - out[0][0])
    must_leave(stock, "shank hole", "of the pocket round the screw", wide - hole, 1)
    upright, shelf = side(stock, -share(stock.receives_length, 2, 1)[0]), level(stock, 0)
    for at in places:
        for kind, outline, size in (("pocket", shape.pocket, wide), ("shank hole", shape.shank, hole)):
            corners = [(z, face + x) for x, z in outline]
            low = at - share(size, 2, 1)[0]
            shelf.take_prism(kind, 1, corners, low, low + size, "side")
    return Pair(
        "pocket screws", stock, values, (upright.board, shelf.board), (Joint("butt", "shelf", "side", "-x"),),
        (Clearance("end of the shelf on the face of the side", "shelf", "side", "-x", 0),),
        {"side": (0, 0, 0), "shelf": (drawn_apart(stock), 0, 0)},
        ("y", places[0]),
        {
            "pocket": ("shelf", (face + out[0][0], places[0], 0)),
            "web": ("shelf", (face, places[0], middle(middle(0, thick) + shape.at_end, thick))),
            "face": ("side", (face, middle(0, width), middle(thick, stock.receives_length))),
        },
    )


def along_the_drill(stock: Stock, values: Values) -> int:
    """How far the middle of the drill runs in the board, from the face to the end: half the thickness / sin(angle).

    >>> from shoplib.joints.bench_pair import stock_of
    >>> along_the_drill(stock_of(18 * MM), {"angle": 30}) == 18 * MM
    True
    """
    return line_of(middle(0, stock.enters.thickness), values["angle"])


def slanting(stock: Stock, values: Values) -> Sizes:
    """What collar and screw are chosen by, as it is measured along the drill; the depth of the point is square to the
    side. No screw is told where none is sold so short.

    >>> from shoplib.joints.bench_pair import stock_of
    >>> from shoplib.measure import MM_STYLE
    >>> stock = stock_of(MM * 182 // 10, style=MM_STYLE)
    >>> [round(ticks / MM, 1) for _, ticks in slanting(stock, POCKET_SCREWS.usual(stock))]
    [35.2, 26.1, 24.3, 19.0, 9.6]
    """
    web, into, angle = values["web"], stock.receives.thinnest, values["angle"]
    run = leaf_beside(along_the_drill(stock, values), f"half the thickness / sin {angle} degrees", "measured",
                      stock.enters.thickness)
    row, longest = pocket_screw(web, into, stock.style)
    spare = leaf_beside(row.spare, "wood to stay before the point", "table", into)
    sizes = (
        ("face to end, along the drill", run),
        ("pocket, along the drill (collar: this and the guide's length)", run - web),
        ("longest screw that may be, counted straight", room_for_screw(web, into, spare)),
    )
    if longest is None:
        return sizes
    deep = leaf_beside(point_in(longest, web, angle), f"its length less the web, times cos {angle} degrees", "measured",
                       into)
    return (*sizes, ("longest screw sold, at most so long", longest),
            ("its point in the side, through the slant", deep))


POCKET_SCREWS = JointKind(
    "pocket screws", "pocket screws", 1, (COUNT, EDGE, ANGLE, POCKET, SHANK, WEB), make, lambda stock, values: 0,
    slanting,
)
"""A butt joint that is screwed from inside; no figure of its strength was read."""
