"""The chart of a solid front through the year: read back off its own axes, it tells the numbers of the season."""

from fractions import Fraction
from random import Random

import pytest

from shoplib.draw.letters import LARGE, drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import Disc, EdgeText, Leader, Line, Shape, Slanted
from shoplib.draw.season_view import BAND, HIGH, season_view
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE
from shoplib.model.season import HUMIDITIES, Season
from tests.draw.test_pen import outside, overlaps


def seasons(number):
    random = Random(number)
    for _ in range(40):
        style, one = random.choice([(INCH_STYLE, INCH), (MM_STYLE, MM)])
        size = MM * random.randint(60, 1200)
        driest, dampest = sorted(random.sample(HUMIDITIES, 2))
        beside = random.choice([0, size, size * 2 // 3])
        season = Season(size, beside, MM * random.randint(1, 12), Fraction(random.randint(80, 400), 100_000),
                        random.choice(HUMIDITIES), driest, dampest)
        yield season, style, one


def kind(scene, wanted):
    return [item for item in scene.items if type(item) is wanted]


def value(place, marks):
    """What stands at a place of an axis, by the two outermost of its marks (place, value)."""
    (a, low), (b, high) = min(marks), max(marks)
    return low + (high - low) * Fraction(place - a, b - a)


@pytest.mark.parametrize("number", range(3))
def test_read_off_its_axes_it_tells_the_season(number):
    for season, style, one in seasons(number):
        scene = season_view(season, style)
        humid = [(item.room[0], int(item.text)) for item in kind(scene, EdgeText)]
        curve = [item for item in kind(scene, Line) if item.kind == "curve"]
        assert len(curve) == 2 * (len(HUMIDITIES) - 1)
        for foot, true in ((HIGH + BAND, lambda h, s=season: s.height + s.grown(h)),
                           (0, lambda h, s=season: s.gap - (s.grown(h) + s.beside_grown(h)) // 2)):
            marks = [(item.point[1], Fraction(item.text)) for item in kind(scene, Leader)
                     if foot <= item.point[1] <= foot + HIGH]
            assert 2 <= len(marks) <= 6
            near = (max(marks)[1] - min(marks)[1]) * one * Fraction(3, max(marks)[0] - min(marks)[0])
            here = [item for item in curve if foot <= item.start[1] <= foot + HIGH]
            for line in here:
                x, y = line.start
                assert abs(value(y, marks) * one - true(round(value(x, humid)))) <= near
            (made,) = (d for d in kind(scene, Disc) if foot <= d.centre[1] <= foot + HIGH)
            assert round(value(made.centre[0], humid)) == season.made
            assert abs(value(made.centre[1], marks) * one - true(season.made)) <= near
            ends = {s.name: s for s in kind(scene, Slanted) if foot <= s.corners[0][1] <= foot + HIGH}
            assert [round(value((min(ends[name].corners)[0] + max(ends[name].corners)[0]) // 2, humid))
                    for name in ("driest", "dampest")] == [season.driest, season.dampest]
        rooms = [shape.rects[0] for shape in kind(scene, Shape)]
        assert [round(value(x, humid)) for room in rooms for x in room[::2]] == [season.driest, season.dampest] * 2


@pytest.mark.parametrize("size", [1.0, LARGE])
def test_no_text_lies_on_another_or_off_the_page(size):
    for season, style, _ in seasons(9):
        with drawn_with(size):
            svg = draw(season_view(season, style), (400, 300))
        assert overlaps(svg) == [] and outside(svg) == []
        assert all(words in svg for words in ("height of the front, ", "gap beside it, ", "relative humidity"))
