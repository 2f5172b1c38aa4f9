"""One drawer box: five boards sized from its opening and its slide."""

from dataclasses import dataclass

from shoplib.measure import largest_fitting, narrowest, share, thickest, to_step, write_brief, write_length
from shoplib.measure.traced import named
from shoplib.model.assembly import Assembly
from shoplib.model.blank import BOX_SIDE, FACING, LEVEL, Blank
from shoplib.model.board import BOXES
from shoplib.model.joinery import gain
from shoplib.model.part_of import PartOf
from shoplib.model.project import Drawers, ImpossibleProject, JointChoice, Project
from shoplib.model.rows import Span
from shoplib.model.sheet import Sheet
from shoplib.model.shell import sheet_of
from shoplib.tables.slides import Slide


def slide_row(project: Project, name: str, key: str) -> Slide:
    """The row of that slide; ImpossibleProject with the names to choose from where there is none."""
    rows = project.slides
    if name not in rows:
        have = ", ".join(f'"{row}"' for row in rows)
        raise ImpossibleProject(key, f'there is no slide "{name}"; the slides are {have}')
    return rows[name]


def box_width(opening: int, slide: Slide, stock: int, step: int) -> int:
    """Outside width of the box for this opening, down to a whole step (the slide takes up the rest).

    A slide that holds the outside: narrowest O - 2c. One that holds the inside: narrowest O - 2c is
    the inside width, and the two box sides come on top.

    >>> from shoplib.tables.slides import slide
    >>> from shoplib.measure import read_length, INCH
    >>> box_width(read_length("16 in"), slide("side-mount ball-bearing"), INCH // 2, INCH // 64) == 15 * INCH
    True
    """
    inside = opening - 2 * slide.side
    return to_step(inside if slide.holds == "outside" else inside + 2 * stock, step, "down")


def box_depth(room: int, slide: Slide, step: int, key: str, style_text: str) -> int:
    """How deep the box is: the largest slide that fits, or all the room for a runner cut to length.

    `room` is from the rear of the front (or the front edge) to what stands behind. A bought slide takes its setback
    of it too: it begins that far behind the front, and what must stay free, stays free behind the slide. Raises
    ImpossibleProject where no slide fits.

    >>> from shoplib.tables.slides import slide
    >>> from shoplib.measure import MM
    >>> row = slide("side-mount ball-bearing, metric lengths", "mm")
    >>> [box_depth(room * MM, row, MM, "", "") // MM for room in (457, 458)]  # 450 + 2 + 6 = 458
    [400, 450]
    """
    left = room - slide.past_box - slide.rear_room
    depth = largest_fitting(slide.lengths, left) if slide.lengths else to_step(left, step, "down")
    if depth is None or depth <= 0:
        raise ImpossibleProject(
            key, f'no "{slide.name}" slide fits: behind the front there is {style_text} of depth; make the case deeper'
        )
    return depth


@dataclass(frozen=True, slots=True)
class BoxPlace:
    """Where a box goes: the three spans of its outside, and how `high` it was planned.

    What it runs on is screwed to the case by that height before the box is made, and stays there.
    """

    x: Span
    y: Span
    z: Span
    high: int


def place_box(
    project: Project, rule: Drawers, slide: Slide, wide: int, room: tuple[Span, Span, Span], group: str, key: str
) -> BoxPlace:
    """Size the box from the width of the opening that it is cut to, and put it in the middle of its opening.

    `room` is the x span of that opening as built (or as planned until it is measured), the depth span between front
    and back, and the height span that the box may use. Read again with the box in, an opening need not be as `wide` as
    the one that it was cut to. Finished parts of the box that were measured decide its size instead.
    """
    opening, y, cell = room
    stock = sheet_of(project, rule.box_sheet, f"{key}.box_sheet").thickness
    if slide.largest_side is not None and stock > slide.largest_side:
        raise ImpossibleProject(
            f"{key}.box_sheet",
            f'"{slide.name}" takes sides up to {write_brief(slide.largest_side, project.style)}; choose thinner stock',
        )
    made = _as_made(project, group, rule, sheet_of(project, rule.box_sheet, f"{key}.box_sheet"))
    width = named(made[0] or box_width(wide, slide, stock, project.step), f"box width, {group}")
    left = opening[0] + share(opening[1] - opening[0] - width, 2, 1)[0]
    room = y[1] - y[0]
    depth = made[1] or box_depth(room, slide, project.step, f"{key}.slide", write_length(room, project.style))
    low = cell[0] + slide.below
    above = slide.above if slide.carries == "shelf" else thickest([rule.room_above, slide.above])
    planned = named(_box_height(rule, cell[1] - above - low, project.step), f"box height, {group}")
    height = named(made[2], f"box height, {group}") if made[2] else planned
    thin = sheet_of(project, rule.bottom_sheet, f"{key}.bottom_sheet")
    least = thickest([rule.bottom_up, slide.bottom_recess]) + thin.thickest + rule.bottom_fit
    if height <= least:
        raise ImpossibleProject(
            f"{key}.count", "the boxes would have no height over their bottoms; take fewer or lower the room above"
        )
    depth = named(depth, f"box depth, {group}")
    return BoxPlace((left, left + width), (y[0], y[0] + depth), (low, low + height), planned)


def _box_height(rule: Drawers, room: int, step: int) -> int:
    """As high as there is room, down to a whole step; where the width of a finger is given, to whole fingers."""
    fingers = [choice.finger for choice in _corners(rule) if choice.kind == "finger" and choice.finger]
    return to_step(room, fingers[0] if fingers else step, "down")


def _corners(rule: Drawers) -> tuple[JointChoice, JointChoice]:
    """How the front and how the back is joined to the sides."""
    return rule.corner, rule.corner if rule.back_corner is None else rule.back_corner


def lips(rule: Drawers) -> tuple[int, int]:
    """How far the sides end inside the outer face of front and back: the lip of a drawer-front joint, else nothing.

    >>> lips(Drawers(corner=JointChoice("drawer lock", 6, tongue=4, lip=5), back_corner=JointChoice("dado")))
    (5, 0)
    """
    return tuple(choice.lip if choice.kind == "drawer lock" else 0 for choice in _corners(rule))


def _beyond(choice: JointChoice, stock: Sheet) -> int:
    """By how much the box is wider than a front or back that is so joined."""
    if choice.kind == "drawer lock":
        return 0
    return 2 * (stock.thickness - gain(choice, stock.thickness))


def _as_made(project: Project, group: str, rule: Drawers, stock: Sheet) -> tuple[int, int, int]:
    """Width, depth and height of a box whose parts were measured, 0 where they were not; the smallest governs."""
    parts = project.measured.parts
    if not parts:
        return (0, 0, 0)
    ends = zip((f"{group} box front", f"{group} box back"), _corners(rule), strict=True)
    wide = [parts[name].length + _beyond(how, stock) for name, how in ends if name in parts and parts[name].length]
    sides = [parts[name] for name in (f"{group} left box side", f"{group} right box side") if name in parts]
    deep = [side.length + sum(lips(rule)) for side in sides if side.length]
    high = [side.width for side in sides if side.width]
    return (
        narrowest(wide) if wide else 0,
        narrowest(deep) if deep else 0,
        narrowest(high) if high else 0,
    )


def add_box(
    assembly: Assembly, project: Project, rule: Drawers, slide: Slide, place: BoxPlace, drawer: PartOf, key: str
) -> dict[str, Blank]:
    """The five boards of a box.

    Front and back stand between the sides: B - 2s + 2r long where rabbeted. With lips they reach over their ends. The
    bottom lies in grooves, B - 2s + 2q - e wide, or runs out under a low back.
    """
    stock = sheet_of(project, rule.box_sheet, f"{key}.box_sheet")
    thin = sheet_of(project, rule.bottom_sheet, f"{key}.bottom_sheet")
    slack = share(rule.bottom_slack, 2, 1)[0]
    _check_grooves(rule, slack, stock, key)
    before = sheet_of(project, rule.front_sheet or rule.box_sheet, f"{key}.front_sheet")
    s, f, (x0, x1), (y0, y1), (z0, z1) = stock.thickness, before.thickness, place.x, place.y, place.z
    floor = z0 + thickest([rule.bottom_up, slide.bottom_recess])
    low_back = floor + thin.thickest + rule.bottom_fit if rule.bottom == "under back" else z0

    def board(name: str, axes: tuple, spans: tuple, sheet=stock) -> Blank:
        role = name.removeprefix("left ").removeprefix("right ")
        return assembly.add(f"{drawer.name} {name}", role, sheet, axes, spans, group=drawer.name, stage=BOXES,
                            part_of=drawer, key=key)

    corners, behind = _corners(rule), y1 - rule.behind_back
    if rule.behind_back:
        _check_behind(corners[1], behind - s - (y0 + f), key)
    locked = [choice.kind == "drawer lock" for choice in corners]
    sides = (y0 + f if locked[0] else y0, y1 - s if locked[1] else y1)
    left = board("left box side", BOX_SIDE, ((x0, x0 + s), sides, place.z))
    right = board("right box side", BOX_SIDE, ((x1 - s, x1), sides, place.z))
    across = [place.x if over else (x0 + s, x1 - s) for over in locked]
    front = board("box front", FACING, (across[0], (y0, y0 + f), place.z), before)
    back = board("box back", FACING, (across[1], (behind - s, behind), (low_back, z1)))
    rear = behind if rule.bottom == "under back" else behind - s
    bottom = board("box bottom", LEVEL, ((x0 + s, x1 - s), (y0 + f, rear), (floor, floor + thin.thickness)), thin)
    names = ("corner", "corner" if rule.back_corner is None else "back_corner")
    for end, choice, name, way in zip((front, back), corners, names, ("-y", "+y"), strict=True):
        for side, axis in ((left, "-x"), (right, "+x")):
            if choice.kind == "drawer lock":
                assembly.lock(side, end, (way, axis), choice, key=f"{key}.{name}")
            else:
                assembly.join(end, side, axis, choice, key=f"{key}.{name}")
    stopped = any(choice.kind == "finger" for choice in corners)  # else the grooves come out in the fingers
    groove = JointChoice("dado", rule.bottom_depth, rule.bottom_fit, slack)
    holders = [(left, "-x"), (right, "+x"), (front, "-y")]
    if rule.bottom == "groove":
        holders.append((back, "+y"))
    for holder, axis in holders:
        assembly.join(bottom, holder, axis, groove, key=f"{key}.bottom_depth", kind="groove", stopped_run=stopped)
    return {"left": left, "right": right, "front": front, "back": back, "bottom": bottom}


def into_grooves(rule: Drawers) -> int:
    """How far the bottom reaches into the groove of each side.

    >>> into_grooves(Drawers(bottom_depth=12, bottom_slack=4))
    10
    """
    return rule.bottom_depth - share(rule.bottom_slack, 2, 1)[0]


def _check_behind(choice: JointChoice, room: int, key: str) -> None:
    """Refuse a back before the ends of the sides where its joint stands at these ends, or where it has no room."""
    if choice.kind in ("drawer lock", "finger", "rabbet"):
        sentence = f'a back with "{choice.kind}" stands at the ends of the sides; write "dado", or take it out'
        raise ImpossibleProject(f"{key}.behind_back", sentence)
    if room <= 0:
        raise ImpossibleProject(f"{key}.behind_back", "no room is left before the back; choose less")


def _check_grooves(rule: Drawers, slack: int, stock: Sheet, key: str) -> None:
    if rule.bottom_depth >= stock.thickness:
        raise ImpossibleProject(
            f"{key}.bottom_depth", "the grooves would go right through the box sides; choose less than their thickness"
        )
    if slack >= rule.bottom_depth:
        raise ImpossibleProject(
            f"{key}.bottom_slack", "the bottom would fall out of its grooves; choose less than both their depths"
        )
