"""The drawers on paper: drawn in their openings, their sizes, and how a box comes from its opening as built."""

from collections.abc import Iterable, Iterator, Sequence

from shoplib.building.drawer_sizes import (
    DrawerSizes,
    WidthSum,
    bays_alike,
    one_of_each,
    rule_and_slide,
    sizes_of,
    width_sum,
)
from shoplib.documents.fitted import Room, fitted
from shoplib.documents.paper import Paper
from shoplib.draw.board_drawing import size_words
from shoplib.draw.chains import unit_note
from shoplib.draw.drawer_across import drawer_across
from shoplib.draw.drawer_plan import drawer_plan
from shoplib.draw.scene import Scene
from shoplib.draw.section import section_plan, section_side
from shoplib.lists.cut_list import kinds
from shoplib.lists.writing import Writing
from shoplib.measure import read_length, shows_rest, to_step
from shoplib.model.board import BOXES
from shoplib.model.box import Point
from shoplib.model.drawer_fit import limits
from shoplib.model.solved import Cabinet, Finding
from shoplib.printed.told.framed_findings import framed_on
from shoplib.printed.told.readings import measuring_step, readings
from shoplib.printed.typeset.blocks import Block, Heading, Table, Together, Words, wide_by
from shoplib.printed.typeset.pictures import picture
from shoplib.tables.slides import Slide
from shoplib.words.naming import and_list, boards_in_short, capital, in_short

HEADING = "Drawers"
SIZES = (
    "drawer", "opening", "free at each side", "box outside", "box inside", "lower edge above the bottom of the case",
)
"""What the table of sizes is headed by."""
_SIZES_SAID = "Boxes are width × depth × height. An opening is as planned where it is not said to be read."
_ROUND = 52.0
"""What the headings and the words of two drawings on a page take, in mm."""

CUT_BEFORE = ", by the first reading, to which it was cut"
"""Of a box whose opening was read again when it was in."""

Bays = list[tuple[int, list[str]]]
"""Bays whose drawers are alike, each with its drawers from the bottom up."""


def drawer_pages(cabinet: Cabinet, findings: Iterable[Finding], paper: Paper) -> list[Block]:
    """One entry for all bays whose drawers are alike; nothing where there are none.

    >>> from shoplib.documents.paper import PAPERS
    >>> drawer_pages(Cabinet("no drawers", (), {}), (), PAPERS["a4"])
    []
    """
    findings = tuple(findings)
    blocks = [block for bays in bays_alike(cabinet) for block in _entry(cabinet, bays, findings, paper.room())]
    return [Heading(HEADING), Words(unit_note(cabinet.style)), *blocks] if blocks else []


def _entry(cabinet: Cabinet, bays: Bays, findings: tuple[Finding, ...], room: Room) -> Iterator[Block]:
    groups = [group for _, column in bays for group in column]
    yield Heading(capital(and_list(in_short(groups))), 2)
    yield from framed_on((board.name for group in groups for board in cabinet.groups[group]), cabinet, findings)
    yield from _pictures(_scenes(cabinet, *bays[0]), room, cabinet.style.unit)
    yield _sizes(cabinet, bays)
    yield _runs_on(cabinet, groups[0])
    yield _parts(cabinet, groups)
    yield _correcting(cabinet, groups)


def _pictures(scenes: list[tuple[str, Scene]], room: Room, unit: str) -> Iterator[Block]:
    """The first two share a page: each gets what the other leaves of it."""
    (_, first), (_, second), *_ = scenes
    both = room[1] - _ROUND
    high = both - fitted(second, (room[0], both / 2), unit).height
    rooms = [high, both - fitted(first, (room[0], high), unit).height]
    for number, (title, scene) in enumerate(scenes):
        yield picture(scene, (room[0], rooms[min(number, 1)]), unit, title, 3)


def _scenes(cabinet: Cabinet, bay: int, groups: list[str]) -> list[tuple[str, Scene]]:
    """Cut across and from above; the sections of the whole where a case is open, or boxes stand side by side."""
    style, (rule, slide) = cabinet.style, rule_and_slide(cabinet, groups[0])
    side_by_side = rule.across > 1
    across = f"Bay {bay} from the front, cut open"
    if side_by_side or not {"top", "bottom"} <= set(cabinet.by_name):
        found = [(f"Bay {bay} from the side, cut open", section_side(cabinet, style, bay))]
    else:
        found = [(across, drawer_across(cabinet, style, bay))]
    for group in one_of_each(cabinet, groups[:1] if side_by_side else groups):
        title = f"{capital(group)} from above, cut open"
        if side_by_side or not {"left side", "back"} <= set(cabinet.by_name):
            box = cabinet.by_name[f"{group} left box side"].box
            found.append((title, section_plan(cabinet, style, to_step((box.low[2] + box.high[2]) // 2, style.step))))
        else:
            found.append((title, drawer_plan(cabinet, style, group, slide)))
    return found


def _sizes(cabinet: Cabinet, bays: Bays) -> Block:
    """One row for each drawer of a bay."""
    page, rows = Writing(cabinet.style, units=False), []
    for place, group in enumerate(bays[0][1]):
        sizes = sizes_of(cabinet, group)
        alike = and_list(in_short(groups[place] for _, groups in bays))
        rows.append((alike, _opening(sizes, page), page.length(sizes.room), _three(sizes.outside, page),
                     _three(sizes.inside, page), page.length(sizes.above_floor)))
    last = len(SIZES) - 1  # its head is longer than its cells
    wide = (*wide_by(rows, range(len(SIZES))), last)
    return Together((Heading("Sizes", 3), Words(_SIZES_SAID), Table(SIZES, tuple(rows), wide)))


def plain(ticks: int, page: Writing) -> str:
    """A length to reckon with: as the rule has it, or where that is off, the decimal.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> [plain(INCH // 2 + more, Writing(INCH_STYLE)) for more in (508, 8 * 2032)]
    ['1/2 in', '0.508 in']
    """
    return page.measured(ticks) if shows_rest(ticks, page.style) else page.length(ticks)


def _opening(sizes: DrawerSizes, page: Writing) -> str:
    if not sizes.measured:
        return page.length(sizes.opening.front)
    return f"read: front {page.length(sizes.opening.front)}, back {page.length(sizes.opening.back)}"


def _three(size: Point, page: Writing) -> str:
    return " × ".join(map(page.length, size))


def _runs_on(cabinet: Cabinet, group: str) -> Block:
    """What the slide asks for round the box."""
    page, (_, slide) = Writing(cabinet.style), rule_and_slide(cabinet, group)
    asked = [(slide.side, f"at each side{' of the inside of the box' if slide.holds == 'inside' else ''}"),
             (slide.below, "below"), (slide.above, "above"), (slide.rear_room, "behind")]
    told = and_list([f"{plain(ticks, page)} {where}" for ticks, where in asked if ticks])
    begins = f" It begins {plain(slide.setback, page)} behind the front." if slide.setback else ""
    sheet = " What the maker's sheet of your slide says goes before this." if slide.carries == "hardware" else ""
    return Words(f"Slide or runner: {slide.name}. It asks for {told or 'no room'}.{begins}{sheet}")


def _parts(cabinet: Cabinet, groups: Sequence[str]) -> Block:
    """The boards of these drawers as the cut list has them."""
    page, rows = Writing(cabinet.style, units=False), []
    for kind in kinds(cabinet):
        boards = [board for board in kind.boards if board.group in groups]
        if boards:
            rows.append((str(len(boards)), boards_in_short(boards), size_words(kind.cut, page), kind.sheet))
    return Together((Heading("Parts", 3), Table(
        ("count", "board", "length × width × thickness at the saw", "sheet"), tuple(rows), wide_by(rows, (1, 3)),
    )))


def _correcting(cabinet: Cabinet, groups: Sequence[str]) -> Block:
    """The sum from the opening as built to the box, in one sentence and in the numbers of this project."""
    page, sizes = Writing(cabinet.style), sizes_of(cabinet, groups[0])
    rule, slide = rule_and_slide(cabinet, groups[0])
    shared = f"share it by {rule.across}, " if rule.across > 1 else ""
    more = f", add 2 × {page.measured(sizes.stock)} for the box sides" if slide.holds == "inside" else ""
    if sizes.front_less == sizes.back_less:
        ends = f"box front and box back are {_less(sizes.front_less, page)}"
    else:
        ends = f"the box front is {_less(sizes.front_less, page)}, the box back {_less(sizes.back_less, page)}"
    said = (
        f"Take the smaller reading of the opening, {shared}take off 2 × {plain(slide.side, page)}{more}, and go down "
        f"to the next {page.length(cabinet.project.step)}: so wide is the box outside; {ends}, the box bottom "
        f"{_less(sizes.bottom_less, page)}."
    )
    numbers = tuple(Words(line) for line in _numbers(cabinet, groups, page))
    read = (Words(f"Each opening and each depth is read, and written down, in {measuring_step(BOXES, cabinet)}.", True),
            ) if readings(BOXES, cabinet) else ()
    return Together((Heading("From the opening as built to the box", 3), *read, Words(said), *numbers,
                     Words(_taper(slide, page))))


def _numbers(cabinet: Cabinet, groups: Sequence[str], page: Writing) -> list[str]:
    """The sum of each width that there is among the drawers, once."""
    told: dict[str, list[str]] = {}
    for group in groups:
        found = width_sum(cabinet, group)
        if found is None:
            wide = plain(sizes_of(cabinet, group).outside[0], page)
            told.setdefault(f"the box is {wide} wide, as its finished parts were measured", []).append(group)
            continue
        text = _sum(found, page) + (CUT_BEFORE if found.read_since else "")
        told.setdefault(text, []).append(group)
    return [f"{capital(and_list(in_short(several)))}: {text}." for text, several in told.items()]


def _less(ticks: int, page: Writing) -> str:
    return f"{plain(ticks, page)} shorter" if ticks else "just as long"


def _sum(found: WidthSum, page: Writing) -> str:
    """The sum of one width. Where what is written would not close, since rests are left out, all is decimal."""
    for write in (plain, lambda ticks, page: page.measured(ticks)):
        least, taken, stock, exact = (write(ticks, page) for ticks in (
            found.least, found.taken, found.stock, found.exact))
        added = 2 * read_length(stock) if found.stock else 0
        if read_length(exact) == read_length(least) - 2 * read_length(taken) + added:
            break
    more = f" + 2 × {stock}" if found.stock else ""
    width = plain(found.width, page)
    down = "" if read_length(exact) == found.width else f", down to {width}"
    return f"{least} - 2 × {taken}{more} = {exact}{down}"


def _taper(slide: Slide, page: Writing) -> str:
    """What is done where the two readings differ."""
    forgiven, shimmed = (plain(ticks, page) for ticks in limits(slide))
    if slide.carries == "shelf":
        return "Where the two readings differ, the box may be loose at the wider end: it rides on its shelf."
    what = ("glue guide strips to the case at the wider end" if slide.carries == "strip below"
            else f"shim behind each {'slide' if slide.carries == 'hardware' else 'runner'} at the wider end")
    return (f"The two readings may differ by {forgiven}; up to {shimmed}, {what}; beyond that, straighten the case "
            "first (common practice, no source).")
