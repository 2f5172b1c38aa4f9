"""The planes of a case: how its outside, inside and space sizes follow from one another."""

from dataclasses import dataclass

from shoplib.measure import narrowest, thickest
from shoplib.model.joinery import gain
from shoplib.model.project import ImpossibleProject, Project
from shoplib.model.room import governing
from shoplib.model.sheet import Sheet


@dataclass(frozen=True, slots=True)
class Shell:
    """World positions of the planes that everything in the case is placed against, in ticks.

    left, right: outer faces of the sides. under, top_face: underside of the case and top of its
    sides or top. floor, ceiling: the clear inside, bottom to top. behind: where the inside ends, at the
    front face of a back or at the shoulder of its rabbet. rear: rear edge of the sides. front: the
    farthest forward of overlay fronts and top.
    """

    left: int
    right: int
    under: int
    floor: int
    ceiling: int
    top_face: int
    behind: int
    rear: int
    front: int
    below_boards: int


def sheet_of(project: Project, name: str, key: str) -> Sheet:
    """The sheet of that name, or the case sheet where the name is left empty.

    Raises ImpossibleProject where the project has no such sheet.
    """
    wanted = name or project.carcass.sheet
    if wanted not in project.sheets:
        have = ", ".join(f'"{n}"' for n in project.sheets) or "none"
        raise ImpossibleProject(key, f'there is no sheet "{wanted}"; the sheets of this project are {have}')
    return project.sheets[wanted]


def shell_of(project: Project) -> Shell:
    """The planes of this project's case.

    Raises ImpossibleProject where a size is missing or leaves nothing inside.
    """
    case = sheet_of(project, project.carcass.sheet, "carcass.sheet").thickness
    carcass, base = project.carcass, project.base
    overlay = _overlay_front(project)
    applied = _applied_back(project)
    in_back = _room_in_back(project)
    projection = project.pulls.projection if project.pulls and project.fronts.kind != "none" else 0
    forward = thickest([overlay, carcass.overhang_front])
    if carcass.top != "over" and (carcass.overhang_sides or carcass.overhang_front):
        raise ImpossibleProject(
            "carcass.overhang_sides", 'only a top that lies over the sides overhangs; set top = "over"'
        )
    under = base.height if base.kind == "plinth" else 0
    below_boards = base.height if base.kind in ("feet", "casters") else 0
    floor = {
        "between": (base.height if base.kind == "toe space" else under) + case,
        "under": under + case,
        "none": under,
    }[carcass.bottom]
    cap = 0 if carcass.top == "none" else case
    size = project.size
    sides = 2 * case + 2 * carcass.overhang_sides
    if size.by == "space":
        if project.space is None:
            raise ImpossibleProject("space", 'size.by is "space", so give the space\'s width, height and depth')
        width, height, depth = governing(project.space, project.step)
        height -= below_boards
        rear = depth - thickest([overlay + projection, carcass.overhang_front]) - applied
    else:
        width, height, depth = (_given(project, side) for side in ("width", "height", "depth"))
        if size.by == "inside":
            width, height, rear = width + sides, floor + height + cap, depth + in_back
        else:
            rear = depth - forward - applied
    width, height, rear = _as_measured(project, case, width, height, rear)
    shell = Shell(
        carcass.overhang_sides,
        width - carcass.overhang_sides,
        under,
        floor,
        height - cap,
        height,
        rear - in_back,
        rear,
        -forward,
        below_boards,
    )
    for name, room in (
        ("width", shell.right - shell.left - 2 * case),
        ("height", shell.ceiling - shell.floor),
        ("depth", shell.behind),
    ):
        if room <= 0:
            raise ImpossibleProject(
                f"{'space' if size.by == 'space' else 'size'}.{name}",
                "the boards and clearances take all of it and nothing is left inside; make it larger",
            )
    return shell


def foot_of_sides(project: Project, shell: Shell) -> int:
    """The underside of the sides, from which heights of shelves and rails are given."""
    return shell.floor if project.carcass.bottom == "under" else shell.under


def _given(project: Project, side: str) -> int:
    value = getattr(project.size, side)
    if value is None:
        raise ImpossibleProject(f"size.{side}", f'it is missing; size.by is "{project.size.by}", so write the {side}')
    return value


def _overlay_front(project: Project) -> int:
    if project.fronts.kind != "overlay" or not any(bay.kind in ("drawers", "pull-out") for bay in project.bays):
        return 0
    return sheet_of(project, project.fronts.sheet, "fronts.sheet").thickness


def _applied_back(project: Project) -> int:
    back = project.carcass.back
    return sheet_of(project, back.sheet, "carcass.back.sheet").thickness if back.kind == "applied" else 0


def _room_in_back(project: Project) -> int:
    back = project.carcass.back
    if back.kind not in ("rabbet", "groove"):
        return 0
    sheet = sheet_of(project, back.sheet, "carcass.back.sheet")
    # What stands before the back ends at the shoulder of its rabbet: past it, it would hold the back off.
    return sheet.thickest + back.fit if back.kind == "rabbet" else sheet.thickness + back.setback


def _as_measured(project: Project, case: int, width: int, height: int, rear: int) -> tuple[int, int, int]:
    """A measured top, bottom, stretcher or side decides the size of the case that is built from it.

    Of two that differ the shorter governs; the dry-fit then shows the other as too long.
    """
    parts, carcass, base = project.measured.parts, project.carcass, project.base
    if not parts:
        return width, height, rear
    joint = gain(carcass.corner, case)
    across = {"bottom": carcass.bottom, "top": carcass.top, "front stretcher": "between", "back stretcher": "between"}
    wide = [parts[name].length for name, how in across.items() if how == "between" and name in parts]
    if any(wide):
        width = narrowest([w for w in wide if w]) - 2 * joint + 2 * case + 2 * carcass.overhang_sides
    sides = [parts[name] for name in ("left side", "right side") if name in parts]
    tall = [side.length for side in sides if side.length]
    if tall:
        start = base.height if base.kind == "plinth" else 0
        if carcass.bottom == "under":
            start += case - joint
        height = start + narrowest(tall) + (case - joint if carcass.top == "over" else 0)
    deep = [side.width for side in sides if side.width]
    return width, height, narrowest(deep) if deep else rear
