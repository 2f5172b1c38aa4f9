"""Drilling templates from a corner of a board: pulls in fronts, pegs in the panel of a pull-out."""

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace

from shoplib.documents.hardware_page import waste_behind
from shoplib.draw.face_on import FaceOn
from shoplib.draw.true_scale import LETTERS, Item, Ring, Stroke, TextLine, TrueDrawing, cross
from shoplib.lists.sides import looks
from shoplib.lists.writing import Writing
from shoplib.measure import MM
from shoplib.model.board import Board, Hole
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.bored import Bored, bored, holes_of
from shoplib.printed.true_scale.template import CHECK, PEGS, PULLS, STEP, Template, beside, naming
from shoplib.words.naming import and_list, boards_in_short

_ARM, _EDGE = 7 * MM, 2 * MM
"""The arms of a hole's cross, and the rim of the paper."""

_BEHIND = "The box front has the same holes: with the front screwed to its box, drill on through both."
"""Common practice, no source."""


@dataclass(frozen=True, slots=True)
class _Use:
    """What holes are for, the kind that they are in a plan, and what is said of boring them."""

    what: str
    kind: str
    said: tuple[str, ...]

    def face(self, face: FaceOn, cabinet: Cabinet) -> str:
        """What the face is called that the paper lies on."""
        if self.what == PULLS:
            return "face that shows"
        return f"{face.called(cabinet)}, which the pegs stand in"


_PULLS = _Use(PULLS, "pull", (f"Drill from the face that shows; {waste_behind('it')}.",))
_PEGS = _Use(PEGS, "peg", ("Set the stop of the drill: the holes are blind.",))


def pull_templates(cabinet: Cabinet, mark: str = "") -> list[Template]:
    """One for each kind of front that is bored for a pull, or of box front where a drawer has no other.

    `mark` tells on the paper of which plan it is.

    >>> from shoplib.documents.examples import cabinet_from
    >>> [one.serves for one in pull_templates(cabinet_from("small_parts_wall_case"))]
    ['front of drawers 1 to 3 in bays 1 and 4', 'front of drawers 1 to 3 in bays 2 and 3']
    """
    foremost = [
        min(there, key=lambda board: board.box.low[1])
        for boards in cabinet.groups.values() if (there := [board for board in boards if holes_of(board, "pull")])
    ]
    return _together(cabinet, [(board, "front") for board in foremost], _PULLS, mark)


def peg_templates(cabinet: Cabinet, mark: str = "") -> list[Template]:
    """One for each panel with pegs, from the face that they stand in; `mark` tells of which plan it is.

    >>> peg_templates(Cabinet("Trial", (), {}))
    []
    """
    faces = [(board, face) for board in cabinet.boards for face in _bored_faces(board, "peg")]
    return _together(cabinet, faces, _PEGS, mark)


def _bored_faces(board: Board, kind: str) -> list[str]:
    sides = {hole.centre[2] != 0 for hole in holes_of(board, kind)}
    return [looks(board, 2, 1 if upper else -1) for upper in sorted(sides)]


def _together(cabinet: Cabinet, faces: Iterable[tuple[Board, str]], use: _Use, mark: str) -> list[Template]:
    """Equal drawings once, with all the boards that they serve."""
    page = Writing(cabinet.style)
    alike: dict[tuple, list[Bored]] = {}
    for board, name in faces:
        face = FaceOn(board, name)
        if holes := [hole for hole in holes_of(board, use.kind) if hole.depth >= board.thickness or _opens(hole, face)]:
            shown = bored(face, holes, cabinet.style)
            behind = use is _PULLS and any(
                holes_of(other, use.kind) for other in cabinet.groups[board.group] if other is not board)
            lines = (*_drill(shown, len(holes), page), *use.said, *([_BEHIND] if behind else ()), CHECK)
            alike.setdefault((_drawn(shown, page), lines), []).append(shown)
    return [_template(on, use, drawing, lines, cabinet, mark) for (drawing, lines), on in alike.items()]


def _template(
    on: Sequence[Bored], use: _Use, drawing: TrueDrawing, lines: tuple[str, ...], cabinet: Cabinet, mark: str
) -> Template:
    boards = [one.face.board for one in on]
    serves, first = boards_in_short(boards), on[0]
    drawn = first.rests.to_draw(Writing(cabinet.style))
    lies = f"on the {use.face(first.face, cabinet)}, {first.rests.flush}"
    return Template(
        use.what, serves, tuple(board.name for board in boards),
        (f"For {serves}. {drawn}It lies {lies}.", " ".join(lines)),
        f"{drawn}Lies {lies}, for {serves}. {' '.join(lines)}",
        replace(drawing, items=(*drawing.items, *_named(use.what, serves, mark, first))),
    )


def _named(what: str, serves: str, mark: str, shown: Bored) -> list[TextLine]:
    """What the paper is, over the name of its lower edge."""
    near, foot, far, _ = shown.region
    lines = naming(what, serves, mark, far - near - 24 * MM)
    x, anchor = (near + 10 * MM, "start") if shown.rests.left else (far - 10 * MM, "end")
    return [TextLine((x, foot + 7 * MM + STEP * (len(lines) - 1 - k)), line, LETTERS, anchor)
            for k, line in enumerate(lines)]


def _opens(hole: Hole, face: FaceOn) -> bool:
    return (hole.centre[2] != 0) == face.upper


def _drill(shown: Bored, many: int, page: Writing) -> Iterator[str]:
    """How many holes in all, how large, how deep; and where they are, where one row is drawn for several."""
    thick = shown.face.board.thickness
    for size, deep in dict.fromkeys((hole.diameter, min(hole.depth, thick)) for _, hole in shown.holes):
        how = "right through" if deep >= thick else f"{page.setting(deep)} deep"
        yield f"Drill {'the hole' if many == 1 else f'{many} holes'}: {page.setting(size)} across, {how}."
    if shown.rows:
        heights = and_list([page.length(level) for level in shown.rows])
        yield f"Each row is {heights} from the {shown.rests.level.edge}."


def _drawn(shown: Bored, page: Writing) -> TrueDrawing:
    """The holes with their crosses and distances, and as much of the board round them as it takes."""
    region, rests = shown.region, shown.rests
    items = [*rests.drawn(region), *_far_ends(shown), *_up(shown)]
    for spot, hole in shown.holes:
        ring = Ring(spot, hole.diameter)
        up = (f"{page.length(spot[1] - region[1])} above each line" if shown.rows
              else f"{page.length(spot[1])} from {rests.level.edge}")
        words = (f"{page.length(shown.from_side(spot))} from {rests.upright.edge}", up)
        items += [ring, *cross(spot, _ARM), *beside(ring, words, spot[0] + shown.beyond <= region[2])]
    a, b, c, d = region
    return TrueDrawing((a - _EDGE, b - _EDGE, c + _EDGE, d + _EDGE), tuple(items), rests.names(region, page))


def _far_ends(shown: Bored) -> Iterator[Item]:
    """The other ends of the board, where they are shown."""
    (left, foot, right, top), (wide, high) = shown.region, shown.face.size
    other = right if shown.rests.left else left
    if other in (0, wide):
        yield Stroke(((other, foot), (other, top)), "mark")
    if top == high:
        yield Stroke(((left, top), (right, top)), "mark")


def _up(shown: Bored) -> Iterator[Item]:
    """An arrow near the upright heavy line, and where it points."""
    left, _, right, top = shown.region
    foot, tip = top - 14 * MM, top - 4 * MM
    x = left + 14 * MM if shown.rests.left else right - 14 * MM
    yield Stroke(((x, foot), (x, tip)), "mark")
    yield Stroke(((x - MM, tip - 2 * MM), (x, tip), (x + MM, tip - 2 * MM)), "mark")
    yield TextLine((x, foot - 2 * MM), "up" if shown.face.up[0] == 2 else "to the back", LETTERS, "middle")
