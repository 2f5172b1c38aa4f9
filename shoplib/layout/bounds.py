"""What no layout can do better than."""

from math import ceil

import numpy as np

from shoplib.layout.grown import Grown


def least_cost(grown: Grown) -> int:
    """The cost below which no layout of the parts can go."""
    area = float((grown.w * 1.0 * grown.h * grown.count).sum())
    bought = [s for s in range(len(grown.cost)) if grown.cost[s]]
    for s in range(len(grown.cost)):
        if not grown.cost[s]:
            area -= float(grown.there[s]) * float(grown.wide[s]) * float(grown.high[s])
    if area <= 0 or not bought:
        return 0
    rate = min(grown.cost[s] / (float(grown.wide[s]) * float(grown.high[s])) for s in bought)
    step = int(np.gcd.reduce([grown.cost[s] for s in bought]))
    return step * ceil(area * rate / step - 1e-9)
