"""Each page is executed once in a test run, by nbval; what came of it is then checked here.

nbval makes one test of each code cell. Behind the last cell of a page this puts one test more for each
check of `tests.notebook_checks`, in the same process, which reads the outputs that nbval has just seen.
"""

from dataclasses import dataclass, field

import pytest
from nbval.plugin import IPyNbCell, IPyNbFile

from tests import notebook_checks

NBVAL_STORES = "test_outputs"  # where nbval 0.11 keeps what a cell gave; None until the cell has run


@dataclass(frozen=True)
class RanCell:
    """A code cell, and its outputs in this run, as nbformat has them."""

    number: int
    source: str
    tags: tuple[str, ...]
    outputs: tuple = field(repr=False)


class NotebookRun:
    """The pytest plugin that adds the checks of each page that runs whole."""

    @pytest.hookimpl(trylast=True)
    def pytest_collection_modifyitems(self, items):
        cells: dict[IPyNbFile, list[IPyNbCell]] = {}
        for item in items:
            if isinstance(item, IPyNbCell):
                cells.setdefault(item.parent, []).append(item)
        for page, chosen in cells.items():
            # With -k or a single cell chosen there is no whole run to check.
            if len(chosen) == sum(cell.cell_type == "code" for cell in page.nb.cells):
                after = items.index(chosen[-1]) + 1
                items[after:after] = [
                    PageCheck.from_parent(page, name=name, cells=chosen, check=check)
                    for name, check in notebook_checks.of_a_run().items()
                ]


class PageCheck(pytest.Item):
    """One check of one page that has run."""

    def __init__(self, *, cells, check, **rest):
        super().__init__(**rest)
        self.cells = cells
        self.check = check

    def runtest(self):
        not_run = [cell.name for cell in self.cells if getattr(cell, NBVAL_STORES) is None]
        if not_run:
            raise PageFault([f"not run: {', '.join(not_run)}"])
        ran = [
            RanCell(
                cell.cell_num,
                cell.cell.source,
                tuple(cell.cell.metadata.get("tags", ())),
                tuple(getattr(cell, NBVAL_STORES)),
            )
            for cell in self.cells
        ]
        faults = self.check(ran)
        if faults:
            raise PageFault(faults)

    def repr_failure(self, excinfo):
        if isinstance(excinfo.value, PageFault):
            return "\n  ".join([f"{self.path.name}, {self.name}:", *excinfo.value.faults])
        return super().repr_failure(excinfo)

    def reportinfo(self):
        return self.path, None, f"{self.path.name}: {self.name}"


class PageFault(Exception):
    """What a check found wrong in a page."""

    def __init__(self, faults):
        super().__init__(faults)
        self.faults = faults
