"""A case built by hand for the drawing tests: inches, two dividers, six drawers, inset fronts.

Sizes follow no plan; what matters is that there are dadoes through and stopped, rabbets, grooves, a notch,
holes and edging, and that every board touches what it should.
"""

from shoplib.measure import INCH
from shoplib.model.board import Board, BoxCut, Edge, Hole
from shoplib.model.box import Box
from shoplib.model.placement import standing_in
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet, Gap, Hardware, Joint, Screw, Travel

T = INCH * 45 // 64
"""Case sheet as measured."""
S = INCH // 2
"""Box sheet."""
D = INCH // 4
"""Depth of the joints."""
W, H, Y = 60 * INCH, 34 * INCH, 24 * INCH
TOE = 4 * INCH

SIDE_LEFT = ("+z", "+y", "-x")
SIDE_RIGHT = ("+z", "-y", "+x")
FLAT = ("+x", "+y", "+z")
FACING = ("+x", "+z", "-y")


def _board(name, group, stage, sheet, box, axes, cuts=(), role="", edging=(), grain="length"):
    """A board that fills a world box; `cuts` are (kind, world box, for) or holes in its own coordinates."""
    placement = standing_in(box, axes)
    sizes = placement.to_board(box).high
    own = tuple(
        BoxCut(cut[0], placement.to_board(cut[1]).low, placement.to_board(cut[1]).high, cut[2])
        if isinstance(cut, tuple) else cut
        for cut in cuts
    )
    return Board(name, group, stage, sheet, *sizes, placement, own, grain, edging, role)


def _drawer(bay, number, low, high, bottom, top, parts, fittings, travel):
    """A box of rabbeted corners with its bottom in grooves, its front, its slides."""
    name = f"bay {bay} drawer {number}"
    x0, x1 = low + S, high - S
    z0, z1 = bottom + INCH // 2, top - INCH // 2
    y0, y1 = T + INCH // 16, 21 * INCH
    r = S // 2
    g0, g1 = z0 + INCH // 2, z0 + INCH // 2 + INCH // 4
    parts += [
        _board(f"{name} left box side", name, 2, "box sheet", Box((x0, y0, z0), (x0 + S, y1, z1)),
               ("+y", "+z", "+x"),
               (("rabbet", Box((x0 + r, y0, z0), (x0 + S, y0 + S, z1)), f"{name} box front"),
                ("rabbet", Box((x0 + r, y1 - S, z0), (x0 + S, y1, z1)), f"{name} box back"),
                ("groove", Box((x0 + S - r, y0, g0), (x0 + S, y1, g1)), f"{name} box bottom")), "box side"),
        _board(f"{name} right box side", name, 2, "box sheet", Box((x1 - S, y0, z0), (x1, y1, z1)),
               ("-y", "+z", "-x"),
               (("rabbet", Box((x1 - S, y0, z0), (x1 - r, y0 + S, z1)), f"{name} box front"),
                ("rabbet", Box((x1 - S, y1 - S, z0), (x1 - r, y1, z1)), f"{name} box back"),
                ("groove", Box((x1 - S, y0, g0), (x1 - S + r, y1, g1)), f"{name} box bottom")), "box side"),
        _board(f"{name} box front", name, 2, "box sheet", Box((x0 + r, y0, z0), (x1 - r, y0 + S, z1)), FACING,
               (("groove", Box((x0 + r, y0 + r, g0), (x1 - r, y0 + S, g1)), f"{name} box bottom"),),
               "box front"),
        _board(f"{name} box back", name, 2, "box sheet", Box((x0 + r, y1 - S, z0), (x1 - r, y1, z1)), FACING,
               (("groove", Box((x0 + r, y1 - S, g0), (x1 - r, y1 - r, g1)), f"{name} box bottom"),),
               "box back"),
        _board(f"{name} box bottom", name, 2, "thin sheet",
               Box((x0 + S - r, y0 + S - r, g0), (x1 - S + r, y1 - S + r, g1)), FLAT, (), "box bottom",
               grain="none"),
    ]
    gap = INCH // 8
    front = Box((low + gap, 0, bottom + gap // 2), (high - gap, T, top - gap // 2))
    pull = (front.low[0] + front.high[0]) // 2
    middle = (front.low[2] + front.high[2]) // 2
    own = standing_in(front, FACING).point_to_board
    parts.append(_board(
        f"{name} front", name, 3, "case sheet", front, FACING,
        tuple(Hole("pull hole", (own((pull + k * 2 * INCH, 0, middle))[0], own((pull, 0, middle))[1], T), "w",
                   INCH * 3 // 16, T, f"{name} pull") for k in (-1, 1)),
        "front", (("top", Edge("band", INCH // 64)),)))
    for x in (low, high - S):
        place = Box((x, T + INCH // 16, z0 + INCH), (x + S, 21 * INCH, z0 + 3 * INCH))
        screws = (Screw("No. 6", INCH // 2, "left side", 3),)
        fittings.append(Hardware("slide", "left side", name, place, "side mount 20", screws))
    fittings.append(Hardware("pull", f"{name} front", name,
                             Box((pull - 2 * INCH, -INCH, middle - INCH // 4),
                                 (pull + 2 * INCH, 0, middle + INCH // 4))))
    travel.append(Travel(name, (0, -20 * INCH, 0)))


def bench_case() -> Cabinet:
    """Three bays, drawers left and right, an open bay with a fixed shelf between them."""
    back = INCH * 15 // 64
    left = [T, 20 * INCH, 20 * INCH + T, 40 * INCH, 40 * INCH + T, W - T]
    parts, fittings, travel = [], [], []

    def across(x0, x1, z, name, y0=0, y1=Y):
        return ("dado", Box((x0, y0, z), (x1, y1, z + T)), name)

    base, lid, shelf = TOE, H - T, 20 * INCH
    rabbet = INCH * 3 // 8
    parts.append(_board(
        "left side", "case", 1, "case sheet", Box((0, 0, 0), (T, Y, H)), SIDE_LEFT,
        (across(T - D, T, base, "bottom"), ("rabbet", Box((T - D, 0, lid), (T, Y, H)), "top"),
         ("rabbet", Box((T - rabbet, Y - back, 0), (T, Y, H)), "back"),
         ("notch", Box((0, 0, 0), (T, 3 * INCH, TOE)), ""),
         *(Hole("screw hole", (z * INCH, y * INCH, 0), "w", INCH * 5 // 64, INCH // 2, "slide")
           for z in (6, 16, 26) for y in (1, 9, 17))),
        "side", (("front", Edge("band", INCH // 64)),)))
    parts.append(_board(
        "right side", "case", 1, "case sheet", Box((W - T, 0, 0), (W, Y, H)), SIDE_RIGHT,
        (across(W - T, W - T + D, base, "bottom"), ("rabbet", Box((W - T, 0, lid), (W - T + D, Y, H)), "top"),
         ("rabbet", Box((W - T, Y - back, 0), (W - T + rabbet, Y, H)), "back"),
         ("notch", Box((W - T, 0, 0), (W, 3 * INCH, TOE)), "")),
        "side", (("front", Edge("band", INCH // 64)),)))
    for name, z, low_face in (("bottom", base, False), ("top", lid, True)):
        z0, z1 = (z, z + D) if low_face else (z + T - D, z + T)
        parts.append(_board(
            name, "case", 1, "case sheet", Box((T - D, 0, z), (W - T + D, Y - back, z + T)), FLAT,
            tuple(("dado", Box((x, INCH // 2, z0), (x + T, Y - back, z1)), f"divider {k}")
                  for k, x in ((1, left[1]), (2, left[3]))),
            name, (("front", Edge("strip", INCH // 4)),)))
    for k, x, y0 in ((1, left[1], 0), (2, left[3], 0)):
        low, high = base + T - D, lid + D
        inner = ((x + T - D, x + T) if k == 1 else (x, x + D))
        parts.append(_board(
            f"divider {k}", "case", 1, "case sheet", Box((x, y0, low), (x + T, Y - back, high)), SIDE_LEFT,
            (across(*inner, shelf, "shelf", INCH, Y - back),
             ("notch", Box((x, y0, low), (x + T, INCH // 2, base + T)), ""),
             ("notch", Box((x, y0, lid), (x + T, INCH // 2, high)), ""),
             *(Hole("screw hole", (z * INCH, y * INCH, T if k == 1 else 0), "w", INCH * 5 // 64, INCH // 2,
                    "slide")
               for z in (2, 12, 22) for y in (1, 9, 17))),
            "divider", (("front", Edge("band", INCH // 64)),)))
    parts.append(_board(
        "shelf", "case", 1, "case sheet",
        Box((left[2] - D, INCH // 4, shelf), (left[3] + D, Y - back, shelf + T)), FLAT,
        (("notch", Box((left[2] - D, INCH // 4, shelf), (left[2], INCH, shelf + T)), ""),
         ("notch", Box((left[3], INCH // 4, shelf), (left[3] + D, INCH, shelf + T)), "")), "fixed shelf"))
    parts.append(_board(
        "back", "case", 1, "thin sheet",
        Box((T - rabbet, Y - back, 0), (W - T + rabbet, Y, H)), FACING, (), "back", grain="none"))
    opening = lid - base - T
    for bay, low, high in ((1, left[0], left[1]), (3, left[4], left[5])):
        each = opening // 3
        for number in (1, 2, 3):
            top = lid - (number - 1) * each
            _drawer(bay, number, low, high, top - each, top, parts, fittings, travel)
    gaps = (Gap(("bay 1 drawer 1 front", "bay 1 drawer 2 front"), "z", INCH // 8),)
    joints = (
        Joint("dado", "bottom", "left side", "-x", D, INCH // 64, INCH // 64),
        Joint("rabbet", "back", "left side", "-x", rabbet),
        Joint("dado", "divider 1", "bottom", "-z", D, INCH // 64, INCH // 64),
    )
    sheets = {name: Sheet(name, "plywood", t) for name, t in
              (("case sheet", T), ("box sheet", S), ("thin sheet", INCH // 4))}
    return Cabinet("Truing bench", tuple(parts), sheets, joints, tuple(travel), gaps, tuple(fittings))
