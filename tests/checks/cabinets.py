"""Cabinets made by hand for the checks: a tool case for a bicycle workshop with one drawer.

Sizes are millimetres, worked here from the sizes written here and turned into ticks at the end.
"""

from shoplib.measure import MM, MM_STYLE
from shoplib.model.board import Board, BoxCut
from shoplib.model.box import Box, around
from shoplib.model.placement import standing_in
from shoplib.model.project import Carcass, Project, Size, Space
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet, Joint, Travel

AXES = {"x": ("+z", "+y", "-x"), "y": ("+x", "+z", "-y"), "z": ("+x", "+y", "+z")}
"""Axes of a board by the world axis of its thickness."""


def ticks(value):
    """Millimetres as ticks."""
    return round(value * MM)


SHEETS = {
    name: Sheet(name, "plywood", ticks(nominal), tuple(map(ticks, readings)), ticks(length), ticks(width))
    for name, nominal, readings, length, width in (
        ("case sheet", 18, (17.9, 18.1), 2440, 1220),
        ("box sheet", 12, (11.9, 12.1), 1525, 1525),
        ("thin sheet", 6, (6,), 1525, 1525),
    )
}


def box(low, high):
    """A box with corners in millimetres."""
    return Box(tuple(map(ticks, low)), tuple(map(ticks, high)))


def board(name, low, high, thin, *cuts, sheet="case sheet", group="case", role="", grain="length"):
    """A board that fills the box; each cut is (kind, low, high, for_board) in the cabinet, millimetres."""
    place = standing_in(box(low, high), AXES[thin])
    own = []
    for kind, cut_low, cut_high, *for_board in cuts:
        inside = place.to_board(box(cut_low, cut_high))
        own.append(BoxCut(kind, inside.low, inside.high, *for_board))
    length, width, thickness = place.to_board(box(low, high)).high
    return Board(name, group, 1, sheet, length, width, thickness, place, tuple(own), grain, (), role)


def joint(kind, enters, receives, axis, depth=0, fit=0, end_gap=0, tongue=0):
    """A joint with its sizes in millimetres."""
    return Joint(kind, enters, receives, axis, ticks(depth), ticks(fit), ticks(end_gap), ticks(tongue))


def cabinet(boards, joints=(), *, space=None, **more):
    """The boards as a solved cabinet, shown in tenths of a millimetre."""
    whole = around([b.box for b in boards]) if boards else box((0, 0, 0), (0, 0, 0))
    project = Project("tool case", MM_STYLE, SHEETS, Size(), Carcass("case sheet"), space=space)
    given = {"sheets": SHEETS, "outside": whole, "envelope": whole, "style": MM_STYLE, "project": project}
    return Cabinet(name="tool case", boards=tuple(boards), joints=tuple(joints), **given | more)


def space(width, height, depth, **more):
    """A space, with every size read once, in millimetres."""
    sizes = {key: ticks(value) if isinstance(value, int | float) else value for key, value in more.items()}
    return Space((ticks(width),), (ticks(height),), (ticks(depth),), **sizes)


def case_boards():
    """Sides 18 x 300 x 400 and a bottom and top let in 6 deep, 0.2 short of the bottom of their cuts.

    The outside is 500 wide. The cuts take the thickest reading, 18.1, and 0.1 of fit.
    """
    cuts = [
        ("rabbet", 0, 18.2, "bottom"),
        ("rabbet", 400 - 18.2, 400, "top"),
    ]
    left = [(kind, (12, 0, low), (18, 300, high), name) for kind, low, high, name in cuts]
    right = [(kind, (482, 0, low), (488, 300, high), name) for kind, low, high, name in cuts]
    return [
        board("left side", (0, 0, 0), (18, 300, 400), "x", *left, role="side"),
        board("right side", (482, 0, 0), (500, 300, 400), "x", *right, role="side"),
        board("bottom", (12.2, 0, 0), (487.8, 300, 18), "z", role="bottom"),
        board("top", (12.2, 0, 382), (487.8, 300, 400), "z", role="top"),
    ]


def case_joints():
    """The joints of the case."""
    return [
        joint("rabbet", enters, receives, axis, 6, 0.1, 0.2)
        for enters in ("bottom", "top")
        for receives, axis in (("left side", "-x"), ("right side", "+x"))
    ]


def drawer_boards(group="bay 1 drawer 1", base=100, groove=5):
    """A drawer box 439 x 280 x 100: sides rabbeted 6 for front and back, a bottom in through grooves."""
    sheet = {"sheet": "box sheet", "group": group}
    low, high, floor = base, base + 100, base + 6
    walls = []
    for name, x, inner in (("left", 30.5, 1), ("right", 457.5, 0)):
        a, b = (x + 6, x + 12) if inner else (x, x + 6)
        c, d = (x + 12 - groove, x + 12) if inner else (x, x + groove)
        walls.append(
            board(
                f"{group} box {name}", (x, 10, low), (x + 12, 290, high), "x",
                ("rabbet", (a, 10, low), (b, 22.2, high), f"{group} box front"),
                ("rabbet", (a, 277.8, low), (b, 290, high), f"{group} box back"),
                ("groove", (c, 10, floor), (d, 290, floor + 6), f"{group} box bottom"),
                **sheet, role="box side",
            )
        )  # fmt: skip
    a, b = 36.5, 463.5
    bottom = f"{group} box bottom"
    for name, role, y, c, d in (("front", "box front", 10, 17, 22), ("back", "box back", 278, 278, 283)):
        cut = ("groove", (a, c, floor), (b, d, floor + 6), bottom)
        walls.append(
            board(f"{group} box {name}", (a, y, low), (b, y + 12, high), "y", cut, **sheet, role=role)
        )
    low_x, high_x = 42.5 - groove, 457.5 + groove
    walls.append(
        board(
            bottom, (low_x, 17, floor), (high_x, 283, floor + 6), "z",
            sheet="thin sheet", group=group, role="box bottom",
        )
    )  # fmt: skip
    return walls


def drawer_joints(group="bay 1 drawer 1", groove=5):
    """The joints of the drawer box."""
    wall = {name: f"{group} box {name}" for name in ("left", "right", "front", "back", "bottom")}
    corners = [
        joint("rabbet", wall[enters], wall[side], axis, 6, 0.1)
        for enters in ("front", "back")
        for side, axis in (("left", "-x"), ("right", "+x"))
    ]
    grooves = [
        joint("groove", wall["bottom"], wall[receives], axis, depth)
        for receives, axis, depth in (
            ("left", "-x", groove), ("right", "+x", groove), ("front", "-y", 5), ("back", "+y", 5)
        )
    ]  # fmt: skip
    return corners + grooves


def tool_case(**more):
    """The whole case with its drawer, sound in every way."""
    boards = case_boards() + drawer_boards()
    travel = (Travel("bay 1 drawer 1", (0, ticks(-250), 0)),)
    return cabinet(boards, case_joints() + drawer_joints(), travel=travel, **more)
