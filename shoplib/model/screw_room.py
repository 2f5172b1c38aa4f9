"""The room that a screw has: how long it may be before its point comes through, and the wood that it fills."""

from collections.abc import Sequence

from shoplib.measure import INCH, largest_fitting, read_length, share
from shoplib.model.box import Box
from shoplib.model.solved import Hardware, Screw
from shoplib.tables.screws import screws


def room_for_screw(before: int, into: int, spare: int) -> int:
    """The longest that a screw may be: what it passes through, and what it is driven into, less the spare wood.

    `before` is the board that it passes through first (0 for none), `into` the one that holds its point, both at
    their thinnest readings; `spare` stays in front of the point. All in ticks; the sum is common practice, no source.

    >>> room_for_screw(INCH // 2, 3 * INCH // 4, INCH // 8) == 9 * INCH // 8
    True
    """
    return before + into - spare


def face_screw(before: int, into: int, unit: str) -> tuple[str, int | None]:
    """The screw through one board into the face of the next that the plan leaves to the maker: its row, its length.

    The longest that keeps the spare wood of its row before the point, of the thick row first; None and "" where no
    length of either reaches the second board. Both at their thinnest readings, in ticks.

    >>> row, length = face_screw(3 * INCH // 8, 3 * INCH // 4, "in")  # 3/8 + 3/4 - 1/8
    >>> row, length == INCH
    ('front', True)
    """
    for row in ("front", "slide"):
        table = screws(unit)[row]
        length = largest_fitting(table.lengths, room_for_screw(before, into, table.spare))
        if length is not None and length > before:
            return row, length
    return "", None


def end_screw(before: int, unit: str, rows: Sequence[str] = ("end", "slide")) -> tuple[str, int | None]:
    """The screw through one board into the end or edge of the next: its row, its length.

    At most three times as long as what it passes is thick, so that a third of it at most is there (common practice, no
    source), of the first row that has one. None and "" where no length of any reaches the second board. In ticks.

    >>> row, length = end_screw(7 * INCH // 10, "in")
    >>> row, length == 2 * INCH
    ('end', True)
    """
    for row in rows:
        length = largest_fitting(screws(unit)[row].lengths, 3 * before)
        if length is not None and length > before:
            return row, length
    return "", None


def shank(gauge: str) -> int:
    """The diameter of a wood screw: 0.060 in and 0.013 in a number (ASME B18.6.1), or as its metric gauge says.

    >>> from shoplib.measure import MM
    >>> shank("No. 6") == 138 * INCH // 1000, shank("3.5 mm") == 7 * MM // 2
    (True, True)
    """
    if gauge.endswith(" mm"):
        return read_length(gauge)
    return (60 + 13 * int(gauge.removeprefix("No. "))) * INCH // 1000


def screw_body(fitting: Hardware, screw: Screw, board: Box) -> Box:
    """Where the screws of a slide may lie in the board that it is fixed to: along its middle line (world, ticks).

    The plan does not know the holes of a slide, so this is a band along the whole of it, as thick as the shank.
    """
    low, high = fitting.box.low, fitting.box.high
    middle, half = share(low[2] + high[2], 2, 1)[0], share(shank(screw.gauge), 2, 1)[0]
    if low[0] >= board.high[0]:
        x = (board.high[0] - screw.length, board.high[0])
    else:
        x = (board.low[0], board.low[0] + screw.length)
    return Box((x[0], low[1], middle - half), (x[1], high[1], middle + half))
