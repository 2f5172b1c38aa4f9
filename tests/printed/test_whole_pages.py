"""The pictures of the whole on paper: as large as their room, and nothing on anything else.

What is asked of names and leaders is common practice of drawing, no source.
"""

import xml.etree.ElementTree as ET

import pytest

from shoplib.documents.paper import PAPERS
from shoplib.printed.plan.whole_pages import exploded_picture, filling, whole_pages
from shoplib.printed.typeset.blocks import Picture, Together
from tests.draw.test_whole_view import PROJECTS, cabinet, clear, leaders_drawn, scenes
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
