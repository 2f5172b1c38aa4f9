"""What the two heavy lines of a template lie on: edges of the board, or lines drawn on it where a hole is far off.

A page with no hole in it would only carry the distance, which a tape carries as well.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from shoplib.draw.scene import Point, Rect
from shoplib.draw.true_scale import LETTERS, Item, LineName, Stroke
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM, Style
from shoplib.words.naming import and_list

_INSIDE = round(LETTERS * MM * 1.1)
"""How far inside a heavy line its name stands."""
_STANDING, _LYING = (172 * MM, 190 * MM), (243 * MM, 132 * MM)
"""What one page of either paper shows of a drawing, standing and lying, below a head of seven lines."""


@dataclass(frozen=True, slots=True)
class Rest:
    """An `edge` of the board by its name, or, `far` from it (ticks), each line that the template is laid on in turn."""

    edge: str
    far: tuple[int, ...] = ()

    def said(self, page: Writing) -> str:
        """What is written beside the heavy line.

        >>> from shoplib.measure import MM_STYLE
        >>> page = Writing(MM_STYLE)
        >>> Rest("left end").said(page), Rest("left end", (200 * MM,)).said(page)
        ('left end: flush with this line', 'on the line 200 mm from the left end')
        >>> Rest("bottom end", (200 * MM, 400 * MM)).said(page)
        'on each line drawn from the bottom end'
        """
        if not self.far:
            return f"{self.edge}: flush with this line"
        return (f"on the line {page.length(self.far[0])} from the {self.edge}" if len(self.far) == 1
                else f"on each line drawn from the {self.edge}")

    def to_draw(self, page: Writing) -> str:
        """What is drawn on the board before the template is laid on it; nothing where an edge will do.

        >>> from shoplib.measure import MM_STYLE
        >>> Rest("left end", (200 * MM,)).to_draw(Writing(MM_STYLE))
        'Draw a line 200 mm from the left end, parallel to it. '
        >>> Rest("bottom end", (200 * MM, 400 * MM)).to_draw(Writing(MM_STYLE))
        'Draw lines 200 mm and 400 mm from the bottom end, parallel to it, and lay the template on each in turn. '
        """
        if not self.far:
            return ""
        if len(self.far) == 1:
            return f"Draw a line {page.length(self.far[0])} from the {self.edge}, parallel to it. "
        return (f"Draw lines {and_list([page.length(far) for far in self.far])} from the {self.edge}, parallel to it, "
                "and lay the template on each in turn. ")


@dataclass(frozen=True, slots=True)
class Rests:
    """The upright heavy line and the level one; `left` where the upright one is at the left of the paper."""

    upright: Rest
    level: Rest
    left: bool

    @property
    def flush(self) -> str:
        """Where its heavy lines are laid.

        >>> Rests(Rest("left end"), Rest("bottom edge"), True).flush
        'its heavy lines flush with the left end and bottom edge'
        >>> Rests(Rest("left end", (200 * MM,)), Rest("bottom edge"), True).flush
        'its heavy lines flush with the bottom edge, and on that line'
        """
        edges = and_list([rest.edge for rest in (self.upright, self.level) if not rest.far])
        drawn = [rest for rest in (self.upright, self.level) if rest.far]
        lines = "that line" if sum(len(rest.far) for rest in drawn) == 1 else "those lines"
        if not edges:
            return f"its heavy lines on {lines}"
        return f"its heavy lines flush with the {edges}{f', and on {lines}' if drawn else ''}"

    def to_draw(self, page: Writing) -> str:
        """Both lines to draw, or nothing."""
        return self.upright.to_draw(page) + self.level.to_draw(page)

    def drawn(self, region: Rect) -> Iterator[Item]:
        """The two heavy lines, at the left or right end and at the foot of the region."""
        yield Stroke(self._upright(region), "edge")
        yield Stroke(self._level(region), "edge")

    def names(self, region: Rect, page: Writing) -> tuple[LineName, LineName]:
        """What is written beside each, in few words where there is little room."""
        off = _INSIDE if self.left else -_INSIDE
        return (LineName(*self._upright(region), off, (self.upright.said(page), self.upright.edge)),
                LineName(*self._level(region), _INSIDE, (self.level.said(page), self.level.edge)))

    def _upright(self, region: Rect) -> tuple[Point, Point]:
        x = region[0 if self.left else 2]
        return (x, region[1]), (x, region[3])

    @staticmethod
    def _level(region: Rect) -> tuple[Point, Point]:
        return (region[0], region[1]), (region[2], region[1])


def on_one_page(size: Point) -> bool:
    """Whether a page of either paper shows so much, width and height in ticks.

    >>> on_one_page((160 * MM, 160 * MM)), on_one_page((240 * MM, 160 * MM))
    (True, False)
    """
    return any(size[0] <= wide and size[1] <= high for wide, high in (_STANDING, _LYING))


def whole_before(place: int, before: int, style: Style) -> int:
    """The last whole inch, or 10 mm, that is `before` or more short of a place; 0 where there is none.

    >>> from shoplib.measure import MM_STYLE
    >>> whole_before(132 * MM, 30 * MM, MM_STYLE) // MM
    100
    """
    whole = INCH if style.unit == "in" else 10 * MM
    return max((place - before) // whole * whole, 0)
