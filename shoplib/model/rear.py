"""What closes the bays behind: the back, and the rails that stand before it."""

from dataclasses import dataclass

from shoplib.measure import narrowest
from shoplib.model.assembly import Assembly
from shoplib.model.blank import FACING
from shoplib.model.box import Box
from shoplib.model.carcass import Opening
from shoplib.model.gathered import Gathered
from shoplib.model.project import ImpossibleProject, Project
from shoplib.model.screwed import screw_both_ends
from shoplib.model.shell import Shell, foot_of_sides, sheet_of


@dataclass(frozen=True, slots=True)
class Rear:
    """What shelves and boxes end at: the back, and the rails before it with their height spans and front faces."""

    behind: int
    rails: tuple[tuple[int, int, int], ...] = ()

    def reach(self, low: int, high: int) -> int:
        """How far back a board between these heights may reach.

        >>> rear = Rear(100, ((50, 60, 90),))
        >>> rear.reach(0, 50), rear.reach(0, 51)
        (100, 90)
        """
        return narrowest([self.behind, *(face for foot, top, face in self.rails if foot < high and low < top)])

    @property
    def nearest(self) -> int:
        """How far back anything may reach at any height: the boxes of a bay have slides of one length."""
        return narrowest([self.behind, *(face for _, _, face in self.rails)])


def rails(
    assembly: Assembly, project: Project, shell: Shell, openings: tuple[Opening, ...], gathered: Gathered
) -> Rear:
    """Rails in front of the back, each in one piece from side to side; gives what stands behind the bays.

    A case hangs from such a rail, so it is not cut at the dividers: these are notched round it. Its ends
    are let into the sides, or butted and screwed through them.
    """
    left, right = openings[0].left_upright, openings[-1].right_upright
    found = []
    for index, rail in enumerate(project.carcass.rails):
        key = f"carcass.rails[{index + 1}]"
        sheet = sheet_of(project, rail.sheet, f"{key}.sheet")
        foot = foot_of_sides(project, shell)
        low = shell.ceiling - rail.width if rail.at is None else foot + rail.at
        high = low + rail.width
        if low < foot or high > shell.top_face:
            where = f"{key}.width" if rail.at is None else f"{key}.at"
            raise ImpossibleProject(where, "the rail would stand outside the case; move it or make it narrower")
        face = shell.behind - sheet.thickness
        spans = ((left.high[0], right.low[0]), (face, shell.behind), (low, high))
        board = assembly.add(f"rail {index + 1}", "rail", sheet, FACING, spans, key=key)
        assembly.join(board, left, "-x", rail.joint, key=f"{key}.joint")
        assembly.join(board, right, "+x", rail.joint, key=f"{key}.joint")
        notch = shell.behind - sheet.thickest - rail.joint.fit
        upper = shell.top_face if high >= shell.ceiling else high + rail.joint.fit
        for bay in openings[:-1]:
            divider = bay.right_upright
            divider.notch(Box((divider.low[0], notch, low), (divider.high[0], shell.behind, upper)))
        if rail.joint.kind == "butt":
            screw_both_ends("rail screws", board, left, right, project, gathered)
        found.append((low, high, face))
    return Rear(shell.behind, tuple(found))
