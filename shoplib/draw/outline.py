"""The outline of rectangles that touch or overlap, as closed rings with no line where two of them meet."""

from shoplib.draw.scene import Point, Rect

Ring = list[Point]


def outline(rects: tuple[Rect, ...]) -> list[Ring]:
    """Rings round the union: outer ones run anticlockwise, holes clockwise.

    >>> outline(((0, 0, 2, 1), (0, 1, 1, 2)))
    [[(0, 0), (2, 0), (2, 1), (1, 1), (1, 2), (0, 2)]]
    """
    if len(rects) == 1:
        left, bottom, right, top = rects[0]
        return [[(left, bottom), (right, bottom), (right, top), (left, top)]]
    xs = sorted({x for rect in rects for x in (rect[0], rect[2])})
    ys = sorted({y for rect in rects for y in (rect[1], rect[3])})
    column = {x: i for i, x in enumerate(xs)}
    row = {y: j for j, y in enumerate(ys)}
    filled = {
        (i, j)
        for left, bottom, right, top in rects
        for i in range(column[left], column[right])
        for j in range(row[bottom], row[top])
    }
    return [_corners([(xs[i], ys[j]) for i, j in ring]) for ring in _walk(filled)]


def _walk(filled: set[tuple[int, int]]) -> list[list[tuple[int, int]]]:
    """Follow the sides between filled and empty cells, the filled cell on the left hand."""
    sides = []
    for i, j in sorted(filled):
        if (i, j - 1) not in filled:
            sides.append(((i, j), (i + 1, j)))
        if (i + 1, j) not in filled:
            sides.append(((i + 1, j), (i + 1, j + 1)))
        if (i, j + 1) not in filled:
            sides.append(((i + 1, j + 1), (i, j + 1)))
        if (i - 1, j) not in filled:
            sides.append(((i, j + 1), (i, j)))
    after: dict[tuple[int, int], list[tuple[int, int]]] = {}
    for start, end in sides:
        after.setdefault(start, []).append(end)
    rings = []
    while after:
        start = min(after)
        ring, here, came = [], start, None
        while True:
            ring.append(here)
            ends = after[here]
            # Where two cells meet at a corner only, turning left keeps each ring simple.
            end = ends[0] if len(ends) == 1 or came is None else min(ends, key=lambda e: _turn(came, here, e))
            ends.remove(end)
            if not ends:
                del after[here]
            came, here = here, end
            if here == start:
                break
        rings.append(ring)
    return rings


def _turn(came: Point, here: Point, there: Point) -> int:
    """-1 for a left turn, 0 straight on, 1 for a right turn."""
    a, b = here[0] - came[0], here[1] - came[1]
    c, d = there[0] - here[0], there[1] - here[1]
    return -(a * d - b * c)


def _corners(ring: Ring) -> Ring:
    """The ring without the points that lie on a straight run."""
    count = len(ring)
    return [
        point
        for k, point in enumerate(ring)
        if not (
            ring[k - 1][0] == point[0] == ring[(k + 1) % count][0]
            or ring[k - 1][1] == point[1] == ring[(k + 1) % count][1]
        )
    ]
