"""Every part that a drawing of a joint names is explained in its facts, under the same name."""

import pytest

from shoplib.joints import JOINTS
from shoplib.joints.bench_pair import stock_of
from shoplib.measure import INCH, MM
from shoplib.tables.joint_facts import JOINT_NAMES, joint_facts


def test_the_joints_stand_in_the_order_of_their_facts():
    names = [kind.name for kind in JOINTS]
    assert names == [name for name in JOINT_NAMES if name in names]


@pytest.mark.parametrize("thick", [3 * INCH // 4, 18 * MM], ids=["3/4 in", "18 mm"])
@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_each_part_that_is_drawn_is_explained(kind, thick):
    explained = {part.name for part in joint_facts(kind.name).parts}
    assert sorted(set(kind.build(stock_of(thick)).named) - explained) == []
