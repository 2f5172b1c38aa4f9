"""The case itself: sides, top, bottom, dividers, rails, back and base, as blanks and joints."""

from dataclasses import dataclass
from itertools import pairwise

from shoplib.model.assembly import Assembly
from shoplib.model.blank import BACKING, BACKING_WIDE, BOX_SIDE, FACING, LEVEL, UPRIGHT_LEFT, UPRIGHT_RIGHT, Blank
from shoplib.model.board import Edge
from shoplib.model.box import Box
from shoplib.model.part_of import bay_name
from shoplib.model.placement import Axes
from shoplib.model.project import ImpossibleProject, JointChoice, Project
from shoplib.model.shell import Shell, foot_of_sides, sheet_of

BUTT = JointChoice()


@dataclass(frozen=True, slots=True)
class Opening:
    """The clear room of one bay: its x span, and the uprights on either side."""

    number: int
    left: int
    right: int
    left_upright: Blank
    right_upright: Blank

    @property
    def name(self) -> str:
        """How the plan calls it."""
        return bay_name(self.number)


_EDGES = {
    "case": ("front", "back"),
    "shelves": ("front",),
    "fronts": ("left", "right", "top", "bottom"),
}
"""The edges of each kind of part that can be edged."""


def edging_of(project: Project, boards: str) -> tuple[tuple[str, Edge], ...]:
    """The edging that the project puts on this kind of part: all round on fronts, else on the front edge.

    Raises ImpossibleProject for an edge that such a part does not have, or one edged twice.
    """
    found: dict[str, Edge] = {}
    for number, choice in enumerate(project.edging, 1):
        if choice.boards != boards:
            continue
        usual = _EDGES[boards] if boards == "fronts" else ("front",)
        for edge in choice.edges or usual:
            key = f"edging[{number}].edges"
            if edge not in _EDGES[boards]:
                have = ", ".join(_EDGES[boards])
                raise ImpossibleProject(key, f"edging of the {boards} goes on these edges: {have}; not on the {edge}")
            if edge in found:
                raise ImpossibleProject(key, f"the {edge} edge of the {boards} is edged already")
            found[edge] = Edge(choice.kind, choice.thickness)
    return tuple(found.items())


def carcass(assembly: Assembly, project: Project, shell: Shell, widths: tuple[int, ...]) -> tuple[Opening, ...]:
    """Add the case to the assembly and give its bays, left to right."""
    sheet = sheet_of(project, project.carcass.sheet, "carcass.sheet")
    left, right = _sides(assembly, project, shell)
    uprights = [left]
    edge = edging_of(project, "case")
    x = shell.left + sheet.thickness
    for number, width in enumerate(widths[:-1], 1):
        x += width
        spans = ((x, x + sheet.thickness), (0, shell.behind), (shell.floor, shell.ceiling))
        uprights.append(
            assembly.add(f"divider {number}", "divider", sheet, UPRIGHT_LEFT, spans, edging=edge, key="bays")
        )
        x += sheet.thickness
    uprights.append(right)
    openings = tuple(Opening(number, a.high[0], b.low[0], a, b) for number, (a, b) in enumerate(pairwise(uprights), 1))
    levels = _top_and_bottom(assembly, project, shell, left, right)
    for divider in uprights[1:-1]:
        for level, axis in levels:
            assembly.join(divider, level, axis, project.carcass.divider, key="carcass.divider")
    if len(uprights) > 2 and len({axis for _, axis in levels}) < 2:
        raise ImpossibleProject("bays", "dividers need a top (or stretchers) and a bottom to stand between")
    _back(assembly, project, shell, left, right, levels)
    _base(assembly, project, shell, left, right)
    return openings


def _sides(assembly: Assembly, project: Project, shell: Shell) -> tuple[Blank, Blank]:
    sheet = sheet_of(project, project.carcass.sheet, "carcass.sheet")
    t, carcass_, base = sheet.thickness, project.carcass, project.base
    bottom = foot_of_sides(project, shell)
    top = shell.ceiling if carcass_.top == "over" else shell.top_face
    edge = edging_of(project, "case")
    depth = (0, shell.rear)
    left = assembly.add(
        "left side", "side", sheet, UPRIGHT_LEFT, ((shell.left, shell.left + t), depth, (bottom, top)), edging=edge
    )
    right = assembly.add(
        "right side", "side", sheet, UPRIGHT_RIGHT, ((shell.right - t, shell.right), depth, (bottom, top)), edging=edge
    )
    if base.kind == "toe space":
        board = sheet_of(project, base.sheet, "base.sheet").thickness
        if base.setback + board > shell.behind:
            raise ImpossibleProject(
                "base.setback", "the toe space is cut out of the sides, and these leave no room for it"
            )
    if base.kind == "toe space" and base.setback:
        for side in (left, right):
            (x0, y0, z0), (x1, _, _) = side.low, side.high
            side.notch(Box((x0, y0, z0), (x1, base.setback, base.height)))
    return left, right


def _top_and_bottom(
    assembly: Assembly, project: Project, shell: Shell, left: Blank, right: Blank
) -> list[tuple[Blank, str]]:
    """The level boards that dividers and back meet, each with the direction in which they enter it."""
    carcass_ = project.carcass
    sheet = sheet_of(project, carcass_.sheet, "carcass.sheet")
    t, edge = sheet.thickness, edging_of(project, "case")
    inner = (left.high[0], right.low[0])
    found: list[tuple[Blank, str]] = []

    def between(name: str, role: str, y: tuple[int, int], z: int, axis: str) -> None:
        blank = assembly.add(name, role, sheet, LEVEL, (inner, y, (z, z + t)), edging=edge if y[0] == 0 else ())
        assembly.join(blank, left, "-x", carcass_.corner, key="carcass.corner")
        assembly.join(blank, right, "+x", carcass_.corner, key="carcass.corner")
        found.append((blank, axis))

    def across(name: str, y: tuple[int, int], z: int, axis: str) -> None:
        over = carcass_.overhang_sides if name == "top" else 0
        blank = assembly.add(
            name, name, sheet, LEVEL, ((shell.left - over, shell.right + over), y, (z, z + t)), edging=edge
        )
        for side in (left, right):
            assembly.join(side, blank, axis, carcass_.corner, key="carcass.corner")
        found.append((blank, axis))

    if carcass_.bottom == "between":
        between("bottom", "bottom", (0, shell.rear), shell.floor - t, "-z")
    elif carcass_.bottom == "under":
        across("bottom", (0, shell.rear), shell.floor - t, "-z")
    if carcass_.top == "between":
        between("top", "top", (0, shell.rear), shell.ceiling, "+z")
    elif carcass_.top == "over":
        across("top", (-carcass_.overhang_front, shell.rear), shell.ceiling, "+z")
    elif carcass_.top == "stretchers":
        wide = carcass_.stretcher_width
        if 2 * wide >= shell.behind:
            raise ImpossibleProject("carcass.stretcher_width", "the two stretchers would meet; make them narrower")
        between("front stretcher", "stretcher", (0, wide), shell.ceiling, "+z")
        between("back stretcher", "stretcher", (shell.behind - wide, shell.behind), shell.ceiling, "+z")
    return found


def _back(
    assembly: Assembly,
    project: Project,
    shell: Shell,
    left: Blank,
    right: Blank,
    levels: list[tuple[Blank, str]],
) -> None:
    back = project.carcass.back
    if back.kind == "none":
        return
    sheet = sheet_of(project, back.sheet, "carcass.back.sheet")
    full = [level for level in levels if level[0].role != "stretcher"]
    bottoms = [level for level, axis in full if axis == "-z"]
    tops = [level for level, axis in full if axis == "+z"]
    if back.kind == "applied":
        x = (left.low[0], right.high[0])
        z = (bottoms[0].low[2] if bottoms else left.low[2], tops[0].high[2] if tops else shell.top_face)
        y = (shell.rear, shell.rear + sheet.thickness)
        blank = assembly.add("back", "back", sheet, _backing(x, z), (x, y, z), key="carcass.back")
        for receives in (left, right, *bottoms, *tops):
            assembly.join(blank, receives, "-y", BUTT)
        return
    x = (left.high[0], right.low[0])
    z = (shell.floor if bottoms else left.low[2], shell.ceiling if tops else shell.top_face)
    start = shell.rear - sheet.thickness if back.kind == "rabbet" else shell.behind
    y = (start, start + sheet.thickness)
    blank = assembly.add("back", "back", sheet, _backing(x, z), (x, y, z), key="carcass.back")
    choice = JointChoice("rabbet" if back.kind == "rabbet" else "dado", back.depth, back.fit, back.end_gap)
    kind = "rabbet" if back.kind == "rabbet" else "groove"
    for receives, axis in ((left, "-x"), (right, "+x"), *full):
        across = receives.role in ("top", "bottom") and receives.low[0] <= left.low[0]
        stopped = across or project.carcass.corner.kind == "finger"  # else it comes out in the fingers
        assembly.join(blank, receives, axis, choice, key="carcass.back", kind=kind, stopped_run=stopped)


def _backing(x: tuple[int, int], z: tuple[int, int]) -> Axes:
    return BACKING_WIDE if x[1] - x[0] > z[1] - z[0] else BACKING


def _base(assembly: Assembly, project: Project, shell: Shell, left: Blank, right: Blank) -> None:
    base = project.base
    if base.kind not in ("toe space", "plinth"):
        return
    if base.height <= 0:
        raise ImpossibleProject("base.height", f"a {base.kind} needs a height, such as 4 in or 100 mm")
    if base.kind == "toe space" and project.carcass.bottom == "under":
        raise ImpossibleProject("base.kind", 'a toe space lies below the bottom; choose carcass.bottom = "between"')
    sheet = sheet_of(project, base.sheet, "base.sheet")
    t, high = sheet.thickness, (0, base.height)
    if base.kind == "toe space":
        spans = ((left.high[0], right.low[0]), (base.setback, base.setback + t), high)
        board = assembly.add("toe board", "toe board", sheet, FACING, spans, key="base")
        assembly.join(board, left, "-x", BUTT)
        assembly.join(board, right, "+x", BUTT)
        return
    front, rear = (base.setback, base.setback + t), (shell.rear - t, shell.rear)
    if front[1] >= rear[0]:
        raise ImpossibleProject(
            "base.setback", "the front of the plinth would stand at its back or behind the case; choose less"
        )
    whole = (left.low[0], right.high[0])
    across = [
        assembly.add("plinth front", "plinth", sheet, FACING, (whole, front, high), key="base"),
        assembly.add("plinth back", "plinth", sheet, FACING, (whole, rear, high), key="base"),
    ]
    bottom = assembly.blanks.get("bottom", left)
    for board in across:
        assembly.join(board, bottom, "+z", BUTT)
    for name, side, x in (
        ("left", left, (whole[0], whole[0] + t)),
        ("right", right, (whole[1] - t, whole[1])),
    ):
        spans = (x, (front[1], rear[0]), high)
        end = assembly.add(f"plinth {name} end", "plinth", sheet, BOX_SIDE, spans, key="base")
        assembly.join(end, across[0], "-y", BUTT)
        assembly.join(end, across[1], "+y", BUTT)
        assembly.join(end, bottom if project.carcass.bottom == "under" else side, "+z", BUTT)
