"""Slides and runners need their room: what the box leaves beside and behind it, against what they take and forgive."""

from shoplib.checks.as_built import AsBuilt
from shoplib.measure import thickest, write_brief
from shoplib.model.board import BOX_WALLS, BOXES
from shoplib.model.box import Box, around
from shoplib.model.drawer_fit import limits
from shoplib.model.solved import Cabinet, Finding
from shoplib.tables.slides import Slide
from shoplib.words.amounts import at_least, setting, true_amount


def find_wrong_slide_room(cabinet: Cabinet) -> tuple[Finding, ...]:
    """Each drawer whose box leaves its slides or runners another room than their row asks for.

    The room is the opening between the uprights, where it was measured as measured, less the outside width
    of the box; the row asks for twice its `side`, forgives `narrow` more (a box up to twice that is shimmed)
    and `wide` less. The amount is by how much the room is off. Undermount slides hold the inside and are not
    judged here, nor are boxes that stand side by side.
    """
    found, built = [], AsBuilt(cabinet)
    for group, boards in cabinet.groups.items():
        row = _row(cabinet, group)
        sides = [board.box for board in boards if board.role == "box side"]
        opening = built.clear_width(group)
        if row is not None and row.holds == "outside" and len(sides) == 2 and opening is not None:
            found += _judge(cabinet, group, row, opening, around(sides))
    return tuple(found)


def find_too_little_behind(cabinet: Cabinet) -> tuple[Finding, ...]:
    """Each drawer and pull-out that leaves less free behind it than its row asks for.

    Counted from the rear end of a bought slide, which begins `setback` behind the front and so reaches past the box,
    or from that of a box on wood, to what stands behind: the nearest of back and rails, or the depth as measured.
    The solver chooses no slide so long; a person does, who made the box or bought the slides by another number.
    The amount is what is missing.
    """
    found, built = [], AsBuilt(cabinet)
    for group, boards in cabinet.groups.items():
        row, behind = _row(cabinet, group), built.behind(group)
        moves = [board.box for board in boards if board.role in ("box side", "panel")]
        if row is None or behind is None or not moves:
            continue
        bought = [piece.box for piece in cabinet.hardware if piece.what == "slide" and piece.group == group]
        ends = [thickest([box.high[1] for box in boxes] or [0]) for boxes in (bought, moves)]
        end = thickest(ends)
        missing = row.rear_room - (behind - end)
        if missing > 0:
            what = "slides" if ends[0] == end else "box"
            found.append(_too_long(cabinet, group, row, behind - end, missing, what))
    return tuple(found)


def find_box_of_other_length(cabinet: Cabinet) -> tuple[Finding, ...]:
    """Each drawer whose box is not as long as the bought slides that are screwed to it. The amount is by how much."""
    found, style = [], cabinet.style
    for group, boards in cabinet.groups.items():
        sides = [board for board in boards if board.role == "box side"]
        slides = [piece.box for piece in cabinet.hardware if piece.what == "slide" and piece.group == group]
        if not sides or not slides:
            continue
        long = slides[0].size[1]
        box = around([board.box for board in boards if board.role in BOX_WALLS])
        off = box.size[1] - long
        if off:
            than = f"{true_amount(abs(off), style)} {'longer' if off > 0 else 'shorter'} than its slides"
            text = f"{group}: the box is {than}, which are {write_brief(long, style)} long. Make it as long."
            found.append(Finding("slide room", "warn", tuple(board.name for board in sides), text, abs(off)))
    return tuple(found)


def _too_long(cabinet: Cabinet, group: str, row: Slide, free: int, missing: int, what: str) -> Finding:
    """A stop where the drawer meets what stands behind it, else a warning."""
    style = cabinet.style
    asked, over = write_brief(row.rear_room, style), at_least(missing, style)
    is_left = f"only {write_brief(free, style)} is free behind" if free > 0 else "nothing is free behind"
    whose = "its slides" if what == "slides" else "its box"
    mend = "Take the next shorter slides, with a box as long" if what == "slides" else f"Make the box shorter by {over}"
    text = (
        f"{group}: {is_left} {whose}, and {asked} must stay free: {over} too long. {mend}, or clear what stands there."
    )
    sides = tuple(board.name for board in cabinet.groups[group] if board.role in ("box side", "panel"))
    return Finding("slide room", "warn" if free > 0 else "stop", sides, text, missing)


def _row(cabinet: Cabinet, group: str) -> Slide | None:
    """The row of what a drawer runs on: that of its bought slides, else the one that its bay names."""
    bought = next((piece.row for piece in cabinet.hardware if piece.what == "slide" and piece.group == group), None)
    part = cabinet.part_of(group)
    if bought is not None or cabinet.project is None or part is None:
        return cabinet.slides[bought] if bought else None
    rule = cabinet.project.bays[part.bay - 1].drawers
    return cabinet.slides[rule.slide] if rule else None


_WORDS = {  # what the row asks for, and what helps where the box is a little narrow
    "hardware": ("its slides take {} for the pair", "Shim the slides out from the case"),
    "side strip": ("its runners leave {} beside it in all", "Shim the runners out from the case"),
    "strip below": ("{} beside it in all is right", "Glue a strip to the outside of a box side"),
    "shelf": ("{} beside it in all is right", "Glue a strip to the outside of a box side"),
}


def _judge(cabinet: Cabinet, group: str, row: Slide, opening: int, box: Box) -> list[Finding]:
    wanted = 2 * row.side
    over = opening - box.size[0] - wanted
    if -row.wide <= over <= row.narrow:
        return []
    asks, shim = _WORDS[row.carries]
    asks = asks.format(setting(wanted, cabinet.style))
    if over > 0:
        level = "warn" if over <= limits(row)[1] else "stop"
        text = f"{group}: the box is {write_brief(over, cabinet.style)} too narrow, {asks}. "
        mend = f"{shim}." if level == "warn" else "Make the box again, that much wider."
    else:
        level = "stop"
        text = f"{group}: the box is {true_amount(-over, cabinet.style)} too wide, {asks}. "
        cut = cabinet.first_stage > BOXES  # what is glued up can only be planed
        how = "Plane it off both box sides, half off each, or make the box again" if cut else "Make the box"
        mend = f"{how} that much narrower; nothing forgives a box that is too wide."
    names = tuple(board.name for board in cabinet.groups[group] if board.role == "box side")
    return [Finding("slide room", level, names, text + mend, abs(over))]
