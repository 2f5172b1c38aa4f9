"""Drawings in true scale: what is laid on the wood, in SVG of which one unit is one millimetre.

Items are plain values in ticks, x to the right and y up, as a scene has them; letters are sized in millimetres, for
they are as large on every paper. Nothing here is fitted or shrunk: that is what a template is for.
"""

from collections.abc import Iterable
from dataclasses import dataclass
from html import escape

from shoplib.draw.lettering import text_width
from shoplib.draw.marks import FONT, INK
from shoplib.draw.scene import Point, Rect
from shoplib.measure import MM

PENS = {
    "edge": (0.9, ""),
    "bar": (0.6, ""),
    "zero": (0.5, ""),
    "mark": (0.25, ""),
    "ring": (0.3, ""),
    "register": (0.22, ""),
    "thin": (0.18, ""),
    "hidden": (0.26, "2 1.2"),
    "centre": (0.24, "6 1.2 1.2 1.2"),
    "seam": (0.28, "1.6 1"),
}
"""For each kind of line: its width in mm, and its dashes.

An `edge` is one that the paper is laid against: three times as heavy as any line of what is drawn there, so that it is
known at arm's length (common practice, no source). `zero` is where a stick begins.
"""

LETTERS = 2.8
"""The usual letters, in mm: 8 points."""


@dataclass(frozen=True, slots=True)
class Stroke:
    """A line from point to point; `kind` is one of `PENS`."""

    points: tuple[Point, ...]
    kind: str = "thin"

    @property
    def around(self) -> Rect:
        """The box round it."""
        return _around(self.points)


@dataclass(frozen=True, slots=True)
class Ring:
    """A bored hole as large as it is."""

    centre: Point
    diameter: int

    @property
    def around(self) -> Rect:
        """The box round it."""
        (x, y), half = self.centre, self.diameter // 2
        return x - half, y - half, x + half, y + half


@dataclass(frozen=True, slots=True)
class Area:
    """A tinted rectangle: what will lie there."""

    around: Rect
    tint: str = "#e4e6e9"


@dataclass(frozen=True, slots=True)
class TextLine:
    """One line of text whose middle height is at `at`; `turned` reads upward, `plate` puts white behind it.

    One that `stays` belongs to its place, such as beside a hole; others may be moved along their line.
    """

    at: Point
    text: str
    size: float = LETTERS
    anchor: str = "start"
    turned: bool = False
    bold: bool = False
    plate: bool = False
    stays: bool = False

    @property
    def around(self) -> Rect:
        """The box that the words fill."""
        long = round(text_width(self.text, self.size) * (1.1 if self.bold else 1.0) * MM)
        half, (x, y) = round(self.size * 0.6 * MM), self.at
        before = {"start": 0, "middle": long // 2, "end": long}[self.anchor]
        if self.turned:
            return x - half, y - before, x + half, y - before + long
        return x - before, y - half, x - before + long, y + half


Item = Stroke | Ring | Area | TextLine


@dataclass(frozen=True, slots=True)
class LineName:
    """What a level or upright line is called: said beside it on every page that shows it, `off` to its right or above.

    The first of the `texts` that has room is said.
    """

    start: Point
    end: Point
    off: int
    texts: tuple[str, ...]

    @property
    def upright(self) -> bool:
        """Whether the line runs up the paper."""
        return self.start[0] == self.end[0]


@dataclass(frozen=True, slots=True)
class TrueDrawing:
    """Items, the `bounds` of the paper that they need (ticks), and the names of lines."""

    bounds: Rect
    items: tuple[Item, ...]
    names: tuple[LineName, ...] = ()

    @property
    def size(self) -> Point:
        """Width and height, in ticks."""
        left, bottom, right, top = self.bounds
        return right - left, top - bottom


@dataclass(frozen=True, slots=True)
class Layer:
    """Items of a page: `origin` is where on the page their (0, 0) comes to lie; what is outside `clip` (a part of the
    page) is not shown."""

    items: tuple[Item, ...]
    origin: Point = (0, 0)
    clip: Rect | None = None


def _around(points: Iterable[Point]) -> Rect:
    across, up = zip(*points, strict=True)
    return min(across), min(up), max(across), max(up)


def cross(centre: Point, arm: int, kind: str = "thin") -> tuple[Stroke, Stroke]:
    """Two lines that meet in a centre, each `arm` long to either side.

    >>> [stroke.points for stroke in cross((5, 5), 2)]
    [((3, 5), (7, 5)), ((5, 3), (5, 7))]
    """
    x, y = centre
    return Stroke(((x - arm, y), (x + arm, y)), kind), Stroke(((x, y - arm), (x, y + arm)), kind)


def frame(rect: Rect, kind: str = "thin") -> Stroke:
    """The four sides of a rectangle.

    >>> frame((0, 0, 4, 2)).points
    ((0, 0), (4, 0), (4, 2), (0, 2), (0, 0))
    """
    a, b, c, d = rect
    return Stroke(((a, b), (c, b), (c, d), (a, d), (a, b)), kind)


def true_svg(size: Point, layers: Iterable[Layer], title: str, alt: str) -> str:
    """A page of `size` (ticks) as SVG: width and height in mm, and one unit of its own is one mm.

    >>> text = true_svg((100 * MM, 50 * MM), [Layer((Stroke(((0, 0), (80000, 0))),))], "Bar", "A bar.")
    >>> text.partition("<title>")[0]
    '<svg xmlns="http://www.w3.org/2000/svg" role="img" width="100mm" height="50mm" viewBox="0 0 100 50">'
    >>> "M0 50L1 50" in text
    True
    """
    wide, high = size
    defined, shown = [], []
    for number, layer in enumerate(layers):
        if layer.clip is None:
            shown += [_svg(item, layer.origin, high) for item in layer.items]
            continue
        a, b, c, d = layer.clip
        defined.append(
            f'<clipPath id="part{number}"><rect x="{_mm(a)}" y="{_mm(high - d)}" width="{_mm(c - a)}" '
            f'height="{_mm(d - b)}"/></clipPath>'
        )
        x, y = layer.origin
        inside = (a - x, b - y, c - x, d - y)
        parts = "".join(_svg(item, layer.origin, high) for item in layer.items if _meet(item.around, inside))
        shown.append(f'<g clip-path="url(#part{number})">{parts}</g>')
    return "".join((
        '<svg xmlns="http://www.w3.org/2000/svg" role="img" ',
        f'width="{_mm(wide)}mm" height="{_mm(high)}mm" viewBox="0 0 {_mm(wide)} {_mm(high)}">',
        f"<title>{escape(title, quote=False)}</title><desc>{escape(alt, quote=False)}</desc>",
        f'<defs>{"".join(defined)}</defs>' if defined else "",
        f'<g fill="none" stroke="{INK}" font-family="{FONT}">{"".join(shown)}</g></svg>',
    ))


def _meet(one: Rect, other: Rect) -> bool:
    return one[0] <= other[2] and other[0] <= one[2] and one[1] <= other[3] and other[1] <= one[3]


def _mm(ticks: int) -> str:
    """Millimetres with four places: an eighth of a thousandth of what a pencil draws."""
    return f"{ticks / MM:.4f}".rstrip("0").rstrip(".")


def _svg(item: Item, origin: Point, high: int) -> str:
    """One item; the page's y runs down."""
    dx, dy = origin
    if isinstance(item, Stroke):
        wide, dash = PENS[item.kind]
        path = "L".join(f"{_mm(x + dx)} {_mm(high - y - dy)}" for x, y in item.points)
        dashes = f' stroke-dasharray="{dash}"' if dash else ""
        return f'<path d="M{path}" stroke-width="{wide:g}"{dashes}/>'
    if isinstance(item, Ring):
        x, y = item.centre
        return (f'<circle cx="{_mm(x + dx)}" cy="{_mm(high - y - dy)}" r="{_mm(item.diameter // 2)}" '
                f'stroke-width="{PENS["ring"][0]:g}"/>')
    if isinstance(item, Area):
        return _rectangle(item.around, origin, high, item.tint)
    return (_rectangle(item.around, origin, high, "#ffffff") if item.plate else "") + _text(item, origin, high)


def _rectangle(rect: Rect, origin: Point, high: int, paint: str) -> str:
    (a, b, c, d), (dx, dy) = rect, origin
    return (f'<rect x="{_mm(a + dx)}" y="{_mm(high - d - dy)}" width="{_mm(c - a)}" height="{_mm(d - b)}" '
            f'fill="{paint}" stroke="none"/>')


def _text(item: TextLine, origin: Point, high: int) -> str:
    x, y = (item.at[0] + origin[0]) / MM, (high - item.at[1] - origin[1]) / MM
    base = 0.36 * item.size  # half the height of a capital, as the pen of scenes has it
    if item.turned:
        place = f'transform="translate({x + base:.3f} {y:.3f}) rotate(-90)"'
    else:
        place = f'x="{x:.3f}" y="{y + base:.3f}"'
    anchor = "" if item.anchor == "start" else f' text-anchor="{item.anchor}"'
    heavy = ' font-weight="bold"' if item.bold else ""
    return (f'<text {place} font-size="{item.size:g}"{anchor}{heavy} fill="{INK}" stroke="none">'
            f"{escape(item.text, quote=False)}</text>")
