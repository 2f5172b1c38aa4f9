"""A strip for each row of holes for shelf pins, along the edge of the upright that is nearer.

Heights are measured from the upper face of the bottom, which all uprights share, so that one strip serves the sides and
the dividers; a strip for a face that looks the other way is the same one turned over.
"""

from collections.abc import Iterator
from dataclasses import dataclass

from shoplib.building.datum import Datum, datum
from shoplib.draw.face_on import FaceOn
from shoplib.draw.true_scale import LETTERS, Item, Ring, TextLine, TrueDrawing, cross
from shoplib.lists.sides import looks
from shoplib.lists.writing import Writing
from shoplib.measure import MM
from shoplib.model.board import Board, Hole
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.on_faces import OnFace, for_faces
from shoplib.printed.true_scale.rests import Rest, Rests, whole_before
from shoplib.printed.true_scale.template import CHECK, PINS, STEP, Template, beside, naming
from shoplib.words.naming import and_list, in_short

_ARM, _EDGE, _ROOM = 7 * MM, 2 * MM, 62 * MM
"""The arms of a hole's cross, the rim of the paper, and the room for words beside the row."""
_FAR, _BEFORE, _ABOVE = 150 * MM, 40 * MM, 14 * MM
"""Where the lowest hole is higher than the first, the strip begins at a line, the second below that hole at least."""


@dataclass(frozen=True, slots=True)
class Bore:
    """A hole in an upright: height from the datum, `back` from the edge (ticks)."""

    up: int
    back: int
    diameter: int
    depth: int


def pin_templates(cabinet: Cabinet, mark: str = "") -> list[Template]:
    """One for each row of holes one above another; `mark` tells on the paper of which plan it is.

    >>> pin_templates(Cabinet("Trial", (), {}))
    []
    """
    alike: dict[tuple[Bore, ...], list[OnFace]] = {}
    for board in cabinet.boards:
        for laid, bores in _rows(board, datum(cabinet)):
            alike.setdefault(bores, []).append(laid)
    return [_of_bores(bores, laid, cabinet, mark) for bores, laid in alike.items()]


def _rows(board: Board, zero: Datum) -> Iterator[tuple[OnFace, tuple[Bore, ...]]]:
    """The rows in an upright, each with the face that it is bored from."""
    rows: dict[tuple[bool, int], list[tuple[int, Hole]]] = {}
    for hole in board.cuts:
        if isinstance(hole, Hole) and hole.kind == "shelf pin":
            upper = hole.centre[2] != 0
            x, up = FaceOn(board, looks(board, 2, 1 if upper else -1)).hole(hole.centre)
            rows.setdefault((upper, x), []).append((up, hole))
    for (upper, x), holes in rows.items():
        face = FaceOn(board, looks(board, 2, 1 if upper else -1))
        left = 2 * x <= face.size[0]
        back = x if left else face.size[0] - x
        bores = (Bore(up + board.box.low[2] - zero.height, back, hole.diameter, hole.depth) for up, hole in holes)
        yield OnFace(face, face.edge("left" if left else "right"), left), tuple(sorted(bores, key=lambda one: one.up))


def _of_bores(bores: tuple[Bore, ...], laid: list[OnFace], cabinet: Cabinet, mark: str) -> Template:
    page, zero, left = Writing(cabinet.style), datum(cabinet), laid[0].left
    start = whole_before(bores[0].up, _BEFORE, cabinet.style) if bores[0].up > _FAR else 0
    edges = and_list(list(dict.fromkeys(one.edge for one in laid)))
    rests = Rests(Rest(edges), Rest(zero.name, (start,) if start else ()), left)
    serving = and_list(in_short(dict.fromkeys(one.face.board.name for one in laid)))
    sizes = dict.fromkeys((bore.diameter, bore.depth) for bore in bores)
    lines = (
        *for_faces(laid, cabinet),
        " ".join((
            *(f"Drill {page.setting(across)} across, {page.setting(deep)} deep; set the stop of the drill."
              for across, deep in sizes),
            f"{rests.level.to_draw(page)}It lies with {rests.flush}; in a case that stands, cut it off along them and "
            "set it in.",
            *_below(laid, zero, page), CHECK,
        )),
    )
    drawing = _drawn(bores, rests, naming(PINS, serving, mark, bores[0].back + _ROOM - 14 * MM), page)
    names = tuple(dict.fromkeys(one.face.board.name for one in laid))
    return Template(PINS, serving, names, lines, " ".join(lines), drawing)


def _below(laid: list[OnFace], zero: Datum, page: Writing) -> Iterator[str]:
    """How far the lower ends of the uprights lie below the datum, which a board on the bench does not show."""
    ends: dict[int, list[str]] = {}
    for one in laid:
        ends.setdefault(zero.height - one.face.board.box.low[2], []).append(one.face.board.name)
    for below, names in sorted(ends.items()):
        if below > 0:
            whose = and_list(in_short(dict.fromkeys(names)))
            yield f"The lower end of {whose} is {page.length(below)} below that face."


def _drawn(bores: tuple[Bore, ...], rests: Rests, named: list[str], page: Writing) -> TrueDrawing:
    """The holes with their crosses and distances, the two heavy lines, and what the paper is."""
    hand = 1 if rests.left else -1
    wide = hand * (max(bore.back for bore in bores) + _ROOM)
    left, right = min(0, wide), max(0, wide)
    items: list[Item] = []
    for bore in bores:
        at = (hand * bore.back, bore.up)
        ring = Ring(at, bore.diameter)
        told = (f"{page.length(bore.up)} above the bottom", f"{page.length(bore.back)} from the edge")
        items += [ring, *cross(at, _ARM), *beside(ring, told, hand > 0)]
    top = bores[-1].up + _ABOVE
    for line in reversed(named):
        items.append(TextLine((left + 10 * MM, top), line, LETTERS))
        top += STEP
    region = (left, rests.level.far[0] if rests.level.far else 0, right, top)
    bounds = (left - _EDGE, region[1] - _EDGE, right + _EDGE, top + _EDGE)
    return TrueDrawing(bounds, (*items, *rests.drawn(region)), rests.names(region, page))
