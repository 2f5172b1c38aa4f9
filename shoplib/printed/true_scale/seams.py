"""The seams of a page: the line to cut or to glue up to, its register marks, and what is done there."""

from collections.abc import Iterator, Sequence
from dataclasses import dataclass

from shoplib.draw.scene import Point
from shoplib.draw.true_scale import LETTERS, Item, Stroke, cross
from shoplib.measure import MM
from shoplib.printed.true_scale.clear_place import Run, said_beside
from shoplib.printed.true_scale.parting import Tile, tile_name

_REGISTER = 5 * MM
_AWAY = round(4.6 * MM)
"""How far from a seam its words stand: clear of the register marks."""


@dataclass(frozen=True, slots=True)
class Seam:
    """One side of a page: `at` across it, from `low` to `high` along it; what is said, at length or in short, and how
    far `away` from the line."""

    upright: bool
    at: int
    low: int
    high: int
    texts: tuple[str, str]
    away: int

    def spot(self, along: int) -> Point:
        """A point of the line."""
        return (self.at, along) if self.upright else (along, self.at)


def seams_of(tile: Tile) -> Iterator[Seam]:
    """Those at the left and the right, above and below.

    >>> from shoplib.printed.true_scale.parting import Parting
    >>> [seam.texts[0] for tile in Parting((0, 0, 9, 9), (4,)).tiles() for seam in seams_of(tile)]
    ['Glue A2 on here, up to the line.', 'Cut here; glue over A1.']
    """
    parting, (left, bottom, right, top) = tile.parting, tile.core
    column, row = tile.column, tile.row
    if column:
        yield Seam(True, left, bottom, top, _cut(tile_name(row, column - 1)), -_AWAY)
    if column < parting.columns - 1:
        yield Seam(True, right, bottom, top, _glue(tile_name(row, column + 1)), _AWAY)
    if row:
        yield Seam(False, top, left, right, _cut(tile_name(row - 1, column)), _AWAY)
    if row < parting.rows - 1:
        yield Seam(False, bottom, left, right, _glue(tile_name(row + 1, column)), -_AWAY)


def _cut(before: str) -> tuple[str, str]:
    return f"Cut here; glue over {before}.", f"Cut; over {before}."


def _glue(after: str) -> tuple[str, str]:
    return f"Glue {after} on here, up to the line.", f"Glue {after} here."


def seams_drawn(tile: Tile, shown: Sequence[Item]) -> list[Item]:
    """All of a page; the words stand where nothing that is `shown` runs through them.

    >>> from shoplib.printed.true_scale.parting import Parting
    >>> first, _ = Parting((0, 0, 200 * MM, 120 * MM), (100 * MM,)).tiles()
    >>> [item.text for item in seams_drawn(first, []) if not isinstance(item, Stroke)]
    ['Glue A2 on here, up to the line.']
    """
    seams = list(seams_of(tile))
    items: list[Item] = []
    for seam in seams:
        items.append(Stroke((seam.spot(seam.low), seam.spot(seam.high)), "seam"))
        for part in (1, 3):
            items += register(seam.spot(seam.low + (seam.high - seam.low) * part // 4))
    for seam in seams:
        run = Run(seam.upright, seam.at + seam.away, seam.low + MM, seam.high - MM)
        items += said_beside(run, seam.texts, LETTERS, [*shown, *items])
    return items


def register(at: Point) -> tuple[Item, ...]:
    """A register mark: a ring of straight lines and a cross, half of which is left on either page at the seam.

    >>> [len(stroke.points) for stroke in register((0, 0))]
    [2, 2, 5]
    """
    x, y = at
    half = _REGISTER // 2
    diamond = Stroke(((x - half, y), (x, y + half), (x + half, y), (x, y - half), (x - half, y)), "register")
    return (*cross(at, half, "register"), diamond)
