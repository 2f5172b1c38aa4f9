"""The drawing of a sheet laid out by hand: what is drawn covers the sheet, once, and is true to size."""

import pytest

from shoplib.draw.layout_by_hand import offcut, sheet_by_hand, sheet_to_take
from shoplib.draw.letters import LARGE, drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import Label, Line, Shape
from shoplib.layout.by_hand import begin, lay, lay_along
from shoplib.layout.pieces import Rect
from shoplib.live.layout_says import starting_job
from shoplib.measure import INCH_STYLE, MM_STYLE

STYLES = {"in": INCH_STYLE, "mm": MM_STYLE}


def laid(unit):
    hand = lay_along(begin(starting_job(unit), STYLES[unit]), 0, 0)
    hand = lay(hand, 2, hand.place_of(hand.beside).letter)
    return lay(hand, 4, hand.place_of(hand.beside).letter, turned=True)


def shapes(scene):
    return [(item.name, item.rects[0]) for item in scene.items if type(item) is Shape]


@pytest.mark.parametrize("unit", STYLES)
def test_parts_free_places_and_kerf_fill_what_the_trim_leaves_and_overlap_nowhere(unit):
    hand = laid(unit)
    drawn = shapes(sheet_by_hand(hand, 0))
    (_, whole), *inside = drawn
    stock = hand.job.stock[0]
    assert whole == (0, 0, stock.length, stock.width)
    area = sum((right - left) * (top - bottom) for _, (left, bottom, right, top) in inside)
    assert area == stock.usable.area
    for n, (_, a) in enumerate(inside):
        assert all(a[2] <= b[0] or b[2] <= a[0] or a[3] <= b[1] or b[3] <= a[1] for _, b in inside[n + 1 :])
    kerfs = [min(r[2] - r[0], r[3] - r[1]) for name, r in inside if name == "kerf"]
    assert set(kerfs) == {hand.job.kerf} and len(kerfs) == len(hand.sheets[0].cuts)
    assert sorted(name for name, _ in inside if name.startswith("offcut")) == sorted(map(offcut, hand.places))


def test_a_blade_without_width_is_a_line():
    job = starting_job("mm")
    hand = lay(begin(type(job)(job.parts, job.stock, 0), MM_STYLE), 0, 0)
    assert sum(type(item) is Line for item in sheet_by_hand(hand, 0).items) == 2


def test_turned_parts_say_so_and_the_letter_of_a_place_is_not_under_the_next_part():
    hand = laid("in")
    place = hand.place_of(hand.along)
    wide, high = hand.size_of(3)
    scene = sheet_by_hand(hand, 0, place.letter, Rect(place.at.x, place.at.y, wide, high))
    labels = [item for item in scene.items if type(item) is Label]
    assert any(item.texts[0].endswith("\nturned") for item in labels)
    letter = next(item for item in labels if item.texts[-1] == place.letter)
    assert letter.room[0] >= place.at.x + wide or letter.room[1] >= place.at.y + high
    assert shapes(scene)[-1][0] == "where the next part would lie"


@pytest.mark.parametrize("unit", STYLES)
def test_a_new_sheet_and_large_letters(unit):
    hand = begin(starting_job(unit), STYLES[unit])
    scene = sheet_to_take(hand, 0, Rect(0, 0, *hand.size_of(0)))
    assert "nothing lies on it yet" in scene.alt and shapes(scene)[1] == ("new sheet", shapes(scene)[1][1])
    with drawn_with(LARGE):
        assert draw(sheet_by_hand(laid(unit), 0)) != draw(scene)
