"""The practice bench: cutting the dadoes of a pair of sides on a saw that is a little off, before the real one.

A session is a frozen record. Each action takes it and gives a `Step`: the session after it, a sentence for the
learner, and whether it was done. `result` tells what came of it. Everything is drawn from the learner's own seed.
"""

from shoplib.practice.result import Result, result
from shoplib.practice.session import (
    DRAWN,
    MEASURED,
    Session,
    Step,
    another_sheet,
    cut_pair,
    measure,
    measure_sheet,
    press_down,
    set_depth,
    set_fence,
    set_stack,
    start,
    test_cut,
    try_fit,
)
from shoplib.practice.slips import NAMES as SLIP_NAMES

__all__ = [
    "DRAWN",
    "MEASURED",
    "SLIP_NAMES",
    "Result",
    "Session",
    "Step",
    "another_sheet",
    "cut_pair",
    "measure",
    "measure_sheet",
    "press_down",
    "result",
    "set_depth",
    "set_fence",
    "set_stack",
    "start",
    "test_cut",
    "try_fit",
]
