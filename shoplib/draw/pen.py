"""The one pen: a scene becomes SVG text, the same for the screen and for paper."""

from dataclasses import dataclass, replace
from html import escape

from shoplib.draw.asking import name_of_line
from shoplib.draw.between import between
from shoplib.draw.grain import grain_drawn
from shoplib.draw.labels import alike, fitting, spilled_out, write_label
from shoplib.draw.lanes import Lanes
from shoplib.draw.lettering import text_width, wrapped
from shoplib.draw.letters import ORDINARY, letters
from shoplib.draw.marks import (
    DIMENSION,
    FILL,
    FONT,
    INK,
    LINE,
    NORMAL,
    SMALL,
    TITLE,
    dots_path,
    hatch_path,
    region_hatch,
    slanted_hatch,
    text_element,
)
from shoplib.draw.outline import outline
from shoplib.draw.scene import (
    SIDES,
    Chain,
    Disc,
    EdgeText,
    Grain,
    Label,
    Leader,
    Line,
    Region,
    Running,
    Scene,
    Shape,
    Slanted,
    Tag,
)
from shoplib.draw.spilled import Box
from shoplib.draw.tags import place_tags, words_box, write_tags
from shoplib.measure import MM

UNIT_MM = 0.25
"""On paper one unit of the drawing is 0.25 mm, which makes the ordinary letters 8.2 points high."""

_LEAST_WIDTH = 420.0

_LEANING = 12.0
"""Room for leaders that lean, beside a name along an edge, in units of the page."""

_LESS = (1.0, 1.3, 1.7)
"""How much smaller than larger letters ask for a thing is drawn, one after another, to make room for them."""

_HARDLY = 0.8
"""As above, for a drawing so full of numbers that it can be made but little smaller."""

_NEARLY = 0.95
"""What part of the wanted size will do: the edge of a page alone takes that much, and the thing is not drawn small
for it."""

_MOST_BESIDE = 2
"""So many numbers at most are put beside a drawing for larger letters: leaders of more would run through one another.
Judged by eye on the sheets of the shipped projects."""


@dataclass(frozen=True, slots=True)
class Drawn:
    """SVG text and the size of its page, in units of the drawing; how many numbers of lines had no room in it and stand
    beside it."""

    svg: str
    width: float
    height: float
    beside: int = 0

    @property
    def size_mm(self) -> tuple[float, float]:
        """Width and height on paper, for a drawing made to scale."""
        return self.width * UNIT_MM, self.height * UNIT_MM


def draw(scene: Scene, fit: tuple[float, float] = (640.0, 440.0), asked: str = "") -> str:
    """The scene for a screen: the drawn thing fills `fit` (width, height) as far as its shape allows.

    The page is wider by the dimensions round it, and scales with the place it is put in. With `asked`, each
    dimension, and each label or line of words that tells sizes, carries `asked` and the name by which `asking` finds
    it again, as `data-ask`.

    Where larger letters are wanted (`letters.drawn_with`) the drawn thing is made smaller until the page is as
    much smaller, as far as its words and numbers allow, and the page is shown larger: only the letters seem to grow.
    """
    width, height = scene.size
    scale, larger = min(fit[0] / width, fit[1] / height), letters()
    page = _page(scene, scale, on_paper=False, asked=asked)
    if larger == ORDINARY:
        return page.svg
    best, most = page, 0.0
    for less in _LESS:
        tried = _page(scene, scale / (less * larger), on_paper=False, asked=asked, larger=larger)
        if tried.beside > max(page.beside, _MOST_BESIDE):
            if less == 1.0:
                tried = _page(scene, scale / (_HARDLY * larger), on_paper=False, asked=asked, larger=larger)
                best = best if tried.beside > max(page.beside, _MOST_BESIDE) else tried
            break
        grown = max(page.width, page.height) / max(tried.width, tried.height)  # on a place as wide as it is high
        if grown > most:
            best, most = tried, grown
        if grown >= _NEARLY * larger:
            break
    return best.svg


def draw_to_scale(scene: Scene, ratio: float) -> Drawn:
    """The scene for paper at 1 to `ratio`: the SVG carries its size in millimetres.

    Title, note and legend are left to the page that it stands on.
    """
    return _page(scene, 1 / (MM * UNIT_MM * ratio), on_paper=True)


def _page(scene: Scene, scale: float, on_paper: bool, asked: str = "", larger: float = ORDINARY) -> Drawn:
    left, _, _, top = scene.bounds
    lanes = Lanes(scene.size[0] * scale, scene.size[1] * scale)
    body = [_DRAWN[type(item)](item, left, top, scale) for item in scene.items if type(item) in _DRAWN]
    edges = [item for item in scene.items if type(item) is EdgeText]
    beyond = [item for item in edges if not _edge_text(item, left, top, scale, lanes)]
    words: list[str] = []
    rest = _words_within(scene, scale, asked, words)
    rest = replace(rest, covered=(*rest.covered, *lanes.along_edges()))
    _leaders(scene, scale, asked, rest, lanes)
    _rows([(number, item) for number, item in enumerate(scene.items) if type(item) in (Chain, Running)],
          scene, scale, lanes)
    for item in beyond:
        _edge_text(replace(item, lines=None), left, top, scale, lanes, lanes.used[item.side])
    drawn = _finish(scene, lanes, body, words, on_paper, asked, larger)
    return replace(drawn, beside=len(rest.numbers))


@dataclass(frozen=True, slots=True)
class _Rest:
    """Labels and numbers of lines that have no room within a drawing, and what the words cover that have."""

    labels: tuple[Label, ...]
    numbers: tuple[Tag, ...]
    covered: tuple[Box, ...]


def _words_within(scene: Scene, scale: float, asked: str, words: list[str]) -> _Rest:
    """Write the labels and the numbers on lines that fit."""
    left, _, _, top = scene.bounds
    items = scene.items
    labels = {number: item for number, item in enumerate(items) if type(item) is Label}
    fits = {number: fitting(item, scale) for number, item in labels.items() if not item.sizes} | alike(scene, scale)
    named = {number: (item, fits[number]) for number, item in labels.items() if fits[number]}
    placed = place_tags((item for item in items if type(item) is Tag), named, left, top, scale)
    for number, fit in placed.fits.items():
        ask = f"{asked}{number}.0" if asked and labels[number].sizes else ""
        write_label(labels[number], left, top, scale, words, ask, fit)
    write_tags(placed, words)
    spilled = [item for number, item in labels.items() if number not in named]
    for item in items:
        if type(item) is Grain and not _grain(item, left, top, scale, words):
            spilled.append(Label(item.rooms[0], ("grain",)))
    covered = [words_box(labels[number], fit, left, top, scale) for number, fit in placed.fits.items()]
    return _Rest(tuple(spilled), placed.beside, (*covered, *(box for _, box in placed.boxes)))


def _leaders(scene: Scene, scale: float, asked: str, rest: _Rest, lanes: Lanes) -> None:
    """The leaders of the scene, side by side, and those of what has no room within it, clear of the words there."""
    left, _, _, top = scene.bounds
    sides: dict[str, list[tuple[tuple[float, float], Leader, str]]] = {}
    for number, item in enumerate(scene.items):
        if type(item) is Leader:
            point = (item.point[0] - left) * scale, (top - item.point[1]) * scale
            sides.setdefault(item.side, []).append((point, item, f"{number}.0" if asked and item.size else ""))
    spilled = [*rest.labels, *(Label((*tag.start, *tag.end), (tag.text,)) for tag in rest.numbers)]
    for leader, point in spilled_out(spilled, scene, scale, rest.covered):
        sides.setdefault(leader.side, []).append((point, leader, ""))
    for side, led in sides.items():
        points, items, asks = zip(*led, strict=True)
        lanes.leaders(side, list(points), list(items), list(asks))


def _rows(rows: list[tuple[int, Chain | Running]], scene: Scene, scale: float, lanes: Lanes) -> None:
    """Dimensions, side by side and row by row outward."""
    left, bottom, right, top = scene.bounds
    for side in SIDES:
        flat = side in ("below", "above")
        place = (lambda t: (t - left) * scale) if flat else (lambda t: (top - t) * scale)
        here = [numbered for numbered in rows if numbered[1].side == side]
        for row in sorted({item.row for _, item in here}):
            out = end = lanes.used[side]
            lanes.walls = sorted({place(at) for _, item in here if item.row > row for at in item.at})
            for number, item in here:
                if item.row != row:
                    continue
                stations = [place(t) for t in item.at]
                foot = item.foot
                if foot is None:
                    feet = [0.0] * len(stations)
                else:
                    edge = {"below": bottom, "above": top, "left": left, "right": right}[side]
                    sign = 1 if side in ("below", "left") else -1
                    each = (foot,) * len(stations) if isinstance(foot, int) else foot
                    feet = [sign * (edge - f) * scale for f in each]
                if type(item) is Chain:
                    end = max(end, lanes.chain(side, out, stations, feet, item, f"{number}"))
                else:
                    end = max(end, lanes.running(side, out, place(item.datum), stations, feet, item, f"{number}"))
            lanes.used[side] = end + 4


def _finish(
    scene: Scene, lanes: Lanes, body: list[str], words: list[str], on_paper: bool, asked: str, larger: float
) -> Drawn:
    """Heading above and legend below (on the screen), and everything put together."""
    x0, y0, x1, y1 = lanes.box
    if not on_paper:
        x1 = max(x1, x0 + _LEAST_WIDTH / larger)
        y0, y1 = _heading(scene, words, x0, x1, y0, asked), _legend(scene, words, x0, x1, y1, asked)
    edge = 1 if on_paper else 8  # paper has margins of its own
    x0, y0, x1, y1 = x0 - edge, y0 - edge, x1 + edge, y1 + edge
    width, height = x1 - x0, y1 - y0
    size = (f'width="{width * UNIT_MM:.4f}mm" height="{height * UNIT_MM:.4f}mm"' if on_paper else
            f'width="{width * larger:.0f}" height="{height * larger:.0f}" style="max-width:100%;height:auto"')
    discs = "".join(f'<circle cx="{x:.2f}" cy="{y:.2f}" r="1.7"/>' for x, y in lanes.dots)
    rings = "".join(f'<circle cx="{x:.2f}" cy="{y:.2f}" r="{r:g}"/>' for x, y, r in lanes.rings)
    told = zip(lanes.texts, lanes.asks, strict=True)
    dimension_words = "".join(text_element(*text, ask=asked and ask and asked + ask) for text, ask in told)
    svg = "".join((
        '<svg xmlns="http://www.w3.org/2000/svg" role="img" ',
        f'viewBox="{x0:.2f} {y0:.2f} {width:.2f} {height:.2f}" {size}>',
        f"<title>{escape(scene.title, quote=False)}</title><desc>{escape(scene.alt, quote=False)}</desc>",
        f'<rect x="{x0:.2f}" y="{y0:.2f}" width="{width:.2f}" height="{height:.2f}" fill="#ffffff"/>',
        f'<g stroke-linejoin="round" fill="none">{"".join(body)}</g>',
        f'<path d="{"".join(lanes.strokes)}" fill="none" stroke="{DIMENSION}" stroke-width="0.7"/>',
        f'<path d="{"".join(lanes.halos)}" fill="#ffffff"/>',
        f'<path d="{"".join(lanes.heads)}" fill="{DIMENSION}"/>',
        f'<g fill="{DIMENSION}">{discs}</g><g fill="#ffffff" stroke="{DIMENSION}">{rings}</g>',
        f'<g font-family="{FONT}" font-size="{NORMAL:g}" fill="{INK}">{"".join(words)}',
        f'<g fill="{DIMENSION}">{dimension_words}</g></g></svg>',
    ))
    return Drawn(svg, width, height)


def _heading(scene: Scene, words: list[str], left: float, right: float, top: float, asked: str) -> float:
    """Write title, note and what must be read first above `top`; give back the new top."""
    if scene.alarms:
        lines = [line for text in scene.alarms for line in wrapped(text, NORMAL, (right - left) * 0.9 - 12)]
        high = len(lines) * NORMAL * 1.4 + 8
        top -= high + 10
        words.append(f'<rect x="{left:.2f}" y="{top:.2f}" width="{right - left:.2f}" height="{high:.2f}" '
                     f'fill="#ffffff" stroke="{INK}" stroke-width="2"/>')
        for k, line in enumerate(lines):
            words.append(text_element(left + 6, top + 4 + NORMAL * (0.7 + 1.4 * k), line, NORMAL, "start", False, True))
    note = wrapped(scene.noted, SMALL, right - left)
    title = wrapped(scene.title, TITLE * 1.12, right - left)
    top -= 8 + len(note) * SMALL * 1.4
    words += _one_to_pick(scene, scene.note, asked, [
        text_element(left, top + SMALL * (0.7 + 1.4 * k), line, SMALL, "start", False) for k, line in enumerate(note)
    ])
    top -= len(title) * TITLE * 1.35
    words += _one_to_pick(scene, scene.title, asked, [
        text_element(left, top + TITLE * (0.6 + 1.35 * k), line, TITLE, "start", False, bold=True)
        for k, line in enumerate(title)
    ])
    return top


def _one_to_pick(scene: Scene, line: str, asked: str, written: list[str]) -> list[str]:
    """What was written of a line, as one thing to pick where the line tells sizes that can be asked."""
    name = name_of_line(scene, line) if asked else ""
    return [f'<g data-ask="{asked}{name}">', *written, "</g>"] if name else written


def _legend(scene: Scene, words: list[str], left: float, right: float, bottom: float, asked: str) -> float:
    """Write the legend below `bottom`; give back the new bottom."""
    for text in scene.legend:
        written = []
        for line in wrapped(text, NORMAL, right - left):
            bottom += NORMAL * 1.5
            written.append(text_element(left, bottom, line, NORMAL, "start", False))
        words += _one_to_pick(scene, text, asked, written)
    return bottom + (NORMAL * 0.7 if scene.legend else 0.0)


def _shape(item: Shape, left: int, top: int, scale: float) -> str:
    paint, ink, wide = FILL[item.fill]
    if len(item.rects) == 1:
        a, b, c, d = item.rects[0]
        x, y = (a - left) * scale, (top - d) * scale
        path = f"M{x:.2f} {y:.2f}H{(c - left) * scale:.2f}V{(top - b) * scale:.2f}H{x:.2f}Z"
    else:
        path = "".join(
            "M" + "L".join(f"{(x - left) * scale:.2f} {(top - y) * scale:.2f}" for x, y in ring) + "Z"
            for ring in outline(item.rects)
        )
    dash = ' stroke-dasharray="4 3"' if item.fill == "air" else ""
    rule = "" if len(item.rects) == 1 else ' fill-rule="evenodd"'
    start = f'<path d="{path}" fill="{paint}" stroke="{ink}" stroke-width="{wide:g}"{rule}{dash}'
    text = f"{start}><title>{escape(item.name, quote=False)}</title></path>" if item.name else f"{start}/>"
    if item.hatch:
        lines = "".join(
            hatch_path(
                ((a - left) * scale, (top - d) * scale, (c - left) * scale, (top - b) * scale), item.hatch
            )
            for a, b, c, d in item.rects
        )
        text += f'<path d="{lines}" stroke="{ink}" stroke-width="0.6"/>'
    return text


def _slanted(item: Slanted, left: int, top: int, scale: float) -> str:
    paint, ink, wide = FILL[item.fill]
    corners = [((x - left) * scale, (top - y) * scale) for x, y in item.corners]
    path = "M" + "L".join(f"{x:.2f} {y:.2f}" for x, y in corners) + "Z"
    start = f'<path d="{path}" fill="{paint}" stroke="{ink}" stroke-width="{wide:g}"'
    text = f"{start}><title>{escape(item.name, quote=False)}</title></path>" if item.name else f"{start}/>"
    if item.hatch:
        text += f'<path d="{slanted_hatch(corners, item.hatch)}" stroke="{ink}" stroke-width="0.6"/>'
    return text


def _region(item: Region, left: int, top: int, scale: float) -> str:
    paint, ink, wide = FILL[item.fill]
    rings = [[((x - left) * scale, (top - y) * scale) for x, y in ring] for ring in item.rings]
    path = "".join("M" + "L".join([f"{x:.2f} {y:.2f}" for x, y in ring]) + "Z" for ring in rings)
    rule = ' fill-rule="evenodd"' if len(rings) > 1 else ""
    start = f'<path d="{path}" fill="{paint}" stroke="{ink}" stroke-width="{wide:g}"{rule}'
    text = f"{start}><title>{escape(item.name, quote=False)}</title></path>" if item.name else f"{start}/>"
    if item.hatch:
        text += f'<path d="{region_hatch(rings, item.hatch)}" stroke="{ink}" stroke-width="0.6"/>'
    dots = dots_path(rings) if item.dotted else ""
    return f'{text}<path d="{dots}" stroke="{ink}" stroke-width="1.3" stroke-linecap="round"/>' if dots else text


def _line(item: Line, left: int, top: int, scale: float) -> str:
    x0, y0 = (item.start[0] - left) * scale, (top - item.start[1]) * scale
    x1, y1 = (item.end[0] - left) * scale, (top - item.end[1]) * scale
    text = f'<path d="M{x0:.2f} {y0:.2f}L{x1:.2f} {y1:.2f}" {LINE[item.kind]}/>'
    return text if item.kind != "grain" else _arrow((x0, y0), (x1, y1))


def _arrow(start: tuple[float, float], end: tuple[float, float]) -> str:
    """A line along the grain with a head at both ends, on the page."""
    (x0, y0), (x1, y1) = start, end
    long = max(abs(x1 - x0), abs(y1 - y0)) or 1.0
    a, b = (x1 - x0) / long, (y1 - y0) / long
    heads = "".join(
        f"M{x - s * 9 * a - 3 * b:.2f} {y - s * 9 * b + 3 * a:.2f}L{x:.2f} {y:.2f}"
        f"L{x - s * 9 * a + 3 * b:.2f} {y - s * 9 * b - 3 * a:.2f}"
        for x, y, s in ((x0, y0, -1), (x1, y1, 1))
    )
    line = f'<path d="M{x0:.2f} {y0:.2f}L{x1:.2f} {y1:.2f}" {LINE["grain"]}/>'
    return f'{line}<path d="{heads}" {LINE["grain"]} fill="none"/>'


def _disc(item: Disc, left: int, top: int, scale: float) -> str:
    paint, ink, wide = FILL[item.fill]
    x, y = (item.centre[0] - left) * scale, (top - item.centre[1]) * scale
    # A screw hole on a whole side would vanish: it keeps a radius that can be seen.
    radius = max(item.diameter * scale / 2, 1.6)
    start = (f'<circle cx="{x:.2f}" cy="{y:.2f}" r="{radius:.2f}" '
             f'fill="{paint}" stroke="{ink}" stroke-width="{wide:g}"')
    return f"{start}><title>{escape(item.name, quote=False)}</title></circle>" if item.name else f"{start}/>"


def _grain(item: Grain, left: int, top: int, scale: float, words: list[str]) -> bool:
    """Draw the arrow, and the word on white, for lines of slides may run there; False where it has no room."""
    drawn = grain_drawn(item, left, top, scale)
    words.append(_arrow(drawn.start, drawn.end))
    if drawn.word:
        (x, y), wide, high = drawn.word, text_width("grain", NORMAL) / 2 + 2, NORMAL * 0.5
        words.append(f'<path d="M{x - wide:.2f} {y - high:.2f}h{2 * wide:.2f}v{2 * high:.2f}h{-2 * wide:.2f}z" '
                     'fill="#ffffff"/>')
        words.append(text_element(x, y, "grain", NORMAL, "middle", False))
    return drawn.word is not None


_DRAWN = {Shape: _shape, Slanted: _slanted, Region: _region, Line: _line, Disc: _disc}
"""What stands on the ground of the page, under all words: how each is drawn."""


def _edge_text(item: EdgeText, left: int, top: int, scale: float, lanes: Lanes, out: float = 4.0) -> bool:
    """Write a name along its edge, so far `out`; False where it has no room clear of its lines."""
    a, b, c, d = item.room
    flat = item.side in ("below", "above")
    edge = ((a - left) * scale, (c - left) * scale) if flat else ((top - d) * scale, (top - b) * scale)
    along = sum(edge) / 2
    if item.lines is not None:
        lines = [((at - left) if flat else (top - at)) * scale for at in item.lines]
        clear = between(lines, edge, text_width(item.text, NORMAL) + _LEANING)
        if clear is None:
            return False
        along = clear
    half = NORMAL * 0.6
    off = out + half
    x, y = {
        "below": (along, (top - b) * scale + off), "above": (along, (top - d) * scale - off),
        "left": ((a - left) * scale - off, along), "right": ((c - left) * scale + off, along),
    }[item.side]
    lanes.write(x, y, item.text, turned=not flat)
    lanes.used[item.side] = max(lanes.used[item.side], off + half + 3)
    return True
