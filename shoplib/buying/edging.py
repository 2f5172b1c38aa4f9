"""Edging to buy: bands and solid strips, by how thick they are and how wide an edge they cover."""

from collections.abc import Iterator
from decimal import Decimal

from shoplib.buying.line import Line
from shoplib.buying.thickness import thick_words
from shoplib.lists.sides import own_side
from shoplib.lists.writing import Writing
from shoplib.measure import FOOT, MM, to_step
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.tables.coverage import edging_over


def edge_length(board: Board, edge: str) -> int:
    """How long the edge of a board is that looks to the front, left, ...: the finished length or width (ticks).

    >>> from shoplib.model.placement import Placement
    >>> side = Board("left side", "case", 1, "s", 90, 50, 2, Placement((2, 0, 0), ("+z", "+y", "-x")))
    >>> edge_length(side, "front"), edge_length(side, "top")
    (90, 50)
    """
    own, _ = own_side(board, edge)
    return board.length if own == 1 else board.width


def edging_lines(cabinet: Cabinet) -> Iterator[Line]:
    """One line for each kind, thickness and sheet edge; every piece has its spare for trimming at both ends."""
    unit, over = cabinet.style.unit, edging_over(cabinet.style.unit)
    writing = Writing(cabinet.style)
    found: dict[tuple[str, int, str], list[Board]] = {}
    lengths: dict[tuple[str, int, str], list[int]] = {}
    ripped = cabinet.project is not None and bool(cabinet.project.cutting.strips_from)
    for board in cabinet.boards:
        for edge, strip in board.edging:
            if ripped and strip.kind == "strip":
                continue  # it comes out of the boards that it is ripped from
            key = (strip.kind, strip.thickness, board.sheet)
            found.setdefault(key, []).append(board)
            lengths.setdefault(key, []).append(edge_length(board, edge))
    for (kind, thickness, sheet), boards in found.items():
        runs = lengths[kind, thickness, sheet]
        wide = cabinet.sheets[sheet].thickest
        needed, spare = running(sum(runs), 2 * over * len(runs), unit)
        what = "edge band" if kind == "band" else "solid edge strip"
        longest = writing.length(to_step(max(runs) + 2 * over, cabinet.style.step, "up"))
        yield Line(
            "edging",
            f"{what} {thick_words(thickness, cabinet.style)}, for the {sheet}",
            needed,
            length_unit(unit),
            spare,
            (0, wide, thickness),
            min(board.stage for board in boards),
            uses=f"{len(runs)} {'edge' if len(runs) == 1 else 'edges'}, the longest piece {longest}; "
                 f"at least {writing.measured(wide)} wide",
        )


def length_unit(unit: str) -> str:
    """What is sold by length is counted in feet or in metres."""
    return "ft" if unit == "in" else "m"


def running(net: int, over: int, unit: str) -> tuple[Decimal, Decimal]:
    """What is needed and what is spare of something sold by length; together up to whole feet, or tenths of a metre.

    >>> running(10 * FOOT, FOOT // 2, "in"), running(2040 * MM, 30 * MM, "mm")
    ((Decimal('10'), Decimal('1')), (Decimal('2.1'), Decimal('0')))
    """
    step, places = (FOOT, 1) if unit == "in" else (100 * MM, 10)
    whole, needed = -(-(net + over) // step), -(-net // step)
    return Decimal(needed) / places, Decimal(whole - needed) / places
