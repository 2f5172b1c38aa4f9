"""What is said of rough boards before they are cut: sizes, staves, runs of fronts, and what the eye must decide."""

from collections.abc import Iterable

from shoplib.buying.rough import Rough
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


def glue_ups(parts: Iterable[Rough], cutting: Cutting, style: Style) -> list[str]:
    """One sentence for each part that is wider than its boards.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> top = Rough("top", ("top",), (600 * MM, 300 * MM, 20 * MM), 612 * MM, 156 * MM, staves=2)
    >>> glue_ups([top], Cutting(jointing=3 * MM), MM_STYLE)
    ['top: no board is wide enough; glue it up from 2 staves, each 156 mm wide (3 mm of it for jointing its edges).']
    """
    told = []
    for part in parts:
        if part.staves > 1:
            what, each = ("it", "") if len(part.boards) == 1 else ("each", f" ({len(part.boards)} of them)")
            told.append(
                f"{part.name}{each}: no board is wide enough; glue {what} up from {part.staves} staves, each "
                f"{write_brief(part.width, style)} wide ({write_brief(cutting.jointing, style)} of it for jointing its "
                "edges)."
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
