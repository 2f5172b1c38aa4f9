"""Butted ends held by screws: clearance holes through the first board, and which screws go through them."""

from collections.abc import Sequence

from shoplib.measure import Style, share, thickest, to_step
from shoplib.model.blank import Blank
from shoplib.model.board import Hole
from shoplib.model.box import Point
from shoplib.model.gathered import Gathered
from shoplib.model.project import Project
from shoplib.model.screw_room import end_screw
from shoplib.model.solved import Hardware, Screw
from shoplib.tables.coverage import butt_screws
from shoplib.tables.screw_sizes import size_of
from shoplib.tables.screws import screws

END = "end"
"""The row of the screw table for screws into an end or edge."""
TOE_SCREWS, BOTTOM_SCREWS = "toe board screws", "bottom screws"
"""What two fittings are called: a toe board screwed through the sides, a box bottom screwed up into its back."""


def clearance(style: Style, row: str = END) -> int:
    """The hole that a screw of this row of the table passes without biting (`data/screw_sizes.csv`).

    >>> from shoplib.measure import INCH_STYLE, MM, write_brief
    >>> clearance(Style("mm", MM)) == 9 * MM // 2, write_brief(clearance(INCH_STYLE), INCH_STYLE)
    (True, '11/64 in')
    """
    return size_of(screws(style.unit)[row].gauge).clearance


def screw_through(
    board: Blank, into: Blank, along: str, places: Sequence[Point], style: Style, row: str = END
) -> None:
    """Bore clearance holes right through `board`, each from its place on the outer face, along a world axis."""
    low, high = board.span("xyz".index(along))
    for place in places:
        board.holes.append(Hole("screw", place, along, clearance(style, row), high - low, into.name))


def end_screws(
    what: str, board: Blank, into: Blank, group: str, count: int, unit: str, rows: Sequence[str] = (END,)
) -> Hardware:
    """Screws through `board` into the end or edge of another; none where the board is too thin for any sold."""
    row, length = end_screw(board.sheet.thinnest, unit, rows)
    fixed = () if length is None else (Screw(screws(unit)[row].gauge, length, into.name, count),)
    return Hardware(what, board.name, group, into.box, "", fixed)


def screw_both_ends(what: str, board: Blank, left: Blank, right: Blank, project: Project, gathered: Gathered) -> None:
    """Two screws through each side into a butted board, a quarter of its width from its edges, to the nearest step."""
    (_, y0, z0), (_, y1, z1) = board.low, board.high
    middle = to_step(y0 + share(y1 - y0, 2, 1)[0], project.step)
    edge = share(z1 - z0, 4, project.step)[0]
    for side, x in ((left, left.low[0]), (right, right.high[0])):
        foot = side.low[2]
        places = [(x, middle, foot + to_step(z - foot, project.step)) for z in (z0 + edge, z1 - edge)]
        screw_through(side, board, "x", places, project.style)
        gathered.hardware.append(end_screws(what, side, board, "case", len(places), project.style.unit))


def screw_up(bottom: Blank, back: Blank, ends: int, project: Project, gathered: Gathered) -> None:
    """Screws up through a box bottom into the lower edge of its back, evenly along it: as many as for any butt, or one
    more, so that half of them lie alike from each end.

    `ends` is how far the bottom reaches into the groove of each side: places are whole steps from its finished ends.
    """
    unit, (x0, x1) = project.style.unit, bottom.span(0)
    rule = butt_screws(unit)
    pairs = -(-thickest([rule.least, -(-(x1 - x0) // rule.every)]) // 2)
    wide = x1 - x0 + 2 * ends
    off = [share((2 * number + 1) * wide, 4 * pairs, project.step)[0] for number in range(pairs)]
    along = [*off, *(wide - at for at in reversed(off))]
    middle = bottom.high[1] - to_step(share(back.high[1] - back.low[1], 2, 1)[0], project.step)
    fitting = end_screws(BOTTOM_SCREWS, bottom, back, bottom.group, len(along), unit, (END, "slide"))
    if fitting.screws:
        row = next(row for row in (END, "slide") if screws(unit)[row].gauge == fitting.screws[0].gauge)
        places = [(x0 - ends + at, middle, bottom.low[2]) for at in along]
        screw_through(bottom, back, "z", places, project.style, row)
    gathered.hardware.append(fitting)
