"""Enough wood must be left under cuts, between cuts, and beyond a cut near an end."""

from collections.abc import Iterator
from dataclasses import dataclass
from itertools import combinations

from shoplib.checks.wording import names
from shoplib.measure import MM, write_length
from shoplib.model.board import Board, BoxCut
from shoplib.model.solved import Cabinet, Finding

LEAST = 3 * MM
"""Less wood than this is a "stop". Common practice, no source."""


@dataclass(frozen=True, slots=True)
class Thin:
    """A thin place of a board: what is left, where it is, and how it is judged.

    `half` is true where less than half the thickness already earns a warning.
    """

    left: int
    where: str
    half: bool


def thin_places(board: Board) -> Iterator[Thin]:
    """Every place of the board where a cut leaves wood between itself and a face, an end or another cut.

    Notches go right through on purpose and are left out.
    """
    cuts = [cut for cut in board.cuts if isinstance(cut, BoxCut) and cut.kind != "notch"]
    for cut in cuts:
        yield from _to_the_faces(board, cut)
        yield from _to_the_ends(board, cut)
    for one, other in combinations(cuts, 2):
        yield from _between(board, one, other)


def find_thin_wood(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "stop" under 3 mm, a "warn" under half the board's thickness; exactly half is fine.

    Through the thickness the wood under a cut and between cuts from opposite faces counts, along
    the board the wall between two cuts and the short grain between a cut and the end. A tongue may
    be thinner than half: that is what its joint is. Equal places are one finding; the amount is
    the wood that is left.
    """
    tongues: dict[str, set[int]] = {}
    for joint in cabinet.joints:
        if joint.tongue:
            tongues.setdefault(joint.enters, set()).add(joint.tongue)
    places: dict[tuple, list[str]] = {}
    for board in cabinet.boards:
        if not board.cuts:
            continue
        for place in thin_places(board):
            level = _level(place, board.thickness, tongues.get(board.name, ()))
            if level:
                owners = places.setdefault((level, place, board.thickness), [])
                if board.name not in owners:
                    owners.append(board.name)
    return tuple(
        _finding(cabinet, level, place, thickness, owners)
        for (level, place, thickness), owners in places.items()
    )


def _level(place: Thin, thickness: int, tongues: set[int] | tuple[()]) -> str:
    if place.left < LEAST:
        return "stop"
    return "warn" if place.half and 2 * place.left < thickness and place.left not in tongues else ""


def _to_the_faces(board: Board, cut: BoxCut) -> Iterator[Thin]:
    """Through the thickness: the wood under the cut, or both cheeks of a groove in an edge."""
    below, above = cut.low[2], board.thickness - cut.high[2]
    if below <= 0 and above <= 0:
        yield Thin(0, f"under the {_called(cut)}", half=True)
    elif below <= 0 or above <= 0:
        yield Thin(max(below, above), f"under the {_called(cut)}", half=True)
    else:
        yield Thin(min(below, above), f"beside the {_called(cut)}", half=False)


def _to_the_ends(board: Board, cut: BoxCut) -> Iterator[Thin]:
    """Along the board: what stands between the long walls of the cut and the end or edge it runs beside.

    Across the grain that is short grain, which breaks out; along an edge the grain holds it.
    """
    size = [high - low for low, high in zip(cut.low, cut.high, strict=True)]
    axis = 0 if size[0] <= size[1] else 1
    short_grain = axis == 0 or board.grain == "none"
    for left in (cut.low[axis], board.size[axis] - cut.high[axis]):
        if left > 0:
            end = "end" if axis == 0 else "edge"
            yield Thin(left, f"between the {_called(cut)} and the {end}", half=short_grain)


def _between(board: Board, one: BoxCut, other: BoxCut) -> Iterator[Thin]:
    """The wood that parts two cuts: they pass each other in two directions and are apart in one."""
    apart = [max(other.low[a] - one.high[a], one.low[a] - other.high[a]) for a in range(3)]
    where = f"between the {_called(one)} and the {_called(other)}"
    opposite = (one.low[2] <= 0) != (other.low[2] <= 0)
    if opposite and apart[0] < 0 and apart[1] < 0 and apart[2] <= 0:
        yield Thin(0, where, half=True)
        return
    gaps = [gap for gap in apart if gap > 0]
    if len(gaps) == 1 and sum(gap < 0 for gap in apart) == 2:
        yield Thin(gaps[0], where, half=True)


def _called(cut: BoxCut) -> str:
    return f"{cut.kind} for {cut.for_board}" if cut.for_board else cut.kind


def _finding(cabinet: Cabinet, level: str, place: Thin, thickness: int, owners: list[str]) -> Finding:
    style = cabinet.style
    if place.left == 0:
        text = f"{names(owners)}: no wood is left {place.where}. Make the cut shallower, or stagger the cuts."
    else:
        rule = (
            f"less than half of {write_length(thickness, style)}"
            if level == "warn"
            else "less than the 3 mm that still hold"
        )
        text = (
            f"{names(owners)}: {write_length(place.left, style)} of wood is left {place.where}, {rule}. "
            "Make the cut shallower, move it, or use thicker stock."
        )
    return Finding("wood left", level, tuple(owners), text, place.left)
