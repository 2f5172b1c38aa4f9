"""Beam search over staged cuts: from unfinished layouts to all that have one part more, and the best of these again.

A sheet is cut into bands right across it, these into strips, and those into parts, one stage after the other; a part
that is narrower than its strip is trimmed in a fourth. An unfinished layout is then told by the band and the strip
that it is working in, whatever came before. The next part goes beside the last one, or begins a new strip, a new band
or a new sheet. The scheme is that of the open literature on tree search for guillotine packing; here all steps of a
level are made at once in numpy.
"""

from collections.abc import Callable

import numpy as np

from shoplib.layout.bounds import telling
from shoplib.layout.grown import MOST, Grown, Lie, Sheet

# Rows of the state of the unfinished layouts. Bands follow each other along x, whichever way that is on the sheet.
# GONE are sheets that are closed and USED is what lies behind the last part, PACKED and WORTH the parts, PAID the cost.
BAND, BAND_END, STRIP, STRIP_END, END, GONE, USED, PACKED, PAID, OPENED, WORTH = range(11)
ROWS = 11
ENDS = 8
"""Finished layouts that a pass gives at most."""
TOLD = 40
"""Bounds that the parts which are left are held against when a sheet is closed."""
SHAKE = (0.1, 0.2)
"""How much the worth of parts is shaken."""
MIX = (0.0, 0.3, 0.6)
"""How far the worth of parts goes from their area towards their price."""
BESIDE, NEW_STRIP, NEW_BAND, NEW_SHEET = range(4)


class Beam:
    """The search for one job; `run` is one pass of it."""

    def __init__(self, grown: Grown):
        self.grown = grown
        # Large parts first: a kind's place in this order is its rank.
        kinds = np.argsort(-grown.w * 1.0 * grown.h, kind="stable")
        turning = kinds[grown.turns[kinds]]
        self.real = kinds
        rank = np.argsort(kinds)
        self.kind = rank[np.concatenate((kinds, turning))]
        self.turned = np.arange(len(self.kind)) >= len(kinds)
        w = np.concatenate((grown.w[kinds], grown.h[turning])).astype(float)
        h = np.concatenate((grown.h[kinds], grown.w[turning])).astype(float)
        # Index 0: bands follow each other along the sheet; 1: across it.
        self.w, self.h = np.stack((w, h)), np.stack((h, w))
        self.pieces = int(grown.count.sum())
        self.cut_short = False
        self.repeats = self.pieces > 2 * len(kinds)
        # The last stock is none at all: where every layout begins.
        # A place is a stock and the way of its bands: 2 * stock + way.
        wide, high = np.append(grown.wide, 0).astype(float), np.append(grown.high, 0).astype(float)
        self.wide, self.high = np.stack((wide, high), 1).ravel(), np.stack((high, wide), 1).ravel()
        self.nowhere = len(self.wide) - 2
        area = wide * high
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
        self.worth = self.value
        self.sheet_value = area * self.rate
        self.all_value = float((self.value[: len(kinds)] * grown.count[kinds]).sum())
        self.area, self.base = area, base
        self.free = np.append((self.cost[:-1] == 0) & (grown.there > 0), False)
        self.telling = telling(grown, TOLD)[:, kinds] / step
        self.seen: set[int] = set()
        self.closed: list = []
        rng = np.random.default_rng(1)
        self.marks = rng.integers(1, 2**63, len(kinds), dtype=np.uint64) * np.uint64(2) + np.uint64(1)
        self.mixing = rng.integers(1, 2**63, 6, dtype=np.uint64) * np.uint64(2) + np.uint64(1)

    def shake(self, seed: int, prices: np.ndarray | None = None) -> None:
        """Change what parts are worth a little, towards `prices` where there are any; seed 0: as large as they are."""
        self.worth = self.value
        if seed:
            rng = np.random.default_rng(seed)
            worth = self.value[: len(self.real)]
            count = self.grown.count[self.real]
            if prices is not None and prices.any():
                priced = prices[self.real] / self.step
                priced = priced * (worth @ count) / (priced @ count)
                worth = worth + MIX[seed % len(MIX)] * (priced - worth)
            worth = worth * (1 + SHAKE[seed % len(SHAKE)] * rng.random(len(worth)))
            self.worth = (worth * (self.all_value / (worth @ count)))[self.kind]

    def run(self, width: int, guide: tuple[float, float], most: int, stop: Callable[[], bool]) -> list[list[Sheet]]:
        """Finished layouts that cost at most `most`, cheapest first; empty where this pass finds none.

        `cut_short` then tells whether there was anything that it did not look at.
        """
        limit = most // self.step + 1e-6
        self.cut_short = False
        state, place, count, there, mark = self._nothing()
        begun = before = mark
        trail = []
        for level in range(self.pieces):
            if stop():
                self.cut_short = True
                return []
            chosen = self._best(self._steps(state, place, count, there, limit), mark, width, guide)
            if chosen is None:
                return []
            node, variant, place, state, mark = chosen
            count, there, fresh = self._after(state, place, count[node], there[node], variant)
            if level:
                self._close(trail, np.unique(node[fresh]), before - begun)
            begun = np.where(fresh, before[node], begun[node])
            before = mark
            trail.append((node, variant, state[STRIP], state[END], place, fresh))
        self._close(trail, np.arange(len(node)), mark - begun)
        return [self._sheets(trail, end) for end in np.argsort(state[PAID], kind="stable")[:ENDS].tolist()]

    def price(self, width: int, guide: tuple[float, float], prices: np.ndarray, most: int, seed: int) -> list[Sheet]:
        """At most `most` single sheets whose parts, at these prices, are worth more than the sheet costs.

        Two times of three the prices are shaken first: else the same sheets are found again and again.
        """
        worth = prices[self.real] / self.step
        if seed % 3:
            count = self.grown.count[self.real]
            shaken = worth * (1 + SHAKE[-1] * np.random.default_rng(seed).random(len(worth)))
            worth = shaken * ((worth @ count) / (shaken @ count or 1.0))
        self.worth = worth[self.kind]
        state, place, count, there, mark = self._nothing()
        count = count * (worth > 1e-9)
        trail, found = [], []
        while True:
            first = not trail
            steps = self._steps(state, place, count, there, np.inf, new_sheets=first, any_first=True)
            chosen = self._best(steps, mark, width, guide)
            if chosen is None:
                break
            node, variant, place, state, mark = chosen
            count, there, fresh = self._after(state, place, count[node], there[node], variant)
            trail.append((node, variant, state[STRIP], state[END], place, fresh))
            gain = state[WORTH] - self.cost[place // 2]
            found += [(-gain[i], len(trail), i) for i in np.argsort(-gain)[:most].tolist() if gain[i] > 1e-7]
        found.sort()
        return [self._sheets(trail[:level], end)[0] for _, level, end in found[:most]]

    def _nothing(self):
        """Where every layout begins: state, place, parts and stock that are there, mark."""
        count = self.grown.count[self.real][None].astype(np.int16)
        there = self.grown.there[None].astype(np.int32)
        return np.zeros((ROWS, 1)), np.full(1, self.nowhere), count, there, np.zeros(1, np.uint64)

    def _after(self, state, place, count, there, variant):
        """The parts and the stock that are left after the steps, and which of them opened a sheet."""
        count[np.arange(len(count)), self.kind[variant]] -= 1
        fresh = state[OPENED] > 0
        there[np.flatnonzero(fresh), place[fresh] // 2] -= 1
        return count, there, fresh

    def _best(self, steps, mark, width, guide):
        """The best `width` of the steps that differ, best first: node, variant, place, state, mark."""
        node, variant, place, state = steps
        if not len(node):
            return None
        score = self._score(state, place, guide)
        best = np.arange(len(score))
        if len(best) > 3 * width:
            best = np.argpartition(score, 3 * width)[: 3 * width]
        best = best[np.argsort(score[best], kind="stable")]
        marks = mark[node[best]] + self.marks[self.kind[variant[best]]]
        # What has the same parts and works at the same place is the same, for all that is still to come.
        key = marks + place[best].astype(np.uint64) * self.mixing[5]
        for row in range(5):
            key ^= state[row, best].astype(np.uint64) * self.mixing[row] + (key >> np.uint64(29))
        keep = np.sort(np.unique(key, return_index=True)[1])
        self.cut_short |= len(score) > 3 * width or len(keep) > width
        keep = keep[:width]
        best = best[keep]
        return node[best], variant[best], place[best], state[:, best], marks[keep]

    def _steps(self, state, place, count, there, limit, new_sheets=True, any_first=False):
        """All ways to lay one part more: from which layout, which variant of part, at which place, the new state."""
        variants = np.flatnonzero((count > 0).any(axis=0)[self.kind])
        has = count[:, self.kind[variants]] > 0
        spare = (self.free[:-1] * there) @ self.area[:-1]
        closed = np.ones(len(place), bool)
        found = []
        for way in (0, 1):
            at = np.flatnonzero(place % 2 == way)
            # Half the bytes, half the time: most of it goes into these tables.
            w, h = self.w[way, variants].astype(np.int32), self.h[way, variants].astype(np.int32)
            s = state[: END + 1, at, None].astype(np.int32)
            wide = self.wide[place[at], None].astype(np.int32)
            high = self.high[place[at], None].astype(np.int32)
            may = has[at] & (wide > 0)
            beside = may & (w <= wide - s[END]) & (h <= high - s[STRIP])
            above = may & (w <= wide - s[BAND]) & (h <= high - s[STRIP_END])
            after = may & (w <= wide - s[BAND_END]) & (h <= high)
            for move, fits in ((BESIDE, beside), (NEW_STRIP, above), (NEW_BAND, after)):
                node, variant = np.divmod(np.flatnonzero(fits), len(variants))
                node, variant = at[node], variants[variant]
                closed[node] = False
                found.append(self._laid(state, node, variant, place[node], move))
        # A sheet is closed when no part fits any more: one that does had better lie here than on a later sheet.
        closed = np.flatnonzero(closed)
        if len(self.telling) and new_sheets and not any_first:
            needs = np.ceil((count[closed] @ self.telling.T).max(axis=1) - 1e-6)
            closed = closed[state[PAID, closed] + needs <= limit]
        for new in range(self.nowhere) if new_sheets and len(closed) else ():
            fits = has[closed] & (self.w[new % 2, variants] <= self.wide[new])
            fits &= self.h[new % 2, variants] <= self.high[new]
            fits &= there[closed, new // 2, None] > 0
            if not any_first:
                # Sheets may stand in any order, and so may what is on them: the largest part left begins the next.
                kinds = self.kind[variants]
                fits &= kinds == kinds[has[closed].argmax(axis=1)][:, None]
            node, variant = np.nonzero(fits)
            node, variant = closed[node], variants[variant]
            found.append(self._laid(state, node, variant, np.full(len(node), new), NEW_SHEET, place[node]))
        node, variant, place, state = (np.concatenate(column, axis=-1) for column in zip(*found, strict=True))
        # What the parts that are left need beyond this sheet and the stock in the shop must be bought.
        stock = place // 2
        room = self.area[stock] - state[USED] + spare[node] - self.free[stock] * state[OPENED] * self.area[stock]
        more = (self.all_value - state[PACKED]) / self.base - room
        able = state[PAID] + self.least_rate * np.maximum(more, 0) <= limit
        return node[able], variant[able], place[able], state[:, able]

    def _laid(self, state, node, variant, place, move, before=None):
        """The states after the move, and what they come of."""
        new = state[:, node]
        way = place % 2
        w, h = self.w[way, variant], self.h[way, variant]
        if move == BESIDE:
            new[END] += w
            new[STRIP_END] = np.maximum(new[STRIP_END], new[STRIP] + h)
        else:
            if move == NEW_STRIP:
                new[STRIP] = new[STRIP_END]
            else:
                new[STRIP] = 0
                new[BAND] = new[BAND_END] if move == NEW_BAND else 0
                new[BAND_END] = 0
            new[END] = new[BAND] + w
            new[STRIP_END] = new[STRIP] + h
        new[BAND_END] = np.maximum(new[BAND_END], new[END])
        new[PACKED] += self.value[variant]
        new[WORTH] += self.worth[variant]
        new[OPENED] = move == NEW_SHEET
        if move == NEW_SHEET:
            new[GONE] += self.sheet_value[before // 2]
            new[PAID] += self.cost[place // 2]
        new[USED] = (
            new[BAND] * self.high[place]
            + (new[BAND_END] - new[BAND]) * new[STRIP]
            + (new[END] - new[BAND]) * (new[STRIP_END] - new[STRIP])
        )
        return node, variant, place, new

    def _score(self, state, place, guide):
        """Smaller is better: what was used up for what lies there, and whether parts of much worth were laid first."""
        gone, worth = state[GONE] + self.rate[place // 2] * state[USED], state[WORTH]
        constant, power = guide
        return (constant + 1 - worth / gone) / worth**power

    def _close(self, trail, nodes, marks) -> None:
        """Remember where the sheets ended that are closed for good."""
        for node, mark in zip(nodes.tolist(), marks[nodes].tolist(), strict=True):
            if mark not in self.seen:
                self.seen.add(mark)
                self.closed.append((trail, len(trail) - 1, node))

    def closed_sheets(self) -> list[Sheet]:
        """Sheets closed since this was last asked, of which no two hold the same parts."""
        sheets = [self._sheets(trail[: level + 1], node, 1)[0] for trail, level, node in self.closed]
        self.closed = []
        return sheets

    def _sheets(self, trail, end: int, most: int = MOST) -> list[Sheet]:
        """The layout that ends there, read backwards."""
        sheets, lies = [], []
        for node, variant, strip, x_end, place, opened in reversed(trail):
            one, way = variant[end], place[end] % 2
            x, y = x_end[end] - self.w[way, one], strip[end]
            if way:
                x, y = y, x
            lies.append(Lie(int(self.real[self.kind[one]]), bool(self.turned[one]), int(x), int(y)))
            if opened[end]:
                sheets.append(Sheet(int(place[end]) // 2, tuple(reversed(lies))))
                lies = []
                if len(sheets) == most:
                    break
            end = node[end]
        return sheets[::-1]
