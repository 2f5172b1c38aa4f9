"""A project solved: shell, bays, case, drawers and fronts become boards with cuts."""

from dataclasses import replace

from shoplib.measure import share, thickest
from shoplib.model.assembly import Assembly
from shoplib.model.board import Board
from shoplib.model.box import Box, Point, around
from shoplib.model.carcass import Opening, carcass
from shoplib.model.drawers import add_drawers
from shoplib.model.fronts import gaps_about
from shoplib.model.gathered import Gathered
from shoplib.model.possible import refuse_impossible
from shoplib.model.project import NOTHING_MEASURED, ImpossibleProject, PartSize, Project
from shoplib.model.pull_out import add_pull_out
from shoplib.model.rear import rails
from shoplib.model.room import note_on_blocks
from shoplib.model.screwed import TOE_SCREWS, screw_both_ends
from shoplib.model.shell import Shell, sheet_of, shell_of
from shoplib.model.shelves import shelves
from shoplib.model.solved import Cabinet, ClosingSum, Hardware
from shoplib.model.uprights import bay_widths
from shoplib.model.what_changed import what_changed


def solve(project: Project) -> Cabinet:
    """Everything the project becomes: boards, joints, travel, gaps, hardware and sums.

    Raises ImpossibleProject, one sentence with the key to change, where no set of boards with
    positive sizes and cuts inside them exists.
    """
    if project.measured == NOTHING_MEASURED:
        return _solved(project)
    planned = _solved(replace(project, measured=NOTHING_MEASURED))
    cabinet = _as_built(project)
    changed = what_changed(project, planned, cabinet)
    return replace(cabinet, findings=cabinet.findings + changed)


def _as_built(project: Project) -> Cabinet:
    try:
        return _solved(project)
    except ImpossibleProject as fault:
        if fault.key.startswith("measured"):
            raise
        raise ImpossibleProject(
            "measured", f"the plan comes out without it, but not as measured ({fault}); measure again"
        ) from None


def designed_sizes(project: Project) -> dict[str, Point]:
    """Each board's size before anything was rounded for the shop, by name."""
    exact = _solved(replace(project, rounding=1, measured=NOTHING_MEASURED))
    return {board.name: board.size for board in exact.boards}


def _solved(project: Project) -> Cabinet:
    case = sheet_of(project, project.carcass.sheet, "carcass.sheet").thickness
    refuse_impossible(project, case)
    shell = shell_of(project)
    widths = bay_widths(shell.right - shell.left - 2 * case, case, project.bays, project.step)
    assembly, gathered = Assembly(project.style), Gathered()
    if project.size.by == "space" and project.space.blocks:
        gathered.findings.extend(note_on_blocks(project.space, project.style))
    openings = carcass(assembly, project, shell, widths)
    if toe := assembly.blanks.get("toe board"):
        uprights = openings[0].left_upright, openings[-1].right_upright
        screw_both_ends(TOE_SCREWS, toe, *uprights, project, gathered)
    rear = rails(assembly, project, shell, openings, gathered)
    for bay, opening in zip(project.bays, openings, strict=True):
        if bay.kind == "drawers":
            add_drawers(assembly, project, shell, opening, rear, gathered)
        elif bay.kind == "shelves":
            shelves(assembly, project, shell, opening, rear)
        elif bay.kind == "pull-out":
            add_pull_out(assembly, project, shell, opening, rear.nearest, gathered)
    _check_measured_names(project, assembly, openings, gathered)
    boards, joints = assembly.finish(project.measured.parts)
    _check_edging(project, boards)
    hardware = (*gathered.hardware, *assembly.screws, *_standing_on(project, shell))
    levels = {name: blank for name, blank in assembly.blanks.items() if name in ("top", "bottom")}
    outside = _outside(project, shell)
    return Cabinet(
        name=project.name,
        boards=boards,
        sheets=project.sheets | {blank.sheet.name: blank.sheet for blank in assembly.blanks.values()},
        joints=joints,
        travel=tuple(gathered.travel),
        gaps=tuple(gaps_about(gathered.fronts, project, shell, levels)),
        hardware=hardware,
        sums=_sums(project, shell, openings, case),
        findings=tuple(gathered.findings),
        spacers=tuple(gathered.spacers),
        waiting=tuple(gathered.waiting),
        again=tuple(gathered.again),
        project=project,
        style=project.style,
        outside=outside,
        envelope=around([outside, *(fitting.box for fitting in hardware)]),
    )


def _outside(project: Project, shell: Shell) -> Box:
    """The box that the boards are meant to fill, from the planes of the case; the dry-fit compares it with them."""
    carcass_ = project.carcass
    over = carcass_.overhang_sides
    applied = carcass_.back.kind == "applied"
    back = sheet_of(project, carcass_.back.sheet, "carcass.back.sheet").thickness if applied else 0
    right = [shell.right]
    for name, how, past in (("top", carcass_.top == "over", over), ("bottom", carcass_.bottom == "under", 0)):
        if how:
            # A top that lies over the sides reaches as far as it was measured: it decides nothing but itself.
            made = project.measured.parts.get(name, PartSize()).length
            right.append(shell.left - past + made if made else shell.right + past)
    return Box((shell.left - over, shell.front, 0), (thickest(right), shell.rear + back, shell.top_face))


def _check_edging(project: Project, boards: tuple[Board, ...]) -> None:
    if project.edging:
        for board in boards:
            if not all(side > 0 for side in board.cut_size):
                raise ImpossibleProject(
                    "edging", f"its strips are as wide as the whole {board.name}; make them thinner"
                )


def _standing_on(project: Project, shell: Shell) -> tuple[Hardware, ...]:
    """Four feet or casters under the corners; they add their height below the boards."""
    base = project.base
    if base.kind not in ("feet", "casters"):
        return ()
    if base.height <= 0:
        raise ImpossibleProject("base.height", f"{base.kind} need a height, such as 3 1/2 in or 90 mm")
    wide = share(shell.rear, 6, 1)[0]
    what = base.kind.removesuffix("s") if base.kind == "casters" else "foot"
    below = "bottom" if project.carcass.bottom != "none" else "left side"
    return tuple(
        Hardware(what, below, "case", Box((x, y, -base.height), (x + wide, y + wide, 0)))
        for x in (shell.left, shell.right - wide)
        for y in (0, shell.rear - wide)
    )


def _sums(project: Project, shell: Shell, openings: tuple[Opening, ...], case: int) -> tuple[ClosingSum, ...]:
    """The chains that must close: across the case and up it."""
    across = [("left side", case)]
    for opening in openings:
        across.append((opening.name, opening.right - opening.left))
        across.append((opening.right_upright.name, case))
    up = []
    if shell.under:
        up.append(("plinth", shell.under))
    if project.base.kind == "toe space" and project.carcass.bottom == "between":
        up.append(("toe space", project.base.height))
    if project.carcass.bottom != "none":
        up.append(("bottom", case))
    up.append(("inside height", shell.ceiling - shell.floor))
    if project.carcass.top != "none":
        up.append(("stretchers" if project.carcass.top == "stretchers" else "top", case))
    uprights = frozenset({"left side", *(opening.right_upright.name for opening in openings)})
    return (
        ClosingSum(tuple(across), ("outside width over the sides", shell.right - shell.left), uprights),
        ClosingSum(tuple(up), ("outside height", shell.top_face), frozenset({"bottom", "top", "stretchers"})),
    )


_DEEP = ("drawers", "pull-out")
"""The kinds of bay that hold something cut to the depth as built."""


def _check_measured_names(
    project: Project, assembly: Assembly, openings: tuple[Opening, ...], gathered: Gathered
) -> None:
    """A measurement of something that is not there is a slip of the pen, and said so."""
    measured = project.measured
    known = {
        "openings": gathered.openings,
        "depths": [opening.name for opening, bay in zip(openings, project.bays, strict=True) if bay.kind in _DEEP],
        "parts": list(assembly.blanks),
        "openings_again": gathered.openings,
    }
    for table, names in known.items():
        for name in getattr(measured, table):
            if name not in names:
                near = ", ".join(f'"{n}"' for n in names[:6]) or "none"
                what = "no such name" if table != "depths" else "no boxes or pull-out of that name to cut to a depth"
                raise ImpossibleProject(f'measured.{table}."{name}"', f"this plan has {what}; it has {near}")
