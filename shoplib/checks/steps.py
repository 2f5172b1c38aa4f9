"""A stepped column whose steps will not divide: which step took what was left."""

from shoplib.measure import write_brief
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list, in_short

SEEN = 2
"""Where a step is off by less than this many hundredths of itself nobody sees it: common practice, no source."""


def tell_where_the_rest_went(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "note" for each stepped bay whose bottom front is higher than its step asks, and bays in line with it.

    The amount is by how much.
    """
    found = []
    bays = cabinet.project.bays if cabinet.project else ()
    for number, bay in enumerate(bays, 1):
        rule = bay.drawers
        if bay.kind != "drawers" or rule is None or rule.heights != "stepped" or rule.like_bay or rule.count < 2:
            continue
        names = tuple(f"bay {number} drawer {row} front" for row in (1, 2))
        if not all(name in cabinet.by_name for name in names):
            continue
        bottom, above = (cabinet.by_name[name].box.size[2] for name in names)
        rest = bottom - above - rule.difference
        if 100 * abs(rest) < SEEN * rule.difference:
            continue
        style = cabinet.style
        alike = [k for k, other in enumerate(bays, 1) if other.drawers and other.drawers.like_bay == number]
        text = (
            f"{and_list(in_short(f'bay {k}' for k in (number, *alike)))}: the bottom front is "
            f"{write_brief(bottom - above, style)} higher than the next, not {write_brief(rule.difference, style)} "
            f"like the other steps. The {rule.count} fronts are whole steps of the rule, and the "
            f"{write_brief(rest, style)} left over went to the bottom, where it shows least."
        )
        found.append(Finding("drawer heights", "note", names, text, rest))
    return tuple(found)
