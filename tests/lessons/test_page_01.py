"""What the page on measuring shows, against sums by hand in exact fractions of a millimetre.

25.4 mm to the inch, exactly (NIST SP 811, appendix B.8); pieces and kerfs make the board (common practice, no source).
"""

import re
from fractions import Fraction

import nbformat
import pytest

from shoplib.lessons import page_01
from shoplib.lessons.halves_and_sums import HALF, SUM
from shoplib.lessons.lesson_01 import LINE
from shoplib.lessons.one_strip import ONE_STRIP
from shoplib.lessons.page_01 import (
    BOARD,
    decimals_worked,
    halves_worked,
    limits_worked,
    readings_worked,
    sheet_worked,
    sides_worked,
    sixteenths,
    spacers_worked,
    strip_without_kerfs,
    wrong_half,
    wrong_side,
)
from shoplib.lessons.posed import pose
from shoplib.lessons.posed_set import pose_set
from shoplib.live.saw_panel import saw_panel
from shoplib.live.sheet_panel import sheet_panel
from tests.lessons.answers import millimetres
from tests.lessons.learners import LEARNERS
from tests.lessons.test_exercises import worked_out
from tests.lessons.test_pages import amounts
from tests.notebook_checks import EXPECTED
from tests.test_notebooks import ROOT

WORKED = [readings_worked, halves_worked, sheet_worked, sides_worked, spacers_worked]


@pytest.mark.parametrize("worked", WORKED, ids=lambda each: each.__name__)
def test_every_sum_that_is_written_out_is_true(worked, unit):
    checked = 0
    for _, how, comes_to in worked(unit).lines:
        sides = [worked_out(how), worked_out(re.split(r", or ", comes_to)[0])]
        if None not in sides:
            assert abs(sides[0] - sides[1]) <= Fraction(1, 40), (how, comes_to)
            checked += 1
    assert checked or worked is sheet_worked


def test_halves_are_the_same_in_the_other_unit(unit):
    finest = Fraction(1, 200) if unit == "in" else Fraction(254, 20_000)
    for what, _, comes_to in halves_worked(unit).lines:
        whole, (one, other) = amounts(what)[0], [millimetres(text.split(" (")[0]) for text in comes_to.split(", or ")]
        assert abs(one - whole / 2) < Fraction(1, 10) and abs(other - whole / 2) <= finest


def test_the_spacers_close_the_sum(unit):
    lines = {what: comes_to for what, _, comes_to in spacers_worked(unit).lines}
    length, kerf, count = page_01.STRIP[unit]
    each = (millimetres(length) - (count - 1) * millimetres(kerf)) / count
    assert millimetres(lines["each spacer"]) == each
    assert lines["close the sum"] == length and lines["cuts between them"] == "2"


def test_mean_and_thickest_of_the_sheet(unit):
    lines = {what: comes_to for what, _, comes_to in sheet_worked(unit).lines}
    readings = [millimetres(lines[place]) for place in page_01.PLACES]
    assert millimetres(lines["mean, for sums"]) == sum(readings) / 4
    assert millimetres(lines["thickest, for a slot"]) == max(readings)


def test_limits_are_those_that_the_standard_prints():
    """PS 1, unsanded, up to 13/16 in: 1/32 in over and under the name, to a thousandth (data/plywood_limits.csv)."""
    for what, _, text in limits_worked().lines:
        (named,), (least, greatest) = amounts(what), amounts(text)
        off = Fraction(254, 320)
        assert abs(least - (named - off)) <= Fraction(254, 10_000)
        assert abs(greatest - (named + off)) <= Fraction(254, 10_000)


def test_a_decimal_becomes_a_mark_by_the_marks_of_an_inch():
    """Times 32 or 64, rounded (common practice, no source): 0.71 x 32 = 22.72, 0.71 x 64 = 45.44, 0.33 x 64 = 21.12."""
    *readings, between, last = decimals_worked().lines
    assert [(how, mark) for _, how, mark in readings] == [
        ("0.710 x 32 = 22.7, so 23", "23/32 in"), ("0.710 x 64 = 45.4, so 45", "45/64 in"),
    ]
    assert between[1:] == ("14.750 in - 2 x 0.710 in", "13.330 in")
    assert last == ("13.330 in", "0.330 x 64 = 21.1, so 21", "13 21/64 in")
    for finest, reading in ((32, Fraction(71, 100)), (64, Fraction(71, 100)), (64, Fraction(33, 100))):
        assert abs(round(reading * finest) - reading * finest) <= Fraction(1, 2)


def test_sixteenths_and_their_decimals_are_equal():
    table = sixteenths()
    assert [Fraction(decimal.split(" ")[0]) for _, decimal in table.pairs] == [Fraction(n, 16) for n in range(1, 16)]
    assert [Fraction(mark.split(" ")[0]) for mark, _ in table.pairs] == [Fraction(n, 16) for n in range(1, 16)]
    assert table._repr_html_().count("<td") == 15


@pytest.mark.parametrize("asked", [HALF, SUM, LINE], ids=lambda each: each.id)
def test_a_decimal_is_as_good_an_answer_as_a_fraction(asked):
    for learner in LEARNERS[:6]:
        posed = pose(asked, learner, "in")
        assert posed.check(f"{float(millimetres(posed.answer.split(' (')[0]) / Fraction(254, 10)):.3f}", "in").right


def test_a_set_is_told_of_a_plain_joint_and_of_no_butt():
    posed = pose_set(ONE_STRIP, LEARNERS[0], "in")
    assert "plain joint, board against board" in posed.question
    long = f"{float(millimetres(posed.answer['divider'].split(' (')[0]) + 3)} mm"
    told = repr(posed.check(posed.answer | {"divider": long}).items)
    assert "too long for its plain joint with the top" in told and "butt" not in told


def test_the_panels_begin_with_the_numbers_of_the_page(unit):
    saw, sheet = saw_panel(unit), sheet_panel(unit)
    assert tuple(saw.controls[name].text for name in ("board", "line", "kerf")) == BOARD[unit]
    lines = {what: comes_to for what, _, comes_to in sheet_worked(unit).lines}
    for place in page_01.PLACES:
        shown = sheet.controls[place.replace(" ", "_")].text
        assert millimetres(shown) == millimetres(lines[place])


@pytest.mark.parametrize("side", ["keep side", "on the line"])
def test_a_wrong_side_costs_what_is_said(side, unit, monkeypatch):
    monkeypatch.setattr(page_01, "unit_in_use", lambda: unit)
    figure = wrong_side(side)
    kerf = millimetres(BOARD[unit][2])
    assert amounts(figure.words[0])[0] == (kerf if side == "keep side" else kerf / 2)
    assert "short of the line" in figure.alt


def test_a_strip_without_kerfs_and_a_half_rounded_down(unit, monkeypatch):
    monkeypatch.setattr(page_01, "unit_in_use", lambda: unit)
    kerf = millimetres(BOARD[unit][2])
    assert amounts(strip_without_kerfs().words[0])[1] == 2 * kerf
    whole, half, wrong, short, differ = amounts(wrong_half().words[0])
    assert half == whole / 2 and short == half - wrong > 0 and differ == 2 * short
    for figure in (strip_without_kerfs(), wrong_half()):
        assert f'alt="{figure.alt}"' in figure._repr_html_()


def test_the_page_compares_enough_and_its_text_agrees_with_the_library():
    page = nbformat.read(ROOT / "notebooks" / "01_measuring.ipynb", as_version=4)
    assert sum(EXPECTED in cell.metadata.get("tags", ()) for cell in page.cells) >= 8
    text = "\n".join(cell.source for cell in page.cells if cell.cell_type == "markdown")
    assert "an inch is 25.4 mm, exactly" in text and "half of 7/8 is 7/16" in text
    assert Fraction(7, 8) / 2 == Fraction(7, 16) and Fraction(13, 2) == 6 + Fraction(1, 2)
    assert "half of 13 1/4 in is 6 5/8 in, half of 301 mm is 150.5 mm" in text
    assert Fraction(53, 4) / 2 == 6 + Fraction(5, 8) and Fraction(301, 2) == Fraction("150.5")
    assert "0.655 x 64 = 41.9, so 42/64: that is 21/32 in" in text
    assert round(Fraction("0.655") * 64) == 42 and Fraction(42, 64) == Fraction(21, 32)
