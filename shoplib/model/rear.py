"""What closes the bays behind: the back, and the rails that stand before it."""

from dataclasses import dataclass

from shoplib.measure import narrowest
from shoplib.model.assembly import Assembly
from shoplib.model.blank import FACING
from shoplib.model.carcass import Opening
from shoplib.model.project import ImpossibleProject, Project
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


def rails(assembly: Assembly, project: Project, shell: Shell, openings: tuple[Opening, ...]) -> Rear:
    """Rails in front of the back, one in each bay; gives what stands behind the bays."""
    found = []
    for index, rail in enumerate(project.carcass.rails):
        key = f"carcass.rails[{index + 1}]"
        sheet = sheet_of(project, rail.sheet, f"{key}.sheet")
        foot = foot_of_sides(project, shell)
        low = shell.ceiling - rail.width if rail.at is None else foot + rail.at
        if low < foot or low + rail.width > shell.top_face:
            where = f"{key}.width" if rail.at is None else f"{key}.at"
            raise ImpossibleProject(where, "the rail would stand outside the case; move it or make it narrower")
        for bay in openings:
            ends = ((bay.left, bay.right), (shell.behind - sheet.thickness, shell.behind), (low, low + rail.width))
            name = f"{bay.name} rail {index + 1}"
            board = assembly.add(name, "rail", sheet, FACING, ends, key=key)
            assembly.join(board, bay.left_upright, "-x", rail.joint, key=f"{key}.joint")
            assembly.join(board, bay.right_upright, "+x", rail.joint, key=f"{key}.joint")
        found.append((low, low + rail.width, shell.behind - sheet.thickness))
    return Rear(shell.behind, tuple(found))
