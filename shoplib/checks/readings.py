"""A sheet's name is not its thickness: are there readings, enough of them, and does the name allow them?"""

from collections.abc import Iterable

from shoplib.measure import INCH, INCH_STYLE, Style, narrowest, thickest, write_length, write_measured
from shoplib.measure.traced import leaf
from shoplib.model.sheet import Sheet
from shoplib.model.solved import Cabinet, Finding
from shoplib.tables.plywood import PlywoodLimits, plywood_limits
from shoplib.words.naming import and_list


def find_doubtful_readings(cabinet: Cabinet) -> tuple[Finding, ...]:
    """What the readings of each sheet in use leave in doubt, one finding a sheet at most.

    "warn": no reading at all; or, of plywood named by a PS 1 thickness in inches, one outside the limits of
    the unsanded row (the wider ones), with the farthest amount outside. "note": one reading only, and
    another one where it is the very name of the sheet. Solid stock is planed to its thickness: no reading
    is asked for.
    """
    used = dict.fromkeys(board.sheet for board in cabinet.boards)
    found = []
    for name in used:
        sheet = cabinet.sheets[name]
        if sheet.readings or sheet.kind != "solid":
            found += doubts_about(sheet, cabinet.style)
    return tuple(found)


def doubts_about(sheet: Sheet, style: Style) -> tuple[Finding, ...]:
    """What the readings of one sheet leave in doubt, as `find_doubtful_readings` has it; at most one finding."""
    return tuple(_of_sheet(sheet, style, plywood_limits().get(sheet.nominal) if sheet.kind == "plywood" else None))


MOST_SPREAD = INCH // 16
"""Readings of one sheet that lie farther apart hold a slip: PS 1 allows twice 1/32 in from sheet to sheet."""


def find_unlike_readings(cabinet: Cabinet) -> tuple[Finding, ...]:
    """One stop for each sheet in use whose readings lie too far apart to be of one sheet."""
    used = dict.fromkeys(board.sheet for board in cabinet.boards)
    return tuple(finding for name in used for finding in unlike_in(cabinet.sheets[name], cabinet.style))


def unlike_in(sheet: Sheet, style: Style) -> tuple[Finding, ...]:
    """One stop where the readings of this sheet lie too far apart to be of one sheet, else nothing."""
    apart = thickest(sheet.readings) - narrowest(sheet.readings) if sheet.readings else 0
    if apart <= MOST_SPREAD:
        return ()
    told = and_list([write_measured(reading, style) for reading in sheet.readings])
    text = (
        f"{sheet.name}: its readings, {told}, lie {write_measured(apart, style)} apart, which one sheet "
        "does not. Read it again, and correct the one that is mistyped."
    )
    return (Finding("readings", "stop", (), text, apart),)


def _of_sheet(sheet: Sheet, style: Style, limits: PlywoodLimits | None) -> Iterable[Finding]:
    outside = [reading for reading in sheet.readings if limits and not limits.least <= reading <= limits.greatest]
    if outside:
        yield _outside(sheet, limits, outside)
    elif not sheet.readings:
        yield Finding(
            "readings",
            "warn",
            (),
            f"{sheet.name}: no thickness was measured, and the name of a sheet is not its thickness. "
            "Measure it in several places before cutting.",
        )
    elif sheet.readings == (sheet.nominal,):
        yield Finding(
            "readings",
            "note",
            (),
            f"{sheet.name}: its one reading, {write_measured(sheet.nominal, style)}, is the very thickness "
            "it is sold by, and the name of a sheet is not its thickness. Measure it with a caliper in several places.",
        )
    elif len(sheet.readings) == 1:
        yield Finding(
            "readings",
            "note",
            (),
            f"{sheet.name}: its thickness was read once, and it may be thicker elsewhere. "
            "Read it in several places; the cuts that receive it take the thickest.",
        )


def _outside(sheet: Sheet, limits: PlywoodLimits, outside: list[int]) -> Finding:
    told = [
        f"reading {number} is {_inches(reading)}"
        for number, reading in enumerate(sheet.readings, 1)
        if reading in outside
    ]
    least, greatest = (
        leaf(size, f"{what} thickness in PS 1", "table")
        for what, size in (("least", limits.least), ("greatest", limits.greatest))
    )
    text = (
        f"{sheet.name}: {and_list(told)}, and PS 1, the plywood standard, "
        f"lets plywood named {write_length(_named_by(limits), INCH_STYLE)} "
        f"be {_inches(least)} to {_inches(greatest)} thick. "
        f"Read again, or this is another sheet than its name says{_other_name(sheet)}."
    )
    farthest = thickest([thickest([limits.least - each, each - limits.greatest]) for each in outside])
    return Finding("readings", "warn", (), text, farthest)


def _other_name(sheet: Sheet) -> str:
    """The PS 1 name nearest to the sheet's mean that allows every reading, where there is one.

    A sheet is often sold by the round name above its own, 23/32 in as 3/4 in (common practice, no source).
    """
    may_be = [row for row in plywood_limits().values() if all(row.least <= r <= row.greatest for r in sheet.readings)]
    if not may_be:
        return ""
    nearest = min(may_be, key=lambda row: abs(row.nominal - sheet.thickness))
    sold = write_length(sheet.nominal, INCH_STYLE)
    often = f", and is often sold as {sold}" if nearest.nominal < sheet.nominal else ""
    return f"; {write_length(_named_by(nearest), INCH_STYLE)} would allow what was read{often}"


def _named_by(limits: PlywoodLimits) -> int:
    return leaf(limits.nominal, "thickness that PS 1 names a sheet by", "table")


def _inches(ticks: int) -> str:
    """In decimal inches, as the standard prints its limits, whatever the project shows."""
    return write_measured(ticks, INCH_STYLE)
