"""What stands round a drawing: names along its edges, leaders and dimensions, each brought to its lane."""

from shoplib.draw.between import between
from shoplib.draw.labels import spilled_out
from shoplib.draw.lanes import Lanes
from shoplib.draw.lettering import text_width
from shoplib.draw.marks import NORMAL
from shoplib.draw.scene import SIDES, Chain, EdgeText, Label, Leader, Running, Scene
from shoplib.draw.words_within import Rest

_LEANING = 12.0
"""Room for leaders that lean, beside a name along an edge, in units of the page."""


def edge_text(item: EdgeText, left: int, top: int, scale: float, lanes: Lanes, out: float = 4.0) -> bool:
    """Write a name along its edge, so far `out` in units of the page; False where it has no room clear of its lines.

    >>> name, lanes = EdgeText((0, 0, 80, 40), "below", "front edge", (40,)), Lanes(80, 40)
    >>> edge_text(name, 0, 40, 1.0, lanes)  # the line in the middle leaves too little on either side
    False
    >>> edge_text(EdgeText((0, 0, 80, 40), "below", "front edge"), 0, 40, 1.0, lanes), lanes.texts[0][2]
    (True, 'front edge')
    """
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


def leaders(scene: Scene, scale: float, asked: str, rest: Rest, lanes: Lanes) -> None:
    """The leaders of the scene, side by side, and those of what has no room within it, clear of the words there.

    >>> scene, lanes = Scene("t", "n", "a", (0, 0, 80, 40), (Leader((10, 20), "right", "peg"),)), Lanes(80, 40)
    >>> leaders(scene, 1.0, "", Rest((Label((0, 0, 9, 40), ("shelf",)),), (), ()), lanes)
    >>> [text for _, _, text, *_ in lanes.texts]
    ['peg', 'shelf']
    """
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


def dimensions(scene: Scene, scale: float, lanes: Lanes) -> None:
    """The dimensions of the scene, side by side and row by row outward.

    >>> wide = [Chain("below", 1, (0, 80), ("80 mm",)), Chain("below", 0, (0, 30, 80), ("30 mm", "50 mm"))]
    >>> lanes = Lanes(80, 40)
    >>> dimensions(Scene("t", "n", "a", (0, 0, 80, 40), tuple(wide)), 1.0, lanes)
    >>> [text for _, _, text, *_ in lanes.texts]
    ['30 mm', '50 mm', '80 mm']
    """
    left, bottom, right, top = scene.bounds
    rows = [(number, item) for number, item in enumerate(scene.items) if type(item) in (Chain, Running)]
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
