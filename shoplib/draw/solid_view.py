"""Boards as true solids, seen from far away along parallel lines, with what is hidden left out.

For two boards of a joint as well as for a whole case, together or drawn apart.
"""

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass

import numpy as np
import shapely

from shoplib.draw.come_together import in_sight, ways_together
from shoplib.draw.hidden import Turned, shown, whole_parts
from shoplib.draw.look import fill_of
from shoplib.draw.parallel import FRONT_RIGHT_ABOVE, PARTS, Direction
from shoplib.draw.scene import Leader, Line, Region, Scene
from shoplib.draw.solids import joined, turned, world_faces
from shoplib.model.board import Board
from shoplib.model.box import Point
from shoplib.words.naming import and_list

END_GRAIN = "Dots mark end grain: the grain runs from one dotted end of a board to the other."
TOGETHER = "Thin dashed lines: the ways along which the boards come together."

_FEW = 8
"""So many boards are called by name in the words for those who do not see them, and have their ways drawn."""
_ALONG_THE_GRAIN = 0.7
"""A face that looks along the grain rather than across it shows end grain."""
_APART = 0.06
"""The name of a board points so far from named parts, measured by the width and height of the face."""
_LIGHT = np.array([0.1, 0.5, 0.9])
"""How much of it falls on faces that look along x, y and z."""
_SHADES = ("light", "half", "dark", "deep")


@dataclass(frozen=True, slots=True)
class Part:
    """A part of a joint that is named: at `point` of the shop (ticks) on `board`, boards together."""

    text: str
    board: str
    point: Point


@dataclass(frozen=True, slots=True, eq=False)
class Visible:
    """One polygon that is seen (`PARTS` of a tick): whose it is, how much light falls on it (0 light,
    3 deep in a hole), and whether it shows end grain."""

    board: Board
    shade: int
    end_grain: bool
    area: shapely.Polygon


def solid_view(
    boards: Sequence[Board], title: str, note: str = "", alt: str = "", *, direction: Direction = FRONT_RIGHT_ABOVE,
    moved: Mapping[str, Point] | None = None, woods: Mapping[str, str] | None = None, parts: Iterable[Part] = (),
    said: Mapping[str, str] | None = None, ways: bool | None = None,
) -> Scene:
    """The boards as solids, seen from `direction`.

    `moved` shifts boards by name (ticks, world), to draw them apart; thin lines then show where they go, with
    `ways`, and where that is left out for a few boards. `woods` gives colours by the name of a board ("case", "box",
    "front", "back"), where it should not be the one of its role. `parts` are named with leaders, and so is each board
    that `said` has a text for; left out, every board is called by its name. What cannot be seen from there is told
    under the drawing.

    >>> from shoplib.model.placement import Placement
    >>> shelf = Board("shelf", "case", 1, "sheet", 900, 400, 20, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> scene = solid_view([shelf], "A shelf")
    >>> [(type(item).__name__, item.fill) for item in scene.items[:3]]
    [('Region', 'case half'), ('Region', 'case light'), ('Region', 'case dark')]
    >>> scene.alt
    'shelf, seen from the front, the right and above.'
    """
    moved, woods = moved or {}, woods or {}
    ways = len(boards) <= _FEW if ways is None else ways
    said = {board.name: board.name for board in boards} if said is None else said
    turned_faces, visible = see(boards, direction, moved)
    items: list[Region | Line | Leader] = [
        Region(_rings(seen.area), _fill(seen, woods), seen.board.name, seen.end_grain) for seen in visible
    ]
    legend = [END_GRAIN] if any(item.dotted for item in items) else []
    together = [
        Line(direction.place(a), direction.place(b), "together")
        for way in (ways_together(boards, moved) if moved and ways else ()) for a, b in in_sight(way, turned_faces)
    ]
    legend += [TOGETHER] if together else []
    points, out_of_sight = _named(said, parts, visible, moved, turned_faces)
    legend += [f"Out of sight from here: {and_list(out_of_sight)}."] if out_of_sight else []
    bounds = shapely.total_bounds(turned_faces.flat) / PARTS
    words = (f"{and_list([board.name for board in boards]) if len(boards) <= _FEW else f'{len(boards)} boards'}, "
             f"{'drawn apart, ' if any(any(by) for by in moved.values()) else ''}seen from {direction.words}.")
    return Scene(
        title, note or f"Seen from {direction.words}, along parallel lines.",
        " ".join([words, *([f"Named: {and_list([text for text, _ in points])}."] if parts else []),
                  *legend[bool(together) + bool(legend and legend[0] == END_GRAIN):], *([alt] if alt else [])]),
        tuple(round(x) for x in bounds.tolist()), (*items, *together, *_leaders(points, bounds)), tuple(legend),
    )


def see(boards: Sequence[Board], direction: Direction, moved: Mapping[str, Point]) -> tuple[Turned, list[Visible]]:
    """The faces turned to the eye, and what is seen of them, the facets of a curve as one."""
    several = [world_faces(board, moved.get(board.name, (0, 0, 0))) for board in boards]
    faces = joined(several)
    owners = np.repeat(np.arange(len(boards)), [len(each) for each in several])
    grain = np.array([turned(board)[:, 0] * (board.grain == "length") for board in boards])[owners]
    turned_faces, regions = shown(faces, direction)
    numbers = turned_faces.numbers
    curves, normals, hollow = faces.curves[numbers], faces.normals[numbers], np.zeros(len(numbers), bool)
    for curve in np.unique(curves[curves >= 0]).tolist():
        # All of a curve is shown by its first facet.
        facets = np.flatnonzero(curves == curve)
        hollow[facets[0]] = _hollow(turned_faces, facets)
        normals[facets[0]] = _mean_way(normals[facets], shapely.area(regions[facets]))
        regions[facets[0]] = shapely.union_all(regions[facets], grid_size=PARTS)
        regions[facets[1:]] = shapely.Polygon()
    areas, of_face = whole_parts(regions)
    shades = np.where(hollow, 3, _shades(normals, direction))
    ends = np.abs((normals * grain[numbers]).sum(axis=1)) > _ALONG_THE_GRAIN
    return turned_faces, [
        Visible(boards[owners[numbers[k]]], int(shades[k]), bool(ends[k]), area)
        for k, area in zip(of_face.tolist(), areas, strict=True)
    ]


def _mean_way(normals: np.ndarray, weights: np.ndarray) -> np.ndarray:
    mean = weights @ normals
    return mean / (np.linalg.norm(mean) or 1.0)


def _hollow(turned_faces: Turned, facets: np.ndarray) -> bool:
    """Whether the facets of a curve look at one another, as those of a hole do."""
    middles = (turned_faces.low[facets] + turned_faces.high[facets]) / 2
    return bool(((middles - middles.mean(axis=0)) * turned_faces.normals[facets]).sum() < 0)


def _shades(normals: np.ndarray, direction: Direction) -> np.ndarray:
    """Three tones: light falls from above, and from below one sees what is in the shade."""
    light = np.abs(normals) @ _LIGHT
    shades = (light < 0.7).astype(int) + (light < 0.3)
    return shades if direction.above else 2 - shades


def _rings(part: shapely.Polygon) -> tuple[tuple[tuple[int, int], ...], ...]:
    rings = (part.exterior, *part.interiors)
    return tuple(
        tuple(map(tuple, np.rint(shapely.get_coordinates(ring)[:-1] / PARTS).astype(np.int64).tolist()))
        for ring in rings
    )


def _fill(seen: Visible, woods: Mapping[str, str]) -> str:
    return f"{woods.get(seen.board.name) or fill_of(seen.board)} {_SHADES[seen.shade]}"


def _named(
    said: Mapping[str, str], parts: Iterable[Part], visible: list[Visible], moved: Mapping[str, Point],
    turned_faces: Turned,
) -> tuple[list[tuple[str, tuple[int, int]]], list[str]]:
    """Texts with the points of the picture that they belong to, and the texts of what cannot be seen."""
    told: list[tuple[str, tuple[int, int]]] = []
    out_of_sight: list[str] = []
    for part in parts:
        point = np.array(part.point) + moved.get(part.board, (0, 0, 0))
        if is_seen(point, turned_faces):
            told.append((part.text, turned_faces.direction.place(point)))
        else:
            out_of_sight.append(part.text)
    taken = shapely.MultiPoint(np.array([at for _, at in told], float).reshape(-1, 2) * PARTS)
    boards: list[tuple[str, tuple[int, int]]] = []
    hidden: list[str] = []
    for name, text in said.items():
        pieces = [
            (seen.area.area * (0.3 if seen.end_grain else 1.0), number)
            for number, seen in enumerate(visible) if seen.board.name == name
        ]
        if pieces:
            boards.append((text, _amid(visible[max(pieces)[1]].area, taken)))
        else:
            hidden.append(text)
    return boards + told, hidden + out_of_sight


def _amid(area: shapely.Polygon, taken: shapely.MultiPoint) -> tuple[int, int]:
    """A point well inside an area, in ticks of the picture, away from those that are taken, where there is room."""
    left, bottom, right, top = area.bounds
    room = area.difference(taken.buffer(((right - left) + (top - bottom)) * _APART, quad_segs=2))
    largest = area if room.is_empty else max(shapely.get_parts(room), key=shapely.area)
    x, y = shapely.get_coordinates(shapely.point_on_surface(largest))[0] / PARTS
    return round(x), round(y)


def is_seen(point: np.ndarray, turned_faces: Turned) -> bool:
    """Whether no face stands before a point of the shop (ticks).

    >>> from shoplib.draw.hidden import turned_to
    >>> from shoplib.draw.parallel import FRONT_RIGHT_ABOVE
    >>> from shoplib.model.placement import Placement
    >>> board = Board("shelf", "case", 1, "ply", 900, 400, 180, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> turned_faces = turned_to(world_faces(board), FRONT_RIGHT_ABOVE)
    >>> [is_seen(np.array(point, float), turned_faces) for point in ((450, 0, 90), (450, 400, 90))]  # front, back
    [True, False]
    """
    before = np.flatnonzero(turned_faces.normals @ point - turned_faces.levels < -1.0)
    x, y = turned_faces.direction.matrix @ point
    return not shapely.intersects_xy(turned_faces.flat[before], x, y).any()


def _leaders(points: list[tuple[str, tuple[int, int]]], bounds: np.ndarray) -> list[Leader]:
    """Texts of the left half of the picture stand on the left, the others on the right: so none crosses one of the
    other side."""
    middle = (bounds[0] + bounds[2]) / 2
    return [Leader(point, "left" if point[0] < middle else "right", text) for text, point in points]
