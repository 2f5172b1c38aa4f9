"""Chains of dimensions read off boards."""

from collections.abc import Iterable, Set
from dataclasses import replace
from itertools import pairwise

from shoplib.draw.scene import Chain, Rect
from shoplib.lists.writing import Writing
from shoplib.measure import Style, shows_rest, to_step
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet

_FACING_BASE = ("plinth", "toe board")


def unit_note(style: Style, more: str = "") -> str:
    """The line that states the unit of every bare number on a drawing.

    >>> from shoplib.measure import INCH_STYLE
    >>> unit_note(INCH_STYLE)
    'All sizes in inches.'
    """
    text = f"All sizes in {'inches' if style.unit == 'in' else 'millimetres'}."
    return f"{text} {more}" if more else text


def bare(ticks: int, style: Style) -> str:
    """The length for a drawing that states its unit: no unit behind it, nor behind the rest in brackets.

    Where the rest is more than a quarter of a step the mark would mislead the eye: then it is a decimal.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> [bare(INCH // 2 + more, INCH_STYLE) for more in (508, 6 * 1016, 5 * 2032)]
    ['1/2', '1/2 (+0.003)', '0.505']
    """
    page = Writing(style, units=False)
    if shows_rest(ticks, style) and 4 * abs(ticks - to_step(ticks, style.step)) > style.step:
        return page.measured(ticks)
    return page.length(ticks)


def stacked(text: str) -> str:
    """The text of a length with its rest on a line of its own, for dimensions that stand close together.

    >>> print(stacked("1/2 (+0.003)"))
    1/2
    (+0.003)
    """
    return text.replace(" (", "\n(")


def thicknesses(cabinet: Cabinet) -> frozenset[int]:
    """The thicknesses of all boards: as spans of a dimension they are written as measured.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.measure import MM, MM_STYLE
    >>> [ticks / MM for ticks in sorted(thicknesses(cabinet_from("rolling_stand")))]
    [6.0, 11.9, 17.9]
    """
    return frozenset(board.thickness for board in cabinet.boards)


def size_text(rect: Rect, style: Style) -> str:
    """Width by height of a rectangle, without unit, written as the cut list writes them.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> size_text((0, 0, 600 * MM, 300 * MM), MM_STYLE)
    '600 × 300'
    """
    page = Writing(style, units=False)
    return f"{page.length(rect[2] - rect[0])} × {page.length(rect[3] - rect[1])}"


def chain(side: str, stations: Iterable[int], style: Style, thick: Set[int] = frozenset()) -> Chain | None:
    """Dimensions between the stations, whatever their order; None where there are fewer than two.

    A span that is one of the `thick` is written as the decimal that was measured, any other as the cut list writes it.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> thick = 3 * INCH // 4
    >>> chain("below", (thick, 0, 24 * INCH), INCH_STYLE, {thick}).texts
    ('0.75', '23 1/4')
    >>> chain("below", (0, 0), INCH_STYLE) is None
    True
    """
    at = tuple(sorted(set(stations)))
    if len(at) < 2:
        return None
    page = Writing(style, units=False)
    spans = [high - low for low, high in pairwise(at)]
    return Chain(side, 0, at, tuple(stacked(page.measured(s) if s in thick else page.length(s)) for s in spans))


def rows(side: str, chains: Iterable[Iterable[int]], style: Style, thick: Set[int]) -> list[Chain]:
    """One row of dimensions for each set of stations, outward; a row that says nothing new is left out.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> found = rows("below", [(0, 18 * MM, 600 * MM), (0, 600 * MM), (0, 600 * MM)], MM_STYLE, set())
    >>> [(row.row, row.texts) for row in found]
    [(0, ('18', '582')), (1, ('600',))]
    """
    found: list[Chain] = []
    for stations in chains:
        item = chain(side, stations, style, thick)
        if item is not None and all(item.at != other.at for other in found):
            found.append(replace(item, row=len(found)))
    return found


def levels(cabinet: Cabinet, low: int, high: int) -> list[Board]:
    """The boards of the case that bound its openings in height between two positions across.

    Lying boards count, and the boards of the base that face the front; rails at the back do not.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.model.uprights import bays
    >>> cabinet = cabinet_from("under_bench_case")
    >>> [board.name for board in levels(cabinet, *bays(cabinet)[0])]
    ['bottom', 'top', 'toe board']
    """
    return [
        b for b in cabinet.boards
        if b.group == "case" and b.box.low[0] < high and low < b.box.high[0] and b.role != "loose shelf"
        and (b.placement.own_axis(2) == 2 or b.role in _FACING_BASE)
    ]


def ends(boards: Iterable[Board], axis: int) -> list[int]:
    """Both ends of every board along a world axis.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.measure import MM
    >>> from shoplib.model.uprights import uprights
    >>> cabinet = cabinet_from("rolling_stand")
    >>> [place / MM for place in ends(uprights(cabinet)[:2], 0)]
    [10.0, 27.9, 340.05, 357.95]
    """
    return [end for b in boards for end in (b.box.low[axis], b.box.high[axis])]


def not_within(stations: Iterable[int], spans: Iterable[tuple[int, int]]) -> list[int]:
    """The stations that no span covers.

    >>> not_within([0, 5, 10, 20], [(0, 10)])
    [0, 10, 20]
    """
    spans = list(spans)
    return [s for s in stations if not any(low < s < high for low, high in spans)]
