"""Butted ends held by screws: clearance holes through the first board, and which screws go through them."""

from collections.abc import Sequence

from shoplib.measure import INCH, MM, Style, largest_fitting
from shoplib.model.blank import Blank
from shoplib.model.board import Hole
from shoplib.model.box import Point
from shoplib.model.solved import Hardware, Screw
from shoplib.tables.screws import screws

END = "end"
"""The row of the screw table for screws into an end or edge."""


def clearance(style: Style) -> int:
    """The hole that a screw passes without biting: 3/16 in for a No. 8, 4.5 mm for one of 4.0 mm.

    A No. 8 is 0.164 in thick (ASME B18.6.1); the size of the hole is common practice, no source.

    >>> clearance(Style("mm", MM)) == 9 * MM // 2
    True
    """
    return 3 * INCH // 16 if style.unit == "in" else 9 * MM // 2


def screw_through(board: Blank, into: Blank, along: str, places: Sequence[Point], style: Style) -> None:
    """Bore clearance holes right through `board`, each from its place on the outer face, along a world axis."""
    low, high = board.span("xyz".index(along))
    for place in places:
        board.holes.append(Hole("screw", place, along, clearance(style), high - low, into.name))


def end_screws(what: str, board: Blank, into: Blank, group: str, count: int, unit: str) -> Hardware:
    """Screws through `board` into the end or edge of another; none where the board is too thin for any sold."""
    row = screws(unit)[END]
    length = largest_fitting(row.lengths, 3 * board.sheet.thinnest)
    fixed = () if length is None else (Screw(row.gauge, length, into.name, count),)
    return Hardware(what, board.name, group, into.box, "", fixed)
