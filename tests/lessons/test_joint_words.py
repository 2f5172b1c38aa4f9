"""The words of the joints' pages are drawn where a picture says more than the word: each sketch names its own thing."""

import pytest

from shoplib.draw.letters import LARGE, ORDINARY, drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import Leader
from shoplib.lessons import words_j04, words_j11, words_j12
from shoplib.lessons.glossary_page import SKETCH
from tests.draw.test_pen import overlaps, text_boxes

WORDS = {word.name: word for page in (words_j04, words_j11, words_j12) for word in page.WORDS}
NOT_DRAWN = {"sliding bevel"}
"""A tool, which no sketch of boards shows."""


def test_each_word_but_those_named_here_has_a_sketch():
    assert {name for name, word in WORDS.items() if word.sketch is None} == NOT_DRAWN


@pytest.mark.parametrize("name", sorted(WORDS.keys() - NOT_DRAWN))
@pytest.mark.parametrize("large", [ORDINARY, LARGE], ids=["ordinary", "large"])
def test_a_sketch_points_at_what_its_word_means_and_no_words_meet(name, large, unit):
    scene = WORDS[name].sketch(unit)
    assert scene.title.lower() == name
    leaders = [item for item in scene.items if isinstance(item, Leader)]
    assert name in [leader.text for leader in leaders]
    left, bottom, right, top = scene.bounds
    assert all(left <= leader.point[0] <= right and bottom <= leader.point[1] <= top for leader in leaders)
    with drawn_with(large):
        svg = draw(scene, SKETCH)
    assert overlaps(svg) == [] and name in [text for text, _ in text_boxes(svg)]
