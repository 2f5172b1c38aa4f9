"""The cover of the plan set with its key sizes, how the set is read, and what is in it."""

from collections.abc import Iterator

from shoplib.buying.thickness import thick_words
from shoplib.documents.cut_list_file import sizes_words
from shoplib.documents.fitted import LINE
from shoplib.documents.glossary import TOOL_WORDS, WORDS, words_of
from shoplib.documents.standing import standing_words
from shoplib.draw.elevation import front_elevation
from shoplib.lists.writing import Writing
from shoplib.measure import narrowest
from shoplib.model.box import Box, around
from shoplib.model.solved import Cabinet
from shoplib.printed.blocks import Block, Bullets, Contents, Heading, Table, Words
from shoplib.printed.paper import Paper
from shoplib.printed.pictures import picture
from shoplib.words.naming import and_list, in_short

READING = "How to read this plan set"

SHEET_HEAD = ("sheet", "made of", "by name", "mean, for sums", "thickest, for cuts that take it", "measured at")
"""Of the sheets as they were measured."""

_WALLS = ("box side", "box front", "box back")

_ROW = 5.4
"""Height of a row of a table in mm, one line high."""

_HEADINGS = 46.0
"""What the headings, the note of the picture and the heads of the tables take of the cover, in mm."""

_HOW = (
    "Every page carries the fingerprint of the plan at its top. Two fingerprints are two versions of the plan: never "
    "mix their pages. Print anew after every change, and throw the old set away.",
    "The parts follow the work: what to mind, what to cut from what, each board with its cuts, what goes on it, and "
    "how it all goes together. Tick each square at the bench.",
    "A box with a dashed frame is to be filled in at the case as built. What comes after it waits for what you write "
    "there.",
    "Work to the written sizes and do not measure from the paper. Only the sheets of templates and the story stick are "
    "in true scale, and each of them has a bar to measure first.",
    "Left, right, front and back are as you look at the finished case from its front. Bays are counted from the left, "
    "drawers from the bottom.",
)


def cover_pages(cabinet: Cabinet, paper: Paper) -> list[Block]:
    """One page: the cabinet drawn, and under it its key sizes and its sheets as they were measured."""
    sizes, sheets = tuple(key_sizes(cabinet)), tuple(_sheets(cabinet))
    width, height = paper.room()
    stands = standing_words(cabinet)
    left = height - _HEADINGS - _ROW * (len(sizes) + len(sheets)) - 3 * LINE * len(stands)
    return [
        Heading(cabinet.name),
        picture(front_elevation(cabinet, cabinet.style), (width, max(left, 60.0)), cabinet.style.unit),
        Heading("Key sizes", 2),
        Table(("what", "size"), sizes, (1,)),
        *(Words(text) for text in stands),
        Heading("Sheets as measured", 2),
        Table(SHEET_HEAD, sheets, (0,)),
    ]


def key_sizes(cabinet: Cabinet) -> Iterator[tuple[str, str]]:
    """What the cabinet takes outside, the space it is to fit, its bays, its drawer boxes and its fronts.

    A bay is as wide as its clear opening; a drawer box as it is outside.
    """
    write = Writing(cabinet.style)
    yield "outside, closed, boards alone", _three(cabinet.outside, write)
    if cabinet.envelope.size != cabinet.outside.size:
        yield "with all that stands out or under it", _three(cabinet.envelope, write)
    yield from _space(cabinet, write)
    bays: dict[str, list[str]] = {}
    for what, ticks in cabinet.sums[0].terms if cabinet.sums else ():
        if what.startswith("bay "):
            bays.setdefault(f"{write.length(ticks)} wide inside", []).append(what)
    yield from ((and_list(in_short(names)), size) for size, names in bays.items())
    boxes: dict[str, list[str]] = {}
    for group, boards in cabinet.groups.items():
        walls = [board.box for board in boards if board.role in _WALLS]
        if walls:
            boxes.setdefault(_three(around(walls), write), []).append(group)
    yield from ((f"box of {and_list(in_short(groups))}", size) for size, groups in boxes.items())
    yield "boards", str(len(cabinet.boards))


def _space(cabinet: Cabinet, write: Writing) -> Iterator[tuple[str, str]]:
    """The space by its smallest readings, and what is to stay free in it."""
    space = cabinet.project.space if cabinet.project else None
    if space is None:
        return
    room = Box((0, 0, 0), (narrowest(space.width), narrowest(space.depth), narrowest(space.height)))
    yield "space it fits, smallest readings", _three(room, write)
    free = {"of its width": space.clearance_width, "of its depth": space.clearance_depth,
            "of its height": space.clearance_height}
    if any(free.values()):
        yield "to stay free", ", ".join(f"{write.length(ticks)} {what}" for what, ticks in free.items() if ticks)


def _three(box: Box, write: Writing) -> str:
    width, depth, height = (write.length(ticks) for ticks in box.size)
    return f"{width} wide, {depth} deep, {height} high"


def _sheets(cabinet: Cabinet) -> Iterator[tuple[str, ...]]:
    """The sheets that boards are cut from: sums use the mean reading, cuts that take the sheet the thickest one."""
    write = Writing(cabinet.style)
    used = dict.fromkeys(board.sheet for board in cabinet.boards)
    for sheet in (cabinet.sheets[name] for name in cabinet.sheets if name in used):
        count = len(sheet.readings)
        yield (
            sheet.name,
            sheet.species or sheet.kind,
            thick_words(sheet.nominal, cabinet.style),
            write.measured(sheet.thickness),
            write.measured(sheet.thickest),
            f"{count} place{'s' * (count != 1)}" if count else "not measured yet",
        )


def reading_pages(cabinet: Cabinet, text: str, paper: Paper) -> list[Block]:
    """How the set is read, the words that may be new in its `text`, and what is in the set."""
    words = words_of(text, {**WORDS, **TOOL_WORDS})
    return [
        Heading(READING),
        Bullets((*_HOW, sizes_words(cabinet))),
        Heading("Words", 2),
        Table(("word", "meaning"), tuple(sorted(words)), (1,)),
        Heading("Contents", 2),
        Contents(),
    ]
