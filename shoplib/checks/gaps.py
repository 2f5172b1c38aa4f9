"""Fronts need their gaps: one that is nearly closed rubs, and sticks in a damp summer."""

from shoplib.measure import INCH, write_brief
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.naming import and_list

LEAST = INCH // 32
"""A gap under 1/32 in, 0.8 mm, is not kept by hand work: common practice, no source."""

_WHERE = {"x": "beside each other", "z": "one above the other"}


def find_tight_gaps(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "warn" for each gap beside a front that is all but closed. Fronts that share wood are for the overlap check."""
    found = []
    for gap in cabinet.gaps:
        if 0 <= gap.size < LEAST:
            left = write_brief(gap.size, cabinet.style, decimal=True) if gap.size else "no gap"
            front = gap.between[0] if gap.between[0].endswith("front") else gap.between[1]
            text = (
                f"{and_list(gap.between)}: {left} is left between them, {_WHERE[gap.along]}, and they will rub. "
                f"Plane the edge of {front} until {write_brief(LEAST, cabinet.style, decimal=True)} or more is open."
            )
            found.append(Finding("gaps", "warn", gap.between, text, gap.size))
    return tuple(found)
