"""A drawing in true scale becomes pages: parted in tiles that are cut, laid mark on mark and glued.

Every page carries its head (what it is, for which boards, how it is printed), a bar of 100 mm across and one up, and,
where there are several, a map of them, the seams and the register marks on the seams. A mark comes out at one place of
the drawing on both pages that share it.
"""

from dataclasses import dataclass, replace

from shoplib.documents.paper import BAR, Paper
from shoplib.draw.scene import Point, Rect
from shoplib.draw.true_scale import Item, Layer, TextLine, TrueDrawing, true_svg
from shoplib.measure import MM, Style
from shoplib.printed.true_scale.clear_place import lines_named
from shoplib.printed.true_scale.page_head import BESIDE_BAR, GUTTER, Head, bars_drawn, head_drawn
from shoplib.printed.true_scale.parting import Parting, Tile, parted
from shoplib.printed.true_scale.seams import seams_drawn
from shoplib.printed.typeset.blocks import Block, NewPage, WholePage

_GUTTER = round(GUTTER * MM)

@dataclass(frozen=True, slots=True)
class _Page:
    """One page with its alternative text; `crowded` counts the lines of words that found no place clear of all lines,
    and stand on white.
    """

    svg: str
    alt: str
    crowded: int


@dataclass(frozen=True, slots=True)
class _Sheet:
    """A drawing and its head on paper with this much `room` (ticks)."""

    drawing: TrueDrawing
    head: Head
    style: Style
    room: Point

    @property
    def upper(self) -> int:
        """Up to where the drawing may go."""
        return self.room[1] - self.head.height(self.room[0])

    def parted(self) -> Parting:
        return parted(self.drawing, (self.room[0] - _GUTTER, self.upper - _GUTTER))

    def page(self, tile: Tile) -> _Page:
        """One page as it is drawn."""
        several = tile.parting.count > 1
        alt = f"{self.head.title}, in true scale{f', page {tile.name}' if several else ''}. {self.head.alt}"
        layers = self._layers(tile)
        crowded = sum(isinstance(item, TextLine) and item.plate for layer in layers for item in layer.items)
        return _Page(true_svg(self.room, layers, self.head.title, alt), alt, crowded)

    def _layers(self, tile: Tile) -> list[Layer]:
        """From the lower left corner of the paper: what the tile shows, its seams, head and bars."""
        left, bottom, right, top = tile.shown
        clip = (_GUTTER, self.upper - (top - bottom), _GUTTER + right - left, self.upper)
        origin = (_GUTTER - left, self.upper - top)
        kept = [_in_its_place(item, tile.core, self.drawing.bounds) for item in self.drawing.items]
        shown = [item for item in kept if item is not None]
        shown += lines_named(self.drawing.names, tile.core, shown)
        return [
            Layer(tuple(shown), origin, clip),
            Layer(tuple(seams_drawn(tile, shown)), origin),
            Layer((*head_drawn(self.head, tile, self.room), *bars_drawn(self.style))),
        ]


def tiled(
    drawing: TrueDrawing, head: Head, paper: Paper, style: Style, ways: tuple[bool, ...] = (False, True)
) -> list[Block]:
    """The pages of a drawing, standing or lying (one of `ways`), whichever takes fewer, or has more room for its words;
    it is never turned over.

    >>> from shoplib.documents.paper import PAPERS
    >>> from shoplib.measure import MM_STYLE
    >>> pages = tiled(TrueDrawing((0, 0, 300 * MM, 90 * MM), ()), Head("Rule", (), ""), PAPERS["a4"], MM_STYLE)
    >>> [page.alt.strip() for page in pages[1::2]]
    ['Rule, in true scale, page A1.', 'Rule, in true scale, page A2.']
    """
    found = []
    for lying in ways:
        wide, high = (round(side * MM) for side in paper.room(lying))
        sheet = _Sheet(drawing, head, style, (wide, high))
        found.append((sheet.parted(), lying, sheet))
    least = min(parting.count for parting, _, _ in found)
    pages = [(lying, [sheet.page(tile) for tile in parting.tiles()])
             for parting, lying, sheet in found if parting.count == least]
    lying, drawn = min(pages, key=lambda one: (sum(page.crowded for page in one[1]), one[0]))
    return [block for page in drawn
            for block in (NewPage(lying), WholePage(page.svg, page.alt, *paper.room(lying)))]


def alone(drawing: TrueDrawing, head: Head, style: Style) -> str:
    """The whole drawing as one SVG, with its head and its bars, whatever its size.

    >>> from shoplib.measure import MM_STYLE
    >>> svg = alone(TrueDrawing((0, 0, 900 * MM, 90 * MM), ()), Head("Rule", (), ""), MM_STYLE)
    >>> 'width="909mm"' in svg, "seam" in svg
    (True, False)
    """
    wide, tall = drawing.size
    room_wide = max(wide + _GUTTER, 184 * MM)
    room = (room_wide, max(tall + _GUTTER, _GUTTER + BAR + BESIDE_BAR) + head.height(room_wide))
    [tile] = Parting(drawing.bounds).tiles()
    return _Sheet(drawing, head, style, room).page(tile).svg


def _in_its_place(item: Item, core: Rect, bounds: Rect) -> Item | None:
    """Lines as they are, and words that stay; others on the page that has their middle, moved along their line so that
    no seam parts them.

    Words that a seam parts all the same stand on both pages, and join where those are glued.
    """
    if not isinstance(item, TextLine):
        return item
    a, b, c, d = item.around
    if item.stays:
        return item if a < core[2] and core[0] < c and b < core[3] and core[1] < d else None
    along, across = ((b, d), (a, c)) if item.turned else ((a, c), (b, d))
    low, high = (core[1], core[3]) if item.turned else (core[0], core[2])
    near, far = (core[0], core[2]) if item.turned else (core[1], core[3])
    if across[1] <= near or across[0] >= far:
        return None
    middle, ends = sum(along) // 2, (bounds[1], bounds[3]) if item.turned else (bounds[0], bounds[2])
    first, last = low <= ends[0], high >= ends[1]
    if not (first or low <= middle) or not (last or middle < high):
        return None
    shift = max(low + MM - along[0], 0) if not first else 0
    shift = shift or (min(high - MM - along[1], 0) if not last else 0)
    x, y = item.at
    return replace(item, at=(x, y + shift) if item.turned else (x + shift, y))
