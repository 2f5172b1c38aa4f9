"""What the page on drawer clearance shows beside its exercises: worked sums, the panel, and what goes wrong."""

from shoplib.building.in_opening import box_of
from shoplib.lessons.choice import unit_in_use
from shoplib.lessons.drawer_shown import ROW, drawer, out_of_true, three_drawers
from shoplib.lessons.each_size import why_each
from shoplib.lessons.large_type import in_type
from shoplib.lessons.say import Say
from shoplib.lessons.worked import Worked
from shoplib.live.drawer_panel import drawer_panel
from shoplib.live.drawer_project import FRONTS, starting_drawer
from shoplib.live.drawer_says import LOWER
from shoplib.live.panel import Panel
from shoplib.measure import narrowest, read_length, write_brief
from shoplib.model.board import Board
from shoplib.model.drawer_fit import front_by_offcut, limits, mend, offcut_over, out_of_square, shims, taper
from shoplib.model.solved import Cabinet
from shoplib.tables.slides import Slide, slides

RABBETS = {
    "in": ("1/8 in", "3/16 in", "0.236 in", "1/4 in", "5/16 in"),
    "mm": ("4 mm", "5 mm", "5.95 mm", "6 mm", "8 mm"),
}
"""Depths of corner rabbets to try with one offcut: under half of the stock, half as measured, half by name, over."""


def clearance_panel() -> Panel:
    """The panel of the lesson, in the learner's unit."""
    return in_type(drawer_panel(unit_in_use()))


def box_worked(unit: str) -> Worked:
    """From the opening to the boards of the box; every number is read off the solved drawer."""
    case, say = drawer(unit), Say(unit)
    row = _row(case)
    board, box = _boards(case), box_of(case, LOWER)
    wide, side, front, bottom = box.size[0], board["box side"], board["box front"], board["box bottom"]
    rule = case.project.bays[0].drawers
    opening, two = starting_drawer(unit).front, say.exact(2 * row.side)
    between = wide - 2 * side.thickness
    made = f"{say.length(opening)} - {two}{_down(opening - 2 * row.side, wide, case)}"
    stock = say.exact(side.thickness)
    clear = say.exact(between)
    return Worked(
        f"A drawer in an opening of {say.length(opening)}, on slides",
        [
            ("two slides", f"2 x {say.exact(row.side)}", two),
            ("box, outside", made, say.length(wide)),
            ("between its sides", f"{say.length(wide)} - 2 x {stock}", clear),
            ("box front and back", f"{clear} + 2 x {say.exact(rule.corner.depth)}", say.length(front.length)),
            (
                "bottom, left to right",
                f"{clear} + 2 x {say.exact(rule.bottom_depth)} - {say.exact(rule.bottom_slack)}",
                say.length(_across(bottom)),
            ),
        ],
        why_each([
            ("two slides", 2 * row.side), ("box, outside", wide), ("between its sides", between),
            ("box front and back", front.length), ("bottom, left to right", _across(bottom)),
        ], say.style),
    )


def _down(exact: int, rounded: int, case: Cabinet) -> str:
    """How a sum becomes the size that is made, where the two differ."""
    say, step = Say(case.style.unit), case.project.step
    return "" if exact == rounded else f" = {say.exact(exact)}, down to the next {say.exact(step)}"


def kinds_worked(unit: str) -> Worked:
    """The same opening with each kind of slide or runner: the box, and what stays free round it."""
    say, lines, sizes = Say(unit), [], []
    for name, row in slides(unit).items():
        if ("metric" in name) != (unit == "mm") and row.carries == "hardware" and row.holds == "outside":
            continue
        case = drawer(unit, slide=name, rabbet=None)
        row = case.slides[name]
        box, floor = box_of(case, LOWER), case.by_name["bottom"].box.high[2]
        to = "" if row.holds == "outside" else " (to the inside of the box)"
        wide, deep = (write_brief(size, say.style) for size in box.size[:2])
        below = box.low[2] - floor
        back = f", set back {say.exact(row.past_box)}" if row.past_box else ""
        lines.append((
            name, f"at each side {say.exact(row.side)}{to}, below {say.exact(below)}{back}, "
            f"behind {say.exact(row.rear_room)}", f"box {wide} wide, {deep} deep",
        ))
        sizes += [
            (f"{name}: at each side", row.side), ("below", below), ("set back", row.past_box),
            ("behind", row.rear_room), ("box, width", box.size[0]), ("box, depth", box.size[1]),
        ]
    return Worked(f"An opening of {say.length(starting_drawer(unit).front)}, by what the drawer runs on", lines,
                  why_each(sizes, say.style))


def readings_worked(unit: str) -> Worked:
    """A case measured front and back at three heights: the box of each drawer, and its shims."""
    say, case, lines, sizes = Say(unit), three_drawers(unit), [], []
    row = _row(case)
    for number, (group, read) in reversed(list(enumerate(case.project.measured.openings.items(), 1))):
        box, (spread, wide) = box_of(case, group), taper(read)
        each = shims(read, box.size[0], row.side)[wide == "back"]
        remedy = {
            "nothing": "no shim", "shim": f"shim {say.exact(each)} each side at the {wide}",
            "straighten": "straighten first",
        }[mend(spread, row)]
        lines.append((
            f"drawer\u00a0{number}", f"front {say.length(read.front)}, back {say.length(read.back)}: "
            f"{say.length(narrowest([read.front, read.back]))} - 2 x {say.exact(row.side)}",
            f"box {say.length(box.size[0])}; {remedy}",
        ))
        sizes.append((f"box of drawer {number}", box.size[0]))
        if remedy.startswith("shim"):
            sizes.append((f"shim of drawer {number}", each))
    return Worked("One case, three heights, from the top down", lines, why_each(sizes, say.style))


def limits_worked() -> Worked:
    """Up to which taper what is done, read off the slide that the lesson begins with, in both units."""
    both = [limits(_row(drawer(unit))) for unit in ("in", "mm")]
    called = ("the slides forgive", "shimmed up to")
    why = (
        why_each(zip(called, pair, strict=True), Say(unit).style) for unit, pair in zip(("in", "mm"), both, strict=True)
    )
    forgiven, shimmed = (
        f"{Say('in').exact(inch)} ({Say('mm').exact(mm)})" for inch, mm in zip(*both, strict=True)
    )
    return Worked(
        "How much wider one end is, on slides like these",
        [
            (f"up to {forgiven}", "the slides forgive it", "no shim"),
            (f"more, up to {shimmed}", "the wider end is filled out", "shim"),
            (f"over {shimmed}", "too much for shims", "straighten the case"),
        ],
        [line for lines in why for line in lines],
    )


def shims_worked(unit: str) -> Worked:
    """How thick the shims of the middle drawer are, at both ends."""
    say, group = Say(unit), f"{ROW} 2"
    case = three_drawers(unit)
    read, box, row = case.project.measured.openings[group], box_of(case, group).size[0], _row(case)
    thick = shims(read, box, row.side)
    return Worked(
        f"Shims of drawer 2, whose box is {say.length(box)} wide",
        [
            (
                f"at the {end}", f"({say.length(opening)} - {say.length(box)}) / 2 - {say.exact(row.side)}",
                _thick(each, row, say),
            )
            for end, opening, each in zip(
                ("front", "back"), (read.front, read.back), thick, strict=True
            )
        ],
        why_each([("box, width", box), *zip(("at the front", "at the back"), thick, strict=True)], say.style),
    )


def _thick(each: int, row: Slide, say: Say) -> str:
    """A shim behind each slide; none where both gaps together are what the slides forgive."""
    if not each:
        return "nothing"
    return f"{say.exact(each)}, no shim" if 2 * each <= row.narrow else say.exact(each)


def heights_worked(unit: str) -> Worked:
    """From the height of the opening to the height of the box, and where its bottom lies."""
    case, say = drawer(unit), Say(unit)
    box, inside = box_of(case, LOWER), (case.by_name["bottom"].box.high[2], case.by_name["top"].box.low[2])
    floor, height, below = inside[0], inside[1] - inside[0], box.low[2] - inside[0]
    bottom = next(each for each in case.groups[LOWER] if each.role == "box bottom").box
    above, left = inside[1] - box.high[2], box.high[2] - bottom.high[2]
    return Worked(
        f"Heights, in an opening {say.length(height)} high",
        [
            ("lower edge of the box", "above the floor, as the slide asks", say.length(box.low[2] - floor)),
            ("box sides, height", f"{say.length(height)} - {say.length(below)} - {say.length(above)}",
             say.length(box.size[2])),
            ("underside of the bottom", "above the lower edge of the box", say.length(bottom.low[2] - box.low[2])),
            ("left inside", f"{say.length(box.size[2])} - {say.exact(bottom.high[2] - box.low[2])}",
             say.exact(left)),
        ],
        why_each([
            ("opening, height", height), ("lower edge of the box", box.low[2] - floor), ("above the box", above),
            ("box sides, height", box.size[2]), ("underside of the bottom", bottom.low[2] - box.low[2]),
            ("bottom, upper face above the edge", bottom.high[2] - box.low[2]), ("left inside", left),
        ], say.style),
    )


def depth_worked(unit: str) -> Worked:
    """How long a slide goes in, with an overlay and with an inset front."""
    say, lines, sizes = Say(unit), [], []
    depth = read_length("18 1/2 in" if unit == "in" else "460 mm")
    for front in FRONTS[:2]:
        case = drawer(unit, fronts=front, depth=depth)
        box, row = box_of(case, LOWER), _row(case)
        before = f" - {say.exact(box.low[1])}" if box.low[1] else ""
        room = case.project.measured.depths["bay 1"] - box.low[1] - row.past_box - row.rear_room
        how = f"{say.length(depth)}{before} - {say.exact(row.setback)} - {say.exact(row.rear_room)} = {say.exact(room)}"
        kind = f"{front.split(',')[0]} front"
        lines.append((kind, how, f"slide {say.length(box.size[1])}"))
        sizes += [(f"{kind}: before the box", box.low[1]), (f"{kind}: room", room), (f"{kind}: slide", box.size[1])]
    title = f"The longest slide in {say.length(depth)} of inside depth"
    return Worked(title, lines, why_each(sizes, say.style))


def offcut_worked(unit: str) -> Worked:
    """One offcut held in the opening, against the sum: right only where a rabbet is half of the measured side."""
    say, lines, sizes = Say(unit), [], []
    for text in RABBETS[unit]:
        case = drawer(unit, rabbet=read_length(text))
        side, front, wide = _boards(case)["box side"], _boards(case)["box front"], box_of(case, LOWER).size[0]
        marked = front_by_offcut(wide, side.thickness)
        over = offcut_over(side.thickness, case.project.bays[0].drawers.corner.depth)
        assert marked - front.length == over
        said = f"{say.exact(abs(over))} too {'long' if over > 0 else 'short'}" if over else "right"
        lines.append((
            f"rabbets {text}", f"by the sum {say.exact(front.length)}, by the offcut {say.exact(marked)}", said
        ))
        off = "too long" if over >= 0 else "too short"
        sizes += [(f"by the sum, rabbets {text},", front.length), ("by the offcut", marked), (off, abs(over))]
    stock = say.exact(_boards(drawer(unit))["box side"].thickness)
    return Worked(f"A box front marked with one offcut; box stock {stock}", lines, why_each(sizes, say.style))


def square_worked(unit: str) -> Worked:
    """By how much an opening leans, from its diagonals."""
    say = Say(unit)
    width, _, longer, shorter = out_of_true(unit)
    lean = out_of_square(longer, shorter, width)
    return Worked(
        f"Out of square: {say.length(width)} wide at front and back",
        [
            ("diagonals", f"{say.length(longer)} and {say.length(shorter)}", f"{say.length(longer - shorter)} apart"),
            ("lean", "(longer x longer - shorter x shorter) / (4 x width)", say.exact(lean)),
        ],
        why_each([("diagonals, apart", longer - shorter)], say.style),
    )


def _row(case: Cabinet) -> Slide:
    """The row of the slide that the lesson begins with."""
    return case.slides[starting_drawer(case.style.unit).slide]


def _boards(case: Cabinet) -> dict[str, Board]:
    """The boards of the lower box by role; one side stands for both."""
    return {board.role: board for board in case.groups[LOWER]}


def _across(board: Board) -> int:
    return board.box.size[0]
