"""What the page on hardware layout shows, against sums by hand in exact fractions of a millimetre.

Spacer k = first + (k - 1) (front + gap); setback = front + what the slide's row says; holes (L - p) / 2 and one pitch
further; longest screw s + f - 1/8 in (3 mm), of a slide t - 1/16 in (1.5 mm); space (W - sum of widths) / (n + 1)
(common practice, no source).
"""

import base64
import re
from fractions import Fraction
from itertools import pairwise

import nbformat
import pytest

from shoplib.draw.pen import draw
from shoplib.lessons import hardware_shown
from shoplib.lessons.page_06 import (
    conflicts_worked,
    pulls_worked,
    screws_worked,
    setback_worked,
    spacers_worked,
    tools_worked,
)
from shoplib.lessons.words_06 import WORDS
from shoplib.live.hardware_panel import hardware_panel
from shoplib.live.hardware_project import KINDS
from tests.draw.test_pen import outside, overlaps
from tests.lessons.answers import millimetres
from tests.test_notebooks import ROOT

SIZES = {
    "in": {"O": "24 in", "W": "18 in", "g": "1/8 in", "t": "0.703 in", "b": "0.472 in", "c": "1/16 in", "p": "5 in",
           "P": "20 in"},
    "mm": {"O": "600 mm", "W": "450 mm", "g": "3 mm", "t": "17.5 mm", "b": "11.9 mm", "c": "2 mm", "p": "128 mm",
           "P": "500 mm"},
}
TOOLS = {"in": (Fraction(9, 8), 3, Fraction(9, 4), Fraction(3, 2)), "mm": tuple(map(Fraction, (28, 76, 56, 38)))}
SOLD = {
    "in": [Fraction(eighths, 8) * Fraction(254, 10) for eighths in (5, 6, 8, 10, 12)],
    "mm": [16, 20, 25, 30, 35, 40],
}
FOR_SLIDES = {"in": [Fraction(eighths, 8) * Fraction(254, 10) for eighths in (3, 4, 5)], "mm": [10, 12, 16]}
SPARE = {"in": Fraction(254, 80), "mm": 3}
SPARE_OF_SLIDES = {"in": Fraction(254, 160), "mm": Fraction(3, 2)}
FIGURES = ("lying", "behind_inset", "behind_overlay", "pull", "screw", "too_long", "tools", "meeting", "in_dado",
           "gap_forgotten")


def by_hand(unit):
    return {name: millimetres(text) for name, text in SIZES[unit].items()}


def amounts(text):
    return [millimetres(found) for found in re.findall(r"(?:\d+ )?\d+(?:/\d+|\.\d+)? (?:in|mm)\b", text)]


def last(worked):
    """By the words of each line, what it comes to."""
    return {what: amounts(comes_to) for what, _, comes_to in worked.lines}


def mark(unit):
    return Fraction(254, 640) if unit == "in" else Fraction(1, 2)


def test_spacers(unit):
    g, found = by_hand(unit), last(spacers_worked(unit))
    front = (g["O"] - 4 * g["g"]) / 3 // mark(unit) * mark(unit)
    assert found["from slide to slide"] == [front + g["g"]]
    one, two, three = (found[name][0] for name in ("lowest slide, lower edge", "spacer 2", "spacer 3"))
    assert two - one == three - two == front + g["g"]


def test_setbacks(unit):
    g, found = by_hand(unit), last(setback_worked(unit))
    assert found["overlay front"] == [g["c"]]
    assert abs(found["inset front"][0] - g["t"] - g["c"]) <= Fraction(254, 20_000)


def test_pulls(unit):
    """Overlay fronts: the opening and on each side the thickness less the reveal."""
    g, found = by_hand(unit), last(pulls_worked(unit))
    front, near = g["W"] + 2 * (g["t"] - g["g"]), Fraction(254, 20_000)
    assert abs(found["first hole, from the left end"][0] - (front - g["p"]) / 2) <= near
    assert abs(found["second hole, from the left end"][0] - (front + g["p"]) / 2) <= near
    # The pull is in the middle of the height, at the nearest mark: never more than half a mark off.
    high = millimetres(re.search(r"and (\S+ \w+) high", pulls_worked(unit).title)[1])
    assert abs(found["both, from the lower edge"][0] - high / 2) <= mark(unit) / 2 + near


def test_the_longest_screw(unit):
    g, found = by_hand(unit), last(screws_worked(unit))
    wood = g["b"] + g["t"]
    near = Fraction(254, 20_000) if unit == "in" else Fraction(1, 100)
    assert abs(found["longest allowed"][0] - wood + SPARE[unit]) <= near
    longest = max(length for length in SOLD[unit] if length <= wood - SPARE[unit])
    assert found[{"in": "screw, No. 8", "mm": "screw, 4.0 mm"}[unit]][0] == longest
    assert abs(found["left before its point"][0] - wood + longest) <= near


def test_tools(unit):
    g, found = by_hand(unit), last(tools_worked(unit))
    scale = Fraction(254, 10) if unit == "in" else 1
    tools = [wide * scale for wide in TOOLS[unit]]
    space = (g["P"] - sum(tools)) / 5 // mark(unit) * mark(unit)
    assert found["each space"] == [space]
    at = Fraction(0)
    for name, wide in zip(("cone wrench", "floor pump", "chain whip", "hub wrench"), tools, strict=True):
        assert found[f"peg of the {name}"] == [at + space + wide / 2]
        at += space + wide


def test_what_meets_in_the_divider(unit):
    """Two of the screws are longer than a divider; against a dado of 1/4 in or 6 mm one is too long."""
    g, found = by_hand(unit), last(conflicts_worked(unit))
    long, near = max(one for one in FOR_SLIDES[unit] if one <= g["t"] - SPARE_OF_SLIDES[unit]), Fraction(254, 20_000)
    assert found[{"in": "screw, No. 6", "mm": "screw, 3.5 mm"}[unit]] == [long]
    assert abs(found["longest allowed"][0] - g["t"] + SPARE_OF_SLIDES[unit]) <= near
    assert abs(found["in bay 2: as many drawers"][0] - (2 * long - g["t"])) <= near
    assert found["in bay 2: one drawer more"] == []
    deep = Fraction(254, 40) if unit == "in" else 6
    assert abs(found["in bay 2: shelves in dadoes"][0] - (long - (g["t"] - deep))) <= near


@pytest.mark.parametrize("name", FIGURES)
def test_every_picture_is_legible_and_has_words(name, unit, monkeypatch):
    monkeypatch.setattr(hardware_shown, "unit_in_use", lambda: unit)
    figure = getattr(hardware_shown, name)()
    assert not overlaps(figure.svg) and not outside(figure.svg)
    assert len(figure.alt) > 60 and base64.b64encode(figure.svg.encode()).decode() in figure._repr_html_()


def test_the_longer_screw_comes_out(unit, monkeypatch):
    monkeypatch.setattr(hardware_shown, "unit_in_use", lambda: unit)
    assert "its point comes out by" in hardware_shown.too_long().alt
    g, fixed = by_hand(unit), hardware_shown.longer_screw(unit)
    assert Fraction(fixed.left, 80_000) == g["b"] + g["t"] - SOLD[unit][3]


def test_the_forgotten_gap_is_found_by_the_dry_fit(monkeypatch, unit):
    monkeypatch.setattr(hardware_shown, "unit_in_use", lambda: unit)
    figure = hardware_shown.gap_forgotten()
    assert len(figure.words) == 2 and all("gap between spacer" in line for line in figure.words)
    # It is the tool case of the page, of that height and with those fronts; 1 and 2 gaps are lost (common practice).
    told, g = " ".join(figure.why), by_hand(unit)
    front = last(spacers_worked(unit))["from slide to slide"][0] - g["g"]
    for name, size in (("case height", g["O"]), ("height of drawer 2, bay 1,", front)):
        assert amounts(told.partition(f"{name} ")[2])[0] == size, name
    lost = {line.partition(" and ")[0][-8:]: amounts(line.partition(" comes out at ")[2])[0] for line in figure.words}
    assert lost == {"spacer 2": g["g"], "spacer 3": 2 * g["g"]}


@pytest.mark.parametrize("word", WORDS, ids=lambda word: word.name)
def test_every_word_has_a_meaning_and_mostly_a_sketch(word, unit):
    assert word.meaning.endswith(".")
    if word.name != "pull-out":
        scene = word.sketch(unit)
        svg = draw(scene, (220, 140))
        assert len(scene.alt) > 40 and not overlaps(svg) and not outside(svg)


def test_the_next_longer_screw_fits_where_the_folded_answer_says(unit):
    """longest = box front + front - 1/8 in (3 mm), common practice, no source: 1.25 + 0.125 - 0.703, 30 + 3 - 17.5."""
    fits, less, sold = {"in": ("0.672 in", "0.671 in", "1 1/4 in"), "mm": ("15.5 mm", "15.4 mm", "30 mm")}[unit]
    page = nbformat.read(ROOT / "notebooks" / "06_hardware_layout.ipynb", as_version=4)
    assert f"{sold} from {fits}" in "\n".join(cell.source for cell in page.cells)
    panel = hardware_panel(unit)
    while panel.opened[-1] != panel.groups[-1].title:
        panel.unfold()
    for box, long in ((fits, True), (less, False)):
        panel.enter("box", box)
        drawn = " ".join(drawing.alt for drawing in panel.outcome.drawings)
        assert (f" screw {sold} long" in drawn) is long, (box, drawn)


def test_the_steps_from_slide_to_slide_are_those_that_the_folded_answer_tells(unit):
    """Front + gap, by hand: overlay fronts share O + 2 (t - g) - (n - 1) g, inset ones O - (n + 1) g.

    Common practice, no source.
    """
    g = by_hand(unit)
    page = nbformat.read(ROOT / "notebooks" / "06_hardware_layout.ipynb", as_version=4)
    told = "\n".join(cell.source for cell in page.cells)
    assert "Between two drawers in the middle the step is one front and one gap" in told
    assert "every step is one front and one gap, within a mark" in told
    panel = hardware_panel(unit)
    panel.unfold()
    for kind, shared in ((KINDS[0], g["O"] + 2 * (g["t"] - g["g"])), (KINDS[1], g["O"] - 2 * g["g"])):
        for count in (2, 4):
            panel.enter("kind", kind)
            panel.enter("count", count)
            spacers = [amounts(row[1])[0] for row in panel.outcome.tables[0].rows]
            steps = [after - before for before, after in pairwise(spacers)]
            whole = (shared - (count - 1) * g["g"]) / count // mark(unit) * mark(unit) + g["g"]
            if kind == KINDS[1]:
                assert all(abs(step - whole) <= mark(unit) for step in steps), (kind, count)
            else:
                assert all(step == whole for step in steps[1:-1]), (kind, count)
                assert all(step < whole - 2 * mark(unit) for step in (steps[0], steps[-1])), (kind, count)
