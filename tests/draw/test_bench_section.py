"""The section of a joint on the bench names its boards and the parts that the plane goes through, and no words meet."""

import pytest

from shoplib.draw.letters import LARGE, ORDINARY, drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import Label, Leader
from shoplib.joints import JOINTS, joint
from shoplib.live.bench_controls import Bench
from shoplib.live.bench_panel import PICTURE, section
from tests.draw.test_pen import overlaps, text_boxes

EACH = pytest.mark.parametrize("name", [kind.name for kind in JOINTS])
NAMED = {
    "dado": {"wall", "bottom", "end of the shelf", "shoulder line"},
    "dovetail": {"tail", "pin", "half-pin", "baseline"},
    "splined mitre": {"slot", "mitre face", "heel", "toe"},
    "mortise and tenon": {"tenon", "shoulder", "cheek", "root", "wall of the mortise", "bottom"},
}
"""Read off the joints' drawings by eye: what of each the plane goes through."""


def pair_of(name, unit):
    return joint(name).build(Bench(joint(name), unit).start())


@pytest.mark.parametrize("unit", ["in", "mm"])
@pytest.mark.parametrize("name", NAMED)
def test_the_parts_that_are_cut_are_named_where_they_are(name, unit):
    pair = pair_of(name, unit)
    leaders = [item for item in section(joint(name), pair).items if isinstance(item, Leader)]
    assert {leader.text for leader in leaders} == NAMED[name]


@pytest.mark.parametrize("large", [ORDINARY, LARGE], ids=["ordinary", "large"])
@pytest.mark.parametrize("unit", ["in", "mm"])
@EACH
def test_no_words_of_a_section_meet(name, unit, large):
    scene = section(joint(name), pair_of(name, unit))
    with drawn_with(large):
        svg = draw(scene, PICTURE)
    assert overlaps(svg) == []
    told = " ".join(text for text, _ in text_boxes(svg))
    assert all(item.text in told for item in scene.items if isinstance(item, Leader))


@EACH
def test_no_leader_runs_through_the_name_of_a_board(name):
    scene = section(joint(name), pair_of(name, "in"))
    for leader in (item for item in scene.items if isinstance(item, Leader)):
        x, y = leader.point
        for label in (item for item in scene.items if isinstance(item, Label)):
            for left, bottom, right, top in (label.room, *label.rooms):
                through = bottom < y < top and (left < x if leader.side == "left" else x < right)
                assert not through or right - left == 1, (leader.text, label.texts[0])  # that one has no room at all
