"""The rows of a drawer bay: where each front, each strip between, and each opening lies in height."""

from dataclasses import dataclass

from shoplib.measure import share
from shoplib.measure.traced import named
from shoplib.model.heights import heights
from shoplib.model.project import Drawers, ImpossibleProject, Project
from shoplib.model.shell import Shell, sheet_of

Span = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Row:
    """One row from the bottom up: the height span of its front (None where there is none) and its opening."""

    front: Span | None
    opening: Span


@dataclass(frozen=True, slots=True)
class Column:
    """The rows of a bay and the undersides of what stands between them."""

    rows: tuple[Row, ...]
    between: tuple[int, ...]


def front_zone(project: Project, shell: Shell) -> Span:
    """Lower and upper limit of the fronts in a bay.

    Inset fronts keep the gap `around` from bottom and top. Overlay fronts cover the edges of bottom
    and top but for the reveal; under an overhanging top they keep the gap `around` below it.
    """
    fronts, carcass = project.fronts, project.carcass
    case = sheet_of(project, carcass.sheet, "carcass.sheet").thickness
    if fronts.kind == "inset":
        return (shell.floor + fronts.around, shell.ceiling - fronts.around)
    if fronts.kind == "none":
        return (shell.floor, shell.ceiling)
    low = shell.floor - (0 if carcass.bottom == "none" else case - fronts.reveal)
    if carcass.top == "over" and carcass.overhang_front:
        return (low, shell.ceiling - fronts.around)
    return (low, shell.ceiling + (0 if carcass.top == "none" else case - fronts.reveal))


def column(rule: Drawers, project: Project, shell: Shell, bay: str, key: str) -> Column:
    """Share the height of the bay of that name among its drawers.

    Inset fronts: (O - (n+1) g) / n where gap and surround are alike and nothing stands between.

    Raises ImpossibleProject where a drawer is left without height.
    """
    fronts, n = project.fronts, rule.count
    if n < 1:
        raise ImpossibleProject(f"{key}.count", "a drawer bay has at least 1 drawer")
    strip = sheet_of(project, "", "carcass.sheet").thickness if rule.between != "nothing" else 0
    low, high = front_zone(project, shell)
    spaced = strip + 2 * fronts.around if strip and fronts.kind == "inset" else strip
    apart = {"inset": spaced or fronts.gap, "overlay": fronts.gap, "none": strip}[fronts.kind]
    sizes = heights(rule, high - low - (n - 1) * apart, project.step, key, n * project.style.step)
    rows, between, z, floor = [], [], low, shell.floor
    for k, size in enumerate(sizes):
        top = z + named(size, f"height of drawer {k + 1}, {bay}")
        if k == n - 1:
            ceiling = shell.ceiling
        elif strip:
            half = share(apart - strip, 2, 1)[0]
            between.append(top + half)
            ceiling = top + half
        else:
            ceiling = top + (apart if fronts.kind == "none" else share(apart, 2, 1)[0])
        rows.append(Row((z, top) if fronts.kind != "none" else None, (floor, ceiling)))
        floor = ceiling + strip
        z = top + apart
    return Column(tuple(rows), tuple(between))
