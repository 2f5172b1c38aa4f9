"""What the page on fronts and gaps shows, against sums by hand in exact fractions of a millimetre.

n inset fronts = (O - (n + 1) g) / n; overlay = thickness - reveal; on a divider (t - g) / 2 (common practice, no
source). Movement = D C (M_F - M_I), Wood Handbook chapter 13.
"""

import base64
import json
import re
from fractions import Fraction
from pathlib import Path

import pytest

from shoplib.draw.pen import draw
from shoplib.lessons import fronts_shown
from shoplib.lessons.page_05 import (
    errors_worked,
    heights_worked,
    inset_worked,
    overlay_worked,
    rows_worked,
    season_worked,
)
from shoplib.lessons.words_05 import WORDS
from shoplib.model.season import HUMIDITIES
from shoplib.tables.wood import woods
from tests.draw.test_pen import outside, overlaps
from tests.lessons.answers import millimetres

SIZES = {
    "in": {"O": "24 in", "W": "18 in", "g": "1/8 in", "t": "0.703 in", "step": "1 in", "h": "8 in", "off": "1/16 in"},
    "mm": {"O": "600 mm", "W": "450 mm", "g": "3 mm", "t": "17.5 mm", "step": "25 mm", "h": "200 mm", "off": "1.5 mm"},
}
PAGE = Path(__file__).parents[2] / "notebooks" / "05_fronts_and_gaps.ipynb"
FIGURES = ("edges", "inset_edge", "order", "leaning", "gap_forgotten", "one_too_high")


def by_hand(unit):
    return {name: millimetres(text) for name, text in SIZES[unit].items()}


def amounts(text):
    return [millimetres(found) for found in re.findall(r"(?:\d+ )?\d+(?:/\d+|\.\d+)? (?:in|mm)\b", text)]


def last(worked):
    """By the words of each line, what it comes to."""
    return {what: amounts(comes_to) for what, _, comes_to in worked.lines}


def mark(unit):
    return Fraction(254, 640) if unit == "in" else Fraction(1, 2)


def test_inset_fronts(unit):
    g, found = by_hand(unit), last(inset_worked(unit))
    left = g["O"] - 4 * g["g"]
    assert found["left for the fronts"] == [left]
    each = left / 3 // mark(unit) * mark(unit)
    assert found["each front, height"] == [each]
    assert found.get("lowest front", [each]) == [left - 2 * each]
    assert found["each front, width"] == [g["W"] - 2 * g["g"]]


def test_overlay_fronts(unit):
    g, found = by_hand(unit), last(overlay_worked(unit))
    side, divider, near = g["t"] - g["g"], (g["t"] - g["g"]) / 2, Fraction(254, 20_000)
    should = {"overlay on a side": side, "front, one bay": g["W"] + 2 * side, "overlay on a divider": divider,
              "front, two bays": g["W"] + side + divider}
    (down,) = [name for name in found if name.startswith("the same, down to the next ")]
    cut, step = found.pop(down)[0], amounts(down)[0]
    assert step == mark(unit)
    assert cut % mark(unit) == 0 and 0 <= should["front, two bays"] - cut < mark(unit)
    assert found.keys() == should.keys()
    assert all(abs(found[name][0] - size) <= near for name, size in should.items())


def test_heights_by_each_rule(unit):
    """Varnum, Industrial Arts Design (1916), Rule 2c, read: 7 6 5 4 and 9 1/4, 8, 6 3/4, 6."""
    g, lines = by_hand(unit), heights_worked(unit).lines
    left = g["O"] - 5 * g["g"]
    series = [(7, 6, 5, 4), (Fraction(37, 4), 8, Fraction(27, 4), 6)]
    should = [[left / 4] * 4, [left / 4 + g["step"] * by for by in (Fraction(3, 2), Fraction(1, 2), Fraction(-1, 2),
              Fraction(-3, 2))], *([left * part / sum(parts) for part in parts] for parts in series)]
    for (_, upper, lowest), sizes in zip(lines, should, strict=True):
        found = [*amounts(lowest), *reversed(amounts(upper))]
        assert sum(found) == left
        assert all(abs(a - b) <= 4 * mark(unit) for a, b in zip(found, sizes, strict=True))


def test_where_an_error_shows(unit):
    g, lines = by_hand(unit), errors_worked(unit).lines
    told = [comes_to for _, _, comes_to in lines]
    # Two bays of three: 2 x (4 gaps up and down + 6 beside) inset; 2 x 2 and 3 between the bays overlay.
    assert [text.split(",")[0] for text in told] == ["1 of 20", "1 of 20", "6 of 20", "0 of 7", "1 of 7", "0 of 7"]
    assert amounts(told[0]) == [g["g"] - g["off"]]
    assert sorted(amounts(told[2])) == [g["g"] - g["off"], g["g"] + g["off"]]


def test_the_solid_front(unit):
    """White oak, flatsawn, C_T .00365 (Table 13-5, read); 45, 35 and 65 % at 70 F lie between cells of Table 4-2."""
    g, worked = by_hand(unit), season_worked(unit)
    found = last(worked)
    contents = [Fraction(comes_to.removesuffix(" %")) for _, _, comes_to in worked.lines[:3]]
    assert all(low < one < high for one, (low, high) in zip(
        contents, [(Fraction("7.7"), Fraction("9.2")), (Fraction("6.2"), Fraction("7.7")), (11, Fraction("13.1"))],
        strict=True,
    ))
    for name, content in (("shrinks, driest", contents[1]), ("grows, dampest", contents[2])):
        moves = g["h"] * Fraction("0.00365") * abs(content - contents[0])
        (change,) = [how.rpartition(" x ")[2] for what, how, _ in worked.lines if what == name]
        assert Fraction(change) == abs(content - contents[0]), "the contents shown make the change shown"
        assert abs(found[name][0] - moves) < g["h"] * Fraction("0.00365") / 9
    grows = found["grows, dampest"][0]
    assert abs(found["gap to one like it, dampest"][0] - (g["g"] - grows)) < Fraction(1, 20)
    assert abs(found["gap to the case, dampest"][0] - (g["g"] - grows / 2)) < Fraction(1, 20)


def test_how_much_less_quartersawn_moves_is_told_truly():
    """Radial by tangential factors of all woods here (Table 13-5), as the page says it in words."""
    parts = {name: wood.radial / wood.tangential for name, wood in woods().items()}
    least, most = min(parts, key=parts.get), max(parts, key=parts.get)
    assert abs(parts[least] - Fraction(1, 3)) < Fraction(1, 50) and abs(parts[most] - Fraction(3, 4)) < Fraction(1, 50)
    assert Fraction(1, 2) < sum(parts.values()) / len(parts) < Fraction(3, 5)
    told = "".join("".join(cell["source"]) for cell in json.loads(PAGE.read_text("utf-8"))["cells"])
    assert f"a third as much ({least}) to three quarters ({most})" in told
    assert f"between {HUMIDITIES[0]} and {HUMIDITIES[-1]} % humidity" in told


def test_one_front_too_high_puts_every_row_above_it_out_of_line(unit):
    g, lines = by_hand(unit), rows_worked(unit).lines
    each = (g["O"] - 4 * g["g"]) / 3 // mark(unit) * mark(unit)
    lowest = g["O"] - 4 * g["g"] - 2 * each
    should = [g["g"], 2 * g["g"] + lowest, 3 * g["g"] + lowest + each]
    for number, ((_, edges, told), edge) in enumerate(zip(lines, should, strict=True)):
        off = g["off"] if number else 0
        assert amounts(edges) == [edge, edge + off]
        assert amounts(told) == ([off] if off else []) and (off or told == "in line")


@pytest.mark.parametrize("name", FIGURES)
def test_every_picture_is_legible_and_has_words(name, unit, monkeypatch):
    monkeypatch.setattr(fronts_shown, "unit_in_use", lambda: unit)
    figure = getattr(fronts_shown, name)()
    assert not overlaps(figure.svg) and not outside(figure.svg)
    assert len(figure.alt) > 60 and base64.b64encode(figure.svg.encode()).decode() in figure._repr_html_()


def test_the_leaning_case_strikes_at_the_side_that_leans_in(monkeypatch):
    monkeypatch.setattr(fronts_shown, "unit_in_use", lambda: "in")
    # 1/8 - 5/32 leaves nothing at the left, 1/8 + 5/32 = 9/32 at the right
    assert "the left one is none: it strikes and the right one 9/32 in" in fronts_shown.leaning().alt


def test_the_forgotten_gap_is_found_by_the_dry_fit(monkeypatch, unit):
    monkeypatch.setattr(fronts_shown, "unit_in_use", lambda: unit)
    figure = fronts_shown.gap_forgotten()
    assert all("gap between" in line for line in figure.words)
    assert all(f"bay 1 drawer {number}" in str(figure.words) for number in (1, 2, 3)) and "and top" in str(figure.words)
    # O - n (O - n g) / n = n g, so in all one gap is lost, and spacers leave the last one nothing (common practice).
    off = [amounts(line)[0] for line in figure.why if line.startswith("gap off by")]
    assert len(off) == 3 and sum(off) == 2 * by_hand(unit)["g"]  # drawn with gaps twice as wide
    assert "the last gap would pay for all: nothing would be left of it" in PAGE.read_text(encoding="utf-8")


def test_the_year_is_written_alike_in_the_table_and_in_its_fold(unit):
    """movement = height x factor x change, of the Wood Handbook; which way it goes the words say, not a sign."""
    worked = season_worked(unit)
    table = {size for _, _, comes_to in worked.lines for size in amounts(comes_to)}
    fold = {size for line in worked.why for size in amounts(line)}
    assert table and table <= fold
    movements = [line for line in worked.why if line.startswith("movement")]
    assert len(movements) == 2 and not any("-" in line.partition(" x (")[0] for line in movements)


@pytest.mark.parametrize("word", WORDS, ids=lambda word: word.name)
def test_every_word_has_a_meaning_and_mostly_a_sketch(word, unit):
    assert word.meaning.endswith(".")
    if word.name != "moisture content":
        scene = word.sketch(unit)
        svg = draw(scene, (220, 140))
        assert len(scene.alt) > 40 and not overlaps(svg) and not outside(svg)


def test_the_chart_is_kept_and_the_same_byte_for_byte(monkeypatch, unit):
    monkeypatch.setattr(fronts_shown, "unit_in_use", lambda: unit)
    one, two = fronts_shown.year(), fronts_shown.year()
    assert one.svg == two.svg and "A chart over the relative humidity" in one.alt
    assert "%" in one.svg and {"in": "inches", "mm": "mm"}[unit] in one.svg
