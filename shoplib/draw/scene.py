"""What a drawing shows, as pure data: shapes, lines, text, dimensions and leaders.

Coordinates are ticks, x to the right and y up. A scene knows nothing of boards, of colours or of paper:
a view fills it, and a pen draws it. Every text that stands beside a size is written by the view, in the
unit that `note` names.
"""

from dataclasses import dataclass, replace
from typing import Self

Point = tuple[int, int]
Rect = tuple[int, int, int, int]
"""Left, bottom, right, top."""

BRACKETS = "In brackets: true size less printed size."

SIDES = ("below", "above", "left", "right")


@dataclass(frozen=True, slots=True)
class Shape:
    r"""One flat figure made of rectangles that may touch; drawn with one outline round the whole.

    `name` is shown when the pointer rests on the figure. `hatch` is "" or one of `/`, `\` and `x`.
    """

    rects: tuple[Rect, ...]
    fill: str
    name: str = ""
    hatch: str = ""


@dataclass(frozen=True, slots=True)
class Slanted:
    r"""One flat figure with straight edges that need not be level: its corners in turn, convex.

    `hatch` is "" or one of `/` and `\`.
    """

    corners: tuple[Point, ...]
    fill: str
    name: str = ""
    hatch: str = ""


@dataclass(frozen=True, slots=True)
class Region:
    r"""One flat figure with straight edges and any outline: its rings of corners, the first round the whole, the others
    round what is open in it.

    `dotted` marks it with small dots, as end grain is; `hatch` is "" or one of `/` and `\`, as cut wood is.
    """

    rings: tuple[tuple[Point, ...], ...]
    fill: str
    name: str = ""
    dotted: bool = False
    hatch: str = ""


@dataclass(frozen=True, slots=True)
class Disc:
    """A round hole or fitting: its centre and diameter."""

    centre: Point
    diameter: int
    fill: str = "air"
    name: str = ""


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line.

    `kind` is "edge", "hidden" (dashed), "centre" (dash and dot), "thin", "band" (edging), "grain" (arrows), "hatch"
    (of cut wood) or "together" (thin and dashed, along which boards come together); in a chart "grid" or "curve".
    """

    start: Point
    end: Point
    kind: str = "edge"


@dataclass(frozen=True, slots=True)
class Label:
    """Text that belongs inside `room`. The first of `texts` that fits is written, upright or turned.

    Each text may hold line breaks. Where none fits, the last is written beside the drawing with a leader, so
    that nothing is lost. `plate` puts white behind the words, where they stand on a hatch. `sizes` are those that
    all texts but the last tell, each with what it is called, for whoever asks. `rooms` are others to try where none
    fits `room`; `about` is the thing that is named, where that is not `room` itself: a leader begins in it,
    and goes to the nearest of `sides`. With `fullest` an earlier text that fits turned comes before a later one that
    fits upright.
    """

    room: Rect
    texts: tuple[str, ...]
    plate: bool = False
    sizes: tuple[tuple[str, int], ...] = ()
    rooms: tuple[Rect, ...] = ()
    about: Rect | None = None
    sides: tuple[str, ...] = SIDES
    fullest: bool = False


@dataclass(frozen=True, slots=True)
class EdgeText:
    """Text along one edge of `room`, on the outside of it.

    With `lines`, the positions along that edge where leaders and extension lines go out, it keeps clear of them, and
    stands beyond all dimensions of its side where it has no room so; without, in the middle, whatever its length.
    """

    room: Rect
    side: str
    text: str
    lines: tuple[int, ...] | None = None


@dataclass(frozen=True, slots=True)
class Chain:
    """Dimensions from point to point along one side of the drawing.

    `at` are the positions along that side, rising; `texts` stand between them (one fewer), and an empty text
    leaves its stretch without a dimension. Row 0 is nearest the drawing. `foot` is where the extension lines
    begin: one position across, or one for each position; None is the edge of the drawing. `sizes` are the
    lengths that the texts tell, where something is drawn larger than it is.
    """

    side: str
    row: int
    at: tuple[int, ...]
    texts: tuple[str, ...]
    foot: int | tuple[int, ...] | None = None
    sizes: tuple[int, ...] = ()


@dataclass(frozen=True, slots=True)
class Running:
    """Distances from one datum: a ringed origin, and at each position the distance from it."""

    side: str
    row: int
    datum: int
    at: tuple[int, ...]
    texts: tuple[str, ...]
    foot: int | tuple[int, ...] | None = None


@dataclass(frozen=True, slots=True)
class Leader:
    """A line from a point of the drawing to a text that stands beside it; `ringed` for a short tag.

    `size` is the length in ticks that the text ends in, so that it can be asked; 0 where it tells none.
    """

    point: Point
    side: str
    text: str
    ringed: bool = False
    size: int = 0


@dataclass(frozen=True, slots=True)
class Tag:
    """A short text in a small box on a line, anywhere along it where it lies on no words, inside `within`.

    Where there is no such place, it stands beside the drawing with a leader.
    """

    start: Point
    end: Point
    text: str
    within: Rect


@dataclass(frozen=True, slots=True)
class Grain:
    """An arrow from left to right along the grain, and the word: both stand in the first of `rooms` that holds them."""

    rooms: tuple[Rect, ...]


@dataclass(frozen=True, slots=True)
class Told:
    """A line of words round a drawing, its title, its note or one of its legend, that tells `sizes`.

    Each stands after what it is called, in ticks, so that the line can be asked as a label can.
    """

    line: str
    sizes: tuple[tuple[str, int], ...]


Item = Shape | Slanted | Region | Disc | Line | Label | EdgeText | Chain | Running | Leader | Tag | Grain


@dataclass(frozen=True)
class Scene:
    """A whole drawing. `alt` says in words what it shows; `legend` stands under it, one line each.

    `bounds` is the space that the drawn thing fills; dimensions, leaders and texts stand round it.
    `alarms` are what must be read before anything is cut; they stand framed above the drawing. `told` are those
    of title, note and legend that tell sizes.

    >>> Scene("Bench", "inches", "A square bench.", (0, 0, 10, 10)).size
    (10, 10)
    """

    title: str
    note: str
    alt: str
    bounds: Rect
    items: tuple[Item, ...] = ()
    legend: tuple[str, ...] = ()
    alarms: tuple[str, ...] = ()
    told: tuple[Told, ...] = ()

    @property
    def size(self) -> Point:
        """Width and height of the drawn thing, in ticks."""
        left, bottom, right, top = self.bounds
        return right - left, top - bottom

    @property
    def noted(self) -> str:
        """The note, and what brackets mean where a text has a rest in them.

        >>> Scene("Bench", "All sizes in inches.", "A bench.", (0, 0, 9, 9), (Leader((0, 0), "left", "9"),)).noted
        'All sizes in inches.'
        >>> Scene("Bench: 9 (+0.003)", "All sizes in inches.", "A bench.", (0, 0, 9, 9)).noted
        'All sizes in inches. In brackets: true size less printed size.'
        """
        texts = [self.title, *self.legend, *self.alarms]
        for item in self.items:
            if isinstance(item, Chain | Running | Label):
                texts += item.texts
            elif isinstance(item, Leader | EdgeText):
                texts.append(item.text)
        return f"{self.note} {BRACKETS}" if any("(+" in text or "(-" in text for text in texts) else self.note

    def with_items(
        self, *items: Item, legend: tuple[str, ...] = (), alt: str = "", told: tuple[Told, ...] = ()
    ) -> Self:
        """The same drawing with more on top of it, more lines under it, and more said and told of it."""
        return replace(
            self,
            items=self.items + items,
            legend=self.legend + legend,
            alt=f"{self.alt} {alt}".strip(),
            told=self.told + told,
        )

    def with_alarms(self, alarms: tuple[str, ...]) -> Self:
        """The same drawing with these framed above it, and said first to those who do not see it.

        >>> Scene("Bench", "inches", "A bench.", (0, 0, 9, 9)).with_alarms(("Stop: mend it.",)).alt
        'Stop: mend it. A bench.'
        """
        return replace(self, alarms=self.alarms + alarms, alt=" ".join([*alarms, self.alt]))
