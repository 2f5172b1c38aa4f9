"""Fronts on paper: seen from the front with their gaps, the gaps in a table, the chains that close, spacers."""

from collections.abc import Iterable
from dataclasses import replace

from shoplib.building.front_chains import chains_across, chains_upward
from shoplib.building.gaps import fronted, open_gaps
from shoplib.building.spacers import gap_spacers
from shoplib.documents.before_cutting import measure_first
from shoplib.documents.cut_list_file import sum_text
from shoplib.documents.page_section import Section
from shoplib.documents.paper import Paper
from shoplib.draw.board_drawing import size_words
from shoplib.draw.chains import unit_note
from shoplib.draw.elevation import front_elevation
from shoplib.lists.cut_list import kinds
from shoplib.lists.writing import Writing
from shoplib.model.board import FRONTS, Board
from shoplib.model.solved import Cabinet, ClosingSum, Finding, Gap
from shoplib.printed.plan.cut_list_pages import rests_left_out
from shoplib.printed.plan.hardware_pages import in_blocks
from shoplib.printed.told.framed_findings import framed_on
from shoplib.printed.told.front_spacers import spacers_set
from shoplib.printed.told.spacer_table import spacer_table
from shoplib.printed.typeset.blocks import Block, Bullets, Framed, Heading, Table, Together, Words, wide_by
from shoplib.printed.typeset.pictures import picture
from shoplib.words.naming import and_list, boards_in_short, capital, in_short

HEADING = "Fronts and gaps"
_DRAWN = 110.0
"""How high the drawing may be in mm; tables follow on its page where they find room."""


def front_pages(cabinet: Cabinet, findings: Iterable[Finding], paper: Paper) -> list[Block]:
    """All about the fronts; nothing where there are none. The `findings` that name one stand above the drawing.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.documents.paper import PAPERS
    >>> [block.blocks[0].text for block in front_pages(cabinet_from("finger_jointed_drawers"), (), PAPERS["a4"])]
    ['Fronts and gaps', 'Fronts', 'Gaps', 'Sums that close over the fronts', 'Spacers to cut for the gaps']
    """
    fronts = [board for board in cabinet.boards if board.role == "front"]
    if not fronts:
        return []
    page, room = Writing(cabinet.style), paper.room()
    scene = front_elevation(cabinet, cabinet.style)
    waits = measure_first(cabinet, (FRONTS,))
    return [
        Together((
            Heading(HEADING),
            *([Framed(tuple(Words(line, True) for line in waits))] if waits else []),
            *framed_on((front.name for front in fronts), cabinet, findings),
            picture(scene, (room[0], _DRAWN), cabinet.style.unit, "From the front"),
        )),
        _sizes(cabinet),
        *in_blocks(_gaps(cabinet, page)),
        Together((Heading("Sums that close over the fronts", 2), Words(rests_left_out(cabinet.style)),
                  Bullets(tuple(_sums(cabinet))))),
        *in_blocks(Section("Spacers to cut for the gaps", (_order(cabinet), *_reveal(cabinet, page)),
                           *spacer_table(gap_spacers(cabinet), page))),
    ]


def _sizes(cabinet: Cabinet) -> Block:
    """The fronts as the cut list has them."""
    page = Writing(cabinet.style, units=False)
    rows = tuple(
        (str(kind.count), boards_in_short(kind.boards), size_words(kind.cut, page), size_words(kind.finished, page),
         kind.sheet)
        for kind in kinds(cabinet) if kind.first.role == "front"
    )
    head = ("count", "front", "at the saw", "finished", "sheet")
    return Together((Heading("Fronts", 2), Words(unit_note(cabinet.style, "Length × width × thickness.")),
                     Table(head, rows, wide_by(rows, (1, 4)))))


def _gaps(cabinet: Cabinet, page: Writing) -> Section:
    """Equal gaps between the same things in one row, with how many there are."""
    rows: dict[tuple, list[Gap]] = {}
    for gap in open_gaps(cabinet):
        rows.setdefault(_alike(gap, cabinet), []).append(gap)
    told = tuple(
        (_between(gaps, cabinet), {"x": "side by side", "z": "one above the other"}[gaps[0].along],
         page.length(gaps[0].size), str(len(gaps)))
        for gaps in rows.values()
    )
    return Section("Gaps", (), ("between", "which lie", "size", "how many"), told)


def _alike(gap: Gap, cabinet: Cabinet) -> tuple:
    """What gaps have in common that are told together: fronts of the same rows, of the same bays, or one board of the
    case.
    """
    ends = _ends(gap, cabinet)
    if not all(board.role == "front" for board in ends):
        return gap.along, gap.size, "case", *("" if board.role == "front" else board.name for board in ends)
    one, other = (board.part_of for board in ends)
    if one.bay == other.bay:
        return gap.along, gap.size, "bay", one.in_bay, other.in_bay
    return gap.along, gap.size, "bays", one.bay, other.bay, one.in_bay == other.in_bay


def _ends(gap: Gap, cabinet: Cabinet) -> tuple[Board, Board]:
    """The two boards that it lies between."""
    one, other = gap.between
    return cabinet.by_name[one], cabinet.by_name[other]


def _between(gaps: list[Gap], cabinet: Cabinet) -> str:
    """What equal gaps lie between."""
    ends = [_ends(gap, cabinet) for gap in gaps]
    if all(board.role == "front" for board in ends[0]):
        one, other = (board.part_of for board in ends[0])
        if one.bay == other.bay:
            bays = and_list(list(dict.fromkeys(str(board.part_of.bay) for board, _ in ends)))
            return f"{one.in_bay} front and {other.in_bay} front, in {'bays' if len(gaps) > 1 else 'bay'} {bays}"
    sides = [and_list(in_short(dict.fromkeys(fronted(pair[k]) for pair in ends))) for k in (0, 1)]
    return " | ".join(f"front of {side}" if board.role == "front" else side
                      for side, board in zip(sides, ends[0], strict=True))


def _sums(cabinet: Cabinet) -> list[str]:
    """Upward in each bay, then across; bays whose sums are alike are told once."""
    told: dict[str, list[int]] = {}
    for bay, chain in chains_upward(cabinet):
        told.setdefault(sum_text(_in_bay(chain, cabinet), cabinet, exact=False), []).append(bay)
    lines = [f"{'Bays' if len(bays) > 1 else 'Bay'} {and_list([str(bay) for bay in bays])}, upward: {text}"
             for text, bays in told.items()]
    return lines + [f"{capital(where)}, across: {sum_text(chain, cabinet, exact=False)}"
                    for where, chain in chains_across(cabinet)]


def _order(cabinet: Cabinet) -> str:
    """In which order the fronts go on, with the spacers that there are gaps for (common practice, no source)."""
    spacers = spacers_set(cabinet)
    by = f"with spacers {spacers}" if spacers else "by the marks of the story stick"
    return (f"Level and square the case first. Then set the fronts from the bottom up, {by}, and screw each on from "
            "inside the box (common practice, no source).")


def _in_bay(chain: ClosingSum, cabinet: Cabinet) -> ClosingSum:
    """The same, its boards named as they are within their bay."""
    names = {board.name: board.name.removeprefix(f"{board.part_of.bay_name} ") for board in cabinet.boards
             if board.part_of}
    return replace(chain, terms=tuple((names.get(what, what), ticks) for what, ticks in chain.terms))


def _reveal(cabinet: Cabinet, page: Writing) -> tuple[str, ...]:
    """How much of the edges of the case overlay fronts leave to be seen."""
    fronts = cabinet.project.fronts
    if fronts.kind != "overlay":
        return ()
    return (f"Round the fronts {page.setting(fronts.reveal)} of the edges of the case stay to be seen (the reveal): "
            "draw that line on the edges before the first front goes on.",)
