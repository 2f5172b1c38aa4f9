"""Fronts on paper: seen from the front with their gaps, the gaps in a table, the chains that close, spacers."""

from collections.abc import Iterable

from shoplib.building.front_chains import chains_across, chains_upward
from shoplib.building.gaps import open_gaps
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
from shoplib.model.board import FRONTS
from shoplib.model.solved import Cabinet, Finding, Gap
from shoplib.printed.plan.cut_list_pages import rests_left_out
from shoplib.printed.plan.hardware_pages import in_blocks
from shoplib.printed.told.framed_findings import found_on
from shoplib.printed.told.front_spacers import spacers_set
from shoplib.printed.told.spacer_table import spacer_table
from shoplib.printed.typeset.blocks import Block, Bullets, Framed, Heading, Table, Together, Words
from shoplib.printed.typeset.pictures import picture
from shoplib.words.naming import and_list, boards_in_short, in_short

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
    waits = [line for line in measure_first(cabinet) if line.startswith(f"Stage {FRONTS}:")]
    return [
        Together((
            Heading(HEADING),
            *([Framed(tuple(Words(line, True) for line in waits))] if waits else []),
            *found_on((front.name for front in fronts), findings),
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
                     Table(head, rows)))


def _gaps(cabinet: Cabinet, page: Writing) -> Section:
    """Equal gaps between the same things in one row, with how many there are."""
    rows: dict[tuple, list[Gap]] = {}
    for gap in open_gaps(cabinet):
        rows.setdefault(_alike(gap), []).append(gap)
    told = tuple(
        (_between(gaps), {"x": "side by side", "z": "one above the other"}[gaps[0].along],
         page.length(gaps[0].size), str(len(gaps)))
        for gaps in rows.values()
    )
    return Section("Gaps", (), ("between", "which lie", "size", "how many"), told)


def _alike(gap: Gap) -> tuple:
    """What gaps have in common that are told together: fronts of the same rows, of the same bays, or one board of the
    case.
    """
    ends = [_place(name) for name in gap.between]
    if any(bay == "" for bay, _ in ends):
        case = [name if bay == "" else "" for name, (bay, _) in zip(gap.between, ends, strict=True)]
        return gap.along, gap.size, "case", *case
    (bay, what), (other_bay, other) = ends
    if bay == other_bay:
        return gap.along, gap.size, "bay", what, other
    return gap.along, gap.size, "bays", bay, other_bay, what == other


def _place(name: str) -> tuple[str, str]:
    """Bay and drawer of a front; two empty texts for a board of the case."""
    if not name.endswith(" front"):
        return "", ""
    _, bay, what = name.removesuffix(" front").split(" ", 2)
    return bay, what


def _between(gaps: list[Gap]) -> str:
    """What equal gaps lie between."""
    ends = [[_place(name) for name in gap.between] for gap in gaps]
    first, second = gaps[0].between
    sides = [and_list(in_short(dict.fromkeys(gap.between[k].removesuffix(" front") for gap in gaps))) for k in (0, 1)]
    if all(bay for bay, _ in ends[0]) and ends[0][0][0] == ends[0][1][0]:
        bays = and_list(list(dict.fromkeys(bay for (bay, _), _ in ends)))
        what, other = ends[0][0][1], ends[0][1][1]
        return f"{what} front and {other} front, in {'bays' if len(gaps) > 1 else 'bay'} {bays}"
    case = [not name.endswith(" front") for name in (first, second)]
    return " | ".join(side if is_case else f"front of {side}" for side, is_case in zip(sides, case, strict=True))


def _sums(cabinet: Cabinet) -> list[str]:
    """Upward in each bay, then across; bays whose sums are alike are told once."""
    told: dict[str, list[int]] = {}
    for bay, chain in chains_upward(cabinet):
        told.setdefault(sum_text(chain, cabinet, exact=False).replace(f"bay {bay} ", ""), []).append(bay)
    lines = [f"{'Bays' if len(bays) > 1 else 'Bay'} {and_list([str(bay) for bay in bays])}, upward: {text}"
             for text, bays in told.items()]
    return lines + [f"{where[0].upper()}{where[1:]}, across: {sum_text(chain, cabinet, exact=False)}"
                    for where, chain in chains_across(cabinet)]


def _order(cabinet: Cabinet) -> str:
    """In which order the fronts go on, with the spacers that there are gaps for (common practice, no source)."""
    spacers = spacers_set(cabinet)
    by = f"with spacers {spacers}" if spacers else "by the marks of the story stick"
    return (f"Level and square the case first. Then set the fronts from the bottom up, {by}, and screw each on from "
            "inside the box (common practice, no source).")


def _reveal(cabinet: Cabinet, page: Writing) -> tuple[str, ...]:
    """How much of the edges of the case overlay fronts leave to be seen."""
    fronts = cabinet.project.fronts
    if fronts.kind != "overlay":
        return ()
    return (f"Round the fronts {page.setting(fronts.reveal)} of the edges of the case stay to be seen (the reveal): "
            "draw that line on the edges before the first front goes on.",)
