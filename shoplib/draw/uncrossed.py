"""An order for leaders in which none crosses another."""

from collections.abc import Callable

import numpy as np

Point = tuple[float, float]
Stroke = tuple[Point, Point]


def uncrossed(order: list[int], laid: Callable[[list[int]], list[float]],
              stroke: Callable[[int, float], Stroke]) -> list[int]:
    """The order in which the fewest strokes cross, looked for by exchanging two that do.

    `laid` gives the places of the ends for an order, `stroke` the line of one item to its place. Two strokes
    that cross and change places grow shorter together, so the exchanges come to an end; where texts of unlike
    length shift the others, the best order seen is taken after as many rounds as there are pairs.

    >>> points = [(0.0, 9.0), (1.0, 1.0)]
    >>> uncrossed([0, 1], lambda order: [2.0, 4.0], lambda k, place: (points[k], (place, 0.0)))
    [1, 0]
    >>> uncrossed([1, 0], lambda order: [2.0, 4.0], lambda k, place: (points[k], (place, 0.0)))
    [1, 0]
    """
    best, fewest = order, None
    for _ in range(len(order) * (len(order) - 1) // 2 + 1):
        strokes = [stroke(k, place) for k, place in zip(order, laid(order), strict=True)]
        pairs = crossing(strokes)
        if fewest is None or len(pairs) < fewest:
            best, fewest = order, len(pairs)
        if not len(pairs):
            break
        i, j = pairs[0]
        order = [*order]
        order[i], order[j] = order[j], order[i]
    return best


def cross(one: Stroke, other: Stroke) -> bool:
    """Whether two strokes cross inside both.

    >>> cross(((0, 0), (2, 2)), ((0, 2), (2, 0))), cross(((0, 0), (1, 0)), ((0, 1), (1, 1)))
    (True, False)
    """
    (a, b), (c, d) = one, other
    return _turn(a, b, c) * _turn(a, b, d) < 0 and _turn(c, d, a) * _turn(c, d, b) < 0


def runs_through(stroke: Stroke, box: tuple[float, float, float, float]) -> bool:
    """Whether a stroke runs through a box (left, top, right, bottom): the parts of it that lie between each two
    opposite sides have some in common.

    >>> runs_through(((0, 0), (9, 9)), (2, 3, 5, 8)), runs_through(((0, 0), (9, 9)), (5, 1, 9, 3))
    (True, False)
    """
    low, high = 0.0, 1.0
    for at, end, least, most in zip(*stroke, box[:2], box[2:], strict=True):
        if at == end:
            if not least < at < most:
                return False
            continue
        first, last = sorted(((least - at) / (end - at), (most - at) / (end - at)))
        low, high = max(low, first), min(high, last)
    return low < high


def crossing(strokes: list[Stroke]) -> np.ndarray:
    """Each pair of strokes that `cross`, by their numbers, the lower first; all of many pairs are asked at once.

    >>> crossing([((0, 0), (2, 2)), ((9, 0), (9, 9)), ((0, 2), (2, 0))]).tolist()
    [[0, 2]]
    """
    a, b = (np.array([stroke[end] for stroke in strokes], dtype=float).reshape(-1, 2) for end in (0, 1))
    along, across = b - a, a[None, :, :] - a[:, None, :]
    beyond = b[None, :, :] - a[:, None, :]
    starts = along[:, None, 0] * across[:, :, 1] - along[:, None, 1] * across[:, :, 0]
    ends = along[:, None, 0] * beyond[:, :, 1] - along[:, None, 1] * beyond[:, :, 0]
    parted = starts * ends < 0  # row: the stroke, on whose two sides the other's ends lie
    return np.argwhere(np.triu(parted & parted.T))


def _turn(a: Point, b: Point, c: Point) -> float:
    return (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0])
