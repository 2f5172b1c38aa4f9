"""The drawer-front joint on two blanks: the front reaches over the ends of the sides, which stand against its lip."""

from dataclasses import replace

from shoplib.measure import narrowest, thickest
from shoplib.model.blank import Blank
from shoplib.model.box import Box
from shoplib.model.joinery import Fitting
from shoplib.model.locked_front import Lock, Room, lock_cuts, usual_length, usual_lip
from shoplib.model.project import JointChoice
from shoplib.model.sheet import Sheet

X, Y, Z = 0, 1, 2


def settled(choice: JointChoice, front: Sheet, side: Sheet, step: int) -> JointChoice:
    """The choice with every length that was left out, for a front and sides of these sheets.

    >>> stock = Sheet("box sheet", "plywood", 12)
    >>> settled(JointChoice("drawer lock"), stock, stock, 1)
    JointChoice(kind='drawer lock', depth=6, fit=0, end_gap=0, stop=0, tongue=4, lip=4, finger=None)
    """
    lip = choice.lip or usual_lip(front.thickness, step)
    tongue = choice.tongue or front.thickness - lip - usual_lip(front.thickness, step)
    depth = choice.depth or usual_length(side.thickness, step)
    return replace(choice, depth=depth, tongue=tongue, lip=lip)


def lock_of(choice: JointChoice, front: int) -> Lock:
    """The settled choice as it is cut in a front of this thickness.

    >>> lock_of(JointChoice("drawer lock", 7, end_gap=1, tongue=5, lip=6), 18)
    Lock(lip=6, groove=7, length=6, fit=0, gap=1)
    """
    groove = front - choice.lip - choice.tongue
    return Lock(choice.lip, groove, choice.depth - choice.end_gap, choice.fit, choice.end_gap)


def cut_lock(fitting: Fitting, enters: Blank, receives: Blank) -> None:
    """Mark the cuts of the board that receives: groove and rabbet of a front, or the dado of a side."""
    side, front = (receives, enters) if fitting.joint.tongue else (enters, receives)
    thick = front.high[Y] - front.low[Y]
    cuts = lock_cuts(thick, side.sheet.thickness, lock_of(fitting.choice, thick))
    left = side.low[X] + side.high[X] < front.low[X] + front.high[X]
    ahead = front.low[Y] + front.high[Y] < side.low[Y] + side.high[Y]

    def room(cut: Room) -> Box:
        x = [side.high[X] - out if left else side.low[X] + out for out in cut.out]
        y = [front.low[Y] + back if ahead else front.high[Y] - back for back in cut.back]
        low, high = ([choose(ends) for ends in (x, y)] for choose in (narrowest, thickest))
        return Box((*low, receives.low[Z]), (*high, receives.high[Z]))

    if receives is side:
        dado = room(cuts.dado)
        receives.cuts.append(("dado", _as_high_as(dado, front, side), enters.name))
    else:
        receives.cuts += [("groove", room(cuts.groove), enters.name), ("rabbet", room(cuts.rabbet), enters.name)]


def _as_high_as(dado: Box, front: Blank, side: Blank) -> Box:
    """A dado runs through the side where the front is as high; for a lower back it is as high as that."""
    (x0, y0, _), (x1, y1, _) = dado.low, dado.high
    return Box((x0, y0, front.low[Z]), (x1, y1, front.high[Z]))
