"""Names of 80 letters, as long as a project may give them: they run over nothing that stands beside them.

Common practice of printing, no source.
"""

import io

from pypdf import PdfReader

from shoplib.buying.laid_out import laid_out
from shoplib.documents.paper import PAPERS
from shoplib.printed.plan.buying_pages import buying_pages
from shoplib.printed.plan.cover import cover_pages
from shoplib.printed.plan.cut_list_pages import cut_list_pages
from shoplib.printed.plan.drawer_page import drawer_pages
from shoplib.printed.plan.front_pages import front_pages
from shoplib.printed.plan.sheet_pages import sheet_pages
from shoplib.printed.true_scale.labels import label_pages
from shoplib.printed.typeset.blocks import NewPage, Picture
from shoplib.printed.typeset.set_in_type import set_in_type
from shoplib.printed.typeset.stamp import Stamp
from tests.documents.pdf_paths import paths
from tests.documents.pdf_words import words
from tests.printed.large_cases import long_named
from tests.printed.test_build_pages import flat
from tests.printed.test_words_apart import faults

PAPER = PAPERS["a4"]


def pages_of(cabinet, blocks):
    pdf = set_in_type("Plan set", blocks, Stamp(cabinet.name, "2222-3333", "29 May"), PAPER, "Measure.")
    return PdfReader(io.BytesIO(pdf)).pages


def faulty(pages):
    return {number: list(faults(page)) for number, page in enumerate(pages, start=1) if any(faults(page))}


def undrawn(blocks):
    """Without the drawings, which take long to read back."""
    return [block for block in blocks if not any(isinstance(each, Picture) for each in flat([block]))]


def test_one_long_word_is_broken_in_every_cell_and_heading():
    cabinet = long_named()
    found = laid_out(cabinet, 0)
    pages = pages_of(cabinet, [
        *cover_pages(cabinet, PAPER), NewPage(lying=True), *cut_list_pages(cabinet, ()), *buying_pages(found),
        *undrawn(sheet_pages(found, PAPER)), NewPage(), *undrawn(drawer_pages(cabinet, (), PAPER)),
        *undrawn(front_pages(cabinet, (), PAPER)),
    ])
    assert faulty(pages) == {}
    assert "casesheetcasesheet" in "".join(word.text for page in pages for word in words(page)).replace("\u200b", "")


def test_labels_grow_with_their_words():
    """None of their lines lies on the dashed line that is cut along, or on the next label."""
    cabinet = long_named()
    pages = list(pages_of(cabinet, label_pages(cabinet)))
    assert faulty(pages) == {}
    assert [crossed for page in pages for crossed in cut_through(page)] == []


def cut_through(page):
    """Words that a level line runs through which is at least half a label long."""
    level = {round(path.corners[0][1], 2) for path in paths(page) if path.painted == "S" and len(path.corners) == 2
             and path.corners[0][1] == path.corners[1][1] and abs(path.corners[0][0] - path.corners[1][0]) > 40}
    assert len(level) > 3
    return [word.text for word in words(page) if any(word.box[1] < height < word.box[3] for height in level)]
