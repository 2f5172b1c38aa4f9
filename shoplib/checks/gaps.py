"""Fronts need their gaps: one that is nearly closed rubs, and sticks in a damp summer."""

from shoplib.checks.as_built import AsBuilt, opening_of
from shoplib.measure import INCH, write_brief
from shoplib.measure.traced import limit
from shoplib.model.solved import Cabinet, Finding, Gap
from shoplib.words.naming import and_list

LEAST = limit(INCH // 32, "the least gap that hand work keeps")
"""A gap under 1/32 in, 0.8 mm, is not kept by hand work: common practice, no source."""


def find_tight_gaps(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "warn" for the gaps beside fronts that are all but closed, one for each size.

    Fronts that share wood are for the overlap check. A front that waits for its opening to be measured will
    still follow the one beside it that was.
    """
    tight: dict[int, list[Gap]] = {}
    built = AsBuilt(cabinet)
    for gap in cabinet.gaps:
        one, other = (cabinet.by_name[name] for name in gap.between)
        waits = opening_of(one) and opening_of(other) and (built.waits(one, other) or built.waits(other, one))
        if 0 <= gap.size < LEAST and not (gap.along == "x" and waits):
            tight.setdefault(gap.size, []).append(gap)
    return tuple(_finding(cabinet, size, gaps) for size, gaps in tight.items())


def _finding(cabinet: Cabinet, size: int, gaps: list[Gap]) -> Finding:
    fronts = cabinet.project.fronts if cabinet.project else None
    left = write_brief(size, cabinet.style, decimal=True) if size else "no gap"
    least = write_brief(LEAST, cabinet.style, decimal=True)
    names = dict.fromkeys(name for gap in gaps for name in gap.between)
    pairs = and_list([f"between {' and '.join(gap.between)}" for gap in gaps[:2]])
    others = f", and in {len(gaps) - 2} more places" if len(gaps) > 2 else ""
    mend = (
        f"Plan fronts.gap and fronts.around of {least} or more."
        if fronts and size in (fronts.gap, fronts.around)
        else f"Plane the fronts until {least} or more is open."
    )
    text = f"{left[0].upper() + left[1:]} is left {pairs}{others}: they will rub. {mend}"
    return Finding("gaps", "warn", tuple(names), text, size)
