"""What stands about a drawing in true scale: the head of its page, the map of its pages, and the check bars."""

from dataclasses import dataclass

from shoplib.documents.paper import AT_FULL_SIZE, BAR
from shoplib.draw.lettering import wrapped
from shoplib.draw.scene import Point
from shoplib.draw.true_scale import LETTERS, Area, Item, Stroke, TextLine, frame
from shoplib.measure import INCH, INCH_STYLE, MM, Style, to_step, write_length
from shoplib.printed.true_scale.parting import Parting, Tile, tile_name

PRINTED = (
    f"Print {AT_FULL_SIZE}. On every page measure both bars, across and up: each is 100 mm long. Where one is not, "
    "print anew."
)
DAMP = (
    "Paper grows and shrinks with the damp: hold a long one against the tape before you trust it. Where the two "
    "differ, the written distance holds."
)
"""Common practice, no source."""

TRUE = f"True scale: print {AT_FULL_SIZE}. Measure both bars before you use it."

GUTTER = 9.0
"""At the left and at the foot of a page, in mm: the bars."""
BESIDE_BAR = 18 * MM
"""What the words above the upright bar take."""
_LINE, _TITLE, _LARGE = 3.8, 6.4, 3.8
_BESIDE_MAP = 34
"""What the map takes beside the words, in mm."""
MAP, _LOW = 5.0, 3.2
"""How wide a page is on the map, in mm: what the map of a column takes, which may hang lower than the head; and how
high at least, so that its name has room."""


@dataclass(frozen=True, slots=True)
class Head:
    """What stands at the head of every page: its title, and lines of what it is for and how it is used.

    The first of the `lines` stands on every page, the others on the first alone.
    """

    title: str
    lines: tuple[str, ...]
    alt: str

    def told_on(self, first: bool) -> tuple[str, ...]:
        """The lines on the first page, and on the others.

        >>> Head("Template 1", ("For the left side.", "Drill from inside."), "").told_on(False)
        ('For the left side.', 'How to use it: see page A1.')
        """
        if first or len(self.lines) == 1:
            return self.lines
        return (*self.lines[:1], f"How to use it: see page {tile_name(0, 0)}.")

    def height(self, width: int) -> int:
        """What it takes of a page so wide (ticks), whichever of its pages it is.

        >>> Head("Template 1", ("For the left side.",), "").height(180 * MM) // MM
        16
        """
        most = max(sum(len(_wrapped(line, width)) for line in self.told_on(first)) for first in (True, False))
        return round((_TITLE + _LINE * (most + 1) + 2) * MM)


def _wrapped(line: str, width: int) -> list[str]:
    return wrapped(line, LETTERS, width / MM - _BESIDE_MAP)


def head_drawn(head: Head, tile: Tile, room: Point) -> list[Item]:
    """Title, how to print, what it is for; the map of the pages at the right.

    >>> [tile] = Parting((0, 0, 9, 9)).tiles()
    >>> drawn = head_drawn(Head("Template 1", ("For the left side.",), ""), tile, (180 * MM, 240 * MM))
    >>> [words.text for words in drawn] == ["Template 1", TRUE, "For the left side."]
    True
    """
    several = tile.parting.count > 1
    y = room[1] - 3 * MM
    title = f"{head.title}, page {tile.name}" if several else head.title
    items: list[Item] = [TextLine((0, y), title, _LARGE, bold=True)]
    y -= round(_TITLE * MM)
    for number, line in enumerate((TRUE, *head.told_on(tile.column == tile.row == 0))):
        for text in _wrapped(line, room[0]):
            items.append(TextLine((0, y), text, LETTERS, bold=number == 0))
            y -= round(_LINE * MM)
    return items + (_map(tile, room) if several else [])


def _map(here: Tile, room: Point) -> list[Item]:
    """The pages as they are glued together, this one tinted."""
    parting: Parting = here.parting
    wide = min(round(MAP * MM), 30 * MM // parting.columns)
    high = max(min(wide, 30 * MM // parting.rows), round(_LOW * MM))
    letters = min(LETTERS, wide / MM * LETTERS / MAP)
    items: list[Item] = []
    left, top = room[0] - parting.columns * wide - MM, room[1] - MM
    for tile in parting.tiles():
        x, y = left + tile.column * wide, top - (tile.row + 1) * high
        rect = (x, y, x + wide, y + high)
        if tile == here:
            items.append(Area(rect, "#b9bec5"))
        items.append(frame(rect))
        items.append(TextLine((x + wide // 2, y + high // 2), tile.name, letters, "middle"))
    return items


def bars_drawn(style: Style) -> list[Item]:
    """The bar across at the foot and the bar up at the left, with their ends and what they measure.

    >>> from shoplib.measure import MM_STYLE
    >>> bars = [item.around for item in bars_drawn(MM_STYLE) if isinstance(item, Stroke) and item.kind == "bar"]
    >>> [((c - a) // MM, (d - b) // MM) for a, b, c, d in bars]
    [(100, 0), (0, 100)]
    """
    inches = write_length(to_step(BAR, INCH // 16), INCH_STYLE)
    text = f"100 mm ({inches}, about)" if style.unit == "in" else "100 mm"
    gutter = round(GUTTER * MM)
    low, end = 4 * MM, MM + MM // 2
    items: list[Item] = [
        Stroke(((gutter, low), (gutter + BAR, low)), "bar"), Stroke(((low, gutter), (low, gutter + BAR)), "bar"),
    ]
    for at in (gutter, gutter + BAR):
        items += [Stroke(((at, low - end), (at, low + end))), Stroke(((low - end, at), (low + end, at)))]
    items.append(TextLine((gutter + BAR + 3 * MM, low), f"{text} between the end lines", LETTERS))
    items.append(TextLine((low, gutter + BAR + 3 * MM), "100 mm", LETTERS, turned=True))
    return items
