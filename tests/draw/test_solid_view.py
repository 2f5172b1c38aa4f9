"""Solids in a parallel view: what is shown at a point is what a ray from the eye strikes first, and no more.

Rays and solids are those of `rays.py`, made with manifold3d apart from the drawing. What is asked of the labels is
common practice of drawing, no source.
"""

from functools import cache
from itertools import combinations, product
from pathlib import Path
from random import Random

import numpy as np
import pytest
import shapely

from shoplib.documents.project_file import read_project
from shoplib.draw.apart import apart
from shoplib.draw.come_together import ways_together
from shoplib.draw.lanes import Lanes
from shoplib.draw.pair_view import pair_view, telling
from shoplib.draw.parallel import DIRECTIONS, FRONT_RIGHT_ABOVE, Direction
from shoplib.draw.pen import draw
from shoplib.draw.scene import Leader, Line, Region
from shoplib.draw.solid_view import Part, solid_view
from shoplib.draw.solids import faces as faces_of
from shoplib.draw.solids import solid, world_faces
from shoplib.draw.uncrossed import cross
from shoplib.joints import JOINTS, joint
from shoplib.joints.bench_pair import stock_of
from shoplib.measure import INCH, MM
from shoplib.model.board import Board, BoxCut, Hole, PrismCut
from shoplib.model.cabinet import solve
from shoplib.model.placement import Placement, directions
from tests.draw.joints_by_hand import HAND_MADE
from tests.draw.rays import eye, first_hit, silhouette, wood
from tests.draw.test_pen import outside, overlaps

PROJECTS = sorted((Path(__file__).parents[2] / "data" / "projects").glob("*.toml"))
WAYS = list(product((True, False), repeat=3))
AT_HOME = Placement((0, 0, 0), ("+x", "+y", "+z"))
RIGHT_HANDED = []
for order in product("xyz", repeat=3):
    for signs in product("+-", repeat=3):
        axes = tuple(sign + axis for sign, axis in zip(signs, order, strict=True))
        try:
            directions(axes)
            RIGHT_HANDED.append(axes)
        except ValueError:
            continue


def polygon(region):
    return shapely.Polygon(region.rings[0], region.rings[1:])


def random_board(random, name):
    """Up to 300 mm long, with dadoes, slanting cuts and holes, anywhere near the middle."""
    size = [random.randint(60, 300) * MM, random.randint(50, 200) * MM, random.randint(12, 60) * MM]
    cuts = []
    for _ in range(random.randint(0, 4)):
        low = [random.choice([0, random.randint(0, s * 3 // 4)]) for s in size]
        high = [random.choice([s, random.randint(a + 1, s)]) for a, s in zip(low, size, strict=True)]
        k = random.randrange(3)
        low[k], high[k] = max(low[k], size[k] // 3), max(high[k], size[k] // 3 + MM)
        cuts.append(BoxCut("notch", tuple(low), tuple(high)))
    if random.random() < 0.7:
        along = random.randrange(3)
        a, b = size[(along + 1) % 3], size[(along + 2) % 3]
        outline = random.choice([
            ((0, 0), (a // 3, 0), (0, b // 2)), ((a, b // 4), (a, b * 3 // 4), (a * 2 // 3, b * 2 // 3),
                                                 (a * 2 // 3, b // 3)),
            ((a // 4, b), (a // 2, b), (a // 3, b // 2)),
        ])
        start = random.choice([0, size[along] // 4])
        cuts.append(PrismCut("bevel", outline, "uvw"[along], start, size[along] * 3 // 4))
    for _ in range(random.randint(0, 2)):
        along = random.randrange(3)
        centre = [random.randint(s // 4, s * 3 // 4) for s in size]
        centre[along] = random.choice([0, size[along]])
        across = min(size[(along + 1) % 3], size[(along + 2) % 3])
        cuts.append(Hole("hole", tuple(centre), "uvw"[along], across // 3, size[along] // random.randint(1, 3)))
    origin = tuple(random.randint(-150, 150) * MM for _ in range(3))
    return Board(name, "pair", 1, "sheet", *size, Placement(origin, random.choice(RIGHT_HANDED)), tuple(cuts))


def shown_at(regions, place):
    """The regions of a scene that cover a place, by a look at all of them."""
    point = shapely.Point(place)
    return [region for region, flat in regions if flat.contains(point)]


def wrong_points(boards, moved, way, count, seed, holes=True):
    """How many random points of the picture show another board, tone or grain than the ray strikes, and how many show
    a board at all."""
    camera = eye(*way)
    scene = solid_view(boards, "Solids", direction=Direction(*way), moved=moved)
    regions = [(item, polygon(item)) for item in scene.items if isinstance(item, Region)]
    solids = [(board.name, wood(board, moved.get(board.name, (0, 0, 0)), holes)) for board in boards]
    by_name = {board.name: board for board in boards}
    random, wrong, hits = Random(seed), [], 0
    left, bottom, right, top = scene.bounds
    for _ in range(count):
        place = random.randint(left, right), random.randint(bottom, top)
        found, hit = shown_at(regions, place), first_hit(solids, (place[0] / MM, place[1] / MM), camera)
        hits += hit is not None
        if [region.name for region in found] != ([hit[0]] if hit else []):
            wrong.append((place, [region.name for region in found], hit))
        elif hit and np.abs(hit[1]).max() > 0.999999:
            axis = int(np.abs(hit[1]).argmax())
            tone = ("dark", "half", "light")[axis if camera[0][2] > 0 else 2 - axis]
            board = by_name[hit[0]]
            dotted = board.grain == "length" and axis == directions(board.placement.axes)[0][0]
            if (found[0].fill.split()[-1], found[0].dotted) != (tone, dotted):
                wrong.append((place, found[0].fill, found[0].dotted, hit))
    return wrong, hits


@pytest.mark.parametrize("seed", range(24))
def test_a_ray_strikes_what_is_shown_of_random_pairs(seed):
    random = Random(seed)
    boards = [random_board(random, "one"), random_board(random, "other")]
    wrong, hits = wrong_points(boards, {}, WAYS[seed % 8], 600, seed)
    assert hits > 100
    assert wrong == []


@cache
def cabinet(path):
    return solve(read_project(path))


@pytest.mark.parametrize("drawn_apart", [False, True], ids=["together", "apart"])
@pytest.mark.parametrize(
    ("path", "way"), list(zip(PROJECTS, [WAYS[k] for k in (1, 7, 4, 3, 2)], strict=True)),
    ids=lambda value: getattr(value, "stem", ""),
)
def test_a_ray_strikes_what_is_shown_of_a_case(path, way, drawn_apart):
    boards = cabinet(path).boards
    wrong, hits = wrong_points(boards, apart(boards) if drawn_apart else {}, way, 600, 7)
    assert hits > 200
    assert wrong == []


@pytest.mark.parametrize("name", HAND_MADE)
@pytest.mark.parametrize("drawn_apart", [False, True], ids=["together", "apart"])
def test_a_ray_strikes_what_is_shown_of_a_joint(name, drawn_apart):
    boards, _, moved = HAND_MADE[name]()
    wrong, hits = wrong_points(boards, moved if drawn_apart else {}, (True, True, True), 600, 3)
    assert hits > 150
    assert wrong == []


@pytest.mark.parametrize("name", DIRECTIONS)
def test_the_faces_of_a_lone_box_have_the_areas_of_the_formula(name):
    # A face seen along parallel lines is as much smaller as the cosine of its turn. Of an eye turned by 3-4-5 and
    # raised by 8-15-17 these are 15/17 * 3/5, 15/17 * 4/5 and 8/17.
    size = 300 * MM, 200 * MM, 18 * MM
    scene = solid_view([Board("box", "case", 1, "sheet", *size, AT_HOME)], "A box", direction=DIRECTIONS[name])
    areas = sorted(polygon(item).area for item in scene.items if isinstance(item, Region))
    a, b, c = size
    closed = sorted([b * c * 15 / 17 * 3 / 5, a * c * 15 / 17 * 4 / 5, a * b * 8 / 17])
    assert areas == pytest.approx(closed, rel=1e-6)


@pytest.mark.parametrize("seed", range(40, 60))
def test_what_is_seen_of_a_lone_board_fills_its_silhouette(seed):
    board, way = random_board(Random(seed), "board"), WAYS[seed % 8]
    scene = solid_view([board], "A board", direction=Direction(*way))
    outline = silhouette(wood(board), eye(*way))
    seen = [polygon(item) for item in scene.items if isinstance(item, Region)]
    assert sum(flat.area for flat in seen) / MM**2 == pytest.approx(outline.area(), rel=1e-6)
    assert shapely.union_all(seen).area / MM**2 == pytest.approx(outline.area(), rel=1e-6)


@pytest.mark.parametrize("seed", range(60, 70))
def test_no_face_is_drawn_outside_the_silhouette_of_its_board(seed):
    random, way = Random(seed), WAYS[seed % 8]
    boards = [random_board(random, name) for name in ("one", "other", "third")]
    scene = solid_view(boards, "Boards", direction=Direction(*way))
    for board in boards:
        # Rings of the solid's outline; those of holes run the other way about, and so are taken out again.
        outline = shapely.Polygon()
        for ring in silhouette(wood(board), eye(*way)).to_polygons():
            outline = outline.symmetric_difference(shapely.Polygon(np.asarray(ring) * MM))
        for item in scene.items:
            if isinstance(item, Region) and item.name == board.name:
                assert polygon(item).difference(outline).area < 1e-6 * outline.area


def test_volumes_are_those_of_the_formulas():
    a, b, c, d = 90 * MM, 60 * MM, 18 * MM, 6 * MM
    cases = [
        ((BoxCut("dado", (20 * MM, 0, c - d), (40 * MM, b, c)),), a * b * c - 20 * MM * b * d),
        ((PrismCut("tail", ((0, 0), (0, 20 * MM), (c, 15 * MM), (c, 5 * MM)), "w", 0, c),),
         a * b * c - (20 + 10) * MM * c // 2 * c),
        ((Hole("hole", (a // 2, b // 2, c), "w", 10 * MM, d),),
         a * b * c - 24 / 2 * np.sin(2 * np.pi / 24) * (5 * MM) ** 2 * d),
        # Two that overlap are taken out once.
        ((BoxCut("groove", (0, 0, c - d), (a, d, c)), BoxCut("notch", (0, 0, 0), (d, d, c))),
         a * b * c - a * d * d - d * d * (c - d)),
    ]
    for cuts, volume in cases:
        board = Board("board", "case", 1, "sheet", a, b, c, AT_HOME, cuts)
        assert solid(board).volume() == pytest.approx(float(volume), rel=1e-9)


@pytest.mark.parametrize("seed", [*range(100, 130), 1178, 1258])
def test_faces_close_round_the_wood(seed):
    # The last two boards have triangles whose corners lie on one line.
    board = random_board(Random(seed), "board")
    faces, made = faces_of(board), solid(board)
    assert np.linalg.norm(faces.normals, axis=1) == pytest.approx(1.0)
    rings = np.split(faces.corners, np.cumsum(faces.lengths)[:-1])
    areas = np.array([np.cross(ring, np.roll(ring, -1, axis=0)).sum(axis=0) / 2 for ring in rings])
    outward = faces.normals[faces.of_face]
    assert (areas * outward).sum() == pytest.approx(made.surface_area(), rel=1e-9)
    assert np.abs(areas.sum(axis=0)).max() < 1e-9 * made.surface_area()
    volume = sum((ring[0] @ way) * (area @ way) for ring, way, area in zip(rings, outward, areas, strict=True)) / 3
    assert volume == pytest.approx(made.volume(), rel=1e-9)
    assert made.volume() / MM**3 == pytest.approx(wood(board).volume(), rel=1e-9)


@pytest.mark.parametrize("seed", [*range(24), 44])
def test_no_sliver_is_drawn(seed):
    # Where two edges meet in the picture, rounding leaves nothing; a hundredth of a millimetre is no part of a board.
    random = Random(seed)
    scene = solid_view([random_board(random, "one"), random_board(random, "other")], "Two boards")
    regions = [polygon(item) for item in scene.items if isinstance(item, Region)]
    assert [flat for flat in regions if flat.area < flat.length * MM / 1000] == []
    for flat in regions:
        # Closing what is narrower than that shortens no outline.
        closed = flat.buffer(MM / 200, join_style="mitre").buffer(-MM / 200, join_style="mitre")
        assert flat.length - closed.length < MM / 2


def test_a_face_is_whole_and_has_no_edge_within():
    # Through dado: two ends, two U-shaped edges, the bottom, the top in two, two walls and the floor.
    board = Board("side", "case", 1, "sheet", 90 * MM, 60 * MM, 18 * MM, AT_HOME,
                  (BoxCut("dado", (20 * MM, 0, 12 * MM), (40 * MM, 60 * MM, 18 * MM)),))
    faces = world_faces(board)
    assert len(faces) == 10
    assert len(faces.lengths) == 10
    # A hole through it: a ring in the top and one in the bottom, and a curve of 24 facets.
    bored = Board("side", "case", 1, "sheet", 90 * MM, 60 * MM, 18 * MM, AT_HOME,
                  (Hole("hole", (45 * MM, 30 * MM, 0), "w", 10 * MM, 18 * MM),))
    faces = world_faces(bored)
    assert (len(faces), len(faces.lengths)) == (6 + 24, 6 + 24 + 2)
    assert len(set(faces.curves[faces.curves >= 0])) == 1
    assert (faces.curves >= 0).sum() == 24


def test_a_bevel_is_no_curve():
    # 20 degrees from the face: little more than a facet of a hole bends, yet it keeps its edge.
    board = Board("lid", "case", 1, "sheet", 90 * MM, 60 * MM, 18 * MM, AT_HOME,
                  (PrismCut("bevel", ((60 * MM, 18 * MM), (30 * MM, 18 * MM), (60 * MM, 7 * MM)), "u", 0, 90 * MM),))
    assert (world_faces(board).curves == -1).all()


def test_a_face_that_a_hole_grazes_stays_flat():
    # The drill leaves a shallow trough: its outer facets bend from the face less than from one another.
    board = Board("side", "case", 1, "sheet", 90 * MM, 60 * MM, 18 * MM, AT_HOME,
                  (Hole("hole", (0, 30 * MM, 21 * MM), "u", 10 * MM, 50 * MM),))
    faces = world_faces(board)
    top = np.flatnonzero(np.abs(faces.normals - [0, 0, 1]).max(axis=1) < 1e-9)
    assert len(top) == 1
    assert faces.curves[top[0]] == -1
    assert (faces.curves >= 0).sum() >= 4


def scenes():
    for name, make in HAND_MADE.items():
        boards, parts, moved = make()
        for title, by in ((f"{name}, together", {}), (f"{name}, apart", moved)):
            yield pytest.param(solid_view(boards, title, moved=by, parts=parts), id=title)
    for kind, drawn_apart in product(JOINTS, (False, True)):
        pair = kind.build(stock_of(3 * INCH // 4))
        for name in ("from the front, right, above", "from the back, left, below"):
            title = f"{kind.title}, {name}{', apart' if drawn_apart else ''}"
            yield pytest.param(pair_view(pair, title, drawn_apart, DIRECTIONS[name]), id=title)


@pytest.mark.parametrize("scene", list(scenes()))
def test_words_stay_on_the_page_and_off_one_another(scene, monkeypatch):
    strokes = []

    class Watched(Lanes):
        def leaders(self, side, points, items, asks):
            before = len(self.strokes)
            super().leaders(side, points, items, asks)
            strokes.extend(self.strokes[before:])

    monkeypatch.setattr("shoplib.draw.pen.Lanes", Watched)
    svg = draw(scene, (500, 400))
    assert outside(svg) == []
    assert overlaps(svg) == []
    named = [item.text for item in scene.items if isinstance(item, Leader)]
    assert len(strokes) == len(named) > 0
    lines = [[tuple(map(float, end.split())) for end in stroke[1:].split("L")] for stroke in strokes]
    assert [pair for pair in combinations(lines, 2) if cross(*pair)] == []
    assert scene.title in svg
    assert all(text in scene.alt for text in named)


@pytest.mark.parametrize("scene", list(scenes()))
def test_the_name_of_a_board_points_at_what_is_seen_of_it(scene):
    regions = [(item, polygon(item)) for item in scene.items if isinstance(item, Region)]
    boards = {region.name for region, _ in regions}
    pointed = {item.text: item.point for item in scene.items if isinstance(item, Leader)}
    for name in boards:
        assert [region.name for region in shown_at(regions, pointed[name])] == [name]


def test_a_part_that_cannot_be_seen_is_told_and_not_pointed_at():
    boards, _, moved = HAND_MADE["dado"]()
    side, shelf = boards
    parts = [Part("dado", "side", ((side.box.high[0] + shelf.box.low[0]) // 2, 0, shelf.box.high[2])),
             Part("floor", "side", (shelf.box.low[0], 3 * INCH, (shelf.box.low[2] + shelf.box.high[2]) // 2))]
    together = solid_view(boards, "Dado", parts=parts)
    assert "Out of sight from here: floor." in together.legend
    assert "floor" not in [item.text for item in together.items if isinstance(item, Leader)]
    assert "Out of sight from here: floor." in together.alt
    opened = solid_view(boards, "Dado, apart", parts=parts, moved=moved)
    assert not any("Out of sight" in line for line in opened.legend)
    assert "floor" in [item.text for item in opened.items if isinstance(item, Leader)]
    # The part goes with its board.
    shifted = solid_view(boards, "Dado", parts=parts, moved={"side": (-50 * MM, 0, 0)})
    at = {item.text: item.point for item in shifted.items if isinstance(item, Leader)}["floor"]
    x, y, z = parts[1].point
    assert at == FRONT_RIGHT_ABOVE.place((x - 50 * MM, y, z))


def test_a_point_behind_the_edge_between_two_faces_is_out_of_sight():
    # From the front and right an inch behind the front at the left comes to lie under an arris 3/4 in to the right.
    plank = Board("side", "case", 1, "sheet", 3 * INCH // 4, 6 * INCH, 6 * INCH, AT_HOME)
    scene = solid_view([plank], "A side", parts=[Part("hole", "side", (0, INCH, INCH))])
    assert "Out of sight from here: hole." in scene.legend


@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_names_of_boards_and_parts_do_not_point_at_one_place(kind):
    pair = kind.build(stock_of(3 * INCH // 4))
    for drawn_apart in (False, True):
        scene = pair_view(pair, kind.title, drawn_apart, telling(pair, drawn_apart))
        leaders = [item for item in scene.items if isinstance(item, Leader)]
        points = {item.text: item.point for item in leaders}
        assert len(points) == len(leaders)
        far = (scene.size[0] + scene.size[1]) // 200
        for (a, p), (b, q) in combinations(points.items(), 2):
            if a in pair.by_name or b in pair.by_name:
                assert abs(p[0] - q[0]) + abs(p[1] - q[1]) > far, (a, b)


@pytest.mark.parametrize("kind", JOINTS, ids=lambda kind: kind.name)
def test_the_telling_direction_shows_as_many_parts_as_any(kind):
    pair = kind.build(stock_of(3 * INCH // 4))

    def named(direction):
        items = pair_view(pair, kind.title, True, direction).items
        return len([item for item in items if isinstance(item, Leader) and item.text in pair.named])

    assert named(telling(pair)) == max(named(direction) for direction in DIRECTIONS.values()) > 0


@pytest.mark.parametrize("name", ["dado", "groove", "tongue", "drawer lock", "finger"])
def test_joints_of_cases_and_drawers_show_every_part_from_the_front_and_above(name):
    """As boards lie on a bench: nobody looks at a drawer from below to learn how it is joined."""
    pair = joint(name).build(stock_of(3 * INCH // 4))
    direction = telling(pair)
    assert direction.front and direction.above
    assert "Out of sight" not in " ".join(pair_view(pair, name, True, direction).legend)


@pytest.mark.parametrize("name", HAND_MADE)
def test_the_ways_together_stop_where_wood_stands_before_them(name):
    boards, _, moved = HAND_MADE[name]()
    scene = solid_view(boards, name, moved=moved)
    lines = [item for item in scene.items if isinstance(item, Line)]
    assert lines
    camera = eye()
    solids = [wood(board, moved.get(board.name, (0, 0, 0))) for board in boards]
    checked = {True: 0, False: 0}
    for way in ways_together(boards, moved):
        for part in np.linspace(0.013, 0.987, 60):
            point = (np.array(way[0]) * (1 - part) + np.array(way[1]) * part) / MM
            # A hair toward the eye, so that wood that the line touches does not count.
            start = point + camera[0] * 0.05
            free = not any(one.ray_cast(tuple(start), tuple(start + camera[0] * 5000)) for one in solids)
            flat = shapely.Point((camera[1] @ point) * MM, (camera[2] @ point) * MM)
            drawn = any(shapely.LineString([line.start, line.end]).distance(flat) < 0.02 * MM for line in lines)
            near = any(one.ray_cast(tuple(start + d), tuple(start + d + camera[0] * 5000)) for one in solids
                       for d in np.vstack([np.eye(3), -np.eye(3)]) * 0.3)
            if free == near:  # within a hair of an edge, or on a face: either may be right
                continue
            checked[free] += 1
            assert drawn == free, (way, part)
    assert checked[True] > 20


def test_the_ways_begin_at_the_wood_that_enters():
    # A tenon of a third, an inch from either edge of its rail: its four corners go to the bottom of the mortise.
    stile = Board("stile", "pair", 1, "sheet", 9 * INCH, 3 * INCH, INCH, Placement((0, 0, 0), ("+z", "+x", "+y")))
    whole, third = (4 * INCH, INCH), INCH // 3
    cheeks = [BoxCut("cheek", (0, 0, 0), (2 * INCH, whole[0], third)),
              BoxCut("cheek", (0, 0, INCH - third), (2 * INCH, whole[0], INCH)),
              BoxCut("edge", (0, 0, 0), (2 * INCH, INCH, INCH)), BoxCut("edge", (0, 3 * INCH, 0), (2 * INCH, *whole))]
    rail = Board("rail", "pair", 1, "sheet", 8 * INCH, *whole, Placement((INCH, INCH, INCH), ("+x", "+z", "-y")),
                 tuple(cheeks))
    ways = ways_together([stile, rail], {"rail": (5 * INCH, 0, 0)})
    assert sorted(way[1] for way in ways) == sorted(product((INCH,), (third, INCH - third), (2 * INCH, 4 * INCH)))
    assert all(start == (x + 5 * INCH, y, z) for start, (x, y, z) in ways)


@pytest.mark.parametrize("path", PROJECTS, ids=lambda path: path.stem)
def test_boards_drawn_apart_do_not_run_into_one_another(path):
    boards = cabinet(path).boards
    moved = apart(boards)
    placed = [(board.name, board.box.moved(moved[board.name])) for board in boards]
    assert [(a, b) for (a, p), (b, q) in combinations(placed, 2) if p.overlaps(q)] == []


def test_dots_lie_in_the_figure_and_lines_are_dashed():
    scene = solid_view(HAND_MADE["dado"]()[0], "Dado", moved=HAND_MADE["dado"]()[2])
    svg = draw(scene, (500, 400))
    assert svg.count("stroke-dasharray") >= 4
    assert "h0M" in svg
    assert [item.name for item in scene.items if isinstance(item, Region) and item.dotted]
    plain = Board("panel", "case", 1, "sheet", 90 * MM, 60 * MM, 18 * MM, AT_HOME, grain="none")
    bare = solid_view([plain], "No grain")
    assert not any(item.dotted for item in bare.items if isinstance(item, Region))
    assert bare.legend == ()
