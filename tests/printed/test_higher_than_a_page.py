"""What is kept in one piece, but is higher than a page: it is broken, so that nothing of it is lost below the paper.

Typst sets an unbroken block that is too high without an error. Common practice of printing, no source.
"""

import pytest

from shoplib.checks import check
from shoplib.model.board import BOXES
from shoplib.printed.build.drawers import measure
from shoplib.printed.plan.cut_list_pages import cut_list_pages
from shoplib.printed.typeset.blocks import Beside, Heading, NewPage, Table, ToFillIn, Together, Words
from tests.documents.pdf_words import words
from tests.printed.large_cases import drawers_in, shelves_of
from tests.printed.test_build_pages import flat
from tests.printed.test_words_apart import faults, set_pages


def lines_of(blocks):
    """The rows of all tables, and the lines that are to be filled in."""
    for block in flat(blocks):
        if isinstance(block, Table):
            yield from ("".join(row) for row in block.rows)
        elif isinstance(block, ToFillIn):
            yield from block.lines


def bare(text):
    return "".join(text.split()).replace("\u200b", "")


def held(blocks, paper="a4"):
    """How many lines there are, once all are found on the pages and none lies over another or in the foot."""
    lines, pages = list(lines_of(blocks)), set_pages(blocks, paper)
    shown = bare("".join(word.text for page in pages for word in words(page)))
    assert [line for line in lines if bare(line) not in shown] == []
    assert {number: list(faults(page)) for number, page in enumerate(pages, start=1) if any(faults(page))} == {}
    return len(lines), len(pages)


ROWS = tuple((f"drawer {number}", "as planned") for number in range(1, 81))


@pytest.mark.parametrize("block", [
    Together((Heading("Sizes", 2), Table(("drawer", "opening"), ROWS))),
    ToFillIn("Diagonals.", tuple(name for name, _ in ROWS)),
    Together((Words("Read each."), Beside((
        (ToFillIn("Opening", tuple(name for name, _ in ROWS)),), (ToFillIn("Depth", ("bay 1",)),),
    )))),
    Together((Words("Read each."), Beside((
        tuple(ToFillIn("Opening", (f"{name}, lower", f"{name}, upper")) for name, _ in ROWS),
        (Words("Twice."),),
    )))),
])
def test_what_is_higher_than_a_page_goes_on_on_the_next(block):
    count, pages = held([Heading("Drawers"), block])
    assert count >= len(ROWS)
    assert pages > 1


def test_what_fits_a_page_is_not_parted():
    """It leaves a page that has too little room for it."""
    first, second = set_pages([Heading("Drawers"), Table(("drawer", "opening"), ROWS[:30]), Together((
        Heading("Sizes", 2), Table(("drawer", "opening"), ROWS[30:60]),
    ))])
    assert "drawer 31" not in " ".join(word.text for word in words(first))
    assert "drawer 31" in " ".join(word.text for word in words(second))


def test_every_opening_of_fifty_drawers_has_its_room_to_write():
    count, _ = held(measure(BOXES, drawers_in(5)))
    assert count >= 50


def test_a_stage_of_wordy_rows_is_whole_on_a_lying_page():
    cabinet = shelves_of("birch plywood of the yard at the harbour five ply from the second rack on the le")
    count, _ = held([NewPage(lying=True), *cut_list_pages(cabinet, check(cabinet))], "letter")
    assert count > 11
