"""The hardware on paper: where slides go, spacers to cut, screws by kind, pull and peg holes, casters, hanging."""

from shoplib.building.riding import riding
from shoplib.building.spacers import Spacer, slide_spacers
from shoplib.documents.fixings import fixings, hanging
from shoplib.documents.hardware_page import drills_section, pegs_section, pulls_section, screws_section, under_section
from shoplib.documents.page_section import Section
from shoplib.documents.slides_section import slides_section
from shoplib.lists.sides import datum_side
from shoplib.lists.writing import Writing
from shoplib.model.board import Board
from shoplib.model.box import Box
from shoplib.model.solved import Cabinet
from shoplib.printed.told.spacer_table import CUT_OFF, spacer_table
from shoplib.printed.typeset.blocks import Block, Bullets, Heading, Table, Together, Words
from shoplib.words.naming import and_list, in_short

HEADING = "Hardware"
_REFERENCE = (
    "Where the lower edge and the front end of each come to lie on its upright, to mark or to check them without a "
    "spacer."
)
_SPACERS = (
    f"{CUT_OFF} Stand it on the bottom of the case. The same ones serve the next drawer of that height (common "
    "practice, no source)."
)


def hardware_pages(cabinet: Cabinet) -> list[Block]:
    """Each part that this cabinet has something for; lengths carry their unit.

    >>> [block.text for block in hardware_pages(Cabinet("plain boards", (), {}))]
    ['Hardware', 'This project has no hardware, and no joint that would need a fixing.']
    """
    page = Writing(cabinet.style)
    sections = [
        slides_section(cabinet, page),
        upright_section(cabinet, page),
        Section("Spacers to cut for the slides", *_spacer_rows(slide_spacers(cabinet), page)),
        _screws(cabinet),
        drills_section(cabinet, page),
        fixings(cabinet),
        pulls_section(cabinet, page),
        pegs_section(cabinet, page),
        under_section(cabinet, page),
        hanging(cabinet),
    ]
    blocks: list[Block] = [Heading(HEADING)]
    for section in sections:
        blocks += in_blocks(section)
    if len(blocks) == 1:
        blocks.append(Words("This project has no hardware, and no joint that would need a fixing."))
    return blocks


def in_blocks(section: Section) -> list[Block]:
    """A section under a heading of level 2: its words, then its table; nothing where it has neither.

    >>> in_blocks(Section("Fixings", ()))
    []
    >>> in_blocks(Section("Fixings", ("Glue.",)))[0].blocks[1]
    Words(text='Glue.', grave=False, small=False)
    """
    if not section.lines and not section.rows:
        return []
    words = (Words(section.lines[0]),) if len(section.lines) == 1 else (Bullets(section.lines),)
    head = (Heading(section.title, 2), *(words if section.lines else ()))
    if not section.rows:
        return [Together(head)]
    return [Together((*head, Table(section.head, section.rows)))]


def upright_section(cabinet: Cabinet, page: Writing) -> Section:
    """Lower edge and setback of each slide and runner from the reference end and edge of the upright it lies on.

    Uprights on which they lie alike are told together.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("wheel_wall_drawers")
    >>> upright_section(cabinet, Writing(cabinet.style)).rows[1]
    ('left side and right side', 'drawer 1 in bays 1 and 2', 'wood runner', '3 7/16 in', '1/4 in')
    """
    alike: dict[tuple[str, str, str], list[tuple[str, int, str]]] = {}
    for item in riding(cabinet):
        board = cabinet.by_name.get(item.on)
        if board is not None:
            low, back = (_from_reference(board, item.box, axis) for axis in (2, 1))
            row = item.what, page.length(low), page.length(back)
            alike.setdefault(row, []).append((item.on, low, item.group))
    rows = []
    for (what, low, back), places in sorted(alike.items(), key=lambda row: min(row[1])):
        on, groups = (and_list(in_short(dict.fromkeys(place[k] for place in places))) for k in (0, 2))
        rows.append((on, groups, what, low, back))
    return Section(
        "Slides and runners, from the reference sides of the uprights", (_REFERENCE,) if rows else (),
        ("on", "for", "slide or runner", "lower edge, from the bottom of the upright", "set back, from its front"),
        tuple(rows),
    )


def _from_reference(board: Board, box: Box, axis: int) -> int:
    """How far the near end of a box is from the side of a board that its places are given from, along a world axis."""
    own, there = board.placement.own_axis(axis), board.placement.to_board(box)
    return there.low[own] if datum_side(board, own) < 0 else board.size[own] - there.high[own]


def _spacer_rows(spacers: tuple[Spacer, ...], page: Writing) -> tuple:
    return ((_SPACERS,) if spacers else (), *spacer_table(spacers, page))


def _screws(cabinet: Cabinet) -> Section:
    """The screws by what they are for, and those of one kind added up."""
    section, sums = screws_section(cabinet), {}
    for gauge, length, _, _, count in section.rows:
        sums[gauge, length] = sums.get((gauge, length), 0) + int(count)
    told = and_list([f"{count} of {gauge} × {length}" for (gauge, length), count in sums.items()])
    lines = (*section.lines, f"In all: {told}.") if sums else section.lines
    return Section(section.title, lines, section.head, section.rows)
