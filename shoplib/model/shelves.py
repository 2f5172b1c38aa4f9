"""Shelves of a bay: fixed ones let into the uprights, loose ones on pins."""

from shoplib.measure import MM, share
from shoplib.model.assembly import Assembly
from shoplib.model.blank import LEVEL, Blank
from shoplib.model.board import Hole
from shoplib.model.carcass import Opening, edging_of
from shoplib.model.part_of import PartOf
from shoplib.model.project import ImpossibleProject, JointChoice, Project
from shoplib.model.rear import Rear
from shoplib.model.sheet import Sheet
from shoplib.model.shell import Shell, foot_of_sides, sheet_of

PIN_EDGE = 37 * MM
"""Shelf pins stand 37 mm from the front edge: the system-hole line, common practice, no source."""


def even_heights(floor: int, ceiling: int, thickness: int, count: int, step: int, key: str = "") -> tuple[int, ...]:
    """Undersides of `count` shelves that leave equal openings; what will not divide goes to the top one.

    >>> even_heights(0, 103, 4, 2, 1)
    (31, 66)

    Raises ImpossibleProject with that key where the shelves leave no openings.
    """
    part, _ = share(ceiling - floor - count * thickness, count + 1, step)
    if part <= 0:
        raise ImpossibleProject(key, f"{count} shelves leave no openings between them; take fewer")
    return tuple(floor + (k + 1) * part + k * thickness for k in range(count))


def shelves(assembly: Assembly, project: Project, shell: Shell, bay: Opening, behind: Rear) -> None:
    """Add the shelves of one bay; each reaches back to what stands behind it at its height."""
    choice = project.bays[bay.number - 1].shelves
    key = f"bays[{bay.number}].shelves"
    if choice is None:
        return
    sheet = sheet_of(project, "", "carcass.sheet")
    if choice.fixed and choice.at:
        raise ImpossibleProject(f"{key}.fixed", 'give either a number of "fixed" shelves or their heights under "at"')
    at = tuple(foot_of_sides(project, shell) + height for height in choice.at)
    if at:
        _check_heights(at, sheet.thickness, shell, f"{key}.at")
    lows = at or even_heights(shell.floor, shell.ceiling, sheet.thickness, choice.fixed, project.step, f"{key}.fixed")
    for name, given in (("setbacks", choice.setbacks), ("depths", choice.depths)):
        if given and len(given) != len(lows):
            raise ImpossibleProject(f"{key}.{name}", f"it needs one length for each of the {len(lows)} fixed shelves")
    for index, low in enumerate(lows):
        back = behind.reach(low, low + sheet.thickness)
        setback = choice.setbacks[index] if choice.setbacks else 0
        rear = setback + choice.depths[index] if choice.depths else back
        if rear > back:
            raise ImpossibleProject(f"{key}.depths", "the shelf would stand through the back; make it less deep")
        fixed_shelf(
            assembly, project, bay, PartOf(bay.number, "shelf", index + 1), low, (setback, rear), project.carcass.shelf
        )
    _loose(assembly, project, shell, bay, behind, key)


def _check_heights(at: tuple[int, ...], thickness: int, shell: Shell, key: str) -> None:
    free = shell.floor
    for number, low in sorted(enumerate(at, 1), key=lambda item: item[1]):
        if low < free or low + thickness > shell.ceiling:
            where = "inside the case" if low < shell.floor or low >= free else "clear of the shelf below it"
            raise ImpossibleProject(f"{key}[{number}]", f"a shelf at this height does not stand {where}; move it")
        free = low + thickness


def fixed_shelf(
    assembly: Assembly,
    project: Project,
    bay: Opening,
    shelf: PartOf,
    low: int,
    y: tuple[int, int],
    joint: JointChoice,
) -> None:
    """One shelf let into both uprights of the bay."""
    sheet = sheet_of(project, "", "carcass.sheet")
    spans = ((bay.left, bay.right), y, (low, low + sheet.thickness))
    board = assembly.add(
        shelf.name, "fixed shelf", sheet, LEVEL, spans, edging=edging_of(project, "shelves"), part_of=shelf,
        key=f"bays[{bay.number}]",
    )
    assembly.join(board, bay.left_upright, "-x", joint, key="carcass.shelf")
    assembly.join(board, bay.right_upright, "+x", joint, key="carcass.shelf")


def _loose(assembly: Assembly, project: Project, shell: Shell, bay: Opening, behind: Rear, key: str) -> None:
    choice = project.bays[bay.number - 1].shelves
    if not choice.loose:
        return
    if choice.fixed or choice.at:
        raise ImpossibleProject(f"{key}.loose", "loose shelves share a bay with no fixed ones here; use another bay")
    sheet = sheet_of(project, choice.loose_sheet, f"{key}.loose_sheet")
    gap = choice.loose_gap
    back = behind.nearest  # a loose shelf is moved up and down past every rail
    rear = back if choice.loose_depth is None else choice.loose_setback + choice.loose_depth
    if rear > back:
        raise ImpossibleProject(f"{key}.loose_depth", "the shelf would stand through the back; make it less deep")
    if rear - choice.loose_setback < 2 * PIN_EDGE + choice.pin_diameter:
        raise ImpossibleProject(
            f"{key}.loose_depth", "the shelf is too shallow for pins 37 mm from its front and rear; make it a fixed one"
        )
    lows = even_heights(shell.floor, shell.ceiling, sheet.thickness, choice.loose, project.step, f"{key}.loose")
    for index, low in enumerate(lows):
        x, y = (bay.left + gap, bay.right - gap), (choice.loose_setback, rear)
        shelf = PartOf(bay.number, "loose shelf", index + 1)
        assembly.add(
            shelf.name,
            "loose shelf",
            sheet,
            LEVEL,
            (x, y, (low, low + sheet.thickness)),
            edging=edging_of(project, "shelves"),
            part_of=shelf,
            key=key,
        )
        _pin_holes(assembly, bay, choice.pin_diameter, choice.pin_depth, low, y, sheet, shelf.name, key)


def _pin_holes(
    assembly: Assembly,
    bay: Opening,
    diameter: int,
    depth: int,
    low: int,
    y: tuple[int, int],
    sheet: Sheet,
    name: str,
    key: str,
) -> None:
    """Two pins in each upright, the pins' tops at the underside of the shelf."""
    radius = share(diameter, 2, 1)[0]
    for upright, x in ((bay.left_upright, bay.left), (bay.right_upright, bay.right)):
        if depth >= upright.sheet.thickness:
            raise ImpossibleProject(f"{key}.pin_depth", "the pin holes would come through; bore less deep")
        for line in (y[0] + PIN_EDGE, y[1] - PIN_EDGE):
            if _meets(upright, x, line, low - radius, diameter, depth):
                raise ImpossibleProject(
                    f"{key}.pin_depth", f"pins from both sides of {upright.name} would meet in it; bore less deep"
                )
            upright.holes.append(Hole("shelf pin", (x, line, low - radius), "x", diameter, depth, name))


def _meets(upright: Blank, x: int, y: int, z: int, diameter: int, depth: int) -> bool:
    """True where a pin hole bored from the other face comes through to this one."""
    return any(
        hole.kind == "shelf pin"
        and hole.centre[0] != x
        and abs(hole.centre[1] - y) < diameter
        and abs(hole.centre[2] - z) < diameter
        and hole.depth + depth >= upright.sheet.thickness
        for hole in upright.holes
    )
