"""One kind of board, flat, with every cut dimensioned from one datum corner."""

from collections.abc import Iterable, Mapping, Sequence

from shoplib.draw.between import between
from shoplib.draw.board_dimensions import dimensions, stops_short
from shoplib.draw.board_face import Face
from shoplib.draw.chains import unit_note
from shoplib.draw.look import fill_of
from shoplib.draw.scene import (
    Disc,
    EdgeText,
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
    if slide_rects(seen, cabinet):
        legend.append("Dash and dot: where slides and runners lie against this face.")
    if any(_bored_behind(seen, cut) for cut in seen.board.cuts):
        legend.append("Crosses: holes that are bored from the other face.")
    if len(drawn) > 1 and any(_comes_through(seen, cut) for cut in seen.board.cuts):
        legend.append("Without a letter: holes bored right through from the other face; its drawing tells them.")
    title = board.name
    if alike:
        title = f"{len(alike) + 1} x {boards_in_short([board, *(cabinet.by_name[name] for name in alike)])}"
        legend.append(f"The drawing and the letters name sides as they are on {board.name}.")
    cuts_drawn = list(_cuts(seen, tags))
    sizes = list(dimensions(seen, [cut for _, cuts in tags for cut in cuts], page))
    items: list[Item] = [
        Shape((size,), fill_of(board), board.name), *_slides(seen, cabinet), *cuts_drawn,
        *_edges(seen, size, page, _lines_out([*cuts_drawn, *sizes])), *_grain(seen), *sizes,
    ]
    many = f" ({drawn.index(seen.name) + 1} of {len(drawn)})" if len(drawn) > 1 else ""
    return Scene(
        f"{title}: {called}{many}",
        unit_note(style, f"You look at the face that looks {_toward(seen.name)} in the cabinet. {_datums(board)}"),
        f"{title}, {called}. " + " ".join(legend), size, tuple(items), tuple(legend),
    )


def size_lines(board: Board, page: Writing) -> list[str]:
    """What the legend begins with: sheet, stage, finished size, and the size at the saw where edging goes on."""
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
    it.
    """
    rect = max((face.extent(cut) for cut in cuts), key=lambda r: r[3])
    a, b, c, d = rect
    if isinstance(cuts[0], BoxCut) and cuts[0].kind != "socket" and c - a > d - b:
        return Leader((c - min(c - a, face.board.length) // 40, (b + d) // 2), "right", tag, ringed=True)
    inside = (d - b) // 12 if isinstance(cuts[0], BoxCut) else (d - b) // 2
    return Leader(((a + c) // 2, d - inside), "above", tag, ringed=True)


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
    """The name of every edge along it, clear of the `lines_out` of the board, thick where it is banded."""
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
        flat = side in ("below", "above")
        low, high = between(lines_out.get(side, ()), c if flat else d)
        yield EdgeText((low, b, high, d) if flat else (a, low, c, high), side, text)


_WORD = 7
"""On a small drawing the word over the arrow reaches so far above it: a seventh of the length of the board."""


def _grain(face: Face) -> Iterable[Item]:
    """An arrow along the grain, where no cut is in its way, nor in that of its word, if there is such a place."""
    board = face.board
    half = board.length // 8
    places = [
        (board.length * across // 24, board.width * up // 24)
        for across in (12, 9, 15, 7, 17, 4, 20) for up in (12, 9, 15, 7, 17, 5, 19, 3, 21)
    ]
    words = (board.length // _WORD, board.length // (2 * _WORD), 0)
    free = next((found for word in words if (found := _free(face, places, half, word))), places)
    middle, at = free[0]
    if board.grain == "length":
        yield Line((middle - half, at), (middle + half, at), "grain")
    if board.grain == "length" and board.width * 10 > board.length:
        yield EdgeText((middle - half, at, middle + half, at), "above", "grain")
    else:
        room = (middle - 3 * half, at - board.width // 2, middle + 3 * half, at + board.width // 2)
        words = ("grain",) if board.grain == "length" else ("grain either way", "any grain")
        yield Label(room, words, plate=True)


def _free(face: Face, places: list[tuple[int, int]], half: int, word: int) -> list[tuple[int, int]]:
    """The places where an arrow, `half` its length to either side, and the `word` over it keep off all cuts."""
    taken, margin = [_with_leader(face, cut) for cut in face.board.cuts], face.board.width // 24
    return [
        (x, y) for x, y in places
        if not any(r[0] < x + half and x - half < r[2] and r[1] - max(margin, word) < y < r[3] + margin for r in taken)
    ]


def _with_leader(face: Face, cut: Cut) -> Rect:
    """The room that a cut takes; above a hole its leader may run."""
    a, b, c, d = face.extent(cut)
    return (a, b, c, face.board.width) if isinstance(cut, Hole) else (a, b, c, d)
