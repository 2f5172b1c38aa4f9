"""The cover of the plan set with its key sizes, how the set is read, and what is in it."""

from collections.abc import Iterator, Sequence

from shoplib.buying.thickness import thick_words
from shoplib.documents.cut_list_file import sizes_words
from shoplib.documents.fitted import LINE, Room
from shoplib.documents.glossary import BENCH_WORDS, TOOL_WORDS, WORDS, words_of
from shoplib.documents.paper import Paper
from shoplib.documents.standing import standing_words
from shoplib.documents.to_measure import to_measure_text
from shoplib.draw.lettering import text_width, wrapped
from shoplib.lists.writing import Writing
from shoplib.measure import narrowest
from shoplib.model.board import BOX_WALLS
from shoplib.model.box import Point, around
from shoplib.model.part_of import bay_name
from shoplib.model.solved import Cabinet
from shoplib.model.uprights import bays
from shoplib.printed.plan.whole_pages import IN_FILES, exploded_picture
from shoplib.printed.told.readings import NEW_PAGES, OLD_PAGES, WHAT_IT_LEFT
from shoplib.printed.typeset.blocks import Beside, Block, Bullets, Contents, Heading, NewPage, Picture, Table, Words
from shoplib.words.naming import and_list, in_short, plural

READING = "How to read this plan set"

SIZE_HEAD = ("size", "wide", "deep", "high")
SHEET_HEAD = ("sheet, by name", "mean", "thickest")
"""The columns of the two tables."""


_ROW, _LINE, _LETTERS = 5.4, 3.5, 7.5 * 25.4 / 72
"""Height of a row of a table in mm, one line high, of each line more, and of its letters."""

_APART, _SHARES, _INSET = 6.0, (5, 4), 2.6
"""Between the two tables, how they share the width of the page, and what a cell leaves beside its words, in mm."""

_WIDE = (0, 0, 0, 1, 1, 2, 2, 3, 3)
"""How the columns of the key sizes share their table where sizes with long rests would squeeze the names."""

_LEAST = 100.0
"""A picture that would get less of the height of the cover, its words included, goes on a page of its own, in mm."""

_HEADINGS = 32.0
"""What the headings and the heads of the tables take of the cover, in mm."""

_READINGS = "Sums use the mean of the readings; a cut that takes the sheet uses the thickest."

_MOVED = "The boxes are of {} sizes, each in the tables of sizes under Drawers."

_IN_ITS_FILE = f"A page has no room for the exploded view with all its names. {IN_FILES}"

_HOW = (
    "Every page carries the fingerprint of the plan at its top. Two fingerprints are two versions of the plan. Print "
    f"anew after every change. {OLD_PAGES}",
    "The search ends by the clock: it may find other layouts, and then the fingerprint is another. Keep to one set.",
    "The parts follow the work: what to mind, what to cut from what, each board with its cuts, what goes on it, and "
    "how it all goes together. Tick each square at the bench.",
    "A box with a dashed frame is to be filled in at the case as built. What comes after it waits for what you write "
    "there.",
    "Work to the written sizes and do not measure from the paper. Only the sheets of templates and the story stick are "
    "in true scale, and each of them has a bar to measure first.",
    "Left, right, front and back are as you look at the finished case from its front. Bays count from the left, "
    "drawers from the bottom.",
)


def cover_pages(cabinet: Cabinet, paper: Paper) -> list[Block]:
    """One page: the cabinet drawn apart, and under it its key sizes and its sheets as they were measured.

    Sizes of boxes that would take the room of the picture are left to the part about the drawers; where that is not
    enough, the picture has a page of its own.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.documents.paper import PAPERS
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> [type(block).__name__ for block in cover_pages(cabinet, PAPERS["a4"])]
    ['Heading', 'Picture', 'Beside']
    """
    boxes, sheets = tuple(box_sizes(cabinet)), tuple(_sheets(cabinet))
    sizes, moved = (*key_sizes(cabinet), *boxes), ()
    width, height = paper.room()
    stands = standing_words(cabinet)
    free = height - _HEADINGS - 4 * LINE * len(stands)
    if free - _rows_high(sizes, width) < _LEAST and boxes:
        sizes, moved = tuple(key_sizes(cabinet)), (Words(_MOVED.format(len(boxes))),)
        free -= 4 * LINE
    tables = (
        Beside((
            (Heading("Key sizes", 2), Table(SIZE_HEAD, sizes, _columns(sizes, width)[0]), *moved),
            (Heading("Sheets as measured", 2), Table(SHEET_HEAD, sheets, (0,)), Words(_READINGS)),
        ), _SHARES),
        *(Words(text) for text in stands),
    )
    left = free - max(_rows_high(sizes, width), _ROW * (len(sheets) + 2))
    if left >= _LEAST and (shown := _drawn_in(cabinet, (width, left))):
        return [Heading(cabinet.name), shown, *tables]
    shown = _drawn_in(cabinet, (width, height))
    return [Heading(cabinet.name), *tables, *((NewPage(), shown) if shown else (Words(_IN_ITS_FILE),))]


def _columns(sizes: Sequence[tuple[str, ...]], width: float) -> tuple[tuple[int, ...], tuple[float, ...]]:
    """Which columns of the key sizes share the room of a page so wide, and what each then gets, in mm.

    Sizes stand in one line where a third of the table and more is left to the names.
    """
    whole = (width - _APART) * _SHARES[0] / sum(_SHARES)
    own = [max(text_width(row[column], _LETTERS) for row in sizes) + _INSET for column in range(1, len(SIZE_HEAD))]
    if whole - sum(own) >= whole / 3:
        return (0,), (whole - sum(own), *own)
    return _WIDE, tuple(whole * _WIDE.count(column) / len(_WIDE) for column in range(len(SIZE_HEAD)))


def _rows_high(sizes: Sequence[tuple[str, ...]], width: float) -> float:
    """What the rows of the key sizes take of a page so wide, in mm."""
    _, rooms = _columns(sizes, width)
    lines = [max(len(wrapped(cell, _LETTERS, room - _INSET)) for cell, room in zip(row, rooms, strict=True))
             for row in sizes]
    return sum(_ROW + (count - 1) * _LINE for count in lines)


def _drawn_in(cabinet: Cabinet, room: Room) -> Picture | None:
    """The cabinet drawn apart; None where that is too little room."""
    try:
        return exploded_picture(cabinet, room)
    except ValueError:
        return None


def key_sizes(cabinet: Cabinet) -> Iterator[tuple[str, str, str, str]]:
    """What the cabinet takes outside, the space it is to fit and its bays, each told once.

    A bay is as wide as its clear opening.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> next(key_sizes(cabinet))
    ('outside, closed', '400 mm', '430 mm', '280 mm')
    """
    write = Writing(cabinet.style).length
    yield "outside, closed", *map(write, cabinet.outside.size)
    if cabinet.envelope.size != cabinet.outside.size:
        yield f"with {_stands_out(cabinet)}", *map(write, cabinet.envelope.size)
    if space := cabinet.project.space if cabinet.project else None:
        yield "space, smallest readings", *map(write, map(narrowest, (space.width, space.depth, space.height)))
        free = (space.clearance_width, space.clearance_depth, space.clearance_height)
        if any(free):
            yield "of it to stay free", *(write(ticks) if ticks else "" for ticks in free)
    alike: dict[int, list[str]] = {}
    for number, (left, right) in enumerate(bays(cabinet), 1):
        alike.setdefault(right - left, []).append(bay_name(number))
    yield from ((f"{and_list(in_short(names))}, inside", write(ticks), "", "") for ticks, names in alike.items())


def box_sizes(cabinet: Cabinet) -> Iterator[tuple[str, str, str, str]]:
    """The drawer boxes, measured outside from wall to wall, each size told once.

    >>> from shoplib.documents.examples import cabinet_from
    >>> next(box_sizes(cabinet_from("finger_jointed_drawers")))
    ('box of bay 1 drawers 1 and 2', '339 mm', '350 mm', '100 mm')
    """
    write = Writing(cabinet.style).length
    boxes: dict[Point, list[str]] = {}
    for group, boards in cabinet.groups.items():
        if walls := [board.box for board in boards if board.role in BOX_WALLS]:
            boxes.setdefault(around(walls).size, []).append(group)
    yield from ((f"box of {and_list(in_short(groups))}", *map(write, size)) for size, groups in boxes.items())


def _stands_out(cabinet: Cabinet) -> str:
    """The fittings that reach out of the boards: "casters and pulls"."""
    low, high = cabinet.outside.low, cabinet.outside.high
    names = dict.fromkeys(
        plural(fitting.what) if fitting.what != "foot" else "feet" for fitting in cabinet.hardware
        if any(fitting.box.low[k] < low[k] or fitting.box.high[k] > high[k] for k in range(3))
    )
    return and_list(list(names))


def _sheets(cabinet: Cabinet) -> Iterator[tuple[str, ...]]:
    """The sheets that boards are cut from: sums use the mean reading, cuts that take the sheet the thickest one."""
    write = Writing(cabinet.style)
    used = {board.sheet for board in cabinet.boards}
    for sheet in (sheet for name, sheet in cabinet.sheets.items() if name in used):
        called = f"{sheet.name}: {sheet.species or sheet.kind}, {thick_words(sheet.nominal, cabinet.style)}"
        if sheet.readings:
            yield called, write.measured(sheet.thickness), write.measured(sheet.thickest)
        else:
            yield called, "not measured yet", ""


def reading_pages(cabinet: Cabinet, text: str) -> list[Block]:
    """How the set is read, what is in it, and the words that may be new in its `text`.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> [word for word, _ in reading_pages(cabinet, "A rabbet along the kerf.")[-1].rows]
    ['kerf', 'near wall', 'rabbet', 'story stick']
    """
    how = (*_HOW, *([WHAT_IT_LEFT, NEW_PAGES] if to_measure_text(cabinet) else []), sizes_words(cabinet))
    words = words_of("\n".join((*how, text)), {**WORDS, **TOOL_WORDS, **BENCH_WORDS})
    return [
        Heading(READING),
        Bullets(how),
        Heading("Contents", 2),
        Contents(),
        Heading("Words", 2),
        Table(("word", "meaning"), tuple(sorted(words)), (1,)),
    ]
