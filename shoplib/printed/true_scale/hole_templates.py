"""Drilling templates from a corner of a board: pulls in fronts, pegs in the panel of a pull-out."""

from collections.abc import Iterator
from dataclasses import replace

from shoplib.draw.face_on import FaceOn
from shoplib.draw.true_scale import Item, Ring, Stroke, TrueDrawing, Words, cross
from shoplib.lists.sides import looks
from shoplib.lists.writing import Writing
from shoplib.measure import INCH, MM, Style
from shoplib.model.board import Board, Hole
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.template import BACKING, CHECK, NAMING, Template, beside, naming
from shoplib.words.naming import boards_in_short

_ARM = 7 * MM
_BEYOND, _WHOLE = 50 * MM, 45 * MM
"""How far the paper goes on beyond the farthest hole, for words and tape; where the board ends so near after that, it
is drawn to its end."""
_EDGE = 2 * MM
_FAR, _BEFORE = 150 * MM, 30 * MM
"""Where the nearest hole is farther from its reference edge than the first, the paper begins at a line that is drawn on
the board, a whole inch or 10 mm from that edge, and as far before the hole as the second at least: a page with no hole
in it would only carry the distance, which a tape carries as well."""

_BEHIND = "The box front has the same holes: with the front screwed to its box, drill on through both."
"""Common practice, no source."""


def pull_templates(cabinet: Cabinet, mark: str = "") -> list[Template]:
    """One for each kind of front that is bored for a pull, or of box front where a drawer has no other.

    `mark` tells on the paper of which plan it is.
    """
    foremost = [
        min(bored, key=lambda board: board.box.low[1])
        for boards in cabinet.groups.values() if (bored := [board for board in boards if _holes(board, "pull")])
    ]
    faces = [(board, "front") for board in foremost]
    return _together(cabinet, faces, "pull", ("Drill from the face that shows.", BACKING), mark)


def peg_templates(cabinet: Cabinet, mark: str = "") -> list[Template]:
    """One for each panel with pegs, from the face that they stand in; `mark` tells of which plan it is."""
    bored = [(board, face) for board in cabinet.boards for face in _bored_faces(board, "peg")]
    return _together(cabinet, bored, "peg", ("Set the stop of the drill: the holes are blind.",), mark)


def _bored_faces(board: Board, kind: str) -> list[str]:
    sides = {hole.centre[2] != 0 for hole in _holes(board, kind)}
    return [looks(board, 2, 1 if upper else -1) for upper in sorted(sides)]


def _holes(board: Board, kind: str) -> list[Hole]:
    return [cut for cut in board.cuts if isinstance(cut, Hole) and cut.kind == kind and cut.along == "w"]


def _together(
    cabinet: Cabinet, faces: list[tuple[Board, str]], kind: str, said: tuple[str, ...], mark: str
) -> list[Template]:
    """Equal drawings once, with all the boards that they serve."""
    alike: dict[tuple, list[FaceOn]] = {}
    for board, name in faces:
        face = FaceOn(board, name)
        holes = [hole for hole in _holes(board, kind) if hole.depth >= board.thickness or _opens(hole, face)]
        if holes:
            drawing, lines = _drawn(face, holes, cabinet, _begins(face, holes, cabinet.style))
            behind = kind == "pull" and any(
                _holes(other, kind) for other in cabinet.groups[board.group] if other is not board)
            alike.setdefault((drawing, (*lines, *said, *([_BEHIND] if behind else ()), CHECK)), []).append(face)
    found = []
    for (drawing, lines), on in alike.items():
        boards = [face.board for face in on]
        serves = boards_in_short(boards)
        called = "face that shows" if kind == "pull" else f"{on[0].called(cabinet)}, which the pegs stand in"
        side = "left" if on[0].datum_left else "right"
        holes = [hole for hole in _holes(boards[0], kind) if hole.depth >= boards[0].thickness or _opens(hole, on[0])]
        start, datum, below = _begins(on[0], holes, cabinet.style), on[0].edge(side), on[0].edge("below")
        edges = f"{datum} and {below}"
        drawn = ""
        if start:
            far = Writing(cabinet.style).length(start)
            drawn = f"Draw a line {far} from the {datum}, square to the {below}. "
            edges = f"{below}, and on that line"
        what = f"holes for {kind}s"
        drawing = replace(drawing, items=(*drawing.items, *_named(what, serves, mark, drawing, on[0].datum_left)))
        found.append(Template(
            what, serves, tuple(board.name for board in boards),
            (f"For {serves}. {drawn}It lies on the {called}, its heavy lines flush with the {edges}.", " ".join(lines)),
            f"{drawn}Lies on the {called} of {serves}, flush with the {edges}. {' '.join(lines)}", drawing,
        ))
    return found


def _named(what: str, serves: str, mark: str, drawing: TrueDrawing, left: bool) -> list[Words]:
    """What the paper is, over the name of its lower edge."""
    near, _, far, _ = drawing.bounds
    lines = naming(what, serves, mark, far - near - 24 * MM)
    x, anchor = (near + 10 * MM, "start") if left else (far - 10 * MM, "end")
    step = round(1.4 * NAMING * MM)
    return [Words((x, 7 * MM + step * (len(lines) - 1 - k)), line, NAMING, anchor) for k, line in enumerate(lines)]


def _opens(hole: Hole, face: FaceOn) -> bool:
    return (hole.centre[2] != 0) == face.upper


def _begins(face: FaceOn, holes: list[Hole], style: Style) -> int:
    """How far from the upright reference edge the paper begins (ticks): 0 at that edge."""
    across = [face.hole(hole.centre)[0] for hole in holes]
    nearest = min(across) if face.datum_left else face.size[0] - max(across)
    whole = INCH if style.unit == "in" else 10 * MM
    return (nearest - _BEFORE) // whole * whole if nearest > _FAR else 0


def _drawn(face: FaceOn, holes: list[Hole], cabinet: Cabinet, start: int) -> tuple[TrueDrawing, tuple[str, ...]]:
    """The holes with their crosses and distances, and as much of the board round them as it takes."""
    wide, high = face.size
    page = Writing(cabinet.style)
    spots = {face.hole(hole.centre): hole for hole in holes}
    across = [x for x, _ in spots]
    right = wide if wide - max(across) <= _BEYOND + _WHOLE else max(across) + _BEYOND
    left = 0 if min(across) <= _BEYOND + _WHOLE else min(across) - _BEYOND
    left, right = (start, right) if face.datum_left else (left, wide - start)
    tallest = max(y for _, y in spots)
    top = high if high - tallest <= _WHOLE else tallest + _WHOLE // 2
    side = "left" if face.datum_left else "right"
    datum, below = face.edge(side), face.edge("below")
    items: list[Item] = list(_edges(face, (left, 0, right, top), page.length(start) if start else ""))
    for (x, y), hole in spots.items():
        ring = Ring((x, y), hole.diameter)
        items += [ring, *cross((x, y), _ARM)]
        from_side = x if face.datum_left else wide - x
        words = (f"{page.length(from_side)} from {datum}", f"{page.length(y)} from {below}")
        items += beside(ring, words, x + _BEYOND <= right)
    many = "the hole" if len(spots) == 1 else f"{len(spots)} holes"
    lines = tuple(
        f"Drill {many}: {page.setting(size)} across, {'right through' if through else f'{page.setting(deep)} deep'}."
        for size, deep, through in dict.fromkeys(
            (h.diameter, 0 if h.depth >= face.board.thickness else h.depth, h.depth >= face.board.thickness)
            for h in holes
        )
    )
    bounds = (left - _EDGE, -_EDGE, right + _EDGE, top + _EDGE)
    return TrueDrawing(bounds, tuple(items)), lines


def _lies(name: str, far: str) -> str:
    return f"on the line {far} from the {name}" if far else f"{name}: flush with this line"


def _edges(face: FaceOn, region: tuple[int, int, int, int], far: str) -> Iterator[Item]:
    """The reference edges heavy, the other ends of the board thin where they are shown, and all named; `far` is how far
    from its reference edge the upright heavy line is, empty where it is that edge.
    """
    left, bottom, right, top = region
    wide, high = face.size
    datum = left if face.datum_left else right
    yield Stroke(((datum, bottom), (datum, top)), "edge")
    yield Stroke(((left, bottom), (right, bottom)), "edge")
    other = right if face.datum_left else left
    if other in (0, wide):
        yield Stroke(((other, bottom), (other, top)), "mark")
    if top == high:
        yield Stroke(((left, top), (right, top)), "mark")
    middle, inside = (left + right) // 2, 3 * MM
    name = face.edge("left" if face.datum_left else "right")
    turned_at = datum + inside if face.datum_left else datum - inside
    yield Words((turned_at, (bottom + top) // 2), _lies(name, far), 2.4, "middle", turned=True)
    yield Words((middle, bottom + inside), f"{face.edge('below')}: flush with this line", 2.4, "middle")
    foot, tip = top - 14 * MM, top - 4 * MM
    x = datum + 12 * MM if face.datum_left else datum - 12 * MM
    yield Stroke(((x, foot), (x, tip)), "mark")
    yield Stroke(((x - MM, tip - 2 * MM), (x, tip), (x + MM, tip - 2 * MM)), "mark")
    word = "up" if face.up[0] == 2 else "to the back"
    yield Words((x, foot - 2 * MM), word, 2.4, "middle")
