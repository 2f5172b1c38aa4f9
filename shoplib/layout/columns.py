"""Layouts put together anew from sheets of many layouts: which sheets, and how often, by linear programming (HiGHS).

Each sheet that a search closed is a column, each kind of part a row that must be covered. The prices of the rows, what
one more part of a kind would cost, tell the next search which parts are worth most on a sheet; where whole numbers
of sheets cover all parts for less than the best layout, that is a better one. A further column each says that a smaller
part may lie in the place of a larger one (`in_place.py`).
"""

from collections.abc import Iterable

import highspy
import numpy as np

from shoplib.layout.grown import Grown, Sheet
from shoplib.layout.in_place import exchanged, in_place_of
from shoplib.layout.solver import Solver

MOST = 20_000
"""Sheets remembered at most."""


class Columns:
    """The sheets seen so far in the search for one job."""

    def __init__(self, grown: Grown):
        self.grown = grown
        self.sheets: list[Sheet] = []
        self.holds: list[np.ndarray] = []
        self._seen: set = set()
        self.instead = in_place_of(grown)
        self.model = self._rows()

    def _rows(self) -> Solver:
        """All parts to be covered, no more stock to be taken than there is."""
        model = Solver()
        for count in self.grown.count:
            model.addRow(float(count), highspy.kHighsInf, 0, [], [])
        for there in self.grown.there:
            model.addRow(-highspy.kHighsInf, float(there), 0, [], [])
        for larger, smaller in self.instead:
            model.addCol(0.0, 0.0, highspy.kHighsInf, 2, [larger, smaller], [-1.0, 1.0])
        return model

    def _column(self, index: int, *further: float) -> tuple[float, float, float, int, list[int], list[float]]:
        """A sheet as HiGHS takes it, with the values of `further` rows."""
        sheet, holds = self.sheets[index], self.holds[index]
        on = np.flatnonzero(holds)
        rows = [*on.tolist(), len(holds) + sheet.stock]
        rows += range(len(holds) + len(self.grown.there), len(holds) + len(self.grown.there) + len(further))
        values = [*holds[on].astype(float).tolist(), 1.0, *further]
        return self._cost(sheet), 0.0, highspy.kHighsInf, len(rows), rows, values

    def add(self, sheet: Sheet) -> bool:
        """Remember a sheet; whether it is a new one."""
        holds = np.bincount([lie.kind for lie in sheet.lies], minlength=len(self.grown.w))
        key = (sheet.stock, holds.tobytes())
        if key in self._seen or len(self.sheets) >= MOST:
            return False
        self._seen.add(key)
        self.sheets.append(sheet)
        self.holds.append(holds)
        self.model.addCol(*self._column(len(self.sheets) - 1))
        return True

    def add_all(self, sheets: Iterable[Sheet]) -> None:
        """Remember all of them."""
        for sheet in sheets:
            self.add(sheet)

    def _cost(self, sheet: Sheet) -> float:
        return float(self.grown.cost[sheet.stock])

    def prices(self) -> tuple[float, np.ndarray]:
        """The cost if parts of sheets could be used, and what one more part of each kind would cost then."""
        self.model.run()
        return self.model.getInfo().objective_function_value, self._duals()[: len(self.grown.w)]

    def _duals(self) -> np.ndarray:
        return np.array(self.model.getSolution().row_dual)

    def likely(self, most: int, chance: np.random.Generator) -> list[Sheet]:
        """Sheets that together hold no part too often and cost at most `most`: such as the program took, by chance.

        Those of which it took most, when `prices` were last asked for, are the likeliest.
        """
        taken = np.array(self.model.getSolution().col_value)[len(self.instead) :]
        able = np.flatnonzero(taken > 1e-6)
        able = able[np.argsort(-taken[able] * chance.random(len(able)))]
        left, there, kept = self.grown.count.copy(), self.grown.there.copy(), []
        for index in able.tolist():
            sheet, holds = self.sheets[index], self.holds[index]
            cost = self.grown.cost[sheet.stock]
            while (holds <= left).all() and there[sheet.stock] and cost <= most:
                left, most = left - holds, most - cost
                there[sheet.stock] -= 1
                kept.append(sheet)
        return kept

    def whole(self, most: int, seconds: float) -> list[Sheet] | None:
        """A layout of whole sheets that costs at most `most`, or None where none is found in time."""
        least, prices = self.prices()
        if least > most * (1 + 1e-9):
            return None
        of_stock = self._duals()[len(prices) :]
        # A sheet that costs more than what its parts are worth by as much as may be saved is in no such layout.
        over = [
            self._cost(sheet) - holds @ prices - of_stock[sheet.stock]
            for sheet, holds in zip(self.sheets, self.holds, strict=True)
        ]
        able = np.flatnonzero(np.array(over) <= most - least + 1e-6 * most)
        model = self._rows()
        model.addRow(-highspy.kHighsInf, float(most), 0, [], [])
        for index in able.tolist():
            model.addCol(*self._column(index, self._cost(self.sheets[index])))
        for column in range(model.getNumCol()):
            model.changeColIntegrality(column, highspy.HighsVarType.kInteger)
        model.setOptionValue("time_limit", seconds)
        model.setOptionValue("mip_max_improving_sols", 1)
        model.run()
        if model.getInfo().primal_solution_status != highspy.SolutionStatus.kSolutionStatusFeasible:
            return None
        times = np.rint(model.getSolution().col_value).astype(int)
        sheets = [self.sheets[i] for i, n in zip(able, times[len(self.instead) :], strict=True) for _ in range(n)]
        return self._once(self._exchanged(sheets, times[: len(self.instead)]))

    def _exchanged(self, sheets: list[Sheet], times: np.ndarray) -> list[Sheet]:
        """The sheets with smaller parts in place of larger ones, as often as told."""
        lies = [list(sheet.lies) for sheet in sheets]
        where: dict[int, list[tuple[int, int]]] = {}
        for on, some in enumerate(lies):
            for at, lie in enumerate(some):
                where.setdefault(lie.kind, []).append((on, at))
        for (larger, smaller), n in zip(self.instead, times.tolist(), strict=True):
            for _ in range(n):
                on, at = where[larger].pop()
                where.setdefault(smaller, []).append((on, at))
                lies[on][at] = exchanged(self.grown, lies[on][at], smaller)
        return [Sheet(sheet.stock, tuple(some)) for sheet, some in zip(sheets, lies, strict=True)]

    def _once(self, sheets: list[Sheet]) -> list[Sheet]:
        """The sheets without the parts that lie there once too often."""
        left = self.grown.count.copy()
        kept = []
        for sheet in sheets:
            lies = []
            for lie in sheet.lies:
                if left[lie.kind]:
                    left[lie.kind] -= 1
                    lies.append(lie)
            if lies:
                kept.append(Sheet(sheet.stock, tuple(lies)))
        return kept
