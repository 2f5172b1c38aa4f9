"""Blanks put together: every allowance first, then every cut, because a cut copies what enters it.

While a cabinet is being solved its boards are blanks: boxes in the cabinet, each placed as if all
joints were plain butts. `Assembly.finish` lengthens what enters, cuts what receives, and gives the
finished boards.
"""

from collections.abc import Mapping
from dataclasses import dataclass, field
from types import MappingProxyType

from shoplib.measure import share, thickest
from shoplib.model.board import Board, BoxCut, Edge, Hole
from shoplib.model.box import Box
from shoplib.model.placement import Axes, Placement, directions, standing_in
from shoplib.model.project import ImpossibleProject, JointChoice, PartSize
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Joint

X, Y, Z = 0, 1, 2
MOST_BOARDS = 1000
"""More boards than this are a slip of the hand, and would keep the dry-fit busy for minutes."""
Span = tuple[int, int]
NO_PARTS: Mapping[str, PartSize] = MappingProxyType({})

UPRIGHT_LEFT: Axes = ("+z", "+y", "-x")
"""A left side or a divider: length up, width back, inside face at w = 0."""
UPRIGHT_RIGHT: Axes = ("+z", "-y", "+x")
"""A right side: length up, width forward, inside face at w = 0."""
LEVEL: Axes = ("+x", "+y", "+z")
"""A top, bottom or shelf: length to the right, width back."""
FACING: Axes = ("+x", "+z", "-y")
"""A front, rail or box front: length to the right, width up, rear face at w = 0."""
BACKING: Axes = ("+z", "+x", "+y")
"""A back taller than wide: length up, width to the right."""
BACKING_WIDE: Axes = ("+x", "-z", "+y")
"""A back wider than tall: length to the right, width down."""
FACING_TALL: Axes = ("+z", "-x", "-y")
"""A front taller than wide, whose grain runs up."""
BOX_SIDE: Axes = ("+y", "+z", "+x")
"""A side of a drawer box, a runner beside it: length back, width up."""
FLAT_STRIP: Axes = ("+y", "+x", "-z")
"""A runner below or a kicker: length back, width to the right."""


@dataclass(slots=True)
class Blank:
    """A board in the making: its box in the cabinet as two lists of three ticks.

    `thin_axis` is the world axis (0, 1, 2) that its thickness runs along.
    """

    name: str
    role: str
    group: str
    stage: int
    sheet: Sheet
    axes: Axes
    low: list[int]
    high: list[int]
    thin_axis: int
    edging: tuple[tuple[str, Edge], ...] = ()
    cuts: list[tuple[str, Box, str]] = field(default_factory=list)
    holes: list[Hole] = field(default_factory=list)

    @property
    def box(self) -> Box:
        """Where it stands now."""
        return Box(tuple(self.low), tuple(self.high))

    def span(self, axis: int) -> Span:
        """From where to where it reaches along a world axis."""
        return (self.low[axis], self.high[axis])


@dataclass(slots=True)
class _Fitting:
    joint: Joint
    choice: JointChoice
    stopped_run: bool
    key: str


class Assembly:
    """Collects blanks and joints, then finishes them into boards."""

    def __init__(self) -> None:
        self.blanks: dict[str, Blank] = {}
        self._fittings: list[_Fitting] = []

    def add(
        self,
        name: str,
        role: str,
        sheet: Sheet,
        axes: Axes,
        spans: tuple[Span, Span, Span],
        *,
        group: str = "case",
        stage: int = 1,
        edging: tuple[tuple[str, Edge], ...] = (),
        key: str = "",
    ) -> Blank:
        """A blank that fills the three spans (x, y, z); ImpossibleProject where one is not positive."""
        if len(self.blanks) == MOST_BOARDS:
            raise ImpossibleProject("bays", f"they come to more than {MOST_BOARDS} boards; plan it as several cases")
        low, high = [s[0] for s in spans], [s[1] for s in spans]
        if any(a >= b for a, b in spans):
            raise ImpossibleProject(key, f"no room is left for the {name}; make the case larger or its parts fewer")
        blank = Blank(name, role, group, stage, sheet, axes, low, high, directions(axes)[2][0], edging)
        self.blanks[name] = blank
        return blank

    def join(
        self,
        enters: Blank,
        receives: Blank,
        axis: str,
        choice: JointChoice,
        *,
        key: str = "",
        stopped_run: bool = False,
        kind: str = "",
    ) -> None:
        """`enters` goes into `receives` along `axis`; the choice says how.

        A dado that would run out of the edge of the receiving board is a rabbet, and a rabbet away
        from any edge is a dado. `stopped_run` cuts no longer than what enters; otherwise the cut
        runs through, or keeps to its stop where the receiving board reaches the front. `kind` names the
        cut where the trade does so ("groove").
        """
        if choice.kind == "butt":
            joint = Joint("butt", enters.name, receives.name, axis)
        else:
            along = _axis(axis)[0]
            low, high = receives.span(along)
            depth = choice.depth if choice.depth is not None else share(high - low, 2, 1)[0]
            if depth >= high - low:
                raise ImpossibleProject(
                    key + ".depth",
                    f"the cut would go right through the {receives.name}; choose less than its thickness",
                )
            if choice.end_gap >= depth:
                raise ImpossibleProject(key + ".end_gap", "it must be smaller than the depth of the joint")
            flush = self._flush_edge(enters, receives)
            tongue = 0
            if choice.kind == "tongue":
                tongue = choice.tongue if choice.tongue is not None else share(enters.sheet.thickness, 2, 1)[0]
                if tongue >= enters.sheet.thickness:
                    raise ImpossibleProject(key + ".tongue", f"it must be thinner than the {enters.name}")
            name = kind or ("tongue" if tongue else "rabbet" if flush else "dado")
            joint = Joint(name, enters.name, receives.name, axis, depth, choice.fit, choice.end_gap, True, tongue)
        self._fittings.append(_Fitting(joint, choice, stopped_run, key))

    def notch(self, blank: Blank, box: Box, for_board: str = "") -> None:
        """Take a corner out of a blank."""
        blank.cuts.append(("notch", box, for_board))

    def finish(self, measured: Mapping[str, PartSize] = NO_PARTS) -> tuple[tuple[Board, ...], tuple[Joint, ...]]:
        """All allowances, then all cuts, then the boards and joints in the order they were added.

        A part that was `measured` gets its true size before anything is cut; its lower, left or front
        end stays, and the dry-fit shows where the other end no longer meets its neighbour.
        """
        faces = [self._face(fitting.joint) for fitting in self._fittings]
        for fitting, face in zip(self._fittings, faces, strict=True):
            self._lengthen(fitting.joint, face)
        for name, size in measured.items():
            _resize(self.blanks[name], size)
        for fitting, face in zip(self._fittings, faces, strict=True):
            if fitting.joint.depth:
                self._cut(fitting, face)
        joints = tuple(fitting.joint for fitting in self._fittings)
        return tuple(_board(blank) for blank in self.blanks.values()), joints

    def _flush_edge(self, enters: Blank, receives: Blank) -> int:
        thin = enters.thin_axis
        if enters.low[thin] <= receives.low[thin]:
            return -1
        return 1 if enters.high[thin] >= receives.high[thin] else 0

    def _face(self, joint: Joint) -> int:
        axis, sign = _axis(joint.axis)
        low, high = self.blanks[joint.receives].span(axis)
        return low if sign > 0 else high

    def _lengthen(self, joint: Joint, face: int) -> None:
        """Bring the end of what enters to its place past the face: two stretchers lengthen a divider once."""
        if not joint.depth:
            return
        axis, sign = _axis(joint.axis)
        end = face + sign * (joint.depth - joint.end_gap)
        blank = self.blanks[joint.enters]
        (blank.high if sign > 0 else blank.low)[axis] = end

    def _cut(self, fitting: _Fitting, face: int) -> None:
        joint, choice = fitting.joint, fitting.choice
        enters, receives = self.blanks[joint.enters], self.blanks[joint.receives]
        axis, sign = _axis(joint.axis)
        thin = enters.thin_axis
        run = 3 - axis - thin
        edge = self._flush_edge(enters, receives)
        low, high = list(receives.low), list(receives.high)
        low[axis], high[axis] = (face, face + joint.depth) if sign > 0 else (face - joint.depth, face)
        if joint.tongue:
            walls = self._tongue(enters, receives, joint, axis, sign, face)
            low[thin], high[thin] = _widened(walls, joint.tongue + joint.fit, thin, 0)
        else:
            walls = enters.span(thin)
            low[thin], high[thin] = _widened(walls, enters.sheet.thickest + joint.fit, thin, edge)
            if edge < 0:
                low[thin] = receives.low[thin]
            elif edge > 0:
                high[thin] = receives.high[thin]
        if fitting.stopped_run:
            low[run], high[run] = enters.span(run)
        elif choice.stop and run == Y and receives.low[Y] <= enters.low[Y]:
            # A board that is set back past the stop begins its cut itself: no empty dado shows before it.
            low[Y] = thickest([receives.low[Y] + choice.stop, enters.low[Y]])
            if low[Y] >= enters.high[Y]:
                raise ImpossibleProject(
                    fitting.key + ".stop", f"it lies behind the {enters.name}, and no joint is left; choose less"
                )
            self._notch_for_stop(enters, receives, axis, sign, face, low[Y])
        kind = "groove" if joint.kind == "groove" else "rabbet" if edge and not joint.tongue else "dado"
        receives.cuts.append((kind, Box(tuple(low), tuple(high)), joint.enters))

    def _notch_for_stop(self, enters: Blank, receives: Blank, axis: int, sign: int, face: int, stop: int) -> None:
        if enters.low[Y] >= stop:
            return
        low, high = list(enters.low), list(enters.high)
        high[Y] = stop
        if sign > 0:
            low[axis] = face
        else:
            high[axis] = face
        self.notch(enters, Box(tuple(low), tuple(high)), receives.name)

    def _tongue(self, enters: Blank, receives: Blank, joint: Joint, axis: int, sign: int, face: int) -> Span:
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
    if choice.kind == "butt":
        return 0
    return (share(thickness, 2, 1)[0] if choice.depth is None else choice.depth) - choice.end_gap


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


def _resize(blank: Blank, size: PartSize) -> None:
    (length, _), (width, _), _ = directions(blank.axes)
    for axis, true in ((length, size.length), (width, size.width)):
        if true is not None:
            blank.high[axis] = blank.low[axis] + true


_DIRECTIONS = {sign + axis: (i, 1 if sign == "+" else -1) for i, axis in enumerate("xyz") for sign in "+-"}


def _axis(text: str) -> tuple[int, int]:
    return _DIRECTIONS[text]


def _board(blank: Blank) -> Board:
    whole = blank.box
    placement = standing_in(whole, blank.axes)
    cuts = []
    for kind, cut, for_board in blank.cuts:
        inside = whole.common(cut)
        if inside is not None:
            own = placement.to_board(inside)
            cuts.append(BoxCut(kind, own.low, own.high, for_board))
    length, width, thickness = (whole.size[axis] for axis, _ in directions(blank.axes))
    return Board(
        blank.name,
        blank.group,
        blank.stage,
        blank.sheet.name,
        length,
        width,
        thickness,
        placement,
        tuple(cuts) + tuple(_own_hole(placement, hole) for hole in blank.holes),
        blank.sheet.grain,
        blank.edging,
        blank.role,
    )


def _own_hole(placement: Placement, hole: Hole) -> Hole:
    """A hole given in world terms (`along` "x", "y" or "z"), in the board's own coordinates."""
    along = "uvw"[placement.own_axis("xyz".index(hole.along))]
    centre = placement.point_to_board(hole.centre)
    return Hole(hole.kind, centre, along, hole.diameter, hole.depth, hole.for_board)
