"""Enough wood must be left under cuts, between cuts, and beyond a cut near an end."""

from collections.abc import Iterator
from dataclasses import dataclass, replace
from itertools import combinations

from shoplib.measure import Style, narrowest, thickest, write_brief
from shoplib.measure.noted import stated
from shoplib.measure.traced import limit
from shoplib.model.board import LEAST_WOOD, Board, BoxCut, Hole
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import setting
from shoplib.words.naming import boards_in_short

LEAST = limit(LEAST_WOOD, "the least wood that holds")
"""Less wood than this is a "stop". Common practice, no source."""


THROUGH = ("notch", "socket")
"""Cuts from face to face, which leave no wood under them and are not meant to."""


@dataclass(frozen=True, slots=True)
class Thin:
    """A thin place of a board: what is left, between which cuts, and how it is judged.

    `where` has a place for each of `cuts`. `under_half` is the level where less than half the
    thickness is left, `under_least` where less than 3 mm is; empty is no finding.
    """

    left: int
    where: str
    cuts: tuple[BoxCut, ...]
    under_half: str
    under_least: str = "stop"

    def level(self, thickness: int) -> str:
        """"stop", "warn", or empty where enough wood is left of this thickness."""
        if self.left < LEAST:
            return self.under_least
        return self.under_half if 2 * self.left < thickness else ""


def thin_places(board: Board) -> Iterator[Thin]:
    """Every place of the board where a cut leaves wood between itself and a face, an end or another cut.

    Notches, sockets and holes that go right through do so on purpose and are left out.
    """
    cuts = [cut for cut in board.cuts if isinstance(cut, BoxCut) and cut.kind not in THROUGH]
    for cut in cuts:
        yield from _to_the_faces(board, cut)
        yield from _to_the_ends(board, cut)
    for one, other in combinations(cuts, 2):
        yield from _between(one, other)
    for hole in dict.fromkeys(_blind_holes(board)):
        yield Thin(board.thickness - hole.box.size[2], f"before the point of the {hole.kind} holes", (), "")
        for cut in cuts:
            yield from _behind_hole(hole, cut)


def find_thin_wood(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "stop" under 3 mm, a "warn" under half the board's thickness; exactly half is fine.

    Through the thickness the wood under a cut and between cuts from opposite faces counts, along
    the board the wall between two cuts and the short grain between a cut and the end; before a bored
    hole 3 mm are enough. A tongue may be thinner than half: that is what its joint is.

    One place may keep less than 3 mm, and gets a "note": where the groove for a bottom runs through the
    tongue of a box corner, its front's too. Boxes with such corners and bottoms are made so; the tongue holds above and
    below the groove, and what is thin is no larger than the board is thick. Common practice, no source.

    Equal places, such as those of all drawers, are one finding; the amount is the wood that is left.
    """
    tongues: dict[str, dict[str, int]] = {}
    locked = {(joint.receives, joint.enters) for joint in cabinet.joints if joint.kind == "drawer lock"}
    for joint in cabinet.joints:
        if joint.tongue:
            tongues.setdefault(joint.enters, {})[joint.receives] = joint.tongue
    places: dict[tuple, list[Board]] = {}
    for board in cabinet.boards:
        if not board.cuts:
            continue
        for place in thin_places(board):
            level = place.level(board.thickness)
            own = tongues.get(board.name, {})
            if level == "warn" and place.left in own.values():
                continue
            if level == "warn" and _short_by_design(board, place, locked):
                continue
            if level == "stop" and _groove_through_tongue(cabinet, board, place.cuts, own):
                level = "note"
            if level:
                where = place.where.format(*(_called(cabinet, cut) for cut in place.cuts))
                owners = places.setdefault((level, place.left, where, board.thickness), [])
                if not owners or owners[-1] is not board:
                    owners.append(board)
    return tuple(_finding(cabinet, *place, owners) for place, owners in places.items())


def _short_by_design(board: Board, place: Thin, locked: set[tuple[str, str]]) -> bool:
    """The end of a box side before its dado for a front with a lip: it is as thick as the front's groove is wide."""
    (cut,) = place.cuts if len(place.cuts) == 1 else (None,)
    return cut is not None and place.where.startswith("between") and (board.name, cut.for_board) in locked


def _to_the_faces(board: Board, cut: BoxCut) -> Iterator[Thin]:
    """Through the thickness: the wood under the cut, or both cheeks of a groove in an edge."""
    below, above = cut.low[2], board.thickness - cut.high[2]
    if below <= 0 or above <= 0:
        yield Thin(thickest([below, above, 0]), "under the {}", (cut,), "warn")
    else:
        yield Thin(narrowest([below, above]), "beside the {}", (cut,), "")


def _to_the_ends(board: Board, cut: BoxCut) -> Iterator[Thin]:
    """Along the board: what stands between the long walls of the cut and the end or edge it runs beside.

    Across the grain that is short grain, which breaks out; along an edge the grain holds it.
    """
    axis = _across(cut)
    half = "warn" if axis == 0 or board.grain == "none" else ""
    for left in (cut.low[axis], board.size[axis] - cut.high[axis]):
        if left > 0:
            yield Thin(left, f"between the {{}} and the {('end', 'edge')[axis]}", (cut,), half)


def _across(cut: BoxCut) -> int:
    """Which of u and v (0, 1) runs across the cut, from wall to wall."""
    return 0 if cut.high[0] - cut.low[0] <= cut.high[1] - cut.low[1] else 1


def _between(one: BoxCut, other: BoxCut) -> Iterator[Thin]:
    """The wood that parts two cuts: they pass each other in two directions and are apart in one."""
    apart = [max(other.low[a] - one.high[a], one.low[a] - other.high[a]) for a in range(3)]
    if one.for_board and one.for_board == other.for_board and max(apart) == 0:
        return  # groove and rabbet for one board: together they are its room
    if apart[0] < 0 and apart[1] < 0:
        if (one.low[2] <= 0) == (other.low[2] <= 0):
            return
        left = max(apart[2], 0)
        if _across(one) == _across(other):
            yield Thin(left, "between the {} and the {}", (one, other), "warn")
        else:
            yield Thin(left, "where the {} and the {} cross", (one, other), "")
        return
    gaps = [gap for gap in apart if gap > 0]
    if len(gaps) == 1 and sum(gap < 0 for gap in apart) == 2:
        yield Thin(gaps[0], "between the {} and the {}", (one, other), "warn")


def _blind_holes(board: Board) -> Iterator[BoxCut]:
    """The room of each hole bored into a face of the board that does not come out at the other."""
    for hole in board.cuts:
        if isinstance(hole, Hole) and hole.along == "w" and hole.depth < board.thickness:
            u, v, w = hole.centre
            r = (hole.diameter + 1) // 2
            low, high = (0, hole.depth) if w == 0 else (board.thickness - hole.depth, board.thickness)
            yield BoxCut(hole.kind, (u - r, v - r, low), (u + r, v + r, high))


def _behind_hole(hole: BoxCut, cut: BoxCut) -> Iterator[Thin]:
    """What parts a hole from a cut in the other face."""
    passes = all(hole.low[a] < cut.high[a] and cut.low[a] < hole.high[a] for a in (0, 1))
    if passes and (hole.low[2] <= 0) != (cut.low[2] <= 0):
        left = cut.low[2] - hole.high[2] if hole.low[2] <= 0 else hole.low[2] - cut.high[2]
        yield Thin(max(left, 0), f"between the {hole.kind} holes and the {{}}", (cut,), "")


def _groove_through_tongue(
    cabinet: Cabinet, board: Board, cuts: tuple[BoxCut, ...], tongues: dict[str, int]
) -> bool:
    """The one place that may be thin: see `find_thin_wood`. `tongues` are the board's own, by what receives them."""
    if len(cuts) != 2:
        return False
    rabbet, groove = sorted(cuts, key=lambda cut: cut.kind == "groove" and cut.for_board not in tongues)
    bottom = cabinet.by_name.get(groove.for_board)
    if rabbet.for_board not in tongues or bottom is None or bottom.role != "box bottom":
        return False
    shared = rabbet.box.common(replace(groove, low=(*groove.low[:2], 0), high=(*groove.high[:2], board.thickness)).box)
    return shared is not None and max(shared.size[:2]) <= board.thickness


def _called(cabinet: Cabinet, cut: BoxCut) -> str:
    """The cut by its kind and what it is for; a drawer's parts by what they do, alike in all drawers."""
    if not cut.for_board:
        return cut.kind
    board = cabinet.by_name.get(cut.for_board)
    return f"{cut.kind} for the {board.role if board and board.group != 'case' else cut.for_board}"


def _finding(
    cabinet: Cabinet, level: str, left: int, where: str, thickness: int, owners: list[Board]
) -> Finding:
    if level == "note":
        text = (
            f"{boards_in_short(owners)}: {setting(left, cabinet.style) if left else 'nothing'} is left of the tongue "
            f"{where}. Boxes are made so; handle the board with care until it is glued."
        )
    elif left == 0:
        text = f"{boards_in_short(owners)}: no wood is left {where}. Make a cut shallower, or stagger the cuts."
    else:
        rule = (
            f"less than the {_least(cabinet.style)} that still holds"
            if left < LEAST
            else f"less than half of {write_brief(thickness, cabinet.style, decimal=True)}"
        )
        text = (
            f"{boards_in_short(owners)}: {setting(left, cabinet.style)} of wood is left {where}, {rule}. "
            "Make the cut shallower, move it, or use a thicker board."
        )
    return Finding("wood left", level, tuple(board.name for board in owners), text, left)


def _least(style: Style) -> str:
    """The limit as the shop says it, with the exact one beside it where it is no mark of its rule."""
    exact = stated("3 mm", LEAST)
    return exact if style.unit == "mm" else f"{stated('1/8 in', LEAST)} or so ({exact})"
