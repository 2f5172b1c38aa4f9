"""Faults set on purpose are caught, and the board they are about is named.

The judge is only worth its verdicts if it can fail: a dado too shallow, a groove low, a part short,
a slide too long, a side of the wrong hand, each set into a sound plan, a seeded sample of every kind.
"""

import random
from copy import deepcopy

import pytest

from tests.judge.faults import KINDS, long_slides
from tests.judge.judge import judge

each_kind = pytest.mark.parametrize("kind", KINDS, ids=lambda kind: kind.__name__)


def missed(plan, kind, most):
    """Faults of that kind that the judge does not tell, of a seeded sample of at most so many."""
    faults = kind(plan)
    assert faults, f"{plan['name']} has nothing to spoil by {kind.__name__}"
    drawn = random.Random(f"{plan['name']} {kind.__name__}").sample(faults, min(most, len(faults)))
    unseen = []
    for what, name, spoil in drawn:
        spoiled = deepcopy(plan)
        spoil(spoiled)
        if not any(name in fault for fault in judge(spoiled)):
            unseen.append(f"{name}: {what}")
    return unseen


@each_kind
def test_each_fault_in_the_hand_made_plan_is_caught(plan, kind):
    assert missed(plan, kind, 100) == []


def test_a_shipped_project_has_no_fault(shipped):
    assert judge(shipped) == []


@each_kind
def test_faults_in_the_shipped_projects_are_caught(shipped, kind, count):
    if kind is long_slides and not any(fitting["what"] == "slide" for fitting in shipped["hardware"]):
        pytest.skip("its boxes ride on shelves: it has no slide to be too long")
    assert missed(shipped, kind, count(6, 1_000)) == []
