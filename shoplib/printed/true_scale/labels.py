"""Labels for the boards, one for each piece: what it is, where it goes, its size at the saw, its reference sides."""

from shoplib.draw.face_on import FaceOn
from shoplib.lists.cut_list import Kind, kinds
from shoplib.lists.row_words import edging_words
from shoplib.lists.writing import Writing
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.printed.true_scale.label_picture import picture
from shoplib.printed.true_scale.reference import reference_face
from shoplib.printed.typeset import blocks as printed
from shoplib.printed.typeset.stamp import Stamp, plan_mark

HOW = (
    "Cut the labels apart along the dashed lines. Tape each to its board as soon as it leaves the saw, on the face "
    "that the label names, its arrow as it says: then no board is marked out from the wrong side, and the two of a "
    "mirrored pair are not taken for one another. The heavy lines of the small board are the edges to measure from."
)
"""Common practice, no source."""

_COLUMNS, _HIGH, _HIGHER = 2, 49.5, 61.8
"""Five rows on a page of either paper, or four where each label bears an alarm."""
_LOOKS = {"left": "looks left", "right": "looks right", "front": "looks to the front", "back": "looks to the back",
          "top": "looks up", "bottom": "looks down"}


def label_pages(cabinet: Cabinet, stamp: Stamp | None = None) -> list[printed.Block]:
    """Every board, in the order of the cut list, with the number of its row there; with a `stamp`, of which plan.

    Where the plan is stopped each label says so: cut apart, most have nothing of what stands across the page.

    >>> [block.text for block in label_pages(Cabinet("Trial", (), {})) if isinstance(block, printed.Heading)]
    ['Labels']
    """
    cells = tuple(
        _label(board, number, kind, cabinet, stamp)
        for number, kind in enumerate(kinds(cabinet), start=1) for board in kind.boards
    )
    high = _HIGHER if stamp and stamp.stopped else _HIGH
    return [printed.Heading("Labels"), printed.Words(HOW), printed.Labels(cells, _COLUMNS, high)]


def _label(board: Board, number: int, kind: Kind, cabinet: Cabinet, stamp: Stamp | None) -> printed.Label:
    page = Writing(cabinet.style)
    length, width, thickness = board.cut_size
    looking = reference_face(board, kind, cabinet)
    face = FaceOn(board, looking)
    called = face.called(cabinet)
    edges = (face.edge("left" if face.datum_left else "right"), face.edge("below"))
    told = f"{called}, {_LOOKS[looking]}" if face.in_or_out(cabinet) else called
    lines = (
        f"Goes to: {board.group}",
        f"Stage {board.stage}, cut list no. {number}, from {board.sheet}",
        f"Saw size: {page.length(length)} × {page.length(width)} × {page.measured(thickness)}",
        *((f"Then edging: {edging}",) if (edging := edging_words(kind, page)) else ()),
        f"Lies on: {told}",
        f"Measure from: {edges[0]} and {edges[1]}",
    )
    alarm = stamp.stopped if stamp else ""
    return printed.Label(board.name, lines, *picture(face, called, edges, plan_mark(stamp)), alarm)
