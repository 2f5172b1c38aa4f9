"""How the pages of the plan sets are filled, measured in the PDF: by where its letters and lines stand."""

import io
import re
from dataclasses import dataclass
from functools import cache

import pytest
from pypdf import PdfReader

from shoplib.documents.paper import ABOVE, BELOW, PAPERS
from shoplib.printed.typeset.blocks import Contents, Heading, NextPart, Table, Words
from shoplib.printed.typeset.set_in_type import set_in_type
from shoplib.printed.typeset.stamp import Stamp
from tests.documents.pdf_paths import paths
from tests.printed.sets import PROJECTS, plan_set_of

SETS = pytest.mark.parametrize(("project", "paper"), [(one, paper) for one in PROJECTS for paper in PAPERS])
MM = 25.4 / 72
HEADING = 8.7
"""Heavy letters of headings are larger than this, in points; those of words and tables are smaller."""
LEAST = 1 / 3
"""What is taken of a page at least, of the height between its margins. Judged by eye; no source."""


@dataclass(frozen=True)
class Line:
    """Letters at a height above the foot of the page in mm, their size in points."""

    up: float
    size: float
    heavy: bool = False


@cache
def letters(project, paper):
    """Of each page its letters between the margins, from the top down."""
    found = []
    for page in plan_set_of(project, paper).reader.pages:
        lines, high = [], float(page.mediabox.height) * MM

        def visit(text, cm, tm, font, size, lines=lines, high=high):
            up = (cm[1] * tm[4] + cm[3] * tm[5] + cm[5]) * MM
            if text.strip() and BELOW - 1 < up < high - ABOVE + 1:
                heavy = "Bold" in str((font or {}).get("/BaseFont", ""))
                lines.append(Line(up, size * abs(cm[3] * tm[3]), heavy))

        page.extract_text(visitor_text=visit)
        found.append((high, sorted(lines, key=lambda line: -line.up)))
    return found


def lowest(project, paper, number):
    """The lowest letter or corner of a drawn line on a page, in mm from its foot; header and footer have no lines."""
    high, lines = letters(project, paper)[number]
    drawn = [y for path in paths(plan_set_of(project, paper).reader.pages[number]) for _, y in path.corners]
    return min([line.up for line in lines] + [y for y in drawn if BELOW - 1 < y < high - ABOVE + 1])


@SETS
def test_no_page_is_nearly_empty_but_the_last_of_a_part(project, paper):
    """Sheets are drawn as large as a page, so that the table of cuts before one ends where it ends."""
    tagged = plan_set_of(project, paper)
    begins = {page - 1 for page in tagged.begins.values()}
    sheets = range(tagged.begins["Sheets and saw cuts"] - 1, tagged.begins["Each board with its cuts"] - 1)
    pages = letters(project, paper)
    checked = 0
    for number, (high, _) in enumerate(pages):
        ends = number + 1 in begins or number + 1 == len(pages)
        if ends or number in sheets:
            continue
        checked += 1
        room = high - ABOVE - BELOW
        assert high - ABOVE - lowest(project, paper, number) >= LEAST * room, number + 1
    assert checked > 10


@SETS
def test_no_heading_is_the_last_thing_on_a_page(project, paper):
    for number, (_, lines) in enumerate(letters(project, paper), start=1):
        assert not (lines[-1].heavy and lines[-1].size > HEADING), number


def set_pages(blocks):
    pdf = set_in_type("Trial", blocks, Stamp("Case", "2222-3333"), PAPERS["a4"], "Measure.")
    return [page.extract_text() for page in PdfReader(io.BytesIO(pdf)).pages]


def test_no_row_of_a_table_is_parted_and_each_page_repeats_its_head():
    rows = tuple((str(n), " ".join(f"word{n}." for _ in range(60 + n % 7 * 9))) for n in range(1, 41))
    pages = set_pages([Table(("row", "said"), rows, (1,))])
    assert len(pages) > 2
    for n, (_, said) in enumerate(rows, start=1):
        counts = [page.count(f"word{n}.") for page in pages]
        assert sorted(counts) == [0] * (len(pages) - 1) + [len(said.split())], n
    assert all(re.search(r"row\s+said", page) for page in pages)


@pytest.mark.parametrize(("lines", "where"), [(3, 1), (30, 2)])
def test_a_part_begins_below_the_one_before_where_half_a_page_is_free(lines, where):
    """And its page is counted rightly, at its foot and among the contents."""
    pages = set_pages([Contents(), *(Words(f"Line {n}. " * 20) for n in range(lines)), NextPart(), Heading("Next"),
                       Words("It begins.")])
    assert len(pages) == where and "It begins." in pages[where - 1]
    assert re.search(rf"Next\W+{where}\b", pages[0])
    assert all(f"page {n} of {where}" in page for n, page in enumerate(pages, start=1))
