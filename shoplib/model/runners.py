"""What a drawer runs on: bought slides as hardware, wood runners and kickers as boards, and their screws."""

from shoplib.measure import largest_fitting, share
from shoplib.measure.traced import leaf_beside, named
from shoplib.model.assembly import Assembly
from shoplib.model.blank import BOX_SIDE, FLAT_STRIP, Blank
from shoplib.model.board import BOXES
from shoplib.model.box import Box
from shoplib.model.carcass import BUTT, Opening
from shoplib.model.drawer_box import BoxPlace
from shoplib.model.part_of import PartOf
from shoplib.model.project import ImpossibleProject
from shoplib.model.screw_room import room_for_screw
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Hardware, Screw
from shoplib.tables.screws import screws
from shoplib.tables.slides import Slide


def screw_into(board: Blank, use: str, count: int, unit: str, before: int = 0) -> Screw | None:
    """The longest screw that keeps its row's spare wood before the point, or None where none does.

    `before` is what the screw passes through first: the longest is before + thickness - spare, both at their
    thinnest readings, for there the point comes through first. `unit` is that of the project.
    """
    row, into = screws(unit)[use], board.sheet.thinnest
    spare = leaf_beside(row.spare, "wood kept before the point", "table", into)
    length = largest_fitting(row.lengths, room_for_screw(before, into, spare))
    return None if length is None else Screw(row.gauge, length, board.name, count)


def slide_pair(
    bay: Opening, box: dict[str, Blank], place: BoxPlace, slide: Slide, group: str, step: int, unit: str
) -> list[Hardware]:
    """Two bought slides beside the box, each screwed to its upright and its box side, or under it.

    Beside it they lie in the middle of its height, down to whole steps above its lower edge. Under it no screw
    goes into a box side: the box lies on them, and their sheet says how it is held.
    """
    beneath = share(place.high - slide.height, 2, step)[0]
    middle = place.z[0] + named(beneath, f"lower edge of the slide of {group} above that of its box")
    low = middle if slide.holds == "outside" else place.z[0] - slide.height
    high = low + slide.height
    length = place.y[1] - place.y[0]
    start = place.y[0] + slide.setback
    found = []
    for upright, side, x in (
        (bay.left_upright, box["left"], (bay.left, place.x[0])),
        (bay.right_upright, box["right"], (place.x[1], bay.right)),
    ):
        body = Box((x[0], start, low), (x[1], start + length, high))
        holders = (upright, side) if slide.holds == "outside" else (upright,)
        fixed = [screw_into(board, "slide", 3, unit) for board in holders]
        found.append(Hardware("slide", upright.name, group, body, slide.name, tuple(screw for screw in fixed if screw)))
    return found


def side_runners(
    assembly: Assembly,
    bay: Opening,
    box: dict[str, Blank],
    place: BoxPlace,
    slide: Slide,
    drawer: PartOf,
    key: str,
    step: int,
) -> None:
    """A runner on each upright, in a groove along the outside of each box side; the groove rides on it.

    The groove lies in the middle of the side's height, down to whole steps above its lower edge: a fence is set to it.
    """
    thick = slide.side + slide.groove_depth - slide.play
    stock = runner_stock(slide, thick)
    tall = slide.height + slide.play
    low = place.z[0] + share(place.high - tall, 2, step)[0]
    if low <= place.z[0] or low + tall >= place.z[1] or slide.groove_depth >= box["left"].sheet.thickness:
        raise ImpossibleProject(f"{key}.slide", f'the box sides are too small for the groove of a "{slide.name}"')
    z = (low + slide.play, low + tall)
    y = (place.y[0] + slide.setback, place.y[1])
    for name, side, upright, axis, x, groove in (
        (
            "left runner",
            box["left"],
            bay.left_upright,
            "-x",
            (bay.left, bay.left + thick),
            (place.x[0], place.x[0] + slide.groove_depth),
        ),
        (
            "right runner",
            box["right"],
            bay.right_upright,
            "+x",
            (bay.right - thick, bay.right),
            (place.x[1] - slide.groove_depth, place.x[1]),
        ),
    ):
        runner = assembly.add(f"{drawer.name} {name}", "runner", stock, BOX_SIDE, (x, y, z), stage=BOXES,
                              part_of=drawer, key=key)
        assembly.join(runner, upright, axis, BUTT)
        cut = Box((groove[0], place.y[0], low), (groove[1], place.y[1], low + tall))
        side.cuts.append(("groove", cut, runner.name))


def runners_below(
    assembly: Assembly, bay: Opening, place: BoxPlace, slide: Slide, rear: int, drawer: PartOf, key: str
) -> None:
    """A runner under each side of the box and a kicker above it, which keeps it from tipping when out."""
    stock = runner_stock(slide, slide.height)
    y = (place.y[0] + slide.setback, rear)
    below = (place.z[0] - slide.height, place.z[0])
    over = place.z[0] + place.high + slide.play
    above = (over, over + slide.height)
    for name, upright, axis, x in (
        ("left", bay.left_upright, "-x", (bay.left, bay.left + slide.strip_width)),
        ("right", bay.right_upright, "+x", (bay.right - slide.strip_width, bay.right)),
    ):
        for role, z in (("runner", below), ("kicker", above)):
            strip = assembly.add(f"{drawer.name} {name} {role}", role, stock, FLAT_STRIP, (x, y, z), stage=BOXES,
                                 part_of=drawer, key=key)
            assembly.join(strip, upright, axis, BUTT)


def runner_stock(slide: Slide, thickness: int) -> Sheet:
    """Strip planed to the thickness that the runner's row asks for; no sheet is bought for it."""
    return Sheet(f"strip for {slide.name}", "solid", thickness)
