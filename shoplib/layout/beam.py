"""Beam search over staged cuts: from unfinished layouts to all that have one part more, and the best of these again.

A sheet is cut into bands right across it, these into strips, and those into columns, one stage after the other; a
column is a part, trimmed in a fourth stage where it is narrower than its strip, or in `deep` passes parts on top of
each other. An unfinished layout is then told by the band, the strip and the column that it is working in, whatever
came before. The next part goes on top of the last one or beside it, or begins a new strip, a new band or a new sheet.
The scheme is that of the open literature on tree search for guillotine packing; here all steps of a level are made at
once in numpy.
"""

from collections.abc import Callable, Sequence

import numpy as np

from shoplib.layout.bounds import telling
from shoplib.layout.grown import MOST, Grown, Lie, Sheet

# Rows of the state of the unfinished layouts. Bands follow each other along x, whichever way that is on the sheet.
# GONE are sheets that are closed and USED is what lies behind the last part, PACKED and WORTH the parts, PAID the cost.
BAND, BAND_END, STRIP, STRIP_END, COLUMN, END, TOP, GONE, USED, PACKED, PAID, OPENED, WORTH = range(13)
ROWS, FRONT = 13, 7
ALL, FLAT = range(FRONT), (BAND, BAND_END, STRIP, STRIP_END, END)
"""Rows that tell what can still be laid where, in passes that are `deep` and in those that are not."""
ENDS = 8
"""Finished layouts that a pass gives at most."""
TOLD = 40
"""Bounds that the parts which are left are held against when a sheet is closed."""
SHAKE = (0.1, 0.2)
"""How much the worth of parts is shaken."""
MIX = (0.0, 0.3, 0.6)
"""How far the worth of parts goes from their area towards their price."""
ON_TOP, BESIDE, NEW_STRIP, NEW_BAND, NEW_SHEET = range(5)


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
        self.across, self.along = self.w.astype(np.int32), self.h.astype(np.int32)
        self.cut_short = False
        self.deep = False
        self.repeats = bool(grown.count.sum() > 2 * len(kinds))
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
        self.area, self.base = area, base
        self.all_value = 0.0  # of the parts that a pass has to lay
        self.free = np.append((self.cost[:-1] == 0) & (grown.there > 0), False)
        self.telling = telling(grown, TOLD)[:, kinds] / step
        self.seen: set[int] = set()
        self.closed: list = []
        rng = np.random.default_rng(1)
        self.marks = rng.integers(1, 2**63, len(kinds), dtype=np.uint64) * np.uint64(2) + np.uint64(1)
        self.mixing = rng.integers(1, 2**63, FRONT + 1, dtype=np.uint64) * np.uint64(2) + np.uint64(1)

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
            whole = self.value[: len(self.real)] @ count
            self.worth = (worth * (whole / (worth @ count)))[self.kind]

    def run(
        self,
        width: int,
        guide: tuple[float, float],
        most: int,
        stop: Callable[[], bool],
        kept: Sequence[Sheet] = (),
    ) -> list[list[Sheet]]:
        """Finished layouts that cost at most `most`, cheapest first; empty where this pass finds none.

        The sheets that are `kept` stay as they are: they are in each of these layouts.

        `cut_short` then tells whether there was anything that it did not look at. `deep` passes lay parts on top of
        each other in a strip as well, which takes one stage more.
        """
        limit = (most - self.grown.cost_of(kept)) // self.step + 1e-6
        self.cut_short = False
        state, place, count, there, mark = self._nothing(kept)
        begun = before = mark
        trail = []
        for level in range(int(count.sum())):
            if stop():
                self.cut_short = True
                return []
            steps = self._steps(state, place, count, there, limit)
            chosen = self._best(steps, state, place, mark, width, guide)
            if chosen is None:
                return []
            node, variant, place, state, mark = chosen
            count, there, fresh = self._after(state, place, count[node], there[node], variant)
            if level:
                self._close(trail, np.unique(node[fresh]), before - begun)
            begun = np.where(fresh, before[node], begun[node])
            before = mark
            trail.append((node, variant, state[COLUMN], state[TOP], place, fresh))
        self._close(trail, np.arange(len(node)), mark - begun)
        ends = np.argsort(state[PAID], kind="stable")[:ENDS].tolist()
        return [[*kept, *self._sheets(trail, end)] for end in ends]

    def price(
        self,
        width: int,
        guide: tuple[float, float],
        prices: np.ndarray,
        most: int,
        seed: int,
        kept: Sequence[Sheet] = (),
    ) -> list[Sheet]:
        """At most `most` single sheets whose parts, at these prices, are worth more than the sheet costs.

        Two times of three the prices are shaken first: else the same sheets are found again and again. What is on
        sheets that are `kept` is there no more.
        """
        worth = prices[self.real] / self.step
        if seed % 3:
            count = self.grown.count[self.real]
            shaken = worth * (1 + SHAKE[-1] * np.random.default_rng(seed).random(len(worth)))
            worth = shaken * ((worth @ count) / (shaken @ count or 1.0))
        self.worth = worth[self.kind]
        state, place, count, there, mark = self._nothing(kept)
        count = count * (worth > 1e-9)
        trail, found = [], []
        while True:
            first = not trail
            steps = self._steps(state, place, count, there, np.inf, new_sheets=first, any_first=True)
            chosen = self._best(steps, state, place, mark, width, guide)
            if chosen is None:
                break
            node, variant, place, state, mark = chosen
            count, there, fresh = self._after(state, place, count[node], there[node], variant)
            trail.append((node, variant, state[COLUMN], state[TOP], place, fresh))
            gain = state[WORTH] - self.cost[place // 2]
            found += [(-gain[i], len(trail), i) for i in np.argsort(-gain)[:most].tolist() if gain[i] > 1e-7]
        found.sort()
        return [self._sheets(trail[:level], end)[0] for _, level, end in found[:most]]

    def _nothing(self, kept: Sequence[Sheet] = ()):
        """Where every layout begins beside what is kept: state, place, parts and stock that are there, mark."""
        count, there = self.grown.count.copy(), self.grown.there.copy()
        for sheet in kept:
            np.subtract.at(count, [lie.kind for lie in sheet.lies], 1)
            there[sheet.stock] -= 1
        count = count[self.real][None].astype(np.int16)
        self.all_value = float(self.value[: len(self.real)] @ count[0])
        there = there[None].astype(np.int32)
        return np.zeros((ROWS, 1)), np.full(1, self.nowhere), count, there, np.zeros(1, np.uint64)

    def _after(self, state, place, count, there, variant):
        """The parts and the stock that are left after the steps, and which of them opened a sheet."""
        count[np.arange(len(count)), self.kind[variant]] -= 1
        fresh = state[OPENED] > 0
        there[np.flatnonzero(fresh), place[fresh] // 2] -= 1
        return count, there, fresh

    def _best(self, steps, state, place, mark, width, guide):
        """The best `width` of the steps that differ, best first: node, variant, place, state, mark."""
        node, variant, at, move, used, gone, packed, worth = steps
        if not len(node):
            return None
        score = self._score(gone + self.rate[at // 2] * used, worth, guide)
        best = np.arange(len(score))
        if len(best) > 3 * width:
            best = np.argpartition(score, 3 * width)[: 3 * width]
        best = best[np.argsort(score[best], kind="stable")]
        node, variant, at = node[best], variant[best], at[best]
        new = self._laid(state, node, variant, at, move[best], place)
        new[USED], new[GONE], new[PACKED], new[WORTH] = used[best], gone[best], packed[best], worth[best]
        marks = mark[node] + self.marks[self.kind[variant]]
        # What has the same parts and works at the same place is the same, for all that is still to come.
        key = marks + at.astype(np.uint64) * self.mixing[FRONT]
        for row in ALL if self.deep else FLAT:
            key ^= new[row].astype(np.uint64) * self.mixing[row] + (key >> np.uint64(29))
        keep = np.sort(np.unique(key, return_index=True)[1])
        self.cut_short |= len(score) > 3 * width or len(keep) > width
        keep = keep[:width]
        return node[keep], variant[keep], at[keep], new[:, keep], marks[keep]

    def _steps(self, state, place, count, there, limit, new_sheets=True, any_first=False):
        """All ways to lay one part more: from which layout, which variant of part, at which place, by which move."""
        variants = np.flatnonzero((count > 0).any(axis=0)[self.kind])
        has = (count > 0)[:, self.kind[variants]]
        closed = np.ones(len(place), bool)
        found = []
        for way in (0, 1):
            at = np.flatnonzero(place % 2 == way)
            # Half the bytes, half the time: most of it goes into these tables.
            w, h = self.across[way, variants], self.along[way, variants]
            wide = self.wide[place[at], None].astype(np.int32)
            high = self.high[place[at], None].astype(np.int32)
            band, band_end, strip, strip_end, column, end, top = state[:FRONT, at, None].astype(np.int32)
            may = has[at]
            moves = {
                BESIDE: (w <= wide - end) & (h <= high - strip),
                NEW_STRIP: (w <= wide - band) & (h <= high - strip_end),
                NEW_BAND: (w <= wide - band_end) & (h <= high),
            }
            if self.deep:
                moves[ON_TOP] = (w <= wide - column) & (h <= high - top)
            for move, fits in moves.items():
                node, variant = np.divmod(np.flatnonzero(fits & may), len(variants))
                node, variant = at[node], variants[variant]
                closed[node] = False
                found.append(self._moved(state, node, variant, place[node], move))
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
            found.append(self._moved(state, node, variant, np.full(len(node), new), NEW_SHEET, place[node]))
        node, variant, at, move, used, gone, packed, worth = map(np.concatenate, zip(*found, strict=True))
        # What the parts that are left need beyond this sheet and the stock in the shop must be bought.
        stock, opened = at // 2, move == NEW_SHEET
        spare = (self.free[:-1] * there) @ self.area[:-1]
        room = self.area[stock] - used + spare[node] - self.free[stock] * opened * self.area[stock]
        more = (self.all_value - packed) / self.base - room
        paid = state[PAID, node] + opened * self.cost[stock]
        able = paid + self.least_rate * np.maximum(more, 0) <= limit
        return tuple(of[able] for of in (node, variant, at, move, used, gone, packed, worth))

    def _moved(self, state, node, variant, at, move, before=None):
        """What all steps of one move come to: what is behind the last part, what is gone, what is packed."""
        way = at % 2
        w, h = self.w[way, variant], self.h[way, variant]
        gone = state[GONE, node]
        if move == NEW_SHEET:
            used, gone = w * h, gone + self.sheet_value[before // 2]
        else:
            band, band_end, strip, strip_end, column, end, top = state[:FRONT, node]
            if move <= BESIDE:
                top = h + (top if move == ON_TOP else strip)
                column = column if move == ON_TOP else end
                end = np.maximum(end, column + w)
                strip_end = np.maximum(strip_end, top)
                used = band * self.high[at] + (np.maximum(band_end, end) - band) * strip
                used += (end - band) * (strip_end - strip)
                if self.deep:
                    used -= (end - column) * (strip_end - top)
            elif move == NEW_STRIP:
                used = band * self.high[at] + (np.maximum(band_end, band + w) - band) * strip_end + w * h
            else:
                used = band_end * self.high[at] + w * h
        packed, worth = state[PACKED, node] + self.value[variant], state[WORTH, node] + self.worth[variant]
        return node, variant, at, np.full(len(node), move), used, gone, packed, worth

    def _laid(self, state, node, variant, at, move, place):
        """Where the layouts work after the steps."""
        new = state[:, node]
        way = at % 2
        w, h = self.w[way, variant], self.h[way, variant]
        new[:FRONT, move == NEW_SHEET] = 0
        new[BAND] = np.where(move == NEW_BAND, new[BAND_END], new[BAND])
        new[STRIP] = np.where(move == NEW_STRIP, new[STRIP_END], np.where(move == NEW_BAND, 0, new[STRIP]))
        on_top, over = move == ON_TOP, move >= NEW_STRIP
        new[COLUMN] = np.where(on_top, new[COLUMN], np.where(over, new[BAND], new[END]))
        new[TOP] = np.where(on_top, new[TOP], new[STRIP]) + h
        new[END] = np.where(on_top, np.maximum(new[END], new[COLUMN] + w), new[COLUMN] + w)
        new[STRIP_END] = np.where(over, new[TOP], np.maximum(new[STRIP_END], new[TOP]))
        new[BAND_END] = np.where(move >= NEW_BAND, new[END], np.maximum(new[BAND_END], new[END]))
        new[OPENED] = move == NEW_SHEET
        new[PAID] += new[OPENED] * self.cost[at // 2]
        return new

    def _score(self, gone, worth, guide):
        """Smaller is better: what was used up for what lies there, and whether parts of much worth were laid first."""
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
        for node, variant, column, top, place, opened in reversed(trail):
            one, way = variant[end], place[end] % 2
            x, y = column[end], top[end] - self.h[way, one]
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
