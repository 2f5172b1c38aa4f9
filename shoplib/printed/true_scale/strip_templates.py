"""Templates that lie along the front or back edge of an upright: where slides and runners go, and shelf pins.

Heights are measured from the upper face of the bottom, which all uprights share, so that one strip serves the sides and
the dividers; a strip for a face that looks the other way is the same one turned over.
"""

from collections.abc import Iterable
from dataclasses import dataclass

from shoplib.building.riding import riding
from shoplib.draw.face_on import FaceOn
from shoplib.draw.slide_lines import side_against
from shoplib.draw.true_scale import Area, Item, Ring, Stroke, TrueDrawing, Words, cross, frame
from shoplib.lists.sides import looks
from shoplib.lists.writing import Writing
from shoplib.measure import MM, share
from shoplib.model.board import Board, Hole
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.datum import Datum, datum
from shoplib.printed.true_scale.template import CHECK, NAMING, Template, beside, naming
from shoplib.words.naming import and_list, in_short

_WIDE = 150 * MM
"""How much of a slide is drawn, from the front edge on: what goes on one page."""
_TALL, _NEAR = 22 * MM, 40 * MM
"""A slide as high as the first has its words in it; the lower end of an upright is drawn where it is as near to the
bottom as the second."""
_ARM, _EDGE, _ROOM = 7 * MM, 2 * MM, 62 * MM
_BESIDE, _CLEAR = round(2.5 * MM), 6 * MM
"""Where words stand beside a line, and what they need."""


@dataclass(frozen=True, slots=True)
class Bar:
    """A slide or runner on an upright: heights from the datum, `back` from the edge (ticks)."""

    what: str
    low: int
    high: int
    back: int
    length: int


@dataclass(frozen=True, slots=True)
class Bore:
    """A hole in an upright: height from the datum, `back` from the edge (ticks)."""

    up: int
    back: int
    diameter: int
    depth: int


@dataclass(frozen=True, slots=True)
class Laid:
    """A face that a strip is laid on, along its `edge`; `left` where that edge is on the left as one stands before it.
    `groups` are the drawers, by the height of what they run on."""

    face: FaceOn
    edge: str
    left: bool
    groups: tuple[tuple[int, str], ...] = ()

    def called(self, cabinet: Cabinet) -> str:
        """The board and its face."""
        return f"{self.face.board.name} ({self.face.called(cabinet)}, from the {self.edge})"


def slide_templates(cabinet: Cabinet, mark: str = "") -> list[Template]:
    """One for each set of slides or runners that stand alike on one face of an upright.

    `mark` tells on the paper of which plan it is.
    """
    zero, by_name = datum(cabinet), cabinet.by_name
    on: dict[tuple[str, str], list] = {}
    for item in riding(cabinet):
        board = by_name.get(item.on)
        side = side_against(board, item.box) if board and board.box.size[0] == board.thickness else 0
        if side:
            on.setdefault((board.name, looks(board, 2, side)), []).append(item)
    alike: dict[tuple[Bar, ...], list[Laid]] = {}
    for (name, looking), items in on.items():
        board = by_name[name]
        front = board.box.low[1]
        bars, groups = [], []
        for item in sorted(items, key=lambda one: one.box.low[2]):
            low, high = item.box.low, item.box.high
            what = item.what if item.what.startswith("wood") else "slide"
            bars.append(Bar(what, low[2] - zero.height, high[2] - zero.height, low[1] - front, high[1] - low[1]))
            groups.append((low[2] - zero.height, item.group))
        face = FaceOn(board, looking)
        alike.setdefault(tuple(bars), []).append(Laid(face, "front edge", face.datum_left, tuple(groups)))
    return [_of_bars(bars, laid, zero, cabinet, mark) for bars, laid in alike.items()]


def pin_templates(cabinet: Cabinet, mark: str = "") -> list[Template]:
    """One for each row of holes for shelf pins, one above another, from the edge of the upright that is nearer.

    `mark` tells on the paper of which plan it is.
    """
    zero = datum(cabinet)
    alike: dict[tuple[Bore, ...], list[Laid]] = {}
    for board in cabinet.boards:
        rows: dict[tuple[bool, int], list[tuple[int, Hole]]] = {}
        for hole in board.cuts:
            if isinstance(hole, Hole) and hole.kind == "shelf pin":
                upper = hole.centre[2] != 0
                x, up = FaceOn(board, looks(board, 2, 1 if upper else -1)).hole(hole.centre)
                rows.setdefault((upper, x), []).append((up, hole))
        for (upper, x), holes in rows.items():
            face = FaceOn(board, looks(board, 2, 1 if upper else -1))
            left = 2 * x <= face.size[0]
            back = x if left else face.size[0] - x
            bores = tuple(sorted(
                (Bore(up + board.box.low[2] - zero.height, back, hole.diameter, hole.depth) for up, hole in holes),
                key=lambda bore: bore.up,
            ))
            alike.setdefault(bores, []).append(Laid(face, face.edge("left" if left else "right"), left))
    return [_of_bores(bores, laid, zero, cabinet, mark) for bores, laid in alike.items()]


def _of_bars(bars: tuple[Bar, ...], laid: list[Laid], zero: Datum, cabinet: Cabinet, mark: str) -> Template:
    page, hand = Writing(cabinet.style), 1 if laid[0].left else -1
    items: list[Item] = []
    wide = min(max(bar.back + bar.length for bar in bars) + 3 * MM, _WIDE)
    tops = []
    for bar in bars:
        a, c = sorted((hand * bar.back, hand * min(bar.back + bar.length, wide)))
        rect = (a, bar.low, c, bar.high)
        items += [Area(rect), frame(rect, "mark")]
        middle = share(bar.low + bar.high, 2, 1)[0]
        items.append(Stroke(((a, middle), (c, middle)), "centre"))
        whose = and_list(in_short(dict.fromkeys(g for one in laid for at, g in one.groups if at == bar.low)))
        told = (
            f"{bar.what} of {whose}",
            f"lower edge {page.length(bar.low)} above the bottom, front end set back {page.length(bar.back)}",
        )
        inside = bar.high - bar.low >= _TALL
        foot = bar.high - 3 * MM if inside else bar.high + 6 * MM
        items += [
            Words((a + 3 * MM, foot - k * round(3.4 * MM)), line, 2.3, bold=k == 0) for k, line in enumerate(told)
        ]
        if inside:
            items.append(Words((a + 3 * MM, middle - 3 * MM), "screws: in the holes of the slide, on this line", 2.3))
        tops.append(bar.high + (0 if inside else 9 * MM))
    lines = (
        "Mark the lower edge and the front end of each, prick its middle line through, and carry the lines on to the "
        "back with a square from the front edge. Drill pilot holes on the middle line, where your own slide has its "
        "holes.",
        *_how_it_lies(zero),
        "Then rest each on its spacer block and try it before you set all its screws.",
    )
    return _strip("slides and runners", items, wide, max(tops) + 5 * MM, laid, zero, lines, cabinet, mark)


def _of_bores(bores: tuple[Bore, ...], laid: list[Laid], zero: Datum, cabinet: Cabinet, mark: str) -> Template:
    page, hand = Writing(cabinet.style), 1 if laid[0].left else -1
    items: list[Item] = []
    for bore in bores:
        at = (hand * bore.back, bore.up)
        ring = Ring(at, bore.diameter)
        items += [ring, *cross(at, _ARM)]
        items += beside(ring, (f"{page.length(bore.up)} above the bottom", f"{page.length(bore.back)} from the edge"),
                        hand > 0)
    sizes = dict.fromkeys((bore.diameter, bore.depth) for bore in bores)
    lines = (
        *(f"Drill {page.setting(across)} across, {page.setting(deep)} deep; set the stop of the drill."
          for across, deep in sizes),
        *_how_it_lies(zero), CHECK,
    )
    wide = max(bore.back for bore in bores) + _ROOM
    return _strip("holes for shelf pins", items, wide, bores[-1].up + 14 * MM, laid, zero, lines, cabinet, mark)


def _how_it_lies(zero: Datum) -> tuple[str, ...]:
    return (f"Its heavy lines lie on the edge and on the {zero.name}; in a case that stands, cut it off there and set "
            "it on.",)


def _strip(
    what: str, items: list[Item], wide: int, top: int, laid: list[Laid], zero: Datum, lines: Iterable[str],
    cabinet: Cabinet, mark: str,
) -> Template:
    """The marks on a strip with its edge, the line of the bottom, and the lower ends of the uprights."""
    first, page = laid[0], Writing(cabinet.style)
    far = wide if first.left else -wide
    left, right = min(0, far), max(0, far)
    ends: dict[int, list[Board]] = {}
    for one in laid:
        ends.setdefault(zero.height - one.face.board.box.low[2], []).append(one.face.board)
    near = {below: boards for below, boards in ends.items() if 0 < below <= _NEAR}
    low = -max(near, default=0) - _CLEAR
    serving = and_list(in_short(dict.fromkeys(one.face.board.name for one in laid)))
    for line in reversed(naming(what, serving, mark, right - left - 14 * MM)):
        items.append(Words((left + 10 * MM, top), line, NAMING))
        top += round(1.4 * NAMING * MM)
    items.append(Stroke(((0, low), (0, top)), "edge"))
    items.append(Stroke(((left, 0), (right, 0)), "edge"))
    above = not any(isinstance(item, Area) and -_CLEAR < item.around[1] < _CLEAR for item in items)
    items.append(Words((left + 14 * MM, _BESIDE if above else -_BESIDE), f"{zero.name}: 0", 2.3))
    edge = 3 * MM if first.left else -3 * MM
    names = and_list(list(dict.fromkeys(one.edge for one in laid)))
    items.append(Words((edge, (low + top) // 2), f"{names}: flush with this line", 2.3, "middle", turned=True))
    told = []
    for number, (below, boards) in enumerate(sorted(ends.items())):
        named = and_list(in_short(dict.fromkeys(board.name for board in boards)))
        if below in near:
            items.append(Stroke(((left, -below), (right, -below)), "hidden"))
            items.append(Words((left + (14 + 60 * (number % 2)) * MM, -below - _BESIDE), f"lower end of {named}", 2.2))
        elif below > 0:
            told.append(f"The lower end of {named} is {page.length(below)} below that line.")
    serves, turned = ([one for one in laid if one.left == same] for same in (first.left, not first.left))
    said = [f"For {and_list([one.called(cabinet) for one in serves])}."]
    if turned:
        said.append(f"TURN IT OVER for {and_list([one.called(cabinet) for one in turned])}: prick the marks through, "
                    "and lay it with its back up along the edge.")
    return Template(
        what, serving, tuple(dict.fromkeys(one.face.board.name for one in laid)),
        (*said, " ".join((*lines, *told))), " ".join((*said, *lines, *told)),
        TrueDrawing((left - _EDGE, low - _EDGE, right + _EDGE, top + _EDGE), tuple(items)),
    )
