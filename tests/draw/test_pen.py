"""The pen: well-formed, deterministic, scaled as stated, and no text on top of another.

Widths of text are measured here with the font itself (DejaVu Sans, as matplotlib ships it, read by fontTools),
not with the table that the pen lays out by.
"""

import re
import xml.etree.ElementTree as ET
from functools import cache
from itertools import combinations, pairwise
from pathlib import Path
from random import Random

import matplotlib
import pytest
from fontTools.ttLib import TTFont

from shoplib.draw.lettering import spread, text_width
from shoplib.draw.outline import outline
from shoplib.draw.pen import draw, draw_to_scale
from shoplib.draw.scene import Chain, Label, Leader, Line, Running, Scene, Shape
from shoplib.measure import INCH, MM

SVG = "{http://www.w3.org/2000/svg}"


@cache
def _advances() -> tuple[dict[int, str], object, int]:
    font = TTFont(Path(matplotlib.get_data_path()) / "fonts" / "ttf" / "DejaVuSans.ttf")
    return font.getBestCmap(), font["hmtx"], font["head"].unitsPerEm


def font_width(text: str, size: float) -> float:
    """Width by the font's own advance widths."""
    names, advances, em = _advances()
    return sum(advances[names[ord(c)]][0] for c in text) * size / em


def text_boxes(svg: str) -> list[tuple[str, tuple[float, float, float, float]]]:
    """Every text with the box its capitals and figures fill on the page."""
    found = []

    def walk(node, size):
        size = float(node.get("font-size", size))
        if node.tag == f"{SVG}text":
            wide = font_width(node.text, size)
            shift = {"middle": wide / 2, "end": wide}.get(node.get("text-anchor"), 0.0)
            turned = re.match(r"translate\(([-\d.]+) ([-\d.]+)\) rotate\(-90\)", node.get("transform", ""))
            if turned:
                x, y = map(float, turned.groups())
                found.append((node.text, (x - 0.73 * size, y + shift - wide, x, y + shift)))
            else:
                x, y = float(node.get("x")), float(node.get("y"))
                found.append((node.text, (x - shift, y - 0.73 * size, x - shift + wide, y)))
        for child in node:
            walk(child, size)

    walk(ET.fromstring(svg), 0)
    return found


def overlaps(svg: str) -> list[tuple[str, str]]:
    """Pairs of texts that lie on one another."""
    return [
        (p, q) for (p, a), (q, b) in combinations(text_boxes(svg), 2)
        if a[0] < b[2] and b[0] < a[2] and a[1] < b[3] and b[1] < a[3]
    ]


def outside(svg: str) -> list[str]:
    """Texts that stick out of the page."""
    x, y, w, h = map(float, ET.fromstring(svg).get("viewBox").split())
    return [t for t, b in text_boxes(svg) if b[0] < x or b[1] < y or b[2] > x + w or b[3] > y + h]


def crowded() -> Scene:
    """A chain of wide and very narrow stretches on every side, running distances, leaders, labels."""
    at = (0, INCH // 16, 9 * INCH, 9 * INCH + INCH // 8, 19 * INCH, 19 * INCH + INCH // 64, 30 * INCH)
    texts = ("1/16\n(+0.00025)", "8 15/16", "1/8", "9 7/8\n(-0.0155)", "1/64\n(+0.000125)", "10 63/64")
    chains = [Chain(side, row, at, texts) for side in ("below", "left", "right") for row in (0, 1)]
    running = [Running("below", 2, 0, at[1:], texts), Running("right", 2, 30 * INCH, at[:-1], texts)]
    leaders = [Leader((k * INCH, 15 * INCH), "above", f"divider {k}") for k in range(5)]
    labels = [
        Label((0, 0, INCH // 4, 30 * INCH), ("too wide to lie here",)),
        Label((0, 0, INCH, INCH), ("a long name",)),
    ]
    return Scene("Crowded", "All sizes in inches.", "A test.", (0, 0, 30 * INCH, 30 * INCH),
                 (Shape(((0, 0, 30 * INCH, 30 * INCH),), "case"), *chains, *running, *leaders, *labels))


def test_no_text_lies_on_another_or_off_the_page():
    svg = draw(crowded())
    assert len(text_boxes(svg)) > 50
    assert overlaps(svg) == []
    assert outside(svg) == []


def test_the_overlap_check_sees_an_overlap():
    scene = Scene("t", "n", "a", (0, 0, INCH, INCH), (
        Label((0, 0, INCH, INCH), ("one",)), Label((0, 0, INCH, INCH), ("two",))))
    assert overlaps(draw(scene)) == [("one", "two")]


def test_text_width_is_that_of_the_font():
    for text in ("23 5/8", "bay 1 drawer 2", "33 27/32 (+0.0002)", "Wq@#~}"):
        assert text_width(text, 12) == pytest.approx(font_width(text, 12), abs=0.05)
    assert text_width("22 × 5 ½", 12) >= font_width("22 × 5 ½", 12)


def test_the_svg_is_well_formed_and_says_what_it_shows():
    nasty = 'a <b> & "c"'
    scene = Scene(nasty, nasty, nasty, (0, 0, INCH, INCH), (
        Shape(((0, 0, INCH, INCH),), "cut case", nasty, "/"), Label((0, 0, INCH, INCH), (nasty, "x")),
        Leader((0, 0), "right", nasty), Line((0, 0), (INCH, INCH), "grain")), (nasty,))
    root = ET.fromstring(draw(scene))
    assert root.get("role") == "img"
    assert root.find(f"{SVG}title").text == nasty
    assert root.find(f"{SVG}desc").text == nasty
    assert draw(scene) == draw(scene)


def test_a_line_of_100_mm_is_100_mm_long_on_paper_at_full_size():
    scene = Scene("t", "n", "a", (0, 0, 100 * MM, 50 * MM), (Line((0, 0), (100 * MM, 0)),))
    root = ET.fromstring(draw_to_scale(scene, 1).svg)
    x0, x1 = map(float, re.search(r"M([\d.]+) [\d.]+L([\d.]+) ", draw_to_scale(scene, 1).svg).groups())
    mm_per_unit = float(root.get("width").removesuffix("mm")) / float(root.get("viewBox").split()[2])
    assert (x1 - x0) * mm_per_unit == pytest.approx(100, abs=0.001)


def test_spread_keeps_order_and_room():
    random = Random(4)
    for _ in range(200):
        wanted = sorted(random.uniform(0, 300) for _ in range(random.randint(1, 12)))
        lengths = [random.uniform(5, 60) for _ in wanted]
        placed = spread(wanted, lengths)
        for (a, p), (b, q) in pairwise(zip(placed, lengths, strict=True)):
            assert b - a >= (p + q) / 2 - 1e-9


def test_the_outline_encloses_the_area_of_the_union():
    """Area by the shoelace formula (Gauss) against a count of unit squares."""
    random = Random(7)
    for _ in range(200):
        rects = []
        for _ in range(random.randint(1, 6)):
            x, y = random.randint(0, 8), random.randint(0, 8)
            rects.append((x, y, x + random.randint(1, 5), y + random.randint(1, 5)))
        cells = {(i, j) for a, b, c, d in rects for i in range(a, c) for j in range(b, d)}
        area = 0
        for ring in outline(tuple(rects)):
            area += sum(p[0] * q[1] - q[0] * p[1] for p, q in zip(ring, ring[1:] + ring[:1], strict=True))
        assert area == 2 * len(cells)
