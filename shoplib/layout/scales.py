"""A closer bound: scales made for the job itself, by linear programming, along the sheet and across it in turn.

A scale gives each part another length, such that any parts that fit beside each other in the sheet still do. One scale
for x and another for y keep every packing a packing, so the sheets hold at least the area of the parts as scaled (S.
Fekete and J. Schepers, Math. Oper. Res. 29 (2004), who call them conservative scales). While one scale is held, the
best other one is a linear program: its rows are the fullest ways to lay parts side by side, found one by one.
"""

from collections.abc import Callable, Iterator

import highspy
import numpy as np

from shoplib.layout.bounds import cheapest, functions
from shoplib.layout.grown import Grown
from shoplib.layout.solver import Solver

FINEST = 4_096
"""Steps that a sheet is measured in here; parts are rounded down to them, sheets up, which only loosens the bound."""

STARTS, SHAKEN, TURNS = 12, 20, 8
"""Dual feasible functions begun from, further tries from the best scale shaken, and changes of direction at most."""

SURE = 1e-6
"""What the areas are taken down by, so that no rounding of the solver raises the bound."""


def closer_bounds(grown: Grown, stop: Callable[[], bool] = lambda: False) -> Iterator[int]:
    """Costs below which no layout can go, one for each try, higher and lower ones; a try that is stopped is lower.

    >>> from shoplib.layout.bounds import least_cost
    >>> from shoplib.layout.grown import grown as grow
    >>> from shoplib.layout.pieces import Job, Part, Stock
    >>> case = Part("side", 435, 253, 2), Part("top", 561, 253, 2), Part("shelf", 560, 245, 3), Part("rail", 561, 49, 2)
    >>> g = grow(Job((*case, Part("divider", 411, 249)), (Stock("ply", 1536, 768, cost=1),), kerf=2))
    >>> least_cost(g), max(closer_bounds(g))  # the area of the parts is 0.92 of a sheet
    (1, 2)
    """
    along, across = Direction(grown, "x"), Direction(grown, "y")
    kinds = along.kind
    chance, best, most = np.random.default_rng(1), None, 0.0
    starts = [function(across.sizes) for function in functions(across.sizes, int(grown.high.max()))][:STARTS]
    for start in [*starts, *[None] * SHAKEN]:
        y = best * chance.uniform(0.6, 1.4, len(best)) if start is None else start
        last = 0.0
        for _ in range(TURNS):
            x = along.best_beside(y, stop)
            y = across.best_beside(x, stop)
            area = np.full(len(grown.w), np.inf)
            np.minimum.at(area, kinds, x * y)
            whole = float(area @ grown.count)
            if whole < last + 1e-4 or stop():
                break
            last = whole
        if best is None or whole > most:
            best, most = y, whole
        sheets = zip(grown.wide.tolist(), grown.high.tolist(), strict=True)
        holds = [along.most(x, wide) * across.most(y, high) for wide, high in sheets]
        yield cheapest(grown, area[None] * (1 - SURE), np.array(holds)[None])


class Direction:
    """The scales along x or y: one length for each kind of part, and one for each that may turn, lying so."""

    def __init__(self, grown: Grown, axis: str):
        full, other = (grown.wide.max(), grown.high.max()) if axis == "x" else (grown.high.max(), grown.wide.max())
        sizes, across = (grown.w, grown.h) if axis == "x" else (grown.h, grown.w)
        kinds = np.arange(len(sizes))
        upright = (sizes <= full) & (across <= other)
        lying = grown.turns & (across <= full) & (sizes <= other)
        self.kind = np.concatenate((kinds[upright], kinds[lying]))
        self.sizes = np.concatenate((sizes[upright], across[lying]))
        self.counts = grown.count[self.kind]
        self.step = -(-int(full) // FINEST)
        self.full = self._steps(int(full))
        self.model = Solver()
        for _ in self.sizes:
            self.model.addVar(0.0, 1.0)
        # What a kind of part counts for is at most its area whichever way it lies.
        for kind, count in enumerate(grown.count):
            self.model.addVar(0.0, highspy.kHighsInf)
            self.model.changeColCost(len(self.sizes) + kind, -float(count))
        for index, kind in enumerate(self.kind):
            self.model.addRow(-highspy.kHighsInf, 0.0, 2, [index, len(self.sizes) + int(kind)], [-1.0, 1.0])

    def _steps(self, size: int) -> int:
        return -(-size // self.step)

    def best_beside(self, scale: np.ndarray, stop: Callable[[], bool]) -> np.ndarray:
        """The scale of this direction that, beside this one of the other, gives the parts the most area.

        Stopped, it is one all the same, but not the best: made smaller by what the fullest row has too much.
        """
        for index, length in enumerate(scale):
            self.model.changeCoeff(index, index, -float(length))
        while True:
            self.model.run()
            found = np.array(self.model.getSolution().col_value)[: len(self.sizes)]
            most, times = self._fullest(found, self.full)
            if most <= 1 + SURE / 10 or stop():
                return found / max(1.0, most)
            on = np.flatnonzero(times)
            self.model.addRow(-highspy.kHighsInf, 1.0, len(on), on.tolist(), times[on].astype(float).tolist())

    def most(self, scale: np.ndarray, size: int) -> float:
        """The most scaled length that parts beside each other in a sheet of this size can have."""
        return self._fullest(scale, self._steps(size))[0]

    def _fullest(self, scale: np.ndarray, full: int) -> tuple[float, np.ndarray]:
        """The most scaled length of parts side by side, each kind as often as it is asked for, and how often each lies.

        A knapsack filled kind by kind; a kind that comes often goes in by one, two, four ... at a time.
        """
        most, taken = np.zeros(full + 1), []
        for index in np.flatnonzero(scale > 1e-9):
            size = int(self.sizes[index]) // self.step
            left = int(self.counts[index]) if not size else min(int(self.counts[index]), full // size)
            some = 1
            while left > 0:
                some = min(some, left)
                filled = most[: full + 1 - some * size] + some * scale[index]
                better = filled > most[some * size :]
                most[some * size :][better] = filled[better]
                taken.append((index, some, some * size, better))
                left -= some
                some *= 2
        times, at = np.zeros(len(scale), int), full
        for index, some, size, better in reversed(taken):
            if at >= size and better[at - size]:
                times[index] += some
                at -= size
        return float(most[full]), times
