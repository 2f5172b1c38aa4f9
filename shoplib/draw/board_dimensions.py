"""The dimensions of a board's drawing: running distances from its datum end and edge, then its whole size."""

from collections.abc import Iterable

from shoplib.draw.board_face import Face
from shoplib.draw.chains import stacked
from shoplib.draw.scene import Chain, Item, Running
from shoplib.lists.cut_words import channel_ways
from shoplib.lists.sides import datum_side
from shoplib.lists.writing import Writing
from shoplib.measure import MM
from shoplib.model.board import Board, BoxCut, Cut, Hole, PrismCut

_ONE_LINE = MM // 5
"""What lies nearer together is one line on paper, whatever the scale. Judged by eye."""


def stops_short(board: Board, cut: BoxCut) -> bool:
    """Whether a dado, groove or rabbet ends inside the board, where a router leaves a round end.

    >>> from shoplib.model.placement import Placement
    >>> shelf = Board("shelf", "case", 1, "s", 90, 50, 8, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> stops_short(shelf, BoxCut("dado", (20, 5, 4), (28, 50, 8))), stops_short(shelf, BoxCut("dado", (20, 0, 4),
    ...                                                                                        (28, 50, 8)))
    (True, False)
    """
    ways = channel_ways(cut, board)
    return ways is not None and (cut.low[ways[2]] > 0 or cut.high[ways[2]] < board.size[ways[2]])


def dimensions(face: Face, told: list[Cut], page: Writing) -> Iterable[Item]:
    """Running distances along and across to the cuts that are `told`, then the whole length and width.

    To the far wall of a cut that begins at the datum is the width of that cut, and written as such. Of the sockets of
    an end the first two are measured, which give the pitch: the rest would not be told apart, and the words name them.
    """
    board = face.board
    told = [cut for cut in told if cut.kind != "socket" or cut in _first_sockets(board, told)]
    cuts = [(face.extent(cut), isinstance(cut, Hole)) for cut in told]
    spans = [(a, c, c - a > d - b, hole) for (a, b, c, d), hole in cuts]
    if not face.datum_left:
        spans = [(board.length - high, board.length - low, runs, hole) for low, high, runs, hole in spans]
    along = _stations(spans, board.length)
    pockets = [isinstance(cut, PrismCut) for cut in told]  # told by their middle across the board
    spans = [(b, d, d - b > c - a, hole or one) for ((a, b, c, d), hole), one in zip(cuts, pockets, strict=True)]
    if not face.datum_below:
        spans = [(board.width - high, board.width - low, runs, hole) for low, high, runs, hole in spans]
    sockets = [cut.kind == "socket" for cut in told]
    across = _seen_apart(*(
        _stations([span for span, socket in zip(spans, sockets, strict=True) if socket == wanted], board.width)
        for wanted in (False, True)
    ))
    measured = {
        cut.high[own] - cut.low[own]
        for cut in told for own in (0, 1) if isinstance(cut, BoxCut) and not face.through(cut)
    }
    for side, distances, datum, way, whole in (
        ("below", along, 0 if face.datum_left else board.length, 1 if face.datum_left else -1, board.length),
        ("left", across, 0 if face.datum_below else board.width, 1 if face.datum_below else -1, board.width),
    ):
        if distances:
            texts = tuple(stacked((page.measured if s in measured else page.length)(s)) for s in distances)
            yield Running(side, 0, datum, tuple(datum + way * s for s in distances), texts)
        yield Chain(side, 1, (0, whole), (page.length(whole),))


def _seen_apart(cuts: tuple[int, ...], sockets: tuple[int, ...]) -> tuple[int, ...]:
    """All stations, without those of sockets that lie in one line with another cut: the words name them.

    >>> _seen_apart((10 * MM,), (10 * MM + 4000, 20 * MM)) == (10 * MM, 20 * MM)
    True
    """
    return tuple(sorted((*cuts, *(at for at in sockets if all(abs(at - cut) >= _ONE_LINE for cut in cuts)))))


def _first_sockets(board: Board, told: list[Cut]) -> list[Cut]:
    """The two sockets nearest the datum edge at either end of the board."""
    sockets = sorted((cut for cut in told if cut.kind == "socket"), key=lambda cut: cut.low[1])
    ends = [[cut for cut in sockets if (2 * cut.low[0] < board.length) == low] for low in (True, False)]
    nearest = slice(None, 2) if datum_side(board, 1) < 0 else slice(-2, None)
    return [cut for end in ends for cut in end[nearest]]


def _stations(spans: list[tuple[int, int, bool, bool]], whole: int) -> tuple[int, ...]:
    """From the datum edge to the near wall of a cut, to both ends of a stopped one, to the centre of a hole.

    A span is (low, high, runs this way, hole); a cut that begins at the datum is measured to its far wall.
    """
    found: set[int] = set()
    for low, high, runs, hole in spans:
        if hole:
            found.add((low + high) // 2)
        elif low <= 0:
            found.add(high)
        else:
            found.add(low)
            if runs:
                found.add(high)
    return tuple(sorted(s for s in found if 0 < s < whole))
