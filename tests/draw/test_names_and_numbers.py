"""Names beside a drawing and numbers on its dimensions: legible, on the right side, each size in one form.

Common practice of drawing, no source, unless a check says otherwise.
"""

import re
from itertools import pairwise
from pathlib import Path

import pytest

from shoplib.documents.project_file import read_project
from shoplib.draw.chains import bare
from shoplib.draw.corners import corner_row
from shoplib.draw.elevation import front_elevation
from shoplib.draw.joint_section import joint_section
from shoplib.draw.letters import LARGE, drawn_with
from shoplib.draw.pen import draw
from shoplib.draw.scene import Chain, Label, Leader, Line, Scene, Shape
from shoplib.draw.season_view import _steps
from shoplib.draw.tape import tape
from shoplib.live.corner_panel import CORNERS, CornerChoices, corner_project
from shoplib.measure import INCH, INCH_STYLE, MM, MM_STYLE, Style, read_length
from shoplib.model.cabinet import solve
from tests.draw.test_pen import overlaps, text_boxes

BENCH = Path(__file__).parents[2] / "data" / "projects" / "under_bench_case.toml"


@pytest.fixture(scope="module")
def case():
    return solve(read_project(BENCH))


def corner_cases():
    """The four corners of a case of 3/4 in sheet, cut 1/4 in deep, with a tongue as thick."""
    choices = CornerChoices(*map(read_length, ("24 in", "20 in", "0.703 in", "1/4 in", "1/4 in")))
    return [(name, solve(corner_project(name, choices, INCH_STYLE))) for name in CORNERS]


def heads(svg: str) -> list[tuple[float, float, float, float]]:
    """The box round each arrowhead."""
    found = []
    for path in re.findall(r'<path d="([^"]*)" fill="#1f3a5f"/>', svg):
        for head in re.findall(r"M([^MZ]*)Z", path):
            points = [tuple(map(float, pair.split())) for pair in head.split("L")]
            xs, ys = zip(*points, strict=True)
            found.append((min(xs), min(ys), max(xs), max(ys)))
    return found


@pytest.mark.parametrize("side", ["below", "above", "left", "right"])
@pytest.mark.parametrize("room", [24, 26, 30, 40, 60])
def test_a_number_stands_clear_of_the_arrowheads_of_its_line(side, room):
    wide = 100 * MM
    scene = Scene("t", "n", "a", (0, 0, wide, wide), (
        Shape(((0, 0, wide, wide),), "case"), Chain(side, 0, (0, room * MM), ("1/4",))))
    svg = draw(scene, (100.0, 100.0))
    number = next(box for text, box in text_boxes(svg) if text == "1/4")
    assert heads(svg)
    for head in heads(svg):
        clear = max(number[0] - head[2], head[0] - number[2], number[1] - head[3], head[1] - number[3])
        assert clear >= 0.8, (side, room, number, head)


def rows_of(svg: str, texts: set[str]) -> dict[str, set[float]]:
    found: dict[str, set[float]] = {}
    for text, box in text_boxes(svg):
        if text in texts:
            found.setdefault(text, set()).add(round(box[1], 1))
    return found


def test_of_two_numbers_of_which_one_just_fits_none_stands_on_the_other_side_of_the_line():
    """Two equal spaces and one a mark wider, as between tools on a panel."""
    at = (0, 60 * MM, 140 * MM, 200 * MM, 280 * MM, 344 * MM)
    texts = ("2 27/64", "", "2 27/64", "", "2 7/16")
    svg = draw(Scene("t", "n", "a", (0, 0, at[-1], at[-1]), (Chain("below", 0, at, texts),)), (272.0, 272.0))
    assert len({row for rows in rows_of(svg, set(texts)).values() for row in rows}) == 1
    assert overlaps(svg) == []


def test_small_sizes_in_a_row_do_not_read_as_one(case):
    """Between two numbers of one line there is at least the width of a capital, so `1/8 0.703 1/8` is not one run."""
    for letters in (1.0, LARGE):
        with drawn_with(letters):
            svg = draw(front_elevation(case, case.style), (360.0, 280.0))
        numbers = [(text, box) for text, box in text_boxes(svg) if text in ("1/8", "0.703", "11 3/4")]
        level: dict[float, list] = {}
        for text, box in numbers:
            level.setdefault(round(box[3], 0), []).append((box, text))
        runs = 0
        for boxes in level.values():
            boxes.sort()
            gaps = [b[0][0] - a[0][2] for a, b in pairwise(boxes)]
            runs = max([runs, *(k for k in range(1, len(gaps)) if gaps[k - 1] < 8.5 and gaps[k] < 8.5)])
        assert runs == 0 and overlaps(svg) == []


def test_names_of_fronts_stand_on_the_side_of_their_bay(case):
    with drawn_with(LARGE):
        svg = draw(front_elevation(case, case.style), (270.0, 210.0))
    names = [(text, box) for text, box in text_boxes(svg) if re.fullmatch(r"drawer \d", text)]
    last = next(box for text, box in text_boxes(svg) if text == "bay 3")
    assert sorted(text for text, box in names if box[2] < 0) == [f"drawer {k}" for k in range(1, 5)]
    assert sorted(text for text, box in names if box[0] > last[2]) == [f"drawer {k}" for k in range(1, 5)]


def test_fronts_of_one_width_tell_as_much_as_one_another(case):
    for fit in ((300.0, 200.0), (360.0, 280.0), (480.0, 360.0), (640.0, 440.0), (800.0, 600.0)):
        svg = draw(front_elevation(case, case.style), fit)
        names = [text for text, _ in text_boxes(svg) if "drawer " in text]
        sizes = [text for text, _ in text_boxes(svg) if "22 11/32 ×" in text]  # as wide as each drawer's front
        assert len(names) == 8 and len(sizes) in (0, 8), fit


def test_the_figure_of_a_tape_is_under_its_mark_and_clear_of_the_pointer():
    """At 29 7/8 in a figure 30 left of its mark stood under the pointer, and was read."""
    for ticks, style in ((INCH * 239 // 8, Style("in", INCH // 8)), (INCH * 30, Style("in", INCH // 16)),
                         (299 * MM, Style("mm", MM)), (267 * MM, Style("mm", MM))):
        scene = tape(ticks, style, told=False)
        one = INCH if style.unit == "in" else 10 * MM
        pointer = next(item for item in scene.items if isinstance(item, Line) and item.kind == "hidden")
        figures = [item for item in scene.items if isinstance(item, Label)]
        assert figures
        for item in figures:
            left, _, right, top = item.room
            assert (left + right) // 2 == int(item.texts[0]) * one
            assert pointer.end[1] >= top and min(pointer.start[1], pointer.end[1]) >= top


def test_the_end_of_the_tape_is_told_where_no_step_runs_through_the_words():
    scene = tape(INCH * 7 // 16, Style("in", INCH // 16), "half")
    (told,) = [item for item in scene.items if isinstance(item, Leader) and item.text.startswith("the end")]
    assert told.side == "left" and told.point[0] == 0


def test_a_rest_that_a_fraction_would_hide_is_a_decimal_and_reads_back():
    for ticks in range(INCH, INCH + INCH // 16, 4064):
        text = bare(ticks, INCH_STYLE)
        if "(" in text:
            rest = read_length(f"{text.split('(')[1].rstrip(')').lstrip('+-')} in")
            assert 4 * rest <= INCH // 64
        else:
            assert abs(read_length(f"{text} in") - ticks) < INCH // 500
    assert bare(read_length("34.297 in"), Style("in", INCH // 32)) == "34.297"


def test_brackets_are_explained_where_there_are_any_and_nowhere_else():
    wide = 10 * INCH
    plain, other = (
        Scene("t", "All sizes in inches.", "a", (0, 0, wide, wide), (Chain("below", 0, (0, wide), (text,)),))
        for text in ("10", "10\n(+0.003)")
    )
    assert "brackets" not in draw(plain) and "In brackets: true size less printed size." in draw(other)


def test_one_size_has_one_form_in_a_joint():
    """A tongue as thick as it is deep: not `0.25` beside `1/4`."""
    case = dict(corner_cases())["tongue in a dado"]
    joint = next(each for each in case.joints if each.enters == "bottom" and each.receives == "left side")
    texts = [text for item in joint_section(case, joint, case.style).items if isinstance(item, Chain)
             for text in item.texts]
    assert "1/4" in texts and "0.25" not in texts


def test_corners_in_large_type_have_no_leaders_and_tell_their_boards_once():
    cases = corner_cases()
    with drawn_with(LARGE):
        scene = corner_row(cases, INCH_STYLE)
        svg = draw(scene, (560.0, 170.0))
    assert "Upright: the left side. Level: the bottom." in scene.legend
    said = [text for text, _ in text_boxes(svg)]
    assert not {"left side", "bottom"} & set(said) and overlaps(svg) == []
    titles = [(text, box) for text, box in text_boxes(svg) if text in ("butt", "in a dado", "in the bottom")]
    assert len(titles) == 3 and len({round(box[3] - box[1], 2) for _, box in titles}) == 1


def test_a_grid_for_large_letters_has_fewer_lines():
    for high in (3 * MM, 7 * MM, 11 * MM):
        ordinary = _steps(0, high, MM_STYLE)
        with drawn_with(LARGE):
            assert 1 < len(_steps(0, high, MM_STYLE)) <= min(5, len(ordinary))
