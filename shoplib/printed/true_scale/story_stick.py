"""The story stick on paper: every height of a bay as a mark in true scale, the places across, and the spacer blocks."""

from collections.abc import Sequence

from shoplib.building.spacers import Spacer, gap_spacers, slide_spacers
from shoplib.documents.paper import Paper
from shoplib.lists.writing import Writing
from shoplib.measure import MM
from shoplib.model.solved import Cabinet
from shoplib.printed.told.spacer_table import CUT_OFF, spacer_table
from shoplib.printed.true_scale.page_head import DAMP, GUTTER, MAP, PRINTED, Head
from shoplib.printed.true_scale.stick_drawn import sheet_drawn, sheets_of, sticks_on
from shoplib.printed.true_scale.sticks import Mark, Stick, across_stick, bay_sticks, told
from shoplib.printed.true_scale.tiles import tiled
from shoplib.printed.typeset import blocks as printed
from shoplib.printed.typeset.stamp import Stamp, plan_mark
from shoplib.words.naming import and_list

HOW = (
    PRINTED,
    "Cut each page along its dashed line and glue it over the page above, register mark on register mark; then cut the "
    "sticks apart and glue each to a straight strip of wood, or prick its marks over.",
    "Hold a stick to the case with its line 0 on the face that it names, and mark each height from it, left and right "
    "alike: what is carried over is not measured twice.",
    "The stick shows the case as planned. Hold it against the case as built before you mark from it. Where an upright "
    "stands a little elsewhere it stays there: what goes in follows the openings as you read them, and once these are "
    "read, fronts have no marks across, but are set from the uprights.",
    "Lay the tape along each stick once it is glued: the ticks at its right edge are for that. " + DAMP,
)
"""Common practice, no source."""

BLOCKS = "spacer blocks"


def story_stick_pages(cabinet: Cabinet, paper: Paper, stamp: Stamp | None = None) -> list[printed.Block]:
    """How to use it and the blocks to cut, then the sticks in true scale, side by side and tiled lengthwise.

    With a `stamp` each stick tells of which plan it is.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.documents.paper import PAPERS
    >>> pages = story_stick_pages(cabinet_from("finger_jointed_drawers"), PAPERS["a4"])
    >>> [block.text for block in pages if isinstance(block, printed.Heading)]
    ['Story stick', 'Spacer blocks to cut']
    """
    page = Writing(cabinet.style)
    needed = [*gap_spacers(cabinet), *slide_spacers(cabinet)]
    sticks = [*bay_sticks(cabinet), across_stick(cabinet), *([_nested(needed)] if needed else [])]
    sheets = sheets_of(sticks, page, round((paper.room()[0] - GUTTER - MAP) * MM) - 3 * MM)
    found: list[printed.Block] = [
        printed.Heading("Story stick"), printed.Bullets(HOW, numbered=True), *_to_cut(needed, page),
    ]
    for number, sheet in enumerate(sheets, 1):
        which = f" {number}" if len(sheets) > 1 else ""
        head = Head(f"Story stick{which}", (_datums(sticks_on(sheet)),), _in_words(sticks_on(sheet), page))
        found += tiled(sheet_drawn(sheet, page, plan_mark(stamp)), head, paper, cabinet.style, (False,))
    return found


def _to_cut(needed: Sequence[Spacer], page: Writing) -> list[printed.Block]:
    """The table of the spacer blocks; nothing where there are none."""
    if not needed:
        return []
    head, rows = spacer_table(needed, page)
    rows = tuple((_named(n), *row) for n, row in enumerate(rows, 1))
    return [printed.Heading("Spacer blocks to cut", 2),
            printed.Words(f"Each is drawn with the sticks, from one foot. {CUT_OFF}"),
            printed.Table(("block", *head), rows, wide=(3,))]


def _datums(sticks: Sequence[Stick]) -> str:
    """From where each stick counts: said on every page, for its line 0 is on the last alone."""
    of: dict[str, list[str]] = {}
    for stick in sticks:
        if stick.name != BLOCKS:  # which are measured from their own foot
            of.setdefault(stick.zero, []).append(stick.name)
    told = "; ".join(f"{and_list(names)} from the {zero}" for zero, names in of.items())
    return f"Distances: {told}."


def _in_words(sticks: Sequence[Stick], page: Writing) -> str:
    return " ".join(f"{stick.name}, from the {stick.zero}: {', '.join(told(m, stick, page) for m in stick.marks)}."
                    for stick in sticks)


def _named(number: int) -> str:
    return f"block {number}"


def _nested(needed: Sequence[Spacer]) -> Stick:
    """The blocks one in another, all from one foot, as a stick of their sizes."""
    marks = {}
    for number, one in enumerate(needed, 1):
        pieces = "1 piece" if one.count == 1 else f"{one.count} pieces"
        marks.setdefault(one.size, []).append(f"{_named(number)}, {pieces}")
    return Stick(BLOCKS, "foot of every block", "below",
                 (Mark(0, "foot"), *(Mark(size, "; ".join(names)) for size, names in sorted(marks.items()))))
