"""Words of the plan sets as they are printed once all is measured: within the margins and apart from one another.

Readings differ from drawer to drawer there, so that tables are widest and legends longest. Common practice of
printing, no source.
"""

import io
from functools import cache

import pytest
from pypdf import PdfReader

from shoplib.buying.laid_out import laid_out
from shoplib.documents.paper import ACROSS, BELOW, PAPERS
from shoplib.printed.everything import planned
from shoplib.printed.typeset.blocks import Table
from shoplib.printed.typeset.set_in_type import set_in_type
from shoplib.printed.typeset.stamp import Stamp
from tests.building.cases import measured_unevenly
from tests.documents.pdf_paths import paths
from tests.documents.pdf_words import POINT, words
from tests.printed.sets import PROJECTS, plan_set_pdf

SETS = pytest.mark.parametrize(("project", "paper"), [(one, paper) for one in PROJECTS for paper in PAPERS])
MEET = 0.5
"""Boxes of words that overlap by so much both ways lie on one another, in mm: capitals and lines are taken full."""
PLATE = 0.5
"""By so much the plate under a word of a drawing may lie past the margin, in mm: it is not seen there."""
PARTS = ("What to buy", "Sheets and saw cuts", "Drawers", "Fronts and gaps", "Hardware")


@cache
def pages_of(project, paper):
    """The pages of sheets, drawers and fronts, and of what is bought and screwed on."""
    plan = planned(measured_unevenly(project), lambda cabinet: laid_out(cabinet, 0))
    tagged = plan_set_pdf(plan, paper)
    pages, first = list(tagged.reader.pages), sorted(tagged.begins.values())
    found = {}
    for part in PARTS:
        begins = tagged.begins[part]
        ends = next((page for page in first if page > begins), len(pages) + 1)
        found |= {number: pages[number - 1] for number in range(begins, ends + 1) if number <= len(pages)}
    return found


def faults(page):
    """What runs past the margins, or lies on other words."""
    wide, high = (float(side) * POINT for side in page.mediabox[2:])
    shown = words(page)
    foot = next(word.box[1] for word in shown if word.text.startswith("page "))
    for word in shown:
        left, low, right, up = word.box
        if left < ACROSS - 0.1 or right > wide - ACROSS + 0.1 or up > high:
            yield f"past the margin: {word.text}"
        if low < BELOW - 2 and abs(low - foot) > 0.1:
            yield f"in the foot of the page: {word.text}"
    shown.sort(key=lambda word: word.box[1])
    for n, one in enumerate(shown):
        for other in shown[n + 1:]:
            if other.box[1] >= one.box[3] - MEET:
                break
            if min(one.box[2], other.box[2]) - max(one.box[0], other.box[0]) > MEET:
                yield f"on one another: {one.text} | {other.text}"
    for path in paths(page):
        if path.corners:
            left, right = (pick(x for x, _ in path.corners) for pick in (min, max))
            if left < ACROSS - PLATE or right > wide - ACROSS + PLATE:
                yield f"a line past the margin, from {left:.1f} to {right:.1f}"


@SETS
def test_words_keep_within_the_margins_and_apart(project, paper):
    pages = pages_of(project, paper)
    assert len(pages) > 8
    assert {number: list(faults(page)) for number, page in pages.items() if any(faults(page))} == {}


def test_the_faults_are_seen():
    """A table too wide, and one whose last column has no room left."""
    long = "\u00a0".join(["words"] * 60)
    assert any("past the margin" in fault for page in set_pages([Table(("a",), ((long,),))]) for fault in faults(page))
    rows = (("one word", *["several words together"] * 9, "the last word"),)
    [page] = set_pages([Table(tuple("abcdefghijk"), rows, (0, 10))])
    assert any("on one another" in fault for fault in faults(page))


def set_pages(blocks, paper="a4"):
    pdf = set_in_type("Trial", blocks, Stamp("Case", "2222-3333"), PAPERS[paper], "Measure.")
    return PdfReader(io.BytesIO(pdf)).pages
