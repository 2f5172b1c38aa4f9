"""Layouts put together anew from sheets of many layouts: which sheets, and how often, by linear programming (HiGHS).

Each sheet that a search closed is a column, each kind of part a row that must be covered. The prices of the rows, what
one more part of a kind would cost, tell the next search which parts are worth most on a sheet; where whole numbers
of sheets cover all parts for less than the best layout, that is a better one.
"""

from collections import Counter

import highspy
import numpy as np

from shoplib.layout.grown import Grown, Sheet

MOST = 20_000
"""Sheets remembered at most."""


class Columns:
    """The sheets seen so far in the search for one job."""

    def __init__(self, grown: Grown):
        self.grown = grown
        self.sheets: list[Sheet] = []
        self.holds: list[np.ndarray] = []
        self._seen: set = set()
        self.model = highspy.Highs()
        _quiet(self.model)
        kinds = len(grown.w)
        for kind in range(kinds):
            self.model.addRow(float(grown.count[kind]), highspy.kHighsInf, 0, [], [])
        for there in grown.there:
            self.model.addRow(-highspy.kHighsInf, float(there), 0, [], [])

    def add(self, sheet: Sheet) -> bool:
        """Remember a sheet; whether it is a new one."""
        counted = Counter(lie.kind for lie in sheet.lies)
        key = (sheet.stock, *sorted(counted.items()))
        if key in self._seen or len(self.sheets) >= MOST:
            return False
        self._seen.add(key)
        rows = [*counted, len(self.grown.w) + sheet.stock]
        values = [*map(float, counted.values()), 1.0]
        self.model.addCol(self._cost(sheet), 0.0, highspy.kHighsInf, len(rows), rows, values)
        self.sheets.append(sheet)
        self.holds.append(np.bincount([lie.kind for lie in sheet.lies], minlength=len(self.grown.w)))
        return True

    def _cost(self, sheet: Sheet) -> float:
        return float(self.grown.cost[sheet.stock])

    def prices(self) -> tuple[float, np.ndarray]:
        """The cost if parts of sheets could be used, and what one more part of each kind would cost then."""
        self.model.run()
        kinds = len(self.grown.w)
        self.prices_of = np.array(self.model.getSolution().row_dual)
        return self.model.getInfo().objective_function_value, self.prices_of[:kinds]

    def whole(self, most: int, seconds: float) -> list[Sheet] | None:
        """A layout of whole sheets that costs at most `most`, or None where none is found in time."""
        least, _ = self.prices()
        if least > most * (1 + 1e-9):
            return None
        kinds = len(self.grown.w)
        # A sheet that costs more than what its parts are worth by as much as may be saved is in no such layout.
        over = np.array([
            self._cost(sheet) - holds @ self.prices_of[:kinds] - self.prices_of[kinds + sheet.stock]
            for sheet, holds in zip(self.sheets, self.holds, strict=True)
        ])
        able = np.flatnonzero(over <= most - least + 1e-6 * most)
        model = highspy.Highs()
        _quiet(model)
        model.setOptionValue("time_limit", seconds)
        model.setOptionValue("mip_max_improving_sols", 1)
        for kind in range(kinds):
            model.addRow(float(self.grown.count[kind]), highspy.kHighsInf, 0, [], [])
        for there in self.grown.there:
            model.addRow(-highspy.kHighsInf, float(there), 0, [], [])
        model.addRow(-highspy.kHighsInf, float(most), 0, [], [])
        for column, index in enumerate(able.tolist()):
            sheet, holds = self.sheets[index], self.holds[index]
            on = np.flatnonzero(holds)
            rows = [*on.tolist(), kinds + sheet.stock, kinds + len(self.grown.there)]
            values = [*holds[on].astype(float).tolist(), 1.0, self._cost(sheet)]
            model.addCol(self._cost(sheet), 0.0, highspy.kHighsInf, len(rows), rows, values)
            model.changeColIntegrality(column, highspy.HighsVarType.kInteger)
        model.run()
        if model.getInfo().primal_solution_status != highspy.SolutionStatus.kSolutionStatusFeasible:
            return None
        times = np.rint(model.getSolution().col_value).astype(int)
        return self._once([self.sheets[i] for i, n in zip(able, times, strict=True) for _ in range(n)])

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


def _quiet(model: highspy.Highs) -> None:
    model.setOptionValue("output_flag", False)
    model.setOptionValue("threads", 1)
    model.setOptionValue("random_seed", 1)
