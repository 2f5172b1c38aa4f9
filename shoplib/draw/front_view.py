"""Fronts seen from the front, with the gaps about them and small steps between them drawn larger than they are."""

from collections.abc import Iterable
from itertools import pairwise

from shoplib.draw.chains import bare
from shoplib.draw.scene import Chain, Item, Label, Leader, Rect, Scene, Shape
from shoplib.measure import Style, narrowest, write_brief, write_measured
from shoplib.model.front_face import Face, FrontGap, Piece, Span, gaps_of

_PART = 36
"""A gap is drawn about as wide as the picture divided by this."""

_UNITS = {"in": "inches", "mm": "millimetres"}


class Enlarged:
    """Where true positions are drawn: spans up to `limit` between neighbouring positions are `times` as wide.

    >>> at = Enlarged([0, 10, 110], 4, 20)
    >>> [at(place) for place in (0, 10, 110)]
    [0, 40, 140]
    """

    def __init__(self, positions: Iterable[int], times: int, limit: int):
        places = sorted({int(place) for place in positions})
        self._drawn, drawn = {places[0]: 0}, 0
        for low, high in pairwise(places):
            drawn += (high - low) * (times if high - low <= limit else 1)
            self._drawn[high] = drawn

    def __call__(self, place: int) -> int:
        """Where this position is drawn; KeyError for one that was not given."""
        return self._drawn[int(place)]

    def span(self, span: Span) -> Span:
        """Both ends, the lower first."""
        low, high = self(span[0]), self(span[1])
        return (low, high) if low <= high else (high, low)


def front_view(face: Face, gap: int, style: Style, said: str = "") -> Scene:
    """The face with its sizes; `gap` is the planned one, by which the drawing chooses how much larger gaps are.

    `said` is put before the words for whoever cannot see it.
    """
    high, wide = face.ceiling[1] - face.floor[0], face.uprights[-1][1] - face.uprights[0][0]
    times = max(1, min(8, narrowest([high, wide]) // (_PART * max(int(gap), 1))))
    spans = [face.floor, face.ceiling, *(piece.z for piece in face.pieces)]
    z = Enlarged([end for span in spans for end in span], times, 3 * int(gap))
    spans = [*face.uprights, *(piece.x for piece in face.pieces)]
    x = Enlarged([end for span in spans for end in span], times, 3 * int(gap))
    whole: Rect = (0, 0, x(face.uprights[-1][1]), z(face.ceiling[1]))
    items: list[Item] = [*_case(face, x, z)]
    fronts = [Shape((_rect(piece, x, z),), "front", _called(piece, face)) for piece in face.pieces]
    items += fronts
    items += [
        Label(_rect(piece, x, z), _words(piece, face, style), sizes=(
            (f"{_called(piece, face)}, width", piece.width), (f"{_called(piece, face)}, height", piece.height),
        ))
        for piece in face.pieces
    ]
    items += _clashes(face, x, z)
    items += _heights(face, z, style)
    items += _widths(face, x, style)
    note = f"Sizes in {_UNITS[style.unit]}."
    if times > 1:
        note += f" Gaps, and steps as small, are drawn {times} times as large as they are."
    kind = "Inset fronts" if face.inset else "Overlay fronts"
    return Scene(f"{kind}, from the front", note, f"{said} {_alt(face, gap, style, note)}".strip(), whole, tuple(items))


def _case(face: Face, x: Enlarged, z: Enlarged) -> list[Shape]:
    low, high = z(face.floor[0]), z(face.ceiling[1])
    names = ["left side", *["divider"] * (face.bays - 1), "right side"]
    ends = x(face.uprights[0][1]), x(face.uprights[-1][0])
    shapes = [Shape(((*_flat(x.span(span), (low, high)),),), "case", name)
              for span, name in zip(face.uprights, names, strict=True)]
    across = [(x(left[1]), x(right[0])) for left, right in pairwise(face.uprights)] if face.bays > 1 else [ends]
    for span, name in ((face.floor, "bottom"), (face.ceiling, "top")):
        shapes += [Shape((_flat(room, z.span(span)),), "case", name) for room in across]
    return shapes


def _flat(x: Span, z: Span) -> Rect:
    return x[0], z[0], x[1], z[1]


def _rect(piece: Piece, x: Enlarged, z: Enlarged) -> Rect:
    return _flat(x.span(piece.x), z.span(piece.z))


def _called(piece: Piece, face: Face) -> str:
    return f"front {piece.number}" if face.bays == 1 else f"bay {piece.bay} front {piece.number}"


def _words(piece: Piece, face: Face, style: Style) -> tuple[str, ...]:
    size = f"{bare(piece.width, style)} × {bare(piece.height, style)}"
    name = f"front {piece.number}"
    return (f"{name}\n{size}", f"{name}: {size}", name, str(piece.number))


def _clashes(face: Face, x: Enlarged, z: Enlarged) -> list[Item]:
    """Where a front and its neighbour, or the case, want the same room."""
    found: list[Item] = []
    rects = [(_rect(piece, x, z), piece) for piece in face.pieces]
    case = [shape.rects[0] for shape in _case(face, x, z)] if face.inset else []
    for number, (rect, _) in enumerate(rects):
        for other in [*(one for one, _ in rects[number + 1:]), *case]:
            a, b = max(rect[0], other[0]), max(rect[1], other[1])
            c, d = min(rect[2], other[2]), min(rect[3], other[3])
            if a < c and b < d:
                found += [Shape(((a, b, c, d),), "clash", "clash", "x")]
                side = "above" if d == rect[3] else "right"
                found.append(Leader(((a + 3 * c) // 4, (b + d) // 2), side, "clash"))
    return found


def _heights(face: Face, z: Enlarged, style: Style) -> list[Chain]:
    """The heights of the first bay at the left, those of the last at the right where they differ."""
    first, last = face.bay(1), face.bay(face.bays)
    chains = [_column("left", first, face, z, style)]
    if [piece.z for piece in first] != [piece.z for piece in last]:
        chains.append(_column("right", last, face, z, style))
    return chains


def _column(side: str, column: tuple[Piece, ...], face: Face, z: Enlarged, style: Style) -> Chain:
    stations = [end for piece in column for end in piece.z]
    if face.inset:
        stations = [face.floor[1], *stations, face.ceiling[0]]
    return _chain(side, stations, z, style)


def _widths(face: Face, x: Enlarged, style: Style) -> list[Chain]:
    """The widths of the lowest fronts, and below them the openings."""
    stations = []
    for bay in range(1, face.bays + 1):
        lowest = face.bay(bay)[0]
        if face.inset:
            stations += [face.uprights[bay - 1][1], *lowest.x, face.uprights[bay][0]]
        else:
            stations += lowest.x
    openings = [end for span in face.uprights for end in span][1:-1]
    thick = face.uprights[0][1] - face.uprights[0][0]
    chains = [_chain("below", stations, x, style, thick)]
    rows = _chain("below", openings, x, style, thick)
    return [*chains, Chain("below", 1, rows.at, rows.texts, None, rows.sizes)]


def _chain(side: str, stations: list[int], to: Enlarged, style: Style, thick: int = 0) -> Chain:
    """Dimensions from station to station; one that does not rise (a clash) has none. `thick` is that of a board."""
    at, texts, sizes = [to(stations[0])], [], []
    reached = stations[0]
    for place in stations[1:]:
        if place <= reached:
            continue
        at.append(to(place))
        texts.append(_written(place - reached, style, thick))
        sizes.append(place - reached)
        reached = place
    return Chain(side, 0, tuple(at), tuple(texts), None, tuple(sizes))


def _written(size: int, style: Style, thick: int) -> str:
    """The thickness of a board is written as it was measured."""
    return write_measured(size, style).removesuffix(f" {style.unit}") if size == thick else bare(size, style)


def _alt(face: Face, gap: int, style: Style, note: str) -> str:
    kind = "inset, between the boards of the case" if face.inset else "overlay, before the edges of the case"
    told = []
    for bay in range(1, face.bays + 1):
        sizes = ", ".join(write_brief(piece.height, style) for piece in face.bay(bay))
        where = f"Bay {bay}: fronts" if face.bays > 1 else "Fronts"
        told.append(f"{where} {write_brief(face.bay(bay)[0].width, style)} wide, from the bottom up {sizes} high.")
    planned = f"Gaps are {write_brief(gap, style)} as planned" if gaps_of(face) else ""
    others = "; ".join(gap_in_words(one, style) for one in gaps_of(face) if one.size != gap)
    sized = f"{planned}{f', but: {others}' if others else ''}. " if planned else ""
    return f"Fronts seen from the front, {kind}. {' '.join(told)} {sized}{note}"


def gap_in_words(gap: FrontGap, style: Style) -> str:
    """A gap as a sentence would have it; one below nothing is a clash.

    >>> from shoplib.measure import INCH, INCH_STYLE
    >>> gap_in_words(FrontGap(("front 3", "top"), "z", -INCH // 16), INCH_STYLE)
    'front 3 to top a clash of 1/16 in'
    """
    one, other = gap.between
    where = f"{one} {other}" if one.endswith(" of") else f"{one} to {other}"
    if gap.size < 0:
        return f"{where} a clash of {write_brief(-gap.size, style)}"
    return f"{where} {write_brief(gap.size, style) if gap.size else 'nothing'}"
