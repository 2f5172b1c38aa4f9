"""The drawers of one bay: rows, boxes, slides and fronts put together."""

from dataclasses import replace

from shoplib.measure import narrowest, share, thickest, to_step, write_brief
from shoplib.measure.traced import named
from shoplib.model.as_measured import (
    before_fronts,
    before_the_edges,
    depth_as_built,
    judge_column,
    judge_taper,
    opening_as_built,
    wait_for,
)
from shoplib.model.assembly import Assembly
from shoplib.model.blank import LEVEL, Blank
from shoplib.model.board import FRONTS
from shoplib.model.carcass import BUTT, Opening
from shoplib.model.drawer_box import BoxPlace, add_box, into_grooves, place_box, slide_row
from shoplib.model.front_screws import front_screw_count
from shoplib.model.fronts import add_front, front_depth, front_width
from shoplib.model.gathered import Gathered
from shoplib.model.locked import settled
from shoplib.model.part_of import PartOf
from shoplib.model.project import Drawers, ImpossibleProject, JointChoice, Project
from shoplib.model.rear import Rear
from shoplib.model.rows import Row, Span, column
from shoplib.model.runners import runners_below, screw_into, side_runners, slide_pair
from shoplib.model.screwed import screw_up
from shoplib.model.sheet import Sheet
from shoplib.model.shell import Shell, sheet_of
from shoplib.model.shelves import fixed_shelf
from shoplib.model.solved import Finding, Hardware, SlideHeight, Travel
from shoplib.tables.slides import Slide

_USUAL = Drawers()
_ROWS = ("count", "heights", "difference", "ratio", "given", "between")
"""What a bay takes over from the one that it is kept in line with."""


def rule_of(project: Project, number: int) -> Drawers:
    """The drawer rule of a bay, its heights taken from the bay it is kept in line with.

    Raises ImpossibleProject where that bay has no drawers of its own.
    """
    bay = project.bays[number - 1]
    rule, key = bay.drawers, f"bays[{number}].drawers"
    if rule is None:
        raise ImpossibleProject(key, 'a bay of kind "drawers" needs a table that says how many')
    if rule.like_bay is None:
        return rule
    other = project.bays[rule.like_bay - 1].drawers if 1 <= rule.like_bay <= len(project.bays) else None
    if other is None or other.like_bay is not None:
        raise ImpossibleProject(
            f"{key}.like_bay", "name a drawer bay that has heights of its own, counted from the left"
        )
    for name in _ROWS:
        if getattr(rule, name) not in (getattr(_USUAL, name), getattr(other, name)):
            raise ImpossibleProject(
                f"{key}.{name}", f"bay {rule.like_bay} decides it, which like_bay names; take one of the two out"
            )
    return replace(rule, **{name: getattr(other, name) for name in _ROWS})


def add_drawers(
    assembly: Assembly, project: Project, shell: Shell, bay: Opening, rear: Rear, gathered: Gathered
) -> None:
    """Every drawer of the bay; its boxes are of one depth, so the nearest rail decides it."""
    key = f"bays[{bay.number}].drawers"
    rule = rule_of(project, bay.number)
    slide = slide_row(project, rule.slide, f"{key}.slide")
    _check_rule(rule, slide, key)
    stock = sheet_of(project, rule.box_sheet, f"{key}.box_sheet")
    fronts = sheet_of(project, rule.front_sheet or rule.box_sheet, f"{key}.front_sheet")
    rule = _settled(rule, slide, stock, fronts, project.step, key)
    rows = column(rule, project, shell, bay.name, key)
    for index, low in enumerate(rows.between, 1):
        _add_between(assembly, project, bay, rule, index, low, rear, key, gathered)
    front_y = front_depth(project)[1] if project.fronts.kind == "inset" else 0
    depth = depth_as_built(project, bay, rear.nearest, gathered)
    names = [PartOf(bay.number, "drawer", number).opening for number in range(1, len(rows.rows) + 1)]
    one_width = before_the_edges(project, bay, names)
    for number, (name, row) in enumerate(zip(names, rows.rows, strict=True), 1):
        built = opening_as_built(project, bay, name, gathered)
        wait_for(built, name, slide, row.front is not None, gathered)
        judge_taper(project, bay, name, slide, gathered)
        for place in range(1, rule.across + 1):
            drawer = PartOf(bay.number, "drawer", number, place if rule.across > 1 else 0)
            part = _share_of_opening(built.at_slides, place, rule.across)
            cut_to = _share_of_opening(built.for_box, place, rule.across)
            room = (cut_to.right - cut_to.left, (front_y, depth))
            box = _add_drawer(assembly, project, shell, part, room, row, rule, slide, drawer, key, gathered)
            if row.front is not None:
                before = one_width if one_width is not None and built.measured else built.at_front
                part = _share_of_opening(before, place, rule.across)
                x = front_width(project, part, place == 1, place == rule.across)
                _add_front(assembly, project, part, drawer, (x, row.front), box["front"], key, gathered)
    judge_column(project, bay, names, gathered)


def _settled(rule: Drawers, slide: Slide, stock: Sheet, fronts: Sheet, step: int, key: str) -> Drawers:
    """The rule with the lengths of its corners that were left out.

    Raises ImpossibleProject for a corner that closes the ends of a groove which a runner must pass.
    """
    found, back = {}, rule.back_corner
    if back is None and rule.corner.kind == "drawer lock" and fronts is not stock:
        back = rule.corner  # whose lengths follow from another thickness
    for name, end, choice in (("corner", fronts, rule.corner), ("back_corner", stock, back)):
        if choice is None:
            continue
        if choice.kind in ("finger", "drawer lock") and slide.carries == "side strip":
            raise ImpossibleProject(
                f"{key}.{name}.kind",
                f'a "{slide.name}" runs in a groove along the box side, which "{choice.kind}" closes at its end; '
                "choose another joint or another slide",
            )
        choice = corner_beside(slide, choice, stock, step)
        found[name] = settled(choice, end, stock, step) if choice.kind == "drawer lock" else choice
    return replace(rule, **found)


def corner_beside(slide: Slide, corner: JointChoice, stock: Sheet, step: int) -> JointChoice:
    """The corner of a box with its depth, where none was given and a runner's groove lies behind the cut.

    Half of what the groove leaves then, down to a whole step, not half of the side: as much sound wood or more is
    left where the two cross.

    >>> from shoplib.measure import MM
    >>> from shoplib.tables.slides import slide
    >>> row, stock = slide("side-hung wood runner", "mm"), Sheet("box sheet", "plywood", 12 * MM)
    >>> corner_beside(row, JointChoice("rabbet"), stock, MM // 2).depth / MM  # (12 - 5) / 2
    3.5
    """
    if corner.kind in ("butt", "pocket screws") or corner.depth is not None or slide.carries != "side strip":
        return corner
    depth = share(stock.thickness - slide.groove_depth, 2, step)[0]
    return replace(corner, depth=depth) if depth > 0 else corner  # where nothing is left, the groove is refused


def _share_of_opening(bay: Opening, place: int, across: int) -> Opening:
    """The part of an opening that one of several boxes side by side has to itself.

    Parts are laid out from both ends; the odd ticks stay in the middle.
    """
    if across == 1:
        return bay
    part, _ = share(bay.right - bay.left, across, 2)  # an even number, so that the play beside a box can be halved
    left, right = bay.left + (place - 1) * part, bay.right - (across - place) * part
    if 2 * place < across + 1:
        right = left + part
    elif 2 * place > across + 1:
        left = right - part
    return Opening(bay.number, left, right, bay.left_upright, bay.right_upright)


def _check_rule(rule: Drawers, slide: Slide, key: str) -> None:
    if rule.across < 1:
        raise ImpossibleProject(f"{key}.across", "at least 1 box stands in an opening")
    if rule.across > 1 and slide.carries != "shelf":
        raise ImpossibleProject(f"{key}.across", 'boxes side by side need slide = "box rides on the shelf"')
    if slide.carries == "shelf" and rule.count > 1 and rule.between != "shelf":
        raise ImpossibleProject(f"{key}.between", 'a box that rides on the shelf needs between = "shelf"')


def _add_between(
    assembly: Assembly,
    project: Project,
    bay: Opening,
    rule: Drawers,
    index: int,
    low: int,
    rear: Rear,
    key: str,
    gathered: Gathered,
) -> None:
    if rule.between == "shelf":
        thick = sheet_of(project, "", "carcass.sheet").thickness
        shelf, span = PartOf(bay.number, "shelf", index), (0, rear.reach(low, low + thick))
        fixed_shelf(assembly, project, bay, shelf, low, span, project.carcass.shelf)
        return
    sheet = sheet_of(project, "", "carcass.sheet")
    of = PartOf(bay.number, "strip", index)
    built = opening_as_built(project, bay, of.name, gathered)
    before_fronts(built, of.name, "front and back at its own height", gathered)
    if rule.strip_width > rear.reach(low, low + sheet.thickness):
        raise ImpossibleProject(f"{key}.strip_width", "the strips would reach through the back; make them narrower")
    opening = built.at_slides
    spans = ((opening.left, opening.right), (0, rule.strip_width), (low, low + sheet.thickness))
    strip = assembly.add(of.name, "strip", sheet, LEVEL, spans, stage=FRONTS, part_of=of, key=key)
    how = project.carcass.shelf if project.carcass.shelf.kind == "pocket screws" else BUTT
    assembly.join(strip, bay.left_upright, "-x", how, key="carcass.shelf")
    assembly.join(strip, bay.right_upright, "+x", how, key="carcass.shelf")


def _add_drawer(
    assembly: Assembly,
    project: Project,
    shell: Shell,
    bay: Opening,
    room: tuple[int, Span],
    row: Row,
    rule: Drawers,
    slide: Slide,
    drawer: PartOf,
    key: str,
    gathered: Gathered,
) -> dict[str, Blank]:
    """The box of a drawer and what it runs on; `room` is how wide the opening is that it is cut to, and its y span."""
    (wide, y), group, x = room, drawer.name, (bay.left, bay.right)
    cell = _cell(row, slide, shell.floor, project.step, group)
    place = place_box(project, rule, slide, wide, (x, y, cell), group, key)
    box = add_box(assembly, project, rule, slide, place, drawer, key)
    if rule.bottom == "under back":
        screw_up(box["bottom"], box["back"], into_grooves(rule), project, gathered)
    if slide.carries == "hardware":
        pair = slide_pair(bay, box, place, slide, group, project.step, project.style.unit)
        _judge_slide_height(project, place, slide, group, gathered)
        gathered.hardware.extend(pair)
        spacer = pair[0].box.low[2] - shell.floor
        _check_spacer(project, spacer, group, key)
        gathered.spacers.append(SlideHeight(group, "slide", spacer))
    elif slide.carries == "side strip":
        side_runners(assembly, bay, box, place, slide, drawer, key, project.step)
    elif slide.carries == "strip below":
        runners_below(assembly, bay, place, slide, y[1], drawer, key)
    gathered.travel.append(Travel(group, (0, -(place.y[1] - place.y[0] - slide.travel_lost), 0)))
    return box


def _add_front(
    assembly: Assembly,
    project: Project,
    opening: Opening,
    drawer: PartOf,
    spans: tuple[Span, Span],
    box_front: Blank,
    key: str,
    gathered: Gathered,
) -> None:
    front, pulls = add_front(assembly, project, drawer, *spans, (box_front,), key)
    gathered.hardware.extend(pulls)
    gathered.hardware.append(_front_screws(front, box_front, drawer.name, project.style.unit))
    gathered.fronts.append((opening, front))


def _check_spacer(project: Project, spacer: int, group: str, key: str) -> None:
    """A slide that begins below the inside of the bottom stands in its wood, and nothing can be cut to set it by."""
    if spacer < 0:
        raise ImpossibleProject(
            f"{key}.count",
            f"the slides of {group} would begin {write_brief(-spacer, project.style)} below the inside of the bottom; "
            "take fewer drawers, a higher case, or a slide that is less high",
        )


def _judge_slide_height(project: Project, place: BoxPlace, slide: Slide, group: str, gathered: Gathered) -> None:
    """A slide on a box side that is lower than itself has nothing to be screwed to, and meets the next one."""
    over = slide.height - (place.z[1] - place.z[0])
    if slide.holds == "inside" or over <= 0:
        return
    text = (
        f"{group}: its slides are {write_brief(slide.height, project.style)} high and its box "
        f"{write_brief(over, project.style)} lower; take fewer drawers, or make this one higher."
    )
    sides = (f"{group} left box side", f"{group} right box side")
    gathered.findings.append(Finding("slide room", "stop", sides, text, over))


def _front_screws(front: Blank, box_front: Blank, group: str, unit: str) -> Hardware:
    """Screws from inside the box: at most s + f - 1/8 in (3 mm) long, so that they do not come through."""
    (left, right), (low, high) = front.span(0), front.span(2)
    count = front_screw_count(right - left, high - low, front.sheet.kind == "solid", unit)
    screw = screw_into(front, "front", count, unit, box_front.sheet.thinnest)
    return Hardware("front screws", box_front.name, group, box_front.box, "", (screw,) if screw else ())


def _cell(row: Row, slide: Slide, floor: int, step: int, group: str) -> Span:
    """The height that a box may use: hidden by its front, and inside its opening.

    A box on slides or runners begins whole steps above the bottom, which its spacer is cut to. Both heights are named
    as they are measured in the case, from the bottom up, so that a working can be followed with a rule in hand.
    """
    if slide.carries == "shelf":
        return row.opening
    front = row.front or row.opening
    low = thickest([front[0] - floor, row.opening[0] - floor])
    high = narrowest([front[1] - floor, row.opening[1] - floor])
    foot = named(to_step(low + slide.below, step, "up"), f"lower edge of the box of {group} above the bottom")
    return (floor + foot - slide.below, floor + named(high, f"height that the box of {group} must stay below"))
