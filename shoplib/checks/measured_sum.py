"""Openings as measured and the uprights between them must make the width of the case."""

from shoplib.measure import INCH, mean, write_brief
from shoplib.model.solved import Cabinet, Finding
from shoplib.words.amounts import how_much

MOST = INCH // 8
"""A sum of readings farther from the plan holds a slip, or the case has another width: common practice, no source."""


def find_openings_that_do_not_add_up(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "warn" where each bay was measured and the sum is off the planned width, at the front or at the back.

    Of a bay measured at several heights the mean counts. The amount is what is missing; less than nothing where
    it is too much.
    """
    project = cabinet.project
    if project is None or not project.measured.latest or not cabinet.sums:
        return ()
    across, bays = cabinet.sums[0], len(project.bays)
    of_bay = {board.part_of.opening: board.part_of.bay for board in cabinet.boards if board.part_of}
    found = []
    for end in ("front", "back"):
        readings: dict[int, list[int]] = {}
        for name, read in project.measured.latest.items():
            readings.setdefault(of_bay[name], []).append(getattr(read, end))
        if len(readings) < bays:
            return ()
        clear = {bay: mean(values) for bay, values in readings.items()}
        uprights = sum(ticks for name, ticks in across.terms if name in across.measured)
        missing = across.total[1] - uprights - sum(clear.values())
        if abs(missing) > MOST:
            found.append((abs(missing), missing, end, clear, uprights))
    if not found:
        return ()
    _, missing, end, clear, uprights = max(found, key=lambda each: each[0])
    style, whole = cabinet.style, across.total[1]
    told = " + ".join(write_brief(ticks, style) for _, ticks in sorted(clear.items()))
    text = (
        f"At the {end} the openings as measured, {told}, and uprights of {write_brief(uprights, style, decimal=True)} "
        f"in all come to {write_brief(whole - missing, style)}, {how_much(abs(missing), style)} "
        f"{'less' if missing > 0 else 'more'} than the planned {write_brief(whole, style)} over the sides. Measure the "
        f"openings again; or the case is {'narrower' if missing > 0 else 'wider'} than planned, so measure it too."
    )
    return (Finding("as measured", "warn", (), text, missing),)
