"""Leaders in every drawing of the pages, ordinary and large: none crosses another, and each begins on what it names.

Common practice of drawing, no source. The pages are run as a learner runs them, whatever is drawn is looked at.
"""

import ast
from dataclasses import dataclass
from itertools import combinations
from pathlib import Path

import nbformat
import pytest
import shapely

from shoplib.draw import pen
from shoplib.draw.lanes import Lanes
from shoplib.draw.scene import Chain, Disc, Label, Leader, Line, Region, Scene, Shape, Slanted
from shoplib.draw.uncrossed import cross
from shoplib.lessons.choice import save_unit
from shoplib.lessons.large_type import save_large
from shoplib.measure import MM
from tests.pages import JOINTS

PAGES = sorted(path.name for path in Path("notebooks").glob("[0g]*.ipynb"))
PAGES += [f"joints/{path.name}" for path in JOINTS]
NEAR = 2.0
"""How far from a line, in units of the page, a leader still points at it: the radius of its dot."""
OPEN = ("gap", "fit", "end gap", "reveal", "opening", "groove", "clearance hole", "pilot hole")
"""What is named where nothing is drawn: open room between boards, or the edge of it."""


@dataclass(frozen=True)
class Led:
    """One leader as drawn: its text, where it points in the scene (ticks), and its stroke on the page."""

    text: str
    at: tuple[float, float]
    stroke: tuple


def run(name: str) -> None:
    """The code of a page, and what its cells show."""
    space: dict = {}
    for cell in nbformat.read(Path("notebooks") / name, as_version=4).cells:
        if cell.cell_type == "code":
            *body, last = ast.parse(cell.source).body
            exec(compile(ast.Module(body, []), name, "exec"), space)
            if isinstance(last, ast.Expr):
                shown = eval(compile(ast.Expression(last.value), name, "eval"), space)
                getattr(shown, "_repr_html_", lambda: "")()
            else:
                exec(compile(ast.Module([last], []), name, "exec"), space)


@pytest.fixture
def drawn(monkeypatch):
    """Every page that the pen draws, as (scene, scale, leaders)."""
    found: list[tuple[Scene, float, list[Led]]] = []

    class Watched(Lanes):
        def leaders(self, side, points, items, asks):
            before = len(self.strokes)
            super().leaders(side, points, items, asks)
            scene, scale, led = found[-1]
            left, _, _, top = scene.bounds
            for text in self.strokes[before:]:
                a, b = (tuple(map(float, part.split())) for part in text[1:].split("L"))
                k = min(range(len(points)), key=lambda k: (abs(points[k][0] - a[0]) + abs(points[k][1] - a[1]), k))
                led.append(Led(items[k].text, (left + a[0] / scale, top - a[1] / scale), (a, b)))

    whole = pen._page

    def page(scene, scale, *rest, **more):
        found.append((scene, scale, []))
        return whole(scene, scale, *rest, **more)

    monkeypatch.setattr(pen, "Lanes", Watched)
    monkeypatch.setattr(pen, "_page", page)
    return found


def crossing(led: list[Led]) -> list[tuple[str, str]]:
    return [(one.text, two.text) for one, two in combinations(led, 2) if cross(one.stroke, two.stroke)]


def astray(scene: Scene, scale: float, led: list[Led]) -> list[str]:
    """Leaders that do not begin on what they name, or, where nothing has that name, on nothing that is drawn."""
    lost = []
    for each in led:
        named = [item for item in scene.items if isinstance(item, Shape | Slanted | Disc) and item.name
                 and (item.name == each.text or item.name.endswith(f" {each.text}"))]
        things = named or [item for item in scene.items if not isinstance(item, Leader | Label | Chain)]
        may_be_open = not named and each.text.startswith(OPEN)
        if not may_be_open and not any(_on(item, each.at, NEAR / scale) for item in things):
            lost.append(each.text)
    return lost


def _on(item, at, near) -> bool:
    x, y = at
    if isinstance(item, Shape):
        return any(a - near <= x <= c + near and b - near <= y <= d + near for a, b, c, d in item.rects)
    if isinstance(item, Disc):
        return max(abs(x - item.centre[0]), abs(y - item.centre[1])) <= item.diameter / 2 + near
    if isinstance(item, Line):
        (a, b), (c, d) = item.start, item.end
        part = max(0.0, min(1.0, ((x - a) * (c - a) + (y - b) * (d - b)) / ((c - a) ** 2 + (d - b) ** 2 or 1)))
        return abs(x - a - part * (c - a)) <= near and abs(y - b - part * (d - b)) <= near
    if isinstance(item, Region):
        return shapely.Polygon(item.rings[0], item.rings[1:]).distance(shapely.Point(x, y)) <= near
    if isinstance(item, Slanted):
        xs, ys = zip(*item.corners, strict=True)
        turns = [(xs[k] - xs[k - 1]) * (y - ys[k - 1]) - (ys[k] - ys[k - 1]) * (x - xs[k - 1]) for k in range(len(xs))]
        edges = [Line(item.corners[k - 1], item.corners[k]) for k in range(len(xs))]
        return all(t >= 0 for t in turns) or all(t <= 0 for t in turns) or any(_on(e, at, near) for e in edges)
    return False


@pytest.mark.parametrize("large", [False, True], ids=["ordinary", "large"])
@pytest.mark.parametrize("name", PAGES)
def test_no_two_leaders_cross_and_each_begins_on_what_it_names(own_folder, drawn, unit, large, name, quick):
    no_leaders = name.startswith(("00", "08"))  # the parts of a sheet are named where they lie
    if no_leaders and quick and (unit, large) != ("mm", True):
        pytest.skip("it has no leaders in either unit and type: looked at once, and in all with --long")
    save_unit(unit)
    save_large(large)
    run(name)
    assert drawn and any(led for _, _, led in drawn) != no_leaders
    for scene, scale, led in drawn:
        assert crossing(led) == [], scene.title
        assert astray(scene, scale, led) == [], scene.title


def test_the_checks_see_a_crossing_and_a_leader_that_points_at_nothing(drawn):
    board, wide = Shape(((0, 0, 40 * MM, 20 * MM),), "case", "shelf"), 100 * MM
    scene = Scene("t", "n", "a", (0, 0, wide, wide), (board, Leader((60 * MM, 50 * MM), "right", "shelf")))
    pen.draw(scene)
    (one,) = drawn[-1][2]
    assert astray(scene, drawn[-1][1], [one]) == ["shelf"]
    (x, y), end = one.stroke
    other = Led("other", one.at, ((x + 10, y - 50), (x + 10, y + 50)))
    assert crossing([one, other]) == [("shelf", "other")] and end[0] > x + 10


def test_a_name_that_does_not_fit_goes_to_the_nearest_side(drawn):
    """Two narrow sides with a wide shelf between: each name stands on its own side, and no leader crosses the shelf."""
    names = ("left side of the case", "right side of the case")
    rects = ((0, 0, 8 * MM, 30 * MM), (192 * MM, 0, 200 * MM, 30 * MM))
    scene = Scene("t", "n", "a", (0, 0, 200 * MM, 30 * MM), tuple(
        item for name, rect in zip(names, rects, strict=True)
        for item in (Shape((rect,), "case", name), Label(rect, (name,)))
    ))
    pen.draw(scene, (400.0, 60.0))
    ends = {led.text: led.stroke[1][0] for led in drawn[-1][2]}
    assert ends[names[0]] < 0 and ends[names[1]] > 400
