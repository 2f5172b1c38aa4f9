"""Lines and outlines of a PDF page in millimetres on the paper, from its content stream (ISO 32000-1, 8.4 and 8.5)."""

from dataclasses import dataclass

from pypdf import PageObject
from pypdf.generic import ContentStream

POINT = 25.4 / 72
"""A point in millimetres."""


@dataclass(frozen=True)
class Path:
    """Corners of one path, the operator that paints it (S strokes, f fills, B does both) and its line width, as set."""

    corners: tuple[tuple[float, float], ...]
    painted: str
    line: float


def paths(page: PageObject) -> list[Path]:
    """Every path that the page strokes or fills: its corners from the lower left of the paper."""
    found: list[Path] = []
    _walk(page.get_contents(), page["/Resources"], page.pdf, (1.0, 0.0, 0.0, 1.0, 0.0, 0.0), found)
    return found


def _walk(stream, resources, pdf, matrix, found: list[Path]) -> None:
    kept, corners, line = [], [], 1.0
    for operands, operator in ContentStream(stream, pdf).operations:
        name = operator.decode()
        if name == "q":
            kept.append((matrix, line))
        elif name == "Q":
            matrix, line = kept.pop()
        elif name == "w":
            line = float(operands[0])
        elif name == "cm":
            matrix = times(tuple(map(float, operands)), matrix)
        elif name in ("m", "l"):
            corners.append(_at(matrix, *map(float, operands)))
        elif name == "re":
            x, y, w, h = map(float, operands)
            corners += [_at(matrix, *place) for place in ((x, y), (x + w, y), (x + w, y + h), (x, y + h))]
        elif name in ("c", "v", "y"):
            corners.append(_at(matrix, *map(float, operands[-2:])))
        elif name in ("S", "s", "f", "f*", "B", "B*", "b", "b*"):
            found.append(Path(tuple(corners), name, line))
            corners = []
        elif name == "n":
            corners = []
        elif name == "Do":
            form = resources["/XObject"][operands[0]].get_object()
            if form["/Subtype"] == "/Form":
                inner = times(tuple(map(float, form.get("/Matrix", (1, 0, 0, 1, 0, 0)))), matrix)
                _walk(form, form.get("/Resources", resources), pdf, inner, found)


def times(one, other):
    a, b, c, d, e, f = one
    g, h, i, j, k, m = other
    return (a * g + b * i, a * h + b * j, c * g + d * i, c * h + d * j, e * g + f * i + k, e * h + f * j + m)


def _at(matrix, x: float, y: float) -> tuple[float, float]:
    a, b, c, d, e, f = matrix
    return (a * x + c * y + e) * POINT, (b * x + d * y + f) * POINT
