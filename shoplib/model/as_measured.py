"""What was measured replaces what was planned.

In the model the uprights stay where the plan has them: they are cut and glued. What goes between them
is placed between their faces as measured, and the dry-fit holds it against those.
"""

from collections.abc import Sequence
from dataclasses import dataclass

from shoplib.measure import INCH, narrowest, share, thickest, write_brief
from shoplib.model.board import BOXES, FRONTS
from shoplib.model.carcass import Opening
from shoplib.model.drawer_fit import mend, taper
from shoplib.model.gathered import Gathered
from shoplib.model.project import Opening as Reading
from shoplib.model.project import Project
from shoplib.model.rows import Span
from shoplib.model.solved import Awaited, Finding
from shoplib.tables.slides import Slide

LARGE = INCH // 8
"""A reading that is off the plan by more than this is more likely a slip: common practice, no source."""

STRANGE = INCH // 2
"""Off by more than this, nothing is cut before it was read again: common practice, no source."""

MOST_BEHIND = 3 * INCH
"""What may stand in a bay behind its boxes unplanned, such as a pipe or a bracket: common practice, no source."""


@dataclass(frozen=True, slots=True)
class Built:
    """An opening as built, as far as it was measured.

    `at_slides` is what a box or strip goes into, by the smaller reading; `at_front` is what a front covers or
    stands in, by the reading at the front. Both are as it was read last. A box is cut `for_box`, to the first reading:
    by the second one it is cut already.
    """

    at_slides: Opening
    at_front: Opening
    for_box: Opening
    measured: bool = False
    again: bool = False


def grown(span: Span, by: int, sides: tuple[bool, bool] = (False, False)) -> Span:
    """An opening between two uprights that is `by` ticks wider than planned; less than nothing where narrower.

    `sides` tells which of the two is a side of the case: top and bottom hold it in its place, so that it is the
    divider that stands elsewhere. Between two of a kind the change is shared.

    >>> grown((10, 20), 4), grown((10, 20), -3)
    ((8, 22), (12, 19))
    >>> grown((10, 20), 4, (True, False)), grown((10, 20), 4, (False, True))
    ((10, 24), (6, 20))
    """
    if sides == (True, False):
        return (span[0], span[1] + by)
    if sides == (False, True):
        return (span[0] - by, span[1])
    half = share(by, 2, 1)[0]
    return (span[0] - half, span[1] + by - half)


def far_off(readings: list[int], planned: int) -> int:
    """By how much the reading farthest from the plan is off it."""
    return thickest([abs(reading - planned) for reading in readings])


def spans_as_built(read: Reading, planned: Span, sides: tuple[bool, bool]) -> tuple[Span, Span]:
    """Where the faces of a measured opening are at its slides, where the smaller reading governs, and at its front."""
    width = planned[1] - planned[0]
    return (
        grown(planned, narrowest([read.front, read.back]) - width, sides),
        grown(planned, read.front - width, sides),
    )


def opening_as_built(project: Project, bay: Opening, name: str, gathered: Gathered) -> Built:
    """The opening that `name` goes into: as measured, or as planned until it is.

    A reading far off the plan gets a finding: it is a slip, or the plan is no longer the case as built.
    """
    gathered.openings.append(name)
    read, first = project.measured.latest.get(name), project.measured.openings.get(name)
    if read is None:
        return Built(bay, bay, bay)
    _judge_opening(project, bay, name, read, gathered)
    at_slides, at_front = _as_read(bay, read)
    for_box = bay if first is None else _as_read(bay, first)[0]
    return Built(at_slides, at_front, for_box, True, name in project.measured.openings_again)


def _as_read(bay: Opening, read: Reading) -> tuple[Opening, Opening]:
    """The opening between its uprights as measured: at its slides, and at its front."""
    sides = (bay.left_upright.role == "side", bay.right_upright.role == "side")
    at_slides, at_front = (
        Opening(bay.number, *span, bay.left_upright, bay.right_upright)
        for span in spans_as_built(read, (bay.left, bay.right), sides)
    )
    return at_slides, at_front


def before_the_edges(project: Project, bay: Opening, names: Sequence[str]) -> Opening | None:
    """The one opening that all overlay fronts of a bay are cut by, those of the drawers `names` from the bottom up.

    They lie before the edges of the uprights, one above another, so they get one width: by the narrowest opening that
    was read, as nothing may rub (common practice, no source). None where fronts are inset, each in its own opening,
    and where fewer than two openings were read.
    """
    reads = [project.measured.latest[name].front for name in names if name in project.measured.latest]
    if project.fronts.kind != "overlay" or len(reads) < 2:
        return None
    sides = (bay.left_upright.role == "side", bay.right_upright.role == "side")
    span = grown((bay.left, bay.right), narrowest(reads) - (bay.right - bay.left), sides)
    return Opening(bay.number, *span, bay.left_upright, bay.right_upright)


def judge_column(project: Project, bay: Opening, names: Sequence[str], gathered: Gathered) -> None:
    """Say where the openings behind a column of overlay fronts differ by more than a step: its uprights are crooked."""
    one, style = before_the_edges(project, bay, names), project.style
    if one is None:
        return
    read = {name: project.measured.latest[name].front for name in names if name in project.measured.latest}
    spread = thickest([*read.values()]) - narrowest([*read.values()])
    if spread <= project.step:
        return
    in_bay = len(bay.name) + 1
    told = ", ".join(f"{write_brief(wide, style)} at {name[in_bay:]}" for name, wide in read.items())
    text = (
        f"{bay.name}: its opening is not equally wide at the front: {told}. Its uprights lean or bow. The fronts lie "
        f"before their edges, so all get one width, by the narrowest, {write_brief(one.right - one.left, style)}: set "
        "them in one line, one above another, not each by its own opening."
    )
    fronts = tuple(front.name for of, front in gathered.fronts if of.number == bay.number)
    gathered.findings.append(Finding("as measured", "warn", fronts, text, spread))


def _judge_opening(project: Project, bay: Opening, name: str, read: Reading, gathered: Gathered) -> None:
    planned, style = bay.right - bay.left, project.style
    off = far_off([read.front, read.back], planned)
    if off > LARGE:
        text = (
            f"{name}: the opening measures {write_brief(read.front, style)} at the front and "
            f"{write_brief(read.back, style)} at the back, {write_brief(off, style)} off the "
            f"planned {write_brief(planned, style)}. {_again(off > STRANGE)} {_go_on(bay, off > STRANGE)}."
        )
        uprights = (bay.left_upright.name, bay.right_upright.name)
        gathered.findings.append(Finding("as measured", _level(off > STRANGE), uprights, text, off))


def _go_on(bay: Opening, strange: bool) -> str:
    """Never to plan the case again: its boards are cut."""
    if strange:
        return f"bring {_movable(bay)} to where the plan has it, and leave the plan of the case as it is"
    return "go on: what is not cut yet follows the reading, and no board of the case changes"


def _level(strange: bool) -> str:
    return "stop" if strange else "warn"


def _again(strange: bool) -> str:
    if not strange:
        return "Measure it again; if it is so,"
    return "Measure it again; what would clash because of it is not told until then. If it is so,"


_AT = {
    "hardware": "at the height of its slides", "side strip": "at the height of its runners",
    "strip below": "at half the height of its box", "shelf": "at half the height of its box",
}
"""Where an opening is read, by what carries the drawer; on a shelf nothing guides it but its own sides."""


def wait_for(built: Built, name: str, slide: Slide, fronts: bool, gathered: Gathered) -> None:
    """Say what must be measured before the box, and before the front, is cut.

    The first reading of an opening, for the box, does not free the front: slides draw an upright in, so that the
    opening is read again with its box hung (common practice, no source).
    """
    if not built.measured:
        gathered.waiting.append(Awaited(BOXES, "opening", name, f"front and back {_AT[slide.carries]}"))
    if fronts:
        before_fronts(built, name, "front and back, and hanging its box", gathered)


def before_fronts(built: Built, name: str, how: str, gathered: Gathered) -> None:
    """What a front or a strip waits for: a first reading of the opening it stands in, or the second one."""
    if not built.again:
        found = gathered.again if built.measured else gathered.waiting
        found.append(Awaited(FRONTS, "opening", name, how))


def depth_as_built(project: Project, bay: Opening, planned: int, gathered: Gathered) -> int:
    """The clear depth of a bay from the front edge of the case: as measured, or as planned until it is."""
    depth = project.measured.depths.get(bay.name)
    off = 0 if depth is None else abs(depth - planned)
    strange = depth is not None and not believable_depth(depth, planned)
    if off > LARGE:
        style = project.style
        text = (
            f"{bay.name}: the depth measures {write_brief(depth, style)}, {write_brief(off, style)} off the planned "
            f"{write_brief(planned, style)} from the front edge of the case to what stands behind the boxes. "
            f"{_again(strange)} {_why_depth(depth < planned, strange)}."
        )
        uprights = (bay.left_upright.name, bay.right_upright.name)
        gathered.findings.append(Finding("as measured", _level(strange), uprights, text, off))
    if depth is None:
        gathered.waiting.append(
            Awaited(BOXES, "depth", bay.name, "from its front edge to what stands behind the boxes")
        )
        return planned
    return depth


def believable_depth(depth: int, planned: int) -> bool:
    """Whether a measured depth is no slip: hardly deeper than planned, and not much shallower.

    >>> believable_depth(22 * INCH, 21 * INCH), believable_depth(19 * INCH, 21 * INCH)
    (False, True)
    """
    return planned - MOST_BEHIND <= depth <= planned + STRANGE


def _why_depth(shallower: bool, strange: bool) -> str:
    """Never to plan the case again: its boards are cut."""
    if not strange:
        go_on = "go on: the boxes follow the reading, and no board of the case changes"
        return f"clear what stands there, or {go_on}" if shallower else go_on
    return "clear what stands there" if shallower else "bring what should stand behind the boxes to its place"


def judge_taper(project: Project, bay: Opening, name: str, slide: Slide, gathered: Gathered) -> None:
    """Shim where the opening is wider at one end than the slide forgives; straighten where a shim will not do."""
    read = project.measured.latest.get(name)
    if read is None or far_off([read.front, read.back], bay.right - bay.left) > STRANGE:
        return
    (spread, wide), style = taper(read), project.style
    what = mend(spread, slide)
    if what == "nothing":
        return
    runs = "slide" if slide.carries == "hardware" else "runner"
    advice = f"shim the {runs}s at the {wide}"
    if what == "guide":
        advice = f"glue guide strips to the sides at the {wide}, since the runners lie under the box"
    elif what == "straighten":
        advice = f"straighten {_movable(bay)} before the {runs}s go in"
    text = (
        f"{name}: the opening is {write_brief(spread, style)} wider at the {wide} than at the other end, "
        f"and the {runs} allows {write_brief(slide.narrow, style)}; {advice}."
    )
    # A shim changes no board, so that none is to be looked at before it is cut.
    uprights = (bay.left_upright.name, bay.right_upright.name) if what == "straighten" else ()
    gathered.findings.append(Finding("as measured", "warn", uprights, text, spread))


def _movable(bay: Opening) -> str:
    """A divider can be brought over; a side can only be pulled in by the back."""
    dividers = [upright.name for upright in (bay.left_upright, bay.right_upright) if upright.role == "divider"]
    return dividers[0] if dividers else "the sides, and squeeze the case square,"
