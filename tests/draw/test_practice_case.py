"""The practice case as it was cut: every clash and gap is marked where it is, each named on its own side."""

import pytest

from shoplib.draw.practice_case import case_as_cut
from shoplib.draw.practice_side import side_to_cut
from shoplib.draw.scene import Chain, Leader, Shape
from shoplib.practice import SLIP_NAMES, result
from shoplib.practice.plan import SIDES
from shoplib.practice.spreads import NONE
from tests.practice.benches import UNITS, cut, perfect, set_up


def leaders(scene, kind):
    return [item for item in scene.items if isinstance(item, Leader) and item.text.startswith(kind)]


@pytest.mark.parametrize("unit", UNITS)
def test_a_case_cut_as_planned_has_nothing_marked(unit):
    session = perfect(unit)
    front, dado = case_as_cut(session, result(session))
    assert not leaders(front, "gap") and not leaders(front, "clash") and "No gap and no clash" in front.alt
    assert "a tap fit" in " ".join(dado.legend)


@pytest.mark.parametrize("unit", UNITS)
@pytest.mark.parametrize("side", SIDES)
@pytest.mark.parametrize("slip", SLIP_NAMES)
def test_what_a_slip_does_is_marked_where_it_is(unit, slip, side):
    session = perfect(unit, slip, on=side)
    done = result(session)
    scenes = case_as_cut(session, done)
    clashes = done.dry_fit.clashes
    assert clashes
    seen = scenes[1] if slip == "mirrored pair" else scenes[0]
    shapes = [item for item in seen.items if isinstance(item, Shape) and item.fill == "clash"]
    look = (0, 1) if slip == "mirrored pair" else (0, 2)
    for clash in clashes:
        shape = next(one for one in shapes if one.name == f"clash: {' and '.join(clash.boards)}")
        (left, bottom, right, top), = shape.rects
        across, up = ((clash.box.low[axis] + clash.box.high[axis]) // 2 for axis in look)
        assert left <= across <= right and bottom <= up <= top
    middle = (seen.bounds[0] + seen.bounds[2]) // 2
    for one in leaders(seen, "clash"):
        assert one.side == ("left" if one.point[0] < middle else "right")


def test_a_shallow_dado_is_marked_as_a_gap_with_its_size():
    session = cut(set_up(spreads=NONE, deeper=-40_640))  # 0.02 in
    scenes = case_as_cut(session, result(session))
    assert {one.text for one in leaders(scenes[0], "gap")} == {"gap 0.02 in"}
    assert "depth 0.23 in" in scenes[-1].legend[0]


@pytest.mark.parametrize("unit", UNITS)
def test_the_side_to_cut_shows_the_lines_and_no_size_of_this_sheet(unit):
    here, there = (side_to_cut(set_up(learner, unit)) for learner in ("Noor", "Ilse"))
    assert here == there
    told = [item.texts for item in here.items if isinstance(item, Chain)]
    assert told == ([("1 1/2",), ("9",)] if unit == "in" else [("40",), ("230",)])
