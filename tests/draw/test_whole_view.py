"""A whole cabinet, closed and drawn apart: what is seen is what a ray strikes first, and every board has its name.

Rays and solids are those of `rays.py`, made with manifold3d apart from the drawing. What is asked of names and leaders
is common practice of drawing, no source.
"""

import re
from functools import cache
from itertools import combinations
from pathlib import Path
from random import Random

import numpy as np
import pytest
import shapely

from shoplib.documents.project_file import read_project
from shoplib.draw.apart import apart
from shoplib.draw.lanes import Lanes
from shoplib.draw.pen import draw
from shoplib.draw.scene import Label, Leader, Region
from shoplib.draw.solid_view import END_GRAIN
from shoplib.draw.solids_named import _each_its_row, _Way
from shoplib.draw.uncrossed import cross
from shoplib.draw.whole_view import (
    SMALLEST,
    assembled_view,
    drawers_apart,
    drawers_stay_whole,
    exploded_view,
    whole_scenes,
)
from shoplib.measure import MM
from shoplib.model.cabinet import solve
from tests.draw.rays import eye, first_hit, wood
from tests.draw.test_pen import outside, overlaps, text_boxes
from tests.random_projects import project

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
NEAR = MM // 20
"""So near an edge either side of it may be right."""
OF_DRAWERS = re.compile(r"(?P<before>bay \d+ )?(?P<what>drawer|pull-out)s?(?: (?P<numbers>[\d., toand]+?))?"
                        r"(?: in bays? (?P<bays>[\d, toand]+?))?(?=,? (?:and )?(?:bay|drawer|pull)|$)")


@cache
def cabinet(path):
    return solve(read_project(path))


@cache
def scenes(path):
    return whole_scenes(cabinet(path))


@cache
def random_cabinet(seed):
    return solve(project(seed))


def polygons(scene):
    return [(item.name, shapely.Polygon(item.rings[0], item.rings[1:]))
            for item in scene.items if isinstance(item, Region)]


def text_of(item):
    return item.text if isinstance(item, Leader) else item.texts[-1]


def names_in(scene):
    """The names that stand in a scene; where numbers do, those that its list gives for them."""
    found = [text_of(item) for item in scene.items if isinstance(item, Leader | Label)]
    numbers = next((line.removesuffix(".") for line in scene.legend if line.startswith("1: ")), "")
    listed = dict(part.split(": ") for part in numbers.split("; ")) if numbers else {}
    assert not listed or sorted(listed) == sorted(found)
    return [listed.get(text, text) for text in found]


def shifts_of(case, number, scene):
    """The boards of a scene and how they were moved: the closed cabinet, the exploded view, or a drawer by itself."""
    if number == 0:
        return case.boards, {}
    if number == 1:
        return case.boards, apart(case.boards, drawers_stay_whole(case))
    boards = [board for board in case.boards if board.group == scene.title.removeprefix("Exploded view: ")]
    return boards, apart(boards)


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_a_ray_strikes_the_board_that_is_shown(path, count):
    case, camera, tries = cabinet(path), eye(), count(150, 600)
    for number, (stem, scene) in enumerate(scenes(path)):
        boards, moved = shifts_of(case, number, scene)
        solids = [(board.name, wood(board, moved.get(board.name, (0, 0, 0)))) for board in boards]
        regions = polygons(scene)
        areas = np.array([area for _, area in regions])
        edges = shapely.boundary(areas)
        random, wrong, hits, skipped = Random(f"{path.stem} {stem}"), [], 0, 0
        left, bottom, right, top = scene.bounds
        for _ in range(tries):
            place = random.randint(left, right), random.randint(bottom, top)
            point = shapely.Point(place)
            if shapely.dwithin(edges, point, NEAR).any():
                skipped += 1
                continue
            hit = first_hit(solids, (place[0] / MM, place[1] / MM), camera)
            shown = [regions[k][0] for k in np.flatnonzero(shapely.contains(areas, point))]
            hits += hit is not None
            if shown != ([hit[0]] if hit else []):
                wrong.append((place, shown, hit))
        assert wrong == [], stem
        assert hits > tries // 4
        assert skipped < tries // 50


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_every_board_has_its_name_once(path):
    every_board_once(cabinet(path), strict=True)


def test_every_board_of_random_projects_has_its_name_once(count):
    for seed in range(count(8, 200)):
        every_board_once(random_cabinet(seed), strict=False)


def every_board_once(case, strict):
    """In the exploded view, or where drawers stay whole there, in the picture of one of their build."""
    scene = exploded_view(case)
    named = names_in(scene)
    whole = drawers_stay_whole(case)
    wanted = [board.group if whole and board.group != "case" else board.name for board in case.boards]
    hidden = [line for line in scene.legend if line.startswith("Out of sight")]
    if strict:
        assert hidden == []
    if hidden:  # told in words, which the alternative text repeats
        assert hidden[0] in scene.alt
        assert set(named) < set(wanted)
    else:
        assert sorted(named) == sorted(set(wanted))
    assert len(named) == len(set(named))
    apart_by_name = dict(drawers_apart(case))
    if not whole:
        assert apart_by_name == {}
        return
    told = []
    for name, picture in apart_by_name.items():
        mine = [name, *(group for line in picture.legend if line.startswith("Made of the same boards")
                        for group in groups_told(line.partition(": ")[2].removesuffix(".")))]
        told += mine
        for group in mine:
            parts = [board.name.removeprefix(f"{group} ") for board in case.boards if board.group == group]
            out = [line for line in picture.legend if line.startswith("Out of sight")]
            assert sorted(parts) == sorted(names_in(picture)) or out
            assert not out or not strict
    assert sorted(told) == sorted({board.group for board in case.boards} - {"case"})


def groups_told(text):
    """The drawers that a phrase such as `bay 1 drawers 2 to 4 and drawers 1 and 2 in bays 3 and 4` stands for."""
    found = []
    for match in OF_DRAWERS.finditer(text):
        numbers, bays = (told_numbers(match[part]) for part in ("numbers", "bays"))
        befores = [match["before"]] if match["before"] else [f"bay {bay} " for bay in bays]
        found += [f"{before}{match['what']}{number and f' {number}'}" for before in befores for number in numbers]
    return found


def told_numbers(text):
    if not text:
        return [""]
    found = []
    for part in re.split(r", | and ", text):
        first, _, last = part.partition(" to ")
        found += [first] if not last else [str(number) for number in range(int(first), int(last) + 1)]
    return found


def test_the_phrases_of_drawers_are_read_back():
    assert groups_told("bay 1 drawers 2 to 4 and bay 3 drawers 1 and 2") == [
        "bay 1 drawer 2", "bay 1 drawer 3", "bay 1 drawer 4", "bay 3 drawer 1", "bay 3 drawer 2"]
    assert groups_told("drawers 1 and 2 in bays 1 and 3, and bay 2 pull-out") == [
        "bay 1 drawer 1", "bay 1 drawer 2", "bay 3 drawer 1", "bay 3 drawer 2", "bay 2 pull-out"]


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_a_name_stands_on_its_board_or_its_leader_begins_there(path):
    for number, (stem, scene) in enumerate(scenes(path)):
        boards, _ = shifts_of(cabinet(path), number, scene)
        regions = polygons(scene)
        for item in scene.items:
            if isinstance(item, Leader | Label):
                mine = {board.name for board in boards if text_of(item) in (board.name, board.group)
                        or board.name == f"{board.group} {text_of(item)}"}
                own = shapely.union_all([area for name, area in regions if name in mine])
                place = shapely.Point(item.point) if isinstance(item, Leader) else shapely.box(*item.room)
                assert own.contains(place), (stem, item)


def leaders_drawn(monkeypatch):
    """The leaders of the page that was drawn last, each with its two ends."""
    drawn = []

    class Watched(Lanes):
        def __init__(self, *size):
            super().__init__(*size)
            drawn.clear()

        def leaders(self, side, points, items, asks):
            before = len(self.strokes)
            super().leaders(side, points, items, asks)
            drawn.extend([tuple(map(float, end.split())) for end in stroke[1:].split("L")]
                         for stroke in self.strokes[before:])

    monkeypatch.setattr("shoplib.draw.pen.Lanes", Watched)
    return drawn


strokes = pytest.fixture(leaders_drawn)


def clear(svg, leaders, least=2.0):
    """Nothing lies on anything else: texts, leaders, and texts and leaders; gives what does.

    Between two leaders there are `least` units of the page.
    """
    found = [*outside(svg), *overlaps(svg)]
    lines = [shapely.LineString(ends) for ends in leaders]
    found += [pair for pair in combinations(leaders, 2) if cross(*pair)]
    found += [(a, b) for a, b in combinations(lines, 2) if a.distance(b) < least]
    found += [(text, line) for text, box in text_boxes(svg) for line in lines if line.intersects(shapely.box(*box))]
    return found


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_on_the_screen_no_word_and_no_leader_lies_on_another(path, strokes):
    for stem, scene in scenes(path):
        svg = draw(scene)
        assert clear(svg, strokes) == [], stem
        assert all(a[1] == b[1] for a, b in strokes), "leaders run level"


def test_words_and_leaders_of_random_projects_keep_off_one_another(count, strokes):
    for seed in range(count(8, 200)):
        for stem, scene in whole_scenes(random_cabinet(seed)):
            svg = draw(scene)
            if any(item.plate for item in scene.items if isinstance(item, Label)):
                # Numbers on white, over leaders: there are more boards than rows beside the picture.
                assert outside(svg) == overlaps(svg) == [], (seed, stem)
                assert [pair for pair in combinations(strokes, 2) if cross(*pair)] == [], (seed, stem)
            else:
                assert clear(svg, strokes, 0.0) == [], (seed, stem)


def test_where_names_have_no_room_numbers_stand_for_them_in_a_list(strokes):
    case = random_cabinet(136)  # 109 boards, no fronts: shelves, runners and drawers are seen side by side
    scene = assembled_view(case)
    numbers = [text_of(item) for item in scene.items if isinstance(item, Label | Leader)]
    assert len(numbers) > 40 and all(number.isdecimal() for number in numbers)
    assert len(set(numbers)) == len(numbers)
    svg = draw(scene)
    assert outside(svg) == overlaps(svg) == []
    assert [pair for pair in combinations(strokes, 2) if cross(*pair)] == []
    names = names_in(scene)
    assert set(names) <= {board.name for board in case.boards} | {board.group for board in case.boards}
    assert all(f": {name}" in scene.alt for name in names)


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_the_pictures_say_in_words_what_they_show(path):
    case = cabinet(path)
    boxes = [board.box for board in case.boards]
    over_all = tuple(max(box.high[k] for box in boxes) - min(box.low[k] for box in boxes) for k in range(3))
    for stem, scene in scenes(path):
        assert all(name in scene.alt for name in names_in(scene))
        assert "seen from the front, the right and above" in scene.alt
        if stem in ("assembled-view", "exploded-view"):
            assert case.name in scene.title
            assert scene.note.startswith("All sizes in ")
            assert tuple(size for _, size in scene.told[0].sizes) == over_all
    hidden = {board.name for board in case.boards} - set(names_in(scenes(path)[0][1]))
    assert any(line.startswith("Out of sight: ") for line in scenes(path)[0][1].legend) == bool(hidden)


@pytest.mark.parametrize("whole", [False, True], ids=["drawers apart", "drawers whole"])
def test_boards_moved_apart_do_not_run_into_one_another(whole, count):
    cases = [*map(cabinet, PROJECTS), *map(random_cabinet, range(count(8, 200)))]
    for case in cases:
        moved = apart(case.boards, whole)
        placed = [(board, board.box.moved(moved[board.name])) for board in case.boards]
        assert [(a.name, b.name) for (a, p), (b, q) in combinations(placed, 2)
                if p.overlaps(q) and not a.box.overlaps(b.box)] == []
        if whole:
            shifts = {}
            for board in case.boards:
                if board.group != "case":
                    shifts.setdefault(board.group, set()).add(moved[board.name])
            assert all(len(several) == 1 for several in shifts.values())


def test_rows_are_given_at_the_least_cost():
    """Against all ways to give them (few names, few rows)."""
    random = Random(5)
    for _ in range(60):
        many = random.randint(1, 4)
        slots = [("left", k) for k in range(3)] + [("right", k) for k in range(2)]
        ways = {
            f"board {k}": {slot: _Way(slot, (0, 0), random.randint(1, 99)) for slot in slots if random.random() < 0.7}
            for k in range(many)
        }
        found = _each_its_row(ways)
        assert len({way.slot for way in found.values()}) == len(found)
        best = best_of(list(ways.values()), frozenset())
        assert (len(found), sum(way.cost for way in found.values())) == (best[0], -best[1])


def best_of(ways, taken):
    """As many rows as can be given, and the least cost of that, below 0."""
    if not ways:
        return 0, 0
    first, *rest = ways
    tries = [best_of(rest, taken)]
    for slot, way in first.items():
        if slot not in taken:
            many, cost = best_of(rest, taken | {slot})
            tries.append((many + 1, cost - way.cost))
    return max(tries)


DOTS = re.compile(r'<path d="([^"]*)" stroke="[^"]*" stroke-width="1.3" stroke-linecap="round"/>')


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_dots_are_told_where_they_are_seen_and_nowhere_else(path):
    """Common sense: what stands under a picture is true of it, even at the smallest size at which one is drawn."""
    for _, scene in scenes(path):
        dots = [face.count("M") for face in DOTS.findall(draw(scene, SMALLEST))]
        assert (max(dots, default=0) >= 3) == (END_GRAIN in scene.legend), (scene.title, dots)
        assert not dots or min(dots) > 0


def test_no_picture_tells_of_another_that_may_not_be_beside_it():
    """A lesson shows the whole without its drawers; common sense."""
    for path in PROJECTS:
        assert "picture of its own" not in " ".join(line for _, scene in scenes(path) for line in scene.legend)


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_no_leader_runs_across_a_runner_or_cleat_that_is_not_its_own(path):
    """What is so slender would be taken for what the leader names."""
    for stem, scene in scenes(path):
        slender = [(name, area) for name, area in polygons(scene) if name.endswith(("runner", "cleat"))]
        for leader in (item for item in scene.items if isinstance(item, Leader)):
            (x, y), edge = leader.point, scene.bounds[0 if leader.side == "left" else 2]
            line = shapely.LineString([(x, y), (edge, y)])
            across = {name for name, area in slender if area.intersects(line)}
            assert all(name.endswith(leader.text) or name.startswith(leader.text) for name in across), (stem, leader)
