"""A practice cut seen from the end: true proportion, the clearance larger and said so, and nothing betrayed."""

import pytest

from shoplib.draw.pen import draw
from shoplib.draw.practice_cut import last_test_cut, real_cut
from shoplib.draw.scene import Chain, Shape
from shoplib.practice import measure, start, test_cut, try_fit
from shoplib.practice.spreads import NONE, THOU
from tests.practice.benches import UNITS, cut, set_up


def shapes(scene):
    return {item.name: item for item in scene.items if isinstance(item, Shape)}


def chains(scene):
    return {item.side: item.texts for item in scene.items if isinstance(item, Chain)}


def test_nothing_is_drawn_before_anything_is_cut():
    session = start("Noor").session
    assert last_test_cut(session) is None and real_cut(session, "left side", "shelf") is None


def test_sizes_stand_on_it_once_they_are_read():
    session = test_cut(set_up(spreads=NONE)).session
    bare = last_test_cut(session)
    assert chains(bare) == {} and "not measured yet" in bare.alt and list(shapes(bare)) == ["offcut"]
    session = try_fit(measure(measure(session, "width").session, "depth").session).session
    read = last_test_cut(session)
    assert chains(read) == {"below": ("0.706",), "left": ("0.25",)} and "not measured" not in read.alt
    assert "Other end in the dado: a tap fit, 0.001 in over." in read.legend


@pytest.mark.parametrize("unit", UNITS)
def test_all_but_the_clearance_is_in_true_proportion(unit):
    session = cut(set_up(unit=unit, spreads=NONE))
    scene = real_cut(session, "right side", "shelf")
    plan, drawn = session.plan, shapes(scene)
    near, under, _ = drawn["right side"].rects
    width = session.stock.thickest + plan.fit
    assert under == (0, 0, width, plan.sheet - plan.dado) and near[3] == plan.sheet
    left, floor, right, _ = drawn["shelf"].rects[0]
    assert (left, floor) == (0, plan.sheet - plan.dado)
    assert width - right > 10 * plan.fit
    assert "The clearance is drawn larger than it is; all else is in true proportion." in scene.note
    assert draw(scene).startswith("<svg")


def test_what_does_not_enter_stands_on_the_mouth():
    session = cut(set_up(spreads=NONE, wider=-20 * THOU))
    scene = real_cut(session, "left side", "bottom")
    board = shapes(scene)["bottom"].rects[0]
    assert board[1] == session.plan.sheet
    assert "too tight by 0.019 in" in scene.alt


def test_a_dado_that_is_not_there_is_not_drawn():
    assert real_cut(cut(set_up(), "second dado forgotten"), "right side", "shelf") is None
    assert real_cut(cut(set_up(), "wrong face"), "right side", "bottom") is None
