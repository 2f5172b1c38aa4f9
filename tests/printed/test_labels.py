"""Labels: every board has one, with what the list says of it, and none runs over its own lines."""

from io import BytesIO
from itertools import pairwise

import pytest
from pypdf import PdfReader

from shoplib.documents.before_cutting import STOPPED
from shoplib.documents.paper import PAPERS
from shoplib.lists.cut_list import kinds
from shoplib.lists.writing import Writing
from shoplib.printed.true_scale.labels import label_pages
from shoplib.printed.typeset.blocks import Labels
from shoplib.printed.typeset.stamp import Stamp
from tests.documents.pdf_paths import POINT, paths
from tests.printed.cases import NAMES, printed, solved

TITLE, BODY = 16.0, 8.5
CAPITAL = 1493 / 2048
"""How high a capital of DejaVu Sans Bold is, of its size: its own OS/2 table."""


def cells_of(pdf):
    """The words of each cell of the dashed grid, from the top down, as (size, text); and how near they come to it."""
    found = []
    for page in PdfReader(BytesIO(pdf)).pages:
        dashed = [path.corners for path in paths(page) if path.painted == "S" and abs(path.line - 0.4) < 1e-3]
        level = sorted({round(line[0][1], 1) for line in dashed if abs(line[0][1] - line[-1][1]) < 0.01}, reverse=True)
        upright = sorted({round(line[0][0], 1) for line in dashed if abs(line[0][0] - line[-1][0]) < 0.01})
        words = []

        def keep(text, matrix, place, font, size, words=words):
            if text.strip() and round(size, 1) in (TITLE, BODY):
                x = matrix[4] + place[4] * matrix[0]
                y = matrix[5] + place[5] * matrix[3]
                words.append((x * POINT, y * POINT, round(size, 1), text.strip()))

        page.extract_text(visitor_text=keep)
        for top, bottom in pairwise(level):
            for left, right in pairwise(upright):
                here = [word for word in words if bottom < word[1] < top and left < word[0] < right]
                if here:
                    found.append((top, bottom, sorted(here, key=lambda word: -word[1])))
    return found


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", NAMES)
def test_every_board_has_one_label_in_the_pdf_that_tells_its_size(name, paper):
    cabinet = solved(name)
    page = Writing(cabinet.style)
    cells = cells_of(printed("Labels", label_pages(cabinet), paper))
    said = []
    for top, bottom, words in cells:
        title = " ".join(text for _, _, size, text in words if size == TITLE)
        body = " ".join(text for _, _, size, text in words if size == BODY).replace("- ", "-").replace("\u00a0", " ")
        said.append((title, body))
        assert words[0][2] == TITLE, f"the words before {title} run over their label"
        assert top - words[0][1] > 3 and words[-1][1] - bottom > 1.5, f"{title} comes too near to where it is cut"
    assert sorted(title for title, _ in said) == sorted(cabinet.by_name)
    numbers = {board.name: number for number, kind in enumerate(kinds(cabinet), 1) for board in kind.boards}
    for title, body in said:
        board = cabinet.by_name[title]
        length, width, thickness = board.cut_size
        assert f"Stage {board.stage}, cut list no. {numbers[title]}, from {board.sheet}" in body
        assert f"{page.length(length)} × {page.length(width)} × {page.measured(thickness)}" in body
        assert f"Goes to: {board.group}" in body


@pytest.mark.parametrize(("name", "paper"), [("small_parts_wall_case", "letter"), ("under_bench_case", "a4")])
def test_each_label_of_a_stopped_plan_says_so_and_still_has_its_room(name, paper):
    """Cut apart, a label has nothing of what stands across the page."""
    stamp = Stamp("Trial", "2222-3333", "", STOPPED)
    cells = cells_of(printed("Labels", label_pages(solved(name), stamp), paper))
    assert len(cells) == len(solved(name).boards)
    for top, bottom, words in cells:
        assert STOPPED in " ".join(text for _, _, size, text in words if size == BODY)
        assert top - words[0][1] > 3 and words[-1][1] - bottom > 1.5, words[0]
    [plain] = [block for block in label_pages(solved(name), Stamp("Trial", "2222-3333")) if isinstance(block, Labels)]
    assert not any(label.alarm for label in plain.cells)


def test_the_name_on_a_label_is_read_at_arms_length():
    """Capitals of 4 mm (common practice, no source)."""
    assert TITLE * POINT * CAPITAL >= 4


@pytest.mark.parametrize("name", NAMES)
def test_the_picture_of_a_label_names_the_sides_that_the_drawing_is_marked_out_from(name):
    """The drawing of a board measures from the end and the edge that lie left, in front or at the bottom."""
    cabinet = solved(name)
    [labels] = [block for block in label_pages(cabinet) if isinstance(block, Labels)]
    for label in labels.cells:
        board = cabinet.by_name[label.title]
        words = " ".join(label.lines).partition("Measure from: ")[2]
        assert label.alt.count("heavy") == 1
        for own, noun in ((0, "end"), (1, "edge")):
            looks = ("left", "front", "bottom")["xyz".index(board.placement.axes[own][1])]
            assert f"{looks} {noun}" in words, (label.title, words)
            assert f"the {looks} {noun}" in label.alt
