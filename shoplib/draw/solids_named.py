"""Names for what a picture of solids shows: on the wood where they fit, else beside the drawing.

Leaders run level, each in a row of its own, those to the right half a row below those to the left: so none crosses
another or lies on it, and none runs through a name on the wood.
"""

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, replace
from itertools import combinations, pairwise

import numpy as np
import shapely

from shoplib.draw.lettering import text_width
from shoplib.draw.marks import SMALL
from shoplib.draw.scene import Label, Leader, Point, Rect, Region, Scene

FIT = (640.0, 440.0)
"""Names are placed for a drawing of this width and height, in units of the page; drawn larger, they have more room."""

_ROWS = (2.04 * SMALL, 1.7 * SMALL, 1.36 * SMALL)
"""From one level leader to the next on its side: the first with which there is a row for each, so that they stay level
in a drawing that is made smaller."""
_ACROSS, _UP = 9.0, 6.0
"""What a name on the wood leaves free beside it, and above and below it, both together."""
_SLIVER = 0.4
"""What is narrower than twice this is not seen."""
_INSIDE = (4.0, 1.5, _SLIVER)
"""So far inside what is seen of a board its leader begins, where there is so much of it."""
_LARGER = (3.0, 2.2, 1.7, 1.4, 1.2, 1.0)
"""The room of a name on the wood may be so many times what its words need: then they fit a smaller drawing too."""
_TRIED = 15
"""A name is tried at so many places across a face, and up."""
_MOST_LINES = 4
_NO_WAY = 1e6
_LITTLE_LONGER = 1.15
_SLANTED = 1000.0
"""A leader that is not level counts as so much longer."""
_CLEAR = 0.4 * SMALL
"""A leader keeps so far from the words of a name."""
_ACROSS_ANOTHER, _ACROSS_A_SLENDER, _SLENDER = 30.0, 300.0, 10.0
"""For each thing that a leader runs across it counts as so much longer, more for one that is nowhere twice the last
wide on the page: it would be taken for the leader of that one. Judged by eye on the shipped projects."""

Slot = tuple[str, int]
"""A row for a leader: its side, and its number from the top."""


@dataclass(frozen=True, slots=True)
class _Written:
    """A name on the wood: what its words cover, the room that there is about them, and its lines."""

    words: Rect
    room: Rect
    lines: str


@dataclass(frozen=True, slots=True)
class _Way:
    """A way for a leader: its row, where it begins, and how long it counts as on the page."""

    slot: Slot
    point: Point
    cost: float


@dataclass(frozen=True, slots=True)
class _InTheWay:
    """What a leader keeps off: names on the wood, and what is seen of all things, its own too, each with what it costs
    to run across."""

    words: Sequence[Rect]
    things: shapely.STRtree
    costs: np.ndarray


@dataclass(frozen=True, slots=True)
class _Laid:
    """A way for each name that has one, in rows that are so high on the page."""

    row: float
    ways: Mapping[str, _Way]

    @property
    def cost(self) -> float:
        """How long all leaders together count as."""
        return sum(way.cost for way in self.ways.values())


@dataclass(frozen=True, slots=True)
class Named:
    """The names as items of the scene, those of which nothing is seen, and whether there was too little room: then
    leaders may cross."""

    items: tuple[Label | Leader, ...]
    hidden: tuple[str, ...]
    crowded: bool


def named(scene: Scene, texts: Mapping[str, Iterable[str]], plates: bool = False) -> Named:
    """Names for what is seen; `texts` says whose regions each names: those of one board, or of all of a drawer.

    With `plates` those on the wood stand on white, for a picture so full that a leader may run through one.

    >>> square = Region((((0, 0), (90, 0), (90, 90), (0, 90)),), "case half", "side")
    >>> scene = Scene("A side", "", "A side.", (0, 0, 90, 90), (square,))
    >>> found = named(scene, {"side": ["side"], "top": ["top"]})
    >>> found.items[0].texts, found.hidden, found.crowded
    (('side', 'side'), ('top',), False)
    """
    scale, faces = _scale(scene), _faces(scene, texts)
    wholes = {text: _whole(mine) for text, mine in faces.items()}
    hidden = [text for text, whole in wholes.items() if _is_hidden(whole, scale)]
    for text in hidden:
        del wholes[text]
    on_wood = {}
    for text in wholes:
        found = _on_the_wood(text, [area for area, dotted in faces[text] if not dotted], scale)
        if found:
            on_wood[text] = found
    leaders, crowded = _beside(wholes, on_wood, scene, scale)  # first: some names may be taken off the wood for them
    return Named((*_labels(on_wood, scene, plates), *leaders), tuple(hidden), crowded)


def out_of_sight(scene: Scene, texts: Mapping[str, Iterable[str]]) -> list[str]:
    """Those of the names, as in `named`, of which nothing is seen.

    >>> out_of_sight(Scene("A side", "", "A side.", (0, 0, 90, 90)), {"side": ["side"]})
    ['side']
    """
    scale = _scale(scene)
    return [text for text, mine in _faces(scene, texts).items() if _is_hidden(_whole(mine), scale)]


def _scale(scene: Scene) -> float:
    return min(fit / size for fit, size in zip(FIT, scene.size, strict=True))


def _faces(scene: Scene, texts: Mapping[str, Iterable[str]]) -> dict[str, list[tuple[shapely.Polygon, bool]]]:
    """What is seen of each thing, face by face, and whether that shows end grain."""
    faces: dict[str, list[tuple[shapely.Polygon, bool]]] = {}
    for item in scene.items:
        if isinstance(item, Region):
            faces.setdefault(item.name, []).append((shapely.Polygon(item.rings[0], item.rings[1:]), item.dotted))
    return {text: [face for name in names for face in faces.get(name, ())] for text, names in texts.items()}


def _whole(faces: Sequence[tuple[shapely.Polygon, bool]]) -> shapely.Geometry:
    return shapely.union_all([area for area, _ in faces])


def _is_hidden(area: shapely.Geometry, scale: float) -> bool:
    return shapely.buffer(area, -_SLIVER / scale, quad_segs=2).is_empty


def _labels(on_wood: Mapping[str, _Written], scene: Scene, plates: bool) -> Iterator[Label]:
    """Names on the wood; in a drawing that is too small for one it gets a leader from where it would stand, at a height
    there at which it meets no other words."""
    for text, written in on_wood.items():
        side = _side((written.words[0] + written.words[2]) // 2, scene)
        yield Label(written.room, (written.lines, text), plates, sides=(side,))


def _side(x: int, scene: Scene) -> str:
    return "left" if 2 * x < scene.bounds[0] + scene.bounds[2] else "right"


def _beside(
    wholes: Mapping[str, shapely.Geometry], on_wood: dict[str, _Written], scene: Scene, scale: float
) -> tuple[list[Leader], bool]:
    """Leaders for all names that are not on the wood, and whether any of them has no row of its own.

    A name that leaves another no way out is taken off `on_wood`.
    """
    inner = {text: _inner(whole, scale) for text, whole in wholes.items()}
    things = shapely.STRtree(list(wholes.values()))
    slender = shapely.is_empty(shapely.buffer(things.geometries, -_SLENDER / scale, quad_segs=2))
    costs = np.where(slender, _ACROSS_A_SLENDER, _ACROSS_ANOTHER)
    while True:
        kept_off = _InTheWay([written.words for written in on_wood.values()], things, costs)
        beside = {text: area for text, area in inner.items() if text not in on_wood}
        laid = _best_laid([_laid(beside, scene, scale, row, kept_off) for row in _ROWS])
        shut_in = next((text for text in beside if text not in laid.ways), None)
        if shut_in is None:
            return [Leader(way.point, way.slot[0], text) for text, way in laid.ways.items()], False
        taken = {way.slot for way in laid.ways.values()}
        free_of_words = replace(kept_off, words=())
        out = [way for way in _ways(inner[shut_in], scene, scale, laid.row, free_of_words) if way.slot not in taken]
        if not out:
            break
        way = min(out, key=lambda way: way.cost)
        for text, written in list(on_wood.items()):
            if _through(way.slot[0], *way.point, written.words, (_CLEAR + laid.row) / scale):
                del on_wood[text]
    # From the left half to the left, from the right half to the right: so none crosses one of the other side.
    leaders = []
    for text in beside:
        x, y = np.rint(shapely.get_coordinates(shapely.point_on_surface(wholes[text]))[0]).astype(int).tolist()
        leaders.append(Leader((x, y), _side(x, scene), text))
    return leaders, True


def _inner(area: shapely.Geometry, scale: float) -> shapely.Geometry:
    """What lies well inside an area that is no sliver."""
    inside = (shapely.buffer(area, -inside / scale, quad_segs=2) for inside in _INSIDE)
    return next(inner for inner in inside if not inner.is_empty)


def _laid(
    beside: Mapping[str, shapely.Geometry], scene: Scene, scale: float, row: float, kept_off: _InTheWay
) -> _Laid:
    """Ways with rows of one height, for as many names as there are rows for."""
    return _Laid(row, _each_its_row({
        text: {way.slot: way for way in _ways(area, scene, scale, row, kept_off)} for text, area in beside.items()
    }))


def _best_laid(tried: Sequence[_Laid]) -> _Laid:
    """Of those with the most names the first, unless another makes all leaders together much shorter."""
    most = max(len(laid.ways) for laid in tried)
    whole = [laid for laid in tried if len(laid.ways) == most]
    least = min(laid.cost for laid in whole)
    return next(laid for laid in whole if laid.cost <= _LITTLE_LONGER * least)


def _on_the_wood(text: str, areas: Sequence[shapely.Polygon], scale: float) -> _Written | None:
    """The room on a face where a name is written, in as few lines as go there, and the name in these lines."""
    for lines in _in_lines(text):
        wide = (max(text_width(line, SMALL) for line in lines) + _ACROSS) / scale / 2
        high = (len(lines) * 1.2 * SMALL + _UP) / scale / 2
        for area in sorted(areas, key=shapely.area, reverse=True):
            left, bottom, right, top = area.bounds
            if 2 * wide > right - left or 2 * high > top - bottom:
                continue
            x, y = (each.ravel() for each in np.meshgrid(
                np.linspace(left + wide, right - wide, _TRIED), np.linspace(bottom + high, top - high, _TRIED)))
            shapely.prepare(area)
            fits = shapely.contains(area, shapely.box(x - wide, y - high, x + wide, y + high))
            if fits.any():
                middle = shapely.centroid(area)
                best = np.where(fits, np.hypot(x - middle.x, y - middle.y), np.inf).argmin()
                return _Written(*_about(x[best], y[best], wide, high, area), "\n".join(lines))
    return None


def _about(x: float, y: float, wide: float, high: float, area: shapely.Polygon) -> tuple[Rect, Rect]:
    """The box of words about a point, and the largest of its shape there that lies in the area as well."""
    boxes = [tuple(round(side) for side in (x - wide * k, y - high * k, x + wide * k, y + high * k)) for k in _LARGER]
    return boxes[-1], next(box for box in boxes if box == boxes[-1] or area.contains(shapely.box(*box)))


def _in_lines(text: str) -> Iterator[list[str]]:
    """The name in one line and in more, as narrow as can be; a number stays behind its word.

    >>> list(_in_lines("bay 1 drawer 2 left box side"))[:3]
    [['bay 1 drawer 2 left box side'], ['bay 1 drawer 2', 'left box side'], ['bay 1', 'drawer 2', 'left box side']]
    """
    words: list[str] = []
    for word in text.split(" "):
        if words and word[0].isdigit():
            words[-1] += f" {word}"
        else:
            words.append(word)
    for many in range(1, min(len(words), _MOST_LINES) + 1):
        ways = [
            [" ".join(words[a:b]) for a, b in pairwise((0, *ends, len(words)))]
            for ends in combinations(range(1, len(words)), many - 1)
        ]
        yield min(ways, key=lambda lines: max(text_width(line, SMALL) for line in lines))


def _ways(area: shapely.Geometry, scene: Scene, scale: float, row: float, kept_off: _InTheWay) -> Iterator[_Way]:
    """Ways out of what is seen of a thing: level ones, and from what lies between two rows those to the nearer."""
    left, _, right, top = scene.bounds
    heights = {slot: top - at / scale for slot, at in _rows(scene.size[1] * scale, row).items()}
    y = np.array(list(heights.values()))
    half = row / scale / 2
    levels = shapely.linestrings(np.stack([np.column_stack([np.full(len(y), x), y]) for x in (left, right)], axis=1))
    level = shapely.bounds(shapely.intersection(area, levels))
    bands = shapely.intersection(area, shapely.box(left, y - half, right, y + half))
    nearest = shapely.get_coordinates(shapely.shortest_line(bands, levels)).reshape(-1, 2, 2)[:, 0]
    between = dict(zip(np.flatnonzero(~shapely.is_empty(bands)).tolist(), nearest.tolist(), strict=True))
    found = []
    for k, (slot, at) in enumerate(heights.items()):
        if not np.isnan(level[k, 0]):
            x, begins, cost = level[k, 0 if slot[0] == "left" else 2], at, 0.0
        elif k in between:
            (x, begins), cost = between[k], _SLANTED
        else:
            continue
        if not any(_through(slot[0], x, at, box, _CLEAR / scale) for box in kept_off.words):
            long = (x - left if slot[0] == "left" else right - x) * scale
            found.append((slot, (x, begins), ((x, at), (left if slot[0] == "left" else right, at)), long + cost))
    strokes = np.array([line for _, _, line, _ in found]).reshape(-1, 2, 2)
    lines, things = kept_off.things.query(shapely.linestrings(strokes), "intersects")
    across = np.bincount(lines, kept_off.costs[things], len(found)).tolist()
    for (slot, (x, y), _, cost), more in zip(found, across, strict=True):
        yield _Way(slot, (round(x), round(y)), cost + more)


def _rows(height: float, row: float) -> dict[Slot, float]:
    """How far below the top of the drawing each row runs: rows at least as high as `row` that fill the height."""
    many = max(1, int(height / row))
    row = height / many
    rows = {("left", k): (k + 0.5) * row for k in range(many)}
    return rows | {("right", k): (k + 1) * row for k in range(many - 1)}


def _through(side: str, x: float, y: float, box: Rect, clear: float) -> bool:
    """Whether a level leader runs through a room with words in it."""
    across = box[0] < x if side == "left" else box[2] > x
    return across and box[1] - clear < y < box[3] + clear


def _each_its_row(ways: Mapping[str, Mapping[Slot, _Way]]) -> dict[str, _Way]:
    """A way for each name, no two in one row, so that all leaders together are as short as can be.

    Names are given theirs one after another, each by the cheapest chain of changes among those before it (the
    Hungarian method: Kuhn 1955, as shortest ways: Jonker and Volgenant 1987). One for which there is no row is left
    out.
    """
    slots = list(dict.fromkeys(slot for mine in ways.values() for slot in mine))
    costs = np.array([[mine[slot].cost if slot in mine else _NO_WAY for slot in slots] for mine in ways.values()])
    names, many = list(ways), len(slots)
    holder, prices, worth = np.full(many, -1), np.zeros(many), np.zeros(len(names))
    for name in range(min(len(names), many)):
        far, before, done = np.full(many, np.inf), np.full(many, -1), np.zeros(many, bool)
        now, at, here = name, -1, 0.0
        while True:
            nearer = here + costs[now] - worth[now] - prices
            change = ~done & (nearer < far)
            far[change], before[change] = nearer[change], at
            at = int(np.where(done, np.inf, far).argmin())
            here, now = far[at], holder[at]
            if now < 0:
                break
            done[at] = True
        worth[holder[done]] += here - far[done]
        worth[name] += here
        prices[done] += far[done] - here
        while at >= 0:
            holder[at] = name if before[at] < 0 else holder[before[at]]
            at = before[at]
    given = ((names[k], slot) for k, slot in zip(holder, slots, strict=True) if k >= 0)
    return {name: ways[name][slot] for name, slot in given if slot in ways[name]}
