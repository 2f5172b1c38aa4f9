"""How many screws hold a front: two, or four where it is high or wide; fewer rows in solid wood.

Common practice, no source: four from 6 in (150 mm) of height or 18 in (450 mm) of width; solid wood on one line.
"""

import pytest

from shoplib.documents.plan_file import plan_dict
from tests.building.cases import shipped

HELD = {
    "finger_jointed_drawers": {2},  # 360.5 mm wide, 119 mm high
    "rolling_stand": {2, 4},
    "small_parts_wall_case": {2},
    "under_bench_case": {4},  # 22 11/32 in wide; the pull-out 27 in high, one for every 8 in begun
    "wheel_wall_drawers": {2},  # 7 1/4 in high, but of ash: on one line
}


@pytest.mark.parametrize("name", HELD)
def test_screws_of_each_front_by_its_size(name):
    plan = plan_dict(shipped(name), ())
    sizes = {board["name"]: sorted(board["size"][:2]) for board in plan["boards"]}
    counts = {screw["into"]: screw["count"] for one in plan["hardware"] if one["what"] == "front screws"
              for screw in one["screws"]}
    assert set(counts.values()) == HELD[name]
    for front, count in counts.items():
        low, long = sizes[front]
        large = low >= (150 if name == "rolling_stand" else 152.4) or long >= 450
        assert count == (4 if large and name != "wheel_wall_drawers" else 2), (front, low, long)
