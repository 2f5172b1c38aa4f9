"""How every page of the workbook is written: thin folded cells, pictures with words, nothing stored that is large."""

import re
from pathlib import Path

import nbformat
import pytest

from tests.pages import NOTEBOOKS, PAGES

ROOT = NOTEBOOKS.parent


@pytest.fixture(params=PAGES, ids=lambda page: page.stem)
def page(request):
    read = nbformat.read(request.param, as_version=4)
    read.metadata.folder = str(request.param.parent)
    return read


def cells(page, kind):
    return [cell for cell in page.cells if cell.cell_type == kind]


def text_of(page):
    return "\n".join(cell.source for cell in cells(page, "markdown"))


def test_cells_are_thin_folded_and_say_what_they_show(page):
    for cell in cells(page, "code"):
        lines = cell.source.splitlines()
        assert len(lines) <= 12, cell.source
        assert re.fullmatch(r"# Shows .+\.", lines[0]), "the line that stays to be seen when the cell is folded"
        assert len(lines[0]) <= 70, "it would be cut off on a narrow screen"
        assert sum("(" in line for line in lines if "import" not in line and line[:1] != "#") <= 2, cell.source
        assert cell.metadata.get("jupyter", {}).get("source_hidden") is True


def test_the_kernel_is_any_python_3(page):
    assert page.metadata.kernelspec.name == "python3"


def test_every_picture_is_there_and_has_words(page):
    for words, path in re.findall(r"!\[([^\]]*)\]\(([^)]+)\)", text_of(page)):
        assert len(words) > 40
        picture = (Path(page.metadata.folder) / path).read_text(encoding="utf-8")
        assert "<title>" in picture and "<desc>" in picture and "href" not in picture
    for cell in cells(page, "code"):
        for output in cell.outputs:
            for image in re.findall(r"<img[^>]*>", output.get("data", {}).get("text/html", "")):
                assert re.search(r'alt="[^"]{20,}"', image)


def test_every_link_and_every_file_named_is_there(page):
    text = text_of(page)
    for target in re.findall(r"(?<!!)\[[^\]]*\]\(([^)#]+)\)", text):
        assert (Path(page.metadata.folder) / target).is_file(), target
    for named in re.findall(r"`((?:shoplib|data)/[\w/.]+)`", text):
        assert (ROOT / named).is_file(), named


def test_a_page_says_where_its_code_is_and_how_to_wake_it_and_what_to_be_careful_of(page):
    text = text_of(page)
    assert "`shoplib/lessons/" in text and "Run All Cells" in text
    assert "Before you cut" in text and "manual" in text


def test_stored_outputs_are_small_and_hold_no_state(page):
    assert "widgets" not in page.metadata
    for cell in cells(page, "code"):
        assert len(str(cell.outputs)) < 100_000
        assert "execution" not in cell.metadata


def test_it_was_recorded_for_a_learner_who_has_chosen_nothing():
    page = nbformat.read(NOTEBOOKS / "00_start_here.ipynb", as_version=4)
    assert "Unit: not chosen yet" in str([cell.outputs for cell in page.cells if cell.cell_type == "code"])
