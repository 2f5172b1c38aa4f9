"""One kind of board, flat, with every cut dimensioned from one datum corner."""

from collections.abc import Iterable, Mapping, Sequence

from shoplib.draw.board_dimensions import dimensions, stops_short
from shoplib.draw.board_face import Face
from shoplib.draw.chains import unit_note
from shoplib.draw.empty_rooms import empty_rooms
from shoplib.draw.look import fill_of
from shoplib.draw.scene import (
    Disc,
    EdgeText,
    Grain,
    Item,
    Label,
    Leader,
    Line,
    Rect,
    Running,
    Scene,
    Shape,
)
from shoplib.draw.slide_lines import slide_lines, slide_rects, worked_faces
from shoplib.layout.marks import letter
from shoplib.lists.cut_words import cut_words
from shoplib.lists.sides import datum_side, outline_of, side_name
from shoplib.lists.writing import Writing
from shoplib.measure import Style
from shoplib.model.board import Board, BoxCut, Cut, Hole, PrismCut
from shoplib.model.solved import Cabinet
from shoplib.words.naming import boards_in_short

RUNNING = (
    "running distances begin there, at the small rings, and go to near walls of cuts and centres of holes."
)


def board_drawing(board: Board, cabinet: Cabinet, style: Style, face: str | None = None,
                  alike: tuple[str, ...] = ()) -> Scene:
    """The board seen on one `face` (see `worked_faces`; without one, the first), `alike` naming the equal boards.

    The edge names along it keep it from being mirrored. Cuts that open on the other face are dashed.
    Raises ValueError where the board has no such face, and KeyError where the board is not of the cabinet.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("finger_jointed_drawers")
    >>> board_drawing(cabinet.by_name["left side"], cabinet, cabinet.style).title
    'left side: inside face'
    """
    drawn = worked_faces(cabinet.by_name[board.name], cabinet)
    seen = Face(cabinet.by_name[board.name], face or drawn[0])
    if seen.name not in drawn:
        raise ValueError(f"{board.name} has no {face} face to draw: draw {' or '.join(drawn)}")
    page, side = Writing(style, units=False), 1 if seen.upper else -1
    called = side_name(board, 2, side, outline_of(board, cabinet))
    first = seen.name == drawn[0]
    tags = _tagged(seen, first, len(drawn) > 1)
    size = (0, 0, board.length, board.width)
    legend = size_lines(board, page)
    legend += [
        f"{tag}: {'; '.join(cut_words(board, cabinet, page, cuts))}{_reach(board, cuts, page)}." for tag, cuts in tags
    ]
    if first:
        legend += slide_lines([board, *(cabinet.by_name[name] for name in alike)], cabinet, page)
    else:
        legend += slide_lines([board], cabinet, page, seen)
    legend += _line_words(seen, cabinet)
    if len(drawn) > 1 and any(_comes_through(seen, cut) for cut in seen.board.cuts):
        legend.append("Without a letter: holes bored right through from the other face; its drawing tells them.")
    title = boards_called(board, cabinet, alike)
    if alike:
        legend.append(f"The drawing and the letters name sides as they are on {board.name}.")
    cuts_drawn = list(_cuts(seen, tags))
    sizes = list(dimensions(seen, [cut for _, cuts in tags for cut in cuts], page))
    items: list[Item] = [
        Shape((size,), fill_of(board), board.name), *_slides(seen, cabinet), *cuts_drawn,
        *_edges(seen, size, page, _lines_out([*cuts_drawn, *sizes])), _grain(seen, cabinet), *sizes,
    ]
    return Scene(
        f"{title}: {face_called(board, cabinet, seen.name)}",
        unit_note(style, f"You look at the face that looks {_toward(seen.name)} in the cabinet. {_datums(board)}"),
        f"{title}, {called}. " + " ".join(legend), size, tuple(items), tuple(legend),
    )


def boards_called(board: Board, cabinet: Cabinet, alike: Sequence[str] = ()) -> str:
    """What is drawn: the board, and how many are `alike`.

    >>> from shoplib.model.placement import Placement
    >>> boards = [Board(f"{way} side", "case", 1, "s", 9, 9, 9, Placement((0, 0, 0), ("+z", "+y", "-x")))
    ...           for way in ("left", "right")]
    >>> boards_called(boards[0], Cabinet("case", tuple(boards), {}), ("right side",))
    '2 x left side and right side'
    """
    if not alike:
        return board.name
    return f"{len(alike) + 1} x {boards_in_short([board, *(cabinet.by_name[name] for name in alike)])}"


def face_called(board: Board, cabinet: Cabinet, face: str) -> str:
    """What a drawn face is called, and which it is of several."""
    board = cabinet.by_name[board.name]
    drawn, seen = worked_faces(board, cabinet), Face(board, face)
    many = f" ({drawn.index(face) + 1} of {len(drawn)})" if len(drawn) > 1 else ""
    return f"{side_name(board, 2, 1 if seen.upper else -1, outline_of(board, cabinet))}{many}"


def size_lines(board: Board, page: Writing) -> list[str]:
    """What the legend begins with: sheet, stage, finished size, and the size at the saw where edging goes on.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("under_bench_case")
    >>> for line in size_lines(cabinet.by_name["left side"], Writing(cabinet.style, units=False)):
    ...     print(line)
    case sheet, stage 1. Finished size 33 1/2 × 22 1/2 × 0.703.
    Cut to 33 1/2 × 22 15/32 (+0.0115) × 0.703 before the edging goes on.
    """
    lines = [f"{board.sheet}, stage {board.stage}. Finished size {size_words(board.size, page)}."]
    if board.cut_size != board.size:
        lines.append(f"Cut to {size_words(board.cut_size, page)} before the edging goes on.")
    return lines


def size_words(size: tuple[int, int, int], page: Writing) -> str:
    """Length by width by thickness, the last as measured.

    >>> from shoplib.measure import MM, MM_STYLE
    >>> size_words((600 * MM, 300 * MM, 179 * MM // 10), Writing(MM_STYLE, units=False))
    '600 × 300 × 17.9'
    """
    length, width, thickness = size
    return f"{page.length(length)} × {page.length(width)} × {page.measured(thickness)}"


def _datums(board: Board) -> str:
    """From where the board is marked out."""
    end, edge = (side_name(board, own, datum_side(board, own)) for own in (0, 1))
    return f"Mark out from the {end} and the {edge}: {RUNNING}"


def _reach(board: Board, cuts: list[Cut], page: Writing) -> str:
    """How long a cut is that stops short of an end or edge of the board it runs along, and what to do there.

    A notch, which goes through, has both its sizes in its words already.
    """
    cut = cuts[0]
    if not isinstance(cut, BoxCut) or cut.high[2] - cut.low[2] >= board.thickness:
        return ""
    run = max((0, 1), key=lambda own: cut.high[own] - cut.low[own])
    long = cut.high[run] - cut.low[run]
    square = "; square the end that a router leaves round" if stops_short(board, cut) else ""
    return f", {page.length(long)} long{square}" if long < board.size[run] else square


def _line_words(face: Face, cabinet: Cabinet) -> Iterable[str]:
    """What each kind of line and mark means that this drawing has."""
    cuts = face.board.cuts
    if slide_rects(face, cabinet):
        yield "Dash and dot: where slides and runners lie against this face."
    if any(_behind(face, cut) for cut in cuts):
        yield "Dashed: cut in the other face, not in this one."
    if any(_on_edge(face, cut) for cut in cuts):
        yield "Dashed: inside the board, from an end or an edge."
    if any(face.through(cut) and not isinstance(cut, Hole) for cut in cuts):
        yield "Dashed round white: wood taken away, right through."
    if any(_bored_behind(face, cut) for cut in cuts):
        yield "Crosses: holes that are bored from the other face."


def _toward(name: str) -> str:
    return {"left": "left", "right": "right", "front": "to the front", "back": "to the back", "top": "up",
            "bottom": "down"}[name]


def _tagged(face: Face, first: bool, both: bool) -> list[tuple[str, list[Cut]]]:
    """A letter for each box cut seen on this face, and one for each set of equal holes, pockets or sockets.

    Cuts that open on an edge only belong to the `first` face that is drawn, and, where `both` are, holes that
    go right through to the face that they are bored from.
    """
    groups: dict[object, list[Cut]] = {}
    for number, cut in enumerate(face.board.cuts):
        if not face.opens_here(cut) and not (first and _on_edge(face, cut)):
            continue
        if both and _comes_through(face, cut):
            continue
        groups.setdefault(_alike(cut, number, face.board), []).append(cut)
    return [(letter(k), cuts) for k, cuts in enumerate(groups.values())]


def _alike(cut: Cut, number: int, board: Board) -> object:
    """What cuts have in common that share a letter: holes, and the pockets or the sockets of one end."""
    if isinstance(cut, Hole):
        return cut.kind, cut.diameter, cut.depth, cut.along
    if isinstance(cut, PrismCut) or cut.kind == "socket":
        return cut.kind, cut.for_board, 2 * cut.low[0] < board.length
    return number


def _on_edge(face: Face, cut: Cut) -> bool:
    """Whether the cut opens on neither face."""
    if isinstance(cut, Hole):
        return cut.along != "w"
    return cut.low[2] > 0 and cut.high[2] < face.board.thickness


def _cuts(face: Face, tags: list[tuple[str, list[Cut]]]) -> Iterable[Item]:
    """Cuts hatched, through cuts open, holes as circles, what opens on the other face dashed; then tags."""
    for cut in face.board.cuts:
        rect = face.extent(cut)
        if _bored_behind(face, cut):
            yield from _cross(rect)
        elif not face.opens_here(cut):
            yield from _dashed(rect)
        elif not isinstance(cut, Hole):
            if face.through(cut):
                yield Shape((rect,), "air", cut.kind)
            else:
                yield Shape((rect,), "cut", f"{cut.kind} for {cut.for_board}" if cut.for_board else cut.kind, "/")
        else:
            centre = ((rect[0] + rect[2]) // 2, (rect[1] + rect[3]) // 2)
            yield Disc(centre, cut.diameter, "air", cut.kind)
    for tag, cuts in tags:
        yield _tag(face, tag, cuts)


def _behind(face: Face, cut: Cut) -> bool:
    """Whether the cut opens on the other face alone and is no hole."""
    return not isinstance(cut, Hole) and not face.opens_here(cut) and not _on_edge(face, cut)


def _bored_behind(face: Face, cut: Cut) -> bool:
    """Whether the cut is a hole that is bored from the other face and does not come through."""
    return isinstance(cut, Hole) and cut.along == "w" and not face.opens_here(cut)


def _comes_through(face: Face, cut: Cut) -> bool:
    """Whether the cut is a hole that is bored right through from the other face."""
    return isinstance(cut, Hole) and face.through(cut) and (cut.centre[2] == 0) == face.upper


def _cross(rect: Rect) -> Iterable[Line]:
    """A centre mark: a dashed square would look like a mortise."""
    a, b, c, d = rect
    yield Line((a, (b + d) // 2), (c, (b + d) // 2), "thin")
    yield Line(((a + c) // 2, b), ((a + c) // 2, d), "thin")


def _slides(face: Face, cabinet: Cabinet) -> Iterable[Line]:
    """Where slides and runners lie against the face, in dash and dot."""
    for rect in slide_rects(face, cabinet):
        yield from _dashed(rect, "centre")


def _dashed(rect: Rect, kind: str = "hidden") -> Iterable[Line]:
    a, b, c, d = rect
    for start, end in (((a, b), (c, b)), ((c, b), (c, d)), ((c, d), (a, d)), ((a, d), (a, b))):
        yield Line(start, end, kind)


def _tag(face: Face, tag: str, cuts: list[Cut]) -> Leader:
    """Above for what runs across the board, for holes and for the sockets of an end, on the right for what runs along
    it; on the other side for a cut that lies in the half there alone, so that its leader does not cross the board.
    """
    rect = max((face.extent(cut) for cut in cuts), key=lambda r: r[3])
    a, b, c, d = rect
    box, board = isinstance(cuts[0], BoxCut), face.board
    inside = (d - b) // 12 if box else (d - b) // 2
    if not box or cuts[0].kind == "socket":
        return Leader(((a + c) // 2, d - inside), "above", tag, ringed=True)
    if c - a > d - b:
        from_end = min(c - a, board.length) // 40
        near = ("left", a + from_end) if 2 * c < board.length else ("right", c - from_end)
        return Leader((near[1], (b + d) // 2), near[0], tag, ringed=True)
    near = ("below", b + inside) if 2 * d < board.width else ("above", d - inside)
    return Leader(((a + c) // 2, near[1]), near[0], tag, ringed=True)


def _lines_out(items: Iterable[Item]) -> dict[str, list[int]]:
    """Where leaders and extension lines cross each edge of the board."""
    found: dict[str, list[int]] = {}
    for item in items:
        if isinstance(item, Leader):
            found.setdefault(item.side, []).append(item.point[item.side in ("left", "right")])
        elif isinstance(item, Running):
            found.setdefault(item.side, []).extend(item.at)
    return found


def _edges(face: Face, size: Rect, page: Writing, lines_out: Mapping[str, Sequence[int]]) -> Iterable[Item]:
    """The name of every edge along it, clear of the `lines_out` of the board; a thick line where it is banded."""
    a, b, c, d = size
    lines = {
        "left": ((a, b), (a, d)), "right": ((c, b), (c, d)),
        "below": ((a, b), (c, b)), "above": ((a, d), (c, d)),
    }
    edging = dict(face.board.edging)
    for side, name in face.edges.items():
        text = side_name(face.board, *face.sides[side])
        if name in edging:
            text = f"{text} ({edging[name].kind} {page.measured(edging[name].thickness)})"
            yield Line(*lines[side], "band")
        yield EdgeText(size, side, text, tuple(lines_out.get(side, ())))


def _grain(face: Face, cabinet: Cabinet) -> Item:
    """Words on the grain, and an arrow along it where it has a way: where nothing is cut, bored or led out, and off the
    places of slides too where there is room."""
    board = face.board
    whole = (0, 0, board.length, board.width)
    taken = [_with_leader(face, cut) for cut in board.cuts]
    rooms = (*empty_rooms(whole, [*taken, *slide_rects(face, cabinet)]), *empty_rooms(whole, taken), whole)
    if board.grain == "length":
        return Grain(rooms)
    return Label(rooms[0], ("grain either way", "any grain"), plate=True, rooms=rooms[1:-1], about=rooms[0])


def _with_leader(face: Face, cut: Cut) -> Rect:
    """The room that a cut takes with a little round it, so that its outline stays clear; above a hole its leader may
    run."""
    margin = face.board.width // 40
    a, b, c, d = face.extent(cut)
    top = face.board.width if isinstance(cut, Hole) else d + margin
    return a - margin, b - margin, c + margin, top
