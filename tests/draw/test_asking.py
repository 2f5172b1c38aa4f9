"""A dimension that is picked on a drawing is the length between the points that it is drawn at."""

import re
from dataclasses import replace

import pytest

from shoplib.documents.examples import example
from shoplib.documents.project_file import read_project
from shoplib.draw.asking import all_sizes, dimension, sizes
from shoplib.draw.elevation import front_elevation
from shoplib.draw.pen import draw
from shoplib.draw.scene import Chain, Running, Scene, Told
from shoplib.draw.section import section_side
from shoplib.lists.writing import Writing
from shoplib.measure.traced import Traced
from shoplib.model.cabinet import solve
from shoplib.model.tracing import traced


@pytest.fixture(scope="module")
def case():
    return solve(traced(read_project(example("under_bench_case"))))


@pytest.mark.parametrize("view", [front_elevation, section_side])
def test_every_dimension_can_be_asked_and_is_what_is_written(case, view):
    scene = view(case, case.style)
    svg = draw(scene, asked="front/")
    asked = re.findall(r'data-ask="front/([\d.]+)"[^>]*>([^<]+)<', svg)
    assert len(asked) > 25
    page = Writing(case.style, units=False)
    for ask, text in asked:
        ticks = dimension(scene, ask)
        assert isinstance(ticks, Traced)
        whole, text = {page.length(ticks), page.measured(ticks)}, text.removeprefix("box ")
        assert text in whole | {part for one in whole for part in one.replace(" (", "\n(").split("\n")}


def test_paper_carries_no_names_of_dimensions(case):
    assert "data-ask" not in draw(front_elevation(case, case.style))


def test_running_dimensions_are_from_their_datum():
    scene = Scene("Bench", "mm", "A bench.", (0, 0, 9, 9), (Running("below", 0, 2, (0, 7), ("2", "5")),))
    assert [dimension(scene, f"0.{k}") for k in range(2)] == [2, 5]


@pytest.mark.parametrize("ask", ["", "0", "0.7", "9.0", "a.b", "0.0.0"])
def test_a_name_that_is_not_there_is_refused(ask):
    scene = Scene("Bench", "mm", "A bench.", (0, 0, 9, 9), (Chain("below", 0, (0, 7), ("7",)),))
    with pytest.raises(LookupError, match="no dimension"):
        dimension(scene, ask)


def test_a_title_a_note_and_a_legend_are_asked_whole_however_they_are_broken():
    """A long line stands in several texts on the page; it is one thing to pick, and tells all its sizes."""
    note, long = "Each kerf is 4.", " ".join(["A dado 9 wide and 5 deep, and a great many words about it."] * 3)
    scene = Scene(
        "Bench 7", note, "A bench.", (0, 0, 9, 9), legend=("Plain.", long),
        told=(Told(long, (("width", 9), ("depth", 5))), Told(note, (("kerf", 4),)), Told("Bench 7", (("bench", 7),))),
    )
    svg = draw(scene, asked="a/")
    found = re.findall(r'<g data-ask="([^"]+)">(.*?)</g>', svg)
    groups = {name: re.findall(r">([^<]+)</text>", inside) for name, inside in found}
    assert set(groups) == {"a/told.0", "a/told.1", "a/told.2"}
    assert len(groups["a/told.0"]) > 1 and " ".join(groups["a/told.0"]) == long
    assert sizes(scene, "told.0") == (("width", 9), ("depth", 5))
    assert "told" not in draw(scene)
    for name in ("told.3", "told.x", "told"):
        with pytest.raises(LookupError, match="no dimension"):
            sizes(scene, name)


def test_all_sizes_are_those_of_the_lines_that_stand_there_and_in_their_order():
    legend = "A dado 9 wide and 5 deep."
    scene = Scene(
        "Bench 7", "mm", "A bench.", (0, 0, 9, 9), (Chain("below", 0, (0, 9), ("9",)),), (legend,),
        told=(Told(legend, (("width", 9), ("depth", 5))), Told("Bench 7", (("bench", 7),))),
    )
    assert list(all_sizes(scene)) == [("dimension", "9", 9), ("bench", "", 7), ("width", "", 9), ("depth", "", 5)]
    assert ("bench", "", 7) not in all_sizes(replace(scene, title="A bench"))
