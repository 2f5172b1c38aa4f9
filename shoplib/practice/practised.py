"""What a practised hand does at the same bench: played with the same actions, and told with its readings.

The order is common practice, no source: measure the sheet where the boards come from, one test cut in an offcut of
it, correct everything by what was measured, a second cut to confirm, and press the panels down.
"""

from dataclasses import dataclass

from shoplib.measure import Style, write_brief, write_length, write_measured
from shoplib.practice.bench import Bench
from shoplib.practice.fit import small
from shoplib.practice.plan import LEVELS
from shoplib.practice.session import (
    Session,
    cut_pair,
    measure,
    measure_sheet,
    press_down,
    set_depth,
    set_fence,
    set_stack,
    test_cut,
    try_fit,
)


@dataclass(frozen=True)
class Practised:
    """How a practised hand went about it: the session at its end, with the pair cut, and what it did, in sentences."""

    session: Session
    said: tuple[str, ...]


def practised(bench: Bench) -> Practised:
    """Plays a practised hand at this bench: two test cuts, the second to confirm.

    >>> from shoplib.practice.spreads import NONE
    >>> hand = practised(Bench("Noor", "dado", "in", NONE))
    >>> len(hand.session.tests), hand.said[0]
    (2, 'Five readings of the sheet, the thickest 0.705 in: with 0.001 in of clearance the stack is to be 0.706 in.')
    """
    style = bench.style
    session = _set_by_the_scales(bench)
    plan, thickest = session.plan, session.readings[-1].thickest
    wanted = thickest + plan.fit
    session, first = _measured_test(session)
    off = {"width": first["width"] - wanted, "depth": first["depth"] - plan.dado, "wall": first["wall"] - plan.shelf_up}
    session = set_stack(session, write_measured(wanted - off["width"], style)).session
    session = set_depth(session, write_length(plan.dado - off["depth"], style)).session
    for level in LEVELS:
        session = set_fence(session, write_length(plan.up(level) - off["wall"], style), level).session
    session, second = _measured_test(session)
    session = try_fit(session).session
    return Practised(cut_pair(session).session, (
        f"Five readings of the sheet, the thickest {_decimal(thickest, style)}: with {_decimal(plan.fit, style)} of "
        f"clearance the stack is to be {_decimal(wanted, style)}.",
        f"Test cut 1, in an offcut of the same sheet, measures {_decimal(first['width'], style)} wide: "
        f"{_shims(off['width'], style)}.",
        f"It measures {_decimal(first['depth'], style)} deep and stands {_decimal(first['wall'], style)} from the end: "
        f"{_set('the cutter', off['depth'], 'lower', 'higher', style)}, "
        f"{_set('the fence', off['wall'], 'nearer', 'farther', style)}.",
        f"Test cut 2 confirms: {_decimal(second['width'], style)} wide, {_decimal(second['depth'], style)} deep; "
        f"the offcut in it is {session.fits[-1][1].said(style)}.",
        "Both sides are cut at one setting of the fence for each dado, the lower end against it and the inner face "
        "down, and pressed down right over the cutter: an offcut is too short to show a bow.",
    ))


def trusting(bench: Bench) -> Session:
    """The same bench by someone who trusts the scales: sheet measured, all set as planned, and no test cut."""
    return cut_pair(_set_by_the_scales(bench)).session


def _set_by_the_scales(bench: Bench) -> Session:
    """The sheet measured, the panels pressed down, and stack, depth and fence set to what is planned."""
    session, style = press_down(measure_sheet(Session(bench), 5).session).session, bench.style
    plan = session.plan
    session = set_stack(session, write_measured(session.readings[-1].thickest + plan.fit, style)).session
    session = set_depth(session, write_length(plan.dado, style)).session
    for level in LEVELS:
        session = set_fence(session, write_length(plan.up(level), style), level).session
    return session


def _measured_test(session: Session) -> tuple[Session, dict[str, int]]:
    """One test cut, each of its sizes read three times: the means, by what was measured."""
    session, means = test_cut(session).session, {}
    for what in ("width", "depth", "wall"):
        session = measure(session, what, 3).session
        means[what] = session.readings[-1].mean
    return session, means


def _decimal(ticks: int, style: Style) -> str:
    return write_brief(ticks, style, decimal=True)


def _shims(over: int, style: Style) -> str:
    size = small(abs(over), style)
    if size == small(0, style):
        return "just right, and the stack stays"
    return f"{size} too {'wide, so shims of that much come out' if over > 0 else 'narrow, so shims of that much go in'}"


def _set(what: str, over: int, down: str, up: str, style: Style) -> str:
    size = small(abs(over), style)
    return f"{what} stays" if size == small(0, style) else f"{what} goes {size} {down if over > 0 else up}"
