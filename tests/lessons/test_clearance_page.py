"""What the page on drawer clearance shows, against sums by hand in exact fractions of a millimetre.

box = narrowest opening - 2 x slide, down to a mark; front = box - 2 x side + 2 x rabbet; bottom = box - 2 x side +
2 x groove - slack (common practice, no source).
"""

import re
from fractions import Fraction

import nbformat
import pytest

from shoplib.lessons import page_04, wrong_box
from shoplib.lessons.choice import save_unit
from shoplib.lessons.drawer_shown import READ
from shoplib.lessons.lesson_04 import EXERCISES, SETS
from shoplib.lessons.words_04 import WORDS
from shoplib.live.drawer_panel import drawer_panel
from shoplib.live.drawer_project import FRONTS
from tests.lessons.answers import millimetres
from tests.lessons.test_pages import amounts
from tests.test_notebooks import ROOT

GIVEN = {
    "in": ("16 in", "1/2 in", "0.472 in", "7/32 in", "7/32 in", "1/16 in"),
    "mm": ("400 mm", "12.7 mm", "11.9 mm", "5.5 mm", "5 mm", "2 mm"),
}
"""Opening, slide, box side, rabbet, groove and slack of the worked box."""

MARK = {"in": Fraction(254, 320), "mm": Fraction(1, 2)}
FINE = {"in": Fraction(254, 640), "mm": Fraction(1, 10)}


def down(size, step):
    return size // step * step


def page_text():
    page = nbformat.read(ROOT / "notebooks" / "04_drawer_clearance.ipynb", as_version=4)
    return "\n".join(cell.source for cell in page.cells if cell.cell_type == "markdown")


def test_the_worked_box_is_the_sum_by_hand(unit):
    opening, slide, side, rabbet, groove, slack = (millimetres(text) for text in GIVEN[unit])
    box = down(opening - 2 * slide, MARK[unit])
    inside = box - 2 * side
    last = [amounts(line[2])[0] for line in page_04.box_worked(unit).lines]
    by_hand = [2 * slide, box, inside, inside + 2 * rabbet, inside + 2 * groove - slack]
    assert all(abs(a - b) <= FINE[unit] / 2 for a, b in zip(last, by_hand, strict=True))


def test_each_height_has_the_box_of_its_narrower_reading(unit):
    slide = millimetres(GIVEN[unit][1])
    for line, pair in zip(page_04.readings_worked(unit).lines, reversed(READ[unit]), strict=True):
        ends = [millimetres(text) for text in pair]
        box = down(min(ends) - 2 * slide, MARK[unit])
        assert amounts(line[2])[0] == box
        forgives = Fraction(254, 160) if unit == "in" else Fraction(3, 2)
        spread = abs(ends[0] - ends[1])
        said = "no shim" if spread <= forgives else "shim " if spread <= 2 * forgives else "straighten"
        assert said in line[2]
        if said == "shim ":
            by_hand = (max(ends) - box) / 2 - slide
            assert abs(amounts(line[2])[1] - by_hand) <= Fraction(1, 100)
            front, back = page_04.shims_worked(unit).lines
            assert amounts(back[2]) == amounts(line[2])[1:] and ("no" in front[2])  # both tables and the panel agree


def test_the_page_says_where_the_lines_of_a_taper_lie(unit):
    """The page against the row of its slide: common practice, no source."""
    forgiven, shimmed = {"in": ("1/16 in", "1/8 in"), "mm": ("1.5 mm", "3 mm")}[unit]
    none, shim, straighten = page_04.limits_worked().lines
    assert forgiven in none[0] and shimmed in shim[0] and shimmed in straighten[0]
    assert [line[2] for line in (none, shim, straighten)] == ["no shim", "shim", "straighten the case"]


def test_the_offcut_is_right_at_half_of_the_side_alone(unit):
    side = millimetres(GIVEN[unit][2])
    said = []
    for what, how, comes_to in page_04.offcut_worked(unit).lines:
        (rabbet,), (by_sum, by_offcut) = amounts(what), amounts(how)
        off = side - 2 * rabbet
        assert abs(by_offcut - by_sum - off) <= FINE[unit] / 5
        assert (comes_to == "right") == (off == 0)
        assert comes_to == "right" or ("too long" in comes_to) == (off > 0)
        said.append(comes_to == "right")
    assert said.count(True) == 1 and len(said) == 5


def test_slides_are_the_longest_that_go_in(unit):
    overlay, inset = page_04.depth_worked(unit).lines
    sold = range(10, 30, 2) if unit == "in" else range(250, 750, 50)
    for line in (overlay, inset):
        room, slide = amounts(line[1])[-1], amounts(line[2])[0]
        depth, *off, comes_to = amounts(line[1])
        assert abs(depth - sum(off) - comes_to) <= Fraction(254, 20_000)  # half of what calipers show
        assert len(off) == (2 if line is overlay else 3)  # where the slide begins, the room behind it; an inset front
        assert slide == max(size * (Fraction(254, 10) if unit == "in" else 1) for size in sold
                            if size * (Fraction(254, 10) if unit == "in" else 1) <= room)
    assert overlay[2] != inset[2]


def test_the_lean_is_the_one_that_the_formula_gives(unit):
    (_, diagonals, apart), (_, _, lean) = page_04.square_worked(unit).lines
    longer, shorter = amounts(diagonals)
    width = millimetres(GIVEN[unit][0])
    assert amounts(apart) == [longer - shorter]
    assert abs(amounts(lean)[0] - (longer**2 - shorter**2) / (4 * width)) <= FINE[unit]


@pytest.mark.parametrize("wrong", ["by_the_wide_end", "by_one_offcut"])
def test_a_box_too_wide_is_told_and_drawn_with_its_amount(unit, wrong, own_folder):
    save_unit(unit)
    figure = getattr(wrong_box, wrong)()
    off = millimetres(wrong_box.WIDER[unit])
    if wrong == "by_one_offcut":
        off = millimetres(GIVEN[unit][2]) - 2 * millimetres(wrong_box.SHALLOW[unit])
    assert "too wide" in figure.words[0]
    opening, slide = (millimetres(text) for text in GIVEN[unit][:2])
    play = opening - 2 * slide - down(opening - 2 * slide, MARK[unit])
    assert abs(amounts(figure.words[0])[0] - (off - play)) <= FINE[unit] / 2
    told = re.search("is (.+?) too wide", figure.words[0])[1]
    assert f">clash {told}<" in figure.svg and "drawn larger" in figure.alt


def test_a_bottom_without_its_grooves_gapes_and_an_opening_leans(unit, own_folder):
    save_unit(unit)
    _, _, _, _, groove, slack = (millimetres(text) for text in GIVEN[unit])
    told = wrong_box.without_grooves().words[0]
    # It was to reach both grooves less the slack; what it lacks is open on the right.
    assert "too narrow for its groove" in told
    assert abs(amounts(told)[0] - (2 * groove - slack)) <= FINE[unit] / 2
    assert "both sides lean" in wrong_box.leaning().alt


def test_seven_words_each_with_a_sketch_and_a_ladder_of_exercises(unit):
    assert len(WORDS) <= 7 and all(word.sketch(unit).alt for word in WORDS)
    assert [exercise.rung for exercise in EXERCISES] == [
        "read a number off", "one step", "two steps", "two steps", "two steps", "find the slip in another's list",
    ]
    assert [exercise.rung for exercise in SETS] == ["a whole set"]


def test_the_shorter_slide_goes_in_where_the_folded_answer_says(unit):
    """At the depth that the page asks for, the slide sold next below; common practice, no source.

    By hand: 18 1/2 - 1/16 - 1/4 takes 18 in, less a front of 0.703 in only 16 in; 460 - 2 - 6 takes 450 mm, less
    17.5 mm only 400 mm.
    """
    depth, overlay, inset = {"in": ("18 1/2 in", "18 in", "16 in"), "mm": ("460 mm", "450 mm", "400 mm")}[unit]
    asked, answered = page_text().split("<details><summary>Answers</summary>")[:2]
    assert depth in asked.partition("Try this")[2] and {overlay, inset} <= set(re.findall(r"\d+ (?:in|mm)", answered))
    panel = drawer_panel(unit)
    while panel.opened[-1] != panel.groups[-1].title:
        panel.unfold()
    panel.enter("depth", depth)
    for front, slide in zip(FRONTS[:2], (overlay, inset), strict=True):
        panel.enter("fronts", front)
        assert amounts(panel.outcome.sums[-1])[1] == millimetres(slide), (front, panel.outcome.sums[-1])


def test_a_size_between_two_marks_is_cut_to_the_mark_that_the_page_says(unit):
    """The page's example is its own box front, and the mark is the last one that is not over its true size.

    Common practice, no source: what is lost is play, and a box too wide is not forgiven.
    """
    opening, slide, side, rabbet, *_ = (millimetres(text) for text in GIVEN[unit])
    true = down(opening - 2 * slide, MARK[unit]) - 2 * side + 2 * rabbet
    front = next(comes_to for what, _, comes_to in page_04.box_worked(unit).lines if what == "box front and back")
    told = re.search(rf"`{re.escape(front)}`(?: is cut)? to (\d+(?: \d+/\d+|\.\d+)? {unit})", page_text())
    assert told, front
    assert millimetres(told[1]) == down(true, MARK[unit])
