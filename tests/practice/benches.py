"""Benches and sessions that the tests of the practice room share."""

from dataclasses import replace

from shoplib.measure import write_length, write_measured
from shoplib.practice import cut_pair, press_down, set_depth, set_fence, set_stack, start
from shoplib.practice.session import Session
from shoplib.practice.spreads import NONE, STATED, Spreads

UNITS = ("in", "mm")


def set_up(
    learner: str = "Noor", unit: str = "in", spreads: Spreads = STATED, *,
    wider: int = 0, deeper: int = 0, farther: int = 0,
) -> Session:
    """A bench with the stack, depth and fences set as planned, or by so many ticks more, and the panels pressed."""
    session = start(learner, unit=unit, spreads=spreads).session
    plan, style = session.plan, session.bench.style
    steps = [
        lambda s: set_stack(s, write_measured(session.stock.thickest + plan.fit + wider, style)),
        lambda s: set_depth(s, write_length(plan.dado + deeper, style)),
        lambda s: set_fence(s, write_length(plan.bottom_up + farther, style), "bottom"),
        lambda s: set_fence(s, write_length(plan.shelf_up + farther, style), "shelf"),
        lambda s: press_down(s, True),
    ]
    for do in steps:
        step = do(session)
        assert step.done, step.said
        session = step.session
    return session


def cut(session: Session, slip: str = "", on: str = "right side") -> Session:
    """The session with the pair cut."""
    step = cut_pair(session, slip, on)
    assert step.done, step.said
    return step.session


def perfect(unit: str = "in", slip: str = "", on: str = "right side", **off: int) -> Session:
    """The pair cut on a bench with no errors at all."""
    return cut(set_up(unit=unit, spreads=NONE, **off), slip, on)


def anew(session: Session) -> Session:
    """The same settings before the pair was cut."""
    return replace(session, sides=None, kerfs=(), slip="")
