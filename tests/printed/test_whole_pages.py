"""The pictures of the whole on paper: as large as their room, and nothing on anything else.

What is asked of names and leaders is common practice of drawing, no source.
"""

import xml.etree.ElementTree as ET

import pytest

from shoplib.documents.paper import PAPERS
from shoplib.draw.whole_view import assembled_view
from shoplib.printed.plan.cover import cover_pages
from shoplib.printed.plan.whole_pages import exploded_picture, filling, whole_pages
from shoplib.printed.typeset.blocks import NewPage, Picture, Together, told
from tests.draw.test_whole_view import PROJECTS, cabinet, clear, leaders_drawn, scenes
from tests.printed.large_cases import drawers_in
from tests.printed.test_build_pages import flat

strokes = pytest.fixture(leaders_drawn)


def size_mm(svg):
    return tuple(float(ET.fromstring(svg).get(side).removesuffix("mm")) for side in ("width", "height"))


@pytest.mark.parametrize("paper", PAPERS.values(), ids=list(PAPERS))
@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_a_picture_fills_its_room_and_nothing_lies_on_anything(path, paper, strokes):
    for stem, scene in scenes(path):
        for lying, share in ((False, 1.0), (False, 0.5), (True, 1.0)):
            wide, high = paper.room(lying)
            room = wide, high * share - 40
            found = filling(scene, room)
            size = size_mm(found.svg)
            assert found.width == pytest.approx(size[0], abs=0.001)
            assert size[0] <= room[0] and size[1] <= room[1]
            assert size[0] > 0.97 * room[0] or size[1] > 0.97 * room[1]
            assert clear(found.svg, strokes) == [], (stem, lying, share)


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_all_pictures_of_the_whole_are_on_paper(path):
    paper = PAPERS["letter"]
    pages = whole_pages(cabinet(path), paper)
    pictures = [block for block in flat(pages) if isinstance(block, Picture)]
    wide, high = paper.room()
    rows = [sum(isinstance(block, Picture) for block in flat([page])) for page in pages if isinstance(page, Together)]
    assert rows[0] == 1 and set(rows[1:-1]) <= {2}
    heights = [size_mm(picture.svg)[1] for picture in pictures]
    if len(rows) == 1:  # alone, it has the whole page
        assert heights[0] > 0.8 * high or pictures[0].width > 0.97 * wide
    else:
        assert max(heights) < high / 2
    pictures.append(exploded_picture(cabinet(path), paper.room()))
    assert all(isinstance(picture, Picture) for picture in pictures)
    assert sorted(picture.title for picture in pictures) == sorted(scene.title for _, scene in scenes(path))
    assert all(picture.alt for picture in pictures)


def pictures_and_pages(blocks):
    """Each picture with how high its drawing is, and the page it stands on, counted by the new pages before it."""
    page = 0
    for block in flat(blocks):
        page += isinstance(block, NewPage)
        if isinstance(block, Picture):
            yield page, size_mm(block.svg)[1]


def test_a_cover_leaves_many_sizes_of_boxes_to_the_drawers():
    """With thirty rows of them the picture had no room, and was a blot between its leaders."""
    cabinet, paper = drawers_in(3), PAPERS["a4"]
    blocks = cover_pages(cabinet, paper)
    [(page, high)] = pictures_and_pages(blocks)
    assert page == 0 and high > 90
    assert "The boxes are of 30 sizes, each in the tables of sizes under Drawers." in told(blocks)
    assert "box of" not in told(blocks)


def test_a_picture_with_many_names_gets_a_page_of_its_own(quick):
    """Fifty drawers: on letter paper neither the cover nor half a page has room for all numbers."""
    cabinet, paper = drawers_in(5), PAPERS["letter"]
    high = paper.room()[1]
    if not quick:
        assert [page for page, _ in pictures_and_pages(cover_pages(cabinet, paper))] == [1]
    heights = [tall for _, tall in pictures_and_pages(whole_pages(cabinet, paper))]
    assert len(heights) == 2 and heights[0] > 0.6 * high


def test_a_room_too_small_for_the_words_is_refused():
    scene = assembled_view(drawers_in(5))
    with pytest.raises(ValueError, match=r"^Assembled view: Wall of small parts: 186 x 68 mm are too little room"):
        filling(scene, (186.0, 68.0))
