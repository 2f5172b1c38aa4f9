"""Smaller parts in the place of larger ones: a sheet that holds a part once too often can hold a smaller one there.

With these exchanges in the linear program a larger part is never worth less than a smaller one that lies in its place,
which its prices come to by themselves only after many more sheets (dual-optimal inequalities: J. M. Valério de
Carvalho, INFORMS J. on Computing 17 (2005); from memory).
"""

import numpy as np

from shoplib.layout.grown import Grown, Lie

NEXT = 3
"""Smaller kinds that are thought of in the place of one: those take smaller ones in turn."""


def in_place_of(grown: Grown) -> list[tuple[int, int]]:
    """Pairs of kinds, a larger one and one that can lie wherever the larger does; what is large comes first.

    >>> from shoplib.layout.grown import grown as grow
    >>> from shoplib.layout.pieces import Job, Part, Stock
    >>> sizes = ((600, 300), (500, 300), (300, 550), (280, 200))
    >>> in_place_of(grow(Job(tuple(Part("p", *size) for size in sizes), (Stock("ply", 2440, 1220),))))
    [(0, 1), (0, 3), (2, 3), (1, 3)]
    """
    w, h, turns = grown.w, grown.h, grown.turns
    order = np.argsort(-w * 1.0 * h, kind="stable")
    pairs = []
    for place, kind in enumerate(order):
        later = order[place + 1 :]
        upright = (w[later] <= w[kind]) & (h[later] <= h[kind])
        lying = (h[later] <= w[kind]) & (w[later] <= h[kind])
        # A part that lies one way alone must find room whichever way the larger one lies.
        able = np.where(turns[later], upright | lying, upright & (lying | ~turns[kind]))
        pairs += [(int(kind), int(other)) for other in later[able][:NEXT]]
    return pairs


def exchanged(grown: Grown, lie: Lie, kind: int) -> Lie:
    """A part of the smaller kind where the larger one lies.

    >>> from shoplib.layout.grown import grown as grow
    >>> from shoplib.layout.pieces import Job, Part, Stock
    >>> parts = Part("side", 600, 300, 1, True), Part("rail", 100, 500, 1, True)
    >>> exchanged(grow(Job(parts, (Stock("ply", 2440, 1220),))), Lie(0, False, 7, 0), 1)
    Lie(kind=1, turned=True, x=7, y=0)
    """
    w, h = grown.w[lie.kind], grown.h[lie.kind]
    if lie.turned:
        w, h = h, w
    return Lie(kind, bool(grown.w[kind] > w or grown.h[kind] > h), lie.x, lie.y)
