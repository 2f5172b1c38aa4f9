"""A plan made by hand: a five-board tool box for a bicycle workshop, with two drawers that run out.

Every number is worked from the sizes written here (millimetres), none by the project. Boards are
given by the space they fill in the cabinet; `own` turns a place in the cabinet into the board's own
coordinates by looking along each axis from the board's origin.
"""

from copy import deepcopy

WIDTH, HEIGHT, DEPTH = 600.0, 400.0, 500.0
SHEETS = [
    {"name": "case sheet", "readings": [18.0, 18.1, 18.2], "thickness": 18.1},
    {"name": "box sheet", "readings": [12.0, 12.05, 12.1], "thickness": 12.05},
    {"name": "thin sheet", "readings": [6.0, 6.2], "thickness": 6.1},
]
CASE, BOX, THIN = 18.1, 12.05, 6.1
FIT = 0.1
CASE_CUT, BOX_CUT, THIN_CUT = 18.2 + FIT, 12.1 + FIT, 6.2 + FIT
RABBET, RABBET_END = 6.0, 0.2
GROOVE, GROOVE_END = 6.0, 0.5
BACK_FROM = 480.0
SLIDE = 12.7
BOX_RABBET = 6.0
BOX_GROOVE = 5.0
BOX_DEEP = 450.0
TRAVEL = 400.0
FRONT_GAP = 2.0


def own(board, point):
    """A place in the cabinet, in the board's own coordinates."""
    origin, axes = board["origin"], board["axes"]
    place = []
    for text in axes:
        world = "xyz".index(text[1])
        along = point[world] - origin[world]
        place.append(round(along if text[0] == "+" else -along, 9))
    return place


def board(name, group, sheet, low, high, axes):
    """A board that fills the space from `low` to `high` and runs along `axes`."""
    size, origin = [], [0.0, 0.0, 0.0]
    for text in axes:
        world = "xyz".index(text[1])
        size.append(round(high[world] - low[world], 9))
        origin[world] = low[world] if text[0] == "+" else high[world]
    stage = 1 if group == "case" else 3 if name.endswith("front") and "box" not in name else 2
    return {
        "name": name,
        "group": group,
        "stage": stage,
        "sheet": sheet,
        "size": size,
        "designed": size,
        "grain": "length",
        "edging": {},
        "origin": origin,
        "axes": list(axes),
        "cuts": [],
    }


def cut(target, kind, low, high, enters=""):
    """Cut the space from `low` to `high` (in the cabinet) out of a board."""
    one, other = own(target, low), own(target, high)
    target["cuts"].append(
        {
            "kind": kind,
            "low": [min(p) for p in zip(one, other, strict=True)],
            "high": [max(p) for p in zip(one, other, strict=True)],
            "for": enters,
        }
    )


def joint(kind, enters, receives, axis, depth=0.0, fit=0.0, end_gap=0.0, **more):
    """A joint as plan.json has it."""
    return {
        "kind": kind,
        "enters": enters,
        "receives": receives,
        "axis": axis,
        "depth": depth,
        "fit": fit,
        "end_gap": end_gap,
        **more,
    }


def case():
    """Sides, top and bottom in rabbets, back in grooves: 600 x 400 x 500."""
    left = board("left side", "case", "case sheet", (0, 0, 0), (CASE, DEPTH, HEIGHT), ("+z", "+y", "-x"))
    right = board(
        "right side", "case", "case sheet", (WIDTH - CASE, 0, 0), (WIDTH, DEPTH, HEIGHT), ("+z", "-y", "+x")
    )
    start = CASE - RABBET + RABBET_END
    bottom = board(
        "bottom", "case", "case sheet", (start, 0, 0), (WIDTH - start, DEPTH, CASE), ("+x", "+y", "+z")
    )
    top = board(
        "top",
        "case",
        "case sheet",
        (start, 0, HEIGHT - CASE),
        (WIDTH - start, DEPTH, HEIGHT),
        ("+x", "-y", "-z"),
    )
    edge = CASE - GROOVE + GROOVE_END
    back = board(
        "back",
        "case",
        "thin sheet",
        (edge, BACK_FROM, edge),
        (WIDTH - edge, BACK_FROM + THIN, HEIGHT - edge),
        ("+x", "+z", "-y"),
    )
    to = BACK_FROM + THIN_CUT
    joints = []
    for side, out, inner in ((left, CASE, CASE - RABBET), (right, WIDTH - CASE, WIDTH - CASE + RABBET)):
        axis = "-x" if side is left else "+x"
        cut(side, "rabbet", (inner, 0, 0), (out, DEPTH, CASE_CUT), "bottom")
        cut(side, "rabbet", (inner, 0, HEIGHT - CASE_CUT), (out, DEPTH, HEIGHT), "top")
        cut(side, "groove", (inner, BACK_FROM, 0), (out, to, HEIGHT), "back")
        joints += [
            joint("rabbet", name, side["name"], axis, RABBET, FIT, RABBET_END) for name in ("bottom", "top")
        ]
        joints.append(joint("groove", "back", side["name"], axis, GROOVE, FIT, GROOVE_END))
    cut(bottom, "groove", (start, BACK_FROM, CASE - GROOVE), (WIDTH - start, to, CASE), "back")
    cut(top, "groove", (start, BACK_FROM, HEIGHT - CASE), (WIDTH - start, to, HEIGHT - CASE + GROOVE), "back")
    joints += [
        joint("groove", "back", "bottom", "-z", GROOVE, FIT, GROOVE_END),
        joint("groove", "back", "top", "+z", GROOVE, FIT, GROOVE_END),
    ]
    return [left, right, bottom, top, back], joints


def drawer(group, low, high, front_low, front_high):
    """A drawer box from height `low` to `high` behind an inset front, on a pair of 12.7 mm slides."""
    x0, x1 = CASE + SLIDE, WIDTH - CASE - SLIDE
    y0, y1 = CASE, CASE + BOX_DEEP
    parts, joints = [], []
    names = {
        part: f"{group} {part}" for part in ("left", "right", "box front", "box back", "box bottom", "front")
    }
    left = board(names["left"], group, "box sheet", (x0, y0, low), (x0 + BOX, y1, high), ("+y", "+z", "+x"))
    right = board(names["right"], group, "box sheet", (x1 - BOX, y0, low), (x1, y1, high), ("+y", "-z", "-x"))
    end = BOX - BOX_RABBET
    box_front = board(
        names["box front"],
        group,
        "box sheet",
        (x0 + end, y0, low),
        (x1 - end, y0 + BOX, high),
        ("+x", "+z", "-y"),
    )
    box_back = board(
        names["box back"],
        group,
        "box sheet",
        (x0 + end, y1 - BOX, low),
        (x1 - end, y1, high),
        ("+x", "-z", "+y"),
    )
    reach = BOX_GROOVE - GROOVE_END
    floor = low + 10
    bottom = board(
        names["box bottom"],
        group,
        "thin sheet",
        (x0 + BOX - reach, y0 + BOX - reach, floor),
        (x1 - BOX + reach, y1 - BOX + reach, floor + THIN),
        ("+x", "+y", "+z"),
    )
    front = board(
        names["front"],
        group,
        "case sheet",
        (CASE + FRONT_GAP, 0, front_low),
        (WIDTH - CASE - FRONT_GAP, CASE, front_high),
        ("+x", "+z", "-y"),
    )
    for side, axis in ((left, "-x"), (right, "+x")):
        a, b = (x0 + end, x0 + BOX) if axis == "-x" else (x1 - BOX, x1 - end)
        cut(side, "rabbet", (a, y0, low), (b, y0 + BOX_CUT, high), names["box front"])
        cut(side, "rabbet", (a, y1 - BOX_CUT, low), (b, y1, high), names["box back"])
        a, b = (x0 + BOX - BOX_GROOVE, x0 + BOX) if axis == "-x" else (x1 - BOX, x1 - BOX + BOX_GROOVE)
        cut(side, "groove", (a, y0, floor), (b, y1, floor + THIN_CUT), names["box bottom"])
        joints += [
            joint("rabbet", names[part], side["name"], axis, BOX_RABBET, FIT)
            for part in ("box front", "box back")
        ]
        joints.append(joint("groove", names["box bottom"], side["name"], axis, BOX_GROOVE, FIT, GROOVE_END))
    cut(
        box_front,
        "groove",
        (x0 + end, y0 + BOX - BOX_GROOVE, floor),
        (x1 - end, y0 + BOX, floor + THIN_CUT),
        names["box bottom"],
    )
    cut(
        box_back,
        "groove",
        (x0 + end, y1 - BOX, floor),
        (x1 - end, y1 - BOX + BOX_GROOVE, floor + THIN_CUT),
        names["box bottom"],
    )
    joints += [
        joint("groove", names["box bottom"], names["box front"], "-y", BOX_GROOVE, FIT, GROOVE_END),
        joint("groove", names["box bottom"], names["box back"], "+y", BOX_GROOVE, FIT, GROOVE_END),
        joint("butt", names["front"], names["box front"], "+y"),
    ]
    parts = [left, right, box_front, box_back, bottom, front]
    slides = [
        {
            "what": "slide",
            "on": side,
            "group": group,
            "low": [a, CASE, low + 20],
            "high": [b, y1, low + 65],
            "screws": [],
        }
        for side, a, b in (("left side", CASE, x0), ("right side", x1, WIDTH - CASE))
    ]
    return parts, joints, slides


def tool_box():
    """The whole plan: outside 600 x 400 x 500, two drawers, gaps of 2 mm all round the fronts."""
    boards, joints = case()
    middle = (HEIGHT - FRONT_GAP) / 2
    hardware = []
    for group, low, high, front_low, front_high in (
        ("bay 1 drawer 1", 220.0, 340.0, middle + FRONT_GAP, HEIGHT - CASE - FRONT_GAP),
        ("bay 1 drawer 2", 40.0, 160.0, CASE + FRONT_GAP, middle),
    ):
        more_boards, more_joints, slides = drawer(group, low, high, front_low, front_high)
        boards, joints, hardware = boards + more_boards, joints + more_joints, hardware + slides
    upper, lower = "bay 1 drawer 1 front", "bay 1 drawer 2 front"
    pairs = [
        (upper, lower, "z"),
        (upper, "top", "z"),
        (lower, "bottom", "z"),
        (upper, "left side", "x"),
        (upper, "right side", "x"),
        (lower, "left side", "x"),
    ]
    outside = {"width": WIDTH, "height": HEIGHT, "depth": DEPTH}
    return deepcopy(
        {
            "format": 1,
            "units": "mm",
            "name": "tool box",
            "outside": outside,
            "envelope": outside,
            "sheets": SHEETS,
            "boards": boards,
            "joints": joints,
            "travel": [{"group": f"bay 1 drawer {n}", "vector": [0, -TRAVEL, 0]} for n in (1, 2)],
            "gaps": [{"between": [a, b], "along": along, "size": FRONT_GAP} for a, b, along in pairs],
            "hardware": hardware,
            "findings": [],
        }
    )
