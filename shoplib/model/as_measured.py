"""What was measured replaces what was planned; and the plan says what changed because of it.

In the model the uprights stay where the plan has them: they are cut and glued. What goes between them
follows the readings.
"""

from dataclasses import dataclass

from shoplib.measure import INCH, narrowest, share, thickest, write_brief
from shoplib.model.board import BOXES, FRONTS, Board
from shoplib.model.carcass import Opening
from shoplib.model.gathered import Gathered
from shoplib.model.project import Project
from shoplib.model.rows import Span
from shoplib.model.solved import Cabinet, Finding
from shoplib.tables.slides import Slide

LARGE = INCH // 8
"""A reading that is off the plan by more than this is more likely a slip: common practice, no source."""

STRANGE = INCH // 2
"""Off by more than this, nothing is cut before it was read again: common practice, no source."""


@dataclass(frozen=True, slots=True)
class Built:
    """An opening as built, as far as it was measured: `width` is the one that governs.

    `gain` and `front_gain` are by how much the two are wider than planned, less than nothing where
    narrower. All are ticks.
    """

    width: int
    gain: int = 0
    front_gain: int = 0
    measured: bool = False


def grown(span: Span, by: int) -> Span:
    """A span grown alike at both ends, `by` ticks in all.

    >>> grown((10, 20), 4), grown((10, 20), -3)
    ((8, 22), (12, 19))
    """
    half = share(by, 2, 1)[0]
    return (span[0] - half, span[1] + by - half)


def opening_as_built(project: Project, bay: Opening, name: str, gathered: Gathered) -> Built:
    """The opening that `name` goes into: the smaller of its readings, or the plan until it is measured.

    A reading far off the plan gets a finding: it is a slip, or the plan is no longer the case as built.
    """
    gathered.openings.append(name)
    planned = bay.right - bay.left
    read = project.measured.openings.get(name)
    if read is None:
        return Built(planned)
    width = narrowest([read.front, read.back])
    off = thickest([abs(read.front - planned), abs(read.back - planned)])
    if off > LARGE:
        level = "stop" if off > STRANGE else "warn"
        text = (
            f"{name}: the opening measures {write_brief(read.front, project.style)} at the front and "
            f"{write_brief(read.back, project.style)} at the back, {write_brief(off, project.style)} off the "
            f"planned {write_brief(planned, project.style)}. Measure it again; if it is so, "
            f"write the width of the bay as built under bays[{bay.number}].width, and plan again."
        )
        uprights = (bay.left_upright.name, bay.right_upright.name)
        gathered.findings.append(Finding("as measured", level, uprights, text, off))
    return Built(width, width - planned, read.front - planned, True)


def wait_for(built: Built, name: str, fronts: bool, gathered: Gathered) -> None:
    """Say what must be measured before the box, and before the front, is cut."""
    if not built.measured:
        gathered.waiting.append((BOXES, f"the opening of {name}, front and back at the height of its slides"))
        if fronts:
            gathered.waiting.append((FRONTS, f"the opening of {name}, front and back, and hanging its box"))


def depth_as_built(project: Project, bay: Opening, planned: int, gathered: Gathered) -> int:
    """The clear depth of a bay from the front edge of the case: as measured, or as planned until it is."""
    depth = project.measured.depths.get(bay.name)
    if depth is None:
        gathered.waiting.append(
            (BOXES, f"the depth of {bay.name}, from its front edge to what stands behind the boxes")
        )
        return planned
    return depth


def judge_taper(project: Project, bay: Opening, name: str, slide: Slide, gathered: Gathered) -> None:
    """Shim where the opening is wider at one end than the slide forgives; straighten where a shim will not do."""
    read = project.measured.openings.get(name)
    spread = abs(read.front - read.back) if read else 0
    if spread <= slide.narrow:
        return
    wide, style = ("back" if read.back > read.front else "front"), project.style
    mend = (
        f"shim the slides at the {wide}"
        if spread <= 2 * slide.narrow
        else f"straighten the {_movable(bay)} before the slides go in"
    )
    text = (
        f"{name}: the opening is {write_brief(spread, style)} wider at the {wide} than at the other end, "
        f"and the slide allows {write_brief(slide.narrow, style)}; {mend}."
    )
    uprights = (bay.left_upright.name, bay.right_upright.name)
    gathered.findings.append(Finding("as measured", "warn", uprights, text, spread))


def _movable(bay: Opening) -> str:
    """A divider can be brought over; a side can only be pulled in by the back."""
    dividers = [upright.name for upright in (bay.left_upright, bay.right_upright) if upright.role == "divider"]
    return dividers[0] if dividers else "sides, and squeeze the case square,"


def what_changed(project: Project, planned: Cabinet, built: Cabinet) -> tuple[Finding, ...]:
    """One note for each board whose size follows from a measurement: before, after, and because of what."""
    found, style = [], project.style
    for board in built.boards:
        before = planned.by_name[board.name]
        if before.size == board.size:
            continue
        parts = [
            f"{name} {write_brief(new, style)}, planned {write_brief(old, style)}"
            for name, old, new in zip(("length", "width"), before.size, board.size, strict=False)
            if old != new
        ]
        text = f"{board.name}: {' and '.join(parts)}, {_because(project, before, board)}."
        found.append(Finding("as measured", "note", (board.name,), text))
    return tuple(found)


def _because(project: Project, before: Board, after: Board) -> str:
    """Across, the opening decides; in depth, the depth of the bay; where they are not measured, finished parts."""
    measured, style = project.measured, project.style
    if after.name in measured.parts:
        return "because it was measured so"
    changed = [old != new for old, new in zip(before.box.size, after.box.size, strict=True)]
    row = after.group if after.group in measured.openings else after.group.rpartition(".")[0]
    opening = next((name for name in (row, after.name) if name in measured.openings), None)
    bay = " ".join(after.group.split()[:2])
    causes = []
    if changed[0] and opening:
        read = measured.openings[opening]
        width = write_brief(narrowest([read.front, read.back]), style)
        causes.append(f"the opening of {opening} measures {width}")
    if changed[1] and bay in measured.depths:
        causes.append(f"the depth of {bay} measures {write_brief(measured.depths[bay], style)}")
    if sum(changed) > len(causes) and measured.parts:
        own = [name for name in measured.parts if name.startswith(f"{after.group} ")]
        causes.append(f"of the measured size of {', '.join(own or measured.parts)}")
    return f"because {' and because '.join(causes)}"
