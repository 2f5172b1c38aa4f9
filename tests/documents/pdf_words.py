"""Words of a PDF page with the boxes they take on the paper in millimetres (ISO 32000-1, 9.4 and 9.7)."""

from dataclasses import dataclass, replace

from pypdf import PageObject
from pypdf.generic import ArrayObject, ContentStream, DictionaryObject

from tests.documents.pdf_paths import POINT, times
from tests.printed.tagged import unicode_of

ASCENT, DESCENT = 0.73, 0.2
"""How far capitals stand over the line and letters hang under it, by the size of DejaVu Sans (the font's own table)."""

_UPRIGHT = (1.0, 0.0, 0.0, 1.0, 0.0, 0.0)

Box = tuple[float, float, float, float]


@dataclass(frozen=True)
class Shown:
    """What one operator shows: its letters, and the box round them, left, lower, right, upper, from the lower left."""

    text: str
    box: Box


@dataclass(frozen=True)
class _State:
    """What `q` keeps: the matrix of the page, and the font with its size."""

    matrix: tuple[float, ...]
    font: str = ""
    size: float = 0.0


class _Font:
    """A font of two-byte codes: what they stand for, and how wide they are in thousandths of its size."""

    def __init__(self, font: DictionaryObject) -> None:
        below = font["/DescendantFonts"][0].get_object()
        self.letters, self.usual = unicode_of(font), float(below.get("/DW", 1000))
        self.widths: dict[int, float] = {}
        listed = iter(below.get("/W", ()))
        for first in listed:
            then = next(listed).get_object()
            if isinstance(then, ArrayObject):
                self.widths |= {int(first) + n: float(wide) for n, wide in enumerate(then)}
            else:
                self.widths |= dict.fromkeys(range(int(first), int(then) + 1), float(next(listed)))

    def wide(self, code: int) -> float:
        return self.widths.get(code, self.usual)


def words(page: PageObject) -> list[Shown]:
    """All that the page shows in letters, what its forms show included; blank pieces left out."""
    found: list[Shown] = []
    _walk(page.get_contents(), page["/Resources"], page.pdf, _UPRIGHT, found)
    return found


def _walk(stream, resources, pdf, matrix, found: list[Shown]) -> None:
    fonts: dict[str, _Font] = {}
    state, kept = _State(tuple(matrix)), []
    at = line = _UPRIGHT
    for operands, operator in ContentStream(stream, pdf).operations:
        name = operator.decode()
        if name == "q":
            kept.append(state)
        elif name == "Q":
            state = kept.pop()
        elif name == "cm":
            state = replace(state, matrix=times(tuple(map(float, operands)), state.matrix))
        elif name == "BT":
            at = line = _UPRIGHT
        elif name == "Tf":
            state = replace(state, font=operands[0], size=float(operands[1]))
            if operands[0] not in fonts:
                fonts[operands[0]] = _Font(resources["/Font"][operands[0]].get_object())
        elif name == "Tm":
            at = line = tuple(map(float, operands))
        elif name == "Td":
            at = line = times((1.0, 0.0, 0.0, 1.0, *map(float, operands)), line)
        elif name in ("Tj", "TJ"):
            shown, reach, long = _shown(operands[0] if name == "TJ" else operands, fonts[state.font])
            if shown.strip():
                box = _box(times(at, state.matrix), reach * state.size / 1000, state.size)
                found.append(Shown(shown.strip(), box))
            at = times((1.0, 0.0, 0.0, 1.0, long * state.size / 1000, 0.0), at)
        elif name == "Do":
            form = resources["/XObject"][operands[0]].get_object()
            if form["/Subtype"] == "/Form":
                inner = times(tuple(map(float, form.get("/Matrix", _UPRIGHT))), state.matrix)
                _walk(form, form.get("/Resources", resources), pdf, inner, found)
        elif name in ("T*", "'", '"', "TD"):
            raise AssertionError(f"{name} is not read here")


def _shown(pieces, font: _Font) -> tuple[str, float, float]:
    """The letters, how far they reach, and how far with the blanks behind them, in thousandths of the size."""
    text, reach, long = "", 0.0, 0.0
    for piece in pieces:
        if isinstance(piece, int | float):
            long -= float(piece)
            continue
        raw = piece.original_bytes
        for k in range(0, len(raw), 2):
            code = int.from_bytes(raw[k:k + 2])
            letter = font.letters.get(code, "")
            text, long = text + letter, long + font.wide(code)
            reach = long if letter.strip() else reach
    return text, reach, long


def _box(matrix, long: float, size: float) -> Box:
    a, b, c, d, e, f = matrix
    corners = [(a * x + c * y + e, b * x + d * y + f) for x in (0.0, long) for y in (-DESCENT * size, ASCENT * size)]
    xs, ys = zip(*corners, strict=True)
    return min(xs) * POINT, min(ys) * POINT, max(xs) * POINT, max(ys) * POINT
