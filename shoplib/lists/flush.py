"""Fronts whose faces come out of line: inset ones with the front edges of the case, overlay ones with each other."""

from shoplib.lists.typed import all_of
from shoplib.model.board import Board
from shoplib.model.solved import Cabinet
from shoplib.words.amounts import how_much, setting

_DEPTH = 1
"""The world axis from front to back; the face of a front is its low end."""

_FEW_STEPS = 4
"""Below that many steps a caliper's decimal is told: it comes of a sheet's thickness."""


def out_of_flush(built: Cabinet, planned: Cabinet) -> list[str]:
    """One sentence for the fronts that stand behind or in front of what their faces were planned in line with.

    Overlay fronts that all moved alike are still in line.
    """
    edges = min((board.box.low[_DEPTH] for board in planned.groups.get("case", ())), default=None)
    off: dict[tuple[str, int], list[Board]] = {}
    for face, fronts in _by_face(planned).items():
        now = [built.by_name[board.name].box.low[_DEPTH] for board in fronts]
        # Where none is in its place, most of them are what the others are seen to stand off.
        line = face if face == edges or face in now else max(now, key=now.count)
        what = "the front edges of the case" if face == edges else "the faces of the other fronts"
        for board, at in zip(fronts, now, strict=True):
            if at != line:
                off.setdefault((what, at - line), []).append(board)
    return [
        f"{all_of(boards, planned)} {'stands' if len(boards) == 1 else 'stand'} {_by(moved, planned)} {line}"
        for (line, moved), boards in off.items()
    ]


def _by_face(planned: Cabinet) -> dict[int, list[Board]]:
    found: dict[int, list[Board]] = {}
    for board in planned.boards:
        if board.role == "front":
            found.setdefault(board.box.low[_DEPTH], []).append(board)
    return found


def _by(moved: int, planned: Cabinet) -> str:
    say = how_much if abs(moved) >= _FEW_STEPS * planned.style.step else setting
    return f"{say(abs(moved), planned.style)} {'behind' if moved > 0 else 'in front of'}"
