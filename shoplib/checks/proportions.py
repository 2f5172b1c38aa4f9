"""Allowances out of all proportion: a slipped decimal makes a fit of 0.004 in one of 0.040 in."""

from shoplib.measure import INCH, write_brief
from shoplib.measure.traced import limit
from shoplib.model.solved import Cabinet, Finding, Joint
from shoplib.words.naming import and_list, in_short

MOST_FIT = limit(INCH // 64, "the most that a fit is")
"""1/64 in, 0.4 mm, is four times the usual fit, and more than a thin film of glue fills: common practice, no source."""

LOOSE_FIT = INCH // 32
"""A cut 1/32 in, 0.8 mm, too wide does not hold the board in its place: common practice, no source."""

MOST_GAP = limit(INCH // 4, "the most that a gap between fronts is")
"""Fronts 1/4 in, 6 mm, apart are seen through: common practice, no source."""


def find_loose_fits(cabinet: Cabinet) -> tuple[Finding, ...]:
    """Fits wider than `MOST_FIT` ("warn") and `LOOSE_FIT` ("stop"), one finding each, by kind of cut.

    The amount is the fit. Where the limits lie is common practice, no source.
    """
    wide: dict[tuple[int, str], list[Joint]] = {}
    for joint in cabinet.joints:
        if joint.depth and joint.fit > MOST_FIT:
            wide.setdefault((joint.fit, joint.kind), []).append(joint)
    found = []
    for (fit, kind), joints in wide.items():
        boards = tuple(dict.fromkeys(joint.enters for joint in joints))
        size, most = (write_brief(ticks, cabinet.style, decimal=True) for ticks in (fit, MOST_FIT))
        text = (
            f"The {kind} for {and_list(in_short(boards))} is planned {size} wider than the thickest reading. What "
            f"enters would rattle, and glue does not fill it. Look for a slipped decimal; {most} is the most."
        )
        found.append(Finding("joints", "stop" if fit > LOOSE_FIT else "warn", boards, text, fit))
    return tuple(found)


def find_large_end_gaps(cabinet: Cabinet) -> tuple[Finding, ...]:
    """End gaps that take more than a third of the depth of their cut ("warn"), or more than half ("stop").

    The amount is the gap. Where the limits lie is common practice, no source.
    """
    large: dict[tuple[int, int, str], list[Joint]] = {}
    for joint in cabinet.joints:
        if joint.depth and 3 * joint.end_gap > joint.depth:
            large.setdefault((joint.end_gap, joint.depth, joint.kind), []).append(joint)
    found = []
    for (gap, depth, kind), joints in large.items():
        boards = tuple(dict.fromkeys(joint.enters for joint in joints))
        text = (
            f"{and_list(in_short(boards))}: of the {write_brief(depth, cabinet.style)} that the {kind} is deep, "
            f"{write_brief(gap, cabinet.style)} stays empty. Plan a smaller gap at the end, or a deeper cut."
        )
        found.append(Finding("joints", "stop" if 2 * gap > depth else "warn", boards, text, gap))
    return tuple(found)


def find_wide_gaps(cabinet: Cabinet) -> tuple[Finding, ...]:
    """A "warn" where fronts are planned more than `MOST_GAP` apart, or that far from the case."""
    fronts = cabinet.project.fronts if cabinet.project else None
    if fronts is None or not cabinet.gaps:
        return ()
    planned = {"fronts.gap": fronts.gap} | ({"fronts.around": fronts.around} if fronts.kind == "inset" else {})
    return tuple(
        Finding(
            "gaps",
            "warn",
            (),
            f"{key} is {write_brief(size, cabinet.style)}: more than {write_brief(MOST_GAP, cabinet.style)} is open "
            "beside the fronts, and what lies behind is seen. Make it smaller, or leave it if that is what you want.",
            size,
        )
        for key, size in planned.items()
        if size > MOST_GAP
    )
