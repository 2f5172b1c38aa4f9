"""What a saw cut is set by: the fence, a stop, a thin-strip stop, or a line; and which cuts are awkward.

A fence guides a piece only along an edge that is long enough: a short edge turns between fence and blade, and is thrown
back. All limits here are common practice, no source; the manual of the saw goes before them.
"""

from collections.abc import Iterable
from dataclasses import replace
from typing import Literal

from shoplib.layout.pieces import Job, Laid, Rect
from shoplib.layout.sawn import SawCut, Sawn
from shoplib.layout.slabs import span
from shoplib.measure import INCH

SetBy = Literal["fence", "stop", "thin-strip stop", "line"]

NARROW = 3 * INCH // 2
"""What is narrower does not lie between fence and blade: no guard passes there, and no hand or push block."""

FENCE_REACH = 50 * INCH
"""No fence stands farther from the blade."""

SLED_DEPTH, STOP_REACH = 25 * INCH, 50 * INCH
"""As long a cut as a sled or a mitre gauge is asked to carry a piece through, and as far from the blade as a stop is
clamped. What is more is marked, and cut along a guide."""


def edge(cut: SawCut) -> int:
    """How long the cut is, and so the edge of the piece that would run along the fence.

    >>> edge(SawCut("crosscut", 1, Rect(0, 0, 90, 40), 60, Rect(0, 0, 60, 40), None))
    40
    """
    return cut.piece.h if cut.off.w != cut.piece.w else cut.piece.w


def set_by(job: Job, cut: SawCut) -> SetBy:
    """The fence for what runs along the grain, with an edge on it no shorter than it is away; else a stop or a line.

    Where nothing has a grain, a cut of either direction may run along the fence. What is narrow comes off on the outer
    side of the blade, where the rest is wide enough to lie between blade and fence: the fence brings it to a thin-strip
    stop.

    >>> from shoplib.layout.pieces import Part
    >>> job, board = Job((Part("side", 60, 20),), ()), Rect(0, 0, 90 * INCH, 40 * INCH)
    >>> set_by(job, SawCut("rip", 1, board, 20 * INCH, Rect(0, 0, 90 * INCH, 20 * INCH), None))
    'fence'
    >>> set_by(job, SawCut("crosscut", 1, board, 60 * INCH, Rect(0, 0, 60 * INCH, 40 * INCH), None))
    'line'
    >>> strip = Rect(0, 0, 90 * INCH, 20 * INCH)
    >>> set_by(job, SawCut("crosscut", 2, strip, 30 * INCH, Rect(0, 0, 30 * INCH, 20 * INCH), None))
    'stop'
    >>> set_by(job, SawCut("rip", 2, strip, INCH, Rect(0, 0, 90 * INCH, INCH), Rect(0, 0, 90 * INCH, 18 * INCH)))
    'thin-strip stop'
    """
    long, away = edge(cut), cut.fence
    along = cut.off.w == cut.piece.w or not job.grained
    if along and long >= max(away, job.shortest) and away <= FENCE_REACH:
        return "thin-strip stop" if cut.kind != "trim" and away < NARROW <= _rest(cut) else "fence"
    return "stop" if long <= SLED_DEPTH and away <= STOP_REACH else "line"


def _rest(cut: SawCut) -> int:
    """How wide the other piece is that the cut makes; 0 where it makes none."""
    if cut.left is None:
        return 0
    return cut.left.h if cut.off.w == cut.piece.w else cut.left.w


def short(job: Job, cut: SawCut) -> bool:
    """Whether it runs along the grain of a piece too short for the fence."""
    return job.grained and cut.off.w == cut.piece.w and edge(cut) < job.shortest


def skims(job: Job, cut: SawCut) -> int:
    """How much it takes off where that is less than the blade is thick and nothing else is left; 0 for any other cut.

    >>> from shoplib.layout.pieces import Part
    >>> strip = Rect(0, 0, 90, 41)
    >>> skims(Job((), (), kerf=3), SawCut("rip", 1, strip, 40, Rect(0, 0, 90, 40), None))
    1
    """
    if cut.kind == "trim" or cut.left is not None:
        return 0
    taken = cut.piece.w + cut.piece.h - cut.off.w - cut.off.h
    return taken if taken < job.kerf else 0


def left_to_size(cut: SawCut, then: SawCut | None, parts: Iterable[Rect]) -> tuple[Rect, ...]:
    """The parts whose size is only what this cut leaves: all that the blade and the sheet are off is in them.

    `then` is the next cut in what is left, None where there is none.

    >>> sheet, off, left = Rect(0, 0, 90, 42), Rect(0, 0, 90, 20), Rect(0, 22, 90, 20)
    >>> left_to_size(SawCut("rip", 1, sheet, 20, off, left), None, [off, left])
    (Rect(x=0, y=22, w=90, h=20),)
    """
    left = cut.left
    axis = 0 if cut.off.w != cut.piece.w else 1
    if left is None or (then is not None and then.off[axis + 2] != left[axis + 2]):
        return ()
    low, size = left[axis], left[axis + 2]
    across = span(left, 1 - axis)
    return tuple([
        part for part in parts
        if part[axis] == low and part[axis + 2] == size and across[0] <= part[1 - axis] < across[1]
    ])


def with_awkward(job: Job, laid: Laid, found: Sawn) -> Sawn:
    """The same cuts of a sheet, its awkward ones counted."""
    made_in = {cut.piece: cut for cut in found.cuts}
    parts = [one.at for one in laid.placed]
    return replace(
        found,
        short=sum(short(job, cut) for cut in found.cuts),
        skims=sum(skims(job, cut) > 0 for cut in found.cuts),
        left_to_size=sum(
            len(left_to_size(cut, made_in.get(cut.left), parts)) for cut in found.cuts if cut.left
        ),
    )
