"""What a buying list takes for granted, what is measured before buying, and what is not in it, in sentences."""

from collections.abc import Iterable, Iterator

from shoplib.buying.brads import HAND, brads_into, dry_backs
from shoplib.buying.line import Line
from shoplib.buying.maker_named import maker_named
from shoplib.buying.rough import boards_by_sheet
from shoplib.buying.screws import BRAD, unfitted, unscrewed, without_screw
from shoplib.buying.stock_lines import Stocked, not_laid_out
from shoplib.lists.writing import Writing
from shoplib.measure import Style, write_brief, write_length
from shoplib.model.board import FRONTS
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.tables.coverage import butt_screws, coverage, edging_over
from shoplib.words.naming import and_list, boards_in_short, plural


def _used(cabinet: Cabinet, solid: bool = False) -> list[str]:
    """The sheets of the project that boards are cut from, or those of solid wood, which are planed in the shop."""
    own = cabinet.project.sheets if cabinet.project else cabinet.sheets
    cut = boards_by_sheet(cabinet) if cabinet.project else {board.sheet: [board] for board in cabinet.boards}
    return [name for name, boards in cut.items() if boards and (own[name].kind == "solid") == solid]


def _unmeasured(cabinet: Cabinet) -> list[str]:
    """The sheets that no caliper has read."""
    return [name for name in _used(cabinet) if not cabinet.sheets[name].readings]


def _read(sheet: Sheet, style: Style) -> str:
    """From the thinnest reading to the thickest."""
    low, high = (write_brief(ticks, style, decimal=True) for ticks in (sheet.thinnest, sheet.thickest))
    return low if low == high else f"{low.removesuffix(f' {style.unit}')} to {high}"


def measure_first(cabinet: Cabinet, lines: Iterable[Line]) -> tuple[str, ...]:
    """What to read with a caliper, a tape or in a maker's sheet before money is spent."""
    lines, found = tuple(lines), []
    unread = _unmeasured(cabinet)
    if unread:
        found.append(
            f"The thickness of {and_list(unread)}: take a caliper to the yard, write the readings into the project and "
            "plan again before you cut; sizes follow them."
        )
    read = [name for name in _used(cabinet) if cabinet.sheets[name].readings]
    if read:
        rests = "; ".join(f"{name} {_read(cabinet.sheets[name], cabinet.style)}" for name in read)
        found.append(
            f"Each sheet that you buy: put a caliper on it, for the plan rests on what was read so far ({rests}). If "
            "it reads otherwise, write that into the project and plan again."
        )
    solid = _used(cabinet, solid=True)
    if solid:
        found.append(
            f"The boards of {and_list(solid)}: no two are alike. Measure those that you bring home, write them under "
            "on_hand in the project, and lay out again before you cut."
        )
    by_wait: dict[str, list[str]] = {}
    for line in lines:
        if line.waits:
            by_wait.setdefault(line.waits, []).append(line.item)
    found += [f"For {'; '.join(items)}: {waits}." for waits, items in by_wait.items()]
    kinds = {line.kind for line in lines}
    if "slide" in kinds:
        found.append(
            "The slides: lay the maker's sheet beside the plan, for the room that they take at each side, for their "
            "length, and for what they carry."
        )
    if "pull" in kinds:
        found.append("The pulls: the distance of their holes, and the thread and depth of their screws.")
    standing = _standing(kinds)
    if standing:
        what = and_list(standing)
        found.append(f"The {what}: their height as mounted, for the case is planned with it; and what they carry.")
    return tuple(found)


def _standing(kinds: Iterable[str]) -> list[str]:
    return [{"foot": "feet"}.get(kind, plural(kind)) for kind in ("caster", "foot") if kind in set(kinds)]


def assumed(cabinet: Cabinet, lines: Iterable[Line]) -> tuple[str, ...]:
    """What the counts rest on besides the plan."""
    return tuple(_assumed(cabinet, tuple(lines)))


def _assumed(cabinet: Cabinet, lines: tuple[Line, ...]) -> Iterator[str]:
    style, kinds = cabinet.style, {line.kind for line in lines}
    for name in _unmeasured(cabinet):
        thick = write_length(cabinet.sheets[name].nominal, style)
        yield f"{name} is as thick as its name says, {thick}: nobody has measured it."
    for name in _used(cabinet, solid=True):
        yield f"{name} is planed to {Writing(style).setting(cabinet.sheets[name].thickness)} in the shop."
    for row in dict.fromkeys(fitting.row for fitting in cabinet.hardware if fitting.what == "slide"):
        yield f"{row}: {cabinet.slides[row].source}."
    if "screw" in kinds:
        yield "The lengths that screws are sold in, and their heads, are common practice, no source."
    if brads_into(cabinet):
        yield (
            f"The back is nailed with brads: one for every {write_length(HAND[style.unit], style)} of each edge that "
            "it lies on (common practice, no source)."
        )
    if any(line.estimate and not line.item.startswith(BRAD) for line in lines):
        rule = butt_screws(style.unit)
        yield (
            f"Screws that the plan does not count (butted boards, solid backs) are estimated: one for every "
            f"{write_length(rule.every, style)} at which two boards meet, {rule.least} at least ({rule.mark})."
        )
    if "edging" in kinds:
        yield (
            f"Each piece of edging is {write_length(edging_over(style.unit), style)} longer at each end than its edge, "
            "to be trimmed flush; where a roll ends within a piece, a little more is lost."
        )
    if "glue" in kinds:
        yield (
            f"A litre of glue goes over {coverage('glue').square_metres} m2 of one face ({coverage('glue').mark}). "
            "What stands in a groove floats without glue; what is let into a dado or rabbet is glued, "
            "without nails but for a back."
            f"{' A back of solid wood is screwed, without glue.' if dry_backs(cabinet) else ''}"
        )
    if "finish" in kinds:
        finish = coverage("finish")
        yield f"A litre of finish covers {finish.square_metres} m2 in one coat; {finish.coats} coats ({finish.mark})."


def not_counted(cabinet: Cabinet, stock: Iterable[Stocked]) -> tuple[str, ...]:
    """What this case needs and the list does not hold."""
    return tuple(_not_counted(cabinet, tuple(stock)))


def _not_counted(cabinet: Cabinet, stock: tuple[Stocked, ...]) -> Iterator[str]:
    missing = not_laid_out(cabinet, stock)
    if missing:
        yield f"Sheets and boards of {and_list(missing)}: they were not laid out."
    yield from without_screw(cabinet)
    for meeting in unfitted(cabinet):
        pair = f"{meeting.passed.name} to {meeting.into.name}"
        yield f"Screws that hold {pair}: no length of the table will do; nails, or screws of your choice."
    loose = unscrewed(cabinet)
    if loose:
        names = boards_in_short([one for one, _ in loose])
        yield f"What holds {names} where edge stands on edge: glue blocks or dowels of your choice."
    yield from maker_named(cabinet)
    if any(board.role == "box side" for board in cabinet.boards) and any(
        cabinet.slides[choice].carries != "hardware" for choice in _slides(cabinet)
    ):
        yield "Stops for the drawers that run on wood, and wax for their runners."
    fronts = any(board.stage == FRONTS for board in cabinet.boards)
    tape = ", double-sided tape to press the fronts on with" if fronts else ""
    yield f"Sandpaper, brushes, rags, masking tape{tape}."


def _slides(cabinet: Cabinet) -> list[str]:
    bays = cabinet.project.bays if cabinet.project else ()
    return [bay.drawers.slide for bay in bays if bay.kind == "drawers" and bay.drawers]
