"""Limits that are published, passed by a pair of the joint bench: it can be cut, and is told what the books say."""

from shoplib.joints.bench_pair import Pair
from shoplib.joints.dovetail import wide_tail
from shoplib.measure import INCH, write_brief
from shoplib.model.solved import Finding

WIDEST_TAIL = 7 * INCH // 4
"""No tail over 1 3/4 in: Noyes, Handwork in Wood (1910) p. 165 (read)."""

STEEPEST = 60
"""1 in 6 as the limit, in tenths: Fairham, Woodwork Joints (1920) p. 134 (read); others go on to 1 in 4."""

_CHECK = "published limits"


def pair_limits(pair: Pair) -> tuple[Finding, ...]:
    """What passes a published limit, each a "note"; a "warn" where a screw would not slip through its hole.

    >>> from shoplib.joints import joint
    >>> from shoplib.joints.bench_pair import stock_of
    >>> steep = joint("dovetail").build(stock_of(3 * INCH // 4), {"slope": 40})
    >>> print(pair_limits(steep)[0].text)
    1 in 4 is steeper than 1 in 6, the limit by Fairham p. 134: the corners of the tails are short grain. Choose a \
flatter slope.
    """
    return _LIMITS.get(pair.kind, lambda pair: ())(pair)


def _butt(pair: Pair) -> tuple[Finding, ...]:
    clear, pilot = pair.values["clearance hole"], pair.values["pilot hole"]
    if clear > pilot:
        return ()
    wide, bored = (write_brief(size, pair.stock.style) for size in (clear, pilot))
    text = (
        f"The clearance hole, {wide}, is no wider than the pilot hole, {bored}: the screw does not slip through the "
        "outer board, and holds it off the other (Noyes p. 126). Bore it wider than the screw is."
    )
    return (Finding(_CHECK, "warn", ("side", "bottom"), text, pilot - clear),)


def _dovetail(pair: Pair) -> tuple[Finding, ...]:
    found, slope, tail = [], pair.values["slope"], wide_tail(pair.stock, pair.values)
    if slope < STEEPEST:
        run = f"{slope // 10}" if slope % 10 == 0 else f"{slope // 10}.{slope % 10}"
        found.append(Finding(_CHECK, "note", ("bottom",), (
            f"1 in {run} is steeper than 1 in 6, the limit by Fairham p. 134: the corners of the tails are short "
            "grain. Choose a flatter slope."
        )))
    if tail > WIDEST_TAIL:
        wide, most = (write_brief(size, pair.stock.style) for size in (tail, WIDEST_TAIL))
        found.append(Finding(_CHECK, "note", ("bottom",), (
            f"A tail is {wide} wide, and should not be over {most}: Noyes p. 165. Take more tails."
        ), tail - WIDEST_TAIL))
    return tuple(found)


_LIMITS = {"butt": _butt, "dovetail": _dovetail}
