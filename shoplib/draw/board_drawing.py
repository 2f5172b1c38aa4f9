"""One kind of board, flat, with every cut dimensioned from one datum corner."""

from collections.abc import Iterable
from string import ascii_uppercase

from shoplib.draw.board_face import Face, faces
from shoplib.draw.chains import stacked, unit_note
from shoplib.draw.look import fill_of
from shoplib.draw.scene import (
    Chain,
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
from shoplib.draw.slide_lines import slide_lines, slide_rects
from shoplib.lists.cut_words import cut_words
from shoplib.lists.sides import datum_side, outline_of, side_name
from shoplib.lists.writing import Writing
from shoplib.measure import Style
from shoplib.model.board import Board, BoxCut, Cut, Hole
from shoplib.model.solved import Cabinet
from shoplib.words.naming import boards_in_short


def board_drawing(board: Board, cabinet: Cabinet, style: Style, face: str | None = None,
                  alike: tuple[str, ...] = ()) -> Scene:
    """The board seen on one `face` (see `faces`; without one, the first), `alike` naming the equal boards.

    The edge names along it keep it from being mirrored. Cuts that open on the other face are dashed.
    Raises ValueError where the board has no such face, and KeyError where the board is not of the cabinet.
    """
    seen = Face(cabinet.by_name[board.name], face or faces(board)[0])
    if seen.name not in faces(board):
        raise ValueError(f"{board.name} has no {face} face to draw: draw {' or '.join(faces(board))}")
    page, side = Writing(style, units=False), 1 if seen.upper else -1
    called = side_name(board, 2, side, outline_of(board, cabinet))
    tags = _tagged(seen)
    size = (0, 0, board.length, board.width)
    legend = [f"{board.sheet}, stage {board.stage}. Finished size {_size(board.size, page)}."]
    if board.cut_size != board.size:
        legend.append(f"Cut to {_size(board.cut_size, page)} before the edging goes on.")
    legend += [
        f"{tag}: {'; '.join(cut_words(board, cabinet, page, cuts))}{_reach(board, cuts, page)}." for tag, cuts in tags
    ]
    legend += slide_lines([board, *(cabinet.by_name[name] for name in alike)], cabinet, page)
    if slide_rects(seen, cabinet):
        legend.append("Dash and dot: where slides and runners lie against this face.")
    title = board.name
    if alike:
        title = f"{len(alike) + 1} x {boards_in_short([board, *(cabinet.by_name[name] for name in alike)])}"
        legend.append(f"The drawing and the letters name sides as they are on {board.name}.")
    items: list[Item] = [
        Shape((size,), fill_of(board), board.name),
        *_slides(seen, cabinet), *_cuts(seen, tags), *_edges(seen, size, page), *_grain(seen),
        *_dimensions(seen, tags, page),
    ]
    many = f" ({faces(board).index(seen.name) + 1} of {len(faces(board))})" if len(faces(board)) > 1 else ""
    return Scene(
        f"{title}: {called}{many}",
        unit_note(style, f"You look at the face that looks {_toward(seen.name)} in the cabinet. {_datums(board)}"),
        f"{title}, {called}. " + " ".join(legend), size, tuple(items), tuple(legend),
    )


def _size(size: tuple[int, int, int], page: Writing) -> str:
    length, width, thickness = size
    return f"{page.length(length)} × {page.length(width)} × {page.measured(thickness)}"


def _datums(board: Board) -> str:
    """From where the board is marked out."""
    end, edge = (side_name(board, own, datum_side(board, own)) for own in (0, 1))
    return (f"Mark out from the {end} and the {edge}: running distances begin there, at the small rings, and go to "
            "near walls of cuts and centres of holes.")


def _reach(board: Board, cuts: list[Cut], page: Writing) -> str:
    """How long a cut is that stops short of an end or edge of the board it runs along.

    A notch, which goes through, has both its sizes in its words already.
    """
    cut = cuts[0]
    if not isinstance(cut, BoxCut) or cut.high[2] - cut.low[2] >= board.thickness:
        return ""
    run = max((0, 1), key=lambda own: cut.high[own] - cut.low[own])
    long = cut.high[run] - cut.low[run]
    return f", {page.length(long)} long" if long < board.size[run] else ""


def _toward(name: str) -> str:
    return {"left": "left", "right": "right", "front": "to the front", "back": "to the back", "top": "up",
            "bottom": "down"}[name]


def _tagged(face: Face) -> list[tuple[str, list[Cut]]]:
    """A letter for each box cut seen on this face, and one for each set of equal holes."""
    groups: dict[object, list[Cut]] = {}
    for number, cut in enumerate(face.board.cuts):
        if not face.opens_here(cut) and not _on_edge(face, cut):
            continue
        key = (cut.kind, cut.diameter, cut.depth, cut.along) if isinstance(cut, Hole) else number
        groups.setdefault(key, []).append(cut)
    return [(_letter(k), cuts) for k, cuts in enumerate(groups.values())]


def _on_edge(face: Face, cut: Cut) -> bool:
    """Cuts that open on an edge only belong to the first face drawn."""
    if face.name != faces(face.board)[0]:
        return False
    if isinstance(cut, Hole):
        return cut.along != "w"
    return cut.low[2] > 0 and cut.high[2] < face.board.thickness


def _letter(number: int) -> str:
    """A to Z, then AA, AB and so on."""
    first, last = divmod(number, 26)
    return (ascii_uppercase[first - 1] if first else "") + ascii_uppercase[last]


def _cuts(face: Face, tags: list[tuple[str, list[Cut]]]) -> Iterable[Item]:
    """Cuts hatched, through cuts open, holes as circles, what opens on the other face dashed; then tags."""
    for cut in face.board.cuts:
        rect = face.extent(cut)
        if not face.opens_here(cut):
            yield from _dashed(rect)
        elif isinstance(cut, BoxCut):
            if face.through(cut):
                yield Shape((rect,), "air", cut.kind)
            else:
                yield Shape((rect,), "cut", f"{cut.kind} for {cut.for_board}" if cut.for_board else cut.kind, "/")
        else:
            centre = ((rect[0] + rect[2]) // 2, (rect[1] + rect[3]) // 2)
            yield Disc(centre, cut.diameter, "air", cut.kind)
    for tag, cuts in tags:
        yield _tag(face, tag, cuts)


def _slides(face: Face, cabinet: Cabinet) -> Iterable[Line]:
    """Where slides and runners lie against the face, in dash and dot."""
    for rect in slide_rects(face, cabinet):
        yield from _dashed(rect, "centre")


def _dashed(rect: Rect, kind: str = "hidden") -> Iterable[Line]:
    a, b, c, d = rect
    for start, end in (((a, b), (c, b)), ((c, b), (c, d)), ((c, d), (a, d)), ((a, d), (a, b))):
        yield Line(start, end, kind)


def _tag(face: Face, tag: str, cuts: list[Cut]) -> Leader:
    """Above for what runs across the board and for holes, on the right for what runs along it."""
    rect = max((face.extent(cut) for cut in cuts), key=lambda r: r[3])
    a, b, c, d = rect
    if isinstance(cuts[0], BoxCut) and c - a > d - b:
        return Leader((c - min(c - a, face.board.length) // 40, (b + d) // 2), "right", tag, ringed=True)
    inside = (d - b) // 12 if isinstance(cuts[0], BoxCut) else (d - b) // 2
    return Leader(((a + c) // 2, d - inside), "above", tag, ringed=True)


def _edges(face: Face, size: Rect, page: Writing) -> Iterable[Item]:
    """The name of every edge along it, thick where it is banded."""
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
        yield EdgeText(size, side, text)


def _grain(face: Face) -> Iterable[Item]:
    """An arrow along the grain, where no cut is in its way if there is such a place."""
    board = face.board
    taken = [_with_leader(face, cut) for cut in board.cuts]
    half, margin = board.length // 8, board.width // 24
    places = [
        (board.length * across // 24, board.width * up // 24)
        for across in (12, 9, 15, 7, 17, 4, 20) for up in (12, 9, 15, 7, 17, 5, 19, 3, 21)
    ]
    free = [
        (x, y) for x, y in places
        if not any(r[0] < x + half and x - half < r[2] and r[1] - margin < y < r[3] + margin for r in taken)
    ]
    middle, at = (free or places)[0]
    if board.grain == "length":
        yield Line((middle - half, at), (middle + half, at), "grain")
    if board.grain == "length" and board.width * 10 > board.length:
        yield EdgeText((middle - half, at, middle + half, at), "above", "grain")
    else:
        room = (middle - 3 * half, at - board.width // 2, middle + 3 * half, at + board.width // 2)
        words = ("grain",) if board.grain == "length" else ("grain either way", "any grain")
        yield Label(room, words, plate=True)


def _with_leader(face: Face, cut: Cut) -> Rect:
    """The room that a cut takes; above a hole its leader may run."""
    a, b, c, d = face.extent(cut)
    return (a, b, c, face.board.width) if isinstance(cut, Hole) else (a, b, c, d)


def _dimensions(face: Face, tags: list[tuple[str, list[Cut]]], page: Writing) -> Iterable[Item]:
    """Running distances along and across, then the whole length and width.

    To the far wall of a cut that begins at the datum is the width of that cut, and written as such.
    """
    board = face.board
    cuts = [(face.extent(cut), isinstance(cut, Hole)) for _, group in tags for cut in group]
    spans = [(a, c, c - a > d - b, hole) for (a, b, c, d), hole in cuts]
    if not face.datum_left:
        spans = [(board.length - high, board.length - low, runs, hole) for low, high, runs, hole in spans]
    along = _stations(spans, board.length)
    spans = [(b, d, d - b > c - a, hole) for (a, b, c, d), hole in cuts]
    if not face.datum_below:
        spans = [(board.width - high, board.width - low, runs, hole) for low, high, runs, hole in spans]
    across = _stations(spans, board.width)
    measured = {
        cut.high[own] - cut.low[own]
        for _, group in tags for cut in group for own in (0, 1) if isinstance(cut, BoxCut) and not face.through(cut)
    }
    for side, distances, datum, way, whole in (
        ("below", along, 0 if face.datum_left else board.length, 1 if face.datum_left else -1, board.length),
        ("left", across, 0 if face.datum_below else board.width, 1 if face.datum_below else -1, board.width),
    ):
        if distances:
            texts = tuple(stacked((page.measured if s in measured else page.length)(s)) for s in distances)
            yield Running(side, 0, datum, tuple(datum + way * s for s in distances), texts)
        yield Chain(side, 1, (0, whole), (page.length(whole),))


def _stations(spans: list[tuple[int, int, bool, bool]], whole: int) -> tuple[int, ...]:
    """From the datum edge to the near wall of a cut, to both ends of a stopped one, to the centre of a hole.

    A span is (low, high, runs this way, hole); a cut that begins at the datum is measured to its far wall.
    """
    found: set[int] = set()
    for low, high, runs, hole in spans:
        if hole:
            found.add((low + high) // 2)
        elif low <= 0:
            found.add(high)
        else:
            found.add(low)
            if runs:
                found.add(high)
    return tuple(sorted(s for s in found if 0 < s < whole))
