"""What the drawer panel says of a box: sums that must close, what the dry-fit found, shims, and one offcut."""

from collections.abc import Sequence
from dataclasses import replace

from shoplib.building.in_opening import box_of, held_width, parts_of, read_of, runs_of
from shoplib.checks import check
from shoplib.checks.shims import find_shims
from shoplib.measure import INCH, MM, Style, narrowest, share, write_brief
from shoplib.model.drawer_fit import beside, front_by_offcut, offcut_over
from shoplib.model.part_of import PartOf
from shoplib.model.solved import Cabinet, Finding
from shoplib.tables.slides import Slide
from shoplib.words.amounts import setting, true_amount

LOWER = "bay 1 drawer 1"
"""The drawer that the panel begins with."""

STOCK, DEPTH = "Box stock and corners", "Depth"
"""Groups of controls that open more to say."""


def _is_drawer(part: PartOf | None) -> bool:
    return part is not None and part.what == "drawer"


def short(text: str, cabinet: Cabinet) -> str:
    """Names without their bay, and without their drawer where there is but one."""
    one = sum(_is_drawer(part) for part in map(cabinet.part_of, cabinet.groups)) == 1
    text = text.replace(f"{LOWER} ", "") if one else text
    return text.replace(f"{LOWER}: ", "").replace("bay 1 ", "") if one else text.replace("bay 1 ", "")


def sums(cabinet: Cabinet, opened: Sequence[str]) -> list[str]:
    """What must close, read off the boards: across the opening, across the box, and along the depth."""
    style = cabinet.style
    first, *others = ([size for _, size in told] for told in sum_lengths(cabinet, opened))
    room, wide, rest, least = first
    told = [
        f"room + box + room = opening where it is narrower: {setting(room, style)} + {write_brief(wide, style)} + "
        f"{setting(rest, style)} = {write_brief(least, style)}"
    ]
    if STOCK in opened:
        side, rabbet, front, wide = others.pop(0)
        told.append(
            f"2 x box side - 2 x rabbet + box front = box: 2 x {write_brief(side, style, decimal=True)} - "
            f"2 x {setting(rabbet, style)} + {write_brief(front, style)} = {write_brief(wide, style)}"
        )
    if DEPTH in opened:
        before, deep, behind, inside = others.pop(0)
        runs = _runs(cabinet)
        told.append(
            f"before the {runs} + {runs} + room behind it = inside depth: {setting(before, style)} + "
            f"{write_brief(deep, style)} + {setting(behind, style)} = {write_brief(inside, style)}"
        )
    return told


def sum_lengths(cabinet: Cabinet, opened: Sequence[str]) -> list[tuple[tuple[str, int], ...]]:
    """The lengths of each of these sums in their order, each after what it is called."""
    box, read = box_of(cabinet, LOWER), read_of(cabinet, LOWER)
    wide, least = box.size[0], narrowest([read.front, read.back])
    room = beside(least, wide)
    found = [(
        ("room beside the box", room), ("box, width", wide), ("room at its other side", least - wide - room),
        ("opening where it is narrower", least),
    )]
    part = {board.role: board for board in cabinet.groups[LOWER]}
    if STOCK in opened:
        side, front = part["box side"], part["box front"]
        rabbet = next(joint.depth - joint.end_gap for joint in cabinet.joints if joint.enters == front.name)
        found.append((
            ("box side, thickness", side.thickness), ("rabbet, depth", rabbet), ("box front, length", front.length),
            ("box, width", wide),
        ))
    if DEPTH in opened:
        back = cabinet.by_name["back"].box.low[1]
        what, (start, end) = _runs(cabinet), runs_of(cabinet, LOWER)
        found.append((
            (f"before the {what}", start), (f"{what}, {'length' if what == 'slide' else 'depth'}", end - start),
            (f"room behind the {what}", back - end), ("inside depth", back),
        ))
    return found


def _runs(cabinet: Cabinet) -> str:
    """What must have its room in depth: the slides, or the box where it runs on wood."""
    return "slide" if parts_of(cabinet, LOWER)[1] else "box"


_OTHERS = ("as measured", "sheets", "readings", "diagonals", "joints")
"""Checks of a whole project that say here what the panel says itself, or what it does not ask."""


_BESIDE_THE_BOX = (("outside", "hardware"), ("outside", "side strip"))
"""Which width it holds and what carries the box, where both slides are held on edge in the opening with an offcut."""


def findings(cabinet: Cabinet, row: Slide, opened: Sequence[str]) -> tuple[Finding, ...]:
    """What the dry-fit says of the boxes, then tapers, and what one offcut would do."""
    found: dict[tuple, Finding] = {}
    for each in check(cabinet):
        if each.check in _OTHERS or not any(_is_drawer(cabinet.by_name[name].part_of) for name in each.boards):
            continue
        # Left and right, front and back say the same.
        found.setdefault((each.check, each.level, each.amount), replace(each, text=_told(each.text, cabinet)))
    read = cabinet.project.measured.openings
    for group, one in read.items():
        for each in find_shims(group, one, held_width(cabinet, group, row), row, cabinet.style):
            found[each.check, group] = replace(each, text=_told(each.text, cabinet))
    if STOCK in opened and (row.holds, row.carries) in _BESIDE_THE_BOX:
        found["offcut",] = _offcut(cabinet, row)
    least = [narrowest([one.front, one.back]) for one in read.values()]
    if len(set(least)) > 1:
        found["heights",] = _heights(*least, cabinet.style)
    return tuple(found.values())


def _told(text: str, cabinet: Cabinet) -> str:
    told = short(text, cabinet)
    return f"{told[0].upper()}{told[1:]}"


BESIDE_GROOVE = {"in": INCH // 8, "mm": 3 * MM}
"""What must stay of a box side between the rabbet at its corner and the groove of its runner: common practice, no
source."""


def _offcut(cabinet: Cabinet, row: Slide) -> Finding:
    """One offcut held beside the box width, against the box front as it is.

    A side with a groove for its runner may be too thin for the rabbet by which the offcut would be right.
    """
    part = {board.role: board for board in cabinet.groups[LOWER]}
    style, wide = cabinet.style, box_of(cabinet, LOWER).size[0]
    stock, right = part["box side"].thickness, part["box front"].length
    marked, over = front_by_offcut(wide, stock), offcut_over(stock, share(2 * stock + right - wide, 2, 1)[0])
    half = share(stock, 2, 1)[0]
    text = f"One offcut held in the opening marks a box front of {write_brief(marked, style)}: "
    if abs(over) < style.step // 4:
        text += "that is the right length, for the rabbets are half of the measured thickness."
    else:
        rabbets, left = write_brief(half, style, decimal=True), stock - half - row.groove_depth
        text += f"{true_amount(abs(over), style)} too {'long' if over > 0 else 'short'}. "
        if row.groove_depth and left < BESIDE_GROOVE[style.unit]:
            text += (
                f"Rabbets of {rabbets}, half of the measured thickness, would make it right, but would leave "
                f"{_little(left, style)} beside the groove of the runner: go by the sum."
            )
        else:
            text += f"It would be right with rabbets of {rabbets}, half of the measured thickness."
    return Finding("offcut", "note", (part["box front"].name,), text, over)


def _little(left: int, style: Style) -> str:
    return f"only {write_brief(left, style, decimal=True)}" if left > 0 else "nothing"


def _heights(lower: int, upper: int, style: Style) -> Finding:
    text = (
        f"Drawer 1 goes by {write_brief(lower, style)} and drawer 2 by {write_brief(upper, style)}: each box has the "
        "width of its own height."
    )
    return Finding("heights", "note", (), text, upper - lower)
