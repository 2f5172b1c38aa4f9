"""Faults set on purpose are caught, and the board they are about is named.

The judge is only worth its verdicts if it can fail: a dado too shallow, a groove low, a part short,
a slide too long, a side of the wrong hand, each set into a sound plan, a seeded sample of every kind.
"""

import random
from copy import deepcopy

import pytest

from tests.judge.faults import KINDS
from tests.judge.judge import judge

SAMPLE = 25


@pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)
def test_each_fault_is_caught(plan, kind):
    faults = kind(plan)
    assert faults, f"the plan has nothing to spoil by {kind.__name__}"
    missed = []
    for what, name, spoil in random.Random(f"{plan['name']} {kind.__name__}").sample(
        faults, min(SAMPLE, len(faults))
    ):
        spoiled = deepcopy(plan)
        spoil(spoiled)
        if not any(name in fault for fault in judge(spoiled)):
            missed.append(f"{name}: {what}")
    assert missed == []
