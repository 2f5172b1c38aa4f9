"""Pages of a drawing in true scale, read back from a PDF and laid together as a person does: mark on mark.

Knows only what is in the PDF: the page's name in its alternative text, and lines by their width (those of
`draw/true_scale.py`).
"""

import re
from dataclasses import dataclass
from io import BytesIO

from pypdf import PdfReader

from tests.documents.pdf_paths import Path, paths

BAR, EDGE, ZERO, MARK, RING, REGISTER, SEAM, THIN, CENTRE = 0.6, 0.9, 0.5, 0.25, 0.3, 0.22, 0.28, 0.18, 0.24

Spot = tuple[float, float]

_ALT = re.compile(r"/Alt\s*\([^)]*?(Template \d+|Story stick(?: \d+)?)[^)]*?, in true scale(?:, page ([A-Z])(\d+))?")
"""The alternative text of a page's picture (ISO 32000-1, 14.9.3), which names the page."""


@dataclass(frozen=True)
class Page:
    """One page: what it belongs to ("Template 1"), its row and column, and its paths in mm."""

    of: str
    row: int
    column: int
    paths: tuple[Path, ...]

    def strokes(self, width: float) -> list[tuple[Spot, ...]]:
        """The corners of every stroke of this width."""
        return [path.corners for path in self.paths if path.painted == "S" and abs(path.line - width) < 1e-6]

    def seam(self, side: str) -> tuple[Spot, ...]:
        """The seam at one side of the page."""
        level = side in ("above", "below")
        seams = [line for line in self.strokes(SEAM) if (abs(line[0][1] - line[1][1]) < 1e-3) == level]
        return sorted(seams, key=lambda line: line[0][1 if level else 0])[-1 if side in ("right", "above") else 0]

    def registers(self, side: str) -> list[Spot]:
        """The middles of the register marks on the seam at one side of the page, in order."""
        across = 1 if side in ("above", "below") else 0
        place = self.seam(side)[0][across]
        found = [middle(line) for line in self.strokes(REGISTER) if len(line) == 5]
        return sorted(spot for spot in found if abs(spot[across] - place) < 0.01)


def middle(corners: tuple[Spot, ...]) -> Spot:
    """The middle of the box round some corners."""
    across, up = zip(*corners, strict=True)
    return (min(across) + max(across)) / 2, (min(up) + max(up)) / 2


def pages_of(pdf: bytes) -> dict[str, list[Page]]:
    """The pages in true scale, by what they belong to."""
    found: dict[str, list[Page]] = {}
    for page in PdfReader(BytesIO(pdf)).pages:
        said = page.get_contents().get_data().replace(b"\0", b"").decode("latin-1")
        if named := _ALT.search(said):
            row = ord(named[2]) - ord("A") if named[2] else 0
            column = int(named[3]) - 1 if named[3] else 0
            found.setdefault(named[1], []).append(Page(named[1], row, column, tuple(paths(page))))
    return found


@dataclass(frozen=True)
class Glued:
    """All pages of a drawing on the first one's coordinates: how far each was moved there, in mm."""

    pages: tuple[tuple[Page, Spot], ...]

    def strokes(self, width: float) -> set[tuple[Spot, ...]]:
        """Every stroke of this width once, wherever it was found."""
        found: list[tuple[Spot, ...]] = []
        for page, (dx, dy) in self.pages:
            for line in page.strokes(width):
                moved = tuple((x + dx, y + dy) for x, y in line)
                if not any(len(moved) == len(one) and near(moved, one) for one in found):
                    found.append(moved)
        return set(found)


def near(one: tuple[Spot, ...], other: tuple[Spot, ...], within: float = 0.01) -> bool:
    """Whether corner lies on corner."""
    return all(abs(a - c) <= within and abs(b - d) <= within for (a, b), (c, d) in zip(one, other, strict=True))


def glued(pages: list[Page]) -> Glued:
    """The pages laid together by their register marks, each beside the one on its left, or below the one above it."""
    by_place = {(page.row, page.column): page for page in pages}
    moved: dict[tuple[int, int], Spot] = {(0, 0): (0.0, 0.0)}
    for row, column in sorted(by_place):
        if (row, column) == (0, 0):
            continue
        before, its, own = ((row, column - 1), "right", "left") if column else ((row - 1, column), "below", "above")
        there, here = by_place[before].registers(its), by_place[row, column].registers(own)
        dx, dy = moved[before]
        moved[row, column] = (there[0][0] - here[0][0] + dx, there[0][1] - here[0][1] + dy)
    return Glued(tuple((by_place[place], moved[place]) for place in by_place))
