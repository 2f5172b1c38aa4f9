"""What is measured from the paper: bars, register marks, holes, slides and marks, from the PDF's own content."""

import itertools
import json
import re
import xml.etree.ElementTree as ET
from functools import cache

import pytest

from shoplib.documents.paper import PAPERS
from shoplib.documents.plan_file import board_record
from shoplib.draw.face_on import FaceOn
from shoplib.measure import MM, read_length
from shoplib.model.board import Board, Hole
from shoplib.model.placement import Placement, directions
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.story_stick import story_stick_pages
from shoplib.printed.true_scale.template_pages import template_files, template_pages, templates
from shoplib.printed.typeset.blocks import WholePage
from tests.printed.cases import NAMES, planned, printed, solved
from tests.printed.glued import BAR, CENTRE, EDGE, MARK, RING, THIN, ZERO, glued, middle, near, pages_of

WITHIN = 0.01
SVG = "{http://www.w3.org/2000/svg}"


@cache
def both(name, paper):
    """The pages of templates and story stick, by what they belong to; every page with its alternative text."""
    cabinet, found = solved(name), {}
    for title, blocks in (("Templates", template_pages(cabinet, PAPERS[paper])),
                          ("Story stick", story_stick_pages(cabinet, PAPERS[paper]))):
        pages = pages_of(printed(title, blocks, paper))
        assert sum(map(len, pages.values())) == sum(isinstance(block, WholePage) for block in blocks)
        found |= pages
    return found


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", NAMES)
def test_the_bars_of_every_page_are_100_mm_both_ways(name, paper):
    """A tenth of what a steel rule shows (common practice, no source)."""
    pages = [page for several in both(name, paper).values() for page in several]
    assert len(pages) > 3
    for page in pages:
        bars = page.strokes(BAR)
        [level] = [line for line in bars if line[0][1] == pytest.approx(line[1][1], abs=1e-3)]
        [upright] = [line for line in bars if line[0][0] == pytest.approx(line[1][0], abs=1e-3)]
        assert len(bars) == 2
        assert abs(level[1][0] - level[0][0]) == pytest.approx(100, abs=0.005)
        assert abs(upright[1][1] - upright[0][1]) == pytest.approx(100, abs=0.005)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", NAMES)
def test_register_marks_and_all_that_two_pages_share_agree(name, paper):
    """Each page beside it and each below it, not only the one that it is laid to; what both show lies in one place."""
    seams = crossed = 0
    for pages in both(name, paper).values():
        moved = {(page.row, page.column): (page, by) for page, by in glued(pages).pages}
        for (row, column), (page, (dx, dy)) in moved.items():
            for place, its, own in (((row, column + 1), "right", "left"), ((row + 1, column), "below", "above")):
                if place not in moved:
                    continue
                seams += 1
                other, (ex, ey) = moved[place]
                there = tuple((x + dx, y + dy) for x, y in page.registers(its))
                here = tuple((x + ex, y + ey) for x, y in other.registers(own))
                assert len(there) == len(here) == 2
                assert near(there, here, WITHIN), (page.of, page.row, page.column)
                level = own == "above"
                for width in (EDGE, ZERO, MARK, RING, THIN, CENTRE):
                    lines = [tuple((x + ex, y + ey) for x, y in line) for line in other.strokes(width)]
                    for line in page.strokes(width):
                        if crosses(line, page.seam(its), level):
                            crossed += 1
                            at = tuple((x + dx, y + dy) for x, y in line)
                            assert any(len(at) == len(one) and near(at, one, WITHIN) for one in lines), at
    assert crossed
    assert seams or name == "wheel_wall_drawers"


def crosses(line, seam, level):
    """Whether a line goes over a seam between the ends of that."""
    along, across = (0, 1) if level else (1, 0)
    ends = sorted(spot[along] for spot in seam)
    places = [spot[across] for spot in line]
    return min(places) < seam[0][across] < max(places) and ends[0] < middle(line)[along] < ends[1]


def world(board, point):
    """A point of the board's own coordinates in the cabinet, from origin and axes alone."""
    found = list(board["origin"])
    for value, axis in zip(point, board["axes"], strict=True):
        found["xyz".index(axis[1])] += value if axis[0] == "+" else -value
    return found


def box(board):
    one, other = world(board, (0, 0, 0)), world(board, board["size"])
    return [min(pair) for pair in zip(one, other, strict=True)], [max(pair) for pair in zip(one, other, strict=True)]


def expected_holes(board, kind, from_front):
    """Distances from the reference edges: from the left end or the front edge, and from below."""
    low, _ = box(board)
    across = 1 if from_front else 0
    found = set()
    for cut in board["cuts"]:
        if cut["kind"] == kind:
            at = world(board, cut["centre"])
            found.add((at[across] - low[across], at[2] - low[2], cut["diameter"]))
    return sorted(found)


def from_edges(rings, edges):
    """The rings of a template as (from the upright heavy line, above the level one, diameter)."""
    [upright] = [line for line in edges if abs(line[0][0] - line[1][0]) < WITHIN]
    [level] = [line for line in edges if abs(line[0][1] - line[1][1]) < WITHIN]
    return sorted(
        (abs(middle(ring)[0] - upright[0][0]), middle(ring)[1] - level[0][1],
         max(x for x, _ in ring) - min(x for x, _ in ring)) for ring in rings
    )


def drawn_in(svg):
    """Rings, heavy lines and tinted bars of a template's SVG, in mm, y upward."""
    root = ET.fromstring(svg)
    rings, edges, bars = [], [], []
    for node in root.iter():
        width = float(node.get("stroke-width", 0))
        if node.tag == f"{SVG}circle":
            x, y, r = float(node.get("cx")), -float(node.get("cy")), float(node.get("r"))
            rings.append(((x - r, y - r), (x + r, y + r)))
        elif node.tag == f"{SVG}path" and width == EDGE:
            numbers = [float(number) for number in re.findall(r"-?[\d.]+", node.get("d"))]
            edges.append(tuple(zip(numbers[::2], (-y for y in numbers[1::2]), strict=True)))
        elif node.tag == f"{SVG}rect" and node.get("fill") == "#e4e6e9":
            x, y, w, h = (float(node.get(key)) for key in ("x", "y", "width", "height"))
            bars.append(((x, -y - h), (x + w, -y)))
    return rings, edges, bars


def lines_drawn(told):
    """How far from the upright and the level edge, in mm, the lines are that the template is laid on; 0 for an edge."""
    found = {"upright": [0], "level": [0]}
    for lengths, side in re.findall(r"Draw (?:a line|lines) (.+?) from the (\w+) (?:edge|end), parallel to it", told):
        way = "level" if side == "bottom" else "upright"
        found[way] = [read_length(length) / MM for length in re.split(r", | and ", lengths)]
    return found["upright"], found["level"]


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", NAMES)
def test_the_holes_of_the_templates_are_where_the_plan_has_them(name, paper):
    """In the PDF with its pages glued, and in the SVG, for every board that a template serves."""
    cabinet, plan = solved(name), planned(name)
    boards = {board["name"]: board for board in plan["boards"]}
    pages = both(name, paper)
    files = list(template_files(cabinet).values())
    served = {"holes for pulls": set(), "holes for pegs": set()}
    for number, template in enumerate(templates(cabinet), 1):
        if template.what not in served:
            continue
        kind = "pull" if template.what == "holes for pulls" else "peg"
        on_paper = glued(pages[f"Template {number}"])
        in_pdf = from_edges(on_paper.strokes(RING), on_paper.strokes(EDGE))
        in_svg = from_edges(*drawn_in(files[number - 1])[:2])
        first, second = lines_drawn(template.lines[0])
        for board in template.names:
            wanted = expected_holes(boards[board], kind, kind == "peg")
            assert wanted
            for found in (in_pdf, in_svg):
                laid = sorted((x + right, y + up, size) for x, y, size in found for right in first for up in second)
                assert laid == [pytest.approx(hole, abs=WITHIN) for hole in wanted]
        served[template.what].update(template.names)
    bored = {
        f"holes for {kind}s": {
            board["name"] for board in plan["boards"]
            if board["role"] == role and any(cut["kind"] == kind for cut in board["cuts"])
        } for kind, role in (("pull", "front"), ("peg", "panel"))
    }
    assert served == bored


def bottom_of(plan):
    return max(box(board)[1][2] for board in plan["boards"] if board["role"] == "bottom")


HEIGHTS = re.compile(r"Lower edges above the upper face of the bottom: (.+?)\.(?: |$)")


def heights_told(template):
    """Each height at which a template for slides is laid (mm), and for which drawers, as they are told."""
    told = HEIGHTS.search(template.alt)[1].split("; ")
    return [(read_length(at) / MM, whose) for at, _, whose in (one.partition(" for ") for one in told)]


@pytest.mark.parametrize("name", ["finger_jointed_drawers", "rolling_stand", "under_bench_case", "wheel_wall_drawers"])
def test_slides_lie_where_the_plan_has_them_and_a_template_is_turned_over_for_the_other_hand(name):
    """Standing before a face that looks right, the front of the cabinet is at the left hand. Of wood too."""
    cabinet, plan = solved(name), planned(name)
    boards = {board["name"]: board for board in plan["boards"]}
    floor, told = bottom_of(plan), set()
    wanted = fixed_to_uprights(plan, boards)
    for template, svg in zip(templates(cabinet), template_files(cabinet).values(), strict=True):
        if template.what != "slides and runners":
            continue
        _, edges, [(left, right)] = drawn_in(svg)
        [upright] = [line for line in edges if abs(line[0][0] - line[1][0]) < WITHIN]
        [level] = [line for line in edges if abs(line[0][1] - line[1][1]) < WITHIN]
        edge, front_left = upright[0][0], left[0] >= upright[0][0]
        assert front_left or right[0] <= edge
        assert left[1] == pytest.approx(level[0][1], abs=WITHIN)
        as_drawn, _, over = " ".join(template.lines).partition("TURN IT OVER")
        for number, (board, looks_right, low, high) in enumerate(wanted):
            back = low[1] - box(boards[board])[0][1]
            faces = ("inside face", "right face" if looks_right else "left face")
            drawn = any(f"{board} ({face}, " in as_drawn.partition(".")[0] for face in faces)
            turned = any(f"{board} ({face}, " in over.partition(": ")[0] for face in faces)
            fits = (right[1] - left[1] == pytest.approx(high[2] - low[2], abs=WITHIN)
                    and min(abs(left[0] - edge), abs(right[0] - edge)) == pytest.approx(back, abs=WITHIN)
                    and any(abs(height - low[2] + floor) < 0.05 for height, _ in heights_told(template)))
            if fits and (drawn if looks_right == front_left else turned):
                told.add(number)
    assert len(told) == len(wanted) > 0


def fixed_to_uprights(plan, boards):
    """Slides and runners of wood: on which upright, whether on the face that looks right, and their corners."""
    found = [(slide["on"], slide["low"], slide["high"]) for slide in plan["hardware"] if slide["what"] == "slide"]
    on = {joint["enters"]: joint["receives"] for joint in plan["joints"]}
    found += [(on[board["name"]], *box(board)) for board in plan["boards"] if board["role"] == "runner"]
    ends = {name: box(board) for name, board in boards.items()}
    return [(name, low[0] + high[0] > ends[name][0][0] + ends[name][1][0], low, high) for name, low, high in found]


RIGHT_HANDED = []
for axes in itertools.permutations("xyz"):
    for signs in itertools.product("+-", repeat=3):
        candidate = tuple(sign + axis for sign, axis in zip(signs, axes, strict=True))
        try:
            directions(candidate)
        except ValueError:
            continue
        RIGHT_HANDED.append(candidate)

SPOTS = ((40 * MM, 30 * MM), (190 * MM, 45 * MM), (70 * MM, 110 * MM))


def asymmetric(axes, upper):
    """A board with three pegs of three sizes, no two in line with an edge, on one of its faces."""
    size = (260 * MM, 150 * MM, 18 * MM)
    holes = tuple(
        Hole("peg", (u, v, size[2] if upper else 0), "w", (6 + k) * MM, 9 * MM) for k, (u, v) in enumerate(SPOTS)
    )
    board = Board("panel", "case", 1, "sheet", *size, Placement((0, 0, 0), axes), holes, role="panel")
    return board, Cabinet("Trial", (board,), {"sheet": Sheet("sheet", "plywood", 18 * MM)})


def turned_which_way(one, two, three):
    """1 where the three are met against the clock, -1 with it."""
    cross = (two[0] - one[0]) * (three[1] - one[1]) - (two[1] - one[1]) * (three[0] - one[0])
    return 1 if cross > 0 else -1


def seen_from_outside(record, upper):
    """The same of the holes in the cabinet, as one sees them who stands before the face: from plan.json's own axes."""
    one, two, three = (world(record, cut["centre"]) for cut in sorted(record["cuts"], key=lambda cut: cut["diameter"]))
    a, b = [q - p for p, q in zip(one, two, strict=True)], [q - p for p, q in zip(one, three, strict=True)]
    product = (a[1] * b[2] - a[2] * b[1], a[2] * b[0] - a[0] * b[2], a[0] * b[1] - a[1] * b[0])
    outward = [q - p for p, q in zip(world(record, (0, 0, 0)), world(record, (0, 0, 1 if upper else -1)), strict=True)]
    return 1 if sum(p * q for p, q in zip(product, outward, strict=True)) > 0 else -1


def check_not_mirrored(axes, upper):
    board, cabinet = asymmetric(axes, upper)
    record = json.loads(json.dumps(board_record(board, board.size)))
    [svg] = template_files(cabinet).values()
    rings = sorted(drawn_in(svg)[0], key=lambda ring: ring[1][0] - ring[0][0])
    spots = [middle(ring) for ring in rings]
    assert turned_which_way(*spots) == seen_from_outside(record, upper), (axes, upper)
    centres = [world(record, cut["centre"]) for cut in record["cuts"]]
    for k, m in ((0, 1), (0, 2), (1, 2)):
        apart = sum((p - q) ** 2 for p, q in zip(centres[k], centres[m], strict=True)) ** 0.5
        on_paper = ((spots[k][0] - spots[m][0]) ** 2 + (spots[k][1] - spots[m][1]) ** 2) ** 0.5
        assert on_paper == pytest.approx(apart, abs=WITHIN)


@pytest.mark.parametrize("upper", [True, False])
@pytest.mark.parametrize("axes", RIGHT_HANDED, ids="".join)
def test_a_template_is_never_mirrored_however_its_board_stands(axes, upper):
    assert len(RIGHT_HANDED) == 24
    check_not_mirrored(axes, upper)


def test_a_planted_mirror_is_seen(monkeypatch):
    right = FaceOn.right.fget
    monkeypatch.setattr(FaceOn, "right", property(lambda self: (right(self)[0], -right(self)[1])))
    for axes in RIGHT_HANDED:
        with pytest.raises(AssertionError):
            check_not_mirrored(axes, True)


@pytest.mark.parametrize("paper", PAPERS)
@pytest.mark.parametrize("name", NAMES)
def test_the_story_stick_has_the_slides_and_fronts_of_the_plan(name, paper):
    """Each bay's heights are the marks of one stick, from its line 0; every spacer of the plan is a block's size."""
    plan, sticks = planned(name), []
    for of, pages in both(name, paper).items():
        if of.startswith("Template"):
            continue
        drawing = glued(pages)
        frames = [line for line in drawing.strokes(THIN) if len(line) == 5]
        zeros, marks = drawing.strokes(ZERO), drawing.strokes(MARK)
        for frame in frames:
            within = [[line for line in lines if inside(line, frame)] for lines in (zeros, marks)]
            if not any(within):
                continue  # the map of the pages
            [zero] = within[0]
            sticks.append(sorted(round(line[0][1] - zero[0][1], 3) for line in within[1]))
    floor = bottom_of(plan)
    bays = {}
    for slide in plan["hardware"]:
        if slide["what"] == "slide":
            bays.setdefault(" ".join(slide["group"].split()[:2]), set()).add(slide["low"][2] - floor)
    for board in plan["boards"]:
        if board["role"] == "front":
            low, high = box(board)
            bays.setdefault(" ".join(board["name"].split()[:2]), set()).update((low[2] - floor, high[2] - floor))
    assert bays
    for bay, heights in bays.items():
        assert any(all(has(stick, height) for height in heights) for stick in sticks), bay
    if spacers := {spacer["height"] for spacer in plan["spacers"]}:
        assert any(all(has(stick, height) for height in spacers) for stick in sticks)
    left = min(box(board)[0][0] for board in plan["boards"] if board["role"] == "side")
    uprights = {end[0] - left for b in plan["boards"] if b["role"] in ("side", "divider") for end in box(b)}
    assert any(all(has(stick, place) for place in uprights if place) for stick in sticks)


def inside(line, frame):
    (x, y), across, up = line[0], [p[0] for p in frame], [p[1] for p in frame]
    return min(across) - WITHIN <= x < max(across) and min(up) < y < max(up)


def has(stick, place):
    return any(abs(mark - place) <= WITHIN for mark in stick)
