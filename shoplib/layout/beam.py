"""Beam search over staged cuts: from unfinished layouts to all that have one part more, and the best of these again.

A sheet is cut into bands right across it, these into strips, and those into parts, one stage after the other; a part
that is narrower than its strip is trimmed in a fourth. An unfinished layout is then told by the band and the strip
that it is working in, whatever came before. The next part goes beside the last one, or begins a new strip, a new band
or a new sheet. The scheme is that of the open literature on tree search for guillotine packing; here all steps of a
level are made at once in numpy.
"""

from collections.abc import Callable

import numpy as np

from shoplib.layout.grown import Grown, Lie, Sheet

# Rows of the state of the unfinished layouts. Bands follow each other along x, whichever way that is on the sheet.
BAND, BAND_END, STRIP, STRIP_END, END, GONE, PACKED, PAID = range(8)
BESIDE, NEW_STRIP, NEW_BAND, NEW_SHEET = range(4)


class Beam:
    """The search for one job; `run` is one pass of it."""

    def __init__(self, grown: Grown):
        self.grown = grown
        kinds = np.arange(len(grown.w))
        turning = kinds[grown.turns]
        self.kind = np.concatenate((kinds, turning))
        self.turned = np.arange(len(self.kind)) >= len(kinds)
        w = np.concatenate((grown.w, grown.h[turning])).astype(float)
        h = np.concatenate((grown.h, grown.w[turning])).astype(float)
        # Index 0: bands follow each other along the sheet; 1: across it.
        self.w, self.h = np.stack((w, h)), np.stack((h, w))
        self.pieces = int(grown.count.sum())
        # The last stock is none at all: where every layout begins.
        self.wide = np.stack((np.append(grown.wide, 0), np.append(grown.high, 0))).astype(float)
        self.high = self.wide[::-1]
        area = self.wide[0] * self.high[0]
        step = int(np.gcd.reduce(grown.cost, dtype=object)) or 1
        self.cost = np.array([cost // step for cost in grown.cost] + [0], dtype=float)
        self.step = step
        paid_for = self.cost > 0
        rate = np.divide(self.cost, area, out=np.zeros_like(area), where=area > 0)
        self.least_rate = rate[paid_for].min() if paid_for.any() else 0.0
        # Areas are valued: that of a part at the least price, that of a sheet at its own; scrap counts as if bought.
        base = self.least_rate or 1 / area.max()
        self.rate = np.where(paid_for, rate, base)
        self.value = w * h * base
        self.sheet_value = area * self.rate
        self.all_value = float((self.value[: len(kinds)] * grown.count).sum())
        self.area, self.base = area, base
        self.limited = grown.there < self.pieces
        self.free = (self.cost[:-1] == 0) & (grown.there > 0)
        rng = np.random.default_rng(1)
        self.marks = rng.integers(1, 2**63, len(kinds), dtype=np.uint64) * np.uint64(2) + np.uint64(1)
        self.mixing = rng.integers(1, 2**63, 6, dtype=np.uint64) * np.uint64(2) + np.uint64(1)

    def run(self, width: int, guide: int, most: int, stop: Callable[[], bool]) -> list[list[Sheet]]:
        """Finished layouts that cost at most `most`; empty where this pass finds none."""
        limit = most // self.step + 1e-6
        state = np.zeros((8, 1))
        down, stock = np.zeros(1, np.int8), np.full(1, len(self.cost) - 1, np.int16)
        count = self.grown.count[None].astype(np.int16)
        there = self.grown.there[None].astype(np.int32)
        mark = np.zeros(1, np.uint64)
        trail = []
        for level in range(1, self.pieces + 1):
            if stop():
                return []
            node, variant, move, score = self._steps(state, down, stock, count, there, guide, level, limit)
            if not len(node):
                return []
            if len(node) > 3 * width:
                best = np.argpartition(score, 3 * width)[: 3 * width]
                node, variant, move, score = node[best], variant[best], move[best], score[best]
            order = np.argsort(score, kind="stable")
            node, variant, move = node[order], variant[order], move[order]
            new, new_down, new_stock, opened = self._children(state, down, stock, node, variant, move)
            new_mark = mark[node] + self.marks[self.kind[variant]]
            key = new_mark + (new_stock * 2 + new_down).astype(np.uint64) * self.mixing[5]
            for row in range(5):
                key ^= new[row].astype(np.uint64) * self.mixing[row] + (key >> np.uint64(29))
            keep = np.sort(np.unique(key, return_index=True)[1])[:width]
            node, variant = node[keep], variant[keep]
            state, down, stock, mark = new[:, keep], new_down[keep], new_stock[keep], new_mark[keep]
            count = count[node]
            count[np.arange(len(node)), self.kind[variant]] -= 1
            there = there[node]
            fresh = opened[keep]
            there[np.flatnonzero(fresh), stock[fresh]] -= 1
            trail.append((node, variant, state[[BAND, STRIP, END]], down, stock, fresh))
        ends = np.argsort(state[PAID], kind="stable")
        return [self._sheets(trail, int(end)) for end in ends[:64]]

    def _steps(self, state, down, stock, count, there, guide, level, limit):
        """All ways to lay one part more: layout, variant of part, move (and stock and way of a new sheet), score."""
        found = []
        closed = np.zeros(len(down), bool)
        has = count[:, self.kind] > 0
        spare = (self.free * there) @ self.area[:-1] if self.free.any() else 0.0
        for way in (0, 1):
            at = np.flatnonzero(down == way)
            if not len(at):
                continue
            w, h = self.w[way], self.h[way]
            s = state[:, at, None]
            wide, high = self.wide[way, stock[at], None], self.high[way, stock[at], None]
            here = has[at]
            scores = np.full((3, *here.shape), np.inf)
            end = s[END] + w
            top = np.maximum(s[STRIP_END], s[STRIP] + h)
            beside = here & (end <= wide) & (top <= high)
            band_end = np.maximum(s[BAND_END], end)
            before = s[BAND] * high
            used = [before + (band_end - s[BAND]) * s[STRIP] + (end - s[BAND]) * (top - s[STRIP])]
            end = s[BAND] + w
            band_end = np.maximum(s[BAND_END], end)
            strip = here & (end <= wide) & (s[STRIP_END] + h <= high) & (s[STRIP_END] > 0)
            used.append(before + (band_end - s[BAND]) * s[STRIP_END] + w * h)
            band = here & (s[BAND_END] + w <= wide) & (h <= high) & (s[BAND_END] > 0)
            used.append(s[BAND_END] * high + w * h)
            fits = np.stack((beside, strip, band))
            closed[at] = ~fits.any(axis=(0, 2))
            used = np.stack(used)
            packed = s[PACKED] + self.value
            rate = self.rate[stock[at], None]
            gone = s[GONE] + rate * used
            # What the parts that are left need beyond this sheet and the stock in the shop must be bought.
            room = self.area[stock[at], None] - used + (spare[at, None] if np.ndim(spare) else spare)
            more = (self.all_value - packed) / self.base - room
            fits &= s[PAID] + self.least_rate * more <= limit
            scores = np.where(fits, self._score(gone, packed, guide, level), np.inf)
            move, node, variant = np.nonzero(fits)
            found.append((at[node], variant, move, scores[move, node, variant]))
        shut = np.flatnonzero(closed)
        if len(shut):
            for new in range(len(self.cost) - 1):
                for way in (0, 1):
                    w, h = self.w[way], self.h[way]
                    s = state[:, shut, None]
                    fits = has[shut] & (w <= self.wide[way, new]) & (h <= self.high[way, new])
                    fits &= there[shut, new, None] > 0
                    used = w * h
                    packed = s[PACKED] + self.value
                    gone = s[GONE] + self.sheet_value[stock[shut], None] + self.rate[new] * used
                    room = self.area[new] - used + (spare[shut, None] if np.ndim(spare) else spare)
                    if self.free[new]:
                        room = room - self.area[new]
                    more = (self.all_value - packed) / self.base - room
                    fits &= s[PAID] + self.cost[new] + self.least_rate * np.maximum(more, 0) <= limit
                    node, variant = np.nonzero(fits)
                    score = self._score(gone, packed, guide, level)[node, variant]
                    move = np.full(len(node), NEW_SHEET + 2 * new + way)
                    found.append((shut[node], variant, move, score))
        return tuple(np.concatenate(column) for column in zip(*found, strict=True))

    def _score(self, gone, packed, guide, level):
        """Smaller is better: what was used up for what lies there, and whether large parts were laid first."""
        if guide == 0:
            return gone / packed
        waste = 1 - packed / gone
        if guide == 1:
            return waste / packed
        return (0.1 + waste) / packed

    def _children(self, state, down, stock, node, variant, move):
        """The states after the moves."""
        old = state[:, node]
        opened = move >= NEW_SHEET
        stock, down = stock[node], down[node]
        gone = old[GONE] + np.where(opened, self.sheet_value[stock], 0)
        stock = np.where(opened, (move - NEW_SHEET) // 2, stock).astype(np.int16)
        down = np.where(opened, (move - NEW_SHEET) % 2, down).astype(np.int8)
        w, h = self.w[down, variant], self.h[down, variant]
        band = np.where(opened, 0, np.where(move == NEW_BAND, old[BAND_END], old[BAND]))
        strip = np.where(move >= NEW_BAND, 0, np.where(move == NEW_STRIP, old[STRIP_END], old[STRIP]))
        beside = move == BESIDE
        end = np.where(beside, old[END], band) + w
        strip_end = np.maximum(strip + h, np.where(beside, old[STRIP_END], 0))
        band_end = np.maximum(np.where(move >= NEW_BAND, 0, old[BAND_END]), end)
        paid = old[PAID] + np.where(opened, self.cost[stock], 0)
        packed = old[PACKED] + self.value[variant]
        return np.stack((band, band_end, strip, strip_end, end, gone, packed, paid)), down, stock, opened

    def _sheets(self, trail, end: int) -> list[Sheet]:
        """The layout that ends there, read backwards."""
        sheets, lies = [], []
        for node, variant, (band, strip, x_end), down, stock, opened in reversed(trail):
            one = variant[end]
            x, y = x_end[end] - self.w[down[end], one], strip[end]
            if down[end]:
                x, y = y, x
            lies.append(Lie(int(self.kind[one]), bool(self.turned[one]), int(x), int(y)))
            if opened[end]:
                sheets.append(Sheet(int(stock[end]), tuple(reversed(lies))))
                lies = []
            end = node[end]
        return sheets[::-1]
