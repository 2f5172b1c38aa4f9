"""What no layout can do better than: areas, plain and seen through dual feasible functions.

A dual feasible function gives each length another one, such that lengths that fit beside each other in a sheet still
do; parts that block each other (two of more than half the width) then count for more than their area. Those used here
are superadditive, so a sheet that is smaller than the largest one holds at most what its own sizes become. One
function for x and another for y, multiplied, bound the packing of rectangles (S. Fekete and J. Schepers, Math. Oper.
Res. 29 (2004); the functions are theirs and those of J. Carlier, F. Clautiaux and A. Moukrim, Computers & OR 34
(2007)).
"""

from collections.abc import Iterator
from math import ceil

import highspy
import numpy as np

from shoplib.layout.grown import Grown
from shoplib.layout.solver import Solver

TOLD = 40
"""Rows asked where there are several sizes to buy: those that ask for the most."""

MOST = 60
"""Parameters tried of each family of functions, where there are few kinds of parts."""
WORK = 1_000_000
"""Values of pairs of functions that may be worked out: some milliseconds."""


def least_cost(grown: Grown) -> int:
    """The cost below which no layout of the parts can go, whatever cuts are made.

    >>> from shoplib.layout.grown import grown as grow
    >>> from shoplib.layout.pieces import Job, Part, Stock
    >>> least_cost(grow(Job((Part("top", 1300, 700, 3),), (Stock("ply", 2440, 1220, cost=40),))))
    120
    """
    return cheapest(grown, *weights(grown))


def telling(grown: Grown, most: int) -> np.ndarray:
    """What each part costs at least as the most telling functions see it, one row a pair of functions.

    Whatever parts are left, the sum of a row over them is a bound for what they cost on new sheets. Nothing is told
    where some stock is free.
    """
    if not all(cost for s, cost in enumerate(grown.cost) if grown.there[s]):
        return np.zeros((0, len(grown.w)))
    part_rows, stock_rows = weights(grown)
    there = grown.there > 0
    with np.errstate(divide="ignore"):
        rate = (np.array(grown.cost, dtype=float)[there] / stock_rows[:, there]).min(axis=1)
    rows = np.unique((part_rows * rate[:, None]).round(12), axis=0)
    return rows[np.argsort(-(rows @ grown.count), kind="stable")[:most]]


def enough(grown: Grown) -> bool:
    """Whether the stock that there is may hold the parts: False only where it certainly does not."""
    there = np.array([0 if s == grown.missing else n for s, n in enumerate(grown.there)])
    part_rows, stock_rows = weights(grown)
    need = part_rows @ grown.count
    return bool((need <= stock_rows @ there + 1e-9 * (1 + need)).all())


def weights(grown: Grown) -> tuple[np.ndarray, np.ndarray]:
    """What each kind of part counts for and what each kind of stock holds, one row a pair of functions."""
    wide, high = int(grown.wide.max()), int(grown.high.max())
    lengths = np.concatenate((grown.w, grown.h[grown.turns]))
    widths = np.concatenate((grown.h, grown.w[grown.turns]))
    part_rows, stock_rows = [], []
    # Two families have parameters of their own, in each direction.
    most = min(MOST, max(3, int((WORK / len(grown.w)) ** 0.5) // 2 - 5))
    across = list(functions(widths, high, most))
    of_h = np.array([f(grown.h) for f in across])
    of_w = np.array([f(grown.w) for f in across])
    of_high = np.array([f(grown.high) for f in across])
    for f in functions(lengths, wide, most):
        upright = f(grown.w) * of_h
        # A part that may turn lies the way that counts for less; one that must lie one way, that way.
        lying = np.where(grown.turns & (grown.h <= wide) & (grown.w <= high), f(grown.h) * of_w, np.inf)
        upright = np.where((grown.w <= wide) & (grown.h <= high), upright, np.inf)
        part_rows.append(np.minimum(upright, lying))
        stock_rows.append(f(grown.wide) * of_high)
    return np.vstack(part_rows), np.vstack(stock_rows)


def functions(sizes: np.ndarray, full: int, most: int = MOST) -> Iterator:
    """Superadditive functions from sizes 0..full to 0..1, as the sizes that there are suggest them."""
    yield lambda x: x / full
    distinct = np.unique(sizes[sizes <= full])
    small = np.unique(np.concatenate((distinct[2 * distinct <= full], full - distinct[2 * distinct > full] + 1)))
    small = small[(small > 0) & (2 * small <= full)]
    for e in _some(small, most):
        # What is within e of the whole counts as whole, what is smaller than e as nothing.
        yield lambda x, e=e: np.where(x > full - e, 1.0, np.where(x < e, 0.0, x / full))
    steps = np.unique(np.concatenate((small, full // np.arange(2, 12) + 1)))
    for k in _some(steps[(steps > 0) & (2 * steps <= full)], most):
        yield lambda x, k=k: (
            np.where(2 * x > full, 2 * (full // k - (full - x) // k), np.where(2 * x == full, full // k, 2 * (x // k)))
            / (2 * (full // k))
        )
    for k in range(1, 10):
        # How many of k + 1 equal shares of the sheet a size fills, as parts of k; an even share stays itself.
        yield lambda x, k=k: np.where((k + 1) * x % full == 0, x / full, (k + 1) * x // full / k)


def _some(values: np.ndarray, most: int) -> list[int]:
    """At most so many of the values, spread evenly."""
    if len(values) > most:
        values = values[np.linspace(0, len(values) - 1, most).astype(int)]
    return values.tolist()


def cheapest(grown: Grown, part_rows: np.ndarray, stock_rows: np.ndarray) -> int:
    """The least cost of stock that holds what every row asks for."""
    need = part_rows @ grown.count
    usable = [s for s in range(len(grown.cost)) if grown.there[s] and s != grown.missing]
    bought = [s for s in usable if grown.cost[s]]
    free = [s for s in usable if not grown.cost[s]]
    short = need - stock_rows[:, free] @ grown.there[free]
    short = np.maximum(short - 1e-9 * (1 + need), 0)
    if not short.any() or not bought:
        return 0
    step = int(np.gcd.reduce([grown.cost[s] for s in bought], dtype=object))
    if len(bought) == 1:
        holds = stock_rows[:, bought[0]]
        return grown.cost[bought[0]] * int(np.ceil(short[holds > 0] / holds[holds > 0]).max(initial=1))
    return step * _fewest(short, stock_rows[:, bought], [grown.cost[s] // step for s in bought])


def _fewest(need: np.ndarray, holds: np.ndarray, costs: list[int]) -> int:
    """The least cost of whole sheets of several sizes that hold what every row asks for."""
    asks = np.flatnonzero((need > 0) & (holds.max(axis=1) > 0))
    with np.errstate(divide="ignore"):
        rate = (np.array(costs) / holds[asks]).min(axis=1)
    asks = asks[np.argsort(-need[asks] * rate, kind="stable")[:TOLD]]
    model = Solver()
    for column, cost in enumerate(costs):
        model.addVar(0.0, highspy.kHighsInf)
        model.changeColCost(column, float(cost))
        model.changeColIntegrality(column, highspy.HighsVarType.kInteger)
    for row in asks:
        # Each row asks for one: so rows of small and of large functions weigh alike in the solver.
        share = holds[row] / need[row]
        model.addRow(1.0, highspy.kHighsInf, len(costs), list(range(len(costs))), share.tolist())
    model.run()
    return max(min(costs), ceil(model.getInfo().mip_dual_bound * (1 - 1e-9) - 1e-6))
