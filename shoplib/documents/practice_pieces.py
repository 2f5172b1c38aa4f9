"""The pieces to cut from offcuts: the two boards, a test piece of each that is cut, and what holds them together."""

from dataclasses import dataclass

from shoplib.joints.bench_pair import JointKind, Pair, Stock
from shoplib.measure import INCH, MM, Style, to_step
from shoplib.model.board import Board
from shoplib.model.marks import usually
from shoplib.model.sheet import Sheet


@dataclass(frozen=True, slots=True)
class Piece:
    """So many pieces of one size, in ticks; `round_` where `width` and `thickness` are one diameter."""

    name: str
    count: int
    tests: int
    length: int
    width: int
    thickness: int
    round_: bool = False


def practice_stock(kind: JointKind, enters: Sheet, receives: Sheet, style: Style) -> Stock:
    """Two boards that are small for an offcut and large enough to hold: 10 in or 250 mm beyond the joint.

    >>> from shoplib.joints import joint
    >>> from shoplib.measure import MM_STYLE
    >>> sheet = Sheet("sheet", "plywood", 18 * MM)
    >>> practice_stock(joint("dado"), sheet, sheet, MM_STYLE).width == 150 * MM
    True
    """
    width = kind.usual_width(style.unit)
    return usually(Stock, style.unit, enters=enters, receives=receives, width=width, style=style)


def pieces(pair: Pair) -> tuple[Piece, ...]:
    """What to cut out: both boards, their lengths rounded up to 1/4 in or 5 mm at the end that is not worked on.

    A board with cuts comes once more, as the test piece. What holds them together, a spline or dowels, keeps its own
    size.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> [(piece.name, piece.count, piece.tests) for piece in pieces(joint("dado").build(stock_of(INCH * 3 // 4)))]
    [('side', 1, 1), ('shelf', 1, 0)]
    """
    found = []
    for board in pair.boards[:2]:
        length = to_step(board.length, pair.stock.natural(INCH // 4, 5 * MM), "up")
        found.append(Piece(board.name, 1, int(bool(board.cuts)), length, board.width, board.thickness))
    rest = [_held_by(pair, board) for board in pair.boards[2:]]
    if rest and pair.kind == "dowel":
        return (*found, Piece("dowels", len(rest), 1, rest[0].length, rest[0].width, rest[0].thickness, True))
    return (*found, *rest)


def _held_by(pair: Pair, board: Board) -> Piece:
    """A spline, a dowel or a second rail: what lies aslant is told by its own size, not by the box round it."""
    values = pair.values
    if pair.kind == "splined mitre":
        width = 2 * (values["slot"] - values["end gap"])
        return Piece(board.name, 1, 0, board.box.size[1], width, values["spline"])
    return Piece(board.name, 1, 0, board.length, board.width, board.thickness)
