"""to_measure.toml: the `[measured]` part of a project file, with the names of this project, to fill in."""

from collections.abc import Iterator

from shoplib.measure import Style, narrowest, to_step, write_brief, write_length
from shoplib.model.project import NOTHING_MEASURED, Measured, Opening
from shoplib.model.shell import shell_of
from shoplib.model.solved import Cabinet

TO_MEASURE = "to_measure.toml"
"""What the file is called, wherever it is written."""

_HEAD = """\
# To measure on the case as built, before the boards of stages 2 and 3 are cut.
#
# 1. Write what you read between the quotes, with its unit, such as {example}.
#    Behind each # stands what was planned: a reading far from it, read again.
# 2. Copy the lines, headings in [ ] included, to the end of your project file.
#    One that is still empty counts as not read yet. If the file has lines under
#    [measured ...] from before, these take their place.
# 3. Plan again, and see what changed.
#
# The cautions for cutting, standing and loading are at the end of cut_list.txt.
"""
_DEPTHS = "# Depth: from the front edge of the case to what stands behind the boxes."
_OPENINGS = """\
# Opening: the clear width between the two uprights, at the front edge and at
# the back, at the height of its slides or runners; where a drawer rides on a
# shelf, at half the height of its box; of a strip, at its own height."""
_AGAIN = """\
# The same openings read again, with the boxes in: fronts and strips follow
# these. What stands above stays as it is, for the boxes are cut to it; behind
# each # it stands once more."""


def to_measure_text(cabinet: Cabinet) -> str:
    """The text of to_measure.toml; empty where nothing is to be measured.

    What the project has under `measured` already stands filled in, so that the whole can take its place.
    """
    depths, openings = list(_depths(cabinet)), list(_openings(cabinet))
    if not depths and not openings:
        return ""
    example = "22 9/16 in" if cabinet.style.unit == "in" else "573.5 mm"
    lines = [_HEAD.format(example=example)]
    if depths:
        lines += [_DEPTHS, "[measured.depths]", *depths, ""]
    if openings:
        lines += [_OPENINGS, "[measured.openings]", *openings, ""]
    if again := list(_again(cabinet)):
        lines += [_AGAIN, "[measured.openings_again]", *again, ""]
    return "\n".join(lines + list(_parts(cabinet)))


def example_line(cabinet: Cabinet) -> str:
    """The first opening that is not measured yet as it could be filled in; empty where there is none."""
    style, have = cabinet.style, _measured(cabinet).openings
    for name, planned in planned_openings(cabinet).items():
        if name not in have:
            back = to_step(planned, style.step)
            front = write_length(back - style.step, style)
            return f'"{name}" = {{ front = "{front}", back = "{write_length(back, style)}" }}'
    return ""


def planned_openings(cabinet: Cabinet) -> dict[str, int]:
    """Each opening that is measured, and how wide it was planned, in ticks."""
    widths = dict(cabinet.sums[0].terms)
    parts = [board.part_of for board in cabinet.boards if board.part_of]
    return {part.opening: widths[part.bay_name] for part in parts if part.opening}


def planned_depths(cabinet: Cabinet) -> dict[str, int]:
    """Each bay whose depth is measured, and how deep it was planned, in ticks: to the back, or to a rail before it."""
    rails = [board.box.low[1] for board in cabinet.boards if board.role == "rail"]
    planned = narrowest([shell_of(cabinet.project).behind, *rails])
    return {cabinet.part_of(run.group).bay_name: planned for run in cabinet.travel}


def _openings(cabinet: Cabinet) -> Iterator[str]:
    have, style = _measured(cabinet).openings, cabinet.style
    for name, planned in planned_openings(cabinet).items():
        yield f"{_opening(name, have.get(name), style)} # planned {write_brief(planned, style)}"


def _again(cabinet: Cabinet) -> Iterator[str]:
    """The openings that fronts and strips wait for once more, and those that were read so."""
    measured, style = _measured(cabinet), cabinet.style
    asked = {one.of for one in cabinet.again} | set(measured.openings_again)
    for name in (name for name in planned_openings(cabinet) if name in asked):
        first = measured.openings.get(name)
        was = f" # {write_brief(first.front, style)}, {write_brief(first.back, style)}" if first else ""
        yield f"{_opening(name, measured.openings_again.get(name), style)}{was}"


def _opening(name: str, read: Opening | None, style: Style) -> str:
    front, back = (write_length(read.front, style), write_length(read.back, style)) if read else ("", "")
    return f'"{name}" = {{ front = "{front}", back = "{back}" }}'


def _depths(cabinet: Cabinet) -> Iterator[str]:
    have, style = _measured(cabinet).depths, cabinet.style
    for bay, planned in planned_depths(cabinet).items():
        read = write_length(have[bay], style) if bay in have else ""
        yield f'"{bay}" = "{read}" # planned {write_brief(planned, style)}'


def _parts(cabinet: Cabinet) -> Iterator[str]:
    """Finished parts that were measured: nothing asks for them, but they must not get lost."""
    for name, part in _measured(cabinet).parts.items():
        yield f'[measured.parts."{name}"]'
        for side in ("length", "width"):
            if (size := getattr(part, side)) is not None:
                yield f'{side} = "{write_length(size, cabinet.style)}"'
        yield ""


def _measured(cabinet: Cabinet) -> Measured:
    return cabinet.project.measured if cabinet.project else NOTHING_MEASURED
