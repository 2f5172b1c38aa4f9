"""What is said of rough boards before they are cut: sizes, staves, runs of fronts, and what the eye must decide."""

from collections.abc import Iterable

from shoplib.buying.jobs import Ask
from shoplib.buying.staves import staves_each
from shoplib.measure import Style, write_brief
from shoplib.model.board import Board
from shoplib.model.cutting import Cutting
from shoplib.words.naming import boards_in_short

BEFORE_CUTTING = (
    "A rough board with a bow, cup or twist is jointed flat on one face before it is planed or ripped; a board that "
    "rocks on the saw table can bind the blade.",
    "Look each board over for knots and checks (cracks that begin at its ends) and cut them out by eye: the layout "
    "takes every board as sound but for its trimmed ends.",
    "The shortest and thinnest pieces that a planer or a jointer takes stand in the manual of the machine; plane "
    "shorter parts while they are still one piece, and cut them to length afterwards.",
)
"""Common practice, no source; the manual of the machine goes before all of it."""


def rough_sizes(cutting: Cutting, style: Style) -> str:
    """What a rough part has over.

    >>> from shoplib.measure import INCH_STYLE
    >>> rough_sizes(Cutting(), INCH_STYLE)
    'Parts are cut rough, 1/2 in longer and 1/4 in wider than finished, from boards 1/4 in thicker.'
    """
    more = [write_brief(size, style) for size in (cutting.rough_length, cutting.rough_width, cutting.rough_thickness)]
    return f"Parts are cut rough, {more[0]} longer and {more[1]} wider than finished, from boards {more[2]} thicker."


def glue_ups(ask: Ask, jointing: int, style: Style) -> list[str]:
    """One sentence for each part that is wider than its boards.

    >>> from shoplib.layout.pieces import Part
    >>> from shoplib.measure import MM, MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> from shoplib.model.sheet import Sheet
    >>> top = Board("top", "case", 1, "oak", 600, 300, 20, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> part = Part("staves of top", 612 * MM, 156 * MM, 2)
    >>> glue_ups(Ask(Sheet("oak", "solid", 20 * MM), (1,), (part,), ((top, top),), ("A",), 0), 3 * MM, MM_STYLE)
    ['top: no board is wide enough; glue it up from 2 staves, each 156 mm wide (3 mm of it for jointing its edges).']
    """
    told = []
    for part, boards in zip(ask.parts, ask.boards, strict=True):
        staves = staves_each([board.name for board in boards])
        if staves > 1:
            what = "each" if len(boards) > staves else "it"
            width, over = write_brief(part.width, style), write_brief(jointing, style)
            told.append(
                f"{boards_in_short(boards)}: no board is wide enough; glue {what} up from {staves} staves, each "
                f"{width} wide ({over} of it for jointing its edges)."
            )
    return told


def in_grain_order(runs: Iterable[tuple[Board, ...]], down: bool) -> list[str]:
    """One sentence for each run of fronts; `down` where they stand one above another."""
    way = "from the top one down" if down else "from left to right"
    return [
        f"{boards_in_short(fronts)} come from one board in the order in which they stand, {way}: number them before "
        "they are cut apart."
        for fronts in runs
    ]
