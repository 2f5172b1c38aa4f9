"""One joint on its two blanks: how far the entering one is lengthened, and what is cut from each."""

from dataclasses import dataclass

from shoplib.measure import narrowest, share, thickest
from shoplib.model.blank import Blank, Span
from shoplib.model.box import Box
from shoplib.model.project import ImpossibleProject, JointChoice
from shoplib.model.solved import Joint

X, Y, Z = 0, 1, 2


@dataclass(slots=True)
class Fitting:
    """A joint as chosen: `stopped_run` cuts no longer than what enters with its end gap; refusals name `key`."""

    joint: Joint
    choice: JointChoice
    stopped_run: bool
    key: str


def flush_edge(enters: Blank, receives: Blank) -> int:
    """Whether what enters lies at the lower (-1) or higher (1) edge of the receiving board, or at none (0)."""
    thin = enters.thin_axis
    if enters.low[thin] <= receives.low[thin]:
        return -1
    return 1 if enters.high[thin] >= receives.high[thin] else 0


def face_met(joint: Joint, receives: Blank) -> int:
    """The face of the receiving board that the joint's axis meets first."""
    axis, sign = axis_of(joint.axis)
    low, high = receives.span(axis)
    return low if sign > 0 else high


def lengthen(joint: Joint, enters: Blank, face: int) -> None:
    """Bring the end of what enters to its place past the face: two stretchers lengthen a divider once."""
    if not joint.depth or (joint.kind == "drawer lock" and joint.tongue):
        return  # a front with lips is as long as the box is wide, whatever its tongues reach into
    axis, sign = axis_of(joint.axis)
    end = face + sign * (joint.depth - joint.end_gap)
    (enters.high if sign > 0 else enters.low)[axis] = end


def cut_both(fitting: Fitting, enters: Blank, receives: Blank, face: int) -> None:
    """Mark the cut in the receiving board, and what the entering one loses to fit it, once all are lengthened.

    Raises ImpossibleProject where a stop leaves no joint.
    """
    joint, choice = fitting.joint, fitting.choice
    axis, sign = axis_of(joint.axis)
    thin = enters.thin_axis
    run = 3 - axis - thin
    edge = flush_edge(enters, receives)
    low, high = list(receives.low), list(receives.high)
    low[axis], high[axis] = (face, face + joint.depth) if sign > 0 else (face - joint.depth, face)
    if joint.tongue:
        walls = _tongue(enters, receives, joint, axis, sign, face)
        low[thin], high[thin] = _widened(walls, joint.tongue + joint.fit, thin, 0)
    else:
        walls = enters.span(thin)
        low[thin], high[thin] = _widened(walls, enters.sheet.thickest + joint.fit, thin, edge)
        if edge < 0:
            low[thin] = receives.low[thin]
        elif edge > 0:
            high[thin] = receives.high[thin]
    if fitting.stopped_run:
        # As free at its own ends as at the floors of the other grooves, or it would hold the box apart.
        first, last = enters.span(run)
        low[run] = thickest([receives.low[run], first - joint.end_gap])
        high[run] = narrowest([receives.high[run], last + joint.end_gap])
    elif choice.stop and run == Z and receives.role == "box side":
        high[Z] = receives.high[Z] - choice.stop
        if high[Z] <= enters.low[Z]:
            raise ImpossibleProject(
                fitting.key + ".stop", f"it lies below the {enters.name}, and no joint is left; choose less"
            )
        _notch_above(enters, receives, axis, sign, face, high[Z])
    elif choice.stop and run == Y and receives.low[Y] <= enters.low[Y]:
        # A board that is set back past the stop begins its cut itself: no empty dado shows before it.
        low[Y] = thickest([receives.low[Y] + choice.stop, enters.low[Y]])
        if low[Y] >= enters.high[Y]:
            raise ImpossibleProject(
                fitting.key + ".stop", f"it lies behind the {enters.name}, and no joint is left; choose less"
            )
        _notch_for_stop(enters, receives, axis, sign, face, low[Y])
    kind = "groove" if joint.kind == "groove" else "rabbet" if edge and not joint.tongue else "dado"
    receives.cuts.append((kind, Box(tuple(low), tuple(high)), joint.enters))


def _notch_for_stop(enters: Blank, receives: Blank, axis: int, sign: int, face: int, stop: int) -> None:
    if enters.low[Y] >= stop:
        return
    low, high = list(enters.low), list(enters.high)
    high[Y] = stop
    if sign > 0:
        low[axis] = face
    else:
        high[axis] = face
    enters.notch(Box(tuple(low), tuple(high)), receives.name)


def _notch_above(enters: Blank, receives: Blank, axis: int, sign: int, face: int, stop: int) -> None:
    """Cut away what would stand above the end of a cut that stops below the upper edge."""
    if enters.high[Z] <= stop:
        return
    low, high = list(enters.low), list(enters.high)
    low[Z] = stop
    (low if sign > 0 else high)[axis] = face
    enters.notch(Box(tuple(low), tuple(high)), receives.name)


def _tongue(enters: Blank, receives: Blank, joint: Joint, axis: int, sign: int, face: int) -> Span:
    """Rabbet the entering board to its tongue, on the side away from the nearer end of the receiver.

    In the very middle the tongue is in the middle too, between two shoulders.
    """
    thin = enters.thin_axis
    low, high = enters.span(thin)
    nearer = (low - receives.low[thin]) - (receives.high[thin] - high)
    if nearer < 0:
        tongue = (high - joint.tongue, high)
    elif nearer > 0:
        tongue = (low, low + joint.tongue)
    else:
        shoulder = share(high - low - joint.tongue, 2, 1)[0]
        tongue = (low + shoulder, low + shoulder + joint.tongue)
    for waste in ((low, tongue[0]), (tongue[1], high)):
        if waste[0] == waste[1]:
            continue
        cut_low, cut_high = list(enters.low), list(enters.high)
        cut_low[thin], cut_high[thin] = waste
        if sign > 0:
            cut_low[axis] = face
        else:
            cut_high[axis] = face
        enters.cuts.append(("rabbet", Box(tuple(cut_low), tuple(cut_high)), receives.name))
    return tongue


def gain(choice: JointChoice, thickness: int) -> int:
    """What a board gains at each end that enters another of this thickness: depth less end gap.

    >>> gain(JointChoice("dado", end_gap=1), 18), gain(JointChoice(), 18)
    (8, 0)
    """
    if choice.kind in ("butt", "pocket screws"):
        return 0
    if choice.kind == "finger":
        return thickness
    return (share(thickness, 2, 1)[0] if choice.depth is None else choice.depth) - choice.end_gap


def refuse(key: str, fault: tuple[str, int] | None) -> None:
    """ImpossibleProject with that key for a fault that has been told; nothing where there is none."""
    if fault is not None:
        raise ImpossibleProject(key, fault[0])


def _widened(walls: Span, width: int, thin: int, edge: int) -> Span:
    """Room for `width` about a board between `walls`: level boards rest on the lower wall, the rest are centred."""
    low, high = walls
    extra = width - (high - low)
    if edge < 0 or (edge == 0 and thin == Z):
        return (low, high + extra)
    if edge > 0:
        return (low - extra, high)
    half = share(extra, 2, 1)[0]
    return (low - half, high + extra - half)


_DIRECTIONS = {sign + axis: (i, 1 if sign == "+" else -1) for i, axis in enumerate("xyz") for sign in "+-"}


def axis_of(text: str) -> tuple[int, int]:
    """The world axis of a direction such as "-x", and its sign."""
    return _DIRECTIONS[text]
