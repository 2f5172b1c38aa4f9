"""What the page on joinery allowances shows, against sums by hand in exact fractions of a millimetre.

gain = depth - end gap; board = outside - 2 x side + 2 x gain; dado = thickest reading + fit; wood left =
thickness - depth (common practice, no source).
"""

import base64
import re
from fractions import Fraction

import nbformat
import pytest

from shoplib.draw.pen import draw
from shoplib.lessons import joints_shown, page_03
from shoplib.lessons.joints_shown import READINGS, SOLD_AS
from shoplib.lessons.words_03 import WORDS
from shoplib.lessons.worked_joints import corners_worked, shelf_worked, tongue_worked, widths_worked, wood_worked
from tests.draw.test_pen import outside, overlaps
from tests.lessons.answers import millimetres
from tests.test_notebooks import ROOT

SIZES = {
    "in": {
        "width": "24 in", "depth": "1/4 in", "fit": "0.004 in", "gap": "1/32 in", "tongue": "1/4 in", "deep": "5/16 in",
    },
    "mm": {"width": "600 mm", "depth": "6 mm", "fit": "0.1 mm", "gap": "1 mm", "tongue": "6 mm", "deep": "8 mm"},
}
CORNER = {"in": ("24 in", "20 in", "0.703 in", "1/4 in"), "mm": ("600 mm", "500 mm", "17.5 mm", "6 mm")}
FIGURES = ("loose", "tight", "wrong_side", "too_deep")


def by_hand(unit):
    sizes = {name: millimetres(text) for name, text in SIZES[unit].items()}
    read = [millimetres(text) for text in READINGS[unit]]
    return sizes | {"mean": sum(read) / len(read), "thick": max(read), "name": millimetres(SOLD_AS[unit])}


def amounts(text):
    return [millimetres(found) for found in re.findall(r"(?:\d+ )?\d+(?:/\d+|\.\d+)? (?:in|mm)\b", text)]


def last(worked):
    """By the words of each line, what it comes to."""
    return {what: amounts(comes_to)[0] for what, _, comes_to in worked.lines}


def test_the_shelf_line_by_line(unit):
    g, found = by_hand(unit), last(shelf_worked(unit))
    gain = g["depth"] - g["gap"]
    assert found["dado, width"] == g["thick"] + g["fit"]
    assert found["dado, depth"] == g["depth"] and found["gain at each end"] == gain
    assert found["wood left under it"] == g["mean"] - g["depth"]
    assert found["between the sides"] == g["width"] - 2 * g["mean"]
    shelf = g["width"] - 2 * g["mean"] + 2 * gain
    assert found["shelf, left to right"] == shelf
    assert abs(found["on the rule"] - shelf) <= (Fraction(254, 1280) if unit == "in" else Fraction(1, 20))


def test_three_widths_of_a_dado(unit):
    g, found = by_hand(unit), last(widths_worked(unit))
    assert found["cut to the name"] == g["name"] - g["thick"]
    assert found["cut to the mean"] == g["thick"] - g["mean"]
    assert found["cut to the thickest, with the fit"] == g["fit"]


def test_the_tongue_line_by_line(unit):
    g, found = by_hand(unit), last(tongue_worked(unit))
    assert found["dado, width"] == g["tongue"] + g["fit"]
    rabbet = g["mean"] - g["tongue"]
    assert found["near wall, from the lower end"] == found["rabbet in the bottom, depth by the mean"] == rabbet
    assert found["tongue, length = gain"] == g["depth"] - g["gap"]
    # Cut to one depth everywhere, the tongue at the thick corner would be too thick for its dado.
    (thick,) = [amounts(comes_to) for what, _, comes_to in tongue_worked(unit).lines if "that depth leaves" in what]
    assert thick == [g["thick"] - rabbet, g["thick"] - rabbet - g["tongue"] - g["fit"]] and thick[1] > 0


def test_what_one_and_two_dadoes_leave(unit):
    g = by_hand(unit)
    values = [amounts(comes_to)[0] for _, _, comes_to in wood_worked(unit).lines]
    assert values == [
        g["mean"] - g["depth"], g["mean"] - 2 * g["depth"], g["mean"] - g["deep"], g["mean"] - 2 * g["deep"],
    ]


def test_the_corners(unit):
    width, high, thick, deep = (millimetres(text) for text in CORNER[unit])
    mark = Fraction(254, 1280) if unit == "in" else Fraction(1, 20)
    found = [(amounts(how), amounts(comes_to)[0]) for _, how, comes_to in corners_worked(unit).lines]
    inside = width - 2 * thick
    should = [inside, inside + 2 * deep, inside + 2 * deep, high - 2 * thick + 2 * deep, width]
    assert all(abs(one - other) <= mark for (_, one), other in zip(found, should, strict=True)), found
    assert [how for how, _ in found] == [[width, thick], *[[width, thick, deep]] * 2, [high, thick, deep], []]


@pytest.mark.parametrize("name", FIGURES)
def test_what_goes_wrong_is_drawn_and_told(name, unit, monkeypatch):
    monkeypatch.setattr(page_03, "unit_in_use", lambda: unit)
    figure = getattr(page_03, name)()
    assert figure.words and overlaps(figure.svg) == [] and outside(figure.svg) == []
    picture = re.search(r'alt="([^"]+)" src="data:image/svg\+xml;base64,([^"]+)"', figure._repr_html_())
    assert len(picture[1]) > 40 and b"<title>" in base64.b64decode(picture[2])


def test_amounts_of_what_goes_wrong(unit, monkeypatch):
    monkeypatch.setattr(page_03, "unit_in_use", lambda: unit)
    g = by_hand(unit)
    assert g["thick"] - g["mean"] in amounts(page_03.tight().alt)
    assert g["mean"] - 2 * g["deep"] in amounts(page_03.too_deep().words[0])
    said = " ".join(page_03.wrong_side().words)
    assert any(abs(found - g["mean"]) <= Fraction(254, 640) for found in amounts(said)), said
    assert g["depth"] in amounts(said)
    assert "drawn larger" in page_03.loose().svg.replace("\n", " ") or "larger" in page_03.loose().alt


def test_what_goes_wrong_is_folded_in_the_readings_that_it_shows(unit, monkeypatch):
    """A width by name is that of the sheet, one by the mean the mean of all readings; no sheet is made up for it."""
    monkeypatch.setattr(page_03, "unit_in_use", lambda: unit)
    g = by_hand(unit)
    loose, tight = page_03.loose().why, page_03.tight().why
    width = loose[0]
    assert "= nominal thickness of case sheet" in width and amounts(width) == [g["name"]] * 2
    assert not any("fit of" in line for line in (*loose, *tight))
    read = [millimetres(text) for text in READINGS[unit]]
    for name, size in (("thickness of case sheet", g["mean"]), ("thickest reading of case sheet", g["thick"])):
        (told,) = [line for line in tight if line.startswith(name)]
        assert amounts(told) == [size, *read]
    (clash,) = [line for line in tight if line.startswith("clash")]
    assert amounts(clash) == [g["thick"] - g["mean"], g["thick"], g["mean"]]


def test_seven_words_each_with_a_sketch(unit):
    assert len(WORDS) == 7 and len({word.name for word in WORDS}) == 7
    page = nbformat.read(ROOT / "notebooks" / "03_joinery_allowances.ipynb", as_version=4)
    text = "\n".join(cell.source for cell in page.cells if cell.cell_type == "markdown")
    for word in WORDS:
        scene = word.sketch(unit)
        svg = draw(scene, (200, 130))
        assert len(scene.alt) > 40 and overlaps(svg) == [] and outside(svg) == []
        assert re.search(rf"\*\*{word.name}\*\*", text, re.IGNORECASE), word.name


def test_the_lesson_finds_its_own_case(unit):
    case, joint = joints_shown.shown(unit, "groove")
    assert (joint.kind, joint.enters) == ("groove", "back") and case.by_name["back"]
