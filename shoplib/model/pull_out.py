"""The pull-out: an upright panel on one pair of slides, with pegs and room for what hangs on them."""

from shoplib.measure import share, thickest, to_step, write_brief, write_length
from shoplib.model.as_measured import depth_as_built, opening_as_built, wait_for
from shoplib.model.assembly import Assembly
from shoplib.model.blank import FACING_TALL, UPRIGHT_LEFT, UPRIGHT_RIGHT, Blank, Span
from shoplib.model.board import BOXES, Hole
from shoplib.model.box import Box
from shoplib.model.carcass import BUTT, Opening
from shoplib.model.drawer_box import box_depth, slide_row
from shoplib.model.front_screws import cleat_screw_count
from shoplib.model.fronts import add_front, front_depth, front_width
from shoplib.model.gathered import Gathered
from shoplib.model.part_of import PartOf
from shoplib.model.project import ImpossibleProject, Project, PullOut
from shoplib.model.rows import front_zone
from shoplib.model.runners import screw_into
from shoplib.model.screwed import clearance, end_screws, screw_through
from shoplib.model.shell import Shell, sheet_of
from shoplib.model.solved import Finding, Hardware, SlideHeight, Travel
from shoplib.tables.slides import Slide


def add_pull_out(
    assembly: Assembly, project: Project, shell: Shell, bay: Opening, back: int, gathered: Gathered
) -> None:
    """The panel of this bay, its slides, pegs and front.

    Raises ImpossibleProject where the panel leaves no height, or a bought slide is not meant for it.
    """
    key = f"bays[{bay.number}].pull_out"
    choice = project.bays[bay.number - 1].pull_out
    if choice is None:
        raise ImpossibleProject(key, 'a bay of kind "pull-out" needs a table that describes its panel')
    slide = slide_row(project, choice.slide, f"{key}.slide")
    if slide.carries != "hardware" or slide.holds != "outside":
        raise ImpossibleProject(f"{key}.slide", "a panel hangs on side-mount slides; choose one of these")
    sheet = sheet_of(project, choice.sheet, f"{key}.sheet")
    if choice.peg_depth >= sheet.thickness:
        raise ImpossibleProject(f"{key}.peg_depth", "the peg holes would come through the panel; bore less deep")
    pull_out = PartOf(bay.number, "pull-out")
    group = pull_out.name
    left = choice.on == "left"
    front_y = front_depth(project)[1] if project.fronts.kind == "inset" else 0
    depth = depth_as_built(project, bay, back, gathered)
    built = opening_as_built(project, bay, group, gathered)
    wait_for(built, group, slide, project.fronts.kind != "none", gathered)
    bay = built.at_slides
    length = box_depth(
        depth - front_y, slide, project.step, f"{key}.slide", write_length(depth - front_y, project.style)
    )
    z = (shell.floor + choice.room_below, shell.ceiling - choice.room_above)
    if left:
        x = (bay.left + slide.side, bay.left + slide.side + sheet.thickness)
    else:
        x = (bay.right - slide.side - sheet.thickness, bay.right - slide.side)
    room = bay.right - bay.left - slide.side - sheet.thickness
    spans = (x, (front_y, front_y + length), z)
    axes = UPRIGHT_RIGHT if left else UPRIGHT_LEFT
    panel = assembly.add(f"{group} panel", "panel", sheet, axes, spans, group=group, stage=BOXES, part_of=pull_out,
                         key=key)
    gathered.travel.append(Travel(group, (0, -(length - slide.travel_lost), 0)))
    _check_room(project, choice, bay, panel, room, gathered)
    _slides(bay, panel, slide, left, group, shell, project, gathered)
    start = panel.low[1]
    if project.fronts.kind != "none":
        cleat = _cleat(assembly, project, panel, choice.cleat_width, left, key, gathered)
        start += to_step(cleat.sheet.thickness, project.step, "up")  # pegs are marked from the edge in whole steps
        wide = front_width(project, built.at_front)
        front, pulls = add_front(assembly, project, pull_out, wide, front_zone(project, shell), (panel, cleat), key)
        gathered.hardware.extend(pulls)
        gathered.fronts.append((built.at_front, front))
        unit = project.style.unit
        screw = screw_into(front, "front", cleat_screw_count(z[1] - z[0], unit), unit, cleat.sheet.thinnest)
        fixed = (screw,) if screw else ()
        gathered.hardware.append(Hardware("front screws", cleat.name, group, cleat.box, "", fixed))
    _pegs(panel, choice, (start, panel.high[1]), left, group, key, project.step, gathered)


def _check_room(project: Project, choice: PullOut, bay: Opening, panel: Blank, room: int, gathered: Gathered) -> None:
    if room >= choice.room and room >= choice.peg_length:
        over = choice.peg_length - choice.room
        if choice.peg_rows and choice.peg_columns and over > 0:
            reach, planned = write_brief(choice.peg_length, project.style), write_brief(choice.room, project.style)
            text = (
                f"{bay.name}: the pegs are {reach} long and pull_out.room is {planned}: they reach "
                f"{write_brief(over, project.style)} past it. Make them shorter, or write the room that they take."
            )
            gathered.findings.append(Finding("pull-out room", "warn", (panel.name,), text, over))
        return
    needed = thickest([choice.room, choice.peg_length])
    have, want = write_length(room, project.style), write_length(needed, project.style)
    missing = write_length(needed - room, project.style)
    text = f"{bay.name}: what hangs on the panel needs {want} and the bay leaves {have}; make the bay {missing} wider."
    gathered.findings.append(Finding("pull-out room", "stop", (panel.name,), text, needed - room))


def _slides(
    bay: Opening, panel: Blank, slide: Slide, left: bool, group: str, shell: Shell, project: Project,
    gathered: Gathered,
) -> None:
    """One pair: the lower slide a hand up from the edge of the panel, the upper as far from its top."""
    upright = bay.left_upright if left else bay.right_upright
    x = (bay.left, panel.low[0]) if left else (panel.high[0], bay.right)
    low, high = panel.span(2)
    y = (panel.low[1] + slide.setback, panel.high[1] + slide.setback)
    edge = share(high - low, 6, project.step)[0]
    for name, z in (("lower", low + edge), ("upper", high - edge - slide.height)):
        body = Box((x[0], y[0], z), (x[1], y[1], z + slide.height))
        screws = [screw_into(board, "slide", 3, project.style.unit) for board in (upright, panel)]
        fixed = tuple(one for one in screws if one)
        gathered.hardware.append(Hardware("slide", upright.name, group, body, slide.name, fixed))
        gathered.spacers.append(SlideHeight(group, f"{name} slide", z - shell.floor))


def _cleat(
    assembly: Assembly,
    project: Project,
    panel: Blank,
    wide: int,
    left: bool,
    key: str,
    gathered: Gathered,
) -> Blank:
    """An upright cleat behind the front, along the face with the pegs: an edge alone would not hold the front.

    It is screwed through the panel, and the front is screwed through it from behind; the screws of one
    stand between those of the other.
    """
    face = panel.high[0] if left else panel.low[0]
    x = (face, face + wide) if left else (face - wide, face)
    y = (panel.low[1], panel.low[1] + panel.sheet.thickness)
    group = panel.group
    cleat = assembly.add(
        f"{group} cleat", "cleat", panel.sheet, FACING_TALL, (x, y, panel.span(2)), group=group, stage=BOXES,
        part_of=panel.part_of, key=key,
    )
    assembly.join(cleat, panel, "-x" if left else "+x", BUTT)
    low, high = panel.span(2)
    middle = y[0] + share(y[1] - y[0], 2, project.step)[0]
    outer = panel.low[0] if left else panel.high[0]
    edge = share(high - low, 12, project.step)[0]
    half = share(high - low, 2, project.step)[0]
    upper = to_step(high - low - edge, project.step, "down")
    places = [(outer, middle, z) for z in (low + edge, low + half, low + upper)]
    screw_through(panel, cleat, "x", places, project.style)
    gathered.hardware.append(end_screws("cleat screws", panel, cleat, group, len(places), project.style.unit))
    across = x[0] + share(wide, 2, 1)[0]
    count = cleat_screw_count(high - low, project.style.unit)
    part = share(high - low, 2 * count, project.step)[0]
    for number in range(count):
        place = (across, y[1], low + (2 * number + 1) * part)
        cleat.holes.append(Hole("screw", place, "y", clearance(project.style), y[1] - y[0], f"{group} front"))
    return cleat


def _pegs(
    panel: Blank, choice: PullOut, y_span: Span, left: bool, group: str, key: str, step: int, gathered: Gathered
) -> None:
    """Rows and columns of pegs with even spaces beside and between them: (size - n pegs) / (n + 1), in whole steps.

    `y_span` is the depth that is free for them. What will not divide into steps goes to the rear and the top.
    """
    if choice.peg_rows < 0 or choice.peg_columns < 0:
        raise ImpossibleProject(f"{key}.peg_rows", "a number of rows or columns is 0 or more")
    face = panel.high[0] if left else panel.low[0]
    radius = share(choice.peg_diameter, 2, 1)[0]
    wide = choice.peg_diameter
    across = share(y_span[1] - y_span[0] - choice.peg_columns * wide, choice.peg_columns + 1, step)[0]
    up = share(panel.high[2] - panel.low[2] - choice.peg_rows * wide, choice.peg_rows + 1, step)[0]
    if across <= 0 or up <= 0:
        raise ImpossibleProject(f"{key}.peg_rows", "the pegs would run into one another; take fewer")
    for row in range(1, choice.peg_rows + 1):
        for column in range(1, choice.peg_columns + 1):
            y = y_span[0] + column * across + (column - 1) * wide + radius
            z = panel.low[2] + row * up + (row - 1) * wide + radius
            panel.holes.append(Hole("peg", (face, y, z), "x", choice.peg_diameter, choice.peg_depth))
            out = (face, face + choice.peg_length) if left else (face - choice.peg_length, face)
            body = Box((out[0], y - radius, z - radius), (out[1], y + radius, z + radius))
            gathered.hardware.append(Hardware("peg", panel.name, group, body))
