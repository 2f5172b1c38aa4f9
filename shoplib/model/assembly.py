"""Blanks put together: every allowance first, then every cut, because a cut copies what enters it.

While a cabinet is being solved its boards are blanks: boxes in the cabinet, each placed as if all
joints were plain butts. `Assembly.finish` lengthens what enters, cuts what receives, and gives the
finished boards.
"""

from collections.abc import Mapping
from types import MappingProxyType

from shoplib.measure import INCH_STYLE, Style, share
from shoplib.model.blank import Blank, Span, finished, resize
from shoplib.model.board import Board, Edge
from shoplib.model.fingered import cut_fingers, not_at_the_end, run_out
from shoplib.model.joinery import Fitting, axis_of, cut_both, face_met, flush_edge, lengthen, refuse
from shoplib.model.locked import cut_lock, lock_of
from shoplib.model.locked_front import lock_cuts, thin_of
from shoplib.model.part_of import PartOf
from shoplib.model.placement import Axes, directions
from shoplib.model.pocketed import drill_pockets
from shoplib.model.project import ImpossibleProject, JointChoice, PartSize
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Hardware, Joint
from shoplib.model.wood_kept import missing_wood

MOST_BOARDS = 1000
"""More boards than this are a slip of the hand, and would keep the dry-fit busy for minutes."""
NO_PARTS: Mapping[str, PartSize] = MappingProxyType({})


class Assembly:
    """Collects blanks and joints, then finishes them into boards."""

    def __init__(self, style: Style = INCH_STYLE) -> None:
        self._style = style
        self.blanks: dict[str, Blank] = {}
        self.screws: list[Hardware] = []
        self._fittings: list[Fitting] = []

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
        part_of: PartOf | None = None,
        key: str = "",
    ) -> Blank:
        """A blank that fills the three spans (x, y, z); ImpossibleProject where one is not positive."""
        if len(self.blanks) == MOST_BOARDS:
            raise ImpossibleProject("bays", f"they come to more than {MOST_BOARDS} boards; plan it as several cases")
        low, high = [s[0] for s in spans], [s[1] for s in spans]
        if any(a >= b for a, b in spans):
            raise ImpossibleProject(key, f"no room is left for the {name}; make the case larger or its parts fewer")
        blank = Blank(name, role, group, stage, sheet, axes, low, high, directions(axes)[2][0], edging, part_of)
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

        A dado that would run out of the edge of the receiving board is a rabbet, and a rabbet away from any edge is a
        dado. `stopped_run` cuts no longer than what enters with its end gap, but on to an end before which only a
        socket lies; otherwise the cut runs through, or keeps to its stop where the receiving board reaches the front.
        `kind` names the cut where the trade does so ("groove").
        """
        self._fittings.append(Fitting(self._joint(enters, receives, axis, choice, key, kind), choice, stopped_run, key))

    def lock(self, side: Blank, front: Blank, axes: tuple[str, str], choice: JointChoice, *, key: str) -> None:
        """The drawer-front joint: the end of `side` goes into `front`, whose tongue goes into the side.

        `axes` are these two ways. It is two joints, so that each board is held to its place in the other. The choice
        is settled: none of its lengths is left open. Raises ImpossibleProject where too little wood is left.
        """
        thick, lock = front.sheet.thickness, lock_of(choice, front.sheet.thickness)
        names = {"groove": "tongue", "tongue length": "depth"}
        for setting, what, left in thin_of(thick, side.sheet, lock):
            refuse(f"{key}.{names.get(setting, setting)}", missing_wood(what, left, self._style))
        sides = Joint("drawer lock", side.name, front.name, axes[0], thick - lock.lip, choice.fit)
        tongue = lock_cuts(thick, side.sheet.thickness, lock).tongue
        fronts = Joint("drawer lock", front.name, side.name, axes[1], choice.depth, choice.fit, choice.end_gap, tongue)
        self._fittings += [Fitting(joint, choice, False, key) for joint in (sides, fronts)]

    def _joint(
        self, enters: Blank, receives: Blank, axis: str, choice: JointChoice, key: str, kind: str
    ) -> Joint:
        """What the choice makes of these two boards. Raises ImpossibleProject where it is none."""
        if choice.kind in ("butt", "pocket screws"):
            return Joint(choice.kind, enters.name, receives.name, axis)
        if choice.kind == "drawer lock":
            raise ImpossibleProject(
                f"{key}.kind", f"the drawer-front joint is for corners of drawer boxes, not for the {enters.name}"
            )
        low, high = receives.span(axis_of(axis)[0])
        if choice.kind == "finger":
            refuse(f"{key}.kind", not_at_the_end(enters, receives, self._style))
            return Joint("finger", enters.name, receives.name, axis, high - low, choice.fit)
        depth = choice.depth if choice.depth is not None else share(high - low, 2, 1)[0]
        if depth >= high - low:
            raise ImpossibleProject(
                key + ".depth",
                f"the cut would go right through the {receives.name}; choose less than its thickness",
            )
        if choice.end_gap >= depth:
            raise ImpossibleProject(key + ".end_gap", "it must be smaller than the depth of the joint")
        flush = flush_edge(enters, receives)
        tongue = 0
        if choice.kind == "tongue":
            tongue = choice.tongue if choice.tongue is not None else share(enters.sheet.thickness, 2, 1)[0]
            if tongue >= enters.sheet.thickness:
                raise ImpossibleProject(key + ".tongue", f"it must be thinner than the {enters.name}")
        name = kind or ("tongue" if tongue else "rabbet" if flush else "dado")
        return Joint(name, enters.name, receives.name, axis, depth, choice.fit, choice.end_gap, tongue)

    def finish(self, measured: Mapping[str, PartSize] = NO_PARTS) -> tuple[tuple[Board, ...], tuple[Joint, ...]]:
        """All allowances, then all cuts, then the boards and joints in the order they were added.

        A part that was `measured` gets its true size before anything is cut; its lower, left or front
        end stays, and the dry-fit shows where the other end no longer meets its neighbour.
        """
        pairs = [(self.blanks[f.joint.enters], self.blanks[f.joint.receives]) for f in self._fittings]
        faces = [face_met(f.joint, receives) for f, (_, receives) in zip(self._fittings, pairs, strict=True)]
        for fitting, (enters, _), face in zip(self._fittings, pairs, faces, strict=True):
            lengthen(fitting.joint, enters, face)
        for name, size in measured.items():
            resize(self.blanks[name], size)
        captured = any(f.joint.kind == "groove" and self.blanks[f.joint.enters].role == "back" for f in self._fittings)
        for fitting, (enters, receives), face in zip(self._fittings, pairs, faces, strict=True):
            if fitting.joint.kind == "pocket screws":
                self.screws.append(drill_pockets(fitting, enters, receives, face, self._style, captured))
            elif fitting.joint.kind == "finger":
                cut_fingers(fitting, enters, receives, face, self._style)
            elif fitting.joint.kind == "drawer lock":
                cut_lock(fitting, enters, receives)
            elif fitting.joint.depth:
                cut_both(fitting, enters, receives, face)
        for fitting, (enters, receives) in zip(self._fittings, pairs, strict=True):
            if fitting.stopped_run:
                run_out(fitting, enters, receives)
        joints = tuple(fitting.joint for fitting in self._fittings)
        return tuple(finished(blank) for blank in self.blanks.values()), joints
