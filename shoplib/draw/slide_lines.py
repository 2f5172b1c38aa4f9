"""Where slides and wood runners are fixed to a board, in words to mark it out by."""

from collections.abc import Iterable

from shoplib.draw.board_face import Face, faces
from shoplib.draw.scene import Rect
from shoplib.lists.sides import datum_side, looks, outline_of, side_name
from shoplib.lists.writing import Writing
from shoplib.model.board import Board
from shoplib.model.box import Box
from shoplib.model.solved import Cabinet
from shoplib.model.uprights import UPRIGHTS
from shoplib.words.naming import and_list, in_short


def fixed_on(board: Board, cabinet: Cabinet) -> list[tuple[str, str, Box]]:
    """What is fixed to a face of the board, as (what, of which drawer, where in the world): slides and runners.

    Which upright they are on is known by its name: they lie where their opening was measured, the upright stands where
    it was planned, and need not touch them there.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> [(what, group) for what, group, _ in fixed_on(cabinet.by_name["divider 1"], cabinet)]
    [('slide', 'bay 1 drawer 1'), ('slide', 'bay 1 drawer 2'), ('slide', 'bay 1 drawer 3')]
    """
    receives = {joint.enters: joint.receives for joint in cabinet.joints}
    found = [("slide", h.group, h.on, h.box) for h in cabinet.hardware if h.what == "slide"]
    found += [(b.role, b.group, receives.get(b.name), b.box) for b in cabinet.boards if b.role in ("runner", "kicker")]
    return [
        (what, group, box) for what, group, on, box in found
        if on == board.name or (board.group == group and _touches(board, box))
    ]


def side_towards(board: Board, box: Box) -> int:
    """The face that a box of the cabinet is fixed to, -1 low or 1 high in the board's own coordinates.

    >>> from shoplib.model.placement import Placement
    >>> board = Board("side", "case", 1, "ply", 9, 9, 4, Placement((0, 0, 0), ("+x", "+y", "+z")))
    >>> [side_towards(board, Box((0, 0, low), (9, 9, low + 2))) for low in (-2, 4, 3, 5)]
    [-1, 1, 1, 1]
    """
    there = board.placement.to_board(box)
    return 1 if there.low[2] + there.high[2] > board.thickness else -1


def _touches(board: Board, box: Box) -> bool:
    """Whether it lies against one of the two faces."""
    there = board.placement.to_board(box)
    covers = all(there.low[k] < board.size[k] and there.high[k] > 0 for k in (0, 1))
    return covers and (there.high[2] == 0 or there.low[2] == board.thickness)


def slide_rects(face: Face, cabinet: Cabinet) -> list[Rect]:
    """Where slides and runners lie against the face that is drawn, clipped to the board.

    >>> from shoplib.documents.examples import cabinet_from
    >>> from shoplib.measure import MM
    >>> cabinet = cabinet_from("rolling_stand")
    >>> first = slide_rects(Face(cabinet.by_name["divider 1"], "left"), cabinet)[0]
    >>> [place / MM for place in first]
    [170.5, 2.0, 215.5, 552.0]
    """
    board, side = face.board, 1 if face.upper else -1
    found = []
    for _, _, box in fixed_on(board, cabinet):
        if side_towards(board, box) == side:
            a, b, c, d = face.flat(board.placement.to_board(box))
            found.append((max(a, 0), max(b, 0), min(c, board.length), min(d, board.width)))
    return found


def worked_faces(board: Board, cabinet: Cabinet) -> tuple[str, ...]:
    """The faces to draw: every one with cuts of its own, and of an upright or a panel those that carry slides.

    A box side carries one slide, in the middle of its outside: words tell it. A board with nothing on either
    face is shown from its upper one.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("under_bench_case")
    >>> [worked_faces(cabinet.by_name[name], cabinet) for name in ("left side", "divider 1")]
    [('right',), ('left', 'right')]
    """
    own = faces(board)
    both = (looks(board, 2, 1), looks(board, 2, -1))
    carrying = [name for name in both if slide_rects(Face(board, name), cabinet)]
    if board.role not in (*UPRIGHTS, "panel") or not carrying:
        return own
    cut = [name for name in own if _has_own_cuts(Face(board, name))]
    return tuple(name for name in both if name in carrying or name in cut)


def _has_own_cuts(face: Face) -> bool:
    return any(face.opens_here(cut) and not face.through(cut) for cut in face.board.cuts)


def carries(board: Board, cabinet: Cabinet) -> set[tuple[str, tuple[Rect, ...]]]:
    """The faces of a board that carry slides, each with where they lie: what two equal boards may differ in.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("rolling_stand")
    >>> {name: len(rects) for name, rects in carries(cabinet.by_name["divider 1"], cabinet)}
    {'left': 3}
    """
    found = {(name, tuple(slide_rects(Face(board, name), cabinet))) for name in worked_faces(board, cabinet)}
    return {(name, rects) for name, rects in found if rects}


def slide_lines(boards: Iterable[Board], cabinet: Cabinet, page: Writing, face: Face | None = None) -> list[str]:
    """One line for each face and kind of fitting: lower edges and setbacks, from the datum end and edge.

    With `face`, only what lies on that face.

    Equal boards that carry their slides alike are told once; else each is told with its own sides.

    >>> from shoplib.documents.examples import cabinet_from
    >>> cabinet = cabinet_from("wheel_wall_drawers")
    >>> lines = slide_lines(cabinet.boards, cabinet, Writing(cabinet.style))
    >>> [line.partition(":")[0] for line in lines]
    ['On left side and right side, inside face', 'On divider 1, left face', 'On divider 1, right face']
    >>> lines[0].partition(": ")[2]
    'runner of case, lower edge 3 7/16 in from the bottom end, set back 1/4 in from the front edge.'
    """
    told: dict[str, list[str]] = {}
    for board in boards:
        if board.role not in (*UPRIGHTS, "box side", "panel"):
            continue
        for words in _of(board, cabinet, page, face):
            told.setdefault(words, []).append(board.name)
    alike = len({name for names in told.values() for name in names})
    return [
        f"{words[0].upper()}{words[1:]}" if len(names) == alike else f"On {and_list(in_short(names))}, {words}"
        for words, names in told.items()
    ]


def _of(board: Board, cabinet: Cabinet, page: Writing, face: Face | None) -> list[str]:
    """The lines of one board, each beginning with the name of the face."""
    outline = outline_of(board, cabinet)
    rows: dict[tuple[str, int, int], list[tuple[str, int]]] = {}
    up = board.placement.own_axis(2)
    back = board.placement.own_axis(1)
    for what, group, box in fixed_on(board, cabinet):
        side = side_towards(board, box)
        if face is not None and side != (1 if face.upper else -1):
            continue
        there = board.placement.to_board(box)
        height, setback = (_from_datum(board, there, own) for own in (up, back))
        rows.setdefault((what, side, setback), []).append((group, height))
    found = []
    for (what, side, setback), at in rows.items():
        at.sort(key=lambda pair: pair[1])
        whose = "" if board.group != "case" else f" of {and_list(in_short(dict.fromkeys(group for group, _ in at)))}"
        noun = what if len(at) == 1 else f"{what}s"
        places = and_list([page.length(height) for _, height in at])
        edge = "lower edge" if len(at) == 1 else "lower edges"
        found.append(
            f"{side_name(board, 2, side, outline)}: {noun}{whose}, {edge} {places} from the "
            f"{side_name(board, up, datum_side(board, up))}, set back {page.length(setback)} from the "
            f"{side_name(board, back, datum_side(board, back))}."
        )
    return found


def _from_datum(board: Board, there: Box, own: int) -> int:
    return there.low[own] if datum_side(board, own) < 0 else board.size[own] - there.high[own]
