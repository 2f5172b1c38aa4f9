"""False fronts over drawers and pull-outs: where they reach, their pulls, and the gaps about them."""

from itertools import pairwise

from shoplib.measure import share, to_step
from shoplib.model.assembly import Assembly
from shoplib.model.blank import FACING, FACING_TALL, Blank
from shoplib.model.board import FRONTS, Hole
from shoplib.model.box import Box
from shoplib.model.carcass import BUTT, Opening, edging_of
from shoplib.model.part_of import PartOf
from shoplib.model.project import Fronts, ImpossibleProject, Project, Pulls
from shoplib.model.rows import Span
from shoplib.model.shell import Shell, sheet_of
from shoplib.model.solved import Gap, Hardware


def front_width(project: Project, bay: Opening, first: bool = True, last: bool = True) -> Span:
    """From where to where a front reaches over its opening.

    `bay` may be a share of an opening: `first` where it begins at the left upright, `last` where it ends at
    the right one.

    Inset: the opening less the gap `around` at each side. Overlay at an outer side: the opening plus
    side thickness less the reveal, O + a each side. Overlay on a divider: two fronts share it and
    leave the gap between them, (t - g) / 2 each; beside a bay without fronts it is covered like a side.
    Fronts side by side part where their boxes do, or a
    box would run into the front beside its own; the outer ones differ in width from those between.
    """
    left, right = bay.left_upright, bay.right_upright
    return (
        bay.left - _beyond(project.fronts, left, first, has_fronts(project, bay.number - 1)),
        bay.right + _beyond(project.fronts, right, last, has_fronts(project, bay.number + 1)),
    )


def has_fronts(project: Project, number: int) -> bool:
    """Whether the bay of this number, counted from the left, is there and closed by fronts."""
    return 1 <= number <= len(project.bays) and project.bays[number - 1].kind in ("drawers", "pull-out")


def _beyond(fronts: Fronts, upright: Blank, at_upright: bool, shared: bool) -> int:
    """How far a front reaches past the edge of its opening; less than nothing where it stays inside.

    `shared` is true where a front of the next bay lies on the same upright.
    """
    if not at_upright:
        return -share(fronts.gap, 2, 1)[0]
    if fronts.kind == "inset":
        return -fronts.around
    t = upright.sheet.thickness
    return share(t - fronts.gap, 2, 1)[0] if shared else t - fronts.reveal


def front_depth(project: Project) -> Span:
    """From where to where a front reaches in depth: behind y = 0 where inset, before it where overlay."""
    t = sheet_of(project, project.fronts.sheet, "fronts.sheet").thickness
    return (0, t) if project.fronts.kind == "inset" else (-t, 0)


def add_front(
    assembly: Assembly, project: Project, of: PartOf, x: Span, z: Span, behind: tuple[Blank, ...], key: str
) -> tuple[Blank, list[Hardware]]:
    """The front of a drawer or pull-out `of` which it is part, against the boards behind it, with its pull.

    The grain of drawer fronts runs left to right, so that those of a bay agree; that of a pull-out runs up where
    it is taller than wide (common practice, no source).
    """
    tall = "cleat" in {board.role for board in behind} and z[1] - z[0] > x[1] - x[0]
    sheet = sheet_of(project, project.fronts.sheet, "fronts.sheet")
    front = assembly.add(
        f"{of.name} front",
        "front",
        sheet,
        FACING_TALL if tall else FACING,
        (x, front_depth(project), z),
        group=of.name,
        stage=FRONTS,
        edging=edging_of(project, "fronts"),
        part_of=of,
        key=key,
    )
    for board in behind:
        assembly.join(front, board, "+y", BUTT)
    if project.pulls is None:
        return front, []
    return front, [_pull(project.pulls, front, behind, of.name, project.step)]


def _pull(pulls: Pulls, front: Blank, behind: tuple[Blank, ...], group: str, step: int) -> Hardware:
    """The pull in the middle of the front, its holes at L/2 - p/2 and L/2 + p/2, bored through what is behind too.

    In height the middle goes to the nearest whole step from the lower edge, where it is marked.
    """
    (x0, y0, z0), (x1, y1, z1) = front.low, front.high
    if pulls.pitch + pulls.hole >= x1 - x0 or pulls.hole >= z1 - z0:
        key = "pulls.pitch" if pulls.pitch else "pulls.hole"
        raise ImpossibleProject(key, f"the holes of the pull do not stand on the {front.name}; choose a smaller pull")
    across = share(x1 - x0 - pulls.pitch, 2, 1)[0]
    height = z0 + to_step(share(z1 - z0, 2, 1)[0], step)
    radius = share(pulls.hole, 2, 1)[0]
    places = [x0 + across] + ([x1 - across] if pulls.pitch else [])
    for x in places:
        front.holes.append(Hole("pull", (x, y0, height), "y", pulls.hole, y1 - y0))
        for board in behind:
            if board.role in ("box front", "cleat") and _holds(board, x, height, radius):
                through = board.high[1] - board.low[1]
                board.holes.append(Hole("pull", (x, board.low[1], height), "y", pulls.hole, through))
    body = Box((places[0] - radius, y0 - pulls.projection, height - radius), (places[-1] + radius, y0, height + radius))
    return Hardware("pull", front.name, group, body)


def _holds(board: Blank, x: int, z: int, radius: int) -> bool:
    return (
        board.low[0] < x - radius
        and x + radius < board.high[0]
        and board.low[2] < z - radius
        and z + radius < board.high[2]
    )


def gaps_about(
    fronts: list[tuple[Opening, Blank]], project: Project, shell: Shell, tops: dict[str, Blank]
) -> list[Gap]:
    """The gaps between fronts one above another, beside one another, and between an inset front and the case.

    Each front comes with its opening, or its share of one, as measured: the gap beside an inset front is to the
    face of the upright as built.
    """
    found = []
    by_bay: dict[int, list[tuple[Opening, Blank]]] = {}
    for opening, front in fronts:
        by_bay.setdefault(opening.number, []).append((opening, front))
    for column in by_bay.values():
        for (_, below), (_, above) in pairwise(column):
            if above.low[2] >= below.high[2]:
                found.append(Gap((below.name, above.name), "z", above.low[2] - below.high[2]))
            elif above.low[0] >= below.high[0]:
                found.append(Gap((below.name, above.name), "x", above.low[0] - below.high[0]))
    if project.fronts.kind == "inset":
        for column in by_bay.values():
            found += _to_the_case(column, shell, tops)
        return found
    for bay, column in by_bay.items():
        for _, front in column:
            for _, other in by_bay.get(bay + 1, []):
                if other.low[2] < front.high[2] and front.low[2] < other.high[2]:
                    found.append(Gap((front.name, other.name), "x", other.low[0] - front.high[0]))
    return found


def _to_the_case(column: list[tuple[Opening, Blank]], shell: Shell, tops: dict[str, Blank]) -> list[Gap]:
    """Inset fronts of one bay: the gaps to the uprights beside them, and to bottom and top."""
    found = []
    for opening, front in column:
        row = [other for _, other in column if other.low[2] == front.low[2]]
        if front is row[0]:
            found.append(Gap((opening.left_upright.name, front.name), "x", front.low[0] - opening.left))
        if front is row[-1]:
            found.append(Gap((front.name, opening.right_upright.name), "x", opening.right - front.high[0]))
    lowest, highest = column[0][1], column[-1][1]
    if "bottom" in tops:
        found.append(Gap(("bottom", lowest.name), "z", lowest.low[2] - shell.floor))
    if "top" in tops:
        found.append(Gap((highest.name, "top"), "z", shell.ceiling - highest.high[2]))
    return found
