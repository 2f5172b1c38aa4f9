"""The views: what is seen is what is nearest, chains close, boards are turned and never mirrored."""

import re
from itertools import combinations
from pathlib import Path
from random import Random

import pytest

from shoplib.documents.project_file import read_project
from shoplib.draw.board_drawing import board_drawing
from shoplib.draw.board_face import Face, faces
from shoplib.draw.clash import mark
from shoplib.draw.elevation import front_elevation
from shoplib.draw.lanes import Lanes
from shoplib.draw.look import FROM_ABOVE, FROM_RIGHT, FRONT, cut_through, seen
from shoplib.draw.pen import draw
from shoplib.draw.scene import Chain, Line, Running, Shape
from shoplib.draw.section import section_plan, section_side
from shoplib.draw.slide_lines import worked_faces
from shoplib.draw.uncrossed import cross
from shoplib.lists.cut_words import cut_words
from shoplib.lists.sides import looks
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, INCH_STYLE, MM, read_length, write_brief
from shoplib.model.board import BoxCut, Hole
from shoplib.model.box import Box, around
from shoplib.model.cabinet import solve
from shoplib.model.uprights import bays
from tests.draw.bench_case import bench_case
from tests.draw.test_pen import outside, overlaps
from tests.random_projects import project

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
NAMES = ["bench", *(p.stem for p in PROJECTS)]
TOWARD = {"right": (1, 0, 0), "left": (-1, 0, 0), "back": (0, 1, 0), "front": (0, -1, 0),
          "top": (0, 0, 1), "bottom": (0, 0, -1)}


@pytest.fixture(scope="module", params=NAMES)
def cabinet(request):
    if request.param == "bench":
        return bench_case()
    return solve(read_project(next(p for p in PROJECTS if p.stem == request.param)))


def views(cabinet):
    style = cabinet.style
    yield front_elevation(cabinet, style)
    yield front_elevation(cabinet, style, fronts=False)
    yield section_plan(cabinet, style)
    for number in range(1, len(bays(cabinet)) + 1):
        yield section_side(cabinet, style, number)


def covers(shape, x, y):
    return any(a < x < c and b < y < d for a, b, c, d in shape.rects)


@pytest.mark.parametrize(("look", "axes"), [(FRONT, (0, 2)), (FROM_RIGHT, (1, 2)), (FROM_ABOVE, (0, 1))])
def test_the_last_shape_painted_is_the_nearest_board(cabinet, look, axes):
    shapes = seen(cabinet.boards, (), look)
    whole = around([b.box for b in cabinet.boards])
    random = Random(11)
    hits = 0
    for _ in range(300):
        x, y = (random.randint(whole.low[a], whole.high[a]) for a in axes)
        ray = [
            (look.nearness(piece), board.name) for board in cabinet.boards for piece in board.pieces
            if piece.low[axes[0]] < x < piece.high[axes[0]] and piece.low[axes[1]] < y < piece.high[axes[1]]
        ]
        painted = [shape.name for shape in shapes if covers(shape, x, y)]
        assert (painted[-1] if painted else None) == (max(ray)[1] if ray else None)
        hits += bool(ray)
    assert hits > 200


def test_a_section_hatches_what_the_plane_cuts(cabinet):
    whole = around([b.box for b in cabinet.boards])
    random = Random(5)
    for _ in range(20):
        at = random.randint(whole.low[0] + 1, whole.high[0] - 1)
        hatched = {s.name for s in cut_through(cabinet.boards, (), FROM_RIGHT, at) if s.hatch}
        assert hatched == {b.name for b in cabinet.boards if b.box.low[0] < at < b.box.high[0]}


def test_the_widths_under_the_front_add_up_to_the_whole(cabinet):
    """Read back as text, as a reader of the drawing would add them; rests under 0.002 in or 0.05 mm are left out."""
    least = INCH // 500 if cabinet.style.unit == "in" else MM // 20
    for fronts in (True, False):
        scene = front_elevation(cabinet, cabinet.style, fronts)
        chains = [item for item in scene.items if isinstance(item, Chain) and item.side == "below"]
        assert chains
        for chain in chains:
            texts = [t.replace("\n", f" {cabinet.style.unit} ").replace(")", f" {cabinet.style.unit})")
                     for t in chain.texts]
            total = sum(read_length(t, unit=cabinet.style.unit) for t in texts)
            assert abs(total - (chain.at[-1] - chain.at[0])) < least * len(texts)


def test_no_view_has_text_on_text_or_off_the_page(cabinet):
    for scene in views(cabinet):
        svg = draw(scene)
        assert overlaps(svg) == [], scene.title
        assert outside(svg) == [], scene.title
        assert scene.alt.startswith((cabinet.name, "Section"))


def test_no_board_drawing_has_text_on_text_or_off_the_page(cabinet):
    for board in cabinet.boards:
        for face in worked_faces(board, cabinet):
            scene = board_drawing(board, cabinet, cabinet.style, face)
            assert overlaps(draw(scene)) == [], scene.title
            assert outside(draw(scene)) == [], scene.title


def test_a_board_is_turned_but_never_mirrored(cabinet):
    """Right on the page times up on the page must point out of the face, toward the reader."""
    for board in cabinet.boards:
        for name in faces(board):
            edges = Face(board, name).edges
            (a, b, c), (d, e, f) = TOWARD[edges["right"]], TOWARD[edges["above"]]
            assert (b * f - c * e, c * d - a * f, a * e - b * d) == TOWARD[name], board.name


def test_a_board_that_stands_on_edge_is_drawn_upright(cabinet):
    """Box fronts and box backs lie the same way on the paper, whichever face is shown."""
    upright = [b for b in cabinet.boards if b.placement.own_axis(2) == 1]
    assert upright
    for board in upright:
        for name in faces(board):
            assert Face(board, name).edges["above"] == "top", board.name


def test_distances_begin_at_the_datum_wherever_it_lies_on_the_page(cabinet):
    """The place on the page of each distance along, against the cut's own place in the cabinet."""
    turned = 0
    for board in cabinet.boards:
        for name in worked_faces(board, cabinet):
            face = Face(board, name)
            turned += not face.datum_left
            low = {"left": -1, "bottom": -1, "front": -1}
            assert face.datum_left == (face.edges["left"] in low)
            scene = board_drawing(board, cabinet, cabinet.style, name)
            for item in (i for i in scene.items if isinstance(i, Running) and i.side == "below"):
                assert item.datum == (0 if face.datum_left else board.length)
                assert all(0 < at < board.length for at in item.at)
    assert turned or not any(b.role == "box front" for b in cabinet.boards)


def test_leaders_of_sections_do_not_cross(cabinet, monkeypatch):
    drawn = []
    real = Lanes.leaders

    def spied(self, side, points, items, asks):
        before = len(self.strokes)
        real(self, side, points, items, asks)
        drawn.append([tuple(map(float, re.findall(r"-?[\d.]+", s))) for s in self.strokes[before:]])

    monkeypatch.setattr(Lanes, "leaders", spied)
    for scene in (section_plan(cabinet, cabinet.style), section_side(cabinet, cabinet.style, 1)):
        draw(scene)
    assert drawn
    for strokes in drawn:
        assert [p for p in combinations([((a, b), (c, d)) for a, b, c, d in strokes], 2) if cross(*p)] == []


def test_a_stopped_cut_says_how_long_it_is():
    case = bench_case()
    legend = " ".join(board_drawing(case.by_name["divider 1"], case, INCH_STYLE, "right").legend)
    assert re.search(r"stopped 1 from the front edge, [\d /]+ long", legend)


def test_slides_are_told_and_drawn_where_they_lie():
    case = solve(read_project(next(p for p in PROJECTS if p.stem == "under_bench_case")))
    side = case.by_name["left side"]
    scene = board_drawing(side, case, INCH_STYLE)
    assert sum(isinstance(i, Line) and i.kind == "centre" for i in scene.items) == 4 * 4
    slides = [h for h in case.hardware if h.what == "slide" and h.on == "left side"]
    words = next(line for line in scene.legend if line.startswith("Inside face: slides of bay 1 drawers 1 to 4"))
    for slide in slides:
        assert write_brief(slide.box.low[2] - side.box.low[2], INCH_STYLE).replace(" in", "").split(" (")[0] in words
    assert "set back 25/32" in words


def test_both_faces_of_an_upright_that_carries_slides_are_drawn_and_each_tells_its_own():
    case = solve(read_project(next(p for p in PROJECTS if p.stem == "under_bench_case")))
    divider = case.by_name["divider 1"]
    assert set(worked_faces(divider, case)) == {"left", "right"}
    assert worked_faces(case.by_name["divider 2"], case) == ("right",)
    assert set(worked_faces(case.by_name["bay 2 pull-out panel"], case)) == {"left", "right"}
    assert len(worked_faces(case.by_name["bay 1 drawer 1 left box side"], case)) == 1
    for name, held in (("left", 4), ("right", 2)):  # four drawers on one face, the two slides of the pull-out
        scene = board_drawing(divider, case, INCH_STYLE, name)
        assert sum(isinstance(i, Line) and i.kind == "centre" for i in scene.items) == 4 * held, name
    second = board_drawing(divider, case, INCH_STYLE, worked_faces(divider, case)[1], ("divider 2",))
    assert [line for line in second.legend if "slides of" in line] == [
        line for line in board_drawing(divider, case, INCH_STYLE, second_face(divider, case)).legend
        if "slides of" in line
    ]
    assert not any("divider 2, " in line for line in second.legend)


def second_face(board, case):
    return worked_faces(board, case)[1]


def test_cuts_on_an_edge_stand_on_one_drawing_alone(cabinet):
    for board in cabinet.boards:
        drawn = worked_faces(board, cabinet)
        texts = [" ".join(board_drawing(board, cabinet, cabinet.style, name).legend) for name in drawn]
        for cut in board.cuts:
            if not any(Face(board, name).opens_here(cut) for name in drawn):
                words = cut_words(board, cabinet, Writing(cabinet.style, units=False), [cut])[0]
                assert sum(words in text for text in texts) <= 1, board.name


def test_a_stopped_end_is_to_be_squared_and_a_through_one_is_not():
    case = bench_case()
    divider = board_drawing(case.by_name["divider 1"], case, INCH_STYLE, "right").legend
    stopped = [line for line in divider if "stopped" in line]
    assert stopped
    assert all("square the end that a router leaves round" in line for line in stopped)
    assert not any("square" in line for line in board_drawing(case.by_name["left side"], case, INCH_STYLE).legend)


def test_every_hole_says_how_wide_it_is_on_the_face_it_is_bored_from(cabinet):
    """A small hole is a dot on paper: the diameter stands in words beside its letter, and on one drawing alone."""
    page = Writing(cabinet.style, units=False)
    for board in cabinet.boards:
        drawn = worked_faces(board, cabinet)
        legends = {name: board_drawing(board, cabinet, cabinet.style, name).legend for name in drawn}
        for hole in (c for c in board.cuts if isinstance(c, Hole) and c.along == "w"):
            said = [
                name for name, lines in legends.items()
                if any(f"{hole.kind.removesuffix(' hole')} hole" in line
                       and f"{page.bored(hole.diameter)} across" in line for line in lines)
            ]
            from_face = looks(board, 2, -1 if hole.centre[2] == 0 else 1)
            assert said
            if len(drawn) == 2:
                assert from_face in said, board.name


def test_a_hole_bored_from_the_other_face_is_a_cross_and_no_square():
    case = solve(read_project(next(p for p in PROJECTS if p.stem == "under_bench_case")))
    panel = case.by_name["bay 2 pull-out panel"]
    pegs = [cut for cut in panel.cuts if cut.kind == "peg"]
    assert len(pegs) == 9
    for name in worked_faces(panel, case):
        scene = board_drawing(panel, case, INCH_STYLE, name)
        lines = [i for i in scene.items if isinstance(i, Line)]
        told = any(line.startswith("Crosses") for line in scene.legend)
        assert not [i for i in lines if i.kind == "hidden"]
        assert sum(i.kind == "thin" for i in lines) == (2 * len(pegs) if told else 0)
        assert told != Face(panel, name).opens_here(pegs[0])
        assert any(line.startswith("Without a letter") for line in scene.legend) != told


def test_every_kind_of_dashed_line_on_a_board_is_explained_there(cabinet):
    """A dado dashed between dashed and dotted slides is cut in the wrong face by whoever takes it for one of this."""
    for board in cabinet.boards:
        for name in worked_faces(board, cabinet):
            face, scene = Face(board, name), board_drawing(board, cabinet, cabinet.style, name)
            hidden = any(isinstance(line, Line) and line.kind == "hidden" for line in scene.items)
            level = [cut for cut in board.cuts if isinstance(cut, BoxCut)]
            within = [cut for cut in board.cuts if (cut.along != "w" if isinstance(cut, Hole) else
                                                    cut.low[2] > 0 and cut.high[2] < board.thickness)]
            open_on = [(cut.low[2] <= 0, cut.high[2] >= board.thickness) for cut in level]
            far = [one for one in open_on if one == (face.upper, not face.upper)]
            through = [one for one in open_on if all(one)]
            said = {"other face, not in this": bool(far), "from an end or an edge": bool(within),
                    "Dashed round white": bool(through)}
            for words, wanted in said.items():
                assert any(words in line for line in scene.legend) == wanted, (board.name, name, words)
            assert hidden == bool(far or within)
            assert any(isinstance(item, Shape) and item.fill == "air" for item in scene.items) == bool(through)


def test_cuts_lie_on_the_page_where_they_lie_in_the_cabinet(cabinet):
    """Distances from the named edges, against the world boxes of the same cuts."""
    for board in cabinet.boards:
        for name in faces(board):
            face = Face(board, name)
            left, below = TOWARD[face.edges["left"]], TOWARD[face.edges["below"]]
            for cut, world in zip([c for c in board.cuts if isinstance(c, BoxCut)], board.cut_boxes, strict=True):
                a, b, _, _ = face.extent(cut)
                assert a == _distance(board.box, world, left)
                assert b == _distance(board.box, world, below)


def _distance(whole: Box, part: Box, toward) -> int:
    axis = next(k for k in range(3) if toward[k])
    return part.low[axis] - whole.low[axis] if toward[axis] < 0 else whole.high[axis] - part.high[axis]


def test_the_left_side_is_drawn_and_said_as_it_was_built():
    case = bench_case()
    side = case.by_name["left side"]
    assert faces(side) == ("right",)
    scene = board_drawing(side, case, INCH_STYLE)
    legend = " ".join(scene.legend)
    assert "dado 0.703 wide, 1/4 deep for the bottom, in the inside face, 4 from the bottom end" in legend
    assert "9 screw holes 5/64 across, 1/2 deep for the slide, from the inside face, in a grid: " in legend
    runs = {item.side: item for item in scene.items if isinstance(item, Running)}
    assert {4 * INCH, 6 * INCH, 16 * INCH, 26 * INCH} <= set(runs["below"].at)
    assert board_drawing(case.by_name["divider 1"], case, INCH_STYLE, "right").title.endswith("(2 of 2)")
    assert any("stopped 1 from the front edge" in t
               for t in board_drawing(case.by_name["divider 1"], case, INCH_STYLE, "right").legend)


def test_what_cannot_be_drawn_is_refused_in_one_sentence():
    case = bench_case()
    with pytest.raises(ValueError, match="no bay 9"):
        section_side(case, INCH_STYLE, 9)
    with pytest.raises(ValueError, match="no top face"):
        board_drawing(case.by_name["left side"], case, INCH_STYLE, "top")


def test_a_clash_is_cross_hatched_and_told():
    case = bench_case()
    scene = front_elevation(case, INCH_STYLE)
    box = Box((0, 0, 0), (INCH, INCH, INCH))
    marked = mark(scene, [box], FRONT, "left side and bottom")
    added = [i for i in marked.items if isinstance(i, Shape) and i.fill == "clash"]
    assert [(s.rects, s.hatch) for s in added] == [(((0, 0, INCH, INCH),), "x")]
    assert "left side and bottom" in marked.alt
    assert mark(scene, [], FRONT) == scene


@pytest.mark.parametrize("seed", range(12))
def test_random_projects_have_no_text_on_text_or_off_the_page(seed):
    drawn = solve(project(seed))
    scenes = list(views(drawn))
    scenes += [board_drawing(b, drawn, drawn.style, face) for b in drawn.boards for face in worked_faces(b, drawn)]
    for scene in scenes:
        svg = draw(scene)
        assert overlaps(svg) == [], scene.title
        assert outside(svg) == [], scene.title
