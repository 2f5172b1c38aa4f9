"""Labels for the boards, one for each piece: what it is, where it goes, its size at the saw, its reference sides."""

from shoplib.documents.paper import Paper
from shoplib.draw.face_on import FaceOn
from shoplib.draw.true_scale import Area, Item, Layer, Stroke, Words, frame, true_svg
from shoplib.lists.cut_list import Kind, kinds
from shoplib.lists.row_words import edging_words
from shoplib.lists.writing import Writing
from shoplib.measure import MM
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.reference import reference_face
from shoplib.printed.typeset import blocks as printed
from shoplib.printed.typeset.stamp import Stamp, plan_mark

HOW = (
    "Cut the labels apart along the dashed lines. Tape each to its board as soon as it leaves the saw, on the face "
    "that the label names, its arrow as it says: then no board is marked out from the wrong side, and the two of a "
    "mirrored pair are not taken for one another. The heavy lines of the small board are the edges to measure from."
)
"""Common practice, no source."""

_COLUMNS, _HIGH = 2, 41.0
_ACROSS, _UP = 29 * MM, 32 * MM
"""The picture of a board, its arrows included."""
_LONG, _SHORT, _ROOM = 20 * MM, 5 * MM, 7 * MM
_LOOKS = {"left": "looks left", "right": "looks right", "front": "looks to the front", "back": "looks to the back",
          "top": "looks up", "bottom": "looks down"}


def label_pages(cabinet: Cabinet, paper: Paper, stamp: Stamp | None = None) -> list[printed.Block]:
    """Every board, in the order of the cut list, with the number of its row there; with a `stamp`, of which plan."""
    cells = tuple(
        _label(board, number, kind, cabinet, plan_mark(stamp))
        for number, kind in enumerate(kinds(cabinet), start=1) for board in kind.boards
    )
    return [printed.Heading("Labels"), printed.Words(HOW), printed.Labels(cells, _COLUMNS, _HIGH)]


def _label(board: Board, number: int, kind: Kind, cabinet: Cabinet, mark: str) -> printed.Label:
    page = Writing(cabinet.style)
    length, width, thickness = board.cut_size
    looking = reference_face(board, kind, cabinet)
    face = FaceOn(board, looking)
    called = face.called(cabinet)
    edges = (face.edge("left" if face.datum_left else "right"), face.edge("below"))
    told = called if called.startswith(looking) else f"{called}, {_LOOKS[looking]}"
    lines = (
        f"Goes to: {board.group}",
        f"Stage {board.stage}, cut list no. {number}, from {board.sheet}",
        f"Saw size: {page.length(length)} × {page.length(width)} × {page.measured(thickness)}",
        *((f"Then edging: {edging}",) if (edging := edging_words(kind, page)) else ()),
        f"Lies on: {told}",
        f"Measure from: {edges[0]} and {edges[1]}",
    )
    return printed.Label(board.name, lines, *_picture(face, called, edges, mark))


def _picture(face: FaceOn, called: str, edges: tuple[str, str], mark: str) -> tuple[str, str]:
    """The face as it stands in the cabinet, not to scale: edges to measure from, grain, arrow; and its words."""
    wide, high = _shape(face.size)
    left, low = _ROOM + (_ACROSS - _ROOM - wide) // 2, (_UP - high) // 2
    rect = (left, low, left + wide, low + high)
    up = "up" if face.up[0] == 2 else "to the back"
    items: list[Item] = [Area(rect, "#f1efe9"), frame(rect, "thin")]
    datum = rect[0] if face.datum_left else rect[2]
    items.append(Stroke(((datum, rect[1]), (datum, rect[3])), "bold"))
    items.append(Stroke(((rect[0], rect[1]), (rect[2], rect[1])), "bold"))
    items += _arrow((3 * MM, _UP // 2 - 9 * MM), (3 * MM, _UP // 2 + 9 * MM), False)
    items.append(Words((3 * MM + MM * 5 // 2, _UP // 2), up, 2.4, "middle", turned=True))
    grain = _grain(face)
    if grain:
        items += _along_grain(rect, grain)
    if mark:
        items.append(Words((_ACROSS, 2 * MM), mark, 2.2, "end"))
    said = f"The grain runs {grain}." if grain else "The grain may run either way."
    alt = (f"The {called} as it stands in the cabinet, not to scale, with an arrow {up}; the {edges[0]} and the "
           f"{edges[1]} are heavy. {said}")
    return true_svg((_ACROSS, _UP), [Layer(tuple(items))], face.board.name, alt), alt


def _shape(size: tuple[int, int]) -> tuple[int, int]:
    """The board's proportions as far as they can be seen so small."""
    longest = max(size)
    return tuple(max(side * _LONG // longest, _SHORT) for side in size)


def _grain(face: FaceOn) -> str:
    if face.board.grain != "length":
        return ""
    across = face.board.placement.own_axis(face.right[0]) == 0
    return "across" if across else ("up and down" if face.up[0] == 2 else "from front to back")


def _along_grain(rect: tuple[int, int, int, int], grain: str) -> list[Item]:
    """A line with a head at both ends in the middle of the board, named."""
    a, b, c, d = rect
    x, y = (a + c) // 2, (b + d) // 2
    if grain == "across":
        half = (c - a) * 2 // 5
        at = Words((x, y + 2 * MM), "grain", 2.2, "middle") if d - b > 9 * MM else None
        line = _arrow((x - half, y), (x + half, y), True)
    else:
        half = (d - b) * 2 // 5
        at = Words((x - 2 * MM, y), "grain", 2.2, "middle", turned=True) if c - a > 9 * MM else None
        line = _arrow((x, y - half), (x, y + half), True)
    return [*line, at] if at else line


def _arrow(start: tuple[int, int], end: tuple[int, int], both: bool) -> list[Item]:
    """A level or an upright line with a head at its end, or at both."""
    level = start[1] == end[1]
    lines: list[Item] = [Stroke((start, end), "ring")]
    for (x, y), way in ((end, 1), (start, -1)) if both else ((end, 1),):
        back, aside = -way * 2 * MM, MM * 4 // 5
        wings = [(x + back, y + s * aside) if level else (x + s * aside, y + back) for s in (1, -1)]
        lines.append(Stroke((wings[0], (x, y), wings[1]), "ring"))
    return lines
