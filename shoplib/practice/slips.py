"""The slips of the real shop: what each does to the sides that come off the saw.

Each is known in every shop (common practice, no source). A slip happens to one side of the pair; the other is right.
"""

from collections.abc import Callable
from dataclasses import dataclass, replace

from shoplib.measure import thickest
from shoplib.model.board import Board, BoxCut
from shoplib.practice.plan import Plan


@dataclass(frozen=True, slots=True)
class Slip:
    """One slip: its name, and in a sentence how it comes about."""

    name: str
    how: str
    does: Callable[[Plan, Board], Board]


def _cuts(board: Board, kind: str) -> list[BoxCut]:
    return [cut for cut in board.cuts if isinstance(cut, BoxCut) and cut.kind == kind]


def _with_dadoes(board: Board, change: Callable[[BoxCut], BoxCut | None]) -> Board:
    dadoes = [change(cut) for cut in _cuts(board, "dado")]
    return replace(board, cuts=(*_cuts(board, "rabbet"), *(cut for cut in dadoes if cut is not None)))


def along(cut: BoxCut, low: int) -> BoxCut:
    """The cut with its lower wall at `low`, as wide as before."""
    width = cut.high[0] - cut.low[0]
    return replace(cut, low=(low, *cut.low[1:]), high=(low + width, *cut.high[1:]))


def from_other_end(plan: Plan, board: Board) -> Board:
    """Both dadoes measured from the upper end."""
    return _with_dadoes(board, lambda cut: along(cut, plan.height - cut.high[0]))


def on_other_face(_: Plan, board: Board) -> Board:
    """Both dadoes in the outer face."""
    def turned(cut: BoxCut) -> BoxCut:
        low, high = board.thickness - cut.high[2], board.thickness - cut.low[2]
        return replace(cut, low=(*cut.low[:2], low), high=(*cut.high[:2], high))

    return _with_dadoes(board, turned)


def mirrored(plan: Plan, board: Board) -> Board:
    """Rabbet and dadoes as those of the other hand: front and rear exchanged."""
    def other(cut: BoxCut) -> BoxCut:
        low, high = plan.depth - cut.high[1], plan.depth - cut.low[1]
        return replace(cut, low=(cut.low[0], low, cut.low[2]), high=(cut.high[0], high, cut.high[2]))

    return replace(board, cuts=tuple(other(cut) for cut in board.cuts))


def beside_the_line(_: Plan, board: Board) -> Board:
    """The dado for the shelf under its line, where it should lie over it; what would lie past the end is air."""
    def under(cut: BoxCut) -> BoxCut | None:
        line, start = cut.low[0], 2 * cut.low[0] - cut.high[0]
        if cut.for_board != "shelf":
            return cut
        return replace(cut, low=(thickest([start, 0]), *cut.low[1:]), high=(line, *cut.high[1:])) if line else None

    return _with_dadoes(board, under)


def second_forgotten(_: Plan, board: Board) -> Board:
    """No dado for the shelf."""
    return _with_dadoes(board, lambda cut: None if cut.for_board == "shelf" else cut)


SLIPS = (
    Slip("wrong reference edge", "The upper end lay against the fence, not the lower one.", from_other_end),
    Slip("mirrored pair", "This side was rabbeted and dadoed just like the other: two of one hand.", mirrored),
    Slip("wrong face", "The inner face lay up, and the dadoes came into the outer one.", on_other_face),
    Slip("wrong side of the line", "The dado for the shelf was cut under its line.", beside_the_line),
    Slip("second dado forgotten", "The fence was moved and this side was not cut again.", second_forgotten),
)
"""All slips that can be chosen or drawn."""

NAMES = tuple(slip.name for slip in SLIPS)


def slip(name: str) -> Slip:
    """The slip of this name; KeyError for any other.

    >>> slip("wrong face").how
    'The inner face lay up, and the dadoes came into the outer one.'
    """
    return {each.name: each for each in SLIPS}[name]
