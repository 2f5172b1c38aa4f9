"""What the pages show beside their exercises, against sums by hand in exact fractions of a millimetre.

bottom = outside width - 2 x side + 2 x depth of the joint (common practice, no source).
"""

import base64
import re
from fractions import Fraction

import nbformat
import pytest

from shoplib.lessons import page_02
from shoplib.lessons.lesson_02 import BOTTOM
from shoplib.lessons.page_00 import two_widths
from shoplib.lessons.page_02 import SOLD_AS, bottom_worked, wrong_bottom
from shoplib.live.carcass_panel import carcass_panel, width_panel
from tests.lessons.answers import millimetres
from tests.notebook_checks import EXPECTED
from tests.test_notebooks import ROOT

START = {"in": ("34 1/2 in", "0.703 in", "1/4 in"), "mm": ("876 mm", "17.5 mm", "6 mm")}
"""Width, side and joint of the case that the page on carcass sizing works out."""


def by_hand(unit):
    width, side, depth = (millimetres(text) for text in START[unit])
    return width, side, depth, width - 2 * side + 2 * depth


def amounts(text):
    """The lengths in a text, in millimetres."""
    return [millimetres(found) for found in re.findall(r"(?:\d+ )?\d+(?:/\d+|\.\d+)? (?:in|mm)\b", text)]


def test_the_worked_bottom_is_the_sum_by_hand_line_by_line(unit):
    width, side, depth, bottom = by_hand(unit)
    between, into, whole, ruled = (amounts(" = ".join(line)) for line in bottom_worked(unit).lines)
    assert between == [width, side, width - 2 * side]
    assert into == [depth, 2 * depth]
    assert whole == [width - 2 * side, 2 * depth, bottom]
    step, mark = ruled
    assert mark % step == 0 and abs(mark - bottom) <= step / 2
    assert f"2 x {START[unit][1]}" in repr(bottom_worked(unit))


def test_the_worked_case_is_the_one_that_the_panel_begins_with(unit):
    panel = carcass_panel(unit)
    texts = tuple(panel.controls[name].text for name in ("width", "thickness", "joint_depth"))
    assert texts == START[unit]


def test_two_widths_are_what_the_first_slider_shows(unit):
    panel = width_panel(unit)
    for line in two_widths(unit).lines:
        (case,), (bottom,) = amounts(line[0]), amounts(line[2])
        panel.controls["width"].enter(f"{float(case)} mm")
        rows = panel.outcome.tables[0].rows
        assert [amounts(row[2]) for row in rows if row[0].startswith("bottom")] == [[bottom]]


@pytest.mark.parametrize("slip", [each.id for each in BOTTOM.misconceptions if each.id not in ("sign", "outside")])
def test_a_wrong_bottom_gapes_or_clashes_by_the_amount_by_hand(slip, unit, own_folder, monkeypatch):
    monkeypatch.setattr(page_02, "unit_in_use", lambda: unit)
    width, side, depth, right = by_hand(unit)
    wrong = {
        "nominal": width - 2 * millimetres(SOLD_AS[unit]) + 2 * depth,
        "no-joint": width - 2 * side,
        "one-joint": width - 2 * side + depth,
        "one-side": width - side + 2 * depth,
    }[slip]
    figure = wrong_bottom(slip)
    nearest = Fraction(254, 640) if unit == "in" else Fraction(1, 4)  # half a step of the rule
    length, marked = amounts(re.sub(r" \([^)]*\)", "", figure.alt))
    assert abs(length - wrong) <= nearest
    # Home in the left side, the bottom stops short of the floor of the right joint, or goes too far.
    assert abs(marked - abs(right - wrong)) <= nearest
    assert (" gap " in figure.alt) == (wrong < right) and ("too long" in figure.alt) == (wrong > right)
    # What the cure says is what is off, not the 7/16 in of wood that was struck (a cabinetmaker's find).
    for line in figure.words:
        for cure in re.findall(r"[Mm]ake (?:bottom|it) (.+?) (?:longer|shorter)", line):
            (said,) = amounts(re.sub(r" \([^)]*\)", "", cure))
            assert abs(said - abs(right - wrong)) <= nearest
    assert any("ake " in line for line in figure.words)
    assert figure.words and all("bottom" in line for line in figure.words)
    picture = re.search(r'alt="([^"]+)" src="data:image/svg\+xml;base64,([^"]+)"', figure._repr_html_())
    assert picture[1] == figure.alt and b"<title>" in base64.b64decode(picture[2])


def test_a_slip_that_is_none_is_refused(own_folder):
    with pytest.raises(LookupError):
        wrong_bottom("no such slip")


def test_numbers_in_the_text_of_the_page_are_those_of_the_library():
    page = nbformat.read(ROOT / "notebooks" / "02_carcass_sizing.ipynb", as_version=4)
    text = "\n".join(cell.source for cell in page.cells if cell.cell_type == "markdown")
    assert f"2 x {SOLD_AS['in']}, or 2 x {SOLD_AS['mm']}" in text
    for unit, typed in (("in", ("0.5 in", "5/8 in")), ("mm", ("13 mm", "16 mm"))):
        assert all(f"`{each}`" in text for each in typed)
        panel = carcass_panel(unit)
        panel.enter("thickness", typed[0])
        panel.enter("joint_depth", typed[1])
        assert panel.stale and "cut would go right through" in panel.message
    assert sum(EXPECTED in cell.metadata.get("tags", ()) for cell in page.cells) >= 2
