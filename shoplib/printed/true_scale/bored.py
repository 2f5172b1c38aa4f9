"""A face with holes as its template shows it: which part of it, and which edges or drawn lines the paper lies on."""

from collections.abc import Iterable
from dataclasses import dataclass

from shoplib.draw.face_on import FaceOn
from shoplib.draw.lettering import text_width
from shoplib.draw.scene import Point, Rect
from shoplib.draw.true_scale import LETTERS
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM, Style
from shoplib.model.board import Board, Hole
from shoplib.printed.true_scale.rests import Rest, Rests, on_one_page, whole_before

_TAPE = 10 * MM
"""How far the paper goes on beyond the words of the farthest hole."""
_WHOLE = 15 * MM
"""Where the board ends so near after that, it is drawn to its end."""
_OVER, _LEAST = 22 * MM, 62 * MM
"""How far it goes on over the highest hole, and how high it is at least, for the name of its upright line."""
_BEFORE, _FAR = 30 * MM, 150 * MM
"""A drawn line is a whole inch or 10 mm from its edge, and at least the first short of the nearest hole. Where nothing
goes on one page, it is drawn where that hole is farther than the second."""


@dataclass(frozen=True, slots=True)
class Bored:
    """A face, its holes by where their centres are on it (ticks from its lower left corner), and what the paper lies
    on. `rows` are the heights of all rows where one row of holes is drawn for all, else empty; `beyond` is how far the
    paper goes on beside a hole, for its words."""

    face: FaceOn
    beyond: int
    holes: tuple[tuple[Point, Hole], ...]
    rests: Rests
    rows: tuple[int, ...] = ()

    @property
    def region(self) -> Rect:
        """The part of the face that is drawn; the upright heavy line is one of its sides, the level one its foot."""
        start = sum(self.rests.upright.far), self.rests.level.far[0] if self.rests.level.far else 0
        return _region(_Wide(self.face, self.beyond), [spot for spot, _ in self.holes], start)

    def from_side(self, spot: Point) -> int:
        """How far a hole is from the upright reference edge (ticks)."""
        return spot[0] if self.face.datum_left else self.face.size[0] - spot[0]


@dataclass(frozen=True, slots=True)
class _Wide:
    """A face, and how far its template goes on beside a hole."""

    face: FaceOn
    beyond: int


def holes_of(board: Board, kind: str) -> list[Hole]:
    """The holes of a kind that are bored into its faces.

    >>> from shoplib.model.placement import Placement
    >>> front = Board("front", "case", 3, "s", 90, 50, 2, Placement((0, 0, 0), ("+x", "+z", "-y")))
    >>> holes_of(front, "pull")
    []
    """
    return [cut for cut in board.cuts if isinstance(cut, Hole) and cut.kind == kind and cut.along == "w"]


def bored(face: FaceOn, holes: Iterable[Hole], style: Style) -> Bored:
    """From the edges where all goes on one page; else from a drawn line, or one row that serves for all, or in pages.

    >>> from shoplib.measure import MM_STYLE
    >>> from shoplib.model.placement import Placement
    >>> place = Placement((0, 0, 0), ("+x", "+z", "-y"))
    >>> front = Board("front", "case", 3, "s", 600 * MM, 150 * MM, 18 * MM, place)
    >>> hole = Hole("pull", (300 * MM, 75 * MM, 18 * MM), "w", 5 * MM, 18 * MM)
    >>> bored(FaceOn(front, "front"), [hole], MM_STYLE).rests.flush
    'its heavy lines flush with the bottom edge, and on that line'
    """
    spots = {face.hole(hole.centre): hole for hole in holes}
    wide = _Wide(face, _words_wide(face, spots, Writing(style)))
    across = [x if face.datum_left else face.size[0] - x for x, _ in spots]
    levels = tuple(sorted({y for _, y in spots}))
    nearest = (min(across), levels[0])
    begins = tuple(whole_before(place, _BEFORE, style) for place in nearest)
    tried = ((0, 0), (begins[0], 0), (0, begins[1]), begins)
    start = next((one for one in tried if on_one_page(_size(wide, spots, one))), None)
    if start is None and (row := _one_for_all(wide, spots, levels, style, begins[0])):
        return row
    start = start or tuple(begin if place > _FAR else 0 for place, begin in zip(nearest, begins, strict=True))
    return Bored(face, wide.beyond, tuple(spots.items()), _rests(face, start[0], (start[1],) if start[1] else ()))


def _words_wide(face: FaceOn, spots: Iterable[Point], page: Writing) -> int:
    """What the words beside any of the holes take, from its centre on."""
    side = "left" if face.datum_left else "right"
    told = [f"{page.length(x if face.datum_left else face.size[0] - x)} from {face.edge(side)}" for x, _ in spots]
    told += [f"{page.length(y)} from {face.edge('below')}" for _, y in spots]
    return round(max(text_width(text, LETTERS) for text in told) * MM) + _TAPE


def _one_for_all(
    wide: _Wide, spots: dict[Point, Hole], levels: tuple[int, ...], style: Style, begin: int
) -> Bored | None:
    """The lowest of several rows, where all have equal holes at the same places across."""
    rows = [{x: (h.diameter, h.depth) for (x, y), h in spots.items() if y == level} for level in levels]
    under = INCH if style.unit == "in" else 30 * MM
    if len(rows) < 2 or any(row != rows[0] for row in rows) or levels[0] <= under:
        return None
    row = {spot: hole for spot, hole in spots.items() if spot[1] == levels[0]}
    lines = tuple(level - under for level in levels)
    across = next((one for one in (0, begin) if on_one_page(_size(wide, row, (one, lines[0])))), 0)
    return Bored(wide.face, wide.beyond, tuple(row.items()), _rests(wide.face, across, lines), levels)


def _rests(face: FaceOn, across: int, up: tuple[int, ...]) -> Rests:
    edge = face.edge("left" if face.datum_left else "right")
    return Rests(Rest(edge, (across,) if across else ()), Rest(face.edge("below"), up), face.datum_left)


def _size(wide: _Wide, spots: Iterable[Point], start: Point) -> Point:
    a, b, c, d = _region(wide, spots, start)
    return c - a, d - b


def _region(shown: _Wide, spots: Iterable[Point], start: Point) -> Rect:
    """As much of the face as its holes take, from `start`, which is counted from the reference edges."""
    (wide, high), spots, beyond = shown.face.size, list(spots), shown.beyond
    first, last = min(x for x, _ in spots), max(x for x, _ in spots)
    right = wide if wide - last <= beyond + _WHOLE else last + beyond
    left = 0 if first <= beyond + _WHOLE else first - beyond
    left, right = (start[0], right) if shown.face.datum_left else (left, wide - start[0])
    tallest = max(y for _, y in spots)
    top = high if high - tallest <= 2 * _OVER else tallest + _OVER
    return left, start[1], right, min(max(top, start[1] + _LEAST), high)
