"""One small template for all slides or runners that are alike: laid on the front edge and at each height in turn.

The height comes from the spacer block or the story stick, as everywhere else; the paper gives the setback, the middle
line and the upper edge. All uprights share their front edge, so a face that looks the other way has the same paper
turned over.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from shoplib.building.datum import Datum, datum
from shoplib.building.riding import Riding, riding
from shoplib.draw.face_on import FaceOn
from shoplib.draw.scene import Rect
from shoplib.draw.slide_lines import side_towards
from shoplib.draw.true_scale import LETTERS, Area, Item, LineName, Stroke, TextLine, TrueDrawing, frame
from shoplib.lists.sides import looks
from shoplib.lists.writing import Writing
from shoplib.measure import MM, share
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.on_faces import OnFace, for_faces
from shoplib.printed.true_scale.template import SLIDES, STEP, Template, naming
from shoplib.words.naming import and_list, in_short

_WIDE = 150 * MM
"""How much of a slide is drawn, from the front edge on: what goes on one page."""
_NAME, _ROOM = 54 * MM, 6 * MM
"""How long the name of the front edge is, and what it needs beside that."""
_TALL = 26 * MM
"""A slide as high as this has its words in it."""
_EDGE, _INSIDE = 2 * MM, 3 * MM


@dataclass(frozen=True, slots=True)
class Bar:
    """A slide or runner as it lies on any upright: its height, how far it is set `back` from the front edge, and how
    far behind that edge it, or as much of it as is drawn, ends (ticks).
    """

    what: str
    high: int
    back: int
    end: int

    @property
    def of_wood(self) -> bool:
        """Whether it is a strip that has no holes of its own."""
        return self.what != "slide"


def slide_templates(cabinet: Cabinet, mark: str = "") -> list[Template]:
    """One for each kind of slide or runner that is set back alike; `mark` tells on the paper of which plan it is.

    >>> from shoplib.documents.examples import cabinet_from
    >>> [one.serves for one in slide_templates(cabinet_from("under_bench_case"))]
    ['left side, dividers 1 and 2, and right side']
    """
    alike: dict[Bar, list[tuple[OnFace, Riding]]] = {}
    for item in riding(cabinet):
        board = cabinet.by_name.get(item.on)
        if board and board.box.size[0] == board.thickness:
            edge, (_, front, low), (_, back, high) = board.box.low[1], item.box.low, item.box.high
            what = "slide" if item.bought else item.what
            bar = Bar(what, high - low, front - edge, min(back - edge, _WIDE))
            face = FaceOn(board, looks(board, 2, side_towards(board, item.box)))
            alike.setdefault(bar, []).append((OnFace(face, "front edge", face.datum_left), item))
    return [_of_bar(bar, found, cabinet, mark) for bar, found in alike.items()]


def _of_bar(bar: Bar, found: list[tuple[OnFace, Riding]], cabinet: Cabinet, mark: str) -> Template:
    laid = list(dict.fromkeys(one for one, _ in found))
    zero, page = datum(cabinet), Writing(cabinet.style)
    serving = and_list(in_short(dict.fromkeys(one.face.board.name for one in laid)))
    lines = (*for_faces(laid, cabinet), _heights(found, zero, page), _use(bar))
    drawing = _drawn(bar, laid[0].left, naming(SLIDES, serving, mark, _WIDE - 14 * MM), page)
    return Template(SLIDES, serving, tuple(dict.fromkeys(one.face.board.name for one in laid)), lines, " ".join(lines),
                    drawing)


def _heights(found: list[tuple[OnFace, Riding]], zero: Datum, page: Writing) -> str:
    """At which heights it is laid, and for which drawers."""
    at: dict[int, list[str]] = {}
    for _, item in sorted(found, key=lambda one: one[1].box.low[2]):
        at.setdefault(item.box.low[2] - zero.height, []).append(item.group)
    told = [f"{page.length(height)} for {and_list(in_short(dict.fromkeys(groups)))}" for height, groups in at.items()]
    return f"Lower edges above the {zero.name}: {'; '.join(told)}."


def _use(bar: Bar) -> str:
    """Common practice, no source."""
    how = ("Screw it as the build order says." if bar.of_wood else
           "Drill pilot holes on the middle line, where your own slide has its holes.")
    return (
        "Stand the spacer block of each height on the bottom, or mark the height from the story stick, and lay the "
        "paper's lower heavy line on it and the upright one on the front edge. Mark the front end, prick the middle "
        f"line through, and carry the lines on to the back with a square from the front edge. {how}"
    )


def _drawn(bar: Bar, left: bool, named: list[str], page: Writing) -> TrueDrawing:
    hand = 1 if left else -1
    a, c = sorted((hand * bar.back, hand * bar.end))
    items = list(_bar(bar, (a, 0, c, bar.high), page))
    top = max(item.around[3] for item in items) + 3 * MM
    start = min(0, a) + (8 * MM if left else 0)
    for line in reversed(named):
        top += STEP
        items.append(TextLine((start, top), line, LETTERS))
    top = max(top + 3 * MM, _NAME + (bar.high if bar.back < _ROOM else 0))
    right = max(0, c)
    first = min(0, a)
    heavy = (((0, 0), (0, top)), ((first, 0), (right, 0)))
    items += [Stroke(line, "edge") for line in heavy]
    names = (
        LineName(*heavy[0], _INSIDE * hand, ("front edge: flush with this line", "front edge")),
        LineName(*heavy[1], _INSIDE, (f"lower edge of the {bar.what}: on the spacer block, or on its line",
                                      "lower edge")),
    )
    return TrueDrawing((first - _EDGE, -_EDGE, right + _EDGE, top + _EDGE), tuple(items), names)


def _bar(bar: Bar, rect: Rect, page: Writing) -> Iterator[Item]:
    """What lies there, its middle line, and its words: in it, or over it where it is low."""
    a, _, c, high = rect
    middle = share(high, 2, 1)[0]
    yield Area(rect)
    yield frame(rect, "mark")
    yield Stroke(((a, middle), (c, middle)), "centre")
    told = [f"{bar.what}, front end set back {page.length(bar.back)}"]
    if not bar.of_wood:
        told.append("screws: in the holes of the slide, on the middle line")
    inside = high >= _TALL
    top = high - _INSIDE if inside else high + _INSIDE + (len(told) - 1) * STEP
    for number, line in enumerate(told):
        yield TextLine((a + 3 * MM, top - number * STEP), line, LETTERS, bold=number == 0)
