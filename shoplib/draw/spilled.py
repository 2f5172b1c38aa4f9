"""Where a name goes that does not fit on the thing it names: to the side of the drawing that is nearest to it."""

from collections.abc import Iterable, Sequence

from shoplib.draw.scene import SIDES

Box = tuple[float, float, float, float]
"""Left, top, right, bottom on the page, y down."""
Span = tuple[float, float]
Place = tuple[str, tuple[float, float]]

_IN_A_DIMENSION, _BESIDE_DIMENSIONS, _ACROSS_SOMETHING, _ACROSS_WHAT_IS_TAKEN = 100.0, 15.0, 60.0, 300.0
"""What a side costs, in units of the page: a name between the ends of a dimension would read as its own."""
_ALONG = (0.5, 0.15, 0.85, 0.3, 0.7, 0.05, 0.95, 0.4, 0.6, 0.22, 0.78)
"""Where along the thing its leader may begin, the best first."""
_INSIDE = 4.0


def nearest(thing: Box, size: tuple[float, float], spans: dict[str, list[Span]], others: Iterable[Box],
            sides: Sequence[str] = SIDES, taken: Sequence[Box] = ()) -> Place:
    """The one of `sides` to write a name on, and the point of the thing where its leader begins.

    `size` is that of the drawn thing, `spans` are the stretches that have a dimension along each side, and `others`
    what else is drawn: a leader straight out crosses none of them where it can be helped, and nothing that is `taken`
    by words or by the ways of other leaders.

    >>> nearest((2, 40, 12, 60), (100, 100), {}, [])
    ('left', (6.0, 50.0))
    >>> nearest((2, 40, 12, 60), (100, 100), {}, [(0, 0, 1, 100)])
    ('above', (7.0, 44.0))
    """
    left, top, right, bottom = thing
    wide, high = size
    deep = min(_INSIDE, (right - left) / 2), min(_INSIDE, (bottom - top) / 2)
    others = [box for box in others if not _covers(box, thing) and not _covers(thing, box)]
    best, least = ("right", (right - deep[0], (top + bottom) / 2)), None
    for side, away in (("right", wide - right), ("left", left), ("above", top), ("below", high - bottom)):
        if side not in sides:
            continue
        flat = side in ("above", "below")
        low, long = (left, right - left) if flat else (top, bottom - top)
        here = spans.get(side, ())
        for number, part in enumerate(_ALONG):
            along = low + long * part
            cost = away + number + (_BESIDE_DIMENSIONS if here else 0.0)
            cost += _IN_A_DIMENSION * any(a <= along <= b for a, b in here)
            way = way_out(side, along, thing, size)
            cost += _ACROSS_SOMETHING * sum(_meets(way, box) for box in others)
            cost += _ACROSS_WHAT_IS_TAKEN * sum(_meets(way, box) for box in taken)
            if least is None or cost < least:
                out = {"right": right - deep[0], "left": left + deep[0], "above": top + deep[1],
                       "below": bottom - deep[1]}[side]
                best, least = (side, (along, out) if flat else (out, along)), cost
    return best


def way_out(side: str, along: float, thing: Box, size: tuple[float, float]) -> Box:
    """The straight way from an edge of the thing out of the drawing.

    >>> way_out("left", 5, (2, 4, 8, 6), (10, 10))
    (0.0, 5, 2, 5)
    """
    left, top, right, bottom = thing
    if side == "right":
        return right, along, size[0], along
    if side == "left":
        return 0.0, along, left, along
    return (along, 0.0, along, top) if side == "above" else (along, bottom, along, size[1])


def _meets(way: Box, box: Box) -> bool:
    return way[0] < box[2] and box[0] < way[2] and way[1] < box[3] and box[1] < way[3]


def _covers(one: Box, other: Box, slack: float = 0.01) -> bool:
    return (one[0] <= other[0] + slack and one[1] <= other[1] + slack
            and one[2] >= other[2] - slack and one[3] >= other[3] - slack)


def largest_rooms(rects: Sequence[tuple[int, int, int, int]]) -> list[tuple[int, int, int, int]]:
    """The largest rectangles that lie wholly in the union of `rects`, the largest first.

    >>> largest_rooms([(0, 0, 2, 9), (2, 0, 4, 3)])
    [(0, 0, 2, 9), (0, 0, 4, 3)]
    """
    xs = sorted({x for rect in rects for x in (rect[0], rect[2])})
    ys = sorted({y for rect in rects for y in (rect[1], rect[3])})
    filled = {
        (x, y) for x in xs for y in ys if any(a <= x < c and b <= y < d for a, b, c, d in rects)
    }
    found = []
    for i, a in enumerate(xs):
        for c_at in range(i + 1, len(xs)):
            for j, b in enumerate(ys):
                top = j
                while top < len(ys) - 1 and all((x, ys[top]) in filled for x in xs[i:c_at]):
                    top += 1
                if top > j:
                    found.append((a, b, xs[c_at], ys[top]))
    kept = [one for one in found if not any(one != two and _covers(two, one, 0.0) for two in found)]
    return sorted(kept, key=lambda rect: (-(rect[2] - rect[0]) * (rect[3] - rect[1]), rect))

