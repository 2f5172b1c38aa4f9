"""Joints made by hand for the drawing of solids: boards, named parts, and how far each board is moved apart.

Sizes follow no rule; what matters is dadoes, fingers, slanting sides and holes.
"""

from dataclasses import replace
from itertools import pairwise
from math import cos, pi, sin

from shoplib.draw.solid_view import Part
from shoplib.measure import INCH
from shoplib.model.board import Board, BoxCut, Hole, PrismCut
from shoplib.model.box import Box
from shoplib.model.placement import standing_in

T = 3 * INCH // 4
HALF = INCH // 2
UPRIGHT = ("+z", "+y", "-x")
FLAT = ("+x", "+y", "+z")
FACING = ("+x", "+z", "-y")
ASIDE = ("+y", "+z", "+x")


def board(name, box, axes, boxes=(), cuts=()):
    """A board that fills a world box, with box cuts in world places and others in its own."""
    placement = standing_in(box, axes)
    own = [placement.to_board(cut) for cut in boxes]
    made = (*(BoxCut("cut", cut.low, cut.high) for cut in own), *cuts)
    return Board(name, "pair", 1, "sheet", *placement.to_board(box).high, placement, made)


def dado(stop=0):
    low, deep = 8 * INCH, INCH // 4
    side = board("side", Box((0, 0, 0), (T, 12 * INCH, 16 * INCH)), UPRIGHT,
                 [Box((T - deep, stop, low), (T, 12 * INCH, low + T))])
    shelf = board("shelf", Box((T - deep, 0, low), (14 * INCH, 12 * INCH, low + T)), FLAT,
                  [Box((T - deep, 0, low), (T, stop, low + T))] if stop else [])
    parts = [Part("dado", "side", (T - deep, 6 * INCH, low + T // 2)), Part("edge", "side", (T // 2, 0, 13 * INCH))]
    return [side, shelf], parts, {"shelf": (5 * INCH, 0, 0)}


def fingers(count=15, longer=0, loose=0):
    high = count * HALF

    def slots(first, deep_x, deep_y):
        return [Box((0, 0, k * HALF - (loose if k else 0)),
                    (deep_x, deep_y, (k + 1) * HALF + (loose if k + 1 < count else 0)))
                for k in range(first, count, 2)]

    front = board("front", Box((0, 0, 0), (10 * INCH, HALF, high)), FACING, slots(1, HALF + longer, HALF))
    side = board("side", Box((0, 0, 0), (HALF, 9 * INCH, high)), ASIDE, slots(0, HALF, HALF + longer))
    return [front, side], [Part("finger", "front", (INCH // 4, 0, INCH // 4))], {"front": (0, -5 * INCH, 0)}


def dovetail():
    high, lean = 5 * INCH, T // 6
    tails = [(HALF, 7 * INCH // 4), (9 * INCH // 4, 27 * INCH // 8), (4 * INCH, 9 * INCH // 2)]
    edges = [0, *(edge for tail in tails for edge in tail), high]
    sockets = [
        PrismCut("socket", ((0, a), (T, a - lean if a else 0), (T, b + lean if b < high else high), (0, b)), "w", 0, T)
        for a, b in zip(edges[::2], edges[1::2], strict=True)
    ]
    tail = board("tail board", Box((0, 0, 0), (T, 9 * INCH, high)), ASIDE, (), sockets)
    pins = [PrismCut("socket", ((a, T), (b, T), (b - lean, 0), (a + lean, 0)), "u", 0, T) for a, b in tails]
    pin = board("pin board", Box((0, 0, 0), (9 * INCH, T, high)), FACING, (), pins)
    return [tail, pin], [Part("tail", "tail board", (T // 2, 0, INCH))], {"pin board": (0, -4 * INCH, 0)}


def dowels():
    low, radius = 3 * INCH, 3 * INCH // 16
    places = [INCH, 3 * INCH]
    side = board("side", Box((0, 0, 0), (T, 5 * INCH, 8 * INCH)), UPRIGHT, (),
                 [Hole("dowel", (low + T // 2, y, 0), "w", 2 * radius, HALF) for y in places])
    rail = board("rail", Box((T, 0, low), (9 * INCH, 4 * INCH, low + T)), FLAT, (),
                 [Hole("dowel", (0, y, T // 2), "u", 2 * radius, INCH) for y in places])
    boards, moved = [side, rail], {"rail": (5 * INCH, 0, 0)}
    for number, y in enumerate(places, 1):
        middle = low + T // 2
        blank = board(f"dowel {number}", Box((T - HALF, y - radius, middle - radius),
                                             (T + INCH, y + radius, middle + radius)), FLAT)
        boards.append(replace(blank, cuts=tuple(rounded(radius, blank.length))))
        moved[blank.name] = (5 * INCH // 2, 0, 0)
    return boards, [], moved


def rounded(radius, length):
    """What is taken off a square stick to leave 24 sides."""
    for corner in range(4):
        ends = [2 * pi * (corner * 6 + k) / 24 for k in range(7)]
        ring = [(radius + round(radius * cos(t)), radius + round(radius * sin(t))) for t in ends]
        out = radius * (2 if corner in (0, 3) else 0), radius * (2 if corner in (0, 1) else 0)
        for (a, b), (c, d) in pairwise(ring):
            if (c - a) * (out[1] - b) != (d - b) * (out[0] - a):
                yield PrismCut("round", ((a, b), (c, d), out), "u", 0, length)


HAND_MADE = {
    "dado": dado, "stopped dado": lambda: dado(INCH), "fingers": fingers,
    "loose fingers": lambda: fingers(7, INCH // 32, INCH // 128), "dovetail": dovetail, "dowels": dowels,
}
