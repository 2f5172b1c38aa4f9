"""A drawing in true scale becomes pages: parted in tiles that are cut, laid mark on mark and glued.

Every page carries its head (what it is, for which boards, how it is printed), a bar of 100 mm across and one up, and,
where there are several, a map of them, the seams and the register marks on the seams. A mark comes out at one place of
the drawing on both pages that share it.
"""

from dataclasses import dataclass, replace

from shoplib.documents.paper import BAR, Paper
from shoplib.draw.lettering import wrapped
from shoplib.draw.scene import Point, Rect
from shoplib.draw.true_scale import (
    LETTERS,
    Area,
    Item,
    Layer,
    Ring,
    Stroke,
    TrueDrawing,
    Words,
    cross,
    frame,
    true_svg,
)
from shoplib.measure import INCH, INCH_STYLE, MM, Style, to_step, write_length
from shoplib.printed.typeset.blocks import Block, NewPage, WholePage

TRUE = "True scale: print at 100 % (actual size), not fitted to the page. Measure both bars before you use it."

BARE = "no mark on it, it joins its neighbours"
"""Said in the title of a page that has lines alone."""

_WASTE, _LAP = 6 * MM, 12 * MM
"""What a page shows before its seam and cuts off there, and what the page under it shows beyond: the strip for glue."""
GUTTER = 9.0
"""At the left and at the foot of a page, in mm: the bars."""
_GUTTER = round(GUTTER * MM)
_TOLD = 42 * MM
"""What the words above the upright bar take."""
_LINE, _TITLE, _LARGE = 3.6, 6.2, 3.8
_MAP = 5 * MM
_REGISTER = 5 * MM
_AWAY = round(4.2 * MM)
"""How far from a seam its words stand: clear of the register marks."""
_FREE = 12 * MM
"""Farther than this from a seam nothing is in its way."""


@dataclass(frozen=True, slots=True)
class Head:
    """What stands at the head of every page: its title, and lines of what it is for and how it is used.

    The first of the `lines` stands on every page, the others on the first alone.
    """

    title: str
    lines: tuple[str, ...]
    alt: str


@dataclass(frozen=True, slots=True)
class Parting:
    """Where a drawing is parted: its seams across (the places, from the left) and up (from the top down), in ticks."""

    across: tuple[int, ...]
    up: tuple[int, ...]

    @property
    def columns(self) -> int:
        """How many pages side by side."""
        return len(self.across) + 1

    @property
    def rows(self) -> int:
        """How many pages one below another."""
        return len(self.up) + 1

    @property
    def count(self) -> int:
        """How many pages."""
        return self.columns * self.rows


def parted(drawing: TrueDrawing, window: Point) -> Parting:
    """The fewest pages whose windows cover the drawing, each lapping over the next.

    A seam goes near its even share, and where there is room keeps clear of holes and of lines that run along it.

    >>> flat = TrueDrawing((0, 0, 300 * MM, 90 * MM), (Ring((150 * MM, 45 * MM), 6 * MM),))
    >>> seams = parted(flat, (178 * MM, 215 * MM))
    >>> seams.count, [seam // MM for seam in seams.across]
    (2, [135])
    """
    a, b, c, d = drawing.bounds
    across = [(near, far, ranked) for item in drawing.items for near, far, ranked in _shy(item, 0)]
    up = [(-far, -near, ranked) for item in drawing.items for near, far, ranked in _shy(item, 1)]
    return Parting(_seams_along(a, c, window[0], across), tuple(-y for y in _seams_along(-d, -b, window[1], up)))


_Shy = tuple[int, int, bool]
"""From where to where a seam should not run, and whether words alone are there."""


def _shy(item: Item, along: int) -> list[_Shy]:
    """What a seam across this axis should not run through: holes, lines along the seam, words."""
    near, far = item.around[along], item.around[along + 2]
    if isinstance(item, Words):
        return [(near, far, item.turned != (along == 0))] if item.stays or item.turned == (along == 0) else []
    if isinstance(item, Ring):
        return [(near, far, False)]
    return [(end, end, False) for end in (near, far)]


def _seams_along(low: int, high: int, most: int, shy: list[_Shy]) -> tuple[int, ...]:
    """Seams from `low` to `high`, so that no page shows more than `most`."""
    over = _WASTE + _LAP
    count = 1 if high - low <= most else -((over - (high - low)) // (most - over))
    seams: list[int] = []
    for number in range(1, count):
        last = seams[-1] + most - over if seams else low + most - _LAP
        first = high - most + _WASTE - (count - 1 - number) * (most - over)
        even = low + (high - low) * number // count
        tried = [min(max(even, first), last), *range(first, last + 1, MM)]
        seams.append(max(tried, key=lambda seam: (
            min(_clear(seam, [(a, b) for a, b, words in shy if not words]), _FREE),
            min(_clear(seam, [(a, b) for a, b, words in shy if words]), MM), -abs(seam - even))))
    return tuple(seams)


def _clear(seam: int, shy: list[tuple[int, int]]) -> int:
    """How far the nearest of the spans is away."""
    return min((max(near - seam, seam - far, 0) for near, far in shy), default=_FREE)


def tiled(
    drawing: TrueDrawing, head: Head, paper: Paper, style: Style, ways: tuple[bool, ...] = (False, True)
) -> list[Block]:
    """The pages of a drawing, standing or lying (one of `ways`), whichever takes fewer; it is never turned over."""
    found = []
    for lying in ways:
        room = tuple(round(side * MM) for side in paper.room(lying))
        high = _head_height(head, room[0])
        parting = parted(drawing, (room[0] - _GUTTER, room[1] - _GUTTER - high))
        found.append((parting.count, lying, parting, room, high))
    _, lying, parting, room, high = min(found, key=lambda one: one[:2])
    blocks: list[Block] = []
    for row in range(parting.rows):
        for column in range(parting.columns):
            name = tile_name(row, column)
            alt = f"{head.title}, in true scale{f', page {name}' if parting.count > 1 else ''}. {head.alt}"
            svg = true_svg(room, _page(drawing, head, parting, (column, row), room, high, style), head.title, alt)
            blocks += [NewPage(lying), WholePage(svg, alt, *paper.room(lying))]
    return blocks


def alone(drawing: TrueDrawing, head: Head, style: Style) -> str:
    """The whole drawing as one SVG, with its head and its bars, whatever its size."""
    wide, tall = drawing.size
    room_wide = max(wide + _GUTTER, 180 * MM)
    high = _head_height(head, room_wide)
    size = (room_wide, max(tall + _GUTTER, _GUTTER + BAR + _TOLD) + high)
    layers = _page(drawing, head, Parting((), ()), (0, 0), size, high, style)
    return true_svg(size, layers, head.title, f"{head.title}, in true scale. {head.alt}")


def tile_name(row: int, column: int) -> str:
    """A letter for the row, from the top, and a number for the column, from the left.

    >>> tile_name(0, 0), tile_name(1, 2), tile_name(27, 0)
    ('A1', 'B3', 'AB1')
    """
    letters, row = "", row + 1
    while row:
        row, last = divmod(row - 1, 26)
        letters = chr(ord("A") + last) + letters
    return f"{letters}{column + 1}"


def _page(
    drawing: TrueDrawing, head: Head, parting: Parting, place: Point, room: Point, high: int, style: Style
) -> list[Layer]:
    """One page, from its lower left corner: the part of the drawing that it shows, seams, head and bars."""
    core = _core(drawing, parting, place)
    a, b, c, d = drawing.bounds
    left, top = max(core[0] - _WASTE, a), min(core[3] + _WASTE, d)
    right, bottom = min(core[2] + _LAP, c), max(core[1] - _LAP, b)
    upper = room[1] - high
    clip = (_GUTTER, upper - (top - bottom), _GUTTER + right - left, upper)
    origin = (_GUTTER - left, upper - top)
    shown = tuple(placed for item in drawing.items if (placed := _in_its_place(item, core, drawing.bounds)) is not None)
    return [
        Layer(shown, origin, clip),
        Layer(tuple(_seams(drawing, parting, place)), origin),
        Layer((*_head(head, parting, place, room, _is_bare(shown, core)), *_bars(style, room))),
    ]


def _is_bare(shown: tuple[Item, ...], core: Rect) -> bool:
    """Whether lines alone run over the page from the one before to the next: whoever looks for a mark finds none."""
    return not any(isinstance(item, Words | Ring) and _inside(item.around, core) for item in shown)


def _inside(rect: Rect, core: Rect) -> bool:
    return rect[0] < core[2] and core[0] < rect[2] and rect[1] < core[3] and core[1] < rect[3]


def _core(drawing: TrueDrawing, parting: Parting, place: Point) -> Rect:
    """What of the drawing is this page's own: from seam to seam."""
    (column, row), (a, b, c, d) = place, drawing.bounds
    across, up = (a, *parting.across, c), (d, *parting.up, b)
    return across[column], up[row + 1], across[column + 1], up[row]


def _in_its_place(item: Item, core: Rect, bounds: Rect) -> Item | None:
    """Lines as they are, and words that stay; others on the page that has their middle, moved along their line so that
    no seam parts them.

    Words that a seam parts all the same stand on both pages, and join where those are glued.
    """
    if not isinstance(item, Words):
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
    if not shift:
        return item
    x, y = item.at
    at = (x, y + shift) if item.turned else (x + shift, y)
    return replace(item, at=at)


def _seams(drawing: TrueDrawing, parting: Parting, place: Point) -> list[Item]:
    """The seams of a page, with what is done at each, and the register marks on them."""
    column, row = place
    left, bottom, right, top = _core(drawing, parting, place)
    here = tile_name(row, column)
    items: list[Item] = []
    for number in (column, column + 1):
        if not 0 < number < parting.columns:
            continue
        x = parting.across[number - 1]
        items.append(Stroke(((x, bottom), (x, top)), "seam"))
        for part in (1, 3):
            items += register((x, bottom + (top - bottom) * part // 4))
        at, text = _told(number == column, here, tile_name(row, column - 1), tile_name(row, column + 1))
        items.append(Words((x + at, bottom + 2 * MM), text, 2.2, turned=True, plate=True))
    for number in (row, row + 1):
        if not 0 < number < parting.rows:
            continue
        y = parting.up[number - 1]
        items.append(Stroke(((left, y), (right, y)), "seam"))
        for part in (1, 3):
            items += register((left + (right - left) * part // 4, y))
        at, text = _told(number == row, here, tile_name(row - 1, column), tile_name(row + 1, column))
        items.append(Words((left + 2 * MM, y - at), text, 2.2, plate=True))
    return items


def _told(own: bool, here: str, before: str, after: str) -> tuple[int, str]:
    """How far beyond a seam the words stand, and what they say: on the page that is cut, and on the one under it."""
    if own:
        return -_AWAY, f"Cut {here} along this line and glue it over {before}, mark on mark."
    return _AWAY, f"Leave this strip for the glue: {after} goes over it, its cut edge on this line."


def register(at: Point) -> tuple[Item, ...]:
    """A register mark: a ring of straight lines and a cross, half of which is left on either page at the seam."""
    x, y = at
    half = _REGISTER // 2
    diamond = Stroke(((x - half, y), (x, y + half), (x + half, y), (x, y - half), (x - half, y)), "register")
    return (*cross(at, half, "register"), diamond)


def _head_height(head: Head, width: int) -> int:
    most = max(sum(len(_wrapped(line, width)) for line in _told_on(head, first)) for first in (True, False))
    return round((_TITLE + _LINE * (most + 1) + 2) * MM)


def _told_on(head: Head, first: bool) -> tuple[str, ...]:
    """The lines on the first page, and on the others."""
    if first or len(head.lines) == 1:
        return head.lines
    return (*head.lines[:1], f"How to use it: see page {tile_name(0, 0)}.")


def _wrapped(line: str, width: int) -> list[str]:
    return wrapped(line, LETTERS, width / MM - 34)


def _head(head: Head, parting: Parting, place: Point, room: Point, bare: bool) -> list[Item]:
    """Title, how to print, what it is for; the map of the pages at the right."""
    column, row = place
    several = parting.count > 1
    y = room[1] - 3 * MM
    title = f"{head.title}, page {tile_name(row, column)}" if several else head.title
    if several and bare:
        title = f"{title}: {BARE}"
    items: list[Item] = [Words((0, y), title, _LARGE, bold=True)]
    y -= round(_TITLE * MM)
    for number, line in enumerate((TRUE, *_told_on(head, place == (0, 0)))):
        for text in _wrapped(line, room[0]):
            items.append(Words((0, y), text, LETTERS, bold=number == 0))
            y -= round(_LINE * MM)
    return items + (_map(parting, place, room) if several else [])


def _map(parting: Parting, place: Point, room: Point) -> list[Item]:
    """The pages as they are glued together, this one tinted."""
    cell = min(_MAP, 30 * MM // parting.columns, 30 * MM // parting.rows)
    items: list[Item] = []
    left, top = room[0] - parting.columns * cell - MM, room[1] - MM
    for row in range(parting.rows):
        for column in range(parting.columns):
            x, y = left + column * cell, top - (row + 1) * cell
            rect = (x, y, x + cell, y + cell)
            if (column, row) == place:
                items.append(Area(rect, "#b9bec5"))
            items.append(frame(rect))
            name = tile_name(row, column)
            items.append(Words((x + cell // 2, y + cell // 2), name, cell / MM * 0.4, "middle"))
    return items


def _bars(style: Style, room: Point) -> list[Item]:
    """The bar across at the foot and the bar up at the left, with their ends and what they measure."""
    inches = write_length(to_step(BAR, INCH // 16), INCH_STYLE)
    text = f"100 mm ({inches}, about)" if style.unit == "in" else "100 mm"
    low, end = 4 * MM, MM + MM // 2
    items: list[Item] = [
        Stroke(((_GUTTER, low), (_GUTTER + BAR, low)), "bar"), Stroke(((low, _GUTTER), (low, _GUTTER + BAR)), "bar"),
    ]
    for at in (_GUTTER, _GUTTER + BAR):
        items += [Stroke(((at, low - end), (at, low + end))), Stroke(((low - end, at), (low + end, at)))]
    items.append(Words((_GUTTER + BAR + 3 * MM, low), f"{text} between the end lines", 2.4))
    items.append(Words((low, _GUTTER + BAR + 3 * MM), text, 2.4, turned=True))
    return items
